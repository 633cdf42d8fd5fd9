# Seats and harnesses, strap by strap.

seat "driver" {
  standard            = "FIA 8862-2009"
  model               = "Thwart Thole R"
  homologation_number = "XCS 901 21"
  serial              = "TT-21-0562"
  label_kind          = "year only"
  made                = "2021"
  not_after           = "none"
  extended_until      = "none"
  shell_material      = "composite"
  damaged             = false
  cushion_thickness   = "35 mm"
  harness_openings    = 6
  head_support        = true
  head_support_gap    = "35 mm"
  back_angle          = { reading = "18 deg", measured_with = "angle gauge" }

  distance_to_steering_wheel = "410 mm"

  reference = ["-1310 mm", "370 mm", "335 mm"]
  tolerance = "5 mm"

  evidence "label photo" { file = "papers/seat-labels.txt" }

  seat_mount "front left" {
    fixed_to               = "cross tube"
    support_material       = "steel"
    support_thickness      = { reading = "3.05 mm", measured_with = "caliper" }
    support_length         = "380 mm"
    bolt_diameter          = "8 mm"
    bolt_grade             = "8.8"
    seat_bolt_diameter     = "8 mm"
    counterplate_area      = "none"
    counterplate_thickness = "none"
    bush_diameter          = "16 mm"
    tube_size              = "38.1 x 2.55 mm"
    quick_release          = false
  }

  seat_mount "front right" {
    fixed_to               = "cross tube"
    support_material       = "steel"
    support_thickness      = { reading = "3.05 mm", measured_with = "caliper" }
    support_length         = "380 mm"
    bolt_diameter          = "8 mm"
    bolt_grade             = "8.8"
    seat_bolt_diameter     = "8 mm"
    counterplate_area      = "none"
    counterplate_thickness = "none"
    bush_diameter          = "16 mm"
    tube_size              = "38.1 x 2.55 mm"
    quick_release          = false
  }

  seat_mount "rear left" {
    fixed_to               = "cross tube"
    support_material       = "steel"
    support_thickness      = { reading = "3.05 mm", measured_with = "caliper" }
    support_length         = "380 mm"
    bolt_diameter          = "8 mm"
    bolt_grade             = "8.8"
    seat_bolt_diameter     = "8 mm"
    counterplate_area      = "none"
    counterplate_thickness = "none"
    bush_diameter          = "16 mm"
    tube_size              = "38.1 x 2.55 mm"
    quick_release          = false
  }

  seat_mount "rear right" {
    fixed_to               = "cross tube"
    support_material       = "steel"
    support_thickness      = { reading = "3.05 mm", measured_with = "caliper" }
    support_length         = "380 mm"
    bolt_diameter          = "8 mm"
    bolt_grade             = "8.8"
    seat_bolt_diameter     = "8 mm"
    counterplate_area      = "none"
    counterplate_thickness = "none"
    bush_diameter          = "16 mm"
    tube_size              = "38.1 x 2.55 mm"
    quick_release          = false
  }
}

