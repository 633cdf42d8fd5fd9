# A file that cannot be read hides what stands in it: nothing else is told of the rulebook.
rulebook "Marram" {
  editon = "2027"
}
chapter "1" {
  title = Safety cage # want 18 line-too-long "Something after the value"
  clause "1.1" {
    demand = "unknown"
  }
}
