# Tessel 16, an invented car, built by the invented Oystergate Works for the Saltmarsh
# season of 2027. Everything that was measured stands here; how it was measured, beside it.

car "Tessel 16" {
  chassis          = "TS-0417"
  class            = "two-wheel drive open"
  model            = "Tessel 16 two-door, 2011"
  first_registered = "2011-05-19"
  first_logbook    = "2027-01-22"
  logbook_number   = "SM 0388"

  road_registration  = "WK 16 TSL"
  homologation_form  = "none"
  homologation_ended = "none"

  seat_count    = 2
  driven_wheels = "rear"
  driver_side   = "left"
  overall_width = "1688 mm"
  ground_clearance = {
    readings      = ["168 mm", "165 mm"]
    measured_with = "steel rule"
    note          = "under the engine guard, then under the fuel cell"
  }

  weighed_mass                = { reading = "1148 kg", measured_with = "corner scales" }
  weighed_on                  = "2027-02-27"
  fuel_when_weighed           = "24 l"
  fuel_mass_when_weighed      = "18 kg"
  spares_when_weighed         = { reading = "42 kg +/- 0.5 kg", note = "two spare wheels, jack, brace and tool roll" }
  spare_wheels_when_weighed   = 2
  crew_when_weighed           = "0 kg"
  crew_equipment_when_weighed = "0 kg"
  front_axle_mass             = { reading = "612 kg", measured_with = "corner scales" }
  declared_mass               = "1090 kg"

  evidence "log book" {
    file  = "papers/log-book.txt"
    dated = "2027-01-22"

    valid_until = "2028-07-22" # the registrar renews it every 18 months
  }
  evidence "visit slip" {
    file  = "papers/visit-slip.txt"
    dated = "2026-11-14"
  }
  evidence "dispensation" {
    file  = "papers/mud-flap-dispensation.txt"
    dated = "2027-03-08"
  }
  evidence "rescue card" { file = "papers/rescue-card.txt" }

  note = <<-NOTE
    First event: Samphire Stages, 14 March 2027.
    The right backstay was dressed when the boot floor was seam-sealed; see tube 6.
  NOTE
}

engine {
  capacity                = "1998 cc"
  induction               = "natural"
  fuel                    = "petrol"
  number                  = "TQ20-118842"
  throttle_return_springs = 2
}

club "Saltmarsh Stage Rally Car Rules" {
  drawing_deposited = "2026-08-17"
  shell_visit       = "2026-11-14"
  throw_line_length = "18 m"
  rescue_card       = true
}

body {
  structure                  = "steel shell"
  seam_welded                = true
  structure_was_cut          = true
  deepest_corrosion          = { reading = "0.2 mm", note = "left rear inner sill, dressed and primed" }
  roof_material              = "steel"
  roof_opening_closed        = "none"
  door_trim_material         = "aluminium alloy"
  door_trim_thickness        = "0.7 mm"
  doors_open_from_both_sides = true
  bonnet_fasteners           = 2
  boot_fasteners             = 2
  original_catches_disabled  = true
  roof_vent_height           = "62 mm"
}

structure_cut "well for the fuel cell" {
  member       = "floor"
  area         = "1850 cm2"
  made_good    = true
  permitted_by = "Log book, page 4"
}

instrument "micrometer" {
  tolerance = "0.01 mm"
  note      = "outside and ball-end, set on gauge blocks in January 2027"
}

instrument "ultrasonic gauge" {
  tolerance = "0.05 mm"
  note      = "zeroed on a step block of the same steel, coupling gel, bare metal"
}

instrument "caliper" { tolerance = "0.05 mm" }

instrument "steel rule" { tolerance = "0.5 mm" }

instrument "angle gauge" { tolerance = "0.5 deg" }

instrument "corner scales" {
  tolerance = "2 kg"
  note      = "hired from the club, sealed until 2027-11"
}

instrument "bench scale" { tolerance = "0.01 kg" }

# Known not to be on the car. What is in no list and has no block was never written down.
not_fitted = ["ballast", "cage_joint", "fuel_tank", "window_net", "restrictor", "seal"]
