# An invented car for trying the commands.

car "Tessel 16" {
  chassis          = "TS-0417"
  class            = "open"
  weighed_mass     = "1085 kg +/- 5 kg"
  ground_clearance = "140 mm"
}

cage {
  route = "built to the tables"
}

tube_stock "A" {
  size  = "45 x 2.5 mm"
  yield = "420 MPa"
}

tube_stock "B" {
  outside = "45 mm"
  wall    = "2.10 mm +/- 0.03 mm"
  yield   = "420 MPa"
}

tube "1" {
  part  = "main hoop"
  stock = "A"
}

tube "2" {
  part  = "front hoop"
  stock = "B"
}

tube "3" {
  part    = "backstay"
  outside = "38 mm"
  wall    = "2.02 mm +/- 0.05 mm"
  yield   = "355 MPa"
}

tube "4" {
  part    = "backstay"
  outside = "38 mm"
  yield   = "355 MPa"
}

tube "5" {
  part    = "door bar"
  outside = "38 mm"
  wall    = "2.5 mm"
}
