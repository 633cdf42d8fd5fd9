car "Tessel 16" {}
instrument "laser" { tolerance = "1 mm" }
joint "A" { tolerance = "3 mm" } # want 13 tolerance-unused `Found a tolerance in the joint "A", but no coordinate in it that could have it\. Write the coordinates too, or take the line out\.$`
joint "B" {
  at        = ["1200 mm ± 2 mm", "-480 mm ± 2 mm", "310 mm ± 2 mm"]
  tolerance = "3 mm" # want 3 tolerance-unused `Found a tolerance in the joint "B", but no coordinate in it that could have it\. Write the coordinates too, or take the line out\.$`
}
joint "C" {
  at        = { reading = ["1200 mm", "-480 mm", "310 mm"], measured_with = "laser" }
  tolerance = "3 mm" # want 15 tolerance-twice `Found a tolerance in the joint "C", and x in it measured with "laser", which has a tolerance of its own\. Take the one or the other out\.$`
}
joint "D" {
  at        = ["1200 mm", "-480 mm", "310 mm"]
  tolerance = ["3 mm", "3 mm"] # want 15 point-form `Found a list of 2 as tolerance of the joint "D"\. Write one for all axes, "3 mm", or one for each: \["2 mm", "2 mm", "4 mm"\]\.$`
}
joint "E" {
  at        = ["1200 mm", "-480 mm", "310 mm"]
  tolerance = "3" # want 15 wrong-dimension `Found "3" as tolerance of the joint "E"\. Write a length, as in "3 mm"\.$`
}
joint "F" {
  at        = ["1200 mm", "-480 mm", "310 mm"]
  tolerance = "3 m" # want 15 not-plausible `Found "3 m" as tolerance of the joint "F"\. Plausible is up to 100 mm\. Look at the number and its unit\.$`
}
joint "G" {
  at        = ["1200 mm", "-480 mm", "310 mm"]
  tolerance = "0 mm" # want 16 point-tolerance `Found "0 mm" as tolerance of the joint "G"\. Write one figure above zero, half the width on either side of a reading, as in "3 mm"\.$`
}
tube "1" { tolerance = "3 mm" } # want 12 unknown-key `Found "tolerance" in the tube "1"\. A tolerance stands behind its figure, as in "45 mm \+/- 0\.1 mm", or comes from the instrument named by measured_with\. Only a block with a place has one for its coordinates\.$`
seat "driver" { tolerance = "3 mm" } # want 17 tolerance-unused `Found a tolerance in the seat "driver", but no coordinate in it that could have it\. Write the coordinates too, or take the line out\.$`
head "driver" {
  top       = ["1200 mm", "-480 mm", "310"] # want 39 unit-missing `Found "310" as top_z of the head "driver"\. Write the unit too, as in "310 mm"\.$`
  tolerance = "3 mm"
}
