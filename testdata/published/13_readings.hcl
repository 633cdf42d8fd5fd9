# What a reading with an uncertainty proves. A wall of at least 2.5 mm and an expanded
# uncertainty of 0.10 mm (k = 2): accepted as read from 2.50 mm, accepted with a guard band of
# that width from 2.60 mm, short beyond doubt under 2.40 mm, and undecided between. Where a
# limit is stated as absolute, the allowance is inside it already and is not given twice.

# Wall of drawn tube that its standard lets pass for the nominal one, OD .875 to 1.875 in.
table "drawn_walls" {
  columns = { ordered = "tube.ordered_wall", least = "tube.wall", greatest = "tube.wall" }
  rows = [
    [".095 in", ".092 in", ".097 in"],
    [".120 in", ".116 in", ".122 in"],
  ]
}

chapter "13" {
  title = "Readings and limits"

  clause "13.1" {
    title   = "Least wall, as read"
    concern = "safety"
    text_at = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
    across  = "tube in cage.tubes"
    demand  = "tube.wall >= 2.5*mm"
    judged  = "as read"
  }

  clause "13.2" {
    title   = "Least wall, proved"
    concern = "safety"
    text_at = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
    across  = "tube in cage.tubes"
    demand  = "tube.wall >= 2.5*mm"
    judged  = "proved"
  }

  clause "13.3" {
    title     = "Least wall, accepted with a guard band of U"
    concern   = "safety"
    text_at   = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
    across    = "tube in cage.tubes"
    demand    = "tube.wall >= 2.5*mm"
    judged    = "as read"
    allowance = "-0.10 mm"
  }

  clause "13.4" {
    title     = "Least wall, accepted with a guard band of 1.645 u"
    concern   = "safety"
    text_at   = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
    across    = "tube in cage.tubes"
    demand    = "tube.wall >= 2.5*mm"
    judged    = "as read"
    allowance = "-0.08225 mm"
  }

  clause "13.5" {
    title   = "Least wall stated as absolute"
    concern = "safety"
    text_at = "Speedway Sedans Australia, memo of 3 October 2012 and specification of 22 August 2014"
    across  = "tube in cage.tubes"
    demand  = "tube.wall >= 2.70*mm"
    judged  = "as read"
  }

  clause "13.6" {
    title   = "Greatest angle, proved"
    concern = "safety"
    text_at = "ISO 14253-1, with a greatest angle of 45 degrees"
    demand  = "club.steep_angle <= 45*deg"
    judged  = "proved"
  }

  clause "13.7" {
    title   = "Greatest diameter, proved"
    concern = "safety"
    text_at = "ISO 14253-1, example with a limit of 20.05 and U of 0.015"
    demand  = "club.shaft_reading <= 20.05*mm"
    judged  = "proved"
  }

  clause "13.8" {
    title   = "Wall of drawn tube within its tolerance"
    concern = "safety"
    text_at = "Tolerances of tube drawn over mandrel, maker's table"
    across  = "tube in cage.tubes"
    where   = ".875*inch <= tube.ordered_outside <= 1.875*inch"
    demand  = "any(table.drawn_walls, tube.ordered_wall == .ordered and .least <= tube.wall <= .greatest)"
  }

  clause "13.9" {
    title   = "Outside of drawn tube within its tolerance"
    concern = "safety"
    text_at = "Tolerances of tube drawn over mandrel, maker's table"
    across  = "tube in cage.tubes"
    where   = ".500*inch <= tube.ordered_outside <= 2.099*inch"
    demand  = <<-FORMULA
  tube.ordered_outside <= tube.outside
  and tube.outside <= tube.ordered_outside + (tube.ordered_outside < 1.700*inch ? .005*inch : .006*inch)
FORMULA
  }
}

