car "Tessel 16" {
  overall_width = 1700 # want 19 unit-missing `Found 1700 as overall_width of the car "Tessel 16"\. Write the unit too, and all in double quotes: "1700 mm"\.$`
  weighed_mass  = "1085" # want 20 unit-missing `Found "1085" as weighed_mass of the car "Tessel 16"\. Write the unit too, as in "1085 kg"\.$`
}
exhaust { noise = 96 } # want 19 unit-missing `Found "96" as noise of the exhaust\. Write the unit too, as in "96 dB\(A\)"\.$`
