# Figures that rulebooks and standards have published, written as clauses, each with worked
# cases whose answer the source itself gives or implies. Every clause and case names document,
# article and edition, and how far the figure was confirmed: "confirmed" is the rule text
# itself; "quoted by others" is a quotation or paraphrase elsewhere; "from memory" stands on
# nothing that could be looked at again; "computed" follows from a published figure or formula
# by arithmetic. Rules change every year: each figure is what that edition said, and none of
# this is a rulebook to build to.

rulebook "Published figures" {
  edition  = "as read in 2026"
  judged   = "as read"
  standing = "for trying the program, not a rulebook to build to"
  classes  = ["RC1", "RC2", "national"]
}

particular "section_size" {
  part = "tube"
  kind = "choice"
  value "A" {}
  value "B" {}
  value "C" {}
  value "D" {}
  help = "Size class of the tube in a rulebook that goes by area and second moment."
  how  = "From the drawing of the frame, which names the class of every member."
}

particular "printed_area" {
  part      = "tube"
  kind      = "area"
  unit      = "cm2"
  plausible = "0.05 cm2 to 20 cm2"
  measured  = false
  help      = "Area of the section as a table prints it."
  how       = "Column A of the table."
}

particular "printed_second_moment" {
  part      = "tube"
  kind      = "second moment"
  unit      = "cm4"
  plausible = "0.001 cm4 to 500 cm4"
  measured  = false
  help      = "Second moment of area as a table prints it."
  how       = "Column I of the table."
}

particular "printed_elastic_modulus" {
  part      = "tube"
  kind      = "volume"
  unit      = "cm3"
  plausible = "0.001 cm3 to 100 cm3"
  measured  = false
  help      = "Elastic section modulus as a table prints it."
  how       = "Column Wel or S of the table."
}

particular "printed_plastic_modulus" {
  part      = "tube"
  kind      = "volume"
  unit      = "cm3"
  plausible = "0.001 cm3 to 100 cm3"
  measured  = false
  help      = "Plastic section modulus as a table prints it."
  how       = "Column Wpl or Z of the table."
}

particular "printed_mass_per_length" {
  part      = "tube"
  kind      = "mass per length"
  unit      = "kg/m"
  plausible = "0.05 kg/m to 20 kg/m"
  measured  = false
  help      = "Mass for each length of tube as a table prints it."
  how       = "Column of kg/m or lb/ft."
}

particular "brace_angle" {
  part      = "tube"
  kind      = "angle"
  unit      = "deg"
  plausible = "0 deg to 180 deg"
  help      = "Angle that a brace includes with the hoop it supports."
  how       = "Digital angle gauge on both tubes, in the plane that they lie in."
}

particular "joined_outside" {
  part      = "gusset"
  kind      = "length"
  unit      = "mm"
  plausible = "10 mm to 120 mm"
  help      = "Outside diameter of the largest tube that the gusset joins."
  how       = "Caliper on the tube beside the gusset."
}

particular "joined_wall" {
  part      = "gusset"
  kind      = "length"
  unit      = "mm"
  plausible = "0.5 mm to 10 mm"
  help      = "Wall of the tube that the gusset joins."
  how       = "Ultrasonic gauge on the tube beside the gusset."
}

particular "tube_outside" {
  part      = "foot"
  kind      = "length"
  unit      = "mm"
  plausible = "10 mm to 120 mm"
  help      = "Outside diameter of the tube that stands on the foot."
  how       = "Caliper on the tube above its weld."
}

particular "sold" {
  part      = "cage"
  kind      = "date"
  plausible = "1980 to 2100"
  help      = "Day on which the cage was sold."
  how       = "From the invoice of the cage's maker."
}

particular "leg_spacing" {
  part      = "cage"
  kind      = "length"
  unit      = "mm"
  plausible = "100 mm to 2000 mm"
  help      = "Inside distance between the legs of the main hoop where they are fixed."
  how       = "Telescopic rod between the legs at the mountings."
}

