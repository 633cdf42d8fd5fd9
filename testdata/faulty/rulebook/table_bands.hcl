rulebook "Marram" {
  edition = "2027"
}

table "ends" {
  columns = { low = "car.weighed_mass", high = "car.weighed_mass", wall = "tube.wall", remark = "text" }
  bands   = { from = "lo", to = "remark", upto = "high", above = "low" } # want 22 band-column `Found "lo" as an end of a band, but the columns are low, high, wall and remark\.` 33 band-kind "holds neither figures nor dates" 43 band-end `Found "upto" in bands of the table ends\.`
  rows    = [["800 kg", "900 kg", "2 mm", "a"]]
}
table "same_end" {
  columns = { low = "car.weighed_mass", high = "car.weighed_mass" }
  bands   = { from = "low", above = "high" } # want 29 band-end `Found above beside the other word for the same end\.`
  rows    = [["800 kg", "900 kg"]]
}
table "kinds" {
  columns = { low = "car.weighed_mass", high = "tube.wall" }
  bands   = { from = "low", to = "high" } # want 13 band-kind "they do not hold figures of one kind"
  rows    = [["800 kg", "2 mm"]]
}
table "rows" {
  columns = { low = "car.weighed_mass", high = "car.weighed_mass", wall = "tube.wall" }
  bands   = { from = "low", below = "high" }
  rows = [
    ["", "800 kg", "2 mm"],
    ["900 kg", "800 kg", "2 mm"],      # want 5 band-empty "Write the lower end first"
    ["900 kg", "900 kg", "2 mm"],      # want 5 band-empty `Found a row whose band begins with low and ends with high\.`
    ["1000 kg", "99999 kg", "2 mm"],   # want 17 not-plausible `Leave the end of the band empty \(""\) where there is no bound\.`
    ["1000 kg", "", ""],               # want 21 cell-empty `Found nothing in the column wall\.`
  ]
}
chapter "1" {
  title = "General"
  clause "1.1" {
    title    = "Papers"
    concern  = "advice"
    evidence = "log book"
  }
}
