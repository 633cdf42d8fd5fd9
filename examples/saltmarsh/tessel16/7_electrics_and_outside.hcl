# Electrics, lamps, glass and what hangs on the outside.

circuit_breaker {
  form                  = "mechanical"
  cuts_everything       = true
  stops_engine          = true
  spark_proof           = true
  reach_when_belted     = "both"
  outside_trigger       = true
  outside_mark_base     = "125 mm"
  discharges_alternator = true
}

battery "main" {
  chemistry           = "sealed lead-acid"
  place               = "cockpit"
  mass                = "9.4 kg"
  clamp_bolt_count    = 2
  clamp_bolt_diameter = "8 mm"
  clamp_insulated     = true
  terminals_covered   = true
  boxed               = false
  vented_outside      = false
}

wiring {
  flame_resistant_sleeving = true
  grommets_everywhere      = true
  every_circuit_fused      = true
  battery_cable_protected  = true
  greatest_clip_distance   = "180 mm"
  charging_voltage         = "14.1 V"
}

lamp "headlamps" {
  purpose  = "headlamp"
  quantity = 2
  colour   = "white"
  diameter = "146 mm"
  approved = true
  works    = true
}

lamp "lamp pod" {
  purpose  = "additional headlamp"
  quantity = 4
  colour   = "white"
  diameter = "177 mm"
  approved = true
  works    = true
}

lamp "position lamps" {
  purpose  = "position lamp"
  quantity = 4
  approved = true
  works    = true
}

lamp "indicators" {
  purpose  = "direction indicator"
  quantity = 6
  colour   = "amber"
  approved = true
  works    = true
}

lamp "brake lamps" {
  purpose  = "brake lamp"
  quantity = 3
  colour   = "red"
  lit_area = "42 cm2"
  approved = true
  works    = true
}

lamp "number plate" {
  purpose  = "number plate lamp"
  quantity = 1
  colour   = "white"
  approved = true
  works    = true
}

lamp "rear fog" {
  purpose  = "rear fog lamp"
  quantity = 1
  colour   = "red"
  lit_area = "64 cm2"
  height   = "910 mm"
  approved = true
  works    = true
}

towing_eye "front" {
  form               = "strap"
  inner_diameter     = "none"
  opening_area       = "46 cm2"
  thickness          = "6 mm"
  colour             = "red"
  marked             = true
  rated_load         = "40 kN"
  within_outline     = true
  fixed_to_structure = true
}

towing_eye "rear" {
  form               = "rigid"
  inner_diameter     = "64 mm"
  opening_area       = "32 cm2"
  thickness          = "12 mm"
  colour             = "yellow"
  marked             = true
  rated_load         = "none"
  within_outline     = true
  fixed_to_structure = true
}

mud_flap "front left" {
  material          = "plastic"
  thickness         = "3.5 mm"
  ground_distance   = "75 mm"
  covers_tyre_width = true
  gap_to_body       = "10 mm"
}

mud_flap "front right" {
  material          = "plastic"
  thickness         = "3.5 mm"
  ground_distance   = "78 mm"
  covers_tyre_width = true
  gap_to_body       = "10 mm"
}

mud_flap "rear left" {
  material          = "plastic"
  thickness         = "3.5 mm"
  ground_distance   = "70 mm"
  covers_tyre_width = true
  gap_to_body       = "12 mm"
}

mud_flap "rear right" {
  material          = "plastic"
  thickness         = "3.5 mm"
  ground_distance   = "104 mm" # dispensation 2027/2
  covers_tyre_width = true
  gap_to_body       = "12 mm"
}

underbody_guard "engine" {
  covers            = "engine"
  material          = "aluminium alloy"
  thickness         = "6 mm"
  fixings           = 8
  extends_past_sill = "none"
}

underbody_guard "fuel cell" {
  covers            = "fuel tank"
  material          = "plastic"
  thickness         = "12 mm"
  fixings           = 10
  extends_past_sill = "none"
}

window "driver door" {
  material           = "tempered glass"
  thickness          = "3.9 mm"
  film               = true
  film_thickness     = "100 micron"
  light_transmission = "74 %"
  opening_height     = "430 mm"
}

window "co-driver door" {
  material           = "tempered glass"
  thickness          = "3.9 mm"
  film               = true
  film_thickness     = "100 micron"
  light_transmission = "74 %"
  opening_height     = "430 mm"
}

window "left rear side" {
  material           = "polycarbonate"
  thickness          = "4 mm"
  film               = false
  film_thickness     = "none"
  light_transmission = "88 %"
  opening_height     = "none"
}

window "right rear side" {
  material           = "polycarbonate"
  thickness          = "4 mm"
  film               = false
  film_thickness     = "none"
  light_transmission = "88 %"
  opening_height     = "none"
}

window "rear" {
  material           = "polycarbonate"
  thickness          = "4 mm"
  film               = false
  film_thickness     = "none"
  light_transmission = "88 %"
  opening_height     = "none"
}

windscreen {
  laminated       = true
  longest_crack   = { reading = "45 mm", note = "lower right corner, drilled and filled" }
  sun_strip_depth = "90 mm"
  demisted        = true
  extra_fasteners = 0
  wipers_work     = true
}

mirror "left" {
  glass_area = "110 cm2"
  intact     = true
}

mirror "right" {
  glass_area = "110 cm2"
  intact     = true
}
