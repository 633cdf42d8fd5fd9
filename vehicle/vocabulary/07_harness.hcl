# Harnesses, strap by strap, and where each strap ends.

part "harness" {
  plural = "harnesses"
  labels = "crew place"
  place  = "cockpit"
  stage  = "before event"
  help   = "The safety harness of one of the crew."

  particular "standard" {
    kind       = "choice"
    choices    = "harness standard"
    changeable = false
    help       = "Standard of the harness as a set."
    how        = "From the labels sewn to the straps; all must name the same standard."
  }
  particular "model" {
    kind       = "text"
    changeable = false
    help       = "Maker's model of the harness."
    how        = "Printed on the buckle or on the maker's label beside the standard's."
  }
  particular "homologation_number" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Homologation number of the harness."
    how           = "Such as D-000.T/98 or a number under 8853-2016; the same on every strap of a set."
  }
  particular "seat" {
    kind  = "part name"
    names = "seat"
    help  = "The seat it belongs to."
    how   = "Follow the straps through the seat's openings."
  }
  particular "points" {
    kind      = "count"
    plausible = "2 to 8"
    help      = "How many anchorage points it has."
    how       = "Count where straps end on the car; two crotch straps on one bolt are two straps on one point."
  }
  particular "one_set" {
    kind = "yes or no"
    help = "Whether all straps and the buckle were supplied as one set."
    how  = "Serial numbers of one set follow one another or are equal; ask for the invoice where they do not."
  }
  particular "buckle" {
    kind = "choice"
    value "rotary" { synonyms = ["turn buckle", "cam lock", "camlock"] }
    value "lever" { synonyms = ["latch and link"] }
    value "push button" { synonyms = ["push-button", "press button"] }
    help = "How it opens."
    how  = "Belt a person in and open it with the left hand, then with the right."
  }
  particular "for_head_restraint" {
    kind       = "yes or no"
    changeable = false
    help       = "Whether its shoulder straps are made for use with a head restraint."
    how        = "Narrowed shoulder webbing or double straps, and the words on the label."
  }
  particular "shoulder_spacing" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 700 mm"
    stage     = "before trim"
    derived   = true
    help      = "Distance between the two shoulder straps where they end on the car."
    how       = "Rule between the middles of the straps on the bar, or between bolt centres."
  }
  particular "shoulder_spread" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 180 deg"
    derived   = true
    stage     = "before trim"
    help      = "Angle between the two shoulder straps, seen from above."
    how       = "Cord along each strap, photo from straight above, protractor on the photo."
  }
  particular "shoulder_distance_behind_seat" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 1500 mm"
    stage     = "before trim"
    help      = "Distance from the backrest to the shoulder anchorages."
    how       = "Plumb line from the rear rim of the backrest, rule along the strap's run to the bolt or bar."
  }
  particular "in_accident" {
    kind = "yes or no"
    help = "Whether it was worn in an accident."
    how  = "Ask, then look for glazed webbing at the adjusters and stretched stitching."
  }
}

