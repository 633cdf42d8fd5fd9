chapter "2" {
  title = "Mass and bodyshell"

  clause "2.1" {
    title   = "Least mass"
    concern = "eligibility"
    page    = 10
    stage   = "before event"
    text    = <<-TEXT
      The car weighs at least what the table says for its class and the capacity of its engine,
      without fuel, without spare wheels and tools, and without the crew and what they wear.
    TEXT
    demand  = <<-FORMULA
      any(filter(in_band(table.least_mass, engine.capacity), .class == car.class),
        bare_mass >= .mass)
    FORMULA
    rectify = "Add ballast as in 2.3; up to 60 kg of it is allowed."
  }

  clause "2.2" {
    title     = "Declared mass"
    concern   = "safety"
    page      = 10
    stage     = "before event"
    text      = <<-TEXT
      Cage, agent and towing eyes are chosen by the declared mass. It may be below what the scale
      shows by no more than 20 kg.
    TEXT
    demand    = "car.declared_mass >= bare_mass"
    allowance = "20 kg"
    rectify   = "Declare the mass anew, and check door bars, agent and towing eyes against the tables again."
  }

  clause "2.3" {
    title    = "Ballast"
    concern  = "safety"
    page     = 11
    stage    = "before event"
    text     = <<-TEXT
      Ballast is metal, in blocks, each through the floor with two bolts of 8 mm or more, and made
      so that it can be sealed.
    TEXT
    across   = "block in ballasts"
    demand   = "block.bolt_count >= 2 and block.bolt_diameter >= 8*mm and block.sealable"
    look_for = "Plates under the floor, no block on a seat mounting."
    rectify  = "Bolt the block through the floor with two M8 and large plates beneath."
  }

  clause "2.4" {
    title   = "Most ballast"
    concern = "eligibility"
    page    = 11
    stage   = "before event"
    text    = "More than 60 kg of ballast is not carried."
    applies = "fitted(ballasts)"
    demand  = "sum(ballasts, .mass) <= 60*kg"
    rectify = "Make the car itself heavier, or enter it in a class with less mass."
  }

  clause "2.5" {
    title    = "Cut structure"
    concern  = "safety"
    page     = 12
    stage    = "bare shell"
    text     = <<-TEXT
      Nothing of the shell that carries load is cut away. Where a tube or a pipe has to pass, the
      hole is closed again with metal of the same thickness, or a page of the log book allows it.
    TEXT
    across   = "cut in body.structure_cuts"
    demand   = "cut.made_good or recorded(cut.permitted_by)"
    look_for = "Round corners, no cut running into a seam."
    rectify  = "Weld metal of the same thickness back in."
  }

  clause "2.6" {
    title    = "Rust"
    concern  = "safety"
    page     = 12
    stage    = "bare shell"
    text     = <<-TEXT
      Salt is what these stages are named for. No pit in sill, floor or mounting area is deeper
      than half a millimetre.
    TEXT
    demand   = "(body.deepest_corrosion ?? (0*mm)) <= 0.5*mm"
    look_for = "Tap along the sills and round every foot of the cage; a dull place is opened."
    rectify  = "Cut the place out to sound metal and weld in a patch, seam to seam."
  }

  clause "2.7" {
    title   = "Roof opening"
    concern = "safety"
    page    = 13
    stage   = "bare shell"
    text    = "A sunroof is closed for good, with a panel welded or bonded and riveted all round."
    demand  = "(body.roof_opening_closed ?? true)"
    rectify = "Close the opening with sheet of the roof's thickness."
  }

  clause "2.8" {
    title   = "Bonnet and boot"
    concern = "safety"
    page    = 13
    stage   = "before event"
    text    = <<-TEXT
      Bonnet and boot lid are held by two further fasteners each. The maker's catches no longer
      hold them, so that a marshal needs no lever.
    TEXT
    demand  = "body.bonnet_fasteners >= 2 and body.boot_fasteners >= 2 and body.original_catches_disabled"
    rectify = "Fit two quick pins to each and take the catches' hooks off."
  }

  clause "2.9" {
    title    = "Doors"
    concern  = "safety"
    page     = 13
    stage    = "before event"
    text     = <<-TEXT
      Both front doors open from within and from without, without a tool, with the car on its
      wheels or on its roof.
    TEXT
    demand   = "body.doors_open_from_both_sides"
    look_for = "Open each door once from both sides, with the crew belted in."
    rectify  = "Free the latches; a strap is no handle."
  }

  clause "2.10" {
    title   = "Inner door panel"
    concern = "safety"
    page    = 14
    stage   = "before trim"
    text    = <<-TEXT
      The inside of each front door is closed: by sheet metal of 0.5 mm, by composite of 1 mm, or
      by the maker's own panel.
    TEXT
    demand  = <<-FORMULA
      body.door_trim_material in ['steel', 'aluminium alloy'] and body.door_trim_thickness >= 0.5*mm
      or body.door_trim_material == 'composite' and body.door_trim_thickness >= 1*mm
      or body.door_trim_material == 'plastic' and body.door_trim_thickness >= 2*mm
    FORMULA
    rectify = "Make new panels of 0.5 mm aluminium."
  }

  clause "2.11" {
    title   = "Share of the front axle"
    concern = "advice"
    page    = 14
    stage   = "before event"
    text    = <<-TEXT
      A car with more than two thirds of its mass in front ploughs through the gates of the marsh
      roads. The club advises against it.
    TEXT
    demand  = "car.front_axle_mass / car.weighed_mass <= 2/3"
    rectify = "Move battery, spare wheel or extinguishers backwards."
  }
}

# Bands by swept volume. 1600 cc is of the lower band, more is not.
table "least_mass" {
  columns = {
    class    = "car.class"
    cc_above = "engine.capacity"
    cc_to    = "engine.capacity"
    mass     = "car.weighed_mass"
  }
  bands = { above = "cc_above", to = "cc_to" }
  rows = [
    ["two-wheel drive open", "", "1400 cc", "840 kg"],
    ["two-wheel drive open", "1400 cc", "1600 cc", "930 kg"],
    ["two-wheel drive open", "1600 cc", "2000 cc", "1010 kg"],
    ["two-wheel drive open", "2000 cc", "", "1090 kg"],
    ["four-wheel drive open", "", "1600 cc", "1080 kg"],
    ["four-wheel drive open", "1600 cc", "2000 cc", "1210 kg"],
    ["four-wheel drive open", "2000 cc", "", "1260 kg"],
    ["classic", "", "1600 cc", "760 kg"],
    ["classic", "1600 cc", "", "890 kg"],
  ]
  issued = "2026-09"
}
