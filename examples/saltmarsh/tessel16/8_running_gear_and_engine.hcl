# Brakes, steering, wheels, engine bay and exhaust.

brakes {
  circuits            = 2
  circuits_divided    = "front and rear"
  hydraulic_handbrake = true
  parking_brake_holds = true
  fluid_changed       = "2027-02-20"
  fluid_boiling_point = "268 degC"

  bias_adjustable_from_seat = true
}

brake_disc "front left" {
  thickness       = { reading = "24.6 mm", measured_with = "micrometer" }
  least_thickness = "23.0 mm"
  diameter        = "295 mm"
  cracked         = false
}

brake_disc "front right" {
  thickness       = { reading = "24.5 mm", measured_with = "micrometer" }
  least_thickness = "23.0 mm"
  diameter        = "295 mm"
  cracked         = false
}

brake_disc "rear left" {
  thickness       = { reading = "9.4 mm", measured_with = "micrometer" }
  least_thickness = "8.4 mm"
  diameter        = "265 mm"
  cracked         = false
}

brake_disc "rear right" {
  thickness       = { reading = "9.3 mm", measured_with = "micrometer" }
  least_thickness = "8.4 mm"
  diameter        = "265 mm"
  cracked         = false
}

steering {
  column_lock_removed  = true
  quick_release        = true
  quick_release_yellow = true
  wheel_diameter       = "350 mm"
  rim_closed           = true
  free_play            = "12 mm"
  column_collapses     = true
}

wheel "front left" {
  diameter          = "15 in"
  width             = "6 in"
  material          = "aluminium alloy"
  mass              = "18.6 kg"
  studs             = 4
  thread_engagement = "21 mm"
  nut_torque        = "110 N.m"
  spacer_thickness  = "none"

  tyre {
    standard      = "listed competition tyre"
    size          = "185/65 R15"
    date_code     = "3326"
    made          = "2026-08"
    tread_depth   = "6.8 mm"
    section_width = "188 mm"
    pressure      = "1.9 bar"
    hand_cut      = false
    studs         = "none"
    damaged       = false
  }
}

wheel "front right" {
  diameter          = "15 in"
  width             = "6 in"
  material          = "aluminium alloy"
  mass              = "18.6 kg"
  studs             = 4
  thread_engagement = "21 mm"
  nut_torque        = "110 N.m"
  spacer_thickness  = "none"

  tyre {
    standard      = "listed competition tyre"
    size          = "185/65 R15"
    date_code     = "3326"
    made          = "2026-08"
    tread_depth   = "6.7 mm"
    section_width = "188 mm"
    pressure      = "1.9 bar"
    hand_cut      = false
    studs         = "none"
    damaged       = false
  }
}

wheel "rear left" {
  diameter          = "15 in"
  width             = "6 in"
  material          = "aluminium alloy"
  mass              = "18.6 kg"
  studs             = 4
  thread_engagement = "22 mm"
  nut_torque        = "110 N.m"
  spacer_thickness  = "none"

  tyre {
    standard      = "listed competition tyre"
    size          = "185/65 R15"
    date_code     = "3326"
    made          = "2026-08"
    tread_depth   = "6.1 mm"
    section_width = "188 mm"
    pressure      = "1.9 bar"
    hand_cut      = false
    studs         = "none"
    damaged       = false
  }
}

wheel "rear right" {
  diameter          = "15 in"
  width             = "6 in"
  material          = "aluminium alloy"
  mass              = "18.6 kg"
  studs             = 4
  thread_engagement = "22 mm"
  nut_torque        = "110 N.m"
  spacer_thickness  = "none"

  tyre {
    standard      = "listed competition tyre"
    size          = "185/65 R15"
    date_code     = "3326"
    made          = "2026-08"
    tread_depth   = "6.2 mm"
    section_width = "188 mm"
    pressure      = "1.9 bar"
    hand_cut      = false
    studs         = "none"
    damaged       = false
  }
}

wheel "spare" {
  diameter         = "15 in"
  width            = "6 in"
  material         = "aluminium alloy"
  mass             = "18.6 kg"
  studs            = 4
  spacer_thickness = "none"

  tyre {
    standard      = "listed competition tyre"
    size          = "185/65 R15"
    date_code     = "4625"
    made          = "2025-11"
    tread_depth   = "7.0 mm"
    section_width = "188 mm"
    pressure      = "1.9 bar"
    hand_cut      = false
    studs         = "none"
    damaged       = false
  }
}

wheel "second spare" {
  diameter         = "15 in"
  width            = "6 in"
  material         = "aluminium alloy"
  mass             = "18.6 kg"
  studs            = 4
  spacer_thickness = "none"

  tyre {
    standard      = "listed competition tyre"
    size          = "185/65 R15"
    date_code     = "4625"
    made          = "2025-11"
    tread_depth   = "7.0 mm"
    section_width = "188 mm"
    pressure      = "1.9 bar"
    hand_cut      = false
    studs         = "none"
    damaged       = false
  }
}

spare_carrier {
  place    = "luggage area"
  fixed_by = "stud and plate"
  fixings  = 4
}

catch_tank {
  capacity      = "2.5 l"
  level_visible = true
  material      = "aluminium alloy"
}

shaft_guard "front of the shaft" {
  material       = "steel"
  thickness      = "6 mm"
  width          = "40 mm"
  goes_all_round = true
}

# The sound level meter is at the maker's until the week before the event.
exhaust {
  outlet            = "rear"
  outlet_height     = "285 mm"
  outlet_protrusion = "-15 mm"
  catalyst          = true
  shielded          = true
}
