car "Tessel 16" {}
tube_stock "A" { ordered = "45 mm" } # want 29 figure-form `"45 mm" is not the size `
tube_stock "B" { ordered = "45 x 2.5" } # want 29 unit-missing `"45" has no unit\. Write `
tube_stock "C" { ordered = "45 x 25 mm" } # want 29 figure-order `A tube of 45 mm outside `
tube_stock "D" { ordered = "  450 x  2.5 mm " } # want 31 not-plausible `Found "450 mm" as ordered of the tube_stock "D"\. Plausible is 10 to 120 mm\. Look at the number and its unit\.$`
tube_stock "E" { ordered = 45 } # want 28 wrong-kind `Found the number 45 as ordered of the tube_stock "E"\. Write outside and wall with their unit in double quotes, as in "45 x 2\.5 mm"\.$`
tube_stock "F" { ordered = { readings = ["45 x 2.5 mm", "45 x 2.5 kg"] } } # want 58 unit-mixed `"45 kg" is a figure of m`
tube_stock "G" { ordered = "${x}" } # want 29 not-literal `Found \$\{, but texts and values are literals: nothing is filled in\. Write the value itself; for the characters themselves write \$\$\{\.$`
