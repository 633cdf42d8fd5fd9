# Two seasons of an invented club, for two cars of one shop. The crew stand in files of their
# own beside this one: helmets and clothing are people's, not cars'.

season "2027 and 2028" {
  lead = "21 days" # what a part takes to come where nothing else is said

  leads = {
    harness        = "4 weeks"
    seat           = "6 weeks"
    head_restraint = "5 weeks"
    fuel_cell      = "12 weeks"
    fire_system    = "10 days"
    extinguisher   = "1 week"
  }

  event "Samphire Stages 2027" {
    inspection_day = "2027-03-13"
    first_day      = "2027-03-14"
    last_day       = "2027-03-14"
    place          = "Samphire Hard"
    crew           = ["A. Penrith-Vale", "B. Oakhollow"]
    entry_closes   = "2027-02-26"
  }

  event "Reed Bank Rally" {
    inspection_day = "2027-06-11"
    first_day      = "2027-06-12"
    last_day       = "2027-06-13"
    place          = "Reed Bank"
    crew           = ["A. Penrith-Vale", "B. Oakhollow"]
    entry_closes   = "2027-05-21"
  }

  event "Causeway Weekend" {
    inspection_day = "2027-10-01"
    first_day      = "2027-10-02"
    last_day       = "2027-10-03"
    place          = "Causeway, at low water"
    crew           = ["A. Penrith-Vale", "C. Withyham"]
    entry_closes   = "2027-09-10"
  }

  event "Frost Tide Stages" {
    inspection_day = "2028-02-18"
    first_day      = "2028-02-19"
    last_day       = "2028-02-20"
    place          = "Samphire Hard"
    crew           = ["A. Penrith-Vale", "B. Oakhollow"]
    entry_closes   = "2028-01-28"
  }

  event "Samphire Stages 2028" {
    inspection_day = "2028-04-14"
    first_day      = "2028-04-15"
    last_day       = "2028-04-16"
    place          = "Samphire Hard"
    crew           = ["A. Penrith-Vale", "C. Withyham"]
    entry_closes   = "2028-03-24"
  }

  # Everybody runs in one class here, the one with the fewest cars of its own.
  event "Heron Wood Trial" {
    inspection_day = "2028-06-17"
    first_day      = "2028-06-17"
    last_day       = "2028-06-18"
    place          = "Heron Wood"
    class          = "four-wheel drive open"
    crew           = ["A. Penrith-Vale", "B. Oakhollow"]
    entry_closes   = "2028-05-26"
  }

  event "Sluice Night" {
    inspection_day = "2028-08-12"
    first_day      = "2028-08-12"
    last_day       = "2028-08-13"
    place          = "Great Sluice"
    crew           = ["A. Penrith-Vale", "B. Oakhollow"]
    entry_closes   = "2028-07-21"
  }

  event "Oystergate Finish" {
    inspection_day = "2028-10-13"
    first_day      = "2028-10-14"
    last_day       = "2028-10-15"
    place          = "Oystergate"
    crew           = ["A. Penrith-Vale", "C. Withyham"]
    entry_closes   = "2028-09-22"
  }
}
