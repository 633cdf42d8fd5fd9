rulebook "Marram" {
  edition  = "2027"
  in_force = "2027-03"
  until    = "2027-02" # want 14 period-backwards `The rulebook has in_force 2027-03, and ends with 2027-02\.`
}

chapter "1" {
  title = "General"
  clause "1.1" {
    title    = "Papers"
    concern  = "advice"
    evidence = "log book"
  }
}