seat "co-driver" {
  standard            = "FIA 8855-1999"
  model               = "Thwart Bilge"
  homologation_number = "XCS 477 19"
  serial              = "TB-23-1190"
  label_kind          = "month and year"
  made                = "2023-06"
  not_after           = "none"
  extended_until      = "none"
  shell_material      = "composite"
  damaged             = false
  cushion_thickness   = "40 mm"
  harness_openings    = 6
  head_support        = true
  head_support_gap    = "45 mm"
  back_angle          = { reading = "20 deg", measured_with = "angle gauge" }

  distance_to_steering_wheel = "none"

  reference = ["-1310 mm", "-370 mm", "335 mm"]
  tolerance = "5 mm"

  evidence "label photo" { file = "papers/seat-labels.txt" }

  seat_mount "front left" {
    fixed_to               = "cross tube"
    support_material       = "steel"
    support_thickness      = { reading = "3.05 mm", measured_with = "caliper" }
    support_length         = "380 mm"
    bolt_diameter          = "8 mm"
    bolt_grade             = "8.8"
    seat_bolt_diameter     = "8 mm"
    counterplate_area      = "none"
    counterplate_thickness = "none"
    bush_diameter          = "16 mm"
    tube_size              = "38.1 x 2.55 mm"
    quick_release          = false
  }

  seat_mount "front right" {
    fixed_to               = "cross tube"
    support_material       = "steel"
    support_thickness      = { reading = "3.05 mm", measured_with = "caliper" }
    support_length         = "380 mm"
    bolt_diameter          = "8 mm"
    bolt_grade             = "8.8"
    seat_bolt_diameter     = "8 mm"
    counterplate_area      = "none"
    counterplate_thickness = "none"
    bush_diameter          = "16 mm"
    tube_size              = "38.1 x 2.55 mm"
    quick_release          = false
  }

  seat_mount "rear left" {
    fixed_to               = "cross tube"
    support_material       = "steel"
    support_thickness      = { reading = "3.05 mm", measured_with = "caliper" }
    support_length         = "380 mm"
    bolt_diameter          = "8 mm"
    bolt_grade             = "8.8"
    seat_bolt_diameter     = "8 mm"
    counterplate_area      = "none"
    counterplate_thickness = "none"
    bush_diameter          = "16 mm"
    tube_size              = "38.1 x 2.55 mm"
    quick_release          = false
  }

  seat_mount "rear right" {
    fixed_to               = "cross tube"
    support_material       = "steel"
    support_thickness      = { reading = "3.05 mm", measured_with = "caliper" }
    support_length         = "380 mm"
    bolt_diameter          = "6 mm"
    bolt_grade             = "8.8"
    seat_bolt_diameter     = "8 mm"
    counterplate_area      = "none"
    counterplate_thickness = "none"
    bush_diameter          = "16 mm"
    tube_size              = "38.1 x 2.55 mm"
    quick_release          = false
    note                   = "Bolt from the trim kit; the box of M8 was empty."
  }
}

