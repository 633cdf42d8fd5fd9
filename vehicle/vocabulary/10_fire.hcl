# Against fire: the plumbed-in system, its bottles, the hand-held extinguishers.

part "fire_system" {
  place = "cockpit"
  stage = "before event"
  help  = "The plumbed-in fire extinguishing system."

  particular "standard" {
    kind       = "choice"
    choices    = "fire system standard"
    changeable = false
    help       = "Standard of the system."
    how        = "On the bottle's label; nozzles and heads of another system void it."
  }
  particular "homologation_number" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Homologation number of the system."
    how           = "Such as EX.000.00 on the bottle; find it in the technical list and compare bottle size and agent there."
  }
  particular "first_used" {
    kind          = "date"
    plausible     = "1990 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "When the system was first fitted to a car; none when it is new."
    how           = "From the fitting firm's report or the car's job card."
  }
  particular "agent" {
    kind       = "choice"
    choices    = "extinguishing agent"
    changeable = false
    help       = "What is in it."
    how        = "Name on the bottle's label, not on the carton it came in."
  }
  particular "agent_mass" {
    kind       = "mass"
    unit       = "kg"
    plausible  = "0.5 kg to 15 kg"
    measured   = false
    changeable = false
    help       = "Mass of agent in all bottles together."
    how        = "Add the fill stated on each bottle's label; a foam bottle states litres, a litre of it is close to a kilogram."
  }
  particular "serviced" {
    kind          = "date"
    plausible     = "1990 to 2100"
    happens       = "often"
    may_be_absent = true
    help          = "Last service of the system by its maker or agent; none when new."
    how           = "Punched month and year on the service sticker; the service firm's report for the rest of the system."
  }
  particular "service_due" {
    kind          = "date"
    plausible     = "1990 to 2150"
    may_be_absent = true
    help          = "When the service sticker wants the next service; none when it does not say."
    how           = "The second date on the service sticker."
  }
  particular "cockpit_nozzles" {
    kind      = "count"
    plausible = "0 to 12"
    help      = "Nozzles in the crew's compartment."
    how       = "Follow every pipe; compare number and aim with the maker's drawing."
  }
  particular "engine_nozzles" {
    kind      = "count"
    plausible = "0 to 8"
    help      = "Nozzles in the engine bay."
    how       = "Bonnet up, count them, caps off and bores clean."
  }
  particular "tank_nozzles" {
    kind      = "count"
    plausible = "0 to 4"
    help      = "Nozzles at the fuel tank."
    how       = "Boot trim out; most systems have none here, then write 0."
  }
  particular "triggered_by" {
    kind = "choice"
    value "mechanical" { synonyms = ["pull cable", "cable"] }
    value "electrical" { synonyms = ["electric", "electronic"] }
    value "both" {}
    help = "How it is set off."
    how  = "Look at the bottle's head: a cable clamp or a two-wire plug."
  }
  particular "own_power" {
    kind          = "yes or no"
    may_be_absent = true
    help          = "Whether an electrical one has a source of its own; none for a cable."
    how           = "Battery clamp off, test button pressed: its lamp must still come on."
  }
  particular "reach_when_belted" {
    kind    = "choice"
    choices = "who reaches it"
    help    = "Who of the crew reaches the inside trigger when belted in."
    how     = "Belt both in tight with gloves on and have each touch it."
  }
  particular "outside_trigger" {
    kind = "yes or no"
    help = "Whether it can be set off from outside the car."
    how  = "Find the pull or button near the windscreen pillar and try it with the bottle's pin in."
  }
  particular "outside_mark_diameter" {
    kind          = "length"
    unit          = "mm"
    plausible     = "20 mm to 300 mm"
    may_be_absent = true
    help          = "Diameter of the white, red-edged circle with the letter E; none without one."
    how           = "Rule across the sticker, edge included."
  }
  particular "outside_mark_letter_height" {
    kind          = "length"
    unit          = "mm"
    plausible     = "10 mm to 250 mm"
    may_be_absent = true
    help          = "Height of the letter E in that mark; none without one."
    how           = "Rule down the upright stroke of the letter."
  }
  particular "stops_engine_too" {
    kind = "yes or no"
    help = "Whether setting it off also stops engine and electrics."
    how  = "From the wiring diagram and, bottle disarmed, one test with the engine running."
  }
}