worked_case "wall of 2.35 mm as read" {
  clause = "13.1"
  as_built {
    tube "1" {
      wall = "2.35 mm +/- 0.10 mm"
    }
  }
  answer = "gap"
  reason = "Simple acceptance: under 2.50 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.38 mm as read" {
  clause = "13.1"
  as_built {
    tube "1" {
      wall = "2.38 mm +/- 0.10 mm"
    }
  }
  answer = "gap"
  reason = "Simple acceptance: under 2.50 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.40 mm as read" {
  clause = "13.1"
  as_built {
    tube "1" {
      wall = "2.40 mm +/- 0.10 mm"
    }
  }
  answer = "gap"
  reason = "Simple acceptance: under 2.50 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.42 mm as read" {
  clause = "13.1"
  as_built {
    tube "1" {
      wall = "2.42 mm +/- 0.10 mm"
    }
  }
  answer = "gap"
  reason = "Simple acceptance: under 2.50 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.45 mm as read" {
  clause = "13.1"
  as_built {
    tube "1" {
      wall = "2.45 mm +/- 0.10 mm"
    }
  }
  answer = "gap"
  reason = "Simple acceptance: under 2.50 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.48 mm as read" {
  clause = "13.1"
  as_built {
    tube "1" {
      wall = "2.48 mm +/- 0.10 mm"
    }
  }
  answer = "gap"
  reason = "Simple acceptance: under 2.50 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.50 mm as read" {
  clause = "13.1"
  as_built {
    tube "1" {
      wall = "2.50 mm +/- 0.10 mm"
    }
  }
  answer = "meets"
  reason = "Simple acceptance: at least 2.50 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.52 mm as read" {
  clause = "13.1"
  as_built {
    tube "1" {
      wall = "2.52 mm +/- 0.10 mm"
    }
  }
  answer = "meets"
  reason = "Simple acceptance: at least 2.50 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.55 mm as read" {
  clause = "13.1"
  as_built {
    tube "1" {
      wall = "2.55 mm +/- 0.10 mm"
    }
  }
  answer = "meets"
  reason = "Simple acceptance: at least 2.50 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.58 mm as read" {
  clause = "13.1"
  as_built {
    tube "1" {
      wall = "2.58 mm +/- 0.10 mm"
    }
  }
  answer = "meets"
  reason = "Simple acceptance: at least 2.50 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.60 mm as read" {
  clause = "13.1"
  as_built {
    tube "1" {
      wall = "2.60 mm +/- 0.10 mm"
    }
  }
  answer = "meets"
  reason = "Simple acceptance: at least 2.50 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.62 mm as read" {
  clause = "13.1"
  as_built {
    tube "1" {
      wall = "2.62 mm +/- 0.10 mm"
    }
  }
  answer = "meets"
  reason = "Simple acceptance: at least 2.50 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.35 mm proved" {
  clause = "13.2"
  as_built {
    tube "1" {
      wall = "2.35 mm +/- 0.10 mm"
    }
  }
  answer = "gap"
  reason = "Short beyond doubt under 2.40 mm; conformance probability .0013."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.38 mm proved" {
  clause = "13.2"
  as_built {
    tube "1" {
      wall = "2.38 mm +/- 0.10 mm"
    }
  }
  answer = "gap"
  reason = "Short beyond doubt under 2.40 mm; conformance probability .0082."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.40 mm proved" {
  clause = "13.2"
  as_built {
    tube "1" {
      wall = "2.40 mm +/- 0.10 mm"
    }
  }
  answer = "marginal"
  reason = "Neither proved nor short beyond doubt between 2.40 and 2.60 mm; conformance probability .0228."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.42 mm proved" {
  clause = "13.2"
  as_built {
    tube "1" {
      wall = "2.42 mm +/- 0.10 mm"
    }
  }
  answer = "marginal"
  reason = "Neither proved nor short beyond doubt between 2.40 and 2.60 mm; conformance probability .0548."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.45 mm proved" {
  clause = "13.2"
  as_built {
    tube "1" {
      wall = "2.45 mm +/- 0.10 mm"
    }
  }
  answer = "marginal"
  reason = "Neither proved nor short beyond doubt between 2.40 and 2.60 mm; conformance probability .1587."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.48 mm proved" {
  clause = "13.2"
  as_built {
    tube "1" {
      wall = "2.48 mm +/- 0.10 mm"
    }
  }
  answer = "marginal"
  reason = "Neither proved nor short beyond doubt between 2.40 and 2.60 mm; conformance probability .3446."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.50 mm proved" {
  clause = "13.2"
  as_built {
    tube "1" {
      wall = "2.50 mm +/- 0.10 mm"
    }
  }
  answer = "marginal"
  reason = "Neither proved nor short beyond doubt between 2.40 and 2.60 mm; conformance probability .5000."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.52 mm proved" {
  clause = "13.2"
  as_built {
    tube "1" {
      wall = "2.52 mm +/- 0.10 mm"
    }
  }
  answer = "marginal"
  reason = "Neither proved nor short beyond doubt between 2.40 and 2.60 mm; conformance probability .6554."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.55 mm proved" {
  clause = "13.2"
  as_built {
    tube "1" {
      wall = "2.55 mm +/- 0.10 mm"
    }
  }
  answer = "marginal"
  reason = "Neither proved nor short beyond doubt between 2.40 and 2.60 mm; conformance probability .8413."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.58 mm proved" {
  clause = "13.2"
  as_built {
    tube "1" {
      wall = "2.58 mm +/- 0.10 mm"
    }
  }
  answer = "marginal"
  reason = "Neither proved nor short beyond doubt between 2.40 and 2.60 mm; conformance probability .9452."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.60 mm proved" {
  clause = "13.2"
  as_built {
    tube "1" {
      wall = "2.60 mm +/- 0.10 mm"
    }
  }
  answer = "meets"
  reason = "Proved from 2.60 mm; conformance probability .9772."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.62 mm proved" {
  clause = "13.2"
  as_built {
    tube "1" {
      wall = "2.62 mm +/- 0.10 mm"
    }
  }
  answer = "meets"
  reason = "Proved from 2.60 mm; conformance probability .9918."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.50 mm, tolerance not stated, proved" {
  clause = "13.2"
  as_built {
    tube "1" {
      wall = "2.50 mm"
    }
  }
  answer = "meets"
  reason = "Without a tolerance the reading counts as exact."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.60 mm with the guard band" {
  clause = "13.3"
  as_built {
    tube "1" {
      wall = "2.60 mm"
    }
  }
  answer = "meets"
  reason = "From 2.600 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.59 mm with the guard band" {
  clause = "13.3"
  as_built {
    tube "1" {
      wall = "2.59 mm"
    }
  }
  answer = "gap"
  reason = "From 2.600 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.58 mm with the smaller guard band" {
  clause = "13.4"
  as_built {
    tube "1" {
      wall = "2.58 mm"
    }
  }
  answer = "gap"
  reason = "From 2.5822 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "wall of 2.583 mm with the smaller guard band" {
  clause = "13.4"
  as_built {
    tube "1" {
      wall = "2.583 mm"
    }
  }
  answer = "meets"
  reason = "From 2.5822 mm."
  source = "ILAC-G8:09/2019 and ISO 14253-1, with a least wall of 2.5 mm"
  status = "computed"
}

worked_case "speedway pipe of 2.70 mm" {
  clause = "13.5"
  as_built {
    tube "1" {
      ordered = "38 x 3.0 mm"
      wall    = "2.70 mm"
    }
  }
  answer = "meets"
  reason = "2.70 mm absolute; pipe of 3.0 mm may measure so little."
  source = "Speedway Sedans Australia, memo of 3 October 2012 and specification of 22 August 2014"
  status = "confirmed"
}

worked_case "speedway pipe of 2.69 mm" {
  clause = "13.5"
  as_built {
    tube "1" {
      ordered = "38 x 3.0 mm"
      wall    = "2.69 mm"
    }
  }
  answer = "gap"
  reason = "2.70 mm absolute."
  source = "Speedway Sedans Australia, memo of 3 October 2012 and specification of 22 August 2014"
  status = "confirmed"
}

worked_case "speedway pipe of 2.70 mm, no second guard band" {
  clause = "13.5"
  as_built {
    tube "1" {
      ordered = "38 x 3.0 mm"
      wall    = "2.70 mm +/- 0.05 mm"
    }
  }
  answer = "meets"
  reason = "The allowance is inside the figure; the reading decides."
  source = "Speedway Sedans Australia, memo of 3 October 2012 and specification of 22 August 2014"
  status = "confirmed"
}

worked_case "speedway pipe of 2.72 mm, no second guard band" {
  clause = "13.5"
  as_built {
    tube "1" {
      ordered = "38 x 3.0 mm"
      wall    = "2.72 mm +/- 0.05 mm"
    }
  }
  answer = "meets"
  reason = "The allowance is inside the figure; the reading decides."
  source = "Speedway Sedans Australia, memo of 3 October 2012 and specification of 22 August 2014"
  status = "confirmed"
}

worked_case "speedway pipe ordered 3.0 mm and not measured" {
  clause = "13.5"
  as_built {
    tube "1" {
      ordered = "38 x 3.0 mm"
    }
  }
  answer = "not recorded"
  reason = "The rule is about the measured wall, not the ordered one."
  source = "Speedway Sedans Australia, memo of 3 October 2012 and specification of 22 August 2014"
  status = "computed"
}

worked_case "angle of 44 degrees, U of 1" {
  clause = "13.6"
  as_built {
    club "Published figures" {
      steep_angle = "44 deg +/- 1 deg"
    }
  }
  answer = "meets"
  reason = "43 to 45 degrees."
  source = "ISO 14253-1, with a greatest angle of 45 degrees"
  status = "computed"
}

worked_case "angle of 45 degrees, U of 1" {
  clause = "13.6"
  as_built {
    club "Published figures" {
      steep_angle = "45 deg +/- 1 deg"
    }
  }
  answer = "marginal"
  reason = "44 to 46 degrees."
  source = "ISO 14253-1, with a greatest angle of 45 degrees"
  status = "computed"
}

worked_case "angle of 46 degrees, U of 1" {
  clause = "13.6"
  as_built {
    club "Published figures" {
      steep_angle = "46 deg +/- 1 deg"
    }
  }
  answer = "marginal"
  reason = "45 to 47 degrees."
  source = "ISO 14253-1, with a greatest angle of 45 degrees"
  status = "computed"
}

worked_case "angle of 47 degrees, U of 1" {
  clause = "13.6"
  as_built {
    club "Published figures" {
      steep_angle = "47 deg +/- 1 deg"
    }
  }
  answer = "gap"
  reason = "46 to 48 degrees."
  source = "ISO 14253-1, with a greatest angle of 45 degrees"
  status = "computed"
}

worked_case "20.040 against 20.05 with U of 0.015" {
  clause = "13.7"
  as_built {
    club "Published figures" {
      shaft_reading = "20.040 mm +/- 0.015 mm"
    }
  }
  answer = "marginal"
  reason = "Undecided from 20.035 to 20.065."
  source = "ISO 14253-1, example with a limit of 20.05 and U of 0.015"
  status = "quoted by others"
}

worked_case "20.034 against 20.05 with U of 0.015" {
  clause = "13.7"
  as_built {
    club "Published figures" {
      shaft_reading = "20.034 mm +/- 0.015 mm"
    }
  }
  answer = "meets"
  reason = "Conforms up to 20.035."
  source = "ISO 14253-1, example with a limit of 20.05 and U of 0.015"
  status = "quoted by others"
}

worked_case "20.066 against 20.05 with U of 0.015" {
  clause = "13.7"
  as_built {
    club "Published figures" {
      shaft_reading = "20.066 mm +/- 0.015 mm"
    }
  }
  answer = "gap"
  reason = "Does not conform from 20.065 on."
  source = "ISO 14253-1, example with a limit of 20.05 and U of 0.015"
  status = "quoted by others"
}

worked_case "20.060 against 20.05 with U of 0.015" {
  clause = "13.7"
  as_built {
    club "Published figures" {
      shaft_reading = "20.060 mm +/- 0.015 mm"
    }
  }
  answer = "marginal"
  reason = "Undecided from 20.035 to 20.065."
  source = "ISO 14253-1, example with a limit of 20.05 and U of 0.015"
  status = "quoted by others"
}

worked_case ".095 tube that measures .092 in" {
  clause = "13.8"
  as_built {
    tube "1" {
      ordered = "1.75 x .095 in"
      size    = "1.75 x .092 in"
    }
  }
  answer = "meets"
  reason = ".095 +.002/-.003 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case ".095 tube that measures .091 in" {
  clause = "13.8"
  as_built {
    tube "1" {
      ordered = "1.75 x .095 in"
      size    = "1.75 x .091 in"
    }
  }
  answer = "gap"
  reason = ".095 +.002/-.003 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case ".095 tube that measures .098 in" {
  clause = "13.8"
  as_built {
    tube "1" {
      ordered = "1.75 x .095 in"
      size    = "1.75 x .098 in"
    }
  }
  answer = "gap"
  reason = ".095 +.002/-.003 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case ".120 tube that measures .116 in" {
  clause = "13.8"
  as_built {
    tube "1" {
      ordered = "1.5 x .120 in"
      size    = "1.5 x .116 in"
    }
  }
  answer = "meets"
  reason = ".120 +.002/-.004 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case "2.0 in tube" {
  clause = "13.8"
  as_built {
    tube "1" {
      ordered = "2.0 x .120 in"
      size    = "2.0 x .116 in"
    }
  }
  answer = "does not apply"
  reason = "These walls are for OD .875 to 1.875 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case ".095 tube that measures .092 in against the listed pair" {
  clause = "1.3"
  as_built {
    tube "1" {
      part    = "main hoop"
      ordered = "1.75 x .095 in"
      size    = "1.75 x .092 in"
    }
  }
  answer = "gap"
  reason = "A sound .095 tube may measure .092 in (2.337 mm), which is under the listed .095 when the measured wall is what counts."
  source = "MSUK NCR 2026, Ch. 7 App. 3 Art. 20.1; tolerances of tube drawn over mandrel, maker's table"
  status = "computed"
}

worked_case "1.75 in tube that measures 1.756 in" {
  clause = "13.9"
  as_built {
    tube "1" {
      ordered = "1.75 x .095 in"
      size    = "1.756 x .095 in"
    }
  }
  answer = "meets"
  reason = "+.006/-0 in from 1.700 in on."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case "1.75 in tube that measures 1.757 in" {
  clause = "13.9"
  as_built {
    tube "1" {
      ordered = "1.75 x .095 in"
      size    = "1.757 x .095 in"
    }
  }
  answer = "gap"
  reason = "+.006/-0 in from 1.700 in on."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case "1.5 in tube that measures 1.506 in" {
  clause = "13.9"
  as_built {
    tube "1" {
      ordered = "1.5 x .095 in"
      size    = "1.506 x .095 in"
    }
  }
  answer = "gap"
  reason = "+.005/-0 in up to 1.699 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case "1.5 in tube that measures 1.499 in" {
  clause = "13.9"
  as_built {
    tube "1" {
      ordered = "1.5 x .095 in"
      size    = "1.499 x .095 in"
    }
  }
  answer = "gap"
  reason = "Nothing under the nominal diameter."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case ".095 tube that measures .097 in" {
  clause = "13.8"
  as_built {
    tube "1" {
      ordered = "1.75 x .095 in"
      size    = "1.75 x .097 in"
    }
  }
  answer = "meets"
  reason = ".095 +.002/-.003 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case ".120 tube that measures .115 in" {
  clause = "13.8"
  as_built {
    tube "1" {
      ordered = "1.5 x .120 in"
      size    = "1.5 x .115 in"
    }
  }
  answer = "gap"
  reason = ".120 +.002/-.004 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case ".120 tube that measures .122 in" {
  clause = "13.8"
  as_built {
    tube "1" {
      ordered = "1.5 x .120 in"
      size    = "1.5 x .122 in"
    }
  }
  answer = "meets"
  reason = ".120 +.002/-.004 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case ".120 tube that measures .123 in" {
  clause = "13.8"
  as_built {
    tube "1" {
      ordered = "1.5 x .120 in"
      size    = "1.5 x .123 in"
    }
  }
  answer = "gap"
  reason = ".120 +.002/-.004 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case "tube of .875 in" {
  clause = "13.8"
  as_built {
    tube "1" {
      ordered = ".875 x .095 in"
      size    = ".875 x .095 in"
    }
  }
  answer = "meets"
  reason = "For OD .875 to 1.875 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case "tube of .870 in" {
  clause = "13.8"
  as_built {
    tube "1" {
      ordered = ".870 x .095 in"
      size    = ".870 x .095 in"
    }
  }
  answer = "does not apply"
  reason = "For OD .875 to 1.875 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case "tube of 1.875 in" {
  clause = "13.8"
  as_built {
    tube "1" {
      ordered = "1.875 x .095 in"
      size    = "1.875 x .095 in"
    }
  }
  answer = "meets"
  reason = "For OD .875 to 1.875 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case "tube of 1.880 in" {
  clause = "13.8"
  as_built {
    tube "1" {
      ordered = "1.880 x .095 in"
      size    = "1.880 x .095 in"
    }
  }
  answer = "does not apply"
  reason = "For OD .875 to 1.875 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case "1.5 in tube that measures 1.505 in" {
  clause = "13.9"
  as_built {
    tube "1" {
      ordered = "1.5 x .095 in"
      size    = "1.505 x .095 in"
    }
  }
  answer = "meets"
  reason = "+.005/-0 in up to 1.699 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case "1.699 in tube that measures 1.7045 in" {
  clause = "13.9"
  as_built {
    tube "1" {
      ordered = "1.699 x .095 in"
      size    = "1.7045 x .095 in"
    }
  }
  answer = "gap"
  reason = "+.005/-0 in up to 1.699 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case "1.700 in tube that measures 1.7055 in" {
  clause = "13.9"
  as_built {
    tube "1" {
      ordered = "1.700 x .095 in"
      size    = "1.7055 x .095 in"
    }
  }
  answer = "meets"
  reason = "+.006/-0 in from 1.700 in on."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case ".500 in tube" {
  clause = "13.9"
  as_built {
    tube "1" {
      ordered = ".500 x .049 in"
      size    = ".505 x .049 in"
    }
  }
  answer = "meets"
  reason = "For OD .500 to 2.099 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case ".490 in tube" {
  clause = "13.9"
  as_built {
    tube "1" {
      ordered = ".490 x .049 in"
      size    = ".505 x .049 in"
    }
  }
  answer = "does not apply"
  reason = "For OD .500 to 2.099 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case "2.099 in tube" {
  clause = "13.9"
  as_built {
    tube "1" {
      ordered = "2.099 x .120 in"
      size    = "2.105 x .120 in"
    }
  }
  answer = "meets"
  reason = "For OD .500 to 2.099 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}

worked_case "2.110 in tube" {
  clause = "13.9"
  as_built {
    tube "1" {
      ordered = "2.110 x .120 in"
      size    = "2.120 x .120 in"
    }
  }
  answer = "does not apply"
  reason = "For OD .500 to 2.099 in."
  source = "Tolerances of tube drawn over mandrel, maker's table"
  status = "quoted by others"
}
