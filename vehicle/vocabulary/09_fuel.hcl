# Fuel: the cell or the maker's tank, its compartment, pumps, vents; and every line.

part "fuel_cell" {
  place = "luggage area"
  stage = "before trim"
  help  = "A safety fuel cell; write the maker's own tank as fuel_tank."

  particular "standard" {
    kind       = "choice"
    choices    = "fuel cell standard"
    changeable = false
    help       = "Standard of the bladder."
    how        = "Printed on the bladder itself, seen through the filler plate; the container's sticker may belong to an older bladder."
  }
  particular "maker" {
    kind       = "text"
    changeable = false
    help       = "Maker of the bladder."
    how        = "Name printed with the standard beside the plate opening."
  }
  particular "homologation_number" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Homologation number of the cell."
    how           = "In the print on the bladder, or on the maker's certificate for this serial number."
  }
  particular "serial" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Serial number of the bladder."
    how           = "Wipe the fuel off around the opening and read it with a torch, cell vented and drained."
  }
  particular "label_kind" {
    kind       = "choice"
    choices    = "date label"
    changeable = false
    help       = "What date the bladder's print shows."
    how        = "Torch and mirror at the filler plate: the print has a date of manufacture, an end of validity, or both."
  }
  particular "made" {
    kind       = "date"
    plausible  = "1975 to 2100"
    changeable = false
    help       = "Date of manufacture of the bladder."
    how        = "In the bladder's print, month and year; where only the end of validity is printed, from the maker's certificate."
  }
  particular "first_used" {
    kind          = "date"
    plausible     = "1975 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "When the bladder was first filled; none when it has not been yet."
    how           = "From the shop's job card; fuel begins to age it on that day."
  }
  particular "serviced" {
    kind          = "date"
    plausible     = "1975 to 2150"
    happens       = "often"
    may_be_absent = true
    help          = "When the bladder was last taken out and examined; none when it never was."
    how           = "From the report of its maker or of the licensed firm that opened it."
  }
  particular "not_after" {
    kind          = "date"
    plausible     = "1980 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "End of validity printed on the bladder; none when it prints none."
    how           = "Marked under FT3-1999 and later; photograph it when the cell is open, it is hidden afterwards."
  }
  particular "recertified" {
    kind          = "date"
    plausible     = "1980 to 2100"
    happens       = "once"
    may_be_absent = true
    changeable    = false
    help          = "When its maker inspected and re-certified it; none when never."
    how           = "From the maker's re-certification paper with the bladder's serial number."
  }
  particular "recertified_until" {
    kind          = "date"
    plausible     = "1980 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "How long that re-certification holds; none when there was none."
    how           = "Last line of the re-certification paper; a second one is not given."
  }
  particular "foam" {
    kind = "yes or no"
    help = "Whether it is filled with safety foam."
    how  = "Reach in through the filler plate: the foam must fill it and must not crumble."
  }
  particular "foam_renewed" {
    kind          = "date"
    plausible     = "1975 to 2100"
    happens       = "often"
    may_be_absent = true
    help          = "When the foam was last renewed; none when it is the first."
    how           = "From the shop's job card; foam that sheds into the filter is due whatever its age."
  }
  particular "container_material" {
    kind    = "choice"
    choices = "plate material"
    help    = "What the container round the bladder is made of."
    how     = "Magnet on its side; a moulded one has no seams."
  }
  particular "container_thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "0.5 mm to 15 mm"
    help      = "Wall of the container."
    how       = "Caliper on the flange of the lid, or ultrasonic on a side panel."
  }
  particular "capacity" {
    kind      = "volume"
    unit      = "l"
    plausible = "5 l to 200 l"
    help      = "What it holds."
    how       = "Stamped on the container, less foam; or fill it from a calibrated can until the vent weeps."
  }
  particular "straps" {
    kind      = "count"
    plausible = "0 to 8"
    help      = "Straps or frames that hold the container."
    how       = "Count the metal straps that go round it and are bolted through the floor with plates."
  }
  particular "distance_to_rear" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 2500 mm"
    help      = "Least distance from the container to the rear panel of the shell."
    how       = "Rule from the container's rearmost corner to the inside of the rear panel."
  }
  particular "filler_shuts_itself" {
    kind = "yes or no"
    help = "Whether the filler neck has a valve that shuts when the neck tears off."
    how  = "Flap on the filler plate, pushed open with a wooden rod: it must spring shut."
  }
}

