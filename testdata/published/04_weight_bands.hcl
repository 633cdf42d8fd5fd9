# Tube sizes by the weight of the car, North American tables. Where a printed table lets two
# bands share a figure, or leaves a hole between them, the rows stand here as printed, and the
# clauses say what each way of reading makes of it.

# As printed: nothing between 1700 and 1701 lb, nothing between 2699 and 2700 lb.
table "gcr_2008" {
  columns = { weight_from = "car.declared_mass", weight_to = "car.declared_mass", outside = "tube.outside", wall = "tube.wall" }
  bands   = { from = "weight_from", to = "weight_to" }
  rows = [
    ["", "1700 lb", "1.375 in", ".080 in"],
    ["1701 lb", "2699 lb", "1.500 in", ".095 in"],
    ["1701 lb", "2699 lb", "1.625 in", ".080 in"],
    ["2700 lb", "", "1.750 in", ".095 in"],
    ["2700 lb", "", "1.625 in", ".120 in"],
  ]
}

# The least outside diameter of each band, for the rule on wider tube.
table "gcr_2008_least_outside" {
  columns = { weight_from = "car.declared_mass", weight_to = "car.declared_mass", outside = "tube.outside" }
  bands   = { from = "weight_from", to = "weight_to" }
  rows = [
    ["", "1700 lb", "1.375 in"],
    ["1701 lb", "2699 lb", "1.500 in"],
    ["2700 lb", "", "1.625 in"],
  ]
}

# As printed: up to 1500, 1500 to 2500, over 2500; mild steel and alloy.
table "gcr_1990s" {
  columns = { weight_from = "car.declared_mass", weight_to = "car.declared_mass", alloy = "truth", outside = "tube.outside", wall = "tube.wall" }
  bands   = { from = "weight_from", to = "weight_to" }
  rows = [
    ["", "1500 lb", false, "1.375 in", ".095 in"],
    ["", "1500 lb", true, "1.375 in", ".080 in"],
    ["1500 lb", "2500 lb", false, "1.50 in", ".095 in"],
    ["1500 lb", "2500 lb", true, "1.375 in", ".095 in"],
  ]
}

table "gcr_1990s_over_2500" {
  columns = { weight_above = "car.declared_mass", alloy = "truth", outside = "tube.outside", wall = "tube.wall" }
  bands   = { above = "weight_above" }
  rows = [
    ["2500 lb", false, "1.50 in", ".120 in"],
    ["2500 lb", false, "1.75 in", ".095 in"],
    ["2500 lb", true, "1.50 in", ".095 in"],
  ]
}

# Older text, in which both 1500 and 2500 lb stand in two bands; the lightest size of each.
table "gcr_older" {
  columns = { weight_from = "car.declared_mass", weight_to = "car.declared_mass", outside = "tube.outside", wall = "tube.wall" }
  bands   = { from = "weight_from", to = "weight_to" }
  rows = [
    ["", "1500 lb", "1.375 in", ".095 in"],
    ["1500 lb", "2500 lb", "1.50 in", ".095 in"],
    ["2500 lb", "", "1.50 in", ".120 in"],
  ]
}

# Welded tube (ERW) has sizes of its own, and none over 3000 lb.
table "showroom_1994" {
  columns = { weight_from = "car.weighed_mass", weight_to = "car.weighed_mass", also_welded = "truth", outside = "tube.outside", wall = "tube.wall" }
  bands   = { from = "weight_from", to = "weight_to" }
  rows = [
    ["", "1500 lb", false, "1.375 in", ".095 in"],
    ["1501 lb", "2200 lb", false, "1.5 in", ".095 in"],
    ["1501 lb", "2200 lb", true, "1.5 in", ".120 in"],
    ["2201 lb", "3000 lb", false, "1.5 in", ".120 in"],
    ["2201 lb", "3000 lb", false, "1.75 in", ".095 in"],
    ["2201 lb", "3000 lb", true, "1.75 in", ".120 in"],
    ["3001 lb", "4000 lb", false, "1.75 in", ".120 in"],
  ]
}

term "alloy_steel" {
  given = "tube in cage.tubes"
  means = "tube.material == '25CrMo4'"
}

# The car as weighed, its crew taken out.
term "mass_without_crew" {
  means = "car.weighed_mass - car.crew_when_weighed"
}

