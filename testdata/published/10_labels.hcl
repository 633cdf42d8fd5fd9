# What the date on the label of a seat or harness means. The bodies count in many ways, and
# each clause is one of them: to the end of the month or of the year, from the first of
# January that follows, exactly so many years, to the last day of the label's year and some
# years more.

chapter "10" {
  title = "Labels of seats and harnesses"

  clause "10.1" {
    title   = "Seat label with month and year: to the end of that month"
    concern = "safety"
    text_at = "FIA 8855-1999, practice of the label"
    across  = "seat in seats"
    where   = "seat.standard == 'FIA 8855-1999' and seat.label_kind == 'month and year'"
    demand  = "on <= end_of_month(years_after(seat.made, 5))"
  }

  clause "10.2" {
    title   = "Seat label with the year alone: to the end of the year"
    concern = "safety"
    text_at = "FIA 8855-1999, practice of the label"
    across  = "seat in seats"
    where   = "seat.standard == 'FIA 8855-1999' and seat.label_kind == 'year only'"
    demand  = "on <= end_of_year(years_after(seat.made, 5))"
  }

  clause "10.3" {
    title   = "Seat label with a last year"
    concern = "safety"
    text_at = "FIA 8855-1999, practice of the label, from about 2014"
    across  = "seat in seats"
    where   = "seat.label_kind == 'not valid after'"
    demand  = "on <= end_of_label(seat.not_after)"
  }

  clause "10.4" {
    title   = "Seat label with a last year, national extension"
    concern = "safety"
    text_at = "MSUK seat validity notice"
    across  = "seat in seats"
    where   = "seat.label_kind == 'not valid after'"
    demand  = "on <= end_of_year(years_after(seat.not_after, seat.standard in ['FIA 8855-1999', 'FIA 8855-2021'] ? 2 : 0))"
  }

  clause "10.5" {
    title   = "Seat label of 2019, waiver to the end of 2022"
    concern = "safety"
    text_at = "MSUK notice, March 2021"
    across  = "seat in seats"
    where   = "seat.standard == 'FIA 8855-1999' and year_of(seat.not_after) == 2019"
    demand  = "on <= date('2022-12-31')"
  }

  clause "10.6" {
    title   = "Advanced seat: ten years from the year of manufacture"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-16, 2014"
    across  = "seat in seats"
    where   = "seat.standard == 'FIA 8862-2009'"
    demand  = "on <= end_of_year(years_after(seat.made, 10))"
  }

  clause "10.7" {
    title   = "Harness: five years from 1 January of the year after manufacture"
    concern = "safety"
    text_at = "FIA 8853/98, rule of validity"
    across  = ["harness in harnesses", "strap in harness.straps"]

    where  = "harness.standard == 'FIA 8853/98'"
    demand = "on < years_after(start_of_year(years_after(strap.made, 1)), 5)"
  }

  clause "10.8" {
    title   = "Harness standard withdrawn from Appendix J cars"
    concern = "safety"
    text_at = "FIA Appendix J, 8853/98 until the end of 2022"
    across  = "harness in harnesses"
    demand  = "harness.standard != 'FIA 8853/98' or on < date('2022-12-31')"
  }

  clause "10.9" {
    title   = "Harness, national: to the end of the label year"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.5"
    across  = ["harness in harnesses", "strap in harness.straps"]

    where  = "harness.standard in ['FIA 8853/98', 'FIA 8854/98']"
    demand = "on <= end_of_label(strap.not_after)"
  }

  clause "10.10" {
    title   = "Harness, national: label year and five"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.5"
    across  = ["harness in harnesses", "strap in harness.straps"]

    where  = "harness.standard == 'FIA 8853-2016'"
    demand = "on <= end_of_year(years_after(strap.not_after, 5))"
  }

  clause "10.11" {
    title   = "Harness below championships: label and five, a missing label is invalid"
    concern = "safety"
    text_at = "FIA harnesses in New Zealand, below championship level"
    across  = ["harness in harnesses", "strap in harness.straps"]

    demand = "strap.label_kind not in ['label missing', 'no date'] and on <= end_of_year(years_after(strap.not_after, 5))"
  }

  clause "10.12" {
    title   = "Webbing: exactly two years from its date"
    concern = "safety"
    text_at = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
    across  = ["harness in harnesses", "strap in harness.straps"]

    where  = "harness.standard in ['SFI 16.1', 'SFI 16.2', 'SFI 16.5', 'SFI 16.6']"
    demand = "on <= years_after(strap.made, 2)"
  }

  clause "10.13" {
    title   = "Harness: 31 December of the second year"
    concern = "safety"
    text_at = "SCCA memo RM04-01, 13 November 2003"
    across  = ["harness in harnesses", "strap in harness.straps"]

    demand = "on <= end_of_year(years_after(strap.made, 2))"
  }

  clause "10.14" {
    title   = "Harness: 31 December of the fifth year"
    concern = "safety"
    text_at = "SCCA GCR, November 2017, 9.3.18.E"
    across  = ["harness in harnesses", "strap in harness.straps"]

    demand = "on <= end_of_year(years_after(strap.made, 5))"
  }

  clause "10.15" {
    title   = "Harness: through 31 December of the year on the label"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, T.2.2.3"
    across  = ["harness in harnesses", "strap in harness.straps"]

    demand = <<-FORMULA
  harness.standard in ['SFI 16.1', 'SFI 16.5', 'FIA 8853-2016'] and on <= end_of_year(strap.not_after)
FORMULA
  }
}