harness "driver" {
  standard            = "FIA 8853-2016"
  model               = "Bowline Six"
  homologation_number = "XHA 441 22"
  seat                = "driver"
  points              = 6
  buckle              = "rotary"
  for_head_restraint  = true
  in_accident         = false

  shoulder_distance_behind_seat = "230 mm"

  evidence "label photo" { file = "papers/harness-labels.txt" }

  strap "left shoulder" {
    serial     = "BS24-0731-1"
    label_kind = "not valid after"
    made       = "none"
    not_after  = "2029"
    width      = "51 mm"
    damaged    = false

    leaves_body = ["-1545 mm", "436 mm", "956 mm"]
    anchor_at   = ["-1810 mm", "475 mm", "904 mm"]
    tolerance   = "5 mm"

    anchorage {
      fixed_to        = "harness bar"
      attached_by     = "wrapped"
      bolt_diameter   = "none"
      bolt_grade      = "none"
      plate_area      = "none"
      plate_thickness = "none"
      tab_thickness   = "none"
      pulls_in_line   = true
    }
  }

  strap "right shoulder" {
    serial     = "BS24-0731-2"
    label_kind = "not valid after"
    made       = "none"
    not_after  = "2029"
    width      = "51 mm"
    damaged    = false

    leaves_body = ["-1545 mm", "304 mm", "956 mm"]
    anchor_at   = ["-1810 mm", "265 mm", "904 mm"]
    tolerance   = "5 mm"

    anchorage {
      fixed_to        = "harness bar"
      attached_by     = "wrapped"
      bolt_diameter   = "none"
      bolt_grade      = "none"
      plate_area      = "none"
      plate_thickness = "none"
      tab_thickness   = "none"
      pulls_in_line   = true
    }
  }

  strap "left lap" {
    serial              = "BS24-0731-3"
    label_kind          = "not valid after"
    made                = "none"
    not_after           = "2029"
    width               = "51 mm"
    damaged             = false
    angle_to_horizontal = { reading = "62 deg", measured_with = "angle gauge" }
    sideways_angle      = { reading = "12 deg", measured_with = "angle gauge" }

    anchorage {
      fixed_to        = "shell"
      attached_by     = "bolted plate"
      bolt_diameter   = "7/16 in"
      bolt_grade      = "SAE grade 8"
      plate_area      = "48 cm2"
      plate_thickness = "3.1 mm"
      tab_thickness   = "none"
      pulls_in_line   = true
    }
  }

  strap "right lap" {
    serial              = "BS24-0731-4"
    label_kind          = "not valid after"
    made                = "none"
    not_after           = "2029"
    width               = "51 mm"
    damaged             = false
    angle_to_horizontal = { reading = "62 deg", measured_with = "angle gauge" }
    sideways_angle      = { reading = "12 deg", measured_with = "angle gauge" }

    anchorage {
      fixed_to        = "shell"
      attached_by     = "bolted plate"
      bolt_diameter   = "7/16 in"
      bolt_grade      = "SAE grade 8"
      plate_area      = "48 cm2"
      plate_thickness = "3.1 mm"
      tab_thickness   = "none"
      pulls_in_line   = true
    }
  }

  strap "left crotch" {
    serial              = "BS22-1164-5" # from an older set: the one of this set was cut short
    label_kind          = "not valid after"
    made                = "none"
    not_after           = "2027"
    width               = "45 mm"
    damaged             = false
    angle_to_horizontal = { reading = "78 deg", measured_with = "angle gauge" }
    sideways_angle      = { reading = "9 deg", measured_with = "angle gauge" }

    anchorage {
      fixed_to        = "shell"
      attached_by     = "eyebolt"
      bolt_diameter   = "12 mm"
      bolt_grade      = "8.8"
      plate_area      = "45 cm2"
      plate_thickness = "3.1 mm"
      tab_thickness   = "none"
      pulls_in_line   = true
    }
  }

  strap "right crotch" {
    serial              = "BS24-0731-6"
    label_kind          = "not valid after"
    made                = "none"
    not_after           = "2029"
    width               = "45 mm"
    damaged             = false
    angle_to_horizontal = { reading = "78 deg", measured_with = "angle gauge" }
    sideways_angle      = { reading = "9 deg", measured_with = "angle gauge" }

    anchorage {
      fixed_to        = "shell"
      attached_by     = "eyebolt"
      bolt_diameter   = "12 mm"
      bolt_grade      = "8.8"
      plate_area      = "45 cm2"
      plate_thickness = "3.1 mm"
      tab_thickness   = "none"
      pulls_in_line   = true
    }
  }
}

