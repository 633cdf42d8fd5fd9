car "Tessel 16" {}
tube 12a { # want 6 label-without-quotes `Found "12a" behind tube\. A label stands in double quotes: tube "12a" \{\. Nothing else in the file was looked at: mend this first, more may follow\.$`
  walll = "2.5 mm"
}
