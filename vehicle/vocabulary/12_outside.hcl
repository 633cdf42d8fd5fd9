# Round and under the car: towing eyes, flaps, guards, glass, nets, mirrors.

part "towing_eye" {
  plural = "towing_eyes"
  labels = "ends of the car"
  place  = "outside"
  stage  = "before event"
  help   = "A towing eye."

  particular "form" {
    kind = "choice"
    value "rigid" { synonyms = ["steel eye", "hinged"] }
    value "strap" { synonyms = ["webbing", "loop", "tow strap"] }
    value "cable" { synonyms = ["steel rope", "wire rope"] }
    help = "What sort it is."
    how  = "Pull it out to where it would be used."
  }
  particular "inner_diameter" {
    kind          = "length"
    unit          = "mm"
    plausible     = "10 mm to 250 mm"
    may_be_absent = true
    help          = "Inside diameter of the eye; none when the opening is not round."
    how           = "Inside jaws of the caliper, smallest of three directions."
  }
  particular "opening_area" {
    kind      = "area"
    unit      = "cm2"
    plausible = "1 cm2 to 500 cm2"
    help      = "Area of its opening."
    how       = "Press clay through the eye, cut it flush, lay it on squared paper."
  }
  particular "thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "2 mm to 50 mm"
    help      = "Least thickness of the eye's material."
    how       = "Caliper at its thinnest spot, worn side included."
  }
  particular "colour" {
    kind    = "choice"
    choices = ["yellow", "red", "orange", "other"]
    help    = "Colour of the eye."
    how     = "Daylight, dirt off: the eye itself, not the arrow sticker."
  }
  particular "marked" {
    kind = "yes or no"
    help = "Whether an arrow or word on the body points to it."
    how  = "Stand five metres off and look whether a marshal would find it."
  }
  particular "rated_load" {
    kind          = "force"
    unit          = "kN"
    plausible     = "1 kN to 200 kN"
    may_be_absent = true
    measured      = false
    help          = "Load marked on it; none when not marked."
    how           = "On the eye or the strap's tag; a mark in tonnes is a force of 9.81 kN each."
  }
  particular "within_outline" {
    kind = "yes or no"
    help = "Whether it stays inside the bodywork's outline, seen from above."
    how  = "Straight edge upright against the bumper over the eye."
  }
  particular "fixed_to_structure" {
    kind = "yes or no"
    help = "Whether it is fixed to the structure, not to a bumper skin."
    how  = "Follow it back with a torch to rail, cross member or cage."
  }
}

part "mud_flap" {
  plural = "mud_flaps"
  labels = "wheel place"
  place  = "outside"
  stage  = "before event"
  help   = "A mud flap behind a wheel."

  particular "material" {
    kind    = "choice"
    choices = "plate material"
    help    = "What the flap is made of."
    how     = "Bend it through a right angle by hand: it must come back."
  }
  particular "thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "0.5 mm to 20 mm"
    help      = "Thickness of the flap."
    how       = "Caliper at its lower edge, mud scraped off."
  }
  particular "ground_distance" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 500 mm"
    help      = "Gap between its lower edge and the ground."
    how       = "Rule upright at the flap, car in stage trim with nobody aboard."
  }
  particular "covers_tyre_width" {
    kind = "yes or no"
    help = "Whether it covers the whole width of the tyre."
    how  = "Crouch behind the car in line with the wheel: no tread to be seen beside it."
  }
  particular "gap_to_body" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 300 mm"
    help      = "Widest gap between flap and bodywork."
    how       = "Stack of cards between flap and arch."
  }
}

