rulebook "Marram" {
  edition = "2027"
}

standard "SFI 16.7" { # want 1 key-missing `The standard "SFI 16\.7" has no list\. Write list = "harness standard"\. It is one of: harness standard, seat standard, helmet standard, `
  means = "the one after"
}
standard "SFI 16.8" {
  list = "harnes standard" # want 10 choices-unknown `Found "harnes standard" as list of the standard "SFI 16\.8"\. Did you mean "harness standard"\? Write one of: harness standard, seat standard, `
}
standard "M12" {
  list = "bolt grade" # want 10 choices-unknown `Write one of: harness standard, `
}
standard "FIA 8853-1998" { # want 10 standard-exists `Found "FIA 8853-1998", which the list "harness standard" has as a synonym of "FIA 8853/98"\.`
  list = "harness standard"
}
standard "SFI 16.9" {
  list     = "harness standard"
  synonyms = ["sfi 16.9", "none", "Fia 8854-98"] # want 15 said-twice `Found "sfi 16\.9" again` 27 choice-none ""
}
standard { # want 1 label-count "Found 0 names of the standard"
  list   = "seat standard"
  choice = "x" # want 3 unknown-key `It can have list, synonyms, means\.`
}
standard "Fen 1" {
  list = "seat standard"
}
standard "fen 1" { # want 10 said-twice `Found "fen 1" again; it was said first at faulty/rulebook/standards\.hcl:25:10`
  list = "seat standard"
}

chapter "4" {
  title = "Harness"
  clause "4.1" {
    title   = "Standard"
    concern = "safety"
    across  = "harness in harnesses"
    demand  = "harness.standard == 'SFI 16.10'" # want 36 formula-choice `'SFI 16\.10' is not one of the choices of "harness\.standard"`
  }
}
