car "Tessel 16" {}
not_fitted = ["tube", "window_net"]
unfinished = ["tube"] # want 15 not-fitted-and-unfinished `Found "tube" in unfinished; at not_fitted_and_unfinished\.hcl:2:15 it is in the o.*e and will be none\. Keep one of the two\.$`
harness "driver" {
  not_fitted = ["strap", "seat"] # want 17 fitted-and-not-fitted `Found "strap" in not_fitted, but one is described at not_fitted_and_unfinished\.hcl:7:3\. Keep one of the two\.$` 26 unknown-part `Found "seat" in not_fitted of the harness "driver"\. Write it in not_fitted at the top level of the sheet\.$`
  unfinished = "strap" # want 16 list-wanted `Found a text as unfinished of the harness "driver"\. Write a list of texts: \["…", "…"\]\.$`
  strap "left lap" {}
}
