# The safety cage as a whole, its papers and its plate.

part "cage" {
  place = "cage"
  stage = "bare shell"
  help  = "The safety cage as a whole."

  particular "base_structure" {
    kind  = "choice"
    stage = "before cutting"
    value "main hoop and front hoop" {
      synonyms = ["main and front hoop", "main rollbar and front rollbar", "1"]
      means    = "main hoop, front hoop, two longitudinal members, two backstays, six feet"
    }
    value "two lateral hoops" {
      synonyms = ["two lateral rollbars", "2"]
      means    = "two lateral hoops, two transverse members, two backstays, six feet"
    }
    value "main hoop and two lateral half-hoops" {
      synonyms = ["main rollbar and two lateral half-rollbars", "main hoop and lateral half-hoops", "3"]
      means    = "main hoop, two lateral half-hoops, one transverse member, two backstays, six feet"
    }
    help = "Which basic structure the cage is built on."
    how  = "Follow one tube from foot to foot: what goes over the crew from sill to sill, or from windscreen to rear, tells which."
  }
  particular "route" {
    kind  = "choice"
    stage = "before cutting"
    value "built to the tables" {
      synonyms = ["free design", "built"]
      means    = "tube sizes and members as the rulebook lists them"
    }
    value "certified" {
      synonyms = ["certificated"]
      means    = "a national body certified this design by calculation or test"
    }
    value "homologated" {
      means = "part of the car's homologation, from the maker"
    }
    help = "By which way the cage is to be accepted."
    how  = "Decide it before cutting: without certificate or homologation page in hand it is built to the tables."
  }
  particular "built" {
    kind       = "date"
    plausible  = "1960 to 2100"
    changeable = false
    help       = "When the cage was built."
    how        = "From the fabricator's invoice or job card; the older of invoice and log book date."
  }
  particular "builder" {
    kind       = "text"
    changeable = false
    help       = "Who built it."
    how        = "The name on the job card, with the town."
  }
  particular "modified_since" {
    kind = "yes or no"
    help = "Whether anything was welded to it, cut or moved since it was built, certified or homologated."
    how  = "Hold the cage against the certificate's drawing tube by tube, and feel under the paint for dressed welds."
  }
  particular "modified" {
    kind          = "date"
    plausible     = "1960 to 2100"
    may_be_absent = true
    changeable    = false
    help          = "When it was last modified; none when it never was."
    how           = "From the job card of the repair; two modifications: the later."
  }
  particular "bolted_in" {
    kind = "yes or no"
    help = "Whether the cage is bolted in rather than welded to the shell."
    how  = "Look at every foot: one welded foot makes it a welded cage for most rulebooks, say so in a note."
  }
  particular "weld_process" {
    kind = "choice"
    value "TIG" { synonyms = ["GTAW", "141"] }
    value "MIG" { synonyms = ["MAG", "GMAW", "135"] }
    value "manual arc" { synonyms = ["SMAW", "stick", "111", "MMA"] }
    value "gas" { synonyms = ["oxy-acetylene", "oxyacetylene"] }
    value "mixed" { means = "more than one process; say which where" }
    help = "How it was welded."
    how  = "From the welding procedure sheet, and the look of the bead: ripples of a TIG weld are fine and even."
  }
  particular "welder_qualification" {
    kind          = "text"
    may_be_absent = true
    help          = "Certificate of whoever welded it."
    how           = "Number and day of the test certificate, for this process and this wall thickness."
  }
  particular "weld_test" {
    kind = "choice"
    value "not tested" { synonyms = ["no test", "untested"] }
    value "visual" { synonyms = ["visual inspection"] }
    value "dye penetrant" { synonyms = ["dye", "penetrant", "dye check"] }
    value "magnetic particle" { synonyms = ["magnetic"] }
    value "ultrasonic" { synonyms = ["ultrasound"] }
    help = "How the welds were examined."
    how  = "From the test report; dye and magnetic powder both need bare metal, so before paint."
  }
  particular "windscreen_pillar_rise" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 800 mm"
    stage     = "before cutting"
    help      = "Dimension A of the front hoop leg beside the windscreen, which decides whether a pillar reinforcement is needed."
    how       = "Cord from the top bend of the leg to its lower bend, square from the cord to the tube at the greatest gap."
  }
  particular "width_at_shoulders" {
    kind      = "length"
    unit      = "mm"
    plausible = "600 mm to 2000 mm"
    help      = "Inside width of the main hoop at the height of the crew's shoulders."
    how       = "Telescopic rod between the hoop's legs at the height of the harness bar."
  }
  particular "datum" {
    kind    = "choice"
    choices = ["jig", "level floor", "on its wheels"]
    stage   = "before cutting"
    help    = "What the coordinates of the joints are measured from."
    how     = "Write down how the car or cage stood while the joints were measured."
  }
  particular "origin" {
    kind  = "text"
    stage = "before cutting"
    help  = "The place that all coordinates count from, and which way the axes point when not as usual."
    how   = "Name a place that can be found again, such as the middle of the front axle line on the jig table."
  }
  particular "saw_kerf" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 10 mm"
    measured  = false
    stage     = "before cutting"
    help      = "Width of the saw cut, for cutting lists."
    how       = "Saw a slot in an offcut, feeler gauges or caliper in the slot."
  }
  particular "cut_allowance" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 200 mm"
    measured  = false
    stage     = "before cutting"
    help      = "What is sawn longer than the long-point length for each tube, both ends together."
    how       = "Decide it with whoever saws and fits: some millimetres to grind on each end, more for the first tube of a kind."
  }
  particular "mass" {
    kind      = "mass"
    unit      = "kg"
    plausible = "0 kg to 400 kg"
    derived   = true
    stage     = "before cutting"
    help      = "Mass of all its tubes."
    how       = "Weigh the bare cage, or what was cut off against what was bought."
  }
  particular "tube_length" {
    kind      = "length"
    unit      = "m"
    plausible = "0 m to 500 m"
    derived   = true
    stage     = "before cutting"
    help      = "Length of all tubes together, along their centrelines."
    how       = "Add up the tubes as cut."
  }
  particular "longest_span" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 6000 mm"
    derived   = true
    stage     = "before cutting"
    help      = "The longest stretch of any tube that nothing supports on its way."
    how       = "Steel rule along the tube from joint to joint; a joint where another tube or a foot holds it ends the stretch."
  }
}

