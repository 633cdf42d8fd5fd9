# The cage as a whole, its feet, corners, holes and padding.

cage {
  base_structure         = "main hoop and two lateral half-hoops"
  route                  = "built to the tables"
  built                  = "2026-10-30"
  builder                = "Oystergate Works, Wrackham"
  modified_since         = false
  modified               = "none"
  datum                  = "jig"
  origin                 = "middle of the front axle line, top of the jig table"
  saw_kerf               = "2.5 mm"
  bolted_in              = true
  weld_process           = "TIG"
  welder_qualification   = "Qualification test of 2025-02, tube in all positions"
  weld_test              = "dye penetrant"
  windscreen_pillar_rise = "265 mm"
  width_at_shoulders     = "1310 mm"

  not_fitted = ["certificate", "identity_plate"]
}

door_aperture "left" {
  corners         = ["U left", "F left", "G left", "S left"]
  dimension_a     = { reading = "338 mm", measured_with = "steel rule" }
  dimension_b     = { reading = "205 mm", measured_with = "steel rule" }
  dimension_c     = { reading = "240 mm", measured_with = "steel rule" }
  door_bar_height = { reading = "465 mm", measured_with = "steel rule" }
  opening_height  = { reading = "985 mm", measured_with = "steel rule" }
}

door_aperture "right" {
  corners         = ["U right", "F right", "G right", "S right"]
  dimension_a     = { reading = "335 mm", measured_with = "steel rule" }
  dimension_b     = { reading = "207 mm", measured_with = "steel rule" }
  dimension_c     = { reading = "242 mm", measured_with = "steel rule" }
  door_bar_height = { reading = "468 mm", measured_with = "steel rule" }
  opening_height  = { reading = "985 mm", measured_with = "steel rule" }
}

foot "main hoop left" {
  carries             = "main hoop leg"
  joint               = "A left"
  mirrored_as         = "main hoop right"
  tube                = "1"
  shape               = "flat"
  fixing              = "bolted"
  foot_thickness      = "3 mm"
  plate_thickness     = { reading = "3.05 mm", measured_with = "caliper" }
  plate_area          = "148 cm2"
  plate_contact_area  = "132 cm2"
  plate_longest_side  = "160 mm"
  plate_shortest_side = "92 mm"
  plate_material      = "steel"
  plate_welded        = true
  bolt_count          = 3
  bolt_diameter       = "8 mm"
  bolt_grade          = "8.8"
  double_shear        = false
  locked_nuts         = true
}

foot "main hoop right" {
  tube                = "1"
  plate_thickness     = { reading = "3.05 mm", measured_with = "caliper" }
  plate_area          = "148 cm2"
  plate_contact_area  = "131 cm2"
  plate_longest_side  = "160 mm"
  plate_shortest_side = "92 mm"
  plate_material      = "steel"
  plate_welded        = true
  bolt_count          = 3
  bolt_diameter       = "8 mm"
  bolt_grade          = "8.8"
  double_shear        = false
  locked_nuts         = true
}

foot "half-hoop left" {
  carries             = "lateral hoop leg"
  joint               = "D left"
  mirrored_as         = "half-hoop right"
  tube                = "2"
  shape               = "flat"
  fixing              = "bolted"
  foot_thickness      = "3 mm"
  plate_thickness     = { reading = "3.10 mm", measured_with = "caliper" }
  plate_area          = "136 cm2"
  plate_contact_area  = "124 cm2"
  plate_longest_side  = "150 mm"
  plate_shortest_side = "90 mm"
  plate_material      = "steel"
  plate_welded        = true
  bolt_count          = 3
  bolt_diameter       = "8 mm"
  bolt_grade          = "8.8"
  double_shear        = false
  locked_nuts         = true
}

foot "half-hoop right" {
  tube                = "3"
  plate_thickness     = { reading = "3.05 mm", measured_with = "caliper" }
  plate_area          = "136 cm2"
  plate_contact_area  = "125 cm2"
  plate_longest_side  = "150 mm"
  plate_shortest_side = "90 mm"
  plate_material      = "steel"
  plate_welded        = true
  bolt_count          = 3
  bolt_diameter       = "8 mm"
  bolt_grade          = "8.8"
  double_shear        = false
  locked_nuts         = true
}

