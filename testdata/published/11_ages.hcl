# How long fuel cells, bottles, helmets, suits, nets and tyres are accepted. Some lists end
# with a date of manufacture and not of use, some standards have no end, some were withdrawn
# for all on one day.

# FIA technical list 25 of 11 December 2024; what has no end stands in the clause.
table "list_25" {
  columns = { standard = "helmet.standard", until = "helmet.not_after" }
  rows = [
    ["SA2010", "2023-12-31"],
    ["SA2015", "2023-12-31"],
    ["8860-2010", "2028-12-31"],
  ]
  issued = "2024-12-11"
}

table "helmets_uk_2024" {
  columns = { standard = "helmet.standard", until = "helmet.not_after" }
  rows = [
    ["SA2010", "2023-12-31"],
    ["SA2015", "2026-12-31"],
  ]
  issued = "2024"
}

chapter "11" {
  title = "Ages"

  clause "11.1" {
    title   = "Fuel bladder: five years and one re-certification of two"
    concern = "safety"
    text_at = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
    applies = "fuel_cell.standard in ['FIA FT3-1999', 'FIA FT3.5-1999', 'FIA FT5-1999']"
    demand  = <<-FORMULA
  on <= years_after(fuel_cell.made, 5)
  or recorded(fuel_cell.recertified)
  and on <= earliest(years_after(fuel_cell.recertified, 2), years_after(fuel_cell.made, 7))
FORMULA
  }

  clause "11.2" {
    title   = "Fuel cell: five years and one re-certification of two"
    concern = "safety"
    text_at = "SFI 28.1, technical committee, June 2022"
    applies = "fuel_cell.standard == 'SFI 28.1'"
    demand  = <<-FORMULA
  on <= years_after(fuel_cell.made, 5)
  or recorded(fuel_cell.recertified)
  and on <= earliest(years_after(fuel_cell.recertified, 2), years_after(fuel_cell.made, 7))
FORMULA
  }

  clause "11.3" {
    title   = "Fuel cell: five years, no re-certification"
    concern = "safety"
    text_at = "SFI 28.3, technical committee, June 2022"
    applies = "fuel_cell.standard == 'SFI 28.3'"
    demand  = "on <= years_after(fuel_cell.made, 5)"
  }

  clause "11.4" {
    title   = "Fuel bladder older than five years"
    concern = "advice"
    text_at = "NASA CCR 15.4, 2009"
    demand  = "on <= years_after(fuel_cell.made, 5)"
  }

  clause "11.5" {
    title   = "Hand-held extinguisher checked"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
    across  = "extinguisher in extinguishers"
    demand  = "on <= months_after(extinguisher.serviced, 24)"
  }

  clause "11.6" {
    title   = "Plumbed-in system serviced"
    concern = "safety"
    text_at = "MSUK, plumbed-in systems from 2018"
    applies = "on >= date('2018-01-01')"
    demand  = "on <= months_after(fire_system.serviced, 24)"
  }

  clause "11.7" {
    title   = "The list ends with a date of manufacture"
    concern = "safety"
    text_at = "FIA technical list 16, as a guide for classic cars reads it"
    applies = "fire_system.standard == 'FIA 1999'"
    across  = "bottle in fire_system.fire_bottles"
    demand  = "bottle.made <= end_of_label(fire_system.listed_until)"
  }

  clause "11.8" {
    title   = "Bottle of an SFI system"
    concern = "safety"
    text_at = "SFI 17.1, North American guide"
    applies = "fire_system.standard == 'SFI 17.1'"
    across  = "bottle in fire_system.fire_bottles"
    demand  = "on <= years_after(bottle.serviced, 2) and on <= years_after(bottle.made, 6)"
  }

  clause "11.9" {
    title   = "Helmet standards of technical list 25"
    concern = "safety"
    text_at = "FIA technical list 25, 11 December 2024"
    across  = "crew_member in crew_members"
    demand  = <<-FORMULA
  crew_member.helmet.standard in ['8859-2015', '8859-2024', '8860-2018', '8860-2018-ABP']
  or any(table.list_25, .standard == crew_member.helmet.standard and on <= .until)
FORMULA
  }

  clause "11.10" {
    title   = "Helmet standards, national"
    concern = "safety"
    text_at = "MSUK helmet standards, 2024"
    across  = "crew_member in crew_members"
    demand  = <<-FORMULA
  crew_member.helmet.standard == 'SA2020'
  or any(table.helmets_uk_2024, .standard == crew_member.helmet.standard and on <= .until)
FORMULA
  }

  clause "11.11" {
    title   = "Helmet of the older advanced standard"
    concern = "safety"
    text_at = "FIA 8860-2004"
    across  = "crew_member in crew_members"
    where   = "crew_member.helmet.standard == 'FIA 8860-2004'"
    demand  = "on <= date('2020-12-31')"
  }

  clause "11.12" {
    title   = "Frontal head restraint"
    concern = "safety"
    text_at = "SFI 38.1, ARCA table; FIA 8858-2010"
    across  = "crew_member in crew_members"
    demand  = <<-FORMULA
  crew_member.head_restraint.standard == 'FIA 8858-2010'
  or crew_member.head_restraint.standard == 'SFI 38.1'
  and on <= end_of_month(years_after(crew_member.head_restraint.made, 5))
FORMULA
  }

  clause "11.13" {
    title   = "Driver suit: the year of manufacture is year one"
    concern = "safety"
    text_at = "IHRA, SFI 3.2A/10 and above"
    across  = ["crew_member in crew_members", "garment in crew_member.garments"]
    where   = "garment.standard in ['SFI 3.2A/10', 'SFI 3.2A/15', 'SFI 3.2A/20']"
    demand  = "on <= end_of_year(years_after((garment.made ?? date('2000-12-31')), 4))"
  }

  clause "11.14" {
    title   = "Window net: two years"
    concern = "safety"
    text_at = "SFI 27.1, North American rulebooks"
    across  = "net in window_nets"
    where   = "net.standard == 'SFI 27.1'"
    demand  = "on <= years_after(net.made, 2)"
  }

  clause "11.15" {
    title   = "Date code of a tyre: week and year"
    concern = "safety"
    text_at = "DOT date code since 2000"
    across  = "wheel in wheels"
    demand  = <<-FORMULA
  wheel.tyre.date_code matches '^(0[1-9]|[1-4][0-9]|5[0-3])[0-9]{2}$'
FORMULA
  }
}

