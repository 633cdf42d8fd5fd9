season "2027" {
  event "Quarry Night" {
    first_day = "2027-05-15"
    last_day  = "2027-05-16"
    rulebook  = "/etc/rulebook" # want 17 rulebook-path `Found "/etc/rulebook" as rulebook of the event "Quarry Night"\. Write the path as seen from the season's folder, as in "\.\./rulebook"\.$`
  }
  event "Harbour Sprint" {
    first_day = "2027-06-12"
    last_day  = "2027-06-13"
    rulebook  = "..\\rulebook" # want 17 rulebook-path `Found "\.\.\\\\rulebook" as rulebook of the event "Harbour Sprint"\. Write / between folders: "\.\./rulebook"\.$`
  }
  event "Fell Stages" {
    first_day = "2027-06-19"
    last_day  = "2027-06-20"
    rulebook  = "rules/../../../../rulebook" # want 17 rulebook-path `Found "rules/\.\./\.\./\.\./\.\./rulebook" as rulebook of the event "Fell Stages"\. It leads more than 2 folders up\. Put the rulebook nearer to the season, or name it with --rulebook\.$`
  }
  event "Moor Stages" {
    first_day = "2027-06-26"
    last_day  = "2027-06-27"
    rulebook  = "https://saltmarsh.example/rulebook" # want 17 rulebook-path `Found "https://saltmarsh\.example/rulebook" as rulebook of the event "Moor Stages"\. It is no address of the net: put the rulebook beside the season, and write its path\.$`
  }
  event "Pass Stages" {
    first_day = "2027-07-03"
    last_day  = "2027-07-04"
    rulebook  = "C:/rulebook" # want 17 rulebook-path `Found "C:/rulebook" as rulebook of the event "Pass Stages"\. Write the path as seen from the season's folder, as in "\.\./rulebook"\.$`
  }
  event "Dunes" {
    first_day = "2027-07-10"
    last_day  = "2027-07-11"
    rulebook  = "../../rulebook"
  }
}
