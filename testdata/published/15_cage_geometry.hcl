# Rules on the shape of a cage, worked through joints: nothing of what they ask is stated,
# everything follows from places, sizes and which tube goes through what. The figures in the
# reasons are worked out apart from the program, by elementary geometry, axis to axis: x is
# forward, y to the left, z up. 1000 mm up and 577.350269190 mm back are 30 degrees from the
# vertical to the last digit that counts; 577 and 578 mm stand on either side of it.

# How far a leg of a hoop leans as seen from the side: from the foot of the leg to the first
# corner above it. The straight from foot to foot, which is the angle of the tube as a whole,
# lies level in any hoop.
term "first_leg_lean" {
  given = "tube in cage.tubes"
  means = <<-FORMULA
  abs(atan2(ahead_of(first(tube.corners), first(tube.ends)), above(first(tube.corners), first(tube.ends))))
FORMULA
}

term "last_leg_lean" {
  given = "tube in cage.tubes"
  means = <<-FORMULA
  abs(atan2(ahead_of(last(tube.corners), last(tube.ends)), above(last(tube.corners), last(tube.ends))))
FORMULA
}

chapter "15" {
  title = "Bends, hoops, braces and diagonals from joints"

  clause "15.1" {
    title   = "Bend radius over the tube's diameter"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-8.3.3, 2009"
    across  = "tube in cage.tubes"
    where   = "tube.bends > 0"
    demand  = "tube.bend_radius_ratio >= 3"
  }

  clause "15.2" {
    title   = "Bends of a frame"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0, F.5.2.1"
    across  = "tube in cage.tubes"
    where   = "any(tube.corners, .angle > 1*deg)"
    demand  = "tube.bend_radius >= 3 * tube.outside"
  }

  clause "15.3" {
    title   = "Slope of a backstay, to the vertical, and straight"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'backstay'"
    demand  = "tube.angle_to_vertical >= 30*deg and tube.straight"
  }

  clause "15.4" {
    title   = "Slope of a backstay, proved"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1, decided by ISO 14253-1"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'backstay'"
    demand  = "tube.angle_to_vertical >= 30*deg"
    judged  = "proved"
  }

  clause "15.5" {
    title   = "Slope of a backstay as seen from the side"
    concern = "safety"
    text_at = "For comparison with MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1, which does not say from where the angle is seen"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'backstay'"
    demand  = "tube.side_angle_to_vertical >= 30*deg"
  }

  clause "15.6" {
    title   = "Slope of a brace, to the horizontal"
    concern = "safety"
    text_at = "FIA Appendix K, 2018"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'backstay'"
    demand  = "tube.angle_to_horizontal <= 60*deg"
  }

  clause "15.7" {
    title   = "Angle that a brace includes with the hoop"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'backstay'"
    demand  = "any(cage.tubes, .part == 'main hoop' and angle_between(#, tube) >= 30*deg)"
  }

  clause "15.8" {
    title   = "Braces near the top of the hoop, to its axis"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'backstay'"
    demand  = <<-FORMULA
  let hoop = find(cage.tubes, .part == 'main hoop');
  min(map(tube.ends, let end = #; max(map(hoop.corners, above(#, end))))) <= 160*mm
FORMULA
  }

  clause "15.9" {
    title   = "Lean of the main hoop, as its legs go"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'main hoop'"
    demand  = "first_leg_lean(tube) < 10*deg and last_leg_lean(tube) < 10*deg"
  }

  clause "15.10" {
    title   = "Lean of the front hoop, as its legs go"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'front hoop'"
    demand  = "first_leg_lean(tube) < 20*deg and last_leg_lean(tube) < 20*deg"
  }

  clause "15.11" {
    title   = "Legs of the main hoop, inside"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'main hoop'"
    demand  = "distance(first(tube.ends), last(tube.ends)) - tube.outside >= 380*mm"
  }

  clause "15.12" {
    title   = "Clearance of the driver's helmet"
    concern = "safety"
    text_at = "Formula SAE Rules 2026, V1.0"
    across  = "head in heads"
    demand  = "head.clearance >= 50*mm"
  }

  clause "15.13" {
    title    = "Hoop diagonal, straight, near a foot and a backstay joint"
    concern  = "safety"
    text_at  = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
    across   = "tube in cage.tubes"
    where    = "tube.part == 'hoop diagonal'"
    at_least = 1
    demand   = <<-FORMULA
  tube.straight
  and any(tube.ends, .to_foot <= 100*mm)
  and any(tube.ends, let end = #; any(cage.tubes, .part == 'backstay' and any(.ends, distance(#, end) <= 100*mm)))
FORMULA
  }

  clause "15.14" {
    title   = "Hoop diagonal near a foot, from surface to surface"
    concern = "safety"
    text_at = "For comparison with MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3, which does not say from where the 100 mm are taken"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'hoop diagonal'"
    demand  = "any(tube.ends, .to_foot_surface <= 100*mm)"
  }

  clause "15.15" {
    title   = "Upper end of a pillar reinforcement, from the junction"
    concern = "safety"
    text_at = "MSA bulletin of 8 March 2011, K1.3.5(e)"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'windscreen pillar reinforcement'"
    demand  = "all(tube.ends, let end = #; any(tube.ends, above(#, end) > 0) or end.to_joint < 100*mm)"
  }

  clause "15.16" {
    title   = "Bend of a pillar reinforcement"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-8.3.2"
    across  = "tube in cage.tubes"
    where   = "tube.part == 'windscreen pillar reinforcement'"
    demand  = "tube.straight or tube.greatest_bend_angle <= 20*deg"
  }

  clause "15.17" {
    title   = "Straight members"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1 and 9.1 to 9.3"
    across  = "tube in cage.tubes"
    where   = "tube.part in ['backstay', 'hoop diagonal']"
    demand  = "tube.straight"
  }

  clause "15.18" {
    title   = "Feet under the hoop and the backstays"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-8.3.2"
    across  = "tube in cage.tubes"
    where   = "tube.part in ['main hoop', 'backstay']"
    demand  = "tube.part == 'main hoop' ? all(tube.ends, .to_foot == 0*mm) : any(tube.ends, .to_foot == 0*mm)"
  }
}

worked_case "ratio of 45 mm bent to 135 mm" {
  clause = "15.1"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "1000 mm"] }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C"]
      outside     = "45 mm"
      bend_radius = "135 mm"
    }
  }
  answer = "meets"
  reason = "135/45 is 3, exactly. The joints give one bend of 90 degrees."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "ratio of 45 mm bent to 134 mm" {
  clause = "15.1"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "1000 mm"] }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C"]
      outside     = "45 mm"
      bend_radius = "134 mm"
    }
  }
  answer = "gap"
  reason = "134/45 is 2.978."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "ratio of 50 mm bent to 149.9 mm" {
  clause = "15.1"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "1000 mm"] }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C"]
      outside     = "50 mm"
      bend_radius = "149.9 mm"
    }
  }
  answer = "gap"
  reason = "149.9/50 is 2.998."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "ratio of 1.75 in bent to 133.35 mm" {
  clause = "15.1"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "1000 mm"] }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C"]
      outside     = "1.75 in"
      bend_radius = "133.35 mm"
    }
  }
  answer = "meets"
  reason = "1.75 in is 44.45 mm, three times that 133.35 mm, exactly."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "computed"
}

