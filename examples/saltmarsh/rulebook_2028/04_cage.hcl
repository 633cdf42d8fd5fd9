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
    where   = "tube.part == 'main hoop' and (listed_for_hoop(tube) or not as_strong_as_listed(tube))"
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
      A backstay is straight from the hoop to its foot and stands off the vertical by 30 degrees
      or more. A steeper one holds the hoop up and not back, so here too the measurement has to
      prove it.
    TEXT
    applies  = "built_to_tables"
    judged   = "proved"
    across   = "tube in cage.tubes"
    where    = "tube.part == 'backstay'"
    demand   = "tube.straight and tube.angle_to_vertical >= 30*deg"
    look_for = "Set a straight-edge along it; sight along it from the rear."
    rectify  = "Move the foot rearwards; where only the measurement is too coarse, set an angle gauge on the stay."
  }

  clause "4.10" {
    title    = "Diagonals"
    concern  = "safety"
    page     = 25
    stage    = "bare shell"
    text     = <<-TEXT
      At least one diagonal stiffens the hoop or the backstays. It is straight, and each of its
      ends lies within 100 mm of a foot, or of a place where two other tubes meet, from axis to
      axis. What ends halfway up a leg bends the leg.
    TEXT
    applies  = "built_to_tables"
    across   = "tube in cage.tubes"
    where    = "tube.part in ['hoop diagonal', 'backstay diagonal']"
    at_least = 1
    demand   = "tube.straight and all(tube.ends, min(.to_foot, .to_joint) <= 100*mm)"
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

  clause "4.24" {
    title   = "Legs of the main hoop"
    concern = "safety"
    page    = "32a"
    stage   = "bare shell"
    text    = <<-TEXT
      Seen from the side the legs of the main hoop stand upright within 10 degrees, all the way
      from the foot to the highest bend.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'main hoop'"
    demand  = <<-FORMULA
      let left = first(tube.ends);
      let right = last(tube.ends);
      all(tube.corners, abs(ahead_of(#, left)) <= tan(10*deg) * above(#, left)
        and abs(ahead_of(#, right)) <= tan(10*deg) * above(#, right))
    FORMULA
    rectify = "Move the feet under the hoop's top; a leg is not pulled straight with the hoop in the car."
  }

  clause "4.25" {
    title   = "One half of the hoop as the other"
    concern = "safety"
    page    = "32a"
    stage   = "bare shell"
    text    = <<-TEXT
      The main hoop has two halves alike: two bends a side at most, its outermost bends turn alike
      within 2 degrees, and its feet stand level within 20 mm.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'main hoop'"
    demand  = <<-FORMULA
      let left = first(tube.corners);
      let right = last(tube.corners);
      tube.bends in [2, 4] and abs(left.angle - right.angle) <= 2*deg
      and abs(above(first(tube.ends), last(tube.ends))) <= 20*mm
    FORMULA
    rectify = "Bend the hoop anew, or level its feet."
  }

  clause "4.26" {
    title    = "Close to the shell"
    concern  = "safety"
    page     = "32a"
    stage    = "bare shell"
    text     = <<-TEXT
      The hoops follow the inside of the shell as closely as its shape lets them; a hoop that
      stands in the room takes it from the crew and gives the roof nowhere to rest.
    TEXT
    applies  = "built_to_tables"
    across   = "tube in cage.tubes"
    where    = "is_hoop(tube)"
    look_for = "A flat hand fits between hoop and pillar, a fist does not."
    rectify  = "Move the hoop out, or bend it anew."
  }

  clause "4.27" {
    title   = "The hoop over the helmets"
    concern = "safety"
    page    = "32b"
    stage   = "before trim"
    text    = "The highest bend of the main hoop stands 80 mm or more above the top of either helmet."
    applies = "built_to_tables"
    across  = ["tube in cage.tubes", "head in heads"]
    where   = "tube.part == 'main hoop'"
    demand  = "max(map(tube.corners, above(#, head))) >= 80*mm"
    rectify = "Lower the seat."
  }

  clause "4.28" {
    title   = "Ends of the half-hoops"
    concern = "safety"
    page    = "32b"
    stage   = "bare shell"
    text    = <<-TEXT
      A half-hoop stands on a foot of its own in front and meets the main hoop behind, no more
      than 100 mm below its highest bend.
    TEXT
    applies = "built_to_tables and cage.base_structure == 'main hoop and two lateral half-hoops'"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'lateral half-hoop'"
    demand  = <<-FORMULA
      any(tube.ends, .to_foot <= 20*mm)
      and meet(tube, find(cage.tubes, .part == 'main hoop'), 10*mm)
      and length_below_hoop(tube) <= 100*mm
    FORMULA
    rectify = "Lengthen the half-hoop to the top of the main hoop."
  }

  clause "4.29" {
    title   = "From side to side over the windscreen"
    concern = "safety"
    page    = "32b"
    stage   = "bare shell"
    text    = "A straight transverse member joins the two half-hoops over the windscreen."
    applies = "built_to_tables and cage.base_structure == 'main hoop and two lateral half-hoops'"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'transverse member'"
    demand  = <<-FORMULA
      tube.straight
      and count(cage.tubes, .part == 'lateral half-hoop' and meet(#, tube, 10*mm)) == 2
    FORMULA
    rectify = "Fit the member between the half-hoops, behind their upper bends."
  }

  clause "4.30" {
    title   = "Upper ends of the backstays"
    concern = "safety"
    page    = "32c"
    stage   = "bare shell"
    text    = <<-TEXT
      A backstay meets the hoop no more than 100 mm below its highest bend, and at the place where
      the half-hoop or longitudinal member meets it from in front, or within 100 mm of it.
    TEXT
    applies = "built_to_tables and cage.base_structure != 'two lateral hoops'"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'backstay'"
    demand  = <<-FORMULA
      meet(tube, find(cage.tubes, .part == 'main hoop'), 10*mm)
      and length_below_hoop(tube) <= 100*mm
      and any(tube.ends, .to_foot > 100*mm and .to_joint <= 100*mm)
    FORMULA
    rectify = "Move the upper end to the corner of the hoop."
  }

  clause "4.31" {
    title   = "Feet of the backstays"
    concern = "safety"
    page    = "32c"
    stage   = "bare shell"
    text    = "A backstay ends on a foot, not on a seat belt mounting and not on another tube."
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'backstay'"
    demand  = "any(tube.ends, .to_foot <= 20*mm)"
    rectify = "Lengthen the stay to a foot on the wheel arch or the member behind the rear seat."
  }

  clause "4.32" {
    title   = "Diagonals cut at a crossing"
    concern = "safety"
    page    = "32c"
    stage   = "bare shell"
    text    = <<-TEXT
      A diagonal that is cut where it crosses another, or the harness bar, goes on behind it in the
      same line, within 10 degrees.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = <<-FORMULA
      tube.part in ['hoop diagonal', 'backstay diagonal'] and any(tube.ends, let end = #;
        count(cage.tubes, .part == tube.part and distance(end, #) <= 10*mm) >= 2)
    FORMULA
    demand  = "any(cage.tubes, .part == tube.part and angle_between(#, tube) >= 170*deg)"
    rectify = "Cut the halves out and fit them in one line."
  }

  clause "4.33" {
    title   = "A cross in the hoop"
    concern = "safety"
    page    = "32d"
    stage   = "bare shell"
    text    = <<-TEXT
      Two diagonals cross in the main hoop of a car whose first log book is of 2020 or later, or
      that has none yet; a diagonal that is cut at the crossing counts by its halves.
    TEXT
    applies = "built_to_tables and (car.first_logbook ?? on) >= date('2020-01-01')"
    demand  = "count(cage.tubes, .part == 'hoop diagonal') in [2, 3, 4]"
    rectify = "Fit the second diagonal."
  }

  clause "4.34" {
    title   = "Door bars in pairs"
    concern = "safety"
    page    = "32d"
    stage   = "bare shell"
    text    = <<-TEXT
      The bars of a door belong together: they cross, or lie one above the other at a slope that
      differs by no more than 10 degrees. One bar alone is not a door bar.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'door bar'"
    demand  = <<-FORMULA
      count(cage.tubes, .part == 'door bar' and meet(#, tube, 10*mm)) >= 2
      or count(cage.tubes, .part == 'door bar' and distance(#, tube) <= 500*mm
        and angle_between(#, tube) <= 10*deg) >= 2
    FORMULA
    rectify = "Fit the second bar."
  }

  clause "4.35" {
    title   = "Door bars stand on both hoops"
    concern = "safety"
    page    = "32d"
    stage   = "bare shell"
    text    = <<-TEXT
      An end of a door bar lies on the main hoop, on the front hoop or half-hoop, or on another
      door bar, and nowhere else.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'door bar'"
    demand  = <<-FORMULA
      all(tube.ends, let end = #; count(cage.tubes,
        .part in ['main hoop', 'front hoop', 'lateral hoop', 'lateral half-hoop', 'door bar']
        and distance(end, #) <= 10*mm) >= 2)
    FORMULA
    rectify = "Lengthen the bar to the hoops."
  }

  clause "4.36" {
    title   = "Ends of the roof diagonals"
    concern = "safety"
    page    = "32e"
    stage   = "bare shell"
    text    = <<-TEXT
      A roof diagonal is straight and ends within 100 mm of places where two other tubes meet.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'roof diagonal'"
    demand  = "tube.straight and all(tube.ends, .to_joint <= 100*mm)"
    rectify = "Move the end to the corner of the hoop."
  }

  clause "4.37" {
    title   = "Shape of the pillar reinforcements"
    concern = "safety"
    page    = "32e"
    stage   = "bare shell"
    text    = <<-TEXT
      The reinforcement beside the windscreen is straight, or has one bend of no more than 20
      degrees.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'windscreen pillar reinforcement'"
    demand  = "tube.bends <= 1 and all(tube.corners, .angle <= 20*deg)"
    rectify = "Make it anew, straighter."
  }

  clause "4.38" {
    title   = "Upper ends of the pillar reinforcements"
    concern = "safety"
    page    = "32e"
    stage   = "bare shell"
    text    = <<-TEXT
      The reinforcement beside the windscreen ends above within 100 mm of the junction of half-hoop,
      or front hoop, and transverse or longitudinal member.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'windscreen pillar reinforcement'"
    demand  = <<-FORMULA
      let begin = first(tube.ends);
      let end = last(tube.ends);
      (above(begin, end) > 0 ? begin.to_joint : end.to_joint) <= 100*mm
    FORMULA
    rectify = "Carry it up to the junction."
  }

  clause "4.39" {
    title   = "Where the harness bar runs"
    concern = "safety"
    page    = "32f"
    stage   = "bare shell"
    text    = <<-TEXT
      The harness bar is one straight piece from leg to leg of the main hoop. It is not cut for a
      diagonal; the diagonal is cut for it.
    TEXT
    applies = "built_to_tables and cage.base_structure != 'two lateral hoops'"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'harness bar'"
    demand  = <<-FORMULA
      let hoop = find(cage.tubes, .part == 'main hoop');
      tube.straight and tube.joints == 0 and all(tube.ends, distance(#, hoop) <= 10*mm)
    FORMULA
    rectify = "Fit a bar in one piece, behind the seats."
  }

  clause "4.40" {
    title   = "Straps on the bar"
    concern = "safety"
    page    = "32f"
    stage   = "before trim"
    text    = <<-TEXT
      A shoulder strap goes round the harness bar itself and falls to it from the shoulder by no
      more than 100 mm.
    TEXT
    applies = "built_to_tables"
    across  = ["harness in harnesses", "strap in harness.straps"]
    where   = "strap.anchorage.fixed_to == 'harness bar'"
    demand  = <<-FORMULA
      any(cage.tubes, .part == 'harness bar' and distance(#, strap.anchor_at) <= 40*mm)
      and 0*mm <= above(strap.leaves_body, strap.anchor_at) <= 100*mm
    FORMULA
    rectify = "Raise or lower the seat; a bar is not bent down to suit it."
  }

  clause "4.41" {
    title   = "Angles between tubes"
    concern = "safety"
    page    = "32f"
    stage   = "before cutting"
    text    = <<-TEXT
      Where two tubes meet, the angle between them is 20 degrees or more, so that the weld gets to
      the heel of the joint.
    TEXT
    applies = "built_to_tables"
    across  = "joint in cage.joints"
    where   = "joint.tubes_meeting >= 2"
    demand  = "joint.least_angle >= 20*deg"
    rectify = "Move the end along the tube that it lands on."
  }

  clause "4.42" {
    title   = "Free lengths"
    concern = "safety"
    page    = "32g"
    stage   = "before cutting"
    text    = <<-TEXT
      No tube that the club asks for runs farther than a metre without a foot or another tube to
      hold it; a transverse member may run 1200 mm.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.mandatory"
    demand  = "tube.unsupported_span <= (tube.part == 'transverse member' ? 1200*mm : 1000*mm)"
    rectify = "Hold the tube on its way, by a strut to the nearest corner."
  }

  clause "4.43" {
    title    = "Headroom"
    concern  = "safety"
    page     = "32g"
    stage    = "before trim"
    text     = <<-TEXT
      Between the helmet of whoever sits belted in and the surface of the nearest tube, without its
      padding, are 50 mm or more.
    TEXT
    across   = "head in heads"
    at_least = 2
    demand   = "head.clearance >= 50*mm"
    rectify  = "Lower the seat or lean it back; thinner padding gives nothing."
  }

  clause "4.44" {
    title    = "Tubes near a helmet"
    concern  = "safety"
    page     = "32g"
    stage    = "before event"
    text     = <<-TEXT
      A tube whose surface comes within 150 mm of the top of a helmet is padded over the whole
      length that a head can reach.
    TEXT
    applies  = "built_to_tables"
    demand   = <<-FORMULA
      count(cage.paddings, .covered_length >= 150*mm)
        >= count(cage.tubes, let tube = #; any(heads, distance(tube, .top) - tube.outside / 2 <= 150*mm))
    FORMULA
    look_for = "Each of these tubes has a piece of its own, also the corner braces."
    rectify  = "Pad the tube, bonded and tied."
  }

  clause "4.45" {
    title   = "Width and height of the way out"
    concern = "safety"
    page    = "32h"
    stage   = "before cutting"
    text    = <<-TEXT
      Over the door bars the way out is 550 mm wide and 500 mm high or more, from axis to axis of
      the tubes around it.
    TEXT
    applies = "built_to_tables"
    across  = "opening in cage.door_apertures"
    demand  = "opening.width >= 550*mm and opening.height >= 500*mm"
    rectify = "Lower the door bars, or move the half-hoop's upper bend forward."
  }

  clause "4.46" {
    title    = "A hoop of another tube"
    concern  = "safety"
    page     = "32h"
    stage    = "before cutting"
    text     = <<-TEXT
      A main hoop whose tube is not listed, but which bends no more than one of 45 by 2.5 mm and
      yields no sooner, can be approved by the club in writing, for one car. Nobody but the club
      says so.
    TEXT
    applies  = "built_to_tables"
    across   = "tube in cage.tubes"
    where    = "tube.part == 'main hoop' and as_strong_as_listed(tube) and not listed_for_hoop(tube)"
    evidence = ["club approval"]
    look_for = "The approval names this chassis and this tube, and is signed by the drawing office."
    rectify  = "Write to the drawing office before the tube is bent."
  }

  clause "4.47" {
    title   = "Joints on the drawing"
    concern = "eligibility"
    page    = "32h"
    stage   = "bare shell"
    text    = <<-TEXT
      The drawing that is deposited says where every joint is, from which datum, and through which
      joints every tube runs.
    TEXT
    applies = "built_to_tables"
    demand  = "recorded(cage.datum) and all(cage.joints, recorded(.at)) and all(cage.tubes, recorded(.through))"
    rectify = "Measure the joints while the cage stands on the jig."
  }

  clause "4.48" {
    title   = "Mass of the cage"
    concern = "advice"
    page    = "32i"
    stage   = "before cutting"
    text    = <<-TEXT
      The club has seen sound cages between 45 and 75 kg. One that is heavier tires the car and
      not the trees.
    TEXT
    applies = "built_to_tables"
    demand  = "45*kg <= cage.mass <= 75*kg"
    rectify = "Look for tubes that hold nothing."
  }

  clause "4.49" {
    title   = "Sill bars"
    concern = "advice"
    page    = "32i"
    stage   = "before cutting"
    text    = <<-TEXT
      A bar along the sill, from foot to foot, keeps a post out that the door bars let under. The
      club advises it.
    TEXT
    applies = "built_to_tables"
    demand  = "count(cage.tubes, .part == 'sill bar' and all(.ends, .to_foot <= 100*mm)) >= 2"
    rectify = "Fit sill bars before the seats' cross tubes."
  }

  clause "4.50" {
    title   = "In front of the bulkhead"
    concern = "safety"
    page    = "32i"
    stage   = "bare shell"
    text    = <<-TEXT
      A brace to a strut top ends on a foot of its own. It is not welded to the strut top's sheet
      alone.
    TEXT
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.part in ['front strut brace', 'rear strut brace']"
    demand  = "any(tube.ends, .to_foot <= 20*mm)"
    rectify = "Put a plate and a foot under the end."
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
  issued = "2026-09"
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
  issued    = "2026-09"
}

table "stays" {
  columns = { outside = "tube.outside", wall = "tube.wall" }
  rows = [
    ["38 mm", "2.5 mm"],
    ["40 mm", "2.0 mm"],
    ["1.5 in", ".095 in"],
  ]
  issued = "2026-09"
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
  issued = "2026-09"
}
