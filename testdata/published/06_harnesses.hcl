# How harnesses lie and where they end. Their labels stand with the other labels. Angles of
# straps are below the horizontal; above it they are negative.

# A metric bolt and its inch counterpart are two rows; the smaller inch bolt is listed.
table "belt_bolts" {
  columns = { bolt = "anchorage.bolt_diameter" }
  rows    = [["10 mm"], ["3/8 in"]]
}

table "crotch_bolts" {
  columns = { bolt = "anchorage.bolt_diameter" }
  rows    = [["8 mm"], ["5/16 in"]]
}

table "shell_anchor_bolts" {
  columns = { bolt = "anchorage.bolt_diameter" }
  rows    = [["12 mm"], ["7/16 in"]]
}

chapter "6" {
  title = "Harnesses"

  clause "6.1" {
    title   = "Shoulder straps to the horizontal"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-6.2, 2013"
    across  = "harness in harnesses"
    demand  = <<-FORMULA
  harness.strap['left shoulder'].angle_to_horizontal <= 45*deg
  and harness.strap['right shoulder'].angle_to_horizontal <= 45*deg
FORMULA
  }

  clause "6.2" {
    title   = "Shoulder straps to the horizontal, recommended"
    concern = "advice"
    text_at = "FIA Appendix J, Art. 253-6.2, 2013"
    across  = "harness in harnesses"
    demand  = <<-FORMULA
  harness.strap['left shoulder'].angle_to_horizontal <= 10*deg
  and harness.strap['right shoulder'].angle_to_horizontal <= 10*deg
FORMULA
  }

  clause "6.3" {
    title   = "Shoulder straps sideways"
    concern = "safety"
    text_at = "FIA Appendix J, 1996, harness article"
    across  = "harness in harnesses"
    demand  = <<-FORMULA
  harness.strap['left shoulder'].sideways_angle <= 20*deg
  and harness.strap['right shoulder'].sideways_angle <= 20*deg
FORMULA
  }

  clause "6.4" {
    title   = "Belt cutters in rallies"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-6.2, 2013"
    demand  = "len(belt_cutters) >= 2"
  }

  clause "6.5" {
    title   = "Anchorage not on the seat"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-6.2, 2013"
    across  = ["harness in harnesses", "strap in harness.straps"]
    demand  = "strap.anchorage.fixed_to != 'seat'"
  }

  clause "6.6" {
    title   = "Shoulder straps between two angles"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, T.2"
    across  = "harness in harnesses"
    demand  = <<-FORMULA
  -10*deg <= harness.strap['left shoulder'].angle_to_horizontal <= 20*deg
  and -10*deg <= harness.strap['right shoulder'].angle_to_horizontal <= 20*deg
FORMULA
  }

  clause "6.7" {
    title   = "Lap straps by how the occupant sits"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, T.2"
    across  = "harness in harnesses"
    demand  = <<-FORMULA
  let least = harness.driving_position == 'upright' ? 45*deg : 60*deg;
  let most = harness.driving_position == 'upright' ? 65*deg : 80*deg;
  least <= harness.strap['left lap'].angle_to_horizontal <= most
  and least <= harness.strap['right lap'].angle_to_horizontal <= most
FORMULA
  }

  clause "6.8" {
    title   = "Shoulder mounts apart, 2026"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, T.2"
    across  = "harness in harnesses"
    demand  = "175*mm <= harness.shoulder_spacing <= 235*mm"
  }

  clause "6.9" {
    title   = "Shoulder mounts apart, 2014"
    concern = "safety"
    text_at = "Formula SAE Rules 2014"
    across  = "harness in harnesses"
    demand  = "178*mm <= harness.shoulder_spacing <= 229*mm"
  }

  clause "6.10" {
    title   = "Load of an anchorage"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, F.7.9.1"
    across  = ["harness in harnesses", "strap in harness.straps"]
    demand  = "strap.anchorage.design_load >= (strap.anchorage.belts_here == 1 ? 15*kN : 30*kN)"
  }

  clause "6.11" {
    title   = "Tabs and bolts of shoulder and lap straps"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, T.2"
    across  = ["harness in harnesses", "strap in harness.straps"]
    demand  = "strap.anchorage.tab_thickness >= 1.6*mm and any(table.belt_bolts, strap.anchorage.bolt_diameter >= .bolt)"
  }

  clause "6.12" {
    title   = "Bolt of the crotch strap"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, T.2"
    across  = "harness in harnesses"
    demand  = "any(table.crotch_bolts, harness.strap['crotch'].anchorage.bolt_diameter >= .bolt)"
  }

  clause "6.13" {
    title   = "Shoulder straps of a speedway car"
    concern = "safety"
    text_at = "NZ Speedway rulebook 2010, harness section"
    across  = "harness in harnesses"
    demand  = <<-FORMULA
  1*deg <= harness.strap['left shoulder'].angle_to_horizontal <= 10*deg
  and 1*deg <= harness.strap['right shoulder'].angle_to_horizontal <= 10*deg
  and harness.shoulder_distance_behind_seat <= 250*mm and harness.shoulder_spacing <= 150*mm
FORMULA
  }

  clause "6.14" {
    title   = "Parts of one set"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.7"
    across  = "harness in harnesses"
    demand  = "harness.one_set"
  }

  clause "6.15" {
    title   = "Anchor plate on the shell"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-6.2"
    across  = ["harness in harnesses", "strap in harness.straps"]
    where   = "strap.anchorage.fixed_to == 'shell'"
    demand  = <<-FORMULA
  strap.anchorage.plate_area >= 40*sq_cm and strap.anchorage.plate_thickness >= 3*mm
  and any(table.shell_anchor_bolts, strap.anchorage.bolt_diameter >= .bolt)
FORMULA
  }

  clause "6.16" {
    title   = "Strength of the straps"
    concern = "safety"
    text_at = "FIA 8853/98, tests of the straps"
    across  = "harness in harnesses"
    demand  = <<-FORMULA
  harness.strap['left shoulder'].tested_strength >= 2450*daN and harness.strap['left lap'].tested_strength >= 2450*daN
  and harness.strap['crotch'].tested_strength >= 1130*daN
FORMULA
  }
}

