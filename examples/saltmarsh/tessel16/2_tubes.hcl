# Tube: four deliveries, and where each length went. Numbers as on the drawing that was
# deposited with the club.

tube_stock "A" {
  ordered            = "45 x 2.5 mm"
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
  note                   = "Rest of an older delivery; used for the dash bar only."

  evidence "material certificate" {
    file  = "papers/tube-C-certificate.txt"
    dated = "2025-09-11"
  }
}

# The main hoop, bent from one length.

tube "1" {
  part      = "main hoop"
  stock     = "A"
  mandatory = true
  wall = {
    readings      = ["2.57 mm", "2.56 mm"]
    measured_with = "ultrasonic gauge"
    note          = "outer side of the upper left bend, and its leg"
  }
  bends                     = 4
  straight                  = false
  bend_radius               = "150 mm"
  greatest_bend_angle       = "88 deg"
  least_diameter_at_bend    = { reading = "43.6 mm", measured_with = "caliper" }
  greatest_diameter_at_bend = { reading = "46.2 mm", measured_with = "caliper" }
  bending                   = "cold"
  wrinkles                  = false
  joints                    = 0
  contains_fluid            = false
  welded_all_round          = true
  greatest_notch_gap        = "0.4 mm"
  deepest_dent              = "none"
  helmet_distance           = "170 mm"

  club "Saltmarsh Stage Rally Car Rules" { punch_marks = 1 }
}

# The half-hoops over the doors.

tube "2" {
  part                      = "lateral half-hoop"
  stock                     = "B"
  mandatory                 = true
  wall                      = { reading = "2.08 mm", measured_with = "ultrasonic gauge" }
  bends                     = 2
  straight                  = false
  bend_radius               = "130 mm"
  greatest_bend_angle       = "62 deg"
  least_diameter_at_bend    = { reading = "38.9 mm", measured_with = "caliper" }
  greatest_diameter_at_bend = { reading = "41.0 mm", measured_with = "caliper" }
  bending                   = "cold"
  wrinkles                  = false
  joints                    = 0
  contains_fluid            = false
  welded_all_round          = true
  greatest_notch_gap        = "0.6 mm"
  deepest_dent              = "none"
  helmet_distance           = "150 mm"

  club "Saltmarsh Stage Rally Car Rules" { punch_marks = 1 }
}

tube "3" {
  part                      = "lateral half-hoop"
  stock                     = "B"
  mandatory                 = true
  wall                      = { reading = "2.07 mm", measured_with = "ultrasonic gauge" }
  bends                     = 2
  straight                  = false
  bend_radius               = "130 mm"
  greatest_bend_angle       = "62 deg"
  least_diameter_at_bend    = { reading = "38.8 mm", measured_with = "caliper" }
  greatest_diameter_at_bend = { reading = "41.1 mm", measured_with = "caliper" }
  bending                   = "cold"
  wrinkles                  = false
  joints                    = 0
  contains_fluid            = false
  welded_all_round          = true
  greatest_notch_gap        = "0.5 mm"
  deepest_dent              = "none"
  helmet_distance           = "155 mm"

  club "Saltmarsh Stage Rally Car Rules" { punch_marks = 1 }
}

tube "4" {
  part               = "transverse member"
  stock              = "B"
  mandatory          = true
  bends              = 0
  straight           = true
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.7 mm"
  deepest_dent       = "none"
  helmet_distance    = "410 mm"
  note               = "Over the windscreen."
}

# Backstays. The left one is as it was welded in. The right one was ground when the boot
# floor was sealed, over a hand's length.

tube "5" {
  part               = "backstay"
  stock              = "B"
  mandatory          = true
  wall               = { reading = "2.08 mm", measured_with = "ultrasonic gauge" }
  bends              = 0
  straight           = true
  joints             = 0
  contains_fluid     = false
  angle_to_vertical  = { reading = "38.0 deg", measured_with = "angle gauge" }
  upper_end_offset   = "35 mm"
  lower_end_offset   = "20 mm"
  welded_all_round   = true
  greatest_notch_gap = "0.5 mm"
  deepest_dent       = "none"
  helmet_distance    = "480 mm"
}

tube "6" {
  part      = "backstay"
  stock     = "B"
  mandatory = true
  wall = {
    readings      = ["1.86 mm", "1.89 mm"]
    measured_with = "ultrasonic gauge"
    note          = "where the flap disc went over it, 180 mm over the foot"
  }
  bends              = 0
  straight           = true
  joints             = 0
  contains_fluid     = false
  angle_to_vertical  = { reading = "37.5 deg", measured_with = "angle gauge" }
  upper_end_offset   = "40 mm"
  lower_end_offset   = "20 mm"
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
  helmet_distance    = "470 mm"
}

# Diagonals.

