season "2027" { # want 1 season-empty `Found no event in the season "2027"\. Write each inside it: event "NAME" \{ first_day = "2027-03-13" … \}, on lines of their own\.$`
  lead = "21 days"
}
