rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Safety cage"
  clause "4.1" { # want 3 key-missing `The clause 4\.1 has no title` 3 key-missing `The clause 4\.1 has no concern\. Write concern = "safety", "eligibility" or "advice"\.` 3 clause-asks-nothing "neither demand nor look_for nor evidence"
    lookfor = "No joint." # want 5 unknown-key `Did you mean look_for\?`
  }
  clause "4.2" {
    title    = "Words"
    concern  = "safty"      # want 16 unknown-word `Did you mean "safety"\?`
    stage    = "bare body"  # want 16 unknown-word `Found "bare body" as stage of the clause 4\.2\.`
    judged   = "by eye"     # want 16 unknown-word `Write one of: as read or proved\.`
    look_for = "No joint."
    page     = true         # want 16 text-wanted "Found true"
    text     = "   "        # want 16 text-empty `The text of the clause 4\.2 is empty\.`
  }
  clause "4.3" {
    title    = "Counts and lists"
    concern  = "advice"
    across   = "tube in cage.tubes"
    at_least = "two"                    # want 16 count-wanted `Write a whole number from 1 to 1000 without quotes\.`
    evidence = ["photo", "Photo", ""]   # want 26 said-twice `Found "Photo" again` 35 text-empty ""
  }
  clause "4.4" {
    title    = "Zero"
    concern  = "advice"
    across   = "tube in cage.tubes"
    at_least = 0   # want 16 count-wanted `number 0 as at_least of the clause 4\.4\.`
    look_for = "No joint."
  }
  clause "4.5" {
    title    = "A half"
    concern  = "advice"
    across   = "tube in cage.tubes"
    at_least = 1.5 # want 16 count-wanted `number 1\.5`
    look_for = "No joint."
  }
  clause "4.6" {
    title     = "Without what they belong to"
    concern   = "advice"
    where     = "true"   # want 5 needs-another "a condition on the whole car is written as applies"
    at_least  = 1        # want 5 needs-another `The clause 4\.6 has at_least without across\.`
    allowance = "0.1 mm" # want 5 needs-another `The clause 4\.6 has allowance without demand\.`
    evidence  = "photo"
  }
  clause "4.7" {
    title    = "Something to fill in"
    concern  = "advice"
    look_for = "A plate of ${size}." # want 28 not-literal "nothing is filled in"
    clause "4.8" {}                   # want 5 unknown-block `Found clause in the clause 4\.7\.`
  }
}