worked_case "month label on the last day of its month" {
  clause = "10.1"
  on     = "2018-02-28"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "month and year"
      made       = "2013-02"
    }
  }
  answer = "meets"
  reason = "February 2013 and five years: to the end of February 2018."
  source = "FIA 8855-1999, practice of the label"
  status = "quoted by others"
}

worked_case "month label on the day after" {
  clause = "10.1"
  on     = "2018-03-01"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "month and year"
      made       = "2013-02"
    }
  }
  answer = "gap"
  reason = "February 2013 and five years: to the end of February 2018."
  source = "FIA 8855-1999, practice of the label"
  status = "quoted by others"
}

worked_case "month label in the middle of its last month" {
  clause = "10.1"
  on     = "2018-02-15"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "month and year"
      made       = "2013-02"
    }
  }
  answer = "meets"
  reason = "To the end of the month, whatever day it was made."
  source = "FIA 8855-1999, practice of the label"
  status = "quoted by others"
}

worked_case "29 February: a month label that ends on it" {
  clause = "10.1"
  on     = "2020-02-29"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "month and year"
      made       = "2015-02"
    }
  }
  answer = "meets"
  reason = "February 2015 and five years: to the end of February 2020, which has 29 days."
  source = "FIA 8855-1999, practice of the label"
  status = "computed"
}

worked_case "29 February: a month label made in a leap year" {
  clause = "10.1"
  on     = "2021-03-01"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "month and year"
      made       = "2016-02"
    }
  }
  answer = "gap"
  reason = "To the end of February 2021, which has 28 days."
  source = "FIA 8855-1999, practice of the label"
  status = "computed"
}

worked_case "month label of a year ago" {
  clause = "10.1"
  on     = "2018-02-28"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "month and year"
      made       = "2017-08"
    }
  }
  answer = "meets"
  reason = "To the end of August 2022."
  source = "FIA 8855-1999, practice of the label"
  status = "quoted by others"
}

worked_case "year label on the last day of its year" {
  clause = "10.2"
  on     = "2018-12-31"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "year only"
      made       = "2013"
    }
  }
  answer = "meets"
  reason = "2013 and five years: to 31 December 2018."
  source = "FIA 8855-1999, practice of the label"
  status = "quoted by others"
}

worked_case "year label on New Year" {
  clause = "10.2"
  on     = "2019-01-01"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "year only"
      made       = "2013"
    }
  }
  answer = "gap"
  reason = "2013 and five years: to 31 December 2018."
  source = "FIA 8855-1999, practice of the label"
  status = "quoted by others"
}