worked_case "FT3 cell on its fifth birthday" {
  clause = "11.1"
  on     = "2025-06-10"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "none"
    }
  }
  answer = "meets"
  reason = "At most five years old."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "FT3 cell a day over five years" {
  clause = "11.1"
  on     = "2025-06-11"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "none"
    }
  }
  answer = "gap"
  reason = "At most five years old without re-certification."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "FT3 cell re-certified, on its seventh birthday" {
  clause = "11.1"
  on     = "2027-06-10"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "2025-06-10"
    }
  }
  answer = "meets"
  reason = "One re-certification of two years."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "FT3 cell re-certified, a day over seven years" {
  clause = "11.1"
  on     = "2027-06-11"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "2025-06-10"
    }
  }
  answer = "gap"
  reason = "One re-certification of two years."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "SFI 28.1 cell on its fifth birthday" {
  clause = "11.2"
  on     = "2025-06-10"
  as_built {
    fuel_cell {
      standard    = "SFI 28.1"
      made        = "2020-06-10"
      recertified = "none"
    }
  }
  answer = "meets"
  reason = "At most five years old."
  source = "SFI 28.1, technical committee, June 2022"
  status = "computed"
}

worked_case "SFI 28.1 cell a day over five years" {
  clause = "11.2"
  on     = "2025-06-11"
  as_built {
    fuel_cell {
      standard    = "SFI 28.1"
      made        = "2020-06-10"
      recertified = "none"
    }
  }
  answer = "gap"
  reason = "At most five years old without re-certification."
  source = "SFI 28.1, technical committee, June 2022"
  status = "computed"
}

