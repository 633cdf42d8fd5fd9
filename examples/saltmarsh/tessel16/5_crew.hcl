# What the crew wear.

# Where their helmets are, belted in; taken as balls of a helmet's half width.

head "driver" {
  top           = ["-1560 mm", "370 mm", "1240 mm"]
  tolerance     = "10 mm"
  helmet_radius = "140 mm"
}

head "co-driver" {
  top           = ["-1560 mm", "-370 mm", "1245 mm"]
  tolerance     = "10 mm"
  helmet_radius = "140 mm"
}

crew_member "driver" {
  dressed_mass    = "89 kg"
  reflective_vest = true

  helmet {
    standard          = "FIA 8859-2015"
    serial            = "PL-15-33071"
    made              = "2023-04"
    not_after         = "none"
    restraint_anchors = true
    damaged           = false
    altered           = false
  }

  head_restraint {
    standard     = "FIA 8858-2010"
    serial       = "YK-8812"
    made         = "2022-09"
    tethers_made = "2024-06"
    damaged      = false
  }

  garment "overalls" {
    standard            = "FIA 8856-2018"
    homologation_number = "XRS 315 19"
    made                = "2022-05"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "underwear top" {
    standard            = "FIA 8856-2018"
    homologation_number = "XUW 102 20"
    made                = "2022-05"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "underwear bottoms" {
    standard            = "FIA 8856-2018"
    homologation_number = "XUW 103 20"
    made                = "2022-05"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "balaclava" {
    standard            = "FIA 8856-2018"
    homologation_number = "XBC 044 20"
    made                = "2022-05"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "socks" {
    standard            = "FIA 8856-2018"
    homologation_number = "XSO 051 20"
    made                = "2022-05"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "shoes" {
    standard            = "FIA 8856-2018"
    homologation_number = "XSH 220 19"
    made                = "2023-02"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "gloves" {
    standard            = "FIA 8856-2018"
    homologation_number = "XGL 187 19"
    made                = "2024-03"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }
}

crew_member "co-driver" {
  dressed_mass    = "74 kg"
  reflective_vest = true

  helmet {
    standard          = "Snell SA2020"
    serial            = "PL-20-50118"
    made              = "2021-11"
    not_after         = "none"
    restraint_anchors = true
    damaged           = false
    altered           = false
  }

  head_restraint {
    standard     = "SFI 38.1"
    serial       = "NW-20417"
    made         = "2023-03"
    tethers_made = "2025-04"
    damaged      = false
  }

  garment "overalls" {
    standard            = "FIA 8856-2000"
    homologation_number = "XRS 208 14"
    made                = "2016-08"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "underwear top" {
    standard            = "ISO 14460"
    homologation_number = "none"
    made                = "2019-01"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "underwear bottoms" {
    standard            = "ISO 14460"
    homologation_number = "none"
    made                = "2019-01"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "balaclava" {
    standard            = "FIA 8856-2000"
    homologation_number = "XBC 019 13"
    made                = "2019-01"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "socks" {
    standard            = "SFI 3.3"
    homologation_number = "none"
    made                = "2023-03"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "shoes" {
    standard            = "FIA 8856-2000"
    homologation_number = "XSH 141 13"
    made                = "2016-08"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }
}