worked_case "shoulder straps at 45 degrees" {
  clause = "6.1"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "45 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "45 deg"
      }
    }
  }
  answer = "meets"
  reason = "At most 45 degrees."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "one shoulder strap at 46 degrees" {
  clause = "6.1"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "45 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "46 deg"
      }
    }
  }
  answer = "gap"
  reason = "At most 45 degrees, each of them."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "one shoulder strap not measured" {
  clause = "6.1"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "30 deg"
      }
      strap "right shoulder" {
        width = "75 mm"
      }
    }
  }
  answer = "not recorded"
  reason = "The other angle is not on the sheet."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "computed"
}

worked_case "shoulder straps at 10 degrees" {
  clause = "6.2"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "10 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "10 deg"
      }
    }
  }
  answer = "meets"
  reason = "Recommended: at most 10 degrees."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "shoulder straps at 30 degrees" {
  clause = "6.2"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "30 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "30 deg"
      }
    }
  }
  answer = "gap"
  reason = "Recommended: at most 10 degrees. Advice, not a demand."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "shoulder straps 20 degrees apart" {
  clause = "6.3"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        sideways_angle = "20 deg"
      }
      strap "right shoulder" {
        sideways_angle = "20 deg"
      }
    }
  }
  answer = "meets"
  reason = "At most 20 degrees, apart or together."
  source = "FIA Appendix J, 1996, harness article"
  status = "quoted by others"
}

worked_case "shoulder strap 21 degrees to the side" {
  clause = "6.3"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        sideways_angle = "20 deg"
      }
      strap "right shoulder" {
        sideways_angle = "21 deg"
      }
    }
  }
  answer = "gap"
  reason = "At most 20 degrees."
  source = "FIA Appendix J, 1996, harness article"
  status = "quoted by others"
}

