car "Tessel 16" {}
joint "A" {
  at          = ["0 mm", "600 mm", "0 mm"]
  mirrored_as = "B"
}
joint "B" { mirrored_as = "A" } # want 27 mirror-circular `Found "A" as mirrored_as of the joint "B", but that one has the joint "B" as its image already\. Write mirrored_as in one of the two only\.$`
joint "C" {
  at          = ["0 mm", "600 mm", "100 mm"]
  mirrored_as = " c" # want 17 mirror-of-itself `Found "c" as mirrored_as of the joint "C" itself\. Write another label, or take the line out: what is on the middle of the car needs no image\.$`
}
joint "D" {
  at          = ["0 mm", "600 mm", "200 mm"]
  mirrored_as = "F"
}
joint "E" {
  at          = ["0 mm", "600 mm", "300 mm"]
  mirrored_as = "F" # want 17 mirror-of-two `Found "F" as mirrored_as of the joint "E", but that one is the image of the joint "D" \(mirrors\.hcl:11:1\) already\. Give one of the two images another label\.$`
}
joint "F" { mirrored_as = "G" } # want 27 mirror-of-image `Found "G" as mirrored_as of the joint "F", which is itself the image of the joint "D" \(mirrors\.hcl:11:1\)\. Write mirrored_as in one part of each pair only\.$`
joint "H" {
  at          = ["0 mm", "600 mm", "400 mm"]
  mirrored_as = "D" # want 17 mirror-of-image `Found "D" as mirrored_as of the joint "H", but that one has an image of its own, the joint "F" \(mirrors\.hcl:19:1\)\. Write mirrored_as in one part of each pair only\.$`
}
joint "I" {
  at          = ["0 mm", "0.5 mm ± 1 mm", "500 mm"]
  mirrored_as = "I right" # want 17 mirror-on-middle `Found "I right" as mirrored_as of the joint "I", which is on the middle of the car \(y = 0\.5 ± 1 mm\) and so its own image\. Take the line out\.$`
}
joint "K" { at = ["0 mm", "600 mm", "600 mm"] }
joint "L" {}
tube "1" {
  through     = ["A", "K"]
  mirrored_as = "2" # want 17 mirror-without-joint `Found "2" as mirrored_as of the tube "1", but its through names "K", which has no mirror image and is not on the middle of the car \(y = 0\) as far as the sheet says\. Write mirrored_as in that joint\.$`
}
tube "3" {
  through     = ["L", "K"]
  mirrored_as = "4" # want 17 mirror-without-joint `Found "4" as mirrored_as of the tube "3", but its through names "L" and "K", which have no mirror image and are not on the middle of the car \(y = 0\) as far as the sheet says\. Write mirrored_as in each of those joints\.$`
}
foot "1" {
  joint       = "K"
  mirrored_as = "2" # want 17 mirror-without-joint `Found "2" as mirrored_as of the foot "1", but its joint names "K", which has no mirror image and is not on the middle of the car \(y = 0\) as far as the sheet says\. Write mirrored_as in that joint\.$`
}
joint "N" {
  at          = ["0 mm", "600 mm", "900 mm"]
  mirrored_as = "N right"
}
joint "O" { at = ["0 mm", "0 mm", "900 mm"] }
tube "5" {
  through     = ["N", "O", "N right"]
  mirrored_as = "6" # want 17 mirror-on-middle `Found "6" as mirrored_as of the tube "5", but its image goes through the same joints: it is a tube from side to side, or on the middle of the car\. Take the line out\.$`
}
seat "driver" { mirrored_as = "codriver" } # want 17 unknown-key `Found "mirrored_as" in the seat "driver"\. A mirror image there can be of joint, tube, foot, gusset or padding\. Write the other side in a block of its own\.$`
joint "M" { mirrored_as = "" } # want 27 text-empty `The mirrored_as of the joint "M" is empty\. Write it out, or leave the key away\.$`
