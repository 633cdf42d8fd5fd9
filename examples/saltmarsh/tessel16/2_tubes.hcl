# Tube: four deliveries, and where each length went. Numbers as on the drawing that was
# deposited with the club.

tube_stock "A" {
  ordered            = "45 x 2.5 mm"
  bar_length         = "6 m"
  bars               = 3
  outside            = { reading = "45.04 mm", measured_with = "micrometer" }
  wall               = { readings = ["2.56 mm", "2.58 mm", "2.55 mm", "2.57 mm"], measured_with = "micrometer" }
  cast_number        = "71-40922"
  supplier           = "Holm & Daughters, tube stockists, Wrackham"
  certificate_type   = "3.1"
  tube_standard      = "EN 10305-1"
  material           = "E355"
  forming            = "cold drawn seamless"
  delivery_condition = "+SR"
  yield              = "478 MPa"
  tensile            = "604 MPa"
  elongation         = "14 %"
  carbon_content     = "0.18 %"
  manganese_content  = "1.31 %"

  greatest_other_content = "0.27 %"
  coated                 = false

  evidence "material certificate" {
    file  = "papers/tube-A-certificate.txt"
    dated = "2026-06-02"
  }
}

tube_stock "B" {
  ordered            = "40 x 2.0 mm"
  bar_length         = "6 m"
  bars               = 8
  outside            = { reading = "40.03 mm", measured_with = "micrometer" }
  wall               = { readings = ["2.06 mm", "2.09 mm", "2.07 mm", "2.08 mm"], measured_with = "micrometer" }
  cast_number        = "71-41107"
  supplier           = "Holm & Daughters, tube stockists, Wrackham"
  certificate_type   = "3.1"
  tube_standard      = "EN 10305-1"
  material           = "E355"
  forming            = "cold drawn seamless"
  delivery_condition = "+SR"
  yield              = "491 MPa"
  tensile            = "612 MPa"
  elongation         = "13 %"
  carbon_content     = "0.17 %"
  manganese_content  = "1.28 %"

  greatest_other_content = "0.24 %"
  coated                 = false

  evidence "material certificate" {
    file  = "papers/tube-B-certificate.txt"
    dated = "2026-06-02"
  }
}

tube_stock "C" {
  ordered            = "30 x 2.0 mm"
  bar_length         = "6 m"
  bars               = 2
  size               = "30.0 x 2.05 mm"
  cast_number        = "69-22815"
  supplier           = "Holm & Daughters, tube stockists, Wrackham"
  certificate_type   = "3.1"
  tube_standard      = "EN 10305-1"
  material           = "E235"
  forming            = "cold drawn seamless"
  delivery_condition = "+SR"
  yield              = "372 MPa"
  tensile            = "461 MPa"
  elongation         = "17 %"
  carbon_content     = "0.12 %"
  manganese_content  = "0.61 %"

  greatest_other_content = "0.21 %"
  coated                 = false
  note                   = "Rest of an older delivery; used for what the rules do not ask for."

  evidence "material certificate" {
    file  = "papers/tube-C-certificate.txt"
    dated = "2025-09-11"
  }
}

# The bender's two dies, as they were tried out in February 2026.

die "45" {
  outside           = "45 mm"
  centreline_radius = "150 mm"
  grip_length       = "65 mm"
  minimum_straight  = "55 mm"
  springback        = "3 %"
  bend_start_offset = "8 mm"
}

die "40" {
  outside           = "40 mm"
  centreline_radius = "130 mm"
  grip_length       = "60 mm"
  minimum_straight  = "50 mm"
  springback        = "2.5 %"
  bend_start_offset = "7 mm"
}

# The main hoop, bent from one length.

tube "1" {
  part        = "main hoop"
  stock       = "A"
  mandatory   = true
  through     = ["A left", "B left", "C left", "C right", "B right", "A right"]
  bend_radius = "150 mm"
  die         = "45"
  wall = {
    readings      = ["2.57 mm", "2.56 mm"]
    measured_with = "ultrasonic gauge"
    note          = "outer side of the upper left bend, and its leg"
  }
  least_diameter_at_bend    = { reading = "43.6 mm", measured_with = "caliper" }
  greatest_diameter_at_bend = { reading = "46.2 mm", measured_with = "caliper" }
  bending                   = "cold"
  wrinkles                  = false
  joints                    = 0
  contains_fluid            = false
  welded_all_round          = true
  greatest_notch_gap        = "0.4 mm"
  deepest_dent              = "none"

  club "Saltmarsh Stage Rally Car Rules" { punch_marks = 1 }
}