part "underbody_guard" {
  plural = "underbody_guards"
  place  = "underneath"
  stage  = "before event"
  help   = "A guard under the car or along a sill."

  particular "covers" {
    kind = "choice"
    value "engine" { synonyms = ["sump", "sump guard"] }
    value "gearbox" { synonyms = ["transmission"] }
    value "fuel tank" { synonyms = ["tank"] }
    value "rear axle" { synonyms = ["differential"] }
    value "left sill" {}
    value "right sill" {}
    value "lines" { synonyms = ["pipes"] }
    value "suspension" {}
    help = "What it protects."
    how  = "On the lift, say what would be hit first without it."
  }
  particular "material" {
    kind    = "choice"
    choices = "plate material"
    help    = "What the guard is made of."
    how     = "Magnet, then the colour of a fresh scratch."
  }
  particular "thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "0.5 mm to 30 mm"
    help      = "Thickness of the guard."
    how       = "Caliper at its front edge where it is not ground away, and once where it is."
  }
  particular "fixings" {
    kind      = "count"
    plausible = "0 to 40"
    help      = "Bolts that hold the guard."
    how       = "Count them from below, missing ones not counted."
  }
  particular "extends_past_sill" {
    kind          = "length"
    unit          = "mm"
    plausible     = "-200 mm to 300 mm"
    may_be_absent = true
    help          = "How far a sill guard stands out past the sill; none for other guards."
    how           = "Square against the sill, rule to the guard's edge, negative when it stays inside."
  }
}

part "window" {
  plural = "windows"
  place  = "outside"
  stage  = "before event"
  labels = "window place"
  help   = "A side or rear window."

  particular "material" {
    kind = "choice"
    value "tempered glass" { synonyms = ["toughened glass", "safety glass"] }
    value "laminated glass" { synonyms = ["laminated"] }
    value "polycarbonate" { synonyms = ["plastic"] }
    value "acrylic" { synonyms = ["PMMA"] }
    help = "What it is made of."
    how  = "Mark in the corner of glass; polycarbonate sounds dull and scratches under a nail."
  }
  particular "thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "1 mm to 20 mm"
    help      = "Thickness of the pane."
    how       = "Caliper at the upper edge with the window half down; a fixed one by optical gauge."
  }
  particular "film" {
    kind = "yes or no"
    help = "Whether an anti-shatter film is on it."
    how  = "Finger nail at the edge on the inside; a film ends a millimetre or two short of it."
  }
  particular "film_thickness" {
    kind          = "length"
    unit          = "um"
    plausible     = "10 um to 800 um"
    may_be_absent = true
    help          = "Thickness of the film; none without film."
    how           = "From the film's data sheet, or a micrometer on the trimming left over."
  }
  particular "light_transmission" {
    kind      = "number"
    unit      = "%"
    plausible = "0 % to 100 %"
    help      = "Light that passes glass and film together."
    how       = "Transmission meter on both sides of the pane, zeroed in the open."
  }
  particular "opening_height" {
    kind          = "length"
    unit          = "mm"
    plausible     = "0 mm to 800 mm"
    may_be_absent = true
    help          = "Height of what can be opened; none for a fixed pane."
    how           = "Window fully down or slid open, rule across the gap."
  }
}

choices "window place" {
  value "driver door" { synonyms = ["driver's door"] }
  value "co-driver door" { synonyms = ["co-driver's door", "passenger door"] }
  value "left rear side" { synonyms = ["rear left"] }
  value "right rear side" { synonyms = ["rear right"] }
  value "rear" { synonyms = ["rear screen", "backlight", "rear window"] }
  value "roof" { synonyms = ["sunroof"] }
}

