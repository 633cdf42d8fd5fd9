# Extinguishers and fire systems: quantities, mountings, marks. When they were last checked
# stands with the labels.

chapter "9" {
  title = "Fire"

  clause "9.1" {
    title   = "Hand-held extinguisher, quantity"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3, and FIA Appendix J, Art. 253-7.3.3"
    across  = "extinguisher in extinguishers"
    demand  = "extinguisher.agent == 'AFFF' ? extinguisher.agent_volume >= 2.4*litre : extinguisher.agent_mass >= 2.0*kg"
  }

  clause "9.2" {
    title   = "Powder extinguisher, pressure"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
    across  = "extinguisher in extinguishers"
    where   = "extinguisher.agent == 'powder'"
    demand  = "8*bar <= extinguisher.pressure <= 13.5*bar"
  }

  clause "9.3" {
    title   = "Hand-held extinguisher, mounting"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
    across  = "extinguisher in extinguishers"
    demand  = "extinguisher.mount_rating >= 25*g0 and extinguisher.straps >= 2 and extinguisher.anti_torpedo"
  }

  clause "9.4" {
    title   = "Plumbed-in system of technical list 16, quantity"
    concern = "safety"
    text_at = "French guide to Appendix J, extinguishers"
    applies = "fire_system.standard == 'FIA 1999'"
    demand  = "fire_system.agent_mass >= 3*kg"
  }

  clause "9.5" {
    title   = "Standard of the plumbed-in system"
    concern = "safety"
    text_at = "French guide to Appendix J, extinguishers"
    demand  = <<-FORMULA
  fire_system.standard == 'FIA 8865-2015'
  or fire_system.standard == 'FIA 1999' and (car.class != 'RC1' or on < date('2016-01-01'))
FORMULA
  }

  clause "9.6" {
    title   = "Bottle away from the outside of the car"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-7.2"
    across  = "bottle in fire_system.fire_bottles"
    demand  = "bottle.distance_from_body_edge >= 300*mm"
  }

  clause "9.7" {
    title   = "Agents that are banned"
    concern = "safety"
    text_at = "French guides to Appendix J, extinguishers"
    across  = "extinguisher in extinguishers"
    demand  = "extinguisher.agent not in ['BCF', 'NAF']"
  }

  clause "9.8" {
    title   = "Mark of the outside trigger"
    concern = "safety"
    text_at = "MSUK NCR 2026, p. 287"
    demand  = "fire_system.outside_mark_diameter >= 100*mm and fire_system.outside_mark_letter_height >= 80*mm"
  }

  clause "9.9" {
    title   = "Hand-held extinguisher of a student car"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0"
    across  = "extinguisher in extinguishers"
    demand  = "extinguisher.agent_mass >= 0.9*kg"
  }
}

worked_case "AFFF of 2.4 l" {
  clause = "9.1"
  as_built {
    extinguisher "1" {
      agent        = "AFFF"
      agent_volume = "2.4 l"
      agent_mass   = "none"
    }
  }
  answer = "meets"
  reason = "2.4 l of AFFF."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3, and FIA Appendix J, Art. 253-7.3.3"
  status = "confirmed"
}

worked_case "AFFF of 2.25 l" {
  clause = "9.1"
  as_built {
    extinguisher "1" {
      agent        = "AFFF"
      agent_volume = "2.25 l"
      agent_mass   = "none"
    }
  }
  answer = "gap"
  reason = "2.4 l of AFFF."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3, and FIA Appendix J, Art. 253-7.3.3"
  status = "confirmed"
}

worked_case "powder of 2.0 kg" {
  clause = "9.1"
  as_built {
    extinguisher "1" {
      agent        = "powder"
      agent_mass   = "2.0 kg"
      agent_volume = "none"
    }
  }
  answer = "meets"
  reason = "2.0 kg of powder."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3, and FIA Appendix J, Art. 253-7.3.3"
  status = "confirmed"
}

