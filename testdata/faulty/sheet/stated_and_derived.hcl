# Figures that are stated and cannot be, by the joints the tubes go through. A stated figure
# that can be, such as that of tube 3, stands beside what follows from its joints.
car "Tessel 16" {}
tube_stock "A" { ordered = "45 x 2.5 mm" }
joint "A left" {
  at          = ["0 mm", "600 mm", "0 mm"]
  tolerance   = "3 mm"
  mirrored_as = "A right"
}
joint "B left" {
  at          = ["0 mm", "560 mm", "1190 mm"]
  tolerance   = "3 mm"
  mirrored_as = "B right"
}
joint "C" { at = ["-1000 mm", "0 mm", "190 mm"] }
joint "D" { at = ["-500 mm", "280 mm", "690 mm"] }
tube "1" {
  stock               = "A"
  through             = ["A left", "B left", "B right", "A right"]
  bend_radius         = "150 mm"
  straight            = true # want 25 stated-and-derived "Found yes as straight of the tube \"1\"; from the joint \"A left\" .*:5:1. and the joint \"B left\" .*:10:1. it follows that it is no[.] Both cannot be true[.] Measure again, or take one of them away[.]"
  bends               = 3    # want 25 stated-and-derived "Found \"3\" as bends of the tube \"1\".* it follows that it is 2[.]"
  greatest_bend_angle = "none" # want 25 stated-and-derived "Found none as greatest_bend_angle of the tube \"1\".* 87.8 to 88.4 deg"
  corner "B left" { angle = "80 deg ± 5 deg" } # want 29 stated-and-derived "Found \"80 ± 5 deg\" as angle of the corner \"B left\""
}
tube "2" {
  through           = ["B left", "D", "C"]
  angle_to_vertical = "30 deg" # want 23 stated-and-derived "from the joint \"B left\" .* and the joint \"C\" .* it follows that it is"
  end "first" { to_joint = { readings = ["40 mm", "44 mm"] } } # want 28 stated-and-derived "Found \"40 mm\" and \"44 mm\" as to_joint of the end \"first\""
}
tube "3" {
  through           = ["B right", "C"]
  angle_to_vertical = "49 deg ± 1 deg"
}
foot "1" {
  joint              = "A left"
  contact_length     = "120 mm"
  contact_width      = "100 mm"
  plate_contact_area = "100 cm2" # want 24 stated-and-derived "from the foot \"1\" .* it follows that it is 120"
}