chapter "4" {
  title = "Tube by weight of the car"

  clause "4.1" {
    title   = "By the listed weight with driver, as printed"
    concern = "safety"
    text_at = "SCCA GCR 2008/09, roll-cage table"
    across  = "tube in cage.tubes"
    demand  = "any(in_band(table.gcr_2008, car.declared_mass), tube.outside >= .outside and tube.wall >= .wall)"
  }

  clause "4.2" {
    title   = "By the listed weight with driver, to whole pounds"
    concern = "safety"
    text_at = "SCCA GCR 2008/09, roll-cage table"
    across  = "tube in cage.tubes"
    demand  = "any(in_band(table.gcr_2008, round(car.declared_mass, 1*lb)), tube.outside >= .outside and tube.wall >= .wall)"
  }

  clause "4.3" {
    title   = "Wider tube, the rule that lets its wall be .080 in"
    concern = "safety"
    text_at = "SCCA GCR 2008/09, roll-cage table"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  any(in_band(table.gcr_2008_least_outside, car.declared_mass), tube.outside >= .outside + .250*inch)
  and tube.wall >= .080*inch
FORMULA
  }

  clause "4.4" {
    title   = "By the weight without driver"
    concern = "safety"
    text_at = "SCCA GCR of the 1990s, roll-cage table"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  any(in_band(table.gcr_1990s, car.declared_mass),
    .alloy == alloy_steel(tube) and tube.outside >= .outside and tube.wall >= .wall)
  or any(in_band(table.gcr_1990s_over_2500, car.declared_mass),
    .alloy == alloy_steel(tube) and tube.outside >= .outside and tube.wall >= .wall)
FORMULA
  }

  clause "4.5" {
    title   = "Break points in two bands, either band will do"
    concern = "safety"
    text_at = "SCCA GCR, older text of the roll-cage table"
    across  = "tube in cage.tubes"
    demand  = "any(in_band(table.gcr_older, car.declared_mass), tube.outside >= .outside and tube.wall >= .wall)"
  }

  clause "4.6" {
    title   = "Break points in two bands, both have to be met"
    concern = "safety"
    text_at = "SCCA GCR, older text of the roll-cage table"
    across  = "tube in cage.tubes"
    demand  = "all(in_band(table.gcr_older, car.declared_mass), tube.outside >= .outside and tube.wall >= .wall)"
  }

  clause "4.7" {
    title   = "Interim rule: listed weight less 180 lb in the older table"
    concern = "safety"
    text_at = "SCCA interim rule beside the GCR 2008/09"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  any(in_band(table.gcr_1990s, car.declared_mass - 180*lb),
    .alloy == alloy_steel(tube) and tube.outside >= .outside and tube.wall >= .wall)
  or any(in_band(table.gcr_1990s_over_2500, car.declared_mass - 180*lb),
    .alloy == alloy_steel(tube) and tube.outside >= .outside and tube.wall >= .wall)
FORMULA
  }

  clause "4.8" {
    title   = "Seamless or welded tube, by the weight without driver"
    concern = "safety"
    text_at = "SCCA GCR, SS, T and IT after 1 June 1994"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
  any(in_band(table.showroom_1994, mass_without_crew),
    (.also_welded or tube.forming != 'electric resistance welded')
    and tube.outside >= .outside and tube.wall >= .wall)
FORMULA
  }

  clause "4.9" {
    title     = "Light off-road car, wall with its tolerance"
    concern   = "safety"
    text_at   = "SCORE rules, roll-cage section"
    applies   = "mass_without_crew <= 2000*lb"
    across    = "tube in cage.tubes"
    demand    = "tube.wall >= .095*inch"
    allowance = "0.010 in"
  }

  clause "4.10" {
    title   = "Light off-road car, outside diameter and bends"
    concern = "safety"
    text_at = "SCORE rules, roll-cage section"
    applies = "mass_without_crew <= 2000*lb"
    across  = "tube in cage.tubes"
    demand  = "tube.outside >= 1.5*inch and (tube.bends == 0 or tube.bend_radius >= 3 * tube.outside)"
  }
}

worked_case "1700 lb with 1.375 x .080 in" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "1700 lb"
    }
    tube "1" {
      size = "1.375 x .080 in"
    }
  }
  answer = "meets"
  reason = "The band ends with 1700 lb."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "1701 lb with 1.375 x .080 in" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "1701 lb"
    }
    tube "1" {
      size = "1.375 x .080 in"
    }
  }
  answer = "gap"
  reason = "From 1701 lb 1.500 x .095 or 1.625 x .080 in."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "1701 lb with 1.500 x .095 in" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "1701 lb"
    }
    tube "1" {
      size = "1.500 x .095 in"
    }
  }
  answer = "meets"
  reason = "The first size of the band, exactly."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "2699 lb with 1.625 x .080 in" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2699 lb"
    }
    tube "1" {
      size = "1.625 x .080 in"
    }
  }
  answer = "meets"
  reason = "The second size of the band, exactly."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "2699 lb with 1.500 x .080 in" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2699 lb"
    }
    tube "1" {
      size = "1.500 x .080 in"
    }
  }
  answer = "gap"
  reason = "1.500 from one size and .080 from the other make no pair."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "2700 lb with 1.500 x .095 in" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2700 lb"
    }
    tube "1" {
      size = "1.500 x .095 in"
    }
  }
  answer = "gap"
  reason = "From 2700 lb 1.750 x .095 or 1.625 x .120 in."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "2700 lb with 1.750 x .095 in" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2700 lb"
    }
    tube "1" {
      size = "1.750 x .095 in"
    }
  }
  answer = "meets"
  reason = "The first size of the band, exactly."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "3300 lb with 1.625 x .120 in" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "3300 lb"
    }
    tube "1" {
      size = "1.625 x .120 in"
    }
  }
  answer = "meets"
  reason = "The second size of the band, exactly."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "3300 lb with 1.625 x .095 in" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "3300 lb"
    }
    tube "1" {
      size = "1.625 x .095 in"
    }
  }
  answer = "gap"
  reason = "1.625 wants .120."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "between 1700 and 1701 lb" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "1700.5 lb"
    }
    tube "1" {
      size = "1.750 x .120 in"
    }
  }
  answer = "gap"
  reason = "No band of the printed table holds 1700.5 lb, so no tube has a size that is listed for it."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "computed"
}

