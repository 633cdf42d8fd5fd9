season "2027 and 2028" {
  lead  = "21 days"
  leads = { harness = "4 weeks" }

  event "Saltmarsh Opening Stages" {
    inspection_day = "2027-03-12"
    first_day      = "2027-03-13"
    last_day       = "2027-03-11" # want 22 days-order `Found 2027-03-11 as last_day of the event "Saltmarsh Opening Stages", which begins on 2027-03-13\. Look at both days\.$`
  }
  event "saltmarsh opening stages" { # want 3 said-twice `Found a second event "saltmarsh opening stages"; the first is at events\.hcl:5:3\. Papers and reports speak of an event by its name: add the year to one, or keep one of the two\.$`
    first_day = "2027-04-10"
    last_day  = "2027-04-11"
  }
  event "Quarry Night" {
    inspection_day = "2027-05-17" # want 22 days-order `Found 2027-05-17 as inspection_day of the event "Quarry Night", which is over on 2027-05-16\. Look at both days\.$`
    first_day      = "2027-05-15"
    last_day       = "2027-05-16"
    entry_closes   = "2027-05-16"
  }
  event "Harbour Sprint" {
    first_day    = "2027-06-12"
    last_day     = "2027-06-13"
    entry_closes = "2027-06-14" # want 20 days-order `Found 2027-06-14 as entry_closes of the event "Harbour Sprint", which begins on 2027-06-12\. Look at both days\.$`
  }
  event "Fell Stages" {
    first_day = "2027-02-30" # want 26 date-no-such-day `February 2027 has 28 days, so there is no day 30\. Write a day from 01 to 28\.$`
    last_day  = "2027-13-01" # want 23 date-no-such-day `There is no month 13\. Write year, month and day, the month from 01 to 12\.$`
  }
  event "Moor Stages" {
    first_day = "1899-12-31" # want 18 date-out-of-reach `The year 1899 is not one in which a car is inspected\. Write a year from 1900 to 2200\.$`
    last_day  = "2201-01-01" # want 18 date-out-of-reach `The year 2201 is not one in which a car is inspected\. Write a year from 1900 to 2200\.$`
  }
  event "Pass Stages" {
    first_day = "2027-07" # want 17 day-wanted `Found "2027-07" as first_day of the event "Pass Stages"\. Write year, month and day, as in "2027-03-14"\.$`
    last_day  = "10.7.2027" # want 18 date-form `"10\.7\.2027" is not a date in the form that is read here\. Write year, month and day in this order, with hyphens: 2027-07-10 or 2027-10-07, whichever is meant\.$`
  }
  event "Long Way Round" {
    first_day = "2027-07-01"
    last_day  = "2028-07-01" # want 17 event-too-long `Found 2028-07-01 as last_day of the event "Long Way Round", which begins on 2027-07-01: 367 days\. Look at the years; there can be up to 100 days\.$`
  }
  event "Late Paper" {
    inspection_day = "2025-07-01" # want 22 event-too-long `Found 2025-07-01 as inspection_day of the event "Late Paper", which begins on 2027-07-01\. Look at the years; there can be up to 366 days between\.$`
    first_day      = "2027-07-01"
    last_day       = "2027-07-01"
  }
  event {} # want 3 label-count `Found 0 names of the event\. Write one in double quotes, as in event "Saltmarsh Opening Stages" \{\.$` 3 key-missing `The event has no first_day\. Write first_day = "2027-05-16", with the day it is\.$` 3 key-missing `The event has no last_day\. Write last_day = "2027-05-16", with the day it is\. Of an event of one day it is the first\.$`
  event "Dunes" { # want 3 key-missing `The event "Dunes" has no first_day\. Write first_day = "2027-05-16", with the day it is\.$`
    frist_day = "2027-08-07" # want 5 unknown-key `Found frist_day in the event "Dunes"\. Did you mean first_day\? It can have inspection_day, first_day, last_day, place, class, crew, rulebook, entry_closes, note\.$`
    last_day  = 2027 # want 17 text-wanted `Found the number 2027 where a text is wanted\. Write it in double quotes: "…"\.$`
    stage "1" {} # want 5 unknown-block `Found stage in the event "Dunes"\. It can have inspection_day, first_day, last_day, place, class, crew, rulebook, entry_closes, note\.$`
  }
  weather = "wet" # want 3 unknown-key `Found weather in the season "2027 and 2028"\. It can have lead, leads, note\.$`
}
season "2028" { # want 1 said-twice `Found a second season; the first is at events\.hcl:1:1\. A run is about one: write each in a file or folder of its own\.$`
  event "Forest Stages" {
    first_day = "2028-03-11"
    last_day  = "2028-03-12"
  }
}
event "Out of place" {} # want 1 block-misplaced `Found the block "event" in the season file\. Write it inside season "NAME" \{ \}\.$`
