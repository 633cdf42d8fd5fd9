# What the crew wear.

part "crew_member" {
  plural = "crew_members"
  labels = "crew place"
  place  = "crew"
  stage  = "before event"
  help   = "One of the crew, as far as it is about equipment."

  particular "dressed_mass" {
    kind      = "mass"
    unit      = "kg"
    plausible = "35 kg to 220 kg"
    help      = "Mass of the person in full equipment."
    how       = "Bathroom scale with suit, shoes, helmet and head restraint on."
  }
  particular "reflective_vest" {
    kind = "yes or no"
    help = "Whether a high-visibility vest for this person is in the car."
    how  = "It must be reached from the seat, not lie in the boot under the spare wheel."
  }
}

part "head" {
  plural = "heads"
  labels = "crew place"
  place  = "cockpit"
  stage  = "before trim"
  help   = "Where the helmet of one of the crew is, seated and belted in."

  particular "top" {
    kind  = "point"
    fills = ["top_x", "top_y", "top_z"]
    help  = "The highest place of the helmet, on the axes of the cage."
    how   = "Person belted in with the helmet on, head against the rest: height gauge and plumb bob from the cage's datum."
  }
  particular "top_x" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    help      = "How far the top is forward of the origin; behind it is negative."
    how       = "Plumb bob from the helmet's highest place through the open door to a chalk line."
  }
  particular "top_y" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    help      = "How far the top is to the left of the origin; to the right is negative."
    how       = "Square from a cord along the middle of the roof to the helmet's highest place."
  }
  particular "top_z" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    help      = "How far the top is above the origin; below it is negative."
    how       = "Straight edge level on the helmet, height gauge from the datum to its underside."
  }
  particular "helmet_radius" {
    kind      = "length"
    unit      = "mm"
    plausible = "80 mm to 250 mm"
    help      = "Radius of the ball that the helmet is taken as."
    how       = "Half the helmet's greatest width, caliper or two squares on a table."
  }
  particular "clearance" {
    kind      = "length"
    unit      = "mm"
    plausible = "-500 mm to 3000 mm"
    derived   = true
    help      = "Distance from the helmet, taken as that ball, to the nearest tube's surface; negative where they touch."
    how       = "Slip of card and rule between the helmet and the nearest tube, padding left out."
  }
}

part "helmet" {
  within = "crew_member"
  place  = "crew"
  stage  = "before event"
  help   = "The helmet of one of the crew."

  particular "standard" {
    kind       = "choice"
    choices    = "helmet standard"
    changeable = false
    help       = "Standard on the helmet's label."
    how        = "Inside, under the comfort lining or on the chin strap: lift the lining at its press studs."
  }
  particular "homologation_number" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Homologation number of the helmet."
    how           = "In the line below the standard on the same label; an E or DOT number of a road helmet is none."
  }
  particular "serial" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Serial number of the helmet."
    how           = "On the same hologram or Snell sticker under the lining."
  }
  particular "label_kind" {
    kind       = "choice"
    choices    = "date label"
    changeable = false
    help       = "What date the helmet's label shows."
    how        = "Lift the lining at the back: most state a month or a full date of manufacture, youth ones a last year."
  }
  particular "made" {
    kind          = "date"
    plausible     = "1985 to 2100"
    may_be_absent = true
    changeable    = false
    help          = "Date of manufacture of the helmet; none when it shows none."
    how           = "Small sticker or date wheel in the shell, often with day and month; do not take the year of the standard for it."
  }
  particular "not_after" {
    kind          = "date"
    plausible     = "1990 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "End of validity printed in the helmet; none when it prints none."
    how           = "Only youth helmets and some composite ones carry it; the end of a standard stands in the rulebook, not in the helmet."
  }
  particular "first_used" {
    kind          = "date"
    plausible     = "1985 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "When the helmet was first worn; none when it is new."
    how           = "From the invoice; makers count their own advice of five years from it."
  }
  particular "restraint_anchors" {
    kind       = "yes or no"
    changeable = false
    help       = "Whether anchors for a head restraint of standard 8858 were fitted by the maker."
    how        = "Look for the posts on both sides and the 8858 label beside the helmet's own; anchors bolted on later show drilled paint."
  }
  particular "damaged" {
    kind = "yes or no"
    help = "Whether it was dropped, cracked, or has been in an accident."
    how  = "Press the shell together at the rim and listen; look inside for crushed foam behind the lining."
  }
  particular "altered" {
    kind = "yes or no"
    help = "Whether it was drilled, painted against the maker's rules or given foreign parts."
    how  = "Look for camera mounts, self-tapping screws of intercoms and paint over the labels."
  }
}