worked_case "two belt cutters" {
  clause = "6.4"
  as_built {
    belt_cutter "1" {}
    belt_cutter "2" {}
  }
  answer = "meets"
  reason = "Two on board."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "one belt cutter" {
  clause = "6.4"
  as_built {
    belt_cutter "1" {}
  }
  answer = "gap"
  reason = "Two on board."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "strap on the shell" {
  clause = "6.5"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          fixed_to = "shell"
        }
      }
    }
  }
  answer = "meets"
  reason = "Not on the seat."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "strap on the seat" {
  clause = "6.5"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          fixed_to = "seat"
        }
      }
    }
  }
  answer = "gap"
  reason = "Never on the seat."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "shoulder straps rising 10 degrees" {
  clause = "6.6"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "-10 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "-10 deg"
      }
    }
  }
  answer = "meets"
  reason = "Up to 10 degrees above the horizontal."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "shoulder straps rising 11 degrees" {
  clause = "6.6"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "-11 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "-11 deg"
      }
    }
  }
  answer = "gap"
  reason = "Up to 10 degrees above the horizontal."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "shoulder straps falling 20 degrees" {
  clause = "6.6"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "20 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "20 deg"
      }
    }
  }
  answer = "meets"
  reason = "Up to 20 degrees below the horizontal."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "shoulder straps falling 45 degrees" {
  clause = "6.6"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "45 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "45 deg"
      }
    }
  }
  answer = "gap"
  reason = "What one rulebook allows the other does not."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "upright, lap straps at 45 degrees" {
  clause = "6.7"
  as_built {
    harness "driver" {
      club "Published figures" {
        driving_position = "upright"
      }
      strap "left lap" {
        angle_to_horizontal = "45 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "45 deg"
      }
    }
  }
  answer = "meets"
  reason = "45 to 65 degrees."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "upright, lap straps at 70 degrees" {
  clause = "6.7"
  as_built {
    harness "driver" {
      club "Published figures" {
        driving_position = "upright"
      }
      strap "left lap" {
        angle_to_horizontal = "70 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "70 deg"
      }
    }
  }
  answer = "gap"
  reason = "45 to 65 degrees."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "reclined, lap straps at 70 degrees" {
  clause = "6.7"
  as_built {
    harness "driver" {
      club "Published figures" {
        driving_position = "reclined"
      }
      strap "left lap" {
        angle_to_horizontal = "70 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "70 deg"
      }
    }
  }
  answer = "meets"
  reason = "60 to 80 degrees."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "reclined, lap straps at 59 degrees" {
  clause = "6.7"
  as_built {
    harness "driver" {
      club "Published figures" {
        driving_position = "reclined"
      }
      strap "left lap" {
        angle_to_horizontal = "59 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "59 deg"
      }
    }
  }
  answer = "gap"
  reason = "60 to 80 degrees."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "62 degrees, however the driver sits" {
  clause = "6.7"
  as_built {
    harness "driver" {
      strap "left lap" {
        angle_to_horizontal = "62 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "62 deg"
      }
    }
  }
  answer = "meets"
  reason = "62 degrees are within 45 to 65 and within 60 to 80, so it need not be known which."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "computed"
}

worked_case "mounts 175 mm apart, 2026" {
  clause = "6.8"
  as_built {
    harness "driver" {
      shoulder_spacing = "175 mm"
    }
  }
  answer = "meets"
  reason = "175 to 235 mm."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "mounts 236 mm apart, 2026" {
  clause = "6.8"
  as_built {
    harness "driver" {
      shoulder_spacing = "236 mm"
    }
  }
  answer = "gap"
  reason = "175 to 235 mm."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "mounts 176 mm apart, 2014" {
  clause = "6.9"
  as_built {
    harness "driver" {
      shoulder_spacing = "176 mm"
    }
  }
  answer = "gap"
  reason = "178 to 229 mm in that edition."
  source = "Formula SAE Rules 2014"
  status = "quoted by others"
}

worked_case "mounts 176 mm apart, 2026" {
  clause = "6.8"
  as_built {
    harness "driver" {
      shoulder_spacing = "176 mm"
    }
  }
  answer = "meets"
  reason = "175 to 235 mm in this edition."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "mounts 7 in apart, 2014" {
  clause = "6.9"
  as_built {
    harness "driver" {
      shoulder_spacing = "7 in"
    }
  }
  answer = "gap"
  reason = "7 in is 177.8 mm, under the 178 printed."
  source = "Formula SAE Rules 2014"
  status = "computed"
}

worked_case "mounts 200 mm apart, 2014" {
  clause = "6.9"
  as_built {
    harness "driver" {
      shoulder_spacing = "200 mm"
    }
  }
  answer = "meets"
  reason = "178 to 229 mm."
  source = "Formula SAE Rules 2014"
  status = "quoted by others"
}

worked_case "one belt, 15 kN" {
  clause = "6.10"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          club "Published figures" {
            design_load = "15 kN"
            belts_here  = 1
          }
        }
      }
    }
  }
  answer = "meets"
  reason = "15 kN for one belt."
  source = "Formula SAE Rules 2026, V1.0, F.7.9.1"
  status = "confirmed"
}

worked_case "two belts at one point, 15 kN" {
  clause = "6.10"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          club "Published figures" {
            design_load = "15 kN"
            belts_here  = 2
          }
        }
      }
    }
  }
  answer = "gap"
  reason = "30 kN for two."
  source = "Formula SAE Rules 2026, V1.0, F.7.9.1"
  status = "confirmed"
}

