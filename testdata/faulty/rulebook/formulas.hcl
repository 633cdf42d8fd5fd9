rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Safety cage"
  clause "4.1" {
    title   = "Three faults in one formula, one in the other"
    concern = "safety"
    across  = "tube in cage.tubes"
    where   = "tube.prt == 'main hoop'"                                    # want 21 formula-name ""
    demand  = "tube.wal >= 2*mm and tube.outside >= car.weighed_mass and x" # want 21 formula-name "" 37 formula-dimension "" 74 formula-name ""
  }
  clause "4.2" {
    title   = "A length is no answer"
    concern = "safety"
    demand  = "2.5*mm" # want 16 formula-result ""
  }
  clause "4.3" {
    title   = "Not a text"
    concern = "safety"
    demand  = true # want 15 text-wanted "Found true"
  }
  clause "4.4" {
    title   = "A choice that is none"
    concern = "safety"
    demand  = "any(cage.tubes, .part == \"mane hoop\")" # want 41 formula-choice ""
  }
}
