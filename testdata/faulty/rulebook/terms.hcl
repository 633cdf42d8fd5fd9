rulebook "Marram" {
  edition = "2027"
}

term "thick" {
  means = "stiff and tube.wall >= 2*mm" # want 22 formula-name ""
}
term "stiff" {
  means = "heavy or 1 > 2"
}
term "heavy" {
  means = "car.weighed_mass > 1000*kg and not thick" # want 47 term-circle `explained by each other: thick → stiff → heavy → thick\.`
}
term "self" {
  means = "self" # want 12 term-circle "self → self"
}
term "stiff" { # want 6 said-twice "Found term stiff again"
  means = "true"
}
term "mm" { # want 6 name-taken `It is a unit in every formula\.`
  means = "true"
}
term "tube" { # want 6 name-taken `It is a part in every formula\.`
  means = "true"
}
term "count" { # want 6 name-taken `It is a function in every formula\.`
  means = "true"
}
term "Wide" { # want 6 name-taken "small letters a to z"
  means = "true"
}
term "empty" { # want 1 key-missing `The term empty has no means\.`
}
term "wrongly_given" {
  given = "tube of cage.tubes" # want 11 naming-form "as given of the term wrongly_given"
  means = "tube.wall >= 2*mm"
}
term "right" {
  given   = "tube in cage.tubes"
  means   = "tube.wall >= 2*mm"
  meaning = "?" # want 3 unknown-key "It has given and means"
}
chapter "4" {
  title = "Safety cage"
  clause "4.1" {
    title   = "Terms with a fault are not told twice"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "thick and stiff and wrongly_given(tube) and right(tube) and self and empty"
  }
  clause "4.2" {
    title   = "A term without what it is given"
    concern = "safety"
    demand  = "right" # want 16 formula-arguments ""
  }
}
