# What is looked for on the outside of the car.

chapter "12" {
  title = "Outside of the car"

  clause "12.1" {
    title   = "Towing eye by diameter or opening"
    concern = "safety"
    text_at = "DMSB regulations, Art. 26.1"
    across  = "eye in towing_eyes"
    demand  = <<-FORMULA
  recorded(eye.inner_diameter) and 60*mm <= eye.inner_diameter <= 100*mm
  or 29*sq_cm <= eye.opening_area <= 79*sq_cm
FORMULA
  }

  clause "12.2" {
    title   = "Towing eye by diameter"
    concern = "safety"
    text_at = "MSUK towing-eye rule"
    across  = "eye in towing_eyes"
    demand  = "eye.inner_diameter >= 60*mm"
  }

  clause "12.3" {
    title   = "Mark of the circuit breaker"
    concern = "safety"
    text_at = "MSUK NCR 2026, p. 287, and MotorSport NZ Schedule A"
    demand  = "circuit_breaker.outside_mark_base >= 120*mm"
  }

  clause "12.4" {
    title   = "Lamps to the front"
    concern = "safety"
    text_at = "FFSA off-road rules"
    demand  = "sum(filter(lamps, .purpose in ['headlamp', 'additional headlamp']), .quantity) <= 8"
  }
}

worked_case "round eye of 60 mm" {
  clause = "12.1"
  as_built {
    towing_eye "front" {
      inner_diameter = "60 mm"
      opening_area   = "28.3 cm2"
    }
  }
  answer = "meets"
  reason = "60 mm is enough, although the opening of 28.3 cm2 is under the 29 printed."
  source = "DMSB regulations, Art. 26.1"
  status = "computed"
}

worked_case "round eye of 100 mm" {
  clause = "12.1"
  as_built {
    towing_eye "front" {
      inner_diameter = "100 mm"
      opening_area   = "78.5 cm2"
    }
  }
  answer = "meets"
  reason = "60 to 100 mm."
  source = "DMSB regulations, Art. 26.1"
  status = "quoted by others"
}

worked_case "round eye of 59 mm" {
  clause = "12.1"
  as_built {
    towing_eye "front" {
      inner_diameter = "59 mm"
      opening_area   = "27.3 cm2"
    }
  }
  answer = "gap"
  reason = "60 to 100 mm, or 29 to 79 cm2."
  source = "DMSB regulations, Art. 26.1"
  status = "quoted by others"
}

worked_case "round eye of 102 mm" {
  clause = "12.1"
  as_built {
    towing_eye "front" {
      inner_diameter = "102 mm"
      opening_area   = "81.7 cm2"
    }
  }
  answer = "gap"
  reason = "60 to 100 mm, or 29 to 79 cm2."
  source = "DMSB regulations, Art. 26.1"
  status = "quoted by others"
}

worked_case "round eye of 61 mm of which the diameter was not read" {
  clause = "12.1"
  as_built {
    towing_eye "front" {
      opening_area = "29.2 cm2"
    }
  }
  answer = "meets"
  reason = "29 to 79 cm2 is enough, whatever the diameter."
  source = "DMSB regulations, Art. 26.1"
  status = "computed"
}

worked_case "eye that is not round, 29 cm2" {
  clause = "12.1"
  as_built {
    towing_eye "front" {
      inner_diameter = "none"
      opening_area   = "29 cm2"
    }
  }
  answer = "meets"
  reason = "29 to 79 cm2."
  source = "DMSB regulations, Art. 26.1"
  status = "quoted by others"
}

worked_case "eye that is not round, 28 cm2" {
  clause = "12.1"
  as_built {
    towing_eye "front" {
      inner_diameter = "none"
      opening_area   = "28 cm2"
    }
  }
  answer = "gap"
  reason = "29 to 79 cm2."
  source = "DMSB regulations, Art. 26.1"
  status = "quoted by others"
}

worked_case "eye of 60 mm" {
  clause = "12.2"
  as_built {
    towing_eye "front" {
      inner_diameter = "60 mm"
      opening_area   = "28.3 cm2"
    }
  }
  answer = "meets"
  reason = "At least 60 mm."
  source = "MSUK towing-eye rule"
  status = "quoted by others"
}

worked_case "eye of 2 in" {
  clause = "12.2"
  as_built {
    towing_eye "front" {
      inner_diameter = "2 in"
      opening_area   = "20.3 cm2"
    }
  }
  answer = "gap"
  reason = "2 in is 50.8 mm."
  source = "MSUK towing-eye rule"
  status = "quoted by others"
}

