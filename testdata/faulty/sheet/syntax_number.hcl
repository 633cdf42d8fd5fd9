car "Tessel 16" {
  seat_count = 1e400 # want 16 number-out-of-bounds `Found "1e400"\. Powers of ten go from -30 to 30\. Write the figure with a unit that suits it\.$`
  model      = 1234567890123456789012345678901234567890123456789012345678901234567890 # want 16 number-out-of-bounds `Found a number of 70 characters; 60 are enough for any figure\. Write it shorter\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
}
