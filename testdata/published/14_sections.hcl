# Rows of published tables of tube, worked from outside diameter and wall with the published
# formulas. They reproduce the printed figures within 0.3 %, which is their rounding.

# A printed figure and a computed one that differ by no more than the rounding of a table.
term "area_as_printed" {
  given = "tube in cage.tubes"
  means = "abs(section_area(tube) - tube.printed_area) <= 0.3*percent * tube.printed_area"
}

term "second_moment_as_printed" {
  given = "tube in cage.tubes"
  means = "abs(section_second_moment(tube) - tube.printed_second_moment) <= 0.3*percent * tube.printed_second_moment"
}

term "elastic_modulus_as_printed" {
  given = "tube in cage.tubes"
  means = "abs(section_elastic_modulus(tube) - tube.printed_elastic_modulus) <= 0.3*percent * tube.printed_elastic_modulus"
}

term "plastic_modulus_as_printed" {
  given = "tube in cage.tubes"
  means = "abs(section_plastic_modulus(tube) - tube.printed_plastic_modulus) <= 0.3*percent * tube.printed_plastic_modulus"
}

chapter "14" {
  title = "Tables of tube"

  clause "14.1" {
    title   = "Section as printed"
    concern = "eligibility"
    text_at = "Tables of circular hollow sections, EN 10219-2"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  area_as_printed(tube) and second_moment_as_printed(tube)
  and elastic_modulus_as_printed(tube) and plastic_modulus_as_printed(tube)
FORMULA
  }

  clause "14.2" {
    title   = "Mass for each length as printed"
    concern = "eligibility"
    text_at = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  let computed = section_area(tube) * 7850*kg/metre**3;
  abs(computed - tube.printed_mass_per_length) <= 0.3*percent * tube.printed_mass_per_length
FORMULA
  }
}