worked_case "SFI 28.1 cell re-certified, on its seventh birthday" {
  clause = "11.2"
  on     = "2027-06-10"
  as_built {
    fuel_cell {
      standard    = "SFI 28.1"
      made        = "2020-06-10"
      recertified = "2025-06-10"
    }
  }
  answer = "meets"
  reason = "One re-certification of two years."
  source = "SFI 28.1, technical committee, June 2022"
  status = "computed"
}

worked_case "SFI 28.1 cell re-certified, a day over seven years" {
  clause = "11.2"
  on     = "2027-06-11"
  as_built {
    fuel_cell {
      standard    = "SFI 28.1"
      made        = "2020-06-10"
      recertified = "2025-06-10"
    }
  }
  answer = "gap"
  reason = "One re-certification of two years."
  source = "SFI 28.1, technical committee, June 2022"
  status = "computed"
}

worked_case "FT3 cell re-certified early" {
  clause = "11.1"
  on     = "2026-09-02"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "2024-09-01"
    }
  }
  answer = "gap"
  reason = "Two years from the re-certification: to 1 September 2026."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "FT3 cell re-certified late" {
  clause = "11.1"
  on     = "2027-07-01"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "2026-02-01"
    }
  }
  answer = "gap"
  reason = "Seven years are the most: to 10 June 2027."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "FT3 cell, whether re-certified is not written" {
  clause = "11.1"
  on     = "2026-01-01"
  as_built {
    fuel_cell {
      standard = "FT3"
      made     = "2020-06-10"
    }
  }
  answer = "not recorded"
  reason = "It is over five years old, and hangs on a re-certification."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "29 February: FT5 cell made on it" {
  clause = "11.1"
  on     = "2025-02-28"
  as_built {
    fuel_cell {
      standard    = "FT5"
      made        = "2020-02-29"
      recertified = "none"
    }
  }
  answer = "meets"
  reason = "Five years from 29 February 2020 end on 28 February 2025."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "29 February: FT5 cell made on it, a day over" {
  clause = "11.1"
  on     = "2025-03-01"
  as_built {
    fuel_cell {
      standard    = "FT5"
      made        = "2020-02-29"
      recertified = "none"
    }
  }
  answer = "gap"
  reason = "Five years from 29 February 2020 end on 28 February 2025."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "SFI 28.3 cell on its fifth birthday" {
  clause = "11.3"
  on     = "2025-06-10"
  as_built {
    fuel_cell {
      standard = "SFI 28.3"
      made     = "2020-06-10"
    }
  }
  answer = "meets"
  reason = "Five years."
  source = "SFI 28.3, technical committee, June 2022"
  status = "computed"
}

worked_case "SFI 28.3 cell re-certified" {
  clause = "11.3"
  on     = "2026-01-01"
  as_built {
    fuel_cell {
      standard    = "SFI 28.3"
      made        = "2020-06-10"
      recertified = "2025-06-10"
    }
  }
  answer = "gap"
  reason = "No re-certification."
  source = "SFI 28.3, technical committee, June 2022"
  status = "quoted by others"
}

worked_case "bladder of four years" {
  clause = "11.4"
  on     = "2009-06-01"
  as_built {
    fuel_cell {
      standard = "FT3"
      made     = "2005-05-01"
    }
  }
  answer = "meets"
  reason = "Older than five years should not be used."
  source = "NASA CCR 15.4, 2009"
  status = "quoted by others"
}

worked_case "bladder of six years" {
  clause = "11.4"
  on     = "2009-06-01"
  as_built {
    fuel_cell {
      standard = "FT3"
      made     = "2003-05-01"
    }
  }
  answer = "gap"
  reason = "Older than five years should not be used: advice."
  source = "NASA CCR 15.4, 2009"
  status = "quoted by others"
}

worked_case "extinguisher checked 24 months ago" {
  clause = "11.5"
  on     = "2027-03-14"
  as_built {
    extinguisher "1" {
      serviced = "2025-03-14"
    }
  }
  answer = "meets"
  reason = "At most two years after filling or check."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "confirmed"
}

worked_case "extinguisher checked 24 months and a day ago" {
  clause = "11.5"
  on     = "2027-03-15"
  as_built {
    extinguisher "1" {
      serviced = "2025-03-14"
    }
  }
  answer = "gap"
  reason = "At most two years after filling or check."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "confirmed"
}

worked_case "29 February: extinguisher checked on it" {
  clause = "11.5"
  on     = "2026-02-28"
  as_built {
    extinguisher "1" {
      serviced = "2024-02-29"
    }
  }
  answer = "meets"
  reason = "24 months from 29 February 2024 end on 28 February 2026."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "computed"
}

worked_case "29 February: extinguisher checked on it, a day over" {
  clause = "11.5"
  on     = "2026-03-01"
  as_built {
    extinguisher "1" {
      serviced = "2024-02-29"
    }
  }
  answer = "gap"
  reason = "24 months from 29 February 2024 end on 28 February 2026."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "computed"
}

worked_case "check known to the month, within the month" {
  clause = "11.5"
  on     = "2027-03-15"
  as_built {
    extinguisher "1" {
      serviced = "2025-03"
    }
  }
  answer = "marginal"
  reason = "Which day of March 2025 it was decides, and is not written."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "computed"
}

worked_case "check known to the month, earlier" {
  clause = "11.5"
  on     = "2027-03-01"
  as_built {
    extinguisher "1" {
      serviced = "2025-03"
    }
  }
  answer = "meets"
  reason = "Good whatever the day in March 2025."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "computed"
}

worked_case "system serviced 24 months ago" {
  clause = "11.6"
  on     = "2026-05-01"
  as_built {
    fire_system {
      serviced = "2024-05-01"
    }
  }
  answer = "meets"
  reason = "24 months."
  source = "MSUK, plumbed-in systems from 2018"
  status = "quoted by others"
}

worked_case "system serviced 25 months ago" {
  clause = "11.6"
  on     = "2026-06-01"
  as_built {
    fire_system {
      serviced = "2024-05-01"
    }
  }
  answer = "gap"
  reason = "24 months."
  source = "MSUK, plumbed-in systems from 2018"
  status = "quoted by others"
}

worked_case "system in 2017" {
  clause = "11.6"
  on     = "2017-12-31"
  as_built {
    fire_system {
      serviced = "2014-05-01"
    }
  }
  answer = "does not apply"
  reason = "From 1 January 2018."
  source = "MSUK, plumbed-in systems from 2018"
  status = "quoted by others"
}

worked_case "bottle made while listed, used long after" {
  clause = "11.7"
  on     = "2022-06-01"
  as_built {
    fire_system {
      standard = "TL16"
      club "Published figures" {
        listed_until = "2014-12-31"
      }
      fire_bottle "1" {
        made = "2014-06"
      }
    }
  }
  answer = "meets"
  reason = "The column is the last date of manufacture and does not end use."
  source = "FIA technical list 16, as a guide for classic cars reads it"
  status = "quoted by others"
}

worked_case "bottle made after the list ended" {
  clause = "11.7"
  on     = "2015-06-01"
  as_built {
    fire_system {
      standard = "TL16"
      club "Published figures" {
        listed_until = "2014-12-31"
      }
      fire_bottle "1" {
        made = "2015-02"
      }
    }
  }
  answer = "gap"
  reason = "Made after the last date of manufacture."
  source = "FIA technical list 16, as a guide for classic cars reads it"
  status = "quoted by others"
}

worked_case "bottle made in the last listed year" {
  clause = "11.7"
  on     = "2020-06-01"
  as_built {
    fire_system {
      standard = "TL16"
      club "Published figures" {
        listed_until = "2014"
      }
      fire_bottle "1" {
        made = "2014-12-31"
      }
    }
  }
  answer = "meets"
  reason = "The year of the list, to its last day."
  source = "FIA technical list 16, as a guide for classic cars reads it"
  status = "computed"
}

worked_case "SFI bottle serviced and young" {
  clause = "11.8"
  on     = "2026-05-01"
  as_built {
    fire_system {
      standard = "SFI 17.1"
      fire_bottle "1" {
        made     = "2020-05-01"
        serviced = "2024-05-01"
      }
    }
  }
  answer = "meets"
  reason = "Two years of service, six of the bottle: both end on 1 May 2026."
  source = "SFI 17.1, North American guide"
  status = "quoted by others"
}

worked_case "SFI bottle serviced and over six years" {
  clause = "11.8"
  on     = "2026-06-01"
  as_built {
    fire_system {
      standard = "SFI 17.1"
      fire_bottle "1" {
        made     = "2020-05-01"
        serviced = "2025-12-01"
      }
    }
  }
  answer = "gap"
  reason = "Six years of the bottle."
  source = "SFI 17.1, North American guide"
  status = "quoted by others"
}

worked_case "SFI bottle not serviced" {
  clause = "11.8"
  on     = "2025-06-01"
  as_built {
    fire_system {
      standard = "SFI 17.1"
      fire_bottle "1" {
        made     = "2023-05-01"
        serviced = "2023-05-01"
      }
    }
  }
  answer = "gap"
  reason = "Two years of service."
  source = "SFI 17.1, North American guide"
  status = "quoted by others"
}

worked_case "SA2015 at the end of 2023" {
  clause = "11.9"
  on     = "2023-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2015"
      }
    }
  }
  answer = "meets"
  reason = "To 31 December 2023."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "SA2015 in 2024" {
  clause = "11.9"
  on     = "2024-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2015"
      }
    }
  }
  answer = "gap"
  reason = "Withdrawn for all with 2023."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "8860-2010 in 2028" {
  clause = "11.9"
  on     = "2028-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "8860-2010"
      }
    }
  }
  answer = "meets"
  reason = "To 31 December 2028."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "8860-2010 in 2029" {
  clause = "11.9"
  on     = "2029-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "8860-2010"
      }
    }
  }
  answer = "gap"
  reason = "To 31 December 2028."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "8859-2015 in 2040" {
  clause = "11.9"
  on     = "2040-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "8859-2015"
      }
    }
  }
  answer = "meets"
  reason = "The list has no end for it."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "8859-2024 in 2040" {
  clause = "11.9"
  on     = "2040-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "8859-2024"
      }
    }
  }
  answer = "meets"
  reason = "The list has no end for it."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "8860-2018-ABP in 2040" {
  clause = "11.9"
  on     = "2040-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "8860-2018-ABP"
      }
    }
  }
  answer = "meets"
  reason = "The list has no end for it."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "motorcycle helmet" {
  clause = "11.9"
  on     = "2024-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "ECE 22.05"
      }
    }
  }
  answer = "gap"
  reason = "Not on the list."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "SA2015 in 2026, national" {
  clause = "11.10"
  on     = "2026-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2015"
      }
    }
  }
  answer = "meets"
  reason = "To 31 December 2026 in the national list, three years longer."
  source = "MSUK helmet standards, 2024"
  status = "quoted by others"
}

