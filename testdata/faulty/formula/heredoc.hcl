rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Faults in formulas of several lines"
  clause "4.1" {
    title   = "The indent is cut, the columns are those of the file"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
      tube.outside >= 45*mm
        and tube.wal >= 2.5*mm
      and tube.outside >= car.weighed_mass
    FORMULA
    # want@-3 18 formula-name `The build sheet knows no "wal" of a tube\. Did you mean wall\?`
    # want@-3 11 formula-dimension `"tube\.outside" is a length, "car\.weighed_mass" is a mass\. Only figures of one kind can be compared\.`
  }
  clause "4.2" {
    title   = "The indent is kept"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = <<FORMULA
  // the wall as measured
  tube.wal >= 2.5*mm
FORMULA
    # want@-2 8 formula-name `The build sheet knows no "wal" of a tube\. Did you mean wall\?`
  }
  clause "4.3" {
    title   = "Tabs, and a text with a dollar sign"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = <<-FORMULA
		tube.part == "$${hoop}" or
			tube.wal >= 2.5*mm
    FORMULA
    # want@-3 16 formula-choice `"\$\{hoop\}" is not one of the choices of "tube\.part"\. There are 'main hoop', 'front hoop', 'lateral hoop', 'lateral half-hoop', 'longitudinal member', 'transverse member', 'backstay', 'hoop diagonal' and 13 more\.`
    # want@-3 9 formula-name `The build sheet knows no "wal" of a tube\. Did you mean wall\?`
  }
  clause "4.4" {
    title   = "Something to fill in"
    concern = "safety"
    demand  = <<-FORMULA
      car.weighed_mass >= ${least}
    FORMULA
    # want@-2 27 not-literal `Found \$\{, but texts and values are literals: nothing is filled in\. Write the value itself; for the characters themselves write \$\$\{\.`
  }
  clause "4.5" {
    title   = "Escapes of a quoted text count as they are written"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.part == \"main hoop\" and\n tube.wal >= 2.5*mm" # want 54 formula-name `The build sheet knows no "wal" of a tube\. Did you mean wall\?`
  }
}
