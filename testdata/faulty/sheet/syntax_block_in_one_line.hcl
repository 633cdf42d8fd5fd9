car "Tessel 16" {}
harness "driver" { strap "left lap" { serial = "1" } } # want 20 one-line-block `A block written on one line holds one name = value only, and no other block\. Write what is inside it on lines of its own, and its \} on a line below\. Nothing else`
