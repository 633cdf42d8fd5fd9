chapter "1" {
  title = "The car and its papers"

  clause "1.1" {
    title    = "Log book"
    concern  = "eligibility"
    page     = 5
    stage    = "before event"
    text     = <<-TEXT
      Every car runs on a log book of the club. It is asked for at the table before anything
      is looked at, and a car without one is not looked at.
    TEXT
    demand   = "car.logbook_number matches '^SM [0-9]{4}$'"
    evidence = ["log book"]
    look_for = "The photographs in the log book show this car as it stands there."
    rectify  = "Apply to the club's registrar for a log book; allow four weeks."
  }

  clause "1.2" {
    title    = "Chassis number"
    concern  = "eligibility"
    page     = 5
    stage    = "before cutting"
    text     = <<-TEXT
      The shell keeps the number its maker gave it. A number that was cut out, welded over or
      moved ends the life of the shell.
    TEXT
    demand   = "recorded(car.chassis)"
    look_for = "Read the number in the metal, not on a plate, and feel for a weld round it."
  }

  clause "1.3" {
    title   = "Two-wheel drive"
    concern = "eligibility"
    page    = 6
    stage   = "before cutting"
    text    = "In the two-wheel drive class one axle is driven and the other is not."
    applies = "car.class == 'two-wheel drive open'"
    demand  = "car.driven_wheels in ['front', 'rear']"
    rectify = "Enter the car in the four-wheel drive class."
  }

  clause "1.4" {
    title    = "Age of a classic"
    concern  = "eligibility"
    page     = 6
    stage    = "before cutting"
    text     = <<-TEXT
      A classic was on the road before 1991. The first registration counts, not the year of the
      model.
    TEXT
    applies  = "car.class == 'classic'"
    demand   = "end_of_label(car.first_registered) < date('1991-01-01')"
    look_for = "The registration paper, in the original."
    rectify  = "Enter the car in one of the open classes."
  }

  clause "1.5" {
    title    = "Registration for the road"
    concern  = "eligibility"
    page     = 6
    stage    = "before event"
    text     = "Between the stages the car is on public roads. It is registered, and its plates can be read."
    demand   = "recorded(car.road_registration)"
    look_for = "Plates front and rear, clean and not behind a lamp or a flap."
    rectify  = "Register the car, or bring it to the stages on a trailer and say so on the entry."
  }

  clause "1.6" {
    title   = "Drawing of the cage"
    concern = "eligibility"
    page    = 7
    stage   = "before cutting"
    text    = <<-TEXT
      Whoever builds a cage to the tables deposits its drawing with the club, four weeks before
      the first event at the latest. The drawing office answers with a stamped receipt.
    TEXT
    applies = "built_to_tables"
    demand  = "weeks_after(club.drawing_deposited, 4) <= event.first_day"
    rectify = "Send the drawing in and enter for an event that is at least four weeks away."
  }

  clause "1.7" {
    title    = "Visit to the bare shell"
    concern  = "safety"
    page     = 7
    stage    = "before paint"
    text     = <<-TEXT
      A scrutineer sees the cage in the bare shell before any paint is on it, and leaves a visit
      slip. Paint hides what a visit is for.
    TEXT
    applies  = "built_to_tables"
    demand   = "club.shell_visit >= cage.built"
    evidence = ["visit slip"]
    rectify  = "Call a scrutineer before painting; a painted cage is stripped at its nodes for the visit."
  }

  clause "1.8" {
    title   = "Number of seats"
    concern = "eligibility"
    page    = 8
    stage   = "before trim"
    text    = "An open car carries the two seats of its crew. A classic may keep the seats behind them."
    demand  = "car.class == 'classic' ? car.seat_count in 2..5 : car.seat_count == 2"
    rectify = "Take the rear seats out, with their brackets."
  }
}
