# The rulebook of an invented club, for trying the program, as it is printed anew for 2028.
# What is new: 6.7, and 8.2 as Bulletin 3 of 2027 has it. The rest is the edition of 2027
# word for word.

rulebook "Saltmarsh Stage Rally Car Rules" {
  edition  = "2028"
  in_force = "2028-01-01"
  judged   = "as read"
  standing = "for trying the program, not a rulebook to build to"

  class "two-wheel drive open" {
    synonyms = ["2WD open", "class F"]
    means    = "One driven axle, any engine within the table of chapter 2."
  }
  class "four-wheel drive open" {
    synonyms = ["4WD open", "class Q"]
    means    = "Both axles driven, turbocharged engines through a restrictor."
  }
  class "classic" {
    synonyms = ["class C"]
    means    = "First registered before 1991, in the specification of its day."
  }
}

# Masses. What the scale showed, less what does not belong to the car.
term "bare_mass" {
  means = <<-FORMULA
    car.weighed_mass - car.fuel_mass_when_weighed - car.spares_when_weighed
      - car.crew_when_weighed - car.crew_equipment_when_weighed
  FORMULA
}

# Which way the cage is to be accepted.
term "built_to_tables" {
  means = "cage.route == 'built to the tables'"
}

# The hoops of any base structure.
term "is_hoop" {
  given = "tube in cage.tubes"
  means = "tube.part in ['main hoop', 'front hoop', 'lateral hoop', 'lateral half-hoop']"
}

# A tube of the list for main hoops.
term "listed_for_hoop" {
  given = "tube in cage.tubes"
  means = "any(table.main_hoop, tube.outside >= .outside and tube.wall >= .wall)"
}

# What a hoop of 45 by 2.5 mm that yields at 350 MPa has: it bends no more under a load, and
# holds as much before it stays bent.
term "as_strong_as_listed" {
  given = "tube in cage.tubes"
  means = "tube.bending_stiffness >= 15880*newton*sq_m and tube.yield_moment >= 1176*Nm"
}

# How far the upper end of a tube lies below the highest bend of the main hoop.
term "length_below_hoop" {
  given = "tube in cage.tubes"
  means = <<-FORMULA
    let begin = first(tube.ends);
    let end = last(tube.ends);
    let highest = above(begin, end) > 0 ? begin : end;
    let hoop = find(cage.tubes, .part == 'main hoop');
    max(map(hoop.corners, above(#, highest)))
  FORMULA
}

# Bolts that may hold the cage: class 8.8 or better, the inch grade 8 beside it. Stainless
# bolts are not among them.
term "strong_bolts" {
  given = "foot in cage.feet"
  means = "foot.bolt_grade in ['8.8', '10.9', '12.9', 'SAE grade 8']"
}

# What the bolts of a foot carry goes by number and by the square of the thread.
term "bolt_section" {
  given = "foot in cage.feet"
  means = "foot.bolt_count * foot.bolt_diameter**2"
}

# The club's own particulars.

particular "drawing_deposited" {
  kind      = "date"
  plausible = "2000 to 2100"
  stage     = "before cutting"
  help      = "Day on which the drawing of the cage was deposited with the club."
  how       = "From the receipt that the club's drawing office sends back, stamped with the day."
}

particular "shell_visit" {
  kind      = "date"
  plausible = "2000 to 2100"
  stage     = "before paint"
  help      = "Day on which a scrutineer of the club saw the bare shell with its cage."
  how       = "From the visit slip that the scrutineer leaves in the shop."
}

particular "throw_line_length" {
  kind      = "length"
  unit      = "m"
  plausible = "1 m to 60 m"
  stage     = "before event"
  help      = "Length of the floating throw line that is carried for the causeway."
  how       = "Lay it out along the workshop wall, without stretching it, and run a tape beside it."
}

particular "rescue_card" {
  kind  = "yes or no"
  stage = "before event"
  help  = "Whether a rescue card, with battery, cell and cutting points drawn in, is on board."
  how   = "Look into the driver's door pocket and hold the card against the car."
}

particular "punch_marks" {
  kind      = "count"
  part      = "tube"
  plausible = "0 to 6"
  stage     = "before paint"
  help      = "How many of the scrutineer's punch marks the tube carries."
  how       = "Count them by touch on the inner side, a hand's breadth over the foot."
}
