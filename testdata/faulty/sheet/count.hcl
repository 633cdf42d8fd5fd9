car "Tessel 16" {
  seat_count = 2.5 # want 16 count-wanted `Found 2\.5 as seat_count of the car "Tessel 16"\. Write a whole number, 0 or more\.$`
}
ballast "1" { bolt_count = "four" } # want 28 wrong-kind `Found the text "four" as bolt_count of the ballast "1"\. Write a whole number without quotes, as in 2\.$`
ballast "2" { bolt_count = -1 } # want 28 count-wanted `Found -1 as bolt_count of the ballast "2"\. Write a whole number, 0 or more\.$`
ballast "3" { bolt_count = "4" } # want 28 wrong-kind `Found the text "4" as bolt_count of the ballast "3"\. Write a whole number without quotes, as in 4\.$`
ballast "4" { bolt_count = { readings = [4, 4] } } # want 28 one-value-wanted `Found readings as bolt_count of the ballast "4"\. Only figures have several readings: write reading = and one value\.$`
ballast "5" { bolt_count = { reading = 4, measured_with = "eye" } } # want 59 key-unfit `Found measured_with as bolt_count of the ballast "5"\. Only figures are measured: take it out\.$`
