car "Tessel 16" {
  weighed_mass = "1085 mm" # want 19 wrong-dimension `Found "1085 mm" as weighed_mass of the car "Tessel 16"\. That is a figure of leng.* of mass\. Write it in a unit such as kg\.$`
  overall_width = { reading = "1.7 kg" } # want 32 wrong-dimension `Found "1\.7 kg" as overall_width of the car "Tessel 16"\. That is a figure of mass.*f length\. Write it in a unit such as mm\.$`
}
tube "1" {
  wall    = "2.5 kg" # want 14 wrong-dimension `Found "2\.5 kg" as wall of the tube "1"\. That is a figure of mass, and wall is one of length\. Write it in a unit such as mm\.$`
  outside = { readings = ["45 mm", "45 s"] } # want 37 wrong-dimension `Found "45 s" as outside of the tube "1"\. That is a figure of time, and outside is one of length\. Write it in a unit such as mm\.$`
}