worked_case "two belts at one point, 30 kN" {
  clause = "6.10"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          club "Published figures" {
            design_load = "30 kN"
            belts_here  = 2
          }
        }
      }
    }
  }
  answer = "meets"
  reason = "30 kN for two."
  source = "Formula SAE Rules 2026, V1.0, F.7.9.1"
  status = "confirmed"
}

worked_case "one belt, 13 kN of an older edition" {
  clause = "6.10"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          club "Published figures" {
            design_load = "13 kN"
            belts_here  = 1
          }
        }
      }
    }
  }
  answer = "gap"
  reason = "13 kN was the figure of 2021."
  source = "Formula SAE Rules 2026, V1.0, F.7.9.1, beside the edition of 2021"
  status = "quoted by others"
}

worked_case "tab of 1.6 mm, bolt of 10 mm" {
  clause = "6.11"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          tab_thickness = "1.6 mm"
          bolt_diameter = "10 mm"
        }
      }
    }
  }
  answer = "meets"
  reason = "Exactly the figures."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "bolt of 3/8 in" {
  clause = "6.11"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          tab_thickness = "1.6 mm"
          bolt_diameter = "3/8 in"
        }
      }
    }
  }
  answer = "meets"
  reason = "10 mm or 3/8 in; 3/8 in is 9.525 mm and is listed itself."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "bolt of 9.5 mm" {
  clause = "6.11"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          tab_thickness = "1.6 mm"
          bolt_diameter = "9.5 mm"
        }
      }
    }
  }
  answer = "gap"
  reason = "Under both listed sizes."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "computed"
}

worked_case "tab of 1.5 mm" {
  clause = "6.11"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          tab_thickness = "1.5 mm"
          bolt_diameter = "10 mm"
        }
      }
    }
  }
  answer = "gap"
  reason = "At least 1.6 mm."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "crotch strap on 5/16 in" {
  clause = "6.12"
  as_built {
    harness "driver" {
      strap "crotch" {
        anchorage {
          tab_thickness = "2 mm"
          bolt_diameter = "5/16 in"
        }
      }
    }
  }
  answer = "meets"
  reason = "8 mm or 5/16 in."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "crotch strap on 6 mm" {
  clause = "6.12"
  as_built {
    harness "driver" {
      strap "crotch" {
        anchorage {
          tab_thickness = "2 mm"
          bolt_diameter = "6 mm"
        }
      }
    }
  }
  answer = "gap"
  reason = "8 mm or 5/16 in."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "speedway harness on its limits" {
  clause = "6.13"
  as_built {
    harness "driver" {
      shoulder_distance_behind_seat = "250 mm"
      shoulder_spacing              = "150 mm"
      strap "left shoulder" {
        angle_to_horizontal = "10 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "10 deg"
      }
    }
  }
  answer = "meets"
  reason = "1 to 10 degrees down, 250 mm, 150 mm."
  source = "NZ Speedway rulebook 2010, harness section"
  status = "confirmed"
}

worked_case "level speedway harness" {
  clause = "6.13"
  as_built {
    harness "driver" {
      shoulder_distance_behind_seat = "200 mm"
      shoulder_spacing              = "120 mm"
      strap "left shoulder" {
        angle_to_horizontal = "0 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "0 deg"
      }
    }
  }
  answer = "gap"
  reason = "At least 1 degree down."
  source = "NZ Speedway rulebook 2010, harness section"
  status = "confirmed"
}

worked_case "speedway harness with wide mounts" {
  clause = "6.13"
  as_built {
    harness "driver" {
      shoulder_distance_behind_seat = "200 mm"
      shoulder_spacing              = "175 mm"
      strap "left shoulder" {
        angle_to_horizontal = "5 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "5 deg"
      }
    }
  }
  answer = "gap"
  reason = "At most 150 mm apart, where another rulebook asks for 175 at least."
  source = "NZ Speedway rulebook 2010, harness section"
  status = "confirmed"
}

worked_case "harness of one set" {
  clause = "6.14"
  as_built {
    harness "driver" {
      one_set = true
    }
  }
  answer = "meets"
  reason = "Parts of sets are not mixed."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.7"
  status = "confirmed"
}

worked_case "harness mixed from two sets" {
  clause = "6.14"
  as_built {
    harness "driver" {
      one_set = false
    }
  }
  answer = "gap"
  reason = "Parts of sets are not mixed."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 10.7"
  status = "confirmed"
}

worked_case "straps of 2450 and 1130 daN" {
  clause = "6.16"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        club "Published figures" {
          tested_strength = "2450 daN"
        }
      }
      strap "left lap" {
        club "Published figures" {
          tested_strength = "2450 daN"
        }
      }
      strap "crotch" {
        club "Published figures" {
          tested_strength = "1130 daN"
        }
      }
    }
  }
  answer = "meets"
  reason = "Exactly the figures."
  source = "FIA 8853/98, tests of the straps"
  status = "quoted by others"
}

