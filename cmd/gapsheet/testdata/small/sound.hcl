# An invented car that has nothing open against the small rulebook.

car "Marl 3" {
  chassis          = "MA-0003"
  class            = "standard"
  weighed_mass     = "1040 kg"
  ground_clearance = "160 mm"
}

cage {
  route = "built to the tables"
}

tube_stock "A" {
  size  = "45 x 2.5 mm"
  yield = "420 MPa"
}

tube "1" {
  part  = "main hoop"
  stock = "A"
}

tube "2" {
  part  = "front hoop"
  stock = "A"
}