worked_case "year label is not a month label" {
  clause = "10.1"
  on     = "2018-12-31"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "year only"
      made       = "2013"
    }
  }
  answer = "does not apply"
  reason = "The label has no month."
  source = "FIA 8855-1999, practice of the label"
  status = "quoted by others"
}

worked_case "not valid after 2019, on its last day" {
  clause = "10.3"
  on     = "2019-12-31"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "not valid after"
      made       = "none"
      not_after  = "2019"
    }
  }
  answer = "meets"
  reason = "To 31 December 2019."
  source = "FIA 8855-1999, practice of the label, from about 2014"
  status = "quoted by others"
}

worked_case "not valid after 2019, on New Year" {
  clause = "10.3"
  on     = "2020-01-01"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "not valid after"
      made       = "none"
      not_after  = "2019"
    }
  }
  answer = "gap"
  reason = "To 31 December 2019."
  source = "FIA 8855-1999, practice of the label, from about 2014"
  status = "quoted by others"
}

worked_case "made in January 2014, not valid after 2019" {
  clause = "10.3"
  on     = "2019-12-31"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "not valid after"
      made       = "2014-01"
      not_after  = "2019"
    }
  }
  answer = "meets"
  reason = "January or August 2014: both are good to 31 December 2019."
  source = "FIA 8855-1999, practice of the label, from about 2014"
  status = "quoted by others"
}

worked_case "made in August 2014, not valid after 2019" {
  clause = "10.3"
  on     = "2020-01-01"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "not valid after"
      made       = "2014-08"
      not_after  = "2019"
    }
  }
  answer = "gap"
  reason = "January or August 2014: both are good to 31 December 2019."
  source = "FIA 8855-1999, practice of the label, from about 2014"
  status = "quoted by others"
}

worked_case "not valid after 2019 and two years" {
  clause = "10.4"
  on     = "2021-12-31"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "not valid after"
      made       = "none"
      not_after  = "2019"
    }
  }
  answer = "meets"
  reason = "To 31 December 2021 with the national extension."
  source = "MSUK seat validity notice"
  status = "quoted by others"
}

worked_case "not valid after 2019 and more than two years" {
  clause = "10.4"
  on     = "2022-01-01"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "not valid after"
      made       = "none"
      not_after  = "2019"
    }
  }
  answer = "gap"
  reason = "To 31 December 2021 with the national extension."
  source = "MSUK seat validity notice"
  status = "quoted by others"
}

worked_case "advanced seat has no extension" {
  clause = "10.4"
  on     = "2020-01-01"
  as_built {
    seat "driver" {
      standard   = "8862-2009"
      label_kind = "not valid after"
      made       = "none"
      not_after  = "2019"
    }
  }
  answer = "gap"
  reason = "The extension is for 8855-1999 and 8855-2021."
  source = "MSUK seat validity notice"
  status = "quoted by others"
}

worked_case "8855-2021 with the extension" {
  clause = "10.4"
  on     = "2026-12-31"
  as_built {
    seat "driver" {
      standard   = "8855-2021"
      label_kind = "not valid after"
      made       = "none"
      not_after  = "2024"
    }
  }
  answer = "meets"
  reason = "Two years as for 8855-1999."
  source = "MSUK seat validity notice"
  status = "quoted by others"
}

worked_case "label of 2019 in 2022" {
  clause = "10.5"
  on     = "2022-12-31"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "not valid after"
      made       = "none"
      not_after  = "2019"
    }
  }
  answer = "meets"
  reason = "The waiver ends on 31 December 2022."
  source = "MSUK notice, March 2021"
  status = "quoted by others"
}

worked_case "label of 2019 in 2023" {
  clause = "10.5"
  on     = "2023-01-01"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "not valid after"
      made       = "none"
      not_after  = "2019"
    }
  }
  answer = "gap"
  reason = "The waiver ends on 31 December 2022."
  source = "MSUK notice, March 2021"
  status = "quoted by others"
}

