chapter "8" {
  title = "Harnesses"

  clause "8.1" {
    title    = "Standard and points"
    concern  = "safety"
    page     = 49
    stage    = "before event"
    text     = <<-TEXT
      Each of the crew wears a harness with six points or more, of a standard of 2016 or, in a
      classic, of the one before it, with a rotary buckle.
    TEXT
    across   = "harness in harnesses"
    at_least = 2
    demand   = <<-FORMULA
      harness.points >= 6 and harness.buckle == 'rotary'
      and (harness.standard == 'FIA 8853-2016'
        or car.class == 'classic' and harness.standard in ['FIA 8853/98', 'SFI 16.1'])
    FORMULA
    rectify  = "Fit a harness of the standard of 2016."
  }

  clause "8.2" {
    title   = "Last day of each strap"
    concern = "safety"
    page    = 49
    stage   = "before event"
    text    = <<-TEXT
      Every strap has a label of its own, and the strap with the earliest one ends the harness. A
      label with a year holds to the 31st of December; one with a month, to its last day. A strap
      that shows its making only is good for five years from the end of that label.
    TEXT
    until   = "2027-06-30"
    across  = ["harness in harnesses", "strap in harness.straps"]
    demand  = <<-FORMULA
      if recorded(strap.not_after) {
        end_of_label(strap.not_after) >= on
      } else {
        years_after(end_of_label(strap.made), 5) >= on
      }
    FORMULA
    rectify = "Fit a new strap of the same set, or a new harness; a label is not sewn over."
  }

  # Bulletin 3 of 2027, in mid-season. It reached whoever has no end on the label.
  clause "8.2" {
    title   = "Last day of each strap"
    concern = "safety"
    page    = 49
    stage   = "before event"
    text    = <<-TEXT
      Every strap has a label of its own, and the strap with the earliest one ends the harness. A
      label with a year holds to the 31st of December; one with a month, to its last day. Of a
      strap that shows its making only, the year of making is the first of five; the fifth ends
      it on the 31st of December.
    TEXT
    from    = "2027-07-01"
    across  = ["harness in harnesses", "strap in harness.straps"]
    demand  = <<-FORMULA
      if recorded(strap.not_after) {
        end_of_label(strap.not_after) >= on
      } else {
        end_of_year(years_after(strap.made, 4)) >= on
      }
    FORMULA
    rectify = "Fit a new strap of the same set, or a new harness; a label is not sewn over."
  }

  clause "8.3" {
    title   = "Six straps"
    concern = "safety"
    page    = 50
    stage   = "before event"
    text    = "A harness has two straps for the shoulders, two for the lap and two between the legs."
    across  = "harness in harnesses"
    demand  = "len(harness.straps) >= 6"
    rectify = "Complete the harness with straps of its own set."
  }

  clause "8.4" {
    title   = "Shoulder straps"
    concern = "safety"
    page    = 50
    stage   = "before trim"
    text    = <<-TEXT
      Seen from the side a shoulder strap falls towards its anchorage by no more than 20 degrees
      and never rises to it. Seen from above it keeps within 20 degrees of the seat's middle line.
    TEXT
    across  = "harness in harnesses"
    demand  = <<-FORMULA
      let left = harness.strap['left shoulder'];
      let right = harness.strap['right shoulder'];
      0*deg <= left.angle_to_horizontal <= 20*deg and 0*deg <= right.angle_to_horizontal <= 20*deg
      and max(left.sideways_angle, right.sideways_angle) <= 20*deg
    FORMULA
    rectify = "Move the straps along the harness bar, or fit a bar at another height."
  }

  clause "8.5" {
    title   = "Lap straps"
    concern = "safety"
    page    = 51
    stage   = "before trim"
    text    = "A lap strap leaves the hip at 45 to 75 degrees below the level, so that it lies over bone."
    across  = "harness in harnesses"
    demand  = <<-FORMULA
      45*deg <= harness.strap['left lap'].angle_to_horizontal <= 75*deg
      and 45*deg <= harness.strap['right lap'].angle_to_horizontal <= 75*deg
    FORMULA
    rectify = "Move the anchorages of the lap straps."
  }

  clause "8.6" {
    title   = "Width of the straps"
    concern = "safety"
    page    = 51
    stage   = "before event"
    text    = <<-TEXT
      Lap straps are 44 mm wide or more. Shoulder straps are 70 mm wide, or 44 mm where they run
      over a head restraint they are made for.
    TEXT
    across  = "harness in harnesses"
    demand  = <<-FORMULA
      let least = harness.for_head_restraint ? 44*mm : 70*mm;
      min(harness.strap['left lap'].width, harness.strap['right lap'].width) >= 44*mm
      and min(harness.strap['left shoulder'].width, harness.strap['right shoulder'].width) >= least
    FORMULA
    rectify = "Fit straps of the full width."
  }

  clause "8.7" {
    title   = "Bolts of the anchorages"
    concern = "safety"
    page    = 52
    stage   = "before paint"
    text    = "A plate or eye is held by a bolt of 7/16 in or M12, of class 8.8 or its inch fellow, grade 8."
    across  = ["harness in harnesses", "strap in harness.straps"]
    where   = "strap.anchorage.attached_by in ['bolted plate', 'eyebolt']"
    demand  = <<-FORMULA
      strap.anchorage.bolt_diameter >= 7/16*inch
      and strap.anchorage.bolt_grade in ['8.8', '10.9', '12.9', 'SAE grade 8']
    FORMULA
    rectify = "Fit the bolt that came with the harness."
  }

  clause "8.8" {
    title   = "Plates behind the anchorages"
    concern = "safety"
    page    = 52
    stage   = "before paint"
    text    = <<-TEXT
      Behind an anchorage in sheet metal lies a plate of 40 square centimetres and 3 mm. A tab
      welded for it is 4 mm thick.
    TEXT
    across  = ["harness in harnesses", "strap in harness.straps"]
    where   = "strap.anchorage.fixed_to == 'shell'"
    demand  = <<-FORMULA
      strap.anchorage.plate_area >= 40*sq_cm and strap.anchorage.plate_thickness >= 3*mm
      and (strap.anchorage.tab_thickness ?? (4*mm)) >= 4*mm
    FORMULA
    rectify = "Weld in a plate that spreads the pull over the member behind it."
  }

  clause "8.9" {
    title    = "Not to the seat"
    concern  = "safety"
    page     = 52
    stage    = "before trim"
    text     = "No strap ends on the seat or its supports, and each pulls in line with its fitting."
    across   = ["harness in harnesses", "strap in harness.straps"]
    demand   = "strap.anchorage.fixed_to not in ['seat', 'seat support'] and strap.anchorage.pulls_in_line"
    look_for = "Sit in, pull tight, and follow each strap with the hand to its end: no edge, no fold, three turns through the slide."
    rectify  = "Give the strap an anchorage of its own in the shell."
  }

  clause "8.10" {
    title    = "State of the harness"
    concern  = "safety"
    page     = 53
    stage    = "before event"
    text     = <<-TEXT
      Webbing that is cut, frayed, bleached or stained is out, and so is a whole harness that was
      worn in an accident.
    TEXT
    across   = "harness in harnesses"
    demand   = "not harness.in_accident and all(harness.straps, not .damaged)"
    look_for = "Bend the webbing sharply between two fingers and look at the threads of its edges."
    rectify  = "Replace the harness."
  }

  clause "8.11" {
    title   = "Spread of the shoulder straps"
    concern = "safety"
    page    = 53
    stage   = "before trim"
    text    = <<-TEXT
      Seen from above the two shoulder straps run apart, or together, by 10 to 30 degrees between
      them, so that neither slips off a shoulder.
    TEXT
    across  = "harness in harnesses"
    demand  = "10*deg <= harness.shoulder_spread <= 30*deg"
    rectify = "Move the straps along the harness bar."
  }
}