part "fuel_tank" {
  place = "underneath"
  stage = "before trim"
  help  = "The car maker's own fuel tank, where it is still in use."

  particular "original" {
    kind = "yes or no"
    help = "Whether it is the maker's tank in the maker's place."
    how  = "Part number moulded or stamped on it, and the homologation form's drawing of its place."
  }
  particular "capacity" {
    kind      = "volume"
    unit      = "l"
    plausible = "5 l to 200 l"
    help      = "What the maker's tank holds."
    how       = "From the owner's handbook or homologation form."
  }
  particular "guarded" {
    kind = "yes or no"
    help = "Whether a guard protects it from stones."
    how  = "From below, on the lift: all of the tank that faces forward or down."
  }
  particular "filler_in_cockpit" {
    kind = "yes or no"
    help = "Whether filler or its pipe runs through the crew's compartment without a liquid-tight casing."
    how  = "Trim panel off on the filler's side, follow the pipe to the tank."
  }
}

part "tank_compartment" {
  place = "luggage area"
  stage = "before trim"
  help  = "The space the fuel cell stands in."

  particular "sealed_from_cockpit" {
    kind = "yes or no"
    help = "Whether it is liquid-tight and flame-tight towards the crew."
    how  = "Lamp inside the compartment at night, look from the seats; then smoke from a match along the seams."
  }
  particular "drained" {
    kind = "yes or no"
    help = "Whether spilt fuel can run out to the ground."
    how  = "Pour a cup of water beside the cell and look under the car."
  }
  particular "drain_diameter" {
    kind          = "length"
    unit          = "mm"
    plausible     = "3 mm to 100 mm"
    may_be_absent = true
    help          = "Diameter of the drain; none without one."
    how           = "Largest drill shank that passes the hole from below."
  }
  particular "ventilated" {
    kind = "yes or no"
    help = "Whether air can pass through it to the outside."
    how  = "Hold a strip of paper at the opening with compressed air at the other."
  }
}

part "fuel_pump" {
  plural = "fuel_pumps"
  place  = "luggage area"
  stage  = "before trim"
  labels = "pump"
  help   = "A fuel pump."

  particular "place" {
    kind = "choice"
    value "in the tank" { synonyms = ["in tank", "inside the tank"] }
    value "tank compartment" { synonyms = ["beside the tank"] }
    value "under the floor" { synonyms = ["underbody"] }
    value "engine bay" {}
    value "cockpit" { means = "in the crew's space, boxed or not" }
    help = "Where it sits."
    how  = "Switch it on and follow the hum."
  }
  particular "stops_with_engine" {
    kind = "yes or no"
    help = "Whether it runs only while the engine runs or is being started."
    how  = "Ignition on without cranking: it may prime for a few seconds, then must be silent; stall the engine and listen again."
  }
  particular "working_pressure" {
    kind      = "pressure"
    unit      = "bar"
    plausible = "0.1 bar to 250 bar"
    help      = "Pressure it delivers at idle."
    how       = "Gauge on a tee behind the filter, engine idling."
  }
  particular "ready_to_connect" {
    kind = "yes or no"
    help = "Whether it is plumbed and wired so that it can be switched in at once."
    how  = "Pull the plug of the running one, plug in this one, start the engine."
  }
}

choices "pump" {
  value "main" { synonyms = ["first", "primary"] }
  value "standby" { synonyms = ["second", "spare", "reserve", "backup"] }
  value "lift" { synonyms = ["low pressure", "transfer"] }
}

part "vent" {
  plural = "vents"
  place  = "luggage area"
  stage  = "before trim"
  help   = "A breather of the fuel tank or cell."

  particular "outlet" {
    kind = "choice"
    value "outside the body" { synonyms = ["outside"] }
    value "under the floor" {}
    value "in the wheel arch" {}
    value "cockpit" {}
    value "luggage area" { synonyms = ["boot", "trunk"] }
    help = "Where it ends."
    how  = "Blow through from the tank end and feel for the air."
  }
  particular "rollover_valve" {
    kind = "yes or no"
    help = "Whether it shuts when the car is on its roof."
    how  = "Take the valve out, turn it over and blow: nothing must pass."
  }
  particular "distance_behind_cockpit" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 3000 mm"
    help      = "How far behind the crew's compartment it ends."
    how       = "Plumb line at the rear bulkhead, tape back to the outlet along the floor."
  }
  particular "bore" {
    kind      = "length"
    unit      = "mm"
    plausible = "2 mm to 60 mm"
    help      = "Inside diameter of the hose."
    how       = "Drill shank in the hose's open end."
  }
}

