car "Tessel 16" {}
instrument "laser" { tolerance = "1 mm" }
instrument "scale" { tolerance = "1 kg" }
joint "A" { at = ["1200 mm", "-480 mm"] } # want 18 point-form `Found a list of 2 as at of the joint "A"\. Write three, forward, to the left and up, as in \["1200 mm", "-480 mm", "310 mm"\]; what is not known is left out by writing the others singly, as in x = "1200 mm"\.$`
joint "B" { at = "1200 mm" } # want 18 wrong-kind `Found the text "1200 mm" as at of the joint "B"\. Write its three coordinates, forward, to the left and up, as in \["1200 mm", "-480 mm", "310 mm"\]\.$`
joint "C" { at = ["1200 mm", "-480", "310 kg"] } # want 31 unit-missing `Found "-480" as y of the joint "C"\. Write the unit too, as in "-480 mm"\.$` 39 wrong-dimension `Found "310 kg" as z of the joint "C"\. That is a figure of mass\. Write z in a unit such as mm\.$`
joint "D" { at = [["1200 mm", "0 mm", "0 mm"], ["1201 mm", "0 mm", "0 mm"]] } # want 18 point-form `Found a list of lists as at of the joint "D"\. Write several readings as \{ readings = \[\["1200 mm", "-480 mm", "310 mm"\], \["1200 mm", "-480 mm", "310 mm"\]\] \}\.$`
joint "E" {
  at = ["1200 mm", "-480 mm", "310 mm"]
  y  = "-481 mm" # want 8 said-twice `Found y of the joint "E" again; it was said first at place_form\.hcl:9:20\. Keep one of the two\.$`
}
joint "F" { at = ["12 m", "0 mm", "0 mm"] } # want 20 not-plausible `Found "12 m" as x of the joint "F"\. Plausible is -6000 to 6000 mm\. Did you mean "12 mm"\?$`
joint "G" { at = { readings = ["1200 mm", "0 mm", "0 mm"] } } # want 32 wrong-kind `Found the text "1200 mm" as at of the joint "G"\. Write its three coordinates, forward, to the left and up, as in \["1200 mm", "-480 mm", "310 mm"\]\.$`
joint "H" { at = { reading = ["1200 mm ± 2 mm", "0 mm", "0 mm"], measured_with = "laser" } } # want 32 tolerance-twice `Found "1200 ± 2 mm", measured with "laser" as x of the joint "H"\. The instrument has a tolerance of its own\. Write the bare reading, or take measured_with out\.$`
joint "I" { at = { reading = ["1200 mm", "0 mm", "0 mm"], measured_with = "scale" } } # want 32 instrument-dimension `Found "1200 mm", measured with "scale" as x of the joint "I"\. Its tolerance is 1 kg \(place_form\.hcl:3:1\), which does not go with this figure\. Name another instrument\.$` 43 instrument-dimension `Found "0 mm", measured with "scale" as y of the joint "I"\. Its tolerance is 1 kg \(place_form\.hcl:3:1\), which does not go with this figure\. Name another instrument\.$` 51 instrument-dimension `Found "0 mm", measured with "scale" as z of the joint "I"\. Its tolerance is 1 kg \(place_form\.hcl:3:1\), which does not go with this figure\. Name another instrument\.$`
joint "J" { at = "none" } # want 18 none-impossible `Found "none" as at of the joint "J"\. There always is one\. Write what it is, or leave the line out as long as it is not recorded\.$`
joint "K" { at = [1200, -480, 310] } # want 19 unit-missing `Found 1200 as x of the joint "K"\. Write the unit too, and all in double quotes, as in "1200 mm"\.$` 25 unit-missing `Found -480 as y of the joint "K"\. Write the unit too, and all in double quotes, as in "-480 mm"\.$` 31 unit-missing `Found 310 as z of the joint "K"\. Write the unit too, and all in double quotes, as in "310 mm"\.$`
