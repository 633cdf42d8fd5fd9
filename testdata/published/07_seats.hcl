# Seats, their supports and what holds the head. The labels of seats stand with the other
# labels.

# Bush welded through a seat tube, by its bolt.
table "bushes" {
  columns = { bolt = "seat_mount.bolt_diameter", bush = "seat_mount.bush_diameter" }
  rows    = [["8 mm", "13 mm"], ["10 mm", "15 mm"]]
}

chapter "7" {
  title = "Seats"

  clause "7.1" {
    title   = "Support on the shell"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
    across  = ["seat in seats", "mount in seat.seat_mounts"]
    demand  = "mount.bolt_diameter >= 8*mm and mount.counterplate_area >= 40*sq_cm"
  }

  clause "7.2" {
    title   = "Points of a seat"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
    across  = "seat in seats"
    demand  = "len(seat.seat_mounts) >= 4"
  }

  clause "7.3" {
    title   = "Bolts between seat and support"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
    across  = ["seat in seats", "mount in seat.seat_mounts"]
    demand  = "mount.seat_bolt_diameter >= 8*mm"
  }

  clause "7.4" {
    title   = "Thickness of a support"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
    across  = ["seat in seats", "mount in seat.seat_mounts"]
    where   = "mount.support_material in ['steel', 'aluminium alloy']"
    demand  = "mount.support_thickness >= (mount.support_material == 'steel' ? 3*mm : 5*mm)"
  }

  clause "7.5" {
    title   = "Length of a support"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
    across  = ["seat in seats", "mount in seat.seat_mounts"]
    demand  = "mount.support_length >= 6*cm"
  }

  clause "7.6" {
    title   = "Seat tube"
    concern = "safety"
    text_at = "MSUK NCR 2026, p. 271"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'seat bar'"
    demand  = "tube.outside >= 35*mm and tube.wall >= 2.5*mm and tube.yield >= 350*MPa"
  }

  clause "7.7" {
    title   = "Bush in a seat tube"
    concern = "safety"
    text_at = "MSUK NCR 2026, p. 271"
    across  = ["seat in seats", "mount in seat.seat_mounts"]
    where   = "mount.fixed_to == 'cross tube'"
    demand  = "any(table.bushes, mount.bolt_diameter == .bolt and mount.bush_diameter >= .bush)"
  }

  clause "7.8" {
    title   = "Cushion"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-16, 2014"
    across  = "seat in seats"
    demand  = "(seat.cushion_thickness ?? 0) <= 50*mm"
  }

  clause "7.9" {
    title   = "Head restraint near the helmet"
    concern = "safety"
    text_at = "MSUK NCR 2026, p. 271"
    across  = "seat in seats"
    demand  = "seat.head_support_gap <= 50*mm"
  }
}

worked_case "support on M8 and 40 cm2" {
  clause = "7.1"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        bolt_diameter     = "8 mm"
        counterplate_area = "40 cm2"
      }
    }
  }
  answer = "meets"
  reason = "M8 and 40 cm2."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "support on 39 cm2" {
  clause = "7.1"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        bolt_diameter     = "8 mm"
        counterplate_area = "39 cm2"
      }
    }
  }
  answer = "gap"
  reason = "At least 40 cm2."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "support on 5/16 in bolts" {
  clause = "7.1"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        bolt_diameter     = "5/16 in"
        counterplate_area = "45 cm2"
      }
    }
  }
  answer = "gap"
  reason = "5/16 in is 7.94 mm, under M8."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "computed"
}