worked_case "between 2699 and 2700 lb" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2699.4 lb"
    }
    tube "1" {
      size = "1.750 x .120 in"
    }
  }
  answer = "gap"
  reason = "No band of the printed table holds 2699.4 lb."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "computed"
}

worked_case "heavier than listed" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2600 lb"
      weighed_mass  = "2750 lb"
    }
    tube "1" {
      size = "1.500 x .095 in"
    }
  }
  answer = "meets"
  reason = "The listed weight governs; 2750 lb on the scale do not change the band."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "1224.5 kg on the log book" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "1224.5 kg"
    }
    tube "1" {
      size = "1.750 x .120 in"
    }
  }
  answer = "gap"
  reason = "1224.5 kg is 2699.56 lb, in the hole between the bands: a weight in kg falls into it easily."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "computed"
}

worked_case "between 1700 and 1701 lb, to whole pounds" {
  clause = "4.2"
  as_built {
    car "1" {
      declared_mass = "1700.4 lb"
    }
    tube "1" {
      size = "1.375 x .080 in"
    }
  }
  answer = "meets"
  reason = "1700.4 lb is 1700 lb in whole pounds."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "computed"
}

worked_case "1700.5 lb to whole pounds" {
  clause = "4.2"
  as_built {
    car "1" {
      declared_mass = "1700.5 lb"
    }
    tube "1" {
      size = "1.375 x .080 in"
    }
  }
  answer = "gap"
  reason = "A half goes up, to 1701 lb."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "computed"
}

worked_case "1224.5 kg to whole pounds" {
  clause = "4.2"
  as_built {
    car "1" {
      declared_mass = "1224.5 kg"
    }
    tube "1" {
      size = "1.750 x .095 in"
    }
  }
  answer = "meets"
  reason = "2699.56 lb is 2700 lb in whole pounds."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "computed"
}

worked_case "wider by exactly .250 in" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "2000 lb"
    }
    tube "1" {
      size = "1.75 x .080 in"
    }
  }
  answer = "meets"
  reason = "1.75 in is 1.500 and .250 in, exactly, so .080 in will do."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "wider by .249 in" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "2000 lb"
    }
    tube "1" {
      size = "1.749 x .080 in"
    }
  }
  answer = "gap"
  reason = "The rule wants .250 in more than 1.500; the size 1.625 x .080 in of the list is another matter."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "wider by .250 in with .079 in" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "2000 lb"
    }
    tube "1" {
      size = "1.75 x .079 in"
    }
  }
  answer = "gap"
  reason = ".080 in is the least wall."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "wider by 6.35 mm" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "2000 lb"
    }
    tube "1" {
      size = "44.45 x 2.032 mm"
    }
  }
  answer = "meets"
  reason = "44.45 mm is 38.1 mm and .250 in, 2.032 mm is .080 in."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "computed"
}

worked_case "1400 lb, mild 1.375 x .095" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1400 lb"
    }
    tube "1" {
      size     = "1.375 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "meets"
  reason = "Exactly the size."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "1400 lb, mild 1.375 x .080" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1400 lb"
    }
    tube "1" {
      size     = "1.375 x .080 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = ".080 in is for alloy."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "1400 lb, alloy 1.375 x .080" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1400 lb"
    }
    tube "1" {
      size     = "1.375 x .080 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "meets"
  reason = ".080 in is for alloy."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "1500 lb by the table of the 1990s" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1500 lb"
    }
    tube "1" {
      size     = "1.375 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "meets"
  reason = "1500 lb stands in the first band too."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "1501 lb by the table of the 1990s" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1501 lb"
    }
    tube "1" {
      size     = "1.375 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "Mild steel of 1.50 x .095 from 1500 lb on."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "2500 lb by the table of the 1990s" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2500 lb"
    }
    tube "1" {
      size     = "1.50 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "meets"
  reason = "The last band begins over 2500 lb."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "2501 lb by the table of the 1990s" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size     = "1.50 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "1.50 x .120 or 1.75 x .095 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "2501 lb, alloy 1.50 x .095" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size     = "1.50 x .095 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "meets"
  reason = "Exactly the size for alloy."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "1500 lb in two bands, either will do" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "1500 lb"
    }
    tube "1" {
      size = "1.375 x .095 in"
    }
  }
  answer = "meets"
  reason = "The lighter size of the two bands that 1500 lb stands in."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "1500 lb in two bands, both have to be met" {
  clause = "4.6"
  as_built {
    car "1" {
      declared_mass = "1500 lb"
    }
    tube "1" {
      size = "1.375 x .095 in"
    }
  }
  answer = "gap"
  reason = "The second band wants 1.50 in."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "1500 lb in two bands, the heavier size" {
  clause = "4.6"
  as_built {
    car "1" {
      declared_mass = "1500 lb"
    }
    tube "1" {
      size = "1.50 x .095 in"
    }
  }
  answer = "meets"
  reason = "Both bands are met."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "2500 lb in two bands, either will do" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "2500 lb"
    }
    tube "1" {
      size = "1.50 x .095 in"
    }
  }
  answer = "meets"
  reason = "The lighter size of the two bands that 2500 lb stands in."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "2500 lb in two bands, both have to be met" {
  clause = "4.6"
  as_built {
    car "1" {
      declared_mass = "2500 lb"
    }
    tube "1" {
      size = "1.50 x .095 in"
    }
  }
  answer = "gap"
  reason = "The last band wants .120 in."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "2500 lb in two bands, the heavier size" {
  clause = "4.6"
  as_built {
    car "1" {
      declared_mass = "2500 lb"
    }
    tube "1" {
      size = "1.50 x .120 in"
    }
  }
  answer = "meets"
  reason = "Both bands are met."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "2500.1 lb is in one band" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "2500.1 lb"
    }
    tube "1" {
      size = "1.50 x .095 in"
    }
  }
  answer = "gap"
  reason = ".120 in from there on."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "weight on the border, not exactly known" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "2500 lb +/- 5 lb"
    }
    tube "1" {
      size = "1.50 x .095 in"
    }
  }
  answer = "meets"
  reason = "As declared it is 2500 lb."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "computed"
}