worked_case "straps of 24.5 and 11.3 kN" {
  clause = "6.16"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        club "Published figures" {
          tested_strength = "24.5 kN"
        }
      }
      strap "left lap" {
        club "Published figures" {
          tested_strength = "24.5 kN"
        }
      }
      strap "crotch" {
        club "Published figures" {
          tested_strength = "11.3 kN"
        }
      }
    }
  }
  answer = "meets"
  reason = "2450 daN is 24.5 kN."
  source = "FIA 8853/98, tests of the straps"
  status = "computed"
}

worked_case "straps of 2450 kgf" {
  clause = "6.16"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        club "Published figures" {
          tested_strength = "2450 kgf"
        }
      }
      strap "left lap" {
        club "Published figures" {
          tested_strength = "2450 kgf"
        }
      }
      strap "crotch" {
        club "Published figures" {
          tested_strength = "1130 kgf"
        }
      }
    }
  }
  answer = "gap"
  reason = "2450 kgf is 24.03 kN: a decanewton is not a kilogram."
  source = "FIA 8853/98, tests of the straps"
  status = "computed"
}

worked_case "crotch strap of 2500 lbf" {
  clause = "6.16"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        club "Published figures" {
          tested_strength = "6300 lbf"
        }
      }
      strap "left lap" {
        club "Published figures" {
          tested_strength = "6300 lbf"
        }
      }
      strap "crotch" {
        club "Published figures" {
          tested_strength = "2500 lbf"
        }
      }
    }
  }
  answer = "gap"
  reason = "2500 lbf is 11.12 kN, under 11.3."
  source = "FIA 8853/98, tests of the straps"
  status = "computed"
}

worked_case "anchor plate on all limits with 7/16 in" {
  clause = "6.15"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          fixed_to        = "shell"
          plate_area      = "40 cm2"
          plate_thickness = "3 mm"
          bolt_diameter   = "7/16 in"
        }
      }
    }
  }
  answer = "meets"
  reason = "40 cm2, 3 mm, M12 or 7/16 UNF."
  source = "FIA Appendix J, Art. 253-6.2"
  status = "from memory"
}

worked_case "anchor plate with M10" {
  clause = "6.15"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          fixed_to        = "shell"
          plate_area      = "40 cm2"
          plate_thickness = "3 mm"
          bolt_diameter   = "10 mm"
        }
      }
    }
  }
  answer = "gap"
  reason = "M12 or 7/16 UNF."
  source = "FIA Appendix J, Art. 253-6.2"
  status = "from memory"
}

worked_case "the left shoulder strap alone at 46 degrees" {
  clause = "6.1"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "46 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "45 deg"
      }
    }
  }
  answer = "gap"
  reason = "At most 45 degrees, each of them."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "one shoulder strap at 10.2 degrees" {
  clause = "6.2"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "10 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "10.2 deg"
      }
    }
  }
  answer = "gap"
  reason = "Recommended: at most 10 degrees. Advice, not a demand."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "the left shoulder strap alone at 10.2 degrees" {
  clause = "6.2"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "10.2 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "10 deg"
      }
    }
  }
  answer = "gap"
  reason = "Recommended: at most 10 degrees. Advice, not a demand."
  source = "FIA Appendix J, Art. 253-6.2, 2013"
  status = "confirmed"
}

worked_case "the left shoulder strap alone 20.5 degrees to the side" {
  clause = "6.3"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        sideways_angle = "20.5 deg"
      }
      strap "right shoulder" {
        sideways_angle = "20 deg"
      }
    }
  }
  answer = "gap"
  reason = "At most 20 degrees."
  source = "FIA Appendix J, 1996, harness article"
  status = "quoted by others"
}

worked_case "the right shoulder strap alone 20.5 degrees to the side" {
  clause = "6.3"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        sideways_angle = "20 deg"
      }
      strap "right shoulder" {
        sideways_angle = "20.5 deg"
      }
    }
  }
  answer = "gap"
  reason = "At most 20 degrees."
  source = "FIA Appendix J, 1996, harness article"
  status = "quoted by others"
}

