car "Tessel 16" {}
harness "driver" {
  strap "left shoulder" {
    label_kind = "not valid after" # want 18 label-kind `Found "not valid after" as label_kind of the strap "left shoulder", but it has made = "2021" and no not_after\. Write the end that the label names as not_after, or the kind of label that shows when it was made\.$`
    made       = "2021"
  }
  strap "right shoulder" {
    label_kind = "month and year" # want 18 label-kind `Found "month and year" as label_kind of the strap "right shoulder", but its made is "2021"\. Write it with as much as the label shows, no more and no less, as its life is counted from that\.$`
    made       = "2021"
  }
  strap "left lap" {
    label_kind = "year only" # want 18 label-kind `Found "year only" as label_kind of the strap "left lap", but its made is "2021-05"\. Write it with as much as the label shows, no more and no less, as its life is counted from that\.$`
    made       = "2021-05"
  }
  strap "right lap" {
    label_kind = "day, month and year" # want 18 label-kind `Found "day, month and year" as label_kind of the strap "right lap", but its made is "2021-05"\. Write it with as much as the label shows, no more and no less, as its life is counted from that\.$`
    made       = "2021-05"
  }
  strap "crotch" {
    label_kind = "year only" # want 18 label-kind `Found "year only" as label_kind of the strap "crotch", but it has not_after = "2026" and no made\. Write when it was made as the label shows it, or "not valid after" as label_kind\.$`
    not_after  = "2026"
  }
}
harness "co-driver" {
  strap "left shoulder" {
    label_kind = "label missing" # want 18 label-kind `Found "label missing" as label_kind of the strap "left shoulder", but it has made = "2021"\. Write the kind of label that shows it; what only a paper says stands in a note\.$`
    made       = "2021"
  }
  strap "right shoulder" {
    label_kind = "no date" # want 18 label-kind `Found "no date" as label_kind of the strap "right shoulder", but it has not_after = "2026"\. Write the kind of label that shows it; what only a paper says stands in a note\.$`
    not_after  = "2026"
  }
  strap "left lap" {
    label_kind = "month and year" # want 18 label-kind `Found "month and year" as label_kind of the strap "left lap", but its made is "none"\. Write when it was made as the label shows it, or "no date" as label_kind\.$`
    made       = "none"
  }
  strap "right lap" {
    label_kind = "not valid after"
    made       = "2021"
    not_after  = "2026"
  }
  strap "crotch" {
    label_kind = "not valid after" # want 18 label-kind `Found "not valid after" as label_kind of the strap "crotch", but it has made = "2021" and no not_after\. Write the end that the label names as not_after, or the kind of label that shows when it was made\.$`
    made       = "2021"
    not_after  = "none"
  }
}
seat "driver" {
  label_kind = "year only" # want 16 label-kind `Found "year only" as label_kind of the seat "driver", but its made is "2021-05-07"\. Write it with as much as the label shows, no more and no less, as its life is counted from that\.$`
  made       = "2021-05-07"
  not_after  = "none"
}
seat "co-driver" {
  label_kind = "label missing"
  made       = "none"
}
