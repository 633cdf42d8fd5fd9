car "Tessel 16" {
  overall_width    = "wide" # want 23 number-not-readable `There is no number at "w`
  weighed_mass     = "1.085,5 kg" # want 23 number-comma `"1\.085,5" has a comma in`
  ground_clearance = "80 mm +/- " # want 32 number-not-readable `A number is missing at t`
  declared_mass    = "" # want 23 figure-empty `There is no figure here\.`
}
tube "1" {
  wall = "  2.5 parsec" # want 17 unit-unknown `"parsec" is not a unit k`
}
