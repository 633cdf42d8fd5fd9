# Curlew 9, an invented car, the second that Oystergate Works built on the drawing of the
# Tessel 16, in a hurry. Only what chapter 4 asks of the layout is written down, where the
# joints are and which tube was cut from what, and beside it, in dates.hcl, what runs out.
# The rest is not recorded yet, so precheck it with --only 4. Two things went wrong with the
# cage; the club's drawing office found both.

car "Curlew 9" {
  chassis          = "CU-0031"
  class            = "2WD open"
  model            = "Curlew 9 three-door, 2014"
  first_registered = "2014-02"
  first_logbook    = "none"
  driven_wheels    = "front"
  driver_side      = "left"
  declared_mass    = "1040 kg"
}

club "Saltmarsh Stage Rally Car Rules" {
  drawing_deposited = "2026-12-04"
  shell_visit       = "2027-02-11"
}

instrument "tape and plumb line" { tolerance = "3 mm" }

cage {
  base_structure         = "main hoop and two lateral half-hoops"
  route                  = "built to the tables"
  built                  = "2027-02-05"
  builder                = "Oystergate Works, Wrackham"
  bolted_in              = true
  windscreen_pillar_rise = "262 mm"
  datum                  = "level floor"
  origin                 = "middle of the front axle line, on the floor"
  saw_kerf               = "2.5 mm"
}

tube_stock "hoop" {
  ordered    = "45 x 2.5 mm"
  size       = "45.0 x 2.54 mm"
  bar_length = "6 m"
  bars       = 1
  material   = "E355"
  forming    = "cold drawn seamless"
  yield      = "466 MPa"

  evidence "material certificate" { file = "papers/tube-certificates.txt" }
}

tube_stock "rest" {
  ordered    = "40 x 2.0 mm"
  size       = "40.0 x 2.06 mm"
  bar_length = "6 m"
  bars       = 4
  material   = "E355"
  forming    = "cold drawn seamless"
  yield      = "458 MPa"

  evidence "material certificate" { file = "papers/tube-certificates.txt" }
}

# Joints: the left side, and its mirror image.

joint "A left" {
  at          = ["-1790 mm", "605 mm", "210 mm"]
  tolerance   = "3 mm"
  mirrored_as = "A right"
}

joint "D left" {
  at          = ["-560 mm", "636 mm", "230 mm"]
  tolerance   = "3 mm"
  mirrored_as = "D right"
}

joint "K left" {
  at          = ["-2264 mm", "490 mm", "600 mm"]
  tolerance   = "3 mm"
  mirrored_as = "K right"
}

joint "B left" {
  at          = ["-1818 mm", "633 mm", "770 mm"]
  tolerance   = "3 mm"
  mirrored_as = "B right"
}

joint "C left" {
  at          = ["-1846 mm", "560 mm", "1330 mm"]
  tolerance   = "3 mm"
  mirrored_as = "C right"
}

joint "E left" {
  at          = ["-620 mm", "648 mm", "830 mm"]
  tolerance   = "3 mm"
  mirrored_as = "E right"
}

joint "F left" {
  at          = ["-1190 mm", "540 mm", "1290 mm"]
  tolerance   = "3 mm"
  mirrored_as = "F right"
}

joint "L left" {
  at          = ["-985 mm", "572 mm", "975 mm"]
  tolerance   = "3 mm"
  mirrored_as = "L right"
}

joint "G left" {
  at          = ["-1846 mm", "425 mm", "1330 mm"]
  tolerance   = "3 mm"
  mirrored_as = "G right"
}

joint "N left" {
  at          = ["-1793 mm", "608 mm", "270 mm"]
  tolerance   = "3 mm"
  mirrored_as = "N right"
}

joint "S left" {
  at          = ["-1813 mm", "628 mm", "670 mm"]
  tolerance   = "3 mm"
  mirrored_as = "S right"
}

joint "T left" {
  at          = ["-1824 mm", "617 mm", "890 mm"]
  tolerance   = "3 mm"
  mirrored_as = "T right"
}

joint "AE left" {
  at          = ["-1836 mm", "586 mm", "1130 mm"]
  tolerance   = "3 mm"
  mirrored_as = "AE right"
}

joint "V left" {
  at          = ["-567 mm", "637 mm", "300 mm"]
  tolerance   = "3 mm"
  mirrored_as = "V right"
}

joint "U left" {
  at          = ["-600 mm", "644 mm", "630 mm"]
  tolerance   = "3 mm"
  mirrored_as = "U right"
}

joint "J left" {
  at          = ["-1151 mm", "547 mm", "1259 mm"]
  tolerance   = "3 mm"
  mirrored_as = "J right"
}

