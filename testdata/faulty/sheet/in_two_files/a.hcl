car "Tessel 16" {}
note = "first"
cage {}
tube "1" {}
instrument "tape" { tolerance = "1 mm" }
not_fitted = ["window_net"]