# The half-hoops over the doors.

tube "2" {
  part                      = "lateral half-hoop"
  stock                     = "B"
  mandatory                 = true
  through                   = ["D left", "E left", "F left", "G left"]
  bend_radius               = "130 mm"
  die                       = "40"
  mirrored_as               = "3"
  wall                      = { reading = "2.08 mm", measured_with = "ultrasonic gauge" }
  least_diameter_at_bend    = { reading = "38.9 mm", measured_with = "caliper" }
  greatest_diameter_at_bend = { reading = "41.0 mm", measured_with = "caliper" }
  bending                   = "cold"
  wrinkles                  = false
  joints                    = 0
  contains_fluid            = false
  welded_all_round          = true
  greatest_notch_gap        = "0.6 mm"
  deepest_dent              = "none"

  club "Saltmarsh Stage Rally Car Rules" { punch_marks = 1 }
}

tube "3" {
  wall                      = { reading = "2.07 mm", measured_with = "ultrasonic gauge" }
  least_diameter_at_bend    = { reading = "38.8 mm", measured_with = "caliper" }
  greatest_diameter_at_bend = { reading = "41.1 mm", measured_with = "caliper" }
  bending                   = "cold"
  wrinkles                  = false
  joints                    = 0
  contains_fluid            = false
  welded_all_round          = true
  greatest_notch_gap        = "0.5 mm"
  deepest_dent              = "none"

  club "Saltmarsh Stage Rally Car Rules" { punch_marks = 1 }
}

tube "4" {
  part               = "transverse member"
  stock              = "B"
  mandatory          = true
  through            = ["H left", "H right"]
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.7 mm"
  deepest_dent       = "none"
  note               = "Over the windscreen."
}

# Backstays, steep for a short tail. What the joints say of their angle is too coarse to prove
# it; the right one was read with the angle gauge as well. It was ground when the boot floor
# was sealed, over a hand's length.

tube "5" {
  part               = "backstay"
  stock              = "B"
  mandatory          = true
  through            = ["G left", "K left"]
  mirrored_as        = "6"
  wall               = { reading = "2.08 mm", measured_with = "ultrasonic gauge" }
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.5 mm"
  deepest_dent       = "none"
}

tube "6" {
  wall = {
    readings      = ["1.86 mm", "1.89 mm"]
    measured_with = "ultrasonic gauge"
    note          = "where the flap disc went over it, 180 mm over the foot"
  }
  angle_to_vertical  = { reading = "30.6 deg", measured_with = "angle gauge" }
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
}

# The cross in the main hoop: four halves that meet on the harness bar, which goes through.

tube "7" {
  part               = "hoop diagonal"
  stock              = "B"
  mandatory          = true
  through            = ["G left", "X"]
  mirrored_as        = "8"
  wall               = { reading = "2.04 mm", measured_with = "ultrasonic gauge" }
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.8 mm"
  deepest_dent       = "none"
}

tube "8" {
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.7 mm"
  deepest_dent       = "none"
}

tube "9" {
  part      = "harness bar"
  stock     = "B"
  mandatory = true
  through   = ["T left", "T right"]
  outside   = { reading = "39.95 mm", measured_with = "caliper" }
  wall = {
    reading       = "2.03 mm"
    measured_with = "ultrasonic gauge"
    note          = "middle of the bar, between the wrapped straps"
  }
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.4 mm"
  deepest_dent       = "none"
  note               = "It was blasted before its wall was read."
}

# Door bars, crossed: 10 and 11 go through, the falling ones are cut and gusseted at the crossing.

tube "10" {
  part               = "door bar"
  stock              = "B"
  mandatory          = true
  through            = ["N left", "U left"]
  mirrored_as        = "11"
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
  note               = "Left, rising forward."
}

tube "11" {
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
  note               = "Right, rising forward."
}

tube "12" {
  part               = "door bar"
  stock              = "B"
  mandatory          = true
  through            = ["V left", "W left"]
  mirrored_as        = "13"
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
  note               = "Left, falling forward, front half."
}

tube "13" {
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
  note               = "Right, falling forward, front half."
}

