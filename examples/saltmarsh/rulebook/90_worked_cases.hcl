# Worked cases: what the rules committee reckoned by hand when it wrote the clauses, mostly
# on either side of a limit. The clause has to give the same answer.

worked_case "hoop of the first row" {
  clause = "4.2"
  as_built {
    cage {
      route          = "built to the tables"
      base_structure = "main hoop and front hoop"
    }
    tube "1" {
      part    = "main hoop"
      outside = "45 mm"
      wall    = "2.5 mm"
    }
  }
  answer = "meets"
  reason = "Both figures are those of the row."
}

worked_case "hoop a tenth thin" {
  clause = "4.2"
  as_built {
    cage {
      route          = "built to the tables"
      base_structure = "main hoop and front hoop"
    }
    tube "1" {
      part     = "main hoop"
      outside  = "45 mm"
      wall     = "2.4 mm"
      material = "E355"
    }
  }
  answer = "gap"
  reason = "45 mm asks for 2.5 mm, and for 50 mm the outside is short."
}

worked_case "hoop between two rows" {
  clause = "4.2"
  as_built {
    cage {
      route          = "built to the tables"
      base_structure = "main hoop and front hoop"
    }
    tube "1" {
      part     = "main hoop"
      outside  = "46 mm"
      wall     = "2.3 mm"
      material = "E355"
    }
  }
  answer = "gap"
  reason = "More outside than one row and more wall than the other do not make a row."
}

worked_case "hoop in inches" {
  clause = "4.2"
  as_built {
    cage {
      route          = "built to the tables"
      base_structure = "main hoop and front hoop"
    }
    tube "1" {
      part    = "main hoop"
      outside = "44.45 mm"
      wall    = "2.413 mm"
    }
  }
  answer = "meets"
  reason = "The inch row is a row of its own; .095 in is not held against 2.5 mm."
}

worked_case "two lateral hoops have no main hoop" {
  clause = "4.2"
  as_built {
    cage {
      route          = "built to the tables"
      base_structure = "two lateral hoops"
    }
    tube "1" { part = "lateral hoop" }
  }
  answer = "does not apply"
  reason = "The clause is for the other two base structures."
}

worked_case "front hoop by its base structure" {
  clause = "4.3"
  as_built {
    cage {
      route          = "built to the tables"
      base_structure = "main hoop and front hoop"
    }
    tube "2" {
      part    = "front hoop"
      outside = "40 mm"
      wall    = "2.0 mm"
    }
  }
  answer = "meets"
  reason = "With a main hoop behind it the front hoop may be 40 by 2.0 mm."
}

worked_case "lateral hoop by its base structure" {
  clause = "4.3"
  as_built {
    cage {
      route          = "built to the tables"
      base_structure = "two lateral hoops"
    }
    tube "2" {
      part    = "lateral hoop"
      outside = "40 mm"
      wall    = "2.0 mm"
    }
  }
  answer = "gap"
  reason = "A lateral hoop carries the roof alone: 45 by 2.5 mm or 50 by 2.0 mm."
}

worked_case "tensile strength is not yield" {
  clause = "3.2"
  as_built {
    cage { route = "built to the tables" }
    tube_stock "A" {
      yield   = "340 MPa"
      tensile = "480 MPa"
      evidence "material certificate" {}
    }
  }
  answer = "gap"
  reason = "480 MPa is what it breaks at; it yields at 340 MPa."
}

worked_case "yield on the limit" {
  clause = "3.2"
  as_built {
    cage { route = "built to the tables" }
    tube_stock "A" {
      yield   = "350 MPa"
      tensile = "420 MPa"
      evidence "material certificate" {}
    }
  }
  answer = "meets"
  reason = "350 MPa is enough, and the certificate is named."
}

worked_case "no certificate named" {
  clause = "3.2"
  as_built {
    cage { route = "built to the tables" }
    tube_stock "A" { yield = "450 MPa" }
  }
  answer = "gap"
  reason = "The figure is there, the paper is not."
}

