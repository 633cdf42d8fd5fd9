car "Tessel 16" {}
club "Saltmarsh Stage Rally" { decal = true } # warn 6 club-unread `Found a block for "Saltmarsh Stage Rally", which is no rulebook of this run\. Did you mean "Saltmarsh Stage Rallye"\?$`
club "Saltmarsh Stage Rallye" {
  decal    = "yes" # want 14 truth-wanted `Found the text "yes" as decal of the club "Saltmarsh Stage Rallye"\. Write true or false, without quotes\.$`
  stickers = 3 # want 3 unknown-key `Found "stickers" in the club "Saltmarsh Stage Rallye"\. It can have decal\.$`
  tube "1" {} # want 3 unknown-block `Found the block "tube" in the club "Saltmarsh Stage Rallye", which holds name = value only\. Take it out\.$`
}
club "Saltmarsh Stage Rallye" { decal = true } # want 1 said-twice `Found club "Saltmarsh Stage Rallye" again; it was said first at club\.hcl:3:1\. Keep one of the two\.$`
club "Far Hills Autumn Trial" { whatever = 3 }
tube "1" {
  paint_mark = "red" # want 3 unknown-key `Found "paint_mark" in the tube "1"\. "Saltmarsh Stage Rallye" has it for the tube: write it inside club "Saltmarsh Stage Rallye" \{ \}\.$`
  club "Saltmarsh Stage Rallye" {
    paint_mark = 3 # want 18 wrong-kind `Found the number 3 as paint_mark of the club "Saltmarsh Stage Rallye" of the tube "1"\. Put it in double quotes: "3"\.$`
    wall       = "2.5 mm" # want 5 unknown-key `Found "wall" in the club "Saltmarsh Stage Rallye" of the tube "1"\. wall belongs to tube_stock and tube\.$`
  }
}
foot "1" {
  club "Saltmarsh Stage Rallye" { paint_mark = "red" } # want 35 unknown-key `Found "paint_mark" in the club "Saltmarsh Stage Rallye" of the foot "1"\. Take the line out\.$`
}
club "Saltmarsh" "Stage" {} # want 1 label-count `Found 2 names behind club\. Write the name of the rulebook: club "NAME OF THE RULES" \{\.$`
club "Quarry Sprint Rules" {} # want 1 unknown-block `Found a club block at the top level, but "Quarry Sprint Rules" adds nothing to the car itself\. Write it in the part that it is about\.$`
harness "driver" {
  strap "left lap" {}
  club "Quarry Sprint Rules" { checked_strap = "left lap" }
}
harness "co-driver" {
  strap "left lap" {}
}
harness "spare" { # want 9 unknown-label `Found "spare" as label of a harness\. Write one of "driver" or "co-driver"\.$`
  club "Quarry Sprint Rules" { checked_strap = "left lap" } # want 48 label-of-several `Found "left lap" as checked_strap of the club "Quarry Sprint Rules" of the harne.*-driver\. Give one of them another label\.$`
}
