# Drives. The same gear stands in the sheet of the Tessel 16, for a precheck without a season.

crew "A. Penrith-Vale" {
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
