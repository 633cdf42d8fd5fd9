season "2027" {
  event "Quarry Night" {
    first_day = "2027-05-15"
    last_day  = "2027-05-16"
    crew      = ["A. Penrith-Vale", "B. Oakhollow"]
  }
  event "Harbour Sprint" { # warn 3 events-overlap `Found "B\. Oakhollow" and "A\. Penrith-Vale" in the crew of the event "Harbour Sprint" from 2027-05-16 to 2027-05-17, and of the event "Quarry Night" from 2027-05-15 to 2027-05-16\. Look at the days and at the names\.$`
    inspection_day = "2027-05-16"
    first_day      = "2027-05-17"
    last_day       = "2027-05-17"
    crew           = ["B. Oakhollow", "A. Penrith-Vale"]
  }
  event "Fell Stages" {
    first_day = "2027-05-15"
    last_day  = "2027-05-15"
  }
}
crew "A. Penrith-Vale" {}
crew "B. Oakhollow" {}
