# Conventions of dates: what chapters 10 and 11 leave out, and clauses whose wording changed
# on a day. A part counts to the last day that its clause names; a label that gives less than a
# day is some day of it wherever the clause goes by the day. The cases at the end of the file
# stand on clauses of chapters 10 and 11 as well: dates that nobody has recorded, dates known to
# the month or year, the day before and the day after.

chapter "18" {
  title = "Conventions of dates"

  # The text gives no last day. Clause 10.12 ends on the anniversary, this one the day before it.
  clause "18.1" {
    title   = "Belts: within two years of production, the day itself not counted"
    concern = "safety"
    text_at = "BMW CCA Club Racing, 2010: exactly two years from the production date"
    across  = ["harness in harnesses", "strap in harness.straps"]
    where   = "harness.standard in ['SFI 16.1', 'SFI 16.2', 'SFI 16.5', 'SFI 16.6']"
    demand  = "on < years_after(strap.made, 2)"
  }

  clause "18.2" {
    title   = "Belts: two years from manufacture"
    concern = "safety"
    text_at = "DIRTcar rules, driver restraints"
    across  = ["harness in harnesses", "strap in harness.straps"]
    where   = "harness.standard in ['SFI 16.1', 'SFI 16.2', 'SFI 16.5', 'SFI 16.6']"
    demand  = "on <= years_after(strap.made, 2)"
  }

  clause "18.3" {
    title   = "Belts: 31 December of the fourth year"
    concern = "safety"
    text_at = "ChampCar rules, 2018"
    across  = ["harness in harnesses", "strap in harness.straps"]
    where   = "harness.standard in ['SFI 16.1', 'SFI 16.2', 'SFI 16.5', 'SFI 16.6']"
    demand  = "on <= end_of_year(years_after(strap.made, 4))"
  }

  clause "18.4" {
    title   = "Belts: to 31 December of the label's year, without one of the fifth year"
    concern = "safety"
    text_at = "Silver State open road rules, driver restraints"
    across  = ["harness in harnesses", "strap in harness.straps"]
    demand  = <<-FORMULA
    strap.label_kind == 'not valid after'
    ? on <= end_of_year(strap.not_after)
    : on <= end_of_year(years_after(strap.made, 5))
FORMULA
  }

  clause "18.5" {
    title   = "Harness: label year and five"
    concern = "safety"
    text_at = "CAMS note on FIA harnesses"
    across  = ["harness in harnesses", "strap in harness.straps"]
    where   = "harness.standard in ['FIA 8853/98', 'FIA 8854/98', 'FIA 8853-2016']"
    demand  = "on <= end_of_year(years_after(strap.not_after, 5))"
  }

  # One clause in three wordings. The day on which five years came back is not published: the first
  # day of the month of the edition that has them again is taken, and no case is about the days before.
  clause "18.6" {
    title   = "Belts: 31 December of the fifth year"
    concern = "safety"
    text_at = "SCCA rule before memo RM04-01"
    until   = "2003-11-12"
    across  = ["harness in harnesses", "strap in harness.straps"]
    where   = "harness.standard in ['SFI 16.1', 'SFI 16.2', 'SFI 16.5', 'SFI 16.6']"
    demand  = "on <= end_of_year(years_after(strap.made, 5))"
  }

  clause "18.6" {
    title   = "Belts: 31 December of the second year"
    concern = "safety"
    text_at = "SCCA memo RM04-01, 13 November 2003"
    from    = "2003-11-13"
    until   = "2017-10-31"
    across  = ["harness in harnesses", "strap in harness.straps"]
    where   = "harness.standard in ['SFI 16.1', 'SFI 16.2', 'SFI 16.5', 'SFI 16.6']"
    demand  = "on <= end_of_year(years_after(strap.made, 2))"
  }

  clause "18.6" {
    title   = "Belts: 31 December of the fifth year again"
    concern = "safety"
    text_at = "SCCA GCR, November 2017, 9.3.18.E"
    from    = "2017-11-01"
    across  = ["harness in harnesses", "strap in harness.straps"]
    where   = "harness.standard in ['SFI 16.1', 'SFI 16.2', 'SFI 16.5', 'SFI 16.6']"
    demand  = "on <= end_of_year(years_after(strap.made, 5))"
  }

  # The source says that 8853/98 is not valid from the end of 2022, which may leave out the last
  # day itself, as clause 10.8 reads it; here the year counts to its end.
  clause "18.7" {
    title   = "Harness standards, both in use"
    concern = "safety"
    text_at = "FIA Appendix J, 8853/98 until the end of 2022"
    until   = "2022-12-31"
    across  = "harness in harnesses"
    demand  = "harness.standard in ['FIA 8853-2016', 'FIA 8853/98']"
  }

  clause "18.7" {
    title   = "Harness standard after the withdrawal of 8853/98"
    concern = "safety"
    text_at = "FIA Appendix J, 8853/98 until the end of 2022"
    from    = "2023-01-01"
    across  = "harness in harnesses"
    demand  = "harness.standard == 'FIA 8853-2016'"
  }

  clause "18.8" {
    title   = "Withdrawn harness standard with its national exception"
    concern = "safety"
    text_at = "FIA Appendix J, 8853/98 until the end of 2022; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4"
    across  = ["harness in harnesses", "strap in harness.straps"]
    demand  = <<-FORMULA
    harness.standard == 'FIA 8853-2016'
    or harness.standard == 'FIA 8853/98' and (on <= date('2022-12-31')
    or car.class == 'national' and on <= end_of_year(strap.not_after))
FORMULA
  }

  clause "18.9" {
    title   = "Helmet standards until the end of 2023"
    concern = "safety"
    text_at = "FIA technical list 25, 11 December 2024"
    until   = "2023-12-31"
    across  = "crew_member in crew_members"
    demand  = <<-FORMULA
    crew_member.helmet.standard in ['Snell SA2010', 'Snell SA2015', 'FIA 8860-2010',
    'FIA 8859-2015', 'FIA 8859-2024', 'FIA 8860-2018', 'FIA 8860-2018-ABP']
FORMULA
  }

  clause "18.9" {
    title   = "Helmet standards until the end of 2028"
    concern = "safety"
    text_at = "FIA technical list 25, 11 December 2024"
    from    = "2024-01-01"
    until   = "2028-12-31"
    across  = "crew_member in crew_members"
    demand  = <<-FORMULA
    crew_member.helmet.standard in ['FIA 8860-2010',
    'FIA 8859-2015', 'FIA 8859-2024', 'FIA 8860-2018', 'FIA 8860-2018-ABP']
FORMULA
  }

  clause "18.9" {
    title   = "Helmet standards that have no end"
    concern = "safety"
    text_at = "FIA technical list 25, 11 December 2024"
    from    = "2029-01-01"
    across  = "crew_member in crew_members"
    demand  = <<-FORMULA
    crew_member.helmet.standard in ['FIA 8859-2015', 'FIA 8859-2024', 'FIA 8860-2018', 'FIA 8860-2018-ABP']
FORMULA
  }

  clause "18.10" {
    title   = "National helmet standards until the end of 2023"
    concern = "safety"
    text_at = "MSUK helmet standards, 2024"
    until   = "2023-12-31"
    across  = "crew_member in crew_members"
    demand  = "crew_member.helmet.standard in ['Snell SA2010', 'Snell SA2015', 'Snell SA2020']"
  }

  clause "18.10" {
    title   = "National helmet standards until the end of 2026"
    concern = "safety"
    text_at = "MSUK helmet standards, 2024"
    from    = "2024-01-01"
    until   = "2026-12-31"
    across  = "crew_member in crew_members"
    demand  = "crew_member.helmet.standard in ['Snell SA2015', 'Snell SA2020']"
  }

  clause "18.10" {
    title   = "National helmet standards from 2027"
    concern = "safety"
    text_at = "MSUK helmet standards, 2024"
    from    = "2027-01-01"
    across  = "crew_member in crew_members"
    demand  = "crew_member.helmet.standard in ['Snell SA2020']"
  }

  clause "18.11" {
    title   = "British helmet standard withdrawn"
    concern = "safety"
    text_at = "FIA, BS 6658 out with the end of 2013"
    from    = "2014-01-01"
    across  = "crew_member in crew_members"
    demand  = "crew_member.helmet.standard != 'BS 6658-85 type A/FR'"
  }

  clause "18.12" {
    title   = "British helmet standard withdrawn, national exception"
    concern = "safety"
    text_at = "France, BS 6658 out on 1 January 2016"
    from    = "2016-01-01"
    across  = "crew_member in crew_members"
    demand  = "crew_member.helmet.standard != 'BS 6658-85 type A/FR'"
  }

  clause "18.13" {
    title   = "Frontal head restraint: from month to month"
    concern = "safety"
    text_at = "SFI 38.1, ARCA table, in force from 1 January 2012"
    from    = "2012-01-01"
    across  = "crew_member in crew_members"
    demand  = "on <= end_of_month(years_after(crew_member.head_restraint.made, 5))"
  }

  clause "18.14" {
    title   = "Seat: five years from its date"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-16, 2014: five years from the date of manufacture on the label"
    across  = "seat in seats"
    where   = "seat.standard == 'FIA 8855-1999'"
    demand  = "on <= years_after(seat.made, 5)"
  }

  clause "18.15" {
    title   = "Seat label of 2013: eight years, with the waiver"
    concern = "safety"
    text_at = "MSUK notice, March 2021"
    across  = "seat in seats"
    where   = "seat.standard == 'FIA 8855-1999' and year_of(seat.made) == 2013"
    demand  = "on <= earliest(end_of_month(years_after(end_of_label(seat.made), 8)), date('2022-12-31'))"
  }

  clause "18.16" {
    title   = "Fuel bladder: re-certified at five years, seven at most"
    concern = "safety"
    text_at = "North American maker of FT3 bladders"
    applies = "fuel_cell.standard in ['FIA FT3-1999', 'FIA FT3.5-1999', 'FIA FT5-1999']"
    demand  = <<-FORMULA
    on <= years_after(fuel_cell.made, 5)
    or recorded(fuel_cell.recertified) and fuel_cell.recertified <= years_after(fuel_cell.made, 5)
    and on <= years_after(fuel_cell.made, 7)
FORMULA
  }

  clause "18.17" {
    title   = "Fuel bladder: the end printed on it, extended once by two years at most"
    concern = "safety"
    text_at = "FIA FT3-1999, marking and re-certification"
    applies = "fuel_cell.standard in ['FIA FT3-1999', 'FIA FT3.5-1999', 'FIA FT5-1999']"
    demand  = <<-FORMULA
    on <= end_of_label(fuel_cell.not_after)
    or recorded(fuel_cell.recertified_until)
    and fuel_cell.recertified_until <= years_after(fuel_cell.recertified, 2)
    and on <= end_of_label(fuel_cell.recertified_until)
FORMULA
  }

  clause "18.18" {
    title   = "Fuel cells: the bladder is FT3 or stronger"
    concern = "safety"
    text_at = "NASA CCR 15.4, 2009: FT3 on all cells from 1 January 2012"
    from    = "2012-01-01"
    demand  = "fuel_cell.standard in ['FIA FT3-1999', 'FIA FT3.5-1999', 'FIA FT5-1999']"
  }

  clause "18.19" {
    title   = "Fuel cells: an FT bladder is mandatory"
    concern = "safety"
    text_at = "Romanian note on fuel cells, from 1 January 2018"
    from    = "2018-01-01"
    demand  = "fuel_cell.standard in ['FIA FT3-1999', 'FIA FT3.5-1999', 'FIA FT5-1999']"
  }

  clause "18.20" {
    title   = "Plumbed-in system"
    concern = "safety"
    text_at = "MSUK, plumbed-in systems from 2019 and 2022"
    until   = "2018-12-31"
    demand  = "fitted(fire_system)"
  }

  clause "18.20" {
    title   = "Plumbed-in system, homologated in cars built from 2019"
    concern = "safety"
    text_at = "MSUK, plumbed-in systems from 2019 and 2022"
    from    = "2019-01-01"
    until   = "2021-12-31"
    as_at   = "cage.built"
    demand  = "fire_system.standard in ['FIA 1999', 'FIA 8865-2015']"
  }

  clause "18.20" {
    title   = "Plumbed-in system, homologated in all cars"
    concern = "safety"
    text_at = "MSUK, plumbed-in systems from 2019 and 2022"
    from    = "2022-01-01"
    demand  = "fire_system.standard in ['FIA 1999', 'FIA 8865-2015']"
  }

  # Two figures are quoted for the time before 2022, 2.25 and 1.75 litres; the smaller one is taken.
  clause "18.21" {
    title   = "Hand-held foam extinguisher before 2022"
    concern = "safety"
    text_at = "MSA, hand-held AFFF before 2022"
    until   = "2021-12-31"
    across  = "extinguisher in extinguishers"
    where   = "extinguisher.agent == 'AFFF'"
    demand  = "extinguisher.agent_volume >= 1.75*litre"
  }

  clause "18.21" {
    title   = "Hand-held foam extinguisher"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
    from    = "2022-01-01"
    across  = "extinguisher in extinguishers"
    where   = "extinguisher.agent == 'AFFF'"
    demand  = "extinguisher.agent_volume >= 2.4*litre"
  }

  clause "18.22" {
    title   = "Plumbed-in system serviced every two years"
    concern = "safety"
    text_at = "FIA systems, North American guide"
    applies = "fire_system.standard in ['FIA 1999', 'FIA 8865-2015']"
    demand  = "on <= months_after(fire_system.serviced, 24)"
  }

  clause "18.23" {
    title   = "Bottle of a plumbed-in system, ten years"
    concern = "advice"
    text_at = "FIA systems, North American guide"
    applies = "fire_system.standard in ['FIA 1999', 'FIA 8865-2015']"
    across  = "bottle in fire_system.fire_bottles"
    demand  = "on <= years_after(bottle.made, 10)"
  }

  # Makers count weeks from Monday (ISO 8601) or from the first Sunday of the year
  # (49 CFR 574.5, from memory).
  # The two begin one day or six days apart, by the year: one in 2023, six in 2008. No case is about
  # a day on which it matters which of them is meant.
  clause "18.24" {
    title   = "Code of a tyre: the week in which it was made"
    concern = "safety"
    text_at = "DOT date code since 2000, 49 CFR 574.5"
    across  = "wheel in wheels"
    demand  = "week_year(wheel.tyre.date_code) <= on"
  }

  clause "18.25" {
    title   = "Age of a tyre, the week to its end"
    concern = "advice"
    text_at = "Common practice: six years, advice for the road"
    across  = "wheel in wheels"
    demand  = "on <= years_after(end_of_label(week_year(wheel.tyre.date_code)), 6)"
  }

  clause "18.26" {
    title   = "Age of a tyre, from the day"
    concern = "advice"
    text_at = "Common practice: six years, advice for the road"
    across  = "wheel in wheels"
    demand  = "on <= years_after(week_year(wheel.tyre.date_code), 6)"
  }

  clause "18.27" {
    title   = "Straps of one harness: the earliest label governs"
    concern = "safety"
    text_at = "Common practice; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.7"
    across  = "harness in harnesses"
    demand  = "on <= end_of_year(earliest(map(harness.straps, .not_after)))"
  }

  clause "18.28" {
    title   = "Straps of one harness: parts of sets are not mixed"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.7"
    across  = "harness in harnesses"
    demand  = <<-FORMULA
    all(harness.straps, .standard == harness.standard
    and .homologation_number == harness.homologation_number)
FORMULA
  }

  clause "18.29" {
    title   = "Straps of one harness: of one year"
    concern = "safety"
    text_at = "Common practice: a set is sewn at one time"
    across  = "harness in harnesses"
    demand  = "let made = map(harness.straps, .made); year_of(earliest(made)) == year_of(latest(made))"
  }

  clause "18.30" {
    title   = "One year from the day"
    concern = "advice"
    text_at = "Common practice of calendars: where the month has no such day, its last"
    across  = "extinguisher in extinguishers"
    demand  = "on <= years_after(extinguisher.serviced, 1)"
  }

  clause "18.31" {
    title   = "Six months from the day"
    concern = "advice"
    text_at = "Common practice of calendars: where the month has no such day, its last"
    across  = "extinguisher in extinguishers"
    demand  = "on <= months_after(extinguisher.serviced, 6)"
  }
}

