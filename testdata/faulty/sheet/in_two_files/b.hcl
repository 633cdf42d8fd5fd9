note = "second" # want 1 said-twice `Found note again; it was said first at in_two_files/a\.hcl:2:1\. Keep one of the two\.$`
cage {} # want 1 said-twice `Found cage again; it was said first at in_two_files/a\.hcl:3:1\. Keep one of the two\.$`
tube "1" {} # want 1 said-twice `Found tube "1" again; it was said first at in_two_files/a\.hcl:4:1\. Keep one of the two\.$`
instrument "tape" { tolerance = "1 mm" } # want 1 said-twice `Found instrument "tape" again; it was said first at in_two_files/a\.hcl:5:1\. Keep one of the two\.$`
not_fitted = ["window_net", "fuel_cell"] # want 15 said-twice `Found "window_net" in not_fitted again; it was said first at in_two_files/a\.hcl:6:15\. Keep one of the two\.$`
car "Tessel 17" {} # want 1 said-twice `Found a second car; the first is at in_two_files/a\.hcl:1:1\. A sheet is about one car: write each in a file or folder of its own\.$`