particular "vertical_test_load" {
  part      = "cage"
  kind      = "force"
  unit      = "kN"
  plausible = "1 kN to 500 kN"
  measured  = false
  help      = "Load put on the main hoop downwards in the static test."
  how       = "From the test report."
}

particular "lengthwise_test_load" {
  part      = "cage"
  kind      = "force"
  unit      = "kN"
  plausible = "1 kN to 500 kN"
  measured  = false
  help      = "Load put on the main hoop along the car in the static test."
  how       = "From the test report."
}

particular "sideways_test_load" {
  part      = "cage"
  kind      = "force"
  unit      = "kN"
  plausible = "1 kN to 500 kN"
  measured  = false
  help      = "Load put on the main hoop across the car in the static test."
  how       = "From the test report."
}

particular "length_by_hand" {
  part      = "tube"
  kind      = "length"
  unit      = "mm"
  plausible = "1 mm to 20000 mm"
  measured  = false
  help      = "Length of the tube along its axis, worked out by hand."
  how       = "Straights and arcs from the drawing, added up on paper."
}

particular "mass_by_hand" {
  part      = "cage"
  kind      = "mass"
  unit      = "kg"
  plausible = "0.1 kg to 400 kg"
  measured  = false
  help      = "Mass of all tubes of the cage, worked out by hand."
  how       = "Length of each tube times the mass of a metre of it, added up on paper."
}

particular "driving_position" {
  part = "harness"
  kind = "choice"
  value "upright" {}
  value "reclined" {}
  help = "How the occupant sits."
  how  = "From the lean of the seat's back, by the rulebook's own border between the two."
}

particular "design_load" {
  part      = "anchorage"
  kind      = "force"
  unit      = "kN"
  plausible = "0.5 kN to 100 kN"
  measured  = false
  help      = "Load that the anchorage was reckoned for."
  how       = "From the calculation of the mounting."
}

particular "tested_strength" {
  part      = "strap"
  kind      = "force"
  unit      = "kN"
  plausible = "1 kN to 100 kN"
  measured  = false
  help      = "Load that the webbing has been tested to."
  how       = "From the maker's test sheet; mind the unit it is printed in."
}

particular "belts_here" {
  part      = "anchorage"
  kind      = "count"
  plausible = "1 to 4"
  help      = "How many straps end on this anchorage."
  how       = "Count them."
}

particular "listed_until" {
  part      = "fire_system"
  kind      = "date"
  plausible = "1990 to 2100"
  help      = "Last day in the column of the list of systems."
  how       = "From the list of the federation, beside the homologation number."
}

particular "shaft_reading" {
  kind      = "length"
  unit      = "mm"
  plausible = "10 mm to 60 mm"
  help      = "A diameter of which only a reading and a greatest figure are published."
  how       = "Micrometer with the stated uncertainty."
}

particular "steep_angle" {
  kind      = "angle"
  unit      = "deg"
  plausible = "0 deg to 90 deg"
  help      = "An angle of which only a reading and a greatest figure are given."
  how       = "Digital angle gauge with the stated uncertainty."
}

# Area of a round tube from its two diameters.
term "section_area" {
  given = "tube in cage.tubes"
  means = "pi/4 * (tube.outside**2 - (tube.outside - 2*tube.wall)**2)"
}

# Second moment of area of a round tube.
term "section_second_moment" {
  given = "tube in cage.tubes"
  means = "pi/64 * (tube.outside**4 - (tube.outside - 2*tube.wall)**4)"
}

# Elastic section modulus of a round tube.
term "section_elastic_modulus" {
  given = "tube in cage.tubes"
  means = "2 * section_second_moment(tube) / tube.outside"
}

# Plastic section modulus of a round tube.
term "section_plastic_modulus" {
  given = "tube in cage.tubes"
  means = "(tube.outside**3 - (tube.outside - 2*tube.wall)**3) / 6"
}
