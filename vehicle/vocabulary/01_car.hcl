# The car as a whole: who it is, what it may be entered as, what it weighs.

part "car" {
  labelled = true
  place    = "papers"
  stage    = "before cutting"
  help     = "The car itself; the label is the name the shop calls it by."

  particular "chassis" {
    kind       = "text"
    changeable = false
    help       = "Chassis number."
    how        = "Read it off the stamping in the shell with a torch, wire brush if painted over; do not copy it from the registration paper."
  }
  particular "class" {
    kind    = "choice"
    choices = "classes of the rulebook"
    help    = "Class the car is entered in; the rulebook lists the classes."
    how     = "Take it from the entry form and compare with the class list of the edition in force."
  }
  particular "model" {
    kind       = "text"
    changeable = false
    help       = "Make, model and year as the homologation form or the registration has them."
    how        = "Copy the wording of the first page of the homologation form, with the chassis type code."
  }
  particular "first_registered" {
    kind       = "date"
    plausible  = "1900 to 2100"
    changeable = false
    help       = "When the car was first registered for the road."
    how        = "From the first entry of the registration paper, not the date of the present keeper."
  }
  particular "first_logbook" {
    kind          = "date"
    plausible     = "1950 to 2100"
    may_be_absent = true
    changeable    = false
    help          = "When the first log book or technical passport of the car was issued."
    how           = "From the issue stamp in the oldest log book; a re-issued book names the earlier one on its first page."
  }
  particular "logbook_number" {
    kind          = "text"
    may_be_absent = true
    help          = "Number of the log book or technical passport in force."
    how           = "Printed on its cover; check that the chassis number inside is this car's."
  }
  particular "homologation_form" {
    kind          = "text"
    may_be_absent = true
    help          = "Number of the homologation form the car is built to."
    how           = "Top right of every page of the form; bring all extensions, each has its own number."
  }
  particular "homologation_ended" {
    kind          = "date"
    plausible     = "1960 to 2100"
    may_be_absent = true
    changeable    = false
    help          = "Last day of validity of the homologation."
    how           = "From the issuing body's list of homologated cars, not from the form, which does not say when it ended."
  }
  particular "road_registration" {
    kind          = "text"
    may_be_absent = true
    help          = "Registration mark for the road sections."
    how           = "Read both plates and the registration paper: all three must say the same."
  }
  particular "seat_count" {
    kind      = "count"
    plausible = "1 to 9"
    help      = "How many seats the car carries, passenger seats left in it counted."
    how       = "Count what is bolted in, folded rear bench included."
  }
  particular "driven_wheels" {
    kind = "choice"
    value "front" { synonyms = ["front-wheel drive", "front wheels", "front wheel drive", "FWD"] }
    value "rear" { synonyms = ["rear-wheel drive", "rear wheels", "rear wheel drive", "RWD"] }
    value "four" {
      synonyms = ["four-wheel drive", "four wheel drive", "all-wheel drive", "all wheel drive", "4WD", "AWD", "4x4", "all"]
    }
    help = "Which wheels are driven."
    how  = "Look underneath for a shaft to each axle; a removed shaft still leaves a four-wheel drive shell."
  }
  particular "driver_side" {
    kind    = "choice"
    choices = ["left", "right"]
    help    = "The side the driver sits on."
    how     = "Sit in it and look forward: the side of the steering wheel."
  }
  particular "overall_width" {
    kind      = "length"
    unit      = "mm"
    plausible = "1000 mm to 2600 mm"
    stage     = "before paint"
    help      = "Greatest width of the bodywork, mirrors left out."
    how       = "Two squares on a level floor against the widest points of the wheel arches, tape between them."
  }
  particular "ground_clearance" {
    kind      = "length"
    unit      = "mm"
    plausible = "20 mm to 500 mm"
    stage     = "before event"
    help      = "Least distance from the ground to any part that is not a wheel or a flap."
    how       = "On a level floor in stage trim, crew in or ballast on the seats, gauge block or steel rule under the lowest point."
  }

  # Mass: what the scale said, and what stood on it.

  particular "weighed_mass" {
    kind      = "mass"
    unit      = "kg"
    plausible = "400 kg to 3500 kg"
    stage     = "before event"
    help      = "Mass of the car as it stood on the scale, everything in it included."
    how       = "Four wheel pads on a level floor, tyres at stage pressure, read all four and add; state the pads' tolerance from their calibration."
  }
  particular "weighed_on" {
    kind      = "date"
    plausible = "1990 to 2100"
    stage     = "before event"
    help      = "Day of the weighing."
    how       = "From the scale's ticket; weigh again after any change to the car."
  }
  particular "fuel_when_weighed" {
    kind      = "volume"
    unit      = "l"
    plausible = "0 l to 200 l"
    stage     = "before event"
    help      = "Fuel in the tank during the weighing."
    how       = "Drain and fill a measured quantity, or read the tank's calibrated sender; a road gauge needle is not good enough."
  }
  particular "fuel_mass_when_weighed" {
    kind      = "mass"
    unit      = "kg"
    plausible = "0 kg to 180 kg"
    stage     = "before event"
    help      = "Mass of the fuel in the tank during the weighing."
    how       = "Weigh the can before and after filling the drained tank; pump petrol is about 0.74 kg a litre, competition fuel differs."
  }
  particular "spares_when_weighed" {
    kind      = "mass"
    unit      = "kg"
    plausible = "0 kg to 300 kg"
    stage     = "before event"
    help      = "Mass of spare wheels, tools, jack and parts in the car during the weighing."
    how       = "Take them out and put them on a platform scale together."
  }
  particular "spare_wheels_when_weighed" {
    kind      = "count"
    plausible = "0 to 4"
    stage     = "before event"
    help      = "How many spare wheels were in the car during the weighing."
    how       = "Count them as the car stands on the pads."
  }
  particular "crew_when_weighed" {
    kind      = "mass"
    unit      = "kg"
    plausible = "0 kg to 350 kg"
    stage     = "before event"
    help      = "Mass of the persons who sat in the car during the weighing, without their equipment."
    how       = "Bathroom scale, each person in underwear; 0 kg when nobody sat in it."
  }
  particular "crew_equipment_when_weighed" {
    kind      = "mass"
    unit      = "kg"
    plausible = "0 kg to 60 kg"
    stage     = "before event"
    help      = "Mass of helmets, head restraints and clothing in the car during the weighing."
    how       = "Weigh the crew once dressed and once not, and take the difference."
  }
  particular "front_axle_mass" {
    kind      = "mass"
    unit      = "kg"
    plausible = "150 kg to 2200 kg"
    stage     = "before event"
    help      = "Part of the weighed mass that stands on the front wheels."
    how       = "Add the two front pads of the same weighing, with the anti-roll bars unhooked if they are preloaded."
  }
  particular "declared_mass" {
    kind      = "mass"
    unit      = "kg"
    plausible = "400 kg to 3500 kg"
    measured  = false
    help      = "Mass the car is declared with, on the entry form, in the log book or for the cage's certificate."
    how       = "Copy it from the paper and name the paper in a note; it need not be what the scale says."
  }
}