part "certificate" {
  within = "cage"
  place  = "papers"
  stage  = "before paint"
  help   = "The cage's certificate."

  particular "number" {
    kind       = "text"
    changeable = false
    help       = "Its number."
    how        = "Copy it digit by digit from the original, not from a photocopy with cut edges."
  }
  particular "issued_by" {
    kind       = "text"
    changeable = false
    help       = "The body that issued it."
    how        = "From the letterhead and stamp: a national sporting authority, not the cage's maker."
  }
  particular "issued" {
    kind       = "date"
    plausible  = "1970 to 2100"
    changeable = false
    help       = "Day of issue."
    how        = "The day beside the signature, not that of the test or of the copy."
  }
  particular "not_after" {
    kind          = "date"
    plausible     = "1970 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "Last day of validity; none when the certificate does not end."
    how           = "Look for it on the last page or in the issuing body's list of certificates."
  }
  particular "recertified" {
    kind          = "date"
    plausible     = "1970 to 2100"
    happens       = "often"
    may_be_absent = true
    changeable    = false
    help          = "When the issuing body last confirmed it; none when it never had to."
    how           = "Stamp or letter behind the certificate, with the day beside the signature."
  }
  particular "basis_mass" {
    kind       = "mass"
    unit       = "kg"
    plausible  = "400 kg to 3500 kg"
    measured   = false
    changeable = false
    help       = "Mass of the car for which the cage was certified."
    how        = "From the calculation's first page; some add the crew or a fixed allowance to it, write which in a note."
  }
  particular "car_model" {
    kind       = "text"
    changeable = false
    help       = "The model of car it was issued for."
    how        = "Compare its model code, doors and years with the shell in front of you."
  }
  particular "chassis" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "The chassis number it was issued for; none when it is for all of a model."
    how           = "Hold the paper beside the stamping in the shell, every character."
  }
  particular "drawing_pages" {
    kind       = "count"
    plausible  = "0 to 60"
    changeable = false
    help       = "How many pages of drawings or photos belong to it."
    how        = "Count them and look whether the certificate states the same number."
  }
}

