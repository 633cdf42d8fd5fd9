car "Tessel 16" {
  chassis = 417 # want 13 wrong-kind `Found the number 417 as chassis of the car "Tessel 16"\. Put it in double quotes: "417"\.$`
  model   = ["Tessel", "16"] # want 13 wrong-kind `Found a list as model of the car "Tessel 16"\. Write a text in double quotes\.$`
  note    = 12 # want 13 text-wanted `Found the number 12 where a text is wanted\. Write it in double quotes: "…"\.$`
}
engine { note = null } # want 17 text-wanted `Found null where a text is wanted\. Write it in double quotes: "…"\.$`
tube_stock "A" { cast_number = null } # want 32 wrong-kind `Found null as cast_number of the tube_stock "A"\. Leave the line out as long as it is not recorded\. Write a text in double quotes\.$`
