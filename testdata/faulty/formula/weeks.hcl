rulebook "Marram" {
  edition = "2027"
}

chapter "8" {
  title = "Tyres"
  clause "8.1" {
    title   = "Week 00"
    concern = "safety"
    demand  = "week_year('0008') <= on" # want 26 formula-date `'0008' would be week 00, and the first week of a year is 01\. Write two figures for the week and two for the year: week_year\('4308'\) is week 43 of 2008\.`
  }
  clause "8.2" {
    title   = "Week 53 of a year of 52"
    concern = "safety"
    demand  = "all(wheels, week_year(.tyre.date_code) >= week_year('5321'))" # want 68 formula-date `'5321' would be week 53 of 2021, which has 52 weeks\.`
  }
  clause "8.3" {
    title   = "Letters"
    concern = "safety"
    demand  = "week_year('DOT 4308') <= on" # want 26 formula-date `'DOT 4308' is not the date code of a tyre, which is four figures\.`
  }
  clause "8.4" {
    title   = "Three figures"
    concern = "safety"
    demand  = "week_year('408') <= on" # want 26 formula-date `'408' has three figures: such tyres were made before 2000, and the decade is not in the code\.`
  }
  clause "8.5" {
    title   = "Without quotes"
    concern = "safety"
    demand  = "week_year(4308) <= on" # want 26 formula-kind `"4308" is a count, where week_year takes a text\. Write the code between quotes: week_year\('4308'\)\.`
  }
  clause "8.6" {
    title   = "A date"
    concern = "safety"
    demand  = "week_year(seat['driver'].made) <= on" # want 26 formula-kind `"seat\['driver'\]\.made" is a date, where week_year takes a text\. Write week_year\(text\)\.`
  }
  clause "8.7" {
    title   = "Both behind a condition"
    concern = "safety"
    demand  = "week_year(car.seat_count == 2 ? '5301' : '0001') <= on" # want 48 formula-date "would be week 53 of 2001" 57 formula-date "would be week 00"
  }
  clause "8.8" {
    title   = "Where there is none"
    concern = "safety"
    demand  = "all(wheels, week_year((.tyre.date_code ?? 'none')) <= on)" # want 58 formula-date "is not the date code of a tyre"
  }
  clause "8.9" {
    title   = "Two codes"
    concern = "safety"
    demand  = "week_year('4308', '0109') <= on" # want 16 formula-arguments `week_year has 2 arguments here\. Write week_year\(text\)\.`
  }
}