worked_case "month label without its date" {
  clause = "10.1"
  on     = "2018-01-01"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "month and year"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "FIA 8855-1999, practice of the label"
  status = "computed"
}

worked_case "month label of a February of 28 days" {
  clause = "10.1"
  on     = "2016-02-29"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "month and year"
      made       = "2011-02"
    }
  }
  answer = "meets"
  reason = "To the end of February 2016, a day that February 2011 did not have."
  source = "FIA 8855-1999, practice of the label"
  status = "computed"
}

worked_case "month label of a February of 28 days, the day after" {
  clause = "10.1"
  on     = "2016-03-01"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "month and year"
      made       = "2011-02"
    }
  }
  answer = "gap"
  reason = "To the end of February 2016."
  source = "FIA 8855-1999, practice of the label"
  status = "computed"
}

worked_case "month label of December" {
  clause = "10.1"
  on     = "2018-12-31"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "month and year"
      made       = "2013-12"
    }
  }
  answer = "meets"
  reason = "To the end of December 2018."
  source = "FIA 8855-1999, practice of the label"
  status = "computed"
}

worked_case "month label of December, New Year" {
  clause = "10.1"
  on     = "2019-01-01"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "month and year"
      made       = "2013-12"
    }
  }
  answer = "gap"
  reason = "To the end of December 2018."
  source = "FIA 8855-1999, practice of the label"
  status = "computed"
}

worked_case "label of a kind that is not written, run out in any case" {
  clause = "10.1"
  on     = "2019-01-01"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2013"
    }
  }
  answer = "not recorded"
  reason = "Whether the clause is about the seat hangs on the kind of its label."
  source = "FIA 8855-1999, practice of the label"
  status = "computed"
}

worked_case "year label without its date" {
  clause = "10.2"
  on     = "2018-06-01"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "year only"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "FIA 8855-1999, practice of the label"
  status = "computed"
}

worked_case "year label in the middle of its last year" {
  clause = "10.2"
  on     = "2018-06-01"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "year only"
      made       = "2013"
    }
  }
  answer = "meets"
  reason = "To the end of the year, whatever month it was made in."
  source = "FIA 8855-1999, practice of the label"
  status = "computed"
}

worked_case "not valid after a month, on its last day" {
  clause = "10.3"
  on     = "2019-06-30"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "not valid after"
      not_after  = "2019-06"
    }
  }
  answer = "meets"
  reason = "The label names a month; it counts to its end."
  source = "FIA 8855-1999, practice of the label, from about 2014"
  status = "computed"
}

worked_case "not valid after a month, the day after" {
  clause = "10.3"
  on     = "2019-07-01"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "not valid after"
      not_after  = "2019-06"
    }
  }
  answer = "gap"
  reason = "The label names a month; it counts to its end."
  source = "FIA 8855-1999, practice of the label, from about 2014"
  status = "computed"
}

worked_case "not valid after a day, on its last day" {
  clause = "10.3"
  on     = "2019-06-14"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "not valid after"
      not_after  = "2019-06-14"
    }
  }
  answer = "meets"
  reason = "The label names a day; it counts to its end."
  source = "FIA 8855-1999, practice of the label, from about 2014"
  status = "computed"
}

worked_case "not valid after a day, the day after" {
  clause = "10.3"
  on     = "2019-06-15"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "not valid after"
      not_after  = "2019-06-14"
    }
  }
  answer = "gap"
  reason = "The label names a day; it counts to its end."
  source = "FIA 8855-1999, practice of the label, from about 2014"
  status = "computed"
}

worked_case "not valid after a year that cannot be read" {
  clause = "10.3"
  on     = "2019-06-01"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "not valid after"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "FIA 8855-1999, practice of the label, from about 2014"
  status = "computed"
}

worked_case "extension of a label that cannot be read" {
  clause = "10.4"
  on     = "2021-06-01"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "not valid after"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "MSUK seat validity notice"
  status = "computed"
}

worked_case "extension of a seat whose standard is not written" {
  clause = "10.4"
  on     = "2020-06-01"
  as_built {
    seat "driver" {
      label_kind = "not valid after"
      not_after  = "2019"
    }
  }
  answer = "not recorded"
  reason = "8855 would have two years more, 8862 none."
  source = "MSUK seat validity notice"
  status = "computed"
}

worked_case "label 2019 within itself, whatever the standard" {
  clause = "10.4"
  on     = "2019-12-31"
  as_built {
    seat "driver" {
      label_kind = "not valid after"
      not_after  = "2019"
    }
  }
  answer = "meets"
  reason = "With or without the extension."
  source = "MSUK seat validity notice"
  status = "computed"
}

worked_case "8855-2021 after the extension" {
  clause = "10.4"
  on     = "2027-01-01"
  as_built {
    seat "driver" {
      standard   = "8855-2021"
      label_kind = "not valid after"
      not_after  = "2024"
    }
  }
  answer = "gap"
  reason = "2024 and two years: to 31 December 2026."
  source = "MSUK seat validity notice"
  status = "computed"
}

worked_case "waiver for a label that cannot be read" {
  clause = "10.5"
  on     = "2023-01-01"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "not valid after"
    }
  }
  answer = "not recorded"
  reason = "It may be one of 2019, whose waiver has ended."
  source = "MSUK notice, March 2021"
  status = "computed"
}

worked_case "waiver while it lasts, label that cannot be read" {
  clause = "10.5"
  on     = "2022-12-31"
  as_built {
    seat "driver" {
      standard   = "FIA 8855-1999"
      label_kind = "not valid after"
    }
  }
  answer = "meets"
  reason = "To 31 December 2022 if it is of 2019, and else the clause is not about it."
  source = "MSUK notice, March 2021"
  status = "computed"
}

worked_case "advanced seat without a date" {
  clause = "10.6"
  on     = "2023-12-31"
  as_built {
    seat "driver" {
      standard = "8862-2009"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "FIA Appendix J, Art. 253-16, 2014"
  status = "computed"
}

worked_case "advanced seat of December 2013, on the last day" {
  clause = "10.6"
  on     = "2023-12-31"
  as_built {
    seat "driver" {
      standard = "8862-2009"
      made     = "2013-12"
    }
  }
  answer = "meets"
  reason = "Ten years from the year: to 31 December 2023."
  source = "FIA Appendix J, Art. 253-16, 2014"
  status = "computed"
}

worked_case "advanced seat of December 2013, the day after" {
  clause = "10.6"
  on     = "2024-01-01"
  as_built {
    seat "driver" {
      standard = "8862-2009"
      made     = "2013-12"
    }
  }
  answer = "gap"
  reason = "Ten years from the year, not from the month."
  source = "FIA Appendix J, Art. 253-16, 2014"
  status = "computed"
}

worked_case "8853/98 without a date" {
  clause = "10.7"
  on     = "2020-12-31"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        label_kind = "month and year"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "FIA 8853/98, rule of validity"
  status = "computed"
}

worked_case "8853/98 made in December 2015" {
  clause = "10.7"
  on     = "2020-12-31"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        made = "2015-12"
      }
    }
  }
  answer = "meets"
  reason = "Counted from 1 January 2016: to 31 December 2020."
  source = "FIA 8853/98, rule of validity"
  status = "computed"
}

worked_case "8853/98 made on the last day of 2015, New Year" {
  clause = "10.7"
  on     = "2021-01-01"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        made = "2015-12-31"
      }
    }
  }
  answer = "gap"
  reason = "Counted from 1 January 2016: to 31 December 2020."
  source = "FIA 8853/98, rule of validity"
  status = "computed"
}

worked_case "8853/98 made on the first day of 2016, New Year" {
  clause = "10.7"
  on     = "2021-01-01"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        made = "2016-01-01"
      }
    }
  }
  answer = "meets"
  reason = "A day younger and a year longer: to 31 December 2021."
  source = "FIA 8853/98, rule of validity"
  status = "computed"
}

worked_case "harness of a standard that is not written, 2023" {
  clause = "10.8"
  on     = "2023-01-01"
  as_built {
    harness "driver" {
      buckle = "rotary"
    }
  }
  answer = "not recorded"
  reason = "It may be 8853/98, which is withdrawn."
  source = "FIA Appendix J, 8853/98 until the end of 2022"
  status = "computed"
}

worked_case "8854/98 with label 2026 in 2027" {
  clause = "10.9"
  on     = "2027-01-01"
  as_built {
    harness "driver" {
      standard = "8854/98"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2026"
      }
    }
  }
  answer = "gap"
  reason = "To 31 December of the label's year."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.5"
  status = "computed"
}

worked_case "8853/98 with a label that cannot be read" {
  clause = "10.9"
  on     = "2026-06-01"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        label_kind = "not valid after"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.5"
  status = "computed"
}

worked_case "harness whose kind of label is not written" {
  clause = "10.11"
  on     = "2024-01-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        not_after = "2022"
      }
    }
  }
  answer = "not recorded"
  reason = "Whether the label is there has to be looked at."
  source = "FIA harnesses in New Zealand, below championship level"
  status = "computed"
}

worked_case "label without any date" {
  clause = "10.11"
  on     = "2024-01-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "no date"
        not_after  = "none"
      }
    }
  }
  answer = "gap"
  reason = "A harness without a date on its label is invalid."
  source = "FIA harnesses in New Zealand, below championship level"
  status = "computed"
}

worked_case "label that is there and cannot be dated" {
  clause = "10.11"
  on     = "2024-01-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "FIA harnesses in New Zealand, below championship level"
  status = "computed"
}

worked_case "webbing without a date" {
  clause = "10.12"
  on     = "2012-03-15"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        label_kind = "month and year"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
  status = "computed"
}

worked_case "webbing made in a month, after that month" {
  clause = "10.12"
  on     = "2012-04-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010-03"
      }
    }
  }
  answer = "gap"
  reason = "Two years from any day of March 2010 are over."
  source = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
  status = "computed"
}

worked_case "webbing made in a year, within the second year after" {
  clause = "10.12"
  on     = "2012-06-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010"
      }
    }
  }
  answer = "marginal"
  reason = "The day in 2010 decides, and only the year is known."
  source = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
  status = "computed"
}

worked_case "webbing made in a year, before it can run out" {
  clause = "10.12"
  on     = "2012-01-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010"
      }
    }
  }
  answer = "meets"
  reason = "Even from 1 January 2010 the two years last to 1 January 2012."
  source = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
  status = "computed"
}

worked_case "webbing made in a year, after it must have run out" {
  clause = "10.12"
  on     = "2013-01-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010"
      }
    }
  }
  answer = "gap"
  reason = "Even from 31 December 2010 the two years are over."
  source = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
  status = "computed"
}

worked_case "SFI without a date, second year" {
  clause = "10.13"
  on     = "2003-12-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        label_kind = "month and year"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "SCCA memo RM04-01, 13 November 2003"
  status = "computed"
}

worked_case "SFI without a date, fifth year" {
  clause = "10.14"
  on     = "2019-12-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        label_kind = "month and year"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "SCCA GCR, November 2017, 9.3.18.E"
  status = "computed"
}

worked_case "SFI of December 2014 in 2020" {
  clause = "10.14"
  on     = "2020-01-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2014-12"
      }
    }
  }
  answer = "gap"
  reason = "31 December of the fifth year after 2014, whatever the month."
  source = "SCCA GCR, November 2017, 9.3.18.E"
  status = "computed"
}

worked_case "student car, label that cannot be read" {
  clause = "10.15"
  on     = "2026-06-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        label_kind = "not valid after"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "Formula SAE Rules 2026, V1.0, T.2.2.3"
  status = "computed"
}

