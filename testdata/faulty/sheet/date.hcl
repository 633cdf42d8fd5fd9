car "Tessel 16" {
  first_registered = 2011 # want 22 wrong-kind `Found the number 2011 as first_registered of the car "Tessel 16"\. Put it in double quotes: "2011"\.$`
  first_logbook    = "14/03/2012" # want 23 date-form `"14/03/2012" is not a da`
  weighed_on       = "2027-02-30" # want 31 date-no-such-day `February 2027 has 28 day`
}
harness "driver" {
  strap "left lap" {
    not_after = "in 2029" # want 18 date-form `"in 2029" is not a date `
  }
}
