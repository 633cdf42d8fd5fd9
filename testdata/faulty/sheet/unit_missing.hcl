car "Tessel 16" {
  overall_width = 1700 # want 19 unit-missing `Found 1700 as overall_width of the car "Tessel 16"\. Write the unit too, and all in double quotes, as in "1700 mm"\.$`
  weighed_mass  = "1085" # want 20 unit-missing `Found "1085" as weighed_mass of the car "Tessel 16"\. Write the unit too, as in "1085 kg" or "1085 lb"\.$`
}
exhaust { noise = 96 } # want 19 unit-missing `Found "96" as noise of the exhaust\. Write the unit too, as in "96 dB\(A\)"\.$`
tube "1" {
  wall        = "0.08" # want 18 unit-missing `Found "0\.08" as wall of the tube "1"\. Write the unit too, as in "0\.08 in"\.$`
  outside     = "1 3/4" # want 18 unit-missing `as in "1 3/4 in"\.$`
  bend_radius = "100 ± 1" # want 18 unit-missing `as in "100 ± 1 mm"\.$`
}
tube "2" {
  wall    = "3/32" # want 14 unit-missing `as in "3/32 in"\.$`
  outside = "4.5" # want 14 unit-missing `as in "4\.5 in"\.$`
  yield   = "350000" # want 14 unit-missing `as in "350000 kPa"\.$`
}
tube "3" {
  wall = "5000" # want 11 unit-missing `Write the unit too, and look at the number: plausible is 0\.5 to 10 mm\.$`
}