worked_case "1690 lb by the table of 2008" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "1690 lb"
    }
    tube "1" {
      size     = "1.375 x .080 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "meets"
  reason = "Up to 1700 lb."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "computed"
}

worked_case "1690 lb by the interim rule" {
  clause = "4.7"
  as_built {
    car "1" {
      declared_mass = "1690 lb"
    }
    tube "1" {
      size     = "1.375 x .080 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "1690 less 180 is 1510 lb, which wants 1.50 x .095: the breaks of 2008 are not the old ones and 180 lb."
  source = "SCCA interim rule beside the GCR 2008/09"
  status = "computed"
}

worked_case "2690 lb by the table of 2008" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2690 lb"
    }
    tube "1" {
      size     = "1.5 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "meets"
  reason = "Up to 2699 lb."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "computed"
}

worked_case "2690 lb by the interim rule" {
  clause = "4.7"
  as_built {
    car "1" {
      declared_mass = "2690 lb"
    }
    tube "1" {
      size     = "1.5 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "2690 less 180 is 2510 lb, which wants 1.50 x .120 or 1.75 x .095."
  source = "SCCA interim rule beside the GCR 2008/09"
  status = "computed"
}

worked_case "1680 lb by the interim rule" {
  clause = "4.7"
  as_built {
    car "1" {
      declared_mass = "1680 lb"
    }
    tube "1" {
      size     = "1.375 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "meets"
  reason = "1680 less 180 is 1500 lb, still in the first band."
  source = "SCCA interim rule beside the GCR 2008/09"
  status = "computed"
}

worked_case "1500 lb, 0 lb of crew, DOM 1.375 x .095 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "1500 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.375 x .095 in"
      forming = "DOM"
    }
  }
  answer = "meets"
  reason = "Up to 1500 lb."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "2200 lb, 0 lb of crew, ERW 1.5 x .120 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2200 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.5 x .120 in"
      forming = "ERW"
    }
  }
  answer = "meets"
  reason = "Welded tube of 1.5 x .120 up to 2200 lb."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "2200 lb, 0 lb of crew, ERW 1.5 x .095 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2200 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.5 x .095 in"
      forming = "ERW"
    }
  }
  answer = "gap"
  reason = ".095 in is for tube that is not merely welded."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "2380 lb, 180 lb of crew, DOM 1.5 x .095 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2380 lb"
      crew_when_weighed = "180 lb"
    }
    tube "1" {
      size    = "1.5 x .095 in"
      forming = "DOM"
    }
  }
  answer = "meets"
  reason = "Without the driver it is 2200 lb."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "2201 lb, 0 lb of crew, DOM 1.5 x .095 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2201 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.5 x .095 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "1.5 x .120 or 1.75 x .095 from 2201 lb."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "3000 lb, 0 lb of crew, DOM 1.75 x .095 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "3000 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x .095 in"
      forming = "DOM"
    }
  }
  answer = "meets"
  reason = "Up to 3000 lb."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "3001 lb, 0 lb of crew, DOM 1.75 x .120 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "3001 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x .120 in"
      forming = "DOM"
    }
  }
  answer = "meets"
  reason = "From 3001 lb 1.75 x .120 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "3001 lb, 0 lb of crew, ERW 1.75 x .120 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "3001 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x .120 in"
      forming = "ERW"
    }
  }
  answer = "gap"
  reason = "Welded tube is not allowed from 3001 lb."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "wall of .085 in with a tolerance of .010 in" {
  clause = "4.9"
  as_built {
    car "1" {
      weighed_mass      = "2000 lb"
      crew_when_weighed = "0 kg"
    }
    tube "1" {
      wall = ".085 in"
    }
  }
  answer = "meets"
  reason = ".095 less .010 in, exactly."
  source = "SCORE rules, roll-cage section"
  status = "quoted by others"
}

