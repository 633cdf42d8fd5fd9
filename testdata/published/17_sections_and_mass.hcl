# Sections, stiffness and mass as they follow from what a sheet has of a tube, beside printed
# figures. A tube of one metre is two joints 1000 mm apart. Its steel is 7850 kg/m3
# (EN 10219-2) and 210 GPa (EN 1993-1-1) where nothing else is stated; Formula SAE reckons
# with 200 GPa, which has to be stated.

# A printed figure and one that follows, apart by no more than the rounding of the table.
term "followed_area_as_printed" {
  given = "tube in cage.tubes"
  means = "abs(tube.section_area - tube.printed_area) <= 0.3*percent * tube.printed_area"
}

term "followed_second_moment_as_printed" {
  given = "tube in cage.tubes"
  means = "abs(tube.second_moment - tube.printed_second_moment) <= 0.3*percent * tube.printed_second_moment"
}

term "followed_modulus_as_printed" {
  given = "tube in cage.tubes"
  means = "abs(tube.section_modulus - tube.printed_elastic_modulus) <= 0.3*percent * tube.printed_elastic_modulus"
}

chapter "17" {
  title = "Sections, stiffness and mass worked out"

  clause "17.1" {
    title   = "Section minima as they follow, to the letter"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, F.3.4.1"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  any(table.section_minima, .size == tube.section_size
  and tube.second_moment >= .second_moment and tube.section_area >= .area
  and tube.outside >= .outside and tube.wall >= .wall)
FORMULA
  }

  clause "17.2" {
    title   = "Section minima as they follow, rounded as the table is"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, F.3.4.1"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  any(table.section_minima, .size == tube.section_size
  and round(tube.second_moment, 1*mm4) >= .second_moment and round(tube.section_area, 1*sq_mm) >= .area
  and tube.outside >= .outside and tube.wall >= .wall)
FORMULA
  }

  clause "17.3" {
    title   = "Section minima by member"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, F.3.4.1"
    across  = "tube in cage.tubes"
    where   = "tube.part in ['main hoop', 'front hoop', 'harness bar', 'backstay']"
    demand  = <<-FORMULA
  let principal = tube.part in ['main hoop', 'front hoop', 'harness bar'];
  any(table.section_minima, (principal ? .size == 'A' : .size == 'B')
  and tube.second_moment >= .second_moment and tube.section_area >= .area)
FORMULA
  }

  clause "17.4" {
    title   = "Bending stiffness of size B, from I and E"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, F.3.4.1 and F.3.4.2"
    across  = "tube in cage.tubes"
    demand  = "tube.bending_stiffness >= 200000*MPa * 8509*mm4"
  }

  clause "17.5" {
    title   = "Yield moment of the main hoop, as 45 x 2.5 mm of 350 N/mm2 has it"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-8.3.3, 2009; section formulas for round tube"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'main hoop'"
    demand  = "round(tube.yield_moment, 1*Nm) >= 1176*Nm"
  }

  clause "17.6" {
    title   = "No less section than 45 x 2.5 mm, area and second moment"
    concern = "safety"
    text_at = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'main hoop'"
    demand  = "round(tube.section_area, .1*sq_mm) >= 333.8*sq_mm and round(tube.second_moment, 1*mm4) >= 75625*mm4"
  }

  clause "17.7" {
    title   = "No less section than 38 x 2.5 mm, area and second moment"
    concern = "safety"
    text_at = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
    across  = "tube in cage.tubes"
    where   = "tube.part != 'main hoop'"
    demand  = "round(tube.section_area, .1*sq_mm) >= 278.8*sq_mm and round(tube.second_moment, 1*mm4) >= 44140*mm4"
  }

  clause "17.8" {
    title   = "Mass of a metre of tube as printed"
    concern = "eligibility"
    text_at = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  let printed = tube.printed_mass_per_length * 1*metre;
  abs(tube.mass - printed) <= 0.3*percent * printed
FORMULA
  }

  clause "17.9" {
    title   = "Section as printed, as it follows"
    concern = "eligibility"
    text_at = "Tables of circular hollow sections, EN 10219-2"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  followed_area_as_printed(tube) and followed_second_moment_as_printed(tube)
  and followed_modulus_as_printed(tube)
FORMULA
  }

  clause "17.10" {
    title   = "Mass of a foot of tube as printed"
    concern = "eligibility"
    text_at = "Tube maker's sheet of a dual-phase steel, lb/ft"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  let printed = tube.printed_mass_per_length * 1*ft;
  abs(tube.mass - printed) <= 0.3*percent * printed
FORMULA
  }

  clause "17.11" {
    title   = "A section that is printed by design wall"
    concern = "eligibility"
    text_at = "AISC table of round HSS, HSS1.660x0.140"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  followed_area_as_printed(tube) and followed_second_moment_as_printed(tube)
  and followed_modulus_as_printed(tube)
FORMULA
  }

  clause "17.12" {
    title   = "The mass printed beside it, by nominal wall"
    concern = "eligibility"
    text_at = "AISC table of round HSS, HSS1.660x0.140"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  let printed = tube.printed_mass_per_length * 1*ft;
  abs(tube.mass - printed) <= 0.3*percent * printed
FORMULA
  }

  clause "17.13" {
    title   = "Section and mass of cage sizes as worked out apart"
    concern = "eligibility"
    text_at = "Section formulas for round tube, worked out apart from the program"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  round(tube.section_area, .01*sq_mm) == tube.printed_area and round(tube.second_moment, 1*mm4) == tube.printed_second_moment
  and abs(tube.section_modulus - tube.printed_elastic_modulus) <= .06*cu_mm
  and abs(tube.mass - tube.printed_mass_per_length * 1*metre) <= 0.06*gram
FORMULA
  }

  clause "17.14" {
    title   = "Length of a bent tube along its axis"
    concern = "eligibility"
    text_at = "Elementary geometry: an arc of radius R that turns by w is R w long and takes R tan(w/2) from each straight"
    across  = "tube in cage.tubes"
    demand  = "abs(tube.developed_length - tube.length_by_hand) <= .01*mm"
  }

  clause "17.15" {
    title   = "Mass of a car's tubes together"
    concern = "eligibility"
    text_at = "Elementary geometry, with 7850 kg/m3 (EN 10219-2)"
    demand  = "abs(cage.mass - cage.mass_by_hand) <= 1*gram"
  }
}

