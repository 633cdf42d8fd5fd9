# Seats and what holds them to the shell.

part "seat" {
  plural = "seats"
  labels = "crew place"
  place  = "cockpit"
  stage  = "before trim"
  help   = "A seat of the crew."

  particular "standard" {
    kind       = "choice"
    choices    = "seat standard"
    changeable = false
    help       = "Standard on the seat's label."
    how        = "Silver label on the back or side of the shell; tip the seat forward, photograph it with the number sharp."
  }
  particular "model" {
    kind       = "text"
    changeable = false
    help       = "Maker's model of the seat."
    how        = "On the maker's own label, often under the cushion."
  }
  particular "homologation_number" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Homologation number of the seat."
    how           = "Such as CS.000.00, on the standard's label; look it up in the technical list."
  }
  particular "serial" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Serial number of the seat."
    how           = "Printed or engraved beside the homologation number."
  }
  particular "label_kind" {
    kind       = "choice"
    choices    = "date label"
    changeable = false
    help       = "What date the seat's label shows."
    how        = "Labels before about 2014 show a month or year of manufacture, later ones the last year of validity."
  }
  particular "made" {
    kind          = "date"
    plausible     = "1985 to 2100"
    may_be_absent = true
    changeable    = false
    help          = "Date of manufacture on the seat's label; none when the label shows only the end of validity."
    how           = "Write it with no more than the label says: 2013-02 for 02/2013, 2013 for a year."
  }
  particular "not_after" {
    kind          = "date"
    plausible     = "1990 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "The seat label's \"not valid after\"; none when it has no such line."
    how           = "Copy the year from the line \"not valid after\" and no other."
  }
  particular "recertified" {
    kind          = "date"
    plausible     = "1990 to 2100"
    happens       = "once"
    may_be_absent = true
    changeable    = false
    help          = "When the seat's maker looked at it and renewed it; none when it never went back."
    how           = "From the maker's renewal paper, which names the serial number; the day is not on the shell."
  }
  particular "first_used" {
    kind          = "date"
    plausible     = "1985 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "When the seat was first fitted to a car; none when it is new."
    how           = "From the invoice or the passport of the car it came from."
  }
  particular "extended_until" {
    kind          = "date"
    plausible     = "1990 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "Validity as renewed by the seat's maker; none when it never went back."
    how           = "From the maker's renewal label, which sits beside the first one."
  }
  particular "shell_material" {
    kind       = "choice"
    changeable = false
    value "composite" { synonyms = ["GRP", "glass fibre", "carbon", "carbon fibre", "fibreglass", "fiberglass", "carbon fiber"] }
    value "tubular steel" { synonyms = ["steel frame"] }
    value "aluminium" { synonyms = ["aluminium alloy", "aluminum"] }
    value "plastic" { synonyms = ["polyethylene"] }
    help = "What the seat's shell is made of."
    how  = "Lift the cover at a belt opening and look at the edge."
  }
  particular "damaged" {
    kind  = "yes or no"
    stage = "before event"
    help  = "Whether the shell is cracked, delaminated or has been in an accident."
    how   = "Seat out, cover off: torch from behind through the shell, tap around the mounting inserts and listen for a dull spot."
  }
  particular "cushion_thickness" {
    kind          = "length"
    unit          = "mm"
    plausible     = "0 mm to 200 mm"
    may_be_absent = true
    stage         = "before event"
    help          = "Greatest thickness of cushion between seat and occupant; none without one."
    how           = "Press a rule through beside the hips, cushion not loaded."
  }
  particular "harness_openings" {
    kind       = "count"
    plausible  = "0 to 8"
    changeable = false
    help       = "Openings in the shell for straps."
    how        = "Count the edged openings: two shoulder, two lap, one or two crotch."
  }
  particular "head_support" {
    kind       = "yes or no"
    changeable = false
    help       = "Whether the seat has side supports for the head."
    how        = "Sit in it helmeted: the wings must reach forward of the ears."
  }
  particular "head_support_gap" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 300 mm"
    stage     = "before event"
    help      = "Gap between the helmet and the head support behind it."
    how       = "Occupant belted in, chin level, stack of 5 mm cards slid between helmet and support."
  }
  particular "back_angle" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 60 deg"
    help      = "Lean of the backrest from the vertical."
    how       = "Digital level on a straight edge held from shoulder to hip height, zeroed on the sills."
  }
  particular "distance_to_steering_wheel" {
    kind          = "length"
    unit          = "mm"
    plausible     = "100 mm to 900 mm"
    may_be_absent = true
    stage         = "before event"
    help          = "From the occupant's chest to the wheel's rim; none on the side without a wheel."
    how           = "Driver belted in, wheel straight, rule from the buckle's height to the rim."
  }
  particular "reference" {
    kind  = "point"
    fills = ["reference_x", "reference_y", "reference_z"]
    stage = "before trim"
    help  = "The lowest place of the squab at its middle, on the axes of the cage."
    how   = "Plumb bob and height gauge from the cage's datum, seat in its place, cushion out."
  }
  particular "reference_x" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    stage     = "before trim"
    help      = "How far its reference is forward of the origin; behind it is negative."
    how       = "Plumb bob from the squab's lowest place to a chalk line on the floor, tape along the line."
  }
  particular "reference_y" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    stage     = "before trim"
    help      = "How far its reference is to the left of the origin; to the right is negative."
    how       = "Square from a cord along the middle of the car to the middle of the squab."
  }
  particular "reference_z" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    stage     = "before trim"
    help      = "How far its reference is above the origin; below it is negative."
    how       = "Height gauge from the cage's datum through the seat's opening."
  }
}

