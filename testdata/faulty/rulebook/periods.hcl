rulebook "Marram" {
  edition  = "2027"
  in_force = "2027"
  until    = "2028-06"
}

chapter "4" {
  title = "Periods"
  clause "4.1" {
    title    = "Backwards"
    concern  = "advice"
    from     = "2027-05-01"
    until    = "2027-04-30" # want 16 period-backwards `The clause 4\.1 has from 2027-05-01, and ends with 2027-04-30\. Write as until the last day on which it counts, or leave the line out\.`
    look_for = "No joint."
  }
  clause "4.2" {
    title    = "Before the rulebook"
    concern  = "advice"
    from     = "2026-12" # want 16 period-outside `Found 2026-12-01 as from of the clause 4\.2, but the rulebook is in force from 2027-01-01 to 2028-06-30\. Write a day of that time`
    look_for = "No joint."
  }
  clause "4.3" {
    title    = "Behind the rulebook"
    concern  = "advice"
    until    = "2028" # want 16 period-outside `Found 2028-12-31 as until of the clause 4\.3`
    look_for = "No joint."
  }
  clause "4.4" {
    title    = "First wording"
    concern  = "advice"
    until    = "2027-06-30"
    look_for = "No joint."
  }
  clause "4.4" { # want 10 wordings-overlap `Found clause 4\.4 twice, here and at faulty/rulebook/periods\.hcl:28:10, and both count from 2027-06-01 to 2027-06-30\. Write until = "2027-05-31" in the one that ends before the other begins\.`
    title    = "Second wording"
    concern  = "advice"
    from     = "2027-06"
    look_for = "No joint."
  }
  clause "4.5" {
    title    = "First wording"
    concern  = "advice"
    look_for = "No joint."
  }
  clause "4.5" { # want 10 wordings-overlap `both count from 2027-06-01 on\. Write until = "2027-05-31"`
    title    = "Second wording"
    concern  = "advice"
    from     = "2027-06-01"
    look_for = "No joint."
  }
  clause "4.6" {
    title    = "First wording"
    concern  = "advice"
    until    = "2027-06-30"
    look_for = "No joint."
  }
  clause "4.6" { # want 10 wordings-overlap `both count up to 2027-06-30\. Write from = "2027-07-01" in the one that lasts longer\.`
    title    = "Second wording"
    concern  = "advice"
    look_for = "No joint."
  }
  clause "4.7" {
    title    = "Undated"
    concern  = "advice"
    look_for = "No joint."
  }
  clause "4.7" { # want 10 said-twice `Found clause 4\.7 again`
    title    = "Undated too"
    concern  = "advice"
    look_for = "No joint."
  }
  clause "4.8" {
    title    = "Same days"
    concern  = "advice"
    from     = "2027-05-01"
    until    = "2027-05-31"
    look_for = "No joint."
  }
  clause "4.8" { # want 10 wordings-overlap `both count from 2027-05-01 to 2027-05-31\. Give each its own days`
    title    = "Same days"
    concern  = "advice"
    from     = "2027-05-01"
    until    = "2027-05"
    look_for = "No joint."
  }
  clause "4.9" {
    title    = "Not a day"
    concern  = "advice"
    from     = "spring" # want 17 date-form `"spring" is not a date`
    until    = "2027-02-29" # want 25 date-no-such-day ""
    look_for = "No joint."
  }
}

chapter "5" {
  title = "Rules of another day"
  clause "5.1" {
    title    = "A length"
    concern  = "safety"
    demand   = "car.weighed_mass >= 900*kg"
    as_at    = "car.weighed_mass" # want 17 formula-result `yields a mass, but a date is wanted here\.`
  }
  clause "5.2" {
    title    = "Of one part"
    concern  = "safety"
    across   = "seat in seats"
    demand   = "recorded(seat.made)"
    as_at    = "latest(cage.built, seat.made)" # want 36 as-at-reads-subject `Found seat in as_at, which is asked of the whole car before any part is looked at\. Name a day of the car, as in cage\.built, instead of one of seat\.`
  }
  clause "5.3" {
    title    = "Moves"
    concern  = "safety"
    demand   = "car.weighed_mass >= 900*kg"
    as_at    = "earliest(cage.built, event.first_day)" # want 38 as-at-reads-day `Found the day of the check or of the event in as_at\. Name a day of the car that stays`
  }
  clause "5.4" {
    title    = "Without demand"
    concern  = "safety"
    look_for = "No joint."
    as_at    = "cage.built" # want 5 needs-another `The clause 5\.4 has as_at without demand\. It says by the rules of which day the demand is judged\.`
  }
}