worked_case "gas of 2.0 kg" {
  clause = "9.1"
  as_built {
    extinguisher "1" {
      agent        = "FK-5-1-12"
      agent_mass   = "2.0 kg"
      agent_volume = "none"
    }
  }
  answer = "meets"
  reason = "2.0 kg of gas."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3, and FIA Appendix J, Art. 253-7.3.3"
  status = "confirmed"
}

worked_case "powder of 4 lb" {
  clause = "9.1"
  as_built {
    extinguisher "1" {
      agent        = "powder"
      agent_mass   = "4 lb"
      agent_volume = "none"
    }
  }
  answer = "gap"
  reason = "4 lb is 1.81 kg."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3, and FIA Appendix J, Art. 253-7.3.3"
  status = "computed"
}

worked_case "powder at 8 bar" {
  clause = "9.2"
  as_built {
    extinguisher "1" {
      agent    = "powder"
      pressure = "8 bar"
    }
  }
  answer = "meets"
  reason = "8 to 13.5 bar."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "confirmed"
}

worked_case "powder at 13.5 bar" {
  clause = "9.2"
  as_built {
    extinguisher "1" {
      agent    = "powder"
      pressure = "13.5 bar"
    }
  }
  answer = "meets"
  reason = "8 to 13.5 bar."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "confirmed"
}

worked_case "powder at 7.5 bar" {
  clause = "9.2"
  as_built {
    extinguisher "1" {
      agent    = "powder"
      pressure = "7.5 bar"
    }
  }
  answer = "gap"
  reason = "8 to 13.5 bar."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "confirmed"
}

worked_case "powder at 200 psi" {
  clause = "9.2"
  as_built {
    extinguisher "1" {
      agent    = "powder"
      pressure = "200 psi"
    }
  }
  answer = "gap"
  reason = "200 psi is 13.79 bar."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "computed"
}

worked_case "foam at 14 bar" {
  clause = "9.2"
  as_built {
    extinguisher "1" {
      agent    = "AFFF"
      pressure = "14 bar"
    }
  }
  answer = "does not apply"
  reason = "The figures are for powder."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "confirmed"
}

worked_case "mounting for 25 g with two straps" {
  clause = "9.3"
  as_built {
    extinguisher "1" {
      mount_rating = "25 g0"
      straps       = 2
      anti_torpedo = true
    }
  }
  answer = "meets"
  reason = "25 g, two metal straps, anti-torpedo tabs."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "confirmed"
}

worked_case "mounting with one strap" {
  clause = "9.3"
  as_built {
    extinguisher "1" {
      mount_rating = "25 g0"
      straps       = 1
      anti_torpedo = true
    }
  }
  answer = "gap"
  reason = "Two metal straps."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "confirmed"
}

worked_case "mounting without tabs" {
  clause = "9.3"
  as_built {
    extinguisher "1" {
      mount_rating = "25 g0"
      straps       = 2
      anti_torpedo = false
    }
  }
  answer = "gap"
  reason = "Anti-torpedo tabs."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "confirmed"
}

worked_case "mounting for 200 m/s2" {
  clause = "9.3"
  as_built {
    extinguisher "1" {
      mount_rating = "200 m/s2"
      straps       = 2
      anti_torpedo = true
    }
  }
  answer = "gap"
  reason = "25 g is 245.2 m/s2."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "computed"
}

worked_case "system of list 16 with 3 kg" {
  clause = "9.4"
  as_built {
    fire_system {
      standard   = "TL16"
      agent_mass = "3 kg"
    }
  }
  answer = "meets"
  reason = "At least 3 kg in rallies."
  source = "French guide to Appendix J, extinguishers"
  status = "quoted by others"
}

worked_case "system of list 16 with 2.25 kg" {
  clause = "9.4"
  as_built {
    fire_system {
      standard   = "TL16"
      agent_mass = "2.25 kg"
    }
  }
  answer = "gap"
  reason = "At least 3 kg in rallies."
  source = "French guide to Appendix J, extinguishers"
  status = "quoted by others"
}