part "strap" {
  plural = "straps"
  within = "harness"
  place  = "cockpit"
  stage  = "before event"
  labels = "strap place"
  help   = "One strap of a harness."

  particular "standard" {
    kind       = "choice"
    choices    = "harness standard"
    changeable = false
    help       = "Standard on this strap's own label."
    how        = "Unfold every label: one strap of another standard in the set shows only here, and the lap straps hide theirs under the adjuster."
  }
  particular "homologation_number" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Homologation number on the strap's own label."
    how           = "In the line below the standard; hold it against the numbers of the other straps of the set."
  }
  particular "serial" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Serial number of the strap."
    how           = "On the sewn-in label, under the hologram; unfold the label, it is often stitched over."
  }
  particular "label_kind" {
    kind       = "choice"
    choices    = "date label"
    changeable = false
    help       = "What date the strap's label shows."
    how        = "Read both sides of the sewn-in label; a harness maker's swing tag is not a label."
  }
  particular "made" {
    kind          = "date"
    plausible     = "1985 to 2100"
    may_be_absent = true
    changeable    = false
    help          = "Date of manufacture on the strap's label; none when it shows none."
    how           = "Read from the sewn-in label and photograph it; North American labels are punched at month and year."
  }
  particular "not_after" {
    kind          = "date"
    plausible     = "1990 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "Last validity on the strap's label; none when it shows none."
    how           = "The year after \"not valid after\" on the sewn-in label of this strap; the straps of one set can differ after a repair."
  }
  particular "recertified" {
    kind          = "date"
    plausible     = "1990 to 2100"
    happens       = "often"
    may_be_absent = true
    changeable    = false
    help          = "When its maker last put new webbing on the strap or re-certified it; none when never."
    how           = "From the new label that its maker sewed on, and the slip that came back with the set."
  }
  particular "first_used" {
    kind          = "date"
    plausible     = "1985 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "When the strap was first fitted to a car; none when it is new."
    how           = "From the shop's job card, or the log book of the car it came from."
  }
  particular "width" {
    kind      = "length"
    unit      = "mm"
    plausible = "20 mm to 100 mm"
    help      = "Width of the webbing."
    how       = "Lay it flat without pull, rule across, away from sewn ends."
  }
  particular "damaged" {
    kind = "yes or no"
    help = "Whether it is cut, frayed, faded, stained with acid or fuel, or repaired."
    how  = "Pull it through the fingers on both edges under a lamp, adjusters slid along."
  }
  particular "angle_to_horizontal" {
    kind      = "angle"
    unit      = "deg"
    plausible = "-90 deg to 90 deg"
    stage     = "before trim"
    derived   = true
    help      = "Angle below the horizontal at which it leaves the occupant; above is negative."
    how       = "Occupant belted in tight, digital level along the strap: from the backrest's rim for a shoulder strap, from the hip for a lap strap."
  }
  particular "sideways_angle" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 90 deg"
    stage     = "before trim"
    derived   = true
    help      = "Angle to the seat's centre line, seen from above; apart and together count alike."
    how       = "Cord along the seat's centre line, protractor between cord and strap, from above."
  }
  particular "leaves_body" {
    kind  = "point"
    fills = ["leaves_body_x", "leaves_body_y", "leaves_body_z"]
    stage = "before trim"
    help  = "Where it leaves the occupant, at the shoulder or hip, on the axes of the cage."
    how   = "Occupant belted in tight: plumb bob and height gauge from the cage's datum to the strap's last touch."
  }
  particular "leaves_body_x" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    stage     = "before trim"
    help      = "How far the strap's last touch is forward of the origin; behind it is negative."
    how       = "Plumb bob from the shoulder or hip to a chalk line on the floor, occupant belted in."
  }
  particular "leaves_body_y" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    stage     = "before trim"
    help      = "How far the strap's last touch is to the left of the origin; to the right is negative."
    how       = "Square from the cord along the middle of the car to the strap's middle on the body."
  }
  particular "leaves_body_z" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    stage     = "before trim"
    help      = "How far the strap's last touch is above the origin; below it is negative."
    how       = "Laser line level with the strap's last touch, height gauge to it."
  }
  particular "anchor_at" {
    kind  = "point"
    fills = ["anchor_at_x", "anchor_at_y", "anchor_at_z"]
    stage = "before trim"
    help  = "Where it ends on the car or goes round the harness bar, on the axes of the cage."
    how   = "To the middle of the bolt, or to where the strap first touches the bar."
  }
  particular "anchor_at_x" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    stage     = "before trim"
    help      = "How far the anchorage is forward of the origin; behind it is negative."
    how       = "Plumb bob from the bolt, or from the bar's front where the strap touches it, to the chalk line."
  }
  particular "anchor_at_y" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    stage     = "before trim"
    help      = "How far the anchorage is to the left of the origin; to the right is negative."
    how       = "Square from the cord along the middle of the car to the bolt or to the strap's middle on the bar."
  }
  particular "anchor_at_z" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    stage     = "before trim"
    help      = "How far the anchorage is above the origin; below it is negative."
    how       = "Height gauge from the datum to the bolt's middle, or to the top of the bar."
  }
}