worked_case "SA2015 in 2027, national" {
  clause = "11.10"
  on     = "2027-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2015"
      }
    }
  }
  answer = "gap"
  reason = "To 31 December 2026."
  source = "MSUK helmet standards, 2024"
  status = "quoted by others"
}

worked_case "SA2010 in 2024, national" {
  clause = "11.10"
  on     = "2024-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2010"
      }
    }
  }
  answer = "gap"
  reason = "Out with the end of 2023."
  source = "MSUK helmet standards, 2024"
  status = "quoted by others"
}

worked_case "SA2020 in 2027, national" {
  clause = "11.10"
  on     = "2027-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2020"
      }
    }
  }
  answer = "meets"
  reason = "Accepted."
  source = "MSUK helmet standards, 2024"
  status = "quoted by others"
}

worked_case "8860-2004 at the end of 2020" {
  clause = "11.11"
  on     = "2020-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "8860-2004"
      }
    }
  }
  answer = "meets"
  reason = "Not after 31 December 2020."
  source = "FIA 8860-2004"
  status = "quoted by others"
}

worked_case "8860-2004 in 2021" {
  clause = "11.11"
  on     = "2021-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "8860-2004"
      }
    }
  }
  answer = "gap"
  reason = "Not after 31 December 2020."
  source = "FIA 8860-2004"
  status = "quoted by others"
}

