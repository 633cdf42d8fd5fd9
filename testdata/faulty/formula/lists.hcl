rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Formulas that cannot be read"
  clause "4.1" {
    title   = "A length for an answer"
    concern = "safety"
    demand  = "all(cage.tubes, .wall)" # want 32 formula-kind `"\.wall" is a length, where yes or no is wanted\. Compare it with something, as in x >= 2\*mm\.`
  }
  clause "4.2" {
    title   = "Nothing asked"
    concern = "safety"
    demand  = "all(cage.tubes)" # want 30 formula-arguments `A list function needs a list and what to ask of each member\. Write for example all\(cage\.tubes, \.wall >= 2\*mm\)\.`
  }
  clause "4.3" {
    title   = "A particular of the outer list"
    concern = "safety"
    demand  = "all(harnesses, any(.straps, .points >= 6))" # want 44 formula-element `Inside the inner list the dot means a strap, but "\.points" belongs to a harness of the outer list\. Name the outer one before the inner list, let own = \.points; and write own here\.`
  }
  clause "4.4" {
    title   = "Lists in lists in lists in lists"
    concern = "safety"
    demand  = "all(harnesses, any(.straps, any(cage.tubes, any(cage.feet, .plate_area > 0))))" # want 87 formula-too-deep `List functions are nested more than 3 deep here\. Make a term of the inner ones\.`
  }
  clause "4.5" {
    title   = "A sum of tubes"
    concern = "safety"
    demand  = "sum(cage.tubes) > 3*mm" # want 20 formula-kind `"cage\.tubes" gives a list of tubes, and sum cannot be made of it\. Say which figure of each: sum\(map\(cage\.tubes, …\)\)\.`
  }
  clause "4.6" {
    title   = "The greatest of dates"
    concern = "safety"
    across  = "harness in harnesses"
    demand  = "max(map(harness.straps, .made)) <= on" # want 20 formula-kind `"map\(harness\.straps, \.made\)" gives a list of dates, and max cannot be made of it\. Write latest\.`
  }
  clause "4.7" {
    title   = "A member without a list"
    concern = "safety"
    demand  = ".wall >= 2.5*mm" # want 16 formula-element `"\." means the member of a list, and there is no list here\. It stands only inside a list function, as in all\(cage\.tubes, \.wall >= 2\*mm\)\. For a part write its name before the dot; a remark begins with //\.`
  }
  clause "4.8" {
    title   = "A figure where a list is wanted"
    concern = "safety"
    demand  = "any(car.weighed_mass, # > 3*kg)" # want 20 formula-kind `"car\.weighed_mass" is a mass, and any goes through a list\. Write a list, such as cage\.tubes or \[1, 2, 3\]\.`
  }
  clause "4.9" {
    title   = "A member by its number"
    concern = "safety"
    demand  = "cage.tubes[0].wall >= 2.5*mm" # want 16 formula-refused `Parts are not numbered, they have labels\. Name one by its label between quotes, as in harness\['driver'\]\.`
  }
  clause "4.10" {
    title   = "The counter of a list"
    concern = "safety"
    demand  = "any(cage.tubes, #index > 3)" # want 32 formula-refused `Members of a list have no numbers\. # is the member itself\.`
  }
}
