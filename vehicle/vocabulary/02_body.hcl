# The shell: what was cut out of it, how it closes, what is fixed to it.

part "body" {
  place = "outside"
  stage = "bare shell"
  help  = "The bodyshell."

  particular "structure" {
    kind = "choice"
    value "steel shell" { synonyms = ["monocoque", "unitary steel shell", "steel monocoque", "unibody"] }
    value "tubular frame" { synonyms = ["spaceframe", "space frame", "tube frame"] }
    value "chassis frame" { synonyms = ["ladder frame", "separate chassis", "body on frame"] }
    value "composite" {}
    help = "What carries the car."
    how  = "Look at what the suspension is bolted to, on the lift with the carpets out."
  }
  particular "seam_welded" {
    kind = "yes or no"
    help = "Whether the shell was welded along its seams beyond the maker's spots."
    how  = "Seam sealer off at the door openings and the strut towers: look for bead between the spots."
  }
  particular "structure_was_cut" {
    kind = "yes or no"
    help = "Whether any pillar, sill, rail, cross member, roof or bulkhead was cut or removed."
    how  = "Compare both sides with each other and with the maker's body repair drawings."
  }
  particular "deepest_corrosion" {
    kind          = "length"
    unit          = "mm"
    plausible     = "0 mm to 6 mm"
    may_be_absent = true
    help          = "Deepest rust pit in a sill, floor or mounting area; none when there is no rust."
    how           = "Pick and wire brush to sound metal, then depth gauge across the pit."
  }
  particular "roof_material" {
    kind    = "choice"
    choices = "plate material"
    help    = "What the roof skin is made of."
    how     = "Magnet on the bare inside, four places, joins at the gutters looked at."
  }
  particular "roof_opening_closed" {
    kind          = "yes or no"
    may_be_absent = true
    help          = "Whether a sunroof was closed for good; none when the roof never had one."
    how           = "From inside with the lining out: sheet steel welded all round, not a bonded lid."
  }
  particular "door_trim_material" {
    kind    = "choice"
    choices = "plate material"
    stage   = "before trim"
    help    = "What the panel that closes the inside of the front doors is made of."
    how     = "Unclip one corner and look at the cut edge."
  }
  particular "door_trim_thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "0.3 mm to 15 mm"
    stage     = "before trim"
    help      = "Thickness of that panel."
    how       = "Caliper at the edge of the handle cut-out, or a sample left over from cutting it."
  }
  particular "doors_open_from_both_sides" {
    kind  = "yes or no"
    stage = "before event"
    help  = "Whether both front doors open from inside and outside without a tool."
    how   = "Try all four handles with the crew belted in and the car on one jack, as the shell twists."
  }
  particular "bonnet_fasteners" {
    kind      = "count"
    plausible = "0 to 8"
    stage     = "before event"
    help      = "Additional fasteners that hold the bonnet."
    how       = "Count the pins with their plates, the maker's catch left out."
  }
  particular "boot_fasteners" {
    kind      = "count"
    plausible = "0 to 8"
    stage     = "before event"
    help      = "Additional fasteners that hold the boot lid or tailgate."
    how       = "Count pins or straps on the rear lid; glass hatch clips do not count."
  }
  particular "original_catches_disabled" {
    kind  = "yes or no"
    stage = "before event"
    help  = "Whether the maker's bonnet and boot catches were put out of action."
    how   = "Pull the pins and lift: both lids must come up without the release cable."
  }
  particular "roof_vent_height" {
    kind          = "length"
    unit          = "mm"
    plausible     = "5 mm to 250 mm"
    may_be_absent = true
    stage         = "before paint"
    help          = "How far the roof ventilator stands up over the roof."
    how           = "Straight edge along the roof line, rule down from the top of the open flap."
  }
}

part "structure_cut" {
  plural = "structure_cuts"
  within = "body"
  at_top = true
  place  = "outside"
  stage  = "bare shell"
  help   = "A place where the shell's structure was cut or a panel removed."

  particular "member" {
    kind = "choice"
    value "floor" {}
    value "sill" { synonyms = ["rocker", "rocker panel"] }
    value "pillar" { synonyms = ["A pillar", "B pillar", "C pillar"] }
    value "roof" { synonyms = ["roof bow", "cant rail"] }
    value "bulkhead" { synonyms = ["firewall"] }
    value "wheel arch" { synonyms = ["inner wing", "fender"] }
    value "cross member" { synonyms = ["crossmember"] }
    value "transmission tunnel" { synonyms = ["tunnel", "gearbox tunnel"] }
    value "door" { synonyms = ["door shell"] }
    value "other" { means = "another place; name it in a note" }
    help = "What was cut."
    how  = "Name it from the maker's body repair drawing and photograph it with a rule beside it."
  }
  particular "area" {
    kind      = "area"
    unit      = "cm2"
    plausible = "0.5 cm2 to 20000 cm2"
    help      = "Area of metal taken out."
    how       = "Trace the hole on card, cut it out and measure the card."
  }
  particular "made_good" {
    kind = "yes or no"
    help = "Whether metal of at least the same thickness was welded back."
    how  = "Tap and look from both sides for a continuous weld; filler rings dull and a magnet drops off."
  }
  particular "permitted_by" {
    kind          = "text"
    may_be_absent = true
    help          = "The clause or homologation extension that allows the cut."
    how           = "Write its number, and bring that page to inspection."
  }
}
