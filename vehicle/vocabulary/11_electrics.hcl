# Electrics: the general circuit breaker, battery, wiring, lamps.

part "circuit_breaker" {
  place = "cockpit"
  stage = "before event"
  help  = "The general circuit breaker (master switch)."

  particular "form" {
    kind = "choice"
    value "mechanical" { synonyms = ["rotary switch", "key switch"] }
    value "electronic" { synonyms = ["solid state", "relay"] }
    help = "What sort it is."
    how  = "Two battery studs and a key are mechanical; a box with small buttons is electronic."
  }
  particular "cuts_everything" {
    kind = "yes or no"
    help = "Whether it cuts battery, alternator, lamps, hooters, ignition and all consumers."
    how  = "Engine running, all lamps, fans and wipers on, break: everything must go dead, clock and recorder included where the club says so."
  }
  particular "stops_engine" {
    kind = "yes or no"
    help = "Whether breaking it also stops the running engine."
    how  = "Break at 3000 rpm, not at idle: the alternator can keep an engine alive at speed."
  }
  particular "spark_proof" {
    kind       = "yes or no"
    changeable = false
    help       = "Whether it is a spark-proof model."
    how        = "From its data sheet or the mark on its case."
  }
  particular "reach_when_belted" {
    kind    = "choice"
    choices = "who reaches it"
    help    = "Who of the crew reaches it when belted in."
    how     = "Both belted in and gloved, each turns or presses it once."
  }
  particular "outside_trigger" {
    kind = "yes or no"
    help = "Whether it can be broken from outside."
    how  = "Pull the handle at the windscreen pillar with a crooked finger in a glove, engine running."
  }
  particular "outside_mark_base" {
    kind          = "length"
    unit          = "mm"
    plausible     = "20 mm to 400 mm"
    may_be_absent = true
    help          = "Base of the blue triangle with the red spark at the outside trigger; none without one."
    how           = "Rule along the lower edge of the sticker, white edge included."
  }
  particular "discharges_alternator" {
    kind = "yes or no"
    help = "Whether a resistor or second pole takes up the alternator's current on breaking."
    how  = "Look for the resistor across the small terminals and follow it to ground."
  }
}

part "battery" {
  plural = "batteries"
  place  = "cockpit"
  stage  = "before trim"
  help   = "A battery."

  particular "chemistry" {
    kind = "choice"
    value "wet lead-acid" { synonyms = ["flooded", "wet", "wet cell"] }
    value "sealed lead-acid" { synonyms = ["AGM", "dry", "gel", "dry cell"] }
    value "lithium iron phosphate" { synonyms = ["LiFePO4", "LFP"] }
    value "other lithium" { synonyms = ["lithium ion", "lithium polymer", "lithium-ion", "Li-ion", "LiPo"] }
    value "other" {}
    help = "What sort of battery it is."
    how  = "From its label; cell caps that unscrew mean wet."
  }
  particular "place" {
    kind = "choice"
    value "engine bay" {}
    value "cockpit" { synonyms = ["behind the seats", "passenger footwell"] }
    value "luggage area" { synonyms = ["boot", "trunk"] }
    help = "Where it stands."
    how  = "Name the space as the bulkheads divide it, not as the trim does."
  }
  particular "mass" {
    kind      = "mass"
    unit      = "kg"
    plausible = "0.5 kg to 50 kg"
    help      = "Mass of the battery."
    how       = "Out of the car on the platform scale, or from its data sheet with a note."
  }
  particular "clamp_bolt_count" {
    kind      = "count"
    plausible = "0 to 12"
    help      = "Bolts that hold it down to the shell."
    how       = "Count those that end in the shell with a plate, not the ones of the clamp itself."
  }
  particular "clamp_bolt_diameter" {
    kind      = "length"
    unit      = "mm"
    plausible = "3 mm to 16 mm"
    measured  = false
    help      = "Nominal thread diameter of those bolts."
    how       = "Spanner size is a hint, the thread gauge decides: 13 mm spanner is M8, 16 or 17 mm is M10."
  }
  particular "clamp_insulated" {
    kind = "yes or no"
    help = "Whether the metal clamp has an insulating covering."
    how  = "Meter between clamp and case top: nothing bare that a terminal could touch."
  }
  particular "terminals_covered" {
    kind = "yes or no"
    help = "Whether the positive terminal is covered against short circuit."
    how  = "Lay a spanner across both posts in thought: the cap must stop it."
  }
  particular "boxed" {
    kind = "yes or no"
    help = "Whether it stands in a leak-proof box of its own."
    how  = "Lid on, look for cable seals; pour-in test is done before the battery goes in."
  }
  particular "vented_outside" {
    kind = "yes or no"
    help = "Whether the box breathes to the outside of the car."
    how  = "Blow into the box's hose and find where the air comes out."
  }
}

