# Brakes, steering, wheels and tyres.

part "brakes" {
  place = "underneath"
  stage = "before event"
  help  = "The braking system as a whole."

  particular "circuits" {
    kind      = "count"
    plausible = "1 to 4"
    help      = "Independent circuits worked by the pedal."
    how       = "Open a bleed nipple of one circuit: the pedal must still brake the other wheels."
  }
  particular "circuits_divided" {
    kind = "choice"
    value "front and rear" { synonyms = ["front/rear"] }
    value "diagonal" { synonyms = ["X", "diagonally split"] }
    value "front doubled" { means = "both circuits on the front wheels" }
    help = "How the circuits are divided."
    how  = "Follow the pipes from the master cylinders."
  }
  particular "hydraulic_handbrake" {
    kind = "yes or no"
    help = "Whether the handbrake works through the hydraulics."
    how  = "Pipe on the lever's cylinder; a cable may be fitted beside it."
  }
  particular "parking_brake_holds" {
    kind = "yes or no"
    help = "Whether a parking brake holds the car on both wheels of an axle."
    how  = "Ramp or second gear against it, engine off, lever locked by its ratchet and let go."
  }
  particular "bias_adjustable_from_seat" {
    kind = "yes or no"
    help = "Whether the crew can change the balance of front to rear."
    how  = "Look for a knob, lever or valve within reach of either seat."
  }
  particular "fluid_changed" {
    kind      = "date"
    plausible = "1990 to 2100"
    help      = "When the brake fluid was last changed."
    how       = "From the shop's job card; the tape on the reservoir cap carries the same day."
  }
  particular "fluid_boiling_point" {
    kind      = "temperature"
    unit      = "degC"
    plausible = "80 degC to 400 degC"
    help      = "Boiling point of the fluid now in it."
    how       = "Boiling tester in the reservoir, not a strip for moisture alone; once more from a rear caliper."
  }
}

part "brake_disc" {
  plural = "brake_discs"
  labels = "wheel place"
  place  = "wheels"
  stage  = "before event"
  help   = "A brake disc."

  particular "thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "3 mm to 60 mm"
    help      = "Thickness of the disc."
    how       = "Micrometer with pointed anvils in the middle of the track, four places, lip left out."
  }
  particular "least_thickness" {
    kind       = "length"
    unit       = "mm"
    plausible  = "2 mm to 60 mm"
    measured   = false
    changeable = false
    help       = "Least thickness its maker allows."
    how        = "Stamped on the disc's rim as MIN TH."
  }
  particular "diameter" {
    kind      = "length"
    unit      = "mm"
    plausible = "150 mm to 450 mm"
    help      = "Outside diameter of the disc."
    how       = "Large caliper over the disc, wheel off, or rule across with the hub's middle as a check."
  }
  particular "cracked" {
    kind = "yes or no"
    help = "Whether cracks reach the edge or join drilled holes."
    how  = "Disc cold and wiped, chalk powder on it, lamp held flat."
  }
}

part "steering" {
  place = "cockpit"
  stage = "before event"
  help  = "The steering."

  particular "column_lock_removed" {
    kind = "yes or no"
    help = "Whether the anti-theft lock of the column was taken out of action."
    how  = "Key out, turn the wheel a full turn both ways."
  }
  particular "quick_release" {
    kind = "yes or no"
    help = "Whether the steering wheel comes off with a quick release."
    how  = "Pull the collar with two fingers and take the wheel off, then check for play when it is back on."
  }
  particular "quick_release_yellow" {
    kind          = "yes or no"
    may_be_absent = true
    help          = "Whether the release's flange is coloured yellow; none without a quick release."
    how           = "Colour must be in the part, anodised or coated, not a strip of tape."
  }
  particular "wheel_diameter" {
    kind      = "length"
    unit      = "mm"
    plausible = "200 mm to 450 mm"
    help      = "Outside diameter of the steering wheel."
    how       = "Tape across the rim through the boss."
  }
  particular "rim_closed" {
    kind = "yes or no"
    help = "Whether the rim is a closed ring."
    how  = "Look: flat-bottomed is closed, a yoke is not."
  }
  particular "free_play" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 200 mm"
    help      = "Free play at the rim."
    how       = "Wheels straight on the ground, pointer on the dash and tape on the rim, turn until a front wheel just moves."
  }
  particular "column_collapses" {
    kind = "yes or no"
    help = "Whether the column gives way lengthwise in a crash."
    how  = "Look for the sliding, netted or double-jointed piece between rack and wheel, and that no bracket welds it solid."
  }
}

