# Fuel cells, vents, bulkheads and lines. What is printed as 135 degrees C (250 F) or 70 bar
# (1000 psi) are two labels and no conversion: 135 C is 275 F, and 1000 psi is 68.95 bar.

table "lines_metric" {
  columns = { fluid = "line.fluid", burst = "line.burst_pressure", temperature = "line.rated_temperature" }
  rows = [
    ["fuel", "70 bar", "135 degC"],
    ["engine oil", "70 bar", "232 degC"],
    ["hydraulic oil", "280 bar", "232 degC"],
  ]
}

# The same with the labels that are printed in brackets.
table "lines_either" {
  columns = { fluid = "line.fluid", burst = "line.burst_pressure", temperature = "line.rated_temperature" }
  rows = [
    ["fuel", "70 bar", "135 degC"],
    ["fuel", "1000 psi", "250 degF"],
    ["engine oil", "70 bar", "232 degC"],
    ["engine oil", "70 bar", "450 degF"],
    ["hydraulic oil", "280 bar", "232 degC"],
    ["hydraulic oil", "4000 psi", "232 degC"],
  ]
}

table "lines_off_road" {
  columns = { fluid = "line.fluid", burst = "line.burst_pressure", temperature = "line.rated_temperature" }
  rows = [
    ["engine oil", "70 bar", "135 degC"],
    ["hydraulic oil", "70 bar", "232 degC"],
  ]
}

table "containers" {
  columns = { material = "fuel_cell.container_material", thickness = "fuel_cell.container_thickness" }
  rows = [
    ["steel", "0.036 in"],
    ["aluminium", "0.059 in"],
    ["plastic", "0.125 in"],
  ]
}

chapter "8" {
  title = "Fuel and lines"

  clause "8.1" {
    title   = "Lines by the metric figures"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
    across  = "line in lines"
    where   = "line.fluid in ['fuel', 'engine oil', 'hydraulic oil']"

    demand = <<-FORMULA
  any(table.lines_metric, .fluid == line.fluid
    and line.burst_pressure >= .burst and line.rated_temperature >= .temperature)
FORMULA
  }

  clause "8.2" {
    title   = "Lines by either printed label"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
    across  = "line in lines"
    where   = "line.fluid in ['fuel', 'engine oil', 'hydraulic oil']"

    demand = <<-FORMULA
  any(table.lines_either, .fluid == line.fluid
    and line.burst_pressure >= .burst and line.rated_temperature >= .temperature)
FORMULA
  }

  clause "8.3" {
    title   = "Hydraulic lines at high pressure"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 283"
    across  = "line in lines"
    where   = "line.fluid == 'hydraulic oil' and line.working_pressure > 140*bar"
    demand  = "line.burst_pressure >= 2 * line.working_pressure"
  }

  clause "8.4" {
    title   = "Lines of an off-road car"
    concern = "safety"
    text_at = "FFSA off-road rules"
    across  = "line in lines"
    where   = "line.fluid in ['engine oil', 'hydraulic oil']"
    demand  = <<-FORMULA
  any(table.lines_off_road, .fluid == line.fluid
    and line.burst_pressure >= .burst and line.rated_temperature >= .temperature)
FORMULA
  }

  clause "8.5" {
    title   = "Container of the fuel cell"
    concern = "safety"
    text_at = "NASA CCR 15.4, 2009"
    demand  = <<-FORMULA
  any(table.containers, .material == fuel_cell.container_material and fuel_cell.container_thickness >= .thickness)
FORMULA
  }

  clause "8.6" {
    title   = "Standard of the fuel cell from 2012"
    concern = "safety"
    text_at = "NASA CCR 15.4, 2009"
    applies = "on >= date('2012-01-01')"
    demand  = "fuel_cell.standard in ['FIA FT3-1999', 'FIA FT3.5-1999', 'FIA FT5-1999']"
  }

  clause "8.7" {
    title   = "Vents behind the cockpit"
    concern = "safety"
    text_at = "MSUK NCR 2026, Ch. 7 App. 4"
    across  = "vent in vents"
    demand  = "vent.distance_behind_cockpit >= 250*mm"
  }

  clause "8.8" {
    title   = "Bulkhead"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 255-5.7.3.2 and 254-6.9"
    across  = "bulkhead in bulkheads"
    demand  = "bulkhead.liquid_tight and bulkhead.flame_resistant"
  }

  clause "8.9" {
    title   = "Fuel pump of a cross-country car"
    concern = "safety"
    text_at = "FIA Appendix J, Art. 285"
    across  = "pump in fuel_pumps"
    demand  = "pump.working_pressure <= 1*bar"
  }
}

