edition = "2027" # want 1 unknown-key "Found edition at the top level of a rulebook, which holds blocks only"
rulebook "Marram" {
  edition = "2027"
}
chaptr "4" {} # want 1 unknown-block `Did you mean chapter\?`
clause "4.1" {} # want 1 unknown-block "A clause stands in its chapter"
car "Tessel 16" {} # want 1 unknown-block "outside the folder of the rulebook"
seat "driver" {} # want 1 unknown-block `A rulebook holds rulebook, chapter, term, table, particular, standard and worked_case\.`
chapter "1" {
  title = "General"
  clause "1.1" {
    title    = "Papers"
    concern  = "advice"
    evidence = "log book"
  }
}
