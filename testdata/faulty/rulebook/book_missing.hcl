chapter "4" { # want 1 no-rulebook "Found no rulebook block"
  title = "Safety cage"
}
