rulebook "Marram" {
  edition = "2027"
}
particular "winch_rope" { # want 1 key-missing "has no unit" 1 key-missing "has no plausible" 1 key-missing "has no help" 1 key-missing "has no how"
  kind = "length"
  part = "tubee" # want 10 part-unknown `Did you mean tube\?`
}
particular "winch_drum" {
  kind      = "length"
  unit      = "mm"
  plausible = "10 mm to 300 mm"
  help      = "Diameter of the drum."
  how       = "Calliper across the bare drum."
}
chapter "1" {
  title = "General"
  clause "1.1" {
    title   = "What a rulebook adds is read as club"
    concern = "advice"
    demand  = "club.winch_drum >= 50*mm and car.winch_drum >= 50*mm" # want 49 formula-name ""
  }
}
