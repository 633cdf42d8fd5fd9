# Bends, gussets, inspection holes and padding.

table "padding_marks" {
  columns = { standard = "padding.standard" }
  rows    = [["FIA 8857-2001"], ["SFI 45.1"]]
}

chapter "3" {
  title = "Bends, gussets, holes and padding"

  clause "3.1" {
    title   = "Bend radius"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-8.3.3"
    across  = "tube in cage.tubes"
    where   = "tube.bends > 0"
    demand  = "tube.bend_radius >= 3 * tube.outside and tube.bending == 'cold'"
  }

  clause "3.2" {
    title   = "Ovality, lesser diameter to greater"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-8.3.3"
    across  = "tube in cage.tubes"
    where   = "tube.bends > 0"
    demand  = "tube.least_diameter_at_bend / tube.greatest_diameter_at_bend >= 0.9"
  }

  clause "3.3" {
    title   = "Ovality, difference to nominal"
    concern = "safety"
    text_at = "The other common way to state ovality, for comparison with Art. 253-8.3.3"
    across  = "tube in cage.tubes"
    where   = "tube.bends > 0"
    demand  = "(tube.greatest_diameter_at_bend - tube.least_diameter_at_bend) / tube.ordered_outside <= 10*percent"
  }

  clause "3.4" {
    title   = "Gusset of bent sheet"
    concern = "safety"
    text_at = "NASA Rally Sport GRR 2012, App. B, with FIA drawing 253-34"
    across  = "gusset in cage.gussets"
    where   = "gusset.form == 'bent sheet'"
    demand  = "gusset.thickness >= .040*inch and gusset.unwelded_side >= 3 * gusset.joined_outside"
  }

  clause "3.5" {
    title   = "Gusset of tube"
    concern = "safety"
    text_at = "NASA Rally Sport GRR 2012, App. B, with FIA drawing 253-34"
    across  = "gusset in cage.gussets"
    where   = "gusset.form == 'tube'"
    demand  = <<-FORMULA
  gusset.tube_outside >= 1*inch and gusset.thickness >= .083*inch
  and gusset.unwelded_side >= 3 * gusset.joined_outside
FORMULA
  }

  clause "3.6" {
    title   = "Gusset of flat plates"
    concern = "safety"
    text_at = "NASA Rally Sport GRR 2012, App. B, with FIA drawing 253-34"
    across  = "gusset in cage.gussets"
    where   = "gusset.form == 'flat plate'"
    demand  = "gusset.thickness >= gusset.joined_wall and gusset.unwelded_side >= 3 * gusset.joined_outside"
  }

  clause "3.7" {
    title   = "Inspection hole"
    concern = "safety"
    text_at = "SCCA GCR, roll-cage section"
    across  = "hole in cage.inspection_holes"
    demand  = "hole.diameter >= .1875*inch"
  }

  clause "3.8" {
    title   = "Inspection hole away from welds and bends"
    concern = "safety"
    text_at = "Open-road event rules, safety-cage section"
    across  = "hole in cage.inspection_holes"
    demand  = <<-FORMULA
  hole.diameter >= .1875*inch and hole.distance_from_weld >= 3*inch
  and (hole.distance_from_bend ?? (3*inch)) >= 3*inch
FORMULA
  }

  clause "3.9" {
    title   = "Inspection hole of a speedway car"
    concern = "safety"
    text_at = "NZ Speedway rulebook 2010, T11-16-7"
    across  = "hole in cage.inspection_holes"
    demand  = "hole.diameter >= 6*mm"
  }

  clause "3.10" {
    title   = "Padding where helmets can touch"
    concern = "safety"
    text_at = "FIA notice on roll-cage padding, in force from 24 April 2018"
    across  = "padding in cage.paddings"
    demand  = "padding.standard == 'FIA 8857-2001'"
  }

  clause "3.11" {
    title   = "Padding, either standard"
    concern = "safety"
    text_at = "IHRA Australia, drag racing rules"
    across  = "padding in cage.paddings"
    demand  = "any(table.padding_marks, .standard == padding.standard)"
  }

  clause "3.12" {
    title   = "Padding of a drift car"
    concern = "safety"
    text_at = "Formula Drift Pro-Am rules 2010, 2.3.1 B"
    across  = "padding in cage.paddings"
    demand  = "padding.thickness >= .5*inch and padding.standard == 'SFI 45.1'"
  }

  clause "3.13" {
    title   = "Padding near the helmet, recommended"
    concern = "advice"
    text_at = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
    across  = "tube in cage.tubes"
    where   = "tube.helmet_distance <= 150*mm"
    demand  = "any(cage.paddings, .covered_length > 0)"
  }
}

