rulebook "Marram" {
  edition = "2027"
}

table "up" {
  columns   = { outside = "tube.outside" }
  rows_from = "../../rulebook/marram/by_mass.csv" # want 15 path-outside `with / between folders and without \.\.`
}
table "root" {
  columns   = { outside = "tube.outside" }
  rows_from = "/sizes.csv" # want 15 path-outside ""
}
table "back" {
  columns   = { outside = "tube.outside" }
  rows_from = "sizes\\a.csv" # want 15 path-outside ""
}
table "gone" {
  columns   = { outside = "tube.outside" }
  rows_from = "gone.csv" # want 15 no-such-file `Found no file or folder "faulty/rulebook/gone\.csv"\.`
}
chapter "1" {
  title = "General"
  clause "1.1" {
    title    = "Papers"
    concern  = "advice"
    evidence = "log book"
  }
}
