car "Tessel 16" {
  overall_width = 1700 mm # want 24 line-too-long `Found "mm"\. A value ends its line\. A figure with its unit stands in double quotes, as in wall = "2\.5 mm"\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
}