worked_case "FT3 cell without a date" {
  clause = "11.1"
  on     = "2025-06-10"
  as_built {
    fuel_cell {
      standard    = "FT3"
      label_kind  = "month and year"
      recertified = "none"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "FT3 cell of June 2020 at the end of May" {
  clause = "11.1"
  on     = "2025-05-31"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06"
      recertified = "none"
    }
  }
  answer = "meets"
  reason = "Even from 1 June 2020 five years are not over."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "FT3 cell of June 2020 in June" {
  clause = "11.1"
  on     = "2025-06-15"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06"
      recertified = "none"
    }
  }
  answer = "marginal"
  reason = "The day in June decides, and only the month is known."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "FT3 cell of June 2020 in July" {
  clause = "11.1"
  on     = "2025-07-01"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06"
      recertified = "none"
    }
  }
  answer = "gap"
  reason = "Even from 30 June 2020 five years are over."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "SFI 28.1 cell without a date" {
  clause = "11.2"
  on     = "2025-06-10"
  as_built {
    fuel_cell {
      standard    = "SFI 28.1"
      label_kind  = "month and year"
      recertified = "none"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "SFI 28.1, technical committee, June 2022"
  status = "computed"
}

worked_case "SFI 28.1 cell of June 2020 at the end of May" {
  clause = "11.2"
  on     = "2025-05-31"
  as_built {
    fuel_cell {
      standard    = "SFI 28.1"
      made        = "2020-06"
      recertified = "none"
    }
  }
  answer = "meets"
  reason = "Even from 1 June 2020 five years are not over."
  source = "SFI 28.1, technical committee, June 2022"
  status = "computed"
}

worked_case "SFI 28.1 cell of June 2020 in June" {
  clause = "11.2"
  on     = "2025-06-15"
  as_built {
    fuel_cell {
      standard    = "SFI 28.1"
      made        = "2020-06"
      recertified = "none"
    }
  }
  answer = "marginal"
  reason = "The day in June decides, and only the month is known."
  source = "SFI 28.1, technical committee, June 2022"
  status = "computed"
}

worked_case "SFI 28.1 cell of June 2020 in July" {
  clause = "11.2"
  on     = "2025-07-01"
  as_built {
    fuel_cell {
      standard    = "SFI 28.1"
      made        = "2020-06"
      recertified = "none"
    }
  }
  answer = "gap"
  reason = "Even from 30 June 2020 five years are over."
  source = "SFI 28.1, technical committee, June 2022"
  status = "computed"
}

worked_case "SFI 28.3 cell without a date" {
  clause = "11.3"
  on     = "2025-06-10"
  as_built {
    fuel_cell {
      standard   = "SFI 28.3"
      label_kind = "month and year"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "SFI 28.3, technical committee, June 2022"
  status = "computed"
}

worked_case "SFI 28.3 cell of June 2020 at the end of May" {
  clause = "11.3"
  on     = "2025-05-31"
  as_built {
    fuel_cell {
      standard = "SFI 28.3"
      made     = "2020-06"
    }
  }
  answer = "meets"
  reason = "Even from 1 June 2020 five years are not over."
  source = "SFI 28.3, technical committee, June 2022"
  status = "computed"
}

worked_case "SFI 28.3 cell of June 2020 in June" {
  clause = "11.3"
  on     = "2025-06-15"
  as_built {
    fuel_cell {
      standard = "SFI 28.3"
      made     = "2020-06"
    }
  }
  answer = "marginal"
  reason = "The day in June decides, and only the month is known."
  source = "SFI 28.3, technical committee, June 2022"
  status = "computed"
}

worked_case "SFI 28.3 cell of June 2020 in July" {
  clause = "11.3"
  on     = "2025-07-01"
  as_built {
    fuel_cell {
      standard = "SFI 28.3"
      made     = "2020-06"
    }
  }
  answer = "gap"
  reason = "Even from 30 June 2020 five years are over."
  source = "SFI 28.3, technical committee, June 2022"
  status = "computed"
}

worked_case "any cell without a date" {
  clause = "11.4"
  on     = "2025-06-10"
  as_built {
    fuel_cell {
      standard   = "FT3"
      label_kind = "month and year"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "NASA CCR 15.4, 2009"
  status = "computed"
}

worked_case "any cell of June 2020 at the end of May" {
  clause = "11.4"
  on     = "2025-05-31"
  as_built {
    fuel_cell {
      standard = "FT3"
      made     = "2020-06"
    }
  }
  answer = "meets"
  reason = "Even from 1 June 2020 five years are not over."
  source = "NASA CCR 15.4, 2009"
  status = "computed"
}

worked_case "any cell of June 2020 in June" {
  clause = "11.4"
  on     = "2025-06-15"
  as_built {
    fuel_cell {
      standard = "FT3"
      made     = "2020-06"
    }
  }
  answer = "marginal"
  reason = "The day in June decides, and only the month is known."
  source = "NASA CCR 15.4, 2009"
  status = "computed"
}

worked_case "any cell of June 2020 in July" {
  clause = "11.4"
  on     = "2025-07-01"
  as_built {
    fuel_cell {
      standard = "FT3"
      made     = "2020-06"
    }
  }
  answer = "gap"
  reason = "Even from 30 June 2020 five years are over."
  source = "NASA CCR 15.4, 2009"
  status = "computed"
}

worked_case "FT3 cell re-certified in a month, within that month" {
  clause = "11.1"
  on     = "2026-09-15"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "2024-09"
    }
  }
  answer = "marginal"
  reason = "Two years from some day of September 2024."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "FT3 cell re-certified in a month, before that month" {
  clause = "11.1"
  on     = "2026-08-31"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "2024-09"
    }
  }
  answer = "meets"
  reason = "Even from 1 September 2024 two years are not over."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "FT3 cell re-certified on 29 February" {
  clause = "11.1"
  on     = "2026-02-28"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2019-06-10"
      recertified = "2024-02-29"
    }
  }
  answer = "meets"
  reason = "2026 has no such day: to 28 February."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "FT3 cell re-certified on 29 February, the day after" {
  clause = "11.1"
  on     = "2026-03-01"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2019-06-10"
      recertified = "2024-02-29"
    }
  }
  answer = "gap"
  reason = "2026 has no such day: to 28 February."
  source = "FIA FT3-1999, FT3.5-1999 and FT5-1999"
  status = "computed"
}

worked_case "extinguisher whose check is not written" {
  clause = "11.5"
  on     = "2027-03-14"
  as_built {
    extinguisher "1" {
      agent = "AFFF"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "computed"
}

worked_case "extinguisher checked several times" {
  clause = "11.5"
  on     = "2027-03-14"
  as_built {
    extinguisher "1" {
      serviced = ["2021-04-02", "2023-03-20", "2025-03-14"]
    }
  }
  answer = "meets"
  reason = "The last check counts."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "computed"
}

worked_case "extinguisher checked several times, overdue" {
  clause = "11.5"
  on     = "2027-03-15"
  as_built {
    extinguisher "1" {
      serviced = ["2021-04-02", "2023-03-20", "2025-03-14"]
    }
  }
  answer = "gap"
  reason = "The last check counts, and 24 months after it are over."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "computed"
}

worked_case "check known to the month, after it" {
  clause = "11.5"
  on     = "2027-04-01"
  as_built {
    extinguisher "1" {
      serviced = "2025-03"
    }
  }
  answer = "gap"
  reason = "Even from 31 March 2025 24 months are over."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "computed"
}

worked_case "system serviced 24 months and a day ago" {
  clause = "11.6"
  on     = "2026-05-02"
  as_built {
    fire_system {
      serviced = "2024-05-01"
    }
  }
  answer = "gap"
  reason = "24 months from 1 May 2024: to 1 May 2026."
  source = "MSUK, plumbed-in systems from 2018"
  status = "computed"
}

worked_case "system whose service is not written" {
  clause = "11.6"
  on     = "2026-05-01"
  as_built {
    fire_system {
      standard = "TL52"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "MSUK, plumbed-in systems from 2018"
  status = "computed"
}

worked_case "system serviced in a month, within that month" {
  clause = "11.6"
  on     = "2026-05-15"
  as_built {
    fire_system {
      serviced = "2024-05"
    }
  }
  answer = "marginal"
  reason = "24 months from some day of May 2024."
  source = "MSUK, plumbed-in systems from 2018"
  status = "computed"
}

worked_case "bottle without a date" {
  clause = "11.7"
  on     = "2022-06-01"
  as_built {
    fire_system {
      standard = "TL16"
      club "Published figures" {
        listed_until = "2020"
      }
      fire_bottle "1" {
        serial = "B-1"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "FIA technical list 16, as a guide for classic cars reads it"
  status = "computed"
}

worked_case "bottle made in a year in which the list ends" {
  clause = "11.7"
  on     = "2022-06-01"
  as_built {
    fire_system {
      standard = "TL16"
      club "Published figures" {
        listed_until = "2020-06-30"
      }
      fire_bottle "1" {
        made = "2020"
      }
    }
  }
  answer = "marginal"
  reason = "Made in 2020, and the list ends in the middle of it."
  source = "FIA technical list 16, as a guide for classic cars reads it"
  status = "computed"
}

worked_case "bottle made on the last listed day" {
  clause = "11.7"
  on     = "2035-06-01"
  as_built {
    fire_system {
      standard = "TL16"
      club "Published figures" {
        listed_until = "2020"
      }
      fire_bottle "1" {
        made = "2020-12-31"
      }
    }
  }
  answer = "meets"
  reason = "The list ends manufacture, not use."
  source = "FIA technical list 16, as a guide for classic cars reads it"
  status = "computed"
}

worked_case "bottle made on the day after" {
  clause = "11.7"
  on     = "2021-06-01"
  as_built {
    fire_system {
      standard = "TL16"
      club "Published figures" {
        listed_until = "2020"
      }
      fire_bottle "1" {
        made = "2021-01-01"
      }
    }
  }
  answer = "gap"
  reason = "Made after the list had ended."
  source = "FIA technical list 16, as a guide for classic cars reads it"
  status = "computed"
}

worked_case "SFI bottle on the last day of its service" {
  clause = "11.8"
  on     = "2025-05-01"
  as_built {
    fire_system {
      standard = "SFI 17.1"
      fire_bottle "1" {
        made     = "2023-05-01"
        serviced = "2023-05-01"
      }
    }
  }
  answer = "meets"
  reason = "Two years of service to the day."
  source = "SFI 17.1, North American guide"
  status = "computed"
}

worked_case "SFI bottle on the day after its service" {
  clause = "11.8"
  on     = "2025-05-02"
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
  reason = "Two years of service to the day."
  source = "SFI 17.1, North American guide"
  status = "computed"
}

worked_case "SFI bottle on its sixth birthday" {
  clause = "11.8"
  on     = "2026-05-20"
  as_built {
    fire_system {
      standard = "SFI 17.1"
      fire_bottle "1" {
        made     = "2020-05-20"
        serviced = "2025-05-01"
      }
    }
  }
  answer = "meets"
  reason = "Six years to the day, in service."
  source = "SFI 17.1, North American guide"
  status = "computed"
}

worked_case "SFI bottle a day over six years" {
  clause = "11.8"
  on     = "2026-05-21"
  as_built {
    fire_system {
      standard = "SFI 17.1"
      fire_bottle "1" {
        made     = "2020-05-20"
        serviced = "2025-05-01"
      }
    }
  }
  answer = "gap"
  reason = "Six years to the day, however well serviced."
  source = "SFI 17.1, North American guide"
  status = "computed"
}

worked_case "SFI bottle whose service is not written" {
  clause = "11.8"
  on     = "2025-05-01"
  as_built {
    fire_system {
      standard = "SFI 17.1"
      fire_bottle "1" {
        made = "2023-05-01"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "SFI 17.1, North American guide"
  status = "computed"
}

worked_case "SFI bottle too old, service not written" {
  clause = "11.8"
  on     = "2026-05-21"
  as_built {
    fire_system {
      standard = "SFI 17.1"
      fire_bottle "1" {
        made = "2020-05-20"
      }
    }
  }
  answer = "gap"
  reason = "Over six years whatever its service."
  source = "SFI 17.1, North American guide"
  status = "computed"
}

worked_case "SFI bottle made in a month, within that month" {
  clause = "11.8"
  on     = "2026-05-15"
  as_built {
    fire_system {
      standard = "SFI 17.1"
      fire_bottle "1" {
        made     = "2020-05"
        serviced = "2025-05-01"
      }
    }
  }
  answer = "marginal"
  reason = "Six years from some day of May 2020."
  source = "SFI 17.1, North American guide"
  status = "computed"
}

worked_case "SA2010 at the end of 2023" {
  clause = "11.9"
  on     = "2023-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2010"
      }
    }
  }
  answer = "meets"
  reason = "To 31 December 2023."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "SA2010 in 2024" {
  clause = "11.9"
  on     = "2024-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2010"
      }
    }
  }
  answer = "gap"
  reason = "Withdrawn for all with 2023."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "helmet of a standard that is not written" {
  clause = "11.9"
  on     = "2024-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        serial = "H-1"
      }
    }
  }
  answer = "not recorded"
  reason = "Some standards have ended, others not."
  source = "FIA technical list 25, 11 December 2024"
  status = "computed"
}

worked_case "SA2010 at the end of 2023, national" {
  clause = "11.10"
  on     = "2023-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2010"
      }
    }
  }
  answer = "meets"
  reason = "Out with the end of 2023."
  source = "MSUK helmet standards, 2024"
  status = "quoted by others"
}

worked_case "helmet of a standard that is not written, national" {
  clause = "11.10"
  on     = "2024-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        serial = "H-1"
      }
    }
  }
  answer = "not recorded"
  reason = "Some standards have ended, others not."
  source = "MSUK helmet standards, 2024"
  status = "computed"
}

worked_case "helmet of a standard that is not written, 2021" {
  clause = "11.11"
  on     = "2021-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        serial = "H-1"
      }
    }
  }
  answer = "not recorded"
  reason = "It may be 8860-2004, which has ended."
  source = "FIA 8860-2004"
  status = "computed"
}

worked_case "helmet of a standard that is not written, 2020" {
  clause = "11.11"
  on     = "2020-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        serial = "H-1"
      }
    }
  }
  answer = "meets"
  reason = "If it is 8860-2004 it may still be used, and else the clause is not about it."
  source = "FIA 8860-2004"
  status = "computed"
}

worked_case "38.1 without a date" {
  clause = "11.12"
  on     = "2016-06-30"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "SFI 38.1"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "SFI 38.1, ARCA table; FIA 8858-2010"
  status = "computed"
}

