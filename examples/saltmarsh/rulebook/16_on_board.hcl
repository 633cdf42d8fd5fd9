chapter "16" {
  title = "On board, and the causeway"

  clause "16.1" {
    title   = "Belt cutters"
    concern = "safety"
    page    = 94
    stage   = "before event"
    text    = <<-TEXT
      Two belt cutters lie where both of the crew reach both of them, hanging from the belts, and
      neither in a pocket.
    TEXT
    demand  = <<-FORMULA
      count(belt_cutters, .reach_when_belted == 'both'
        and .held_by in ['holder', 'hook and loop']) >= 2
    FORMULA
    rectify = "Fix a second cutter to the tunnel."
  }

  clause "16.2" {
    title   = "Triangle and first aid"
    concern = "safety"
    page    = 94
    stage   = "before event"
    text    = <<-TEXT
      A warning triangle with its mark is on board, and a first-aid kit, fixed, in which nothing
      is past its day.
    TEXT
    demand  = <<-FORMULA
      any(warning_triangles, .approved) and first_aid_kit.fixed
      and (recorded(first_aid_kit.not_after) ? end_of_label(first_aid_kit.not_after) >= on : true)
    FORMULA
    rectify = "Renew what is past its day."
  }

  clause "16.3" {
    title   = "Board"
    concern = "safety"
    page    = 95
    stage   = "before event"
    text    = "A board of 420 by 290 mm shows SOS in red on one side and OK in green on the other."
    demand  = <<-FORMULA
      max(sos_board.width, sos_board.height) >= 420*mm
      and min(sos_board.width, sos_board.height) >= 290*mm and sos_board.both_sides
    FORMULA
    rectify = "Ask the club's office for a board."
  }

  clause "16.4" {
    title   = "Tow rope"
    concern = "safety"
    page    = 95
    stage   = "before event"
    text    = <<-TEXT
      A rope of 4 m or more is on board whose breaking load is twice the weight of the car as it
      stands.
    TEXT
    demand  = "tow_rope.length >= 4*metre and tow_rope.breaking_load >= 2 * car.weighed_mass * g0"
    rectify = "Buy a rope with its load on the tag."
  }

  clause "16.5" {
    title   = "Throw line"
    concern = "safety"
    page    = 96
    stage   = "before event"
    text    = <<-TEXT
      Two stages cross the causeway, and the tide does not wait. A floating line of 15 m lies in a
      bag within reach of the crew.
    TEXT
    demand  = "club.throw_line_length >= 15*metre"
    rectify = "Buy a throw bag; a tow rope sinks."
  }

  clause "16.6" {
    title    = "Rescue card"
    concern  = "safety"
    page     = 96
    stage    = "before event"
    text     = "A card in the driver's door shows battery, fuel cell, bottles, and where the cage may be cut."
    demand   = "club.rescue_card"
    evidence = ["rescue card"]
    look_for = "The card shows this car, as it is now."
    rectify  = "Fill in the form at the end of this book and have it laminated."
  }

  clause "16.7" {
    title    = "Heavy things"
    concern  = "safety"
    page     = 96
    stage    = "before event"
    text     = "Whatever weighs more than 500 g is bolted, strapped or shut into a fixed box."
    across   = "item in stowed_items"
    where    = "item.mass > 500*gram"
    demand   = "item.fixed_by in ['bolted bracket', 'ratchet straps', 'closed box']"
    look_for = "Shake it."
    rectify  = "Strap it down, or leave it with the service crew."
  }

  clause "16.8" {
    title   = "Cameras"
    concern = "safety"
    page    = 97
    stage   = "before event"
    text    = <<-TEXT
      A camera is held by metal and by a second fixing, 300 mm or more from any helmet, and never
      by a helmet or by glass.
    TEXT
    across  = "camera in camera_mounts"
    demand  = <<-FORMULA
      camera.fixed_to in ['cage', 'body inside'] and camera.fixed_by in ['metal clamp', 'bolts']
      and camera.tethered and camera.clear_of_helmets >= 300*mm
    FORMULA
    rectify = "Clamp the camera to the harness bar's end and tether it."
  }

  clause "16.9" {
    title    = "Padding"
    concern  = "safety"
    page     = 97
    stage    = "before event"
    text     = <<-TEXT
      Padding is of a standard, 10 mm thick or more, and its cover does not burn. Foam for pipes is
      none. Which tubes are padded stands in chapter 4.
    TEXT
    across   = "padding in cage.paddings"
    at_least = 1
    demand   = <<-FORMULA
      padding.standard in ['FIA 8857-2001', 'SFI 45.1', 'SFI 45.2']
      and padding.thickness >= 10*mm and padding.cover_flame_resistant
    FORMULA
    look_for = "Sit in with the helmet on and move the head about: it meets padding everywhere."
    rectify  = "Replace it by padding of a standard."
  }

  clause "16.10" {
    title   = "Spill kit"
    concern = "advice"
    page    = 98
    stage   = "before event"
    text    = <<-TEXT
      The marsh is a reserve. The club advises to carry absorbent for 10 litres and a ground
      sheet, also on the stage.
    TEXT
    demand  = "spill_kit.absorbs >= 10*litre and spill_kit.ground_sheet"
    rectify = "Buy a kit at the club's office."
  }
}
