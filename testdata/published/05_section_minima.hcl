# Formula SAE 2026: a steel tube of a size class has to meet all four minima, second moment,
# area, outside diameter and wall. The section is computed from outside diameter and wall. Two
# of the listed example tubes do not meet the figures beside them to the letter.

table "section_minima" {
  columns = {
    size          = "tube.section_size"
    second_moment = "tube.printed_second_moment"
    area          = "tube.printed_area"
    outside       = "tube.outside"
    wall          = "tube.wall"
  }
  rows = [
    ["A", "11320 mm4", "173 mm2", "25.0 mm", "2.0 mm"],
    ["B", "8509 mm4", "114 mm2", "25.0 mm", "1.2 mm"],
    ["C", "6695 mm4", "91 mm2", "25.0 mm", "1.2 mm"],
    ["D", "18015 mm4", "126 mm2", "35.0 mm", "1.2 mm"],
  ]
}

chapter "5" {
  title = "Frames by area and second moment"

  clause "5.1" {
    title   = "Section minima, to the letter"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, F.3.4.1"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  any(table.section_minima, .size == tube.section_size
    and section_second_moment(tube) >= .second_moment and section_area(tube) >= .area
    and tube.outside >= .outside and tube.wall >= .wall)
FORMULA
  }

  clause "5.2" {
    title   = "Section minima, computed figures rounded as the table is"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, F.3.4.1"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  any(table.section_minima, .size == tube.section_size
    and round(section_second_moment(tube), 1*mm4) >= .second_moment and round(section_area(tube), 1*sq_mm) >= .area
    and tube.outside >= .outside and tube.wall >= .wall)
FORMULA
  }

  clause "5.3" {
    title   = "Size class of each member"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0"
    across  = "tube in cage.tubes"
    where   = "tube.part in ['main hoop', 'front hoop', 'harness bar', 'backstay']"
    demand  = "tube.part == 'backstay' ? tube.section_size == 'B' or tube.section_size == 'A' : tube.section_size == 'A'"
  }

  clause "5.4" {
    title   = "Steel, not welded"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, F.3.4.2"
    across  = "tube in cage.tubes"
    demand  = "tube.yield >= 305*MPa and tube.tensile >= 365*MPa"
  }

  clause "5.5" {
    title   = "Bends"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, F.5.2.1"
    across  = "tube in cage.tubes"
    where   = "tube.bends > 0"
    demand  = "tube.bend_radius >= 3 * tube.outside"
  }

  clause "5.6" {
    title   = "Lean of the hoops"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0"
    across  = "tube in cage.tubes"
    where   = "tube.part in ['main hoop', 'front hoop']"
    demand  = "tube.angle_to_vertical < (tube.part == 'main hoop' ? 10*deg : 20*deg)"
  }

  clause "5.7" {
    title   = "Braces of the main hoop"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'backstay'"
    demand  = "tube.upper_end_offset <= 160*mm and tube.brace_angle >= 30*deg"
  }

  clause "5.8" {
    title   = "Legs of the main hoop"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0"
    demand  = "cage.leg_spacing >= 380*mm"
  }

  clause "5.9" {
    title   = "Clearance of the driver"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0"
    across  = "tube in cage.tubes"
    demand  = "tube.helmet_distance >= 50*mm"
  }

  clause "5.10" {
    title   = "Gaps in the firewall"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0"
    across  = "bulkhead in bulkheads"
    demand  = "bulkhead.largest_gap <= 3*mm"
  }
}