worked_case "seat on four points" {
  clause = "7.2"
  as_built {
    seat "driver" {
      seat_mount "front left" {}
      seat_mount "front right" {}
      seat_mount "rear left" {}
      seat_mount "rear right" {}
    }
  }
  answer = "meets"
  reason = "At least four."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "seat on three points" {
  clause = "7.2"
  as_built {
    seat "driver" {
      seat_mount "front left" {}
      seat_mount "front right" {}
      seat_mount "rear left" {}
    }
  }
  answer = "gap"
  reason = "At least four."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "seat bolted with M8" {
  clause = "7.3"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        seat_bolt_diameter = "8 mm"
      }
    }
  }
  answer = "meets"
  reason = "M8."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "seat bolted with M6" {
  clause = "7.3"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        seat_bolt_diameter = "6 mm"
      }
    }
  }
  answer = "gap"
  reason = "M8."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "steel support of 3 mm" {
  clause = "7.4"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        support_material  = "steel"
        support_thickness = "3 mm"
      }
    }
  }
  answer = "meets"
  reason = "3 mm of steel."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "light-alloy support of 3 mm" {
  clause = "7.4"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        support_material  = "light alloy"
        support_thickness = "3 mm"
      }
    }
  }
  answer = "gap"
  reason = "5 mm of light alloy."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "light-alloy support of 5 mm" {
  clause = "7.4"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        support_material  = "light alloy"
        support_thickness = "5 mm"
      }
    }
  }
  answer = "meets"
  reason = "5 mm of light alloy."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "support of 4 mm, its metal not written down" {
  clause = "7.4"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        support_thickness = "4 mm"
      }
    }
  }
  answer = "not recorded"
  reason = "4 mm do for steel and not for light alloy; which it is has not been written down."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "computed"
}

worked_case "support of 6 cm" {
  clause = "7.5"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        support_length = "60 mm"
      }
    }
  }
  answer = "meets"
  reason = "6 cm."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "support of 59 mm" {
  clause = "7.5"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        support_length = "59 mm"
      }
    }
  }
  answer = "gap"
  reason = "6 cm."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "seat tube of 35 x 2.5 mm" {
  clause = "7.6"
  as_built {
    tube "1" {
      part  = "seat tube"
      size  = "35 x 2.5 mm"
      yield = "355 MPa"
    }
  }
  answer = "meets"
  reason = "35 x 2.5 mm with a yield of 350."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}

worked_case "seat tube of soft steel" {
  clause = "7.6"
  as_built {
    tube "1" {
      part  = "seat tube"
      size  = "35 x 2.5 mm"
      yield = "235 MPa"
    }
  }
  answer = "gap"
  reason = "The 350 are yield in this article."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}

worked_case "bush of 13 mm for M8" {
  clause = "7.7"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        fixed_to      = "cross tube"
        bolt_diameter = "8 mm"
        bush_diameter = "13 mm"
      }
    }
  }
  answer = "meets"
  reason = "13 mm for M8."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}

worked_case "bush of 13 mm for M10" {
  clause = "7.7"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        fixed_to      = "cross tube"
        bolt_diameter = "10 mm"
        bush_diameter = "13 mm"
      }
    }
  }
  answer = "gap"
  reason = "15 mm for M10."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}

worked_case "cushion of 50 mm" {
  clause = "7.8"
  as_built {
    seat "driver" {
      cushion_thickness = "50 mm"
    }
  }
  answer = "meets"
  reason = "At most 50 mm."
  source = "FIA Appendix J, Art. 253-16, 2014"
  status = "quoted by others"
}

worked_case "cushion of 51 mm" {
  clause = "7.8"
  as_built {
    seat "driver" {
      cushion_thickness = "51 mm"
    }
  }
  answer = "gap"
  reason = "At most 50 mm."
  source = "FIA Appendix J, Art. 253-16, 2014"
  status = "quoted by others"
}

worked_case "no cushion" {
  clause = "7.8"
  as_built {
    seat "driver" {
      cushion_thickness = "none"
    }
  }
  answer = "meets"
  reason = "Nothing is thinner than 50 mm."
  source = "FIA Appendix J, Art. 253-16, 2014"
  status = "computed"
}

worked_case "helmet 50 mm from the restraint" {
  clause = "7.9"
  as_built {
    seat "driver" {
      head_support_gap = "50 mm"
    }
  }
  answer = "meets"
  reason = "At most 50 mm."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}