part "seat_mount" {
  plural = "seat_mounts"
  within = "seat"
  labels = "wheel place"
  place  = "cockpit"
  stage  = "before paint"
  help   = "One of the points by which a seat is held."

  particular "fixed_to" {
    kind = "choice"
    value "cross tube" { synonyms = ["seat tube", "welded tube"] }
    value "box section" { synonyms = ["welded box"] }
    value "floor with plate" { synonyms = ["floor"] }
    value "original mounting" { synonyms = ["standard mounting", "original rails"] }
    value "cage" {}
    help = "What the support is fixed to."
    how  = "From below with the undershield off: see whether the bolt ends in tube, box or sheet."
  }
  particular "support_material" {
    kind    = "choice"
    choices = "plate material"
    help    = "What the seat support is made of."
    how     = "Magnet on the support with the seat out."
  }
  particular "support_thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "1 mm to 20 mm"
    help      = "Thickness of the support at the seat's bolt."
    how       = "Caliper over the side plate next to the slot, paint scratched off."
  }
  particular "support_length" {
    kind      = "length"
    unit      = "mm"
    plausible = "20 mm to 700 mm"
    help      = "Length of the support along the car."
    how       = "Rule along its foot, from end to end."
  }
  particular "bolt_diameter" {
    kind      = "length"
    unit      = "mm"
    plausible = "4 mm to 16 mm"
    measured  = false
    help      = "Nominal thread diameter of the bolt between support and shell."
    how       = "Take one of the four out; the nut welded in from the factory is not always M8."
  }
  particular "bolt_grade" {
    kind    = "choice"
    choices = "bolt grade"
    help    = "Grade of the bolt between support and shell."
    how     = "Inspection mirror under the seat, brush the head clean."
  }
  particular "seat_bolt_diameter" {
    kind      = "length"
    unit      = "mm"
    plausible = "4 mm to 16 mm"
    measured  = false
    help      = "Nominal thread diameter of the bolt between seat and support."
    how       = "From the side, through the support's slot; the insert in the seat shell decides it."
  }
  particular "counterplate_area" {
    kind          = "area"
    unit          = "cm2"
    plausible     = "1 cm2 to 400 cm2"
    may_be_absent = true
    help          = "Contact area of the counterplate under the floor; none where the point is welded tube or box."
    how           = "Chalk round it from below, measure what truly lies on the sheet."
  }
  particular "counterplate_thickness" {
    kind          = "length"
    unit          = "mm"
    plausible     = "0.8 mm to 15 mm"
    may_be_absent = true
    help          = "Thickness of that counterplate; none where there is none."
    how           = "Caliper at its free edge from under the car."
  }
  particular "bush_diameter" {
    kind          = "length"
    unit          = "mm"
    plausible     = "6 mm to 30 mm"
    may_be_absent = true
    stage         = "bare shell"
    help          = "Outside diameter of the bush welded through a seat tube; none without one."
    how           = "Caliper on the bush before it is welded in, or on its visible end."
  }
  particular "tube_size" {
    kind  = "tube size"
    fills = ["tube_outside", "tube_wall"]
    stage = "bare shell"
    help  = "Size of the seat tube, outside by wall."
    how   = "At the sawn end before welding into the sill."
  }
  particular "tube_outside" {
    kind          = "length"
    unit          = "mm"
    plausible     = "10 mm to 80 mm"
    may_be_absent = true
    stage         = "bare shell"
    help          = "Outside diameter or side of the seat tube; none where the seat does not stand on tube."
    how           = "Caliper between the seat mounts."
  }
  particular "tube_wall" {
    kind          = "length"
    unit          = "mm"
    plausible     = "0.8 mm to 8 mm"
    may_be_absent = true
    stage         = "bare shell"
    help          = "Wall of the seat tube; none where the seat does not stand on tube."
    how           = "Ultrasonic on the underside, bare; or at a bolt hole with a stepped gauge, bush not yet in."
  }
  particular "quick_release" {
    kind = "yes or no"
    help = "Whether the seat slides or comes out without a tool at this point."
    how  = "Pull every lever; a slider left in counts even when it is bolted."
  }
}