worked_case "38.1 of June 2011 in May 2016" {
  clause = "11.12"
  on     = "2016-05-31"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "SFI 38.1"
        made     = "2011-06"
      }
    }
  }
  answer = "meets"
  reason = "From month to month: 06/2011 to 06/2016."
  source = "SFI 38.1, ARCA table; FIA 8858-2010"
  status = "quoted by others"
}

worked_case "38.1 of June 2011 at the end of June 2016" {
  clause = "11.12"
  on     = "2016-06-30"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "SFI 38.1"
        made     = "2011-06"
      }
    }
  }
  answer = "meets"
  reason = "06/2016 is taken to its last day; the table gives no day."
  source = "SFI 38.1, ARCA table; FIA 8858-2010"
  status = "computed"
}

worked_case "38.1 of June 2011 in July 2016" {
  clause = "11.12"
  on     = "2016-07-01"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "SFI 38.1"
        made     = "2011-06"
      }
    }
  }
  answer = "gap"
  reason = "From month to month: 06/2011 to 06/2016."
  source = "SFI 38.1, ARCA table; FIA 8858-2010"
  status = "quoted by others"
}

worked_case "38.1 of March 2008 in April 2013" {
  clause = "11.12"
  on     = "2013-04-01"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "SFI 38.1"
        made     = "2008-03"
      }
    }
  }
  answer = "gap"
  reason = "From month to month: 03/2008 to 03/2013."
  source = "SFI 38.1, ARCA table; FIA 8858-2010"
  status = "quoted by others"
}

