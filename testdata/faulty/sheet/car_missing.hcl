tube "1" { # want 1 car-missing `Found no car block\. Write one in one of the files: car "NAME" \{ chassis = "…" \}\.$`
  wall = "2.5 mm"
}
