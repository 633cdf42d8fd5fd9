car "Tessel 16" {}
tube_stock "A" {
  size    = "45 x 2.5 mm"
  outside = "45.1 mm" # want 13 said-twice `Found outside of the tube_stock "A" again; it was said first at size_and_wall\.hcl:3:13\. Keep one of the two\.$`
}
tube_stock "B" {
  ordered_wall = "2.5 mm"
  ordered      = "45 x 2.5 mm" # want 18 said-twice `Found ordered_wall of the tube_stock "B" again; it was said first at size_and_wall\.hcl:7:18\. Keep one of the two\.$`
}
