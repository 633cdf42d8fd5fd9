# Equipment standards and other lists of values that several particulars share.
# Published standards are named by their own numbers; synonyms are the ways they are
# written on labels, in passports and in conversation.

choices "harness standard" {
  value "FIA 8853-2016" {
    synonyms = ["8853-2016", "8853/2016", "FIA 8853/2016"]
    means    = "safety harness, the label ends with a year of validity"
  }
  value "FIA 8853/98" {
    synonyms = ["8853/98", "8853-1998", "FIA 8853-1998", "8853-98", "FIA 8853-98", "FIA 8853/1998"]
    means    = "safety harness, the standard before 8853-2016"
  }
  value "FIA 8854/98" {
    synonyms = ["8854/98", "8854-1998", "FIA 8854-1998", "8854-98", "FIA 8854-98"]
    means    = "four-strap harness"
  }
  value "SFI 16.1" {
    synonyms = ["SFI Spec 16.1", "16.1"]
    means    = "driver restraint assembly, label with month and year of manufacture"
  }
  value "SFI 16.2" { synonyms = ["SFI Spec 16.2", "16.2"] }
  value "SFI 16.5" {
    synonyms = ["SFI Spec 16.5", "16.5"]
    means    = "stock car driver restraint assembly"
  }
  value "SFI 16.6" { synonyms = ["SFI Spec 16.6", "16.6"] }
  value "ECE R16" {
    synonyms = ["UN R16", "road belt", "standard belt", "seat belt"]
    means    = "the belt of a road car"
  }
  value "other" {
    means = "another standard; name it in a note"
  }
  value "unlabelled" {
    synonyms = ["no standard", "no label"]
    means    = "no label of a standard can be found or read"
  }
}

choices "seat standard" {
  value "FIA 8855-1999" {
    synonyms = ["8855-1999", "8855/1999", "FIA 8855/1999"]
    means    = "competition seat"
  }
  value "FIA 8855-2021" {
    synonyms = ["8855-2021", "8855/2021", "FIA 8855/2021"]
    means    = "competition seat, the standard after 8855-1999"
  }
  value "FIA 8862-2009" {
    synonyms = ["8862-2009", "8862/2009", "FIA 8862/2009"]
    means    = "advanced competition seat, homologated with its supports"
  }
  value "SFI 39.1" {
    synonyms = ["SFI Spec 39.1", "39.1"]
    means    = "stock car type seat, custom made"
  }
  value "SFI 39.2" {
    synonyms = ["SFI Spec 39.2", "39.2"]
    means    = "stock car type seat"
  }
  value "road seat" {
    synonyms = ["original seat", "standard seat", "production seat"]
    means    = "the seat of the road car"
  }
  value "other" {
    means = "another standard; name it in a note"
  }
  value "unlabelled" {
    synonyms = ["no standard", "no label"]
    means    = "no label of a standard can be found or read"
  }
}

choices "helmet standard" {
  value "FIA 8859-2024" { synonyms = ["8859-2024", "8859/2024"] }
  value "FIA 8859-2015" { synonyms = ["8859-2015", "8859/2015"] }
  value "FIA 8860-2018-ABP" {
    synonyms = ["8860-2018-ABP", "FIA 8860-2018 ABP", "8860-2018 ABP"]
    means    = "advanced helmet with advanced ballistic protection"
  }
  value "FIA 8860-2018" { synonyms = ["8860-2018", "8860/2018"] }
  value "FIA 8860-2010" { synonyms = ["8860-2010", "8860/2010"] }
  value "FIA 8860-2004" { synonyms = ["8860-2004", "8860/2004"] }
  value "Snell SA2025" { synonyms = ["SA2025", "SA 2025"] }
  value "Snell SA2020" { synonyms = ["SA2020", "SA 2020"] }
  value "Snell SA2015" { synonyms = ["SA2015", "SA 2015"] }
  value "Snell SA2010" { synonyms = ["SA2010", "SA 2010"] }
  value "Snell SAH2010" {
    synonyms = ["SAH2010", "SAH 2010"]
    means    = "SA2010 with anchors for a head restraint"
  }
  value "Snell SA2005" { synonyms = ["SA2005", "SA 2005"] }
  value "SFI 31.1" { synonyms = ["SFI Spec 31.1", "31.1"] }
  value "BS 6658-85 type A/FR" {
    synonyms = ["BS 6658", "BS 6658-85", "BS6658 A/FR"]
    means    = "British standard, fire resistant lining"
  }
  value "ECE R22" {
    synonyms = ["UN R22", "ECE 22.05", "ECE 22.06"]
    means    = "motorcycle helmet without fire resistant lining"
  }
  value "other" { means = "another standard; name it in a note" }
  value "unlabelled" {
    synonyms = ["no standard", "no label"]
    means    = "no label of a standard can be found or read"
  }
}