worked_case "8858-2010 of 2011 in 2040" {
  clause = "11.12"
  on     = "2040-01-01"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "8858-2010"
        made     = "2011"
      }
    }
  }
  answer = "meets"
  reason = "No end."
  source = "SFI 38.1, ARCA table; FIA 8858-2010"
  status = "quoted by others"
}

worked_case "suit of 2001 at the end of 2005" {
  clause = "11.13"
  on     = "2005-12-31"
  as_built {
    crew_member "driver" {
      garment "overalls" {
        standard = "SFI 3.2A/15"
        made     = "2001"
      }
    }
  }
  answer = "meets"
  reason = "The year of manufacture is year one: to 31 December 2005."
  source = "IHRA, SFI 3.2A/10 and above"
  status = "quoted by others"
}

worked_case "suit of 2001 in 2006" {
  clause = "11.13"
  on     = "2006-01-01"
  as_built {
    crew_member "driver" {
      garment "overalls" {
        standard = "SFI 3.2A/15"
        made     = "2001"
      }
    }
  }
  answer = "gap"
  reason = "The year of manufacture is year one: to 31 December 2005."
  source = "IHRA, SFI 3.2A/10 and above"
  status = "quoted by others"
}

worked_case "suit of 2002 at the end of 2006" {
  clause = "11.13"
  on     = "2006-12-31"
  as_built {
    crew_member "driver" {
      garment "overalls" {
        standard = "SFI 3.2A/15"
        made     = "2002"
      }
    }
  }
  answer = "meets"
  reason = "The year of manufacture is year one: to 31 December 2006."
  source = "IHRA, SFI 3.2A/10 and above"
  status = "quoted by others"
}