worked_case "wall of .084 in with a tolerance of .010 in" {
  clause = "4.9"
  as_built {
    car "1" {
      weighed_mass      = "2000 lb"
      crew_when_weighed = "0 kg"
    }
    tube "1" {
      wall = ".084 in"
    }
  }
  answer = "gap"
  reason = ".085 in is the least with the tolerance."
  source = "SCORE rules, roll-cage section"
  status = "quoted by others"
}

worked_case "off-road car of 2001 lb" {
  clause = "4.9"
  as_built {
    car "1" {
      weighed_mass      = "2001 lb"
      crew_when_weighed = "0 kg"
    }
    tube "1" {
      wall = ".084 in"
    }
  }
  answer = "does not apply"
  reason = "The size is for cars up to 2000 lb."
  source = "SCORE rules, roll-cage section"
  status = "quoted by others"
}

worked_case "off-road tube of 1.5 in bent to 4.5 in" {
  clause = "4.10"
  as_built {
    car "1" {
      weighed_mass      = "1900 lb"
      crew_when_weighed = "0 kg"
    }
    tube "1" {
      outside     = "1.5 in"
      bends       = 1
      bend_radius = "4.5 in"
    }
  }
  answer = "meets"
  reason = "1.5 in, three times 1.5 in."
  source = "SCORE rules, roll-cage section"
  status = "quoted by others"
}

worked_case "off-road tube of 1.49 in: the tolerance is on the wall" {
  clause = "4.10"
  as_built {
    car "1" {
      weighed_mass      = "1900 lb"
      crew_when_weighed = "0 kg"
    }
    tube "1" {
      outside = "1.49 in"
      bends   = 0
    }
  }
  answer = "gap"
  reason = "The .010 in belong to the wall."
  source = "SCORE rules, roll-cage section"
  status = "quoted by others"
}

worked_case "listed weight at 1700 lb: 1.375 in less .005" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "1700 lb"
    }
    tube "1" {
      size = "1.370 x .080 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.375 x .080 in."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "listed weight at 1700 lb: 1.375 x .080 in less .001" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "1700 lb"
    }
    tube "1" {
      size = "1.375 x 0.079 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.375 x .080 in."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "listed weight at 2699 lb: 1.500 in less .005" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2699 lb"
    }
    tube "1" {
      size = "1.495 x .095 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.500 x .095 in."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "listed weight at 2699 lb: 1.500 x .095 in less .001" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2699 lb"
    }
    tube "1" {
      size = "1.500 x 0.094 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.500 x .095 in."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "listed weight at 2699 lb: 1.625 in less .005" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2699 lb"
    }
    tube "1" {
      size = "1.620 x .080 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.625 x .080 in."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "listed weight at 2699 lb: 1.625 x .080 in less .001" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2699 lb"
    }
    tube "1" {
      size = "1.625 x 0.079 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.625 x .080 in."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "listed weight at 2700 lb: 1.750 in less .005" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2700 lb"
    }
    tube "1" {
      size = "1.745 x .095 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.750 x .095 in."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "listed weight at 2700 lb: 1.750 x .095 in less .001" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2700 lb"
    }
    tube "1" {
      size = "1.750 x 0.094 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.750 x .095 in."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "listed weight at 2700 lb: 1.625 x .120 in" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2700 lb"
    }
    tube "1" {
      size = "1.625 x .120 in"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "listed weight at 2700 lb: 1.625 in less .005" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2700 lb"
    }
    tube "1" {
      size = "1.620 x .120 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.625 x .120 in."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "listed weight at 2700 lb: 1.625 x .120 in less .001" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2700 lb"
    }
    tube "1" {
      size = "1.625 x 0.119 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.625 x .120 in."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "mild steel without driver at 1499 lb: 1.375 x .095 in" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1499 lb"
    }
    tube "1" {
      size     = "1.375 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "mild steel without driver at 1499 lb: 1.375 in less .005" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1499 lb"
    }
    tube "1" {
      size     = "1.370 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.375 x .095 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "mild steel without driver at 1499 lb: 1.375 x .095 in less .001" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1499 lb"
    }
    tube "1" {
      size     = "1.375 x 0.094 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.375 x .095 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "mild steel without driver at 1501 lb: 1.50 x .095 in" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1501 lb"
    }
    tube "1" {
      size     = "1.50 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "mild steel without driver at 1501 lb: 1.50 in less .005" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1501 lb"
    }
    tube "1" {
      size     = "1.495 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.50 x .095 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "mild steel without driver at 1501 lb: 1.50 x .095 in less .001" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1501 lb"
    }
    tube "1" {
      size     = "1.50 x 0.094 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.50 x .095 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "mild steel without driver at 2501 lb: 1.50 x .120 in" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size     = "1.50 x .120 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "mild steel without driver at 2501 lb: 1.50 in less .005" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size     = "1.495 x .120 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.50 x .120 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "mild steel without driver at 2501 lb: 1.50 x .120 in less .001" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size     = "1.50 x 0.119 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.50 x .120 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "mild steel without driver at 2501 lb: 1.75 x .095 in" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size     = "1.75 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "mild steel without driver at 2501 lb: 1.75 in less .005" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size     = "1.745 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.75 x .095 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "mild steel without driver at 2501 lb: 1.75 x .095 in less .001" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size     = "1.75 x 0.094 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.75 x .095 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "alloy without driver at 1499 lb: 1.375 x .080 in" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1499 lb"
    }
    tube "1" {
      size     = "1.375 x .080 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "alloy without driver at 1499 lb: 1.375 in less .005" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1499 lb"
    }
    tube "1" {
      size     = "1.370 x .080 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.375 x .080 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "alloy without driver at 1499 lb: 1.375 x .080 in less .001" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1499 lb"
    }
    tube "1" {
      size     = "1.375 x 0.079 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.375 x .080 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "alloy without driver at 2500 lb: 1.375 x .095 in" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2500 lb"
    }
    tube "1" {
      size     = "1.375 x .095 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "alloy without driver at 2500 lb: 1.375 in less .005" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2500 lb"
    }
    tube "1" {
      size     = "1.370 x .095 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.375 x .095 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "alloy without driver at 2500 lb: 1.375 x .095 in less .001" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2500 lb"
    }
    tube "1" {
      size     = "1.375 x 0.094 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.375 x .095 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "alloy without driver at 2501 lb: 1.50 in less .005" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size     = "1.495 x .095 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.50 x .095 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "alloy without driver at 2501 lb: 1.50 x .095 in less .001" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size     = "1.50 x 0.094 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.50 x .095 in."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "alloy of 1.375 x .080 at 1500 lb" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1500 lb"
    }
    tube "1" {
      size     = "1.375 x .080 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "meets"
  reason = "1500 lb stands in the first band too."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "alloy of 1.375 x .080 at 1501 lb" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1501 lb"
    }
    tube "1" {
      size     = "1.375 x .080 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "gap"
  reason = "1.375 x .095 in from 1500 lb on."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "alloy of 1.375 x .095 at 2501 lb" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size     = "1.375 x .095 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "gap"
  reason = "1.50 x .095 in over 2500 lb."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}

