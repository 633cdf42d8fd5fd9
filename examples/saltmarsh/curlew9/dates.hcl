# What runs out on the Curlew 9. Its belts come from a car that was sold, and their labels show
# the year of their making only: nothing asks for more until the end of June 2027, and then
# the bulletin does.

harness "driver" {
  standard = "FIA 8853-2016"
  points   = 6
  buckle   = "rotary"

  strap "left shoulder" {
    serial     = "GR22-0117-1"
    label_kind = "year only"
    made       = "2022"
    not_after  = "none"
  }

  strap "right shoulder" {
    serial     = "GR22-0117-2"
    label_kind = "year only"
    made       = "2022"
    not_after  = "none"
  }

  strap "left lap" {
    serial     = "GR22-0117-3"
    label_kind = "year only"
    made       = "2022"
    not_after  = "none"
  }

  strap "right lap" {
    serial     = "GR22-0117-4"
    label_kind = "year only"
    made       = "2022"
    not_after  = "none"
  }

  strap "left crotch" {
    serial     = "GR22-0117-5"
    label_kind = "year only"
    made       = "2022"
    not_after  = "none"
  }

  strap "right crotch" {
    serial     = "GR22-0117-6"
    label_kind = "year only"
    made       = "2022"
    not_after  = "none"
  }
}

harness "co-driver" {
  standard = "FIA 8853-2016"
  points   = 6
  buckle   = "rotary"

  strap "left shoulder" {
    serial     = "GR24-0583-1"
    label_kind = "year only"
    made       = "2024"
    not_after  = "none"
  }

  strap "right shoulder" {
    serial     = "GR24-0583-2"
    label_kind = "year only"
    made       = "2024"
    not_after  = "none"
  }

  strap "left lap" {
    serial     = "GR24-0583-3"
    label_kind = "year only"
    made       = "2024"
    not_after  = "none"
  }

  strap "right lap" {
    serial     = "GR24-0583-4"
    label_kind = "year only"
    made       = "2024"
    not_after  = "none"
  }

  strap "left crotch" {
    serial     = "GR24-0583-5"
    label_kind = "year only"
    made       = "2024"
    not_after  = "none"
  }

  strap "right crotch" {
    serial     = "GR24-0583-6"
    label_kind = "year only"
    made       = "2024"
    not_after  = "none"
  }
}

seat "driver" {
  standard       = "FIA 8855-2021"
  serial         = "TB-23-2044"
  label_kind     = "day, month and year"
  made           = "2023-08-13"
  not_after      = "none"
  extended_until = "none"
}

seat "co-driver" {
  standard       = "FIA 8862-2009"
  serial         = "TT-19-0033"
  label_kind     = "year only"
  made           = "2019"
  not_after      = "none"
  extended_until = "none"
}

# Certified anew once, by its maker.
fuel_cell {
  standard          = "FIA FT3-1999"
  maker             = "Cistern & Sons"
  serial            = "118-21-0316"
  made              = "2021-06"
  not_after         = "none"
  recertified       = "2026-06-10"
  recertified_until = "2028-06-10"
  foam              = true
}

# Its label shows the month in which it was filled: 24 months from some day of it.
extinguisher "driver's door" {
  standard  = "EN 3"
  agent     = "powder"
  made      = "2025-05"
  not_after = "none"
  serviced  = "none"
}