worked_case "label of 2018 in 2022" {
  clause = "10.5"
  on     = "2022-06-01"
  as_built {
    seat "driver" {
      standard   = "8855-1999"
      label_kind = "not valid after"
      made       = "none"
      not_after  = "2018"
    }
  }
  answer = "does not apply"
  reason = "The notice names the label of 2019."
  source = "MSUK notice, March 2021"
  status = "quoted by others"
}

worked_case "advanced seat of 2013 in 2023" {
  clause = "10.6"
  on     = "2023-12-31"
  as_built {
    seat "driver" {
      standard   = "8862-2009"
      label_kind = "month and year"
      made       = "2013-05"
    }
  }
  answer = "meets"
  reason = "Ten years from the year of manufacture."
  source = "FIA Appendix J, Art. 253-16, 2014"
  status = "quoted by others"
}

worked_case "advanced seat of 2013 in 2024" {
  clause = "10.6"
  on     = "2024-01-01"
  as_built {
    seat "driver" {
      standard   = "8862-2009"
      label_kind = "month and year"
      made       = "2013-05"
    }
  }
  answer = "gap"
  reason = "Ten years from the year of manufacture."
  source = "FIA Appendix J, Art. 253-16, 2014"
  status = "quoted by others"
}

worked_case "8853/98 of 2015 at the end of 2020" {
  clause = "10.7"
  on     = "2020-12-31"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left shoulder" {
        made = "2015"
      }
    }
  }
  answer = "meets"
  reason = "Counted from 1 January 2016: to 31 December 2020."
  source = "FIA 8853/98, rule of validity"
  status = "quoted by others"
}

worked_case "8853/98 of 2015 in 2021" {
  clause = "10.7"
  on     = "2021-01-01"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left shoulder" {
        made = "2015"
      }
    }
  }
  answer = "gap"
  reason = "Counted from 1 January 2016: to 31 December 2020."
  source = "FIA 8853/98, rule of validity"
  status = "quoted by others"
}

worked_case "8853/98 made on the first day of 2015" {
  clause = "10.7"
  on     = "2020-12-31"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left shoulder" {
        made = "2015-01-01"
      }
    }
  }
  answer = "meets"
  reason = "The day in the year does not matter."
  source = "FIA 8853/98, rule of validity"
  status = "computed"
}

worked_case "8853/98 made on 29 February 2016" {
  clause = "10.7"
  on     = "2021-12-31"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left shoulder" {
        made = "2016-02-29"
      }
    }
  }
  answer = "meets"
  reason = "Counted from 1 January 2017: to 31 December 2021."
  source = "FIA 8853/98, rule of validity"
  status = "computed"
}

worked_case "two straps of different years" {
  clause = "10.7"
  on     = "2020-06-01"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        made = "2015"
      }
      strap "right lap" {
        made = "2014"
      }
    }
  }
  answer = "gap"
  reason = "The older strap ended with 2019."
  source = "FIA 8853/98, rule of validity"
  status = "computed"
}

worked_case "two straps of different years, the newer one" {
  clause  = "10.7"
  subject = "left lap"
  on      = "2020-06-01"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left lap" {
        made = "2015"
      }
      strap "right lap" {
        made = "2014"
      }
    }
  }
  answer = "meets"
  reason = "The newer strap ends with 2020."
  source = "FIA 8853/98, rule of validity"
  status = "computed"
}

worked_case "8853/98 in November 2022" {
  clause = "10.8"
  on     = "2022-11-30"
  as_built {
    harness "driver" {
      standard = "8853/98"
    }
  }
  answer = "meets"
  reason = "Withdrawn with the end of 2022."
  source = "FIA Appendix J, 8853/98 until the end of 2022"
  status = "quoted by others"
}

worked_case "8853/98 in 2023" {
  clause = "10.8"
  on     = "2023-01-01"
  as_built {
    harness "driver" {
      standard = "8853/98"
    }
  }
  answer = "gap"
  reason = "Withdrawn with the end of 2022."
  source = "FIA Appendix J, 8853/98 until the end of 2022"
  status = "quoted by others"
}

worked_case "8853-2016 in 2023" {
  clause = "10.8"
  on     = "2023-01-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
    }
  }
  answer = "meets"
  reason = "Not the one withdrawn."
  source = "FIA Appendix J, 8853/98 until the end of 2022"
  status = "quoted by others"
}