worked_case "older text at 1499 lb: 1.375 x .095 in" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "1499 lb"
    }
    tube "1" {
      size = "1.375 x .095 in"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "older text at 1499 lb: 1.375 in less .005" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "1499 lb"
    }
    tube "1" {
      size = "1.370 x .095 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.375 x .095 in."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "older text at 1499 lb: 1.375 x .095 in less .001" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "1499 lb"
    }
    tube "1" {
      size = "1.375 x 0.094 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.375 x .095 in."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "older text at 2499 lb: 1.50 x .095 in" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "2499 lb"
    }
    tube "1" {
      size = "1.50 x .095 in"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "older text at 2499 lb: 1.50 in less .005" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "2499 lb"
    }
    tube "1" {
      size = "1.495 x .095 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.50 x .095 in."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "older text at 2499 lb: 1.50 x .095 in less .001" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "2499 lb"
    }
    tube "1" {
      size = "1.50 x 0.094 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.50 x .095 in."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "older text at 2501 lb: 1.50 x .120 in" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size = "1.50 x .120 in"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "older text at 2501 lb: 1.50 in less .005" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size = "1.495 x .120 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.50 x .120 in."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "older text at 2501 lb: 1.50 x .120 in less .001" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "2501 lb"
    }
    tube "1" {
      size = "1.50 x 0.119 in"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.50 x .120 in."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "older text at 1500.1 lb" {
  clause = "4.5"
  as_built {
    car "1" {
      declared_mass = "1500.1 lb"
    }
    tube "1" {
      size = "1.375 x .095 in"
    }
  }
  answer = "gap"
  reason = "One band only from there on."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "older text at 1499.9 lb, both have to be met" {
  clause = "4.6"
  as_built {
    car "1" {
      declared_mass = "1499.9 lb"
    }
    tube "1" {
      size = "1.375 x .095 in"
    }
  }
  answer = "meets"
  reason = "One band only up to there."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "older text at 2499.9 lb, both have to be met" {
  clause = "4.6"
  as_built {
    car "1" {
      declared_mass = "2499.9 lb"
    }
    tube "1" {
      size = "1.50 x .095 in"
    }
  }
  answer = "meets"
  reason = "One band only up to there."
  source = "SCCA GCR, older text of the roll-cage table"
  status = "quoted by others"
}

worked_case "wider tube at 1700 lb" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "1700 lb"
    }
    tube "1" {
      size = "1.625 x .080 in"
    }
  }
  answer = "meets"
  reason = "1.375 and .250 in, exactly."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "wider tube at 1700 lb, too narrow" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "1700 lb"
    }
    tube "1" {
      size = "1.62 x .080 in"
    }
  }
  answer = "gap"
  reason = "1.375 and .250 in are 1.625."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "wider tube at 1701 lb" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "1701 lb"
    }
    tube "1" {
      size = "1.625 x .080 in"
    }
  }
  answer = "gap"
  reason = "1.500 and .250 in are 1.75."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "wider tube at 2699 lb" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "2699 lb"
    }
    tube "1" {
      size = "1.75 x .080 in"
    }
  }
  answer = "meets"
  reason = "1.500 and .250 in, exactly."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "wider tube at 2700 lb" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "2700 lb"
    }
    tube "1" {
      size = "1.75 x .080 in"
    }
  }
  answer = "gap"
  reason = "1.625 and .250 in are 1.875."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "wider tube of 1.875 in at 2700 lb" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "2700 lb"
    }
    tube "1" {
      size = "1.875 x .080 in"
    }
  }
  answer = "meets"
  reason = "1.625 and .250 in, exactly."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "1681 lb by the interim rule" {
  clause = "4.7"
  as_built {
    car "1" {
      declared_mass = "1681 lb"
    }
    tube "1" {
      size     = "1.375 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "1681 less 180 is 1501 lb."
  source = "SCCA interim rule beside the GCR 2008/09"
  status = "computed"
}

worked_case "2680 lb by the interim rule" {
  clause = "4.7"
  as_built {
    car "1" {
      declared_mass = "2680 lb"
    }
    tube "1" {
      size     = "1.5 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "meets"
  reason = "2680 less 180 is 2500 lb."
  source = "SCCA interim rule beside the GCR 2008/09"
  status = "computed"
}

worked_case "2681 lb by the interim rule" {
  clause = "4.7"
  as_built {
    car "1" {
      declared_mass = "2681 lb"
    }
    tube "1" {
      size     = "1.5 x .095 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "2681 less 180 is 2501 lb."
  source = "SCCA interim rule beside the GCR 2008/09"
  status = "computed"
}

worked_case "2681 lb by the interim rule, heavier tube" {
  clause = "4.7"
  as_built {
    car "1" {
      declared_mass = "2681 lb"
    }
    tube "1" {
      size     = "1.5 x .120 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "meets"
  reason = "2681 less 180 is 2501 lb."
  source = "SCCA interim rule beside the GCR 2008/09"
  status = "computed"
}

worked_case "drawn tube at 1499 lb: 1.375 x .095 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "1499 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.375 x .095 in"
      forming = "DOM"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 1499 lb: 1.375 in less .005" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "1499 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.370 x .095 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.375 x .095 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 1499 lb: 1.375 x .095 in less .001" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "1499 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.375 x 0.094 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.375 x .095 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 1501 lb: 1.5 x .095 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "1501 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.5 x .095 in"
      forming = "DOM"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 1501 lb: 1.5 in less .005" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "1501 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.495 x .095 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.5 x .095 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 1501 lb: 1.5 x .095 in less .001" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "1501 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.5 x 0.094 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.5 x .095 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 2201 lb: 1.5 x .120 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2201 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.5 x .120 in"
      forming = "DOM"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 2201 lb: 1.5 in less .005" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2201 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.495 x .120 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.5 x .120 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 2201 lb: 1.5 x .120 in less .001" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2201 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.5 x 0.119 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.5 x .120 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 2201 lb: 1.75 x .095 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2201 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x .095 in"
      forming = "DOM"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 2201 lb: 1.75 in less .005" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2201 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.745 x .095 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.75 x .095 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 2201 lb: 1.75 x .095 in less .001" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2201 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x 0.094 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.75 x .095 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 4000 lb: 1.75 x .120 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "4000 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x .120 in"
      forming = "DOM"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 4000 lb: 1.75 in less .005" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "4000 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.745 x .120 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.75 x .120 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 4000 lb: 1.75 x .120 in less .001" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "4000 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x 0.119 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.75 x .120 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "welded tube at 1501 lb: 1.5 x .120 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "1501 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.5 x .120 in"
      forming = "ERW"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "welded tube at 1501 lb: 1.5 in less .005" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "1501 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.495 x .120 in"
      forming = "ERW"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.5 x .120 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "welded tube at 1501 lb: 1.5 x .120 in less .001" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "1501 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.5 x 0.119 in"
      forming = "ERW"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.5 x .120 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "welded tube at 2201 lb: 1.75 x .120 in" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2201 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x .120 in"
      forming = "ERW"
    }
  }
  answer = "meets"
  reason = "A listed size, exactly."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "welded tube at 2201 lb: 1.75 in less .005" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2201 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.745 x .120 in"
      forming = "ERW"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.75 x .120 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "welded tube at 2201 lb: 1.75 x .120 in less .001" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2201 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x 0.119 in"
      forming = "ERW"
    }
  }
  answer = "gap"
  reason = "The listed size is 1.75 x .120 in."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "welded tube of 1.5 x .120 at 2201 lb" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2201 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.5 x .120 in"
      forming = "ERW"
    }
  }
  answer = "gap"
  reason = "1.75 x .120 in for welded tube from 2201 lb."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "welded tube of 1.75 x .120 at 3000 lb" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "3000 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x .120 in"
      forming = "ERW"
    }
  }
  answer = "meets"
  reason = "Up to 3000 lb."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube of 1.5 x .120 at 3000 lb" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "3000 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.5 x .120 in"
      forming = "DOM"
    }
  }
  answer = "meets"
  reason = "Up to 3000 lb."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube of 1.5 x .120 at 3001 lb" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "3001 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.5 x .120 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "1.75 x .120 in from 3001 lb."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube of 1.75 x .095 at 3001 lb" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "3001 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x .095 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "1.75 x .120 in from 3001 lb."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube at 4001 lb" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "4001 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x .120 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "The table ends with 4000 lb."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "drawn tube of 1.375 x .095 at 1501 lb" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "1501 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.375 x .095 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "1.5 x .095 in from 1501 lb."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "quoted by others"
}

