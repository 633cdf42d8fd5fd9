chapter "13" {
  title = "Outside, glass and flaps"

  clause "13.1" {
    title    = "Towing eyes"
    concern  = "safety"
    page     = 78
    stage    = "before event"
    text     = <<-TEXT
      One eye in front and one behind, fixed to the structure, in a bright colour, pointed to by
      an arrow, within the outline of the car, and wide enough for the hook of the recovery
      tractor: 60 mm.
    TEXT
    across   = "eye in towing_eyes"
    at_least = 2
    demand   = <<-FORMULA
      eye.fixed_to_structure and eye.within_outline and eye.marked
      and eye.colour in ['yellow', 'red', 'orange']
      and ((eye.inner_diameter ?? (0*mm)) >= 60*mm or eye.opening_area >= 28*sq_cm)
    FORMULA
    rectify  = "Fit an eye of the right size to the chassis leg."
  }

  clause "13.2" {
    title   = "Load of the towing eyes"
    concern = "safety"
    page    = 78
    stage   = "before event"
    text    = <<-TEXT
      Mud holds a car fast. An eye carries three times the weight of the declared mass, or has 10
      mm of steel where no load is marked on it.
    TEXT
    across  = "eye in towing_eyes"
    demand  = <<-FORMULA
      if recorded(eye.rated_load) {
        eye.rated_load >= 3 * car.declared_mass * g0
      } else {
        eye.form == 'rigid' and eye.thickness >= 10*mm
      }
    FORMULA
    rectify = "Fit a stronger eye, or a strap whose load is sewn on."
  }

  clause "13.3" {
    title    = "Mud flaps"
    concern  = "eligibility"
    page     = 79
    stage    = "before event"
    text     = <<-TEXT
      Behind each wheel hangs a flap of 3 mm of soft plastic or rubber, as broad as the tyre, no
      more than 90 mm over the ground.
    TEXT
    across   = "flap in mud_flaps"
    at_least = 4
    demand   = <<-FORMULA
      flap.material in ['plastic', 'rubber'] and flap.thickness >= 3*mm
      and flap.covers_tyre_width and flap.ground_distance <= 90*mm
    FORMULA
    rectify  = "Cut new flaps; hang them with a strip of light alloy, not with washers."
  }

  clause "13.4" {
    title    = "Guards"
    concern  = "safety"
    page     = 79
    stage    = "before event"
    text     = "The engine is guarded from below by light alloy of 5 mm, steel of 3 mm or composite of 6 mm."
    across   = "guard in underbody_guards"
    where    = "guard.covers == 'engine'"
    at_least = 1
    demand   = <<-FORMULA
      guard.material == 'aluminium alloy' and guard.thickness >= 5*mm
      or guard.material == 'steel' and guard.thickness >= 3*mm
      or guard.material == 'composite' and guard.thickness >= 6*mm
    FORMULA
    look_for = "All bolts there, heads sunk, no edge turned forward."
    rectify  = "Fit a thicker guard."
  }

  clause "13.5" {
    title   = "Side glass"
    concern = "safety"
    page    = 80
    stage   = "before event"
    text    = <<-TEXT
      Tempered glass in the sides carries a clear film of 50 to 110 microns against splinters, and
      lets 65 % of the light through in the front doors.
    TEXT
    across  = "window in windows"
    where   = "window.material == 'tempered glass'"
    demand  = <<-FORMULA
      window.film and 50*micron <= window.film_thickness <= 110*micron
      and window.light_transmission >= 65*percent
    FORMULA
    rectify = "Have clear film laid on the inside."
  }

  clause "13.6" {
    title   = "Plastic panes"
    concern = "safety"
    page    = 80
    stage   = "before event"
    text    = "A pane of plastic is polycarbonate of 3 mm or more. Acrylic breaks into knives."
    across  = "window in windows"
    where   = "window.material in ['polycarbonate', 'acrylic']"
    demand  = "window.material == 'polycarbonate' and window.thickness >= 3*mm"
    rectify = "Cut new panes from polycarbonate."
  }

  clause "13.7" {
    title    = "Windscreen"
    concern  = "safety"
    page     = 81
    stage    = "before event"
    text     = <<-TEXT
      The windscreen is laminated. A crack in it is no longer than 150 mm; wipers, washer and
      demister work.
    TEXT
    demand   = <<-FORMULA
      windscreen.laminated and (windscreen.longest_crack ?? (0*mm)) <= 150*mm
      and windscreen.wipers_work and windscreen.demisted
    FORMULA
    look_for = "No crack before the driver's eyes, however short."
    rectify  = "Replace the windscreen."
  }

  clause "13.8" {
    title   = "Nets"
    concern = "safety"
    page    = 81
    stage   = "before event"
    text    = <<-TEXT
      A net is not asked for. Where one is fitted it is of SFI 27.1 or FIA 8863-2013, opens with
      one hand, and is good for two years from the end of its label, or to the day on it.
    TEXT
    applies = "fitted(window_nets)"
    across  = "net in window_nets"
    demand  = <<-FORMULA
      net.standard in ['SFI 27.1', 'FIA 8863-2013'] and net.opens_with_one_hand
      and (recorded(net.not_after) ? end_of_label(net.not_after) >= on
        : years_after(end_of_label(net.made), 2) >= on)
    FORMULA
    rectify = "Renew the net, or take it out."
  }

  clause "13.9" {
    title    = "Mirrors"
    concern  = "eligibility"
    page     = 82
    stage    = "before event"
    text     = "A mirror on either side has 80 square centimetres of glass or more."
    across   = "mirror in mirrors"
    at_least = 2
    demand   = "mirror.intact and mirror.glass_area >= 80*sq_cm"
    rectify  = "Fit the mirrors of the road car."
  }
}
