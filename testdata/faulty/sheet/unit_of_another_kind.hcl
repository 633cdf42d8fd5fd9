car "Tessel 16" {
  weighed_mass = "1085 mm" # want 19 wrong-dimension `Found "1085 mm" as weighed_mass of the car "Tessel 16"\. That is a figure of length\. Write weighed_mass in a unit such as kg\.$`
  overall_width = { reading = "1.7 kg" } # want 32 wrong-dimension `Found "1\.7 kg" as overall_width of the car "Tessel 16"\. That is a figure of mass\. Write overall_width in a unit such as mm\.$`
}
tube "1" {
  wall    = "2.5 kg" # want 14 wrong-dimension `Found "2\.5 kg" as wall of the tube "1"\. That is a figure of mass\. Write wall in a unit such as mm\.$`
  outside = { readings = ["45 mm", "45 s"] } # want 37 wrong-dimension `Found "45 s" as outside of the tube "1"\. That is a figure of time\. Write outside in a unit such as mm\.$`
}
tube_stock "A" { elongation = "20 mm" } # want 32 wrong-dimension `Found "20 mm" as elongation of the tube_stock "A"\. That is a figure of length\. Write elongation in a unit such as %\.$`
exhaust { noise = "96 mm" } # want 20 wrong-dimension `Found "96 mm" as noise of the exhaust\. That is a figure of length\. Write noise in a unit such as dB\(A\)\.$`
engine { capacity = "96 dB(A)" } # want 22 wrong-dimension `Found "96 dB\(A\)" as capacity of the engine\. That is a level in dB\(A\)\. Write capacity in a unit such as cc\.$`
tube_stock "B" { elongation = "96 dB(A)" } # want 32 wrong-dimension `Found "96 dB\(A\)" as elongation of the tube_stock "B"\. That is a level in dB\(A\)\. Write elongation in a unit such as %\.$`