worked_case "25.0 x 2.5 mm as size A, strict" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "25.0 x 2.5 mm"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "meets"
  reason = "11320.8 mm4 against 11320: met by 0.8 mm4."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.0 x .095 in as size A, strict" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "1.0 x .095 in"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "meets"
  reason = "11637 mm4 and 174.3 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "8508.8 against 8509, strict" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "25.4 x 1.6 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "gap"
  reason = "8508.8 mm4 against 8509: the listed example is 0.2 mm4 short to the letter and meets when rounded."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.0 x .065 in as size B, strict" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "1.0 x .065 in"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "meets"
  reason = "8726 mm4 and 123.2 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.4 x 1.2 mm as size C, strict" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "25.4 x 1.2 mm"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "meets"
  reason = "6695.05 mm4 against 6695, 91.23 mm2 against 91."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.0 x .049 in as size C, strict" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "1.0 x .049 in"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "meets"
  reason = "6907 mm4 and 94.5 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "35.0 x 1.2 mm as size D, strict" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "35.0 x 1.2 mm"
      club "Published figures" {
        section_size = "D"
      }
    }
  }
  answer = "meets"
  reason = "18220 mm4 and 127.4 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.375 x .049 in as size D, strict" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "1.375 x .049 in"
      club "Published figures" {
        section_size = "D"
      }
    }
  }
  answer = "gap"
  reason = "1.375 in is 34.925 mm, under 35.0: the listed example converted falls short of the outside diameter."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.0 x 2.5 mm as size A, rounded" {
  clause = "5.2"
  as_built {
    tube "1" {
      size = "25.0 x 2.5 mm"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "meets"
  reason = "11320.8 mm4 against 11320: met by 0.8 mm4."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.0 x .095 in as size A, rounded" {
  clause = "5.2"
  as_built {
    tube "1" {
      size = "1.0 x .095 in"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "meets"
  reason = "11637 mm4 and 174.3 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "8508.8 against 8509, rounded" {
  clause = "5.2"
  as_built {
    tube "1" {
      size = "25.4 x 1.6 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "meets"
  reason = "8508.8 mm4 against 8509: the listed example is 0.2 mm4 short to the letter and meets when rounded."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.0 x .065 in as size B, rounded" {
  clause = "5.2"
  as_built {
    tube "1" {
      size = "1.0 x .065 in"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "meets"
  reason = "8726 mm4 and 123.2 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.4 x 1.2 mm as size C, rounded" {
  clause = "5.2"
  as_built {
    tube "1" {
      size = "25.4 x 1.2 mm"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "meets"
  reason = "6695.05 mm4 against 6695, 91.23 mm2 against 91."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.0 x .049 in as size C, rounded" {
  clause = "5.2"
  as_built {
    tube "1" {
      size = "1.0 x .049 in"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "meets"
  reason = "6907 mm4 and 94.5 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "35.0 x 1.2 mm as size D, rounded" {
  clause = "5.2"
  as_built {
    tube "1" {
      size = "35.0 x 1.2 mm"
      club "Published figures" {
        section_size = "D"
      }
    }
  }
  answer = "meets"
  reason = "18220 mm4 and 127.4 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.375 x .049 in as size D, rounded" {
  clause = "5.2"
  as_built {
    tube "1" {
      size = "1.375 x .049 in"
      club "Published figures" {
        section_size = "D"
      }
    }
  }
  answer = "gap"
  reason = "1.375 in is 34.925 mm, under 35.0: the listed example converted falls short of the outside diameter."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.0 x 2.4 mm as size A" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "25.0 x 2.4 mm"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "gap"
  reason = "11002 mm4 is under 11320."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "30.0 x 1.2 mm as size B" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "30.0 x 1.2 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "gap"
  reason = "11276 mm4 is over 8509, but the area of 108.6 mm2 is under 114: all four have to be met."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "30.0 x 1.1 mm as size C" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "30.0 x 1.1 mm"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "gap"
  reason = "The wall is under 1.2 mm, whatever the section."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "24.5 x 3.0 mm as size A" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "24.5 x 3.0 mm"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "gap"
  reason = "The outside diameter is under 25.0 mm, whatever the section."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "main hoop of size A" {
  clause = "5.3"
  as_built {
    tube "1" {
      part = "main hoop"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "meets"
  reason = "Main hoop, front hoop and harness bar are A."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "front hoop of size B" {
  clause = "5.3"
  as_built {
    tube "1" {
      part = "front hoop"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "gap"
  reason = "Main hoop, front hoop and harness bar are A."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "brace of size B" {
  clause = "5.3"
  as_built {
    tube "1" {
      part = "backstay"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "meets"
  reason = "Braces of the main hoop are B."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "brace of size C" {
  clause = "5.3"
  as_built {
    tube "1" {
      part = "backstay"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "gap"
  reason = "Braces of the main hoop are B."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "steel of exactly 305 and 365 MPa" {
  clause = "5.4"
  as_built {
    tube "1" {
      yield   = "305 MPa"
      tensile = "365 MPa"
    }
  }
  answer = "meets"
  reason = "Both exactly."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.2"
  status = "confirmed"
}

worked_case "steel of 305 and 360 MPa" {
  clause = "5.4"
  as_built {
    tube "1" {
      yield   = "305 MPa"
      tensile = "360 MPa"
    }
  }
  answer = "gap"
  reason = "Tensile at least 365."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.2"
  status = "confirmed"
}

worked_case "frame tube of 25.4 mm bent to 76.2 mm" {
  clause = "5.5"
  as_built {
    tube "1" {
      bends       = 1
      outside     = "25.4 mm"
      bend_radius = "76.2 mm"
    }
  }
  answer = "meets"
  reason = "Three times 25.4 mm, exactly."
  source = "Formula SAE Rules 2026, V1.0, F.5.2.1"
  status = "confirmed"
}

worked_case "frame tube of 25.4 mm bent to 75 mm" {
  clause = "5.5"
  as_built {
    tube "1" {
      bends       = 1
      outside     = "25.4 mm"
      bend_radius = "75 mm"
    }
  }
  answer = "gap"
  reason = "Three times 25.4 mm is 76.2."
  source = "Formula SAE Rules 2026, V1.0, F.5.2.1"
  status = "confirmed"
}

worked_case "main hoop leaning 9.9 degrees" {
  clause = "5.6"
  as_built {
    tube "1" {
      part              = "main hoop"
      angle_to_vertical = "9.9 deg"
    }
  }
  answer = "meets"
  reason = "Less than 10 degrees."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "main hoop leaning 10 degrees" {
  clause = "5.6"
  as_built {
    tube "1" {
      part              = "main hoop"
      angle_to_vertical = "10 deg"
    }
  }
  answer = "gap"
  reason = "Less than 10 degrees, so 10 is too much."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "front hoop leaning 19 degrees" {
  clause = "5.6"
  as_built {
    tube "1" {
      part              = "front hoop"
      angle_to_vertical = "19 deg"
    }
  }
  answer = "meets"
  reason = "Less than 20 degrees."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "brace 160 mm below the top at 30 degrees" {
  clause = "5.7"
  as_built {
    tube "1" {
      part             = "backstay"
      upper_end_offset = "160 mm"
      club "Published figures" {
        brace_angle = "30 deg"
      }
    }
  }
  answer = "meets"
  reason = "At most 160 mm; the 30 degrees are the included angle here."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "brace 161 mm below the top" {
  clause = "5.7"
  as_built {
    tube "1" {
      part             = "backstay"
      upper_end_offset = "161 mm"
      club "Published figures" {
        brace_angle = "40 deg"
      }
    }
  }
  answer = "gap"
  reason = "At most 160 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "brace at 29 degrees included" {
  clause = "5.7"
  as_built {
    tube "1" {
      part             = "backstay"
      upper_end_offset = "100 mm"
      club "Published figures" {
        brace_angle = "29 deg"
      }
    }
  }
  answer = "gap"
  reason = "At least 30 degrees included."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "legs 380 mm apart" {
  clause = "5.8"
  as_built {
    cage {
      club "Published figures" {
        leg_spacing = "380 mm"
      }
    }
  }
  answer = "meets"
  reason = "At least 380 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "legs 15 in apart" {
  clause = "5.8"
  as_built {
    cage {
      club "Published figures" {
        leg_spacing = "15 in"
      }
    }
  }
  answer = "meets"
  reason = "15 in is 381 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "legs 379 mm apart" {
  clause = "5.8"
  as_built {
    cage {
      club "Published figures" {
        leg_spacing = "379 mm"
      }
    }
  }
  answer = "gap"
  reason = "At least 380 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "helmet 50 mm from a tube" {
  clause = "5.9"
  as_built {
    tube "1" {
      helmet_distance = "50 mm"
    }
  }
  answer = "meets"
  reason = "50 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "helmet 49 mm from a tube" {
  clause = "5.9"
  as_built {
    tube "1" {
      helmet_distance = "49 mm"
    }
  }
  answer = "gap"
  reason = "50 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "firewall with a gap of 3 mm" {
  clause = "5.10"
  as_built {
    bulkhead "engine" {
      largest_gap = "3 mm"
    }
  }
  answer = "meets"
  reason = "At most 3 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "firewall with a gap of 4 mm" {
  clause = "5.10"
  as_built {
    bulkhead "engine" {
      largest_gap = "4 mm"
    }
  }
  answer = "gap"
  reason = "At most 3 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "24.9 x 2.6 mm as size A" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "24.9 x 2.6 mm"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "gap"
  reason = "The outside diameter is under 25.0 mm."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "30.5 x 1.99 mm as size A" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "30.5 x 1.99 mm"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "gap"
  reason = "The wall is under 2.0 mm."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.0 x 2.49 mm as size A" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "25.0 x 2.49 mm"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "gap"
  reason = "11289 mm4 is under 11320."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "27.5 x 2.15 mm as size A" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "27.5 x 2.15 mm"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "gap"
  reason = "171.2 mm2 is under 173."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "24.9 x 1.8 mm as size B" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "24.9 x 1.8 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "gap"
  reason = "The outside diameter is under 25.0 mm."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "32.0 x 1.19 mm as size B" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "32.0 x 1.19 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "gap"
  reason = "The wall is under 1.2 mm."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "31.0 x 1.2 mm as size B" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "31.0 x 1.2 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "gap"
  reason = "112.3 mm2 is under 114."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.4 x 1.58 mm as size B" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "25.4 x 1.58 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "gap"
  reason = "8423 mm4 is under 8509."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "24.9 x 1.4 mm as size C" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "24.9 x 1.4 mm"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "gap"
  reason = "The outside diameter is under 25.0 mm."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "26.0 x 1.19 mm as size C" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "26.0 x 1.19 mm"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "gap"
  reason = "The wall is under 1.2 mm."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.0 x 1.25 mm as size C" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "25.0 x 1.25 mm"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "gap"
  reason = "6594 mm4 is under 6695."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.0 x 1.2 mm as size C" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "25.0 x 1.2 mm"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "gap"
  reason = "6369 mm4 and 89.7 mm2 are under 6695 and 91."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "34.9 x 1.3 mm as size D" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "34.9 x 1.3 mm"
      club "Published figures" {
        section_size = "D"
      }
    }
  }
  answer = "gap"
  reason = "The outside diameter is under 35.0 mm."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "36.0 x 1.19 mm as size D" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "36.0 x 1.19 mm"
      club "Published figures" {
        section_size = "D"
      }
    }
  }
  answer = "gap"
  reason = "The wall is under 1.2 mm."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "30.5 x 2.0 mm as size A" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "30.5 x 2.0 mm"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "meets"
  reason = "18271 mm4 and 179.1 mm2, wall exactly 2.0 mm."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.0 x 1.75 mm as size B" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "25.0 x 1.75 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "meets"
  reason = "8686 mm4 and 127.8 mm2, outside exactly 25.0 mm."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "32.0 x 1.2 mm as size B" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "32.0 x 1.2 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "meets"
  reason = "13790 mm4 and 116.1 mm2, wall exactly 1.2 mm."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.0 x 1.5 mm as size C" {
  clause = "5.1"
  as_built {
    tube "1" {
      size = "25.0 x 1.5 mm"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "meets"
  reason = "7676 mm4 and 110.7 mm2, outside exactly 25.0 mm."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "front hoop leaning 20 degrees" {
  clause = "5.6"
  as_built {
    tube "1" {
      part              = "front hoop"
      angle_to_vertical = "20 deg"
    }
  }
  answer = "gap"
  reason = "Less than 20 degrees."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "front hoop leaning 19.9 degrees" {
  clause = "5.6"
  as_built {
    tube "1" {
      part              = "front hoop"
      angle_to_vertical = "19.9 deg"
    }
  }
  answer = "meets"
  reason = "Less than 20 degrees."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "brace at 29.9 degrees included" {
  clause = "5.7"
  as_built {
    tube "1" {
      part             = "backstay"
      upper_end_offset = "100 mm"
      club "Published figures" {
        brace_angle = "29.9 deg"
      }
    }
  }
  answer = "gap"
  reason = "At least 30 degrees included."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "steel of 304 and 400 MPa" {
  clause = "5.4"
  as_built {
    tube "1" {
      yield   = "304 MPa"
      tensile = "400 MPa"
    }
  }
  answer = "gap"
  reason = "Yield at least 305."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.2"
  status = "confirmed"
}
