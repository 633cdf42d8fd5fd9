rulebook "Marram" {
  edition = "2027"
}

table "t1" {
  columns = ["outside"] # want 13 group-wanted `Found a list as columns of the table t1\.`
  rows    = [["45 mm"]]
}
table "t2" {
  columns = {} # want 13 columns-missing `The table t2 has no column\.`
  rows    = []
}
table "t3" {
  columns = {
    a       = "tube.outsid"  # want 15 column-kind `The part tube has no particular "outsid"\. Did you mean outside\?`
    b       = "tub.outside"  # want 15 column-kind `There is no part "tub"\. Did you mean tube\?`
    c       = "length"       # want 15 column-kind `This names no particular\.`
    d       = "tube.size"    # want 15 column-kind `Write a column each for tube\.outside and tube\.wall\.`
    e       = "harness.strp.made" # want 15 column-kind `The part harness has no part "strp"\. Did you mean strap\?`
    g       = "joint.at"     # want 15 column-kind `joint\.at is a place, three figures\. Write a column each for joint\.x, joint\.y and joint\.z\.`
    h       = "tube.through" # want 15 column-kind `tube\.through names several parts\. Write a particular that is one value\.`
    mm      = "count"        # want 5 name-taken `It is a unit in every formula\.`
    "a b"   = "count"        # want 5 name-taken "small letters a to z"
    f       = "count"
    f       = "text"         # want 5 said-twice "Found f again"
  }
  rows = [["45 mm"]]
}
chapter "1" {
  title = "General"
  clause "1.1" {
    title    = "Papers"
    concern  = "advice"
    evidence = "log book"
  }
}
