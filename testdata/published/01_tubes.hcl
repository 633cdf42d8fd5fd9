# Sizes and steels of cage tubes. A pair stays a pair: 45 x 2.5 mm and 1.75 x .095 in are two
# rows of a list, and neither is turned into the other.

table "main_metric" {
  columns = { outside = "tube.outside", wall = "tube.wall" }
  rows    = [["45 mm", "2.5 mm"], ["50 mm", "2.0 mm"]]
}

table "other_metric" {
  columns = { outside = "tube.outside", wall = "tube.wall" }
  rows    = [["38 mm", "2.5 mm"], ["40 mm", "2.0 mm"]]
}

table "main_pairs" {
  columns = { outside = "tube.outside", wall = "tube.wall" }
  rows = [
    ["45 mm", "2.5 mm"],
    ["50 mm", "2.0 mm"],
    ["1.75 in", ".095 in"],
    ["2.0 in", ".083 in"],
  ]
}

table "other_pairs" {
  columns = { outside = "tube.outside", wall = "tube.wall" }
  rows = [
    ["38 mm", "2.5 mm"],
    ["40 mm", "2.0 mm"],
    ["1.5 in", ".095 in"],
    ["1.6 in", ".083 in"],
  ]
}

# 2 mm and 0.090 in are printed side by side; .090 in is 2.286 mm.
table "open_cockpit_pairs" {
  columns = { outside = "tube.outside", wall = "tube.wall" }
  rows    = [["35 mm", "2.0 mm"], ["1.375 in", ".090 in"]]
}

table "speedway_sizes" {
  columns = { outside = "tube.outside", wall = "tube.wall", material = "tube.material" }
  rows = [
    ["38 mm", "3.0 mm", "structural steel"],
    ["1.5 in", ".120 in", "25CrMo4"],
  ]
}

chapter "1" {
  title = "Tubes of the cage"

  clause "1.1" {
    title   = "Main rollbar, metric pairs"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-8.3.3, 2009"
    across  = "tube in cage.tubes"
    where   = "tube.part in ['main hoop', 'lateral hoop']"
    demand  = "any(table.main_metric, tube.outside >= .outside and tube.wall >= .wall)"
    rectify = "Re-make it in 45 x 2.5 mm or 50 x 2.0 mm."
  }

  clause "1.2" {
    title   = "Other members, metric pairs"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-8.3.3, 2009"
    across  = "tube in cage.tubes"
    where   = "tube.part not in ['main hoop', 'lateral hoop']"
    demand  = "any(table.other_metric, tube.outside >= .outside and tube.wall >= .wall)"
  }

  clause "1.3" {
    title   = "Main rollbar, metric and inch pairs"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
    across  = "tube in cage.tubes"
    where   = "tube.part in ['main hoop', 'lateral hoop']"
    demand  = "any(table.main_pairs, tube.outside >= .outside and tube.wall >= .wall)"
  }

  clause "1.4" {
    title   = "Other members, metric and inch pairs"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
    across  = "tube in cage.tubes"
    where   = "tube.part not in ['main hoop', 'lateral hoop']"
    demand  = "any(table.other_pairs, tube.outside >= .outside and tube.wall >= .wall)"
  }

  clause "1.5" {
    title   = "Smaller main rollbar of an old cage"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
    across  = "tube in cage.tubes"
    where   = "tube.part in ['main hoop', 'lateral hoop']"
    demand  = <<-FORMULA
  any(table.main_metric, tube.outside >= .outside and tube.wall >= .wall)
  or (not tube.mandatory or cage.certificate.issued < date('1995-01-01'))
  and any(table.other_metric, tube.outside >= .outside and tube.wall >= .wall)
FORMULA
  }

  clause "1.6" {
    title    = "Round section"
    concern  = "safety"
    text_at  = "FIA Appendix J, Art. 253-8.3.3, 2009"
    across   = "tube in cage.tubes"
    look_for = "Every tube is round, none is square or oval."
  }

  clause "1.7" {
    title   = "Steel and how the tube was made"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-8.3.3, 2009"
    across  = "tube in cage.tubes"
    demand  = "tube.forming == 'cold drawn seamless' and tube.material == 'unalloyed carbon steel'"
  }

  clause "1.8" {
    title   = "Composition"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  tube.carbon_content <= 0.3*percent and tube.manganese_content <= 1.7*percent
  and tube.greatest_other_content <= 0.6*percent
FORMULA
  }

  clause "1.9" {
    title   = "Least strength, as yield"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-8.3.3, 2009"
    across  = "tube in cage.tubes"
    demand  = "tube.yield >= 350*MPa"
  }

  clause "1.10" {
    title   = "Least strength, as tensile"
    concern = "safety"
    text_at = "NAVC roll-cage rules, 2009"
    across  = "tube in cage.tubes"
    demand  = "tube.tensile >= 350*MPa"
  }

  clause "1.11" {
    title   = "Harness bar"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 19.1"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'harness bar'"
    demand  = <<-FORMULA
  any(table.other_metric, tube.outside >= .outside and tube.wall >= .wall)
  and tube.tensile >= 350*MPa
FORMULA
  }

  clause "1.12" {
    title   = "All members, metric pairs"
    concern = "safety"
    text_at = "NAVC roll-cage rules, 2009"
    across  = "tube in cage.tubes"
    demand  = "any(table.other_metric, tube.outside >= .outside and tube.wall >= .wall)"
  }

  clause "1.13" {
    title   = "Hoops in one piece, tubes without fluid"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 3.5 and 6.1"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  (tube.part not in ['main hoop', 'front hoop', 'lateral hoop'] or tube.joints == 0)
  and not tube.contains_fluid
FORMULA
  }

  clause "1.14" {
    title   = "Seamless main tubes"
    concern = "safety"
    text_at = "Formula Off Road technical rules, App. B"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'main hoop'"
    demand  = <<-FORMULA
  tube.forming in ['cold drawn seamless', 'hot finished seamless']
  and any(table.main_metric, tube.outside >= .outside and tube.wall >= .wall)
FORMULA
  }

  clause "1.15" {
    title   = "Rollbar of single-seaters and two-seaters"
    concern = "safety"
    text_at = "FIA Appendix K, 2018"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'main hoop'"
    demand  = "any(table.open_cockpit_pairs, tube.outside >= .outside and tube.wall >= .wall)"
  }

  clause "1.16" {
    title   = "Bars of a stock car"
    concern = "safety"
    text_at = "NASCAR rulebook 1969, s. 20"
    across  = "tube in cage.tubes"
    demand  = "tube.outside >= 1.75*inch and tube.wall >= .090*inch"
  }

  clause "1.17" {
    title   = "Bars of a dirt-track car"
    concern = "safety"
    text_at = "DIRTcar rules, chassis section"
    across  = "tube in cage.tubes"
    demand  = "tube.outside >= 1.5*inch and tube.wall >= .065*inch"
  }

  clause "1.18" {
    title   = "Pipe or alloy tube of a speedway car"
    concern = "safety"
    text_at = "NZ Speedway rulebook 2010, T11-16-7"
    across  = "tube in cage.tubes"
    demand  = "any(table.speedway_sizes, tube.material == .material and tube.outside >= .outside and tube.wall >= .wall)"
  }
}

