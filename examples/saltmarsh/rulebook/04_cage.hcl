chapter "4" {
  title = "Safety cage built to the tables"

  clause "4.1" {
    title   = "Base structure"
    concern = "safety"
    page    = 20
    stage   = "before cutting"
    text    = <<-TEXT
      A cage stands on one of three base structures: a main hoop with a front hoop; two lateral
      hoops; or a main hoop with two lateral half-hoops. Parts of one are not mixed with parts
      of another.
    TEXT
    applies = "built_to_tables"
    demand  = <<-FORMULA
      let main = count(cage.tubes, .part == 'main hoop');
      let front = count(cage.tubes, .part == 'front hoop');
      let side = count(cage.tubes, .part == 'lateral hoop');
      let half = count(cage.tubes, .part == 'lateral half-hoop');
      if cage.base_structure == 'main hoop and front hoop' {
        main == 1 and front == 1 and side + half == 0
      } else if cage.base_structure == 'two lateral hoops' {
        main + front + half == 0 and side == 2
      } else {
        main == 1 and half == 2 and front + side == 0
      }
    FORMULA
    rectify = "Draw the cage on one base structure and deposit the drawing again."
  }

  clause "4.2" {
    title   = "Main hoop tube"
    concern = "safety"
    page    = 21
    stage   = "before cutting"
    text    = <<-TEXT
      The main hoop is made of one of the listed tubes. Outside and wall are taken together, as a
      row of the table has them: a large thin tube and a small thick one do not add up.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'main hoop'"
    demand  = "any(table.main_hoop, tube.outside >= .outside and tube.wall >= .wall)"
    rectify = "Bend the hoop anew from a listed tube. A sleeve over it or in it is not accepted."
  }

  clause "4.3" {
    title   = "Tube of the other base members"
    concern = "safety"
    page    = 21
    stage   = "before cutting"
    text    = <<-TEXT
      Front hoop, lateral hoops and half-hoops, and what joins them above the crew, are made of a
      tube that the table lists for that member in that base structure.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "any(table.tube_sizes, .structure == cage.base_structure and .part == tube.part)"
    demand  = <<-FORMULA
      any(filter(table.tube_sizes, .structure == cage.base_structure and .part == tube.part),
        tube.outside >= .outside and tube.wall >= .wall)
    FORMULA
    rectify = "Replace the member by a listed tube."
  }

  clause "4.4" {
    title    = "Tube of the stays and diagonals"
    concern  = "safety"
    page     = 22
    stage    = "before cutting"
    text     = <<-TEXT
      Backstays, the diagonals of hoop, backstays and roof, and the reinforcements beside the
      windscreen are made of one of the listed tubes, and measure so where they stand in the car.
    TEXT
    applies  = "built_to_tables"
    across   = "tube in cage.tubes"
    where    = <<-FORMULA
      tube.part in ['backstay', 'hoop diagonal', 'backstay diagonal', 'roof diagonal',
        'windscreen pillar reinforcement']
    FORMULA
    at_least = 3
    demand   = "any(table.stays, tube.outside >= .outside and tube.wall >= .wall)"
    rectify  = "Cut the member out at both nodes and weld in a new one. Metal that a flap disc took off does not come back with weld."
  }

  clause "4.5" {
    title    = "Door bars"
    concern  = "safety"
    page     = 22
    stage    = "before cutting"
    text     = <<-TEXT
      Four bars or more stand in the doors, two on either side. What tube they need goes by the
      declared mass of the car, for a heavier car meets the tree with more.
    TEXT
    applies  = "built_to_tables"
    across   = "tube in cage.tubes"
    where    = "tube.part == 'door bar'"
    at_least = 4
    demand   = <<-FORMULA
      any(in_band(table.door_bars, car.declared_mass),
        tube.outside >= .outside and tube.wall >= .wall)
    FORMULA
    look_for = "Two on either side, crossed or one above the other."
    rectify  = "Replace the bar by a tube of the row for the declared mass."
  }

  clause "4.6" {
    title    = "Harness bar"
    concern  = "safety"
    page     = 23
    stage    = "bare shell"
    text     = <<-TEXT
      Shoulder straps wrap round this bar, and nothing else holds the crew back. Its outside is
      38 mm or more and its wall 2.0 mm or more, and here the measurement has to prove it, with
      its whole tolerance.
    TEXT
    applies  = "built_to_tables"
    judged   = "proved"
    across   = "tube in cage.tubes"
    where    = "tube.part == 'harness bar'"
    at_least = 1
    demand   = "tube.outside >= 38*mm and tube.wall >= 2*mm"
    rectify  = "Measure again with a better instrument at an inspection hole; if that does not prove it, replace the bar by 40 x 2.5 mm."
  }

  clause "4.7" {
    title   = "Further tubes"
    concern = "safety"
    page    = 23
    stage   = "before cutting"
    text    = <<-TEXT
      A tube that the club does not ask for, such as a dash bar, is at least 25 mm outside and 1.5
      mm thick.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = <<-FORMULA
      tube.part in ['dash bar', 'front strut brace', 'rear strut brace', 'sill bar',
        'corner brace', 'door bar support', 'seat bar', 'other'] and not tube.mandatory
    FORMULA
    demand  = "tube.outside >= 25*mm and tube.wall >= 1.5*mm"
    rectify = "Replace the tube, or leave it out."
  }

  clause "4.8" {
    title   = "Two backstays"
    concern = "safety"
    page    = 24
    stage   = "bare shell"
    text    = "Two backstays run from the rearmost hoop back to the shell, one on either side."
    applies = "built_to_tables"
    demand  = "count(cage.tubes, .part == 'backstay') == 2"
    rectify = "Add the missing backstay, or take the third one out of the count and call it by another name on the drawing."
  }

  clause "4.9" {
    title    = "Lie of the backstays"
    concern  = "safety"
    page     = 24
    stage    = "bare shell"
    text     = <<-TEXT
      A backstay is straight, stands off the vertical by 30 degrees or more, and meets the hoop no
      more than 100 mm below its highest bend.
    TEXT
    applies  = "built_to_tables"
    across   = "tube in cage.tubes"
    where    = "tube.part == 'backstay'"
    demand   = "tube.straight and tube.angle_to_vertical >= 30*deg and tube.upper_end_offset <= 100*mm"
    look_for = "Set a straight-edge along it; sight along it from the rear."
    rectify  = "Move the foot rearwards."
  }

  clause "4.10" {
    title    = "Diagonals"
    concern  = "safety"
    page     = 25
    stage    = "bare shell"
    text     = <<-TEXT
      At least one straight diagonal stiffens the hoop or the backstays. It ends within 100 mm of
      the junctions and feet it runs between.
    TEXT
    applies  = "built_to_tables"
    across   = "tube in cage.tubes"
    where    = "tube.part in ['hoop diagonal', 'backstay diagonal']"
    at_least = 1
    demand   = "tube.straight and max(tube.upper_end_offset, tube.lower_end_offset) <= 100*mm"
    rectify  = "Fit a straight diagonal from corner to corner."
  }

  clause "4.11" {
    title   = "Beside the windscreen"
    concern = "safety"
    page    = 25
    stage   = "before cutting"
    text    = <<-TEXT
      Where the leg of the front hoop or half-hoop rises by more than 200 mm beside the
      windscreen, a reinforcement follows it on each side.
    TEXT
    applies = "built_to_tables"
    demand  = <<-FORMULA
      cage.windscreen_pillar_rise <= 200*mm
      or count(cage.tubes, .part == 'windscreen pillar reinforcement') == 2
    FORMULA
    rectify = "Add a reinforcement on each side, from the leg's foot to its upper bend."
  }

  clause "4.12" {
    title    = "Roof"
    concern  = "safety"
    page     = 26
    stage    = "bare shell"
    text     = "The roof is crossed by two diagonals, or by two that meet in a V over the crew."
    applies  = "built_to_tables"
    demand   = "count(cage.tubes, .part == 'roof diagonal') >= 2"
    look_for = "The point of a V lies forward, at the transverse member."
    rectify  = "Add the second roof diagonal."
  }

  clause "4.13" {
    title   = "Bend radius"
    concern = "safety"
    page    = 27
    stage   = "bare shell"
    text    = "No bend is tighter, along the middle of the tube, than three times its outside."
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.bends > 0"
    demand  = "tube.bend_radius >= 3 * tube.outside"
    rectify = "Bend it anew on a larger former."
  }

  clause "4.14" {
    title   = "Ovality of bends"
    concern = "safety"
    page    = 27
    stage   = "bare shell"
    text    = "In a bend the least diameter is nine tenths of the greatest, or more."
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.bends > 0"
    demand  = "tube.least_diameter_at_bend / tube.greatest_diameter_at_bend >= 0.9"
    rectify = "Bend it anew with a mandrel or a closer former. An oval bend is not pressed round again."
  }

  clause "4.15" {
    title    = "Bending"
    concern  = "safety"
    page     = 27
    stage    = "bare shell"
    text     = "Tube is bent cold, and its bends show neither wrinkle nor flat."
    applies  = "built_to_tables"
    across   = "tube in cage.tubes"
    where    = "tube.bends > 0"
    demand   = "tube.bending == 'cold' and not tube.wrinkles"
    look_for = "The inner side of each bend, by hand and by lamp."
    rectify  = "Bend a new one."
  }

  clause "4.16" {
    title   = "Hoops in one piece"
    concern = "safety"
    page    = 28
    stage   = "bare shell"
    text    = <<-TEXT
      A hoop or half-hoop is one piece from foot to foot, without a joint and without anything
      flowing in it.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "is_hoop(tube)"
    demand  = "tube.joints == 0 and not tube.contains_fluid"
    rectify = "Replace the hoop; a weld within it is not ground flush and forgotten."
  }

  clause "4.17" {
    title    = "Welds"
    concern  = "safety"
    page     = 28
    stage    = "bare shell"
    text     = <<-TEXT
      Every end is fitted to within a millimetre and welded round its whole circumference, also on
      the side towards roof and pillar.
    TEXT
    applies  = "built_to_tables"
    across   = "tube in cage.tubes"
    demand   = "tube.welded_all_round and tube.greatest_notch_gap <= 1*mm"
    look_for = "An even bead without undercut or pin holes; the far side by mirror."
    rectify  = "Lower the cage from its feet, weld the hidden side, and raise it again."
  }

  clause "4.18" {
    title    = "Gussets"
    concern  = "safety"
    page     = 29
    stage    = "bare shell"
    text     = <<-TEXT
      Eight corners or more have a gusset: of folded sheet of 1 mm, of flat plate of 2 mm, or of
      tube of 20 by 1.5 mm. Its shorter arm is at least half as long as the longer one, and both
      lie between 60 mm and 180 mm.
    TEXT
    applies  = "built_to_tables"
    across   = "gusset in cage.gussets"
    at_least = 8
    demand   = <<-FORMULA
      gusset.shorter_arm / gusset.longer_arm >= 0.5 and gusset.shorter_arm >= 60*mm
      and gusset.longer_arm <= 180*mm
      and (gusset.form == 'bent sheet' ? gusset.thickness >= 1*mm
        : gusset.form == 'flat plate' ? gusset.thickness >= 2*mm
        : gusset.thickness >= 1.5*mm and gusset.tube_outside >= 20*mm)
    FORMULA
    rectify  = "Make the gusset anew; a second plate over the first is not counted."
  }

  clause "4.19" {
    title    = "Inspection holes"
    concern  = "safety"
    page     = 30
    stage    = "before paint"
    text     = <<-TEXT
      Each hoop and the harness bar have a hole of 4 mm to 6 mm through which the wall can be
      measured, 40 mm or more from any weld or bend.
    TEXT
    look_for = "One hole in every hoop and one in the harness bar, clean and not filled with paint."
    applies  = "built_to_tables"
    across   = "hole in cage.inspection_holes"
    at_least = 3
    demand   = <<-FORMULA
      4*mm <= hole.diameter <= 6*mm and hole.distance_from_weld >= 40*mm
      and (hole.distance_from_bend ?? (40*mm)) >= 40*mm
    FORMULA
    rectify  = "Drill another hole in a fit place; the wrong one is closed with a plug weld."
  }

  clause "4.20" {
    title    = "Getting out"
    concern  = "safety"
    page     = 30
    stage    = "bare shell"
    text     = <<-TEXT
      The opening in each door lets the crew out: 310 mm at least along A, 240 mm at most along B
      and 290 mm at most along C of drawing 253-49. The door bars meet the pillars in the lower
      half of the opening.
    TEXT
    applies  = "built_to_tables"
    across   = "opening in cage.door_apertures"
    at_least = 2
    demand   = <<-FORMULA
      opening.dimension_a >= 310*mm and opening.dimension_b <= 240*mm
      and opening.dimension_c <= 290*mm
      and opening.door_bar_height / opening.opening_height <= 0.5
    FORMULA
    look_for = "Let the taller of the crew climb out in full dress within ten seconds."
    rectify  = "Lower the door bars, or move the leg of the hoop."
  }

  clause "4.21" {
    title   = "Dents"
    concern = "safety"
    page    = 31
    stage   = "before event"
    text    = "No dent is deeper than half the wall of its tube."
    across  = "tube in cage.tubes"
    demand  = "(tube.deepest_dent ?? (0*mm)) <= tube.wall / 2"
    rectify = "Replace the tube."
  }

  clause "4.22" {
    title   = "Joints that come apart"
    concern = "safety"
    page    = 31
    stage   = "bare shell"
    text    = <<-TEXT
      A joint that comes apart is a sleeve or double lug of the club's drawing, with two bolts of
      8 mm and class 8.8 or more, and overlaps by 60 mm.
    TEXT
    across  = "joint in cage.cage_joints"
    demand  = <<-FORMULA
      joint.form in ['clamped sleeve', 'double lug'] and joint.bolt_count >= 2
      and joint.bolt_diameter >= 8*mm and joint.bolt_grade in ['8.8', '10.9', '12.9']
      and joint.engagement >= 60*mm
    FORMULA
    rectify = "Fit a joint of the club's drawing, or weld the tube in."
  }

  clause "4.23" {
    title    = "Punch marks"
    concern  = "eligibility"
    page     = 32
    stage    = "before paint"
    text     = <<-TEXT
      At the visit the scrutineer puts one punch mark on each hoop, so that a cage cannot move to
      another shell unseen.
    TEXT
    applies  = "built_to_tables"
    across   = "tube in cage.tubes"
    where    = "is_hoop(tube)"
    demand   = "tube.punch_marks == 1"
    look_for = "A hand's breadth over the foot, on the inner side; compare with the mark's drawing on the visit slip."
    rectify  = "Call the scrutineer who made the visit."
  }
}

