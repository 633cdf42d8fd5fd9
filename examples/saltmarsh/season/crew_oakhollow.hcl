# Reads the notes. The head restraint ends on the last day of March 2028.

crew "B. Oakhollow" {
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
