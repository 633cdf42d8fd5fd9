rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Formulas that cannot be read"
  clause "4.1" {
    title   = "Slips in three names"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.wal >= 2.5*mm and tub.outside >= 45*mm and cag.bolted_in" # want 21 formula-name `The build sheet knows no "wal" of a tube\. Did you mean wall\?` 39 formula-name `"tub" is not the name of anything\. Did you mean tube\?` 64 formula-name `"cag" is not the name of anything\. Did you mean cage\?`
  }
  clause "4.2" {
    title   = "A particular of nobody"
    concern = "safety"
    demand  = "weighed_mass >= 1000*kg" # want 16 formula-name `"weighed_mass" is a particular, and it does not say of which part\. Write car\.weighed_mass\.`
  }
  clause "4.3" {
    title   = "A part without its label"
    concern = "safety"
    demand  = "harness.standard == 'FIA 8853-2016'" # want 16 formula-part `There can be several of "harness", and this does not say which\. Write harness\['driver'\] for one of them, or ask all of them: all\(harnesses, …\)\.`
  }
  clause "4.4" {
    title   = "A list read like a part"
    concern = "safety"
    demand  = "harnesses.points >= 6" # want 26 formula-kind `"harnesses" is a list, and a list has no "points" of its own\. Name one of them, harness\['driver'\]\.points, or ask all: all\(harnesses, \.points …\)\.`
  }
  clause "4.5" {
    title   = "A label that does not exist"
    concern = "safety"
    demand  = "harness['pilot'].points >= 6" # want 24 formula-label `No harness is called "pilot"\. It can be 'driver' or 'co-driver'\.`
  }
  clause "4.6" {
    title   = "A number for a label"
    concern = "safety"
    demand  = "harness[1].points >= 6" # want 16 formula-refused `Parts are not numbered, they have labels\. Name one by its label between quotes, as in harness\['driver'\]\.`
  }
  clause "4.7" {
    title   = "A list that belongs to the cage"
    concern = "safety"
    demand  = "len(tubes) > 0" # want 20 formula-name `"tubes" does not say what it belongs to\. Write cage\.tubes\.`
  }
  clause "4.8" {
    title   = "A label for the only one"
    concern = "safety"
    demand  = "fuel_cell['main'].straps >= 2" # want 16 formula-part `A car has one "fuel cell" only, so it has no label\. Write fuel_cell\.`
  }
  clause "4.9" {
    title   = "A size read like a figure"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.size == 45*mm" # want 21 formula-kind `"tube\.size" is a size, which the sheet writes as a pair\. Read outside or wall\.`
  }
  clause "4.10" {
    title   = "A function that does not exist"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "maximum(tube.wall, 2*mm) > 2*mm" # want 16 formula-name `There is no function "maximum"\. Did you mean max\?`
  }
  clause "4.11" {
    title   = "A text without its quotes"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.part == main_hoop" # want 29 formula-name `"main_hoop" says what a tube is for, and is not the name of a part\. Write 'main hoop' to compare with, or ask the tubes: any\(cage\.tubes, \.part == 'main hoop' and …\)\.`
  }
  clause "4.12" {
    title   = "The seat of nobody"
    concern = "safety"
    across  = "harness in harnesses"
    demand  = "harness.seat == 'pilot'" # want 32 formula-label `No seat is called "pilot"\. It can be 'driver' or 'co-driver'\.`
  }
  clause "4.13" {
    title   = "Blanks in an operator"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.wall > = 2.5*mm" # want 26 formula-syntax `A blank parts the operator >=\. Write >=\.`
  }
  clause "4.14" {
    title   = "A dot too many"
    concern = "safety"
    demand  = "car.weighed_mass.kg >= 1000" # want 33 formula-kind `"car\.weighed_mass" is a mass; nothing follows it after a dot\. Take the dot and the name away\.`
  }
}