worked_case "door bars just under a band" {
  clause = "4.5"
  as_built {
    car "X" { declared_mass = "1349 kg" }
    cage { route = "built to the tables" }
    tube "1" {
      part    = "door bar"
      outside = "40 mm"
      wall    = "2.0 mm"
    }
    tube "2" {
      part    = "door bar"
      outside = "40 mm"
      wall    = "2.0 mm"
    }
    tube "3" {
      part    = "door bar"
      outside = "40 mm"
      wall    = "2.0 mm"
    }
    tube "4" {
      part    = "door bar"
      outside = "40 mm"
      wall    = "2.0 mm"
    }
  }
  answer = "by eye"
  reason = "1349 kg is of the band with 40 by 2.0 mm; that there are two a side is looked at."
}

worked_case "door bars on the edge of a band" {
  clause = "4.5"
  as_built {
    car "X" { declared_mass = "1350 kg" }
    cage { route = "built to the tables" }
    tube "1" {
      part    = "door bar"
      outside = "40 mm"
      wall    = "2.0 mm"
    }
    tube "2" {
      part    = "door bar"
      outside = "40 mm"
      wall    = "2.0 mm"
    }
    tube "3" {
      part    = "door bar"
      outside = "40 mm"
      wall    = "2.0 mm"
    }
    tube "4" {
      part    = "door bar"
      outside = "40 mm"
      wall    = "2.0 mm"
    }
  }
  answer = "gap"
  reason = "1350 kg is of the heavier band."
}

worked_case "three door bars" {
  clause = "4.5"
  as_built {
    car "X" { declared_mass = "1100 kg" }
    cage { route = "built to the tables" }
    tube "1" {
      part = "door bar"
      size = "40 x 2.0 mm"
    }
    tube "2" {
      part = "door bar"
      size = "40 x 2.0 mm"
    }
    tube "3" {
      part = "door bar"
      size = "40 x 2.0 mm"
    }
  }
  answer = "gap"
  reason = "Four are asked for."
}

worked_case "harness bar that may be thin" {
  clause = "4.6"
  as_built {
    cage { route = "built to the tables" }
    tube "9" {
      part    = "harness bar"
      outside = "40 mm"
      wall    = "2.03 mm +/- 0.05 mm"
    }
  }
  answer = "marginal"
  reason = "The reading is enough, the lower end of it, 1.98 mm, is not."
}

worked_case "harness bar proved" {
  clause = "4.6"
  as_built {
    cage { route = "built to the tables" }
    tube "9" {
      part    = "harness bar"
      outside = "40 mm"
      wall    = "2.05 mm +/- 0.05 mm"
    }
  }
  answer = "meets"
  reason = "The whole range is at least 2.0 mm."
}

worked_case "harness bar proved thin" {
  clause = "4.6"
  as_built {
    cage { route = "built to the tables" }
    tube "9" {
      part    = "harness bar"
      outside = "40 mm"
      wall    = "1.90 mm +/- 0.05 mm"
    }
  }
  answer = "gap"
  reason = "The whole range is below 2.0 mm."
}

worked_case "ovality on the limit" {
  clause = "4.14"
  as_built {
    cage { route = "built to the tables" }
    tube "1" {
      bends                     = 2
      least_diameter_at_bend    = "40.5 mm"
      greatest_diameter_at_bend = "45.0 mm"
    }
  }
  answer = "meets"
  reason = "40.5 by 45.0 mm is nine tenths to the dot."
}

worked_case "bend a little tight" {
  clause = "4.13"
  as_built {
    cage { route = "built to the tables" }
    tube "1" {
      bends       = 2
      outside     = "45 mm"
      bend_radius = "134 mm"
    }
  }
  answer = "gap"
  reason = "Three times 45 mm is 135 mm."
}

worked_case "low windscreen" {
  clause = "4.11"
  as_built {
    cage {
      route                  = "built to the tables"
      windscreen_pillar_rise = "200 mm"
    }
  }
  answer = "meets"
  reason = "Up to 200 mm no reinforcement is asked for."
}

worked_case "two bolts of three" {
  clause = "6.6"
  as_built {
    cage {
      route     = "built to the tables"
      bolted_in = true
    }
    foot "leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 2
      bolt_diameter = "8 mm"
      bolt_grade    = "8.8"
      locked_nuts   = true
    }
  }
  answer = "meets"
  reason = "Two thirds, on the limit."
}

worked_case "two thinner bolts" {
  clause = "6.6"
  as_built {
    cage {
      route     = "built to the tables"
      bolted_in = true
    }
    foot "leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 2
      bolt_diameter = "6 mm"
      bolt_grade    = "8.8"
      locked_nuts   = true
    }
  }
  answer = "gap"
  reason = "Two of 6 mm have 72 to the leg's 192."
}

