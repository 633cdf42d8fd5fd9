car "Tessel 16" {
  weighed_mass = { reading = "1085 kg +/- 5 kg", measured_with = "pads" } # want 31 tolerance-twice `Found "1085 ± 5 kg", measured with "pads" as weighed_mass of the car "Tessel 16".*bare reading, or take measured_with out\.$`
  declared_mass = { reading = "> 1000 kg", measured_with = "pads" } # want 32 tolerance-twice `Found "> 1000 kg", measured with "pads" as declared_mass of the car "Tessel 16"\..*bare reading, or take measured_with out\.$`
}
instrument "pads" { tolerance = "+/- 5 kg" }
instrument "ultrasonic" { tolerance = "0.05 mm" }
instrument "tape" {} # want 1 key-missing `The instrument "tape" has no tolerance\. Write tolerance = "0\.05 mm"\.$`
instrument "square" { tolerance = "1" }
instrument "gauge" { tolerance = "0 mm" } # want 35 instrument-tolerance `Found "0 mm" as tolerance of the instrument "gauge"\. Write one figure above zero.*ther side of a reading, as in "0\.05 mm"\.$`
instrument "string" { tolerance = "1 mm to 2 mm" } # want 36 instrument-tolerance `Found "1 mm to 2 mm" as tolerance of the instrument "string"\. Write one figure a.*ther side of a reading, as in "0\.05 mm"\.$`
instrument "string 2" { tolerance = "± 1 parsec" } # want 42 unit-unknown `"parsec" is not a unit k`
instrument "caliper" {
  tolerance  = "0.02 mm"
  calibrated = "2026-01-01" # want 3 unknown-key `Found calibrated in the instrument "caliper"\. It can have tolerance, note\.$`
}
instrument { tolerance = "1 mm" } # want 1 label-count `Found 0 names of the instrument\. Write one in double quotes, as in instrument "caliper" \{\.$`
tube "1" {
  wall    = { reading = "2.5 mm", measured_with = "pads" } # want 26 instrument-dimension `Found "2\.5 mm", measured with "pads" as wall of the tube "1"\. Its tolerance is 5.*th this figure\. Name another instrument\.$`
  outside = { reading = "45 mm", measured_with = "ultrasonics" } # want 50 unknown-instrument `Found measured_with = "ultrasonics" as outside of the tube "1"\. Did you mean "ul.*"ultrasonics" \{ tolerance = "0\.05 mm" \}\.$`
}
tube "2" {
  wall    = { reading = "2.5 mm", measured_with = "eye" } # want 51 unknown-instrument `Found measured_with = "eye" as wall of the tube "2"\. Describe it at the top level: instrument "eye" \{ tolerance = "0\.05 mm" \}\.$`
  outside = { reading = "45 mm", measured_with = "tape" }
}
tube "3" { wall = { reading = "2.5 mm", measured_with = ultrasonic } } # want 57 text-wanted `Found the bare word "ultrasonic" where a text is wanted\. Write it in double quotes: "…"\.$`
