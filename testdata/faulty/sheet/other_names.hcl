car "Tessel 16" {
  seats  = 2 # want 3 unknown-key `Found "seats" in the car "Tessel 16"\. Did you mean seat_count\?$`
  weight = "1085 kg" # want 3 unknown-key `Did you mean weighed_mass\?$`
  photo  = "car.jpg" # want 3 unknown-key `A paper or photo is a block: write evidence "what it shows" \{ file = "papers/photo\.jpg" \}\.$`
}
stock "A" { size = "45 x 2.5 mm" } # want 1 unknown-block `Found the block "stock" in the sheet\. Did you mean tube_stock\?$`
photo "of the hoop" {} # want 1 unknown-block `Found the block "photo" in the sheet\. Did you mean evidence\?$`
tube "1" {
  stock = "A"
  dent  = "0.3 mm" # want 3 unknown-key `Found "dent" in the tube "1"\. Did you mean deepest_dent\?$`
  od    = "45 mm" # want 3 unknown-key `Did you mean outside\?$`
}
tube "2" { stock = "B" } # want 20 unknown-label `The sheet has no tube_stock yet; write tube_stock "B" \{ \}\.$`
seat "driver" { expires = "2029" } # want 17 unknown-key `Did you mean not_after\?$`
harness "driver" {
  expiry = "2029" # want 3 unknown-key `Found "expiry" in the harness "driver"\. not_after stands in strap: write it inside strap "left shoulder" \{ \}\.$`
  points = "6" # want 12 wrong-kind `Found the text "6" as points of the harness "driver"\. Write a whole number without quotes, as in 6\.$`
}
