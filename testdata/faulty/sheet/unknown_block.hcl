car "Tessel 16" {
  chassis { value = "TS-0417" } # want 3 unknown-block `Found the block "chassis" in the car "Tessel 16"\. It is not a block: write chassis = with its value\.$`
  tube "1" {} # want 3 block-misplaced `Found the block "tube" in the car "Tessel 16"\. It stands elsewhere: write tube ".*l of the sheet, outside any other block\.$`
}
tubestock "A" {} # want 1 unknown-block `Found the block "tubestock" in the sheet\. Did you mean tube_stock\?$`
tubes "1" {} # want 1 unknown-block `Found the block "tubes" in the sheet\. Write each in a block of its own: tube "1" \{\.$`
strap "left lap" {} # want 1 block-misplaced `Found the block "strap" in the sheet\. It stands elsewhere: write strap "left shoulder" \{ \} inside the block harness "driver" \{ \}, on lines of its own\.$`
flux_capacitor {} # want 1 unknown-block `Found the block "flux_capacitor" in the sheet\. A sheet has the parts of a car, s.*te the name of one, or say it in a note\.$`
harness "driver" {
  seat "driver" {} # want 3 unknown-block `Found the block "seat" in the harness "driver"\. It is not a block: write seat = with its value\.$`
  instrument "tape" { tolerance = "1 mm" } # want 3 block-misplaced `Found an instrument in the harness "driver"\. Write it at the top level of the sheet; readings name it by measured_with\.$`
}
clause "4.1" {} # want 1 block-misplaced `Found the block "clause" in the sheet\. It belongs to a rulebook\. Move it there\.$`
seat "driver" {
  flux {} # want 3 unknown-block `Found the block "flux" in the seat "driver"\. There can be seat_mount, evidence and club\.$`
}
tube_stock "A" { bends = 2 } # want 18 unknown-key `Found "bends" in the tube_stock "A"\. bends belongs to tube\.$`