table "main_hoop" {
  columns = { outside = "tube.outside", wall = "tube.wall" }
  rows = [
    ["45 mm", "2.5 mm"],
    ["50 mm", "2.0 mm"],
    ["1.75 in", ".095 in"],
    ["2 in", ".083 in"],
  ]
  issued = "2026-11"
}

# By base structure; the list is the drawing office's own file.
table "tube_sizes" {
  columns = {
    structure = "cage.base_structure"
    part      = "tube.part"
    outside   = "tube.outside"
    wall      = "tube.wall"
  }
  rows_from = "tube_sizes.csv"
  issued    = "2026-11-08"
}

table "stays" {
  columns = { outside = "tube.outside", wall = "tube.wall" }
  rows = [
    ["38 mm", "2.5 mm"],
    ["40 mm", "2.0 mm"],
    ["1.5 in", ".095 in"],
  ]
  issued = "2026-11"
}

# Bands of the declared mass. 1350 kg and 1000 kg are of the heavier band.
table "door_bars" {
  columns = {
    mass_from  = "car.declared_mass"
    mass_below = "car.declared_mass"
    outside    = "tube.outside"
    wall       = "tube.wall"
  }
  bands = { from = "mass_from", below = "mass_below" }
  rows = [
    ["", "1000 kg", "35 mm", "2.0 mm"],
    ["", "1000 kg", "30 mm", "2.5 mm"],
    ["1000 kg", "1350 kg", "38 mm", "2.5 mm"],
    ["1000 kg", "1350 kg", "40 mm", "2.0 mm"],
    ["1350 kg", "", "45 mm", "2.5 mm"],
    ["1350 kg", "", "50 mm", "2.0 mm"],
  ]
  issued = "2026-11"
}
