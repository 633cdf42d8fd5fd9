# A small invented season for trying the commands.

season "2027" {
  event "Kettleford Opening Stages" {
    first_day = "2027-03-13"
    last_day  = "2027-03-14"
  }
}
