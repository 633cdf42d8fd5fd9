# A build sheet where a rulebook is wanted: one sentence, and nothing about the rest of it.
car "Tessel 16" { # want 1 sheet-for-rulebook "build sheet of a car where a rulebook is wanted"
  chassis = 17
}
tubee "1" {}
