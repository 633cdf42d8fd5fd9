car "Tessel 16" {
  chassis = "TS[31m" # want 16 control-character `Found the invisible character U\+001B\. Take it out\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
}
