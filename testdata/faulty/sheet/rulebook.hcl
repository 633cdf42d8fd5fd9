rulebook "Saltmarsh Stage Rally Car Rules" { edition = "2027" } # want 1 rulebook-for-sheet `Found a rulebook where the build sheet of a car is wanted\. Name the file or fold.* and give the rulebook after --rulebook\.$`
chapter "4" {
  title = "Safety cage"
}