worked_case "one thick bolt" {
  clause = "6.6"
  as_built {
    cage {
      route     = "built to the tables"
      bolted_in = true
    }
    foot "leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 1
      bolt_diameter = "12 mm"
      bolt_grade    = "8.8"
      locked_nuts   = true
    }
  }
  answer = "meets"
  reason = "One of 12 mm has 144, three quarters of 192."
}

worked_case "certificate for another chassis" {
  clause = "5.2"
  as_built {
    car "X" { chassis = "TS-0417" }
    cage {
      route = "certified"
      certificate { chassis = "TS-0418" }
    }
  }
  answer = "gap"
  reason = "It names TS-0418."
}

worked_case "certificate for a model" {
  clause = "5.2"
  as_built {
    car "X" { chassis = "TS-0417" }
    cage {
      route = "certified"
      certificate { chassis = "none" }
    }
  }
  answer = "does not apply"
  reason = "It names no chassis at all."
}

worked_case "heavier than certified" {
  clause = "5.3"
  as_built {
    car "X" {
      weighed_mass                = "1260 kg"
      fuel_mass_when_weighed      = "0 kg"
      spares_when_weighed         = "0 kg"
      crew_when_weighed           = "0 kg"
      crew_equipment_when_weighed = "0 kg"
    }
    cage {
      route = "certified"
      certificate { basis_mass = "1200 kg" }
    }
  }
  answer = "meets"
  reason = "1260 kg to 1200 kg is 1.05, which is borne with."
}

worked_case "certificate without an end, fifteenth year" {
  clause = "5.4"
  on     = "2027-12-31"
  as_built {
    car "X" { chassis = "TS-0417" }
    cage {
      route = "certified"
      certificate {
        issued    = "2012-06-01"
        not_after = "none"
      }
    }
  }
  answer = "meets"
  reason = "Issued in 2012, good to the end of 2027."
}

worked_case "certificate without an end, sixteenth year" {
  clause = "5.4"
  on     = "2028-01-01"
  as_built {
    car "X" { chassis = "TS-0417" }
    cage {
      route = "certified"
      certificate {
        issued    = "2012-06-01"
        not_after = "none"
      }
    }
  }
  answer = "gap"
  reason = "The day after."
}

worked_case "certified again after the work" {
  clause = "5.5"
  as_built {
    car "X" { chassis = "TS-0417" }
    cage {
      route          = "certified"
      modified_since = true
      modified       = "2024-03-01"
      certificate { issued = "2024-04-20" }
    }
  }
  answer = "by eye"
  reason = "The certificate is younger than the change; what was changed is looked at."
}

worked_case "changed after the certificate" {
  clause = "5.5"
  as_built {
    car "X" { chassis = "TS-0417" }
    cage {
      route          = "certified"
      modified_since = true
      modified       = "2026-11-02"
      certificate { issued = "2024-04-20" }
    }
  }
  answer = "gap"
  reason = "Nobody certified the cage as it is now."
}

worked_case "a built cage needs no certificate" {
  clause = "5.1"
  as_built {
    cage { route = "built to the tables" }
  }
  answer = "does not apply"
  reason = "It goes by the tables."
}

worked_case "seat label with a month, last day" {
  clause = "7.2"
  on     = "2027-02-28"
  as_built {
    seat "driver" {
      standard       = "FIA 8855-1999"
      extended_until = "none"
      not_after      = "none"
      made           = "2022-02"
    }
  }
  answer = "meets"
  reason = "Five years from the end of February 2022."
}

worked_case "seat label with a month, day after" {
  clause = "7.2"
  on     = "2027-03-01"
  as_built {
    seat "driver" {
      standard       = "FIA 8855-1999"
      extended_until = "none"
      not_after      = "none"
      made           = "2022-02"
    }
  }
  answer = "gap"
  reason = "1 March 2027 is too late."
}

worked_case "seat made on a leap day" {
  clause = "7.2"
  on     = "2029-02-28"
  as_built {
    seat "driver" {
      standard       = "FIA 8855-2021"
      extended_until = "none"
      not_after      = "none"
      made           = "2024-02-29"
    }
  }
  answer = "meets"
  reason = "29 February 2024 and five years is 28 February 2029."
}