worked_case "45 mm tube bent to 135 mm" {
  clause = "3.1"
  as_built {
    tube "1" {
      bends       = 1
      outside     = "45 mm"
      bend_radius = "135 mm"
      bending     = "cold"
    }
  }
  answer = "meets"
  reason = "Three times 45 mm, exactly."
  source = "FIA Appendix J, Art. 253-8.3.3"
  status = "quoted by others"
}

worked_case "45 mm tube bent to 134 mm" {
  clause = "3.1"
  as_built {
    tube "1" {
      bends       = 1
      outside     = "45 mm"
      bend_radius = "134 mm"
      bending     = "cold"
    }
  }
  answer = "gap"
  reason = "Three times 45 mm is 135 mm."
  source = "FIA Appendix J, Art. 253-8.3.3"
  status = "quoted by others"
}

worked_case "1.75 in tube bent to 5.25 in" {
  clause = "3.1"
  as_built {
    tube "1" {
      bends       = 1
      outside     = "1.75 in"
      bend_radius = "5.25 in"
      bending     = "cold"
    }
  }
  answer = "meets"
  reason = "Three times 1.75 in, exactly."
  source = "FIA Appendix J, Art. 253-8.3.3"
  status = "computed"
}

worked_case "1.75 in tube bent to 133.35 mm" {
  clause = "3.1"
  as_built {
    tube "1" {
      bends       = 1
      outside     = "1.75 in"
      bend_radius = "133.35 mm"
      bending     = "cold"
    }
  }
  answer = "meets"
  reason = "133.35 mm is 5.25 in, exactly."
  source = "FIA Appendix J, Art. 253-8.3.3"
  status = "computed"
}

worked_case "40 mm tube bent hot" {
  clause = "3.1"
  as_built {
    tube "1" {
      bends       = 1
      outside     = "40 mm"
      bend_radius = "120 mm"
      bending     = "hot"
    }
  }
  answer = "gap"
  reason = "Cold worked."
  source = "FIA Appendix J, Art. 253-8.3.3"
  status = "quoted by others"
}

worked_case "straight tube" {
  clause = "3.1"
  as_built {
    tube "1" {
      bends   = 0
      outside = "45 mm"
    }
  }
  answer = "does not apply"
  reason = "There is no bend."
  source = "FIA Appendix J, Art. 253-8.3.3"
  status = "quoted by others"
}

worked_case "ovality 42.0 to 46.0" {
  clause = "3.2"
  as_built {
    tube "1" {
      bends                     = 1
      least_diameter_at_bend    = "42.0 mm"
      greatest_diameter_at_bend = "46.0 mm"
      ordered_outside           = "45 mm"
    }
  }
  answer = "meets"
  reason = "42.0/46.0 is 0.913."
  source = "FIA Appendix J, Art. 253-8.3.3"
  status = "computed"
}

worked_case "ovality exactly 0.9" {
  clause = "3.2"
  as_built {
    tube "1" {
      bends                     = 1
      least_diameter_at_bend    = "41.4 mm"
      greatest_diameter_at_bend = "46.0 mm"
      ordered_outside           = "45 mm"
    }
  }
  answer = "meets"
  reason = "41.4/46.0 is 0.9."
  source = "FIA Appendix J, Art. 253-8.3.3"
  status = "computed"
}