choices "strap place" {
  value "left shoulder" { synonyms = ["shoulder left"] }
  value "right shoulder" { synonyms = ["shoulder right"] }
  value "left lap" { synonyms = ["lap left", "left pelvic"] }
  value "right lap" { synonyms = ["lap right", "right pelvic"] }
  value "left crotch" { synonyms = ["crotch left", "left leg", "left anti-submarine"] }
  value "right crotch" { synonyms = ["crotch right", "right leg", "right anti-submarine"] }
  value "crotch" { synonyms = ["single crotch", "anti-submarine", "submarine", "anti-sub"] }
}

part "anchorage" {
  within = "strap"
  place  = "cockpit"
  stage  = "before paint"
  help   = "Where a strap ends on the car."

  particular "fixed_to" {
    kind = "choice"
    value "harness bar" { synonyms = ["belt bar", "cage tube"] }
    value "shell" { synonyms = ["floor", "body"] }
    value "seat support" { synonyms = ["seat tube"] }
    value "original anchorage" { synonyms = ["maker's anchorage", "standard point"] }
    value "seat" { means = "the seat itself, which rulebooks refuse" }
    help = "What it is fixed to."
    how  = "Follow the strap to its end by hand, behind the seat and under the carpet."
  }
  particular "attached_by" {
    kind = "choice"
    value "bolted plate" { synonyms = ["bolt-in bracket", "bolt-in"] }
    value "eyebolt" { synonyms = ["eye bolt", "snap hook", "clip-in", "snap-in"] }
    value "wrapped" { synonyms = ["looped round the tube", "3-bar slide", "wrap-around"] }
    value "welded bush" { synonyms = ["bush in the tube"] }
    help = "How the strap is attached."
    how  = "Look at the end fitting: a wrapped strap must go back through its slide and show a tail."
  }
  particular "bolt_diameter" {
    kind          = "length"
    unit          = "mm"
    plausible     = "5 mm to 20 mm"
    may_be_absent = true
    measured      = false
    help          = "Nominal thread diameter of bolt or eyebolt; none for a wrapped strap. 7/16 in and M12 differ."
    how           = "Thread gauge on the bolt taken out: 7/16 UNF has 20 threads an inch, M12 usually 1.75 mm pitch."
  }
  particular "bolt_grade" {
    kind          = "choice"
    choices       = "bolt grade"
    may_be_absent = true
    help          = "Grade on the bolt's head; none for a wrapped strap."
    how           = "Read the head; eyebolts are marked on the shoulder of the eye."
  }
  particular "plate_area" {
    kind          = "area"
    unit          = "cm2"
    plausible     = "1 cm2 to 400 cm2"
    may_be_absent = true
    help          = "Area of the counterplate behind the sheet; none on the harness bar or at an original point."
    how           = "From under the car, length times width of the plate; round its corners off the sum."
  }
  particular "plate_thickness" {
    kind          = "length"
    unit          = "mm"
    plausible     = "1 mm to 15 mm"
    may_be_absent = true
    help          = "Thickness of that counterplate; none where there is none."
    how           = "Caliper at its edge before the underseal goes on."
  }
  particular "tab_thickness" {
    kind          = "length"
    unit          = "mm"
    plausible     = "1 mm to 15 mm"
    may_be_absent = true
    help          = "Thickness of a tab or bracket welded for it; none without one."
    how           = "Caliper beside the hole, weld spatter filed off."
  }
  particular "pulls_in_line" {
    kind  = "yes or no"
    stage = "before trim"
    help  = "Whether the fitting lines up with the strap under load, not bent sideways."
    how   = "Belt a person in, tighten, look along the strap: the plate must turn with it."
  }
}
