# Where the cage meets the shell, and the smaller parts on it.

part "foot" {
  plural = "feet"
  within = "cage"
  at_top = true
  place  = "cage"
  stage  = "bare shell"
  help   = "A mounting of the cage on the shell."

  particular "carries" {
    kind  = "choice"
    stage = "before cutting"
    value "main hoop leg" { synonyms = ["main hoop", "main rollbar leg"] }
    value "front hoop leg" { synonyms = ["front hoop", "front rollbar leg"] }
    value "lateral hoop leg" { synonyms = ["lateral hoop", "lateral rollbar leg", "lateral half-hoop leg"] }
    value "backstay" { synonyms = ["rear brace", "backstay foot"] }
    value "other" { synonyms = ["extra foot"] }
    mirrored = true
    help     = "What stands on it."
    how      = "Follow the tube up from the foot to the first hoop."
  }
  particular "tube" {
    kind     = "part name"
    names    = "tube"
    mirrored = true
    help     = "The tube that stands on it."
    how      = "The number painted on the tube just above the foot."
  }
  particular "joint" {
    kind     = "part name"
    names    = "joint"
    mirrored = true
    stage    = "before cutting"
    help     = "The joint it holds to the shell."
    how      = "The letter on the drawing where the tube's centreline comes down."
  }
  particular "shape" {
    kind     = "choice"
    choices  = ["flat", "boxed"]
    mirrored = true
    stage    = "before cutting"
    help     = "Whether it is flat or boxed around a corner of the shell."
    how      = "Look at it from the side: one plane, or faces on two sides at least."
  }
  particular "fixing" {
    kind     = "choice"
    choices  = ["welded", "bolted", "welded and bolted"]
    mirrored = true
    help     = "How the foot is fixed to its plate."
    how      = "Look from under the car too: bolt heads there mean bolted, whatever sealer covers them."
  }
  particular "foot_thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "1 mm to 15 mm"
    mirrored  = true
    help      = "Thickness of the foot welded to the tube."
    how       = "Caliper at the edge of the foot beside the bolt, burr filed off."
  }
  particular "plate_thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "1 mm to 15 mm"
    help      = "Thickness of the reinforcement plate on the shell."
    how       = "Caliper at a free edge before welding; afterwards ultrasonic in the middle, away from the shell's own sheet."
  }
  particular "plate_area" {
    kind      = "area"
    unit      = "cm2"
    plausible = "5 cm2 to 1500 cm2"
    help      = "Area of the reinforcement plate, folded parts laid flat."
    how       = "From the card template it was cut by; length times width only for a true rectangle, holes not deducted."
  }
  particular "contact_length" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 600 mm"
    help      = "Longer side of a rectangular plate where it touches the shell."
    how       = "Steel rule along the side that lies on the shell, folds left out."
  }
  particular "contact_width" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 600 mm"
    help      = "Shorter side of that rectangle."
    how       = "Steel rule square to the longer side, on the shell."
  }
  particular "plate_contact_area" {
    kind      = "area"
    unit      = "cm2"
    plausible = "5 cm2 to 1500 cm2"
    derived   = true
    help      = "Area of the plate that touches the shell."
    how       = "Engineer's blue on the plate, press it on, measure what comes off on the shell; bridged swages do not count."
  }
  particular "plate_longest_side" {
    kind      = "length"
    unit      = "mm"
    plausible = "20 mm to 600 mm"
    help      = "Longest side of the plate."
    how       = "Steel rule along the edge, round a fold if the side is folded."
  }
  particular "plate_shortest_side" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 600 mm"
    help      = "Shortest side of the plate."
    how       = "Steel rule along the shortest straight edge, corner radii included."
  }
  particular "plate_material" {
    kind    = "choice"
    choices = "plate material"
    help    = "What the plate is made of."
    how     = "From the sheet's invoice; a magnet tells steel from light alloy, not one steel from another."
  }
  particular "plate_welded" {
    kind = "yes or no"
    help = "Whether the plate is welded to the shell all round."
    how  = "Mirror along all edges; plug welds or tacks are not all round."
  }
  particular "bolt_count" {
    kind          = "count"
    plausible     = "0 to 16"
    may_be_absent = true
    help          = "Bolts through foot and plate; none for a welded foot."
    how           = "Count those with a nut or welded thread behind the plate, from below."
  }
  particular "bolt_diameter" {
    kind          = "length"
    unit          = "mm"
    plausible     = "4 mm to 24 mm"
    may_be_absent = true
    measured      = false
    help          = "Nominal thread diameter, 8 mm for M8; none for a welded foot."
    how           = "Thread gauge on one bolt of every foot, taken out; inch threads look alike."
  }
  particular "bolt_grade" {
    kind          = "choice"
    choices       = "bolt grade"
    may_be_absent = true
    help          = "Grade on the bolt heads; none for a welded foot."
    how           = "Wire brush and torch on every head of the foot, from whichever side the head is."
  }
  particular "double_shear" {
    kind          = "yes or no"
    may_be_absent = true
    help          = "Whether the bolt is held on both sides of the tube, with a welded bush; none for a welded foot."
    how           = "Look across the bolt: fork, bush, fork."
  }
  particular "locked_nuts" {
    kind          = "yes or no"
    may_be_absent = true
    help          = "Whether the nuts are self-locking or have a lock washer; none for a welded foot."
    how           = "Look for the nylon ring or the crimp, and at least one full thread standing out."
  }
}

