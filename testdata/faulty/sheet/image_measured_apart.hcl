car "Tessel 16" {}
joint "A" {
  at          = ["0 mm", "600 mm", "0 mm"]
  mirrored_as = "A right"
}
joint "B" {
  at          = ["0 mm", "600 mm", "1000 mm"]
  mirrored_as = "B right"
}
joint "C" {
  at          = ["0 mm", "200 mm", "1000 mm"]
  mirrored_as = "C right"
}
joint "C right" { at = ["0 mm", "-500 mm", "1000 mm"] }
tube "1" {
  through     = ["A", "B", "C"]
  bend_radius = "150 mm" # want 17 bend-does-not-fit `Found "150 mm" as bend_radius of the tube "2", but its bends do not fit between its joints: 50 mm are missing between "B right" and "C right", which are 100 mm apart\.`
  mirrored_as = "2"
}
