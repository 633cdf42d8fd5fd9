chapter "6" {
  title = "Mountings of the cage"

  clause "6.1" {
    title   = "Number of feet"
    concern = "safety"
    page    = 38
    stage   = "bare shell"
    text    = <<-TEXT
      A cage stands on six feet at least: one under each leg of its hoops and one under each
      backstay. More than ten are not allowed, for then the shell is being built anew.
    TEXT
    applies = "built_to_tables"
    demand  = "len(cage.feet) in 6..10"
    rectify = "Give every leg a foot of its own."
  }

  clause "6.2" {
    title   = "Plates"
    concern = "safety"
    page    = 38
    stage   = "bare shell"
    text    = <<-TEXT
      Under every foot lies a plate of steel. Its thickness and the area with which it touches the
      shell follow from what it carries.
    TEXT
    applies = "built_to_tables"
    across  = "foot in cage.feet"
    demand  = <<-FORMULA
      foot.plate_material == 'steel'
      and any(filter(table.plates, .carries == foot.carries),
        foot.plate_contact_area >= .area and foot.plate_thickness >= .thickness)
    FORMULA
    rectify = "Make a larger plate and let it run up the sill; do not add a second one beside it."
  }

  clause "6.3" {
    title   = "Shape of the plates"
    concern = "safety"
    page    = 39
    stage   = "bare shell"
    text    = "A plate is no strip. Its shortest side is at least three tenths of its longest."
    applies = "built_to_tables"
    across  = "foot in cage.feet"
    demand  = "foot.plate_shortest_side / foot.plate_longest_side >= 0.3"
    rectify = "Make the plate broader."
  }

  clause "6.4" {
    title    = "Plates welded"
    concern  = "safety"
    page     = 39
    stage    = "bare shell"
    text     = "The plate is welded to the shell all round, on sound metal."
    applies  = "built_to_tables"
    across   = "foot in cage.feet"
    demand   = "foot.plate_welded"
    look_for = "No filler, no seam sealer under the plate, no gap to the floor's ribs."
    rectify  = "Grind back to metal and weld it all round."
  }

  clause "6.5" {
    title   = "Bolts of the hoop legs"
    concern = "safety"
    page    = 40
    stage   = "bare shell"
    text    = <<-TEXT
      A bolted leg is held by three bolts at least, of 8 mm and class 8.8 or more, with nuts that
      lock.
    TEXT
    applies = "built_to_tables and cage.bolted_in"
    across  = "foot in cage.feet"
    where   = "foot.carries in ['main hoop leg', 'front hoop leg', 'lateral hoop leg']"
    demand  = <<-FORMULA
      foot.bolt_count >= 3 and foot.bolt_diameter >= 8*mm and strong_bolts(foot)
      and foot.locked_nuts
    FORMULA
    rectify = "Drill and sleeve for M8 of class 8.8 and fit locking nuts."
  }

  clause "6.6" {
    title   = "Bolts of the backstays"
    concern = "safety"
    page    = 40
    stage   = "bare shell"
    text    = <<-TEXT
      The bolts of a backstay have together two thirds of the section of those in the weakest leg
      of the main hoop, or more. Two bolts where the leg has three of the same are just enough.
    TEXT
    applies = "built_to_tables and cage.bolted_in"
    across  = "foot in cage.feet"
    where   = "foot.carries == 'backstay'"
    demand  = <<-FORMULA
      let leg = min(map(filter(cage.feet, .carries == 'main hoop leg'), bolt_section(#)));
      bolt_section(foot) / leg >= 2/3 and strong_bolts(foot) and foot.locked_nuts
    FORMULA
    rectify = "Add a bolt, or go up to the next thread."
  }

  clause "6.7" {
    title   = "Thickness of the feet"
    concern = "safety"
    page    = 41
    stage   = "bare shell"
    text    = <<-TEXT
      The foot welded to the tube is 4 mm thick or more, under a backstay as under a hoop. A cage
      keeps to what was asked on the day it was built.
    TEXT
    as_at   = "cage.built"
    applies = "built_to_tables"
    across  = "foot in cage.feet"
    demand  = "foot.foot_thickness >= 4*mm"
    rectify = "Cut the foot off and weld on one of 4 mm."
  }

  clause "6.8" {
    title   = "A foot under each leg"
    concern = "safety"
    page    = 41
    stage   = "bare shell"
    text    = <<-TEXT
      Each leg of the main hoop and of every other hoop stands on a foot of its own, no more than
      20 mm from it.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.part in ['main hoop', 'front hoop', 'lateral hoop']"
    demand  = "all(tube.ends, .to_foot <= 20*mm)"
    rectify = "Lengthen the leg to the floor and put a foot under it."
  }

  clause "6.9" {
    title    = "Flat or boxed"
    concern  = "safety"
    page     = 41
    stage    = "bare shell"
    text     = <<-TEXT
      A foot stands flat on the floor, or is boxed around the corner of floor and sill. A flat one
      under a hoop lies on 120 square centimetres, a boxed one takes two thirds of that on each
      of its faces.
    TEXT
    applies  = "built_to_tables"
    across   = "foot in cage.feet"
    where    = "foot.carries in ['main hoop leg', 'front hoop leg', 'lateral hoop leg']"
    demand   = "foot.plate_contact_area >= (foot.shape == 'boxed' ? 160*sq_cm : 120*sq_cm)"
    look_for = "The plate follows the floor; no bridge over a swage."
    rectify  = "Make a plate that lies on."
  }
}

table "plates" {
  columns = {
    carries   = "foot.carries"
    area      = "foot.plate_contact_area"
    thickness = "foot.plate_thickness"
  }
  rows = [
    ["main hoop leg", "120 cm2", "3 mm"],
    ["front hoop leg", "120 cm2", "3 mm"],
    ["lateral hoop leg", "120 cm2", "3 mm"],
    ["backstay", "60 cm2", "3 mm"],
    ["other", "60 cm2", "2.5 mm"],
  ]
  issued = "2026-09"
}