choices "head restraint standard" {
  value "FIA 8858-2010" { synonyms = ["8858-2010", "8858/2010"] }
  value "FIA 8858-2002" { synonyms = ["8858-2002", "8858/2002"] }
  value "SFI 38.1" {
    synonyms = ["SFI Spec 38.1", "38.1"]
    means    = "head and neck restraint, label with month and year"
  }
  value "other" { means = "another standard; name it in a note" }
  value "unlabelled" {
    synonyms = ["no standard", "no label"]
    means    = "no label of a standard can be found or read"
  }
}

choices "clothing standard" {
  value "FIA 8856-2018" { synonyms = ["8856-2018", "8856/2018"] }
  value "FIA 8856-2000" { synonyms = ["8856-2000", "8856/2000"] }
  value "FIA 1986" {
    synonyms = ["FIA 1986 standard", "1986 standard"]
    means    = "the standard before 8856-2000"
  }
  value "SFI 3.2A/1" { synonyms = ["3.2A/1"] }
  value "SFI 3.2A/3" { synonyms = ["3.2A/3"] }
  value "SFI 3.2A/5" { synonyms = ["3.2A/5"] }
  value "SFI 3.2A/10" { synonyms = ["3.2A/10"] }
  value "SFI 3.2A/15" { synonyms = ["3.2A/15"] }
  value "SFI 3.2A/20" { synonyms = ["3.2A/20"] }
  value "SFI 3.2A" {
    synonyms = ["SFI Spec 3.2A", "3.2A"]
    means    = "driver suit, rating behind the stroke not known"
  }
  value "SFI 3.3" {
    synonyms = ["SFI Spec 3.3", "3.3"]
    means    = "underwear, balaclava, gloves, shoes"
  }
  value "ISO 14460" { means = "protective clothing for car racing drivers" }
  value "other" { means = "another standard; name it in a note" }
  value "unlabelled" {
    synonyms = ["no standard", "no label"]
    means    = "no label of a standard can be found or read"
  }
}

choices "fuel cell standard" {
  value "FIA FT3-1999" { synonyms = ["FT3-1999", "FT3 1999", "FIA FT3", "FT3"] }
  value "FIA FT3.5-1999" { synonyms = ["FT3.5-1999", "FT3.5 1999", "FIA FT3.5", "FT3.5"] }
  value "FIA FT5-1999" { synonyms = ["FT5-1999", "FT5 1999", "FIA FT5", "FT5"] }
  value "SFI 28.1" { synonyms = ["SFI Spec 28.1", "28.1"] }
  value "SFI 28.2" { synonyms = ["SFI Spec 28.2", "28.2"] }
  value "SFI 28.3" { synonyms = ["SFI Spec 28.3", "28.3"] }
  value "other" { means = "another standard; name it in a note" }
  value "unlabelled" {
    synonyms = ["no standard", "no label"]
    means    = "no label of a standard can be found or read"
  }
}

choices "fire system standard" {
  value "FIA 8865-2015" {
    synonyms = ["8865-2015", "8865/2015", "technical list 52", "TL52"]
    means    = "plumbed-in system of technical list 52"
  }
  value "FIA 1999" {
    synonyms = ["FIA TL16", "TL16", "technical list 16", "FIA TL16 (1999)"]
    means    = "plumbed-in system of technical list 16"
  }
  value "SFI 17.1" {
    synonyms = ["SFI Spec 17.1", "17.1"]
    means    = "on-board fire suppression system"
  }
  value "other" { means = "another standard; name it in a note" }
  value "unlabelled" {
    synonyms = ["no standard", "no label"]
    means    = "no label of a standard can be found or read"
  }
}