worked_case "eye of 120 mm" {
  clause = "12.2"
  as_built {
    towing_eye "front" {
      inner_diameter = "120 mm"
      opening_area   = "113 cm2"
    }
  }
  answer = "meets"
  reason = "No greatest size in this rule."
  source = "MSUK towing-eye rule"
  status = "quoted by others"
}

worked_case "triangle of 120 mm" {
  clause = "12.3"
  as_built {
    circuit_breaker {
      outside_mark_base = "120 mm"
    }
  }
  answer = "meets"
  reason = "Base of at least 120 mm."
  source = "MSUK NCR 2026, p. 287, and MotorSport NZ Schedule A"
  status = "confirmed"
}

worked_case "triangle of 100 mm" {
  clause = "12.3"
  as_built {
    circuit_breaker {
      outside_mark_base = "100 mm"
    }
  }
  answer = "gap"
  reason = "Base of at least 120 mm."
  source = "MSUK NCR 2026, p. 287, and MotorSport NZ Schedule A"
  status = "confirmed"
}

worked_case "no triangle" {
  clause = "12.3"
  as_built {
    circuit_breaker {
      outside_mark_base = "none"
    }
  }
  answer = "gap"
  reason = "There has to be one."
  source = "MSUK NCR 2026, p. 287, and MotorSport NZ Schedule A"
  status = "confirmed"
}

worked_case "eight lamps to the front" {
  clause = "12.4"
  as_built {
    lamp "dipped" {
      purpose  = "headlamp"
      quantity = 2
    }
    lamp "pod" {
      purpose  = "additional headlamp"
      quantity = 6
    }
    lamp "rear fog" {
      purpose  = "rear fog lamp"
      quantity = 2
    }
  }
  answer = "meets"
  reason = "At most eight; those at the rear do not count."
  source = "FFSA off-road rules"
  status = "quoted by others"
}

worked_case "nine lamps to the front" {
  clause = "12.4"
  as_built {
    lamp "dipped" {
      purpose  = "headlamp"
      quantity = 2
    }
    lamp "pod" {
      purpose  = "additional headlamp"
      quantity = 7
    }
    lamp "rear fog" {
      purpose  = "rear fog lamp"
      quantity = 2
    }
  }
  answer = "gap"
  reason = "At most eight."
  source = "FFSA off-road rules"
  status = "quoted by others"
}

worked_case "eye of 59 mm" {
  clause = "12.2"
  as_built {
    towing_eye "front" {
      inner_diameter = "59 mm"
      opening_area   = "27.3 cm2"
    }
  }
  answer = "gap"
  reason = "At least 60 mm."
  source = "MSUK towing-eye rule"
  status = "quoted by others"
}

worked_case "eye that is not round, 79 cm2" {
  clause = "12.1"
  as_built {
    towing_eye "front" {
      inner_diameter = "none"
      opening_area   = "79 cm2"
    }
  }
  answer = "meets"
  reason = "29 to 79 cm2."
  source = "DMSB regulations, Art. 26.1"
  status = "quoted by others"
}

worked_case "eye that is not round, 80 cm2" {
  clause = "12.1"
  as_built {
    towing_eye "front" {
      inner_diameter = "none"
      opening_area   = "80 cm2"
    }
  }
  answer = "gap"
  reason = "29 to 79 cm2."
  source = "DMSB regulations, Art. 26.1"
  status = "quoted by others"
}

worked_case "eye that is not round, 28.9 cm2" {
  clause = "12.1"
  as_built {
    towing_eye "front" {
      inner_diameter = "none"
      opening_area   = "28.9 cm2"
    }
  }
  answer = "gap"
  reason = "29 to 79 cm2."
  source = "DMSB regulations, Art. 26.1"
  status = "quoted by others"
}

worked_case "round eye of 100 mm of which the opening is 80 cm2" {
  clause = "12.1"
  as_built {
    towing_eye "front" {
      inner_diameter = "100 mm"
      opening_area   = "80 cm2"
    }
  }
  answer = "meets"
  reason = "100 mm is enough, whatever the opening."
  source = "DMSB regulations, Art. 26.1"
  status = "computed"
}

worked_case "triangle of 119 mm" {
  clause = "12.3"
  as_built {
    circuit_breaker {
      outside_mark_base = "119 mm"
    }
  }
  answer = "gap"
  reason = "Base of at least 120 mm."
  source = "MSUK NCR 2026, p. 287, and MotorSport NZ Schedule A"
  status = "confirmed"
}