tube "7" {
  part               = "hoop diagonal"
  stock              = "B"
  mandatory          = true
  wall               = { reading = "2.04 mm", measured_with = "ultrasonic gauge" }
  bends              = 0
  straight           = true
  joints             = 0
  contains_fluid     = false
  upper_end_offset   = "45 mm"
  lower_end_offset   = "60 mm"
  welded_all_round   = true
  greatest_notch_gap = "0.8 mm"
  deepest_dent       = "none"
  helmet_distance    = "240 mm"
}

tube "8" {
  part               = "backstay diagonal"
  stock              = "B"
  mandatory          = true
  bends              = 0
  straight           = true
  joints             = 0
  contains_fluid     = false
  upper_end_offset   = "50 mm"
  lower_end_offset   = "55 mm"
  welded_all_round   = true
  greatest_notch_gap = "0.5 mm"
  deepest_dent       = "none"
  helmet_distance    = "690 mm"
}

# The harness bar. It was blasted before its wall was read.

tube "9" {
  part      = "harness bar"
  stock     = "B"
  mandatory = true
  outside   = { reading = "39.95 mm", measured_with = "caliper" }
  wall = {
    reading       = "2.03 mm"
    measured_with = "ultrasonic gauge"
    note          = "middle of the bar, between the wrapped straps"
  }
  bends              = 0
  straight           = true
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.4 mm"
  deepest_dent       = "none"
  helmet_distance    = "310 mm"
}

# Door bars, crossed, left and right.

tube "10" {
  part               = "door bar"
  stock              = "B"
  mandatory          = true
  bends              = 0
  straight           = true
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
  helmet_distance    = "520 mm"
  note               = "Left, rising forward."
}

tube "11" {
  part               = "door bar"
  stock              = "B"
  mandatory          = true
  bends              = 0
  straight           = true
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
  helmet_distance    = "610 mm"
  note               = "Left, falling forward, cut and gusseted at the crossing."
}

tube "12" {
  part               = "door bar"
  stock              = "B"
  mandatory          = true
  bends              = 0
  straight           = true
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
  helmet_distance    = "520 mm"
  note               = "Right, rising forward."
}

tube "13" {
  part               = "door bar"
  stock              = "B"
  mandatory          = true
  bends              = 0
  straight           = true
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.6 mm"
  deepest_dent       = "none"
  helmet_distance    = "600 mm"
  note               = "Right, falling forward, cut and gusseted at the crossing."
}

# Beside the windscreen, left and right.

tube "14" {
  part                      = "windscreen pillar reinforcement"
  stock                     = "B"
  mandatory                 = true
  bends                     = 1
  straight                  = false
  bend_radius               = "140 mm"
  greatest_bend_angle       = "17 deg"
  least_diameter_at_bend    = { reading = "39.3 mm", measured_with = "caliper" }
  greatest_diameter_at_bend = { reading = "40.7 mm", measured_with = "caliper" }
  bending                   = "cold"
  wrinkles                  = false
  joints                    = 0
  contains_fluid            = false
  welded_all_round          = true
  greatest_notch_gap        = "0.7 mm"
  deepest_dent              = "none"
  helmet_distance           = "450 mm"
}

tube "15" {
  part                      = "windscreen pillar reinforcement"
  stock                     = "B"
  mandatory                 = true
  bends                     = 1
  straight                  = false
  bend_radius               = "140 mm"
  greatest_bend_angle       = "17 deg"
  least_diameter_at_bend    = { reading = "39.2 mm", measured_with = "caliper" }
  greatest_diameter_at_bend = { reading = "40.7 mm", measured_with = "caliper" }
  bending                   = "cold"
  wrinkles                  = false
  joints                    = 0
  contains_fluid            = false
  welded_all_round          = true
  greatest_notch_gap        = "0.7 mm"
  deepest_dent              = "none"
  helmet_distance           = "450 mm"
}

# The roof: a V, its point forward.

tube "16" {
  part               = "roof diagonal"
  stock              = "B"
  mandatory          = true
  bends              = 0
  straight           = true
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.9 mm"
  deepest_dent       = "none"
  helmet_distance    = "215 mm"
}

tube "17" {
  part               = "roof diagonal"
  stock              = "B"
  mandatory          = true
  bends              = 0
  straight           = true
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.8 mm"
  deepest_dent       = "none"
  helmet_distance    = "220 mm"
}

# Not asked for by the rules.

tube "18" {
  part               = "dash bar"
  stock              = "C"
  mandatory          = false
  bends              = 0
  straight           = true
  joints             = 0
  contains_fluid     = false
  welded_all_round   = true
  greatest_notch_gap = "0.5 mm"
  deepest_dent       = { reading = "0.3 mm", note = "from fitting the heater" }
  helmet_distance    = "720 mm"
}