worked_case "ovality 0.899" {
  clause = "3.2"
  as_built {
    tube "1" {
      bends                     = 1
      least_diameter_at_bend    = "41.3 mm"
      greatest_diameter_at_bend = "46.0 mm"
      ordered_outside           = "45 mm"
    }
  }
  answer = "gap"
  reason = "41.3/46.0 is 0.898."
  source = "FIA Appendix J, Art. 253-8.3.3"
  status = "computed"
}

worked_case "ovality 40.4 to 44.9 by the ratio" {
  clause = "3.2"
  as_built {
    tube "1" {
      bends                     = 1
      least_diameter_at_bend    = "40.4 mm"
      greatest_diameter_at_bend = "44.9 mm"
      ordered_outside           = "45 mm"
    }
  }
  answer = "gap"
  reason = "40.4/44.9 is 0.8998."
  source = "FIA Appendix J, Art. 253-8.3.3"
  status = "computed"
}

worked_case "ovality 42.0 to 46.0 by the difference" {
  clause = "3.3"
  as_built {
    tube "1" {
      bends                     = 1
      least_diameter_at_bend    = "42.0 mm"
      greatest_diameter_at_bend = "46.0 mm"
      ordered_outside           = "45 mm"
    }
  }
  answer = "meets"
  reason = "4.0/45 is 8.9 %."
  source = "The other common way to state ovality, for comparison with Art. 253-8.3.3"
  status = "computed"
}

worked_case "ovality 40.4 to 44.9 by the difference" {
  clause = "3.3"
  as_built {
    tube "1" {
      bends                     = 1
      least_diameter_at_bend    = "40.4 mm"
      greatest_diameter_at_bend = "44.9 mm"
      ordered_outside           = "45 mm"
    }
  }
  answer = "meets"
  reason = "4.5/45 is exactly 10 %: the two ways do not judge the same tube alike."
  source = "The other common way to state ovality, for comparison with Art. 253-8.3.3"
  status = "computed"
}

worked_case "ovality 43.2 to 47.9 by the ratio" {
  clause = "3.2"
  as_built {
    tube "1" {
      bends                     = 1
      least_diameter_at_bend    = "43.2 mm"
      greatest_diameter_at_bend = "47.9 mm"
      ordered_outside           = "45 mm"
    }
  }
  answer = "meets"
  reason = "43.2/47.9 is 0.902."
  source = "FIA Appendix J, Art. 253-8.3.3"
  status = "computed"
}

worked_case "ovality 43.2 to 47.9 by the difference" {
  clause = "3.3"
  as_built {
    tube "1" {
      bends                     = 1
      least_diameter_at_bend    = "43.2 mm"
      greatest_diameter_at_bend = "47.9 mm"
      ordered_outside           = "45 mm"
    }
  }
  answer = "gap"
  reason = "4.7/45 is 10.4 %."
  source = "The other common way to state ovality, for comparison with Art. 253-8.3.3"
  status = "computed"
}

worked_case "sheet gusset of 1.016 mm" {
  clause = "3.4"
  as_built {
    gusset "1" {
      form          = "bent sheet"
      thickness     = "1.016 mm"
      unwelded_side = "120 mm"
      club "Published figures" {
        joined_outside = "40 mm"
        joined_wall    = "2 mm"
      }
    }
  }
  answer = "meets"
  reason = ".040 in, and three times 40 mm."
  source = "NASA Rally Sport GRR 2012, App. B, with FIA drawing 253-34"
  status = "quoted by others"
}

worked_case "sheet gusset of 1.0 mm" {
  clause = "3.4"
  as_built {
    gusset "1" {
      form          = "bent sheet"
      thickness     = "1.0 mm"
      unwelded_side = "120 mm"
      club "Published figures" {
        joined_outside = "40 mm"
        joined_wall    = "2 mm"
      }
    }
  }
  answer = "gap"
  reason = "1.0 mm is printed beside .040 in, which is 1.016 mm."
  source = "NASA Rally Sport GRR 2012, App. B, with FIA drawing 253-34"
  status = "computed"
}