part "wheel" {
  plural = "wheels"
  labels = "wheel place or spare"
  place  = "wheels"
  stage  = "before event"
  help   = "A wheel, with its tyre; spares too."

  particular "diameter" {
    kind      = "length"
    unit      = "in"
    plausible = "10 in to 22 in"
    measured  = false
    help      = "Nominal rim diameter."
    how       = "Cast or stamped behind a spoke, such as 7Jx15: the second figure."
  }
  particular "width" {
    kind      = "length"
    unit      = "in"
    plausible = "3 in to 14 in"
    measured  = false
    help      = "Nominal rim width."
    how       = "The first figure of the rim's size, inside flange to inside flange."
  }
  particular "material" {
    kind    = "choice"
    choices = "plate material"
    help    = "What the wheel is made of."
    how     = "Magnet for steel; magnesium is told from aluminium by mass and by the cast mark."
  }
  particular "mass" {
    kind      = "mass"
    unit      = "kg"
    plausible = "3 kg to 45 kg"
    help      = "Mass of wheel and tyre together."
    how       = "Platform scale, stones out of the tread."
  }
  particular "studs" {
    kind      = "count"
    plausible = "1 to 8"
    help      = "Studs or bolts that hold it."
    how       = "Count them with the nuts on; a centre nut is 1."
  }
  particular "thread_engagement" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 60 mm"
    help      = "Length of thread engaged in the nuts."
    how       = "Turns of one nut from first bite to tight, times the pitch."
  }
  particular "nut_torque" {
    kind      = "torque"
    unit      = "N.m"
    plausible = "20 N.m to 800 N.m"
    help      = "Torque the nuts are tightened to."
    how       = "Click wrench set to the wheel maker's figure, gone round twice, marked with paint."
  }
  particular "spacer_thickness" {
    kind          = "length"
    unit          = "mm"
    plausible     = "1 mm to 100 mm"
    may_be_absent = true
    help          = "Thickness of a spacer behind it; none without one."
    how           = "Wheel off, caliper at the spacer's edge."
  }
}

part "tyre" {
  within = "wheel"
  place  = "wheels"
  stage  = "before event"
  help   = "The tyre on a wheel."

  particular "standard" {
    kind       = "choice"
    choices    = "tyre standard"
    changeable = false
    help       = "What the tyre is approved for."
    how        = "Marks on the sidewall: E in a circle, DOT, or the words for competition only; then the event's tyre list."
  }
  particular "size" {
    kind       = "text"
    changeable = false
    help       = "Size as marked on the sidewall."
    how        = "Copy the whole line, such as 195/65R15 91Q, or 20/65-15 on competition tyres."
  }
  particular "date_code" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Last figures of the DOT number; none when the tyre has none."
    how           = "Oval on one sidewall only, often the inner one: four figures are week and year, three are older than 2000."
  }
  particular "made" {
    kind       = "date"
    plausible  = "1970 to 2100"
    changeable = false
    help       = "When it was made, worked out from the date code."
    how        = "Week and year of the code: 4308 is week 43 of 2008, so 2008-10; three figures leave the decade open, a triangle behind them means the 1990s."
  }
  particular "first_used" {
    kind          = "date"
    plausible     = "1970 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "When the tyre was first fitted to a wheel; none when it is new."
    how           = "From the tyre book or chalk mark of the shop."
  }
  particular "tread_depth" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 25 mm"
    help      = "Least tread depth."
    how       = "Depth gauge in three grooves at three places round, off the wear bars, the least counts."
  }
  particular "section_width" {
    kind      = "length"
    unit      = "mm"
    plausible = "100 mm to 400 mm"
    help      = "Width of the mounted tyre."
    how       = "Two squares on the floor against the sidewalls at stage pressure, above the bulge."
  }
  particular "pressure" {
    kind      = "pressure"
    unit      = "bar"
    plausible = "0.5 bar to 6 bar"
    help      = "Pressure in the tyre, cold."
    how       = "Calibrated gauge before the car moved, in the shade; over the air outside, as gauges read."
  }
  particular "hand_cut" {
    kind = "yes or no"
    help = "Whether grooves were cut by hand."
    how  = "Compare blocks with a new one of the same pattern: a hot iron leaves shiny edges."
  }
  particular "studs" {
    kind          = "count"
    plausible     = "1 to 800"
    may_be_absent = true
    help          = "How many studs it has; none when it is not studded."
    how           = "Count one tenth of the circumference marked in chalk, times ten, then the whole if near the limit."
  }
  particular "stud_protrusion" {
    kind          = "length"
    unit          = "mm"
    plausible     = "0 mm to 15 mm"
    may_be_absent = true
    help          = "How far the studs stand out of the tread; none when it is not studded."
    how           = "Depth gauge with its foot on the block and rod on the stud's tip, twenty studs, mean in a note."
  }
  particular "damaged" {
    kind = "yes or no"
    help = "Whether it has cuts, bulges, exposed cord or perished rubber."
    how  = "Turn it under a lamp, both sidewalls, flex the rubber and look for fine cracks."
  }
}

part "spare_carrier" {
  place = "luggage area"
  stage = "before event"
  help  = "What holds the spare wheel or wheels."

  particular "place" {
    kind = "choice"
    value "luggage area" { synonyms = ["boot", "trunk"] }
    value "behind the seats" { synonyms = ["cockpit"] }
    value "outside" {}
    help = "Where the spare wheels are carried."
    how  = "With the wheels in place, name the space as the rear bulkhead divides it."
  }
  particular "fixed_by" {
    kind = "choice"
    value "stud and plate" { synonyms = ["bolt and plate", "spider"] }
    value "ratchet straps" { synonyms = ["straps"] }
    value "strut and hook" {}
    value "loose" { synonyms = ["not fixed"] }
    help = "How the spare wheels are held."
    how  = "Tighten as for a stage and lift at the rim with both hands: nothing may move."
  }
  particular "fixings" {
    kind      = "count"
    plausible = "0 to 12"
    help      = "Bolts or strap ends of the carrier in the shell."
    how       = "Boot empty, count the points that end in structure or in a plate."
  }
}