worked_case "45 x 2.5 mm hoop" {
  clause = "1.1"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "45 x 2.5 mm"
    }
  }
  answer = "meets"
  reason = "The first listed pair, exactly."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "50 x 2.0 mm hoop" {
  clause = "1.1"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "50 x 2.0 mm"
    }
  }
  answer = "meets"
  reason = "The second listed pair, exactly."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "50 x 2.0 mm lateral rollbar" {
  clause = "1.1"
  as_built {
    tube "1" {
      part = "lateral rollbar"
      size = "50 x 2.0 mm"
    }
  }
  answer = "meets"
  reason = "Lateral rollbars take the sizes of the main rollbar where the cage is built on them."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "45 x 2.4 mm hoop" {
  clause = "1.1"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "45 x 2.4 mm"
    }
  }
  answer = "gap"
  reason = "2.4 mm is less than the 2.5 mm that go with 45 mm."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "50 x 1.9 mm hoop" {
  clause = "1.1"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "50 x 1.9 mm"
    }
  }
  answer = "gap"
  reason = "1.9 mm is less than the 2.0 mm that go with 50 mm."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "48 x 2.2 mm hoop, between two pairs" {
  clause = "1.1"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "48 x 2.2 mm"
    }
  }
  answer = "gap"
  reason = "48 mm is over 45 and 2.2 mm over 2.0, but no one pair is met: 45 wants 2.5, 50 wants 50."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "computed"
}

worked_case "inch tube against the metric pairs" {
  clause = "1.1"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.75 x .095 in"
    }
  }
  answer = "gap"
  reason = "1.75 in is 44.45 mm and .095 in is 2.413 mm: under 45 and under 2.5."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "computed"
}

worked_case "2.0 x .083 in hoop against the metric pairs" {
  clause = "1.1"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "2.0 x .083 in"
    }
  }
  answer = "meets"
  reason = "50.8 x 2.108 mm is over 50 x 2.0 mm in both."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "computed"
}

