# Tube as it came from the stockist, tube as it stands in the car, and what joins it.

choices "tube part" {
  value "main hoop" { synonyms = ["main rollbar", "main roll hoop", "main roll bar", "B hoop", "rear hoop"] }
  value "front hoop" { synonyms = ["front rollbar", "front roll hoop", "front roll bar", "A hoop"] }
  value "lateral hoop" { synonyms = ["lateral rollbar", "lateral roll hoop", "side hoop"] }
  value "lateral half-hoop" { synonyms = ["lateral half-rollbar", "half hoop", "side half-hoop"] }
  value "longitudinal member" { synonyms = ["longitudinal", "roof side bar"] }
  value "transverse member" { synonyms = ["transverse", "roof cross bar", "windscreen cross bar", "windscreen header"] }
  value "backstay" { synonyms = ["rear brace", "rear stay", "backstays", "back stay"] }
  value "hoop diagonal" { synonyms = ["main hoop diagonal", "diagonal", "diagonal member"] }
  value "backstay diagonal" { synonyms = ["rear diagonal", "backstay cross"] }
  value "door bar" { synonyms = ["door bars", "side bar", "side protection bar", "door cross", "side impact bar"] }
  value "roof diagonal" { synonyms = ["roof reinforcement", "roof bar"] }
  value "windscreen pillar reinforcement" { synonyms = ["A pillar reinforcement", "pillar reinforcement", "windscreen pillar bar"] }
  value "door bar support" { synonyms = ["anti-intrusion bar", "door bar strut"] }
  value "harness bar" { synonyms = ["belt bar", "harness transverse bar", "shoulder strap bar", "harness tube"] }
  value "dash bar" { synonyms = ["scuttle bar", "steering column bar", "dashboard bar"] }
  value "front strut brace" { synonyms = ["front suspension brace", "bulkhead brace", "front strut bar"] }
  value "rear strut brace" { synonyms = ["rear suspension brace", "rear strut bar"] }
  value "sill bar" { synonyms = ["floor bar"] }
  value "corner brace" { synonyms = ["corner reinforcement", "junction reinforcement"] }
  value "seat bar" { synonyms = ["seat tube", "seat cross tube"] }
  value "other" { means = "another member; name it in a note" }
}