worked_case "fuel line of 70 bar at 135 degrees C" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "fuel"
      burst_pressure    = "70 bar"
      rated_temperature = "135 degC"
    }
  }
  answer = "meets"
  reason = "Exactly the figures."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "fuel line of 70 bar at 275 degrees F" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "fuel"
      burst_pressure    = "70 bar"
      rated_temperature = "275 degF"
    }
  }
  answer = "meets"
  reason = "275 F is 135 C, exactly."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "computed"
}

worked_case "fuel line of 70 bar at 250 degrees F" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "fuel"
      burst_pressure    = "70 bar"
      rated_temperature = "250 degF"
    }
  }
  answer = "gap"
  reason = "250 F, printed beside 135 C, is 121.1 C."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "computed"
}

worked_case "fuel line of 1000 psi at 275 degrees F" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "fuel"
      burst_pressure    = "1000 psi"
      rated_temperature = "275 degF"
    }
  }
  answer = "gap"
  reason = "1000 psi, printed beside 70 bar, is 68.95 bar."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "computed"
}

worked_case "fuel line of 1000 psi at 250 degrees F by its labels" {
  clause = "8.2"
  as_built {
    line "1" {
      fluid             = "fuel"
      burst_pressure    = "1000 psi"
      rated_temperature = "250 degF"
    }
  }
  answer = "meets"
  reason = "The labels in brackets, taken as they are printed."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "fuel line of 1000 psi at 249 degrees F by its labels" {
  clause = "8.2"
  as_built {
    line "1" {
      fluid             = "fuel"
      burst_pressure    = "1000 psi"
      rated_temperature = "249 degF"
    }
  }
  answer = "gap"
  reason = "Neither label is met."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "fuel line of 69 bar at 135 degrees C by its labels" {
  clause = "8.2"
  as_built {
    line "1" {
      fluid             = "fuel"
      burst_pressure    = "69 bar"
      rated_temperature = "135 degC"
    }
  }
  answer = "meets"
  reason = "69 bar is 1000.8 psi, so the bracketed row is met."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "computed"
}

worked_case "oil line of 70 bar at 450 degrees F" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "engine oil"
      burst_pressure    = "70 bar"
      rated_temperature = "450 degF"
    }
  }
  answer = "meets"
  reason = "450 F is 232.2 C."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "computed"
}

worked_case "oil line of 70 bar at 449 degrees F" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "engine oil"
      burst_pressure    = "70 bar"
      rated_temperature = "449 degF"
    }
  }
  answer = "gap"
  reason = "449 F is 231.7 C."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "computed"
}

worked_case "oil line as good as a fuel line" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "engine oil"
      burst_pressure    = "70 bar"
      rated_temperature = "135 degC"
    }
  }
  answer = "gap"
  reason = "Oil lines hold at 232 C."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "hydraulic line of 4000 psi" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "hydraulic oil"
      burst_pressure    = "4000 psi"
      rated_temperature = "232 degC"
    }
  }
  answer = "gap"
  reason = "4000 psi, printed beside 280 bar, is 275.8 bar."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "computed"
}

worked_case "hydraulic line of 4000 psi by its label" {
  clause = "8.2"
  as_built {
    line "1" {
      fluid             = "hydraulic oil"
      burst_pressure    = "4000 psi"
      rated_temperature = "232 degC"
    }
  }
  answer = "meets"
  reason = "The label in brackets, taken as it is printed."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "coolant hose" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "coolant"
      burst_pressure    = "3 bar"
      rated_temperature = "120 degC"
    }
  }
  answer = "does not apply"
  reason = "The figures are for fuel, oil and hydraulics."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "hydraulics at 150 bar, bursting at 300" {
  clause = "8.3"
  as_built {
    line "1" {
      fluid            = "hydraulic oil"
      working_pressure = "150 bar"
      burst_pressure   = "300 bar"
    }
  }
  answer = "meets"
  reason = "Twice the working pressure, exactly."
  source = "FIA Appendix J, Art. 283"
  status = "quoted by others"
}

