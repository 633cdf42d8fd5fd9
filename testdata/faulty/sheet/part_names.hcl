car "Tessel 16" {}
tube_stock "45x2.5" {}
tube_stock "40x2" {}
tube "1" { stock = "45x2,5" } # want 20 unknown-label `Found "45x2,5" as stock of the tube "1", but no tube_stock has that label\. Did you mean "45x2\.5"\?$`
tube "2" { stock = "certified" } # want 20 unknown-label `Found "certified" as stock of the tube "2", but no tube_stock has that label\. Th.*describe it: tube_stock "certified" \{ \}\.$`
tube "3" { stock = 45 } # want 20 wrong-kind `Found the number 45 as stock of the tube "3"\. Put it in double quotes: "45"\.$`
harness "driver" { seat = "driver" } # want 27 unknown-label `Found "driver" as seat of the harness "driver", but no seat has that label\. The sheet has no seat yet; write seat "driver" \{ \}\.$`
tube "4" { stock = { readings = ["40x2"] } }