worked_case "8853/98 with label 2026 at the end of 2026" {
  clause = "10.9"
  on     = "2026-12-31"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left shoulder" {
        not_after = "2026"
      }
    }
  }
  answer = "meets"
  reason = "To 31 December 2026."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.5"
  status = "confirmed"
}

worked_case "8853/98 with label 2026 in 2027" {
  clause = "10.9"
  on     = "2027-01-01"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left shoulder" {
        not_after = "2026"
      }
    }
  }
  answer = "gap"
  reason = "To 31 December 2026."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.5"
  status = "confirmed"
}

worked_case "8854/98 with label 2026 at the end of 2026" {
  clause = "10.9"
  on     = "2026-12-31"
  as_built {
    harness "driver" {
      standard = "8854/98"
      strap "left shoulder" {
        not_after = "2026"
      }
    }
  }
  answer = "meets"
  reason = "The same for 8854/98."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.5"
  status = "confirmed"
}

worked_case "8853-2016 with label 2024 at the end of 2029" {
  clause = "10.10"
  on     = "2029-12-31"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left shoulder" {
        not_after = "2024"
      }
    }
  }
  answer = "meets"
  reason = "The label year and five: to 31 December 2029."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.5"
  status = "confirmed"
}

worked_case "8853-2016 with label 2024 in 2030" {
  clause = "10.10"
  on     = "2030-01-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left shoulder" {
        not_after = "2024"
      }
    }
  }
  answer = "gap"
  reason = "The label year and five: to 31 December 2029."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.5"
  status = "confirmed"
}

worked_case "8853-2016 without the date of its label" {
  clause = "10.10"
  on     = "2027-01-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left lap" {
        serial = "H-1"
      }
    }
  }
  answer = "not recorded"
  reason = "The date of the label is not on the sheet."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.4 and 10.5"
  status = "computed"
}

worked_case "label 2022 and five at the end of 2027" {
  clause = "10.11"
  on     = "2027-12-31"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left shoulder" {
        label_kind = "not valid after"
        not_after  = "2022"
      }
    }
  }
  answer = "meets"
  reason = "Label and five years."
  source = "FIA harnesses in New Zealand, below championship level"
  status = "quoted by others"
}

worked_case "label 2022 and five in 2028" {
  clause = "10.11"
  on     = "2028-01-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left shoulder" {
        label_kind = "not valid after"
        not_after  = "2022"
      }
    }
  }
  answer = "gap"
  reason = "Label and five years."
  source = "FIA harnesses in New Zealand, below championship level"
  status = "quoted by others"
}

worked_case "missing label" {
  clause = "10.11"
  on     = "2024-01-01"
  as_built {
    harness "driver" {
      standard = "8853-2016"
      strap "left shoulder" {
        label_kind = "label missing"
        not_after  = "none"
      }
    }
  }
  answer = "gap"
  reason = "A missing label is invalid."
  source = "FIA harnesses in New Zealand, below championship level"
  status = "quoted by others"
}

worked_case "exactly two years of webbing" {
  clause = "10.12"
  on     = "2012-03-15"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left shoulder" {
        made = "2010-03-15"
      }
    }
  }
  answer = "meets"
  reason = "Two years from its date; whether the day itself still counts is not stated, and is taken to."
  source = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
  status = "computed"
}

worked_case "two years of webbing, a day early" {
  clause = "10.12"
  on     = "2012-03-14"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left shoulder" {
        made = "2010-03-15"
      }
    }
  }
  answer = "meets"
  reason = "Two years from its date."
  source = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
  status = "quoted by others"
}

worked_case "two years of webbing, a day late" {
  clause = "10.12"
  on     = "2012-03-16"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left shoulder" {
        made = "2010-03-15"
      }
    }
  }
  answer = "gap"
  reason = "Two years from its date."
  source = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
  status = "quoted by others"
}

