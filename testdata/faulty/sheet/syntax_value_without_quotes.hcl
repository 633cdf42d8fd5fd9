car "Tessel 16" {
  overall_width = 1700 mm # want 24 line-too-long `Found "mm"\. A value ends its line\. A figure with its unit stands in double quotes, as in wall = "2\.5 mm"\.$`
  model         = 'Tessel' # want 19 strange-character `Found "'"\. Texts stand in straight double quotes \("\), lists in \[ \], groups and b.*put the text around it in double quotes\.$`
  chassis       = “TS” # want 19 printers-quotes `2 of them in the file`
}
