car "Tessel 16" {
  chassis          = "TS-${number}" # want 26 not-literal `Found \$\{, but texts and values are literals: nothing is filled in\. Write the value itself; for the characters themselves write \$\$\{\.$`
  model            = upper("tessel") # want 22 not-literal `Found the formula "upper\(\\"tessel\\"\)" as model of the car "Tessel 16"\. Values ar.*rked out\. Write a text in double quotes\.$`
  overall_width    = 2 * 850 # want 22 not-literal `Found the formula "2 \* 850" as overall_width of the car "Tessel 16"\. Values are .*ts unit in double quotes, as in "12 mm"\.$`
  weighed_mass     = "${1085} kg" # want 23 not-literal `Found \$\{, but texts and values are literals: nothing is filled in\. Write the value itself; for the characters themselves write \$\$\{\.$`
  ground_clearance = car.clearance # want 22 not-literal `Found the bare word "car\.clearance" as ground_clearance of the car "Tessel 16"\. .*ts unit in double quotes, as in "12 mm"\.$`
  seat_count       = 1 + 1 # want 22 not-literal `Found the formula "1 \+ 1" as seat_count of the car "Tessel 16"\. Values are liter.* a whole number without quotes, as in 2\.$`
  driver_side      = true ? "left" : "right" # want 22 not-literal `Found the formula "true \? \\"left\\" : \\"right\\"" as driver_side of the car "Tesse.*ked out\. Write one of "left" or "right"\.$`
  declared_mass    = ("1085 kg") # want 22 not-literal `Found the formula "\(\\"1085 kg\\"\)" as declared_mass of the car "Tessel 16"\. Value.*ts unit in double quotes, as in "12 kg"\.$`
}
