# The cage as geometry: the places its centrelines go through, what follows from them for
# each tube, and the bender's dies.

part "joint" {
  plural = "joints"
  within = "cage"
  at_top = true
  place  = "cage"
  stage  = "before cutting"
  help   = "A place on the centreline of one tube or more: where tubes meet, where one bends, where one ends."

  particular "at" {
    kind  = "point"
    fills = ["x", "y", "z"]
    help  = "Where it is: forward, to the left and up of the cage's origin (ISO 8855)."
    how   = "On the jig: from its scales to the middle of the tube. In a car: cord, plumb bob and steel rule from the datum, half the outside diameter added from the tube's surface; the corner of a bend is where its straights would meet."
  }
  particular "x" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    mirrored  = true
    help      = "How far it is forward of the origin; behind it is negative."
    how       = "Along the jig's rail, or with a plumb bob down to a chalk line on the floor."
  }
  particular "y" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    derived   = true
    help      = "How far it is to the left of the origin; to the right is negative. Of a mirror image it follows from the original."
    how       = "Square from a cord along the middle of the car to the tube's middle."
  }
  particular "z" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 6000 mm"
    mirrored  = true
    help      = "How far it is above the origin; below it is negative."
    how       = "Height gauge or laser line from the jig's table or the level floor to the tube's middle."
  }
  particular "tubes_meeting" {
    kind      = "count"
    plausible = "0 to 40"
    derived   = true
    help      = "How many tubes go through it, end at it or pass over it."
    how       = "Count the tubes whose centrelines come together there; one that goes on counts once."
  }
  particular "least_angle" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 180 deg"
    derived   = true
    help      = "The least angle between any two tubes that meet there."
    how       = "Bevel gauge between the two tubes that lie closest, then onto a protractor."
  }
}

part "meeting" {
  plural = "meetings"
  within = "joint"
  place  = "cage"
  stage  = "before cutting"
  help   = "Two tubes that meet at a joint; the label is both their labels, such as \"3 and 7\". It follows from the tubes."

  particular "one" {
    kind  = "part name"
    names = "tube"
    help  = "The one of the two tubes."
    how   = "The one that stands first in the sheet."
  }
  particular "other" {
    kind  = "part name"
    names = "tube"
    help  = "The other tube."
    how   = "The one that stands later in the sheet."
  }
  particular "angle" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 180 deg"
    derived   = true
    help      = "The least angle between the ways in which the two leave the joint."
    how       = "Bevel gauge set to both tubes, blade along their middles, then onto a protractor."
  }
}

part "corner" {
  plural = "corners"
  within = "tube"
  place  = "cage"
  stage  = "before cutting"
  help   = "An inner joint of a tube, at which it may turn; the label is the joint's. It follows from the joints the tube goes through."

  particular "joint" {
    kind  = "part name"
    names = "joint"
    help  = "The joint it stands for."
    how   = "The letter on the drawing where the tube's straights meet."
  }
  particular "angle" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 180 deg"
    derived   = true
    help      = "By how much the tube turns there; 0 where it goes straight on."
    how       = "Digital level or protractor on both straights beside the bend, the difference of the two."
  }
  particular "straight_before" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 12000 mm"
    derived   = true
    help      = "Straight left between this bend and the one before, or the end; negative where the bends do not fit."
    how       = "Straight edge on the tube: the bend begins where light shows under it; rule between those marks."
  }
  particular "straight_after" {
    kind      = "length"
    unit      = "mm"
    plausible = "-6000 mm to 12000 mm"
    derived   = true
    help      = "Straight left between this bend and the next, or the end; negative where the bends do not fit."
    how       = "Straight edge on the tube from where the bend ends, rule to where the next begins."
  }
}

