car "Tessel 16" {
  chassis       = "TS-0417"
  driven_wheels = "2WD" # want 19 unknown-choice "Found \"2WD\" as driven_wheels of the car \"Tessel 16\"\\. Write one of \"front\", \"rear\" or \"four\"\\.$"
}
harness "driver" {
  strap "shoulder" {} # want 9 unknown-label "Found \"shoulder\" as label of a strap\\. Write one of \"left shoulder\""
}
tube "1" {
  part = "hoop" # want 10 unknown-choice "Write one of \"main hoop\", \"front hoop\""
}
