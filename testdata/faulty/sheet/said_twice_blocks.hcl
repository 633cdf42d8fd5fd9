car "Tessel 16" {}
cage {}
tube "1" {}
tube "Main  hoop" {}
tube "1" { wall = "2.5 kg" } # want 1 said-twice `Found tube "1" again; it was said first at said_twice_blocks\.hcl:3:1\. Keep one of the two\.$` 20 wrong-dimension `Found "2\.5 kg" as wall of the tube "1"\. That is a figure of mass\. Write wall in a unit such as mm\.$`
tube "main hoop" {} # want 1 said-twice `Found tube "main hoop" again; it was said first at said_twice_blocks\.hcl:4:1\. Keep one of the two\.$`
cage {} # want 1 said-twice `Found cage again; it was said first at said_twice_blocks\.hcl:2:1\. Keep one of the two\.$`
harness "driver" {
  strap "left lap" {}
  strap "left lap" {} # want 3 said-twice `Found strap "left lap" again; it was said first at said_twice_blocks\.hcl:9:3\. Keep one of the two\.$`
}
harness "co-driver" {
  strap "left lap" {}
}
instrument "tape" { tolerance = "1 mm" }
instrument "Tape" { tolerance = "2 mm" } # want 1 said-twice `Found instrument "Tape" again; it was said first at said_twice_blocks\.hcl:15:1\. Keep one of the two\.$`
