rulebook "Marram" {
  edition = "2027"
}

table "hoop" {
  columns = { outside = "tube.outside" }
  rows    = [["45 mm"]]
}

table "stay_sizes" {
  columns = { outside = "tube.outside" }
  rows    = [["40 mm"]]
}

term "thick" {
  given = "tube in cage.tubes"
  means = "tube.wall >= 2*mm"
}

chapter "4" {
  title = "Names that are nearly right"
  clause "4.1" {
    title   = "A table by its bare name"
    concern = "safety"
    across  = "tube in cage.tubes"
    where   = "part == 'main hoop'" # want 16 formula-name `"part" is a particular, and it does not say of which part\. Write tube\.part\.`
    demand  = "any(hoop, tube.outside >= .outside)" # want 20 formula-name `"hoop" is not read by its bare name\. Write table\.hoop for its rows\.`
  }
  clause "4.2" {
    title   = "A table by half its name"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "any(stay, tube.outside >= .outside)" # want 20 formula-name `Write table\.stay_sizes for its rows\.`
  }
  clause "4.3" {
    title   = "A table as a function"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "hoop(tube)" # want 16 formula-name `"hoop" is a table, not a function\. Write any\(table\.hoop, …\) with what is asked of a row\.`
  }
  clause "4.4" {
    title   = "A term as a table, and bare"
    concern = "safety"
    across  = "tube in cage.tubes"
    where   = "any(table.thick, .wall > 0)" # want 20 formula-name `"thick" is a term, not a table\. Write thick\(tube\)\.`
    demand  = "thick" # want 16 formula-arguments `The term "thick" is worked out for one part, and none is named\. Write thick\(tube\)\.`
  }
  clause "4.5" {
    title   = "Counting behind a dot"
    concern = "safety"
    applies = "seats.count == 2" # want 22 formula-kind `"seats" is a list, and a list has no "count" of its own\. The function stands first: len\(seats\), or count\(seats, …\) with what is asked of each\.`
    demand  = "seats.length == 2 and cage.tubes.sum > 0" # want 22 formula-kind `The function stands first: len\(seats\)` 49 formula-kind `The function stands first: sum\(cage\.tubes, …\)\.`
  }
  clause "4.6" {
    title   = "The singular for the list"
    concern = "safety"
    across  = "tubes in cage.tube" # want 25 parts-wanted `Found "cage\.tube" after the word in, which is one part\. Write the list of all: cage\.tubes\.`
    demand  = "tubes.wall >= 2*mm"
  }
  clause "4.7" {
    title   = "A part without its list"
    concern = "safety"
    across  = "tube in tubes" # want 24 formula-name `"tubes" does not say what it belongs to\. Write cage\.tubes\.`
    demand  = "tube.wall >= 2*mm"
  }
  clause "4.8" {
    title   = "Years behind a sign"
    concern = "safety"
    across  = "seat in seats"
    where   = "seat.made + 5 years >= on" # want 16 formula-refused `Dates are not reckoned with by signs\. Write years_after\(seat\.made, 5\)\.`
    demand  = "end_of_label(seat.made) + 18 months > on and on - 3 weeks > seat.made" # want 16 formula-refused `Write months_after\(end_of_label\(seat\.made\), 18\)\.` 61 formula-refused `Write weeks_after\(on, -3\)\.`
  }
  clause "4.9" {
    title   = "Years as a unit"
    concern = "safety"
    across  = "seat in seats"
    demand  = "seat.made + 5*years >= on" # want 30 formula-name `A date is not reckoned with in "years"\. For a later day write years_after\(date, 5\)\.`
  }
  clause "4.10" {
    title   = "What shops call it"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.dent < 1*mm and tube.od > 40*mm" # want 21 formula-name `The build sheet knows no "dent" of a tube\. Did you mean deepest_dent\?` 42 formula-name `Did you mean outside\?`
  }
}
