# How a cage stands on the shell: plates, bolts, backstays, diagonals, papers of the cage,
# static loads. Areas that are printed side by side in cm2 and in2 are rounded: 120 cm2 is
# 18.60 in2 in print, but 18.60 in2 is a little less than 120 cm2.

# Nominal section of the bolts of a foot, from their thread diameter.
term "bolt_section" {
  given = "foot in cage.feet"
  means = "foot.bolt_count * pi/4 * foot.bolt_diameter**2"
}

term "on_a_leg" {
  given = "foot in cage.feet"
  means = "foot.carries in ['main hoop leg', 'front hoop leg', 'lateral hoop leg']"
}

chapter "2" {
  title = "Mounting of the cage"

  clause "2.1" {
    title   = "Reinforcement plate under a leg"
    concern = "safety"
    text_at = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
    across  = "foot in cage.feet"
    where   = "on_a_leg(foot)"
    demand  = "foot.plate_thickness >= 3*mm and foot.plate_contact_area >= 120*sq_cm and foot.plate_welded"
  }

  clause "2.2" {
    title   = "Bolts of a leg"
    concern = "safety"
    text_at = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8"
    across  = "foot in cage.feet"
    where   = "on_a_leg(foot)"
    demand  = "foot.bolt_count >= 3"
  }

  clause "2.3" {
    title   = "Plate under a backstay"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2; UK historic roll-cage sheet"
    across  = "foot in cage.feet"
    where   = "foot.carries == 'backstay'"
    demand  = "foot.plate_area >= 60*sq_cm"
  }

  clause "2.4" {
    title   = "Bolts of a backstay, by nominal section"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
    across  = "foot in cage.feet"
    where   = "foot.carries == 'backstay'"
    demand  = <<-FORMULA
  foot.bolt_count == 1 and foot.double_shear
  or bolt_section(foot) >= 2/3 * max(map(filter(cage.feet, on_a_leg(#)), bolt_section(#)))
FORMULA
  }

  clause "2.5" {
    title   = "Bolts of a backstay, by stress area of M8"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2, with the stress area of M8, 36.6 mm2"
    across  = "foot in cage.feet"
    where   = "foot.carries == 'backstay' and foot.bolt_diameter == 8*mm"
    demand  = "foot.bolt_count * 36.6*sq_mm >= 2/3 * max(map(filter(cage.feet, on_a_leg(#)), .bolt_count * 36.6*sq_mm))"
  }

  clause "2.6" {
    title   = "Bolts of a backstay, by count of equal bolts"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
    across  = "foot in cage.feet"
    where   = "foot.carries == 'backstay'"
    demand  = "all(filter(cage.feet, on_a_leg(#)), foot.bolt_count / .bolt_count >= 2/3)"
  }

  clause "2.7" {
    title   = "Feet of a historic car"
    concern = "safety"
    text_at = "UK historic roll-cage sheet"
    across  = "foot in cage.feet"
    demand  = <<-FORMULA
  foot.plate_thickness >= 3*mm
  and (foot.carries == 'backstay'
    ? foot.bolt_count >= 2 and foot.plate_area >= 60*sq_cm
    : foot.bolt_count >= 3 and foot.plate_area >= 120*sq_cm)
FORMULA
  }

  clause "2.8" {
    title   = "Mounting points of a historic car, at most"
    concern = "safety"
    text_at = "UK historic roll-cage sheet"
    demand  = "len(cage.feet) <= 14"
  }

  clause "2.9" {
    title   = "Mounting points, at least"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-8.3.2"
    demand  = "len(cage.feet) >= 6"
  }

  clause "2.10" {
    title   = "Feet under the club table"
    concern = "safety"
    text_at = "NAVC roll-cage rules, 2009"
    across  = "foot in cage.feet"
    demand  = <<-FORMULA
  foot.plate_thickness >= 3*mm and foot.plate_area >= 100*sq_cm
  and foot.bolt_diameter >= 8*mm and foot.bolt_grade in ['8.8', '10.9', '12.9']
FORMULA
  }

  clause "2.11" {
    title   = "Bolts of removable joints"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 17.1"
    across  = "joint in cage.cage_joints"
    demand  = "joint.bolt_grade in ['8.8', '10.9', '12.9']"
  }

  clause "2.12" {
    title   = "Slope of a backstay, to the vertical"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'backstay'"
    demand  = "tube.angle_to_vertical >= 30*deg and tube.straight"
  }

  clause "2.13" {
    title   = "Slope of a brace, to the horizontal"
    concern = "safety"
    text_at = "FIA Appendix K, 2018"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'backstay'"
    demand  = "90*deg - tube.angle_to_vertical <= 60*deg"
  }

  clause "2.14" {
    title    = "Diagonal"
    concern  = "safety"
    text_at  = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
    across   = "tube in cage.tubes"
    where    = "tube.part == 'hoop diagonal'"
    at_least = 1
    demand   = "tube.straight and tube.upper_end_offset <= 100*mm and tube.lower_end_offset <= 100*mm"
  }

  clause "2.15" {
    title   = "Upper end of a pillar reinforcement"
    concern = "safety"
    text_at = "MSA bulletin of 8 March 2011, K1.3.5(e)"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'windscreen pillar reinforcement'"
    demand  = "tube.upper_end_offset < 100*mm"
  }

  clause "2.16" {
    title   = "Plate of a road-race cage"
    concern = "safety"
    text_at = "NASA CCR 15.6.14"
    across  = "foot in cage.feet"
    demand  = <<-FORMULA
  foot.plate_area <= 100*sq_in and foot.plate_shortest_side >= 2*inch and foot.plate_longest_side <= 12*inch
  and (foot.fixing != 'welded' or foot.plate_thickness >= .080*inch)
FORMULA
  }

  clause "2.17" {
    title   = "Plate of a road-race cage, recommended"
    concern = "advice"
    text_at = "NASA CCR 15.6.14"
    across  = "foot in cage.feet"
    demand  = "foot.plate_area >= 9*sq_in"
  }

  clause "2.18" {
    title   = "Plate of a rally cage"
    concern = "safety"
    text_at = "NASA Rally Sport rules, 4.1.3"
    across  = "foot in cage.feet"
    demand  = <<-FORMULA
  foot.plate_thickness >= .125*inch and 12*sq_in <= foot.plate_area <= 100*sq_in
  and foot.plate_shortest_side >= 2.5*inch and foot.plate_longest_side <= 12*inch
FORMULA
  }

  clause "2.19" {
    title   = "Plate by the size of its tube"
    concern = "safety"
    text_at = "SCCA ProRally and ClubRally rules, 5.6"
    across  = "foot in cage.feet"
    demand  = <<-FORMULA
  foot.plate_thickness >= .125*inch and foot.plate_area >= 10*inch * foot.tube_outside
  and foot.plate_shortest_side >= 2 * foot.tube_outside
FORMULA
  }

  clause "2.20" {
    title   = "Plate, not too large"
    concern = "safety"
    text_at = "SCCA GCR, roll-cage section"
    across  = "foot in cage.feet"
    demand  = "foot.plate_area <= 144*sq_in and foot.plate_thickness <= .25*inch"
  }

  clause "2.21" {
    title   = "Plate of a nationally homologated cage"
    concern = "eligibility"
    text_at = "FIA Appendix J, Art. 253-8.1 b"
    applies = "cage.route == 'homologated' and cage.sold >= date('2003-01-01')"
    demand  = <<-FORMULA
  recorded(cage.identity_plate.maker) and recorded(cage.identity_plate.homologation_number)
  and recorded(cage.identity_plate.serial)
FORMULA
  }

  clause "2.22" {
    title   = "Maker and serial of a cage with a homologation extension"
    concern = "eligibility"
    text_at = "FIA Appendix J, Art. 253-8.1 c"
    applies = "cage.route == 'homologated' and cage.sold >= date('1997-01-01')"
    demand  = "recorded(cage.identity_plate.maker) and recorded(cage.identity_plate.serial)"
  }

  clause "2.23" {
    title   = "Reinforcements of a car with a new passport"
    concern = "safety"
    text_at = "French guide to Art. 253, passports from 2015"
    applies = "car.first_logbook >= date('2015-01-01')"
    demand  = <<-FORMULA
  any(cage.tubes, .part == 'hoop diagonal') and any(cage.tubes, .part == 'windscreen pillar reinforcement')
  and any(cage.tubes, .part == 'door bar') and any(cage.tubes, .part == 'roof diagonal')
FORMULA
  }

  clause "2.24" {
    title   = "Static loads in three directions"
    concern = "safety"
    text_at = "BP minimum standard for rollover protection of light vehicles, 1.1.2"
    demand  = <<-FORMULA
  let mass = car.declared_mass + 150*kg;
  round(cage.vertical_test_load, 1*newton) >= round(7.5 * mass * g0, 1*newton)
  and round(cage.lengthwise_test_load, 1*newton) >= round(5.5 * mass * g0, 1*newton)
  and round(cage.sideways_test_load, 1*newton) >= round(1.5 * mass * g0, 1*newton)
FORMULA
  }

  clause "2.25" {
    title   = "Opening for the door"
    concern = "safety"
    text_at = "FIA Appendix J, drawing 253-49 and Art. 253-8.3.2.1.2"
    across  = "opening in cage.door_apertures"
    demand  = <<-FORMULA
  opening.dimension_a >= 300*mm and opening.dimension_b <= 250*mm and opening.dimension_c <= 300*mm
  and opening.door_bar_height <= opening.opening_height / 2
FORMULA
  }
}

worked_case "leg plate of exactly 120 cm2 and 3 mm" {
  clause = "2.1"
  as_built {
    foot "1" {
      carries            = "main hoop leg"
      plate_thickness    = "3 mm"
      plate_contact_area = "120 cm2"
      plate_welded       = true
    }
  }
  answer = "meets"
  reason = "At least 3 mm and 120 cm2."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "quoted by others"
}

worked_case "leg plate of 119 cm2" {
  clause = "2.1"
  as_built {
    foot "1" {
      carries            = "main hoop leg"
      plate_thickness    = "3 mm"
      plate_contact_area = "119 cm2"
      plate_welded       = true
    }
  }
  answer = "gap"
  reason = "At least 120 cm2."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "quoted by others"
}

worked_case "leg plate of 2.9 mm" {
  clause = "2.1"
  as_built {
    foot "1" {
      carries            = "main hoop leg"
      plate_thickness    = "2.9 mm"
      plate_contact_area = "130 cm2"
      plate_welded       = true
    }
  }
  answer = "gap"
  reason = "At least 3 mm."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "quoted by others"
}

worked_case "leg plate of 18.60 in2" {
  clause = "2.1"
  as_built {
    foot "1" {
      carries            = "main hoop leg"
      plate_thickness    = "3 mm"
      plate_contact_area = "18.60 in2"
      plate_welded       = true
    }
  }
  answer = "gap"
  reason = "18.60 in2 is 119.9998 cm2: the printed equivalent is rounded."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "computed"
}

worked_case "leg plate of 18.61 in2" {
  clause = "2.1"
  as_built {
    foot "1" {
      carries            = "main hoop leg"
      plate_thickness    = "3 mm"
      plate_contact_area = "18.61 in2"
      plate_welded       = true
    }
  }
  answer = "meets"
  reason = "18.61 in2 is 120.06 cm2."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "computed"
}

worked_case "leg plate of 140 cm2 of which 110 touch" {
  clause = "2.1"
  as_built {
    foot "1" {
      carries            = "main hoop leg"
      plate_thickness    = "3 mm"
      plate_contact_area = "110 cm2"
      plate_welded       = true
      plate_area         = "140 cm2"
    }
  }
  answer = "gap"
  reason = "The 120 cm2 are the contact area."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "quoted by others"
}

worked_case "leg plate not welded round" {
  clause = "2.1"
  as_built {
    foot "1" {
      carries            = "main hoop leg"
      plate_thickness    = "3 mm"
      plate_contact_area = "130 cm2"
      plate_welded       = false
    }
  }
  answer = "gap"
  reason = "Welded to the shell."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "quoted by others"
}

worked_case "leg plate with its area alone" {
  clause = "2.1"
  as_built {
    foot "1" {
      carries         = "main hoop leg"
      plate_thickness = "3 mm"
      plate_area      = "140 cm2"
      plate_welded    = true
    }
  }
  answer = "not recorded"
  reason = "How much of it touches the shell is not on the sheet."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "computed"
}

worked_case "three bolts in a leg" {
  clause = "2.2"
  as_built {
    foot "1" {
      carries    = "front hoop leg"
      bolt_count = 3
    }
  }
  answer = "meets"
  reason = "At least three."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8"
  status = "quoted by others"
}

worked_case "two bolts in a leg" {
  clause = "2.2"
  as_built {
    foot "1" {
      carries    = "front hoop leg"
      bolt_count = 2
    }
  }
  answer = "gap"
  reason = "At least three."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8"
  status = "quoted by others"
}

worked_case "backstay plate of 60 cm2" {
  clause = "2.3"
  as_built {
    foot "1" {
      carries    = "backstay"
      plate_area = "60 cm2"
    }
  }
  answer = "meets"
  reason = "At least 60 cm2."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2; UK historic roll-cage sheet"
  status = "quoted by others"
}

worked_case "backstay plate of 59.9 cm2" {
  clause = "2.3"
  as_built {
    foot "1" {
      carries    = "backstay"
      plate_area = "59.9 cm2"
    }
  }
  answer = "gap"
  reason = "At least 60 cm2."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2; UK historic roll-cage sheet"
  status = "quoted by others"
}

worked_case "backstay plate of 9.30 in2" {
  clause = "2.3"
  as_built {
    foot "1" {
      carries    = "backstay"
      plate_area = "9.30 in2"
    }
  }
  answer = "gap"
  reason = "9.30 in2 is 59.9999 cm2: the printed equivalent is rounded."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2; UK historic roll-cage sheet"
  status = "computed"
}

worked_case "2 of 3 bolts by nominal section, exactly two thirds" {
  clause = "2.4"
  as_built {
    foot "hoop leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 2
      bolt_diameter = "8 mm"
      double_shear  = false
    }
  }
  answer = "meets"
  reason = "2 x 50.27 mm2 is two thirds of 3 x 50.27 mm2: exactly on the limit, and at least meets."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "confirmed"
}

worked_case "1 of 3 bolts by nominal section" {
  clause = "2.4"
  as_built {
    foot "hoop leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 1
      bolt_diameter = "8 mm"
      double_shear  = false
    }
  }
  answer = "gap"
  reason = "One third."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "confirmed"
}

worked_case "one bolt in double shear" {
  clause = "2.4"
  as_built {
    foot "hoop leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 1
      bolt_diameter = "10 mm"
      double_shear  = true
    }
  }
  answer = "meets"
  reason = "One bolt in double shear with a welded bush is allowed."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "confirmed"
}

worked_case "3 M8 against 3 M10" {
  clause = "2.4"
  as_built {
    foot "hoop leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "10 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 3
      bolt_diameter = "8 mm"
      double_shear  = false
    }
  }
  answer = "gap"
  reason = "3 x 64 is 192, less than two thirds of 3 x 100."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "computed"
}