worked_case "helmet 60 mm from the restraint" {
  clause = "7.9"
  as_built {
    seat "driver" {
      head_support_gap = "60 mm"
    }
  }
  answer = "gap"
  reason = "At most 50 mm."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}

worked_case "support on M6" {
  clause = "7.1"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        bolt_diameter     = "6 mm"
        counterplate_area = "40 cm2"
      }
    }
  }
  answer = "gap"
  reason = "M8."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "seat bolted with 5/16 in" {
  clause = "7.3"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        seat_bolt_diameter = "5/16 in"
      }
    }
  }
  answer = "gap"
  reason = "5/16 in is 7.94 mm, under M8."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "computed"
}

worked_case "steel support of 2.9 mm" {
  clause = "7.4"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        support_material  = "steel"
        support_thickness = "2.9 mm"
      }
    }
  }
  answer = "gap"
  reason = "3 mm of steel."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "light-alloy support of 4.9 mm" {
  clause = "7.4"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        support_material  = "light alloy"
        support_thickness = "4.9 mm"
      }
    }
  }
  answer = "gap"
  reason = "5 mm of light alloy."
  source = "MSUK NCR 2026, Ch. 7 App. 7 Art. 2.10 to 2.22, and FIA Appendix J, Art. 253-16"
  status = "confirmed"
}

worked_case "seat tube with a yield of 350: 35 x 2.5 mm" {
  clause = "7.6"
  as_built {
    tube "1" {
      part  = "seat tube"
      size  = "35 x 2.5 mm"
      yield = "350 MPa"
    }
  }
  answer = "meets"
  reason = "On the limit, which meets."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}

worked_case "seat tube with a yield of 350: 34.9 x 2.5 mm" {
  clause = "7.6"
  as_built {
    tube "1" {
      part  = "seat tube"
      size  = "34.9 x 2.5 mm"
      yield = "350 MPa"
    }
  }
  answer = "gap"
  reason = "35 x 2.5 mm at least."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}

worked_case "seat tube with a yield of 350: 35 x 2.49 mm" {
  clause = "7.6"
  as_built {
    tube "1" {
      part  = "seat tube"
      size  = "35 x 2.49 mm"
      yield = "350 MPa"
    }
  }
  answer = "gap"
  reason = "35 x 2.5 mm at least."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}

worked_case "seat tube with a yield of 349" {
  clause = "7.6"
  as_built {
    tube "1" {
      part  = "seat tube"
      size  = "35 x 2.5 mm"
      yield = "349 MPa"
    }
  }
  answer = "gap"
  reason = "Yield of 350."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}

worked_case "bush of 12.9 mm for M8" {
  clause = "7.7"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        fixed_to      = "cross tube"
        bolt_diameter = "8 mm"
        bush_diameter = "12.9 mm"
      }
    }
  }
  answer = "gap"
  reason = "13 mm for M8."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}

worked_case "bush of 15 mm for M10" {
  clause = "7.7"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        fixed_to      = "cross tube"
        bolt_diameter = "10 mm"
        bush_diameter = "15 mm"
      }
    }
  }
  answer = "meets"
  reason = "15 mm for M10."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}

worked_case "bush of 14.9 mm for M10" {
  clause = "7.7"
  as_built {
    seat "driver" {
      seat_mount "front left" {
        fixed_to      = "cross tube"
        bolt_diameter = "10 mm"
        bush_diameter = "14.9 mm"
      }
    }
  }
  answer = "gap"
  reason = "15 mm for M10."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}

worked_case "helmet 51 mm from the restraint" {
  clause = "7.9"
  as_built {
    seat "driver" {
      head_support_gap = "51 mm"
    }
  }
  answer = "gap"
  reason = "At most 50 mm."
  source = "MSUK NCR 2026, p. 271"
  status = "confirmed"
}
