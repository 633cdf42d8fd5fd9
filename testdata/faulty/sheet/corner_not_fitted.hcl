car "Tessel 16" {}
joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
joint "C" { at = ["0 mm", "400 mm", "1000 mm"] }
tube "1" {
  through    = ["A", "B", "C"]
  not_fitted = ["corner"] # want 17 fitted-and-not-fitted `Found "corner" in not_fitted of the tube "1", but what it goes through makes one at "B"\. Take it out\.$`
}
tube "2" {
  through    = ["A", "B"]
  not_fitted = ["corner"]
}
