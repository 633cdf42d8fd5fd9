car "Tessel 16" {}
joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
joint "C" { at = ["0 mm", "400 mm", "1000 mm"] }
joint "D" { at = ["0 mm", "400 mm", "900 mm"] }
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
tube "1" {
  through     = ["A", "B", "C", "D"]
  bend_radius = "150 mm" # want 17 bend-does-not-fit `Found "150 mm" as bend_radius of the tube "1", but its bends do not fit between its joints: 100 mm are missing between "B" and "C", which are 200 mm apart; 50 mm are missing between "C" and "D", which are 100 mm apart\. Bend it tighter, to 100 mm at most, or look at the places of those joints\.$`
}
tube "2" {
  through     = ["A", "B", "E"] # want 23 turns-straight-back `The tube "2" goes from "A" to "B" and straight back to "E"\. Put its joints in the order in which it goes through them\.$`
  bend_radius = "150 mm"
}
tube "3" {
  through     = ["A", "B", "C"]
  bend_radius = "none" # want 17 bend-radius-none `Found none as bend_radius of the tube "3", but it turns by 90\.0 deg at "B"\. Write the radius of the bend, or look at the joint's place\.$`
}