worked_case "seat with ten years" {
  clause = "7.2"
  on     = "2027-12-31"
  as_built {
    seat "driver" {
      standard       = "FIA 8862-2009"
      extended_until = "none"
      not_after      = "none"
      made           = "2017"
    }
  }
  answer = "meets"
  reason = "The label has a year only: ten years from its end."
}

worked_case "strap label with a year, last day" {
  clause = "8.2"
  on     = "2026-12-31"
  as_built {
    harness "driver" {
      strap "left lap" {
        not_after = "2026"
      }
    }
  }
  answer = "meets"
  reason = "The year on the label counts to its end."
}

worked_case "strap label with a year, day after" {
  clause = "8.2"
  on     = "2027-01-01"
  as_built {
    harness "driver" {
      strap "left lap" {
        not_after = "2026"
      }
    }
  }
  answer = "gap"
  reason = "New Year's Day is of another year."
}

worked_case "strap label with its making only" {
  clause = "8.2"
  on     = "2027-03-31"
  as_built {
    harness "driver" {
      strap "left lap" {
        not_after = "none"
        made      = "2022-03"
      }
    }
  }
  answer = "meets"
  reason = "Made in March 2022, good to 31 March 2027."
}

worked_case "strap label with its making only, before the bulletin" {
  clause = "8.2"
  on     = "2027-06-30"
  as_built {
    harness "driver" {
      strap "left lap" {
        not_after = "none"
        made      = "2022-07"
      }
    }
  }
  answer = "meets"
  reason = "Five years from the end of July 2022 were not over yet."
}

worked_case "strap label with its making only, from the bulletin on" {
  clause = "8.2"
  on     = "2027-07-01"
  as_built {
    harness "driver" {
      strap "left lap" {
        not_after = "none"
        made      = "2022-07"
      }
    }
  }
  answer = "gap"
  reason = "2022 was the first year and 2026 the fifth."
}

worked_case "strap in its fifth year" {
  clause = "8.2"
  on     = "2027-12-31"
  as_built {
    harness "driver" {
      strap "left lap" {
        not_after = "none"
        made      = "2023-02"
      }
    }
  }
  answer = "meets"
  reason = "2023 was the first year; the fifth ends today."
}

worked_case "strap without any date" {
  clause = "8.2"
  as_built {
    harness "driver" {
      strap "left lap" {
        not_after = "none"
        made      = "none"
      }
    }
  }
  answer = "gap"
  reason = "A label that shows nothing gives no day to hold to."
}

worked_case "restraint, month to month" {
  clause = "9.3"
  on     = "2027-03-31"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "SFI 38.1"
        made     = "2022-03"
      }
    }
  }
  answer = "meets"
  reason = "March 2022 to the end of March 2027."
}

worked_case "restraint, month to month, day after" {
  clause = "9.3"
  on     = "2027-04-01"
  as_built {
    crew_member "driver" {
      head_restraint {
        standard = "SFI 38.1"
        made     = "2022-03"
      }
    }
  }
  answer = "gap"
  reason = "April has begun."
}

worked_case "bladder certified again" {
  clause = "10.2"
  on     = "2027-03-14"
  as_built {
    fuel_cell {
      standard          = "FT3"
      made              = "2021-06"
      recertified       = "2026-06-10"
      recertified_until = "2028-06-10"
    }
  }
  answer = "meets"
  reason = "Certified anew on 10 June 2026 for two years."
}

worked_case "bladder past its years" {
  clause = "10.2"
  on     = "2026-07-01"
  as_built {
    fuel_cell {
      standard    = "FT3"
      made        = "2021-06"
      recertified = "none"
    }
  }
  answer = "gap"
  reason = "Five years from June 2021, and not certified anew."
}

worked_case "bottle on its last day" {
  clause = "11.3"
  on     = "2027-03-14"
  as_built {
    fire_system {
      fire_bottle "left" { serviced = "2025-03-14" }
    }
  }
  answer = "meets"
  reason = "24 months to the day."
}

worked_case "bottle the day after" {
  clause = "11.3"
  on     = "2027-03-15"
  as_built {
    fire_system {
      fire_bottle "left" { serviced = "2025-03-14" }
    }
  }
  answer = "gap"
  reason = "One day more than 24 months."
}

worked_case "agent of a light car" {
  clause = "11.2"
  as_built {
    car "X" { declared_mass = "1099 kg" }
    fire_system {
      agent      = "AFFF"
      agent_mass = "3 kg"
    }
  }
  answer = "meets"
  reason = "Below 1100 kg 3 kg of foam are asked for."
}

