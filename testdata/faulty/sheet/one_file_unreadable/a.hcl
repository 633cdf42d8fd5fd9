tube "1" {
  stock = "A"
  wall = { reading = "2.5 mm", measured_with = "tape" }
  outside = "45 kg" # want 14 wrong-dimension `Found "45 kg" as outside of the tube "1"\. That is a figure of mass\. Write outside in a unit such as mm\.$`
}