worked_case "38.1 of which only the year is known" {
  clause = "11.12"
  on     = "2016-03-01"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "SFI 38.1"
        made     = "2011"
      }
    }
  }
  answer = "marginal"
  reason = "The month in 2011 decides."
  source = "SFI 38.1, ARCA table; FIA 8858-2010"
  status = "computed"
}

worked_case "8858-2010 without a date" {
  clause = "11.12"
  on     = "2040-01-01"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "8858-2010"
      }
    }
  }
  answer = "meets"
  reason = "No end, so nothing is asked of its date."
  source = "SFI 38.1, ARCA table; FIA 8858-2010"
  status = "computed"
}

worked_case "suit whose date is not written" {
  clause = "11.13"
  on     = "2005-06-01"
  as_built {
    crew_member "driver" {
      garment "overalls" {
        standard = "SFI 3.2A/15"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "IHRA, SFI 3.2A/10 and above"
  status = "computed"
}

worked_case "suit of December 2001 in 2006" {
  clause = "11.13"
  on     = "2006-01-01"
  as_built {
    crew_member "driver" {
      garment "overalls" {
        standard = "SFI 3.2A/15"
        made     = "2001-12"
      }
    }
  }
  answer = "gap"
  reason = "The year of manufacture is year one, whatever the month."
  source = "IHRA, SFI 3.2A/10 and above"
  status = "computed"
}

worked_case "net on its second birthday" {
  clause = "11.14"
  on     = "2026-05-20"
  as_built {
    window_net "driver window" {
      standard = "SFI 27.1"
      made     = "2024-05-20"
    }
  }
  answer = "meets"
  reason = "Two years."
  source = "SFI 27.1, North American rulebooks"
  status = "computed"
}

worked_case "net a day over two years" {
  clause = "11.14"
  on     = "2026-05-21"
  as_built {
    window_net "driver window" {
      standard = "SFI 27.1"
      made     = "2024-05-20"
    }
  }
  answer = "gap"
  reason = "Two years."
  source = "SFI 27.1, North American rulebooks"
  status = "computed"
}

worked_case "net without a date" {
  clause = "11.14"
  on     = "2026-05-20"
  as_built {
    window_net "driver window" {
      standard = "SFI 27.1"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "SFI 27.1, North American rulebooks"
  status = "computed"
}

worked_case "net of which the month is known, within it" {
  clause = "11.14"
  on     = "2026-05-20"
  as_built {
    window_net "driver window" {
      standard = "SFI 27.1"
      made     = "2024-05"
    }
  }
  answer = "marginal"
  reason = "Two years from some day of May 2024."
  source = "SFI 27.1, North American rulebooks"
  status = "computed"
}

worked_case "tyre whose code is not written" {
  clause = "11.15"
  as_built {
    wheel "front left" {
      tyre {
        size = "190/650 R15"
      }
    }
  }
  answer = "not recorded"
  reason = "The code has to be read from the sidewall."
  source = "DOT date code since 2000"
  status = "computed"
}

worked_case "belt within two years, the last day" {
  clause = "18.1"
  on     = "2012-03-14"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010-03-15"
      }
    }
  }
  answer = "meets"
  reason = "Exactly two years: the anniversary is the first day of the third year."
  source = "BMW CCA Club Racing, 2010: exactly two years from the production date"
  status = "computed"
}

worked_case "belt within two years, the day after" {
  clause = "18.1"
  on     = "2012-03-15"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010-03-15"
      }
    }
  }
  answer = "gap"
  reason = "Exactly two years: the anniversary is the first day of the third year."
  source = "BMW CCA Club Racing, 2010: exactly two years from the production date"
  status = "computed"
}

worked_case "belt within two years, no date" {
  clause = "18.1"
  on     = "2012-03-14"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        label_kind = "month and year"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "BMW CCA Club Racing, 2010: exactly two years from the production date"
  status = "computed"
}

worked_case "belt within two years, the month alone" {
  clause = "18.1"
  on     = "2012-03-15"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010-03"
      }
    }
  }
  answer = "marginal"
  reason = "The day in March decides, and only the month is known."
  source = "BMW CCA Club Racing, 2010: exactly two years from the production date"
  status = "computed"
}

worked_case "belt within two years, the month alone, before it" {
  clause = "18.1"
  on     = "2012-02-29"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010-03"
      }
    }
  }
  answer = "meets"
  reason = "Even from 1 March 2010."
  source = "BMW CCA Club Racing, 2010: exactly two years from the production date"
  status = "computed"
}

worked_case "belt within two years, the month alone, after it" {
  clause = "18.1"
  on     = "2012-04-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010-03"
      }
    }
  }
  answer = "gap"
  reason = "Even from 31 March 2010."
  source = "BMW CCA Club Racing, 2010: exactly two years from the production date"
  status = "computed"
}

worked_case "belt within two years, not the end of the year" {
  clause = "18.1"
  on     = "2012-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010-03-15"
      }
    }
  }
  answer = "gap"
  reason = "Not the end of the year."
  source = "BMW CCA Club Racing, 2010: exactly two years from the production date"
  status = "computed"
}

worked_case "belt within two years, an FIA one" {
  clause = "18.1"
  on     = "2012-12-31"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        made = "2010-03-15"
      }
    }
  }
  answer = "does not apply"
  reason = "The clause is about SFI belts."
  source = "BMW CCA Club Racing, 2010: exactly two years from the production date"
  status = "computed"
}

worked_case "belt two years to the day, the last day" {
  clause = "18.2"
  on     = "2012-03-15"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010-03-15"
      }
    }
  }
  answer = "meets"
  reason = "Two years to the day."
  source = "DIRTcar rules, driver restraints"
  status = "quoted by others"
}

worked_case "belt two years to the day, the day after" {
  clause = "18.2"
  on     = "2012-03-16"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010-03-15"
      }
    }
  }
  answer = "gap"
  reason = "Two years to the day."
  source = "DIRTcar rules, driver restraints"
  status = "quoted by others"
}

worked_case "belt two years to the day, no date" {
  clause = "18.2"
  on     = "2012-03-15"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        label_kind = "month and year"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "DIRTcar rules, driver restraints"
  status = "quoted by others"
}

worked_case "belt two years to the day, the month alone" {
  clause = "18.2"
  on     = "2012-03-15"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010-03"
      }
    }
  }
  answer = "marginal"
  reason = "The day in March decides, and only the month is known."
  source = "DIRTcar rules, driver restraints"
  status = "quoted by others"
}

worked_case "belt two years to the day, the month alone, before it" {
  clause = "18.2"
  on     = "2012-02-29"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010-03"
      }
    }
  }
  answer = "meets"
  reason = "Even from 1 March 2010."
  source = "DIRTcar rules, driver restraints"
  status = "quoted by others"
}

worked_case "belt two years to the day, the month alone, after it" {
  clause = "18.2"
  on     = "2012-04-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010-03"
      }
    }
  }
  answer = "gap"
  reason = "Even from 31 March 2010."
  source = "DIRTcar rules, driver restraints"
  status = "quoted by others"
}

worked_case "belt two years to the day, not the end of the year" {
  clause = "18.2"
  on     = "2012-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2010-03-15"
      }
    }
  }
  answer = "gap"
  reason = "Not the end of the year."
  source = "DIRTcar rules, driver restraints"
  status = "quoted by others"
}

worked_case "belt two years to the day, an FIA one" {
  clause = "18.2"
  on     = "2012-12-31"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        made = "2010-03-15"
      }
    }
  }
  answer = "does not apply"
  reason = "The clause is about SFI belts."
  source = "DIRTcar rules, driver restraints"
  status = "quoted by others"
}

worked_case "29 February: belt within two years" {
  clause = "18.1"
  on     = "2022-02-27"
  as_built {
    harness "driver" {
      standard = "SFI 16.5"
      strap "left lap" {
        made = "2020-02-29"
      }
    }
  }
  answer = "meets"
  reason = "Two years on is taken as 28 February 2022, and the day before is the last."
  source = "BMW CCA Club Racing, 2010: exactly two years from the production date"
  status = "computed"
}

worked_case "29 February: belt within two years, the day after" {
  clause = "18.1"
  on     = "2022-02-28"
  as_built {
    harness "driver" {
      standard = "SFI 16.5"
      strap "left lap" {
        made = "2020-02-29"
      }
    }
  }
  answer = "gap"
  reason = "Two years on is taken as 28 February 2022."
  source = "BMW CCA Club Racing, 2010: exactly two years from the production date"
  status = "computed"
}

worked_case "belt of 2014 at the end of 2018, four years" {
  clause = "18.3"
  on     = "2018-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2014-03"
      }
    }
  }
  answer = "meets"
  reason = "2014 and four years: to 31 December 2018."
  source = "ChampCar rules, 2018"
  status = "quoted by others"
}

worked_case "belt of 2014 in 2019, four years" {
  clause = "18.3"
  on     = "2019-01-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2014-03"
      }
    }
  }
  answer = "gap"
  reason = "2014 and four years: to 31 December 2018."
  source = "ChampCar rules, 2018"
  status = "quoted by others"
}

worked_case "belt of the last day of 2014 in 2019, four years" {
  clause = "18.3"
  on     = "2019-01-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2014-12-31"
      }
    }
  }
  answer = "gap"
  reason = "2014 and four years: to 31 December 2018."
  source = "ChampCar rules, 2018"
  status = "quoted by others"
}

worked_case "belt of which the year is known, four years" {
  clause = "18.3"
  on     = "2018-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2014"
      }
    }
  }
  answer = "meets"
  reason = "No more than the year is needed."
  source = "ChampCar rules, 2018"
  status = "quoted by others"
}

worked_case "belt without a date, four years" {
  clause = "18.3"
  on     = "2018-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        label_kind = "month and year"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "ChampCar rules, 2018"
  status = "quoted by others"
}

worked_case "open road, label of 2018 on its last day" {
  clause = "18.4"
  on     = "2018-12-31"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2018"
      }
    }
  }
  answer = "meets"
  reason = "The year of the label to its end."
  source = "Silver State open road rules, driver restraints"
  status = "quoted by others"
}

worked_case "open road, label of 2018 the day after" {
  clause = "18.4"
  on     = "2019-01-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2018"
      }
    }
  }
  answer = "gap"
  reason = "The year of the label to its end."
  source = "Silver State open road rules, driver restraints"
  status = "quoted by others"
}

worked_case "open road, label of May 2018 in December" {
  clause = "18.4"
  on     = "2018-12-31"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2018-05"
      }
    }
  }
  answer = "meets"
  reason = "To 31 December of the label's year, though it names a month."
  source = "Silver State open road rules, driver restraints"
  status = "computed"
}

worked_case "open road, made 2014, without an end, the last day" {
  clause = "18.4"
  on     = "2019-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        label_kind = "month and year"
        made       = "2014-05"
      }
    }
  }
  answer = "meets"
  reason = "31 December of the fifth year."
  source = "Silver State open road rules, driver restraints"
  status = "quoted by others"
}

worked_case "open road, made 2014, without an end, the day after" {
  clause = "18.4"
  on     = "2020-01-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        label_kind = "month and year"
        made       = "2014-05"
      }
    }
  }
  answer = "gap"
  reason = "31 December of the fifth year."
  source = "Silver State open road rules, driver restraints"
  status = "quoted by others"
}

worked_case "open road, label that cannot be read" {
  clause = "18.4"
  on     = "2018-06-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "Silver State open road rules, driver restraints"
  status = "computed"
}

worked_case "open road, kind of label not written" {
  clause = "18.4"
  on     = "2019-06-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        made      = "2014-05"
        not_after = "2018"
      }
    }
  }
  answer = "not recorded"
  reason = "Five years from manufacture last, the end on the label has passed: it hangs on the kind of the label."
  source = "Silver State open road rules, driver restraints"
  status = "computed"
}

worked_case "open road, kind of label not written, both last" {
  clause = "18.4"
  on     = "2018-06-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        made      = "2014-05"
        not_after = "2018"
      }
    }
  }
  answer = "meets"
  reason = "It lasts by either."
  source = "Silver State open road rules, driver restraints"
  status = "computed"
}

worked_case "Australian label 2022 at the end of 2027" {
  clause = "18.5"
  on     = "2027-12-31"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2022"
      }
    }
  }
  answer = "meets"
  reason = "Label year and five: to 31 December 2027."
  source = "CAMS note on FIA harnesses"
  status = "quoted by others"
}

worked_case "Australian label 2022 in 2028" {
  clause = "18.5"
  on     = "2028-01-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2022"
      }
    }
  }
  answer = "gap"
  reason = "Label year and five: to 31 December 2027."
  source = "CAMS note on FIA harnesses"
  status = "quoted by others"
}

worked_case "Australian label that cannot be read" {
  clause = "18.5"
  on     = "2027-12-31"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "CAMS note on FIA harnesses"
  status = "computed"
}

worked_case "Australian label of March 2022 at the end of 2027" {
  clause = "18.5"
  on     = "2027-12-31"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2022-03"
      }
    }
  }
  answer = "meets"
  reason = "The year of the label counts."
  source = "CAMS note on FIA harnesses"
  status = "computed"
}

worked_case "belt of 1999 on the day before the memo" {
  clause = "18.6"
  on     = "2003-11-12"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "1999-06"
      }
    }
  }
  answer = "meets"
  reason = "Five years: to 31 December 2004."
  source = "SCCA memo RM04-01, 13 November 2003"
  status = "quoted by others"
}

worked_case "belt of 1999 on the day of the memo" {
  clause = "18.6"
  on     = "2003-11-13"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "1999-06"
      }
    }
  }
  answer = "gap"
  reason = "Two years: they ended with 2001."
  source = "SCCA memo RM04-01, 13 November 2003"
  status = "quoted by others"
}

worked_case "belt of 1997 at the end of 2002, before the memo" {
  clause = "18.6"
  on     = "2002-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "1997"
      }
    }
  }
  answer = "meets"
  reason = "31 December of the fifth year."
  source = "SCCA memo RM04-01, 13 November 2003"
  status = "quoted by others"
}

worked_case "belt of 1997 in 2003, before the memo" {
  clause = "18.6"
  on     = "2003-01-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "1997"
      }
    }
  }
  answer = "gap"
  reason = "31 December of the fifth year."
  source = "SCCA memo RM04-01, 13 November 2003"
  status = "quoted by others"
}