joint "H left" {
  at          = ["-1239 mm", "531 mm", "1293 mm"]
  tolerance   = "3 mm"
  mirrored_as = "H right"
}

joint "AD left" {
  at          = ["-1551 mm", "477 mm", "1312 mm"]
  tolerance   = "3 mm"
  mirrored_as = "AD right"
}

joint "R left" {
  at          = ["-1767 mm", "439 mm", "1325 mm"]
  tolerance   = "3 mm"
  mirrored_as = "R right"
}

joint "W left" {
  at          = ["-1135 mm", "628 mm", "469 mm"]
  tolerance   = "3 mm"
  mirrored_as = "W right"
}

# The right foot of the backstays went in front of the tank's bracket.

joint "K right" {
  x         = "-2164 mm"
  tolerance = "3 mm"
}

# Where the right diagonal landed: a bolt of the seat belt was in its way.

joint "NA right" {
  at        = ["-1800 mm", "-615 mm", "410 mm"]
  tolerance = "3 mm"
}

# In the middle.

joint "M" {
  at        = ["-1239 mm", "0 mm", "1293 mm"]
  tolerance = "3 mm"
}

joint "X" {
  at        = ["-1824 mm", "0 mm", "890 mm"]
  tolerance = "3 mm"
}

tube "1" {
  part        = "main hoop"
  stock       = "hoop"
  mandatory   = true
  through     = ["A left", "B left", "C left", "C right", "B right", "A right"]
  bend_radius = "150 mm"
}

tube "2" {
  part        = "lateral half-hoop"
  stock       = "rest"
  mandatory   = true
  through     = ["D left", "E left", "F left", "G left"]
  bend_radius = "130 mm"
  mirrored_as = "3"
}

tube "4" {
  part      = "transverse member"
  stock     = "rest"
  mandatory = true
  through   = ["H left", "H right"]
}

tube "5" {
  part        = "backstay"
  stock       = "rest"
  mandatory   = true
  through     = ["G left", "K left"]
  mirrored_as = "6"
}

tube "7" {
  part        = "hoop diagonal"
  stock       = "rest"
  mandatory   = true
  through     = ["G left", "X"]
  mirrored_as = "8"
}

tube "9" {
  part      = "harness bar"
  stock     = "rest"
  mandatory = true
  through   = ["T left", "T right"]
}

tube "10" {
  part        = "door bar"
  stock       = "rest"
  mandatory   = true
  through     = ["N left", "U left"]
  mirrored_as = "11"
}

tube "12" {
  part        = "door bar"
  stock       = "rest"
  mandatory   = true
  through     = ["V left", "W left"]
  mirrored_as = "13"
}

tube "14" {
  part        = "door bar"
  stock       = "rest"
  mandatory   = true
  through     = ["W left", "S left"]
  mirrored_as = "15"
}

tube "16" {
  part        = "windscreen pillar reinforcement"
  stock       = "rest"
  mandatory   = true
  through     = ["U left", "L left", "J left"]
  bend_radius = "130 mm"
  mirrored_as = "17"
}

tube "18" {
  part        = "roof diagonal"
  stock       = "rest"
  mandatory   = true
  through     = ["R left", "M"]
  mirrored_as = "19"
}

tube "20" {
  part      = "hoop diagonal"
  stock     = "rest"
  mandatory = true
  through   = ["X", "N left"]
}

tube "21" {
  part      = "hoop diagonal"
  stock     = "rest"
  mandatory = true
  through   = ["X", "NA right"]
}

tube "22" {
  part        = "sill bar"
  stock       = "rest"
  mandatory   = false
  through     = ["D left", "A left"]
  mirrored_as = "23"
}

tube "24" {
  part        = "corner brace"
  stock       = "rest"
  mandatory   = false
  through     = ["AD left", "AE left"]
  mirrored_as = "25"
}

foot "main hoop left" {
  carries     = "main hoop leg"
  joint       = "A left"
  mirrored_as = "main hoop right"
}

foot "half-hoop left" {
  carries     = "lateral hoop leg"
  joint       = "D left"
  mirrored_as = "half-hoop right"
}

foot "backstay left" {
  carries     = "backstay"
  joint       = "K left"
  mirrored_as = "backstay right"
}

door_aperture "left" { corners = ["U left", "F left", "G left", "S left"] }
door_aperture "right" { corners = ["U right", "F right", "G right", "S right"] }

head "driver" {
  top           = ["-1550 mm", "368 mm", "1235 mm"]
  tolerance     = "10 mm"
  helmet_radius = "140 mm"
}

head "co-driver" {
  top           = ["-1550 mm", "-368 mm", "1230 mm"]
  tolerance     = "10 mm"
  helmet_radius = "140 mm"
}