worked_case "4 M8 against 3 M10" {
  clause = "2.4"
  as_built {
    foot "hoop leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "10 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 4
      bolt_diameter = "8 mm"
      double_shear  = false
    }
  }
  answer = "meets"
  reason = "4 x 64 is 256, more than 200."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "computed"
}

worked_case "2 of 3 bolts of 5/16 in, exactly two thirds" {
  clause = "2.4"
  as_built {
    foot "hoop leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "5/16 in"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 2
      bolt_diameter = "5/16 in"
      double_shear  = false
    }
  }
  answer = "meets"
  reason = "The ratio does not hang on the unit."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "computed"
}

worked_case "2 bolts of 5/16 in against 3 M8" {
  clause = "2.4"
  as_built {
    foot "hoop leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 2
      bolt_diameter = "5/16 in"
      double_shear  = false
    }
  }
  answer = "gap"
  reason = "5/16 in is 7.94 mm: under two thirds."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "computed"
}

worked_case "2 bolts of unknown size" {
  clause = "2.4"
  as_built {
    foot "hoop leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "stay" {
      carries      = "backstay"
      bolt_count   = 2
      double_shear = false
    }
  }
  answer = "not recorded"
  reason = "The section cannot be told without the size."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "computed"
}

worked_case "2 of 3 bolts by stress area, exactly two thirds" {
  clause = "2.5"
  as_built {
    foot "hoop leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 2
      bolt_diameter = "8 mm"
      double_shear  = false
    }
  }
  answer = "meets"
  reason = "73.2 mm2 of 109.8 mm2."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2, with the stress area of M8, 36.6 mm2"
  status = "computed"
}