worked_case "belt without a date before the memo" {
  clause = "18.6"
  on     = "2003-11-12"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        label_kind = "month and year"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "SCCA memo RM04-01, 13 November 2003"
  status = "computed"
}

worked_case "belt of 2001 on the day of the memo" {
  clause = "18.6"
  on     = "2003-11-13"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2001-06"
      }
    }
  }
  answer = "meets"
  reason = "31 December of the second year is still ahead."
  source = "SCCA memo RM04-01, 13 November 2003"
  status = "quoted by others"
}

worked_case "belt of 2001 at the end of 2003, after the memo" {
  clause = "18.6"
  on     = "2003-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2001"
      }
    }
  }
  answer = "meets"
  reason = "31 December of the second year."
  source = "SCCA memo RM04-01, 13 November 2003"
  status = "quoted by others"
}

worked_case "belt of 2001 in 2004, after the memo" {
  clause = "18.6"
  on     = "2004-01-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2001"
      }
    }
  }
  answer = "gap"
  reason = "31 December of the second year."
  source = "SCCA memo RM04-01, 13 November 2003"
  status = "quoted by others"
}

worked_case "belt without a date after the memo" {
  clause = "18.6"
  on     = "2003-11-13"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        label_kind = "month and year"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "SCCA memo RM04-01, 13 November 2003"
  status = "computed"
}

worked_case "belt of 2012 in the month of the newer edition" {
  clause = "18.6"
  on     = "2017-11-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2012-06"
      }
    }
  }
  answer = "meets"
  reason = "31 December of the fifth year: to the end of 2017."
  source = "SCCA GCR, November 2017, 9.3.18.E"
  status = "computed"
}

worked_case "belt of 2014 at the end of 2019, five years again" {
  clause = "18.6"
  on     = "2019-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2014"
      }
    }
  }
  answer = "meets"
  reason = "31 December of the fifth year."
  source = "SCCA GCR, November 2017, 9.3.18.E"
  status = "quoted by others"
}

worked_case "belt of 2014 in 2020, five years again" {
  clause = "18.6"
  on     = "2020-01-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        made = "2014"
      }
    }
  }
  answer = "gap"
  reason = "31 December of the fifth year."
  source = "SCCA GCR, November 2017, 9.3.18.E"
  status = "quoted by others"
}

worked_case "belt without a date, five years again" {
  clause = "18.6"
  on     = "2019-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left lap" {
        label_kind = "month and year"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "SCCA GCR, November 2017, 9.3.18.E"
  status = "computed"
}

worked_case "8853/98 on its last day" {
  clause = "18.7"
  on     = "2022-12-31"
  as_built {
    harness "driver" {
      standard = "8853/98"
    }
  }
  answer = "meets"
  reason = "To the end of 2022."
  source = "FIA Appendix J, 8853/98 until the end of 2022"
  status = "quoted by others"
}

worked_case "8853/98 on the day after its withdrawal" {
  clause = "18.7"
  on     = "2023-01-01"
  as_built {
    harness "driver" {
      standard = "8853/98"
    }
  }
  answer = "gap"
  reason = "Withdrawn with 2022, whatever its label says."
  source = "FIA Appendix J, 8853/98 until the end of 2022"
  status = "quoted by others"
}

worked_case "8853-2016 before the withdrawal of 8853/98" {
  clause = "18.7"
  on     = "2022-12-31"
  as_built {
    harness "driver" {
      standard = "8853-2016"
    }
  }
  answer = "meets"
  reason = "The standard of today."
  source = "FIA Appendix J, 8853/98 until the end of 2022"
  status = "quoted by others"
}

worked_case "8853-2016 after the withdrawal of 8853/98" {
  clause = "18.7"
  on     = "2023-01-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
    }
  }
  answer = "meets"
  reason = "The standard of today."
  source = "FIA Appendix J, 8853/98 until the end of 2022"
  status = "quoted by others"
}

worked_case "road belt before the withdrawal of 8853/98" {
  clause = "18.7"
  on     = "2022-12-31"
  as_built {
    harness "driver" {
      standard = "ECE R16"
    }
  }
  answer = "gap"
  reason = "Neither of the two."
  source = "FIA Appendix J, 8853/98 until the end of 2022"
  status = "computed"
}

worked_case "harness of no known standard on the last day of 8853/98" {
  clause = "18.7"
  on     = "2022-12-31"
  as_built {
    harness "driver" {
      buckle = "rotary"
    }
  }
  answer = "not recorded"
  reason = "The standard has to be read."
  source = "FIA Appendix J, 8853/98 until the end of 2022"
  status = "computed"
}

worked_case "harness of no known standard after the withdrawal" {
  clause = "18.7"
  on     = "2023-01-01"
  as_built {
    harness "driver" {
      buckle = "rotary"
    }
  }
  answer = "not recorded"
  reason = "The standard has to be read."
  source = "FIA Appendix J, 8853/98 until the end of 2022"
  status = "computed"
}

worked_case "8853/98 of a national car after the withdrawal" {
  clause = "18.8"
  on     = "2026-12-31"
  as_built {
    car "1" {
      class = "national"
    }
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2026"
      }
    }
  }
  answer = "meets"
  reason = "National: to 31 December of the label's year."
  source = "FIA Appendix J, 8853/98 until the end of 2022; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4"
  status = "computed"
}

worked_case "8853/98 of a national car after its label" {
  clause = "18.8"
  on     = "2027-01-01"
  as_built {
    car "1" {
      class = "national"
    }
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2026"
      }
    }
  }
  answer = "gap"
  reason = "National: to 31 December of the label's year."
  source = "FIA Appendix J, 8853/98 until the end of 2022; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4"
  status = "computed"
}

worked_case "8853/98 of an RC2 car on the last day" {
  clause = "18.8"
  on     = "2022-12-31"
  as_built {
    car "1" {
      class = "RC2"
    }
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2026"
      }
    }
  }
  answer = "meets"
  reason = "Withdrawn for all with the end of 2022."
  source = "FIA Appendix J, 8853/98 until the end of 2022; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4"
  status = "computed"
}

worked_case "8853/98 of an RC2 car after the withdrawal" {
  clause = "18.8"
  on     = "2023-01-01"
  as_built {
    car "1" {
      class = "RC2"
    }
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2026"
      }
    }
  }
  answer = "gap"
  reason = "The exception is national."
  source = "FIA Appendix J, 8853/98 until the end of 2022; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4"
  status = "computed"
}

worked_case "8853/98 of a national car, label that cannot be read" {
  clause = "18.8"
  on     = "2023-01-01"
  as_built {
    car "1" {
      class = "national"
    }
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        label_kind = "not valid after"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "FIA Appendix J, 8853/98 until the end of 2022; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4"
  status = "computed"
}

worked_case "8853/98 of a car whose class is not written" {
  clause = "18.8"
  on     = "2023-01-01"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2026"
      }
    }
  }
  answer = "not recorded"
  reason = "The exception hangs on the class."
  source = "FIA Appendix J, 8853/98 until the end of 2022; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4"
  status = "computed"
}

worked_case "8853/98 of a car whose class is not written, past its label" {
  clause = "18.8"
  on     = "2027-01-01"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2026"
      }
    }
  }
  answer = "gap"
  reason = "Out of date in any class."
  source = "FIA Appendix J, 8853/98 until the end of 2022; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4"
  status = "computed"
}

worked_case "list 25: SA2010 on 2023-12-31" {
  clause = "18.9"
  on     = "2023-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2010"
      }
    }
  }
  answer = "meets"
  reason = "To 31 December 2023."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "list 25: SA2010 on 2024-01-01" {
  clause = "18.9"
  on     = "2024-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2010"
      }
    }
  }
  answer = "gap"
  reason = "To 31 December 2023."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "list 25: SA2010 on 2029-01-01" {
  clause = "18.9"
  on     = "2029-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2010"
      }
    }
  }
  answer = "gap"
  reason = "To 31 December 2023."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "list 25: SA2015 on 2023-12-31" {
  clause = "18.9"
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

worked_case "list 25: SA2015 on 2024-01-01" {
  clause = "18.9"
  on     = "2024-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2015"
      }
    }
  }
  answer = "gap"
  reason = "To 31 December 2023."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "list 25: 8860-2010 on 2023-12-31" {
  clause = "18.9"
  on     = "2023-12-31"
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

worked_case "list 25: 8860-2010 on 2024-01-01" {
  clause = "18.9"
  on     = "2024-01-01"
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

worked_case "list 25: 8860-2010 on 2028-12-31" {
  clause = "18.9"
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

worked_case "list 25: 8860-2010 on 2029-01-01" {
  clause = "18.9"
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

worked_case "list 25: 8859-2015 on 2023-12-31" {
  clause = "18.9"
  on     = "2023-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "8859-2015"
      }
    }
  }
  answer = "meets"
  reason = "No end."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "list 25: 8859-2015 on 2028-12-31" {
  clause = "18.9"
  on     = "2028-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "8859-2015"
      }
    }
  }
  answer = "meets"
  reason = "No end."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "list 25: 8859-2015 on 2150-01-01" {
  clause = "18.9"
  on     = "2150-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "8859-2015"
      }
    }
  }
  answer = "meets"
  reason = "No end."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "list 25: 8860-2018-ABP on 2150-01-01" {
  clause = "18.9"
  on     = "2150-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "8860-2018-ABP"
      }
    }
  }
  answer = "meets"
  reason = "No end."
  source = "FIA technical list 25, 11 December 2024"
  status = "quoted by others"
}

worked_case "list 25: ECE 22.05 on 2023-12-31" {
  clause = "18.9"
  on     = "2023-12-31"
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
  status = "computed"
}

worked_case "list 25: ECE 22.05 on 2024-01-01" {
  clause = "18.9"
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
  status = "computed"
}

worked_case "list 25: a standard that is not written on 2023-12-31" {
  clause = "18.9"
  on     = "2023-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        serial = "H-1"
      }
    }
  }
  answer = "not recorded"
  reason = "The standard has to be read from the label."
  source = "FIA technical list 25, 11 December 2024"
  status = "computed"
}

worked_case "list 25: a standard that is not written on 2024-01-01" {
  clause = "18.9"
  on     = "2024-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        serial = "H-1"
      }
    }
  }
  answer = "not recorded"
  reason = "The standard has to be read from the label."
  source = "FIA technical list 25, 11 December 2024"
  status = "computed"
}

worked_case "list 25: a standard that is not written on 2029-01-01" {
  clause = "18.9"
  on     = "2029-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        serial = "H-1"
      }
    }
  }
  answer = "not recorded"
  reason = "The standard has to be read from the label."
  source = "FIA technical list 25, 11 December 2024"
  status = "computed"
}

worked_case "national list: SA2010 on 2023-12-31" {
  clause = "18.10"
  on     = "2023-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2010"
      }
    }
  }
  answer = "meets"
  reason = "Out with the end of 2023."
  source = "MSUK helmet standards, 2024"
  status = "quoted by others"
}

worked_case "national list: SA2010 on 2024-01-01" {
  clause = "18.10"
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

worked_case "national list: SA2010 on 2027-01-01" {
  clause = "18.10"
  on     = "2027-01-01"
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

worked_case "national list: SA2015 on 2023-12-31" {
  clause = "18.10"
  on     = "2023-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2015"
      }
    }
  }
  answer = "meets"
  reason = "To 31 December 2026."
  source = "MSUK helmet standards, 2024"
  status = "quoted by others"
}

worked_case "national list: SA2015 on 2024-01-01" {
  clause = "18.10"
  on     = "2024-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2015"
      }
    }
  }
  answer = "meets"
  reason = "To 31 December 2026."
  source = "MSUK helmet standards, 2024"
  status = "quoted by others"
}

worked_case "national list: SA2015 on 2026-12-31" {
  clause = "18.10"
  on     = "2026-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2015"
      }
    }
  }
  answer = "meets"
  reason = "To 31 December 2026."
  source = "MSUK helmet standards, 2024"
  status = "quoted by others"
}

worked_case "national list: SA2015 on 2027-01-01" {
  clause = "18.10"
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

worked_case "national list: SA2020 on 2023-12-31" {
  clause = "18.10"
  on     = "2023-12-31"
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

worked_case "national list: SA2020 on 2026-12-31" {
  clause = "18.10"
  on     = "2026-12-31"
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

worked_case "national list: SA2020 on 2027-01-01" {
  clause = "18.10"
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

worked_case "national list: ECE 22.05 on 2023-12-31" {
  clause = "18.10"
  on     = "2023-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "ECE 22.05"
      }
    }
  }
  answer = "gap"
  reason = "Not on the list."
  source = "MSUK helmet standards, 2024"
  status = "computed"
}

worked_case "national list: a standard that is not written on 2023-12-31" {
  clause = "18.10"
  on     = "2023-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        serial = "H-1"
      }
    }
  }
  answer = "not recorded"
  reason = "The standard has to be read from the label."
  source = "MSUK helmet standards, 2024"
  status = "computed"
}

worked_case "national list: a standard that is not written on 2026-12-31" {
  clause = "18.10"
  on     = "2026-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        serial = "H-1"
      }
    }
  }
  answer = "not recorded"
  reason = "The standard has to be read from the label."
  source = "MSUK helmet standards, 2024"
  status = "computed"
}

worked_case "national list: a standard that is not written on 2027-01-01" {
  clause = "18.10"
  on     = "2027-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        serial = "H-1"
      }
    }
  }
  answer = "not recorded"
  reason = "The standard has to be read from the label."
  source = "MSUK helmet standards, 2024"
  status = "computed"
}

worked_case "BS 6658, FIA, the last day" {
  clause = "18.11"
  on     = "2013-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "BS 6658"
      }
    }
  }
  answer = "does not apply"
  reason = "The withdrawal is not in force yet."
  source = "FIA, BS 6658 out with the end of 2013"
  status = "quoted by others"
}

worked_case "BS 6658, FIA, withdrawn" {
  clause = "18.11"
  on     = "2014-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "BS 6658"
      }
    }
  }
  answer = "gap"
  reason = "Withdrawn for all, however old the helmet is."
  source = "FIA, BS 6658 out with the end of 2013"
  status = "quoted by others"
}