worked_case "ratio of a tube known as ordered alone" {
  clause = "15.1"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "1000 mm"] }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C"]
      ordered     = "45 x 2.5 mm"
      bend_radius = "135 mm"
    }
  }
  answer = "meets"
  reason = "Nothing is measured: 135/45 by the size on the certificate."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "ratio of a tube measured a little large" {
  clause = "15.1"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "1000 mm"] }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C"]
      ordered     = "45 x 2.5 mm"
      outside     = "45.2 mm"
      bend_radius = "135 mm"
    }
  }
  answer = "gap"
  reason = "The measured 45.2 mm counts before the ordered 45 mm: 135/45.2 is 2.987."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "computed"
}

worked_case "ratio without a bend radius" {
  clause = "15.1"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "1000 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C"]
      outside = "45 mm"
    }
  }
  answer = "not recorded"
  reason = "The joints say that there is a bend, nothing says its radius."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "ratio without a diameter" {
  clause = "15.1"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "1000 mm"] }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C"]
      bend_radius = "135 mm"
    }
  }
  answer = "not recorded"
  reason = "Neither measured nor ordered."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "tube over three joints in one line" {
  clause = "15.1"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "400 mm"] }
    joint "C" { at = ["0 mm", "600 mm", "1000 mm"] }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C"]
      outside     = "45 mm"
      bend_radius = "134 mm"
    }
  }
  answer = "does not apply"
  reason = "From 0 over 400 to 1000 mm up it goes straight on: no bend."
  source = "FIA Appendix J, Art. 253-8.3.3, 2009"
  status = "quoted by others"
}

worked_case "placed frame tube of 25.4 mm bent to 76.2 mm" {
  clause = "15.2"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "1000 mm"] }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C"]
      outside     = "25.4 mm"
      bend_radius = "76.2 mm"
    }
  }
  answer = "meets"
  reason = "Three times 25.4 mm is 76.2 mm, exactly."
  source = "Formula SAE Rules 2026, V1.0, F.5.2.1"
  status = "confirmed"
}

worked_case "placed frame tube of 1 in bent to 3 in" {
  clause = "15.2"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "1000 mm"] }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C"]
      outside     = "1 in"
      bend_radius = "3 in"
    }
  }
  answer = "meets"
  reason = "Three times 1 in, exactly."
  source = "Formula SAE Rules 2026, V1.0, F.5.2.1"
  status = "confirmed"
}

worked_case "placed frame tube of 25.4 mm bent to 76 mm" {
  clause = "15.2"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "1000 mm"] }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C"]
      outside     = "25.4 mm"
      bend_radius = "76 mm"
    }
  }
  answer = "gap"
  reason = "76/25.4 is 2.992."
  source = "Formula SAE Rules 2026, V1.0, F.5.2.1"
  status = "confirmed"
}

worked_case "placed frame tube of 25.4 mm bent for 25.0 mm" {
  clause = "15.2"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "1000 mm"] }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C"]
      outside     = "25.4 mm"
      bend_radius = "75 mm"
    }
  }
  answer = "gap"
  reason = "75 mm is three times 25.0 mm, but 25.4 mm tube needs 76.2 mm."
  source = "Formula SAE Rules 2026, V1.0, F.5.2.1"
  status = "confirmed"
}

worked_case "frame tube of unknown diameter" {
  clause = "15.2"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "1000 mm"] }
    tube "1" {
      part        = "main hoop"
      through     = ["A", "B", "C"]
      bend_radius = "76 mm"
    }
  }
  answer = "not recorded"
  reason = "Only the radius is known."
  source = "Formula SAE Rules 2026, V1.0, F.5.2.1"
  status = "confirmed"
}

worked_case "frame tube with a turn of 3.43 degrees" {
  clause = "15.2"
  as_built {
    joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "0 mm", "500 mm"] }
    joint "C" { at = ["30 mm", "0 mm", "1000 mm"] }
    tube "1" {
      through     = ["A", "B", "C"]
      outside     = "25.4 mm"
      bend_radius = "70 mm"
    }
  }
  answer = "gap"
  reason = "atan2(30, 500) = 3.43 deg: the least of turns is a bend, and 70 mm is too tight for it."
  source = "Formula SAE Rules 2026, V1.0, F.5.2.1"
  status = "computed"
}

worked_case "backstay 580 mm back over 1000 mm" {
  clause = "15.3"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-580 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "atan2(580, 1000) = 30.114 deg from the vertical."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "confirmed"
}

worked_case "backstay 578 mm back over 1000 mm" {
  clause = "15.3"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-578 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "atan2(578, 1000) = 30.028 deg: just over 30."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "computed"
}

worked_case "backstay on 30 degrees" {
  clause = "15.3"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-577.350269190 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "tan 30 deg = 0.577350269190: on the limit, which meets."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "computed"
}

worked_case "backstay 577 mm back over 1000 mm" {
  clause = "15.3"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-577 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "gap"
  reason = "atan2(577, 1000) = 29.985 deg: just short of 30."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "computed"
}

worked_case "backstay 570 mm back over 1000 mm" {
  clause = "15.3"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-570 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "gap"
  reason = "atan2(570, 1000) = 29.683 deg."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "confirmed"
}

worked_case "backstay that runs inward as well" {
  clause = "15.3"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-560 mm", "340 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "From the side atan2(560, 1000) = 29.25 deg, but it runs 160 mm sideways too: hypot(560, 160) = 582.41 mm, atan2(582.41, 1000) = 30.217 deg in truth."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "computed"
}

worked_case "backstay with a bend in it" {
  clause = "15.3"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "M" { at = ["-290 mm", "540 mm", "500 mm"] }
    joint "E" { at = ["-580 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "M", "E"]
    }
  }
  answer = "gap"
  reason = "580 mm back from end to end, but 40 mm out of line in the middle: it turns by 2 atan2(40, hypot(290, 500)) = 7.92 deg there."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "confirmed"
}