worked_case "suit of 2002 in 2007" {
  clause = "11.13"
  on     = "2007-01-01"
  as_built {
    crew_member "driver" {
      garment "overalls" {
        standard = "SFI 3.2A/15"
        made     = "2002"
      }
    }
  }
  answer = "gap"
  reason = "The year of manufacture is year one: to 31 December 2006."
  source = "IHRA, SFI 3.2A/10 and above"
  status = "quoted by others"
}

worked_case "suit of 2003 at the end of 2007" {
  clause = "11.13"
  on     = "2007-12-31"
  as_built {
    crew_member "driver" {
      garment "overalls" {
        standard = "SFI 3.2A/15"
        made     = "2003"
      }
    }
  }
  answer = "meets"
  reason = "The year of manufacture is year one: to 31 December 2007."
  source = "IHRA, SFI 3.2A/10 and above"
  status = "quoted by others"
}

worked_case "suit of 2003 in 2008" {
  clause = "11.13"
  on     = "2008-01-01"
  as_built {
    crew_member "driver" {
      garment "overalls" {
        standard = "SFI 3.2A/15"
        made     = "2003"
      }
    }
  }
  answer = "gap"
  reason = "The year of manufacture is year one: to 31 December 2007."
  source = "IHRA, SFI 3.2A/10 and above"
  status = "quoted by others"
}

worked_case "suit of 2004 at the end of 2008" {
  clause = "11.13"
  on     = "2008-12-31"
  as_built {
    crew_member "driver" {
      garment "overalls" {
        standard = "SFI 3.2A/15"
        made     = "2004"
      }
    }
  }
  answer = "meets"
  reason = "The year of manufacture is year one: to 31 December 2008."
  source = "IHRA, SFI 3.2A/10 and above"
  status = "quoted by others"
}

worked_case "suit of 2004 in 2009" {
  clause = "11.13"
  on     = "2009-01-01"
  as_built {
    crew_member "driver" {
      garment "overalls" {
        standard = "SFI 3.2A/15"
        made     = "2004"
      }
    }
  }
  answer = "gap"
  reason = "The year of manufacture is year one: to 31 December 2008."
  source = "IHRA, SFI 3.2A/10 and above"
  status = "quoted by others"
}

worked_case "suit without a date at the end of 2004" {
  clause = "11.13"
  on     = "2004-12-31"
  as_built {
    crew_member "driver" {
      garment "overalls" {
        standard = "SFI 3.2A/15"
        made     = "none"
      }
    }
  }
  answer = "meets"
  reason = "Undated suits: to 31 December 2004."
  source = "IHRA, SFI 3.2A/10 and above"
  status = "quoted by others"
}

worked_case "suit without a date in 2005" {
  clause = "11.13"
  on     = "2005-01-01"
  as_built {
    crew_member "driver" {
      garment "overalls" {
        standard = "SFI 3.2A/15"
        made     = "none"
      }
    }
  }
  answer = "gap"
  reason = "Undated suits: to 31 December 2004."
  source = "IHRA, SFI 3.2A/10 and above"
  status = "quoted by others"
}

worked_case "net of two years" {
  clause = "11.14"
  on     = "2026-05-19"
  as_built {
    window_net "driver window" {
      standard = "SFI 27.1"
      made     = "2024-05-20"
    }
  }
  answer = "meets"
  reason = "Two years."
  source = "SFI 27.1, North American rulebooks"
  status = "quoted by others"
}

worked_case "net of two years and a week" {
  clause = "11.14"
  on     = "2026-05-27"
  as_built {
    window_net "driver window" {
      standard = "SFI 27.1"
      made     = "2024-05-20"
    }
  }
  answer = "gap"
  reason = "Two years."
  source = "SFI 27.1, North American rulebooks"
  status = "quoted by others"
}