worked_case "1 of 3 bolts by stress area" {
  clause = "2.5"
  as_built {
    foot "hoop leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 1
      bolt_diameter = "8 mm"
      double_shear  = false
    }
  }
  answer = "gap"
  reason = "36.6 mm2 of 109.8 mm2."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2, with the stress area of M8, 36.6 mm2"
  status = "computed"
}

worked_case "2 of 3 bolts by count, exactly two thirds" {
  clause = "2.6"
  as_built {
    foot "hoop leg" {
      carries       = "main hoop leg"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 2
      bolt_diameter = "8 mm"
      double_shear  = false
    }
  }
  answer = "meets"
  reason = "Two of three."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "computed"
}

worked_case "3 of 5 bolts by count" {
  clause = "2.6"
  as_built {
    foot "hoop leg" {
      carries       = "main hoop leg"
      bolt_count    = 5
      bolt_diameter = "8 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 3
      bolt_diameter = "8 mm"
      double_shear  = false
    }
  }
  answer = "gap"
  reason = "0.6 is less than two thirds."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "computed"
}

worked_case "4 of 6 bolts by count" {
  clause = "2.6"
  as_built {
    foot "hoop leg" {
      carries       = "main hoop leg"
      bolt_count    = 6
      bolt_diameter = "8 mm"
    }
    foot "stay" {
      carries       = "backstay"
      bolt_count    = 4
      bolt_diameter = "8 mm"
      double_shear  = false
    }
  }
  answer = "meets"
  reason = "Two thirds."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "computed"
}

worked_case "historic backstay foot" {
  clause = "2.7"
  as_built {
    foot "1" {
      carries         = "backstay"
      bolt_count      = 2
      plate_area      = "60 cm2"
      plate_thickness = "3 mm"
    }
  }
  answer = "meets"
  reason = "Two bolts, 60 cm2, 3 mm."
  source = "UK historic roll-cage sheet"
  status = "quoted by others"
}

worked_case "historic leg with two bolts" {
  clause = "2.7"
  as_built {
    foot "1" {
      carries         = "main hoop leg"
      bolt_count      = 2
      plate_area      = "120 cm2"
      plate_thickness = "3 mm"
    }
  }
  answer = "gap"
  reason = "Legs have three."
  source = "UK historic roll-cage sheet"
  status = "quoted by others"
}

worked_case "historic leg of 60 cm2" {
  clause = "2.7"
  as_built {
    foot "1" {
      carries         = "main hoop leg"
      bolt_count      = 3
      plate_area      = "60 cm2"
      plate_thickness = "3 mm"
    }
  }
  answer = "gap"
  reason = "Legs have 120 cm2."
  source = "UK historic roll-cage sheet"
  status = "quoted by others"
}

worked_case "historic leg" {
  clause = "2.7"
  as_built {
    foot "1" {
      carries         = "main hoop leg"
      bolt_count      = 3
      plate_area      = "120 cm2"
      plate_thickness = "3 mm"
    }
  }
  answer = "meets"
  reason = "Three bolts, 120 cm2, 3 mm."
  source = "UK historic roll-cage sheet"
  status = "quoted by others"
}

worked_case "fourteen mounting points" {
  clause = "2.8"
  as_built {
    foot "1" {}
    foot "2" {}
    foot "3" {}
    foot "4" {}
    foot "5" {}
    foot "6" {}
    foot "7" {}
    foot "8" {}
    foot "9" {}
    foot "10" {}
    foot "11" {}
    foot "12" {}
    foot "13" {}
    foot "14" {}
  }
  answer = "meets"
  reason = "Six basic ones and eight more."
  source = "UK historic roll-cage sheet"
  status = "quoted by others"
}

worked_case "fifteen mounting points" {
  clause = "2.8"
  as_built {
    foot "1" {}
    foot "2" {}
    foot "3" {}
    foot "4" {}
    foot "5" {}
    foot "6" {}
    foot "7" {}
    foot "8" {}
    foot "9" {}
    foot "10" {}
    foot "11" {}
    foot "12" {}
    foot "13" {}
    foot "14" {}
    foot "15" {}
  }
  answer = "gap"
  reason = "At most fourteen."
  source = "UK historic roll-cage sheet"
  status = "quoted by others"
}

