# Nothing but the curly quotes is told of their lines; another slip is told beside them.
car “Tessel 16” { # want 5 printers-quotes `Found the curly quotation mark “ \(4 of them in the file\)\. Texts and labels stand in straight double quotes`
  chassis = “TS-0417”
}
tube 1 { # want 6 label-without-quotes `Found "1" behind tube\. A label stands in double quotes: tube "1" \{\. Nothing else in the file was looked at: mend these first, more may follow\.$`
  walll = "2.5 mm"
}
