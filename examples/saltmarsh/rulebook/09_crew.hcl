chapter "9" {
  title = "What the crew wear"

  clause "9.1" {
    title    = "Helmets"
    concern  = "safety"
    page     = 55
    stage    = "before event"
    text     = <<-TEXT
      Helmets are of a standard of the list. Some of them come to an end, on the day that the
      table names.
    TEXT
    across   = "crew in crew_members"
    at_least = 2
    demand   = <<-FORMULA
      crew.helmet.standard in ['FIA 8859-2015', 'FIA 8859-2024', 'FIA 8860-2018',
        'FIA 8860-2018-ABP', 'Snell SA2025']
      or any(table.helmets_that_end, .standard == crew.helmet.standard and .until >= on)
    FORMULA
    rectify  = "Buy a helmet of a standard without an end."
  }

  clause "9.2" {
    title    = "State of the helmets"
    concern  = "safety"
    page     = 55
    stage    = "before event"
    text     = <<-TEXT
      A helmet has neither a crack nor a hole that its maker did not drill, and carries the
      maker's own anchors for the head restraint.
    TEXT
    across   = "crew in crew_members"
    demand   = "crew.helmet.restraint_anchors and not crew.helmet.damaged and not crew.helmet.altered"
    look_for = "Lining, chin strap and rivets; paint that hides the shell."
    rectify  = "Replace the helmet."
  }

  clause "9.3" {
    title   = "Head restraints"
    concern = "safety"
    page    = 56
    stage   = "before event"
    text    = <<-TEXT
      Both of the crew wear a head restraint. One with a label of month and year is good to the end
      of that month, five years on; one without an end is good as long as it is sound.
    TEXT
    across  = "crew in crew_members"
    demand  = <<-FORMULA
      if crew.head_restraint.standard == 'SFI 38.1' {
        years_after(end_of_month(crew.head_restraint.made), 5) >= on
      } else {
        crew.head_restraint.standard in ['FIA 8858-2002', 'FIA 8858-2010']
      }
    FORMULA
    rectify = "Send the restraint to be certified again, or replace it."
  }

  clause "9.4" {
    title   = "Tethers"
    concern = "advice"
    page    = 56
    stage   = "before event"
    text    = "Salt air eats the stitching of tethers. The club advises to renew them every five years."
    across  = "crew in crew_members"
    demand  = "years_after(end_of_label(crew.head_restraint.tethers_made), 5) >= on"
    rectify = "Order a pair of tethers from the restraint's maker."
  }

  clause "9.5" {
    title   = "Overalls"
    concern = "safety"
    page    = 57
    stage   = "before event"
    text    = "Overalls are of the standard of 2018, or of the one of 2000 up to the end of 2028."
    across  = "crew in crew_members"
    demand  = <<-FORMULA
      let overalls = crew.garment['overalls'];
      overalls.standard == 'FIA 8856-2018'
      or overalls.standard == 'FIA 8856-2000' and on <= date('2028-12-31')
    FORMULA
    rectify = "Replace the overalls."
  }

  clause "9.6" {
    title    = "Beneath and at the ends"
    concern  = "safety"
    page     = 57
    stage    = "before event"
    text     = <<-TEXT
      Beneath the overalls long underwear is worn, with balaclava and socks; shoes for both,
      gloves for the driver. All are of a standard for the heat of a fire.
    TEXT
    across   = ["crew in crew_members", "garment in crew.garments"]
    at_least = 13
    demand   = <<-FORMULA
      garment.standard in ['FIA 8856-2018', 'FIA 8856-2000', 'ISO 14460',
        'SFI 3.3', 'SFI 3.2A/5', 'SFI 3.2A/20']
    FORMULA
    rectify  = "Buy the missing piece; cotton that was sprayed is no substitute."
  }

  clause "9.7" {
    title    = "State of the clothing"
    concern  = "safety"
    page     = 58
    stage    = "before event"
    text     = <<-TEXT
      Badges are sewn to the outermost layer only. What is torn, burnt or soaked with oil is not
      worn.
    TEXT
    across   = ["crew in crew_members", "garment in crew.garments"]
    demand   = "not garment.sewn_through and not garment.damaged"
    look_for = "Turn the overalls inside out: no thread of a badge shows."
    rectify  = "Replace the piece."
  }

  clause "9.8" {
    title   = "Vests"
    concern = "safety"
    page    = 58
    stage   = "before event"
    text    = "A high-visibility vest for each of the crew lies where it can be reached before stepping out."
    across  = "crew in crew_members"
    demand  = "crew.reflective_vest"
    rectify = "Put a vest into each door pocket."
  }
}

table "helmets_that_end" {
  columns = { standard = "helmet.standard", until = "helmet.not_after" }
  rows = [
    ["Snell SA2015", "2026-12-31"],
    ["Snell SA2020", "2031-12-31"],
    ["FIA 8860-2010", "2028-12-31"],
  ]
  issued = "2026-09"
}