worked_case "fourteen mounting points, more to come" {
  clause = "2.8"
  as_built {
    foot "1" {}
    foot "2" {}
    foot "3" {}
    foot "4" {}
    foot "5" {}
    foot "6" {}
    foot "7" {}
    foot "8" {}
    foot "9" {}
    foot "10" {}
    foot "11" {}
    foot "12" {}
    foot "13" {}
    foot "14" {}
    unfinished = ["foot"]
  }
  answer = "not recorded"
  reason = "With one more it would be over; the list is not complete."
  source = "UK historic roll-cage sheet"
  status = "computed"
}

worked_case "six mounting points" {
  clause = "2.9"
  as_built {
    foot "1" {}
    foot "2" {}
    foot "3" {}
    foot "4" {}
    foot "5" {}
    foot "6" {}
  }
  answer = "meets"
  reason = "One for each hoop leg, one for each backstay."
  source = "FIA Appendix J, Art. 253-8.3.2"
  status = "from memory"
}

worked_case "five mounting points" {
  clause = "2.9"
  as_built {
    foot "1" {}
    foot "2" {}
    foot "3" {}
    foot "4" {}
    foot "5" {}
  }
  answer = "gap"
  reason = "At least six."
  source = "FIA Appendix J, Art. 253-8.3.2"
  status = "from memory"
}