worked_case "off-road tube bent to 4.4 in" {
  clause = "4.10"
  as_built {
    car "1" {
      weighed_mass      = "1900 lb"
      crew_when_weighed = "0 kg"
    }
    tube "1" {
      outside     = "1.5 in"
      bends       = 1
      bend_radius = "4.4 in"
    }
  }
  answer = "gap"
  reason = "Three times 1.5 in."
  source = "SCORE rules, roll-cage section"
  status = "quoted by others"
}

worked_case "off-road car of 2000 lb with a tube of 1.49 in" {
  clause = "4.10"
  as_built {
    car "1" {
      weighed_mass      = "2000 lb"
      crew_when_weighed = "0 kg"
    }
    tube "1" {
      outside = "1.49 in"
      bends   = 0
    }
  }
  answer = "gap"
  reason = "The size is for cars up to 2000 lb."
  source = "SCORE rules, roll-cage section"
  status = "quoted by others"
}

worked_case "off-road car of 2001 lb with a tube of 1.49 in" {
  clause = "4.10"
  as_built {
    car "1" {
      weighed_mass      = "2001 lb"
      crew_when_weighed = "0 kg"
    }
    tube "1" {
      outside = "1.49 in"
      bends   = 0
    }
  }
  answer = "does not apply"
  reason = "The size is for cars up to 2000 lb."
  source = "SCORE rules, roll-cage section"
  status = "quoted by others"
}