part "fire_bottle" {
  plural = "fire_bottles"
  within = "fire_system"
  place  = "cockpit"
  stage  = "before event"
  help   = "A bottle of the plumbed-in system."

  particular "serial" {
    kind       = "text"
    changeable = false
    help       = "Serial number of the system's bottle."
    how        = "Stamped on the shoulder or neck, not the label's part number."
  }
  particular "agent_mass" {
    kind       = "mass"
    unit       = "kg"
    plausible  = "0.3 kg to 10 kg"
    measured   = false
    changeable = false
    help       = "Mass of agent this bottle is filled with."
    how        = "From its label, line \"agent\" or \"contents\"."
  }
  particular "full_mass" {
    kind       = "mass"
    unit       = "kg"
    plausible  = "0.5 kg to 25 kg"
    measured   = false
    changeable = false
    help       = "Mass of the full bottle as its maker states it."
    how        = "Stamped on the neck or written on the label; note whether with or without head and bracket."
  }
  particular "weighed_mass" {
    kind      = "mass"
    unit      = "kg"
    plausible = "0.3 kg to 25 kg"
    help      = "Mass of the bottle as weighed."
    how       = "Pin in, head's plug off, bottle out of its bracket on a scale that reads 10 g, in the same state as the mass stamped on the neck."
  }
  particular "weighed_on" {
    kind      = "date"
    plausible = "1990 to 2100"
    happens   = "often"
    help      = "Day of that weighing."
    how       = "Write it on a tag on the bottle at once."
  }
  particular "pressure" {
    kind          = "pressure"
    unit          = "bar"
    plausible     = "1 bar to 250 bar"
    may_be_absent = true
    help          = "Pressure on its gauge; none on a bottle without gauge."
    how           = "Gauge read at about 20 degC; tap the glass, compare with the label's band."
  }
  particular "label_kind" {
    kind       = "choice"
    choices    = "date label"
    changeable = false
    help       = "What date the system's bottle shows."
    how        = "Shoulder stamp and label are two things: the label's last line decides which kind it is; the stamp alone is month and year."
  }
  particular "made" {
    kind       = "date"
    plausible  = "1980 to 2100"
    changeable = false
    help       = "Date of manufacture of the system's bottle."
    how        = "Stamped on the shoulder with the test stamp, year and month; the label may be newer than the bottle."
  }
  particular "first_used" {
    kind          = "date"
    plausible     = "1985 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "When the bottle was first fitted to a car; none when it is new."
    how           = "From the job card of that car; a bottle can be younger or older than the rest of its system."
  }
  particular "not_after" {
    kind          = "date"
    plausible     = "1985 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "End of the bottle's life as its maker states it; none when not stated."
    how           = "From the label's line on life or the pressure vessel stamp's next test."
  }
  particular "serviced" {
    kind          = "date"
    plausible     = "1990 to 2100"
    happens       = "often"
    may_be_absent = true
    help          = "Last refill or check of this bottle; none when new."
    how           = "Tag under the safety pin or ring round the neck, punched by the service firm."
  }
  particular "recertified" {
    kind          = "date"
    plausible     = "1985 to 2100"
    happens       = "often"
    may_be_absent = true
    changeable    = false
    help          = "Last pressure test of the bottle; none when never."
    how           = "Second stamp on the shoulder with the tester's mark; licensed testers only, an owner cannot stamp it."
  }
  particular "straps" {
    kind      = "count"
    plausible = "0 to 6"
    help      = "Metal straps that hold it."
    how       = "Count the screw-locked straps; plastic and quick-release ones are told in a note."
  }
  particular "anti_torpedo" {
    kind = "yes or no"
    help = "Whether tabs keep it from sliding out of its straps lengthwise."
    how  = "Loosen the straps a turn and push at its end."
  }
  particular "bracket_bolt_diameter" {
    kind      = "length"
    unit      = "mm"
    plausible = "3 mm to 16 mm"
    measured  = false
    help      = "Nominal thread diameter of the bracket's bolts."
    how       = "From below with a thread gauge, bottle out."
  }
  particular "distance_from_body_edge" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 2500 mm"
    help      = "Least distance from the bottle to the outer edge of the body, as seen from above."
    how       = "Plumb bob from the bottle's outer side and from the body's edge to the floor, tape between the two points, all sides."
  }
}

