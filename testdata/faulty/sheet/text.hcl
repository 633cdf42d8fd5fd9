car "Tessel 16" {
  chassis = 417 # want 13 wrong-kind `Found the number 417 as chassis of the car "Tessel 16"\. Put it in double quotes: "417"\.$`
  model   = ["Tessel", "16"] # want 13 wrong-kind `Found a list as model of the car "Tessel 16"\. Write a text in double quotes\.$`
  note    = 12 # want 13 text-wanted `Found the number 12 where a text is wanted\. Write it in double quotes: "…"\.$`
}
