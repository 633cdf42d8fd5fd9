package vehicle

import (
	"fmt"
	"math"

	"github.com/hashicorp/hcl/v2"
)

// extents are the greatest distances that joints of one cage can have along each axis, in
// metres: no car that is driven on a road is longer or wider.
var extents = []struct {
	axis, along string
	most        float64
}{
	{"x", "along the car", 6.5},
	{"y", "across the car", 2.6},
	{"z", "in height", 2.6},
}

// checkExtent reports joints that are farther apart than any car is long, wide or high, once
// for each axis: at the one that is farthest from all others.
func (r *sheetReader) checkExtent(joints []*Part) {
	for axis, extent := range extents {
		var lowest, highest *Part
		least, most, sum, count := math.Inf(1), math.Inf(-1), 0.0, 0.0
		for _, joint := range joints {
			at, ok := coordinateOf(joint, axis)
			if !ok {
				continue
			}
			sum, count = sum+at, count+1
			if at < least {
				least, lowest = at, joint
			}
			if at > most {
				most, highest = at, joint
			}
		}
		if count < 2 || most-least <= extent.most+sameLength {
			continue
		}
		far, other := highest, lowest
		if middle := sum / count; middle-least > most-middle {
			far, other = lowest, highest
		}
		r.fault("cage-too-long", placeOfCoordinate(far, extent.axis), "Out of all proportion for a car", fmt.Sprintf(
			"The joints %s and %s are %s apart %s; %s is the most that can be. Look at %s of both, at its unit and its sign.",
			Quote(far.Label), Quote(other.Label), millimetres(most-least), extent.along, millimetres(extent.most), extent.axis))
	}
}

// coordinateOf is one coordinate of a joint as read, by its axis, if it is recorded.
func coordinateOf(joint *Part, axis int) (float64, bool) {
	name := extents[axis].axis
	at, ok := joint.asRead(name)
	if !ok && name == "y" && joint.Original != nil {
		at, ok = joint.Original.asRead(name)
		at = 0 - at
	}
	return at, ok
}

// placeOfCoordinate is where the recorded coordinate of a joint is written, for an image
// perhaps in its original.
func placeOfCoordinate(joint *Part, name string) hcl.Range {
	if v := joint.stated(name); len(v.Readings) > 0 {
		return v.Readings[0].Range
	}
	return placeOfCoordinate(joint.Original, name)
}
