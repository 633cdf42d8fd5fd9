car "Tessel 16" {
  overall_width    = {} # want 22 key-missing `Found a group without a reading as overall_width of the car "Tessel 16"\. Write \{ reading = "12 mm" \}\.$`
  weighed_mass     = { reading = "1085 kg", readings = ["1085 kg"] } # want 56 said-twice `Found both reading and readings as weighed_mass of the car "Tessel 16"\. Put all of them into readings\.$`
  ground_clearance = { readings = "80 mm" } # want 35 list-wanted `Found the text "80 mm" in readings as ground_clearance of the car "Tessel 16"\. Write a list: readings = \["12 mm", "12 mm"\]\.$`
  declared_mass    = { value = "1085 kg" } # want 24 unknown-key `Found "value" in the declared_mass of the car "Tessel 16"\. There can be reading, readings, measured_with and note\.$`
  chassis          = { reading = "TS-0417", note = 3 } # want 52 text-wanted `Found the number 3 where a text is wanted\. Write it in double quotes: "…"\.$`
  model            = { reading = "T", by = "me" } # want 39 unknown-key `Found "by" in the model of the car "Tessel 16"\. There can be reading, readings, measured_with and note\.$`
  seat_count       = { "reading" = 2, (note) = "x" } # want 39 unknown-key `Found "\(note\)" in the seat_count of the car "Tessel 16"\. Did you mean note\? There can be reading, readings, measured_with and note\.$`
}
tube "1" { wall = { readings = [] } } # want 32 list-wanted `Found an empty list in readings as wall of the tube "1"\. Write a list: readings = \["12 mm", "12 mm"\]\.$`
tube "2" { wall = ["2.5 mm", "2.6 mm"] } # want 19 wrong-kind `Found a list as wall of the tube "2"\. Write several readings as \{ readings = \["12 mm", "12 mm"\] \}\.$`