worked_case "SA2010, FIA, after the withdrawal of BS 6658" {
  clause = "18.11"
  on     = "2014-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2010"
      }
    }
  }
  answer = "meets"
  reason = "Another standard."
  source = "FIA, BS 6658 out with the end of 2013"
  status = "computed"
}

worked_case "a standard that is not written, FIA, after the withdrawal of BS 6658" {
  clause = "18.11"
  on     = "2014-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        serial = "H-1"
      }
    }
  }
  answer = "not recorded"
  reason = "It may be the one that is withdrawn."
  source = "FIA, BS 6658 out with the end of 2013"
  status = "computed"
}

worked_case "BS 6658, France, the last day" {
  clause = "18.12"
  on     = "2015-12-31"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "BS 6658"
      }
    }
  }
  answer = "does not apply"
  reason = "The withdrawal is not in force yet."
  source = "France, BS 6658 out on 1 January 2016"
  status = "quoted by others"
}

worked_case "BS 6658, France, withdrawn" {
  clause = "18.12"
  on     = "2016-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "BS 6658"
      }
    }
  }
  answer = "gap"
  reason = "Withdrawn for all, however old the helmet is."
  source = "France, BS 6658 out on 1 January 2016"
  status = "quoted by others"
}

worked_case "SA2010, France, after the withdrawal of BS 6658" {
  clause = "18.12"
  on     = "2016-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        standard = "SA2010"
      }
    }
  }
  answer = "meets"
  reason = "Another standard."
  source = "France, BS 6658 out on 1 January 2016"
  status = "computed"
}

worked_case "a standard that is not written, France, after the withdrawal of BS 6658" {
  clause = "18.12"
  on     = "2016-01-01"
  as_built {
    crew_member "driver" {
      helmet {
        serial = "H-1"
      }
    }
  }
  answer = "not recorded"
  reason = "It may be the one that is withdrawn."
  source = "France, BS 6658 out on 1 January 2016"
  status = "computed"
}

worked_case "38.1 of 2006 on the day before the rule" {
  clause = "18.13"
  on     = "2011-12-31"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "SFI 38.1"
        made     = "2006-05"
      }
    }
  }
  answer = "does not apply"
  reason = "The rule is not in force yet."
  source = "SFI 38.1, ARCA table, in force from 1 January 2012"
  status = "computed"
}

worked_case "38.1 of 2006 on the first day of the rule" {
  clause = "18.13"
  on     = "2012-01-01"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "SFI 38.1"
        made     = "2006-05"
      }
    }
  }
  answer = "gap"
  reason = "05/2006 to 05/2011."
  source = "SFI 38.1, ARCA table, in force from 1 January 2012"
  status = "computed"
}

worked_case "38.1 of March 2008 at the end of March 2013" {
  clause = "18.13"
  on     = "2013-03-31"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "SFI 38.1"
        made     = "2008-03"
      }
    }
  }
  answer = "meets"
  reason = "03/2008 to 03/2013; the table gives no day, and the month is taken to its end."
  source = "SFI 38.1, ARCA table, in force from 1 January 2012"
  status = "computed"
}

worked_case "38.1 of March 2008, the day after" {
  clause = "18.13"
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
  reason = "03/2008 to 03/2013."
  source = "SFI 38.1, ARCA table, in force from 1 January 2012"
  status = "quoted by others"
}

worked_case "38.1 without a date under the rule" {
  clause = "18.13"
  on     = "2013-03-31"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "SFI 38.1"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "SFI 38.1, ARCA table, in force from 1 January 2012"
  status = "computed"
}

worked_case "38.1 of 2008, the month not known" {
  clause = "18.13"
  on     = "2013-06-15"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "SFI 38.1"
        made     = "2008"
      }
    }
  }
  answer = "marginal"
  reason = "The month in 2008 decides."
  source = "SFI 38.1, ARCA table, in force from 1 January 2012"
  status = "computed"
}

worked_case "seat by its day, the last day" {
  clause = "18.14"
  on     = "2018-02-10"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2013-02-10"
    }
  }
  answer = "meets"
  reason = "Five years from 10 February 2013."
  source = "FIA Appendix J, Art. 253-16, 2014: five years from the date of manufacture on the label"
  status = "computed"
}

worked_case "seat by its day, the day after" {
  clause = "18.14"
  on     = "2018-02-11"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2013-02-10"
    }
  }
  answer = "gap"
  reason = "Five years from 10 February 2013."
  source = "FIA Appendix J, Art. 253-16, 2014: five years from the date of manufacture on the label"
  status = "computed"
}

worked_case "seat by its day, no date" {
  clause = "18.14"
  on     = "2018-02-10"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "FIA Appendix J, Art. 253-16, 2014: five years from the date of manufacture on the label"
  status = "computed"
}

worked_case "seat by its day, the month alone" {
  clause = "18.14"
  on     = "2018-02-15"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2013-02"
    }
  }
  answer = "marginal"
  reason = "The day in February decides, and only the month is known."
  source = "FIA Appendix J, Art. 253-16, 2014: five years from the date of manufacture on the label"
  status = "computed"
}

worked_case "seat by its day, the month alone, before it" {
  clause = "18.14"
  on     = "2018-01-31"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2013-02"
    }
  }
  answer = "meets"
  reason = "Even from 1 February 2013."
  source = "FIA Appendix J, Art. 253-16, 2014: five years from the date of manufacture on the label"
  status = "computed"
}

worked_case "seat by its day, the month alone, after it" {
  clause = "18.14"
  on     = "2018-03-01"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2013-02"
    }
  }
  answer = "gap"
  reason = "Even from 28 February 2013."
  source = "FIA Appendix J, Art. 253-16, 2014: five years from the date of manufacture on the label"
  status = "computed"
}

worked_case "seat by its day, the year alone" {
  clause = "18.14"
  on     = "2018-06-01"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2013"
    }
  }
  answer = "marginal"
  reason = "The day in 2013 decides, and only the year is known."
  source = "FIA Appendix J, Art. 253-16, 2014: five years from the date of manufacture on the label"
  status = "computed"
}

worked_case "29 February: seat by its day" {
  clause = "18.14"
  on     = "2021-02-28"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2016-02-29"
    }
  }
  answer = "meets"
  reason = "2021 has no such day: to 28 February."
  source = "FIA Appendix J, Art. 253-16, 2014: five years from the date of manufacture on the label"
  status = "computed"
}

worked_case "29 February: seat by its day, the day after" {
  clause = "18.14"
  on     = "2021-03-01"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2016-02-29"
    }
  }
  answer = "gap"
  reason = "2021 has no such day: to 28 February."
  source = "FIA Appendix J, Art. 253-16, 2014: five years from the date of manufacture on the label"
  status = "computed"
}

worked_case "seat of 2013 after eight years, the last day" {
  clause = "18.15"
  on     = "2021-12-31"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2013"
    }
  }
  answer = "meets"
  reason = "2013 and eight years."
  source = "MSUK notice, March 2021"
  status = "quoted by others"
}

worked_case "seat of 2013 after eight years, the day after" {
  clause = "18.15"
  on     = "2022-01-01"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2013"
    }
  }
  answer = "gap"
  reason = "2013 and eight years."
  source = "MSUK notice, March 2021"
  status = "quoted by others"
}

worked_case "seat of February 2013 after eight years, the last day" {
  clause = "18.15"
  on     = "2021-02-28"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2013-02"
    }
  }
  answer = "meets"
  reason = "A month label lasts to the end of the month."
  source = "MSUK notice, March 2021"
  status = "computed"
}

worked_case "seat of February 2013 after eight years, the day after" {
  clause = "18.15"
  on     = "2021-03-01"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2013-02"
    }
  }
  answer = "gap"
  reason = "A month label lasts to the end of the month."
  source = "MSUK notice, March 2021"
  status = "computed"
}

worked_case "seat of 2014 and the waiver" {
  clause = "18.15"
  on     = "2022-01-01"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
      made     = "2014"
    }
  }
  answer = "does not apply"
  reason = "The clause is about labels of 2013."
  source = "MSUK notice, March 2021"
  status = "computed"
}

worked_case "seat without a date and the waiver" {
  clause = "18.15"
  on     = "2022-01-01"
  as_built {
    seat "driver" {
      standard = "FIA 8855-1999"
    }
  }
  answer = "not recorded"
  reason = "It may be of 2013."
  source = "MSUK notice, March 2021"
  status = "computed"
}

worked_case "bladder to be re-certified at five, the last day" {
  clause = "18.16"
  on     = "2025-06-10"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "none"
    }
  }
  answer = "meets"
  reason = "Five years to the day."
  source = "North American maker of FT3 bladders"
  status = "computed"
}

worked_case "bladder to be re-certified at five, the day after" {
  clause = "18.16"
  on     = "2025-06-11"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "none"
    }
  }
  answer = "gap"
  reason = "Five years, and it was not re-certified."
  source = "North American maker of FT3 bladders"
  status = "computed"
}

worked_case "bladder re-certified in time, the last day" {
  clause = "18.16"
  on     = "2027-06-10"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "2025-06-10"
    }
  }
  answer = "meets"
  reason = "Seven years at most."
  source = "North American maker of FT3 bladders"
  status = "computed"
}

worked_case "bladder re-certified in time, the day after" {
  clause = "18.16"
  on     = "2027-06-11"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "2025-06-10"
    }
  }
  answer = "gap"
  reason = "Seven years at most."
  source = "North American maker of FT3 bladders"
  status = "computed"
}

worked_case "bladder re-certified a day late" {
  clause = "18.16"
  on     = "2026-06-10"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "2025-06-11"
    }
  }
  answer = "gap"
  reason = "It had run out the day before."
  source = "North American maker of FT3 bladders"
  status = "computed"
}

worked_case "bladder re-certified in the month in which it ran out" {
  clause = "18.16"
  on     = "2026-06-10"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2020-06-10"
      recertified = "2025-06"
    }
  }
  answer = "marginal"
  reason = "The day in June 2025 decides."
  source = "North American maker of FT3 bladders"
  status = "computed"
}

worked_case "bladder whose re-certification is not written" {
  clause = "18.16"
  on     = "2026-06-10"
  as_built {
    fuel_cell {
      standard = "FT3"
      made     = "2020-06-10"
    }
  }
  answer = "not recorded"
  reason = "It lasts if it was re-certified in time."
  source = "North American maker of FT3 bladders"
  status = "computed"
}

worked_case "bladder whose re-certification is not written, over seven years" {
  clause = "18.16"
  on     = "2027-06-11"
  as_built {
    fuel_cell {
      standard = "FT3"
      made     = "2020-06-10"
    }
  }
  answer = "gap"
  reason = "Over seven years in any case."
  source = "North American maker of FT3 bladders"
  status = "computed"
}

worked_case "printed end of a bladder, the last day" {
  clause = "18.17"
  on     = "2025-06-30"
  as_built {
    fuel_cell {
      standard          = "FT3"
      not_after         = "2025-06"
      recertified_until = "none"
      recertified       = "none"
    }
  }
  answer = "meets"
  reason = "The month printed on it to its end."
  source = "FIA FT3-1999, marking and re-certification"
  status = "computed"
}

worked_case "printed end of a bladder, the day after" {
  clause = "18.17"
  on     = "2025-07-01"
  as_built {
    fuel_cell {
      standard          = "FT3"
      not_after         = "2025-06"
      recertified_until = "none"
      recertified       = "none"
    }
  }
  answer = "gap"
  reason = "The month printed on it to its end."
  source = "FIA FT3-1999, marking and re-certification"
  status = "computed"
}

worked_case "printed end of a bladder, extended, the last day" {
  clause = "18.17"
  on     = "2027-05-02"
  as_built {
    fuel_cell {
      standard          = "FT3"
      not_after         = "2025-06"
      recertified       = "2025-05-02"
      recertified_until = "2027-05-02"
    }
  }
  answer = "meets"
  reason = "As the certificate says."
  source = "FIA FT3-1999, marking and re-certification"
  status = "computed"
}

worked_case "printed end of a bladder, extended, the day after" {
  clause = "18.17"
  on     = "2027-05-03"
  as_built {
    fuel_cell {
      standard          = "FT3"
      not_after         = "2025-06"
      recertified       = "2025-05-02"
      recertified_until = "2027-05-02"
    }
  }
  answer = "gap"
  reason = "As the certificate says."
  source = "FIA FT3-1999, marking and re-certification"
  status = "computed"
}

worked_case "bladder extended by more than two years" {
  clause = "18.17"
  on     = "2026-06-10"
  as_built {
    fuel_cell {
      standard          = "FT3"
      not_after         = "2025-06"
      recertified       = "2025-05-02"
      recertified_until = "2027-05-03"
    }
  }
  answer = "gap"
  reason = "Two years are the most."
  source = "FIA FT3-1999, marking and re-certification"
  status = "computed"
}