worked_case "agent on the edge of the band" {
  clause = "11.2"
  as_built {
    car "X" { declared_mass = "1100 kg" }
    fire_system {
      agent      = "AFFF"
      agent_mass = "3 kg"
    }
  }
  answer = "gap"
  reason = "1100 kg asks for 4 kg."
}

worked_case "mass on the edge of a band" {
  clause = "2.1"
  as_built {
    car "X" {
      class                       = "2WD open"
      weighed_mass                = "930 kg"
      fuel_mass_when_weighed      = "0 kg"
      spares_when_weighed         = "0 kg"
      crew_when_weighed           = "0 kg"
      crew_equipment_when_weighed = "0 kg"
    }
    engine { capacity = "1600 cc" }
  }
  answer = "meets"
  reason = "1600 cc is of the lower band, 930 kg."
}

worked_case "mass just past the band" {
  clause = "2.1"
  as_built {
    car "X" {
      class                       = "2WD open"
      weighed_mass                = "930 kg"
      fuel_mass_when_weighed      = "0 kg"
      spares_when_weighed         = "0 kg"
      crew_when_weighed           = "0 kg"
      crew_equipment_when_weighed = "0 kg"
    }
    engine { capacity = "1601 cc" }
  }
  answer = "gap"
  reason = "1601 cc asks for 1010 kg."
}

worked_case "declared a little light" {
  clause = "2.2"
  as_built {
    car "X" {
      declared_mass               = "1080 kg"
      weighed_mass                = "1100 kg"
      fuel_mass_when_weighed      = "0 kg"
      spares_when_weighed         = "0 kg"
      crew_when_weighed           = "0 kg"
      crew_equipment_when_weighed = "0 kg"
    }
  }
  answer = "meets"
  reason = "20 kg under the scale are allowed."
}

worked_case "net not fitted" {
  clause = "13.8"
  as_built {
    not_fitted = ["window_net"]
  }
  answer = "does not apply"
  reason = "A net is not asked for."
}

worked_case "noise nobody measured" {
  clause = "15.9"
  as_built {
    car "X" { class = "classic" }
  }
  answer = "not recorded"
  reason = "Without a reading there is nothing to say."
}

worked_case "towing eye without a mark" {
  clause = "13.2"
  as_built {
    towing_eye "front" {
      form       = "rigid"
      thickness  = "10 mm"
      rated_load = "none"
    }
  }
  answer = "meets"
  reason = "10 mm of steel stand in for the load."
}

worked_case "one eye of two" {
  clause  = "13.2"
  subject = "rear"
  as_built {
    car "X" { declared_mass = "1000 kg" }
    towing_eye "front" {
      form       = "rigid"
      thickness  = "8 mm"
      rated_load = "none"
    }
    towing_eye "rear" {
      form       = "strap"
      rated_load = "30 kN"
    }
  }
  answer = "meets"
  reason = "Three times 1000 kg weigh 29.4 kN; the front eye is another matter."
}

worked_case "the other eye" {
  clause  = "13.2"
  subject = "front"
  as_built {
    car "X" { declared_mass = "1000 kg" }
    towing_eye "front" {
      form       = "rigid"
      thickness  = "8 mm"
      rated_load = "none"
    }
    towing_eye "rear" {
      form       = "strap"
      rated_load = "30 kN"
    }
  }
  answer = "gap"
  reason = "No load is marked on it, and 8 mm is less than 10 mm."
}

# Where the joints are: the lie of tubes, with round figures.

worked_case "backstay of sides three and four" {
  clause = "4.9"
  as_built {
    cage { route = "built to the tables" }
    joint "A" {
      at = ["0 mm", "0 mm", "800 mm"]
    }
    joint "B" {
      at = ["-600 mm", "0 mm", "0 mm"]
    }
    tube "5" {
      part    = "backstay"
      through = ["A", "B"]
    }
  }
  answer = "by eye"
  reason = "Off the vertical by 36.9 degrees; that it is straight all along is looked at."
}

