car "Tessel 16" {
  driven_wheels = "rear wheel" # want 19 unknown-choice `Found "rear wheel" as driven_wheels of the car "Tessel 16"\. Did you mean "rear"\? Write one of "front", "rear" or "four"\.$`
  driver_side   = "middle" # want 19 unknown-choice `Found "middle" as driver_side of the car "Tessel 16"\. Write one of "left" or "right"\.$`
}
tube "1" { part = "main hop" } # want 19 unknown-choice `Found "main hop" as part of the tube "1"\. Did you mean "main hoop"\?$`
tube "2" { part = "spoiler" } # want 19 unknown-choice `Found "spoiler" as part of the tube "2"\. Write one of "main hoop", "front hoop",.*, "corner brace", "seat bar" or "other"\.$`
tube "3" { part = 3 } # want 19 wrong-kind `Found the number 3 as part of the tube "3"\. Put it in double quotes: "3"\.$`
tube "4" { part = backstay } # want 19 not-literal `Found the bare word "backstay" as part of the tube "4"\. Values are literals: nothing is worked out\. Put it in double quotes: "backstay"\.$`