worked_case "bladder whose print cannot be read" {
  clause = "18.17"
  on     = "2025-06-30"
  as_built {
    fuel_cell {
      standard          = "FT3"
      recertified_until = "none"
      recertified       = "none"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "FIA FT3-1999, marking and re-certification"
  status = "computed"
}

worked_case "North American SFI cell on the day before FT3" {
  clause = "18.18"
  on     = "2011-12-31"
  as_built {
    fuel_cell {
      standard = "SFI 28.1"
    }
  }
  answer = "does not apply"
  reason = "The rule is not in force yet."
  source = "NASA CCR 15.4, 2009: FT3 on all cells from 1 January 2012"
  status = "quoted by others"
}

worked_case "North American SFI cell on the first day of FT3" {
  clause = "18.18"
  on     = "2012-01-01"
  as_built {
    fuel_cell {
      standard = "SFI 28.1"
    }
  }
  answer = "gap"
  reason = "FT3 or stronger from this day."
  source = "NASA CCR 15.4, 2009: FT3 on all cells from 1 January 2012"
  status = "quoted by others"
}

worked_case "North American FT3 cell on the first day" {
  clause = "18.18"
  on     = "2012-01-01"
  as_built {
    fuel_cell {
      standard = "FT3"
    }
  }
  answer = "meets"
  reason = "FT3 or stronger."
  source = "NASA CCR 15.4, 2009: FT3 on all cells from 1 January 2012"
  status = "quoted by others"
}

worked_case "North American cell of a standard that is not written" {
  clause = "18.18"
  on     = "2012-01-01"
  as_built {
    fuel_cell {
      maker = "Oakhollow Cells"
    }
  }
  answer = "not recorded"
  reason = "The standard has to be read."
  source = "NASA CCR 15.4, 2009: FT3 on all cells from 1 January 2012"
  status = "computed"
}

worked_case "Romanian SFI cell on the day before FT3" {
  clause = "18.19"
  on     = "2017-12-31"
  as_built {
    fuel_cell {
      standard = "SFI 28.1"
    }
  }
  answer = "does not apply"
  reason = "The rule is not in force yet."
  source = "Romanian note on fuel cells, from 1 January 2018"
  status = "quoted by others"
}

worked_case "Romanian SFI cell on the first day of FT3" {
  clause = "18.19"
  on     = "2018-01-01"
  as_built {
    fuel_cell {
      standard = "SFI 28.1"
    }
  }
  answer = "gap"
  reason = "FT3 or stronger from this day."
  source = "Romanian note on fuel cells, from 1 January 2018"
  status = "quoted by others"
}

worked_case "Romanian FT3 cell on the first day" {
  clause = "18.19"
  on     = "2018-01-01"
  as_built {
    fuel_cell {
      standard = "FT3"
    }
  }
  answer = "meets"
  reason = "FT3 or stronger."
  source = "Romanian note on fuel cells, from 1 January 2018"
  status = "quoted by others"
}

worked_case "Romanian cell of a standard that is not written" {
  clause = "18.19"
  on     = "2018-01-01"
  as_built {
    fuel_cell {
      maker = "Oakhollow Cells"
    }
  }
  answer = "not recorded"
  reason = "The standard has to be read."
  source = "Romanian note on fuel cells, from 1 January 2018"
  status = "computed"
}

worked_case "unhomologated system in 2018" {
  clause = "18.20"
  on     = "2018-12-31"
  as_built {
    cage {
      built = "2018-05-04"
    }
    fire_system {
      standard = "other"
    }
  }
  answer = "meets"
  reason = "Homologation is asked for from 2019 on."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "quoted by others"
}

worked_case "no system in 2018" {
  clause = "18.20"
  on     = "2018-12-31"
  as_built {
    not_fitted = ["fire_system"]
    cage {
      built = "2018-05-04"
    }
  }
  answer = "gap"
  reason = "A system has to be there."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "computed"
}

worked_case "2018, whether there is a system is not written" {
  clause = "18.20"
  on     = "2018-12-31"
  as_built {
    cage {
      built = "2018-05-04"
    }
  }
  answer = "not recorded"
  reason = "It has to be looked at."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "computed"
}

worked_case "standard of the system not written in 2022" {
  clause = "18.20"
  on     = "2022-01-01"
  as_built {
    cage {
      built = "2018-03-01"
    }
    fire_system {
      agent = "AFFF"
    }
  }
  answer = "not recorded"
  reason = "The standard has to be read."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "computed"
}

worked_case "new build of 2019 on the first day of the rule" {
  clause = "18.20"
  on     = "2019-01-01"
  as_built {
    cage {
      built = "2019-01-01"
    }
    fire_system {
      standard = "other"
    }
  }
  answer = "gap"
  reason = "New builds from 1 January 2019."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "quoted by others"
}

worked_case "new build of 2019 with an unhomologated system" {
  clause = "18.20"
  on     = "2019-02-01"
  as_built {
    cage {
      built = "2019-01-01"
    }
    fire_system {
      standard = "other"
    }
  }
  answer = "gap"
  reason = "New builds from 1 January 2019."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "quoted by others"
}

worked_case "new build of 2019 with a homologated system" {
  clause = "18.20"
  on     = "2021-12-31"
  as_built {
    cage {
      built = "2019-01-01"
    }
    fire_system {
      standard = "TL52"
    }
  }
  answer = "meets"
  reason = "New builds from 1 January 2019."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "quoted by others"
}

worked_case "car of the last day of 2018 with an unhomologated system in 2021" {
  clause = "18.20"
  on     = "2021-12-31"
  as_built {
    cage {
      built = "2018-12-31"
    }
    fire_system {
      standard = "other"
    }
  }
  answer = "meets"
  reason = "It keeps to the rules it was built to until the end of 2021."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "quoted by others"
}

worked_case "car of the last day of 2018 with an unhomologated system in 2022" {
  clause = "18.20"
  on     = "2022-01-01"
  as_built {
    cage {
      built = "2018-12-31"
    }
    fire_system {
      standard = "other"
    }
  }
  answer = "gap"
  reason = "All cars from 1 January 2022."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "quoted by others"
}

worked_case "car of 2018 with a homologated system in 2022" {
  clause = "18.20"
  on     = "2022-01-01"
  as_built {
    cage {
      built = "2018-12-31"
    }
    fire_system {
      standard = "TL16"
    }
  }
  answer = "meets"
  reason = "All cars from 1 January 2022."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "quoted by others"
}

worked_case "car of which only the year 2018 is known in 2021" {
  clause = "18.20"
  on     = "2021-12-31"
  as_built {
    cage {
      built = "2018"
    }
    fire_system {
      standard = "other"
    }
  }
  answer = "meets"
  reason = "Built under the older rule on any day of 2018."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "computed"
}

worked_case "car of which only the year 2019 is known in 2021" {
  clause = "18.20"
  on     = "2021-12-31"
  as_built {
    cage {
      built = "2019"
    }
    fire_system {
      standard = "other"
    }
  }
  answer = "gap"
  reason = "Built under the newer rule on any day of 2019."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "computed"
}

worked_case "car that was built on a day nobody knows in 2021" {
  clause = "18.20"
  on     = "2021-12-31"
  as_built {
    cage {
      datum = "jig"
    }
    fire_system {
      standard = "other"
    }
  }
  answer = "not recorded"
  reason = "Which rule counts hangs on the day it was built."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "computed"
}

worked_case "car that was built on a day nobody knows in 2022" {
  clause = "18.20"
  on     = "2022-01-01"
  as_built {
    cage {
      datum = "jig"
    }
    fire_system {
      standard = "other"
    }
  }
  answer = "gap"
  reason = "All cars from 1 January 2022."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "computed"
}

worked_case "new build of 2019, standard of the system not written" {
  clause = "18.20"
  on     = "2021-12-31"
  as_built {
    cage {
      built = "2019-03-01"
    }
    fire_system {
      agent = "AFFF"
    }
  }
  answer = "not recorded"
  reason = "The standard has to be read."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "computed"
}

worked_case "car of 2018, standard of the system not written in 2021" {
  clause = "18.20"
  on     = "2021-12-31"
  as_built {
    cage {
      built = "2018-03-01"
    }
    fire_system {
      agent = "AFFF"
    }
  }
  answer = "meets"
  reason = "The older rule does not ask for it."
  source = "MSUK, plumbed-in systems from 2019 and 2022"
  status = "computed"
}

worked_case "1.75 litres on the last day of 2021" {
  clause = "18.21"
  on     = "2021-12-31"
  as_built {
    extinguisher "1" {
      agent        = "AFFF"
      agent_volume = "1.75 l"
    }
  }
  answer = "meets"
  reason = "1.75 litres were enough."
  source = "MSA, hand-held AFFF before 2022"
  status = "quoted by others"
}

worked_case "1.75 litres in 2022" {
  clause = "18.21"
  on     = "2022-01-01"
  as_built {
    extinguisher "1" {
      agent        = "AFFF"
      agent_volume = "1.75 l"
    }
  }
  answer = "gap"
  reason = "2.4 litres are asked for; the change is told as one of 2022."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "quoted by others"
}

worked_case "1.5 litres in 2021" {
  clause = "18.21"
  on     = "2021-12-31"
  as_built {
    extinguisher "1" {
      agent        = "AFFF"
      agent_volume = "1.5 l"
    }
  }
  answer = "gap"
  reason = "Less than 1.75 litres."
  source = "MSA, hand-held AFFF before 2022"
  status = "quoted by others"
}

worked_case "2.4 litres in 2022" {
  clause = "18.21"
  on     = "2022-01-01"
  as_built {
    extinguisher "1" {
      agent        = "AFFF"
      agent_volume = "2.4 l"
    }
  }
  answer = "meets"
  reason = "2.4 litres are asked for."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "confirmed"
}

worked_case "volume not written, 2021" {
  clause = "18.21"
  on     = "2021-12-31"
  as_built {
    extinguisher "1" {
      agent  = "AFFF"
      serial = "E-1"
    }
  }
  answer = "not recorded"
  reason = "The volume has to be read from the label."
  source = "MSA, hand-held AFFF before 2022"
  status = "computed"
}

worked_case "volume not written, 2022" {
  clause = "18.21"
  on     = "2022-01-01"
  as_built {
    extinguisher "1" {
      agent  = "AFFF"
      serial = "E-1"
    }
  }
  answer = "not recorded"
  reason = "The volume has to be read from the label."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "computed"
}

worked_case "29 February: FIA system serviced on it" {
  clause = "18.22"
  on     = "2026-02-28"
  as_built {
    fire_system {
      standard = "TL52"
      serviced = "2024-02-29"
    }
  }
  answer = "meets"
  reason = "24 months after 29 February 2024, which 2026 does not have."
  source = "FIA systems, North American guide"
  status = "computed"
}

worked_case "29 February: FIA system serviced on it, the day after" {
  clause = "18.22"
  on     = "2026-03-01"
  as_built {
    fire_system {
      standard = "TL52"
      serviced = "2024-02-29"
    }
  }
  answer = "gap"
  reason = "24 months after 29 February 2024, which 2026 does not have."
  source = "FIA systems, North American guide"
  status = "computed"
}

worked_case "29 February: FIA system serviced two years before it" {
  clause = "18.22"
  on     = "2028-02-28"
  as_built {
    fire_system {
      standard = "TL52"
      serviced = "2026-02-28"
    }
  }
  answer = "meets"
  reason = "24 months after 28 February 2026."
  source = "FIA systems, North American guide"
  status = "computed"
}

worked_case "29 February: FIA system serviced two years before it, on it" {
  clause = "18.22"
  on     = "2028-02-29"
  as_built {
    fire_system {
      standard = "TL52"
      serviced = "2026-02-28"
    }
  }
  answer = "gap"
  reason = "The last day of February is not the end of 24 months that began on the 28th."
  source = "FIA systems, North American guide"
  status = "computed"
}

worked_case "FIA system, service not written" {
  clause = "18.22"
  on     = "2026-02-28"
  as_built {
    fire_system {
      standard = "TL52"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "FIA systems, North American guide"
  status = "computed"
}

worked_case "FIA system serviced in a month, within that month" {
  clause = "18.22"
  on     = "2026-02-15"
  as_built {
    fire_system {
      standard = "TL52"
      serviced = "2024-02"
    }
  }
  answer = "marginal"
  reason = "24 months from some day of February 2024."
  source = "FIA systems, North American guide"
  status = "computed"
}

worked_case "FIA system serviced several times" {
  clause = "18.22"
  on     = "2026-02-28"
  as_built {
    fire_system {
      standard = "TL52"
      serviced = ["2020-03-01", "2022-02-20", "2024-02-29"]
    }
  }
  answer = "meets"
  reason = "The last service counts."
  source = "FIA systems, North American guide"
  status = "computed"
}

worked_case "bottle on its tenth birthday" {
  clause = "18.23"
  on     = "2030-05-20"
  as_built {
    fire_system {
      standard = "TL52"
      fire_bottle "1" {
        made = "2020-05-20"
      }
    }
  }
  answer = "meets"
  reason = "Ten years."
  source = "FIA systems, North American guide"
  status = "computed"
}

worked_case "bottle a day over ten years" {
  clause = "18.23"
  on     = "2030-05-21"
  as_built {
    fire_system {
      standard = "TL52"
      fire_bottle "1" {
        made = "2020-05-20"
      }
    }
  }
  answer = "gap"
  reason = "Ten years."
  source = "FIA systems, North American guide"
  status = "computed"
}

worked_case "bottle without a date, ten years" {
  clause = "18.23"
  on     = "2030-05-20"
  as_built {
    fire_system {
      standard = "TL52"
      fire_bottle "1" {
        serial = "B-1"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "FIA systems, North American guide"
  status = "computed"
}

worked_case "bottle made in a month, ten years" {
  clause = "18.23"
  on     = "2030-05-20"
  as_built {
    fire_system {
      standard = "TL52"
      fire_bottle "1" {
        made = "2020-05"
      }
    }
  }
  answer = "marginal"
  reason = "Ten years from some day of May 2020."
  source = "FIA systems, North American guide"
  status = "computed"
}

worked_case "tyre 1023 once its week is over" {
  clause = "18.24"
  on     = "2023-03-12"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "1023"
      }
    }
  }
  answer = "meets"
  reason = "Week 10 of 2023: 6 to 12 March, or 5 to 11 March where weeks begin on Sundays."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "computed"
}

worked_case "tyre 1023 before its week" {
  clause = "18.24"
  on     = "2023-03-04"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "1023"
      }
    }
  }
  answer = "gap"
  reason = "Week 10 of 2023: 6 to 12 March, or 5 to 11 March where weeks begin on Sundays."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "computed"
}

worked_case "tyre 1023 within its week" {
  clause = "18.24"
  on     = "2023-03-08"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "1023"
      }
    }
  }
  answer = "marginal"
  reason = "It is of some day of that week."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "computed"
}

worked_case "tyre 0203 once its week is over" {
  clause = "18.24"
  on     = "2003-01-18"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "0203"
      }
    }
  }
  answer = "meets"
  reason = "Week 2 of 2003, which ends on 12 or 18 January."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "computed"
}

worked_case "tyre 0203 before its week" {
  clause = "18.24"
  on     = "2003-01-05"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "0203"
      }
    }
  }
  answer = "gap"
  reason = "Week 2 of 2003, which begins on 6 or 12 January."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "computed"
}

worked_case "tyre 4308 once its week is over" {
  clause = "18.24"
  on     = "2008-11-01"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "4308"
      }
    }
  }
  answer = "meets"
  reason = "Week 43 of 2008, which ends on 26 October or 1 November."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "computed"
}

