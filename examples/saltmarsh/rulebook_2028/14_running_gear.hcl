chapter "14" {
  title = "Brakes, steering and wheels"

  clause "14.1" {
    title   = "Two circuits"
    concern = "safety"
    page    = 84
    stage   = "before event"
    text    = <<-TEXT
      The pedal works two circuits or more, and each of them brakes two wheels when the other has
      failed. A hydraulic handbrake does not replace the parking brake.
    TEXT
    demand  = "brakes.circuits >= 2 and brakes.parking_brake_holds"
    rectify = "Fit a tandem cylinder or two cylinders with a beam."
  }

  clause "14.2" {
    title    = "Discs"
    concern  = "safety"
    page     = 84
    stage    = "before event"
    text     = "No disc is thinner than its maker allows, and none has a crack that reaches its edge."
    across   = "disc in brake_discs"
    demand   = "disc.thickness >= disc.least_thickness and not disc.cracked"
    look_for = "Both sides of each disc, with a lamp through the wheel."
    rectify  = "Replace the discs of the axle."
  }

  clause "14.3" {
    title   = "Brake fluid"
    concern = "advice"
    page    = 85
    stage   = "before event"
    text    = <<-TEXT
      Fluid that has been in for a year boils early. The club advises to change it every twelve
      months, and to test that it boils at 200 degrees Celsius or more.
    TEXT
    demand  = <<-FORMULA
      months_after(brakes.fluid_changed, 12) >= on
      and brakes.fluid_boiling_point >= celsius(200)
    FORMULA
    rectify = "Change the fluid."
  }

  clause "14.4" {
    title    = "Steering"
    concern  = "safety"
    page     = 85
    stage    = "before event"
    text     = <<-TEXT
      The lock of the column is out of action, the column gives way lengthwise, the rim is a
      closed ring, and the play at it is 20 mm at most. A quick release is yellow.
    TEXT
    demand   = <<-FORMULA
      steering.column_lock_removed and steering.column_collapses and steering.rim_closed
      and steering.free_play <= 20*mm
      and (not steering.quick_release or steering.quick_release_yellow)
    FORMULA
    look_for = "Pull, push and rock the wheel; take the quick release off once and put it on again."
    rectify  = "Find the joint that has the play."
  }

  clause "14.5" {
    title   = "Wheel nuts"
    concern = "safety"
    page    = 86
    stage   = "before event"
    text    = "A nut holds by twelve turns' worth of thread: 18 mm or more."
    demand  = <<-FORMULA
      min(wheel['front left'].thread_engagement, wheel['front right'].thread_engagement,
        wheel['rear left'].thread_engagement, wheel['rear right'].thread_engagement) >= 18*mm
    FORMULA
    rectify = "Fit longer studs."
  }

  clause "14.6" {
    title   = "Spacers"
    concern = "safety"
    page    = 86
    stage   = "before event"
    text    = "A spacer is 20 mm thick at most."
    across  = "wheel in wheels"
    demand  = "(wheel.spacer_thickness ?? (0*mm)) <= 20*mm"
    rectify = "Fit wheels of another offset."
  }

  clause "14.7" {
    title   = "Tyres"
    concern = "safety"
    page    = 87
    stage   = "before event"
    text    = <<-TEXT
      Tyres have a road mark or are on the list, with 1.6 mm of tread at least, and are no older
      than six years, counted from the end of the week or month of their making.
    TEXT
    across  = "wheel in wheels"
    demand  = <<-FORMULA
      wheel.tyre.standard in ['ECE R30', 'ECE R54', 'listed competition tyre']
      and wheel.tyre.tread_depth >= 1.6*mm
      and years_after(end_of_label(wheel.tyre.made), 6) >= on
      and not wheel.tyre.damaged
    FORMULA
    rectify = "Replace the tyre."
  }

  clause "14.8" {
    title    = "Spare wheel"
    concern  = "safety"
    page     = 87
    stage    = "before event"
    text     = "One spare wheel or two are held so that they stay where they are with the car on its roof."
    demand   = <<-FORMULA
      spare_carrier.fixed_by in ['stud and plate', 'ratchet straps', 'strut and hook']
      and spare_carrier.fixings >= 2
    FORMULA
    look_for = "Pull at the wheel with both hands."
    rectify  = "Bolt a stud with a plate to the floor."
  }
}
