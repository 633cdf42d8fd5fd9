car "Tessel 16" {}
car "Tessel 17" { # want 1 said-twice `Found a second car; the first is at second_car\.hcl:1:1\. A sheet is about one car: write each in a file or folder of its own\.$`
  seat_count = "two" # want 16 wrong-kind `Found the text "two" as seat_count of the car "Tessel 17"\. Write a whole number without quotes, as in 2\.$`
}
