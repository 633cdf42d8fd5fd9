chasis = "é"
car "Téssel" {
  /* é */ overall_width = "  17 00 mn"
}
# want@-4 1 unknown-key `Found "chasis" in the sheet\. It can have note, not_fitted, unfinished\.$`
# want@-3 33 figure-form `A second number follows `