worked_case "two years of webbing are not the end of the year" {
  clause = "10.12"
  on     = "2012-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.5"
      strap "left shoulder" {
        made = "2010-03-15"
      }
    }
  }
  answer = "gap"
  reason = "Exactly two years, not to 31 December."
  source = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
  status = "quoted by others"
}

worked_case "29 February: made on it, two years on" {
  clause = "10.12"
  on     = "2022-02-28"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left shoulder" {
        made = "2020-02-29"
      }
    }
  }
  answer = "meets"
  reason = "29 February 2022 is no day; the two years end on 28 February 2022."
  source = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
  status = "computed"
}

worked_case "29 February: made on it, two years and a day on" {
  clause = "10.12"
  on     = "2022-03-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left shoulder" {
        made = "2020-02-29"
      }
    }
  }
  answer = "gap"
  reason = "29 February 2022 is no day; the two years end on 28 February 2022."
  source = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
  status = "computed"
}

worked_case "webbing made in a month, within that month" {
  clause = "10.12"
  on     = "2012-03-15"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left shoulder" {
        made = "2010-03"
      }
    }
  }
  answer = "marginal"
  reason = "On 15 March 2012 it hangs on the day of manufacture, which the label does not give."
  source = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
  status = "computed"
}

worked_case "webbing made in a month, before that month" {
  clause = "10.12"
  on     = "2012-02-29"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left shoulder" {
        made = "2010-03"
      }
    }
  }
  answer = "meets"
  reason = "Good whatever the day of manufacture."
  source = "SFI specifications 16.1, 16.2, 16.5 and 16.6"
  status = "computed"
}

worked_case "SFI of 2001 at the end of 2003" {
  clause = "10.13"
  on     = "2003-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left shoulder" {
        made = "2001"
      }
    }
  }
  answer = "meets"
  reason = "31 December of the second year."
  source = "SCCA memo RM04-01, 13 November 2003"
  status = "quoted by others"
}

worked_case "SFI of 2001 in 2004" {
  clause = "10.13"
  on     = "2004-01-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left shoulder" {
        made = "2001"
      }
    }
  }
  answer = "gap"
  reason = "31 December of the second year."
  source = "SCCA memo RM04-01, 13 November 2003"
  status = "quoted by others"
}

worked_case "SFI of 2014 at the end of 2019" {
  clause = "10.14"
  on     = "2019-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left shoulder" {
        made = "2014"
      }
    }
  }
  answer = "meets"
  reason = "31 December of the fifth year."
  source = "SCCA GCR, November 2017, 9.3.18.E"
  status = "quoted by others"
}

worked_case "SFI of 2014 in 2020" {
  clause = "10.14"
  on     = "2020-01-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left shoulder" {
        made = "2014"
      }
    }
  }
  answer = "gap"
  reason = "31 December of the fifth year."
  source = "SCCA GCR, November 2017, 9.3.18.E"
  status = "quoted by others"
}

worked_case "SFI label of 2026 in 2026" {
  clause = "10.15"
  on     = "2026-12-31"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left shoulder" {
        not_after = "2026-06"
      }
    }
  }
  answer = "meets"
  reason = "Through 31 December of the year that the label shows."
  source = "Formula SAE Rules 2026, V1.0, T.2.2.3"
  status = "confirmed"
}

worked_case "SFI label of 2025 in 2026" {
  clause = "10.15"
  on     = "2026-01-01"
  as_built {
    harness "driver" {
      standard = "SFI 16.1"
      strap "left shoulder" {
        not_after = "2025-06"
      }
    }
  }
  answer = "gap"
  reason = "The label shows 2025."
  source = "Formula SAE Rules 2026, V1.0, T.2.2.3"
  status = "confirmed"
}

worked_case "8853/98 on a student car" {
  clause = "10.15"
  on     = "2026-06-01"
  as_built {
    harness "driver" {
      standard = "8853/98"
      strap "left shoulder" {
        not_after = "2026"
      }
    }
  }
  answer = "gap"
  reason = "SFI 16.1, 16.5 or FIA 8853/2016."
  source = "Formula SAE Rules 2026, V1.0, T.2.2.3"
  status = "confirmed"
}
