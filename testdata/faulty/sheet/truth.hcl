car "Tessel 16" {}
ballast "1" { sealable = "yes" } # want 26 truth-wanted `Found the text "yes" as sealable of the ballast "1"\. Write true or false, without quotes\.$`
ballast "2" { sealable = 1 } # want 26 truth-wanted `Found the number 1 as sealable of the ballast "2"\. Write true or false, without quotes\.$`
ballast "3" { sealable = yes } # want 26 truth-wanted `Found the bare word "yes" as sealable of the ballast "3"\. Write true or false, without quotes\.$`
ballast "4" { sealable = null } # want 26 truth-wanted `Found null as sealable of the ballast "4"\. Write true or false, without quotes\.$`
