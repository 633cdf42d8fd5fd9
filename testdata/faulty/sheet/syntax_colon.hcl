car "Tessel 16" {
  model: "Tessel" # want 3 line-not-understood `Found "model"\. A line is either name = value, or the beginning of a block: name "label" \{\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
}
