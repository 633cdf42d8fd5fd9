rulebook "Marram" {
  edition = "2027"
}
rulebook "Marram" { # want 1 said-twice `it was said first at faulty/rulebook/book_twice\.hcl:1:1`
  edition = "2028"
}
chapter "1" {
  title = "General"
  clause "1.1" {
    title    = "Papers"
    concern  = "advice"
    evidence = "log book"
  }
}
