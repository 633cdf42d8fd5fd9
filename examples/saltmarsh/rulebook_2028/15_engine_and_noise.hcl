chapter "15" {
  title = "Engine and noise"

  clause "15.1" {
    title    = "Restrictor"
    concern  = "eligibility"
    page     = 89
    stage    = "before event"
    text     = <<-TEXT
      A turbocharged engine with four driven wheels breathes through a restrictor of 34 mm, 3 mm
      long, 50 mm or less from the blades, and through nothing else.
    TEXT
    applies  = "car.class == 'four-wheel drive open' and engine.induction == 'turbocharged'"
    across   = "restrictor in restrictors"
    at_least = 1
    demand   = <<-FORMULA
      restrictor.inner_diameter <= 34*mm and restrictor.throat_length >= 3*mm
      and restrictor.distance_to_compressor <= 50*mm and restrictor.bypass_closed
    FORMULA
    rectify  = "Fit a restrictor of the right bore; a sleeve that comes out is none."
  }

  clause "15.2" {
    title   = "Seals"
    concern = "eligibility"
    page    = 89
    stage   = "before event"
    text    = "The restrictor and the turbocharger are sealed by the club."
    applies = "car.class == 'four-wheel drive open' and engine.induction == 'turbocharged'"
    demand  = <<-FORMULA
      any(seals, .sealed_part == 'restrictor' and .intact)
      and any(seals, .sealed_part == 'turbocharger' and .intact)
    FORMULA
    rectify = "Have the parts sealed before the event; bring wire and drilled screws."
  }

  clause "15.3" {
    title   = "Throttle"
    concern = "safety"
    page    = 90
    stage   = "before trim"
    text    = "Two springs on the outside close the throttle, each strong enough alone."
    demand  = "engine.throttle_return_springs >= 2"
    rectify = "Add a second spring with a hook of its own."
  }

  clause "15.4" {
    title   = "Catch tank"
    concern = "safety"
    page    = 90
    stage   = "before event"
    text    = <<-TEXT
      The breather of the engine ends in a tank of 2 litres, or of 3 where the engine has more
      than 2000 cc, whose level can be seen.
    TEXT
    demand  = <<-FORMULA
      catch_tank.capacity >= (engine.capacity <= 2000*cc ? 2*litre : 3*litre)
      and catch_tank.level_visible
    FORMULA
    rectify = "Fit a larger tank with a sight tube."
  }

  clause "15.5" {
    title    = "Shaft to the rear"
    concern  = "safety"
    page     = 90
    stage    = "before trim"
    text     = <<-TEXT
      Where a shaft runs to the rear axle a hoop of steel of 25 by 5 mm goes all round it behind
      its front joint.
    TEXT
    applies  = "car.driven_wheels != 'front'"
    across   = "hoop in shaft_guards"
    at_least = 1
    demand   = <<-FORMULA
      hoop.material == 'steel' and hoop.width >= 25*mm and hoop.thickness >= 5*mm
      and hoop.goes_all_round
    FORMULA
    rectify  = "Weld a hoop from flat bar and bolt it to the tunnel."
  }

  clause "15.6" {
    title   = "Exhaust outlet"
    concern = "eligibility"
    page    = 91
    stage   = "before event"
    text    = <<-TEXT
      The exhaust ends behind or beside the car, 100 to 450 mm over the ground, and stands out no
      further than the bodywork.
    TEXT
    demand  = <<-FORMULA
      exhaust.outlet != 'front' and 100*mm <= exhaust.outlet_height <= 450*mm
      and exhaust.outlet_protrusion <= 0*mm
    FORMULA
    rectify = "Shorten or turn the tail pipe."
  }

  clause "15.7" {
    title    = "Heat"
    concern  = "safety"
    page     = 91
    stage    = "before trim"
    text     = <<-TEXT
      Nothing hot lies beside fuel, brake line, loom or the floor under the crew without a shield
      between.
    TEXT
    demand   = "exhaust.shielded"
    look_for = "Scorched paint, brittle grommets, brown insulation."
    rectify  = "Fit shields with a gap of a finger."
  }

  clause "15.8" {
    title   = "Catalyst"
    concern = "eligibility"
    page    = 92
    stage   = "before event"
    text    = "A petrol engine in a car first registered after 1992 keeps a catalyst that works."
    applies = "engine.fuel == 'petrol' and car.first_registered > date('1992-12-31')"
    demand  = "exhaust.catalyst"
    rectify = "Fit a sports catalyst."
  }

  clause "15.9" {
    title   = "Noise"
    concern = "eligibility"
    page    = 92
    stage   = "before event"
    text    = <<-TEXT
      Birds nest behind the sea wall from April on. Standing, half a metre from the outlet at 45
      degrees and at 3500 rpm, no car is louder than the table says for its class.
    TEXT
    demand  = "any(filter(table.noise, .class == car.class), exhaust.noise <= .limit)"
    rectify = "Repack the silencer, or add a second one."
  }
}

table "noise" {
  columns = { class = "car.class", limit = "exhaust.noise" }
  rows = [
    ["two-wheel drive open", "98 dB(A)"],
    ["four-wheel drive open", "98 dB(A)"],
    ["classic", "100 dB(A)"],
  ]
  issued = "2026-09"
}
