# Worked cases for what is new in 2028; the others stand with the edition of 2027.

worked_case "strap in its fifth year" {
  clause = "8.2"
  on     = "2028-12-31"
  as_built {
    harness "driver" {
      strap "left lap" {
        not_after = "none"
        made      = "2024-02"
      }
    }
  }
  answer = "meets"
  reason = "2024 was the first year; the fifth ends today."
}

worked_case "strap after its fifth year" {
  clause = "8.2"
  on     = "2028-01-01"
  as_built {
    harness "driver" {
      strap "left lap" {
        not_after = "none"
        made      = "2023-11"
      }
    }
  }
  answer = "gap"
  reason = "2027 was the fifth, however late in 2023 it was made."
}

worked_case "foot of a cage of 2028" {
  clause = "6.7"
  on     = "2028-10-14"
  as_built {
    cage {
      route = "built to the tables"
      built = "2028-02-03"
    }
    foot "main hoop left" { foot_thickness = "3 mm" }
  }
  answer = "gap"
  reason = "This edition was in force on the day the cage was built, and asks for 4 mm."
}