part "tube_stock" {
  plural = "tube_stocks"
  within = "cage"
  at_top = true
  place  = "cage"
  stage  = "before cutting"
  help   = "A delivery of tube, one cast and one size; tubes name it as their stock."

  particular "ordered" {
    kind  = "tube size"
    fills = ["ordered_outside", "ordered_wall"]
    help  = "Size on the order and certificate, outside by wall, such as \"45 x 2.5 mm\"."
    how   = "From the certificate's size column; keep the unit it was ordered in."
  }
  particular "ordered_outside" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 120 mm"
    measured  = false
    help      = "Outside diameter as ordered."
    how       = "First figure of the size on the delivery note."
  }
  particular "ordered_wall" {
    kind      = "length"
    unit      = "mm"
    plausible = "0.5 mm to 10 mm"
    measured  = false
    help      = "Wall thickness as ordered."
    how       = "Second figure of the size on the delivery note; a gauge number needs to say bwg or swg."
  }
  particular "size" {
    kind  = "tube size"
    fills = ["outside", "wall"]
    help  = "Size as measured, outside by wall, when one reading of each is enough."
    how   = "Both with the micrometer at the sawn end, tolerance of the instrument behind the pair."
  }
  particular "outside" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 120 mm"
    help      = "Outside diameter as measured on the length before cutting."
    how       = "Outside micrometer, twice at right angles at each end and in the middle, clear of the saw burr."
  }
  particular "wall" {
    kind      = "length"
    unit      = "mm"
    plausible = "0.5 mm to 10 mm"
    help      = "Wall thickness as measured on the length before cutting."
    how       = "Ball-end micrometer at the sawn and deburred end, four places round; drawn tube is rarely concentric, so keep all four readings."
  }
  particular "cast_number" {
    kind       = "text"
    changeable = false
    help       = "Cast or heat number."
    how        = "Stencilled along the tube or on the bundle's tag; it must stand on the certificate too."
  }
  particular "supplier" {
    kind       = "text"
    changeable = false
    help       = "Who supplied it."
    how        = "From the delivery note, with its number."
  }
  particular "certificate_type" {
    kind       = "choice"
    changeable = false
    value "3.2" { synonyms = ["EN 10204 3.2"] }
    value "3.1" { synonyms = ["EN 10204 3.1", "mill certificate", "mill cert"] }
    value "2.2" { synonyms = ["EN 10204 2.2", "test report"] }
    value "2.1" { synonyms = ["EN 10204 2.1", "declaration of compliance"] }
    value "not certified" { synonyms = ["no certificate", "uncertified"] }
    help = "Kind of inspection document under EN 10204."
    how  = "Printed in the certificate's title; only 3.1 and 3.2 carry figures of this very cast."
  }
  particular "tube_standard" {
    kind       = "choice"
    changeable = false
    value "EN 10305-1" { means = "seamless cold drawn precision tube" }
    value "EN 10305-2" { means = "welded cold drawn precision tube" }
    value "EN 10305-3" { means = "welded cold sized precision tube" }
    value "EN 10216" { synonyms = ["EN 10216-1", "EN 10216-3"] }
    value "EN 10219" { synonyms = ["EN 10219-1", "EN 10219-2"] }
    value "ASTM A513" { synonyms = ["A513"] }
    value "ASTM A519" { synonyms = ["A519"] }
    value "AS 1163" { synonyms = ["AS/NZS 1163"] }
    value "BS 4T45" { synonyms = ["4T45"] }
    value "other" { means = "another standard; name it in a note" }
    help = "Standard the tube was made to."
    how  = "On the certificate beside the steel's name, such as EN 10305-1 E355."
  }
  particular "material" {
    kind       = "choice"
    choices    = "tube material"
    changeable = false
    help       = "What the tube is made of."
    how        = "Steel name on the certificate; carbon steel and chromium-molybdenum cannot be told apart by eye, keep bundles apart."
  }
  particular "forming" {
    kind       = "choice"
    choices    = "tube forming"
    changeable = false
    help       = "How the tube was made."
    how        = "On the certificate; look into a bright end for the line of a weld seam, or etch a ring."
  }
  particular "delivery_condition" {
    kind       = "choice"
    changeable = false
    value "+C" { synonyms = ["as drawn", "hard drawn", "BK"] }
    value "+LC" { synonyms = ["soft drawn", "BKW"] }
    value "+SR" { synonyms = ["stress relieved", "BKS"] }
    value "+A" { synonyms = ["annealed", "GBK"] }
    value "+N" { synonyms = ["normalised", "normalized", "NBK"] }
    value "+QT" { synonyms = ["quenched and tempered"] }
    value "unknown" {}
    help = "Heat treatment as delivered, which decides about yield and elongation."
    how  = "The letters behind the steel's name on the certificate, such as E355+N."
  }
  particular "yield" {
    kind       = "pressure"
    unit       = "MPa"
    plausible  = "100 MPa to 1600 MPa"
    measured   = false
    changeable = false
    help       = "Yield strength (ReH or Rp0.2) of this cast."
    how        = "Column ReH or Rp0.2 of the certificate; a catalogue's least value is not this cast's."
  }
  particular "tensile" {
    kind       = "pressure"
    unit       = "MPa"
    plausible  = "200 MPa to 2000 MPa"
    measured   = false
    changeable = false
    help       = "Tensile strength (Rm) of this cast."
    how        = "Column Rm of the certificate, the lowest where several test pieces are listed."
  }
  particular "elongation" {
    kind       = "number"
    unit       = "%"
    plausible  = "0.5 % to 70 %"
    measured   = false
    changeable = false
    help       = "Elongation after fracture of this cast."
    how        = "Column A of the certificate; A5 and A80 are different gauge lengths, write which in a note."
  }
  particular "carbon_content" {
    kind       = "number"
    unit       = "%"
    plausible  = "0 % to 2 %"
    measured   = false
    changeable = false
    help       = "Carbon by mass."
    how        = "Column C of the certificate's cast analysis."
  }
  particular "manganese_content" {
    kind       = "number"
    unit       = "%"
    plausible  = "0 % to 5 %"
    measured   = false
    changeable = false
    help       = "Manganese by mass."
    how        = "Column Mn of the cast analysis."
  }
  particular "greatest_other_content" {
    kind       = "number"
    unit       = "%"
    plausible  = "0 % to 30 %"
    measured   = false
    changeable = false
    help       = "The greatest content of any other alloying element."
    how        = "Go along the cast analysis, leave out C, Mn and Fe, take the largest column: silicon usually, chromium in alloy steel."
  }
  particular "coated" {
    kind = "yes or no"
    help = "Whether it came with a coating, such as zinc."
    how  = "A drop of copper sulphate solution turns bare steel copper red and zinc black; zinc has to come off before welding."
  }
}

