season "2027" {
  event "Quarry Night" {
    first_day = "2027-05-15"
    last_day  = "2027-05-16"
    crew      = ["A. Penrith-Vale", "B. Oakhollow", "C. Marsh"] # want 53 crew-too-many `Found 3 people as crew of the event "Quarry Night"\. Write the driver, then the co-driver\.$`
  }
  event "Harbour Sprint" {
    first_day = "2027-06-12"
    last_day  = "2027-06-13"
    crew      = ["A. Penrith Vale", "a. penrith-vale", "A. Penrith-Vale"] # want 18 unknown-person `Found "A\. Penrith Vale" as crew of the event "Harbour Sprint", but no crew block has that name\. Did you mean "A\. Penrith-Vale"\?$` 56 said-twice `Found "A\. Penrith-Vale" in crew of the event "Harbour Sprint" again; it was said first at crew\.hcl:10:37\. Keep one of the two\.$`
  }
  event "Fell Stages" { # warn 3 events-overlap `Found "A\. Penrith-Vale" in the crew of the event "Fell Stages" from 2027-06-13 to 2027-06-14, and of the event "Harbour Sprint" from 2027-06-12 to 2027-06-13\. Look at the days and at the names\.$`
    first_day = "2027-06-13"
    last_day  = "2027-06-14"
    crew      = ["Z. Ferrow", "A. Penrith-Vale"] # want 18 unknown-person `Found "Z\. Ferrow" as crew of the event "Fell Stages", but no crew block has that name\. There are "A\. Penrith-Vale" and "B\. Oakhollow"\. Write one of those, or describe the person's gear: crew "Z\. Ferrow" \{ \}\.$`
  }
  event "Pass Stages" {
    first_day = "2027-06-20"
    last_day  = "2027-06-21"
    crew      = "A. Penrith-Vale" # want 17 list-wanted `Found a text as crew of the event "Pass Stages"\. Write a list of texts: \["…", "…"\]\.$`
  }
  event "Moor Stages" {
    first_day = "2027-06-27"
    last_day  = "2027-06-28"
    crew      = [] # want 17 list-empty `Found an empty list as crew of the event "Moor Stages"\. Write the names in it, or leave the line out\.$`
  }
}

crew "A. Penrith-Vale" {
  helmet {
    standard = "FIA 8859-2025" # want 16 unknown-choice `Found "FIA 8859-2025" as standard of the helmet\. Did you mean "FIA 8859-2024"\?$`
    made     = "in 2021" # want 17 date-form `"in 2021" is not a date in the form that is read here\. Write a date as 2027-03-14, or 2027-03 or 2027 where no more is known\.$`
    weight   = "1.4 kg" # want 5 unknown-key `Found "weight" in the helmet\. It can have standard, homologation_number, serial, label_kind, made, not_after, first_used, restraint_anchors, damaged, altered, note, not_fitted, unfinished\.$`
  }
  garment "overall" {}
  garment "cape" {} # want 11 unknown-label `Found "cape" as label of a garment\. Write one of "overalls", "underwear top", "underwear bottoms", "balaclava", "socks", "shoes" or "gloves"\.$`
  harness "driver" {} # want 3 block-misplaced `Found the block "harness" in the crew "A\. Penrith-Vale"\. It stands elsewhere: write harness "driver" \{ \} at the top level of the sheet, outside any other block\.$`
  dressed_mass = "82 kg"
}
crew "B. Oakhollow" {
  helmet {
    made      = "2022-03"
    not_after = "2021" # want 17 dates-order `Found "2021" as not_after of the helmet, whose made is 2022-03: it would have ended before\. Look at both dates\.$`
  }
}
crew "b. oakhollow" {} # want 1 said-twice `Found a second crew "b\. oakhollow"; the first is at crew\.hcl:40:1\. Events name people: put all gear of one person into one block, and write the name of another in full\.$`
crew {} # want 1 label-count `Found 0 names of the crew\. Write one in double quotes, as in crew "A\. Penrith-Vale" \{\.$`
