# Dunlin 4, an invented car at its beginning: a bare shell on the stand, both hoops bent and
# tacked in, the rest of the tube still on the rack. What is not written down here is not
# known yet; precheck it with --stage "bare shell".

car "Dunlin 4" {
  chassis          = "DN-2290"
  class            = "4WD open"
  model            = "Dunlin 4 hatchback, 2015"
  first_registered = "2015-03"
  driven_wheels    = "four"
  driver_side      = "right"
  declared_mass    = "1310 kg"
}

club "Saltmarsh Stage Rally Car Rules" { drawing_deposited = "2027-01-29" }

body {
  structure           = "steel shell"
  seam_welded         = false
  structure_was_cut   = false
  deepest_corrosion   = "none"
  roof_opening_closed = true
}

instrument "micrometer" { tolerance = "0.01 mm" }

tube_stock "main" {
  ordered            = "1.75 x .095 in"
  outside            = { reading = "1.7512 in", measured_with = "micrometer" }
  wall               = { reading = "2.45 mm", measured_with = "micrometer" }
  cast_number        = "88-10375"
  supplier           = "Lock Gate Steels, Brackwater"
  certificate_type   = "3.1"
  tube_standard      = "EN 10305-1"
  material           = "E355"
  forming            = "cold drawn seamless"
  delivery_condition = "+SR"
  yield              = "466 MPa"
  tensile            = "592 MPa"
  elongation         = "14 %"
  carbon_content     = "0.19 %"
  manganese_content  = "1.34 %"

  greatest_other_content = "0.26 %"
  coated                 = false

  evidence "material certificate" {
    file  = "papers/tube-certificates.txt"
    dated = "2026-12-15"
  }
}

tube_stock "rest" {
  ordered            = "1.5 x .095 in"
  outside            = { reading = "1.5008 in", measured_with = "micrometer" }
  wall               = { reading = "2.44 mm", measured_with = "micrometer" }
  cast_number        = "88-10379"
  supplier           = "Lock Gate Steels, Brackwater"
  certificate_type   = "3.1"
  tube_standard      = "EN 10305-1"
  material           = "E355"
  forming            = "cold drawn seamless"
  delivery_condition = "+SR"
  yield              = "471 MPa"
  tensile            = "598 MPa"
  elongation         = "13 %"
  carbon_content     = "0.18 %"
  manganese_content  = "1.30 %"

  greatest_other_content = "0.25 %"
  coated                 = false

  evidence "material certificate" {
    file  = "papers/tube-certificates.txt"
    dated = "2026-12-15"
  }
}

cage {
  base_structure         = "main hoop and front hoop"
  route                  = "built to the tables"
  builder                = "Oystergate Works, Wrackham"
  bolted_in              = false
  windscreen_pillar_rise = "180 mm"
  datum                  = "jig"
  origin                 = "middle of the front axle line, top of the jig table"
}

# The main hoop stands on the jig; where the rest will go is being drawn.

joint "A left" {
  at          = ["-1650 mm", "598 mm", "180 mm"]
  tolerance   = "2 mm"
  mirrored_as = "A right"
}

joint "B left" {
  at          = ["-1679 mm", "627 mm", "760 mm"]
  tolerance   = "2 mm"
  mirrored_as = "B right"
}

joint "C left" {
  at          = ["-1706 mm", "555 mm", "1300 mm"]
  tolerance   = "2 mm"
  mirrored_as = "C right"
}

tube "1" {
  part        = "main hoop"
  stock       = "main"
  mandatory   = true
  through     = ["A left", "B left", "C left", "C right", "B right", "A right"]
  bend_radius = "6 in"
  bending     = "cold"
  joints      = 0
  note        = "Ovality and wrinkles still to be looked at; tacked, not welded."
}

tube "2" {
  part        = "front hoop"
  stock       = "rest"
  mandatory   = true
  bends       = 4
  straight    = false
  bend_radius = "5 in"
  bending     = "cold"
  joints      = 0
}

not_fitted = ["structure_cut"]

# More of these will come.
unfinished = ["joint", "tube", "foot", "gusset"]