worked_case "backstay too steep" {
  clause = "4.9"
  as_built {
    cage { route = "built to the tables" }
    joint "A" {
      at = ["0 mm", "0 mm", "800 mm"]
    }
    joint "B" {
      at = ["-360 mm", "0 mm", "0 mm"]
    }
    tube "5" {
      part    = "backstay"
      through = ["A", "B"]
    }
  }
  answer = "gap"
  reason = "Off the vertical by 24.2 degrees."
}

worked_case "backstay that may be too steep" {
  clause = "4.9"
  as_built {
    cage { route = "built to the tables" }
    joint "A" {
      at        = ["0 mm", "0 mm", "800 mm"]
      tolerance = "3 mm"
    }
    joint "B" {
      at        = ["-465 mm", "0 mm", "0 mm"]
      tolerance = "3 mm"
    }
    tube "5" {
      part    = "backstay"
      through = ["A", "B"]
    }
  }
  answer = "marginal"
  reason = "30.17 degrees as read, but with 3 mm at either end it can be 29.8."
}

worked_case "diagonal near the foot" {
  clause = "4.10"
  as_built {
    cage { route = "built to the tables" }
    joint "A" {
      at = ["0 mm", "600 mm", "0 mm"]
    }
    joint "C" {
      at = ["0 mm", "600 mm", "1000 mm"]
    }
    joint "D" {
      at = ["0 mm", "-600 mm", "1000 mm"]
    }
    joint "B" {
      at = ["0 mm", "-600 mm", "0 mm"]
    }
    joint "E" {
      at = ["0 mm", "-600 mm", "100 mm"]
    }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "C", "D", "B"]
      bend_radius = "150 mm"
    }
    tube "7" {
      part    = "hoop diagonal"
      through = ["C", "E"]
    }
    tube "8" {
      part    = "backstay"
      through = ["C", "F"]
    }
    joint "F" {
      at = ["-700 mm", "600 mm", "0 mm"]
    }
    foot "left" { joint = "A" }
    foot "right" { joint = "B" }
  }
  answer = "meets"
  reason = "100 mm over the foot, and at the hoop where the backstay meets it."
}

worked_case "diagonal halfway up the leg" {
  clause = "4.10"
  as_built {
    cage { route = "built to the tables" }
    joint "A" {
      at = ["0 mm", "600 mm", "0 mm"]
    }
    joint "C" {
      at = ["0 mm", "600 mm", "1000 mm"]
    }
    joint "D" {
      at = ["0 mm", "-600 mm", "1000 mm"]
    }
    joint "B" {
      at = ["0 mm", "-600 mm", "0 mm"]
    }
    joint "E" {
      at = ["0 mm", "-600 mm", "180 mm"]
    }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "C", "D", "B"]
      bend_radius = "150 mm"
    }
    tube "7" {
      part    = "hoop diagonal"
      through = ["C", "E"]
    }
    tube "8" {
      part    = "backstay"
      through = ["C", "F"]
    }
    joint "F" {
      at = ["-700 mm", "600 mm", "0 mm"]
    }
    foot "left" { joint = "A" }
    foot "right" { joint = "B" }
  }
  answer = "gap"
  reason = "180 mm over the foot, and no other junction is nearer."
}

worked_case "leg that leans a little" {
  clause = "4.24"
  as_built {
    cage { route = "built to the tables" }
    joint "A" {
      at = ["0 mm", "600 mm", "0 mm"]
    }
    joint "C" {
      at = ["-170 mm", "600 mm", "1000 mm"]
    }
    joint "D" {
      at = ["-170 mm", "-600 mm", "1000 mm"]
    }
    joint "B" {
      at = ["0 mm", "-600 mm", "0 mm"]
    }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "C", "D", "B"]
      bend_radius = "150 mm"
    }
  }
  answer = "meets"
  reason = "Nine degrees and a half."
}

worked_case "leg that leans too far" {
  clause = "4.24"
  as_built {
    cage { route = "built to the tables" }
    joint "A" {
      at = ["0 mm", "600 mm", "0 mm"]
    }
    joint "C" {
      at = ["-180 mm", "600 mm", "1000 mm"]
    }
    joint "D" {
      at = ["-180 mm", "-600 mm", "1000 mm"]
    }
    joint "B" {
      at = ["0 mm", "-600 mm", "0 mm"]
    }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "C", "D", "B"]
      bend_radius = "150 mm"
    }
  }
  answer = "gap"
  reason = "Ten degrees are 176 mm in a metre."
}

