rulebook "Marram" {
  edition = "2027"
}

term "thick" {
  means = "2.5*mm"
}
chapter "4" {
  title = "Safety cage"
  clause "4.1" {
    title    = "No list"
    concern  = "safety"
    look_for = "No joint."
    across   = "cage.tubes" # want 16 naming-form `Write a name, the word in and a list of parts: "tube in cage\.tubes"\.`
  }
  clause "4.2" {
    title    = "A unit for a name"
    concern  = "safety"
    look_for = "No joint."
    across   = "mm in cage.tubes" # want 17 name-taken `Found "mm" as a name in across of the clause 4\.2\. It is a unit in every formula\.`
  }
  clause "4.3" {
    title    = "A part for a name"
    concern  = "safety"
    look_for = "No joint."
    across   = "cage in cage.tubes" # want 17 name-taken `It is a part of the car in every formula\.`
  }
  clause "4.4" {
    title    = "A term for a name"
    concern  = "safety"
    look_for = "No joint."
    across   = "thick in cage.tubes" # want 17 name-taken `It is a term of this rulebook \(faulty/rulebook/clause_across\.hcl:5:1\)\.`
  }
  clause "4.5" {
    title    = "A capital"
    concern  = "safety"
    look_for = "No joint."
    across   = "Tube in cage.tubes" # want 17 name-taken "small letters a to z"
  }
  clause "4.6" {
    title    = "One part is no list"
    concern  = "safety"
    look_for = "No joint."
    across   = "tube in cage" # want 25 parts-wanted `Found "cage" after the word in, which is not a list of parts\.`
  }
  clause "4.7" {
    title    = "Figures are no parts"
    concern  = "safety"
    look_for = "No joint."
    across   = "w in map(cage.tubes, .wall)" # want 22 parts-wanted "not a list of parts"
  }
  clause "4.8" {
    title    = "Twice the same name"
    concern  = "safety"
    look_for = "No joint."
    across   = ["tube in cage.tubes", "tube in filter(cage.tubes, .mandatory)"] # want 40 name-taken "Found tube twice as a name"
  }
  clause "4.9" {
    title    = "Three"
    concern  = "safety"
    look_for = "No joint."
    across   = ["a in cage.tubes", "b in cage.tubes", "c in cage.tubes"] # want 55 across-too-many "a clause runs over one or two"
  }
  clause "4.10" {
    title    = "An unknown list, and no second fault where its member is used"
    concern  = "safety"
    across   = "tube in cage.tube" # want 25 parts-wanted "one part\\. Write the list of all: cage\\.tubes\\."
    where    = "tube.part == 'main hoop'"
    demand   = "tube.wal >= 2*mm"
  }
  clause "4.11" {
    title    = "The second list before the first"
    concern  = "safety"
    look_for = "No twist."
    across   = ["strap in harness.straps", "harness in harnesses"] # want 27 formula-part ""
  }
  clause "4.12" {
    title   = "A condition on a part asked of the whole car"
    concern = "safety"
    across  = "tube in cage.tubes"
    applies = "car.weighed_mass > 1000*kg and tube.part == 'main hoop'" # want 47 applies-reads-subject `Write the condition on tube as where\.`
    demand  = "tube.wall >= 2.5*mm"
  }
}
