season "2027" {
  event "Quarry Night" {
    first_day = "2027-05-15"
    last_day  = "2027-05-16"
  }
}
helmet {} # want 1 block-misplaced `Found the block "helmet" in the season file\. It belongs to a person: write it inside crew "NAME" \{ \}\.$`
tube "1" {} # want 1 block-misplaced `Found the block "tube" in the season file\. It belongs to a build sheet\. Move it there\.$`
logbook_note "N1" {} # want 1 block-misplaced `Found the block "logbook_note" in the season file\. It belongs to a build sheet\. Move it there\.$`
chapter "1" {} # want 1 unknown-block `Found chapter in the season file\. It can have season, crew, instrument\.$`
crews "A. Penrith-Vale" {} # want 1 unknown-block `Found crews in the season file\. Did you mean crew\? It can have season, crew, instrument\.$`
note = "spring" # want 1 unknown-key `Found note in the season file\. It can have season, crew, instrument\.$`
