car "Tessel 16" {
  weighed_mass = .5 # want 18 value-missing `Found "\."\. Write a text or a figure with its unit in double quotes, a plain number, true or false, a list in \[ \] or a group in \{ \}\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
}