worked_case "halves in one line" {
  clause = "4.32"
  as_built {
    cage { route = "built to the tables" }
    joint "G" {
      at = ["0 mm", "500 mm", "500 mm"]
    }
    joint "X" {
      at = ["0 mm", "0 mm", "0 mm"]
    }
    joint "N" {
      at = ["0 mm", "-500 mm", "-450 mm"]
    }
    joint "H" {
      at = ["0 mm", "-500 mm", "500 mm"]
    }
    joint "O" {
      at = ["0 mm", "500 mm", "-500 mm"]
    }
    tube "7" {
      part    = "hoop diagonal"
      through = ["G", "X"]
    }
    tube "21" {
      part    = "hoop diagonal"
      through = ["X", "N"]
    }
    tube "8" {
      part    = "hoop diagonal"
      through = ["H", "X"]
    }
    tube "22" {
      part    = "hoop diagonal"
      through = ["X", "O"]
    }
  }
  answer = "meets"
  reason = "45 degrees above the crossing, 42 below it."
}

worked_case "halves with a kink" {
  clause = "4.32"
  as_built {
    cage { route = "built to the tables" }
    joint "G" {
      at = ["0 mm", "500 mm", "500 mm"]
    }
    joint "X" {
      at = ["0 mm", "0 mm", "0 mm"]
    }
    joint "N" {
      at = ["0 mm", "-500 mm", "-300 mm"]
    }
    joint "H" {
      at = ["0 mm", "-500 mm", "500 mm"]
    }
    joint "O" {
      at = ["0 mm", "500 mm", "-500 mm"]
    }
    tube "7" {
      part    = "hoop diagonal"
      through = ["G", "X"]
    }
    tube "21" {
      part    = "hoop diagonal"
      through = ["X", "N"]
    }
    tube "8" {
      part    = "hoop diagonal"
      through = ["H", "X"]
    }
    tube "22" {
      part    = "hoop diagonal"
      through = ["X", "O"]
    }
  }
  answer = "gap"
  reason = "45 degrees above the crossing and 31 below it."
}

worked_case "pillar reinforcement with a slight bend" {
  clause = "4.37"
  as_built {
    cage { route = "built to the tables" }
    joint "U" {
      at = ["0 mm", "0 mm", "0 mm"]
    }
    joint "L" {
      at = ["0 mm", "0 mm", "500 mm"]
    }
    joint "J" {
      at = ["-180 mm", "0 mm", "1000 mm"]
    }
    tube "14" {
      part        = "windscreen pillar reinforcement"
      through     = ["U", "L", "J"]
      bend_radius = "130 mm"
    }
  }
  answer = "meets"
  reason = "180 in 500 is 19.8 degrees."
}

worked_case "pillar reinforcement bent too far" {
  clause = "4.37"
  as_built {
    cage { route = "built to the tables" }
    joint "U" {
      at = ["0 mm", "0 mm", "0 mm"]
    }
    joint "L" {
      at = ["0 mm", "0 mm", "500 mm"]
    }
    joint "J" {
      at = ["-190 mm", "0 mm", "1000 mm"]
    }
    tube "14" {
      part        = "windscreen pillar reinforcement"
      through     = ["U", "L", "J"]
      bend_radius = "130 mm"
    }
  }
  answer = "gap"
  reason = "190 in 500 is 20.8 degrees."
}

worked_case "two tubes at a fair angle" {
  clause  = "4.41"
  subject = "A"
  as_built {
    cage { route = "built to the tables" }
    joint "A" {
      at = ["0 mm", "0 mm", "0 mm"]
    }
    joint "B" {
      at = ["-1000 mm", "0 mm", "0 mm"]
    }
    joint "C" {
      at = ["-1000 mm", "370 mm", "0 mm"]
    }
    tube "1" {
      part    = "other"
      through = ["A", "B"]
    }
    tube "2" {
      part    = "other"
      through = ["A", "C"]
    }
  }
  answer = "meets"
  reason = "370 in a metre is 20.3 degrees."
}

worked_case "two tubes at a sharp angle" {
  clause  = "4.41"
  subject = "A"
  as_built {
    cage { route = "built to the tables" }
    joint "A" {
      at = ["0 mm", "0 mm", "0 mm"]
    }
    joint "B" {
      at = ["-1000 mm", "0 mm", "0 mm"]
    }
    joint "C" {
      at = ["-1000 mm", "360 mm", "0 mm"]
    }
    tube "1" {
      part    = "other"
      through = ["A", "B"]
    }
    tube "2" {
      part    = "other"
      through = ["A", "C"]
    }
  }
  answer = "gap"
  reason = "360 in a metre is 19.8 degrees."
}