harness "co-driver" {
  standard            = "FIA 8853-2016"
  model               = "Bowline Six"
  homologation_number = "XHA 441 22"
  seat                = "co-driver"
  points              = 6
  buckle              = "rotary"
  for_head_restraint  = true
  in_accident         = false

  shoulder_distance_behind_seat = "230 mm"

  evidence "label photo" { file = "papers/harness-labels.txt" }

  strap "left shoulder" {
    serial              = "BS24-0732-1"
    label_kind          = "not valid after"
    made                = "none"
    not_after           = "2029"
    width               = "51 mm"
    damaged             = false
    angle_to_horizontal = { reading = "13 deg", measured_with = "angle gauge" }
    sideways_angle      = { reading = "8 deg", measured_with = "angle gauge" }

    leaves_body = ["-1545 mm", "-304 mm", "966 mm"]
    anchor_at   = ["-1810 mm", "-265 mm", "904 mm"]
    tolerance   = "5 mm"

    anchorage {
      fixed_to        = "harness bar"
      attached_by     = "wrapped"
      bolt_diameter   = "none"
      bolt_grade      = "none"
      plate_area      = "none"
      plate_thickness = "none"
      tab_thickness   = "none"
      pulls_in_line   = true
    }
  }

  strap "right shoulder" {
    serial              = "BS24-0732-2"
    label_kind          = "not valid after"
    made                = "none"
    not_after           = "2029"
    width               = "51 mm"
    damaged             = false
    angle_to_horizontal = { reading = "13 deg", measured_with = "angle gauge" }
    sideways_angle      = { reading = "8 deg", measured_with = "angle gauge" }

    leaves_body = ["-1545 mm", "-436 mm", "966 mm"]
    anchor_at   = ["-1810 mm", "-475 mm", "904 mm"]
    tolerance   = "5 mm"

    anchorage {
      fixed_to        = "harness bar"
      attached_by     = "wrapped"
      bolt_diameter   = "none"
      bolt_grade      = "none"
      plate_area      = "none"
      plate_thickness = "none"
      tab_thickness   = "none"
      pulls_in_line   = true
    }
  }

  strap "left lap" {
    serial              = "BS24-0732-3"
    label_kind          = "not valid after"
    made                = "none"
    not_after           = "2029"
    width               = "51 mm"
    damaged             = false
    angle_to_horizontal = { reading = "60 deg", measured_with = "angle gauge" }
    sideways_angle      = { reading = "12 deg", measured_with = "angle gauge" }

    anchorage {
      fixed_to        = "shell"
      attached_by     = "bolted plate"
      bolt_diameter   = "7/16 in"
      bolt_grade      = "SAE grade 8"
      plate_area      = "48 cm2"
      plate_thickness = "3.1 mm"
      tab_thickness   = "none"
      pulls_in_line   = true
    }
  }

  strap "right lap" {
    serial              = "BS21-2207-4"
    label_kind          = "not valid after"
    made                = "none"
    not_after           = "2026"
    width               = "51 mm"
    damaged             = false
    angle_to_horizontal = { reading = "60 deg", measured_with = "angle gauge" }
    sideways_angle      = { reading = "12 deg", measured_with = "angle gauge" }
    note                = "Came from the spares box in February; the set's own one was cut on a seat rail."

    anchorage {
      fixed_to        = "shell"
      attached_by     = "bolted plate"
      bolt_diameter   = "7/16 in"
      bolt_grade      = "SAE grade 8"
      plate_area      = "48 cm2"
      plate_thickness = "3.1 mm"
      tab_thickness   = "none"
      pulls_in_line   = true
    }
  }

  strap "left crotch" {
    serial              = "BS24-0732-5"
    label_kind          = "not valid after"
    made                = "none"
    not_after           = "2029"
    width               = "45 mm"
    damaged             = false
    angle_to_horizontal = { reading = "78 deg", measured_with = "angle gauge" }
    sideways_angle      = { reading = "9 deg", measured_with = "angle gauge" }

    anchorage {
      fixed_to        = "shell"
      attached_by     = "eyebolt"
      bolt_diameter   = "12 mm"
      bolt_grade      = "8.8"
      plate_area      = "45 cm2"
      plate_thickness = "3.1 mm"
      tab_thickness   = "none"
      pulls_in_line   = true
    }
  }

  strap "right crotch" {
    serial              = "BS24-0732-6"
    label_kind          = "not valid after"
    made                = "none"
    not_after           = "2029"
    width               = "45 mm"
    damaged             = false
    angle_to_horizontal = { reading = "78 deg", measured_with = "angle gauge" }
    sideways_angle      = { reading = "9 deg", measured_with = "angle gauge" }

    anchorage {
      fixed_to        = "shell"
      attached_by     = "eyebolt"
      bolt_diameter   = "12 mm"
      bolt_grade      = "8.8"
      plate_area      = "45 cm2"
      plate_thickness = "3.1 mm"
      tab_thickness   = "none"
      pulls_in_line   = true
    }
  }
}
