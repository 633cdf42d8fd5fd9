# Where the crew and the feet are within the cage: helmets and the bars near them, seats and
# straps, plates by their sides, and bolts of feet that are told apart by the joints at which
# they stand. As in the chapter before, what the rules ask follows from places and sizes.

# Whether a foot stands under an end of the main hoop.
term "under_the_hoop" {
  given = "foot in cage.feet"
  means = "any(cage.tubes, .part == 'main hoop' and any(.ends, distance(#, foot) <= 1*mm))"
}

# Whether a foot stands under an end of a backstay.
term "under_a_backstay" {
  given = "foot in cage.feet"
  means = "any(cage.tubes, .part == 'backstay' and any(.ends, distance(#, foot) <= 1*mm))"
}

chapter "16" {
  title = "Crew and feet within the cage"

  clause "16.1" {
    title   = "Padding where a helmet comes within 150 mm, recommended"
    concern = "advice"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
    across  = "head in heads"
    where   = "head.clearance <= 150*mm"
    demand  = "any(cage.paddings, .covered_length > 0*mm)"
  }

  clause "16.2" {
    title   = "Padding of each bar that passes near the top of a helmet, recommended"
    concern = "advice"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
    across  = "tube in cage.tubes"
    where   = "any(heads, distance(tube, .top) - tube.outside / 2 <= 150*mm)"
    demand  = "any(cage.paddings, .standard in ['FIA 8857-2001', 'SFI 45.1'])"
  }

  clause "16.3" {
    title   = "Contact area of the plate under a leg, from its sides"
    concern = "safety"
    text_at = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
    across  = "foot in cage.feet"
    where   = "foot.carries in ['main hoop leg', 'front hoop leg', 'lateral hoop leg']"
    demand  = "foot.plate_contact_area >= 120*sq_cm"
  }

  clause "16.4" {
    title   = "Plate under a backstay, from its sides"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
    across  = "foot in cage.feet"
    where   = "foot.carries == 'backstay' and foot.shape == 'flat'"
    demand  = "foot.plate_contact_area >= 60*sq_cm"
  }

  clause "16.5" {
    title   = "Bolts of a backstay foot, feet told by their joints"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
    across  = "foot in cage.feet"
    where   = "under_a_backstay(foot)"
    demand  = <<-FORMULA
  foot.bolt_count == 1 and foot.double_shear
  or bolt_section(foot) >= 2/3 * max(map(filter(cage.feet, under_the_hoop(#)), bolt_section(#)))
FORMULA
  }

  clause "16.6" {
    title   = "Width of the cage"
    concern = "safety"
    text_at = "Formula Off Road technical rules, App. B, licences from 2006"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'main hoop'"
    demand  = "distance(first(tube.corners), last(tube.corners)) + tube.outside >= 100*cm"
  }

  clause "16.7" {
    title   = "Middle of a seat to the outer edge of the cage"
    concern = "safety"
    text_at = "Formula Off Road technical rules, App. B, licences from 2006"
    across  = "seat in seats"
    demand  = <<-FORMULA
  let half = find(cage.tubes, .part == 'main hoop').outside / 2;
  max(map(cage.joints, .y)) + half - seat.reference_y >= 40*cm
  and seat.reference_y - min(map(cage.joints, .y)) + half >= 40*cm
FORMULA
  }

  clause "16.8" {
    title   = "Hoop over the helmet, to its axis"
    concern = "safety"
    text_at = "Open-road event rules, safety-cage section"
    across  = "head in heads"
    demand  = "let hoop = find(cage.tubes, .part == 'main hoop'); all(hoop.corners, above(#, head) >= 2*inch)"
  }

  clause "16.9" {
    title   = "Hoop close behind the driver, from the top of the helmet"
    concern = "safety"
    text_at = "Open-road event rules, safety-cage section"
    across  = "head in heads"
    demand  = "let hoop = find(cage.tubes, .part == 'main hoop'); all(hoop.corners, 0*mm <= ahead_of(head, #) <= 6*inch)"
  }

  clause "16.10" {
    title   = "Legs of the hoop apart, inside"
    concern = "safety"
    text_at = "Open-road event rules, safety-cage section"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'main hoop'"
    demand  = "distance(first(tube.ends), last(tube.ends)) - tube.outside >= 15*inch"
  }

  clause "16.11" {
    title   = "Slope of both shoulder straps"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-6.2, 2013"
    across  = "harness in harnesses"
    demand  = "harness.strap['left shoulder'].angle_to_horizontal <= 45*deg and harness.strap['right shoulder'].angle_to_horizontal <= 45*deg"
  }

  clause "16.12" {
    title   = "Shoulder straps, apart or together"
    concern = "safety"
    text_at = "FIA Appendix J, 1996, harness article"
    across  = "harness in harnesses"
    demand  = "harness.strap['left shoulder'].sideways_angle <= 20*deg and harness.strap['right shoulder'].sideways_angle <= 20*deg"
  }

  clause "16.13" {
    title   = "Shoulder straps of a small frame, slope and spacing"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, T.2"
    across  = "harness in harnesses"
    demand  = <<-FORMULA
  -10*deg <= harness.strap['left shoulder'].angle_to_horizontal <= 20*deg
  and -10*deg <= harness.strap['right shoulder'].angle_to_horizontal <= 20*deg
  and 175*mm <= harness.shoulder_spacing <= 235*mm
FORMULA
  }
}

worked_case "bar 150 mm over the helmet, padded" {
  clause = "16.1"
  as_built {
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["0 mm", "300 mm", "1062.7 mm"] }
    joint "Q1" { at = ["0 mm", "-300 mm", "1062.7 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
    padding "1" {
      tube    = "1"
      between = ["P1", "Q1"]
    }
  }
  answer = "meets"
  reason = "1062.7 - 12.7 - 900 = 150 mm: within, and its 600 mm are covered."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
  status = "confirmed"
}

worked_case "bar 150 mm over the helmet, bare" {
  clause = "16.1"
  as_built {
    not_fitted = ["padding"]
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["0 mm", "300 mm", "1062.7 mm"] }
    joint "Q1" { at = ["0 mm", "-300 mm", "1062.7 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
  }
  answer = "gap"
  reason = "On the limit, and no padding is fitted."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
  status = "confirmed"
}

worked_case "bar 150 mm over the helmet, padding not mentioned" {
  clause = "16.1"
  as_built {
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["0 mm", "300 mm", "1062.7 mm"] }
    joint "Q1" { at = ["0 mm", "-300 mm", "1062.7 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
  }
  answer = "not recorded"
  reason = "Nothing says whether there is padding."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
  status = "confirmed"
}

worked_case "bar 150.1 mm over the helmet, bare" {
  clause = "16.1"
  as_built {
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["0 mm", "300 mm", "1062.8 mm"] }
    joint "Q1" { at = ["0 mm", "-300 mm", "1062.8 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
  }
  answer = "does not apply"
  reason = "1062.8 - 12.7 - 900 = 150.1 mm."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
  status = "confirmed"
}

worked_case "bar 60 mm over the helmet, padding not placed" {
  clause = "16.1"
  as_built {
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["0 mm", "300 mm", "972.7 mm"] }
    joint "Q1" { at = ["0 mm", "-300 mm", "972.7 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
    padding "1" {
      tube = "1"
    }
  }
  answer = "meets"
  reason = "972.7 - 12.7 - 900 = 60 mm. Whatever its length, what is there covers some."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
  status = "confirmed"
}

worked_case "helmet of unknown size under a bare bar" {
  clause = "16.1"
  as_built {
    head "driver" {
      top = ["0 mm", "0 mm", "900 mm"]
    }
    joint "P1" { at = ["-200 mm", "300 mm", "1000 mm"] }
    joint "Q1" { at = ["-200 mm", "-300 mm", "1000 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
  }
  answer = "not recorded"
  reason = "Whether the bar is within 150 mm hangs on the helmet's radius."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
  status = "confirmed"
}

worked_case "bar 150 mm from the top of the helmet, padded" {
  clause = "16.2"
  as_built {
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["-97.62 mm", "300 mm", "1030.16 mm"] }
    joint "Q1" { at = ["-97.62 mm", "-300 mm", "1030.16 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
    padding "1" {
      tube     = "1"
      between  = ["P1", "Q1"]
      standard = "FIA 8857-2001"
    }
  }
  answer = "meets"
  reason = "hypot(97.62, 130.16) = 162.7 mm, less 12.7 mm is 150 mm."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
  status = "computed"
}

worked_case "bar 150 mm from the top of the helmet, bare" {
  clause = "16.2"
  as_built {
    not_fitted = ["padding"]
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["-97.62 mm", "300 mm", "1030.16 mm"] }
    joint "Q1" { at = ["-97.62 mm", "-300 mm", "1030.16 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
  }
  answer = "gap"
  reason = "hypot(97.62, 130.16) - 12.7 = 150 mm, on the limit."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
  status = "computed"
}

worked_case "bar 151 mm from the top of the helmet" {
  clause = "16.2"
  as_built {
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["0 mm", "300 mm", "1063.7 mm"] }
    joint "Q1" { at = ["0 mm", "-300 mm", "1063.7 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
  }
  answer = "does not apply"
  reason = "1063.7 - 900 - 12.7 = 151 mm."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
  status = "confirmed"
}

worked_case "padding without a label of its standard" {
  clause = "16.2"
  as_built {
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["0 mm", "300 mm", "972.7 mm"] }
    joint "Q1" { at = ["0 mm", "-300 mm", "972.7 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
    padding "1" {
      tube    = "1"
      between = ["P1", "Q1"]
    }
  }
  answer = "not recorded"
  reason = "A bar 60 mm over the helmet, and padding of which nothing is recorded."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
  status = "confirmed"
}

worked_case "plate of 150 by 80 mm" {
  clause = "16.3"
  as_built {
    foot "1" {
      carries        = "main hoop leg"
      contact_length = "150 mm"
      contact_width  = "80 mm"
    }
  }
  answer = "meets"
  reason = "15 x 8 = 120 cm2, exactly."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "quoted by others"
}

worked_case "plate of 149 by 80 mm" {
  clause = "16.3"
  as_built {
    foot "1" {
      carries        = "main hoop leg"
      contact_length = "149 mm"
      contact_width  = "80 mm"
    }
  }
  answer = "gap"
  reason = "14.9 x 8 = 119.2 cm2."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "quoted by others"
}

worked_case "plate of 120 by 100 mm" {
  clause = "16.3"
  as_built {
    foot "1" {
      carries        = "main hoop leg"
      contact_length = "120 mm"
      contact_width  = "100 mm"
    }
  }
  answer = "meets"
  reason = "12 x 10 = 120 cm2, exactly."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "quoted by others"
}

worked_case "plate of 6 by 3.1 in" {
  clause = "16.3"
  as_built {
    foot "1" {
      carries        = "main hoop leg"
      contact_length = "6 in"
      contact_width  = "3.1 in"
    }
  }
  answer = "gap"
  reason = "18.60 in2 is 119.9998 cm2: the printed equivalent of 120 cm2 is rounded."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "computed"
}

worked_case "plate of 6 by 3.11 in" {
  clause = "16.3"
  as_built {
    foot "1" {
      carries        = "main hoop leg"
      contact_length = "6 in"
      contact_width  = "3.11 in"
    }
  }
  answer = "meets"
  reason = "18.66 in2 is 120.39 cm2."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "computed"
}

worked_case "folded plate of 130 cm2 that touches on 115" {
  clause = "16.3"
  as_built {
    foot "1" {
      carries        = "main hoop leg"
      contact_length = "115 mm"
      contact_width  = "100 mm"
      plate_area     = "130 cm2"
    }
  }
  answer = "gap"
  reason = "The contact counts: 115 x 100 mm = 115 cm2, whatever the sheet measures laid flat."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "quoted by others"
}

worked_case "plate with one side measured" {
  clause = "16.3"
  as_built {
    foot "1" {
      carries        = "main hoop leg"
      contact_length = "150 mm"
    }
  }
  answer = "not recorded"
  reason = "150 mm long, how wide is not known."
  source = "FIA-style mounting rule, after FIA Appendix J, Art. 253-8, homologations from 2007"
  status = "quoted by others"
}

worked_case "backstay plate of 100 by 60 mm" {
  clause = "16.4"
  as_built {
    foot "1" {
      carries        = "backstay"
      contact_length = "100 mm"
      contact_width  = "60 mm"
      shape          = "flat"
    }
  }
  answer = "meets"
  reason = "10 x 6 = 60 cm2, exactly."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "confirmed"
}

worked_case "backstay plate of 99 by 60 mm" {
  clause = "16.4"
  as_built {
    foot "1" {
      carries        = "backstay"
      contact_length = "99 mm"
      contact_width  = "60 mm"
      shape          = "flat"
    }
  }
  answer = "gap"
  reason = "9.9 x 6 = 59.4 cm2."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "confirmed"
}

worked_case "backstay plate of 3.1 by 3 in" {
  clause = "16.4"
  as_built {
    foot "1" {
      carries        = "backstay"
      contact_length = "3.1 in"
      contact_width  = "3 in"
      shape          = "flat"
    }
  }
  answer = "gap"
  reason = "9.30 in2 is 59.9999 cm2: the printed equivalent of 60 cm2 is rounded."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "computed"
}

worked_case "backstay plate of unknown width" {
  clause = "16.4"
  as_built {
    foot "1" {
      carries        = "backstay"
      contact_length = "100 mm"
      shape          = "flat"
    }
  }
  answer = "not recorded"
  reason = "100 mm long."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "confirmed"
}

worked_case "2 of 3 bolts by joints, exactly two thirds" {
  clause  = "16.5"
  subject = "3"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-580 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
    foot "1" {
      joint         = "A"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "2" {
      joint         = "D"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "3" {
      joint         = "E"
      bolt_count    = 2
      bolt_diameter = "8 mm"
    }
  }
  answer = "meets"
  reason = "2 x 50.27 = 100.53 mm2 over 3 x 50.27 = 150.80 mm2: 2/3, on the limit."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "computed"
}

worked_case "1 of 3 bolts by joints" {
  clause  = "16.5"
  subject = "3"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-580 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
    foot "1" {
      joint         = "A"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "2" {
      joint         = "D"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "3" {
      joint         = "E"
      bolt_count    = 1
      bolt_diameter = "8 mm"
      double_shear  = false
    }
  }
  answer = "gap"
  reason = "50.27 over 150.80 mm2 is 1/3."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "confirmed"
}

worked_case "1 bolt in double shear by joints" {
  clause  = "16.5"
  subject = "3"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-580 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
    foot "1" {
      joint         = "A"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "2" {
      joint         = "D"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "3" {
      joint         = "E"
      bolt_count    = 1
      bolt_diameter = "8 mm"
      double_shear  = true
    }
  }
  answer = "meets"
  reason = "One is enough in double shear with a welded bush."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "confirmed"
}

worked_case "2 M8 against 3 M10 by joints" {
  clause  = "16.5"
  subject = "3"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-580 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
    foot "1" {
      joint         = "A"
      bolt_count    = 3
      bolt_diameter = "10 mm"
    }
    foot "2" {
      joint         = "D"
      bolt_count    = 3
      bolt_diameter = "10 mm"
    }
    foot "3" {
      joint         = "E"
      bolt_count    = 2
      bolt_diameter = "8 mm"
    }
  }
  answer = "gap"
  reason = "100.53 over 235.62 mm2 is 0.427."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "computed"
}

worked_case "2 M10 against 3 M8 by joints" {
  clause  = "16.5"
  subject = "3"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-580 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
    foot "1" {
      joint         = "A"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "2" {
      joint         = "D"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "3" {
      joint         = "E"
      bolt_count    = 2
      bolt_diameter = "10 mm"
    }
  }
  answer = "meets"
  reason = "157.08 over 150.80 mm2 is 1.042."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "computed"
}

worked_case "the stronger leg counts by joints" {
  clause  = "16.5"
  subject = "3"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-580 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
    foot "1" {
      joint         = "A"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "2" {
      joint         = "D"
      bolt_count    = 4
      bolt_diameter = "8 mm"
    }
    foot "3" {
      joint         = "E"
      bolt_count    = 2
      bolt_diameter = "8 mm"
    }
  }
  answer = "gap"
  reason = "The right leg has 4 M8: 2/4 is less than 2/3."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "computed"
}

worked_case "foot under the hoop is no backstay foot" {
  clause  = "16.5"
  subject = "1"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-580 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
    foot "1" {
      joint         = "A"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "2" {
      joint         = "D"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "3" {
      joint         = "E"
      bolt_count    = 2
      bolt_diameter = "8 mm"
    }
  }
  answer = "does not apply"
  reason = "It stands at the hoop's own end, 580 mm from the backstay's."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "confirmed"
}

worked_case "bolts of unknown size by joints" {
  clause  = "16.5"
  subject = "3"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-580 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
    foot "1" {
      joint         = "A"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "2" {
      joint         = "D"
      bolt_count    = 3
      bolt_diameter = "8 mm"
    }
    foot "3" {
      joint        = "E"
      bolt_count   = 2
      double_shear = false
    }
  }
  answer = "not recorded"
  reason = "Two bolts, how thick is not recorded."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.2"
  status = "confirmed"
}

worked_case "corners 955 mm apart, 45 mm tube" {
  clause = "16.6"
  as_built {
    joint "A" { at = ["0 mm", "480 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "477.5 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-477.5 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-480 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "45 mm"
    }
  }
  answer = "meets"
  reason = "955 + 45 = 1000 mm, exactly."
  source = "Formula Off Road technical rules, App. B, licences from 2006"
  status = "confirmed"
}

worked_case "corners 954 mm apart, 45 mm tube" {
  clause = "16.6"
  as_built {
    joint "A" { at = ["0 mm", "480 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "477 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-477 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-480 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "45 mm"
    }
  }
  answer = "gap"
  reason = "954 + 45 = 999 mm."
  source = "Formula Off Road technical rules, App. B, licences from 2006"
  status = "confirmed"
}

worked_case "corners 954 mm apart, 50 mm tube" {
  clause = "16.6"
  as_built {
    joint "A" { at = ["0 mm", "480 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "477 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-477 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-480 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "50 mm"
    }
  }
  answer = "meets"
  reason = "954 + 50 = 1004 mm."
  source = "Formula Off Road technical rules, App. B, licences from 2006"
  status = "confirmed"
}

worked_case "corners 960 mm apart, tube not measured" {
  clause = "16.6"
  as_built {
    joint "A" { at = ["0 mm", "480 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "480 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-480 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-480 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "not recorded"
  reason = "960 mm from axis to axis, 1000 mm outside or not."
  source = "Formula Off Road technical rules, App. B, licences from 2006"
  status = "confirmed"
}

worked_case "seat 200 mm to the left" {
  clause = "16.7"
  as_built {
    joint "A" { at = ["0 mm", "577.5 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "577.5 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-577.5 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-577.5 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "45 mm"
    }
    seat "driver" {
      reference = ["0 mm", "200 mm", "200 mm"]
    }
  }
  answer = "meets"
  reason = "577.5 + 22.5 - 200 = 400 mm, exactly."
  source = "Formula Off Road technical rules, App. B, licences from 2006"
  status = "confirmed"
}

worked_case "seat 201 mm to the left" {
  clause = "16.7"
  as_built {
    joint "A" { at = ["0 mm", "577.5 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "577.5 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-577.5 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-577.5 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "45 mm"
    }
    seat "driver" {
      reference = ["0 mm", "201 mm", "200 mm"]
    }
  }
  answer = "gap"
  reason = "577.5 + 22.5 - 201 = 399 mm."
  source = "Formula Off Road technical rules, App. B, licences from 2006"
  status = "confirmed"
}

worked_case "seat 201 mm to the right" {
  clause = "16.7"
  as_built {
    joint "A" { at = ["0 mm", "577.5 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "577.5 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-577.5 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-577.5 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "45 mm"
    }
    seat "driver" {
      reference = ["0 mm", "-201 mm", "200 mm"]
    }
  }
  answer = "gap"
  reason = "The other side: 600 - 201 = 399 mm."
  source = "Formula Off Road technical rules, App. B, licences from 2006"
  status = "confirmed"
}

worked_case "seat in the middle" {
  clause = "16.7"
  as_built {
    joint "A" { at = ["0 mm", "577.5 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "577.5 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-577.5 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-577.5 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "45 mm"
    }
    seat "driver" {
      reference = ["0 mm", "0 mm", "200 mm"]
    }
  }
  answer = "meets"
  reason = "600 mm to either side."
  source = "Formula Off Road technical rules, App. B, licences from 2006"
  status = "confirmed"
}

worked_case "seat of unknown place" {
  clause = "16.7"
  as_built {
    joint "A" { at = ["0 mm", "577.5 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "577.5 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-577.5 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-577.5 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "45 mm"
    }
    seat "driver" {
      reference_x = "0 mm"
      reference_z = "200 mm"
    }
  }
  answer = "not recorded"
  reason = "Its y is not recorded."
  source = "Formula Off Road technical rules, App. B, licences from 2006"
  status = "confirmed"
}

worked_case "hoop 2 in over the helmet" {
  clause = "16.8"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    head "driver" {
      top = ["150 mm", "0 mm", "949.2 mm"]
    }
  }
  answer = "meets"
  reason = "1000 - 949.2 = 50.8 mm, exactly 2 in."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "hoop 50 mm over the helmet" {
  clause = "16.8"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    head "driver" {
      top = ["150 mm", "0 mm", "950 mm"]
    }
  }
  answer = "gap"
  reason = "50 mm is 1.97 in."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "hoop 100 mm over the helmet" {
  clause = "16.8"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    head "driver" {
      top = ["150 mm", "0 mm", "900 mm"]
    }
  }
  answer = "meets"
  reason = "1000 - 900 = 100 mm."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "helmet over the hoop" {
  clause = "16.8"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    head "driver" {
      top = ["150 mm", "0 mm", "1010 mm"]
    }
  }
  answer = "gap"
  reason = "1000 - 1010 = -10 mm."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "helmet of unknown height" {
  clause = "16.8"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    head "driver" {
      top_x = "150 mm"
      top_y = "0 mm"
    }
  }
  answer = "not recorded"
  reason = "Its top has no z."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "hoop 6 in behind" {
  clause = "16.9"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    head "driver" {
      top = ["152.4 mm", "0 mm", "900 mm"]
    }
  }
  answer = "meets"
  reason = "152.4 mm, exactly 6 in."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "hoop 153 mm behind" {
  clause = "16.9"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    head "driver" {
      top = ["153 mm", "0 mm", "900 mm"]
    }
  }
  answer = "gap"
  reason = "153 mm is 6.02 in."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "hoop in front of the helmet" {
  clause = "16.9"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    head "driver" {
      top = ["-20 mm", "0 mm", "900 mm"]
    }
  }
  answer = "gap"
  reason = "The helmet is 20 mm behind the hoop."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "hoop right above" {
  clause = "16.9"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    head "driver" {
      top = ["0 mm", "0 mm", "900 mm"]
    }
  }
  answer = "meets"
  reason = "0 mm."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "one corner 10 mm further back" {
  clause = "16.9"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["-10 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    head "driver" {
      top = ["152.4 mm", "0 mm", "900 mm"]
    }
  }
  answer = "gap"
  reason = "152.4 mm on the left, 162.4 mm on the right."
  source = "Open-road event rules, safety-cage section"
  status = "computed"
}

worked_case "hoop behind a helmet of unknown place" {
  clause = "16.9"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    head "driver" {
      top_y = "0 mm"
      top_z = "900 mm"
    }
  }
  answer = "not recorded"
  reason = "Its top has no x."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "legs 16.75 in apart, 1.75 in tube" {
  clause = "16.10"
  as_built {
    joint "A" { at = ["0 in", "8.375 in", "0 in"] }
    joint "B" { at = ["0 in", "8.375 in", "40 in"] }
    joint "C" { at = ["0 in", "-8.375 in", "40 in"] }
    joint "D" { at = ["0 in", "-8.375 in", "0 in"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "1.75 in"
    }
  }
  answer = "meets"
  reason = "16.75 - 1.75 = 15 in, exactly."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "legs 380 mm apart inside" {
  clause = "16.10"
  as_built {
    joint "A" { at = ["0 mm", "212.5 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "212.5 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-212.5 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-212.5 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "45 mm"
    }
  }
  answer = "gap"
  reason = "380 mm is 14.96 in: what meets the 380 mm of another rulebook falls short of 15 in."
  source = "Open-road event rules, safety-cage section"
  status = "computed"
}

worked_case "legs 381 mm apart inside" {
  clause = "16.10"
  as_built {
    joint "A" { at = ["0 mm", "213 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "213 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-213 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-213 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "45 mm"
    }
  }
  answer = "meets"
  reason = "426 - 45 = 381 mm, exactly 15 in."
  source = "Open-road event rules, safety-cage section"
  status = "computed"
}

worked_case "legs apart, tube not measured" {
  clause = "16.10"
  as_built {
    joint "A" { at = ["0 mm", "212 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "212 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-212 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-212 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "not recorded"
  reason = "424 mm from axis to axis."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "straps that fall 300 mm over 300 mm" {
  clause = "16.11"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "60 mm", "1000 mm"]
        anchor_at   = ["-300 mm", "60 mm", "700 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-60 mm", "1000 mm"]
        anchor_at   = ["-300 mm", "-60 mm", "700 mm"]
      }
    }
  }
  answer = "meets"
  reason = "atan2(300, 300) = 45.00 deg below level, on the limit."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "straps that fall 301 mm over 300 mm" {
  clause = "16.11"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "60 mm", "1000 mm"]
        anchor_at   = ["-300 mm", "60 mm", "699 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-60 mm", "1000 mm"]
        anchor_at   = ["-300 mm", "-60 mm", "699 mm"]
      }
    }
  }
  answer = "gap"
  reason = "atan2(301, 300) = 45.10 deg below level."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "straps that fall 50 mm over 300 mm" {
  clause = "16.11"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "60 mm", "1000 mm"]
        anchor_at   = ["-300 mm", "60 mm", "950 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-60 mm", "1000 mm"]
        anchor_at   = ["-300 mm", "-60 mm", "950 mm"]
      }
    }
  }
  answer = "meets"
  reason = "atan2(50, 300) = 9.46 deg below level."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "straps that run sideways too" {
  clause = "16.11"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "60 mm", "1000 mm"]
        anchor_at   = ["-300 mm", "160 mm", "690 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-60 mm", "1000 mm"]
        anchor_at   = ["-300 mm", "-160 mm", "690 mm"]
      }
    }
  }
  answer = "meets"
  reason = "From the side atan2(310, 300) = 45.94 deg, but the way is hypot(300, 100) = 316.23 mm long: 44.43 deg."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "computed"
}

worked_case "strap of which the anchorage is not placed" {
  clause = "16.11"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "60 mm", "1000 mm"]
        anchor_at   = ["-300 mm", "60 mm", "950 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-60 mm", "1000 mm"]
      }
    }
  }
  answer = "not recorded"
  reason = "The left one falls 50 mm over 300 mm; of the right one only the shoulder is known."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "straps 72 mm outward over 200 mm" {
  clause = "16.12"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "60 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "132 mm", "960 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-60 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "-132 mm", "960 mm"]
      }
    }
  }
  answer = "meets"
  reason = "atan2(72, 200) = 19.80 deg as seen from above."
  source = "FIA Appendix J, 1996, harness article"
  status = "quoted by others"
}

worked_case "straps 73 mm outward over 200 mm" {
  clause = "16.12"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "60 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "133 mm", "960 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-60 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "-133 mm", "960 mm"]
      }
    }
  }
  answer = "gap"
  reason = "atan2(73, 200) = 20.05 deg as seen from above."
  source = "FIA Appendix J, 1996, harness article"
  status = "quoted by others"
}

worked_case "straps 72 mm inward over 200 mm" {
  clause = "16.12"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "100 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "28 mm", "960 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-100 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "-28 mm", "960 mm"]
      }
    }
  }
  answer = "meets"
  reason = "atan2(72, 200) = 19.80 deg as seen from above: together counts like apart."
  source = "FIA Appendix J, 1996, harness article"
  status = "quoted by others"
}

worked_case "strap of which the y is not known" {
  clause = "16.12"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "60 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "60 mm", "960 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-60 mm", "1000 mm"]
        anchor_at_x = "-200 mm"
        anchor_at_z = "960 mm"
      }
    }
  }
  answer = "not recorded"
  reason = "Only x and z of where it ends."
  source = "FIA Appendix J, 1996, harness article"
  status = "quoted by others"
}

worked_case "anchorages 175 mm apart" {
  clause = "16.13"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "87.5 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "87.5 mm", "1000 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-87.5 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "-87.5 mm", "1000 mm"]
      }
    }
  }
  answer = "meets"
  reason = "Twice 87.5 mm; level."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "anchorages 174 mm apart" {
  clause = "16.13"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "87 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "87 mm", "1000 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-87 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "-87 mm", "1000 mm"]
      }
    }
  }
  answer = "gap"
  reason = "Twice 87 mm."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "anchorages 235 mm apart" {
  clause = "16.13"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "117.5 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "117.5 mm", "1000 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-117.5 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "-117.5 mm", "1000 mm"]
      }
    }
  }
  answer = "meets"
  reason = "Twice 117.5 mm."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "anchorages 236 mm apart" {
  clause = "16.13"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "118 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "118 mm", "1000 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-118 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "-118 mm", "1000 mm"]
      }
    }
  }
  answer = "gap"
  reason = "Twice 118 mm."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "anchorages 72 mm below, 200 mm behind" {
  clause = "16.13"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "100 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "100 mm", "928 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-100 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "-100 mm", "928 mm"]
      }
    }
  }
  answer = "meets"
  reason = "atan2(72, 200) = 19.80 deg below level, less than 20."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "anchorages 73 mm below, 200 mm behind" {
  clause = "16.13"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "100 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "100 mm", "927 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-100 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "-100 mm", "927 mm"]
      }
    }
  }
  answer = "gap"
  reason = "atan2(73, 200) = 20.05 deg below level."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "anchorages 36 mm above, 200 mm behind" {
  clause = "16.13"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "100 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "100 mm", "1036 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-100 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "-100 mm", "1036 mm"]
      }
    }
  }
  answer = "gap"
  reason = "atan2(36, 200) = 10.20 deg above level, more than 10."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "anchorages 35 mm above, 200 mm behind" {
  clause = "16.13"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "100 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "100 mm", "1035 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-100 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "-100 mm", "1035 mm"]
      }
    }
  }
  answer = "meets"
  reason = "atan2(35, 200) = 9.93 deg above level."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "one anchorage not placed" {
  clause = "16.13"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        leaves_body = ["0 mm", "100 mm", "1000 mm"]
        anchor_at   = ["-200 mm", "100 mm", "1000 mm"]
      }
      strap "right shoulder" {
        leaves_body = ["0 mm", "-100 mm", "1000 mm"]
      }
    }
  }
  answer = "not recorded"
  reason = "The spacing hangs on both."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}