worked_case "hoop of 38 x 2.5 mm" {
  clause = "1.1"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "38 x 2.5 mm"
    }
  }
  answer = "gap"
  reason = "38 x 2.5 mm is for the other members."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "38 x 2.5 mm backstay" {
  clause = "1.2"
  as_built {
    tube "1" {
      part = "backstay"
      size = "38 x 2.5 mm"
    }
  }
  answer = "meets"
  reason = "The first listed pair, exactly."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "40 x 2.0 mm backstay" {
  clause = "1.2"
  as_built {
    tube "1" {
      part = "backstay"
      size = "40 x 2.0 mm"
    }
  }
  answer = "meets"
  reason = "The second listed pair, exactly."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "38 x 2.0 mm backstay" {
  clause = "1.2"
  as_built {
    tube "1" {
      part = "backstay"
      size = "38 x 2.0 mm"
    }
  }
  answer = "gap"
  reason = "38 mm from one pair and 2.0 mm from the other make no pair."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "1.5 x .095 in half-hoop against the metric pairs" {
  clause = "1.2"
  as_built {
    tube "1" {
      part = "lateral half-rollbar"
      size = "1.5 x .095 in"
    }
  }
  answer = "gap"
  reason = ".095 in is 2.413 mm, under 2.5; 1.5 in is 38.1 mm, under 40."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "computed"
}

worked_case "1.6 x .083 in member against the metric pairs" {
  clause = "1.2"
  as_built {
    tube "1" {
      part = "front rollbar"
      size = "1.6 x .083 in"
    }
  }
  answer = "meets"
  reason = "40.64 x 2.108 mm is over 40 x 2.0 mm in both."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "computed"
}

worked_case "main hoop is not an other member" {
  clause = "1.2"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "45 x 2.5 mm"
    }
  }
  answer = "does not apply"
  reason = "The clause is about half-rollbars and all other members."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "inch pair 1.75 x .095" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.75 x .095 in"
    }
  }
  answer = "meets"
  reason = "A listed pair; compared inside its own row."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "inch pair 2.0 x .083" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "2.0 x .083 in"
    }
  }
  answer = "meets"
  reason = "A listed pair; compared inside its own row."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "inch pair measured in millimetres" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "44.45 x 2.413 mm"
    }
  }
  answer = "meets"
  reason = "44.45 mm is 1.75 in and 2.413 mm is .095 in, exactly."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "computed"
}

worked_case "metric pair beside the inch pairs" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "45 x 2.5 mm"
    }
  }
  answer = "meets"
  reason = "The inch equivalents stand beside the metric pairs, which stay."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "1.75 x .090 in hoop" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.75 x .090 in"
    }
  }
  answer = "gap"
  reason = ".090 in is less than the .095 in that go with 1.75 in."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "1.7 x .120 in hoop" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.7 x .120 in"
    }
  }
  answer = "gap"
  reason = "The thicker wall does not make up for 1.70 in outside."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "44.5 x 2.4 mm hoop beside the inch pair" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "44.5 x 2.4 mm"
    }
  }
  answer = "gap"
  reason = "44.5 mm is over 1.75 in, 2.4 mm is under .095 in (2.413 mm)."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "computed"
}

worked_case "wall of 13 bwg" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.75 in x 13 bwg"
    }
  }
  answer = "meets"
  reason = "13 bwg is .095 in."
  source = "Birmingham wire gauge, table after Holtzapffel; MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "computed"
}

worked_case "wall of 13 swg" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.75 in x 13 swg"
    }
  }
  answer = "gap"
  reason = "13 swg is .092 in, not the .095 in of 13 bwg."
  source = "Imperial Standard wire gauge; MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "computed"
}

worked_case "wall of 12 swg as the older text has it" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.75 in x 12 swg"
    }
  }
  answer = "meets"
  reason = "12 swg is .104 in (2.642 mm), more than .095 in: the older text and the newer one do not print the same tube."
  source = "Imperial Standard wire gauge; older MSA text of the same table"
  status = "computed"
}

