rulebook "Marram" {
  edition = "2027"
}

table "no_columns" { # want 1 key-missing `The table no_columns has no columns\.`
  rows = [["45 mm"]]
}
table "no_rows" { # want 1 key-missing `The table no_rows has no rows\.`
  columns = { outside = "tube.outside" }
}
table "empty_rows" {
  columns = { outside = "tube.outside" }
  rows    = [] # want 13 rows-form "Found an empty list as rows"
}
table "row_of_no_list" {
  columns = { outside = "tube.outside" }
  rows    = ["45 mm"] # want 14 rows-form `Write each row as a list in square brackets\.`
}
table "lengths" {
  columns = { outside = "tube.outside", wall = "tube.wall" }
  rows = [
    ["45 mm", "2.5 mm"],
    ["50 mm"],                     # want 5 row-length `Found a row of 1 for the 2 columns outside and wall\.`
    ["50 mm", "2 mm", "1 mm"],     # want 5 row-length "Found a row of 3"
    ["45.0 mm", "2500e-3 mm"],     # want 5 said-twice "Found the same row again"
  ]
}
table "cells" {
  columns = { outside = "tube.outside", pieces = "count", remark = "text", alloy = "truth", form = "tube.forming", until = "car.homologation_ended" }
  rows = [
    ["45", 1, "a", true, "seamless", "2030-12-31"],                  # want 6 unit-missing `as in "45 mm"`
    ["45 kg", 1, "b", true, "seamless", "2030-12-31"],               # want 6 wrong-dimension `Found "45 kg" in the column outside, which holds a length\.`
    ["45 in", 1, "c", true, "seamless", "2030-12-31"],               # want 6 not-plausible `Look at the number and its unit\.`
    ["45 mm +/- 1 mm", 1, "d", true, "seamless", "2030-12-31"],      # want 6 one-figure-wanted "A limit is a single figure"
    ["> 45 mm", 1, "e", true, "seamless", "2030-12-31"],             # want 6 one-figure-wanted ""
    ["45 mm", 1.5, "f", true, "seamless", "2030-12-31"],             # want 15 count-wanted `Write a whole number\.`
    ["45 mm", -1, "g", true, "seamless", "2030-12-31"],              # want 15 count-wanted ""
    ["45 mm", "1 mm", "h", true, "seamless", "2030-12-31"],          # want 15 wrong-dimension `Write it without a unit\.`
    ["45 mm", 1, "i", "yes", "seamless", "2030-12-31"],              # want 23 truth-wanted `Write true or false\.`
    ["45 mm", 1, "j", true, "seemless", "2030-12-31"],               # want 29 unknown-choice `Found "seemless" in the column form\.`
    ["45 mm", 1, "k", true, "seamless", "2030"],                     # want 41 day-wanted "Write the day"
    ["45 mm", 1, "l", true, "seamless", "2030-02-30"],               # want 50 date-no-such-day ""
    ["45 mm", 1, "m", true, "seamless", "1905-01-01"],               # want 41 not-plausible `Look at the year\.`
    ["45,5 mm", 1, "n", true, "seamless", "2030-12-31"],             # want 7 number-comma ""
    ["", 1, "o", true, "seamless", "2030-12-31"],                    # want 6 cell-empty `Found nothing in the column outside\.`
    ["45 mm", 1, ["p"], null, "seamless", "2030-12-31"],             # want 18 text-wanted "list" 25 text-wanted "null"
  ]
}
table "both" {
  columns   = { outside = "tube.outside" }
  rows      = [["45 mm"]]
  rows_from = "sizes.csv" # want 3 rows-twice "has rows and rows_from"
}
table "on" { # want 7 name-taken `It is a word with a meaning of its own in every formula\.`
  columns = { outside = "tube.outside" }
  rows    = [["45 mm"]]
}
table "lengths" { # want 7 said-twice "Found table lengths again"
  columns = { outside = "tube.outside" }
  rows    = [["45 mm"]]
  isued   = "2027" # want 3 unknown-key `Did you mean issued\?`
}
chapter "4" {
  title = "Safety cage"
  clause "4.1" {
    title   = "A table that is not there"
    concern = "safety"
    demand  = "any(table.lenghts, .outside > 1*mm)" # want 26 formula-name ""
  }
}
