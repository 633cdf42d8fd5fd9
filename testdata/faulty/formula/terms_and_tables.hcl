rulebook "Marram" {
  edition = "2027"
}

term "thick" {
  given = "tube in cage.tubes"
  means = "tube.wall >= least_wall"
}

term "least_wall" {
  means = "2.5 mm" # want 12 formula-syntax `"2\.5 mm" has no operator between number and word\. Write 2\.5\*mm\.`
}

term "heavy" {
  means = "car.weighed_mass > limits" # want 31 formula-name `"limits" is not the name of anything\. A text stands between quotes; a part, table, term or unit is written by its name\.`
}

term "light" {
  means = "car.weighed_mass <= 1000*kg"
}

table "hoop_sizes" {
  columns = { outside = "tube.outside", wall = "tube.wall" }
  rows    = [["45 mm", "2.5 mm"], ["50 mm", "2.0 mm"]]
}

chapter "4" {
  title = "Formulas that cannot be read"
  clause "4.1" {
    title   = "A table that does not exist"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "any(table.hoop_size, tube.outside >= .outside)" # want 26 formula-name `This rulebook has no table "hoop_size"\. Did you mean hoop_sizes\?`
  }
  clause "4.2" {
    title   = "A column that does not exist"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "any(table.hoop_sizes, tube.outside >= .diameter)" # want 55 formula-name `The table "hoop_sizes" has no column "diameter"\. There is: outside and wall\.`
  }
  clause "4.3" {
    title   = "Not a table of bands"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "len(in_band(table.hoop_sizes, tube.outside)) > 0" # want 28 formula-kind `The table "hoop_sizes" has no bands\. Say in the table which columns are its bands\.`
  }
  clause "4.4" {
    title   = "A term without its part"
    concern = "safety"
    demand  = "thick" # want 16 formula-arguments `The term "thick" is worked out for one part, and none is named\. Write thick\(tube\)\.`
  }
  clause "4.5" {
    title   = "A term of another part"
    concern = "safety"
    across  = "seat in seats"
    demand  = "thick(seat)" # want 22 formula-kind `"seat" is a seat, but the term thick is for a tube\. Give it a tube\.`
  }
  clause "4.6" {
    title   = "A term that takes no part"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "light(tube)" # want 16 formula-arguments `The term "light" is not worked out for a part\. Write light alone\.`
  }
  clause "4.7" {
    title   = "No second fault where a faulty term is used"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "heavy and light and thick(tube)"
  }
  clause "4.8" {
    title   = "A column of another kind"
    concern = "safety"
    demand  = "any(table.hoop_sizes, .wall >= 2.5*kg)" # want 38 formula-dimension `"\.wall" is a length, "2\.5\*kg" is a mass\. Only figures of one kind can be compared\. Did you mean 2\.5\*mm\?`
  }
}