foot "backstay left" {
  carries             = "backstay"
  joint               = "K left"
  mirrored_as         = "backstay right"
  tube                = "5"
  shape               = "flat"
  fixing              = "bolted"
  foot_thickness      = "3 mm"
  plate_thickness     = { reading = "3.05 mm", measured_with = "caliper" }
  plate_area          = "84 cm2"
  plate_contact_area  = "78 cm2"
  plate_longest_side  = "110 mm"
  plate_shortest_side = "76 mm"
  plate_material      = "steel"
  plate_welded        = true
  bolt_count          = 2
  bolt_diameter       = "8 mm"
  bolt_grade          = "8.8"
  double_shear        = false
  locked_nuts         = true
}

foot "backstay right" {
  tube                = "6"
  plate_thickness     = { reading = "3.05 mm", measured_with = "caliper" }
  plate_area          = "84 cm2"
  plate_contact_area  = "77 cm2"
  plate_longest_side  = "110 mm"
  plate_shortest_side = "76 mm"
  plate_material      = "steel"
  plate_welded        = true
  bolt_count          = 2
  bolt_diameter       = "8 mm"
  bolt_grade          = "8.8"
  double_shear        = false
  locked_nuts         = true
}

# Feet that the rules do not ask for, on the strut tops.

foot "front strut left" {
  carries             = "other"
  joint               = "AB left"
  mirrored_as         = "front strut right"
  tube                = "30"
  shape               = "flat"
  fixing              = "bolted"
  foot_thickness      = "3 mm"
  plate_thickness     = { reading = "3.05 mm", measured_with = "caliper" }
  plate_area          = "72 cm2"
  plate_contact_area  = "66 cm2"
  plate_longest_side  = "100 mm"
  plate_shortest_side = "72 mm"
  plate_material      = "steel"
  plate_welded        = true
  bolt_count          = 2
  bolt_diameter       = "8 mm"
  bolt_grade          = "8.8"
  double_shear        = false
  locked_nuts         = true
}

foot "front strut right" {
  tube                = "31"
  plate_thickness     = { reading = "3.10 mm", measured_with = "caliper" }
  plate_area          = "72 cm2"
  plate_contact_area  = "66 cm2"
  plate_longest_side  = "100 mm"
  plate_shortest_side = "72 mm"
  plate_material      = "steel"
  plate_welded        = true
  bolt_count          = 2
  bolt_diameter       = "8 mm"
  bolt_grade          = "8.8"
  double_shear        = false
  locked_nuts         = true
}

foot "rear strut left" {
  carries             = "other"
  joint               = "AC left"
  mirrored_as         = "rear strut right"
  tube                = "32"
  shape               = "flat"
  fixing              = "bolted"
  foot_thickness      = "3 mm"
  plate_thickness     = { reading = "3.05 mm", measured_with = "caliper" }
  plate_area          = "72 cm2"
  plate_contact_area  = "65 cm2"
  plate_longest_side  = "100 mm"
  plate_shortest_side = "72 mm"
  plate_material      = "steel"
  plate_welded        = true
  bolt_count          = 2
  bolt_diameter       = "8 mm"
  bolt_grade          = "8.8"
  double_shear        = false
  locked_nuts         = true
}

foot "rear strut right" {
  tube                = "33"
  plate_thickness     = { reading = "3.05 mm", measured_with = "caliper" }
  plate_area          = "72 cm2"
  plate_contact_area  = "67 cm2"
  plate_longest_side  = "100 mm"
  plate_shortest_side = "72 mm"
  plate_material      = "steel"
  plate_welded        = true
  bolt_count          = 2
  bolt_diameter       = "8 mm"
  bolt_grade          = "8.8"
  double_shear        = false
  locked_nuts         = true
}

gusset "main hoop and half-hoop, left" {
  joint          = "G left"
  form           = "bent sheet"
  junction       = "tubes 1 and 2"
  thickness      = "1.5 mm"
  shorter_arm    = "78 mm"
  longer_arm     = "96 mm"
  unwelded_side  = "124 mm"
  cut_out_radius = "18 mm"
  tube_outside   = "none"
}

gusset "main hoop and half-hoop, right" {
  joint          = "G right"
  form           = "bent sheet"
  junction       = "tubes 1 and 3"
  thickness      = "1.5 mm"
  shorter_arm    = "80 mm"
  longer_arm     = "96 mm"
  unwelded_side  = "125 mm"
  cut_out_radius = "18 mm"
  tube_outside   = "none"
}

gusset "half-hoop and transverse member, left" {
  joint          = "H left"
  form           = "bent sheet"
  junction       = "tubes 2 and 4"
  thickness      = "1.5 mm"
  shorter_arm    = "72 mm"
  longer_arm     = "90 mm"
  unwelded_side  = "115 mm"
  cut_out_radius = "18 mm"
  tube_outside   = "none"
}

