chapter "5" {
  title = "Certified and homologated cages"

  clause "5.1" {
    title    = "Certificate"
    concern  = "safety"
    page     = 34
    stage    = "before paint"
    text     = <<-TEXT
      A cage that was not built to the tables comes with a certificate of a national authority or
      with a homologation. The tables of chapter 4 are then not asked; what the certificate
      shows is.
    TEXT
    applies  = "cage.route in ['certified', 'homologated']"
    demand   = "recorded(cage.certificate.number) and cage.certificate.drawing_pages >= 2"
    evidence = ["cage certificate"]
    look_for = "Every tube of the drawing is in the car, and no tube in the car that the drawing lacks."
    rectify  = "Ask the maker for a certified copy, with all its pages."
  }

  clause "5.2" {
    title   = "The right chassis"
    concern = "safety"
    page    = 34
    stage   = "before paint"
    text    = "A certificate that names a chassis is good for that chassis alone."
    applies = "cage.route == 'certified' and recorded(cage.certificate.chassis)"
    demand  = "cage.certificate.chassis == car.chassis"
    rectify = "Have the cage certified anew in this shell."
  }

  clause "5.3" {
    title   = "Mass it was certified for"
    concern = "safety"
    page    = 35
    stage   = "before event"
    text    = <<-TEXT
      The car weighs no more than the mass its cage was certified for; five parts in a hundred are
      borne with.
    TEXT
    applies = "cage.route in ['certified', 'homologated']"
    demand  = "bare_mass / cage.certificate.basis_mass <= 1.05"
    rectify = "Make the car lighter, or have the cage certified for its mass."
  }

  clause "5.4" {
    title   = "How long it is good"
    concern = "safety"
    page    = 35
    stage   = "before event"
    text    = <<-TEXT
      A certificate holds until the day it names. One that names none holds until the end of the
      fifteenth year after its issue.
    TEXT
    applies = "cage.route == 'certified'"
    demand  = <<-FORMULA
      (cage.certificate.not_after ?? end_of_year(years_after(cage.certificate.issued, 15)))
        >= on
    FORMULA
    rectify = "Have the cage inspected and certified anew."
  }

  clause "5.5" {
    title    = "Changed since"
    concern  = "safety"
    page     = 35
    stage    = "before paint"
    text     = <<-TEXT
      Whoever welds to a certified cage, or cuts it, ends its certificate. A certificate issued
      after the work counts again.
    TEXT
    applies  = "cage.route in ['certified', 'homologated']"
    demand   = "not cage.modified_since or cage.modified <= cage.certificate.issued"
    look_for = "Fresh paint, fresh weld, brackets that no drawing shows."
    rectify  = "Have the cage as it stands certified, or take the way of the tables."
  }

  clause "5.6" {
    title   = "Plate on the cage"
    concern = "eligibility"
    page    = 36
    stage   = "before paint"
    text    = <<-TEXT
      The maker's plate is welded, riveted or embossed where it can be read with the crew's door
      open, and its number is that of the certificate.
    TEXT
    applies = "cage.route == 'homologated'"
    demand  = <<-FORMULA
      cage.identity_plate.fixed_by in ['embossed in the tube', 'welded', 'riveted']
      and cage.identity_plate.homologation_number == cage.certificate.number
    FORMULA
    rectify = "Ask the maker for a plate; a sticker is none."
  }
}
