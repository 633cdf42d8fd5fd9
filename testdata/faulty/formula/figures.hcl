rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Formulas that cannot be read"
  clause "4.1" {
    title   = "A blank for the operator"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.wall >= 2.5 mm" # want 29 formula-syntax `"2\.5 mm" has no operator between number and word\. Write 2\.5\*mm\.`
  }
  clause "4.2" {
    title   = "A foot in the wrong language"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.outside >= 1.75 in" # want 32 formula-syntax `"1\.75 in" has no operator between number and word\. Write 1\.75\*inch\.`
  }
  clause "4.3" {
    title   = "No unit"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.outside >= 45" # want 32 formula-dimension `"45" has no unit, but "tube\.outside" is a length\. Write 45\*mm\.`
  }
  clause "4.4" {
    title   = "A mass for a length"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.outside >= 2.5*kg" # want 16 formula-dimension `"tube\.outside" is a length, "2\.5\*kg" is a mass\. Only figures of one kind can be compared\. Did you mean 2\.5\*mm\?`
  }
  clause "4.5" {
    title   = "A decimal comma"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.wall >= 2,5*mm" # want 29 formula-digits `"2,5" has a comma in it\. Write a point: 2\.5\.`
  }
  clause "4.6" {
    title   = "A unit spelt as on paper"
    concern = "safety"
    across  = "foot in cage.feet"
    demand  = "foot.plate_area >= 120*cm2" # want 39 formula-name `"cm2" is not the name of anything\. Write sq_cm for the unit\.`
  }
  clause "4.7" {
    title   = "Two lengths make an area"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.outside * tube.wall >= 100*mm" # want 16 formula-dimension `"tube\.outside \* tube\.wall" is an area, "100\*mm" is a length\. Only figures of one kind can be compared\. Did you mean 100\*sq_mm\?`
  }
  clause "4.8" {
    title   = "A hexadecimal number"
    concern = "safety"
    demand  = "car.seat_count <= 0x2" # want 34 formula-digits `"0x2" is not a decimal number\. Write it with the digits 0 to 9\.`
  }
  clause "4.9" {
    title   = "An exponent out of reach"
    concern = "safety"
    demand  = "car.weighed_mass <= 1e40*kg" # want 36 formula-digits `The exponent of "1e40" is out of reach\. Exponents go from -30 to 30\.`
  }
  clause "4.10" {
    title   = "Division by zero"
    concern = "safety"
    demand  = "car.weighed_mass / 0 > 3*kg" # want 16 formula-constant `"car\.weighed_mass / 0" divides by zero\. Write what it should be divided by\.`
  }
  clause "4.11" {
    title   = "Half a power"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "sqrt(tube.outside**3) >= 45*mm and tube.outside**0.5 > 0" # want 16 formula-dimension `"tube\.outside\*\*3" is a volume, and its root measures nothing\. A root is taken of a plain number, of an area, or of what else is a square\.` 65 formula-refused `"0\.5" is not a whole power\. Write sqrt\(tube\.outside\)\.`
  }
  clause "4.12" {
    title   = "Rounding without a step"
    concern = "safety"
    demand  = "round(car.weighed_mass) <= 1000*kg" # want 22 formula-dimension `"car\.weighed_mass" is a mass, and it would be a different whole number in every unit\. Say to what: round\(car\.weighed_mass, 1\*kg\)\.`
  }
  clause "4.13" {
    title   = "An angle without its unit"
    concern = "safety"
    demand  = "sin(45) > 0.7" # want 20 formula-dimension `"45" is a count, where sin takes an angle\. Write 45\*deg\.`
  }
  clause "4.14" {
    title   = "A gallon, but which"
    concern = "safety"
    demand  = "fuel_cell.capacity <= 15*gal" # want 41 formula-name `"gal" can be two things\. Write us_gal or imp_gal\.`
  }
}
