car "Tessel 16" {
  first_registered = "1899" # want 23 date-out-of-reach `The year 1899 is not one`
  seat_count       = 12 # want 22 not-plausible `Found 12 as seat_count of the car "Tessel 16"\. Plausible is 1 to 9\. Look at the number\.$`
  weighed_mass     = "1.085 kg" # want 23 not-plausible `Found "1\.085 kg" as weighed_mass of the car "Tessel 16"\. Plausible is 400 to 3500 kg\. Did you mean "1\.085 t"\?$`
}
tube "1" {
  outside = "45 in" # want 14 not-plausible `Found "45 in" as outside of the tube "1"\. Plausible is 10 to 120 mm\. Did you mean "45 mm"\?$`
  wall    = "  25 mm" # want 14 not-plausible `Found "25 mm" as wall of the tube "1"\. Plausible is 0\.5 to 10 mm\. Look at the number and its unit\.$`
}