part "head_restraint" {
  within = "crew_member"
  place  = "crew"
  stage  = "before event"
  help   = "The frontal head restraint of one of the crew."

  particular "standard" {
    kind       = "choice"
    choices    = "head restraint standard"
    changeable = false
    help       = "Standard on the head restraint's label."
    how        = "Hologram on the back of the yoke, under the padding's edge."
  }
  particular "homologation_number" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Homologation number of the head restraint."
    how           = "On the hologram beside the standard, such as FHR.000.00."
  }
  particular "serial" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Serial number of the head restraint."
    how           = "Engraved or on the hologram, at the neck."
  }
  particular "label_kind" {
    kind       = "choice"
    choices    = "date label"
    changeable = false
    help       = "What date the head restraint's label shows."
    how        = "Look under the padding and inside the collar; holograms of standard 8858 mostly show none."
  }
  particular "made" {
    kind          = "date"
    plausible     = "1995 to 2100"
    may_be_absent = true
    changeable    = false
    help          = "Date of manufacture of the head restraint; none when it shows none."
    how           = "Under SFI 38.1 a punched month and year label on the yoke; FIA ones mostly carry none."
  }
  particular "first_used" {
    kind          = "date"
    plausible     = "1985 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "When it was first worn; none when it is new."
    how           = "From the invoice, or the entry in the owner's booklet."
  }
  particular "not_after" {
    kind          = "date"
    plausible     = "1990 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "End of validity on the head restraint's label; none when it has none."
    how           = "Only re-certified ones and some of standard 38.1 carry it, beside the punched month."
  }
  particular "recertified" {
    kind          = "date"
    plausible     = "1995 to 2100"
    happens       = "often"
    may_be_absent = true
    changeable    = false
    help          = "When its maker last re-certified it; none when never."
    how           = "Under SFI 38.1 a second punched label beside the first; without it a slip alone does not count."
  }
  particular "tethers_made" {
    kind          = "date"
    plausible     = "1995 to 2100"
    may_be_absent = true
    changeable    = false
    help          = "Date of manufacture of its tethers; none when they show none."
    how           = "Sewn-in tag on the tether itself; tethers get renewed apart from the yoke."
  }
  particular "damaged" {
    kind = "yes or no"
    help = "Whether yoke, tethers or clips are damaged or have been in an accident."
    how  = "Bend the collar gently by hand and look for white lines in the laminate, pull each clip."
  }
}

part "garment" {
  plural = "garments"
  within = "crew_member"
  place  = "crew"
  stage  = "before event"
  labels = "garment"
  help   = "A piece of protective clothing."

  particular "standard" {
    kind       = "choice"
    choices    = "clothing standard"
    changeable = false
    help       = "Standard of the garment."
    how        = "Embroidered at the collar of a suit, sewn-in label elsewhere; on gloves and shoes inside the cuff or tongue."
  }
  particular "homologation_number" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Homologation number of the garment."
    how           = "Below the standard's number on the label, with a hologram since 8856-2018."
  }
  particular "serial" {
    kind          = "text"
    may_be_absent = true
    changeable    = false
    help          = "Serial number of the garment."
    how           = "Below the hologram or on the washing label; suits of some makers carry it on the cuff."
  }
  particular "label_kind" {
    kind       = "choice"
    choices    = "date label"
    changeable = false
    help       = "What date the garment's label shows."
    how        = "Both sides of collar tag and washing label; the year of the standard is none."
  }
  particular "made" {
    kind          = "date"
    plausible     = "1985 to 2100"
    may_be_absent = true
    changeable    = false
    help          = "Date of manufacture of the garment; none when it shows none."
    how           = "On the washing label: year, or quarter and year; give a quarter as its last month, with a note."
  }
  particular "first_used" {
    kind          = "date"
    plausible     = "1985 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "When it was first worn; none when it is new."
    how           = "From the invoice; washing ages it more than its label does."
  }
  particular "not_after" {
    kind          = "date"
    plausible     = "1990 to 2150"
    may_be_absent = true
    changeable    = false
    help          = "End of validity on the garment's label; none when it has none."
    how           = "Look at the standard's own label; most garments carry no end."
  }
  particular "sewn_through" {
    kind = "yes or no"
    help = "Whether badges were sewn through all layers or printed on after sale."
    how  = "Turn it inside out: thread of a badge must not show on the inner lining."
  }
  particular "damaged" {
    kind = "yes or no"
    help = "Whether it is torn, burnt, worn thin or stained with fuel or oil."
    how  = "Hold knees, seat and elbows against a lamp; light through the outer cloth means worn."
  }
}

choices "garment" {
  value "overalls" { synonyms = ["suit", "race suit", "overall", "racing suit", "driving suit"] }
  value "underwear top" { synonyms = ["undershirt", "long-sleeved top", "underwear shirt"] }
  value "underwear bottoms" { synonyms = ["long johns", "underpants", "underwear trousers"] }
  value "balaclava" { synonyms = ["hood"] }
  value "socks" {}
  value "shoes" { synonyms = ["boots"] }
  value "gloves" {}
}