worked_case "100 cm2, 3 mm, M8, 8.8" {
  clause = "2.10"
  as_built {
    foot "1" {
      plate_thickness = "3 mm"
      plate_area      = "100 cm2"
      bolt_diameter   = "8 mm"
      bolt_grade      = "8.8"
    }
  }
  answer = "meets"
  reason = "Exactly the figures."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "99 cm2" {
  clause = "2.10"
  as_built {
    foot "1" {
      plate_thickness = "3 mm"
      plate_area      = "99 cm2"
      bolt_diameter   = "8 mm"
      bolt_grade      = "8.8"
    }
  }
  answer = "gap"
  reason = "At least 100 cm2."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "15.50 in2" {
  clause = "2.10"
  as_built {
    foot "1" {
      plate_thickness = "3 mm"
      plate_area      = "15.50 in2"
      bolt_diameter   = "8 mm"
      bolt_grade      = "8.8"
    }
  }
  answer = "gap"
  reason = "15.50 in2 is 99.9998 cm2: the printed equivalent is rounded."
  source = "NAVC roll-cage rules, 2009"
  status = "computed"
}

worked_case "M6 bolts" {
  clause = "2.10"
  as_built {
    foot "1" {
      plate_thickness = "3 mm"
      plate_area      = "100 cm2"
      bolt_diameter   = "6 mm"
      bolt_grade      = "8.8"
    }
  }
  answer = "gap"
  reason = "At least M8."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "bolts of grade 5.6" {
  clause = "2.10"
  as_built {
    foot "1" {
      plate_thickness = "3 mm"
      plate_area      = "100 cm2"
      bolt_diameter   = "8 mm"
      bolt_grade      = "5.6"
    }
  }
  answer = "gap"
  reason = "At least 8.8."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "bolts of grade 10.9" {
  clause = "2.10"
  as_built {
    foot "1" {
      plate_thickness = "3 mm"
      plate_area      = "100 cm2"
      bolt_diameter   = "8 mm"
      bolt_grade      = "10.9"
    }
  }
  answer = "meets"
  reason = "At least 8.8."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "removable joint with 8.8 bolts" {
  clause = "2.11"
  as_built {
    cage_joint "1" {
      bolt_grade = "8.8"
    }
  }
  answer = "meets"
  reason = "ISO 8.8."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 17.1"
  status = "confirmed"
}

worked_case "removable joint with unmarked bolts" {
  clause = "2.11"
  as_built {
    cage_joint "1" {
      bolt_grade = "unmarked"
    }
  }
  answer = "gap"
  reason = "ISO 8.8."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 17.1"
  status = "confirmed"
}

worked_case "backstay at exactly 30 degrees to the vertical" {
  clause = "2.12"
  as_built {
    tube "1" {
      part              = "backstay"
      angle_to_vertical = "30 deg"
      straight          = true
    }
  }
  answer = "meets"
  reason = "At least 30 degrees."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "confirmed"
}

worked_case "backstay at 29.9 degrees to the vertical" {
  clause = "2.12"
  as_built {
    tube "1" {
      part              = "backstay"
      angle_to_vertical = "29.9 deg"
      straight          = true
    }
  }
  answer = "gap"
  reason = "At least 30 degrees."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "confirmed"
}

worked_case "bent backstay" {
  clause = "2.12"
  as_built {
    tube "1" {
      part              = "backstay"
      angle_to_vertical = "35 deg"
      straight          = false
    }
  }
  answer = "gap"
  reason = "Straight."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "confirmed"
}

worked_case "30 degrees to the vertical are 60 to the horizontal" {
  clause = "2.13"
  as_built {
    tube "1" {
      part              = "backstay"
      angle_to_vertical = "30 deg"
      straight          = true
    }
  }
  answer = "meets"
  reason = "At most 60 degrees to the horizontal: the same brace, the other way to say it."
  source = "FIA Appendix K, 2018"
  status = "computed"
}

worked_case "25 degrees to the vertical are 65 to the horizontal" {
  clause = "2.13"
  as_built {
    tube "1" {
      part              = "backstay"
      angle_to_vertical = "25 deg"
      straight          = true
    }
  }
  answer = "gap"
  reason = "At most 60 degrees to the horizontal."
  source = "FIA Appendix K, 2018"
  status = "computed"
}

worked_case "diagonal that ends 100 mm away" {
  clause = "2.14"
  as_built {
    tube "9" {
      part             = "hoop diagonal"
      straight         = true
      upper_end_offset = "100 mm"
      lower_end_offset = "100 mm"
    }
  }
  answer = "meets"
  reason = "At most 100 mm from the foot and from the joint of the backstay."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "diagonal that ends 101 mm away" {
  clause = "2.14"
  as_built {
    tube "9" {
      part             = "hoop diagonal"
      straight         = true
      upper_end_offset = "101 mm"
      lower_end_offset = "20 mm"
    }
  }
  answer = "gap"
  reason = "At most 100 mm."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "no diagonal at all" {
  clause = "2.14"
  as_built {
    tube "1" {
      part = "main hoop"
    }
  }
  answer = "gap"
  reason = "At least one."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "bent diagonal" {
  clause = "2.14"
  as_built {
    tube "9" {
      part             = "hoop diagonal"
      straight         = false
      upper_end_offset = "20 mm"
      lower_end_offset = "20 mm"
    }
  }
  answer = "gap"
  reason = "Straight."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "pillar reinforcement 99 mm from the junction" {
  clause = "2.15"
  as_built {
    tube "1" {
      part             = "windscreen pillar reinforcement"
      upper_end_offset = "99 mm"
    }
  }
  answer = "meets"
  reason = "Less than 100 mm."
  source = "MSA bulletin of 8 March 2011, K1.3.5(e)"
  status = "quoted by others"
}

worked_case "pillar reinforcement 100 mm from the junction" {
  clause = "2.15"
  as_built {
    tube "1" {
      part             = "windscreen pillar reinforcement"
      upper_end_offset = "100 mm"
    }
  }
  answer = "gap"
  reason = "Less than 100 mm, so 100 is too far; the diagonal may be."
  source = "MSA bulletin of 8 March 2011, K1.3.5(e)"
  status = "quoted by others"
}

worked_case "road-race plate of 100 in2" {
  clause = "2.16"
  as_built {
    foot "1" {
      plate_area          = "100 in2"
      plate_shortest_side = "8.333 in"
      plate_longest_side  = "12 in"
      plate_thickness     = ".080 in"
      fixing              = "welded"
    }
  }
  answer = "meets"
  reason = "At most 100 in2, sides 2 to 12 in, at least .080 in where welded."
  source = "NASA CCR 15.6.14"
  status = "quoted by others"
}

worked_case "road-race plate of 101 in2" {
  clause = "2.16"
  as_built {
    foot "1" {
      plate_area          = "101 in2"
      plate_shortest_side = "9 in"
      plate_longest_side  = "11.2 in"
      plate_thickness     = ".125 in"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "At most 100 in2."
  source = "NASA CCR 15.6.14"
  status = "quoted by others"
}

worked_case "road-race plate with a side of 1.9 in" {
  clause = "2.16"
  as_built {
    foot "1" {
      plate_area          = "12 in2"
      plate_shortest_side = "1.9 in"
      plate_longest_side  = "6.3 in"
      plate_thickness     = ".125 in"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "Sides of 2 to 12 in."
  source = "NASA CCR 15.6.14"
  status = "quoted by others"
}

worked_case "road-race plate of .078 in" {
  clause = "2.16"
  as_built {
    foot "1" {
      plate_area          = "36 in2"
      plate_shortest_side = "6 in"
      plate_longest_side  = "6 in"
      plate_thickness     = ".078 in"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "At least .080 in where welded."
  source = "NASA CCR 15.6.14"
  status = "quoted by others"
}

worked_case "road-race plate of 9 in2" {
  clause = "2.17"
  as_built {
    foot "1" {
      plate_area          = "9 in2"
      plate_shortest_side = "3 in"
      plate_longest_side  = "3 in"
      plate_thickness     = ".080 in"
      fixing              = "welded"
    }
  }
  answer = "meets"
  reason = "Should have 9 in2."
  source = "NASA CCR 15.6.14"
  status = "quoted by others"
}

worked_case "road-race plate of 8 in2" {
  clause = "2.17"
  as_built {
    foot "1" {
      plate_area          = "8 in2"
      plate_shortest_side = "2 in"
      plate_longest_side  = "4 in"
      plate_thickness     = ".080 in"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "Should have 9 in2: advice, not a demand."
  source = "NASA CCR 15.6.14"
  status = "quoted by others"
}

worked_case "rally plate of 12 in2" {
  clause = "2.18"
  as_built {
    foot "1" {
      plate_area          = "12 in2"
      plate_shortest_side = "3 in"
      plate_longest_side  = "4 in"
      plate_thickness     = "1/8 in"
      fixing              = "welded"
    }
  }
  answer = "meets"
  reason = "At least 1/8 in and 12 in2, sides of 2.5 to 12 in."
  source = "NASA Rally Sport rules, 4.1.3"
  status = "quoted by others"
}

worked_case "rally plate that the road-race rule allows" {
  clause = "2.18"
  as_built {
    foot "1" {
      plate_area          = "9 in2"
      plate_shortest_side = "3 in"
      plate_longest_side  = "3 in"
      plate_thickness     = "1/8 in"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "12 in2 at least."
  source = "NASA Rally Sport rules, 4.1.3"
  status = "quoted by others"
}

worked_case "rally plate of 3 mm" {
  clause = "2.18"
  as_built {
    foot "1" {
      plate_area          = "12 in2"
      plate_shortest_side = "3 in"
      plate_longest_side  = "4 in"
      plate_thickness     = "3 mm"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "1/8 in is 3.175 mm."
  source = "NASA Rally Sport rules, 4.1.3"
  status = "computed"
}

worked_case "plate for a 1.5 in tube" {
  clause = "2.19"
  as_built {
    foot "1" {
      plate_area          = "15 in2"
      plate_shortest_side = "3.0 in"
      plate_longest_side  = "5.0 in"
      plate_thickness     = "1/8 in"
      fixing              = "welded"
      club "Published figures" {
        tube_outside = "1.5 in"
      }
    }
  }
  answer = "meets"
  reason = "A 1.5 in tube wants 15 in2 and sides of 3.0 in: the example of the rule."
  source = "SCCA ProRally and ClubRally rules, 5.6"
  status = "quoted by others"
}

worked_case "plate for a 1.5 in tube, too small" {
  clause = "2.19"
  as_built {
    foot "1" {
      plate_area          = "14.5 in2"
      plate_shortest_side = "3.0 in"
      plate_longest_side  = "4.83 in"
      plate_thickness     = "1/8 in"
      fixing              = "welded"
      club "Published figures" {
        tube_outside = "1.5 in"
      }
    }
  }
  answer = "gap"
  reason = "15 in2 at least."
  source = "SCCA ProRally and ClubRally rules, 5.6"
  status = "quoted by others"
}

worked_case "plate for a 1.75 in tube in the size for 1.5" {
  clause = "2.19"
  as_built {
    foot "1" {
      plate_area          = "15 in2"
      plate_shortest_side = "3.0 in"
      plate_longest_side  = "5.0 in"
      plate_thickness     = "1/8 in"
      fixing              = "welded"
      club "Published figures" {
        tube_outside = "1.75 in"
      }
    }
  }
  answer = "gap"
  reason = "17.5 in2 and sides of 3.5 in."
  source = "SCCA ProRally and ClubRally rules, 5.6"
  status = "computed"
}

worked_case "plate of 144 in2 and 1/4 in" {
  clause = "2.20"
  as_built {
    foot "1" {
      plate_area          = "144 in2"
      plate_shortest_side = "12 in"
      plate_longest_side  = "12 in"
      plate_thickness     = "1/4 in"
      fixing              = "welded"
    }
  }
  answer = "meets"
  reason = "At most 144 in2 and 1/4 in."
  source = "SCCA GCR, roll-cage section"
  status = "quoted by others"
}

worked_case "plate of 8 mm" {
  clause = "2.20"
  as_built {
    foot "1" {
      plate_area          = "100 in2"
      plate_shortest_side = "10 in"
      plate_longest_side  = "10 in"
      plate_thickness     = "8 mm"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "At most 1/4 in, which is 6.35 mm."
  source = "SCCA GCR, roll-cage section"
  status = "quoted by others"
}

worked_case "plate with maker, homologation and serial" {
  clause = "2.21"
  as_built {
    cage {
      route = "homologated"
      club "Published figures" {
        sold = "2003-01-01"
      }
      identity_plate {
        maker               = "Marram Tubeworks"
        homologation_number = "H 41"
        serial              = "118"
      }
    }
  }
  answer = "meets"
  reason = "All three are on it."
  source = "FIA Appendix J, Art. 253-8.1 b"
  status = "quoted by others"
}

worked_case "plate without serial" {
  clause = "2.21"
  as_built {
    cage {
      route = "homologated"
      club "Published figures" {
        sold = "2010-05-20"
      }
      identity_plate {
        maker               = "Marram Tubeworks"
        homologation_number = "H 41"
        serial              = "none"
      }
    }
  }
  answer = "gap"
  reason = "The serial number has to be on it."
  source = "FIA Appendix J, Art. 253-8.1 b"
  status = "quoted by others"
}

worked_case "homologated cage without a plate" {
  clause = "2.21"
  as_built {
    cage {
      route = "homologated"
      club "Published figures" {
        sold = "2010-05-20"
      }
      not_fitted = ["identity_plate"]
    }
  }
  answer = "gap"
  reason = "There has to be one."
  source = "FIA Appendix J, Art. 253-8.1 b"
  status = "quoted by others"
}

worked_case "cage sold on the last day of 2002" {
  clause = "2.21"
  as_built {
    cage {
      route = "homologated"
      club "Published figures" {
        sold = "2002-12-31"
      }
      identity_plate {
        maker               = "Marram Tubeworks"
        homologation_number = "H 41"
        serial              = "none"
      }
    }
  }
  answer = "does not apply"
  reason = "For cages sold from 1 January 2003."
  source = "FIA Appendix J, Art. 253-8.1 b"
  status = "quoted by others"
}

worked_case "cage of 1997 with maker and serial" {
  clause = "2.22"
  as_built {
    cage {
      route = "homologated"
      club "Published figures" {
        sold = "1997-01-01"
      }
      identity_plate {
        maker               = "Marram Tubeworks"
        homologation_number = "H 41"
        serial              = "118"
      }
    }
  }
  answer = "meets"
  reason = "Maker and serial are visible."
  source = "FIA Appendix J, Art. 253-8.1 c"
  status = "quoted by others"
}

worked_case "cage of 1997 without serial" {
  clause = "2.22"
  as_built {
    cage {
      route = "homologated"
      club "Published figures" {
        sold = "1997-01-01"
      }
      identity_plate {
        maker               = "Marram Tubeworks"
        homologation_number = "H 41"
        serial              = "none"
      }
    }
  }
  answer = "gap"
  reason = "Maker and serial have to be visible."
  source = "FIA Appendix J, Art. 253-8.1 c"
  status = "quoted by others"
}

worked_case "cage of 1996 without serial" {
  clause = "2.22"
  as_built {
    cage {
      route = "homologated"
      club "Published figures" {
        sold = "1996-12-31"
      }
      identity_plate {
        maker               = "Marram Tubeworks"
        homologation_number = "H 41"
        serial              = "none"
      }
    }
  }
  answer = "does not apply"
  reason = "For cages sold from 1 January 1997."
  source = "FIA Appendix J, Art. 253-8.1 c"
  status = "quoted by others"
}

worked_case "passport of 2015 with all four reinforcements" {
  clause = "2.23"
  as_built {
    car "1" {
      first_logbook = "2015-01-01"
    }
    tube "1" {
      part = "hoop diagonal"
    }
    tube "2" {
      part = "windscreen pillar reinforcement"
    }
    tube "3" {
      part = "door bar"
    }
    tube "4" {
      part = "roof diagonal"
    }
  }
  answer = "meets"
  reason = "Main hoop, windscreen pillar, doors and roof."
  source = "French guide to Art. 253, passports from 2015"
  status = "quoted by others"
}

worked_case "passport of 2015 without roof reinforcement" {
  clause = "2.23"
  as_built {
    car "1" {
      first_logbook = "2015-01-01"
    }
    tube "1" {
      part = "hoop diagonal"
    }
    tube "2" {
      part = "windscreen pillar reinforcement"
    }
    tube "3" {
      part = "door bar"
    }
  }
  answer = "gap"
  reason = "The roof reinforcement is asked for."
  source = "French guide to Art. 253, passports from 2015"
  status = "quoted by others"
}

worked_case "passport of 2014 without roof reinforcement" {
  clause = "2.23"
  as_built {
    car "1" {
      first_logbook = "2014-12-31"
    }
    tube "1" {
      part = "hoop diagonal"
    }
    tube "2" {
      part = "windscreen pillar reinforcement"
    }
    tube "3" {
      part = "door bar"
    }
  }
  answer = "does not apply"
  reason = "Asked for with passports from 2015."
  source = "French guide to Art. 253, passports from 2015"
  status = "quoted by others"
}

worked_case "loads for 1000 kg" {
  clause = "2.24"
  as_built {
    car "1" {
      declared_mass = "1000 kg"
    }
    cage {
      club "Published figures" {
        vertical_test_load   = "84.582 kN"
        lengthwise_test_load = "62.027 kN"
        sideways_test_load   = "16.916 kN"
      }
    }
  }
  answer = "meets"
  reason = "7.5, 5.5 and 1.5 times (m + 150 kg), with 9.80665 m/s2."
  source = "BP minimum standard for rollover protection of light vehicles, 1.1.2"
  status = "computed"
}

worked_case "loads for 1200 kg" {
  clause = "2.24"
  as_built {
    car "1" {
      declared_mass = "1200 kg"
    }
    cage {
      club "Published figures" {
        vertical_test_load   = "99.292 kN"
        lengthwise_test_load = "72.814 kN"
        sideways_test_load   = "19.858 kN"
      }
    }
  }
  answer = "meets"
  reason = "7.5, 5.5 and 1.5 times (m + 150 kg)."
  source = "BP minimum standard for rollover protection of light vehicles, 1.1.2"
  status = "computed"
}

worked_case "loads for 1350 kg" {
  clause = "2.24"
  as_built {
    car "1" {
      declared_mass = "1350 kg"
    }
    cage {
      club "Published figures" {
        vertical_test_load   = "110.325 kN"
        lengthwise_test_load = "80.905 kN"
        sideways_test_load   = "22.065 kN"
      }
    }
  }
  answer = "meets"
  reason = "7.5, 5.5 and 1.5 times (m + 150 kg)."
  source = "BP minimum standard for rollover protection of light vehicles, 1.1.2"
  status = "computed"
}

worked_case "sideways load a newton short" {
  clause = "2.24"
  as_built {
    car "1" {
      declared_mass = "1000 kg"
    }
    cage {
      club "Published figures" {
        vertical_test_load   = "84.582 kN"
        lengthwise_test_load = "62.027 kN"
        sideways_test_load   = "16.915 kN"
      }
    }
  }
  answer = "gap"
  reason = "16.916 kN are wanted sideways."
  source = "BP minimum standard for rollover protection of light vehicles, 1.1.2"
  status = "computed"
}

worked_case "loads without the 150 kg" {
  clause = "2.24"
  as_built {
    car "1" {
      declared_mass = "1000 kg"
    }
    cage {
      club "Published figures" {
        vertical_test_load   = "73.550 kN"
        lengthwise_test_load = "53.937 kN"
        sideways_test_load   = "14.710 kN"
      }
    }
  }
  answer = "gap"
  reason = "The mass is that of the vehicle and 150 kg."
  source = "BP minimum standard for rollover protection of light vehicles, 1.1.2"
  status = "computed"
}

worked_case "door opening on all four limits" {
  clause = "2.25"
  as_built {
    door_aperture "left" {
      dimension_a     = "300 mm"
      dimension_b     = "250 mm"
      dimension_c     = "300 mm"
      door_bar_height = "450 mm"
      opening_height  = "900 mm"
    }
  }
  answer = "meets"
  reason = "A at least 300, B at most 250, C at most 300, E at most half of H."
  source = "FIA Appendix J, drawing 253-49 and Art. 253-8.3.2.1.2"
  status = "from memory"
}

worked_case "door bar over half of the opening" {
  clause = "2.25"
  as_built {
    door_aperture "left" {
      dimension_a     = "300 mm"
      dimension_b     = "250 mm"
      dimension_c     = "300 mm"
      door_bar_height = "451 mm"
      opening_height  = "900 mm"
    }
  }
  answer = "gap"
  reason = "E at most half of H."
  source = "FIA Appendix J, drawing 253-49 and Art. 253-8.3.2.1.2"
  status = "from memory"
}

worked_case "historic backstay foot with one bolt" {
  clause = "2.7"
  as_built {
    foot "1" {
      carries         = "backstay"
      bolt_count      = 1
      plate_area      = "60 cm2"
      plate_thickness = "3 mm"
    }
  }
  answer = "gap"
  reason = "Two bolts."
  source = "UK historic roll-cage sheet"
  status = "quoted by others"
}

worked_case "historic backstay foot of 59 cm2" {
  clause = "2.7"
  as_built {
    foot "1" {
      carries         = "backstay"
      bolt_count      = 2
      plate_area      = "59 cm2"
      plate_thickness = "3 mm"
    }
  }
  answer = "gap"
  reason = "60 cm2."
  source = "UK historic roll-cage sheet"
  status = "quoted by others"
}

worked_case "historic leg of 119 cm2" {
  clause = "2.7"
  as_built {
    foot "1" {
      carries         = "main hoop leg"
      bolt_count      = 3
      plate_area      = "119 cm2"
      plate_thickness = "3 mm"
    }
  }
  answer = "gap"
  reason = "120 cm2."
  source = "UK historic roll-cage sheet"
  status = "quoted by others"
}

worked_case "historic leg of 2.9 mm" {
  clause = "2.7"
  as_built {
    foot "1" {
      carries         = "main hoop leg"
      bolt_count      = 3
      plate_area      = "120 cm2"
      plate_thickness = "2.9 mm"
    }
  }
  answer = "gap"
  reason = "3 mm."
  source = "UK historic roll-cage sheet"
  status = "quoted by others"
}

worked_case "club plate of 2.9 mm" {
  clause = "2.10"
  as_built {
    foot "1" {
      plate_thickness = "2.9 mm"
      plate_area      = "100 cm2"
      bolt_diameter   = "8 mm"
      bolt_grade      = "8.8"
    }
  }
  answer = "gap"
  reason = "3 mm."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "club bolts of 5/16 in" {
  clause = "2.10"
  as_built {
    foot "1" {
      plate_thickness = "3 mm"
      plate_area      = "100 cm2"
      bolt_diameter   = "5/16 in"
      bolt_grade      = "8.8"
    }
  }
  answer = "gap"
  reason = "5/16 in is 7.94 mm, under M8."
  source = "NAVC roll-cage rules, 2009"
  status = "computed"
}

worked_case "29.5 degrees to the vertical are 60.5 to the horizontal" {
  clause = "2.13"
  as_built {
    tube "1" {
      part              = "backstay"
      angle_to_vertical = "29.5 deg"
      straight          = true
    }
  }
  answer = "gap"
  reason = "At most 60 degrees to the horizontal."
  source = "FIA Appendix K, 2018"
  status = "computed"
}

worked_case "diagonal that ends 101 mm from its foot" {
  clause = "2.14"
  as_built {
    tube "9" {
      part             = "hoop diagonal"
      straight         = true
      upper_end_offset = "20 mm"
      lower_end_offset = "101 mm"
    }
  }
  answer = "gap"
  reason = "At most 100 mm."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "road-race plate with a side of 2 in" {
  clause = "2.16"
  as_built {
    foot "1" {
      plate_area          = "12 in2"
      plate_shortest_side = "2 in"
      plate_longest_side  = "6 in"
      plate_thickness     = ".125 in"
      fixing              = "welded"
    }
  }
  answer = "meets"
  reason = "Sides of 2 to 12 in."
  source = "NASA CCR 15.6.14"
  status = "quoted by others"
}

worked_case "road-race plate with a side of 12.1 in" {
  clause = "2.16"
  as_built {
    foot "1" {
      plate_area          = "36.3 in2"
      plate_shortest_side = "3 in"
      plate_longest_side  = "12.1 in"
      plate_thickness     = ".125 in"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "Sides of 2 to 12 in."
  source = "NASA CCR 15.6.14"
  status = "quoted by others"
}

worked_case "bolted road-race plate of .078 in" {
  clause = "2.16"
  as_built {
    foot "1" {
      plate_area          = "36 in2"
      plate_shortest_side = "6 in"
      plate_longest_side  = "6 in"
      plate_thickness     = ".078 in"
      fixing              = "bolted"
    }
  }
  answer = "meets"
  reason = "The thickness is asked for where it is welded."
  source = "NASA CCR 15.6.14"
  status = "quoted by others"
}

worked_case "road-race plate of 8.9 in2" {
  clause = "2.17"
  as_built {
    foot "1" {
      plate_area          = "8.9 in2"
      plate_shortest_side = "2 in"
      plate_longest_side  = "4.45 in"
      plate_thickness     = ".080 in"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "Should have 9 in2."
  source = "NASA CCR 15.6.14"
  status = "quoted by others"
}

worked_case "rally plate of 100 in2, 12 in long" {
  clause = "2.18"
  as_built {
    foot "1" {
      plate_area          = "100 in2"
      plate_shortest_side = "8.333 in"
      plate_longest_side  = "12 in"
      plate_thickness     = "1/8 in"
      fixing              = "welded"
    }
  }
  answer = "meets"
  reason = "At most 100 in2 and 12 in."
  source = "NASA Rally Sport rules, 4.1.3"
  status = "quoted by others"
}

worked_case "rally plate of 101 in2" {
  clause = "2.18"
  as_built {
    foot "1" {
      plate_area          = "101 in2"
      plate_shortest_side = "9 in"
      plate_longest_side  = "11.22 in"
      plate_thickness     = "1/8 in"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "At most 100 in2."
  source = "NASA Rally Sport rules, 4.1.3"
  status = "quoted by others"
}

worked_case "rally plate 12.1 in long" {
  clause = "2.18"
  as_built {
    foot "1" {
      plate_area          = "36.3 in2"
      plate_shortest_side = "3 in"
      plate_longest_side  = "12.1 in"
      plate_thickness     = "1/8 in"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "Sides of 2.5 to 12 in."
  source = "NASA Rally Sport rules, 4.1.3"
  status = "quoted by others"
}

worked_case "rally plate 2.5 in wide" {
  clause = "2.18"
  as_built {
    foot "1" {
      plate_area          = "15 in2"
      plate_shortest_side = "2.5 in"
      plate_longest_side  = "6 in"
      plate_thickness     = "1/8 in"
      fixing              = "welded"
    }
  }
  answer = "meets"
  reason = "Sides of 2.5 to 12 in."
  source = "NASA Rally Sport rules, 4.1.3"
  status = "quoted by others"
}

worked_case "rally plate 2.45 in wide" {
  clause = "2.18"
  as_built {
    foot "1" {
      plate_area          = "14.7 in2"
      plate_shortest_side = "2.45 in"
      plate_longest_side  = "6 in"
      plate_thickness     = "1/8 in"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "Sides of 2.5 to 12 in."
  source = "NASA Rally Sport rules, 4.1.3"
  status = "quoted by others"
}

worked_case "rally plate of 11.9 in2" {
  clause = "2.18"
  as_built {
    foot "1" {
      plate_area          = "11.9 in2"
      plate_shortest_side = "2.975 in"
      plate_longest_side  = "4 in"
      plate_thickness     = "1/8 in"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "At least 12 in2."
  source = "NASA Rally Sport rules, 4.1.3"
  status = "quoted by others"
}

worked_case "rally plate of .123 in" {
  clause = "2.18"
  as_built {
    foot "1" {
      plate_area          = "12 in2"
      plate_shortest_side = "3 in"
      plate_longest_side  = "4 in"
      plate_thickness     = ".123 in"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "At least 1/8 in."
  source = "NASA Rally Sport rules, 4.1.3"
  status = "quoted by others"
}

worked_case "plate for a 1.5 in tube, a side too short" {
  clause = "2.19"
  as_built {
    foot "1" {
      plate_area          = "15 in2"
      plate_shortest_side = "2.95 in"
      plate_longest_side  = "5.085 in"
      plate_thickness     = "1/8 in"
      fixing              = "welded"
      club "Published figures" {
        tube_outside = "1.5 in"
      }
    }
  }
  answer = "gap"
  reason = "Sides of 3.0 in."
  source = "SCCA ProRally and ClubRally rules, 5.6"
  status = "quoted by others"
}

worked_case "plate for a 1.5 in tube, a little too small" {
  clause = "2.19"
  as_built {
    foot "1" {
      plate_area          = "14.9 in2"
      plate_shortest_side = "3.0 in"
      plate_longest_side  = "4.967 in"
      plate_thickness     = "1/8 in"
      fixing              = "welded"
      club "Published figures" {
        tube_outside = "1.5 in"
      }
    }
  }
  answer = "gap"
  reason = "15 in2 at least."
  source = "SCCA ProRally and ClubRally rules, 5.6"
  status = "quoted by others"
}

worked_case "plate for a 1.5 in tube, a little too thin" {
  clause = "2.19"
  as_built {
    foot "1" {
      plate_area          = "15 in2"
      plate_shortest_side = "3.0 in"
      plate_longest_side  = "5.0 in"
      plate_thickness     = ".123 in"
      fixing              = "welded"
      club "Published figures" {
        tube_outside = "1.5 in"
      }
    }
  }
  answer = "gap"
  reason = "1/8 in at least."
  source = "SCCA ProRally and ClubRally rules, 5.6"
  status = "quoted by others"
}

worked_case "plate of 145 in2" {
  clause = "2.20"
  as_built {
    foot "1" {
      plate_area          = "145 in2"
      plate_shortest_side = "12 in"
      plate_longest_side  = "12.08 in"
      plate_thickness     = "1/4 in"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "At most 144 in2."
  source = "SCCA GCR, roll-cage section"
  status = "quoted by others"
}

worked_case "plate of 6.4 mm" {
  clause = "2.20"
  as_built {
    foot "1" {
      plate_area          = "100 in2"
      plate_shortest_side = "10 in"
      plate_longest_side  = "10 in"
      plate_thickness     = "6.4 mm"
      fixing              = "welded"
    }
  }
  answer = "gap"
  reason = "At most 1/4 in, which is 6.35 mm."
  source = "SCCA GCR, roll-cage section"
  status = "computed"
}

worked_case "downward load a newton short" {
  clause = "2.24"
  as_built {
    car "1" {
      declared_mass = "1000 kg"
    }
    cage {
      club "Published figures" {
        vertical_test_load   = "84.581 kN"
        lengthwise_test_load = "62.027 kN"
        sideways_test_load   = "16.916 kN"
      }
    }
  }
  answer = "gap"
  reason = "84.582 kN are wanted downwards."
  source = "BP minimum standard for rollover protection of light vehicles, 1.1.2"
  status = "computed"
}

worked_case "lengthwise load a newton short" {
  clause = "2.24"
  as_built {
    car "1" {
      declared_mass = "1000 kg"
    }
    cage {
      club "Published figures" {
        vertical_test_load   = "84.582 kN"
        lengthwise_test_load = "62.026 kN"
        sideways_test_load   = "16.916 kN"
      }
    }
  }
  answer = "gap"
  reason = "62.027 kN are wanted lengthwise."
  source = "BP minimum standard for rollover protection of light vehicles, 1.1.2"
  status = "computed"
}

worked_case "door opening of 299 mm" {
  clause = "2.25"
  as_built {
    door_aperture "left" {
      dimension_a     = "299 mm"
      dimension_b     = "250 mm"
      dimension_c     = "300 mm"
      door_bar_height = "450 mm"
      opening_height  = "900 mm"
    }
  }
  answer = "gap"
  reason = "A at least 300 mm."
  source = "FIA Appendix J, drawing 253-49 and Art. 253-8.3.2.1.2"
  status = "from memory"
}

worked_case "door opening with B of 251 mm" {
  clause = "2.25"
  as_built {
    door_aperture "left" {
      dimension_a     = "300 mm"
      dimension_b     = "251 mm"
      dimension_c     = "300 mm"
      door_bar_height = "450 mm"
      opening_height  = "900 mm"
    }
  }
  answer = "gap"
  reason = "B at most 250 mm."
  source = "FIA Appendix J, drawing 253-49 and Art. 253-8.3.2.1.2"
  status = "from memory"
}

worked_case "door opening with C of 301 mm" {
  clause = "2.25"
  as_built {
    door_aperture "left" {
      dimension_a     = "300 mm"
      dimension_b     = "250 mm"
      dimension_c     = "301 mm"
      door_bar_height = "450 mm"
      opening_height  = "900 mm"
    }
  }
  answer = "gap"
  reason = "C at most 300 mm."
  source = "FIA Appendix J, drawing 253-49 and Art. 253-8.3.2.1.2"
  status = "from memory"
}