tube "14" {
  part               = "door bar"
  stock              = "B"
  mandatory          = true
  through            = ["W left", "S left"]
  mirrored_as        = "15"
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.7 mm"
  deepest_dent       = "none"
  note               = "Left, falling forward, rear half."
}

tube "15" {
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.5 mm"
  deepest_dent       = "none"
  note               = "Right, falling forward, rear half."
}

# Beside the windscreen, left and right.

tube "16" {
  part                      = "windscreen pillar reinforcement"
  stock                     = "B"
  mandatory                 = true
  through                   = ["U left", "L left", "J left"]
  bend_radius               = "130 mm"
  die                       = "40"
  mirrored_as               = "17"
  least_diameter_at_bend    = { reading = "39.3 mm", measured_with = "caliper" }
  greatest_diameter_at_bend = { reading = "40.7 mm", measured_with = "caliper" }
  bending                   = "cold"
  wrinkles                  = false
  joints                    = 0
  contains_fluid            = false
  welded_all_round          = true
  greatest_notch_gap        = "0.7 mm"
  deepest_dent              = "none"
}

tube "17" {
  least_diameter_at_bend    = { reading = "39.2 mm", measured_with = "caliper" }
  greatest_diameter_at_bend = { reading = "40.7 mm", measured_with = "caliper" }
  bending                   = "cold"
  wrinkles                  = false
  joints                    = 0
  contains_fluid            = false
  welded_all_round          = true
  greatest_notch_gap        = "0.7 mm"
  deepest_dent              = "none"
}

# The roof: a V, its point forward.

tube "18" {
  part               = "roof diagonal"
  stock              = "B"
  mandatory          = true
  through            = ["R left", "M"]
  mirrored_as        = "19"
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.9 mm"
  deepest_dent       = "none"
}

tube "19" {
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.8 mm"
  deepest_dent       = "none"
}

# The lower halves of the cross in the hoop.

tube "20" {
  part               = "hoop diagonal"
  stock              = "B"
  mandatory          = true
  through            = ["X", "N left"]
  mirrored_as        = "21"
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
}

tube "21" {
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.8 mm"
  deepest_dent       = "none"
}

# The cross between the backstays: one goes through.

tube "22" {
  part               = "backstay diagonal"
  stock              = "B"
  mandatory          = true
  through            = ["P left", "Q right"]
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.5 mm"
  deepest_dent       = "none"
}

tube "23" {
  part               = "backstay diagonal"
  stock              = "B"
  mandatory          = true
  through            = ["P right", "Y"]
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
}

tube "24" {
  part               = "backstay diagonal"
  stock              = "B"
  mandatory          = true
  through            = ["Y", "Q left"]
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.7 mm"
  deepest_dent       = "none"
}

# Not asked for by the rules.

tube "25" {
  part               = "dash bar"
  stock              = "C"
  mandatory          = false
  through            = ["AA left", "AA right"]
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.5 mm"
  deepest_dent       = { reading = "0.3 mm", note = "from fitting the heater" }
}

tube "26" {
  part               = "sill bar"
  stock              = "B"
  mandatory          = false
  through            = ["D left", "A left"]
  mirrored_as        = "27"
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.5 mm"
  deepest_dent       = "none"
}

tube "27" {
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
}

tube "28" {
  part               = "door bar support"
  stock              = "C"
  mandatory          = false
  through            = ["Z left", "W left"]
  mirrored_as        = "29"
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.4 mm"
  deepest_dent       = "none"
}

tube "29" {
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
}

tube "30" {
  part               = "front strut brace"
  stock              = "C"
  mandatory          = false
  through            = ["AA left", "AB left"]
  mirrored_as        = "31"
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.7 mm"
  deepest_dent       = "none"
}

tube "31" {
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.8 mm"
  deepest_dent       = "none"
}

tube "32" {
  part               = "rear strut brace"
  stock              = "C"
  mandatory          = false
  through            = ["Q left", "AC left"]
  mirrored_as        = "33"
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
}

tube "33" {
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
}

tube "34" {
  part               = "rear strut brace"
  stock              = "C"
  mandatory          = false
  through            = ["AC left", "AC right"]
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.4 mm"
  deepest_dent       = "none"
}

tube "35" {
  part               = "corner brace"
  stock              = "C"
  mandatory          = false
  through            = ["AD left", "AE left"]
  mirrored_as        = "36"
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.8 mm"
  deepest_dent       = "none"
}

tube "36" {
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.9 mm"
  deepest_dent       = "none"
}
