car "Tessel 16" {}
joint "A" { at = ["5900 mm", "600 mm", "0 mm"] } # want 20 cage-too-long `The joints "A" and "B" are 7100 mm apart along the car; 6500 mm is the most that can be\. Look at x of both, at its unit and its sign\.$`
joint "B" { at = ["-1200 mm", "500 mm", "1000 mm"] }
joint "C" { at = ["-1000 mm", "500 mm", "-2 m"] } # want 42 cage-too-long `The joints "C" and "B" are 3000 mm apart in height; 2600 mm is the most that can be\. Look at z of both, at its unit and its sign\.$`
joint "D" {
  at          = ["-900 mm", "1400 mm", "0 mm"] # want 30 cage-too-long `The joints "D right" and "D" are 2800 mm apart across the car; 2600 mm is the most that can be\. Look at y of both, at its unit and its sign\.$`
  mirrored_as = "D right"
}
