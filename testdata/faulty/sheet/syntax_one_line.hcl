car "Tessel 16" {}
tube "1" { wall = "2.5 mm", outside = "45 mm" } # want 27 one-line-block `Found ","\. A block written on one line holds one name = value only and ends with \} on that line\. Give each its own line\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