part "identity_plate" {
  within = "cage"
  place  = "cage"
  stage  = "before paint"
  help   = "The maker's plate on the cage."

  particular "maker" {
    kind       = "text"
    changeable = false
    help       = "Maker's name on the plate."
    how        = "Read it with the door open, usually on the main hoop near the driver's shoulder; unmask it if painted."
  }
  particular "homologation_number" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Homologation or certification number on the plate."
    how           = "It must be the same as on the cage's paper, letter for letter."
  }
  particular "serial" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Serial number on the plate."
    how           = "Rub it through on thin paper if the punch marks are shallow."
  }
  particular "fixed_by" {
    kind = "choice"
    value "embossed in the tube" { synonyms = ["stamped"] }
    value "welded" {}
    value "riveted" {}
    value "bonded" { synonyms = ["self-destroying label", "sticker"] }
    value "loose" { synonyms = ["cable tie"] }
    help = "How it is fixed."
    how  = "Try to lift a corner with a thumb nail, no tool."
  }
}

part "door_aperture" {
  plural = "door_apertures"
  within = "cage"
  at_top = true
  labels = ["left", "right"]
  place  = "cage"
  stage  = "bare shell"
  help   = "The opening that the cage leaves free in a front door, as in drawing 253-49."

  particular "dimension_a" {
    kind      = "length"
    unit      = "mm"
    plausible = "50 mm to 1200 mm"
    help      = "Dimension A of the drawing."
    how       = "Steel rule along the direction the drawing shows, tube surface to tube surface, door off."
  }
  particular "dimension_b" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 800 mm"
    help      = "Dimension B of the drawing."
    how       = "From the hoop's corner to where the upper bar meets it, at the centre lines."
  }
  particular "dimension_c" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 800 mm"
    help      = "Dimension C of the drawing."
    how       = "From the opening's lower corner to where the lower bar meets the hoop, at the centre lines."
  }
  particular "door_bar_height" {
    kind      = "length"
    unit      = "mm"
    plausible = "50 mm to 1000 mm"
    help      = "Dimension E: height of the door bars' upper fixing over the sill."
    how       = "Square on the sill, up to the upper edge of the bar at its front end."
  }
  particular "opening_height" {
    kind      = "length"
    unit      = "mm"
    plausible = "400 mm to 1600 mm"
    help      = "Dimension H: height of the door opening."
    how       = "Sill to roof edge at the middle of the opening, seals off."
  }
  particular "corners" {
    kind  = "part names"
    names = "joint"
    stage = "before cutting"
    help  = "The four joints at its corners: lower front, upper front, upper rear, lower rear."
    how   = "The letters on the drawing, beginning at the sill in front and going round by the roof."
  }
  particular "width" {
    kind      = "length"
    unit      = "mm"
    plausible = "100 mm to 3000 mm"
    derived   = true
    stage     = "before cutting"
    help      = "Least horizontal distance, fore and aft, between its front and rear side, between axes."
    how       = "Steel rule level between the tubes at the bottom and at the top, the lesser one, one outside diameter added."
  }
  particular "height" {
    kind      = "length"
    unit      = "mm"
    plausible = "100 mm to 2500 mm"
    derived   = true
    stage     = "before cutting"
    help      = "Least vertical distance between its lower and upper side, between axes."
    how       = "Steel rule upright between the tubes in front and behind, the lesser one, one outside diameter added."
  }
}
