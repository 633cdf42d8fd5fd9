# Reads the notes when B. Oakhollow is at sea.

crew "C. Withyham" {
  dressed_mass    = "81 kg"
  reflective_vest = true

  helmet {
    standard          = "FIA 8860-2010"
    serial            = "CR-10-00931"
    made              = "2018-06"
    not_after         = "none"
    restraint_anchors = true
    damaged           = false
    altered           = false
  }

  head_restraint {
    standard     = "FIA 8858-2010"
    serial       = "YK-10277"
    made         = "2024-02"
    tethers_made = "2024-02"
    damaged      = false
  }

  garment "overalls" {
    standard            = "FIA 8856-2018"
    homologation_number = "XRS 322 20"
    made                = "2023-11"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "underwear top" {
    standard            = "FIA 8856-2018"
    homologation_number = "XUW 102 20"
    made                = "2023-11"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "underwear bottoms" {
    standard            = "FIA 8856-2018"
    homologation_number = "XUW 103 20"
    made                = "2023-11"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "balaclava" {
    standard            = "FIA 8856-2018"
    homologation_number = "XBC 044 20"
    made                = "2023-11"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "socks" {
    standard            = "FIA 8856-2018"
    homologation_number = "XSO 051 20"
    made                = "2023-11"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }

  garment "shoes" {
    standard            = "FIA 8856-2018"
    homologation_number = "XSH 220 19"
    made                = "2023-11"
    not_after           = "none"
    sewn_through        = false
    damaged             = false
  }
}