worked_case "RC1 with list 16 in 2015" {
  clause = "9.5"
  on     = "2015-12-31"
  as_built {
    car "1" {
      class = "RC1"
    }
    fire_system {
      standard = "TL16"
    }
  }
  answer = "meets"
  reason = "8865 is mandatory in RC1 from 1 January 2016."
  source = "French guide to Appendix J, extinguishers"
  status = "quoted by others"
}

worked_case "RC1 with list 16 in 2016" {
  clause = "9.5"
  on     = "2016-01-01"
  as_built {
    car "1" {
      class = "RC1"
    }
    fire_system {
      standard = "TL16"
    }
  }
  answer = "gap"
  reason = "8865 is mandatory in RC1 from 1 January 2016."
  source = "French guide to Appendix J, extinguishers"
  status = "quoted by others"
}

worked_case "RC1 with 8865" {
  clause = "9.5"
  on     = "2016-01-01"
  as_built {
    car "1" {
      class = "RC1"
    }
    fire_system {
      standard = "TL52"
    }
  }
  answer = "meets"
  reason = "8865 is technical list 52."
  source = "French guide to Appendix J, extinguishers"
  status = "quoted by others"
}

worked_case "RC2 with list 16" {
  clause = "9.5"
  on     = "2016-06-01"
  as_built {
    car "1" {
      class = "RC2"
    }
    fire_system {
      standard = "TL16"
    }
  }
  answer = "meets"
  reason = "Either standard outside RC1."
  source = "French guide to Appendix J, extinguishers"
  status = "quoted by others"
}

worked_case "system of another standard" {
  clause = "9.5"
  on     = "2016-06-01"
  as_built {
    car "1" {
      class = "RC2"
    }
    fire_system {
      standard = "SFI 17.1"
    }
  }
  answer = "gap"
  reason = "FIA 1999 or 8865-2015."
  source = "French guide to Appendix J, extinguishers"
  status = "quoted by others"
}

worked_case "bottle 300 mm from the edges" {
  clause = "9.6"
  as_built {
    fire_system {
      fire_bottle "1" {
        distance_from_body_edge = "300 mm"
      }
    }
  }
  answer = "meets"
  reason = "At least 300 mm."
  source = "FIA Appendix J, Art. 253-7.2"
  status = "quoted by others"
}

worked_case "bottle 290 mm from the edges" {
  clause = "9.6"
  as_built {
    fire_system {
      fire_bottle "1" {
        distance_from_body_edge = "290 mm"
      }
    }
  }
  answer = "gap"
  reason = "At least 300 mm."
  source = "FIA Appendix J, Art. 253-7.2"
  status = "quoted by others"
}

worked_case "bottle of foam" {
  clause = "9.7"
  as_built {
    extinguisher "1" {
      agent = "AFFF"
    }
  }
  answer = "meets"
  reason = "Not one of the banned ones."
  source = "French guides to Appendix J, extinguishers"
  status = "quoted by others"
}

worked_case "bottle of BCF" {
  clause = "9.7"
  as_built {
    extinguisher "1" {
      agent = "BCF"
    }
  }
  answer = "gap"
  reason = "BCF and NAF are banned."
  source = "French guides to Appendix J, extinguishers"
  status = "quoted by others"
}

worked_case "E of 80 mm in a circle of 100 mm" {
  clause = "9.8"
  as_built {
    fire_system {
      outside_mark_diameter      = "100 mm"
      outside_mark_letter_height = "80 mm"
    }
  }
  answer = "meets"
  reason = "At least 80 and 100 mm."
  source = "MSUK NCR 2026, p. 287"
  status = "confirmed"
}

worked_case "E of 70 mm in a circle of 100 mm" {
  clause = "9.8"
  as_built {
    fire_system {
      outside_mark_diameter      = "100 mm"
      outside_mark_letter_height = "70 mm"
    }
  }
  answer = "gap"
  reason = "The letter has at least 80 mm."
  source = "MSUK NCR 2026, p. 287"
  status = "confirmed"
}