part "ballast" {
  plural = "ballasts"
  place  = "cockpit"
  stage  = "before event"
  help   = "A weight that was added to reach the minimum mass."

  particular "mass" {
    kind      = "mass"
    unit      = "kg"
    plausible = "0.5 kg to 150 kg"
    help      = "Mass of the block."
    how       = "Unbolt it and put it on the platform scale, its bolts left off."
  }
  particular "bolt_count" {
    kind      = "count"
    plausible = "0 to 24"
    help      = "How many bolts hold it."
    how       = "Count the bolts that go through the floor; self-tapping screws do not count."
  }
  particular "bolt_diameter" {
    kind      = "length"
    unit      = "mm"
    plausible = "3 mm to 20 mm"
    measured  = false
    help      = "Nominal thread diameter of those bolts."
    how       = "Thread gauge on a removed bolt; give the nominal size, 8 mm for M8."
  }
  particular "sealable" {
    kind = "yes or no"
    help = "Whether a scrutineer can put a seal on it."
    how  = "Look for a drilled bolt head or bracket where a wire goes through both block and shell."
  }
}

part "engine" {
  place = "engine bay"
  stage = "before trim"
  help  = "The engine as far as it decides about the class."

  particular "capacity" {
    kind      = "volume"
    unit      = "cc"
    plausible = "200 cc to 8500 cc"
    help      = "Swept volume, before any factor for forced induction."
    how       = "Bore with an inside micrometer and stroke with a depth gauge on one cylinder, head off; else from the homologation form."
  }
  particular "induction" {
    kind = "choice"
    value "natural" { synonyms = ["naturally aspirated", "atmospheric", "normally aspirated", "unsupercharged"] }
    value "turbocharged" { synonyms = ["turbo", "turbocharger"] }
    value "supercharged" { synonyms = ["compressor", "supercharger", "blower"] }
    help = "How the engine breathes."
    how  = "Follow the intake from the filter to the throttle."
  }
  particular "fuel" {
    kind = "choice"
    value "petrol" { synonyms = ["gasoline", "pump petrol", "unleaded"] }
    value "diesel" { synonyms = ["diesel oil"] }
    value "ethanol blend" { synonyms = ["E85"] }
    value "gas" { synonyms = ["LPG", "CNG"] }
    value "electric" { synonyms = ["electricity", "battery"] }
    help = "What it burns."
    how  = "From the event's fuel regulations and the label at the filler."
  }
  particular "number" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Number stamped on the block."
    how           = "Clean the pad beside the gearbox flange and rub it through on paper."
  }
  particular "throttle_return_springs" {
    kind      = "count"
    plausible = "0 to 6"
    help      = "Outside springs that close the throttle."
    how       = "Unhook one: the throttle must still snap shut, then count the other."
  }
}
