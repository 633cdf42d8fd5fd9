car "Tessel 16" {
  incident "kerb" {} # want 3 block-misplaced `Found the block "incident" in the car "Tessel 16"\. It travels with the whole car: write it at the top level of the sheet, outside any other block\.$`
}
tube "5" {}
tube "6" {}
seat "driver" {}
harness "driver" {
  strap "left shoulder" {}
}
harness "co-driver" {
  strap "left shoulder" {}
}

logbook_note {} # want 1 label-count `Found 0 names of the logbook note\. Write one in double quotes, as in logbook_note "N3" \{\.$` 1 key-missing `The logbook note has no day\. Write day = "2027-05-16", with the day it is\. It is the day on which the note was written\.$` 1 key-missing `The logbook note has no text\. Write text = "…", as the inspector wrote it\.$`
logbook_note "N1" {} # want 1 key-missing `The logbook note "N1" has no day\. Write day = "2027-05-16", with the day it is\. It is the day on which the note was written\.$` 1 key-missing `The logbook note "N1" has no text\. Write text = "…", as the inspector wrote it\.$`
logbook_note "n1" { # want 1 said-twice `Found logbook note "n1" again; it was said first at papers\.hcl:15:1\. Keep one of the two\.$`
  day  = "2027-05-16"
  text = "Battery clamp loose."
}
logbook_note "N2" {
  day        = "2027-05-16"
  text       = "" # want 16 text-empty `The text of the logbook note "N2" is empty\. Write it out, as the inspector wrote it\.$`
  before     = "2027-05-15" # want 16 days-order `Found 2027-05-15 as before of the logbook note "N2", whose day is 2027-05-16: it was not written yet by then\. Look at both days\.$`
  fixed      = "2027-05-14" # want 16 days-order `Found 2027-05-14 as fixed of the logbook note "N2", whose day is 2027-05-16: it was not written yet on that day\. Look at both days\.$`
  cleared_on = "2027-05-13" # want 16 days-order `Found 2027-05-13 as cleared_on of the logbook note "N2", whose day is 2027-05-16: it was not written yet on that day\. Look at both days\.$`
  cleared_by = "M. Saltby"
}
logbook_note "N3" {
  day        = "2027-05-16"
  text       = "Tow eye hidden by paint."
  fixed      = "2027-06-01"
  cleared_on = "2027-05-30" # want 3 key-missing `Found cleared_on in the logbook note "N3" without cleared_by\. The two go together: write cleared_by = with the name of the one who did it\.$` 16 days-order `Found 2027-05-30 as cleared_on of the logbook note "N3", whose fixed is 2027-06-01: it was not fixed yet on that day\. Look at both days\.$`
}
logbook_note "N4" {
  day        = "2027-05" # want 16 day-wanted `Found "2027-05" as day of the logbook note "N4"\. Write year, month and day, as in "2027-03-14"\.$`
  text       = "Tow eye bent."
  before     = "2027-02-30" # want 25 date-no-such-day `February 2027 has 28 days, so there is no day 30\. Write a day from 01 to 28\.$`
  fixed      = "1899-12-31" # want 17 date-out-of-reach `The year 1899 is not one in which a car is inspected\. Write a year from 1900 to 2200\.$`
  cleared_by = "M. Saltby" # want 3 key-missing `Found cleared_by in the logbook note "N4" without cleared_on\. The two go together: write cleared_on = "2027-06-19", with the day it is\.$`
  clause     = 9.4 # want 16 text-wanted `Found the number 9\.4 where a text is wanted\. Write it in double quotes: "…"\.$`
  dya        = "2027-05-16" # want 3 unknown-key `Found dya in the logbook note "N4"\. It can have event, day, clause, text, before, fixed, cleared_on, cleared_by\.$`
}
logbook_note "N5" {
  day  = "2201-01-01" # want 11 date-out-of-reach `The year 2201 is not one in which a car is inspected\. Write a year from 1900 to 2200\.$`
  text = "Tow eye gone."
}

inspection "scales" {
  event         = "Saltmarsh Opening Stages"
  day           = "2027-03-12"
  clause        = "4.9"
  subject       = "tube 55" # want 19 unknown-part `Found "tube 55" in subject of the inspection "scales", but no part of the sheet is called so\. Behind "tube" there can be "5" and "6"\.$`
  outcome       = "acepted" # want 19 unknown-outcome `Found "acepted" as outcome of the inspection "scales"\. Did you mean "accepted"\? Write one of "accepted", "corrected and re-presented", "noted" or "refused"\.$`
  their_reading = "29.4 degs" # want 25 unit-unknown `"degs" is not a unit known here\. Write "deg" if that is meant\.$`
}
inspection "belts" { # want 1 key-missing `The inspection "belts" has no day\. Write day = "2027-05-16", with the day it is\.$`
  subject          = "strap left shoulder" # want 22 label-of-several `Found "strap left shoulder" as subject of the inspection "belts", but it is the left shoulder strap of harness driver and the left shoulder strap of harness co-driver\. Write the whole name of one\.$`
  outcome          = "fine" # want 22 unknown-outcome `Found "fine" as outcome of the inspection "belts"\. Write one of "accepted", "corrected and re-presented", "noted" or "refused"\.$`
  their_instrument = "angle gauge" # want 3 key-missing `Found their_instrument in the inspection "belts", but no reading\. Write their_reading = with the figure they read, or take the line out\.$`
}
inspection "cage" { # want 1 key-missing `The inspection "cage" has no outcome\. Write outcome = "accepted"\. There can be "accepted", "corrected and re-presented", "noted" and "refused"\.$`
  day           = "2027-03-12"
  subject       = "seat drivr" # want 19 unknown-part `Found "seat drivr" in subject of the inspection "cage", but no part of the sheet is called so\. Did you mean "seat driver"\?$`
  their_reading = true # want 19 text-wanted `Found true where a text is wanted\. Write it in double quotes: "…"\.$`
}