worked_case "extinguisher of 0.9 kg" {
  clause = "9.9"
  as_built {
    extinguisher "1" {
      agent_mass = "0.9 kg"
    }
  }
  answer = "meets"
  reason = "0.9 kg."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "extinguisher of 2 lb" {
  clause = "9.9"
  as_built {
    extinguisher "1" {
      agent_mass = "2 lb"
    }
  }
  answer = "meets"
  reason = "2 lb is 0.907 kg."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "extinguisher of 0.8 kg" {
  clause = "9.9"
  as_built {
    extinguisher "1" {
      agent_mass = "0.8 kg"
    }
  }
  answer = "gap"
  reason = "0.9 kg."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "AFFF of 2.39 l" {
  clause = "9.1"
  as_built {
    extinguisher "1" {
      agent        = "AFFF"
      agent_volume = "2.39 l"
      agent_mass   = "none"
    }
  }
  answer = "gap"
  reason = "2.4 l of AFFF."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3, and FIA Appendix J, Art. 253-7.3.3"
  status = "confirmed"
}

worked_case "powder of 1.99 kg" {
  clause = "9.1"
  as_built {
    extinguisher "1" {
      agent        = "powder"
      agent_mass   = "1.99 kg"
      agent_volume = "none"
    }
  }
  answer = "gap"
  reason = "2.0 kg of powder."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3, and FIA Appendix J, Art. 253-7.3.3"
  status = "confirmed"
}

worked_case "powder at 7.9 bar" {
  clause = "9.2"
  as_built {
    extinguisher "1" {
      agent    = "powder"
      pressure = "7.9 bar"
    }
  }
  answer = "gap"
  reason = "8 to 13.5 bar."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "confirmed"
}

worked_case "powder at 13.6 bar" {
  clause = "9.2"
  as_built {
    extinguisher "1" {
      agent    = "powder"
      pressure = "13.6 bar"
    }
  }
  answer = "gap"
  reason = "8 to 13.5 bar."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "confirmed"
}

worked_case "mounting for 24.9 g" {
  clause = "9.3"
  as_built {
    extinguisher "1" {
      mount_rating = "24.9 g0"
      straps       = 2
      anti_torpedo = true
    }
  }
  answer = "gap"
  reason = "25 g."
  source = "MSUK NCR 2026, Ch. 7 App. 6 Art. 3.3"
  status = "confirmed"
}

worked_case "bottle 299 mm from the edges" {
  clause = "9.6"
  as_built {
    fire_system {
      fire_bottle "1" {
        distance_from_body_edge = "299 mm"
      }
    }
  }
  answer = "gap"
  reason = "At least 300 mm."
  source = "FIA Appendix J, Art. 253-7.2"
  status = "quoted by others"
}

worked_case "E of 79 mm in a circle of 100 mm" {
  clause = "9.8"
  as_built {
    fire_system {
      outside_mark_diameter      = "100 mm"
      outside_mark_letter_height = "79 mm"
    }
  }
  answer = "gap"
  reason = "The letter has at least 80 mm."
  source = "MSUK NCR 2026, p. 287"
  status = "confirmed"
}

worked_case "E of 80 mm in a circle of 99 mm" {
  clause = "9.8"
  as_built {
    fire_system {
      outside_mark_diameter      = "99 mm"
      outside_mark_letter_height = "80 mm"
    }
  }
  answer = "gap"
  reason = "The circle has at least 100 mm."
  source = "MSUK NCR 2026, p. 287"
  status = "confirmed"
}

worked_case "extinguisher of 0.89 kg" {
  clause = "9.9"
  as_built {
    extinguisher "1" {
      agent_mass = "0.89 kg"
    }
  }
  answer = "gap"
  reason = "0.9 kg."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}
