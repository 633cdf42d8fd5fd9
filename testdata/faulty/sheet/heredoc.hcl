car "Tessel 16" {
  chassis = <<-TEXT
    TS-0417
    second line
  TEXT
  overall_width = <<-TEXT
      17 parsec
  TEXT
  model = <<-TEXT
      é Tessel ${x}
  TEXT
}
# want@-11 13 one-line-wanted `The chassis of the car "Tessel 16" has several lines\. Write it on one\.$`
# want@-7 10 unit-unknown `"parsec" is not a unit k`
# want@-5 16 not-literal `Found \$\{, but texts and values are literals: nothing is filled in\. Write the value itself; for the characters themselves write \$\$\{\.$`