worked_case "tyre 0203" {
  clause = "11.15"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "0203"
      }
    }
  }
  answer = "meets"
  reason = "Week 2 of 2003."
  source = "DOT date code since 2000"
  status = "quoted by others"
}

worked_case "tyre 4308" {
  clause = "11.15"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "4308"
      }
    }
  }
  answer = "meets"
  reason = "Week 43 of 2008."
  source = "DOT date code since 2000"
  status = "quoted by others"
}

worked_case "tyre 5309" {
  clause = "11.15"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "5309"
      }
    }
  }
  answer = "meets"
  reason = "Week 53 exists in some years."
  source = "DOT date code since 2000"
  status = "computed"
}

worked_case "tyre 5409" {
  clause = "11.15"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "5409"
      }
    }
  }
  answer = "gap"
  reason = "No year has a week 54."
  source = "DOT date code since 2000"
  status = "computed"
}

worked_case "tyre 408" {
  clause = "11.15"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "408"
      }
    }
  }
  answer = "gap"
  reason = "Three figures are from before 2000: week 40 of a year that ends in 8, of which decade cannot be told."
  source = "DOT date code since 2000"
  status = "quoted by others"
}

worked_case "SFI 28.3 cell a day over five years" {
  clause = "11.3"
  on     = "2025-06-11"
  as_built {
    fuel_cell {
      standard = "SFI 28.3"
      made     = "2020-06-10"
    }
  }
  answer = "gap"
  reason = "Five years."
  source = "SFI 28.3, technical committee, June 2022"
  status = "computed"
}

worked_case "bladder of five years" {
  clause = "11.4"
  on     = "2009-06-01"
  as_built {
    fuel_cell {
      standard = "FT3"
      made     = "2004-06-01"
    }
  }
  answer = "meets"
  reason = "Not older than five years."
  source = "NASA CCR 15.4, 2009"
  status = "quoted by others"
}

worked_case "bladder of five years and a day" {
  clause = "11.4"
  on     = "2009-06-02"
  as_built {
    fuel_cell {
      standard = "FT3"
      made     = "2004-06-01"
    }
  }
  answer = "gap"
  reason = "Older than five years should not be used: advice."
  source = "NASA CCR 15.4, 2009"
  status = "quoted by others"
}

worked_case "SFI 28.1 cell re-certified early" {
  clause = "11.2"
  on     = "2026-09-02"
  as_built {
    fuel_cell {
      standard    = "SFI 28.1"
      made        = "2020-06-10"
      recertified = "2024-09-01"
    }
  }
  answer = "gap"
  reason = "Two years from the re-certification."
  source = "SFI 28.1, technical committee, June 2022"
  status = "computed"
}

worked_case "SFI 28.1 cell re-certified late" {
  clause = "11.2"
  on     = "2027-07-01"
  as_built {
    fuel_cell {
      standard    = "SFI 28.1"
      made        = "2020-06-10"
      recertified = "2026-02-01"
    }
  }
  answer = "gap"
  reason = "Five years and two are seven."
  source = "SFI 28.1, technical committee, June 2022"
  status = "computed"
}

worked_case "tyre 1020" {
  clause = "11.15"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "1020"
      }
    }
  }
  answer = "meets"
  reason = "Week 10 of 2020."
  source = "DOT date code since 2000"
  status = "computed"
}

worked_case "tyre 1921" {
  clause = "11.15"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "1921"
      }
    }
  }
  answer = "meets"
  reason = "Week 19 of 2021."
  source = "DOT date code since 2000"
  status = "computed"
}

worked_case "tyre 0021" {
  clause = "11.15"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "0021"
      }
    }
  }
  answer = "gap"
  reason = "There is no week 0."
  source = "DOT date code since 2000"
  status = "computed"
}
