car "Tessel 16" {
  overall_width = "1700 mn"
  note = <<-TEXT
    é é ${x}
  TEXT
}
# want@-5 25 unit-unknown `"mn" is not a unit known`
# want@-4 9 not-literal `Found \$\{, but texts and values are literals: nothing is filled in\. Write the value itself; for the characters themselves write \$\$\{\.$`
