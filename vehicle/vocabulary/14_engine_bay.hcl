# Exhaust and noise, restrictors, seals, catch tank, shaft guard.

part "exhaust" {
  place = "underneath"
  stage = "before event"
  help  = "The exhaust and the noise of the car."

  particular "outlet" {
    kind = "choice"
    value "rear" {}
    value "side" { synonyms = ["left side", "right side"] }
    value "front" {}
    help = "Where it ends."
    how  = "See which edge of the body the last bend points to."
  }
  particular "outlet_height" {
    kind      = "length"
    unit      = "mm"
    plausible = "20 mm to 1200 mm"
    help      = "Height of the outlet's lower edge over the ground."
    how       = "Rule upright under the tail pipe, car in stage trim."
  }
  particular "outlet_protrusion" {
    kind      = "length"
    unit      = "mm"
    plausible = "-500 mm to 300 mm"
    help      = "How far the outlet stands out past the bodywork; negative when it ends inside."
    how       = "Plumb line from the body's edge, rule along the pipe to its end."
  }
  particular "catalyst" {
    kind = "yes or no"
    help = "Whether a working catalytic converter is in it."
    how  = "Tap it with a rubber mallet for loose pieces, look up the part or homologation number on its case."
  }
  particular "shielded" {
    kind = "yes or no"
    help = "Whether hot parts are shielded from lines, wiring and the floor under the crew."
    how  = "After a run, infrared thermometer on floor and lines beside it."
  }
  particular "noise" {
    kind      = "number"
    unit      = "dB(A)"
    plausible = "50 dB(A) to 140 dB(A)"
    help      = "Noise at the outlet, standing."
    how       = "Sound level meter on A and slow, on a tripod at outlet height and the rulebook's distance and angle, no wall within ten metres, best of no fewer than three readings alike."
  }
  particular "noise_engine_speed" {
    kind      = "rotational speed"
    unit      = "rpm"
    plausible = "500 rpm to 12000 rpm"
    help      = "Engine speed of that noise reading."
    how       = "Workshop counter on an ignition lead, not the car's own dial."
  }
  particular "noise_distance" {
    kind      = "length"
    unit      = "m"
    plausible = "0.2 m to 20 m"
    help      = "Distance from outlet to microphone."
    how       = "Tape from the pipe's end to the microphone's tip, at outlet height."
  }
  particular "noise_angle" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 180 deg"
    help      = "Angle of the microphone to the axis of the outlet."
    how       = "Chalk line in the pipe's direction on the floor, large protractor at the pipe's end."
  }
  particular "meter_calibrated" {
    kind      = "date"
    plausible = "1990 to 2100"
    help      = "When the sound level meter was last calibrated."
    how       = "Sticker on the meter; calibrator at 94 dB before and after goes in a note."
  }
}

part "restrictor" {
  plural = "restrictors"
  place  = "engine bay"
  stage  = "before event"
  help   = "An air restrictor."

  particular "inner_diameter" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 80 mm"
    help      = "Greatest inside diameter at its narrowest part."
    how       = "Three-point inside micrometer or go and no-go plugs at about 20 degC, engine cold; a caliper's jaws read small in a bore."
  }
  particular "throat_length" {
    kind      = "length"
    unit      = "mm"
    plausible = "0.5 mm to 100 mm"
    help      = "Length over which that diameter is kept."
    how       = "Bore gauge moved along the axis with a depth stop, from where it first reads larger to where it does again."
  }
  particular "outer_diameter" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 120 mm"
    help      = "Outside diameter at its narrowest part."
    how       = "Outside caliper in the waist, restrictor off the compressor."
  }
  particular "distance_to_compressor" {
    kind          = "length"
    unit          = "mm"
    plausible     = "0 mm to 500 mm"
    may_be_absent = true
    help          = "From the throat to the plane of the compressor's blades; none without a turbocharger."
    how           = "Depth gauge through the restrictor to the upstream end of the blades, less the throat's depth."
  }
  particular "screws" {
    kind      = "count"
    plausible = "0 to 12"
    help      = "Screws that hold it."
    how       = "Count them and see that none can be taken out while the seal is on."
  }
  particular "sealing_holes" {
    kind      = "count"
    plausible = "0 to 12"
    help      = "Drilled screw heads or bosses for sealing wire."
    how       = "Pass a wire through restrictor, compressor housing and screw heads: each hole that takes it counts."
  }
  particular "bypass_closed" {
    kind = "yes or no"
    help = "Whether no air gets to the engine but through it."
    how  = "Hand or plug over the inlet at idle: the engine must stall, and no hose may hiss."
  }
}

part "seal" {
  plural = "seals"
  place  = "engine bay"
  stage  = "before event"
  help   = "A scrutineer's seal."

  particular "sealed_part" {
    kind = "choice"
    value "turbocharger" { synonyms = ["turbo"] }
    value "restrictor" {}
    value "engine" { synonyms = ["engine block"] }
    value "gearbox" { synonyms = ["transmission"] }
    value "differential" { synonyms = ["axle"] }
    value "ballast" {}
    value "control unit" { synonyms = ["ECU", "engine control unit"] }
    help = "What it seals."
    how  = "Follow the wire through all the parts it holds together."
  }
  particular "number" {
    kind = "text"
    help = "Number of the seal."
    how  = "Pressed into lead or plastic, one side or both; photograph it after every event."
  }
  particular "fixed_on" {
    kind      = "date"
    plausible = "1990 to 2100"
    help      = "When it was put on."
    how       = "From the scrutineer's sealing sheet or the car's passport."
  }
  particular "intact" {
    kind = "yes or no"
    help = "Whether seal and wire are undamaged."
    how  = "Pull the wire both ways; it must not slide in the seal."
  }
}

part "catch_tank" {
  place = "engine bay"
  stage = "before event"
  help  = "The tank that catches oil from the engine's breather."

  particular "capacity" {
    kind      = "volume"
    unit      = "l"
    plausible = "0.2 l to 20 l"
    help      = "What the catch tank holds."
    how       = "Fill it with water from a measuring jug up to its breather."
  }
  particular "level_visible" {
    kind = "yes or no"
    help = "Whether its level can be seen from outside."
    how  = "Look for a clear wall, sight tube or window, clean."
  }
  particular "material" {
    kind    = "choice"
    choices = "plate material"
    help    = "What the catch tank is made of."
    how     = "Softens near the exhaust means plastic: check the clearance too."
  }
}

part "shaft_guard" {
  plural = "shaft_guards"
  place  = "underneath"
  stage  = "before trim"
  help   = "A hoop or strap that catches a broken propeller shaft."

  particular "material" {
    kind    = "choice"
    choices = "plate material"
    help    = "What the hoop is made of."
    how     = "Magnet on the hoop, underseal scraped off."
  }
  particular "thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "1 mm to 20 mm"
    help      = "Thickness of the hoop."
    how       = "Caliper on its flat beside the shaft."
  }
  particular "width" {
    kind      = "length"
    unit      = "mm"
    plausible = "5 mm to 200 mm"
    help      = "Width of the hoop along the shaft."
    how       = "Rule along the shaft, over the hoop's edges."
  }
  particular "goes_all_round" {
    kind = "yes or no"
    help = "Whether it goes round the shaft on all sides."
    how  = "Turn the shaft by hand and look from both ends; the tunnel may close it above."
  }
}
