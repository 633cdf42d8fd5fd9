car "Tessel 16" {
  seat_count       = {} # want 22 key-missing `Found a group without a reading as seat_count of the car "Tessel 16"\. Write \{ reading = 2 \}\.$`
  first_registered = {} # want 22 key-missing `Found a group without a reading as first_registered of the car "Tessel 16"\. Write \{ reading = "2027-03-14" \}\.$`
  driven_wheels    = {} # want 22 key-missing `Found a group without a reading as driven_wheels of the car "Tessel 16"\. Write \{ reading = "front" \}\.$`
  chassis          = {} # want 22 key-missing `Found a group without a reading as chassis of the car "Tessel 16"\. Write \{ reading = "…" \}\.$`
  weighed_on       = "1950" # want 22 not-plausible `Found "1950" as weighed_on of the car "Tessel 16"\. Plausible is 1990-01-01 to 2100-12-31\. Look at the year\.$`
}
ballast "1" { sealable = {} } # want 26 key-missing `Found a group without a reading as sealable of the ballast "1"\. Write \{ reading = true \}\.$`
foot "1" { tube = {} } # want 19 key-missing `Found a group without a reading as tube of the foot "1"\. Write \{ reading = "1" \}\.$`
tube_stock "A" { ordered = {} } # want 28 key-missing `Found a group without a reading as ordered of the tube_stock "A"\. Write \{ reading = "45 x 2\.5 mm" \}\.$`
