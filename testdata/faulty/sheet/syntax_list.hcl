car "Tessel 16" {}
not_fitted = ["window_net" "fuel_cell"] # want 28 comma-missing `Found "\\""\. Members of a list are separated by commas: \["a", "b"\]\.$`
