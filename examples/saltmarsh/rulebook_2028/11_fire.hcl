chapter "11" {
  title = "Fire"

  clause "11.1" {
    title   = "Plumbed-in system"
    concern = "safety"
    page    = 67
    stage   = "before event"
    text    = <<-TEXT
      An open car has a plumbed-in system of one of the two technical lists. A classic may do with
      the hand-held extinguishers of 11.8.
    TEXT
    applies = "car.class != 'classic' or fitted(fire_system)"
    demand  = "fitted(fire_system) and fire_system.standard in ['FIA 8865-2015', 'FIA 1999']"
    rectify = "Fit a listed system."
  }

  clause "11.2" {
    title   = "Quantity of agent"
    concern = "safety"
    page    = 67
    stage   = "before event"
    text    = "How much agent the system holds follows from the agent and the declared mass of the car."
    applies = "fitted(fire_system)"
    demand  = <<-FORMULA
      any(filter(in_band(table.agent, car.declared_mass), .agent == fire_system.agent),
        fire_system.agent_mass >= .quantity)
    FORMULA
    rectify = "Fit a larger bottle, or a second one."
  }

  clause "11.3" {
    title    = "Service of the bottles"
    concern  = "safety"
    page     = 68
    stage    = "before event"
    text     = "A bottle is serviced every 24 months. The first 24 are counted from its making."
    applies  = "fitted(fire_system)"
    across   = "bottle in fire_system.fire_bottles"
    at_least = 1
    demand   = "months_after((bottle.serviced ?? bottle.made), 24) >= on"
    rectify  = "Send the bottle to be serviced; carry the slip."
  }

  clause "11.4" {
    title   = "Mass of the bottles"
    concern = "safety"
    page    = 68
    stage   = "before event"
    text    = <<-TEXT
      A bottle weighs at least 97 hundredths of the full mass that its maker prints on it. What is
      missing has leaked.
    TEXT
    applies = "fitted(fire_system)"
    across  = "bottle in fire_system.fire_bottles"
    demand  = "bottle.weighed_mass >= 97*percent * bottle.full_mass"
    rectify = "Have the bottle filled, and find out where it leaks."
  }

  clause "11.5" {
    title    = "Mounting of the bottles"
    concern  = "safety"
    page     = 68
    stage    = "before event"
    text     = <<-TEXT
      Each bottle lies in two metal straps with tabs against sliding, on bolts of 8 mm, and keeps
      300 mm from the outer edge of the body.
    TEXT
    applies  = "fitted(fire_system)"
    across   = "bottle in fire_system.fire_bottles"
    demand   = <<-FORMULA
      bottle.straps >= 2 and bottle.anti_torpedo and bottle.bracket_bolt_diameter >= 8*mm
      and bottle.distance_from_body_edge >= 300*mm
    FORMULA
    look_for = "The straps are metal all the way; pull at the bottle with both hands."
    rectify  = "Fit the bracket of the bottle's maker."
  }

  clause "11.6" {
    title    = "Triggers"
    concern  = "safety"
    page     = 69
    stage    = "before event"
    text     = <<-TEXT
      Both of the crew reach the trigger, belted in, and a marshal reaches another from outside.
      An electrical trigger has a source of its own. Setting the system off stops the engine.
    TEXT
    applies  = "fitted(fire_system)"
    demand   = <<-FORMULA
      fire_system.reach_when_belted == 'both' and fire_system.outside_trigger
      and (fire_system.own_power ?? true) and fire_system.stops_engine_too
    FORMULA
    look_for = "The pins are out before the start and in at service; a flag hangs on each."
    rectify  = "Move the trigger between the seats."
  }

  clause "11.7" {
    title   = "Mark and nozzles"
    concern = "safety"
    page    = 69
    stage   = "before event"
    text    = <<-TEXT
      The outside trigger is marked by a letter E of 80 mm in a white circle of 100 mm with a red
      edge. Two nozzles or more point at the crew's compartment and one at the engine.
    TEXT
    applies = "fitted(fire_system)"
    demand  = <<-FORMULA
      fire_system.outside_mark_diameter >= 100*mm and fire_system.outside_mark_letter_height >= 80*mm
      and fire_system.cockpit_nozzles >= 2 and fire_system.engine_nozzles >= 1
    FORMULA
    rectify = "Renew the mark; add the nozzle."
  }

  clause "11.8" {
    title    = "Hand-held extinguishers"
    concern  = "safety"
    page     = 70
    stage    = "before event"
    text     = <<-TEXT
      One hand-held extinguisher or more is within reach of the crew: 2 kg of powder, or 2.4
      litres of foam. Halon and its kin are not carried.
    TEXT
    across   = "extinguisher in extinguishers"
    at_least = 1
    demand   = <<-FORMULA
      extinguisher.agent == 'powder' and extinguisher.agent_mass >= 2*kg
      or extinguisher.agent in ['AFFF', 'water mist'] and extinguisher.agent_volume >= 2.4*litre
    FORMULA
    look_for = "The needle stands in the green, the pin is sealed, the hose is not perished."
    rectify  = "Replace the extinguisher."
  }

  clause "11.9" {
    title   = "Hand-held: service and mounting"
    concern = "safety"
    page    = 70
    stage   = "before event"
    text    = <<-TEXT
      It was filled or checked within the last 24 months, is held by two quick metal straps with
      tabs against sliding, and one of the crew reaches it belted in.
    TEXT
    across  = "extinguisher in extinguishers"
    demand  = <<-FORMULA
      months_after((extinguisher.serviced ?? extinguisher.made), 24) >= on
      and extinguisher.straps >= 2 and extinguisher.anti_torpedo
      and extinguisher.reach_when_belted != 'nobody'
    FORMULA
    rectify = "Have it checked; fit the metal bracket."
  }
}

# By declared mass. A car of exactly 1100 kg is of the heavier band.
table "agent" {
  columns = {
    agent      = "fire_system.agent"
    mass_from  = "car.declared_mass"
    mass_below = "car.declared_mass"
    quantity   = "fire_system.agent_mass"
  }
  bands = { from = "mass_from", below = "mass_below" }
  rows = [
    ["AFFF", "", "1100 kg", "3.0 kg"],
    ["AFFF", "1100 kg", "", "4.0 kg"],
    ["FK-5-1-12", "", "1100 kg", "2.0 kg"],
    ["FK-5-1-12", "1100 kg", "", "3.0 kg"],
  ]
  issued = "2026-09"
}
