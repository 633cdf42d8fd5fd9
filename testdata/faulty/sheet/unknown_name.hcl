car "Tessel 16" {
  chasis = "TS-0417" # want 3 unknown-key `Found "chasis" in the car "Tessel 16"\. Did you mean chassis\?$`
  wall   = "2.5 mm" # want 3 unknown-key `Found "wall" in the car "Tessel 16"\. wall belongs to tube_stock and tube\.$`
  colour_of_the_roof = "blue" # want 3 unknown-key `Found "colour_of_the_roof" in the car "Tessel 16"\. It can have chassis, class, m.*ared_mass, note, not_fitted, unfinished\.$`
}
strap = "left lap" # want 1 unknown-key `Found "strap" in the sheet\. It is a block and stands elsewhere: write strap "left shoulder" \{ \} inside the block harness "driver" \{ \}, on lines of its own\.$`
evidence = "photo" # want 1 unknown-key `Found "evidence" in the sheet\. It is a block: write evidence "NAME" \{\.$`
wall = "2.5 mm" # want 1 unknown-key `Found "wall" in the sheet\. wall belongs to tube_stock and tube\.$`
tube "1" {
  wal = "2.5 mm" # want 3 unknown-key `Found "wal" in the tube "1"\. Did you mean wall\?$`
  foot = "1" # want 3 unknown-key `Found "foot" in the tube "1"\. It is a block and stands elsewhere: write foot "1" \{ \} at the top level of the sheet, outside any other block\.$`
}
