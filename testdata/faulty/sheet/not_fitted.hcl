car "Tessel 16" {
  not_fitted = ["window_net"] # want 17 unknown-part `Found "window_net" in not_fitted of the car "Tessel 16"\. Write it in not_fitted at the top level of the sheet\.$`
}
not_fitted = [
  "windownet", # want 3 unknown-part `Found "windownet" in not_fitted of the sheet\. Did you mean "window_net"\?$`
  "tubes", # want 3 unknown-part `Found "tubes" in not_fitted of the sheet\. Write the name of its block: "tube"\.$`
  "strap", # want 3 unknown-part `Found "strap" in not_fitted of the sheet\. Write it inside the block it belongs to: harness "driver" \{ not_fitted = \["strap"\] \}\.$`
  "cage", # want 3 fitted-and-not-fitted `Found "cage" in not_fitted, but one is described at not_fitted\.hcl:15:1\. Keep one of the two\.$`
  "fuel_cell",
  "fuel_cell", # want 3 said-twice `Found "fuel_cell" in not_fitted again; it was said first at not_fitted\.hcl:9:3\. Keep one of the two\.$`
  "car", # want 3 fitted-and-not-fitted `Found "car" in not_fitted, but one is described at not_fitted\.hcl:1:1\. Keep one of the two\.$`
  3, # want 3 text-wanted `Found the number 3 where a text is wanted\. Write it in double quotes: "…"\.$`
]
unfinished = ["cage", "fuel_pump", "flux"] # want 15 unfinished-single `Found "cage" in unfinished, but there can be one cage only\. Take it out; what is not written of it is not recorded anyway\.$` 36 unknown-part `Found "flux" in unfinished of the sheet\. Write the name of a part's block, such as "window_net" or "fuel_cell"\.$`
tube "1" {}
ballast "1" { not_fitted = ["flux"] } # want 29 unknown-part `Found "flux" in not_fitted of the ballast "1"\. A ballast has no parts of its own\. Take the line out\.$`
harness "driver" { not_fitted = ["flux"] } # want 34 unknown-part `Found "flux" in not_fitted of the harness "driver"\. Write the name of a part's block: strap\.$`
