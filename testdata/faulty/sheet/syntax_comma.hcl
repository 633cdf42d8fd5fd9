car "Tessel 16" {
  note = "a", # want 13 line-too-long `Found ","\. Take the comma out: each name = value has its own line and needs none\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
}