worked_case "hydraulics at 150 bar, bursting at 290" {
  clause = "8.3"
  as_built {
    line "1" {
      fluid            = "hydraulic oil"
      working_pressure = "150 bar"
      burst_pressure   = "290 bar"
    }
  }
  answer = "gap"
  reason = "Twice the working pressure."
  source = "FIA Appendix J, Art. 283"
  status = "quoted by others"
}

worked_case "hydraulics at 140 bar" {
  clause = "8.3"
  as_built {
    line "1" {
      fluid            = "hydraulic oil"
      working_pressure = "140 bar"
      burst_pressure   = "270 bar"
    }
  }
  answer = "does not apply"
  reason = "Over 140 bar only."
  source = "FIA Appendix J, Art. 283"
  status = "quoted by others"
}

worked_case "off-road hydraulics of 70 bar" {
  clause = "8.4"
  as_built {
    line "1" {
      fluid             = "hydraulic oil"
      burst_pressure    = "70 bar"
      rated_temperature = "232 degC"
    }
  }
  answer = "meets"
  reason = "70 bar at 232 C in this edition."
  source = "FFSA off-road rules"
  status = "quoted by others"
}

worked_case "off-road hydraulics of 70 bar by the other edition" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "hydraulic oil"
      burst_pressure    = "70 bar"
      rated_temperature = "232 degC"
    }
  }
  answer = "gap"
  reason = "280 bar there: the editions do not agree."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "off-road oil line of 60 bar" {
  clause = "8.4"
  as_built {
    line "1" {
      fluid             = "engine oil"
      burst_pressure    = "60 bar"
      rated_temperature = "135 degC"
    }
  }
  answer = "gap"
  reason = "70 bar at 135 C."
  source = "FFSA off-road rules"
  status = "quoted by others"
}

worked_case "steel container of 0.036 in" {
  clause = "8.5"
  as_built {
    fuel_cell {
      container_material  = "steel"
      container_thickness = "0.036 in"
    }
  }
  answer = "meets"
  reason = "0.036 in of steel."
  source = "NASA CCR 15.4, 2009"
  status = "quoted by others"
}

worked_case "steel container of 0.9 mm" {
  clause = "8.5"
  as_built {
    fuel_cell {
      container_material  = "steel"
      container_thickness = "0.9 mm"
    }
  }
  answer = "gap"
  reason = "0.036 in is 0.914 mm."
  source = "NASA CCR 15.4, 2009"
  status = "computed"
}

worked_case "aluminium container of 1.5 mm" {
  clause = "8.5"
  as_built {
    fuel_cell {
      container_material  = "aluminium"
      container_thickness = "1.5 mm"
    }
  }
  answer = "meets"
  reason = "0.059 in is 1.4986 mm."
  source = "NASA CCR 15.4, 2009"
  status = "computed"
}

worked_case "aluminium container of 0.050 in" {
  clause = "8.5"
  as_built {
    fuel_cell {
      container_material  = "aluminium"
      container_thickness = "0.050 in"
    }
  }
  answer = "gap"
  reason = "0.059 in of aluminium."
  source = "NASA CCR 15.4, 2009"
  status = "quoted by others"
}

worked_case "polymer container of 0.125 in" {
  clause = "8.5"
  as_built {
    fuel_cell {
      container_material  = "polyethylene"
      container_thickness = "0.125 in"
    }
  }
  answer = "meets"
  reason = "0.125 in of polymer."
  source = "NASA CCR 15.4, 2009"
  status = "quoted by others"
}