incident "bank" {} # want 1 key-missing `The incident "bank" has no day\. Write day = "2027-05-16", with the day it is\.$` 1 key-missing `The incident "bank" does not say what it loaded\. Write loaded = \["harness", "seat driver", "cage"\], with every part that held someone or was bent\.$`
incident "gate" {
  day          = "2027-06-20"
  loaded       = ["harness drivr", "saet driver", "fuel_cell", "cage", "Cage", "tube 7", "helmet drivr", "the boot lid"] # want 19 unknown-part `Found "harness drivr" in loaded of the incident "gate", but no part of the sheet is called so\. Did you mean "harness driver"\?$` 36 unknown-part `Found "saet driver" in loaded of the incident "gate", but no part of the sheet is called so\. Write the name of its block and its label, as in "harness driver", or the name of the block alone for all of them\.$` 51 unknown-part `Found "fuel_cell" in loaded of the incident "gate", but no part of the sheet is called so\. The sheet has no fuel cell\. Describe it, or take it out\.$` 72 said-twice `Found "Cage" in loaded of the incident "gate" again; it was said first at papers\.hcl:70:64\. Keep one of the two\.$` 80 unknown-part `Found "tube 7" in loaded of the incident "gate", but no part of the sheet is called so\. Behind "tube" there can be "5" and "6"\. The name of the block alone means all of them\.$` 90 unknown-part `Found "helmet drivr" in loaded of the incident "gate", but no part of the sheet is called so\. Did you mean "helmet driver"\?$` 106 unknown-part `Found "the boot lid" in loaded of the incident "gate", but no part of the sheet is called so\. Write the name of its block and its label, as in "harness driver", or the name of the block alone for all of them\.$`
  inspected    = "2027-06-19" # want 18 days-order `Found 2027-06-19 as inspected of the incident "gate", whose day is 2027-06-20: nothing had happened yet on that day\. Look at both days\.$`
  inspected_by = "M. Saltby"
}
incident "ditch" {
  day       = "2027-06-20"
  loaded    = [] # want 15 list-empty `Found an empty list as loaded of the incident "ditch"\. Write the names in it, or leave the line out\.$`
  inspected = "2027-06-21" # want 3 key-missing `Found inspected in the incident "ditch" without inspected_by\. The two go together: write inspected_by = with the name of the one who did it\.$`
}

dispensation "D1" {} # want 1 key-missing `The dispensation "D1" has no clause\. Write clause = "4\.3\.2"\.$` 1 key-missing `The dispensation "D1" has no granted_by\. Write granted_by = "the club's safety delegate"\.$`
dispensation "D2" {
  clause     = "4.3.2"
  granted_by = "M. Saltby"
  subject    = "tube7"
  events     = ["Saltmarsh Opening Stages", "Saltmarsh opening stages"] # want 45 said-twice `Found "Saltmarsh opening stages" in events of the dispensation "D2" again; it was said first at papers\.hcl:85:17\. Keep one of the two\.$`
  from       = "2027-06-20"
  until      = "2027-06-19" # want 16 days-order `Found 2027-06-19 as until of the dispensation "D2", whose from is 2027-06-20: it did not hold yet on that day\. Look at both days\.$`
  condition  = "" # want 16 text-empty `The condition of the dispensation "D2" is empty\. Write a formula, as in "car\.weighed_mass <= 1100\*kg", or leave the line out\.$`
}
dispensation "D3" {
  clause     = "4.3.2"
  granted_by = "M. Saltby"
  events     = "Saltmarsh Opening Stages" # want 16 list-wanted `Found a text as events of the dispensation "D3"\. Write a list of texts: \["…", "…"\]\.$`
  condition  = 12 # want 16 text-wanted `Found the number 12 where a text is wanted\. Write it in double quotes: "…"\.$`
  evidence "letter" {} # want 3 unknown-block `Found evidence in the dispensation "D3"\. It can have clause, subject, granted_by, reference, chassis, log_book, events, from, until, reason, condition, note\.$`
}

evidence "certificate" {
  dated       = "2027-06-20"
  valid_until = "2027-06-19" # want 17 days-order `Found 2027-06-19 as valid_until of the evidence "certificate", which is dated 2027-06-20\. Look at both days\.$`
}
evidence "letter" {
  valid_until = "2028" # want 17 day-wanted `Found "2028" as valid_until of the evidence "letter"\. Write year, month and day, as in "2027-03-14"\.$`
}
season "2027" {} # want 1 block-misplaced `Found the block "season" in the sheet\. It belongs to a season\. Move it to a file of its own, which is named after --season\.$`
