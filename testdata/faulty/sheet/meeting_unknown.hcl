car "Tessel 16" {}
joint "A" {
  at = ["0 mm", "600 mm", "0 mm"]
  meeting "1 and 3" { angle = "30 deg" } # want 3 unknown-label `Found meeting "1 and 3" in the joint "A"\. There meet "1 and 2"\.$`
}
joint "B" {
  at = ["0 mm", "600 mm", "1000 mm"]
  meeting "1 and 2" { angle = "30 deg" } # want 3 unknown-label `Found meeting "1 and 2" in the joint "B"\. No two tubes meet there\.$`
}
joint "C" { at = ["500 mm", "600 mm", "0 mm"] }
tube "1" { through = ["A", "B"] }
tube "2" { through = ["A", "C"] }