part "tube" {
  plural = "tubes"
  within = "cage"
  at_top = true
  place  = "cage"
  stage  = "bare shell"
  help   = "One tube of the cage, from weld to weld; the label is its number on the drawing."

  particular "part" {
    kind    = "choice"
    choices = "tube part"
    stage   = "before cutting"
    help    = "Which member of the cage it is."
    how     = "Hold the rulebook's drawing beside it; a hoop keeps its name although other tubes land on it."
  }
  particular "stock" {
    kind  = "part name"
    names = "tube_stock"
    stage = "before cutting"
    help  = "The delivery it was cut from."
    how   = "Paint-mark every length with its stock's label on delivery and copy the mark on each piece before it is cut off."
  }
  particular "mandatory" {
    kind  = "yes or no"
    stage = "before cutting"
    help  = "Whether the rulebook demands this tube rather than allowing it."
    how   = "Look it up in the rulebook's list of mandatory members for this class and build year."
  }
  particular "ordered" {
    kind  = "tube size"
    fills = ["ordered_outside", "ordered_wall"]
    stage = "before cutting"
    help  = "Size as bought, when the tube has no stock."
    how   = "From the invoice of that single length."
  }
  particular "ordered_outside" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 120 mm"
    inherits  = "stock"
    measured  = false
    stage     = "before cutting"
    help      = "Outside diameter as bought; the stock's unless stated here."
    how       = "First figure of the size on the invoice of that single length."
  }
  particular "ordered_wall" {
    kind      = "length"
    unit      = "mm"
    plausible = "0.5 mm to 10 mm"
    inherits  = "stock"
    measured  = false
    stage     = "before cutting"
    help      = "Wall thickness as bought; the stock's unless stated here."
    how       = "Second figure of the size on that invoice; a gauge without bwg or swg is not a size."
  }
  particular "size" {
    kind  = "tube size"
    fills = ["outside", "wall"]
    stage = "before cutting"
    help  = "Size as measured on this tube, outside by wall."
    how   = "For a loose piece with both ends open: micrometer outside and ball-end micrometer on the wall."
  }
  particular "outside" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 120 mm"
    inherits  = "stock"
    stage     = "before cutting"
    help      = "Outside diameter as measured on this tube, clear of bends; the stock's unless stated here."
    how       = "Caliper or micrometer on a straight stretch, twice at right angles, paint scraped off at the contact points."
  }
  particular "wall" {
    kind      = "length"
    unit      = "mm"
    plausible = "0.5 mm to 10 mm"
    inherits  = "stock"
    stage     = "before cutting"
    help      = "Wall thickness as measured on this tube; the stock's unless stated here."
    how       = "On a built cage: ultrasonic gauge on bare metal, set on a piece of the same steel, or with the coating's thickness stated; or depth gauge in the inspection hole. A caliper only at an open end."
  }
  particular "material" {
    kind       = "choice"
    choices    = "tube material"
    inherits   = "stock"
    changeable = false
    stage      = "before cutting"
    help       = "What it is made of; the stock's unless stated here."
    how        = "A tube of unknown origin: hand-held spectrometer on a ground spot, or an offcut sent to a laboratory."
  }
  particular "forming" {
    kind       = "choice"
    choices    = "tube forming"
    inherits   = "stock"
    changeable = false
    stage      = "before cutting"
    help       = "How the tube was made; the stock's unless stated here."
    how        = "Inspection mirror or endoscope through an open end or the inspection hole: a seam shows as a line along the tube."
  }
  particular "yield" {
    kind       = "pressure"
    unit       = "MPa"
    plausible  = "100 MPa to 1600 MPa"
    inherits   = "stock"
    measured   = false
    changeable = false
    stage      = "before cutting"
    help       = "Yield strength; the stock's unless stated here."
    how        = "Tensile test of an offcut of this very tube; hardness tells nothing about yield."
  }
  particular "tensile" {
    kind       = "pressure"
    unit       = "MPa"
    plausible  = "200 MPa to 2000 MPa"
    inherits   = "stock"
    measured   = false
    changeable = false
    stage      = "before cutting"
    help       = "Tensile strength; the stock's unless stated here."
    how        = "Tensile test of an offcut, or portable hardness tester on a polished spot converted by ISO 18265, with its spread stated."
  }
  particular "elongation" {
    kind       = "number"
    unit       = "%"
    plausible  = "0.5 % to 70 %"
    inherits   = "stock"
    measured   = false
    changeable = false
    stage      = "before cutting"
    help       = "Elongation after fracture; the stock's unless stated here."
    how        = "Fit the broken halves of the tested offcut together and measure between the gauge marks."
  }
  particular "carbon_content" {
    kind       = "number"
    unit       = "%"
    plausible  = "0 % to 2 %"
    inherits   = "stock"
    measured   = false
    changeable = false
    stage      = "before cutting"
    help       = "Carbon by mass; the stock's unless stated here."
    how        = "Laboratory spark spectrometer on an offcut; most hand-held instruments do not see carbon."
  }
  particular "manganese_content" {
    kind       = "number"
    unit       = "%"
    plausible  = "0 % to 5 %"
    inherits   = "stock"
    measured   = false
    changeable = false
    stage      = "before cutting"
    help       = "Manganese by mass; the stock's unless stated here."
    how        = "Hand-held X-ray spectrometer on a bare spot; it reads manganese well."
  }
  particular "greatest_other_content" {
    kind       = "number"
    unit       = "%"
    plausible  = "0 % to 30 %"
    inherits   = "stock"
    measured   = false
    changeable = false
    stage      = "before cutting"
    help       = "The greatest content of any other alloying element; the stock's unless stated here."
    how        = "Print the whole list of the spectrometer and take the largest element that is neither iron, carbon nor manganese."
  }
  particular "coated" {
    kind     = "yes or no"
    inherits = "stock"
    help     = "Whether the tube is painted, powder coated or plated where the wall was read; the stock's unless stated here."
    how      = "Scratch test beside the reading; a gauge set for steel takes coating for more wall, two to three times its thickness."
  }
  particular "coating_thickness" {
    kind          = "length"
    unit          = "um"
    plausible     = "0 um to 1500 um"
    may_be_absent = true
    help          = "Thickness of the coating where the wall was read; none on bare metal."
    how           = "Magnetic coating gauge beside the ultrasonic spot, five readings, zeroed on bare tube of the same diameter."
  }
  particular "bends" {
    kind      = "count"
    plausible = "0 to 12"
    help      = "How many bends it has."
    how       = "Run a straight edge along it and count each place where the axis turns, however slightly."
  }
  particular "bend_radius" {
    kind          = "length"
    unit          = "mm"
    plausible     = "15 mm to 2000 mm"
    may_be_absent = true
    help          = "Least centre-line radius of its bends; none when it is straight."
    how           = "Radius of the bender's former as stamped on it; on a built cage a card template on the inside of the bend plus half the outside diameter."
  }
  particular "least_diameter_at_bend" {
    kind          = "length"
    unit          = "mm"
    plausible     = "8 mm to 120 mm"
    may_be_absent = true
    help          = "Least outside diameter in its most oval bend; none when it is straight."
    how           = "Caliper across the bend's plane at mid-bend, rock it for the smallest reading."
  }
  particular "greatest_diameter_at_bend" {
    kind          = "length"
    unit          = "mm"
    plausible     = "10 mm to 140 mm"
    may_be_absent = true
    help          = "Greatest outside diameter in that same bend; none when it is straight."
    how           = "Caliper at mid-bend, square to the plane of the bend, rocked for the largest reading."
  }
  particular "greatest_bend_angle" {
    kind          = "angle"
    unit          = "deg"
    plausible     = "0 deg to 180 deg"
    may_be_absent = true
    help          = "How far its sharpest bend turns; none when it is straight."
    how           = "Protractor or digital level on both straight legs beside the bend, the difference of the two."
  }
  particular "bending" {
    kind          = "choice"
    may_be_absent = true
    value "cold" { synonyms = ["cold worked", "cold bent"] }
    value "hot" { synonyms = ["hot bent"] }
    help = "How it was bent; none when it is straight."
    how  = "Ask the bender; scale and blue colour inside the bend tell of heat."
  }
  particular "wrinkles" {
    kind          = "yes or no"
    may_be_absent = true
    help          = "Whether a bend has wrinkles, kinks or flattening marks; none when it is straight."
    how           = "Fingertips along the inside of each bend, paint or not."
  }
  particular "joints" {
    kind      = "count"
    plausible = "0 to 10"
    help      = "Welds or couplings within its length; 0 for a tube in one piece."
    how       = "Strip paint in a strip along it, or magnetic powder over the whole length of a hoop: a butt weld dressed flush shows only so."
  }
  particular "straight" {
    kind = "yes or no"
    help = "Whether its axis is a straight line from end to end."
    how  = "Tight cord along it from joint to joint, feeler where the cord lifts."
  }
  particular "angle_to_vertical" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 90 deg"
    help      = "Angle between its axis and the vertical, car level."
    how       = "Digital level along a straight stretch, read against a level laid across the sills."
  }
  particular "contains_fluid" {
    kind = "yes or no"
    help = "Whether it carries or has carried a fluid or an agent."
    how  = "Look for fittings and plugged threads; hoses zip-tied to the outside do not count."
  }
  particular "upper_end_offset" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 1500 mm"
    help      = "Distance of its upper end from the junction or foot the rulebook wants it at."
    how       = "Between the points where the centre lines meet, steel rule along the tube it lands on."
  }
  particular "lower_end_offset" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 1500 mm"
    help      = "Distance of its lower end from the junction or mounting foot the rulebook wants it at."
    how       = "From the centre line at its lower end to the top face of the foot's plate."
  }
  particular "welded_all_round" {
    kind = "yes or no"
    help = "Whether both ends are welded round the whole circumference."
    how  = "Mirror and torch behind every joint, above all where the hoop is close to the roof or pillar."
  }
  particular "greatest_notch_gap" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 20 mm"
    help      = "Widest gap between the notched end and the tube it lands on, before welding."
    how       = "Feeler gauges round the fitted joint when it is tacked."
  }
  particular "deepest_dent" {
    kind          = "length"
    unit          = "mm"
    plausible     = "0 mm to 50 mm"
    may_be_absent = true
    stage         = "before event"
    help          = "Depth of its deepest dent; none when it has none."
    how           = "Straight edge along the tube over the dent, depth rod of the caliper down from it."
  }
  particular "helmet_distance" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 2000 mm"
    stage     = "before trim"
    help      = "Least distance from a helmet to this tube."
    how       = "Crew belted in with helmets on, head leaned toward the tube, gap with a slip of card and rule."
  }
}

