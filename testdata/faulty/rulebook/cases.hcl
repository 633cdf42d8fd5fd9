rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Safety cage"
  clause "4.1" {
    title   = "Wall"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.wall >= 2.5*mm"
  }
  clause "4.2" {
    title   = "Mass"
    concern = "safety"
    demand  = "car.weighed_mass >= 900*kg"
  }
}
worked_case "nothing" { # want 1 key-missing "has no clause" 1 key-missing "has no answer" 1 case-without-reason "neither reason nor source" 1 as-built-missing "has no as_built"
}
worked_case "words" {
  clause  = "4.3"        # want 13 no-such-clause "the rulebook has no clause of that number"
  answer  = "fails"      # want 13 unknown-word `Write one of: gap, not recorded, marginal, by eye, under dispensation, meets or does not apply\.`
  on      = "2027-03"    # want 13 day-wanted `Write the day, as in "2027-03-14"\.`
  because = "p. 31"      # want 3 unknown-key `Found because in the worked case "words"\.`
  reason  = "p. 31"
  as_built {}
  as_built {}            # want 3 said-twice "Found as_built again"
}
worked_case "subjects" {
  clause  = "4.1"
  subject = "13" # want 13 no-such-subject `as_built has no part of that label over which clause 4\.1 runs`
  answer  = "gap"
  reason  = "p. 31"
  as_built {
    tube "12" {
      wall = "2.2 mm"
    }
  }
}
worked_case "whole car" {
  clause  = "4.2"
  subject = "12" # want 13 subject-of-none `clause 4\.2 speaks of the whole car`
  answer  = "gap"
  source  = "p. 31"
  as_built "x" {} # want 12 label-count `Write as_built \{ … \} without one\.`
}
worked_case "Nothing" { # want 13 said-twice `Found "Nothing" again`
  clause = "4.2"
  answer = "not recorded"
  reason = "no mass"
  as_built {}
}