part "extinguisher" {
  plural = "extinguishers"
  place  = "cockpit"
  stage  = "before event"
  help   = "A hand-held fire extinguisher."

  particular "standard" {
    kind       = "choice"
    choices    = "hand-held extinguisher standard"
    changeable = false
    help       = "Standard of the hand-held extinguisher."
    how        = "In small print at the foot of its label, beside the fire classes."
  }
  particular "serial" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Serial number of the hand-held extinguisher."
    how           = "On the foot ring or a second small label at the back; throw-away ones may show a batch only."
  }
  particular "homologation_number" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Approval number on its label."
    how           = "Beside the standard at the foot of the label, with the letters of the approving body."
  }
  particular "agent" {
    kind       = "choice"
    choices    = "extinguishing agent"
    changeable = false
    help       = "What is in the hand-held extinguisher."
    how        = "Large on its label, with the fire classes A, B, C."
  }
  particular "agent_mass" {
    kind          = "mass"
    unit          = "kg"
    plausible     = "0.3 kg to 12 kg"
    may_be_absent = true
    measured      = false
    changeable    = false
    help          = "Mass of agent; none when the label gives litres."
    how           = "From the front of the label, such as 2 kg."
  }
  particular "agent_volume" {
    kind          = "volume"
    unit          = "l"
    plausible     = "0.3 l to 12 l"
    may_be_absent = true
    measured      = false
    changeable    = false
    help          = "Volume of agent; none when the label gives kilograms."
    how           = "From the front of the label, such as 2.4 L."
  }
  particular "pressure" {
    kind          = "pressure"
    unit          = "bar"
    plausible     = "1 bar to 100 bar"
    may_be_absent = true
    help          = "Pressure on the gauge; none without a gauge."
    how           = "Needle in the green is not a figure: read the scale, turn the bottle over twice before with powder."
  }
  particular "full_mass" {
    kind       = "mass"
    unit       = "kg"
    plausible  = "0.5 kg to 25 kg"
    measured   = false
    changeable = false
    help       = "Mass when full, as its maker states it."
    how        = "In the label's table of technical data, \"gross weight\"."
  }
  particular "weighed_mass" {
    kind      = "mass"
    unit      = "kg"
    plausible = "0.3 kg to 25 kg"
    help      = "Mass of the hand-held extinguisher as weighed."
    how       = "Out of its bracket on a kitchen or parcel scale, pin in; ten per cent below full is the usual sign of a leak."
  }
  particular "label_kind" {
    kind       = "choice"
    choices    = "date label"
    changeable = false
    help       = "What date the hand-held extinguisher shows."
    how        = "Turn it over: foot ring, label's back and service ring; a service date is no date of the label."
  }
  particular "made" {
    kind          = "date"
    plausible     = "1980 to 2100"
    may_be_absent = true
    changeable    = false
    help          = "Date of manufacture of the hand-held extinguisher; none when it shows none."
    how           = "Embossed in the foot ring or rim of the cylinder, two digits of the year."
  }
  particular "first_used" {
    kind          = "date"
    plausible     = "1985 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "When it was first fitted to a car; none when it is new."
    how           = "From the invoice or the job card of the car that had it first."
  }
  particular "not_after" {
    kind          = "date"
    plausible     = "1985 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "End of its life; none when not stated."
    how           = "On the label's back; throw-away ones state it, refillable ones name a test interval instead."
  }
  particular "serviced" {
    kind          = "date"
    plausible     = "1985 to 2100"
    happens       = "often"
    may_be_absent = true
    help          = "Last filling or check; none when new."
    how           = "Service label or ring under the handle, signed by whoever checked it."
  }
  particular "recertified" {
    kind          = "date"
    plausible     = "1985 to 2100"
    happens       = "often"
    may_be_absent = true
    changeable    = false
    help          = "Last pressure test of the cylinder; none when never."
    how           = "Stamp in the foot ring or beside the neck, by a licensed tester."
  }
  particular "service_due" {
    kind          = "date"
    plausible     = "1985 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "When its service label wants the next check; none when it does not say."
    how           = "The punched hole further on in the same label."
  }
  particular "straps" {
    kind      = "count"
    plausible = "0 to 6"
    help      = "Metal straps with quick release that hold it."
    how       = "Count the metal ones whose lever opens with one gloved hand."
  }
  particular "anti_torpedo" {
    kind = "yes or no"
    help = "Whether tabs keep it from sliding lengthwise."
    how  = "Open one strap and push the cylinder toward the windscreen."
  }
  particular "mount_rating" {
    kind          = "acceleration"
    unit          = "g0"
    plausible     = "1 g0 to 100 g0"
    may_be_absent = true
    measured      = false
    help          = "Deceleration its mounting is made for; none when not stated."
    how           = "From the bracket maker's sheet, or worked out from bolts and straps by an engineer, with the paper kept."
  }
  particular "reach_when_belted" {
    kind    = "choice"
    choices = "who reaches it"
    help    = "Who of the crew reaches it when belted in."
    how     = "Belted in, one hand on its release; a fingertip on the hose is not reach."
  }
}
