rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Formulas that cannot be read"
  clause "4.1" {
    title   = "A figure where an answer is wanted"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.wall and tube.straight" # want 16 formula-kind `"tube\.wall" is a length, where yes or no is wanted\. Compare it with something, as in x >= 2\*mm\.`
  }
  clause "4.2" {
    title   = "Neither more nor less"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.material >= 'other steel'" # want 33 formula-choice `'other steel' is not one of the choices of "tube\.material"\. There are 'unalloyed carbon steel', 'T45', '25CrMo4', '15CDV6', 'high-strength low-alloy steel', 'structural steel', 'stainless steel', 'aluminium alloy' and 3 more\.`
  }
  clause "4.3" {
    title   = "Not one of the choices"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.part == 'mane hoop'" # want 29 formula-choice `'mane hoop' is not one of the choices of "tube\.part"\. Did you mean 'main hoop'\?`
  }
  clause "4.4" {
    title   = "Two of the list that are none"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.part in ['main hoop', 'hoop', 'stay']" # want 43 formula-choice `'hoop' is not one of the choices of "tube\.part"\. There are 'main hoop', 'front hoop', 'lateral hoop', 'lateral half-hoop', 'longitudinal member', 'transverse member', 'backstay', 'hoop diagonal' and 13 more\.` 51 formula-choice `'stay' is not one of the choices of "tube\.part"\. There are 'main hoop', 'front hoop', 'lateral hoop', 'lateral half-hoop', 'longitudinal member', 'transverse member', 'backstay', 'hoop diagonal' and 13 more\.`
  }
  clause "4.5" {
    title   = "A measured figure in a range of counts"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.outside in 38..45" # want 16 formula-between `a\.\.b goes by whole counts, but "tube\.outside" is a length\. Write 38\*mm <= tube\.outside <= 45\*mm\.`
  }
  clause "4.6" {
    title   = "A range the wrong way round"
    concern = "safety"
    demand  = "car.seat_count in 4..2" # want 34 formula-between `No count lies between 4 and 2\. Write the smaller count first\.`
  }
  clause "4.7" {
    title   = "A list in round brackets"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.part in ('main hoop', 'front hoop')" # want 29 formula-syntax `A list stands between square brackets\. Write in \[x, y\]\.`
  }
  clause "4.8" {
    title   = "A text in a text"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "'hoop' in tube.part" # want 26 formula-kind `"tube\.part" is a choice from a list, not a list\. For a piece of a text write tube\.part contains 'hoop'\.`
  }
  clause "4.9" {
    title   = "A pattern that ends too early"
    concern = "safety"
    demand  = "car.chassis matches 'TS-['" # want 36 formula-pattern `'TS-\[' is not a pattern: missing closing \]\. Check its brackets, stars and backslashes\.`
  }
  clause "4.10" {
    title   = "Two kinds in one list"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.wall in [2*mm, 'thick']" # want 30 formula-kind `"2\*mm" is a length, 'thick' is a text\. Write a number without quotes, with its unit: 45\*mm\.`
  }
  clause "4.11" {
    title   = "Two kinds behind a condition"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.wall >= (cage.bolted_in ? 2.5*mm : 3)" # want 56 formula-dimension `"3" has no unit, but "2\.5\*mm" is a length\. Write 3\*mm\.`
  }
  clause "4.12" {
    title   = "A part compared as a whole"
    concern = "safety"
    demand  = "cage == car" # want 16 formula-kind `"cage" is a cage, and that is not compared as a whole\. Compare particulars of it, or ask the members of a list\.`
  }
}
