chapter "3" {
  title = "Tube"

  clause "3.1" {
    title    = "Steel"
    concern  = "safety"
    page     = 16
    stage    = "before cutting"
    text     = <<-TEXT
      Cages are built from unalloyed carbon steel, drawn cold and without a seam. Whoever wants to
      build in another steel takes the way of the certificate.
    TEXT
    applies  = "built_to_tables"
    across   = "stock in cage.tube_stocks"
    at_least = 1
    demand   = "stock.material == 'unalloyed carbon steel' and stock.forming == 'cold drawn seamless'"
    rectify  = "Put the length aside; it is no cage tube, whatever it is stamped."
  }

  clause "3.2" {
    title    = "Strength"
    concern  = "safety"
    page     = 16
    stage    = "before cutting"
    text     = <<-TEXT
      The steel yields at 350 MPa or more. The yield strength of the very cast counts, as its
      certificate has it; the tensile strength stands beside it and says something else.
    TEXT
    applies  = "built_to_tables"
    across   = "stock in cage.tube_stocks"
    demand   = "stock.yield >= 350*MPa"
    evidence = ["material certificate"]
    rectify  = "Order another cast, delivered stress-relieved (+SR) or as drawn."
  }

  clause "3.3" {
    title    = "Certificate and cast"
    concern  = "safety"
    page     = 17
    stage    = "before cutting"
    text     = <<-TEXT
      A certificate of type 3.1 or 3.2 belongs to every delivery, and the cast number on it is the
      one on the tube.
    TEXT
    applies  = "built_to_tables"
    across   = "stock in cage.tube_stocks"
    demand   = "stock.certificate_type in ['3.1', '3.2'] and recorded(stock.cast_number)"
    look_for = "The cast number on an offcut; keep one of every delivery until the car has its log book."
    rectify  = "Ask the supplier for the certificate of this cast; a statement about the grade is not enough."
  }

  clause "3.4" {
    title   = "Carbon and manganese"
    concern = "safety"
    page    = 17
    stage   = "before cutting"
    text    = <<-TEXT
      At most 0.30 % carbon, at most 1.70 % manganese, and of no other element more than 0.60 %,
      so that the tube can be welded without heating it first.
    TEXT
    applies = "built_to_tables"
    across  = "stock in cage.tube_stocks"
    demand  = <<-FORMULA
      stock.carbon_content <= 0.3*percent and stock.manganese_content <= 1.7*percent
      and stock.greatest_other_content <= 0.6*percent
    FORMULA
    rectify = "Order another cast."
  }

  clause "3.5" {
    title   = "Stretch of bent tube"
    concern = "safety"
    page    = 17
    stage   = "bare shell"
    text    = "Tube that is bent stretches by a tenth or more before it breaks."
    applies = "built_to_tables"
    across  = "tube in cage.tubes"
    where   = "tube.bends > 0"
    demand  = "tube.elongation >= 10*percent"
    rectify = "Bend a new one from a stress-relieved or normalised delivery."
  }

  clause "3.6" {
    title   = "Coating"
    concern = "safety"
    page    = 18
    stage   = "before cutting"
    text    = "Zinc and weld do not go together. Tube for a cage comes bare or oiled."
    applies = "built_to_tables"
    across  = "stock in cage.tube_stocks"
    demand  = "not stock.coated"
    rectify = "Return the delivery; pickling zinc off takes hydrogen into the steel."
  }

  clause "3.7" {
    title   = "As ordered and as measured"
    concern = "advice"
    page    = 18
    stage   = "before cutting"
    text    = <<-TEXT
      What was delivered is what was ordered when the outside is within 0.3 mm and the wall within
      a tenth. The club advises to measure before the saw runs.
    TEXT
    across  = "stock in cage.tube_stocks"
    demand  = <<-FORMULA
      abs(stock.outside - stock.ordered_outside) <= 0.3*mm
      and 0.9 <= stock.wall / stock.ordered_wall <= 1.1
    FORMULA
    rectify = "Ask the supplier which bundle this length was drawn from."
  }

  clause "3.8" {
    title    = "Every tube from a delivery"
    concern  = "eligibility"
    page     = 18
    stage    = "before cutting"
    text     = <<-TEXT
      Of every tube in the cage it is written down from which delivery it was cut. A length whose
      delivery nobody knows is not built in.
    TEXT
    applies  = "built_to_tables"
    across   = "tube in cage.tubes"
    demand   = "recorded(tube.stock)"
    look_for = "The paint mark of the delivery on the offcut of each tube."
    rectify  = "Find the offcut and its mark; without it the tube comes out again."
  }
}
