# A small invented rulebook for trying the commands.

rulebook "Kettleford Stage Car Rules" {
  edition  = "2027"
  in_force = "2027-01-01"
  judged   = "as read"
  classes  = ["standard", "open"]
  standing = "for trying the program, not a rulebook to build to"
}

chapter "1" {
  title = "The car"

  clause "1.1" {
    title   = "Least mass"
    concern = "eligibility"
    page    = 4
    stage   = "before event"
    text    = "A car weighs at least 1000 kg without its crew."
    demand  = "car.weighed_mass >= 1000*kg"
    rectify = "Add ballast, bolted to the floor and sealed."
  }
  clause "1.2" {
    title    = "Chassis number"
    concern  = "eligibility"
    page     = 4
    demand   = "recorded(car.chassis)"
    look_for = "The stamping in the shell agrees with the log book."
  }
  clause "1.3" {
    title   = "Ground clearance"
    concern = "advice"
    page    = 5
    demand  = "car.ground_clearance >= 150*mm"
    rectify = "Raise the springs' seats."
  }
}

chapter "4" {
  title = "Safety cage"

  clause "4.1" {
    title   = "Hoop tube"
    concern = "safety"
    page    = 31
    stage   = "before cutting"
    text    = "Hoops are made of tube of 45 mm by 2.5 mm or 50 mm by 2.0 mm."
    across  = "tube in cage.tubes"
    where   = "tube.part == 'main hoop' or tube.part == 'front hoop'"
    at_least = 2
    demand  = <<-FORMULA
      any(table.hoop_sizes, tube.outside >= .outside and tube.wall >= .wall)
    FORMULA
    look_for = "One piece, no joint."
    rectify  = "Re-make the hoop in a listed size; sleeving is not accepted."
  }
  clause "4.2" {
    title   = "Wall of the backstays"
    concern = "safety"
    page    = 32
    stage   = "bare shell"
    judged  = "proved"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'backstay'"
    demand  = "tube.wall >= 2*mm"
    rectify = "Replace the backstay."
  }
  clause "4.3" {
    title   = "Yield of the tube"
    concern = "safety"
    text_at = "Kettleford yearbook, p. 33"
    across  = "tube in cage.tubes"
    demand  = "tube.yield >= 350*MPa"
  }
  clause "4.4" {
    title   = "Certified cages"
    concern = "eligibility"
    applies = "cage.route == 'certified'"
    demand  = "recorded(cage.certificate.number)"
  }
}

table "hoop_sizes" {
  columns = { outside = "tube.outside", wall = "tube.wall" }
  rows    = [["45 mm", "2.5 mm"], ["50 mm", "2.0 mm"]]
}
