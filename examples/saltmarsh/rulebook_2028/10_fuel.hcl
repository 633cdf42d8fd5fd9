chapter "10" {
  title = "Fuel"

  clause "10.1" {
    title   = "Fuel cell"
    concern = "safety"
    page    = 60
    stage   = "before trim"
    text    = "An open car carries its fuel in a cell with foam in it, of a standard of the table."
    applies = "car.class != 'classic'"
    demand  = "fitted(fuel_cell) and any(table.cell_life, .standard == fuel_cell.standard) and fuel_cell.foam"
    rectify = "Fit a fuel cell of a listed standard."
  }

  clause "10.2" {
    title   = "Age of the bladder"
    concern = "safety"
    page    = 60
    stage   = "before trim"
    text    = <<-TEXT
      A bladder is good for the years of the table, counted from its making. Its maker may certify
      it anew, for two years at most and no more than once.
    TEXT
    applies = "fitted(fuel_cell)"
    demand  = <<-FORMULA
      if recorded(fuel_cell.recertified) {
        end_of_label(fuel_cell.recertified_until) >= on
          and fuel_cell.recertified_until <= years_after(fuel_cell.recertified, 2)
      } else {
        any(filter(table.cell_life, .standard == fuel_cell.standard),
          years_after(end_of_label(fuel_cell.made), .years) >= on)
      }
    FORMULA
    rectify = "Send the bladder to its maker; order early, it takes a season."
  }

  clause "10.3" {
    title   = "Container of the cell"
    concern = "safety"
    page    = 61
    stage   = "before trim"
    text    = <<-TEXT
      The container round the bladder is of steel of 0.9 mm, of light alloy of 1.5 mm or of
      composite of 3 mm, and two straps or a frame hold it, 200 mm or more away from the rear
      panel.
    TEXT
    applies = "fitted(fuel_cell)"
    demand  = <<-FORMULA
      any(table.cell_container, .material == fuel_cell.container_material
          and fuel_cell.container_thickness >= .thickness)
      and fuel_cell.straps >= 2 and fuel_cell.distance_to_rear >= 200*mm
    FORMULA
    rectify = "Make a new container, or move the cell forward."
  }

  clause "10.4" {
    title    = "Tank of a classic"
    concern  = "safety"
    page     = 61
    stage    = "before trim"
    text     = <<-TEXT
      A classic may keep its maker's tank, in its place, behind a guard, with no filler pipe open
      to the crew.
    TEXT
    applies  = "car.class == 'classic' and not fitted(fuel_cell)"
    demand   = "fuel_tank.original and fuel_tank.guarded and not fuel_tank.filler_in_cockpit"
    look_for = "Rust along the tank's seam, hoses older than the crew."
    rectify  = "Fit a guard, or a fuel cell."
  }

  clause "10.5" {
    title    = "Compartment"
    concern  = "safety"
    page     = 62
    stage    = "before trim"
    text     = <<-TEXT
      The space of the cell is tight towards the crew, breathes outwards, and drains through an
      opening of 20 mm.
    TEXT
    applies  = "fitted(fuel_cell)"
    demand   = <<-FORMULA
      tank_compartment.sealed_from_cockpit and tank_compartment.ventilated
      and tank_compartment.drained and tank_compartment.drain_diameter >= 20*mm
    FORMULA
    look_for = "Pour a cup of water in: it leaves under the car, and none of it towards the crew."
    rectify  = "Seal the seams, and drill the drain at the lowest place."
  }

  clause "10.6" {
    title    = "Pumps"
    concern  = "safety"
    page     = 62
    stage    = "before trim"
    text     = <<-TEXT
      A fuel pump stands outside the crew's compartment and runs with the engine only. The lift
      pump of a swirl pot is a fuel pump too.
    TEXT
    across   = "pump in fuel_pumps"
    at_least = 1
    demand   = "pump.place != 'cockpit' and pump.stops_with_engine"
    rectify  = "Wire the pump through a relay that the engine's speed signal holds."
  }

  clause "10.7" {
    title   = "Standby pump"
    concern = "advice"
    page    = 62
    stage   = "before trim"
    text    = <<-TEXT
      The longest stage leads eleven miles out to the sea wall. The club advises a second pump
      that can be switched in.
    TEXT
    applies = "fitted(fuel_pumps)"
    demand  = "any(fuel_pumps, .ready_to_connect)"
    rectify = "Fit a standby pump beside the main one."
  }

  clause "10.8" {
    title    = "Breathers"
    concern  = "safety"
    page     = 63
    stage    = "before trim"
    text     = "Each breather of cell or tank ends outside the car and shuts when the car lies on its roof."
    across   = "vent in vents"
    at_least = 1
    demand   = "vent.outlet in ['outside the body', 'under the floor'] and vent.rollover_valve"
    rectify  = "Fit a roll-over valve and lead the hose out through the floor."
  }

  clause "10.9" {
    title   = "Fuel hoses"
    concern = "safety"
    page    = 63
    stage   = "before trim"
    text    = <<-TEXT
      A fuel hose with its fittings bursts at 70 bar or more, at 135 degrees Celsius, and at ten
      times what it works at. Pipe of metal is not asked for this.
    TEXT
    across  = "line in lines"
    where   = "line.fluid in ['fuel', 'fuel return'] and line.form != 'metal pipe'"
    demand  = <<-FORMULA
      line.burst_pressure >= 70*bar and line.burst_pressure / line.working_pressure >= 10
      and line.rated_temperature >= celsius(135)
    FORMULA
    rectify = "Replace the hose by one with metal braid."
  }

  clause "10.10" {
    title   = "Lines past the crew"
    concern = "safety"
    page    = 64
    stage   = "before trim"
    text    = <<-TEXT
      Fuel, oil and brake lines may pass through the crew's compartment in metal pipe or metal-
      braided hose. Fuel and oil have no joint there; brake lines may have screwed ones.
    TEXT
    across  = "line in lines"
    where   = "line.runs_through == 'cockpit'"
    demand  = <<-FORMULA
      line.form in ['metal pipe', 'metal-braided hose']
      and (line.joints_in_cockpit == 0 or line.fluid == 'brake fluid' and line.screwed_joints)
    FORMULA
    rectify = "Run the line in one piece, or beneath the floor."
  }

  clause "10.11" {
    title    = "Lines beneath the car"
    concern  = "safety"
    page     = 64
    stage    = "before trim"
    text     = <<-TEXT
      Lines beneath the car lie out of the way of stones and of the jack, and are clipped every
      300 mm.
    TEXT
    across   = "line in lines"
    where    = "line.runs_through == 'underneath'"
    demand   = "line.protected and line.greatest_clip_distance <= 300*mm"
    look_for = "Shine along the line from behind: nothing hangs below the sill."
    rectify  = "Move the line into the tunnel, with more clips."
  }

  clause "10.12" {
    title    = "Walls towards engine and fuel"
    concern  = "safety"
    page     = 65
    stage    = "before trim"
    text     = <<-TEXT
      Between the crew and engine or fuel stands a wall that holds liquid and flame back. No gap
      in it is wider than 2 mm.
    TEXT
    across   = "wall in bulkheads"
    at_least = 2
    demand   = "wall.liquid_tight and wall.flame_resistant and wall.largest_gap <= 2*mm"
    look_for = "A lamp behind the wall, the cockpit dark."
    rectify  = "Close the gap with sheet metal and sealant for heat."
  }

  clause "10.13" {
    title   = "Filler"
    concern = "safety"
    page    = 65
    stage   = "before trim"
    text    = "The neck of the cell has a valve that shuts when the neck is torn off."
    applies = "fitted(fuel_cell)"
    demand  = "fuel_cell.filler_shuts_itself"
    rectify = "Fit a neck with a flap valve."
  }
}

table "cell_life" {
  columns = { standard = "fuel_cell.standard", years = "count" }
  rows = [
    ["FIA FT3-1999", 5],
    ["FIA FT3.5-1999", 5],
    ["FIA FT5-1999", 5],
    ["SFI 28.3", 5],
  ]
  issued = "2026-09"
}

table "cell_container" {
  columns = { material = "fuel_cell.container_material", thickness = "fuel_cell.container_thickness" }
  rows = [
    ["steel", "0.9 mm"],
    ["stainless steel", "0.9 mm"],
    ["aluminium alloy", "1.5 mm"],
    ["composite", "3 mm"],
  ]
}
