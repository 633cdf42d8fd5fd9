car "Tessel 16" {
  chassis = "TSÿ" # want 16 not-utf8 `Found the byte 0xFF, which is not valid UTF-8\. Save the file as UTF-8 in the editor and try again\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
}
