car "Tessel 16" {
  chassis =
}
# want@-2 12 value-missing `The line ends here\. Write a value after the =, as in wall = "2\.5 mm"\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