worked_case "the left shoulder strap alone falling 20.5 degrees" {
  clause = "6.6"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "20.5 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "20 deg"
      }
    }
  }
  answer = "gap"
  reason = "Up to 20 degrees below the horizontal."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "the right shoulder strap alone falling 20.5 degrees" {
  clause = "6.6"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "20 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "20.5 deg"
      }
    }
  }
  answer = "gap"
  reason = "Up to 20 degrees below the horizontal."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "the right shoulder strap alone rising 10.2 degrees" {
  clause = "6.6"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "0 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "-10.2 deg"
      }
    }
  }
  answer = "gap"
  reason = "Up to 10 degrees above the horizontal."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "the left shoulder strap alone rising 10.2 degrees" {
  clause = "6.6"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        angle_to_horizontal = "-10.2 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "0 deg"
      }
    }
  }
  answer = "gap"
  reason = "Up to 10 degrees above the horizontal."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "upright, both lap straps at 65 deg" {
  clause = "6.7"
  as_built {
    harness "driver" {
      club "Published figures" {
        driving_position = "upright"
      }
      strap "left lap" {
        angle_to_horizontal = "65 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "65 deg"
      }
    }
  }
  answer = "meets"
  reason = "45 to 65 degrees."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "upright, both lap straps at 65.5 deg" {
  clause = "6.7"
  as_built {
    harness "driver" {
      club "Published figures" {
        driving_position = "upright"
      }
      strap "left lap" {
        angle_to_horizontal = "65.5 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "65.5 deg"
      }
    }
  }
  answer = "gap"
  reason = "45 to 65 degrees."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "upright, both lap straps at 45 deg" {
  clause = "6.7"
  as_built {
    harness "driver" {
      club "Published figures" {
        driving_position = "upright"
      }
      strap "left lap" {
        angle_to_horizontal = "45 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "45 deg"
      }
    }
  }
  answer = "meets"
  reason = "45 to 65 degrees."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "upright, both lap straps at 44.5 deg" {
  clause = "6.7"
  as_built {
    harness "driver" {
      club "Published figures" {
        driving_position = "upright"
      }
      strap "left lap" {
        angle_to_horizontal = "44.5 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "44.5 deg"
      }
    }
  }
  answer = "gap"
  reason = "45 to 65 degrees."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "reclined, both lap straps at 80 deg" {
  clause = "6.7"
  as_built {
    harness "driver" {
      club "Published figures" {
        driving_position = "reclined"
      }
      strap "left lap" {
        angle_to_horizontal = "80 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "80 deg"
      }
    }
  }
  answer = "meets"
  reason = "60 to 80 degrees."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "reclined, both lap straps at 80.5 deg" {
  clause = "6.7"
  as_built {
    harness "driver" {
      club "Published figures" {
        driving_position = "reclined"
      }
      strap "left lap" {
        angle_to_horizontal = "80.5 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "80.5 deg"
      }
    }
  }
  answer = "gap"
  reason = "60 to 80 degrees."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "reclined, both lap straps at 60 deg" {
  clause = "6.7"
  as_built {
    harness "driver" {
      club "Published figures" {
        driving_position = "reclined"
      }
      strap "left lap" {
        angle_to_horizontal = "60 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "60 deg"
      }
    }
  }
  answer = "meets"
  reason = "60 to 80 degrees."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "reclined, both lap straps at 59.5 deg" {
  clause = "6.7"
  as_built {
    harness "driver" {
      club "Published figures" {
        driving_position = "reclined"
      }
      strap "left lap" {
        angle_to_horizontal = "59.5 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "59.5 deg"
      }
    }
  }
  answer = "gap"
  reason = "60 to 80 degrees."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "upright, the right lap strap alone at 66 degrees" {
  clause = "6.7"
  as_built {
    harness "driver" {
      club "Published figures" {
        driving_position = "upright"
      }
      strap "left lap" {
        angle_to_horizontal = "60 deg"
      }
      strap "right lap" {
        angle_to_horizontal = "66 deg"
      }
    }
  }
  answer = "gap"
  reason = "45 to 65 degrees, each of them."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "mounts 174 mm apart, 2026" {
  clause = "6.8"
  as_built {
    harness "driver" {
      shoulder_spacing = "174 mm"
    }
  }
  answer = "gap"
  reason = "175 to 235 mm."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "mounts 235 mm apart, 2026" {
  clause = "6.8"
  as_built {
    harness "driver" {
      shoulder_spacing = "235 mm"
    }
  }
  answer = "meets"
  reason = "175 to 235 mm."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "mounts 235 mm apart, 2026, a little more" {
  clause = "6.8"
  as_built {
    harness "driver" {
      shoulder_spacing = "235.5 mm"
    }
  }
  answer = "gap"
  reason = "175 to 235 mm."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "mounts 178 mm apart, 2014" {
  clause = "6.9"
  as_built {
    harness "driver" {
      shoulder_spacing = "178 mm"
    }
  }
  answer = "meets"
  reason = "178 to 229 mm."
  source = "Formula SAE Rules 2014"
  status = "quoted by others"
}

worked_case "mounts 177 mm apart, 2014" {
  clause = "6.9"
  as_built {
    harness "driver" {
      shoulder_spacing = "177 mm"
    }
  }
  answer = "gap"
  reason = "178 to 229 mm."
  source = "Formula SAE Rules 2014"
  status = "quoted by others"
}

worked_case "mounts 229 mm apart, 2014" {
  clause = "6.9"
  as_built {
    harness "driver" {
      shoulder_spacing = "229 mm"
    }
  }
  answer = "meets"
  reason = "178 to 229 mm."
  source = "Formula SAE Rules 2014"
  status = "quoted by others"
}

worked_case "mounts 229 mm apart, 2014, a little more" {
  clause = "6.9"
  as_built {
    harness "driver" {
      shoulder_spacing = "229.5 mm"
    }
  }
  answer = "gap"
  reason = "178 to 229 mm."
  source = "Formula SAE Rules 2014"
  status = "quoted by others"
}

worked_case "one belt, 14.9 kN" {
  clause = "6.10"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          club "Published figures" {
            design_load = "14.9 kN"
            belts_here  = 1
          }
        }
      }
    }
  }
  answer = "gap"
  reason = "15 kN for one belt."
  source = "Formula SAE Rules 2026, V1.0, F.7.9.1"
  status = "confirmed"
}

worked_case "two belts at one point, 29.9 kN" {
  clause = "6.10"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          club "Published figures" {
            design_load = "29.9 kN"
            belts_here  = 2
          }
        }
      }
    }
  }
  answer = "gap"
  reason = "30 kN for two."
  source = "Formula SAE Rules 2026, V1.0, F.7.9.1"
  status = "confirmed"
}

worked_case "tab of 1.59 mm" {
  clause = "6.11"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          tab_thickness = "1.59 mm"
          bolt_diameter = "10 mm"
        }
      }
    }
  }
  answer = "gap"
  reason = "At least 1.6 mm."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "confirmed"
}