worked_case "FT3 cell in 2012" {
  clause = "8.6"
  on     = "2012-01-01"
  as_built {
    fuel_cell {
      standard = "FT3"
    }
  }
  answer = "meets"
  reason = "FT3 on all cells from 1 January 2012."
  source = "NASA CCR 15.4, 2009"
  status = "quoted by others"
}

worked_case "cell without standard in 2012" {
  clause = "8.6"
  on     = "2012-01-01"
  as_built {
    fuel_cell {
      standard = "unlabelled"
    }
  }
  answer = "gap"
  reason = "FT3 on all cells from 1 January 2012."
  source = "NASA CCR 15.4, 2009"
  status = "quoted by others"
}

worked_case "cell without standard in 2011" {
  clause = "8.6"
  on     = "2011-12-31"
  as_built {
    fuel_cell {
      standard = "unlabelled"
    }
  }
  answer = "does not apply"
  reason = "From 1 January 2012 only."
  source = "NASA CCR 15.4, 2009"
  status = "quoted by others"
}

worked_case "vent 250 mm behind the cockpit" {
  clause = "8.7"
  as_built {
    vent "1" {
      distance_behind_cockpit = "250 mm"
    }
  }
  answer = "meets"
  reason = "At least 250 mm."
  source = "MSUK NCR 2026, Ch. 7 App. 4"
  status = "confirmed"
}

worked_case "vent 249 mm behind the cockpit" {
  clause = "8.7"
  as_built {
    vent "1" {
      distance_behind_cockpit = "249 mm"
    }
  }
  answer = "gap"
  reason = "At least 250 mm."
  source = "MSUK NCR 2026, Ch. 7 App. 4"
  status = "confirmed"
}

worked_case "bulkhead tight against liquid and flame" {
  clause = "8.8"
  as_built {
    bulkhead "fuel" {
      liquid_tight    = true
      flame_resistant = true
    }
  }
  answer = "meets"
  reason = "Fireproof and liquid-proof."
  source = "FIA Appendix J, Art. 255-5.7.3.2 and 254-6.9"
  status = "quoted by others"
}

worked_case "bulkhead not tight against liquid" {
  clause = "8.8"
  as_built {
    bulkhead "fuel" {
      liquid_tight    = false
      flame_resistant = true
    }
  }
  answer = "gap"
  reason = "Fireproof and liquid-proof."
  source = "FIA Appendix J, Art. 255-5.7.3.2 and 254-6.9"
  status = "quoted by others"
}

worked_case "pump of 1 bar" {
  clause = "8.9"
  as_built {
    fuel_pump "main" {
      working_pressure = "1 bar"
    }
  }
  answer = "meets"
  reason = "At most 1 bar."
  source = "FIA Appendix J, Art. 285"
  status = "quoted by others"
}

worked_case "pump of 15 psi" {
  clause = "8.9"
  as_built {
    fuel_pump "main" {
      working_pressure = "15 psi"
    }
  }
  answer = "gap"
  reason = "15 psi is 1.034 bar."
  source = "FIA Appendix J, Art. 285"
  status = "computed"
}

