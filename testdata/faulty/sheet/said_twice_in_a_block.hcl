car "Tessel 16" {
  chassis = "TS-0417"
  model   = "Tessel"
  chassis = "TS-0418" # want 3 said-twice `Found chassis again; it was said first at said_twice_in_a_block\.hcl:2:3\. Keep one of the two\.$`
}
tube "1" {
  wall = { reading = "2.5 mm", note = "bare", reading = "2.6 mm" } # want 47 said-twice `Found reading again; it was said first at said_twice_in_a_block\.hcl:7:12\. Keep one of the two\.$`
}
