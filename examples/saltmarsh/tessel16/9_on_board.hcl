# What is carried.

belt_cutter "driver" {
  reach_when_belted = "both"
  held_by           = "holder"
}

belt_cutter "co-driver" {
  reach_when_belted = "both"
  held_by           = "holder"
}

warning_triangle "boot" {
  approved = true
  side     = "440 mm"
}

first_aid_kit {
  contents_standard = "none"
  not_after         = "2028-05"
  fixed             = true
}

sos_board {
  width         = "297 mm"
  height        = "420 mm"
  letter_height = "180 mm"
  both_sides    = true
}

tow_rope {
  length        = "5 m"
  breaking_load = "36 kN"
}

spill_kit {
  absorbs      = "12 l"
  ground_sheet = true
}

stowed_item "jack" {
  mass     = "4.8 kg"
  place    = "luggage area"
  fixed_by = "bolted bracket"
}

stowed_item "wheel brace" {
  mass     = "1.9 kg"
  place    = "luggage area"
  fixed_by = "bolted bracket"
}

stowed_item "tool roll" {
  mass     = "5.2 kg"
  place    = "luggage area"
  fixed_by = "closed box"
}

stowed_item "throw bag" {
  mass     = "0.9 kg"
  place    = "cockpit"
  fixed_by = "ratchet straps"
}

stowed_item "pace note pencils" {
  mass     = "0.1 kg"
  place    = "cockpit"
  fixed_by = "net"
}

camera_mount "over the harness bar" {
  fixed_to         = "cage"
  fixed_by         = "metal clamp"
  mass             = "310 g"
  tethered         = true
  clear_of_helmets = "420 mm"
}
