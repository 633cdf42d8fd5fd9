table "hoop_sizes" {
  columns = {
    wall    = "tube.wall"
    outside = "tube.outside"
    pieces  = "count"
    remark  = "text"
    alloy   = "truth"
    form    = "tube.forming"
    until   = "car.homologation_ended"
  }
  rows = [
    ["2.5 mm", "45 mm", 1, "usual", false, "seamless", "2030-12-31"],
    [".083 in", "2 in", "2", "inch \"pair\"", true, "Seamless", "2031-06-30"],
  ]
  issued = "2026-11"
}

table "by_mass" {
  columns   = { mass_from = "car.weighed_mass", mass_below = "car.weighed_mass", outside = "tube.outside" }
  bands     = { from = "mass_from", below = "mass_below" }
  rows_from = "by_mass.csv"
  issued    = "2026-11-01"
}

# Terms may use each other in any order.
term "thick" {
  given = "tube in cage.tubes"
  means = "tube.wall >= least_wall"
}

term "least_wall" {
  means = "heavy ? 2.5*mm : 2*mm"
}

term "heavy" {
  means = "car.weighed_mass > 1200*kg"
}
