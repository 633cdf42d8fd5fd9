# Tube as it came from the stockist, tube as it stands in the car, and what joins it.

choices "tube part" {
  value "main hoop" { synonyms = ["main rollbar", "main roll hoop", "main roll bar", "B hoop", "B-pillar hoop", "rear hoop"] }
  value "front hoop" { synonyms = ["front rollbar", "front roll hoop", "front roll bar", "A hoop", "A-pillar hoop", "windshield hoop"] }
  value "lateral hoop" { synonyms = ["lateral rollbar", "lateral roll hoop", "side hoop", "side rollbar", "side roll hoop"] }
  value "lateral half-hoop" { synonyms = ["lateral half-rollbar", "half hoop", "side half-hoop", "lateral half-roll hoop", "A-pillar tube", "down bar", "downbar"] }
  value "longitudinal member" { synonyms = ["longitudinal", "roof side bar", "halo side bar", "roof rail"] }
  value "transverse member" { synonyms = ["transverse", "roof cross bar", "windscreen cross bar", "windscreen header", "windshield header", "windshield bar", "front header bar"] }
  value "backstay" { synonyms = ["rear brace", "rear stay", "backstays", "back stay", "rear down tube", "rear down bar", "main hoop brace", "rear support"] }
  value "hoop diagonal" { synonyms = ["main hoop diagonal", "diagonal", "diagonal member", "main hoop diagonal brace", "diagonal brace"] }
  value "backstay diagonal" { synonyms = ["rear diagonal", "backstay cross", "rear brace diagonal", "rear X brace"] }
  value "door bar" { synonyms = ["door bars", "side bar", "side protection bar", "door cross", "side impact bar", "side intrusion bar", "door X"] }
  value "roof diagonal" { synonyms = ["roof reinforcement", "roof bar", "roof X", "roof cross", "roof V"] }
  value "windscreen pillar reinforcement" { synonyms = ["A pillar reinforcement", "pillar reinforcement", "windscreen pillar bar", "windshield pillar reinforcement", "A-pillar support"] }
  value "door bar support" { synonyms = ["anti-intrusion bar", "door bar strut"] }
  value "harness bar" { synonyms = ["belt bar", "harness transverse bar", "shoulder strap bar", "harness tube", "shoulder harness bar", "shoulder bar"] }
  value "dash bar" { synonyms = ["scuttle bar", "steering column bar", "dashboard bar", "knee bar"] }
  value "front strut brace" { synonyms = ["front suspension brace", "bulkhead brace", "front strut bar", "firewall brace"] }
  value "rear strut brace" { synonyms = ["rear suspension brace", "rear strut bar", "shock tower bar"] }
  value "sill bar" { synonyms = ["floor bar", "rocker bar"] }
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
  particular "bar_length" {
    kind      = "length"
    unit      = "m"
    plausible = "0.2 m to 15 m"
    measured  = false
    help      = "Length of one bar as supplied."
    how       = "Tape along one bar, both ends sawn square."
  }
  particular "bars" {
    kind      = "count"
    plausible = "0 to 500"
    help      = "How many bars were bought."
    how       = "Count them on delivery against the delivery note."
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
  particular "density" {
    kind       = "density"
    unit       = "kg/m3"
    plausible  = "1500 kg/m3 to 9000 kg/m3"
    measured   = false
    changeable = false
    help       = "Density of the material; steel is 7850 kg/m3 where nothing is stated."
    how        = "Weigh a metre of it and divide by the section's area."
  }
  particular "elasticity" {
    kind       = "pressure"
    unit       = "GPa"
    plausible  = "20 GPa to 250 GPa"
    measured   = false
    changeable = false
    help       = "Modulus of elasticity; steel is 210 GPa where nothing is stated."
    how        = "From the data sheet of the material; all steels are within a few hundredths of each other."
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
  particular "length_used" {
    kind      = "length"
    unit      = "m"
    plausible = "0 m to 500 m"
    derived   = true
    help      = "Length of all tubes that are cut from it, along their centrelines."
    how       = "Add up the pieces sawn from its bars, offcuts left out."
  }
  particular "mass_used" {
    kind      = "mass"
    unit      = "kg"
    plausible = "0 kg to 400 kg"
    derived   = true
    help      = "Mass of all tubes that are cut from it."
    how       = "Weigh what was cut."
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
    kind     = "choice"
    choices  = "tube part"
    stage    = "before cutting"
    mirrored = true
    help     = "Which member of the cage it is."
    how      = "Hold the rulebook's drawing beside it; a hoop keeps its name although other tubes land on it."
  }
  particular "stock" {
    kind     = "part name"
    names    = "tube_stock"
    stage    = "before cutting"
    mirrored = true
    help     = "The delivery it was cut from."
    how      = "Paint-mark every length with its stock's label on delivery and copy the mark on each piece before it is cut off."
  }
  particular "through" {
    kind     = "part names"
    names    = "joint"
    mirrored = true
    stage    = "before cutting"
    help     = "The joints its centreline goes through, from one end to the other."
    how      = "The letters on the drawing in order: both ends, every bend, and where it matters the places where others land on it."
  }
  particular "die" {
    kind     = "part name"
    names    = "die"
    mirrored = true
    stage    = "before cutting"
    help     = "The die it is bent with."
    how      = "Painted on the tube beside the bend marks."
  }
  particular "mandatory" {
    kind     = "yes or no"
    stage    = "before cutting"
    mirrored = true
    help     = "Whether the rulebook demands this tube rather than allowing it."
    how      = "Look it up in the rulebook's list of mandatory members for this class and build year."
  }
  particular "ordered" {
    kind     = "tube size"
    fills    = ["ordered_outside", "ordered_wall"]
    stage    = "before cutting"
    mirrored = true
    help     = "Size as bought, when the tube has no stock."
    how      = "From the invoice of that single length."
  }
  particular "ordered_outside" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 120 mm"
    inherits  = "stock"
    measured  = false
    stage     = "before cutting"
    mirrored  = true
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
    mirrored  = true
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
  particular "density" {
    kind       = "density"
    unit       = "kg/m3"
    plausible  = "1500 kg/m3 to 9000 kg/m3"
    inherits   = "stock"
    measured   = false
    changeable = false
    stage      = "before cutting"
    help       = "Density of the material; the stock's unless stated here."
    how        = "Weigh an offcut of known length and divide by the section's area."
  }
  particular "elasticity" {
    kind       = "pressure"
    unit       = "GPa"
    plausible  = "20 GPa to 250 GPa"
    inherits   = "stock"
    measured   = false
    changeable = false
    stage      = "before cutting"
    help       = "Modulus of elasticity; the stock's unless stated here."
    how        = "From the data sheet of the material of this tube."
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
    plausible = "0 to 40"
    derived   = true
    help      = "How many bends it has."
    how       = "Run a straight edge along it and count each place where the axis turns, however slightly."
  }
  particular "bend_radius" {
    kind          = "length"
    unit          = "mm"
    plausible     = "15 mm to 2000 mm"
    may_be_absent = true
    mirrored      = true
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
    derived       = true
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
    kind    = "yes or no"
    derived = true
    help    = "Whether its axis is a straight line from end to end."
    how     = "Tight cord along it from joint to joint, feeler where the cord lifts."
  }
  particular "angle_to_vertical" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 90 deg"
    derived   = true
    help      = "Angle between its axis and the vertical, car level: of the straight from its first to its last joint."
    how       = "Digital level along a straight stretch, read against a level laid across the sills."
  }
  particular "angle_to_horizontal" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 90 deg"
    derived   = true
    stage     = "before cutting"
    help      = "Angle between the straight from its first to its last joint and the horizontal."
    how       = "Digital level along the tube where it is straight, zeroed on the sills."
  }
  particular "side_angle_to_vertical" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 90 deg"
    derived   = true
    stage     = "before cutting"
    help      = "The same to the vertical, as seen from the side."
    how       = "Photo from square beside the car, or the level turned into the plane along the car."
  }
  particular "side_angle_to_horizontal" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 90 deg"
    derived   = true
    stage     = "before cutting"
    help      = "The same to the horizontal, as seen from the side."
    how       = "Digital level along the tube, its face held in the plane along the car."
  }
  particular "front_angle_to_vertical" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 90 deg"
    derived   = true
    stage     = "before cutting"
    help      = "The same to the vertical, as seen from the front."
    how       = "Digital level, its face held across the car."
  }
  particular "front_angle_to_horizontal" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 90 deg"
    derived   = true
    stage     = "before cutting"
    help      = "The same to the horizontal, as seen from the front."
    how       = "Digital level, its face held across the car, zeroed on the floor."
  }
  particular "node_length" {
    kind      = "length"
    unit      = "mm"
    plausible = "1 mm to 20000 mm"
    derived   = true
    stage     = "before cutting"
    help      = "Length from joint to joint, corners and all."
    how       = "Steel rule from centreline to centreline, along the straights as if the bends had corners."
  }
  particular "developed_length" {
    kind      = "length"
    unit      = "mm"
    plausible = "1 mm to 20000 mm"
    derived   = true
    stage     = "before cutting"
    help      = "Length along its centreline, straights and arcs, from the first joint to the last."
    how       = "Flexible tape along the outside of the tube, checked against the tube before bending."
  }
  particular "bend_radius_ratio" {
    kind      = "number"
    plausible = "0.2 to 200"
    derived   = true
    stage     = "before cutting"
    help      = "Its bend radius divided by its outside diameter."
    how       = "Both as measured, the one divided by the other."
  }
  particular "mass" {
    kind      = "mass"
    unit      = "kg"
    plausible = "0 kg to 200 kg"
    derived   = true
    stage     = "before cutting"
    help      = "Mass of the tube over its developed length."
    how       = "Hang it on a scale before it is welded in."
  }
  particular "section_area" {
    kind      = "area"
    unit      = "mm2"
    plausible = "10 mm2 to 5000 mm2"
    derived   = true
    measured  = false
    stage     = "before cutting"
    help      = "Area of its section."
    how       = "From its size: 3.1416 times the wall times the outside diameter less one wall."
  }
  particular "second_moment" {
    kind      = "second moment"
    unit      = "cm4"
    plausible = "0.01 cm4 to 1100 cm4"
    derived   = true
    measured  = false
    stage     = "before cutting"
    help      = "Second moment of area of its section."
    how       = "From the tables of its standard, by size."
  }
  particular "section_modulus" {
    kind      = "volume"
    unit      = "cm3"
    plausible = "0.01 cm3 to 200 cm3"
    derived   = true
    measured  = false
    stage     = "before cutting"
    help      = "Elastic section modulus of its section."
    how       = "Second moment by its table, divided by half the outside diameter."
  }
  particular "bending_stiffness" {
    kind      = "bending stiffness"
    unit      = "N.m2"
    plausible = "1 N.m2 to 3000 kN.m2"
    derived   = true
    measured  = false
    stage     = "before cutting"
    help      = "Second moment of area times modulus of elasticity."
    how       = "From the size and the material; the sag of an offcut under a weight at its middle shows it."
  }
  particular "yield_moment" {
    kind      = "torque"
    unit      = "N.m"
    plausible = "1 N.m to 400 kN.m"
    derived   = true
    measured  = false
    stage     = "before cutting"
    help      = "Bending moment at which its outermost fibre yields: section modulus times yield strength."
    how       = "From the size and the yield strength on the certificate; an offcut bent until it stays bent shows it."
  }
  particular "unsupported_span" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 20000 mm"
    derived   = true
    stage     = "before cutting"
    help      = "The longest stretch of it that nothing supports on its way."
    how       = "Chalk every place where another tube or a foot holds it, rule between the two farthest neighbours."
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