worked_case "backstay of which the height is not known" {
  clause = "15.3"
  as_built {
    joint "B" {
      x = "0 mm"
      y = "500 mm"
    }
    joint "E" { at = ["-580 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "not recorded"
  reason = "No z of its upper joint."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "confirmed"
}

worked_case "mirror image of a backstay" {
  clause  = "15.3"
  subject = "6"
  as_built {
    joint "B" {
      at          = ["0 mm", "500 mm", "1000 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-580 mm", "450 mm", "0 mm"]
      mirrored_as = "F"
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
  }
  answer = "meets"
  reason = "The image has the slope of its original: atan2(580, 1000) = 30.114 deg."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "confirmed"
}

worked_case "mirror image that was measured apart" {
  clause  = "15.3"
  subject = "6"
  as_built {
    joint "B" {
      at          = ["0 mm", "500 mm", "1000 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-580 mm", "500 mm", "0 mm"]
      mirrored_as = "F"
    }
    joint "F" { at = ["-560 mm", "-500 mm", "0 mm"] }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
  }
  answer = "gap"
  reason = "The lower joint of the right one is a reading of its own: atan2(560, 1000) = 29.249 deg."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "confirmed"
}

worked_case "door bar at 5 degrees from the vertical" {
  clause = "15.3"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-87 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "door bar"
      through = ["B", "E"]
    }
  }
  answer = "does not apply"
  reason = "Not a backstay."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1"
  status = "confirmed"
}

worked_case "580 mm back, known to 2 mm" {
  clause = "15.4"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-580 mm ± 2 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "At the worst atan2(578, 1000) = 30.028 deg."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1, decided by ISO 14253-1"
  status = "computed"
}

worked_case "580 mm back, known to 3 mm" {
  clause = "15.4"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-580 mm ± 3 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "marginal"
  reason = "It may be atan2(577, 1000) = 29.985 deg: meets as read, not proved."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1, decided by ISO 14253-1"
  status = "computed"
}

worked_case "575 mm back, known to 2 mm" {
  clause = "15.4"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-575 mm ± 2 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "gap"
  reason = "At the best atan2(577, 1000) = 29.985 deg."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1, decided by ISO 14253-1"
  status = "computed"
}

worked_case "575 mm back, known to 3 mm" {
  clause = "15.4"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-575 mm ± 3 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "marginal"
  reason = "It may be atan2(578, 1000) = 30.028 deg: short as read, not proved."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1, decided by ISO 14253-1"
  status = "computed"
}

worked_case "a foot that is nowhere" {
  clause = "15.4"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" {}
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "not recorded"
  reason = "The lower joint has no coordinates."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1, decided by ISO 14253-1"
  status = "computed"
}

worked_case "from the side, 580 mm back" {
  clause = "15.5"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-580 mm", "300 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "atan2(580, 1000) = 30.114 deg; what it runs sideways is not seen."
  source = "For comparison with MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1, which does not say from where the angle is seen"
  status = "computed"
}

worked_case "from the side, on 30 degrees" {
  clause = "15.5"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-577.350269190 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "tan 30 deg = 0.577350269190, whatever it runs sideways."
  source = "For comparison with MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1, which does not say from where the angle is seen"
  status = "computed"
}

worked_case "from the side, a backstay that runs inward" {
  clause = "15.5"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-560 mm", "340 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "gap"
  reason = "atan2(560, 1000) = 29.25 deg, though 30.22 deg in truth: the two ways do not judge the same tube alike."
  source = "For comparison with MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1, which does not say from where the angle is seen"
  status = "computed"
}

worked_case "from the side, 577 mm back" {
  clause = "15.5"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-577 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "gap"
  reason = "atan2(577, 1000) = 29.985 deg."
  source = "For comparison with MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1, which does not say from where the angle is seen"
  status = "computed"
}

worked_case "from the side, x not known" {
  clause = "15.5"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" {
      y = "500 mm"
      z = "0 mm"
    }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "not recorded"
  reason = "The lower joint has no x."
  source = "For comparison with MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1, which does not say from where the angle is seen"
  status = "computed"
}

worked_case "30 degrees three ways: to the horizontal, 580 mm back" {
  clause = "15.6"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-580 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "atan2(1000, 580) = 59.886 deg to the horizontal."
  source = "FIA Appendix K, 2018"
  status = "quoted by others"
}

worked_case "brace at 60 degrees to the horizontal" {
  clause = "15.6"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-577.350269190 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "tan 60 deg = 1000/577.350269190: on the limit."
  source = "FIA Appendix K, 2018"
  status = "computed"
}

worked_case "brace 577 mm back, to the horizontal" {
  clause = "15.6"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-577 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "gap"
  reason = "atan2(1000, 577) = 60.015 deg."
  source = "FIA Appendix K, 2018"
  status = "computed"
}

worked_case "brace 400 mm back, to the horizontal" {
  clause = "15.6"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "E" { at = ["-400 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "gap"
  reason = "atan2(1000, 400) = 68.199 deg."
  source = "FIA Appendix K, 2018"
  status = "quoted by others"
}

worked_case "brace at 30 degrees to the horizontal" {
  clause = "15.6"
  as_built {
    joint "B" { at = ["0 mm", "500 mm", "577 mm"] }
    joint "E" { at = ["-1000 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "atan2(577, 1000) = 29.985 deg: a figure of 30 taken for the other angle would still meet here."
  source = "FIA Appendix K, 2018"
  status = "computed"
}

worked_case "brace without its upper end" {
  clause = "15.6"
  as_built {
    joint "B" {
      x = "0 mm"
      y = "500 mm"
    }
    joint "E" { at = ["-580 mm", "500 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "not recorded"
  reason = "The upper joint has no z."
  source = "FIA Appendix K, 2018"
  status = "quoted by others"
}

worked_case "30 degrees three ways: included, hoop upright" {
  clause = "15.7"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-580 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "atan2(580, 1000) = 30.114 deg between the upright leg and the brace; between brace and top bar it is more."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "30 degrees three ways: included, hoop leaning forward" {
  clause = "15.7"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["170 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["170 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-450 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "gap"
  reason = "The brace is atan2(620, 1000) = 31.80 deg from the vertical, but downward the leg goes back too, atan2(170, 1000) = 9.65 deg: they include 22.15 deg."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "included, hoop leaning back" {
  clause = "15.7"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["-100 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["-100 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-560 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "The brace is only 24.70 deg from the vertical, but downward the leg goes 5.71 deg the other way: 30.41 deg between them."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "included, exactly 30 degrees in space" {
  clause = "15.7"
  as_built {
    joint "A" { at = ["-500 mm", "-500 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "800 mm"] }
    joint "E" { at = ["-1000 mm", "-500 mm", "-500 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C"]
    }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "Directions (1, 1, 0) and (2, 1, 1): 3 over sqrt(2) sqrt(6) = sqrt(12) is cos 30 deg. The sides are turned so that whole figures come out."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "included, 1 mm short of 30 degrees in space" {
  clause = "15.7"
  as_built {
    joint "A" { at = ["-500 mm", "-500 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "0 mm", "0 mm"] }
    joint "C" { at = ["0 mm", "-400 mm", "800 mm"] }
    joint "E" { at = ["-1000 mm", "-501 mm", "-500 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C"]
    }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "gap"
  reason = "acos((750500)/(sqrt(500000) sqrt(1501001))) = 29.967 deg."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "included, brace onto the leg 100 mm down" {
  clause = "15.7"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "H" { at = ["0 mm", "200 mm", "900 mm"] }
    joint "E" { at = ["-600 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["H", "E"]
    }
  }
  answer = "meets"
  reason = "It lands on the leg between its ends: atan2(600, 900) = 33.690 deg to the leg."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "included, 570 mm back" {
  clause = "15.7"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-570 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "gap"
  reason = "atan2(570, 1000) = 29.683 deg to the upright leg."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "included, foot of the brace not known" {
  clause = "15.7"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" {
      y = "200 mm"
      z = "0 mm"
    }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "not recorded"
  reason = "The lower joint has no x."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "brace 160 mm under the corner" {
  clause = "15.8"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "H" { at = ["0 mm", "200 mm", "840 mm"] }
    joint "E" { at = ["-700 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["H", "E"]
    }
  }
  answer = "meets"
  reason = "1000 - 840 = 160 mm, exactly."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "brace 161 mm under the corner" {
  clause = "15.8"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "H" { at = ["0 mm", "200 mm", "839 mm"] }
    joint "E" { at = ["-700 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["H", "E"]
    }
  }
  answer = "gap"
  reason = "1000 - 839 = 161 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "brace 160.1 mm under the corner" {
  clause = "15.8"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "H" { at = ["0 mm", "200 mm", "839.9 mm"] }
    joint "E" { at = ["-700 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["H", "E"]
    }
  }
  answer = "gap"
  reason = "1000 - 839.9 = 160.1 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "brace at the corner" {
  clause = "15.8"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-580 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
  }
  answer = "meets"
  reason = "It ends where the hoop turns."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "brace written from its foot upward" {
  clause = "15.8"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "H" { at = ["0 mm", "200 mm", "880 mm"] }
    joint "E" { at = ["-700 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["E", "H"]
    }
  }
  answer = "meets"
  reason = "1000 - 880 = 120 mm, whichever end comes first."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "brace under the lower of two corners" {
  clause = "15.8"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1030 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "H" { at = ["0 mm", "200 mm", "860 mm"] }
    joint "E" { at = ["-700 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["H", "E"]
    }
  }
  answer = "gap"
  reason = "The hoop's other corner is 30 mm higher: 1030 - 860 = 170 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "brace of which the upper end has no height" {
  clause = "15.8"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "H" {
      x = "0 mm"
      y = "200 mm"
    }
    joint "E" { at = ["-700 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["H", "E"]
    }
  }
  answer = "not recorded"
  reason = "No z of its upper joint; the other end is 1000 mm down."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "main hoop that leans 176 mm" {
  clause = "15.9"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["176 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["176 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "meets"
  reason = "atan2(176, 1000) = 9.982 deg, less than 10."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "main hoop that leans 177 mm" {
  clause = "15.9"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["177 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["177 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "gap"
  reason = "atan2(177, 1000) = 10.037 deg."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "main hoop on 10 degrees" {
  clause = "15.9"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["176.326980708 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["176.326980708 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "gap"
  reason = "tan 10 deg = 0.176326980708: 10 degrees, and the text asks for less."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "main hoop upright" {
  clause = "15.9"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "meets"
  reason = "Its corners stand over its feet. The straight from foot to foot lies level, at 90 degrees to the vertical, and is not the hoop's lean."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "main hoop that leans backward" {
  clause = "15.9"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["-176 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["-176 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "meets"
  reason = "atan2(176, 1000) = 9.982 deg, the other way."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "main hoop with one leg that leans more" {
  clause = "15.9"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["176 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["177 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "gap"
  reason = "The left leg atan2(176, 1000) = 9.982 deg, the right one atan2(177, 1000) = 10.037 deg."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "main hoop with legs drawn inward" {
  clause = "15.9"
  as_built {
    joint "A" { at = ["0 mm", "300 mm", "0 mm"] }
    joint "B" { at = ["176 mm", "150 mm", "1000 mm"] }
    joint "C" { at = ["176 mm", "-150 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-300 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "meets"
  reason = "atan2(176, 1000) = 9.982 deg from the side; that its legs draw in by 150 mm is not seen from there."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "main hoop with a corner that is not placed" {
  clause = "15.9"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" {
      y = "200 mm"
      z = "1000 mm"
    }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "not recorded"
  reason = "The corner has no x."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "front hoop that leans 363 mm" {
  clause = "15.10"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["363 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["363 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "meets"
  reason = "atan2(363, 1000) = 19.951 deg, less than 20."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "front hoop that leans 364 mm" {
  clause = "15.10"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["364 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["364 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "gap"
  reason = "atan2(364, 1000) = 20.002 deg."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "front hoop on 20 degrees" {
  clause = "15.10"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["363.970234266 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["363.970234266 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "gap"
  reason = "tan 20 deg = 0.363970234266: 20 degrees, and the text asks for less."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "front hoop upright" {
  clause = "15.10"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "meets"
  reason = "Its corners stand over its feet. The straight from foot to foot lies level, at 90 degrees to the vertical, and is not the hoop's lean."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "front hoop that leans backward" {
  clause = "15.10"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["-363 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["-363 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "meets"
  reason = "atan2(363, 1000) = 19.951 deg, the other way."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "front hoop with one leg that leans more" {
  clause = "15.10"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["363 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["364 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "gap"
  reason = "The left leg atan2(363, 1000) = 19.951 deg, the right one atan2(364, 1000) = 20.002 deg."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "front hoop with legs drawn inward" {
  clause = "15.10"
  as_built {
    joint "A" { at = ["0 mm", "300 mm", "0 mm"] }
    joint "B" { at = ["363 mm", "150 mm", "1000 mm"] }
    joint "C" { at = ["363 mm", "-150 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-300 mm", "0 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "meets"
  reason = "atan2(363, 1000) = 19.951 deg from the side; that its legs draw in by 150 mm is not seen from there."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "front hoop with a corner that is not placed" {
  clause = "15.10"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" {
      y = "200 mm"
      z = "1000 mm"
    }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "not recorded"
  reason = "The corner has no x."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "legs 405.4 mm from axis to axis, 25.4 mm tube" {
  clause = "15.11"
  as_built {
    joint "A" { at = ["0 mm", "202.7 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "202.7 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-202.7 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-202.7 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "25.4 mm"
    }
  }
  answer = "meets"
  reason = "405.4 - 25.4 = 380 mm, exactly."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "legs 405 mm from axis to axis, 25.4 mm tube" {
  clause = "15.11"
  as_built {
    joint "A" { at = ["0 mm", "202.5 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "202.5 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-202.5 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-202.5 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "25.4 mm"
    }
  }
  answer = "gap"
  reason = "405 - 25.4 = 379.6 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "legs 405 mm from axis to axis, 25 mm tube" {
  clause = "15.11"
  as_built {
    joint "A" { at = ["0 mm", "202.5 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "202.5 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-202.5 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-202.5 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "25 mm"
    }
  }
  answer = "meets"
  reason = "405 - 25 = 380 mm, exactly."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "legs 380 mm from axis to axis" {
  clause = "15.11"
  as_built {
    joint "A" { at = ["0 mm", "190 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "190 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-190 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-190 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "25.4 mm"
    }
  }
  answer = "gap"
  reason = "380 - 25.4 = 354.6 mm between the tubes."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "legs 16 in from axis to axis, 1 in tube" {
  clause = "15.11"
  as_built {
    joint "A" { at = ["0 in", "8 in", "0 in"] }
    joint "B" { at = ["0 in", "8 in", "40 in"] }
    joint "C" { at = ["0 in", "-8 in", "40 in"] }
    joint "D" { at = ["0 in", "-8 in", "0 in"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "1 in"
    }
  }
  answer = "meets"
  reason = "16 - 1 = 15 in, which is 381 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "legs written once, the other side as its image" {
  clause = "15.11"
  as_built {
    joint "A" {
      at          = ["0 mm", "210 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "200 mm", "1000 mm"]
      mirrored_as = "C"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
      outside = "25.4 mm"
    }
  }
  answer = "meets"
  reason = "Twice 210 mm less 25.4 mm is 394.6 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "legs of a tube of unknown diameter" {
  clause = "15.11"
  as_built {
    joint "A" { at = ["0 mm", "202.7 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "202.7 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-202.7 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-202.7 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
  }
  answer = "not recorded"
  reason = "405.4 mm from axis to axis, but how thick is the tube?"
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "bar 50 mm over the helmet" {
  clause = "15.12"
  as_built {
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["0 mm", "300 mm", "962.7 mm"] }
    joint "Q1" { at = ["0 mm", "-300 mm", "962.7 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
  }
  answer = "meets"
  reason = "The ball reaches up to 900 mm, the bar down to 962.7 - 12.7 = 950 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "bar 49.9 mm over the helmet" {
  clause = "15.12"
  as_built {
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["0 mm", "300 mm", "962.6 mm"] }
    joint "Q1" { at = ["0 mm", "-300 mm", "962.6 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
  }
  answer = "gap"
  reason = "962.6 - 12.7 - 900 = 49.9 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "bar behind and above the helmet, 47.3 mm" {
  clause = "15.12"
  as_built {
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["-120 mm", "300 mm", "920 mm"] }
    joint "Q1" { at = ["-120 mm", "-300 mm", "920 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
  }
  answer = "gap"
  reason = "The ball's middle is at 760 mm; hypot(120, 160) = 200 mm less 140 mm less 12.7 mm is 47.3 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "thinner bar behind and above the helmet" {
  clause = "15.12"
  as_built {
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["-120 mm", "300 mm", "920 mm"] }
    joint "Q1" { at = ["-120 mm", "-300 mm", "920 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "20 mm"
    }
  }
  answer = "meets"
  reason = "hypot(120, 160) - 140 - 10 = 50 mm, exactly."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "the nearest of two bars counts" {
  clause = "15.12"
  as_built {
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "140 mm"
    }
    joint "P1" { at = ["0 mm", "300 mm", "1012.7 mm"] }
    joint "Q1" { at = ["0 mm", "-300 mm", "1012.7 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
    joint "P2" { at = ["0 mm", "300 mm", "962.6 mm"] }
    joint "Q2" { at = ["0 mm", "-300 mm", "962.6 mm"] }
    tube "2" {
      part    = "main hoop"
      through = ["P2", "Q2"]
      outside = "25.4 mm"
    }
  }
  answer = "gap"
  reason = "One is 100 mm away, the other 962.6 - 12.7 - 900 = 49.9 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "smaller helmet under the same bar" {
  clause = "15.12"
  as_built {
    head "driver" {
      top           = ["0 mm", "0 mm", "900 mm"]
      helmet_radius = "130 mm"
    }
    joint "P1" { at = ["-120 mm", "300 mm", "920 mm"] }
    joint "Q1" { at = ["-120 mm", "-300 mm", "920 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "24.1 mm"
    }
  }
  answer = "meets"
  reason = "A ball of 130 mm has its middle at 770 mm: hypot(120, 150) = 192.09 mm, less 130 and 12.05 mm, is 50.04 mm."
  source = "Formula SAE Rules 2026, V1.0"
  status = "computed"
}

worked_case "helmet of unknown size" {
  clause = "15.12"
  as_built {
    head "driver" {
      top = ["0 mm", "0 mm", "900 mm"]
    }
    joint "P1" { at = ["-120 mm", "300 mm", "920 mm"] }
    joint "Q1" { at = ["-120 mm", "-300 mm", "920 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
  }
  answer = "not recorded"
  reason = "A bar behind and above, and no radius of the helmet."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "cage without a head in it" {
  clause = "15.12"
  as_built {
    not_fitted = ["head"]
    joint "P1" { at = ["0 mm", "300 mm", "962.7 mm"] }
    joint "Q1" { at = ["0 mm", "-300 mm", "962.7 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["P1", "Q1"]
      outside = "25.4 mm"
    }
  }
  answer = "does not apply"
  reason = "Nobody sits in the car: no head is fitted."
  source = "Formula SAE Rules 2026, V1.0"
  status = "confirmed"
}

worked_case "diagonal from foot to backstay joint" {
  clause = "15.13"
  as_built {
    joint "A" {
      at          = ["0 mm", "600 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "600 mm", "1100 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-900 mm", "500 mm", "300 mm"]
      mirrored_as = "F"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
    foot "1" {
      joint       = "A"
      mirrored_as = "2"
    }
    foot "3" {
      joint       = "E"
      mirrored_as = "4"
    }
    tube "7" {
      part    = "hoop diagonal"
      through = ["D", "B"]
    }
  }
  answer = "meets"
  reason = "Both ends are where they belong, 0 mm away."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "diagonal 100 mm from both" {
  clause = "15.13"
  as_built {
    joint "A" {
      at          = ["0 mm", "600 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "600 mm", "1100 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-900 mm", "500 mm", "300 mm"]
      mirrored_as = "F"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
    foot "1" {
      joint       = "A"
      mirrored_as = "2"
    }
    foot "3" {
      joint       = "E"
      mirrored_as = "4"
    }
    joint "G" { at = ["0 mm", "-600 mm", "100 mm"] }
    joint "H" { at = ["0 mm", "540 mm", "1020 mm"] }
    tube "7" {
      part    = "hoop diagonal"
      through = ["G", "H"]
    }
  }
  answer = "meets"
  reason = "100 mm up the leg from the foot, hypot(60, 80) = 100 mm inward and down from the joint: both on the limit."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "diagonal 101 mm up the leg" {
  clause = "15.13"
  as_built {
    joint "A" {
      at          = ["0 mm", "600 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "600 mm", "1100 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-900 mm", "500 mm", "300 mm"]
      mirrored_as = "F"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
    foot "1" {
      joint       = "A"
      mirrored_as = "2"
    }
    foot "3" {
      joint       = "E"
      mirrored_as = "4"
    }
    joint "G" { at = ["0 mm", "-600 mm", "101 mm"] }
    joint "H" { at = ["0 mm", "540 mm", "1020 mm"] }
    tube "7" {
      part    = "hoop diagonal"
      through = ["G", "H"]
    }
  }
  answer = "gap"
  reason = "1 mm too far from the foot."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "diagonal 100.1 mm from the backstay joint" {
  clause = "15.13"
  as_built {
    joint "A" {
      at          = ["0 mm", "600 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "600 mm", "1100 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-900 mm", "500 mm", "300 mm"]
      mirrored_as = "F"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
    foot "1" {
      joint       = "A"
      mirrored_as = "2"
    }
    foot "3" {
      joint       = "E"
      mirrored_as = "4"
    }
    joint "G" { at = ["0 mm", "-600 mm", "60 mm"] }
    joint "H" { at = ["0 mm", "540 mm", "1019.875 mm"] }
    tube "7" {
      part    = "hoop diagonal"
      through = ["G", "H"]
    }
  }
  answer = "gap"
  reason = "hypot(60, 80.125) = 100.10 mm."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "computed"
}

worked_case "diagonal 140 mm along the top bar" {
  clause = "15.13"
  as_built {
    joint "A" {
      at          = ["0 mm", "600 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "600 mm", "1100 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-900 mm", "500 mm", "300 mm"]
      mirrored_as = "F"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
    foot "1" {
      joint       = "A"
      mirrored_as = "2"
    }
    foot "3" {
      joint       = "E"
      mirrored_as = "4"
    }
    joint "G" { at = ["0 mm", "-600 mm", "0 mm"] }
    joint "H" { at = ["0 mm", "460 mm", "1100 mm"] }
    tube "7" {
      part    = "hoop diagonal"
      through = ["G", "H"]
    }
  }
  answer = "gap"
  reason = "140 mm from the joint of hoop and backstay."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "diagonal from one foot to the other" {
  clause = "15.13"
  as_built {
    joint "A" {
      at          = ["0 mm", "600 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "600 mm", "1100 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-900 mm", "500 mm", "300 mm"]
      mirrored_as = "F"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
    foot "1" {
      joint       = "A"
      mirrored_as = "2"
    }
    foot "3" {
      joint       = "E"
      mirrored_as = "4"
    }
    joint "G" { at = ["0 mm", "-600 mm", "0 mm"] }
    joint "H" { at = ["0 mm", "600 mm", "60 mm"] }
    tube "7" {
      part    = "hoop diagonal"
      through = ["G", "H"]
    }
  }
  answer = "gap"
  reason = "It reaches no joint of a backstay."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "diagonal between the backstays" {
  clause = "15.13"
  as_built {
    joint "A" {
      at          = ["0 mm", "600 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "600 mm", "1100 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-900 mm", "500 mm", "300 mm"]
      mirrored_as = "F"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
    foot "1" {
      joint       = "A"
      mirrored_as = "2"
    }
    foot "3" {
      joint       = "E"
      mirrored_as = "4"
    }
    tube "7" {
      part    = "hoop diagonal"
      through = ["C", "B"]
    }
  }
  answer = "gap"
  reason = "From one upper joint to the other: no foot is near."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "diagonal with a kink" {
  clause = "15.13"
  as_built {
    joint "A" {
      at          = ["0 mm", "600 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "600 mm", "1100 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-900 mm", "500 mm", "300 mm"]
      mirrored_as = "F"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
    foot "1" {
      joint       = "A"
      mirrored_as = "2"
    }
    foot "3" {
      joint       = "E"
      mirrored_as = "4"
    }
    joint "M" { at = ["60 mm", "0 mm", "550 mm"] }
    tube "7" {
      part    = "hoop diagonal"
      through = ["D", "M", "B"]
    }
  }
  answer = "gap"
  reason = "60 mm out of its line in the middle: it turns by 8.4 degrees there."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "hoop without a diagonal" {
  clause = "15.13"
  as_built {
    joint "A" {
      at          = ["0 mm", "600 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "600 mm", "1100 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-900 mm", "500 mm", "300 mm"]
      mirrored_as = "F"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
    foot "1" {
      joint       = "A"
      mirrored_as = "2"
    }
    foot "3" {
      joint       = "E"
      mirrored_as = "4"
    }
  }
  answer = "gap"
  reason = "There has to be one."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "diagonal of which one end has no height" {
  clause = "15.13"
  as_built {
    joint "A" {
      at          = ["0 mm", "600 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "600 mm", "1100 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-900 mm", "500 mm", "300 mm"]
      mirrored_as = "F"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
    foot "1" {
      joint       = "A"
      mirrored_as = "2"
    }
    foot "3" {
      joint       = "E"
      mirrored_as = "4"
    }
    joint "H" {
      x = "0 mm"
      y = "600 mm"
    }
    tube "7" {
      part    = "hoop diagonal"
      through = ["D", "H"]
    }
  }
  answer = "not recorded"
  reason = "Whether the upper end is near the backstay hangs on its z."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "diagonal near feet that are not placed" {
  clause = "15.13"
  as_built {
    joint "A" {
      at          = ["0 mm", "600 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "600 mm", "1100 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-900 mm", "500 mm", "300 mm"]
      mirrored_as = "F"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
    joint "G" { at = ["0 mm", "-600 mm", "60 mm"] }
    joint "H" { at = ["0 mm", "600 mm", "1100 mm"] }
    tube "7" {
      part    = "hoop diagonal"
      through = ["G", "H"]
    }
    foot "1" {}
    foot "2" {}
  }
  answer = "not recorded"
  reason = "The feet are there, but nothing says at which joints."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "diagonal known by its image" {
  clause  = "15.13"
  subject = "8"
  as_built {
    joint "A" {
      at          = ["0 mm", "600 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "600 mm", "1100 mm"]
      mirrored_as = "C"
    }
    joint "E" {
      at          = ["-900 mm", "500 mm", "300 mm"]
      mirrored_as = "F"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    tube "5" {
      part        = "backstay"
      through     = ["B", "E"]
      mirrored_as = "6"
    }
    foot "1" {
      joint       = "A"
      mirrored_as = "2"
    }
    foot "3" {
      joint       = "E"
      mirrored_as = "4"
    }
    joint "G" {
      at          = ["0 mm", "600 mm", "40 mm"]
      mirrored_as = "K"
    }
    joint "H" {
      at          = ["0 mm", "-550 mm", "1100 mm"]
      mirrored_as = "L"
    }
    tube "7" {
      part        = "hoop diagonal"
      through     = ["G", "H"]
      mirrored_as = "8"
    }
  }
  answer = "meets"
  reason = "The image of one from the left foot to 50 mm inward of the right joint."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3"
  status = "confirmed"
}

worked_case "140 mm from axis to axis, 40 mm tubes" {
  clause = "15.14"
  as_built {
    joint "D" { at = ["0 mm", "-600 mm", "0 mm"] }
    joint "C" { at = ["0 mm", "-600 mm", "1100 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["D", "C"]
      outside = "40 mm"
    }
    foot "2" {
      joint = "D"
    }
    joint "G" { at = ["0 mm", "-600 mm", "140 mm"] }
    joint "H" { at = ["0 mm", "600 mm", "1100 mm"] }
    tube "7" {
      part    = "hoop diagonal"
      through = ["G", "H"]
      outside = "40 mm"
    }
  }
  answer = "meets"
  reason = "140 - 20 - 20 = 100 mm, on the limit."
  source = "For comparison with MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3, which does not say from where the 100 mm are taken"
  status = "computed"
}

worked_case "141 mm from axis to axis, 40 mm tubes" {
  clause = "15.14"
  as_built {
    joint "D" { at = ["0 mm", "-600 mm", "0 mm"] }
    joint "C" { at = ["0 mm", "-600 mm", "1100 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["D", "C"]
      outside = "40 mm"
    }
    foot "2" {
      joint = "D"
    }
    joint "G" { at = ["0 mm", "-600 mm", "141 mm"] }
    joint "H" { at = ["0 mm", "600 mm", "1100 mm"] }
    tube "7" {
      part    = "hoop diagonal"
      through = ["G", "H"]
      outside = "40 mm"
    }
  }
  answer = "gap"
  reason = "141 - 20 - 20 = 101 mm."
  source = "For comparison with MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3, which does not say from where the 100 mm are taken"
  status = "computed"
}

worked_case "140 mm from axis to axis, thinner diagonal" {
  clause = "15.14"
  as_built {
    joint "D" { at = ["0 mm", "-600 mm", "0 mm"] }
    joint "C" { at = ["0 mm", "-600 mm", "1100 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["D", "C"]
      outside = "40 mm"
    }
    foot "2" {
      joint = "D"
    }
    joint "G" { at = ["0 mm", "-600 mm", "140 mm"] }
    joint "H" { at = ["0 mm", "600 mm", "1100 mm"] }
    tube "7" {
      part    = "hoop diagonal"
      through = ["G", "H"]
      outside = "38 mm"
    }
  }
  answer = "gap"
  reason = "140 - 20 - 19 = 101 mm."
  source = "For comparison with MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3, which does not say from where the 100 mm are taken"
  status = "computed"
}

worked_case "30 mm from axis to axis" {
  clause = "15.14"
  as_built {
    joint "D" { at = ["0 mm", "-600 mm", "0 mm"] }
    joint "C" { at = ["0 mm", "-600 mm", "1100 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["D", "C"]
      outside = "40 mm"
    }
    foot "2" {
      joint = "D"
    }
    joint "G" { at = ["0 mm", "-600 mm", "30 mm"] }
    joint "H" { at = ["0 mm", "600 mm", "1100 mm"] }
    tube "7" {
      part    = "hoop diagonal"
      through = ["G", "H"]
      outside = "40 mm"
    }
  }
  answer = "meets"
  reason = "The tubes overlap: nothing is between them."
  source = "For comparison with MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3, which does not say from where the 100 mm are taken"
  status = "computed"
}

worked_case "140 mm from axis to axis, leg not measured" {
  clause = "15.14"
  as_built {
    joint "D" { at = ["0 mm", "-600 mm", "0 mm"] }
    joint "C" { at = ["0 mm", "-600 mm", "1100 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["D", "C"]
    }
    foot "2" {
      joint = "D"
    }
    joint "G" { at = ["0 mm", "-600 mm", "140 mm"] }
    joint "H" { at = ["0 mm", "600 mm", "1100 mm"] }
    tube "7" {
      part    = "hoop diagonal"
      through = ["G", "H"]
      outside = "40 mm"
    }
  }
  answer = "not recorded"
  reason = "How thick the leg is decides."
  source = "For comparison with MSUK NCR 2026, Ch. 7 App. 3 Art. 9.1 to 9.3, which does not say from where the 100 mm are taken"
  status = "computed"
}

worked_case "reinforcement 80 mm over the door bar's junction" {
  clause = "15.15"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "J" { at = ["0 mm", "600 mm", "500 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "J", "B"]
    }
    joint "K" { at = ["-800 mm", "600 mm", "200 mm"] }
    tube "2" {
      part    = "door bar"
      through = ["J", "K"]
    }
    joint "L" { at = ["300 mm", "600 mm", "0 mm"] }
    joint "U" { at = ["0 mm", "600 mm", "580 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["L", "U"]
    }
  }
  answer = "meets"
  reason = "580 - 500 = 80 mm up the hoop."
  source = "MSA bulletin of 8 March 2011, K1.3.5(e)"
  status = "quoted by others"
}

worked_case "reinforcement 99 mm over the junction" {
  clause = "15.15"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "J" { at = ["0 mm", "600 mm", "500 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "J", "B"]
    }
    joint "K" { at = ["-800 mm", "600 mm", "200 mm"] }
    tube "2" {
      part    = "door bar"
      through = ["J", "K"]
    }
    joint "L" { at = ["300 mm", "600 mm", "0 mm"] }
    joint "U" { at = ["0 mm", "600 mm", "599 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["L", "U"]
    }
  }
  answer = "meets"
  reason = "Less than 100 mm."
  source = "MSA bulletin of 8 March 2011, K1.3.5(e)"
  status = "quoted by others"
}

worked_case "reinforcement on 100 mm" {
  clause = "15.15"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "J" { at = ["0 mm", "600 mm", "500 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "J", "B"]
    }
    joint "K" { at = ["-800 mm", "600 mm", "200 mm"] }
    tube "2" {
      part    = "door bar"
      through = ["J", "K"]
    }
    joint "L" { at = ["300 mm", "600 mm", "0 mm"] }
    joint "U" { at = ["0 mm", "600 mm", "600 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["L", "U"]
    }
  }
  answer = "gap"
  reason = "Exactly 100 mm, and the text asks for less."
  source = "MSA bulletin of 8 March 2011, K1.3.5(e)"
  status = "quoted by others"
}

worked_case "reinforcement 100 mm away in space" {
  clause = "15.15"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "J" { at = ["0 mm", "600 mm", "500 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "J", "B"]
    }
    joint "K" { at = ["-800 mm", "600 mm", "200 mm"] }
    tube "2" {
      part    = "door bar"
      through = ["J", "K"]
    }
    joint "L" { at = ["300 mm", "600 mm", "0 mm"] }
    joint "U" { at = ["60 mm", "600 mm", "580 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["L", "U"]
    }
  }
  answer = "gap"
  reason = "hypot(60, 80) = 100 mm."
  source = "MSA bulletin of 8 March 2011, K1.3.5(e)"
  status = "computed"
}

worked_case "reinforcement written from its upper end" {
  clause = "15.15"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "J" { at = ["0 mm", "600 mm", "500 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "J", "B"]
    }
    joint "K" { at = ["-800 mm", "600 mm", "200 mm"] }
    tube "2" {
      part    = "door bar"
      through = ["J", "K"]
    }
    joint "L" { at = ["300 mm", "600 mm", "0 mm"] }
    joint "U" { at = ["0 mm", "600 mm", "590 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["U", "L"]
    }
  }
  answer = "meets"
  reason = "Which end is the upper one goes by height: 590 - 500 = 90 mm."
  source = "MSA bulletin of 8 March 2011, K1.3.5(e)"
  status = "quoted by others"
}

worked_case "reinforcement at the junction" {
  clause = "15.15"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "J" { at = ["0 mm", "600 mm", "500 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "J", "B"]
    }
    joint "K" { at = ["-800 mm", "600 mm", "200 mm"] }
    tube "2" {
      part    = "door bar"
      through = ["J", "K"]
    }
    joint "L" { at = ["300 mm", "600 mm", "0 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["L", "J"]
    }
  }
  answer = "meets"
  reason = "It ends where hoop and door bar meet."
  source = "MSA bulletin of 8 March 2011, K1.3.5(e)"
  status = "quoted by others"
}

worked_case "reinforcement 120 mm under the junction" {
  clause = "15.15"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "J" { at = ["0 mm", "600 mm", "500 mm"] }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "J", "B"]
    }
    joint "K" { at = ["-800 mm", "600 mm", "200 mm"] }
    tube "2" {
      part    = "door bar"
      through = ["J", "K"]
    }
    joint "L" { at = ["300 mm", "600 mm", "0 mm"] }
    joint "U" { at = ["0 mm", "600 mm", "380 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["L", "U"]
    }
  }
  answer = "gap"
  reason = "500 - 380 = 120 mm."
  source = "MSA bulletin of 8 March 2011, K1.3.5(e)"
  status = "quoted by others"
}

worked_case "reinforcement, junction not placed" {
  clause = "15.15"
  as_built {
    joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "J" {
      x = "0 mm"
      y = "600 mm"
    }
    joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
    tube "1" {
      part    = "front hoop"
      through = ["A", "J", "B"]
    }
    joint "K" { at = ["-800 mm", "600 mm", "200 mm"] }
    tube "2" {
      part    = "door bar"
      through = ["J", "K"]
    }
    joint "L" { at = ["300 mm", "600 mm", "0 mm"] }
    joint "U" { at = ["0 mm", "600 mm", "580 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["L", "U"]
    }
  }
  answer = "not recorded"
  reason = "The junction has no z."
  source = "MSA bulletin of 8 March 2011, K1.3.5(e)"
  status = "quoted by others"
}

worked_case "reinforcement, hoop's joints not known" {
  clause = "15.15"
  as_built {
    joint "J" { at = ["0 mm", "600 mm", "500 mm"] }
    joint "K" { at = ["-800 mm", "600 mm", "200 mm"] }
    tube "1" {
      part = "front hoop"
    }
    tube "2" {
      part    = "door bar"
      through = ["J", "K"]
    }
    joint "L" { at = ["300 mm", "600 mm", "0 mm"] }
    joint "U" { at = ["0 mm", "600 mm", "580 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["L", "U"]
    }
  }
  answer = "not recorded"
  reason = "Nothing says which joints the front hoop goes through."
  source = "MSA bulletin of 8 March 2011, K1.3.5(e)"
  status = "quoted by others"
}

worked_case "reinforcement that turns by 19.9 degrees" {
  clause = "15.16"
  as_built {
    joint "L" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "M" { at = ["0 mm", "600 mm", "500 mm"] }
    joint "U" { at = ["-181 mm", "600 mm", "1000 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["L", "M", "U"]
    }
  }
  answer = "meets"
  reason = "atan2(181, 500) = 19.900 deg."
  source = "FIA Appendix J, Art. 253-8.3.2"
  status = "from memory"
}

worked_case "reinforcement that turns by 20 degrees" {
  clause = "15.16"
  as_built {
    joint "L" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "M" { at = ["0 mm", "600 mm", "500 mm"] }
    joint "U" { at = ["-181.985117133 mm", "600 mm", "1000 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["L", "M", "U"]
    }
  }
  answer = "meets"
  reason = "500 tan 20 deg = 181.985117133 mm: on the limit."
  source = "FIA Appendix J, Art. 253-8.3.2"
  status = "from memory"
}

worked_case "reinforcement that turns by 20.002 degrees" {
  clause = "15.16"
  as_built {
    joint "L" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "M" { at = ["0 mm", "600 mm", "500 mm"] }
    joint "U" { at = ["-182 mm", "600 mm", "1000 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["L", "M", "U"]
    }
  }
  answer = "gap"
  reason = "atan2(182, 500) = 20.002 deg."
  source = "FIA Appendix J, Art. 253-8.3.2"
  status = "from memory"
}

worked_case "reinforcement without a bend" {
  clause = "15.16"
  as_built {
    joint "L" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "U" { at = ["-300 mm", "600 mm", "1000 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["L", "U"]
    }
  }
  answer = "meets"
  reason = "Straight from joint to joint."
  source = "FIA Appendix J, Art. 253-8.3.2"
  status = "from memory"
}

worked_case "reinforcement of which the bend is not placed" {
  clause = "15.16"
  as_built {
    joint "L" { at = ["0 mm", "600 mm", "0 mm"] }
    joint "M" {
      y = "600 mm"
      z = "500 mm"
    }
    joint "U" { at = ["-150 mm", "600 mm", "1000 mm"] }
    tube "3" {
      part    = "windscreen pillar reinforcement"
      through = ["L", "M", "U"]
    }
  }
  answer = "not recorded"
  reason = "The inner joint has no x."
  source = "FIA Appendix J, Art. 253-8.3.2"
  status = "from memory"
}

worked_case "two joints" {
  clause = "15.17"
  as_built {
    joint "A" { at = ["0 mm", "500 mm", "0 mm"] }
    joint "B" { at = ["-580 mm", "500 mm", "1000 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["A", "B"]
    }
  }
  answer = "meets"
  reason = "From one to the other there is nothing but a straight."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1 and 9.1 to 9.3"
  status = "confirmed"
}

worked_case "three joints in one line in space" {
  clause = "15.17"
  as_built {
    joint "A" { at = ["0 mm", "500 mm", "1000 mm"] }
    joint "M" { at = ["-290 mm", "450 mm", "500 mm"] }
    joint "B" { at = ["-580 mm", "400 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["A", "M", "B"]
    }
  }
  answer = "meets"
  reason = "(-290, 450, 500) is the middle of (0, 500, 1000) and (-580, 400, 0)."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1 and 9.1 to 9.3"
  status = "confirmed"
}

worked_case "1 mm off its line over a metre" {
  clause = "15.17"
  as_built {
    joint "A" { at = ["0 mm", "500 mm", "0 mm"] }
    joint "M" { at = ["1 mm", "500 mm", "500 mm"] }
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["A", "M", "B"]
    }
  }
  answer = "meets"
  reason = "2 atan2(1, 500) = 0.23 deg: what a mill delivers as straight, up to half a degree."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1 and 9.1 to 9.3"
  status = "computed"
}

worked_case "4 mm off its line over a metre" {
  clause = "15.17"
  as_built {
    joint "A" { at = ["0 mm", "500 mm", "0 mm"] }
    joint "M" { at = ["4 mm", "500 mm", "500 mm"] }
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["A", "M", "B"]
    }
  }
  answer = "gap"
  reason = "2 atan2(4, 500) = 0.92 deg: a bend."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1 and 9.1 to 9.3"
  status = "computed"
}

worked_case "40 mm off its line over a metre" {
  clause = "15.17"
  as_built {
    joint "A" { at = ["0 mm", "500 mm", "0 mm"] }
    joint "M" { at = ["40 mm", "500 mm", "500 mm"] }
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["A", "M", "B"]
    }
  }
  answer = "gap"
  reason = "2 atan2(40, 500) = 9.15 deg."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1 and 9.1 to 9.3"
  status = "confirmed"
}

worked_case "middle joint without a place" {
  clause = "15.17"
  as_built {
    joint "A" { at = ["0 mm", "500 mm", "0 mm"] }
    joint "M" {}
    joint "B" { at = ["0 mm", "500 mm", "1000 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["A", "M", "B"]
    }
  }
  answer = "not recorded"
  reason = "Whether the tube turns there is not known."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 8.1 and 9.1 to 9.3"
  status = "confirmed"
}

worked_case "feet under both legs" {
  clause  = "15.18"
  subject = "1"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    foot "1" {
      joint = "A"
    }
    foot "2" {
      joint = "D"
    }
  }
  answer = "meets"
  reason = "One at each end of the hoop."
  source = "FIA Appendix J, Art. 253-8.3.2"
  status = "from memory"
}

worked_case "foot under one leg" {
  clause  = "15.18"
  subject = "1"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    foot "1" {
      joint = "A"
    }
  }
  answer = "gap"
  reason = "The right leg ends 400 mm from the left one's foot."
  source = "FIA Appendix J, Art. 253-8.3.2"
  status = "from memory"
}

worked_case "foot 1 mm beside the leg" {
  clause  = "15.18"
  subject = "1"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "X" { at = ["0 mm", "201 mm", "0 mm"] }
    foot "1" {
      joint = "X"
    }
    foot "2" {
      joint = "D"
    }
  }
  answer = "gap"
  reason = "It stands at a joint of its own, 1 mm away."
  source = "FIA Appendix J, Art. 253-8.3.2"
  status = "from memory"
}

worked_case "foot under a backstay" {
  clause  = "15.18"
  subject = "5"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    joint "E" { at = ["-580 mm", "200 mm", "0 mm"] }
    tube "5" {
      part    = "backstay"
      through = ["B", "E"]
    }
    foot "3" {
      joint = "E"
    }
  }
  answer = "meets"
  reason = "One end needs it, the other is at the hoop."
  source = "FIA Appendix J, Art. 253-8.3.2"
  status = "from memory"
}

worked_case "feet of both sides, written once" {
  clause  = "15.18"
  subject = "1"
  as_built {
    joint "A" {
      at          = ["0 mm", "200 mm", "0 mm"]
      mirrored_as = "D"
    }
    joint "B" {
      at          = ["0 mm", "200 mm", "1000 mm"]
      mirrored_as = "C"
    }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    foot "1" {
      joint       = "A"
      mirrored_as = "2"
    }
  }
  answer = "meets"
  reason = "The right foot is the image of the left one."
  source = "FIA Appendix J, Art. 253-8.3.2"
  status = "from memory"
}

worked_case "feet that name no joint" {
  clause  = "15.18"
  subject = "1"
  as_built {
    joint "A" { at = ["0 mm", "200 mm", "0 mm"] }
    joint "B" { at = ["0 mm", "200 mm", "1000 mm"] }
    joint "C" { at = ["0 mm", "-200 mm", "1000 mm"] }
    joint "D" { at = ["0 mm", "-200 mm", "0 mm"] }
    tube "1" {
      part    = "main hoop"
      through = ["A", "B", "C", "D"]
    }
    foot "1" {}
    foot "2" {}
  }
  answer = "not recorded"
  reason = "There are two, somewhere."
  source = "FIA Appendix J, Art. 253-8.3.2"
  status = "from memory"
}