worked_case "crotch strap on 7.9 mm" {
  clause = "6.12"
  as_built {
    harness "driver" {
      strap "crotch" {
        anchorage {
          tab_thickness = "2 mm"
          bolt_diameter = "7.9 mm"
        }
      }
    }
  }
  answer = "gap"
  reason = "8 mm or 5/16 in, which is 7.94 mm."
  source = "Formula SAE Rules 2026, V1.0, T.2"
  status = "computed"
}

worked_case "speedway harness falling 10.1 degrees" {
  clause = "6.13"
  as_built {
    harness "driver" {
      shoulder_distance_behind_seat = "250 mm"
      shoulder_spacing              = "150 mm"
      strap "left shoulder" {
        angle_to_horizontal = "10.1 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "10.1 deg"
      }
    }
  }
  answer = "gap"
  reason = "1 to 10 degrees down, at most 250 mm behind, at most 150 mm apart."
  source = "NZ Speedway rulebook 2010, harness section"
  status = "confirmed"
}

worked_case "speedway harness falling 0.9 degrees" {
  clause = "6.13"
  as_built {
    harness "driver" {
      shoulder_distance_behind_seat = "250 mm"
      shoulder_spacing              = "150 mm"
      strap "left shoulder" {
        angle_to_horizontal = "0.9 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "0.9 deg"
      }
    }
  }
  answer = "gap"
  reason = "1 to 10 degrees down, at most 250 mm behind, at most 150 mm apart."
  source = "NZ Speedway rulebook 2010, harness section"
  status = "confirmed"
}

worked_case "speedway harness 251 mm behind the seat" {
  clause = "6.13"
  as_built {
    harness "driver" {
      shoulder_distance_behind_seat = "251 mm"
      shoulder_spacing              = "150 mm"
      strap "left shoulder" {
        angle_to_horizontal = "10 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "10 deg"
      }
    }
  }
  answer = "gap"
  reason = "1 to 10 degrees down, at most 250 mm behind, at most 150 mm apart."
  source = "NZ Speedway rulebook 2010, harness section"
  status = "confirmed"
}