worked_case "section of 33.7 x 2.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "33.7 x 2.0 mm"
      club "Published figures" {
        printed_area            = "1.99 cm2"
        printed_second_moment   = "2.51 cm4"
        printed_elastic_modulus = "1.49 cm3"
        printed_plastic_modulus = "2.01 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 1.99 cm2, I 2.51 cm4, Wel 1.49 cm3, Wpl 2.01 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 33.7 x 2.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "33.7 x 2.0 mm"
      club "Published figures" {
        printed_mass_per_length = "1.56 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "1.56 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 33.7 x 2.5 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "33.7 x 2.5 mm"
      club "Published figures" {
        printed_area            = "2.45 cm2"
        printed_second_moment   = "3.00 cm4"
        printed_elastic_modulus = "1.78 cm3"
        printed_plastic_modulus = "2.44 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 2.45 cm2, I 3.00 cm4, Wel 1.78 cm3, Wpl 2.44 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 33.7 x 2.5 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "33.7 x 2.5 mm"
      club "Published figures" {
        printed_mass_per_length = "1.92 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "1.92 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 33.7 x 3.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "33.7 x 3.0 mm"
      club "Published figures" {
        printed_area            = "2.89 cm2"
        printed_second_moment   = "3.44 cm4"
        printed_elastic_modulus = "2.04 cm3"
        printed_plastic_modulus = "2.84 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 2.89 cm2, I 3.44 cm4, Wel 2.04 cm3, Wpl 2.84 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 33.7 x 3.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "33.7 x 3.0 mm"
      club "Published figures" {
        printed_mass_per_length = "2.27 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.27 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 42.4 x 2.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "42.4 x 2.0 mm"
      club "Published figures" {
        printed_area            = "2.54 cm2"
        printed_second_moment   = "5.19 cm4"
        printed_elastic_modulus = "2.45 cm3"
        printed_plastic_modulus = "3.27 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 2.54 cm2, I 5.19 cm4, Wel 2.45 cm3, Wpl 3.27 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 42.4 x 2.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "42.4 x 2.0 mm"
      club "Published figures" {
        printed_mass_per_length = "1.99 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "1.99 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 42.4 x 2.5 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "42.4 x 2.5 mm"
      club "Published figures" {
        printed_area            = "3.13 cm2"
        printed_second_moment   = "6.26 cm4"
        printed_elastic_modulus = "2.95 cm3"
        printed_plastic_modulus = "3.99 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 3.13 cm2, I 6.26 cm4, Wel 2.95 cm3, Wpl 3.99 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 42.4 x 2.5 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "42.4 x 2.5 mm"
      club "Published figures" {
        printed_mass_per_length = "2.46 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.46 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 42.4 x 3.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "42.4 x 3.0 mm"
      club "Published figures" {
        printed_area            = "3.71 cm2"
        printed_second_moment   = "7.25 cm4"
        printed_elastic_modulus = "3.42 cm3"
        printed_plastic_modulus = "4.67 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 3.71 cm2, I 7.25 cm4, Wel 3.42 cm3, Wpl 4.67 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 42.4 x 3.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "42.4 x 3.0 mm"
      club "Published figures" {
        printed_mass_per_length = "2.91 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.91 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 42.4 x 4.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "42.4 x 4.0 mm"
      club "Published figures" {
        printed_area            = "4.83 cm2"
        printed_second_moment   = "8.99 cm4"
        printed_elastic_modulus = "4.24 cm3"
        printed_plastic_modulus = "5.92 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 4.83 cm2, I 8.99 cm4, Wel 4.24 cm3, Wpl 5.92 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 42.4 x 4.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "42.4 x 4.0 mm"
      club "Published figures" {
        printed_mass_per_length = "3.79 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "3.79 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 48.3 x 2.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "48.3 x 2.0 mm"
      club "Published figures" {
        printed_area            = "2.91 cm2"
        printed_second_moment   = "7.81 cm4"
        printed_elastic_modulus = "3.23 cm3"
        printed_plastic_modulus = "4.29 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 2.91 cm2, I 7.81 cm4, Wel 3.23 cm3, Wpl 4.29 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 48.3 x 2.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "48.3 x 2.0 mm"
      club "Published figures" {
        printed_mass_per_length = "2.28 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.28 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 48.3 x 2.5 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "48.3 x 2.5 mm"
      club "Published figures" {
        printed_area            = "3.60 cm2"
        printed_second_moment   = "9.46 cm4"
        printed_elastic_modulus = "3.92 cm3"
        printed_plastic_modulus = "5.25 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 3.60 cm2, I 9.46 cm4, Wel 3.92 cm3, Wpl 5.25 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 48.3 x 2.5 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "48.3 x 2.5 mm"
      club "Published figures" {
        printed_mass_per_length = "2.82 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.82 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 48.3 x 3.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "48.3 x 3.0 mm"
      club "Published figures" {
        printed_area            = "4.27 cm2"
        printed_second_moment   = "11.0 cm4"
        printed_elastic_modulus = "4.55 cm3"
        printed_plastic_modulus = "6.17 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 4.27 cm2, I 11.0 cm4, Wel 4.55 cm3, Wpl 6.17 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 48.3 x 3.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "48.3 x 3.0 mm"
      club "Published figures" {
        printed_mass_per_length = "3.35 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "3.35 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 48.3 x 4.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "48.3 x 4.0 mm"
      club "Published figures" {
        printed_area            = "5.57 cm2"
        printed_second_moment   = "13.8 cm4"
        printed_elastic_modulus = "5.70 cm3"
        printed_plastic_modulus = "7.87 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 5.57 cm2, I 13.8 cm4, Wel 5.70 cm3, Wpl 7.87 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 48.3 x 4.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "48.3 x 4.0 mm"
      club "Published figures" {
        printed_mass_per_length = "4.37 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "4.37 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 48.3 x 5.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "48.3 x 5.0 mm"
      club "Published figures" {
        printed_area            = "6.80 cm2"
        printed_second_moment   = "16.2 cm4"
        printed_elastic_modulus = "6.69 cm3"
        printed_plastic_modulus = "9.42 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 6.80 cm2, I 16.2 cm4, Wel 6.69 cm3, Wpl 9.42 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 48.3 x 5.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "48.3 x 5.0 mm"
      club "Published figures" {
        printed_mass_per_length = "5.34 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "5.34 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 60.3 x 2.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "60.3 x 2.0 mm"
      club "Published figures" {
        printed_area            = "3.66 cm2"
        printed_second_moment   = "15.6 cm4"
        printed_elastic_modulus = "5.17 cm3"
        printed_plastic_modulus = "6.80 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 3.66 cm2, I 15.6 cm4, Wel 5.17 cm3, Wpl 6.80 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 60.3 x 2.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "60.3 x 2.0 mm"
      club "Published figures" {
        printed_mass_per_length = "2.88 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.88 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 60.3 x 2.5 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "60.3 x 2.5 mm"
      club "Published figures" {
        printed_area            = "4.54 cm2"
        printed_second_moment   = "19.0 cm4"
        printed_elastic_modulus = "6.30 cm3"
        printed_plastic_modulus = "8.36 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 4.54 cm2, I 19.0 cm4, Wel 6.30 cm3, Wpl 8.36 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 60.3 x 2.5 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "60.3 x 2.5 mm"
      club "Published figures" {
        printed_mass_per_length = "3.56 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "3.56 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 60.3 x 3.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "60.3 x 3.0 mm"
      club "Published figures" {
        printed_area            = "5.40 cm2"
        printed_second_moment   = "22.2 cm4"
        printed_elastic_modulus = "7.37 cm3"
        printed_plastic_modulus = "9.86 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 5.40 cm2, I 22.2 cm4, Wel 7.37 cm3, Wpl 9.86 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 60.3 x 3.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "60.3 x 3.0 mm"
      club "Published figures" {
        printed_mass_per_length = "4.24 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "4.24 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 60.3 x 4.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "60.3 x 4.0 mm"
      club "Published figures" {
        printed_area            = "7.07 cm2"
        printed_second_moment   = "28.2 cm4"
        printed_elastic_modulus = "9.34 cm3"
        printed_plastic_modulus = "12.7 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 7.07 cm2, I 28.2 cm4, Wel 9.34 cm3, Wpl 12.7 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 60.3 x 4.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "60.3 x 4.0 mm"
      club "Published figures" {
        printed_mass_per_length = "5.55 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "5.55 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 60.3 x 5.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "60.3 x 5.0 mm"
      club "Published figures" {
        printed_area            = "8.69 cm2"
        printed_second_moment   = "33.5 cm4"
        printed_elastic_modulus = "11.1 cm3"
        printed_plastic_modulus = "15.3 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 8.69 cm2, I 33.5 cm4, Wel 11.1 cm3, Wpl 15.3 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 60.3 x 5.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "60.3 x 5.0 mm"
      club "Published figures" {
        printed_mass_per_length = "6.82 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "6.82 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 76.1 x 3.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "76.1 x 3.0 mm"
      club "Published figures" {
        printed_area            = "6.89 cm2"
        printed_second_moment   = "46.1 cm4"
        printed_elastic_modulus = "12.1 cm3"
        printed_plastic_modulus = "16.0 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 6.89 cm2, I 46.1 cm4, Wel 12.1 cm3, Wpl 16.0 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 76.1 x 3.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "76.1 x 3.0 mm"
      club "Published figures" {
        printed_mass_per_length = "5.41 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "5.41 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "section of 88.9 x 3.0 mm" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "88.9 x 3.0 mm"
      club "Published figures" {
        printed_area            = "8.10 cm2"
        printed_second_moment   = "74.8 cm4"
        printed_elastic_modulus = "16.8 cm3"
        printed_plastic_modulus = "22.1 cm3"
      }
    }
  }
  answer = "meets"
  reason = "A 8.10 cm2, I 74.8 cm4, Wel 16.8 cm3, Wpl 22.1 cm3 in the table."
  source = "Tables of circular hollow sections, EN 10219-2"
  status = "quoted by others"
}

worked_case "mass of 88.9 x 3.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "88.9 x 3.0 mm"
      club "Published figures" {
        printed_mass_per_length = "6.36 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "6.36 kg/m in the table."
  source = "Tables of circular hollow sections, EN 10219-2, with 7850 kg/m3"
  status = "quoted by others"
}

worked_case "HSS1.660x0.140 by its design wall" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "1.660 x 0.130 in"
      club "Published figures" {
        printed_area            = "0.625 in2"
        printed_second_moment   = "0.184 in4"
        printed_elastic_modulus = "0.222 in3"
        printed_plastic_modulus = "0.305 in3"
      }
    }
  }
  answer = "meets"
  reason = "The table works with a design wall of 0.93 of the nominal, 0.130 in."
  source = "AISC table of round HSS, HSS1.660x0.140"
  status = "quoted by others"
}

worked_case "HSS1.660x0.140 by its nominal wall" {
  clause = "14.1"
  as_built {
    tube "1" {
      size = "1.660 x 0.140 in"
      club "Published figures" {
        printed_area            = "0.625 in2"
        printed_second_moment   = "0.184 in4"
        printed_elastic_modulus = "0.222 in3"
        printed_plastic_modulus = "0.305 in3"
      }
    }
  }
  answer = "gap"
  reason = "The printed section is not that of the nominal wall."
  source = "AISC table of round HSS, HSS1.660x0.140"
  status = "quoted by others"
}

worked_case "mass of HSS1.660x0.140 by its nominal wall" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.660 x 0.140 in"
      club "Published figures" {
        printed_mass_per_length = "2.27 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "The printed mass is that of the nominal wall."
  source = "AISC table of round HSS, HSS1.660x0.140"
  status = "quoted by others"
}

worked_case "mass of HSS1.660x0.140 by its design wall" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.660 x 0.130 in"
      club "Published figures" {
        printed_mass_per_length = "2.27 lb/ft"
      }
    }
  }
  answer = "gap"
  reason = "Section and mass of one row stand on two walls."
  source = "AISC table of round HSS, HSS1.660x0.140"
  status = "quoted by others"
}

worked_case "mass of 1.0 x .049 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.0 x .049 in"
      club "Published figures" {
        printed_mass_per_length = ".497 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = ".497 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 1.0 x .065 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.0 x .065 in"
      club "Published figures" {
        printed_mass_per_length = ".649 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = ".649 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 1.25 x .049 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.25 x .049 in"
      club "Published figures" {
        printed_mass_per_length = ".628 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = ".628 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 1.25 x .065 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.25 x .065 in"
      club "Published figures" {
        printed_mass_per_length = ".822 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = ".822 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 1.25 x .083 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.25 x .083 in"
      club "Published figures" {
        printed_mass_per_length = "1.034 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.034 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 1.25 x .095 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.25 x .095 in"
      club "Published figures" {
        printed_mass_per_length = "1.172 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.172 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 1.5 x .049 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.5 x .049 in"
      club "Published figures" {
        printed_mass_per_length = ".759 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = ".759 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 1.5 x .065 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.5 x .065 in"
      club "Published figures" {
        printed_mass_per_length = ".996 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = ".996 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 1.5 x .083 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.5 x .083 in"
      club "Published figures" {
        printed_mass_per_length = "1.256 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.256 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 1.5 x .095 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.5 x .095 in"
      club "Published figures" {
        printed_mass_per_length = "1.426 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.426 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 1.75 x .065 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.75 x .065 in"
      club "Published figures" {
        printed_mass_per_length = "1.170 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.170 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 1.75 x .083 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.75 x .083 in"
      club "Published figures" {
        printed_mass_per_length = "1.478 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.478 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 1.75 x .095 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.75 x .095 in"
      club "Published figures" {
        printed_mass_per_length = "1.679 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.679 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 2.0 x .065 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "2.0 x .065 in"
      club "Published figures" {
        printed_mass_per_length = "1.343 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.343 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 2.0 x .083 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "2.0 x .083 in"
      club "Published figures" {
        printed_mass_per_length = "1.699 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.699 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 2.0 x .095 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "2.0 x .095 in"
      club "Published figures" {
        printed_mass_per_length = "1.933 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.933 lb/ft in the sheet."
  source = "Tube maker's sheet of a dual-phase steel, lb/ft"
  status = "quoted by others"
}

worked_case "mass of 75.0 x 1.0 mm as 1.825 kg/m" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "75.0 x 1.0 mm"
      club "Published figures" {
        printed_mass_per_length = "1.825 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "1.825 kg/m in the table."
  source = "Stock table of round steel tube"
  status = "quoted by others"
}

worked_case "mass of 10 x 0.5 mm as 0.117 kg/m" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "10 x 0.5 mm"
      club "Published figures" {
        printed_mass_per_length = "0.117 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "0.117 kg/m in the table."
  source = "Stock table of round steel tube"
  status = "quoted by others"
}

worked_case "mass of 3.5 x 0.036 in as 1.335 lb/ft" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "3.5 x 0.036 in"
      club "Published figures" {
        printed_mass_per_length = "1.335 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.335 lb/ft in the table."
  source = "Stock table of round steel tube"
  status = "quoted by others"
}

worked_case "mass of 4.000 x 0.047 in as 1.989 lb/ft" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "4.000 x 0.047 in"
      club "Published figures" {
        printed_mass_per_length = "1.989 lb/ft"
      }
    }
  }
  answer = "meets"
  reason = "1.989 lb/ft in the table."
  source = "Stock table of round steel tube"
  status = "quoted by others"
}

worked_case "mass of 4.000 x 0.047 in as 2.961 kg/m" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "4.000 x 0.047 in"
      club "Published figures" {
        printed_mass_per_length = "2.961 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.961 kg/m in the table."
  source = "Stock table of round steel tube"
  status = "quoted by others"
}

worked_case "mass of cage tube 45 x 2.5 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "45 x 2.5 mm"
      club "Published figures" {
        printed_mass_per_length = "2.6203 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.6203 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "mass of cage tube 50 x 2.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "50 x 2.0 mm"
      club "Published figures" {
        printed_mass_per_length = "2.3675 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.3675 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "mass of cage tube 38 x 2.5 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "38 x 2.5 mm"
      club "Published figures" {
        printed_mass_per_length = "2.1887 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.1887 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "mass of cage tube 40 x 2.0 mm" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "40 x 2.0 mm"
      club "Published figures" {
        printed_mass_per_length = "1.8743 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "1.8743 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "mass of cage tube 1.75 x .095 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.75 x .095 in"
      club "Published figures" {
        printed_mass_per_length = "2.5015 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.5015 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}

worked_case "mass of cage tube 1.5 x .095 in" {
  clause = "14.2"
  as_built {
    tube "1" {
      size = "1.5 x .095 in"
      club "Published figures" {
        printed_mass_per_length = "2.1237 kg/m"
      }
    }
  }
  answer = "meets"
  reason = "2.1237 kg/m."
  source = "Section formulas for round tube, worked out apart from the program"
  status = "computed"
}
