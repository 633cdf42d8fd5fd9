rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Safety cage"
  clause "4.1" {
    title     = "A mass for a length"
    concern   = "safety"
    demand    = "all(cage.tubes, .wall >= 2.5*mm)"
    allowance = "1 kg" # want 17 allowance-unused `Found an allowance of "1 kg", but the demand compares no figure of that kind \(mass\)\.`
  }
  clause "4.2" {
    title     = "A tolerance for an allowance"
    concern   = "safety"
    demand    = "all(cage.tubes, .wall >= 2.5*mm)"
    allowance = "0.1 mm +/- 0.02 mm" # want 17 one-figure-wanted `as allowance of the clause 4\.2`
  }
  clause "4.3" {
    title     = "Nothing"
    concern   = "safety"
    demand    = "all(cage.tubes, .wall >= 2.5*mm)"
    allowance = "0 mm" # want 17 one-figure-wanted "a single figure other than 0"
  }
  clause "4.4" {
    title     = "No unit"
    concern   = "safety"
    demand    = "all(cage.tubes, .wall >= 2.5*mm)"
    allowance = "0.1" # want 17 allowance-unused `\(a plain number\)`
  }
  clause "4.5" {
    title     = "An ambiguous unit"
    concern   = "safety"
    demand    = "all(cage.tubes, .wall >= 2.5*mm)"
    allowance = "4 mil" # want 20 unit-ambiguous ""
  }
  clause "4.6" {
    title     = "A count has no allowance"
    concern   = "safety"
    demand    = "len(cage.tubes) >= 6"
    allowance = "1" # want 17 allowance-unused ""
  }
  clause "4.7" {
    title     = "An exact size has no side to loosen"
    concern   = "safety"
    demand    = "all(cage.tubes, .wall == 2.5*mm)"
    allowance = "0.1 mm" # want 17 allowance-beyond "compares figures of that kind .length. where an allowance has no direction"
  }
  clause "4.8" {
    title     = "What is counted is not loosened"
    concern   = "safety"
    demand    = "count(cage.tubes, .wall < 2.5*mm) <= 0"
    allowance = "0.1 mm" # want 17 allowance-beyond "inside a count"
  }
  clause "4.9" {
    title     = "A condition is not loosened"
    concern   = "safety"
    demand    = "all(cage.tubes, (.outside < 40*mm ? .wall >= 2.5*mm : .wall >= 2*mm))"
    allowance = "0.1 mm" # want 17 allowance-beyond ""
  }
}