worked_case "sheet gusset with a short free side" {
  clause = "3.4"
  as_built {
    gusset "1" {
      form          = "bent sheet"
      thickness     = "1.2 mm"
      unwelded_side = "119 mm"
      club "Published figures" {
        joined_outside = "40 mm"
        joined_wall    = "2 mm"
      }
    }
  }
  answer = "gap"
  reason = "Three times 40 mm."
  source = "NASA Rally Sport GRR 2012, App. B, with FIA drawing 253-34"
  status = "quoted by others"
}

worked_case "tube gusset of 1 in x .083 in" {
  clause = "3.5"
  as_built {
    gusset "1" {
      form          = "tube"
      thickness     = ".083 in"
      unwelded_side = "4.5 in"
      tube_outside  = "1 in"
      club "Published figures" {
        joined_outside = "1.5 in"
        joined_wall    = "2 mm"
      }
    }
  }
  answer = "meets"
  reason = "1 in, .083 in, three times 1.5 in."
  source = "NASA Rally Sport GRR 2012, App. B, with FIA drawing 253-34"
  status = "quoted by others"
}

worked_case "tube gusset of 3/4 in" {
  clause = "3.5"
  as_built {
    gusset "1" {
      form          = "tube"
      thickness     = ".083 in"
      unwelded_side = "4.5 in"
      tube_outside  = "3/4 in"
      club "Published figures" {
        joined_outside = "1.5 in"
        joined_wall    = "2 mm"
      }
    }
  }
  answer = "gap"
  reason = "At least 1 in outside."
  source = "NASA Rally Sport GRR 2012, App. B, with FIA drawing 253-34"
  status = "quoted by others"
}

worked_case "plates as thick as the tube" {
  clause = "3.6"
  as_built {
    gusset "1" {
      form          = "flat plate"
      thickness     = "2 mm"
      unwelded_side = "120 mm"
      club "Published figures" {
        joined_outside = "40 mm"
        joined_wall    = "2 mm"
      }
    }
  }
  answer = "meets"
  reason = "Together as thick as the wall."
  source = "NASA Rally Sport GRR 2012, App. B, with FIA drawing 253-34"
  status = "quoted by others"
}

worked_case "plates thinner than the tube" {
  clause = "3.6"
  as_built {
    gusset "1" {
      form          = "flat plate"
      thickness     = "1.9 mm"
      unwelded_side = "120 mm"
      club "Published figures" {
        joined_outside = "40 mm"
        joined_wall    = "2 mm"
      }
    }
  }
  answer = "gap"
  reason = "Together as thick as the wall."
  source = "NASA Rally Sport GRR 2012, App. B, with FIA drawing 253-34"
  status = "quoted by others"
}

worked_case "inspection hole of 3/16 in" {
  clause = "3.7"
  as_built {
    inspection_hole "1" {
      diameter           = "3/16 in"
      distance_from_weld = "80 mm"
      distance_from_bend = "none"
    }
  }
  answer = "meets"
  reason = "3/16 in."
  source = "SCCA GCR, roll-cage section"
  status = "quoted by others"
}

worked_case "inspection hole of 4.7 mm" {
  clause = "3.7"
  as_built {
    inspection_hole "1" {
      diameter           = "4.7 mm"
      distance_from_weld = "80 mm"
      distance_from_bend = "none"
    }
  }
  answer = "gap"
  reason = "3/16 in is 4.76 mm."
  source = "SCCA GCR, roll-cage section"
  status = "computed"
}

