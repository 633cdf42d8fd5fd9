car "Tessel 16" {
  chassis = "TS\n0417"
  model   = "   "
  note    = <<-NOTE
    Two lines are
    all right here.
  NOTE
}
# want@-7 13 one-line-wanted `The chassis of the car "Tessel 16" has several lines\. Write it on one\.$`
# want@-7 13 text-empty `The model of the car "Tessel 16" is empty\. Write it out, or leave the key away\.$`