part "wiring" {
  place = "cockpit"
  stage = "before trim"
  help  = "The wiring as a whole."

  particular "flame_resistant_sleeving" {
    kind = "yes or no"
    help = "Whether looms in the cockpit run in fire-resistant sleeving."
    how  = "Data sheet of the sleeve; tape and split plastic conduit burn."
  }
  particular "grommets_everywhere" {
    kind = "yes or no"
    help = "Whether every cable through sheet metal runs in a grommet or bulkhead connector."
    how  = "Torch on both sides of both bulkheads, pull at each loom."
  }
  particular "every_circuit_fused" {
    kind = "yes or no"
    help = "Whether each circuit has a fuse or breaker fit for its cable."
    how  = "Pull the fuses one by one and tick the wiring diagram; starter cable excepted."
  }
  particular "battery_cable_protected" {
    kind = "yes or no"
    help = "Whether the long battery cable is sleeved, clipped and out of the way of seats and jacks."
    how  = "Run a hand along the whole cable with the carpets out."
  }
  particular "greatest_clip_distance" {
    kind      = "length"
    unit      = "mm"
    plausible = "20 mm to 3000 mm"
    help      = "Longest stretch of loom between two fixings."
    how       = "Tape along the loom, crew's space and engine bay."
  }
  particular "charging_voltage" {
    kind      = "voltage"
    unit      = "V"
    plausible = "5 V to 60 V"
    stage     = "before event"
    help      = "Voltage at the battery with the engine running."
    how       = "Multimeter on the posts at 2000 rpm, lamps on."
  }
}

part "lamp" {
  plural = "lamps"
  place  = "outside"
  stage  = "before event"
  help   = "A lamp or a pair of equal lamps."

  particular "purpose" {
    kind = "choice"
    value "headlamp" { synonyms = ["dipped beam", "main beam", "headlight", "low beam", "high beam"] }
    value "additional headlamp" { synonyms = ["driving lamp", "spot lamp", "lamp pod", "driving light", "spot light", "spotlight", "light pod"] }
    value "position lamp" { synonyms = ["side lamp", "tail lamp", "side light", "tail light"] }
    value "direction indicator" { synonyms = ["indicator", "turn signal"] }
    value "brake lamp" { synonyms = ["stop lamp", "brake light", "stop light"] }
    value "rear fog lamp" { synonyms = ["rain lamp", "dust lamp", "rain light", "rear fog light"] }
    value "reversing lamp" { synonyms = ["reversing light", "reverse light"] }
    value "number plate lamp" { synonyms = ["number plate light", "licence plate lamp"] }
    value "hazard warning" { synonyms = ["hazard lights", "hazards"] }
    value "interior lamp" { synonyms = ["map lamp", "interior light"] }
    help = "What it is for."
    how  = "Switch every function on in turn while someone walks round the car."
  }
  particular "quantity" {
    kind      = "count"
    plausible = "0 to 24"
    help      = "How many lamps of this kind there are."
    how       = "Count housings that light up, not bulbs."
  }
  particular "colour" {
    kind    = "choice"
    choices = ["white", "yellow", "amber", "red", "blue", "green"]
    help    = "Colour of its light."
    how     = "Against a white wall in the shade, lens clean."
  }
  particular "diameter" {
    kind          = "length"
    unit          = "mm"
    plausible     = "5 mm to 400 mm"
    may_be_absent = true
    help          = "Diameter of its lens; none when it is not round."
    how           = "Rule across the lit part of the lens."
  }
  particular "lit_area" {
    kind      = "area"
    unit      = "cm2"
    plausible = "0.5 cm2 to 1200 cm2"
    help      = "Area of its lit surface."
    how       = "Trace the lit part on tape over the lens and measure the tracing."
  }
  particular "height" {
    kind      = "length"
    unit      = "mm"
    plausible = "100 mm to 2200 mm"
    help      = "Height of its middle over the ground."
    how       = "Car in stage trim on a level floor, tape from the lens's middle down."
  }
  particular "approved" {
    kind       = "yes or no"
    changeable = false
    help       = "Whether its lens has an approval mark for the road."
    how        = "E in a circle moulded in the lens, or SAE and DOT letters."
  }
  particular "works" {
    kind = "yes or no"
    help = "Whether it works on both sides."
    how  = "Engine running; brake lamps with a foot on the pedal and again with the handbrake only."
  }
}