worked_case "fuel line by clause 8.1: 70 bar at 135 degC" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "fuel"
      burst_pressure    = "70 bar"
      rated_temperature = "135 degC"
    }
  }
  answer = "meets"
  reason = "Exactly the figures."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "fuel line by clause 8.1: 69.5 bar at 135 degC" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "fuel"
      burst_pressure    = "69.5 bar"
      rated_temperature = "135 degC"
    }
  }
  answer = "gap"
  reason = "70 bar are asked for."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "fuel line by clause 8.1: 70 bar at 134 degC" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "fuel"
      burst_pressure    = "70 bar"
      rated_temperature = "134 degC"
    }
  }
  answer = "gap"
  reason = "135 degC are asked for."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "engine oil line by clause 8.1: 70 bar at 232 degC" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "engine oil"
      burst_pressure    = "70 bar"
      rated_temperature = "232 degC"
    }
  }
  answer = "meets"
  reason = "Exactly the figures."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "engine oil line by clause 8.1: 69.5 bar at 232 degC" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "engine oil"
      burst_pressure    = "69.5 bar"
      rated_temperature = "232 degC"
    }
  }
  answer = "gap"
  reason = "70 bar are asked for."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "engine oil line by clause 8.1: 70 bar at 231 degC" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "engine oil"
      burst_pressure    = "70 bar"
      rated_temperature = "231 degC"
    }
  }
  answer = "gap"
  reason = "232 degC are asked for."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "hydraulic oil line by clause 8.1: 280 bar at 232 degC" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "hydraulic oil"
      burst_pressure    = "280 bar"
      rated_temperature = "232 degC"
    }
  }
  answer = "meets"
  reason = "Exactly the figures."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "hydraulic oil line by clause 8.1: 279 bar at 232 degC" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "hydraulic oil"
      burst_pressure    = "279 bar"
      rated_temperature = "232 degC"
    }
  }
  answer = "gap"
  reason = "280 bar are asked for."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "hydraulic oil line by clause 8.1: 280 bar at 231 degC" {
  clause = "8.1"
  as_built {
    line "1" {
      fluid             = "hydraulic oil"
      burst_pressure    = "280 bar"
      rated_temperature = "231 degC"
    }
  }
  answer = "gap"
  reason = "232 degC are asked for."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "engine oil line by clause 8.4: 70 bar at 135 degC" {
  clause = "8.4"
  as_built {
    line "1" {
      fluid             = "engine oil"
      burst_pressure    = "70 bar"
      rated_temperature = "135 degC"
    }
  }
  answer = "meets"
  reason = "Exactly the figures."
  source = "FFSA off-road rules"
  status = "quoted by others"
}

worked_case "engine oil line by clause 8.4: 69.5 bar at 135 degC" {
  clause = "8.4"
  as_built {
    line "1" {
      fluid             = "engine oil"
      burst_pressure    = "69.5 bar"
      rated_temperature = "135 degC"
    }
  }
  answer = "gap"
  reason = "70 bar are asked for."
  source = "FFSA off-road rules"
  status = "quoted by others"
}

worked_case "engine oil line by clause 8.4: 70 bar at 134 degC" {
  clause = "8.4"
  as_built {
    line "1" {
      fluid             = "engine oil"
      burst_pressure    = "70 bar"
      rated_temperature = "134 degC"
    }
  }
  answer = "gap"
  reason = "135 degC are asked for."
  source = "FFSA off-road rules"
  status = "quoted by others"
}

worked_case "hydraulic oil line by clause 8.4: 70 bar at 232 degC" {
  clause = "8.4"
  as_built {
    line "1" {
      fluid             = "hydraulic oil"
      burst_pressure    = "70 bar"
      rated_temperature = "232 degC"
    }
  }
  answer = "meets"
  reason = "Exactly the figures."
  source = "FFSA off-road rules"
  status = "quoted by others"
}

worked_case "hydraulic oil line by clause 8.4: 69.5 bar at 232 degC" {
  clause = "8.4"
  as_built {
    line "1" {
      fluid             = "hydraulic oil"
      burst_pressure    = "69.5 bar"
      rated_temperature = "232 degC"
    }
  }
  answer = "gap"
  reason = "70 bar are asked for."
  source = "FFSA off-road rules"
  status = "quoted by others"
}

worked_case "hydraulic oil line by clause 8.4: 70 bar at 231 degC" {
  clause = "8.4"
  as_built {
    line "1" {
      fluid             = "hydraulic oil"
      burst_pressure    = "70 bar"
      rated_temperature = "231 degC"
    }
  }
  answer = "gap"
  reason = "232 degC are asked for."
  source = "FFSA off-road rules"
  status = "quoted by others"
}

worked_case "fuel line by clause 8.2: 1000 psi at 250 degF" {
  clause = "8.2"
  as_built {
    line "1" {
      fluid             = "fuel"
      burst_pressure    = "1000 psi"
      rated_temperature = "250 degF"
    }
  }
  answer = "meets"
  reason = "Exactly the figures."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "fuel line by clause 8.2: 995 psi at 250 degF" {
  clause = "8.2"
  as_built {
    line "1" {
      fluid             = "fuel"
      burst_pressure    = "995 psi"
      rated_temperature = "250 degF"
    }
  }
  answer = "gap"
  reason = "1000 psi are asked for."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "fuel line by clause 8.2: 1000 psi at 249.5 degF" {
  clause = "8.2"
  as_built {
    line "1" {
      fluid             = "fuel"
      burst_pressure    = "1000 psi"
      rated_temperature = "249.5 degF"
    }
  }
  answer = "gap"
  reason = "250 degF are asked for."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "engine oil line by clause 8.2: 70 bar at 232 degC" {
  clause = "8.2"
  as_built {
    line "1" {
      fluid             = "engine oil"
      burst_pressure    = "70 bar"
      rated_temperature = "232 degC"
    }
  }
  answer = "meets"
  reason = "Exactly the figures."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "engine oil line by clause 8.2: 69.5 bar at 232 degC" {
  clause = "8.2"
  as_built {
    line "1" {
      fluid             = "engine oil"
      burst_pressure    = "69.5 bar"
      rated_temperature = "232 degC"
    }
  }
  answer = "gap"
  reason = "70 bar are asked for."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "engine oil line by clause 8.2: 70 bar at 231.5 degC" {
  clause = "8.2"
  as_built {
    line "1" {
      fluid             = "engine oil"
      burst_pressure    = "70 bar"
      rated_temperature = "231.5 degC"
    }
  }
  answer = "gap"
  reason = "232 degC are asked for."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "hydraulic oil line by clause 8.2: 4000 psi at 232 degC" {
  clause = "8.2"
  as_built {
    line "1" {
      fluid             = "hydraulic oil"
      burst_pressure    = "4000 psi"
      rated_temperature = "232 degC"
    }
  }
  answer = "meets"
  reason = "Exactly the figures."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "hydraulic oil line by clause 8.2: 3990 psi at 232 degC" {
  clause = "8.2"
  as_built {
    line "1" {
      fluid             = "hydraulic oil"
      burst_pressure    = "3990 psi"
      rated_temperature = "232 degC"
    }
  }
  answer = "gap"
  reason = "4000 psi are asked for."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "hydraulic oil line by clause 8.2: 4000 psi at 231.5 degC" {
  clause = "8.2"
  as_built {
    line "1" {
      fluid             = "hydraulic oil"
      burst_pressure    = "4000 psi"
      rated_temperature = "231.5 degC"
    }
  }
  answer = "gap"
  reason = "232 degC are asked for."
  source = "FIA Appendix J, Art. 253-3.2, 2007 and 2010, and Art. 283"
  status = "quoted by others"
}

worked_case "hydraulics at 141 bar, bursting at 280" {
  clause = "8.3"
  as_built {
    line "1" {
      fluid            = "hydraulic oil"
      working_pressure = "141 bar"
      burst_pressure   = "280 bar"
    }
  }
  answer = "gap"
  reason = "Twice the working pressure, over 140 bar."
  source = "FIA Appendix J, Art. 283"
  status = "quoted by others"
}

worked_case "aluminium container of 0.0585 in" {
  clause = "8.5"
  as_built {
    fuel_cell {
      container_material  = "aluminium"
      container_thickness = "0.0585 in"
    }
  }
  answer = "gap"
  reason = "0.036 in of steel, 0.059 in of aluminium, 0.125 in of polymer."
  source = "NASA CCR 15.4, 2009"
  status = "quoted by others"
}

worked_case "polyethylene container of 0.124 in" {
  clause = "8.5"
  as_built {
    fuel_cell {
      container_material  = "polyethylene"
      container_thickness = "0.124 in"
    }
  }
  answer = "gap"
  reason = "0.036 in of steel, 0.059 in of aluminium, 0.125 in of polymer."
  source = "NASA CCR 15.4, 2009"
  status = "quoted by others"
}

worked_case "steel container of 0.0355 in" {
  clause = "8.5"
  as_built {
    fuel_cell {
      container_material  = "steel"
      container_thickness = "0.0355 in"
    }
  }
  answer = "gap"
  reason = "0.036 in of steel, 0.059 in of aluminium, 0.125 in of polymer."
  source = "NASA CCR 15.4, 2009"
  status = "quoted by others"
}
