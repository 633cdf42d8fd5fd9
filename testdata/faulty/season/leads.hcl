season "2027" {
  lead  = 21 # want 11 lead-wanted `Found 21 as lead of the season "2027"\. Write the unit too, and all in double quotes: "21 days"\.$`
  leads = {
    harness     = "28" # want 20 lead-wanted `Found "28" as lead of harness of the season "2027"\. Write the unit too: "28 days"\.$`
    harnes      = "28 days" # want 5 unknown-part `Found "harnes" in leads of the season "2027", but there is no such part\. Did you mean harness\?$`
    straps      = "28 days" # want 5 unknown-part `Found "straps" in leads of the season "2027", but there is no such part\. Write the name of its block: strap\.$`
    seat        = "-3 days" # want 20 lead-wanted `Found "-3 days" as lead of seat of the season "2027"\. A part does not come before it is ordered: write 0 days or more\.$`
    helmet      = "1.5 days" # want 20 lead-wanted `Found "1\.5 days" as lead of helmet of the season "2027"\. Write whole days\.$`
    fire_system = "4 kg" # want 20 lead-wanted `Found "4 kg" as lead of fire_system of the season "2027"\. Write a number of days or weeks in double quotes, as in "21 days"\.$`
    fuel_cell   = "4 to 6 weeks" # want 20 lead-wanted `Found "4 to 6 weeks" as lead of fuel_cell of the season "2027"\. It is one figure: write the longest that you reckon with\.$`
    head        = "3000 days" # want 20 lead-wanted `Found "3000 days" as lead of head of the season "2027"\. There can be up to 1000 days\. Look at the number and its unit\.$`
    tube        = "2 months" # want 22 unit-ambiguous `"months" can mean 28 to 366 days\. Write the time in "day", or use dates\.$`
    tube        = "14 days" # want 5 said-twice `Found tube in leads of the season "2027" again; it was said first at leads\.hcl:12:5\. Keep one of the two\.$`
    extinguisher = "soon" # want 21 number-not-readable `There is no number at "soon"\. Write a number in digits and its unit, as in 45 mm\.$`
    "garment"   = "1.5 weeks" # want 20 lead-wanted `Found "1\.5 weeks" as lead of garment of the season "2027"\. Write whole days\.$`
  }
  event "Quarry Night" {
    first_day = "2027-05-15"
    last_day  = "2027-05-16"
  }
}