worked_case "inch pair 1.5 x .095" {
  clause = "1.4"
  as_built {
    tube "1" {
      part = "door bar"
      size = "1.5 x .095 in"
    }
  }
  answer = "meets"
  reason = "A listed pair; compared inside its own row."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "inch pair 1.6 x .083" {
  clause = "1.4"
  as_built {
    tube "1" {
      part = "door bar"
      size = "1.6 x .083 in"
    }
  }
  answer = "meets"
  reason = "A listed pair; compared inside its own row."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "1.5 x .083 in door bar" {
  clause = "1.4"
  as_built {
    tube "1" {
      part = "door bar"
      size = "1.5 x .083 in"
    }
  }
  answer = "gap"
  reason = "1.5 in from one pair and .083 in from the other make no pair."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "38 x 2.45 mm door bar" {
  clause = "1.4"
  as_built {
    tube "1" {
      part = "door bar"
      size = "38 x 2.45 mm"
    }
  }
  answer = "gap"
  reason = "2.45 mm is under the 2.5 of the metric pair, 38 mm is under the 38.1 of the inch pair: never convert and then compare."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "computed"
}

worked_case "38 mm hoop approved on the last day of 1994" {
  clause = "1.5"
  as_built {
    cage {
      certificate {
        issued = "1994-12-31"
      }
    }
    tube "1" {
      part      = "main hoop"
      size      = "38 x 2.5 mm"
      mandatory = true
    }
  }
  answer = "meets"
  reason = "Approved before 1 January 1995."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "38 mm hoop approved on 1 January 1995" {
  clause = "1.5"
  as_built {
    cage {
      certificate {
        issued = "1995-01-01"
      }
    }
    tube "1" {
      part      = "main hoop"
      size      = "38 x 2.5 mm"
      mandatory = true
    }
  }
  answer = "gap"
  reason = "Before 1 January 1995 does not hold that day itself."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "38 mm optional rollbar of a new cage" {
  clause = "1.5"
  as_built {
    cage {
      certificate {
        issued = "2020-06-01"
      }
    }
    tube "1" {
      part      = "main hoop"
      size      = "38 x 2.5 mm"
      mandatory = false
    }
  }
  answer = "meets"
  reason = "Accepted for optional members always."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "38 mm hoop of a cage without a day of approval" {
  clause = "1.5"
  as_built {
    cage {
      certificate {
        number = "1"
      }
    }
    tube "1" {
      part      = "main hoop"
      size      = "38 x 2.5 mm"
      mandatory = true
    }
  }
  answer = "not recorded"
  reason = "It hangs on the day of approval, which is not on the sheet."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "45 mm hoop without a day of approval" {
  clause = "1.5"
  as_built {
    cage {
      certificate {
        number = "1"
      }
    }
    tube "1" {
      part      = "main hoop"
      size      = "45 x 2.5 mm"
      mandatory = true
    }
  }
  answer = "meets"
  reason = "A full-size hoop does not need the old date."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "round or not is for a person to see" {
  clause = "1.6"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "45 x 2.5 mm"
    }
  }
  answer = "by eye"
  reason = "The article allows circular section only; no figure tells it."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "cold drawn seamless carbon steel" {
  clause = "1.7"
  as_built {
    tube_stock "A" {
      material = "carbon steel"
      forming  = "CDS"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "meets"
  reason = "What the article asks for."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "drawn over mandrel" {
  clause = "1.7"
  as_built {
    tube_stock "A" {
      material = "carbon steel"
      forming  = "DOM"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "gap"
  reason = "Drawn over mandrel was welded first and is not seamless."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "chromium-molybdenum tube" {
  clause = "1.7"
  as_built {
    tube_stock "A" {
      material = "SAE 4130"
      forming  = "CDS"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "gap"
  reason = "The article wants unalloyed steel."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "E355 at the ends of its analysis" {
  clause = "1.8"
  as_built {
    tube_stock "A" {
      carbon_content         = "0.22 %"
      manganese_content      = "1.60 %"
      greatest_other_content = "0.55 %"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "meets"
  reason = "C 0.22, Mn 1.60 and Si 0.55 % are within 0.3, 1.7 and 0.6."
  source = "Steel 1.0580 (E355), cast analysis; MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "quoted by others"
}

worked_case "4130 at the top of its carbon" {
  clause = "1.8"
  as_built {
    tube_stock "A" {
      carbon_content         = "0.33 %"
      manganese_content      = "0.50 %"
      greatest_other_content = "0.25 %"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "gap"
  reason = "4130 may reach 0.33 % carbon, over 0.3."
  source = "Article on 4130 tube; MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "quoted by others"
}

worked_case "composition exactly on all three limits" {
  clause = "1.8"
  as_built {
    tube_stock "A" {
      carbon_content         = "0.3 %"
      manganese_content      = "1.7 %"
      greatest_other_content = "0.6 %"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "meets"
  reason = "At most 0.3, 1.7 and 0.6 %."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "silicon over the limit" {
  clause = "1.8"
  as_built {
    tube_stock "A" {
      carbon_content         = "0.2 %"
      manganese_content      = "1.2 %"
      greatest_other_content = "0.61 %"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "gap"
  reason = "Others at most 0.6 %."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "yield or tensile: a 235/360 steel by its yield" {
  clause = "1.9"
  as_built {
    tube_stock "A" {
      yield   = "235 MPa"
      tensile = "360 MPa"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "gap"
  reason = "The 350 N/mm2 are quoted as yield, and 235 is less."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "computed"
}

worked_case "E235+SR by its yield" {
  clause = "1.9"
  as_built {
    tube_stock "A" {
      yield   = "350 MPa"
      tensile = "420 MPa"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "meets"
  reason = "Re 350 is exactly the limit."
  source = "EN 10305-1, table of mechanical properties; FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "E235+N by its yield" {
  clause = "1.9"
  as_built {
    tube_stock "A" {
      yield   = "235 MPa"
      tensile = "340 MPa"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "gap"
  reason = "Re 235 is less than 350."
  source = "EN 10305-1, table of mechanical properties; FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "E355+N by its yield" {
  clause = "1.9"
  as_built {
    tube_stock "A" {
      yield   = "355 MPa"
      tensile = "490 MPa"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "meets"
  reason = "Re 355."
  source = "EN 10305-1, table of mechanical properties; FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "yield in N/mm2" {
  clause = "1.9"
  as_built {
    tube_stock "A" {
      yield = "350 N/mm2"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "meets"
  reason = "N/mm2 and MPa are one unit."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "yield in ksi" {
  clause = "1.9"
  as_built {
    tube_stock "A" {
      yield = "60 ksi"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "meets"
  reason = "60 ksi is 414 MPa."
  source = "A513 type 5 1020 tube as drawn, maker's table; FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "tensile strength alone does not tell the yield" {
  clause = "1.9"
  as_built {
    tube_stock "A" {
      tensile = "490 MPa"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "not recorded"
  reason = "The yield is not on the sheet."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "computed"
}

worked_case "yield or tensile: a 235/360 steel by its tensile strength" {
  clause = "1.10"
  as_built {
    tube_stock "A" {
      yield   = "235 MPa"
      tensile = "360 MPa"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "meets"
  reason = "The 350 N/mm2 are tensile here, and 360 is more."
  source = "NAVC roll-cage rules, 2009"
  status = "computed"
}

worked_case "E235+N at the bottom of its tensile strength" {
  clause = "1.10"
  as_built {
    tube_stock "A" {
      yield   = "235 MPa"
      tensile = "340 MPa"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "gap"
  reason = "Rm begins at 340, which is less than 350."
  source = "EN 10305-1, table of mechanical properties; NAVC roll-cage rules, 2009"
  status = "quoted by others"
}

worked_case "E235+SR by its tensile strength" {
  clause = "1.10"
  as_built {
    tube_stock "A" {
      yield   = "350 MPa"
      tensile = "420 MPa"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "meets"
  reason = "Rm 420."
  source = "EN 10305-1, table of mechanical properties; NAVC roll-cage rules, 2009"
  status = "quoted by others"
}

worked_case "harness bar of 38 x 2.5 mm" {
  clause = "1.11"
  as_built {
    tube "1" {
      part    = "harness bar"
      size    = "38 x 2.5 mm"
      tensile = "360 MPa"
      yield   = "235 MPa"
    }
  }
  answer = "meets"
  reason = "350 N/mm2 is tensile in this article."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 19.1"
  status = "confirmed"
}

worked_case "harness bar of 40 x 2.0 mm, soft" {
  clause = "1.11"
  as_built {
    tube "1" {
      part    = "harness bar"
      size    = "40 x 2.0 mm"
      tensile = "340 MPa"
    }
  }
  answer = "gap"
  reason = "340 is less than 350 N/mm2."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 19.1"
  status = "confirmed"
}

worked_case "harness bar of 35 x 2.5 mm" {
  clause = "1.11"
  as_built {
    tube "1" {
      part    = "harness bar"
      size    = "35 x 2.5 mm"
      tensile = "360 MPa"
    }
  }
  answer = "gap"
  reason = "No listed pair."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 19.1"
  status = "confirmed"
}

worked_case "harness bar with its yield alone" {
  clause = "1.11"
  as_built {
    tube "1" {
      part  = "harness bar"
      size  = "38 x 2.5 mm"
      yield = "345 MPa"
    }
  }
  answer = "not recorded"
  reason = "The tensile strength is not on the sheet; yield is another figure."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 19.1"
  status = "confirmed"
}

worked_case "hoop of 38 x 2.5 mm under the club table" {
  clause = "1.12"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "38 x 2.5 mm"
    }
  }
  answer = "meets"
  reason = "The club lists 38 x 2.5 or 40 x 2.0 mm for all."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "hoop of 1.5 x .095 in under the club table" {
  clause = "1.12"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.5 x .095 in"
    }
  }
  answer = "gap"
  reason = "The list is metric; .095 in is 2.413 mm."
  source = "NAVC roll-cage rules, 2009"
  status = "computed"
}

worked_case "hoop in one piece" {
  clause = "1.13"
  as_built {
    tube "1" {
      part           = "main hoop"
      joints         = 0
      contains_fluid = false
    }
  }
  answer = "meets"
  reason = "No joint, no fluid."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 3.5 and 6.1"
  status = "confirmed"
}

worked_case "hoop with a joint" {
  clause = "1.13"
  as_built {
    tube "1" {
      part           = "main hoop"
      joints         = 1
      contains_fluid = false
    }
  }
  answer = "gap"
  reason = "One piece without joints."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 3.5 and 6.1"
  status = "confirmed"
}

worked_case "door bar with a joint" {
  clause = "1.13"
  as_built {
    tube "1" {
      part           = "door bar"
      joints         = 1
      contains_fluid = false
    }
  }
  answer = "meets"
  reason = "The article on joints is about hoops."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 3.5 and 6.1"
  status = "confirmed"
}

worked_case "water through a tube" {
  clause = "1.13"
  as_built {
    tube "1" {
      part           = "door bar"
      joints         = 0
      contains_fluid = true
    }
  }
  answer = "gap"
  reason = "Tubes carry no fluid."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 3.5 and 6.1"
  status = "confirmed"
}

worked_case "seamless 45 x 2.5 mm" {
  clause = "1.14"
  as_built {
    tube "1" {
      part    = "main hoop"
      size    = "45 x 2.5 mm"
      forming = "CDS"
    }
  }
  answer = "meets"
  reason = "Seamless and a listed pair."
  source = "Formula Off Road technical rules, App. B"
  status = "confirmed"
}

worked_case "welded 45 x 2.5 mm" {
  clause = "1.14"
  as_built {
    tube "1" {
      part    = "main hoop"
      size    = "45 x 2.5 mm"
      forming = "ERW"
    }
  }
  answer = "gap"
  reason = "Seamless is asked for."
  source = "Formula Off Road technical rules, App. B"
  status = "confirmed"
}

worked_case "35 x 2.0 mm rollbar" {
  clause = "1.15"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "35 x 2.0 mm"
    }
  }
  answer = "meets"
  reason = "The metric pair, exactly."
  source = "FIA Appendix K, 2018"
  status = "quoted by others"
}

worked_case "1.375 x .090 in rollbar" {
  clause = "1.15"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.375 x .090 in"
    }
  }
  answer = "meets"
  reason = "The inch pair, exactly."
  source = "FIA Appendix K, 2018"
  status = "quoted by others"
}

worked_case "1.375 x .080 in rollbar: 2 mm is not .090 in" {
  clause = "1.15"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.375 x .080 in"
    }
  }
  answer = "gap"
  reason = ".080 in is 2.03 mm, over 2.0, but 1.375 in is 34.925 mm, under 35, and its own row wants .090 in."
  source = "FIA Appendix K, 2018"
  status = "computed"
}

worked_case "1.375 in with 2.2 mm" {
  clause = "1.15"
  as_built {
    tube "1" {
      part    = "main hoop"
      outside = "1.375 in"
      wall    = "2.2 mm"
    }
  }
  answer = "gap"
  reason = "Outside under 35 mm, wall under .090 in (2.286 mm)."
  source = "FIA Appendix K, 2018"
  status = "computed"
}

worked_case "1.75 x .090 in of 1969" {
  clause = "1.16"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.75 x .090 in"
    }
  }
  answer = "meets"
  reason = "Exactly the two figures."
  source = "NASCAR rulebook 1969, s. 20"
  status = "quoted by others"
}

worked_case "1.75 x .083 in of 1969" {
  clause = "1.16"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.75 x .083 in"
    }
  }
  answer = "gap"
  reason = ".083 in is less than .090 in."
  source = "NASCAR rulebook 1969, s. 20"
  status = "quoted by others"
}

worked_case "1.5 x .065 in on dirt" {
  clause = "1.17"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.5 x .065 in"
    }
  }
  answer = "meets"
  reason = "Exactly the two figures."
  source = "DIRTcar rules, chassis section"
  status = "confirmed"
}

worked_case "1.5 x .058 in on dirt" {
  clause = "1.17"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.5 x .058 in"
    }
  }
  answer = "gap"
  reason = ".058 in is less than .065 in."
  source = "DIRTcar rules, chassis section"
  status = "confirmed"
}

worked_case "38 x 3.0 mm pipe" {
  clause = "1.18"
  as_built {
    tube "1" {
      part     = "main hoop"
      size     = "38 x 3.0 mm"
      material = "AS 1163 C250"
    }
  }
  answer = "meets"
  reason = "38 mm by 3 mm."
  source = "NZ Speedway rulebook 2010, T11-16-7"
  status = "confirmed"
}

worked_case "1.5 x .120 in chromium-molybdenum" {
  clause = "1.18"
  as_built {
    tube "1" {
      part     = "main hoop"
      size     = "1.5 x .120 in"
      material = "4130"
    }
  }
  answer = "meets"
  reason = "1.5 in by .120 in in this steel."
  source = "NZ Speedway rulebook 2010, T11-16-7"
  status = "confirmed"
}

worked_case "38 x 2.9 mm pipe" {
  clause = "1.18"
  as_built {
    tube "1" {
      part     = "main hoop"
      size     = "38 x 2.9 mm"
      material = "AS 1163 C250"
    }
  }
  answer = "gap"
  reason = "3 mm is asked for."
  source = "NZ Speedway rulebook 2010, T11-16-7"
  status = "confirmed"
}

worked_case "hoop just under a pair: 44.9 x 2.5 mm" {
  clause = "1.1"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "44.9 x 2.5 mm"
    }
  }
  answer = "gap"
  reason = "45 x 2.5 or 50 x 2.0 mm, both figures of one pair."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "hoop just under a pair: 45 x 2.49 mm" {
  clause = "1.1"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "45 x 2.49 mm"
    }
  }
  answer = "gap"
  reason = "45 x 2.5 or 50 x 2.0 mm, both figures of one pair."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "hoop just under a pair: 49.9 x 2.0 mm" {
  clause = "1.1"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "49.9 x 2.0 mm"
    }
  }
  answer = "gap"
  reason = "45 x 2.5 or 50 x 2.0 mm, both figures of one pair."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "hoop just under a pair: 50 x 1.99 mm" {
  clause = "1.1"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "50 x 1.99 mm"
    }
  }
  answer = "gap"
  reason = "45 x 2.5 or 50 x 2.0 mm, both figures of one pair."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "member just under a pair: 37.9 x 2.5 mm" {
  clause = "1.2"
  as_built {
    tube "1" {
      part = "backstay"
      size = "37.9 x 2.5 mm"
    }
  }
  answer = "gap"
  reason = "38 x 2.5 or 40 x 2.0 mm, both figures of one pair."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "member just under a pair: 38 x 2.49 mm" {
  clause = "1.2"
  as_built {
    tube "1" {
      part = "backstay"
      size = "38 x 2.49 mm"
    }
  }
  answer = "gap"
  reason = "38 x 2.5 or 40 x 2.0 mm, both figures of one pair."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "member just under a pair: 39.9 x 2.0 mm" {
  clause = "1.2"
  as_built {
    tube "1" {
      part = "backstay"
      size = "39.9 x 2.0 mm"
    }
  }
  answer = "gap"
  reason = "38 x 2.5 or 40 x 2.0 mm, both figures of one pair."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "member just under a pair: 40 x 1.99 mm" {
  clause = "1.2"
  as_built {
    tube "1" {
      part = "backstay"
      size = "40 x 1.99 mm"
    }
  }
  answer = "gap"
  reason = "38 x 2.5 or 40 x 2.0 mm, both figures of one pair."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "hoop just under an inch or metric pair: 1.749 x .095 in" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.749 x .095 in"
    }
  }
  answer = "gap"
  reason = "Both figures of one listed pair."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "hoop just under an inch or metric pair: 1.75 x .094 in" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.75 x .094 in"
    }
  }
  answer = "gap"
  reason = "Both figures of one listed pair."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "hoop just under an inch or metric pair: 49.9 x 2.0 mm" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "49.9 x 2.0 mm"
    }
  }
  answer = "gap"
  reason = "Both figures of one listed pair."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "hoop just under an inch or metric pair: 50 x 1.99 mm" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "50 x 1.99 mm"
    }
  }
  answer = "gap"
  reason = "Both figures of one listed pair."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "50 x 2.0 mm hoop where the inch pairs are listed" {
  clause = "1.3"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "50 x 2.0 mm"
    }
  }
  answer = "meets"
  reason = "The metric pair, which is smaller than its inch counterpart."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "member just under an inch or metric pair: 1.499 x .095 in" {
  clause = "1.4"
  as_built {
    tube "1" {
      part = "door bar"
      size = "1.499 x .095 in"
    }
  }
  answer = "gap"
  reason = "Both figures of one listed pair."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "member just under an inch or metric pair: 1.5 x .094 in" {
  clause = "1.4"
  as_built {
    tube "1" {
      part = "door bar"
      size = "1.5 x .094 in"
    }
  }
  answer = "gap"
  reason = "Both figures of one listed pair."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "member just under an inch or metric pair: 37.9 x 2.5 mm" {
  clause = "1.4"
  as_built {
    tube "1" {
      part = "door bar"
      size = "37.9 x 2.5 mm"
    }
  }
  answer = "gap"
  reason = "Both figures of one listed pair."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "member just under an inch or metric pair: 38 x 2.49 mm" {
  clause = "1.4"
  as_built {
    tube "1" {
      part = "door bar"
      size = "38 x 2.49 mm"
    }
  }
  answer = "gap"
  reason = "Both figures of one listed pair."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "member just under an inch or metric pair: 39.9 x 2.0 mm" {
  clause = "1.4"
  as_built {
    tube "1" {
      part = "door bar"
      size = "39.9 x 2.0 mm"
    }
  }
  answer = "gap"
  reason = "Both figures of one listed pair."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "member just under an inch or metric pair: 40 x 1.99 mm" {
  clause = "1.4"
  as_built {
    tube "1" {
      part = "door bar"
      size = "40 x 1.99 mm"
    }
  }
  answer = "gap"
  reason = "Both figures of one listed pair."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "38 x 2.5 mm door bar where the inch pairs are listed" {
  clause = "1.4"
  as_built {
    tube "1" {
      part = "door bar"
      size = "38 x 2.5 mm"
    }
  }
  answer = "meets"
  reason = "The metric pair; its inch counterpart has the larger outside and the thinner wall."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "40 x 2.0 mm door bar where the inch pairs are listed" {
  clause = "1.4"
  as_built {
    tube "1" {
      part = "door bar"
      size = "40 x 2.0 mm"
    }
  }
  answer = "meets"
  reason = "The metric pair."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "carbon of 0.301 %" {
  clause = "1.8"
  as_built {
    tube_stock "A" {
      carbon_content         = "0.301 %"
      manganese_content      = "1.2 %"
      greatest_other_content = "0.4 %"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "gap"
  reason = "Carbon at most 0.3 %."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "manganese of 1.71 %" {
  clause = "1.8"
  as_built {
    tube_stock "A" {
      carbon_content         = "0.2 %"
      manganese_content      = "1.71 %"
      greatest_other_content = "0.4 %"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "gap"
  reason = "Manganese at most 1.7 %."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1"
  status = "confirmed"
}

worked_case "yield of 349 MPa" {
  clause = "1.9"
  as_built {
    tube_stock "A" {
      yield   = "349 MPa"
      tensile = "480 MPa"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "gap"
  reason = "350 at least."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "tensile strength of 350 MPa" {
  clause = "1.10"
  as_built {
    tube_stock "A" {
      tensile = "350 MPa"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "meets"
  reason = "350 exactly."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "tensile strength of 349 MPa" {
  clause = "1.10"
  as_built {
    tube_stock "A" {
      tensile = "349 MPa"
    }
    tube "1" {
      part  = "main hoop"
      stock = "A"
    }
  }
  answer = "gap"
  reason = "350 at least."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "harness bar of exactly 350 MPa" {
  clause = "1.11"
  as_built {
    tube "1" {
      part    = "harness bar"
      size    = "40 x 2.0 mm"
      tensile = "350 MPa"
    }
  }
  answer = "meets"
  reason = "350 exactly."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 19.1"
  status = "confirmed"
}

worked_case "harness bar of 349 MPa" {
  clause = "1.11"
  as_built {
    tube "1" {
      part    = "harness bar"
      size    = "40 x 2.0 mm"
      tensile = "349 MPa"
    }
  }
  answer = "gap"
  reason = "350 at least."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 19.1"
  status = "confirmed"
}

worked_case "club tube just under a pair: 40 x 2.0 mm" {
  clause = "1.12"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "40 x 2.0 mm"
    }
  }
  answer = "meets"
  reason = "On the limit, which meets."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "club tube just under a pair: 37.9 x 2.5 mm" {
  clause = "1.12"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "37.9 x 2.5 mm"
    }
  }
  answer = "gap"
  reason = "38 x 2.5 or 40 x 2.0 mm, both figures of one pair."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "club tube just under a pair: 38 x 2.49 mm" {
  clause = "1.12"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "38 x 2.49 mm"
    }
  }
  answer = "gap"
  reason = "38 x 2.5 or 40 x 2.0 mm, both figures of one pair."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "club tube just under a pair: 39.9 x 2.0 mm" {
  clause = "1.12"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "39.9 x 2.0 mm"
    }
  }
  answer = "gap"
  reason = "38 x 2.5 or 40 x 2.0 mm, both figures of one pair."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "club tube just under a pair: 40 x 1.99 mm" {
  clause = "1.12"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "40 x 1.99 mm"
    }
  }
  answer = "gap"
  reason = "38 x 2.5 or 40 x 2.0 mm, both figures of one pair."
  source = "NAVC roll-cage rules, 2009"
  status = "confirmed"
}

worked_case "open-cockpit rollbar: 34.9 x 2.0 mm" {
  clause = "1.15"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "34.9 x 2.0 mm"
    }
  }
  answer = "gap"
  reason = "35 x 2.0 mm or 1.375 x .090 in."
  source = "FIA Appendix K, 2018"
  status = "quoted by others"
}

worked_case "open-cockpit rollbar: 35 x 1.99 mm" {
  clause = "1.15"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "35 x 1.99 mm"
    }
  }
  answer = "gap"
  reason = "35 x 2.0 mm or 1.375 x .090 in."
  source = "FIA Appendix K, 2018"
  status = "quoted by others"
}

worked_case "open-cockpit rollbar: 1.374 x .090 in" {
  clause = "1.15"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.374 x .090 in"
    }
  }
  answer = "gap"
  reason = "35 x 2.0 mm or 1.375 x .090 in."
  source = "FIA Appendix K, 2018"
  status = "quoted by others"
}

worked_case "open-cockpit rollbar: 1.375 x .089 in" {
  clause = "1.15"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.375 x .089 in"
    }
  }
  answer = "gap"
  reason = "35 x 2.0 mm or 1.375 x .090 in."
  source = "FIA Appendix K, 2018"
  status = "quoted by others"
}

worked_case "bar of 1969: 1.74 x .090 in" {
  clause = "1.16"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.74 x .090 in"
    }
  }
  answer = "gap"
  reason = "1.75 in by .090 in."
  source = "NASCAR rulebook 1969, s. 20"
  status = "quoted by others"
}

worked_case "bar of 1969: 1.75 x .089 in" {
  clause = "1.16"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.75 x .089 in"
    }
  }
  answer = "gap"
  reason = "1.75 in by .090 in."
  source = "NASCAR rulebook 1969, s. 20"
  status = "quoted by others"
}

worked_case "bar on dirt: 1.49 x .065 in" {
  clause = "1.17"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.49 x .065 in"
    }
  }
  answer = "gap"
  reason = "1.5 in by .065 in."
  source = "DIRTcar rules, chassis section"
  status = "confirmed"
}

worked_case "bar on dirt: 1.5 x .064 in" {
  clause = "1.17"
  as_built {
    tube "1" {
      part = "main hoop"
      size = "1.5 x .064 in"
    }
  }
  answer = "gap"
  reason = "1.5 in by .065 in."
  source = "DIRTcar rules, chassis section"
  status = "confirmed"
}

worked_case "speedway pipe: 37.9 x 3.0 mm" {
  clause = "1.18"
  as_built {
    tube "1" {
      part     = "main hoop"
      size     = "37.9 x 3.0 mm"
      material = "structural steel"
    }
  }
  answer = "gap"
  reason = "38 x 3.0 mm."
  source = "NZ Speedway rulebook 2010, T11-16-7"
  status = "confirmed"
}

worked_case "speedway pipe: 38 x 2.99 mm" {
  clause = "1.18"
  as_built {
    tube "1" {
      part     = "main hoop"
      size     = "38 x 2.99 mm"
      material = "structural steel"
    }
  }
  answer = "gap"
  reason = "38 x 3.0 mm."
  source = "NZ Speedway rulebook 2010, T11-16-7"
  status = "confirmed"
}

worked_case "speedway alloy tube: 1.49 x .120 in" {
  clause = "1.18"
  as_built {
    tube "1" {
      part     = "main hoop"
      size     = "1.49 x .120 in"
      material = "4130"
    }
  }
  answer = "gap"
  reason = "1.5 x .120 in."
  source = "NZ Speedway rulebook 2010, T11-16-7"
  status = "confirmed"
}

worked_case "speedway alloy tube: 1.5 x .119 in" {
  clause = "1.18"
  as_built {
    tube "1" {
      part     = "main hoop"
      size     = "1.5 x .119 in"
      material = "4130"
    }
  }
  answer = "gap"
  reason = "1.5 x .120 in."
  source = "NZ Speedway rulebook 2010, T11-16-7"
  status = "confirmed"
}