part "gusset" {
  plural = "gussets"
  within = "cage"
  at_top = true
  place  = "cage"
  stage  = "bare shell"
  help   = "A reinforcement in the corner of a bend or junction."

  particular "form" {
    kind = "choice"
    value "bent sheet" { synonyms = ["U sheet", "folded sheet", "folded plate"] }
    value "flat plate" { synonyms = ["flat plates"] }
    value "tube" { synonyms = ["round tube"] }
    mirrored = true
    help     = "What it is made from."
    how      = "Look at it from the open side: one folded sheet around the corner, flat plates, or a short tube."
  }
  particular "joint" {
    kind     = "part name"
    names    = "joint"
    mirrored = true
    stage    = "before cutting"
    help     = "The joint it reinforces."
    how      = "The letter on the drawing at its corner."
  }
  particular "junction" {
    kind = "text"
    help = "The tubes it joins."
    how  = "Write the numbers of both tubes, the main one first."
  }
  particular "thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "0.5 mm to 10 mm"
    help      = "Thickness of the sheet, of all plates together, or the wall of the tube."
    how       = "Caliper on the sheet before folding; welded in, ultrasonic on the flat side."
  }
  particular "shorter_arm" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 400 mm"
    help      = "Length of its shorter arm along the tube."
    how       = "From where the tubes' surfaces meet to the end of the weld, along the tube."
  }
  particular "longer_arm" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 400 mm"
    help      = "Length of its longer arm along the tube."
    how       = "Flexible rule along the gusset's longer edge, from the corner of the tubes to its tip."
  }
  particular "unwelded_side" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 600 mm"
    help      = "Length of its free side."
    how       = "Straight rule across the corner, weld toe to weld toe."
  }
  particular "cut_out_radius" {
    kind          = "length"
    unit          = "mm"
    plausible     = "2 mm to 200 mm"
    may_be_absent = true
    help          = "Radius of the cut-out at the corner; none when it has no cut-out."
    how           = "Radius gauges or a coin of known size held into the cut-out."
  }
  particular "tube_outside" {
    kind          = "length"
    unit          = "mm"
    plausible     = "8 mm to 80 mm"
    may_be_absent = true
    help          = "Outside diameter of a gusset made from tube; none for sheet."
    how           = "Caliper at the middle of the short tube."
  }
}

part "padding" {
  plural = "paddings"
  within = "cage"
  at_top = true
  place  = "cage"
  stage  = "before event"
  help   = "Padding on a stretch of the cage."

  particular "tube" {
    kind     = "part name"
    names    = "tube"
    mirrored = true
    help     = "The tube it covers."
    how      = "Pull the padding back at one end and read the tube's number."
  }
  particular "between" {
    kind     = "part names"
    names    = "joint"
    mirrored = true
    help     = "The two joints between which it covers the tube."
    how      = "The letters on the drawing next to its two ends; put a joint of its own where it ends on the way."
  }
  particular "standard" {
    kind    = "choice"
    choices = "padding standard"
    help    = "Standard printed on it."
    how     = "Printed or moulded along its back; a cut piece may have lost it, keep the offcut with the print."
  }
  particular "thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "3 mm to 100 mm"
    help      = "Thickness over the tube on the helmet's side."
    how       = "Needle through the padding to the tube, thumb at the surface, needle against a rule."
  }
  particular "covered_length" {
    kind      = "length"
    unit      = "mm"
    plausible = "20 mm to 3000 mm"
    derived   = true
    help      = "Length of tube that is covered."
    how       = "Tape along the padding, gaps between pieces left out."
  }
  particular "fixing" {
    kind = "choice"
    value "cable ties" {}
    value "bonded" { synonyms = ["adhesive", "glued"] }
    value "bonded and tied" {}
    value "screwed profile" {}
    value "tape" {}
    help = "How it is held."
    how  = "Try to turn it on the tube by hand; it must stay on the helmet's side."
  }
  particular "cover_flame_resistant" {
    kind = "yes or no"
    help = "Whether its cover resists flame."
    how  = "From the data sheet or print; foam without cover fails it."
  }
}

part "inspection_hole" {
  plural = "inspection_holes"
  within = "cage"
  at_top = true
  place  = "cage"
  stage  = "before paint"
  help   = "A hole drilled so that the wall can be measured."

  particular "tube" {
    kind  = "part name"
    names = "tube"
    help  = "The tube it is drilled in."
    how   = "Note the number before the paint covers it."
  }
  particular "diameter" {
    kind      = "length"
    unit      = "mm"
    plausible = "2 mm to 15 mm"
    help      = "Diameter of the hole."
    how       = "Shank of a twist drill that just enters, or the caliper's inside jaws."
  }
  particular "distance_from_weld" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 2000 mm"
    help      = "Distance to the nearest weld."
    how       = "Rule along the tube from the hole's edge to the toe of the weld."
  }
  particular "distance_from_bend" {
    kind          = "length"
    unit          = "mm"
    plausible     = "0 mm to 2000 mm"
    may_be_absent = true
    help          = "Distance to the nearest bend; none in a straight tube."
    how           = "Straight edge on the tube: the bend begins where light shows under it; rule from there to the hole."
  }
}
