car "Tessel 16" {
  chassis        = "none" # want 20 none-impossible `Found "none" as chassis of the car "Tessel 16"\. There always is one\. Write what it is, or leave the line out as long as it is not recorded\.$`
  logbook_number = "None"
  overall_width  = "none" # want 20 none-impossible `Found "none" as overall_width of the car "Tessel 16"\. There always is one\. Write.* line out as long as it is not recorded\.$`
  first_logbook  = none # want 20 not-literal `Found the bare word "none" as first_logbook of the car "Tessel 16"\. Values are l.*ed out\. Put it in double quotes: "none"\.$`
}
ballast "1" { sealable = "none" } # want 26 truth-wanted `Found the text "none" as sealable of the ballast "1"\. Write true or false, without quotes\.$`
ballast "2" { bolt_count = "none" } # want 28 none-impossible `Found "none" as bolt_count of the ballast "2"\. Write 0 where there is none, or leave the line out as long as it is not recorded\.$`
