car "Tessel 16" {
  chassis = "TS-0417
  model   = "Tessel"
}
# want@-3 21 not-closed `The line ends here\. A text in double quotes ends on its line\. For a longer one o.*nd it with a line that holds TEXT alone\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