worked_case "speedway harness 151 mm apart" {
  clause = "6.13"
  as_built {
    harness "driver" {
      shoulder_distance_behind_seat = "250 mm"
      shoulder_spacing              = "151 mm"
      strap "left shoulder" {
        angle_to_horizontal = "10 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "10 deg"
      }
    }
  }
  answer = "gap"
  reason = "1 to 10 degrees down, at most 250 mm behind, at most 150 mm apart."
  source = "NZ Speedway rulebook 2010, harness section"
  status = "confirmed"
}

worked_case "speedway harness falling 1 degree" {
  clause = "6.13"
  as_built {
    harness "driver" {
      shoulder_distance_behind_seat = "250 mm"
      shoulder_spacing              = "150 mm"
      strap "left shoulder" {
        angle_to_horizontal = "1 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "1 deg"
      }
    }
  }
  answer = "meets"
  reason = "1 to 10 degrees down."
  source = "NZ Speedway rulebook 2010, harness section"
  status = "confirmed"
}

worked_case "speedway harness, the right strap alone level" {
  clause = "6.13"
  as_built {
    harness "driver" {
      shoulder_distance_behind_seat = "200 mm"
      shoulder_spacing              = "120 mm"
      strap "left shoulder" {
        angle_to_horizontal = "5 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "0 deg"
      }
    }
  }
  answer = "gap"
  reason = "At least 1 degree down, each of them."
  source = "NZ Speedway rulebook 2010, harness section"
  status = "confirmed"
}

worked_case "speedway harness, the right strap alone at 11 degrees" {
  clause = "6.13"
  as_built {
    harness "driver" {
      shoulder_distance_behind_seat = "200 mm"
      shoulder_spacing              = "120 mm"
      strap "left shoulder" {
        angle_to_horizontal = "5 deg"
      }
      strap "right shoulder" {
        angle_to_horizontal = "11 deg"
      }
    }
  }
  answer = "gap"
  reason = "At most 10 degrees down, each of them."
  source = "NZ Speedway rulebook 2010, harness section"
  status = "confirmed"
}

worked_case "anchor plate of 39.5 cm2" {
  clause = "6.15"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          fixed_to        = "shell"
          plate_area      = "39.5 cm2"
          plate_thickness = "3 mm"
          bolt_diameter   = "7/16 in"
        }
      }
    }
  }
  answer = "gap"
  reason = "40 cm2."
  source = "FIA Appendix J, Art. 253-6.2"
  status = "from memory"
}

worked_case "anchor plate of 2.9 mm" {
  clause = "6.15"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          fixed_to        = "shell"
          plate_area      = "40 cm2"
          plate_thickness = "2.9 mm"
          bolt_diameter   = "7/16 in"
        }
      }
    }
  }
  answer = "gap"
  reason = "3 mm."
  source = "FIA Appendix J, Art. 253-6.2"
  status = "from memory"
}

worked_case "anchor plate with 11 mm" {
  clause = "6.15"
  as_built {
    harness "driver" {
      strap "left lap" {
        anchorage {
          fixed_to        = "shell"
          plate_area      = "40 cm2"
          plate_thickness = "3 mm"
          bolt_diameter   = "11 mm"
        }
      }
    }
  }
  answer = "gap"
  reason = "M12 or 7/16 UNF, which is 11.11 mm."
  source = "FIA Appendix J, Art. 253-6.2"
  status = "from memory"
}

worked_case "shoulder strap of 2440 daN" {
  clause = "6.16"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        club "Published figures" {
          tested_strength = "2440 daN"
        }
      }
      strap "left lap" {
        club "Published figures" {
          tested_strength = "2450 daN"
        }
      }
      strap "crotch" {
        club "Published figures" {
          tested_strength = "1130 daN"
        }
      }
    }
  }
  answer = "gap"
  reason = "2450 daN at the shoulder."
  source = "FIA 8853/98, tests of the straps"
  status = "quoted by others"
}

worked_case "lap strap of 2440 daN" {
  clause = "6.16"
  as_built {
    harness "driver" {
      strap "left shoulder" {
        club "Published figures" {
          tested_strength = "2450 daN"
        }
      }
      strap "left lap" {
        club "Published figures" {
          tested_strength = "2440 daN"
        }
      }
      strap "crotch" {
        club "Published figures" {
          tested_strength = "1130 daN"
        }
      }
    }
  }
  answer = "gap"
  reason = "2450 daN at the lap."
  source = "FIA 8853/98, tests of the straps"
  status = "quoted by others"
}
