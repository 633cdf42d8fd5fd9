# Fuel cell, lines and walls, and what puts a fire out.

fuel_cell {
  standard            = "FIA FT3-1999"
  maker               = "Cistern & Sons"
  homologation_number = "XFT 118"
  serial              = "118-23-0094"
  made                = "2023-05"
  not_after           = "none"
  recertified         = "none"
  recertified_until   = "none"
  foam                = true
  foam_renewed        = "none"
  container_material  = "aluminium alloy"
  container_thickness = { reading = "2.0 mm", measured_with = "caliper" }
  capacity            = "45 l"
  straps              = 2
  distance_to_rear    = "310 mm"
  filler_shuts_itself = true

  evidence "label photo" { file = "papers/fuel-cell-plate.txt" }
}

tank_compartment {
  sealed_from_cockpit = true
  drained             = true
  drain_diameter      = "25 mm"
  ventilated          = true
}

fuel_pump "main" {
  place             = "tank compartment"
  stops_with_engine = true
  working_pressure  = "3.5 bar"
  ready_to_connect  = true
}

fuel_pump "standby" {
  place             = "tank compartment"
  stops_with_engine = true
  working_pressure  = "3.5 bar"
  ready_to_connect  = true
}

vent "cell" {
  outlet                  = "under the floor"
  rollover_valve          = true
  distance_behind_cockpit = "640 mm"
  bore                    = "10 mm"
}

line "fuel feed" {
  fluid                  = "fuel"
  runs_through           = "cockpit"
  form                   = "metal-braided hose"
  working_pressure       = "3.5 bar"
  burst_pressure         = "210 bar"
  rated_temperature      = "150 degC"
  joints_in_cockpit      = 0
  screwed_joints         = true
  protected              = true
  greatest_clip_distance = "250 mm"
  end_of_life            = "2031-06"
}

line "fuel return" {
  fluid                  = "fuel return"
  runs_through           = "cockpit"
  form                   = "metal-braided hose"
  working_pressure       = "1 bar"
  burst_pressure         = "210 bar"
  rated_temperature      = "150 degC"
  joints_in_cockpit      = 0
  screwed_joints         = true
  protected              = true
  greatest_clip_distance = "250 mm"
  end_of_life            = "2031-06"
}

line "brake front to rear" {
  fluid                  = "brake fluid"
  runs_through           = "cockpit"
  form                   = "metal pipe"
  working_pressure       = "120 bar"
  burst_pressure         = "900 bar"
  rated_temperature      = "180 degC"
  joints_in_cockpit      = 2
  screwed_joints         = true
  protected              = true
  greatest_clip_distance = "200 mm"
  end_of_life            = "none"
}

line "brake along the rear axle" {
  fluid                  = "brake fluid"
  runs_through           = "underneath"
  form                   = "metal pipe"
  working_pressure       = "120 bar"
  burst_pressure         = "900 bar"
  rated_temperature      = "180 degC"
  joints_in_cockpit      = 0
  screwed_joints         = true
  protected              = true
  greatest_clip_distance = "180 mm"
  end_of_life            = "none"
}

bulkhead "engine" {
  material        = "steel"
  thickness       = "0.9 mm"
  liquid_tight    = true
  flame_resistant = true
  largest_gap     = "1 mm"
}

bulkhead "fuel" {
  material        = "aluminium alloy"
  thickness       = "1.5 mm"
  liquid_tight    = true
  flame_resistant = true
  largest_gap     = "1 mm"
}

fire_system {
  standard            = "FIA 8865-2015"
  homologation_number = "XEX 071 20"
  agent               = "AFFF"
  agent_mass          = "3.2 kg"
  serviced            = "2025-10-09"
  service_due         = "2027-10"
  cockpit_nozzles     = 4
  engine_nozzles      = 2
  tank_nozzles        = 0
  triggered_by        = "electrical"
  own_power           = true
  reach_when_belted   = "both"
  outside_trigger     = true

  outside_mark_diameter      = "105 mm"
  outside_mark_letter_height = "82 mm"
  stops_engine_too           = true

  fire_bottle "cockpit" {
    serial       = "DN-24-0417"
    agent_mass   = "2.1 kg"
    full_mass    = "4.10 kg"
    weighed_mass = { reading = "4.06 kg", measured_with = "bench scale" }
    weighed_on   = "2027-02-27"
    pressure     = "13 bar"
    made         = "2023-08"
    not_after    = "2033"
    serviced     = "2025-10-09"
    straps       = 2
    anti_torpedo = true

    bracket_bolt_diameter   = "8 mm"
    distance_from_body_edge = "520 mm"
  }

  # Under the scuttle; it has to come out to be weighed, and has not.
  fire_bottle "engine bay" {
    serial       = "DN-24-0418"
    agent_mass   = "1.1 kg"
    full_mass    = "2.65 kg"
    pressure     = "13 bar"
    made         = "2023-08"
    not_after    = "2033"
    serviced     = "2025-10-09"
    straps       = 2
    anti_torpedo = true

    bracket_bolt_diameter   = "8 mm"
    distance_from_body_edge = "610 mm"
  }

  evidence "service slip" {
    file  = "papers/fire-service-slip.txt"
    dated = "2025-10-09"
  }
}

extinguisher "behind the seats" {
  standard          = "EN 3"
  agent             = "AFFF"
  agent_mass        = "none"
  agent_volume      = "2.4 l"
  pressure          = "14 bar"
  full_mass         = "4.55 kg"
  weighed_mass      = { reading = "4.53 kg", measured_with = "bench scale" }
  made              = "2024-02"
  not_after         = "none"
  serviced          = "2026-02-19"
  straps            = 2
  anti_torpedo      = true
  mount_rating      = "25 g0"
  reach_when_belted = "co-driver"
}