part "end" {
  plural = "ends"
  within = "tube"
  labels = ["first", "last"]
  place  = "cage"
  stage  = "before cutting"
  help   = "One of the two ends of a tube, in the order of the joints it goes through. It follows from them."

  particular "joint" {
    kind  = "part name"
    names = "joint"
    help  = "The joint at which it ends."
    how   = "The letter on the drawing where the tube's centreline ends."
  }
  particular "to_foot" {
    kind          = "length"
    unit          = "mm"
    plausible     = "0 mm to 9000 mm"
    derived       = true
    may_be_absent = true
    help          = "Distance to the nearest joint with a foot, axis to axis; 0 where it ends at one, none where the cage has none."
    how           = "Steel rule from the middle of the tube's end to the middle of the tube that stands on the foot, at the foot's plate."
  }
  particular "to_foot_surface" {
    kind          = "length"
    unit          = "mm"
    plausible     = "0 mm to 9000 mm"
    derived       = true
    may_be_absent = true
    help          = "The same less half the outside diameter of this tube and of the thickest other one at that foot, not below 0; of a tube welded higher up to the very tube that stands on the foot, how far up it is."
    how           = "Steel rule between the two welds' toes, the shortest way."
  }
  particular "to_joint" {
    kind          = "length"
    unit          = "mm"
    plausible     = "0 mm to 9000 mm"
    derived       = true
    may_be_absent = true
    help          = "Distance to the nearest joint where two other tubes meet, axis to axis; 0 where it ends at one, none where the cage has none."
    how           = "Steel rule between the points where the centrelines meet."
  }
  particular "to_joint_surface" {
    kind          = "length"
    unit          = "mm"
    plausible     = "0 mm to 9000 mm"
    derived       = true
    may_be_absent = true
    help          = "Distance to the tubes of that joint from surface to surface; 0 where they touch."
    how           = "Steel rule between the tubes' surfaces at the shortest gap."
  }
  particular "angle_to_vertical" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 90 deg"
    derived   = true
    help      = "Angle to the vertical of the straight with which the tube leaves this end: the lean of a hoop's leg."
    how       = "Digital level along the leg below its first bend, twice at right angles; the greater lean."
  }
  particular "side_angle_to_vertical" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 90 deg"
    derived   = true
    help      = "The same angle as seen from the side of the car."
    how       = "Digital level held fore and aft along the leg below its first bend."
  }
  particular "front_angle_to_vertical" {
    kind      = "angle"
    unit      = "deg"
    plausible = "0 deg to 90 deg"
    derived   = true
    help      = "The same angle as seen from ahead of the car."
    how       = "Digital level held across the car along the leg below its first bend."
  }
}

part "die" {
  plural = "dies"
  within = "cage"
  at_top = true
  place  = "workshop"
  stage  = "before cutting"
  help   = "A bending die and what its machine needs; tubes name it as their die."

  particular "outside" {
    kind      = "length"
    unit      = "mm"
    plausible = "10 mm to 120 mm"
    measured  = false
    help      = "Outside diameter of the tubes it is for."
    how       = "Stamped on the die; 45 mm and 1 3/4 in are not the same groove."
  }
  particular "centreline_radius" {
    kind      = "length"
    unit      = "mm"
    plausible = "15 mm to 2000 mm"
    measured  = false
    help      = "Radius of the bend it makes, to the tube's centreline."
    how       = "Stamped on the die; else from the groove's bottom to the centre of the spindle, plus half the tube's outside."
  }
  particular "grip_length" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 1000 mm"
    measured  = false
    help      = "Straight that the clamp needs ahead of the first bend."
    how       = "Rule along the clamp block, from its front to where the bend begins."
  }
  particular "minimum_straight" {
    kind      = "length"
    unit      = "mm"
    plausible = "0 mm to 1000 mm"
    measured  = false
    help      = "Least straight between two bends."
    how       = "From the machine's handbook; else make two bends as close as the clamp lets them and measure."
  }
  particular "springback" {
    kind      = "number"
    unit      = "%"
    plausible = "0 % to 30 %"
    help      = "How far a bend opens when it is let go, as a share of the finished angle."
    how       = "Trial bend in an offcut of the same stock: bend to 90 deg on the machine's scale, take it out, measure; (scale - measured) / measured."
  }
  particular "bend_start_offset" {
    kind      = "length"
    unit      = "mm"
    plausible = "-200 mm to 200 mm"
    help      = "How far the bend begins behind the mark that is set to the machine's pointer, toward the tube's last end."
    how       = "Trial bend with a ring scribed at the pointer; straight edge on the tube shows where the bend truly began."
  }
}