worked_case "1701 lb with 1.625 x .080 in" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "1701 lb"
    }
    tube "1" {
      size = "1.625 x .080 in"
    }
  }
  answer = "meets"
  reason = "The band begins with 1701 lb."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "2700 lb with 1.625 x .120 in" {
  clause = "4.1"
  as_built {
    car "1" {
      declared_mass = "2700 lb"
    }
    tube "1" {
      size = "1.625 x .120 in"
    }
  }
  answer = "meets"
  reason = "The band begins with 2700 lb."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "wider tube at 1700.5 lb" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "1700.5 lb"
    }
    tube "1" {
      size = "2.0 x .080 in"
    }
  }
  answer = "gap"
  reason = "No band of the printed table holds it, so there is no least diameter to be wider than."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "computed"
}

worked_case "wider tube at 2699.5 lb" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "2699.5 lb"
    }
    tube "1" {
      size = "2.0 x .080 in"
    }
  }
  answer = "gap"
  reason = "No band of the printed table holds it, so there is no least diameter to be wider than."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "computed"
}

worked_case "wider tube at 1701 lb, wide enough" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "1701 lb"
    }
    tube "1" {
      size = "1.75 x .080 in"
    }
  }
  answer = "meets"
  reason = "1.500 and .250 in, exactly."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "wider tube of 1.86 in at 2700 lb" {
  clause = "4.3"
  as_built {
    car "1" {
      declared_mass = "2700 lb"
    }
    tube "1" {
      size = "1.86 x .080 in"
    }
  }
  answer = "gap"
  reason = "1.625 and .250 in are 1.875."
  source = "SCCA GCR 2008/09, roll-cage table"
  status = "quoted by others"
}

worked_case "drawn tube at 1500.5 lb" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "1500.5 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x .120 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "No band of the printed table holds it."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "computed"
}

worked_case "drawn tube at 2200.5 lb" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "2200.5 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x .120 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "No band of the printed table holds it."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "computed"
}

worked_case "drawn tube at 3000.5 lb" {
  clause = "4.8"
  as_built {
    car "1" {
      weighed_mass      = "3000.5 lb"
      crew_when_weighed = "0 lb"
    }
    tube "1" {
      size    = "1.75 x .120 in"
      forming = "DOM"
    }
  }
  answer = "gap"
  reason = "No band of the printed table holds it."
  source = "SCCA GCR, SS, T and IT after 1 June 1994"
  status = "computed"
}

worked_case "2685 lb by the interim rule, at the edge of the tube" {
  clause = "4.7"
  as_built {
    car "1" {
      declared_mass = "2685 lb"
    }
    tube "1" {
      size     = "1.5 x .119 in"
      material = "mild steel"
      forming  = "DOM"
    }
  }
  answer = "gap"
  reason = "2685 less 180 is 2505 lb, which wants .120 in."
  source = "SCCA interim rule beside the GCR 2008/09"
  status = "computed"
}

worked_case "alloy of 1.375 x .095 at 1500.1 lb" {
  clause = "4.4"
  as_built {
    car "1" {
      declared_mass = "1500.1 lb"
    }
    tube "1" {
      size     = "1.375 x .095 in"
      material = "4130"
      forming  = "CDS"
    }
  }
  answer = "meets"
  reason = "The second band holds it."
  source = "SCCA GCR of the 1990s, roll-cage table"
  status = "quoted by others"
}
