"car" "Tessel 16" { # want 1 line-not-understood `Found "\\""\. Names stand without quotes, only values and labels have them: name = "value"\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
}
