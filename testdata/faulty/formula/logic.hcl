rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Formulas that cannot be read"
  clause "4.1" {
    title   = "Not before a comparison"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "not tube.part == 'main hoop'" # want 16 formula-not `"not" turns only what follows it at once, not the whole comparison\. Write not \(tube\.part == 'main hoop'\)\.`
  }
  clause "4.2" {
    title   = "Not before in"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "not tube.part in ['main hoop', 'front hoop']" # want 16 formula-not `"not" turns only what follows it at once, not the whole comparison\. Write not \(tube\.part in \['main hoop', 'front hoop'\]\)\.`
  }
  clause "4.3" {
    title   = "?? without brackets"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.deepest_dent ?? 0 <= 1*mm" # want 39 formula-otherwise `\?\? and "<=" stand side by side without brackets\. Put \?\? in brackets of its own, and what stands behind it too when it is more than a name: \(x \?\? \(3\*mm\)\) >= y\.`
  }
  clause "4.4" {
    title   = "?? where nothing is ever none"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "(tube.wall ?? 0) >= 2.5*mm" # want 17 formula-otherwise `"tube\.wall" cannot be stated as none, so what stands behind \?\? is never used\. Write tube\.wall alone\.`
  }
  clause "4.5" {
    title   = "Capitals"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.straight AND tube.welded_all_round" # want 30 formula-syntax `The operator AND is written in small letters\. Write and\.`
  }
  clause "4.6" {
    title   = "An ampersand"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.straight & tube.welded_all_round" # want 30 formula-syntax `"&" is not an operator\. Write and\.`
  }
  clause "4.7" {
    title   = "Assigning for comparing"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.wall = 2.5*mm" # want 26 formula-syntax `"=" is not an operator\. Write ==\.`
  }
  clause "4.8" {
    title   = "Printed signs"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.wall ≥ 2.5*mm" # want 26 formula-syntax `The character "≥" has no meaning in a formula\. Write >=\.`
  }
  clause "4.9" {
    title   = "Printer's quotes"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.part == “main hoop”" # want 29 formula-syntax `The quotation mark “ is a printer's one\. Write a text between straight quotes: 'steel'\.` 39 formula-syntax `The quotation mark ” is a printer's one\. Write a text between straight quotes: 'steel'\.`
  }
  clause "4.10" {
    title   = "A bracket left open"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "(tube.straight or tube.bends > 0" # want 16 formula-syntax `The bracket \( is not closed\. Close it where it should end\.`
  }
  clause "4.11" {
    title   = "A bracket closed too often"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.straight or tube.bends > 0)" # want 47 formula-syntax `The bracket \) closes nothing\. Take it out, or open it where it should begin\.`
  }
  clause "4.12" {
    title   = "Nothing behind the operator"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.straight and" # want 30 formula-syntax `The formula ends after "and"\. Write what should follow, or take it out\.`
  }
}