choices "hand-held extinguisher standard" {
  value "EN 3" { synonyms = ["EN 3-7", "BS EN 3", "DIN EN 3"] }
  value "AS/NZS 1841" { synonyms = ["AS 1841"] }
  value "UL rated" { synonyms = ["UL 299", "UL 711", "UL listed"] }
  value "other" { means = "another standard; name it in a note" }
  value "unlabelled" {
    synonyms = ["no standard", "no label"]
    means    = "no label of a standard can be found or read"
  }
}

choices "padding standard" {
  value "FIA 8857-2001" {
    synonyms = ["8857-2001", "8857/2001", "8857-2001 type A", "8857-2001 type B"]
    means    = "padding for where a helmet can hit"
  }
  value "SFI 45.1" { synonyms = ["SFI Spec 45.1", "45.1"] }
  value "SFI 45.2" {
    synonyms = ["SFI Spec 45.2", "45.2"]
    means    = "high density padding for where a helmet can hit"
  }
  value "plain foam" {
    synonyms = ["pipe lagging", "soft foam"]
    means    = "foam without a standard's label"
  }
  value "other" { means = "another standard; name it in a note" }
}

choices "window net standard" {
  value "SFI 27.1" { synonyms = ["SFI Spec 27.1", "27.1"] }
  value "FIA 8863-2013" {
    synonyms = ["8863-2013", "8863/2013"]
    means    = "racing net beside the head"
  }
  value "other" { means = "another standard; name it in a note" }
  value "unlabelled" {
    synonyms = ["no standard", "no label"]
    means    = "no label of a standard can be found or read"
  }
}

choices "tyre standard" {
  value "ECE R30" {
    synonyms = ["UN R30", "E-marked road tyre"]
    means    = "passenger car road tyre with the E mark"
  }
  value "ECE R54" {
    synonyms = ["UN R54"]
    means    = "commercial vehicle tyre with the E mark"
  }
  value "DOT" {
    synonyms = ["DOT marked", "FMVSS 139"]
    means    = "marked for road use in North America, without an E mark"
  }
  value "listed competition tyre" {
    synonyms = ["listed tyre"]
    means    = "on the list of rally tyres that the rulebook names"
  }
  value "competition tyre" {
    synonyms = ["race tyre", "not for road use"]
    means    = "no road mark and on no list"
  }
}

choices "bolt grade" {
  value "8.8" { synonyms = ["ISO 8.8", "class 8.8"] }
  value "10.9" { synonyms = ["ISO 10.9", "class 10.9"] }
  value "12.9" { synonyms = ["ISO 12.9", "class 12.9"] }
  value "SAE grade 5" { synonyms = ["grade 5"] }
  value "SAE grade 8" { synonyms = ["grade 8"] }
  value "A2-70" { synonyms = ["stainless A2-70"] }
  value "A4-80" { synonyms = ["stainless A4-80"] }
  value "4.6 to 6.8" {
    synonyms = ["4.6", "4.8", "5.6", "5.8", "6.8"]
    means    = "a marked bolt below class 8.8"
  }
  value "unmarked" {
    synonyms = ["no marking", "no grade"]
    means    = "no grade on the head: to be taken as the weakest"
  }
}

choices "date label" {
  value "day, month and year" { means = "a full date of manufacture" }
  value "month and year" { means = "such as 02/2013" }
  value "year only" { means = "only the year of manufacture" }
  value "not valid after" {
    synonyms = ["valid until", "expiry date"]
    means    = "the label names the last year or day of validity"
  }
  value "no date" { means = "a label without any date" }
  value "label missing" {
    synonyms = ["label unreadable", "no label"]
    means    = "the label is gone or cannot be read"
  }
}

choices "tube material" {
  value "unalloyed carbon steel" {
    synonyms = ["carbon steel", "mild steel", "carbon-manganese steel", "E235", "E355", "St 52", "SAE 1020", "SAE 1026"]
    means    = "non-alloy steel; carbon and manganese as the certificate says"
  }
  value "T45" {
    synonyms = ["BS 4T45", "T45 manganese steel"]
    means    = "aircraft grade carbon-manganese steel"
  }
  value "25CrMo4" {
    synonyms = ["4130", "SAE 4130", "chromium-molybdenum steel", "chrome moly", "AISI 4130", "chromoly", "cromoly"]
    means    = "chromium-molybdenum steel"
  }
  value "15CDV6" {
    synonyms = ["1.7734"]
    means    = "chromium-molybdenum-vanadium steel"
  }
  value "high-strength low-alloy steel" {
    synonyms = ["HSLA", "HSLA steel", "dual-phase steel"]
    means    = "micro-alloyed or dual-phase steel"
  }
  value "structural steel" {
    synonyms = ["S235", "S355", "AS 1163 C350", "AS 1163 C250"]
    means    = "hollow section or pipe for buildings"
  }
  value "stainless steel" {}
  value "aluminium alloy" { synonyms = ["aluminum alloy", "aluminium", "aluminum"] }
  value "titanium alloy" { synonyms = ["titanium"] }
  value "unknown" { means = "no certificate and no marking; say how it was bought in a note" }
  value "other" { means = "another material; name it in a note" }
}