part "cage_joint" {
  plural = "cage_joints"
  within = "cage"
  at_top = true
  place  = "cage"
  stage  = "bare shell"
  help   = "A removable joint between two tubes of the cage."

  particular "form" {
    kind = "choice"
    value "clamped sleeve" { synonyms = ["sleeve"] }
    value "double lug" { synonyms = ["fork and tongue", "clevis"] }
    value "conical" { synonyms = ["taper"] }
    value "flange" {}
    value "other" {}
    help = "How the joint is made."
    how  = "Compare with the rulebook's drawings of removable joints; an arrangement that turns is not one of them."
  }
  particular "tube" {
    kind  = "part name"
    names = "tube"
    help  = "The tube it makes removable."
    how   = "The shorter of the two, the one that comes out."
  }
  particular "bolt_count" {
    kind      = "count"
    plausible = "0 to 12"
    help      = "How many bolts it has."
    how       = "Count the bolts of one joint, both sides of a sleeve."
  }
  particular "bolt_diameter" {
    kind      = "length"
    unit      = "mm"
    plausible = "4 mm to 20 mm"
    measured  = false
    help      = "Nominal thread diameter of its bolts."
    how       = "Shank with the caliper, rounded up to the nominal thread."
  }
  particular "bolt_grade" {
    kind    = "choice"
    choices = "bolt grade"
    help    = "Grade of its bolts."
    how     = "Read every head, clean with a brush; one unmarked bolt decides for all."
  }
  particular "engagement" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 300 mm"
    help      = "How far the tube and the joint overlap."
    how       = "Scribe at the sleeve's edge, pull the tube out, measure from the mark to its end."
  }
}