part "windscreen" {
  place = "outside"
  stage = "before event"
  help  = "The windscreen."

  particular "laminated" {
    kind       = "yes or no"
    changeable = false
    help       = "Whether it is laminated glass."
    how        = "Mark in its corner; look at a crack or the edge for the layer between two panes."
  }
  particular "longest_crack" {
    kind          = "length"
    unit          = "mm"
    plausible     = "1 mm to 2000 mm"
    may_be_absent = true
    help          = "Length of its longest crack; none when it has none."
    how           = "Bendable rule along the crack, stars across their widest points."
  }
  particular "sun_strip_depth" {
    kind          = "length"
    unit          = "mm"
    plausible     = "10 mm to 500 mm"
    may_be_absent = true
    help          = "Depth of a band along its upper edge; none without one."
    how           = "Tape down from the upper edge of the glass at mid-screen."
  }
  particular "demisted" {
    kind = "yes or no"
    help = "Whether heating or air keeps it clear."
    how  = "Breathe on it or set a wet cloth under it, blower on, clear within two minutes."
  }
  particular "extra_fasteners" {
    kind      = "count"
    plausible = "0 to 12"
    help      = "Quick fasteners that hold the screen beside its bonding."
    how       = "Count them from outside, sealing rubber looked under."
  }
  particular "wipers_work" {
    kind = "yes or no"
    help = "Whether wipers and washer sweep it clean."
    how  = "Flour on the glass, washer once, both speeds."
  }
}

part "window_net" {
  plural = "window_nets"
  place  = "cockpit"
  stage  = "before event"
  labels = "net place"
  help   = "A net in a side window or beside a seat."

  particular "standard" {
    kind       = "choice"
    choices    = "window net standard"
    changeable = false
    help       = "Standard of the net."
    how        = "Sewn-in tag at a corner of the net, often behind the upper rod."
  }
  particular "serial" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Serial number of the net."
    how           = "On the tag with the punched months, if at all."
  }
  particular "homologation_number" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Homologation number of the net."
    how           = "On the hologram's tag under standard 8863; nets of SFI 27.1 have a maker's number instead."
  }
  particular "label_kind" {
    kind       = "choice"
    choices    = "date label"
    changeable = false
    help       = "What date the net's tag shows."
    how        = "Unfold the tag behind the rod and read both of its faces."
  }
  particular "made" {
    kind          = "date"
    plausible     = "1985 to 2100"
    may_be_absent = true
    changeable    = false
    help          = "Date of manufacture of the net; none when it shows none."
    how           = "Punched tag of the net: month in the row, year in the column."
  }
  particular "not_after" {
    kind          = "date"
    plausible     = "1990 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "Last validity on the net's tag; none when it shows none."
    how           = "Only racing nets of standard 8863 carry it, on the tag with the hologram."
  }
  particular "first_used" {
    kind          = "date"
    plausible     = "1985 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "When the net was first fitted to a car; none when it is new."
    how           = "From the job card; sun ages it from that day on."
  }
  particular "mesh_opening" {
    kind      = "length"
    unit      = "mm"
    plausible = "2 mm to 150 mm"
    help      = "Greatest side of its openings."
    how       = "Net pulled tight in its frame, inside jaws of the caliper in the largest opening."
  }
  particular "webbing_width" {
    kind      = "length"
    unit      = "mm"
    plausible = "2 mm to 80 mm"
    help      = "Width of its webbing or cord."
    how       = "Rule across three bands, the narrowest counts."
  }
  particular "opens_with_one_hand" {
    kind = "yes or no"
    help = "Whether it opens with one hand from inside and outside, the car on its roof too."
    how  = "Belted in and gloved, try it; then from outside with the door shut."
  }
}

choices "net place" {
  value "driver window" { synonyms = ["driver's window", "driver"] }
  value "co-driver window" { synonyms = ["co-driver's window", "co-driver"] }
  value "centre" { synonyms = ["between the seats"] }
}

part "mirror" {
  plural = "mirrors"
  place  = "outside"
  stage  = "before event"
  labels = ["left", "right", "inside"]
  help   = "A rear-view mirror."

  particular "glass_area" {
    kind      = "area"
    unit      = "cm2"
    plausible = "5 cm2 to 800 cm2"
    help      = "Area of the mirror's glass."
    how       = "Paper rubbed along the glass's edge, counted on squared paper."
  }
  particular "intact" {
    kind = "yes or no"
    help = "Whether glass and mounting are sound and the driver sees the rear in it."
    how  = "Driver belted in names what an assistant holds up ten metres behind."
  }
}
