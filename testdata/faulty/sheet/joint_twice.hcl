car "Tessel 16" {}
joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
joint "C" { at = ["500 mm", "500 mm", "1000 mm"] }
joint "B again" { at = ["0 mm", "500 mm", "1000 mm"] }
tube "1" { through = ["A", "B", "b", "C"] } # want 33 joint-twice `Found "B" twice in through of the tube "1"\. Between the two it would have no length\. Take one of them out, or write the other joint that is meant\.$`
tube "2" { through = ["A", "B", "C", "A"] } # want 38 joint-twice `Found "A" twice in through of the tube "2"\. A tube goes through a joint once\. Write the other joint that is meant, or end the tube there and begin another\.$`
tube "3" { through = ["A", "B", "B again"] } # want 33 joints-at-one-place `Found "B" and "B again" in through of the tube "3", but both are at \[0 mm, 500 mm, 1000 mm\]\. Between the two it would have no length\. Look at their coordinates, or take one of them out\.$`
tube "4" { through = ["B", "A", "C", "B again"] } # want 38 joints-at-one-place `Found "B" and "B again" in through of the tube "4", but both are at \[0 mm, 500 mm, 1000 mm\]\. A tube goes through a place once\. Look at their coordinates, or take one of them out\.$`
tube "5" { through = ["A"] } # want 22 through-one `Found "A" alone as through of the tube "5"\. Write both joints at its ends, and those between them\.$`
tube "6" {
  through = ["A", "C"]
  corner "B" { angle = "30 deg" } # want 3 unknown-label `Found corner "B" in the tube "6", which turns at no joint of that label on its way\. It goes straight from end to end: take the block out\.$`
  end "first" { joint = "C" } # want 25 joint-unfit `Found "C" as joint of the end "first" in the tube "6", which is at "A" by what the tube goes through\. Take the line out\.$`
}
tube "7" {
  through = ["A", "B", "C"]
  corner "D" { angle = "30 deg" } # want 3 unknown-label `Found corner "D" in the tube "7", which turns at no joint of that label on its way\. Write one of its inner joints: "B"\.$`
}
