rulebook "Marram" {
  edition = "2027"
}

chapter "4" {
  title = "Formulas that cannot be read"
  clause "4.1" {
    title   = "nil"
    concern = "safety"
    demand  = "cage.certificate.number != nil" # want 43 formula-refused `nil means that something is not there, and a comparison with it would say yes where nothing was recorded\. Write recorded\(x\), or \(x \?\? y\) for a particular that may be none\.`
  }
  clause "4.2" {
    title   = "The clock"
    concern = "safety"
    across  = "seat in seats"
    demand  = "seat.made > now()" # want 28 formula-refused `The function now is not part of the formula language\. The day comes from the run: write on, or event\.inspection_day\.`
  }
  clause "4.3" {
    title   = "Reckoning with dates"
    concern = "safety"
    across  = "seat in seats"
    demand  = "seat.made + 5*365 >= on" # want 16 formula-refused `Dates are not reckoned with by signs\. Write days_after\(seat\.made, 1825\), or weeks_after, months_after or years_after\.`
  }
  clause "4.4" {
    title   = "Subtracting dates"
    concern = "safety"
    across  = "seat in seats"
    demand  = "on - seat.made < 1826" # want 16 formula-refused `Dates are not subtracted with a sign\. Write days_between\(seat\.made, on\)\.`
  }
  clause "4.5" {
    title   = "A date as text"
    concern = "safety"
    across  = "seat in seats"
    demand  = "seat.made >= '2022-01-01'" # want 16 formula-kind `"seat\.made" is a date, '2022-01-01' is a text\. Write date\('2022-01-01'\)\.`
  }
  clause "4.6" {
    title   = "A year for a day"
    concern = "safety"
    across  = "seat in seats"
    demand  = "seat.made >= date('2022')" # want 34 formula-date `'2022' is more than one day, and a limit has to be one\. Write its first or its last day: '2022-01-01' or '2022-12-31'\.`
  }
  clause "4.7" {
    title   = "A day that does not exist"
    concern = "safety"
    across  = "seat in seats"
    demand  = "seat.made >= date('2023-02-29')" # want 34 formula-date `February 2023 has 28 days, so there is no day 29\. Write a day from 01 to 28\.`
  }
  clause "4.8" {
    title   = "A remainder"
    concern = "safety"
    demand  = "car.seat_count % 2 == 0" # want 31 formula-refused `% divides and keeps the rest, which no figure with a tolerance can do\. Use round, floor or ceil; for per cent write 50\*percent\.`
  }
  clause "4.9" {
    title   = "Joining texts"
    concern = "safety"
    demand  = "car.chassis + car.model == 'x'" # want 16 formula-refused `Texts are not joined in a formula\. Compare each of them by itself\.`
  }
  clause "4.10" {
    title   = "Small letters"
    concern = "safety"
    demand  = "lower(car.chassis) == 'x'" # want 16 formula-refused `The function lower is not part of the formula language\. Texts are compared without case or extra blanks: use ==, in, contains, startsWith, endsWith or matches\.`
  }
  clause "4.11" {
    title   = "A sequence"
    concern = "safety"
    demand  = "cage.bolted_in; cage.modified_since" # want 30 formula-refused `A formula is one sentence; a semicolon stands only behind a let\. Join conditions with and\.`
  }
  clause "4.12" {
    title   = "Optional chaining"
    concern = "safety"
    demand  = "cage?.bolted_in" # want 16 formula-refused `\?\. would hide that something is not recorded\. Write a plain dot; what is not recorded is named in the answer\.`
  }
  clause "4.13" {
    title   = "A method"
    concern = "safety"
    demand  = "car.weighed_mass.floor() > 3*kg" # want 16 formula-refused `Nothing is called behind a dot\. Write the function first: floor\(x\), not x\.floor\(\)\.`
  }
  clause "4.14" {
    title   = "The whole environment"
    concern = "safety"
    demand  = "'cage' in $env" # want 26 formula-refused `"\$env" is not part of the language\. Every value is read by its own name\.`
  }
  clause "4.15" {
    title   = "A reducing walk"
    concern = "safety"
    demand  = "reduce(cage.tubes, #acc + #.wall) > 3*mm" # want 16 formula-refused `The function reduce is not part of the formula language\. Use sum, count, min, max, all or any\.`
  }
  clause "4.16" {
    title   = "A unit for a name"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "let mm = 3; tube.bends < mm" # want 20 formula-reserved `"mm" is a unit\. Choose another name\.`
  }
}
