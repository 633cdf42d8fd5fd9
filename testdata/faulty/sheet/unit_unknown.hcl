car "Tessel 16" {
  overall_width    = "1700 mn" # want 28 unit-unknown `"mn" is not a unit known`
  ground_clearance = "80 mil" # want 26 unit-ambiguous `"mil" can mean a millime`
}
fuel_cell {
  capacity = "12 gal" # want 18 unit-ambiguous `"gal" can mean 3\.785 lit`
}
