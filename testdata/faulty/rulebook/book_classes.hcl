rulebook "Marram" "2027" { # want 19 label-count "The rulebook has 2 names"
  edition = "2027"
  class "open" {
    synonyms = ["class 5", "Class  5"] # want 28 said-twice `Found "Class  5" again`
    help     = "any engine"            # want 5 unknown-key `It has synonyms and means\.`
  }
  class "none" {} # want 3 choice-none "Use another word"
  class "class 5" {} # want 3 said-twice `Found "class 5" again`
  class {}           # want 3 label-count `Write it in double quotes before the \{: class "two-wheel drive open" \{\.`
}
chapter "1" {
  title = "General"
  clause "1.1" {
    title    = "Papers"
    concern  = "advice"
    evidence = "log book"
  }
}
