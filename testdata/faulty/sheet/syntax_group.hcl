car "Tessel 16" {}
tube "2" {
  wall = { reading "2.5 mm" } # want 20 value-missing `Found "\\""\. Inside \{ \} write name = value, separated by commas or line breaks\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
}
