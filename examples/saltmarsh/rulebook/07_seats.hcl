chapter "7" {
  title = "Seats"

  clause "7.1" {
    title    = "Standard of the seats"
    concern  = "safety"
    page     = 43
    stage    = "before trim"
    text     = "Both of the crew sit in competition seats of a standard that the table lists."
    across   = "seat in seats"
    at_least = 2
    demand   = "any(table.seat_life, .standard == seat.standard)"
    rectify  = "Fit a seat of a listed standard."
  }

  clause "7.2" {
    title   = "Age of the seats"
    concern = "safety"
    page    = 43
    stage   = "before trim"
    text    = <<-TEXT
      A seat is good to the end of the day, month or year that its label names. Where the label
      names the making only, the years of the table are counted from the end of what it says.
      What its maker has renewed in writing goes before either.
    TEXT
    across  = "seat in seats"
    demand  = <<-FORMULA
      if recorded(seat.extended_until) {
        end_of_label(seat.extended_until) >= on
      } else if recorded(seat.not_after) {
        end_of_label(seat.not_after) >= on
      } else {
        any(filter(table.seat_life, .standard == seat.standard),
          years_after(end_of_label(seat.made), .years) >= on)
      }
    FORMULA
    rectify = "Replace the seat, or send it to its maker to be renewed."
  }

  clause "7.3" {
    title    = "State of the seats"
    concern  = "safety"
    page     = 44
    stage    = "before event"
    text     = "A shell that is cracked, has come apart in layers, or was in an accident is taken out."
    across   = "seat in seats"
    demand   = "not seat.damaged"
    look_for = "Tap the shell round the belt openings and behind the shoulders; lift the cover where it is loose."
    rectify  = "Replace the seat."
  }

  clause "7.4" {
    title   = "Four mountings"
    concern = "safety"
    page    = 44
    stage   = "before paint"
    text    = "Each seat is held at four points."
    across  = "seat in seats"
    demand  = "len(seat.seat_mounts) == 4"
    rectify = "Add the missing mounting; one broad bracket with two bolts counts as two."
  }

  clause "7.5" {
    title   = "Bolts of the seat mountings"
    concern = "safety"
    page    = 44
    stage   = "before paint"
    text    = <<-TEXT
      Each mounting is bolted to the car with a bolt of 8 mm or more, of class 8.8 or better, and
      the seat to it with another of 8 mm. A smaller one shears before the belt has done its work.
    TEXT
    across  = ["seat in seats", "mount in seat.seat_mounts"]
    demand  = <<-FORMULA
      mount.bolt_diameter >= 8*mm and mount.seat_bolt_diameter >= 8*mm
      and mount.bolt_grade in ['8.8', '10.9', '12.9', 'SAE grade 8']
    FORMULA
    rectify = "Open the hole, renew the sleeve and fit an M8 bolt of class 8.8."
  }

  clause "7.6" {
    title   = "Supports of the seats"
    concern = "safety"
    page    = 45
    stage   = "before paint"
    text    = <<-TEXT
      The side pieces between seat and car are of steel of 3 mm or of light alloy of 5 mm, and run
      60 mm or more along the car.
    TEXT
    across  = ["seat in seats", "mount in seat.seat_mounts"]
    demand  = <<-FORMULA
      mount.support_length >= 60*mm
      and (mount.support_material == 'steel' and mount.support_thickness >= 3*mm
        or mount.support_material == 'aluminium alloy' and mount.support_thickness >= 5*mm)
    FORMULA
    rectify = "Replace the side piece; doubling it is not accepted."
  }

  clause "7.7" {
    title   = "Tubes under the seats"
    concern = "safety"
    page    = 45
    stage   = "bare shell"
    text    = <<-TEXT
      Where a seat stands on tubes across the shell, they measure 38 by 2.5 mm or more, and a bush
      is welded through them for each bolt.
    TEXT
    across  = ["seat in seats", "mount in seat.seat_mounts"]
    where   = "mount.fixed_to == 'cross tube'"
    demand  = "mount.tube_outside >= 38*mm and mount.tube_wall >= 2.5*mm and mount.bush_diameter >= 14*mm"
    rectify = "Weld in tubes of 38 x 2.5 mm with bushes."
  }

  clause "7.8" {
    title   = "Seats on the floor"
    concern = "safety"
    page    = 46
    stage   = "before paint"
    text    = "Where a mounting goes through the floor, a plate of 40 square centimetres and 3 mm lies beneath."
    across  = ["seat in seats", "mount in seat.seat_mounts"]
    where   = "mount.fixed_to == 'floor with plate'"
    demand  = "mount.counterplate_area >= 40*sq_cm and mount.counterplate_thickness >= 3*mm"
    rectify = "Make larger plates; washers are none."
  }

  clause "7.9" {
    title   = "Sliding seats"
    concern = "safety"
    page    = 46
    stage   = "before paint"
    text    = "A seat does not slide and does not come out without a tool."
    across  = ["seat in seats", "mount in seat.seat_mounts"]
    demand  = "not mount.quick_release"
    rectify = "Bolt the seat down in one place."
  }

  clause "7.10" {
    title   = "Cushions"
    concern = "safety"
    page    = 46
    stage   = "before event"
    text    = "Between the seat and whoever sits in it lies no more than 50 mm of cushion."
    across  = "seat in seats"
    demand  = "(seat.cushion_thickness ?? (0*mm)) <= 50*mm"
    rectify = "Raise the seat instead of the cushion."
  }

  clause "7.11" {
    title   = "Head supports"
    concern = "advice"
    page    = 47
    stage   = "before event"
    text    = <<-TEXT
      Side supports for the head spare the neck in a slide against a bank. The club advises them,
      with a gap behind the helmet of no more than 60 mm.
    TEXT
    across  = "seat in seats"
    demand  = "seat.head_support and seat.head_support_gap <= 60*mm"
    rectify = "Choose a seat with head supports when this one is due."
  }
}

# Years are counted from the end of what the label says.
table "seat_life" {
  columns = { standard = "seat.standard", years = "count" }
  rows = [
    ["FIA 8855-1999", 5],
    ["FIA 8855-2021", 5],
    ["FIA 8862-2009", 10],
  ]
  issued = "2026-09"
}
