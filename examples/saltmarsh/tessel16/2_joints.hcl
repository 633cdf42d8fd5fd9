# Where the joints are. Everything in this file is on the axes of the jig: forward, to the
# left, up, from the origin that 3_cage.hcl names. The left side was measured; the right one
# is its mirror image, for both sides of the shell were pulled to one pair of gauges.

instrument "jig scales" {
  tolerance = "2 mm"
  note      = "engraved rails, read at the middle of the tube"
}

instrument "tape and plumb line" {
  tolerance = "3 mm"
  note      = "steel tape from the jig's rails, plumb line to the table"
}

# Feet. Of those of the hoops and half-hoops the jig's scales were read.

joint "A left" {
  at          = { reading = ["-1790 mm", "605 mm", "210 mm"], measured_with = "jig scales" }
  mirrored_as = "A right"
  note        = "Foot of the main hoop."
}

joint "D left" {
  at          = { reading = ["-560 mm", "636 mm", "230 mm"], measured_with = "jig scales" }
  mirrored_as = "D right"
  note        = "Foot of the half-hoop."
}

joint "K left" {
  at          = { reading = ["-2264 mm", "490 mm", "600 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "K right"
  note        = "Foot of the backstay, on the inner wheel arch."
}

joint "AB left" {
  at          = { reading = ["-60 mm", "560 mm", "760 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "AB right"
  note        = "Strut top in front, through the bulkhead."
}

joint "AC left" {
  at          = { reading = ["-2480 mm", "520 mm", "720 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "AC right"
  note        = "Strut top behind."
}

# Corners: where the straights of a bent tube would meet.

joint "B left" {
  at          = { reading = ["-1818 mm", "633 mm", "770 mm"], measured_with = "jig scales" }
  mirrored_as = "B right"
  note        = "Waist of the main hoop."
}

joint "C left" {
  at          = { reading = ["-1846 mm", "560 mm", "1330 mm"], measured_with = "jig scales" }
  mirrored_as = "C right"
  note        = "Shoulder of the main hoop."
}

joint "E left" {
  at          = { reading = ["-620 mm", "648 mm", "830 mm"], measured_with = "jig scales" }
  mirrored_as = "E right"
  note        = "Scuttle."
}

joint "F left" {
  at          = { reading = ["-1190 mm", "540 mm", "1290 mm"], measured_with = "jig scales" }
  mirrored_as = "F right"
  note        = "Over the windscreen."
}

joint "L left" {
  at          = { reading = ["-985 mm", "572 mm", "975 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "L right"
  note        = "Bend of the pillar reinforcement."
}

# On the main hoop.

joint "G left" {
  at          = { reading = ["-1846 mm", "425 mm", "1330 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "G right"
  note        = "Half-hoop, backstay and diagonal meet the top of the hoop."
}

joint "N left" {
  at          = { reading = ["-1793 mm", "608 mm", "270 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "N right"
  note        = "Diagonal and door bar, a hand over the foot."
}

joint "S left" {
  at          = { reading = ["-1813 mm", "628 mm", "670 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "S right"
  note        = "The falling door bar."
}

joint "T left" {
  at          = { reading = ["-1824 mm", "617 mm", "890 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "T right"
  note        = "The harness bar."
}

joint "AE left" {
  at          = { reading = ["-1836 mm", "586 mm", "1130 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "AE right"
  note        = "Corner brace."
}

# On the half-hoop, from the foot up and back.

joint "V left" {
  at          = { reading = ["-567 mm", "637 mm", "300 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "V right"
  note        = "The falling door bar."
}

joint "U left" {
  at          = { reading = ["-600 mm", "644 mm", "630 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "U right"
  note        = "The rising door bar, and the foot of the pillar reinforcement."
}

joint "AA left" {
  at          = { reading = ["-610 mm", "646 mm", "730 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "AA right"
  note        = "Dash bar and front strut brace."
}

joint "J left" {
  at          = { reading = ["-1151 mm", "547 mm", "1259 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "J right"
  note        = "Upper end of the pillar reinforcement."
}

joint "H left" {
  at          = { reading = ["-1239 mm", "531 mm", "1293 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "H right"
  note        = "The transverse member."
}

joint "AD left" {
  at          = { reading = ["-1551 mm", "477 mm", "1312 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "AD right"
  note        = "Corner brace."
}

joint "R left" {
  at          = { reading = ["-1767 mm", "439 mm", "1325 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "R right"
  note        = "Roof diagonal."
}

# Between and behind.

joint "P left" {
  at          = { reading = ["-1888 mm", "432 mm", "1257 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "P right"
  note        = "Upper end of the backstay's diagonal, on the backstay."
}

joint "Q left" {
  at          = { reading = ["-2222 mm", "483 mm", "673 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "Q right"
  note        = "Its lower end, with the rear strut brace."
}

joint "W left" {
  at          = { reading = ["-1135 mm", "628 mm", "469 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "W right"
  note        = "Crossing of the door bars."
}

joint "Z left" {
  at          = { reading = ["-1135 mm", "621 mm", "221 mm"], measured_with = "tape and plumb line" }
  mirrored_as = "Z right"
  note        = "On the sill bar, under that crossing."
}

# In the middle of the car.

joint "M" {
  at   = { reading = ["-1239 mm", "0 mm", "1293 mm"], measured_with = "tape and plumb line" }
  note = "Middle of the transverse member, the point of the roof's V."
}

joint "X" {
  at   = { reading = ["-1824 mm", "0 mm", "890 mm"], measured_with = "tape and plumb line" }
  note = "Crossing of the hoop's diagonals, on the harness bar."
}

joint "Y" {
  at   = { reading = ["-2046 mm", "0 mm", "981 mm"], measured_with = "tape and plumb line" }
  note = "Crossing of the backstays' diagonals."
}
