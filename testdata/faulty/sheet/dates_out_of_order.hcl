car "Tessel 16" {}
fuel_cell {
  made              = "2022-06"
  recertified       = ["2024-06-10", "2026-06-10"] # want 23 happened-twice `Found 2 dates as recertified of the fuel_cell\. A fuel cell has that once at most\. Write the one that its papers name; what came after it does not count\.$`
  recertified_until = "2021" # want 23 dates-order `Found "2021" as recertified_until of the fuel_cell, whose made is 2022-06: it would have ended before\. Look at both dates\.$`
  first_used        = "2022-05" # want 23 dates-order `Found "2022-05" as first_used of the fuel_cell, whose made is 2022-06: it was not there yet\. Look at both dates\.$`
  foam_renewed      = ["2021-03", "2024-03", "soon"] # want 47 date-form `"soon" is not a date in the form that is read here\. Write a date as 2027-03-14, or 2027-03 or 2027 where no more is known\.$`
}
fire_system {
  serviced    = ["2026-05", "2024-04-30"]
  service_due = "2026-04" # want 17 dates-order `Found "2026-04" as service_due of the fire_system, whose serviced is 2026-05: it would have been due before\. Look at both dates\.$`
  first_used  = ["2024-05"] # want 17 wrong-kind `Found a list as first_used of the fire_system\. Write a day, month or year in double quotes, as in "2027-03-14", "2027-03" or "2027"\.$`
  fire_bottle "1" {
    made        = "2025-03"
    serviced    = ["2027-03-01", "2025-02-28"] # want 19 dates-order `Found "2025-02-28" as serviced of the fire_bottle "1", whose made is 2025-03: it was not there yet\. Look at both dates\.$`
    weighed_on  = [] # want 19 list-empty `Found an empty list as weighed_on of the fire_bottle "1"\. Write the day, or "none" where there was none\.$`
    recertified = "2024" # want 19 dates-order `Found "2024" as recertified of the fire_bottle "1", whose made is 2025-03: it was not there yet\. Look at both dates\.$`
    not_after   = "2024" # want 19 dates-order `Found "2024" as not_after of the fire_bottle "1", whose made is 2025-03: it would have ended before\. Look at both dates\.$`
  }
}
extinguisher "1" {
  made     = "2025-03-14"
  serviced = "2025-03"
}
extinguisher "2" {
  made     = "2025-03-14"
  serviced = "2025-02" # want 14 dates-order `Found "2025-02" as serviced of the extinguisher "2", whose made is 2025-03-14: it was not there yet\. Look at both dates\.$`
}
seat "driver" {
  made           = "2020-02"
  recertified    = ["2025-02", "2027-02", "2029-02"] # want 20 happened-twice `Found 3 dates as recertified of the seat "driver"\. A seat has that once at most\. Write the one that its papers name; what came after it does not count\.$`
  extended_until = "2024"
}
seat "co-driver" {
  recertified    = ["2025-02"]
  extended_until = "2024" # want 20 dates-order `Found "2024" as extended_until of the seat "co-driver", whose recertified is 2025-02: it would have ended before\. Look at both dates\.$`
}
cage {
  built    = "2024-03"
  modified = "2023-11" # want 14 dates-order `Found "2023-11" as modified of the cage, whose built is 2024-03: it was not there yet\. Look at both dates\.$`
  certificate {
    issued      = "2024-05-02"
    not_after   = "2024-05-01" # want 19 dates-order `Found "2024-05-01" as not_after of the certificate, whose issued is 2024-05-02: it would have ended before\. Look at both dates\.$`
    recertified = "2024-04-30" # want 19 dates-order `Found "2024-04-30" as recertified of the certificate, whose issued is 2024-05-02: there was none yet\. Look at both dates\.$`
  }
}
