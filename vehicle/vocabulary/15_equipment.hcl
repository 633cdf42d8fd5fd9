# What a crew must carry, and how loose things are held.

part "belt_cutter" {
  plural = "belt_cutters"
  place  = "cockpit"
  stage  = "before event"
  help   = "A belt cutter."

  particular "reach_when_belted" {
    kind    = "choice"
    choices = "who reaches it"
    help    = "Who of the crew reaches it when belted in."
    how     = "Belts tight, head restraint on: take it out of its holder with either hand."
  }
  particular "held_by" {
    kind = "choice"
    value "holder" { synonyms = ["clip", "bracket"] }
    value "hook and loop" { synonyms = ["hook-and-loop tape"] }
    value "cable ties" {}
    value "door pocket" { synonyms = ["loose"] }
    help = "How the belt cutter is held."
    how  = "Shake the cage or slam the door: it stays, yet comes out with one pull."
  }
}

part "warning_triangle" {
  plural = "warning_triangles"
  place  = "luggage area"
  stage  = "before event"
  help   = "A red reflecting triangle."

  particular "approved" {
    kind       = "yes or no"
    changeable = false
    help       = "Whether it has the approval mark E 27R."
    how        = "Unfold it and read the mark on its foot or reflector."
  }
  particular "side" {
    kind      = "length"
    unit      = "mm"
    plausible = "200 mm to 1000 mm"
    help      = "Length of its sides."
    how       = "Set up, rule along one red edge, tip to tip."
  }
}

part "first_aid_kit" {
  place = "cockpit"
  stage = "before event"
  help  = "The first-aid kit."

  particular "contents_standard" {
    kind          = "text"
    may_be_absent = true
    help          = "Standard of its contents; none when it follows the club's own list."
    how           = "Printed on the bag, such as DIN 13164."
  }
  particular "not_after" {
    kind          = "date"
    plausible     = "1990 to 2100"
    may_be_absent = true
    help          = "The earliest last-use date in the kit; none when nothing in it is dated."
    how           = "Open it and look at every sterile packet for the sand-glass mark; the earliest decides."
  }
  particular "fixed" {
    kind = "yes or no"
    help = "Whether it is held so that it cannot fly about."
    how  = "Tug at the bag from the seat it is nearest to."
  }
}

part "sos_board" {
  place = "cockpit"
  stage = "before event"
  help  = "The board with SOS on one side and OK on the other."

  particular "width" {
    kind      = "length"
    unit      = "mm"
    plausible = "100 mm to 800 mm"
    help      = "Width of the board, opened."
    how       = "Rule along its longer edge; A3 is 420 mm."
  }
  particular "height" {
    kind      = "length"
    unit      = "mm"
    plausible = "100 mm to 800 mm"
    help      = "Height of the board, opened."
    how       = "Rule along its shorter edge; A3 is 297 mm."
  }
  particular "letter_height" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 600 mm"
    help      = "Height of the letters SOS."
    how       = "Rule down the first letter, OK side once more."
  }
  particular "both_sides" {
    kind = "yes or no"
    help = "Whether red SOS is on one side and green OK on the other."
    how  = "Turn it over; the road book's last page may serve where the club says so."
  }
}

part "tow_rope" {
  place = "luggage area"
  stage = "before event"
  help  = "The tow rope."

  particular "length" {
    kind      = "length"
    unit      = "m"
    plausible = "0.5 m to 30 m"
    help      = "Its length."
    how       = "Lay it out straight on the ground with both hooks on, tape beside it."
  }
  particular "breaking_load" {
    kind          = "force"
    unit          = "kN"
    plausible     = "5 kN to 300 kN"
    may_be_absent = true
    measured      = false
    help          = "Least breaking load; none when it is not marked."
    how           = "On the tag sewn to the rope; a bare figure in kg is a force of 9.81 N each."
  }
}

part "spill_kit" {
  place = "luggage area"
  stage = "before event"
  help  = "Absorbent for spilt fluids."

  particular "absorbs" {
    kind      = "volume"
    unit      = "l"
    plausible = "0.5 l to 100 l"
    measured  = false
    help      = "Fluid it can take up."
    how       = "Printed on the packet of pads; several packets add up."
  }
  particular "ground_sheet" {
    kind = "yes or no"
    help = "Whether a ground sheet for service lies with it."
    how  = "Spread it under the car: it must reach from bumper to bumper where the club asks for it."
  }
}

part "stowed_item" {
  plural = "stowed_items"
  place  = "luggage area"
  stage  = "before event"
  help   = "Something heavy that is carried: jack, tools, spares, recorder."

  particular "mass" {
    kind      = "mass"
    unit      = "kg"
    plausible = "0.1 kg to 80 kg"
    help      = "Mass of the item with its bag or box."
    how       = "Luggage scale by the handle, or together on the platform scale."
  }
  particular "place" {
    kind = "choice"
    value "cockpit" { synonyms = ["beside the crew"] }
    value "luggage area" { synonyms = ["boot", "trunk"] }
    value "engine bay" {}
    help = "Where it is carried."
    how  = "Name the space on the crew's or the far side of the rear bulkhead."
  }
  particular "fixed_by" {
    kind = "choice"
    value "bolted bracket" { synonyms = ["bracket", "bolts"] }
    value "ratchet straps" { synonyms = ["straps"] }
    value "closed box" { synonyms = ["locked box"] }
    value "net" {}
    value "loose" { synonyms = ["not fixed"] }
    help = "How the item is held."
    how  = "Pull at it in all six directions with about its own mass ten times over, as far as you can."
  }
}

part "camera_mount" {
  plural = "camera_mounts"
  place  = "cockpit"
  stage  = "before event"
  help   = "A camera and what holds it."

  particular "fixed_to" {
    kind = "choice"
    value "cage" { synonyms = ["cage tube"] }
    value "body inside" { synonyms = ["dashboard", "roof inside"] }
    value "body outside" { synonyms = ["bumper", "roof outside"] }
    value "glass" { synonyms = ["windscreen"] }
    value "helmet" {}
    value "seat" {}
    help = "What it is fixed to."
    how  = "Name the part that would have to break for it to come off."
  }
  particular "fixed_by" {
    kind = "choice"
    value "metal clamp" { synonyms = ["bolted clamp"] }
    value "bolts" { synonyms = ["bolted"] }
    value "plastic clamp" {}
    value "suction cup" { synonyms = ["sucker"] }
    value "adhesive" { synonyms = ["tape", "sticky pad"] }
    help = "How the camera is held."
    how  = "Twist it hard by the lens end; it must not turn on the tube."
  }
  particular "mass" {
    kind      = "mass"
    unit      = "g"
    plausible = "20 g to 3000 g"
    help      = "Mass of camera and mount."
    how       = "Kitchen scale, card and battery in."
  }
  particular "tethered" {
    kind = "yes or no"
    help = "Whether a second fixing holds it when the first fails."
    how  = "Undo the mount: it must hang by its wire, out of reach of the crew's heads."
  }
  particular "clear_of_helmets" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 2500 mm"
    help      = "Least distance to a helmet."
    how       = "Crew belted in, heads thrown forward and sideways by hand, tape from helmet to lens."
  }
}
