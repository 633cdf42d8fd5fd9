car "Tessel 16" {}
not_fitted = ["window_net" "fuel_cell"] # want 28 comma-missing `Found "\\""\. Members of a list are separated by commas: \["a", "b"\]\. Nothing else in the file was looked at: mend th(is|ese) first, more may follow\.$`