part "line" {
  plural = "lines"
  place  = "underneath"
  stage  = "before trim"
  help   = "A pipe or hose for fuel, oil, brake fluid, coolant or air."

  particular "fluid" {
    kind = "choice"
    value "fuel" { synonyms = ["petrol"] }
    value "fuel return" {}
    value "engine oil" { synonyms = ["oil", "lubricating oil"] }
    value "brake fluid" { synonyms = ["brake", "brakes"] }
    value "clutch fluid" { synonyms = ["clutch"] }
    value "hydraulic oil" { synonyms = ["hydraulic", "power steering"] }
    value "coolant" { synonyms = ["water", "cooling water"] }
    value "air" { synonyms = ["charge air"] }
    help = "What runs in it."
    how  = "Follow it from one end to the other, do not go by colour."
  }
  particular "runs_through" {
    kind = "choice"
    value "cockpit" { synonyms = ["inside", "interior"] }
    value "underneath" { synonyms = ["under the floor", "outside"] }
    value "engine bay" {}
    value "luggage area" { synonyms = ["boot", "trunk"] }
    help = "Where most of it runs."
    how  = "Write one block a stretch where it changes, with the bulkhead as the border."
  }
  particular "form" {
    kind = "choice"
    value "metal pipe" { synonyms = ["rigid", "steel pipe", "copper-nickel pipe", "hard line"] }
    value "metal-braided hose" { synonyms = ["braided", "braided hose", "aviation type", "steel braided", "stainless braided hose"] }
    value "textile-braided hose" { synonyms = ["aramid-braided hose"] }
    value "rubber hose" { synonyms = ["hose"] }
    value "original" { synonyms = ["maker's line"] }
    help = "What sort of line it is."
    how  = "Look at a cut end or fitting: metal braid shines under a scratched cover."
  }
  particular "working_pressure" {
    kind      = "pressure"
    unit      = "bar"
    plausible = "0.1 bar to 1000 bar"
    measured  = false
    help      = "Greatest pressure it works at in this car."
    how       = "From the regulator, pump or relief valve that feeds it, not from the hose's print."
  }
  particular "burst_pressure" {
    kind       = "pressure"
    unit       = "bar"
    plausible  = "1 bar to 3000 bar"
    measured   = false
    changeable = false
    help       = "Least bursting pressure of hose and fittings."
    how        = "Data sheet of the hose for its size; printed working pressure is a quarter to a half of it."
  }
  particular "rated_temperature" {
    kind       = "temperature"
    unit       = "degC"
    plausible  = "40 degC to 600 degC"
    measured   = false
    changeable = false
    help       = "Temperature up to which that bursting pressure holds."
    how        = "From the same data sheet; lined hoses differ by their lining."
  }
  particular "joints_in_cockpit" {
    kind      = "count"
    plausible = "0 to 20"
    help      = "Joints of it inside the crew's compartment."
    how       = "Run a hand along it with the carpets out; bulkhead unions count apart."
  }
  particular "screwed_joints" {
    kind = "yes or no"
    help = "Whether its joints are screwed, crimped or self-sealing, not clipped."
    how  = "Look at each end: a worm-drive clip is not a screwed joint."
  }
  particular "protected" {
    kind = "yes or no"
    help = "Whether it is out of the way of stones, heat and moving parts."
    how  = "Turn the wheels lock to lock on the lift and look along it, exhaust cold and torch in hand."
  }
  particular "greatest_clip_distance" {
    kind      = "length"
    unit      = "mm"
    plausible = "20 mm to 3000 mm"
    help      = "Longest stretch between two clips."
    how       = "Tape along it between clips, the longest gap counts."
  }
  particular "end_of_life" {
    kind          = "date"
    plausible     = "1980 to 2150"
    may_be_absent = true
    help          = "When the hose is to be renewed; none for pipe or hose without a limit."
    how           = "Quarter and year printed along the hose plus the life its maker gives."
  }
}

part "bulkhead" {
  plural = "bulkheads"
  place  = "cockpit"
  stage  = "before trim"
  labels = "bulkhead"
  help   = "A wall between the crew and engine or fuel."

  particular "material" {
    kind    = "choice"
    choices = "plate material"
    help    = "What it is made of."
    how     = "Magnet, and a look at the edge of a cable hole."
  }
  particular "thickness" {
    kind      = "length"
    unit      = "mm"
    plausible = "0.3 mm to 20 mm"
    help      = "Thickness of its sheet."
    how       = "Caliper at the edge of a hole, or on the offcut kept from making it."
  }
  particular "liquid_tight" {
    kind = "yes or no"
    help = "Whether no liquid gets through."
    how  = "Hose it down from the other side with the crew's side dry, and feel along the lower edge."
  }
  particular "flame_resistant" {
    kind = "yes or no"
    help = "Whether wall, seals and windows in it resist fire."
    how  = "No foam, plain plastic or tape in it; sealant by its data sheet."
  }
  particular "largest_gap" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 100 mm"
    help      = "Widest gap in it or round what passes through."
    how       = "Feeler gauges or drill shanks at pedal box, loom and pipe holes."
  }
}

choices "bulkhead" {
  value "engine" { synonyms = ["front", "firewall"] }
  value "fuel" { synonyms = ["rear", "tank"] }
  value "luggage" { synonyms = ["boot", "trunk"] }
}
