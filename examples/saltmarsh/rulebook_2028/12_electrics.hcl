chapter "12" {
  title = "Electrics"

  clause "12.1" {
    title    = "Circuit breaker"
    concern  = "safety"
    page     = 72
    stage    = "before event"
    text     = <<-TEXT
      One breaker, proof against sparks, cuts every circuit and stops the engine. Both of the crew
      reach it belted in, and it can be thrown from outside.
    TEXT
    demand   = <<-FORMULA
      circuit_breaker.cuts_everything and circuit_breaker.stops_engine
      and circuit_breaker.spark_proof and circuit_breaker.outside_trigger
      and circuit_breaker.reach_when_belted == 'both'
    FORMULA
    look_for = "Engine at 3000 rpm, lamps on: throw it once from each place."
    rectify  = "Wire ignition and alternator through the breaker; fit a resistor against the alternator's run-on."
  }

  clause "12.2" {
    title   = "Mark of the breaker"
    concern = "safety"
    page    = 72
    stage   = "before event"
    text    = <<-TEXT
      The outside trigger of the breaker is marked by a red spark in a blue triangle of 120 mm at
      its base.
    TEXT
    demand  = "circuit_breaker.outside_mark_base >= 120*mm"
    rectify = "Renew the mark in its full size."
  }

  clause "12.3" {
    title    = "Hold of the battery"
    concern  = "safety"
    page     = 73
    stage    = "before trim"
    text     = <<-TEXT
      A battery is clamped to the shell with an insulated frame and two bolts, of 10 mm, or of 8
      mm where the battery weighs no more than 10 kg. Its terminals are covered.
    TEXT
    across   = "battery in batteries"
    at_least = 1
    demand   = <<-FORMULA
      battery.clamp_bolt_count >= 2 and battery.clamp_insulated and battery.terminals_covered
      and battery.clamp_bolt_diameter >= (battery.mass <= 10*kg ? 8*mm : 10*mm)
    FORMULA
    rectify  = "Clamp the battery with a frame over its top, bolted through the floor."
  }

  clause "12.4" {
    title   = "Battery beside the crew"
    concern = "safety"
    page    = 73
    stage   = "before trim"
    text    = <<-TEXT
      A battery in the crew's compartment is a dry one, or stands in a tight box that breathes
      outwards.
    TEXT
    across  = "battery in batteries"
    where   = "battery.place == 'cockpit'"
    demand  = "battery.chemistry != 'wet lead-acid' or battery.boxed and battery.vented_outside"
    rectify = "Fit a dry battery, or box it."
  }

  clause "12.5" {
    title    = "Wiring"
    concern  = "safety"
    page     = 74
    stage    = "before trim"
    text     = <<-TEXT
      Looms inside run in sleeving that resists fire. Every cable through sheet metal has a
      grommet, every circuit a fuse of its own, and the long battery cable is kept away from seats
      and jack.
    TEXT
    demand   = <<-FORMULA
      wiring.flame_resistant_sleeving and wiring.grommets_everywhere
      and wiring.every_circuit_fused and wiring.battery_cable_protected
    FORMULA
    look_for = "Pull at the loom every hand's breadth; it moves nowhere against an edge."
    rectify  = "Sleeve and clip the loom anew before the trim goes in."
  }

  clause "12.6" {
    title   = "Additional lamps"
    concern = "eligibility"
    page    = 74
    stage   = "before event"
    text    = "Up to six additional headlamps are carried; a classic carries four."
    demand  = <<-FORMULA
      sum(filter(lamps, .purpose == 'additional headlamp'), .quantity)
        <= (car.class == 'classic' ? 4 : 6)
    FORMULA
    rectify = "Take lamps off in pairs."
  }

  clause "12.7" {
    title   = "Lamps to the rear"
    concern = "safety"
    page    = 75
    stage   = "before event"
    text    = <<-TEXT
      In the sea fog the car behind sees lamps or nothing. Two brake lamps and one rear fog lamp
      work, each fog lamp with 50 square centimetres lit or more.
    TEXT
    demand  = <<-FORMULA
      any(lamps, .purpose == 'brake lamp' and .quantity >= 2 and .works)
      and any(lamps, .purpose == 'rear fog lamp' and .works and .lit_area >= 50*sq_cm)
    FORMULA
    rectify = "Fit a rear fog lamp of full size, high and in the middle."
  }

  clause "12.8" {
    title    = "Lamps for the road"
    concern  = "eligibility"
    page     = 75
    stage    = "before event"
    text     = "What the road law asks for works and has its approval mark."
    across   = "lamp in lamps"
    where    = <<-FORMULA
      lamp.purpose in ['headlamp', 'position lamp', 'direction indicator', 'brake lamp',
        'number plate lamp']
    FORMULA
    at_least = 5
    demand   = "lamp.works and lamp.approved"
    look_for = "Walk round the car while somebody works the switches."
    rectify  = "Replace bulb or lamp."
  }

  clause "12.9" {
    title   = "Charging"
    concern = "advice"
    page    = 76
    stage   = "before event"
    text    = "With all lamps on the battery should see 13.4 to 14.8 V."
    demand  = "13.4*volt <= wiring.charging_voltage <= 14.8*volt"
    rectify = "Check belt, earth strap and regulator."
  }
}