choices "tube forming" {
  value "cold drawn seamless" {
    synonyms = ["CDS", "seamless", "cold-drawn seamless"]
    means    = "no weld seam anywhere"
  }
  value "drawn over mandrel" {
    synonyms = ["DOM", "CEW", "A513 type 5"]
    means    = "welded, then drawn cold: a seam can be found by etching"
  }
  value "electric resistance welded" {
    synonyms = ["ERW", "welded"]
    means    = "a seam can be felt or seen inside"
  }
  value "hot finished seamless" { synonyms = ["HFS", "hot rolled seamless"] }
  value "unknown" { means = "cannot be told any more" }
}

choices "plate material" {
  value "steel" { synonyms = ["mild steel", "carbon steel"] }
  value "stainless steel" {}
  value "aluminium alloy" { synonyms = ["aluminium", "aluminum", "light alloy"] }
  value "composite" { synonyms = ["carbon", "carbon fibre", "aramid", "glass fibre", "GRP", "carbon fiber", "fibreglass", "fiberglass"] }
  value "plastic" { synonyms = ["polyethylene", "polyamide", "nylon", "polypropylene"] }
  value "rubber" {}
  value "titanium" { synonyms = ["titanium alloy"] }
  value "magnesium alloy" { synonyms = ["magnesium"] }
  value "other" { means = "another material; name it in a note" }
}

choices "extinguishing agent" {
  value "AFFF" {
    synonyms = ["foam", "aqueous film-forming foam", "fluorine-free foam"]
    means    = "foam concentrate in water"
  }
  value "FK-5-1-12" {
    synonyms = ["fluoroketone"]
    means    = "clean agent, liquid in the bottle"
  }
  value "HFC-236fa" {}
  value "HFC-227ea" {}
  value "powder" {
    synonyms = ["dry powder", "ABC powder", "BC powder"]
    means    = "powder under pressure, its gauge shows the pressure"
  }
  value "carbon dioxide" { synonyms = ["CO2"] }
  value "water mist" { synonyms = ["water", "water with additive"] }
  value "halon 1211" {
    synonyms = ["BCF"]
    means    = "banned nearly everywhere"
  }
  value "halon 1301" { means = "banned nearly everywhere" }
  value "HCFC blend" {
    synonyms = ["NAF"]
    means    = "banned by most rulebooks"
  }
  value "other" { means = "another agent; name it in a note" }
}

choices "crew place" {
  value "driver" {}
  value "co-driver" { synonyms = ["codriver", "co driver", "navigator", "passenger"] }
}

choices "wheel place" {
  value "front left" { synonyms = ["left front", "LF", "FL"] }
  value "front right" { synonyms = ["right front", "RF", "FR"] }
  value "rear left" { synonyms = ["left rear", "LR", "RL"] }
  value "rear right" { synonyms = ["right rear", "RR"] }
}

choices "wheel place or spare" {
  value "front left" { synonyms = ["left front", "LF", "FL"] }
  value "front right" { synonyms = ["right front", "RF", "FR"] }
  value "rear left" { synonyms = ["left rear", "LR", "RL"] }
  value "rear right" { synonyms = ["right rear", "RR"] }
  value "spare" { synonyms = ["first spare"] }
  value "second spare" {}
}

choices "ends of the car" {
  value "front" {}
  value "rear" { synonyms = ["back"] }
}

choices "who reaches it" {
  value "both" { synonyms = ["both of the crew", "driver and co-driver"] }
  value "driver" { synonyms = ["driver only"] }
  value "co-driver" { synonyms = ["co-driver only", "navigator only", "codriver", "navigator"] }
  value "nobody" { synonyms = ["neither"] }
}