worked_case "tyre 4308 before its week" {
  clause = "18.24"
  on     = "2008-10-19"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "4308"
      }
    }
  }
  answer = "gap"
  reason = "Week 43 of 2008, which begins on 20 or 26 October."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "computed"
}

worked_case "tyre 5309, a year of 53 weeks" {
  clause = "18.24"
  on     = "2010-01-03"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "5309"
      }
    }
  }
  answer = "meets"
  reason = "Week 53 of 2009 by ISO 8601: 28 December 2009 to 3 January 2010."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "computed"
}

worked_case "tyre 5309 before its week" {
  clause = "18.24"
  on     = "2009-12-27"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "5309"
      }
    }
  }
  answer = "gap"
  reason = "Week 53 of 2009 by ISO 8601: 28 December 2009 to 3 January 2010."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "computed"
}

worked_case "tyre 5308, a year of 52 weeks" {
  clause = "18.24"
  on     = "2010-01-01"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "5308"
      }
    }
  }
  answer = "not recorded"
  reason = "2008 has no week 53 by either way of counting."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "computed"
}

worked_case "tyre 5423" {
  clause = "18.24"
  on     = "2026-06-01"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "5423"
      }
    }
  }
  answer = "not recorded"
  reason = "No year has a week 54."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "computed"
}

worked_case "tyre 0023" {
  clause = "18.24"
  on     = "2026-06-01"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "0023"
      }
    }
  }
  answer = "not recorded"
  reason = "There is no week 0."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "computed"
}

worked_case "tyre 408, made before 2000" {
  clause = "18.24"
  on     = "2026-06-01"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "408"
      }
    }
  }
  answer = "not recorded"
  reason = "Week 40 of 1988 or 1998: the code does not say."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "quoted by others"
}

worked_case "tyre without a code written down" {
  clause = "18.24"
  on     = "2026-06-01"
  as_built {
    wheel "front left" {
      tyre {
        size = "190/650 R15"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "DOT date code since 2000, 49 CFR 574.5"
  status = "computed"
}

worked_case "tyre 1023 after six years, the last day" {
  clause = "18.25"
  on     = "2029-03-12"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "1023"
      }
    }
  }
  answer = "meets"
  reason = "The week ends on 12 March 2023."
  source = "Common practice: six years, advice for the road"
  status = "computed"
}

worked_case "tyre 1023 after six years, the day after" {
  clause = "18.25"
  on     = "2029-03-13"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "1023"
      }
    }
  }
  answer = "gap"
  reason = "The week ends on 12 March 2023."
  source = "Common practice: six years, advice for the road"
  status = "computed"
}

worked_case "tyre 408 after six years" {
  clause = "18.25"
  on     = "2029-03-13"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "408"
      }
    }
  }
  answer = "not recorded"
  reason = "The code does not give the decade."
  source = "Common practice: six years, advice for the road"
  status = "computed"
}

worked_case "tyre without a code after six years" {
  clause = "18.25"
  on     = "2029-03-12"
  as_built {
    wheel "front left" {
      tyre {
        size = "190/650 R15"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "Common practice: six years, advice for the road"
  status = "computed"
}

worked_case "tyre 4308 in 2026, six years" {
  clause = "18.25"
  on     = "2026-06-01"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "4308"
      }
    }
  }
  answer = "gap"
  reason = "Over six years by any way of counting weeks."
  source = "Common practice: six years, advice for the road"
  status = "computed"
}

worked_case "tyre 1023 from the day, before the week" {
  clause = "18.26"
  on     = "2029-03-05"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "1023"
      }
    }
  }
  answer = "meets"
  reason = "Six years are not over whichever day it was."
  source = "Common practice: six years, advice for the road"
  status = "computed"
}

worked_case "tyre 1023 from the day, within the week" {
  clause = "18.26"
  on     = "2029-03-08"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "1023"
      }
    }
  }
  answer = "marginal"
  reason = "The day within the week decides."
  source = "Common practice: six years, advice for the road"
  status = "computed"
}

worked_case "tyre 1023 from the day, after the week" {
  clause = "18.26"
  on     = "2029-03-13"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "1023"
      }
    }
  }
  answer = "gap"
  reason = "Six years are over whichever day it was."
  source = "Common practice: six years, advice for the road"
  status = "computed"
}

worked_case "tyre without a code, from the day" {
  clause = "18.26"
  on     = "2029-03-08"
  as_built {
    wheel "front left" {
      tyre {
        size = "190/650 R15"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "Common practice: six years, advice for the road"
  status = "computed"
}

worked_case "tyre 5423 from the day" {
  clause = "18.26"
  on     = "2029-03-08"
  as_built {
    wheel "front left" {
      tyre {
        date_code = "5423"
      }
    }
  }
  answer = "not recorded"
  reason = "No year has a week 54."
  source = "Common practice: six years, advice for the road"
  status = "computed"
}

worked_case "straps of 2025 and 2027, the last day" {
  clause = "18.27"
  on     = "2025-12-31"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2025"
      }
      strap "right lap" {
        label_kind = "not valid after"
        not_after  = "2027"
      }
    }
  }
  answer = "meets"
  reason = "The earlier label governs: to 31 December 2025."
  source = "Common practice; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.7"
  status = "computed"
}

worked_case "straps of 2025 and 2027, the day after" {
  clause = "18.27"
  on     = "2026-01-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2025"
      }
      strap "right lap" {
        label_kind = "not valid after"
        not_after  = "2027"
      }
    }
  }
  answer = "gap"
  reason = "The earlier label governs: to 31 December 2025."
  source = "Common practice; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.7"
  status = "computed"
}

worked_case "straps of 2027 and 2025, the day after" {
  clause = "18.27"
  on     = "2026-01-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2027"
      }
      strap "right lap" {
        label_kind = "not valid after"
        not_after  = "2025"
      }
    }
  }
  answer = "gap"
  reason = "Whichever of them is written first."
  source = "Common practice; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.7"
  status = "computed"
}

worked_case "one strap without its date while the other lasts" {
  clause = "18.27"
  on     = "2025-06-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2025"
      }
      strap "right lap" {
        label_kind = "not valid after"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "Common practice; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.7"
  status = "computed"
}

worked_case "straps of a year and of a month" {
  clause = "18.27"
  on     = "2025-12-31"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        label_kind = "not valid after"
        not_after  = "2025-03"
      }
      strap "right lap" {
        label_kind = "not valid after"
        not_after  = "2027"
      }
    }
  }
  answer = "meets"
  reason = "The year counts to its end."
  source = "Common practice; MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.7"
  status = "computed"
}

worked_case "straps of one set" {
  clause = "18.28"
  as_built {
    harness "driver" {
      standard            = "8853-2016"
      homologation_number = "SH-1043.16"
      strap "left lap" {
        standard            = "8853-2016"
        homologation_number = "SH-1043.16"
      }
      strap "right lap" {
        standard            = "8853-2016"
        homologation_number = "SH-1043.16"
      }
    }
  }
  answer = "meets"
  reason = "All labels are of the harness."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.7"
  status = "computed"
}

worked_case "a strap of another standard" {
  clause = "18.28"
  as_built {
    harness "driver" {
      standard            = "8853-2016"
      homologation_number = "SH-1043.16"
      strap "left lap" {
        standard            = "8853-2016"
        homologation_number = "SH-1043.16"
      }
      strap "right lap" {
        standard            = "8853/98"
        homologation_number = "SH-1043.16"
      }
    }
  }
  answer = "gap"
  reason = "Parts of two sets."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.7"
  status = "computed"
}

worked_case "a strap of another homologation" {
  clause = "18.28"
  as_built {
    harness "driver" {
      standard            = "8853-2016"
      homologation_number = "SH-1043.16"
      strap "left lap" {
        standard            = "8853-2016"
        homologation_number = "SH-1043.16"
      }
      strap "right lap" {
        standard            = "8853-2016"
        homologation_number = "SH-0990.16"
      }
    }
  }
  answer = "gap"
  reason = "Parts of two sets."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.7"
  status = "computed"
}

worked_case "a strap whose label has not been read" {
  clause = "18.28"
  as_built {
    harness "driver" {
      standard            = "8853-2016"
      homologation_number = "SH-1043.16"
      strap "left lap" {
        standard            = "8853-2016"
        homologation_number = "SH-1043.16"
      }
      strap "right lap" {
        homologation_number = "SH-1043.16"
      }
    }
  }
  answer = "not recorded"
  reason = "Its standard has to be read."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.7"
  status = "computed"
}

worked_case "a strap whose label has not been read beside a foreign one" {
  clause = "18.28"
  as_built {
    harness "driver" {
      standard            = "8853-2016"
      homologation_number = "SH-1043.16"
      strap "left lap" {
        standard            = "8853/98"
        homologation_number = "SH-1043.16"
      }
      strap "right lap" {
        homologation_number = "SH-1043.16"
      }
    }
  }
  answer = "gap"
  reason = "Mixed whatever the label says."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.7"
  status = "computed"
}

worked_case "straps of one year" {
  clause = "18.29"
  on     = "2026-06-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        made = "2024-02"
      }
      strap "right lap" {
        made = "2024-03-05"
      }
    }
  }
  answer = "meets"
  reason = "Both are of 2024."
  source = "Common practice: a set is sewn at one time"
  status = "computed"
}

worked_case "straps of two years" {
  clause = "18.29"
  on     = "2026-06-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        made = "2024-02"
      }
      strap "right lap" {
        made = "2022"
      }
    }
  }
  answer = "gap"
  reason = "2022 beside 2024: a mixed set."
  source = "Common practice: a set is sewn at one time"
  status = "computed"
}

worked_case "straps of neighbouring days in two years" {
  clause = "18.29"
  on     = "2026-06-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        made = "2023-12-31"
      }
      strap "right lap" {
        made = "2024-01-01"
      }
    }
  }
  answer = "gap"
  reason = "The years on the labels differ."
  source = "Common practice: a set is sewn at one time"
  status = "computed"
}

worked_case "straps of which one has no date" {
  clause = "18.29"
  on     = "2026-06-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        made = "2024-02"
      }
      strap "right lap" {
        width = "45 mm"
      }
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "Common practice: a set is sewn at one time"
  status = "computed"
}

worked_case "29 February: a year on, the last day" {
  clause = "18.30"
  on     = "2025-02-28"
  as_built {
    extinguisher "1" {
      serviced = "2024-02-29"
    }
  }
  answer = "meets"
  reason = "2025 has no 29 February: to its last day, the 28th. Counting over to 1 March would be a day more."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "29 February: a year on, the day after" {
  clause = "18.30"
  on     = "2025-03-01"
  as_built {
    extinguisher "1" {
      serviced = "2024-02-29"
    }
  }
  answer = "gap"
  reason = "2025 has no 29 February: to its last day, the 28th. Counting over to 1 March would be a day more."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "28 February: a year on into a leap year, the last day" {
  clause = "18.30"
  on     = "2024-02-28"
  as_built {
    extinguisher "1" {
      serviced = "2023-02-28"
    }
  }
  answer = "meets"
  reason = "The same day of the month, not the end of the month."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "28 February: a year on into a leap year, the day after" {
  clause = "18.30"
  on     = "2024-02-29"
  as_built {
    extinguisher "1" {
      serviced = "2023-02-28"
    }
  }
  answer = "gap"
  reason = "The same day of the month, not the end of the month."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "1 March: a year on into a leap year, the day before" {
  clause = "18.30"
  on     = "2024-02-29"
  as_built {
    extinguisher "1" {
      serviced = "2023-03-01"
    }
  }
  answer = "meets"
  reason = "To 1 March 2024."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "February alone: a year on, within it" {
  clause = "18.30"
  on     = "2025-02-15"
  as_built {
    extinguisher "1" {
      serviced = "2024-02"
    }
  }
  answer = "marginal"
  reason = "Some day of February 2024."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "February alone: a year on, its end" {
  clause = "18.30"
  on     = "2025-02-28"
  as_built {
    extinguisher "1" {
      serviced = "2024-02"
    }
  }
  answer = "marginal"
  reason = "From 28 or 29 February 2024 it would last, from earlier days not."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "February alone: a year on, after it" {
  clause = "18.30"
  on     = "2025-03-01"
  as_built {
    extinguisher "1" {
      serviced = "2024-02"
    }
  }
  answer = "gap"
  reason = "Even from 29 February 2024 it ends on 28 February 2025."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "a year on from nothing written" {
  clause = "18.30"
  on     = "2025-02-15"
  as_built {
    extinguisher "1" {
      agent = "AFFF"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "31 August: six months on, the last day" {
  clause = "18.31"
  on     = "2026-02-28"
  as_built {
    extinguisher "1" {
      serviced = "2025-08-31"
    }
  }
  answer = "meets"
  reason = "February has no 31st: to its last day."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "31 August: six months on, the day after" {
  clause = "18.31"
  on     = "2026-03-01"
  as_built {
    extinguisher "1" {
      serviced = "2025-08-31"
    }
  }
  answer = "gap"
  reason = "February has no 31st: to its last day."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "31 August: six months on into a leap year" {
  clause = "18.31"
  on     = "2028-02-29"
  as_built {
    extinguisher "1" {
      serviced = "2027-08-31"
    }
  }
  answer = "meets"
  reason = "February 2028 has 29 days."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "28 February: six months on, the day after" {
  clause = "18.31"
  on     = "2026-08-29"
  as_built {
    extinguisher "1" {
      serviced = "2026-02-28"
    }
  }
  answer = "gap"
  reason = "To 28 August: the end of a month is not kept."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "August alone: six months on, within February" {
  clause = "18.31"
  on     = "2026-02-15"
  as_built {
    extinguisher "1" {
      serviced = "2025-08"
    }
  }
  answer = "marginal"
  reason = "Some day of August 2025."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}

worked_case "six months on from nothing written" {
  clause = "18.31"
  on     = "2026-02-15"
  as_built {
    extinguisher "1" {
      agent = "AFFF"
    }
  }
  answer = "not recorded"
  reason = "What hangs on a date that nobody has written down cannot be told."
  source = "Common practice of calendars: where the month has no such day, its last"
  status = "computed"
}
