# A small rulebook that uses everything a rulebook can say once. An invented club.
rulebook "Marram Point Rally Car Rules" {
  edition  = "2027, second issue"
  in_force = "2027-01-01"
  judged   = "proved"
  readings = "mean"
  standing = "for trying the program, not a rulebook to build to"

  class "two-wheel drive open" {
    synonyms = ["2WD open", "class 5"]
    means    = "one driven axle, any engine"
  }
  class "four-wheel drive open" {}
}

chapter "4" {
  title = "Safety cage"

  clause "4.1" {
    title    = "Main hoop tube"
    concern  = "safety"
    page     = 31
    stage    = "before cutting"
    text     = <<-TEXT
      The main hoop is one piece of a listed tube.
      Café racers' tubes are not listed.
    TEXT
    across   = "tube in cage.tubes"
    where    = "tube.part == 'main hoop'"
    at_least = 1
    demand   = <<-FORMULA
      any(table.hoop_sizes, tube.outside >= .outside and tube.wall >= .wall)
    FORMULA
    look_for  = "One piece, no joint."
    rectify   = "Re-make the hoop in a listed size."
    allowance = "0.1 mm"
    judged    = "as read"
  }

  clause "K4.2(e)" {
    title   = "Tubes by mass"
    concern = "eligibility"
    page    = "32 to 33"
    text_at = "Marram Point Rally Car Rules, p. 32"
    across  = "tube in cage.tubes"
    where   = "thick(tube)"
    applies = "car.class == '2WD open'"
    demand  = "all(in_band(table.by_mass, car.weighed_mass), tube.outside >= .outside)"
  }
}

chapter "6" {
  title = "Harness"

  clause "6.1" {
    title    = "Shoulder straps"
    concern  = "advice"
    across   = ["harness in harnesses", "strap in harness.straps"]
    demand   = "on <= strap.not_after"
    evidence = ["label photo", "receipt"]
  }
}

worked_case "thin wall" {
  clause  = "4.1"
  subject = "12"
  on      = "2027-03-14"
  as_built {
    tube "12" {
      part    = "main hoop"
      outside = "45 mm"
      wall    = "2.2 mm"
    }
  }
  answer = "gap"
  reason = "p. 31: 2.5 mm."
  source = "Marram Point Rally Car Rules, 2027, p. 31"
  status = "computed"
}