worked_case "inspection hole 3 in from the weld" {
  clause = "3.8"
  as_built {
    inspection_hole "1" {
      diameter           = "5 mm"
      distance_from_weld = "3 in"
      distance_from_bend = "3 in"
    }
  }
  answer = "meets"
  reason = "At least 3 in from weld and bend."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "inspection hole 3 in from the weld of a straight tube" {
  clause = "3.8"
  as_built {
    inspection_hole "1" {
      diameter           = "5 mm"
      distance_from_weld = "3 in"
      distance_from_bend = "none"
    }
  }
  answer = "meets"
  reason = "There is no bend to be away from."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "inspection hole 2 in from the bend" {
  clause = "3.8"
  as_built {
    inspection_hole "1" {
      diameter           = "5 mm"
      distance_from_weld = "4 in"
      distance_from_bend = "2 in"
    }
  }
  answer = "gap"
  reason = "At least 3 in from a bend."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "inspection hole of 6 mm" {
  clause = "3.9"
  as_built {
    inspection_hole "1" {
      diameter           = "6 mm"
      distance_from_weld = "80 mm"
      distance_from_bend = "none"
    }
  }
  answer = "meets"
  reason = "6 mm."
  source = "NZ Speedway rulebook 2010, T11-16-7"
  status = "confirmed"
}

worked_case "inspection hole of 3/16 in on a speedway car" {
  clause = "3.9"
  as_built {
    inspection_hole "1" {
      diameter           = "3/16 in"
      distance_from_weld = "80 mm"
      distance_from_bend = "none"
    }
  }
  answer = "gap"
  reason = "6 mm."
  source = "NZ Speedway rulebook 2010, T11-16-7"
  status = "confirmed"
}

worked_case "padding of 8857-2001" {
  clause = "3.10"
  as_built {
    padding "1" {
      standard  = "8857-2001"
      thickness = "15 mm"
    }
  }
  answer = "meets"
  reason = "The standard of the notice."
  source = "FIA notice on roll-cage padding, in force from 24 April 2018"
  status = "quoted by others"
}

worked_case "padding of SFI 45.1 under the notice" {
  clause = "3.10"
  as_built {
    padding "1" {
      standard  = "SFI 45.1"
      thickness = "15 mm"
    }
  }
  answer = "gap"
  reason = "FIA 8857-2001 is asked for."
  source = "FIA notice on roll-cage padding, in force from 24 April 2018"
  status = "quoted by others"
}

worked_case "padding of SFI 45.1 where either will do" {
  clause = "3.11"
  as_built {
    padding "1" {
      standard  = "SFI 45.1"
      thickness = "15 mm"
    }
  }
  answer = "meets"
  reason = "FIA 8857-2001 or SFI 45.1."
  source = "IHRA Australia, drag racing rules"
  status = "quoted by others"
}

worked_case "soft foam where either will do" {
  clause = "3.11"
  as_built {
    padding "1" {
      standard  = "pipe lagging"
      thickness = "15 mm"
    }
  }
  answer = "gap"
  reason = "FIA 8857-2001 or SFI 45.1."
  source = "IHRA Australia, drag racing rules"
  status = "quoted by others"
}

worked_case "padding of half an inch" {
  clause = "3.12"
  as_built {
    padding "1" {
      standard  = "SFI 45.1"
      thickness = "12.7 mm"
    }
  }
  answer = "meets"
  reason = "1/2 in is 12.7 mm."
  source = "Formula Drift Pro-Am rules 2010, 2.3.1 B"
  status = "quoted by others"
}

worked_case "padding of 12 mm" {
  clause = "3.12"
  as_built {
    padding "1" {
      standard  = "SFI 45.1"
      thickness = "12 mm"
    }
  }
  answer = "gap"
  reason = "1/2 in is 12.7 mm."
  source = "Formula Drift Pro-Am rules 2010, 2.3.1 B"
  status = "quoted by others"
}

worked_case "padded tube 150 mm from the helmet" {
  clause = "3.13"
  as_built {
    tube "1" {
      helmet_distance = "150 mm"
    }
    padding "1" {
      covered_length = "600 mm"
    }
  }
  answer = "meets"
  reason = "Tubes within 150 mm are to be padded."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
  status = "confirmed"
}

worked_case "bare tube 150 mm from the helmet" {
  clause = "3.13"
  as_built {
    tube "1" {
      helmet_distance = "150 mm"
    }
    not_fitted = ["padding"]
  }
  answer = "gap"
  reason = "Tubes within 150 mm are to be padded: advice."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
  status = "confirmed"
}

worked_case "bare tube 151 mm from the helmet" {
  clause = "3.13"
  as_built {
    tube "1" {
      helmet_distance = "151 mm"
    }
    not_fitted = ["padding"]
  }
  answer = "does not apply"
  reason = "It is farther away than 150 mm."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 16.2"
  status = "confirmed"
}

worked_case "ovality of 10.2 % by the difference" {
  clause = "3.3"
  as_built {
    tube "1" {
      bends                     = 1
      least_diameter_at_bend    = "42.0 mm"
      greatest_diameter_at_bend = "46.6 mm"
      ordered_outside           = "45 mm"
    }
  }
  answer = "gap"
  reason = "4.6/45 is 10.2 %."
  source = "The other common way to state ovality, for comparison with Art. 253-8.3.3"
  status = "computed"
}

worked_case "tube gusset with a thin wall" {
  clause = "3.5"
  as_built {
    gusset "1" {
      form          = "tube"
      thickness     = ".082 in"
      unwelded_side = "4.5 in"
      tube_outside  = "1 in"
      club "Published figures" {
        joined_outside = "1.5 in"
        joined_wall    = "2 mm"
      }
    }
  }
  answer = "gap"
  reason = ".083 in."
  source = "NASA Rally Sport GRR 2012, App. B, with FIA drawing 253-34"
  status = "quoted by others"
}

worked_case "tube gusset that is too short" {
  clause = "3.5"
  as_built {
    gusset "1" {
      form          = "tube"
      thickness     = ".083 in"
      unwelded_side = "4.4 in"
      tube_outside  = "1 in"
      club "Published figures" {
        joined_outside = "1.5 in"
        joined_wall    = "2 mm"
      }
    }
  }
  answer = "gap"
  reason = "Three times 1.5 in."
  source = "NASA Rally Sport GRR 2012, App. B, with FIA drawing 253-34"
  status = "quoted by others"
}

worked_case "plates that are too short" {
  clause = "3.6"
  as_built {
    gusset "1" {
      form          = "flat plate"
      thickness     = "2 mm"
      unwelded_side = "119 mm"
      club "Published figures" {
        joined_outside = "40 mm"
        joined_wall    = "2 mm"
      }
    }
  }
  answer = "gap"
  reason = "Three times 40 mm."
  source = "NASA Rally Sport GRR 2012, App. B, with FIA drawing 253-34"
  status = "quoted by others"
}

worked_case "open-road inspection hole of 3/16 in" {
  clause = "3.8"
  as_built {
    inspection_hole "1" {
      diameter           = "3/16 in"
      distance_from_weld = "3 in"
      distance_from_bend = "3 in"
    }
  }
  answer = "meets"
  reason = "3/16 in, 3 in."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "open-road inspection hole of 4.7 mm" {
  clause = "3.8"
  as_built {
    inspection_hole "1" {
      diameter           = "4.7 mm"
      distance_from_weld = "4 in"
      distance_from_bend = "4 in"
    }
  }
  answer = "gap"
  reason = "3/16 in is 4.76 mm."
  source = "Open-road event rules, safety-cage section"
  status = "computed"
}

worked_case "open-road inspection hole 2.9 in from a weld" {
  clause = "3.8"
  as_built {
    inspection_hole "1" {
      diameter           = "5 mm"
      distance_from_weld = "2.9 in"
      distance_from_bend = "4 in"
    }
  }
  answer = "gap"
  reason = "At least 3 in from a weld."
  source = "Open-road event rules, safety-cage section"
  status = "quoted by others"
}

worked_case "speedway inspection hole of 5.9 mm" {
  clause = "3.9"
  as_built {
    inspection_hole "1" {
      diameter           = "5.9 mm"
      distance_from_weld = "80 mm"
      distance_from_bend = "none"
    }
  }
  answer = "gap"
  reason = "6 mm."
  source = "NZ Speedway rulebook 2010, T11-16-7"
  status = "confirmed"
}

worked_case "padding of 12.6 mm" {
  clause = "3.12"
  as_built {
    padding "1" {
      standard  = "SFI 45.1"
      thickness = "12.6 mm"
    }
  }
  answer = "gap"
  reason = "1/2 in is 12.7 mm."
  source = "Formula Drift Pro-Am rules 2010, 2.3.1 B"
  status = "quoted by others"
}