gusset "half-hoop and transverse member, right" {
  joint          = "H right"
  form           = "bent sheet"
  junction       = "tubes 3 and 4"
  thickness      = "1.5 mm"
  shorter_arm    = "72 mm"
  longer_arm     = "92 mm"
  unwelded_side  = "117 mm"
  cut_out_radius = "18 mm"
  tube_outside   = "none"
}

gusset "crossing of the door bars, left" {
  joint          = "W left"
  form           = "bent sheet"
  junction       = "tubes 10 and 12"
  thickness      = "1.5 mm"
  shorter_arm    = "84 mm"
  longer_arm     = "84 mm"
  unwelded_side  = "119 mm"
  cut_out_radius = "18 mm"
  tube_outside   = "none"
}

gusset "crossing of the door bars, right" {
  joint          = "W right"
  form           = "bent sheet"
  junction       = "tubes 11 and 13"
  thickness      = "1.5 mm"
  shorter_arm    = "84 mm"
  longer_arm     = "85 mm"
  unwelded_side  = "120 mm"
  cut_out_radius = "18 mm"
  tube_outside   = "none"
}

gusset "main hoop and diagonal" {
  joint          = "N left"
  form           = "bent sheet"
  junction       = "tubes 1 and 20"
  thickness      = "1.5 mm"
  shorter_arm    = "76 mm"
  longer_arm     = "104 mm"
  unwelded_side  = "129 mm"
  cut_out_radius = "18 mm"
  tube_outside   = "none"
}

gusset "main hoop and backstay, left" {
  joint          = "G left"
  form           = "bent sheet"
  junction       = "tubes 1 and 5"
  thickness      = "1.5 mm"
  shorter_arm    = "70 mm"
  longer_arm     = "88 mm"
  unwelded_side  = "112 mm"
  cut_out_radius = "18 mm"
  tube_outside   = "none"
}

gusset "main hoop and backstay, right" {
  joint          = "G right"
  form           = "bent sheet"
  junction       = "tubes 1 and 6"
  thickness      = "1.5 mm"
  shorter_arm    = "70 mm"
  longer_arm     = "90 mm"
  unwelded_side  = "114 mm"
  cut_out_radius = "18 mm"
  tube_outside   = "none"
}

inspection_hole "main hoop" {
  tube               = "1"
  diameter           = "5 mm"
  distance_from_weld = "120 mm"
  distance_from_bend = "95 mm"
}

inspection_hole "left half-hoop" {
  tube               = "2"
  diameter           = "5 mm"
  distance_from_weld = "90 mm"
  distance_from_bend = "110 mm"
}

inspection_hole "right half-hoop" {
  tube               = "3"
  diameter           = "5 mm"
  distance_from_weld = "90 mm"
  distance_from_bend = "105 mm"
}

inspection_hole "harness bar" {
  tube               = "9"
  diameter           = "5 mm"
  distance_from_weld = "85 mm"
  distance_from_bend = "none"
}

padding "behind the helmets" {
  tube                  = "1"
  between               = ["G left", "G right"]
  standard              = "FIA 8857-2001"
  thickness             = "22 mm"
  fixing                = "bonded and tied"
  cover_flame_resistant = true
}

padding "left of the driver" {
  tube                  = "2"
  between               = ["H left", "R left"]
  mirrored_as           = "right of the co-driver"
  standard              = "FIA 8857-2001"
  thickness             = "22 mm"
  fixing                = "bonded and tied"
  cover_flame_resistant = true
}

padding "right of the co-driver" {
  tube                  = "3"
  standard              = "FIA 8857-2001"
  thickness             = "22 mm"
  fixing                = "bonded and tied"
  cover_flame_resistant = true
}

padding "over the driver" {
  tube                  = "18"
  between               = ["R left", "M"]
  mirrored_as           = "over the co-driver"
  standard              = "FIA 8857-2001"
  thickness             = "22 mm"
  fixing                = "bonded and tied"
  cover_flame_resistant = true
}

padding "over the co-driver" {
  tube                  = "19"
  standard              = "FIA 8857-2001"
  thickness             = "22 mm"
  fixing                = "bonded and tied"
  cover_flame_resistant = true
}

padding "corner brace by the driver" {
  tube                  = "35"
  between               = ["AD left", "AE left"]
  mirrored_as           = "corner brace by the co-driver"
  standard              = "FIA 8857-2001"
  thickness             = "22 mm"
  fixing                = "bonded and tied"
  cover_flame_resistant = true
}

padding "corner brace by the co-driver" {
  tube                  = "36"
  standard              = "FIA 8857-2001"
  thickness             = "22 mm"
  fixing                = "bonded and tied"
  cover_flame_resistant = true
}
