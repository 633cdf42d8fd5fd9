season "2027" {
  lead  = ["21 days"] # want 11 text-wanted `Found a list where a text is wanted\. Write it in double quotes: "…"\.$`
  leads = "28 days" # want 11 group-wanted `Found the text "28 days" as leads of the season "2027"\. Write the names of blocks with their lead times: \{ harness = "28 days", fire_system = "10 days" \}\.$`
  event "Quarry Night" {
    first_day = "2027-05-15"
    last_day  = "2027-05-16"
  }
}
