car "Tessel 16" { # want 17 not-closed `Found "\{"\. No closing \} was found for the block that begins here\. Write \} on a l.*ne, and look for a \{ too many inside it\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
  overall_width = "1700 mm"

tube "1" {
  wall = "2.5 mm"
}