worked_case "1.0 x 0.095 in as size A, followed, to the letter" {
  clause = "17.1"
  as_built {
    tube "1" {
      size = "1.0 x 0.095 in"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "meets"
  reason = "I 11636.5 mm4, A 174.26 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.0 x 2.5 mm as size A, followed, to the letter" {
  clause = "17.1"
  as_built {
    tube "1" {
      size = "25.0 x 2.5 mm"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "meets"
  reason = "I 11320.8 mm4, A 176.71 mm2. By 0.78 mm4."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.0 x 0.065 in as size B, followed, to the letter" {
  clause = "17.1"
  as_built {
    tube "1" {
      size = "1.0 x 0.065 in"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "meets"
  reason = "I 8726.4 mm4, A 123.18 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.4 x 1.6 mm as size B, followed, to the letter" {
  clause = "17.1"
  as_built {
    tube "1" {
      size = "25.4 x 1.6 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "gap"
  reason = "I 8508.8 mm4, A 119.63 mm2. 8508.8 is less than 8509: a listed example that does not meet the figure beside it."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.0 x 0.049 in as size C, followed, to the letter" {
  clause = "17.1"
  as_built {
    tube "1" {
      size = "1.0 x 0.049 in"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "meets"
  reason = "I 6906.9 mm4, A 94.45 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.4 x 1.2 mm as size C, followed, to the letter" {
  clause = "17.1"
  as_built {
    tube "1" {
      size = "25.4 x 1.2 mm"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "meets"
  reason = "I 6695.0 mm4, A 91.23 mm2. By 0.05 mm4."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.375 x 0.049 in as size D, followed, to the letter" {
  clause = "17.1"
  as_built {
    tube "1" {
      size = "1.375 x 0.049 in"
      club "Published figures" {
        section_size = "D"
      }
    }
  }
  answer = "gap"
  reason = "I 18698.8 mm4, A 131.69 mm2. All but one: 1.375 in is 34.925 mm, less than 35.0."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "35.0 x 1.2 mm as size D, followed, to the letter" {
  clause = "17.1"
  as_built {
    tube "1" {
      size = "35.0 x 1.2 mm"
      club "Published figures" {
        section_size = "D"
      }
    }
  }
  answer = "meets"
  reason = "I 18219.6 mm4, A 127.42 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.4 x 2.0 mm as size A, followed, to the letter" {
  clause = "17.1"
  as_built {
    tube "1" {
      size = "25.4 x 2.0 mm"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "gap"
  reason = "I 10136.7 mm4, A 147.03 mm2: 11320 mm4 and 173 mm2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.0 x 1.5 mm as size B, followed, to the letter" {
  clause = "17.1"
  as_built {
    tube "1" {
      size = "25.0 x 1.5 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "gap"
  reason = "I 7675.7 mm4, A 110.74 mm2: 8509 mm4 and 114 mm2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "30.0 x 1.5 mm as size C, followed, to the letter" {
  clause = "17.1"
  as_built {
    tube "1" {
      size = "30.0 x 1.5 mm"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "meets"
  reason = "I 13673.7 mm4, A 134.30 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "wall not measured, followed, to the letter" {
  clause = "17.1"
  as_built {
    tube "1" {
      outside = "25.4 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "not recorded"
  reason = "25.4 mm outside, and no wall."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "confirmed"
}

worked_case "size class not told, followed, to the letter" {
  clause = "17.1"
  as_built {
    tube "1" {
      size = "25.4 x 1.651 mm"
    }
  }
  answer = "not recorded"
  reason = "25.4 x 1.651 mm meets the minima of B and C, not of A."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "confirmed"
}

worked_case "1.0 x 0.095 in as size A, followed, rounded" {
  clause = "17.2"
  as_built {
    tube "1" {
      size = "1.0 x 0.095 in"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "meets"
  reason = "I 11636.5 mm4, A 174.26 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.0 x 2.5 mm as size A, followed, rounded" {
  clause = "17.2"
  as_built {
    tube "1" {
      size = "25.0 x 2.5 mm"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "meets"
  reason = "I 11320.8 mm4, A 176.71 mm2. By 0.78 mm4."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.0 x 0.065 in as size B, followed, rounded" {
  clause = "17.2"
  as_built {
    tube "1" {
      size = "1.0 x 0.065 in"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "meets"
  reason = "I 8726.4 mm4, A 123.18 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.4 x 1.6 mm as size B, followed, rounded" {
  clause = "17.2"
  as_built {
    tube "1" {
      size = "25.4 x 1.6 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "meets"
  reason = "I 8508.8 mm4, A 119.63 mm2. Rounded to whole mm4 it is 8509."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.0 x 0.049 in as size C, followed, rounded" {
  clause = "17.2"
  as_built {
    tube "1" {
      size = "1.0 x 0.049 in"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "meets"
  reason = "I 6906.9 mm4, A 94.45 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.4 x 1.2 mm as size C, followed, rounded" {
  clause = "17.2"
  as_built {
    tube "1" {
      size = "25.4 x 1.2 mm"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "meets"
  reason = "I 6695.0 mm4, A 91.23 mm2. By 0.05 mm4."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "1.375 x 0.049 in as size D, followed, rounded" {
  clause = "17.2"
  as_built {
    tube "1" {
      size = "1.375 x 0.049 in"
      club "Published figures" {
        section_size = "D"
      }
    }
  }
  answer = "gap"
  reason = "I 18698.8 mm4, A 131.69 mm2. All but one: 1.375 in is 34.925 mm, less than 35.0."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "35.0 x 1.2 mm as size D, followed, rounded" {
  clause = "17.2"
  as_built {
    tube "1" {
      size = "35.0 x 1.2 mm"
      club "Published figures" {
        section_size = "D"
      }
    }
  }
  answer = "meets"
  reason = "I 18219.6 mm4, A 127.42 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.4 x 2.0 mm as size A, followed, rounded" {
  clause = "17.2"
  as_built {
    tube "1" {
      size = "25.4 x 2.0 mm"
      club "Published figures" {
        section_size = "A"
      }
    }
  }
  answer = "gap"
  reason = "I 10136.7 mm4, A 147.03 mm2: 11320 mm4 and 173 mm2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "25.0 x 1.5 mm as size B, followed, rounded" {
  clause = "17.2"
  as_built {
    tube "1" {
      size = "25.0 x 1.5 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "gap"
  reason = "I 7675.7 mm4, A 110.74 mm2: 8509 mm4 and 114 mm2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "30.0 x 1.5 mm as size C, followed, rounded" {
  clause = "17.2"
  as_built {
    tube "1" {
      size = "30.0 x 1.5 mm"
      club "Published figures" {
        section_size = "C"
      }
    }
  }
  answer = "meets"
  reason = "I 13673.7 mm4, A 134.30 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "wall not measured, followed, rounded" {
  clause = "17.2"
  as_built {
    tube "1" {
      outside = "25.4 mm"
      club "Published figures" {
        section_size = "B"
      }
    }
  }
  answer = "not recorded"
  reason = "25.4 mm outside, and no wall."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "confirmed"
}

worked_case "size class not told, followed, rounded" {
  clause = "17.2"
  as_built {
    tube "1" {
      size = "25.4 x 1.651 mm"
    }
  }
  answer = "not recorded"
  reason = "25.4 x 1.651 mm meets the minima of B and C, not of A."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "confirmed"
}

worked_case "main hoop of 25.0 x 2.5 mm" {
  clause = "17.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "25.0 x 2.5 mm"
    }
  }
  answer = "meets"
  reason = "Size A: I 11320.8 mm4, A 176.71 mm2, 11320 mm4 and 173 mm2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "main hoop of 1.0 x 0.065 in" {
  clause = "17.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.0 x 0.065 in"
    }
  }
  answer = "gap"
  reason = "Size A: I 8726.4 mm4, A 123.18 mm2, 11320 mm4 and 173 mm2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "front hoop of 1.0 x 0.095 in" {
  clause = "17.3"
  as_built {
    tube "1" {
      part = "front hoop"
      size = "1.0 x 0.095 in"
    }
  }
  answer = "meets"
  reason = "Size A: I 11636.5 mm4, A 174.26 mm2, 11320 mm4 and 173 mm2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "harness bar of 25.4 x 1.6 mm" {
  clause = "17.3"
  as_built {
    tube "1" {
      part = "harness bar"
      size = "25.4 x 1.6 mm"
    }
  }
  answer = "gap"
  reason = "Size A: I 8508.8 mm4, A 119.63 mm2, 11320 mm4 and 173 mm2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "backstay of 1.0 x 0.065 in" {
  clause = "17.3"
  as_built {
    tube "1" {
      part = "backstay"
      size = "1.0 x 0.065 in"
    }
  }
  answer = "meets"
  reason = "Size B: I 8726.4 mm4, A 123.18 mm2, 8509 mm4 and 114 mm2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "backstay of 25.4 x 1.6 mm" {
  clause = "17.3"
  as_built {
    tube "1" {
      part = "backstay"
      size = "25.4 x 1.6 mm"
    }
  }
  answer = "gap"
  reason = "Size B: I 8508.8 mm4, A 119.63 mm2, 8509 mm4 and 114 mm2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "backstay of 1.0 x 0.049 in" {
  clause = "17.3"
  as_built {
    tube "1" {
      part = "backstay"
      size = "1.0 x 0.049 in"
    }
  }
  answer = "gap"
  reason = "Size B: I 6906.9 mm4, A 94.45 mm2, 8509 mm4 and 114 mm2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "main hoop known as ordered" {
  clause = "17.3"
  as_built {
    tube "1" {
      part    = "main hoop"
      ordered = "25.0 x 2.5 mm"
    }
  }
  answer = "meets"
  reason = "Nothing is measured: I 11320.8 mm4 by the size on the certificate."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "main hoop measured under its order" {
  clause = "17.3"
  as_built {
    tube "1" {
      part    = "main hoop"
      size    = "25.0 x 2.45 mm"
      ordered = "25.0 x 2.5 mm"
    }
  }
  answer = "gap"
  reason = "25.0 x 2.45 mm as measured: I 11162.5 mm4, A 173.57 mm2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "computed"
}

worked_case "main hoop of unknown size" {
  clause = "17.3"
  as_built {
    tube "1" {
      part     = "main hoop"
      material = "25CrMo4"
    }
  }
  answer = "not recorded"
  reason = "Neither measured nor ordered."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1"
  status = "confirmed"
}

worked_case "stiffness of 1.0 x 0.065 in" {
  clause = "17.4"
  as_built {
    tube "1" {
      size       = "1.0 x 0.065 in"
      material   = "25CrMo4"
      elasticity = "200 GPa"
    }
  }
  answer = "meets"
  reason = "200 GPa x 8726.4 mm4 = 1745.29 N.m2, and 200 GPa x 8509 mm4 = 1701.80 N.m2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1 and F.3.4.2"
  status = "computed"
}

worked_case "stiffness of 25.4 x 1.6 mm at 200 GPa" {
  clause = "17.4"
  as_built {
    tube "1" {
      size       = "25.4 x 1.6 mm"
      material   = "25CrMo4"
      elasticity = "200 GPa"
    }
  }
  answer = "gap"
  reason = "200 GPa x 8508.8 mm4 = 1701.76 N.m2, and 200 GPa x 8509 mm4 = 1701.80 N.m2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1 and F.3.4.2"
  status = "computed"
}

worked_case "stiffness of 25.4 x 1.6 mm at 210 GPa" {
  clause = "17.4"
  as_built {
    tube "1" {
      size     = "25.4 x 1.6 mm"
      material = "25CrMo4"
    }
  }
  answer = "meets"
  reason = "210 GPa x 8508.8 mm4 = 1786.85 N.m2, and 200 GPa x 8509 mm4 = 1701.80 N.m2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1 and F.3.4.2"
  status = "computed"
}

worked_case "stiffness of 1.0 x 0.049 in" {
  clause = "17.4"
  as_built {
    tube "1" {
      size       = "1.0 x 0.049 in"
      material   = "25CrMo4"
      elasticity = "200 GPa"
    }
  }
  answer = "gap"
  reason = "200 GPa x 6906.9 mm4 = 1381.38 N.m2, and 200 GPa x 8509 mm4 = 1701.80 N.m2 are asked."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1 and F.3.4.2"
  status = "computed"
}

worked_case "stiffness of an aluminium tube" {
  clause = "17.4"
  as_built {
    tube "1" {
      size     = "25.4 x 2.4 mm"
      material = "aluminium alloy"
    }
  }
  answer = "not recorded"
  reason = "Its modulus is not stated, and it is not that of steel."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1 and F.3.4.2"
  status = "computed"
}

worked_case "stiffness of 38 x 3.0 mm in aluminium" {
  clause = "17.4"
  as_built {
    tube "1" {
      size       = "38 x 3.0 mm"
      material   = "aluminium alloy"
      elasticity = "70 GPa"
    }
  }
  answer = "meets"
  reason = "70 GPa x 50882 mm4 = 3562 N.m2."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1 and F.3.4.2"
  status = "computed"
}

worked_case "stiffness of a tube of unknown material" {
  clause = "17.4"
  as_built {
    tube "1" {
      size = "25.4 x 1.651 mm"
    }
  }
  answer = "not recorded"
  reason = "From 20 to 250 GPa it may be anything."
  source = "Formula SAE Rules 2026, V1.0, F.3.4.1 and F.3.4.2"
  status = "computed"
}

worked_case "yield moment of 45 x 2.5 mm at 350" {
  clause = "17.5"
  as_built {
    tube "1" {
      part  = "main hoop"
      size  = "45 x 2.5 mm"
      yield = "350 MPa"
    }
  }
  answer = "meets"
  reason = "W 3361.1 mm3 x 350 N/mm2 = 1176.4 N.m."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009; section formulas for round tube"
  status = "computed"
}

worked_case "yield moment of 45 x 2.5 mm at 349" {
  clause = "17.5"
  as_built {
    tube "1" {
      part  = "main hoop"
      size  = "45 x 2.5 mm"
      yield = "349 MPa"
    }
  }
  answer = "gap"
  reason = "W 3361.1 mm3 x 349 N/mm2 = 1173.0 N.m."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009; section formulas for round tube"
  status = "computed"
}

worked_case "yield moment of 50 x 2.0 mm at 350" {
  clause = "17.5"
  as_built {
    tube "1" {
      part  = "main hoop"
      size  = "50 x 2.0 mm"
      yield = "350 MPa"
    }
  }
  answer = "meets"
  reason = "W 3480.4 mm3 x 350 N/mm2 = 1218.1 N.m: more, with less metal."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009; section formulas for round tube"
  status = "computed"
}

worked_case "yield moment of 1.75 x .095 in at 350" {
  clause = "17.5"
  as_built {
    tube "1" {
      part  = "main hoop"
      size  = "1.75 x .095 in"
      yield = "350 MPa"
    }
  }
  answer = "gap"
  reason = "W 3177.6 mm3 x 350 N/mm2 = 1112.2 N.m: 5.5 % less than that of 45 x 2.5 mm."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009; section formulas for round tube"
  status = "computed"
}

worked_case "yield moment of 1.75 x .095 in at 370.2" {
  clause = "17.5"
  as_built {
    tube "1" {
      part  = "main hoop"
      size  = "1.75 x .095 in"
      yield = "370.2 MPa"
    }
  }
  answer = "meets"
  reason = "W 3177.6 mm3 x 370.2 N/mm2 = 1176.3 N.m."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009; section formulas for round tube"
  status = "computed"
}

worked_case "yield moment of 45 x 2.5 mm of 235 steel" {
  clause = "17.5"
  as_built {
    tube "1" {
      part  = "main hoop"
      size  = "45 x 2.5 mm"
      yield = "235 MPa"
    }
  }
  answer = "gap"
  reason = "W 3361.1 mm3 x 235 N/mm2 = 789.9 N.m."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009; section formulas for round tube"
  status = "computed"
}

worked_case "yield moment of 38 x 2.5 mm of 517 steel" {
  clause = "17.5"
  as_built {
    tube "1" {
      part  = "main hoop"
      size  = "38 x 2.5 mm"
      yield = "517 MPa"
    }
  }
  answer = "meets"
  reason = "W 2323.2 mm3 x 517 N/mm2 = 1201.1 N.m."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009; section formulas for round tube"
  status = "computed"
}

worked_case "yield moment without a yield strength" {
  clause = "17.5"
  as_built {
    tube "1" {
      part    = "main hoop"
      size    = "45 x 2.5 mm"
      tensile = "480 MPa"
    }
  }
  answer = "not recorded"
  reason = "The tensile strength says nothing of it."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009; section formulas for round tube"
  status = "computed"
}

worked_case "section of 45 x 2.5 mm against itself" {
  clause = "17.6"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "45 x 2.5 mm"
    }
  }
  answer = "meets"
  reason = "A 333.79 mm2 (+0.0 %), I 75625 mm4 (+0.0 %)."
  source = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
  status = "computed"
}

worked_case "section of 1.75 x .095 in against 45 x 2.5 mm" {
  clause = "17.6"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.75 x .095 in"
    }
  }
  answer = "gap"
  reason = "A 318.67 mm2 (-4.5 %), I 70622 mm4 (-6.6 %). The printed equivalent is less in both."
  source = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
  status = "computed"
}

worked_case "section of 50 x 2.0 mm against 45 x 2.5 mm" {
  clause = "17.6"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "50 x 2.0 mm"
    }
  }
  answer = "gap"
  reason = "A 301.59 mm2 (-9.6 %), I 87010 mm4 (+15.1 %). The other listed pair has more of the one and less of the other."
  source = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
  status = "computed"
}

worked_case "section of 1.75 x .120 in against 45 x 2.5 mm" {
  clause = "17.6"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.75 x .120 in"
    }
  }
  answer = "meets"
  reason = "A 396.45 mm2 (+18.8 %), I 85406 mm4 (+12.9 %)."
  source = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
  status = "computed"
}

worked_case "section of 1.75 in by 12 swg against 45 x 2.5 mm" {
  clause = "17.6"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.75 x .104 in"
    }
  }
  answer = "meets"
  reason = "A 346.96 mm2 (+3.9 %), I 76111 mm4 (+0.6 %). 12 swg is .104 in, not .095."
  source = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
  status = "computed"
}

worked_case "section of 45 x 2.45 mm against 45 x 2.5 mm" {
  clause = "17.6"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "45 x 2.45 mm"
    }
  }
  answer = "gap"
  reason = "A 327.50 mm2 (-1.9 %), I 74364 mm4 (-1.7 %)."
  source = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
  status = "computed"
}

worked_case "section of an unmeasured wall against 45 x 2.5 mm" {
  clause = "17.6"
  as_built {
    tube "1" {
      part    = "main hoop"
      outside = "45 mm"
    }
  }
  answer = "not recorded"
  reason = "45 mm outside."
  source = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
  status = "computed"
}

worked_case "section of 38 x 2.5 mm against itself" {
  clause = "17.7"
  as_built {
    tube "1" {
      part = "door bar"
      size = "38 x 2.5 mm"
    }
  }
  answer = "meets"
  reason = "A 278.82 mm2 (+0.0 %), I 44140 mm4 (+0.0 %)."
  source = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
  status = "computed"
}

worked_case "section of 1.5 x .095 in against 38 x 2.5 mm" {
  clause = "17.7"
  as_built {
    tube "1" {
      part = "door bar"
      size = "1.5 x .095 in"
    }
  }
  answer = "gap"
  reason = "A 270.53 mm2 (-3.0 %), I 43264 mm4 (-2.0 %). Larger outside, and yet less in both."
  source = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
  status = "computed"
}

worked_case "section of 40 x 2.0 mm against 38 x 2.5 mm" {
  clause = "17.7"
  as_built {
    tube "1" {
      part = "door bar"
      size = "40 x 2.0 mm"
    }
  }
  answer = "gap"
  reason = "A 238.76 mm2 (-14.4 %), I 43216 mm4 (-2.1 %). The other listed pair is less in both."
  source = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
  status = "computed"
}

worked_case "section of 38 x 2.49 mm against 38 x 2.5 mm" {
  clause = "17.7"
  as_built {
    tube "1" {
      part = "door bar"
      size = "38 x 2.49 mm"
    }
  }
  answer = "gap"
  reason = "A 277.78 mm2 (-0.4 %), I 43999 mm4 (-0.3 %)."
  source = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
  status = "computed"
}

worked_case "section of 1.5 x .120 in against 38 x 2.5 mm" {
  clause = "17.7"
  as_built {
    tube "1" {
      part = "door bar"
      size = "1.5 x .120 in"
    }
  }
  answer = "meets"
  reason = "A 335.64 mm2 (+20.4 %), I 51938 mm4 (+17.7 %)."
  source = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
  status = "computed"
}

worked_case "section of unknown outside against 38 x 2.5 mm" {
  clause = "17.7"
  as_built {
    tube "1" {
      part = "door bar"
      wall = "2.5 mm"
    }
  }
  answer = "not recorded"
  reason = "2.5 mm wall."
  source = "For comparison with FIA Appendix J, Art. 253-8.3.3, 2009, which lists pairs"
  status = "computed"
}

worked_case "one metre of 33.7 x 2.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "33.7 x 2.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "1.56 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "1.56 kg/m in the table; (33.7 - 2.0) x 2.0 x 0.0246615 = 1.5635."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 33.7 x 2.5 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "33.7 x 2.5 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "1.92 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "1.92 kg/m in the table; (33.7 - 2.5) x 2.5 x 0.0246615 = 1.9236."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 33.7 x 3.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "33.7 x 3.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.27 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.27 kg/m in the table; (33.7 - 3.0) x 3.0 x 0.0246615 = 2.2713."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 42.4 x 2.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "42.4 x 2.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "1.99 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "1.99 kg/m in the table; (42.4 - 2.0) x 2.0 x 0.0246615 = 1.9926."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 42.4 x 2.5 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "42.4 x 2.5 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.46 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.46 kg/m in the table; (42.4 - 2.5) x 2.5 x 0.0246615 = 2.4600."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 42.4 x 3.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "42.4 x 3.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.91 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.91 kg/m in the table; (42.4 - 3.0) x 3.0 x 0.0246615 = 2.9150."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 42.4 x 4.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "42.4 x 4.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "3.79 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "3.79 kg/m in the table; (42.4 - 4.0) x 4.0 x 0.0246615 = 3.7880."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 48.3 x 2.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "48.3 x 2.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.28 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.28 kg/m in the table; (48.3 - 2.0) x 2.0 x 0.0246615 = 2.2837."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 48.3 x 2.5 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "48.3 x 2.5 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.82 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.82 kg/m in the table; (48.3 - 2.5) x 2.5 x 0.0246615 = 2.8237."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 48.3 x 3.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "48.3 x 3.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "3.35 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "3.35 kg/m in the table; (48.3 - 3.0) x 3.0 x 0.0246615 = 3.3515."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 48.3 x 4.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "48.3 x 4.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "4.37 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "4.37 kg/m in the table; (48.3 - 4.0) x 4.0 x 0.0246615 = 4.3700."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 48.3 x 5.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "48.3 x 5.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "5.34 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "5.34 kg/m in the table; (48.3 - 5.0) x 5.0 x 0.0246615 = 5.3392."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 60.3 x 2.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "60.3 x 2.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.88 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.88 kg/m in the table; (60.3 - 2.0) x 2.0 x 0.0246615 = 2.8755."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 60.3 x 2.5 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "60.3 x 2.5 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "3.56 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "3.56 kg/m in the table; (60.3 - 2.5) x 2.5 x 0.0246615 = 3.5636."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 60.3 x 3.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "60.3 x 3.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "4.24 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "4.24 kg/m in the table; (60.3 - 3.0) x 3.0 x 0.0246615 = 4.2393."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 60.3 x 4.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "60.3 x 4.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "5.55 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "5.55 kg/m in the table; (60.3 - 4.0) x 4.0 x 0.0246615 = 5.5538."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 60.3 x 5.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "60.3 x 5.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "6.82 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "6.82 kg/m in the table; (60.3 - 5.0) x 5.0 x 0.0246615 = 6.8189."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 76.1 x 3.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "76.1 x 3.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "5.41 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "5.41 kg/m in the table; (76.1 - 3.0) x 3.0 x 0.0246615 = 5.4083."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 88.9 x 3.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "88.9 x 3.0 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "6.36 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "6.36 kg/m in the table; (88.9 - 3.0) x 3.0 x 0.0246615 = 6.3553."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 48.3 x 2.5 mm held against the row of 2.0 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "48.3 x 2.5 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.28 kg/m"
      }
    }
  }
  answer = "gap"
  reason = "2.8237 kg, and the row of 2.0 mm says 2.28."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "1010 mm of 48.3 x 2.5 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1010 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "48.3 x 2.5 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.82 kg/m"
      }
    }
  }
  answer = "gap"
  reason = "1.01 x 2.8237 = 2.8520 kg: 1 % more than a metre."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "computed"
}

worked_case "one metre aslant of 48.3 x 2.5 mm" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["800 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "48.3 x 2.5 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.82 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "hypot(600, 800) = 1000 mm."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "computed"
}

worked_case "one metre of 48.3 x 2.5 mm of unknown material" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size    = "48.3 x 2.5 mm"
      through = ["A", "B"]
      club "Published figures" {
        printed_mass_per_length = "2.82 kg/m"
      }
    }
  }
  answer = "not recorded"
  reason = "Steel or aluminium."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "one metre of 48.3 mm tube without a wall" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      through  = ["A", "B"]
      outside  = "48.3 mm"
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.82 kg/m"
      }
    }
  }
  answer = "not recorded"
  reason = "Its wall is neither measured nor ordered."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "48.3 x 2.5 mm of unknown length" {
  clause = "17.8"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" {}
    tube "1" {
      size     = "48.3 x 2.5 mm"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.82 kg/m"
      }
    }
  }
  answer = "not recorded"
  reason = "One end is not placed."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "followed section of 33.7 x 2.0 mm" {
  clause = "17.9"
  as_built {
    tube "1" {
      size = "33.7 x 2.0 mm"
      club "Published figures" {
        printed_area            = "1.99 cm2"
        printed_second_moment   = "2.51 cm4"
        printed_elastic_modulus = "1.49 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 1.99 cm2, I 2.51 cm4, Wel 1.49 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "followed section of 33.7 x 3.0 mm" {
  clause = "17.9"
  as_built {
    tube "1" {
      size = "33.7 x 3.0 mm"
      club "Published figures" {
        printed_area            = "2.89 cm2"
        printed_second_moment   = "3.44 cm4"
        printed_elastic_modulus = "2.04 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 2.89 cm2, I 3.44 cm4, Wel 2.04 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "followed section of 42.4 x 2.5 mm" {
  clause = "17.9"
  as_built {
    tube "1" {
      size = "42.4 x 2.5 mm"
      club "Published figures" {
        printed_area            = "3.13 cm2"
        printed_second_moment   = "6.26 cm4"
        printed_elastic_modulus = "2.95 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 3.13 cm2, I 6.26 cm4, Wel 2.95 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "followed section of 42.4 x 4.0 mm" {
  clause = "17.9"
  as_built {
    tube "1" {
      size = "42.4 x 4.0 mm"
      club "Published figures" {
        printed_area            = "4.83 cm2"
        printed_second_moment   = "8.99 cm4"
        printed_elastic_modulus = "4.24 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 4.83 cm2, I 8.99 cm4, Wel 4.24 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "followed section of 48.3 x 2.5 mm" {
  clause = "17.9"
  as_built {
    tube "1" {
      size = "48.3 x 2.5 mm"
      club "Published figures" {
        printed_area            = "3.60 cm2"
        printed_second_moment   = "9.46 cm4"
        printed_elastic_modulus = "3.92 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 3.60 cm2, I 9.46 cm4, Wel 3.92 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "followed section of 48.3 x 4.0 mm" {
  clause = "17.9"
  as_built {
    tube "1" {
      size = "48.3 x 4.0 mm"
      club "Published figures" {
        printed_area            = "5.57 cm2"
        printed_second_moment   = "13.8 cm4"
        printed_elastic_modulus = "5.70 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 5.57 cm2, I 13.8 cm4, Wel 5.70 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "followed section of 60.3 x 2.0 mm" {
  clause = "17.9"
  as_built {
    tube "1" {
      size = "60.3 x 2.0 mm"
      club "Published figures" {
        printed_area            = "3.66 cm2"
        printed_second_moment   = "15.6 cm4"
        printed_elastic_modulus = "5.17 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 3.66 cm2, I 15.6 cm4, Wel 5.17 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "followed section of 60.3 x 3.0 mm" {
  clause = "17.9"
  as_built {
    tube "1" {
      size = "60.3 x 3.0 mm"
      club "Published figures" {
        printed_area            = "5.40 cm2"
        printed_second_moment   = "22.2 cm4"
        printed_elastic_modulus = "7.37 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 5.40 cm2, I 22.2 cm4, Wel 7.37 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "followed section of 60.3 x 5.0 mm" {
  clause = "17.9"
  as_built {
    tube "1" {
      size = "60.3 x 5.0 mm"
      club "Published figures" {
        printed_area            = "8.69 cm2"
        printed_second_moment   = "33.5 cm4"
        printed_elastic_modulus = "11.1 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 8.69 cm2, I 33.5 cm4, Wel 11.1 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "followed section of 88.9 x 3.0 mm" {
  clause = "17.9"
  as_built {
    tube "1" {
      size = "88.9 x 3.0 mm"
      club "Published figures" {
        printed_area            = "8.10 cm2"
        printed_second_moment   = "74.8 cm4"
        printed_elastic_modulus = "16.8 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 8.10 cm2, I 74.8 cm4, Wel 16.8 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "followed section of 42.4 x 2.5 mm against the row of 3.0 mm" {
  clause = "17.9"
  as_built {
    tube "1" {
      size = "42.4 x 2.5 mm"
      club "Published figures" {
        printed_area            = "3.71 cm2"
        printed_second_moment   = "7.25 cm4"
        printed_elastic_modulus = "3.42 cm3"
      }
    }
  }
  answer = "gap"
  reason = "A 3.13 cm2 where the row has 3.71."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "followed section of a tube of unknown wall" {
  clause = "17.9"
  as_built {
    tube "1" {
      outside = "42.4 mm"
      club "Published figures" {
        printed_area            = "3.13 cm2"
        printed_second_moment   = "6.26 cm4"
        printed_elastic_modulus = "2.95 cm3"
      }
    }
  }
  answer = "not recorded"
  reason = "42.4 mm outside."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "one foot of 1.5 x .065 in" {
  clause = "17.10"
  as_built {
    joint "A" { at = ["0 in", "0 in", "0 in"] }
    joint "B" { at = ["12 in", "0 in", "0 in"] }
    tube "1" {
      size     = "1.5 x .065 in"
      through  = ["A", "B"]
      material = "high-strength low-alloy steel"
      club "Published figures" {
        printed_mass_per_length = "0.996 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "0.996 lb/ft in the sheet; 10.68 x (1.5 - .065) x .065 = 0.9962, and with 7850 kg/m3 0.9972."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "one foot of 1.5 x .083 in" {
  clause = "17.10"
  as_built {
    joint "A" { at = ["0 in", "0 in", "0 in"] }
    joint "B" { at = ["12 in", "0 in", "0 in"] }
    tube "1" {
      size     = "1.5 x .083 in"
      through  = ["A", "B"]
      material = "high-strength low-alloy steel"
      club "Published figures" {
        printed_mass_per_length = "1.256 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.256 lb/ft in the sheet; 10.68 x (1.5 - .083) x .083 = 1.2561, and with 7850 kg/m3 1.2574."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "one foot of 1.5 x .095 in" {
  clause = "17.10"
  as_built {
    joint "A" { at = ["0 in", "0 in", "0 in"] }
    joint "B" { at = ["12 in", "0 in", "0 in"] }
    tube "1" {
      size     = "1.5 x .095 in"
      through  = ["A", "B"]
      material = "high-strength low-alloy steel"
      club "Published figures" {
        printed_mass_per_length = "1.426 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.426 lb/ft in the sheet; 10.68 x (1.5 - .095) x .095 = 1.4255, and with 7850 kg/m3 1.4270."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "one foot of 1.75 x .083 in" {
  clause = "17.10"
  as_built {
    joint "A" { at = ["0 in", "0 in", "0 in"] }
    joint "B" { at = ["12 in", "0 in", "0 in"] }
    tube "1" {
      size     = "1.75 x .083 in"
      through  = ["A", "B"]
      material = "high-strength low-alloy steel"
      club "Published figures" {
        printed_mass_per_length = "1.478 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.478 lb/ft in the sheet; 10.68 x (1.75 - .083) x .083 = 1.4777, and with 7850 kg/m3 1.4793."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "one foot of 1.75 x .095 in" {
  clause = "17.10"
  as_built {
    joint "A" { at = ["0 in", "0 in", "0 in"] }
    joint "B" { at = ["12 in", "0 in", "0 in"] }
    tube "1" {
      size     = "1.75 x .095 in"
      through  = ["A", "B"]
      material = "high-strength low-alloy steel"
      club "Published figures" {
        printed_mass_per_length = "1.679 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.679 lb/ft in the sheet; 10.68 x (1.75 - .095) x .095 = 1.6792, and with 7850 kg/m3 1.6810."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "one foot of 2.0 x .083 in" {
  clause = "17.10"
  as_built {
    joint "A" { at = ["0 in", "0 in", "0 in"] }
    joint "B" { at = ["12 in", "0 in", "0 in"] }
    tube "1" {
      size     = "2.0 x .083 in"
      through  = ["A", "B"]
      material = "high-strength low-alloy steel"
      club "Published figures" {
        printed_mass_per_length = "1.699 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.699 lb/ft in the sheet; 10.68 x (2.0 - .083) x .083 = 1.6993, and with 7850 kg/m3 1.7011."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "one foot of 2.0 x .095 in" {
  clause = "17.10"
  as_built {
    joint "A" { at = ["0 in", "0 in", "0 in"] }
    joint "B" { at = ["12 in", "0 in", "0 in"] }
    tube "1" {
      size     = "2.0 x .095 in"
      through  = ["A", "B"]
      material = "high-strength low-alloy steel"
      club "Published figures" {
        printed_mass_per_length = "1.933 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.933 lb/ft in the sheet; 10.68 x (2.0 - .095) x .095 = 1.9328, and with 7850 kg/m3 1.9349."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "one foot of 1.75 in tube with the least wall of .092 in" {
  clause = "17.10"
  as_built {
    joint "A" { at = ["0 in", "0 in", "0 in"] }
    joint "B" { at = ["12 in", "0 in", "0 in"] }
    tube "1" {
      size     = "1.75 x .092 in"
      through  = ["A", "B"]
      material = "high-strength low-alloy steel"
      club "Published figures" {
        printed_mass_per_length = "1.679 lb/ft"
      }
    }
  }
  answer = "gap"
  reason = ".092 in weighs 1.6308 lb/ft, 3 % less than the sheet has for .095."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "computed"
}

worked_case "one foot of 1.75 x .095 in of unknown material" {
  clause = "17.10"
  as_built {
    joint "A" { at = ["0 in", "0 in", "0 in"] }
    joint "B" { at = ["12 in", "0 in", "0 in"] }
    tube "1" {
      size    = "1.75 x .095 in"
      through = ["A", "B"]
      club "Published figures" {
        printed_mass_per_length = "1.679 lb/ft"
      }
    }
  }
  answer = "not recorded"
  reason = "Nothing says that it is steel."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "HSS1.660x0.140 reckoned with 0.130 in" {
  clause = "17.11"
  as_built {
    tube "1" {
      size = "1.660 x 0.130 in"
      club "Published figures" {
        printed_area            = "0.625 in2"
        printed_second_moment   = "0.184 in4"
        printed_elastic_modulus = "0.222 in3"
      }
    }
  }
  answer = "meets"
  reason = "A 0.6249 in2, I 0.1842 in4, S 0.2219 in3, where 0.625, 0.184 and 0.222 are printed: 0.93 of the nominal wall."
  source = "AISC table of round HSS, HSS1.660x0.140"
  status = "quoted by others"
}

worked_case "HSS1.660x0.140 reckoned with 0.140 in" {
  clause = "17.11"
  as_built {
    tube "1" {
      size = "1.660 x 0.140 in"
      club "Published figures" {
        printed_area            = "0.625 in2"
        printed_second_moment   = "0.184 in4"
        printed_elastic_modulus = "0.222 in3"
      }
    }
  }
  answer = "gap"
  reason = "A 0.6685 in2, I 0.1947 in4, S 0.2346 in3, where 0.625, 0.184 and 0.222 are printed: the nominal wall is not what the table was reckoned with."
  source = "AISC table of round HSS, HSS1.660x0.140"
  status = "quoted by others"
}

worked_case "HSS1.660x0.140 without a wall" {
  clause = "17.11"
  as_built {
    tube "1" {
      outside = "1.660 in"
      club "Published figures" {
        printed_area            = "0.625 in2"
        printed_second_moment   = "0.184 in4"
        printed_elastic_modulus = "0.222 in3"
      }
    }
  }
  answer = "not recorded"
  reason = "1.660 in outside."
  source = "AISC table of round HSS, HSS1.660x0.140"
  status = "quoted by others"
}

worked_case "one foot of HSS1.660x0.140 with 0.140 in" {
  clause = "17.12"
  as_built {
    joint "A" { at = ["0 in", "0 in", "0 in"] }
    joint "B" { at = ["12 in", "0 in", "0 in"] }
    tube "1" {
      size     = "1.660 x 0.140 in"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.27 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "2.2751 lb with 7850 kg/m3, where 2.27 is printed."
  source = "AISC table of round HSS, HSS1.660x0.140"
  status = "quoted by others"
}

worked_case "one foot of HSS1.660x0.140 with 0.130 in" {
  clause = "17.12"
  as_built {
    joint "A" { at = ["0 in", "0 in", "0 in"] }
    joint "B" { at = ["12 in", "0 in", "0 in"] }
    tube "1" {
      size     = "1.660 x 0.130 in"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.27 lb/ft"
      }
    }
  }
  answer = "gap"
  reason = "2.1265 lb with 7850 kg/m3, where 2.27 is printed: the mass is by the nominal wall, the section by 0.93 of it."
  source = "AISC table of round HSS, HSS1.660x0.140"
  status = "quoted by others"
}

worked_case "one foot of HSS1.660x0.140 of unknown length" {
  clause = "17.12"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" {
      y = "0 mm"
      z = "0 mm"
    }
    tube "1" {
      size     = "1.660 x 0.140 in"
      through  = ["A", "B"]
      material = "structural steel"
      club "Published figures" {
        printed_mass_per_length = "2.27 lb/ft"
      }
    }
  }
  answer = "not recorded"
  reason = "Its other end has no x."
  source = "AISC table of round HSS, HSS1.660x0.140"
  status = "quoted by others"
}

worked_case "cage size 45 x 2.5 mm as it follows" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "45 x 2.5 mm"
      through  = ["A", "B"]
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "333.79 mm2"
        printed_second_moment   = "75625 mm4"
        printed_elastic_modulus = "3361.1 mm3"
        printed_mass_per_length = "2.6203 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "A 333.79 mm2, I 75625 mm4, W 3361.1 mm3, 2.6203 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "cage size 50 x 2.0 mm as it follows" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "50 x 2.0 mm"
      through  = ["A", "B"]
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "301.59 mm2"
        printed_second_moment   = "87010 mm4"
        printed_elastic_modulus = "3480.4 mm3"
        printed_mass_per_length = "2.3675 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "A 301.59 mm2, I 87010 mm4, W 3480.4 mm3, 2.3675 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "cage size 38 x 2.5 mm as it follows" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "38 x 2.5 mm"
      through  = ["A", "B"]
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "278.82 mm2"
        printed_second_moment   = "44140 mm4"
        printed_elastic_modulus = "2323.2 mm3"
        printed_mass_per_length = "2.1887 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "A 278.82 mm2, I 44140 mm4, W 2323.2 mm3, 2.1887 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "cage size 40 x 2.0 mm as it follows" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "40 x 2.0 mm"
      through  = ["A", "B"]
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "238.76 mm2"
        printed_second_moment   = "43216 mm4"
        printed_elastic_modulus = "2160.8 mm3"
        printed_mass_per_length = "1.8743 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "A 238.76 mm2, I 43216 mm4, W 2160.8 mm3, 1.8743 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "cage size 35 x 2.0 mm as it follows" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "35 x 2.0 mm"
      through  = ["A", "B"]
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "207.35 mm2"
        printed_second_moment   = "28329 mm4"
        printed_elastic_modulus = "1618.8 mm3"
        printed_mass_per_length = "1.6277 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "A 207.35 mm2, I 28329 mm4, W 1618.8 mm3, 1.6277 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "cage size 38 x 3.0 mm as it follows" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "38 x 3.0 mm"
      through  = ["A", "B"]
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "329.87 mm2"
        printed_second_moment   = "50882 mm4"
        printed_elastic_modulus = "2678.0 mm3"
        printed_mass_per_length = "2.5895 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "A 329.87 mm2, I 50882 mm4, W 2678.0 mm3, 2.5895 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "cage size 1.75 x .095 in as it follows" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "1.75 x .095 in"
      through  = ["A", "B"]
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "318.67 mm2"
        printed_second_moment   = "70622 mm4"
        printed_elastic_modulus = "3177.6 mm3"
        printed_mass_per_length = "2.5015 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "A 318.67 mm2, I 70622 mm4, W 3177.6 mm3, 2.5015 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "cage size 1.75 x .120 in as it follows" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "1.75 x .120 in"
      through  = ["A", "B"]
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "396.45 mm2"
        printed_second_moment   = "85406 mm4"
        printed_elastic_modulus = "3842.8 mm3"
        printed_mass_per_length = "3.1121 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "A 396.45 mm2, I 85406 mm4, W 3842.8 mm3, 3.1121 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "cage size 1.5 x .095 in as it follows" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "1.5 x .095 in"
      through  = ["A", "B"]
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "270.53 mm2"
        printed_second_moment   = "43264 mm4"
        printed_elastic_modulus = "2271.1 mm3"
        printed_mass_per_length = "2.1237 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "A 270.53 mm2, I 43264 mm4, W 2271.1 mm3, 2.1237 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "cage size 1.5 x .120 in as it follows" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "1.5 x .120 in"
      through  = ["A", "B"]
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "335.64 mm2"
        printed_second_moment   = "51938 mm4"
        printed_elastic_modulus = "2726.4 mm3"
        printed_mass_per_length = "2.6348 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "A 335.64 mm2, I 51938 mm4, W 2726.4 mm3, 2.6348 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "cage size 1.6 x .083 in as it follows" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "1.6 x .083 in"
      through  = ["A", "B"]
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "255.20 mm2"
        printed_second_moment   = "47504 mm4"
        printed_elastic_modulus = "2337.8 mm3"
        printed_mass_per_length = "2.0033 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "A 255.20 mm2, I 47504 mm4, W 2337.8 mm3, 2.0033 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "cage size 2.0 x .083 in as it follows" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "2.0 x .083 in"
      through  = ["A", "B"]
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "322.49 mm2"
        printed_second_moment   = "95753 mm4"
        printed_elastic_modulus = "3769.8 mm3"
        printed_mass_per_length = "2.5316 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "A 322.49 mm2, I 95753 mm4, W 3769.8 mm3, 2.5316 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "cage size 45 x 2.5 mm against the figures of 1.75 x .095 in" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      size     = "45 x 2.5 mm"
      through  = ["A", "B"]
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "318.67 mm2"
        printed_second_moment   = "70622 mm4"
        printed_elastic_modulus = "3177.6 mm3"
        printed_mass_per_length = "2.5015 kg/m"
      }
    }
  }
  answer = "gap"
  reason = "A 333.79 mm2, not 318.67."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "cage size without a wall" {
  clause = "17.13"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["1000 mm", "0 mm", "0 mm"] }
    tube "1" {
      through  = ["A", "B"]
      outside  = "45 mm"
      material = "unalloyed carbon steel"
      club "Published figures" {
        printed_area            = "333.79 mm2"
        printed_second_moment   = "75625 mm4"
        printed_elastic_modulus = "3361.1 mm3"
        printed_mass_per_length = "2.6203 kg/m"
      }
    }
  }
  answer = "not recorded"
  reason = "45 mm outside."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "one bend of 90 degrees" {
  clause = "17.14"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "0 mm", "1000 mm"] }
    joint "C" { at = ["1000 mm", "0 mm", "1000 mm"] }
    tube "1" {
      through     = ["A", "B", "C"]
      bend_radius = "150 mm"
      club "Published figures" {
        length_by_hand = "1935.619 mm"
      }
    }
  }
  answer = "meets"
  reason = "2000 - 2 x 150 + 150 pi/2 = 1935.619 mm."
  source = "Elementary geometry: an arc of radius R that turns by w is R w long and takes R tan(w/2) from each straight"
  status = "computed"
}

worked_case "hoop with two bends of 90 degrees" {
  clause = "17.14"
  as_built {
    joint "A" { at = ["0 mm", "500 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-500 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-500 mm", "0 mm"] }
    tube "1" {
      through     = ["A", "B", "C", "D"]
      bend_radius = "150 mm"
      club "Published figures" {
        length_by_hand = "2871.239 mm"
      }
    }
  }
  answer = "meets"
  reason = "3000 - 4 x 150 + 2 x 150 pi/2 = 2871.239 mm."
  source = "Elementary geometry: an arc of radius R that turns by w is R w long and takes R tan(w/2) from each straight"
  status = "computed"
}

worked_case "hoop measured from corner to corner" {
  clause = "17.14"
  as_built {
    joint "A" { at = ["0 mm", "500 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-500 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-500 mm", "0 mm"] }
    tube "1" {
      through     = ["A", "B", "C", "D"]
      bend_radius = "150 mm"
      club "Published figures" {
        length_by_hand = "3000 mm"
      }
    }
  }
  answer = "gap"
  reason = "The way over the corners is 3000 mm, along the bends it is 2871.239 mm."
  source = "Elementary geometry: an arc of radius R that turns by w is R w long and takes R tan(w/2) from each straight"
  status = "computed"
}

worked_case "one bend of 36.87 degrees" {
  clause = "17.14"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "0 mm", "1000 mm"] }
    joint "C" { at = ["600 mm", "0 mm", "1800 mm"] }
    tube "1" {
      through     = ["A", "B", "C"]
      bend_radius = "135 mm"
      club "Published figures" {
        length_by_hand = "1996.873 mm"
      }
    }
  }
  answer = "meets"
  reason = "w = atan2(600, 800) = 36.87 deg: 2000 - 2 x 135 tan(w/2) + 135 w = 1996.873 mm."
  source = "Elementary geometry: an arc of radius R that turns by w is R w long and takes R tan(w/2) from each straight"
  status = "computed"
}

worked_case "one bend of 143.13 degrees" {
  clause = "17.14"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "0 mm", "1000 mm"] }
    joint "C" { at = ["600 mm", "0 mm", "200 mm"] }
    tube "1" {
      through     = ["A", "B", "C"]
      bend_radius = "135 mm"
      club "Published figures" {
        length_by_hand = "1527.242 mm"
      }
    }
  }
  answer = "meets"
  reason = "w = 180 - atan2(600, 800) = 143.13 deg: 2000 - 2 x 135 x 3 + 135 w = 1527.242 mm, as tan(w/2) is 3."
  source = "Elementary geometry: an arc of radius R that turns by w is R w long and takes R tan(w/2) from each straight"
  status = "computed"
}

worked_case "straight in space" {
  clause = "17.14"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["-200 mm", "400 mm", "400 mm"] }
    tube "1" {
      through = ["A", "B"]
      club "Published figures" {
        length_by_hand = "600 mm"
      }
    }
  }
  answer = "meets"
  reason = "sqrt(200^2 + 400^2 + 400^2) = 600 mm, exactly."
  source = "Elementary geometry: an arc of radius R that turns by w is R w long and takes R tan(w/2) from each straight"
  status = "computed"
}

worked_case "a hundredth of a millimetre off" {
  clause = "17.14"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["600 mm", "0 mm", "800 mm"] }
    tube "1" {
      through = ["A", "B"]
      club "Published figures" {
        length_by_hand = "1000.01 mm"
      }
    }
  }
  answer = "meets"
  reason = "hypot(600, 800) = 1000 mm: 0.01 mm, on the limit."
  source = "Elementary geometry: an arc of radius R that turns by w is R w long and takes R tan(w/2) from each straight"
  status = "computed"
}

worked_case "two hundredths of a millimetre off" {
  clause = "17.14"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["600 mm", "0 mm", "800 mm"] }
    tube "1" {
      through = ["A", "B"]
      club "Published figures" {
        length_by_hand = "1000.02 mm"
      }
    }
  }
  answer = "gap"
  reason = "hypot(600, 800) = 1000 mm."
  source = "Elementary geometry: an arc of radius R that turns by w is R w long and takes R tan(w/2) from each straight"
  status = "computed"
}

worked_case "bend of unknown radius" {
  clause = "17.14"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "0 mm", "1000 mm"] }
    joint "C" { at = ["1000 mm", "0 mm", "1000 mm"] }
    tube "1" {
      through = ["A", "B", "C"]
      club "Published figures" {
        length_by_hand = "1935.619 mm"
      }
    }
  }
  answer = "not recorded"
  reason = "Between 2000 mm over the corner and less."
  source = "Elementary geometry: an arc of radius R that turns by w is R w long and takes R tan(w/2) from each straight"
  status = "computed"
}

worked_case "hoop and one backstay" {
  clause = "17.15"
  as_built {
    joint "A" { at = ["0 mm", "500 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-500 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-500 mm", "0 mm"] }
    joint "E" {
      at          = ["-800 mm", "500 mm", "400 mm"]
      mirrored_as = "F"
    }
    cage {
      club "Published figures" {
        mass_by_hand = "9.7122 kg"
      }
    }
    tube_stock "A" {
      ordered  = "45 x 2.5 mm"
      material = "unalloyed carbon steel"
    }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C", "D"]
      stock       = "A"
      bend_radius = "150 mm"
    }
    tube "5" {
      part     = "backstay"
      through  = ["B", "E"]
      ordered  = "38 x 2.5 mm"
      material = "unalloyed carbon steel"
    }
  }
  answer = "meets"
  reason = "2.87124 m x 2.6203 kg/m + hypot(800, 600) = 1 m x 2.1887 kg/m = 9.7122 kg."
  source = "Elementary geometry, with 7850 kg/m3 (EN 10219-2)"
  status = "computed"
}

worked_case "hoop and one backstay, hand figure over the corners" {
  clause = "17.15"
  as_built {
    joint "A" { at = ["0 mm", "500 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-500 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-500 mm", "0 mm"] }
    joint "E" {
      at          = ["-800 mm", "500 mm", "400 mm"]
      mirrored_as = "F"
    }
    cage {
      club "Published figures" {
        mass_by_hand = "10.0496 kg"
      }
    }
    tube_stock "A" {
      ordered  = "45 x 2.5 mm"
      material = "unalloyed carbon steel"
    }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C", "D"]
      stock       = "A"
      bend_radius = "150 mm"
    }
    tube "5" {
      part     = "backstay"
      through  = ["B", "E"]
      ordered  = "38 x 2.5 mm"
      material = "unalloyed carbon steel"
    }
  }
  answer = "gap"
  reason = "3 m x 2.6203 + 1 m x 2.1887 = 10.0496 kg over the corners, 9.7122 kg along the bends."
  source = "Elementary geometry, with 7850 kg/m3 (EN 10219-2)"
  status = "computed"
}

worked_case "hoop and backstay of unknown wall" {
  clause = "17.15"
  as_built {
    joint "A" { at = ["0 mm", "500 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-500 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-500 mm", "0 mm"] }
    joint "E" {
      at          = ["-800 mm", "500 mm", "400 mm"]
      mirrored_as = "F"
    }
    cage {
      club "Published figures" {
        mass_by_hand = "9.7122 kg"
      }
    }
    tube_stock "A" {
      ordered  = "45 x 2.5 mm"
      material = "unalloyed carbon steel"
    }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C", "D"]
      stock       = "A"
      bend_radius = "150 mm"
    }
    tube "5" {
      part     = "backstay"
      through  = ["B", "E"]
      outside  = "38 mm"
      material = "unalloyed carbon steel"
    }
  }
  answer = "not recorded"
  reason = "The backstay's wall is not recorded."
  source = "Elementary geometry, with 7850 kg/m3 (EN 10219-2)"
  status = "computed"
}

worked_case "hoop and both backstays, one as the image" {
  clause = "17.15"
  as_built {
    joint "A" { at = ["0 mm", "500 mm", "0 mm"] }
    joint "B" {
      at          = ["0 mm", "500 mm", "1000 mm"]
      mirrored_as = "C"
    }
    joint "D" { at = ["0 mm", "-500 mm", "0 mm"] }
    joint "E" {
      at          = ["-800 mm", "500 mm", "400 mm"]
      mirrored_as = "F"
    }
    cage {
      club "Published figures" {
        mass_by_hand = "11.9009 kg"
      }
    }
    tube_stock "A" {
      ordered  = "45 x 2.5 mm"
      material = "unalloyed carbon steel"
    }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C", "D"]
      stock       = "A"
      bend_radius = "150 mm"
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      ordered     = "38 x 2.5 mm"
      material    = "unalloyed carbon steel"
      mirrored_as = "6"
      stock       = "B"
    }
    tube_stock "B" {
      ordered  = "38 x 2.5 mm"
      material = "unalloyed carbon steel"
    }
  }
  answer = "meets"
  reason = "7.5235 + 2 x 2.1887 = 11.9009 kg: the image takes stock and size from its original."
  source = "Elementary geometry, with 7850 kg/m3 (EN 10219-2)"
  status = "computed"
}
