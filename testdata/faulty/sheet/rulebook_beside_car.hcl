car "Tessel 16" {}
chapter "4" { # want 1 block-misplaced `Found the block "chapter" in the sheet\. It belongs to a rulebook\. Move it there\.$`
  title = "Safety cage"
}