worked_case "headroom on the limit" {
  clause = "4.43"
  as_built {
    cage { route = "built to the tables" }
    head "driver" {
      top           = ["0 mm", "0 mm", "1000 mm"]
      helmet_radius = "140 mm"
    }
    head "co-driver" { clearance = "80 mm" }
    joint "A" {
      at = ["0 mm", "-500 mm", "1070 mm"]
    }
    joint "B" {
      at = ["0 mm", "500 mm", "1070 mm"]
    }
    tube "4" {
      part    = "transverse member"
      through = ["A", "B"]
      outside = "40 mm"
      wall    = "2 mm"
    }
  }
  answer = "meets"
  reason = "From the top of the helmet to the axis 70 mm, of which the tube takes 20."
}

worked_case "headroom short" {
  clause = "4.43"
  as_built {
    cage { route = "built to the tables" }
    head "driver" {
      top           = ["0 mm", "0 mm", "1000 mm"]
      helmet_radius = "140 mm"
    }
    head "co-driver" { clearance = "80 mm" }
    joint "A" {
      at = ["0 mm", "-500 mm", "1065 mm"]
    }
    joint "B" {
      at = ["0 mm", "500 mm", "1065 mm"]
    }
    tube "4" {
      part    = "transverse member"
      through = ["A", "B"]
      outside = "40 mm"
      wall    = "2 mm"
    }
  }
  answer = "gap"
  reason = "45 mm are left."
}

worked_case "narrow way out" {
  clause = "4.45"
  as_built {
    cage { route = "built to the tables" }
    door_aperture "left" {
      width  = "540 mm"
      height = "620 mm"
    }
  }
  answer = "gap"
  reason = "10 mm short, as the shop measured it without joints."
}

worked_case "hoop of a tube that is not listed, approved" {
  clause = "4.46"
  as_built {
    cage { route = "built to the tables" }
    tube "1" {
      part     = "main hoop"
      size     = "48 x 2.4 mm"
      yield    = "350 MPa"
      material = "E355"
      evidence "club approval" {}
    }
  }
  answer = "by eye"
  reason = "Stiffer and stronger than 45 by 2.5 mm, but in no row; the approval is read by a person."
}

worked_case "hoop of a tube that is not listed, not approved" {
  clause = "4.46"
  as_built {
    cage { route = "built to the tables" }
    tube "1" {
      part     = "main hoop"
      size     = "48 x 2.4 mm"
      yield    = "350 MPa"
      material = "E355"
    }
  }
  answer = "gap"
  reason = "However strong it is, the club has to say so."
}

worked_case "hoop that is weaker than the list" {
  clause = "4.46"
  as_built {
    cage { route = "built to the tables" }
    tube "1" {
      part     = "main hoop"
      size     = "44 x 2.4 mm"
      yield    = "350 MPa"
      material = "E355"
    }
  }
  answer = "does not apply"
  reason = "It is held against the list, and fails there."
}

worked_case "hoop that is listed" {
  clause = "4.46"
  as_built {
    cage { route = "built to the tables" }
    tube "1" {
      part     = "main hoop"
      size     = "50 x 2.0 mm"
      yield    = "350 MPa"
      material = "E355"
    }
  }
  answer = "does not apply"
  reason = "It needs nobody."
}

worked_case "straps that run apart" {
  clause = "8.11"
  as_built {
    cage { route = "built to the tables" }
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "70 mm", "100 mm"]
        anchor_at   = ["-200 mm", "100 mm", "60 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-70 mm", "100 mm"]
        anchor_at   = ["-200 mm", "-100 mm", "60 mm"]
      }
    }
  }
  answer = "meets"
  reason = "30 in 200 to either side is 17 degrees together."
}

worked_case "straps side by side" {
  clause = "8.11"
  as_built {
    cage { route = "built to the tables" }
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "70 mm", "100 mm"]
        anchor_at   = ["-200 mm", "80 mm", "60 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-70 mm", "100 mm"]
        anchor_at   = ["-200 mm", "-80 mm", "60 mm"]
      }
    }
  }
  answer = "gap"
  reason = "6 degrees together."
}
