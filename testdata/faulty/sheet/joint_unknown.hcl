car "Tessel 16" {}
joint "hoop foot left" { at = ["0 mm", "600 mm", "0 mm"] }
joint "hoop top left" { at = ["0 mm", "500 mm", "1000 mm"] }
tube "1" { through = ["hoop foot left", "hoop top lefd"] } # want 41 unknown-label `Found "hoop top lefd" as through of the tube "1", but no joint has that label\. Did you mean "hoop top left"\?$`
tube "2" { through = ["X", "hoop top left", "Y"] } # want 23 unknown-label `Found "X" as through of the tube "2", but no joint has that label\. There are "hoop foot left" and "hoop top left"\. Write one of those, or describe it: joint "X" \{ \}\.$` 45 unknown-label `Found "Y" as through of the tube "2", but no joint has that label\. There are "hoop foot left" and "hoop top left"\. Write one of those, or describe it: joint "Y" \{ \}\.$`
tube "3" { through = "hoop foot left" } # want 22 wrong-kind `Found the text "hoop foot left" as through of the tube "3"\. Write the labels of joints in a list, as in \["A", "B"\]\.$`
tube "4" { through = [] } # want 22 list-empty `Found an empty list as through of the tube "4"\. Write the labels of joints in a list, as in \["A", "B"\]\.$`
tube "5" { through = ["hoop foot left", 3] } # want 41 wrong-kind `Found the number 3 as through of the tube "5"\. Put it in double quotes: "3"\.$`
foot "1" { joint = "hoop foot" } # want 20 unknown-label `Found "hoop foot" as joint of the foot "1", but no joint has that label\. There are "hoop foot left" and "hoop top left"\. Write one of those, or describe it: joint "hoop foot" \{ \}\.$`
padding "1" { between = ["hoop foot left"] } # want 25 names-count `Found a list of 1 as between of the padding "1"\. There have to be 2\. The two joints between which it covers the tube\.$`
door_aperture "left" { corners = ["hoop foot left", "hoop top left"] } # want 34 names-count `Found a list of 2 as corners of the door_aperture "left"\. There have to be 4\. The four joints at its corners: lower front, upper front, upper rear, lower rear\.$`
tube "6" { through = { reading = ["hoop foot left", "hoop top left"], measured_with = "tape" } } # want 87 key-unfit `Found measured_with as through of the tube "6"\. Only figures are measured: take it out\.$`
