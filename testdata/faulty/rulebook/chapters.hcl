rulebook "Marram" {
  edition = "2027"
}

chapter "4" { # want 1 key-missing "The chapter 4 has no title"
  page = 3 # want 3 unknown-key `Found page in the chapter 4\.`
  clause "4.1" {
    title    = "Papers"
    concern  = "advice"
    evidence = "log book"
  }
  clause "4.1" { # want 10 said-twice `Found clause 4\.1 again; it was said first at faulty/rulebook/chapters\.hcl:7:10`
    title    = "Papers again"
    concern  = "advice"
    evidence = "log book"
  }
}
chapter "5" {
  title = "Others"
  clause "4.1" { # want 10 said-twice `Found clause 4\.1 again`
    title    = "Papers once more"
    concern  = "advice"
    evidence = "log book"
  }
  clause "K1.4(e)" {
    title    = "One"
    concern  = "advice"
    evidence = "log book"
  }
  clause "k1.4(E)" { # want 10 said-twice `Found clause k1\.4\(E\) again`
    title    = "Other only in its capitals"
    concern  = "advice"
    evidence = "log book"
  }
  clause "5 1" { # want 10 number-form "without blanks"
    title    = "Blank in the number"
    concern  = "advice"
    evidence = "log book"
  }
  clause "5.2(a" { # want 10 number-form `The brackets in the number do not match\.`
    title    = "Open bracket"
    concern  = "advice"
    evidence = "log book"
  }
  clause "5.3\u001b[2J" { # want 14 control-character `Found the invisible character U\+001B\. Take it out\.`
    title    = "Escape sequence"
    concern  = "advice"
    evidence = "log book"
  }
  clause "5.4" "b" { # want 16 label-count "The clause has 2 names"
    title    = "Two numbers"
    concern  = "advice"
    evidence = "log book"
  }
}
chapter "4" { # want 9 said-twice "Found chapter 4 again"
  title = "Safety cage, continued"
}
