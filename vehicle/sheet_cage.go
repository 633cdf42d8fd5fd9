package vehicle

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// The most joints and tubes that a sheet can have. A cage has some fifty of each, and names
// some two hundred joints; the work on pairs of tubes grows with the square of their number.
const (
	mostJoints   = 1000
	mostTubes    = 300
	mostNamed    = 5000  // names in all lists of names together
	mostAtJoint  = 20    // tubes through one joint
	mostMeetings = 10000 // at all joints together
)

// isTooLarge reports a sheet with more joints or tubes than a cage has, once; mirror images
// count.
func (r *sheetReader) isTooLarge(pages []page) bool {
	for i, name := range []string{"joint", "tube"} {
		most, count := [...]int{mostJoints, mostTubes}[i], 0
		for _, p := range pages {
			for _, block := range p.body.Blocks {
				if block.Type != name {
					continue
				}
				count++
				if block.Body.Attributes["mirrored_as"] != nil {
					count++
				}
				if count > most {
					r.fault("cage-too-large", HeaderOf(block), "More than a cage has", fmt.Sprintf(
						"Found more than %d %ss, mirror images counted, the first too many here. The sheet is not read any further. Write one car in a sheet, and its joints and tubes only.", most, name))
					return true
				}
			}
		}
	}
	return false
}

// checkCage reports what cannot be of the joints and tubes as read.
func (r *sheetReader) checkCage() {
	joints := r.sheet.partsNamed("joint")
	r.checkExtent(joints)
	r.checkImages()
	through := map[*Part]int{}
	for _, tube := range r.sheet.partsNamed("tube") {
		if !r.checkThrough(tube, through) {
			continue
		}
		r.checkCourse(tube)
	}
}

// checkImages reports images of what is its own image.
func (r *sheetReader) checkImages() {
	for _, m := range r.images {
		if m.original.Type.hasPoint() && isOnMiddle(m.original) && m.part.stated("y").State == Nothing {
			r.fault("mirror-on-middle", m.label.all, "An image at the same place", fmt.Sprintf(
				"Found %s as mirrored_as of the %s, which is on the middle of the car (y = %s) and so its own image. Take the line out.",
				Quote(m.label.text), m.what, m.original.stated("y").Readings[0].Figure))
		}
		if m.original.Type.Name == "tube" && isCopied(m.part) && isSameWay(m.original, m.part) {
			r.fault("mirror-on-middle", m.label.all, "An image at the same place", fmt.Sprintf(
				"Found %s as mirrored_as of the %s, but its image goes through the same joints: it is a tube from side to side, or on the middle of the car. Take the line out.",
				Quote(m.label.text), m.what))
		}
	}
}

// isSameWay reports whether a tube and its image go through the same joints, from either end.
func isSameWay(tube, image *Part) bool {
	own := image.Values[image.Type.Particular("through").Index].Several
	turned := slices.Clone(own)
	slices.Reverse(turned)
	way := tube.stated("through").Several
	return len(way) > 0 && (slices.Equal(way, own) || slices.Equal(way, turned))
}

// nameRanges are the places where a tube's joints are named; of an image each is where that
// is named.
func (r *sheetReader) nameRanges(tube *Part) []hcl.Range {
	v := tube.stated("through")
	places := make([]hcl.Range, len(v.Several))
	for i := range places {
		places[i] = v.Range
	}
	for _, l := range r.links {
		if l.value == v {
			places[l.at] = l.name.all
		}
	}
	return places
}

// isCopied reports whether an image goes through the images of its original's joints, so
// that a fault in them is told of the original.
func isCopied(tube *Part) bool {
	return tube.Original != nil && tube.stated("through").Range == tube.Original.stated("through").Range
}

// checkThrough reports joints that a tube cannot go through. It reports whether the rest of
// its geometry can be looked at.
func (r *sheetReader) checkThrough(tube *Part, through map[*Part]int) bool {
	joints := tube.stated("through").Several
	if len(joints) == 0 || !areKnown(joints) {
		return false
	}
	if isCopied(tube) && hasTwice(joints) {
		return false
	}
	if len(joints) == 1 {
		if !isCopied(tube) {
			r.fault("through-one", tube.stated("through").Range, "One joint only", fmt.Sprintf(
				"Found %s alone as through of the %s. Write both joints at its ends, and those between them.", Quote(joints[0].Label), tube.blockName()))
		}
		return false
	}
	sound := true
	for i, joint := range joints {
		if first := slices.Index(joints, joint); first < i {
			r.jointTwice(tube, first, i)
			sound = false
			continue
		}
		if through[joint]++; through[joint] == mostAtJoint+1 {
			r.fault("joint-crowded", r.nameRanges(tube)[i], "Too many tubes at one joint", fmt.Sprintf(
				"Found %s in the %s, and in %d tubes before it. At most %d tubes can meet at a joint.", Quote(joint.Label), tube.blockName(), mostAtJoint, mostAtJoint))
			sound = false
		}
	}
	return sound
}

// hasTwice reports whether a part is named twice.
func hasTwice(parts []*Part) bool {
	for i, p := range parts {
		if slices.Index(parts, p) < i {
			return true
		}
	}
	return false
}

// jointTwice reports a joint that a tube names twice.
func (r *sheetReader) jointTwice(tube *Part, first, second int) {
	label := Quote(tube.stated("through").Several[second].Label)
	advice := "A tube goes through a joint once. Write the other joint that is meant, or end the tube there and begin another."
	if second == first+1 {
		advice = "Between the two it would have no length. Take one of them out, or write the other joint that is meant."
	}
	r.fault("joint-twice", r.nameRanges(tube)[second], "One joint twice",
		fmt.Sprintf("Found %s twice in through of the %s. %s", label, tube.blockName(), advice))
}

// checkCourse reports what is wrong with the way of a tube through joints that all have a
// place.
func (r *sheetReader) checkCourse(tube *Part) {
	joints := tube.stated("through").Several
	var course cage.Course
	for _, joint := range joints {
		at, ok := placeOf(joint)
		if !ok {
			return
		}
		course.Points = append(course.Points, at)
	}
	if r.samePlace(tube, course) {
		return
	}
	course.Radius, _ = tube.asRead("bend_radius")
	var short []string
	for _, fault := range course.Check() {
		switch fault.Problem {
		case cage.Reversal:
			if !r.isToldOfOriginal(tube) {
				r.fault("turns-straight-back", r.nameRanges(tube)[fault.At], "A turn straight back", fmt.Sprintf(
					"The %s goes from %s to %s and straight back to %s. Put its joints in the order in which it goes through them.",
					tube.blockName(), Quote(joints[fault.At-1].Label), Quote(joints[fault.At].Label), Quote(joints[fault.At+1].Label)))
			}
		case cage.RadiusTooBig:
			short = append(short, fmt.Sprintf("%s are missing between %s and %s, which are %s apart", millimetres(fault.Missing),
				Quote(joints[fault.At-1].Label), Quote(joints[fault.At].Label), millimetres(course.Points[fault.At].Distance(course.Points[fault.At-1]))))
		}
	}
	radius, _ := tube.Value(tube.Type.Particular("bend_radius"))
	switch {
	case r.isToldOfOriginal(tube):
	case len(short) > 0:
		r.fault("bend-does-not-fit", radius.Range, "A bend that does not fit", fmt.Sprintf(
			"Found %s as bend_radius of the %s, but its bends do not fit between its joints: %s. Bend it tighter, to %s at most, or look at the places of those joints.",
			Quote(radius.Readings[0].Figure.String()), tube.blockName(), strings.Join(short, "; "), millimetres(math.Floor(1e4*course.GreatestRadius()+1e-6)/1e4)))
	case radius.State == None:
		r.straightOn(tube, course, radius)
	}
}

// isToldOfOriginal reports whether the faults of an image's way are those of its original.
func (r *sheetReader) isToldOfOriginal(tube *Part) bool {
	if !isCopied(tube) {
		return false
	}
	ways := slices.Concat(tube.stated("through").Several, tube.Original.stated("through").Several)
	return !slices.ContainsFunc(ways, func(joint *Part) bool { return joint.Original != nil && hasOwnPlace(joint) })
}

// hasOwnPlace reports whether a joint states a coordinate itself.
func hasOwnPlace(joint *Part) bool {
	return slices.ContainsFunc(joint.Type.Particular("at").Fills, func(name string) bool {
		return joint.Values[joint.Type.Particular(name).Index].State != Nothing
	})
}

// samePlace reports joints of one tube that are at one place.
func (r *sheetReader) samePlace(tube *Part, course cage.Course) bool {
	joints := tube.stated("through").Several
	for i := range course.Points {
		for j := range i {
			if course.Points[i].Distance(course.Points[j]) >= leastTolerance/2 {
				continue
			}
			if !r.isToldOfOriginal(tube) {
				summary, advice := "One place twice", "A tube goes through a place once."
				if j == i-1 {
					summary, advice = "No length", "Between the two it would have no length."
				}
				r.fault("joints-at-one-place", r.nameRanges(tube)[i], summary, fmt.Sprintf(
					"Found %s and %s in through of the %s, but both are at %s. %s Look at their coordinates, or take one of them out.",
					Quote(joints[j].Label), Quote(joints[i].Label), tube.blockName(), placeText(course.Points[i]), advice))
			}
			return true
		}
	}
	return false
}

// surelyBent is the turn above which a tube that is stated to have no bend has one, in
// radians: two degrees, more than coordinates of a straight tube are out.
const surelyBent = 0.035

// straightOn reports a tube that is stated to have no bend and turns at a joint.
func (r *sheetReader) straightOn(tube *Part, course cage.Course, radius *Value) {
	for i := range len(course.Points) - 2 {
		if turn := course.Turn(i); turn > surelyBent {
			degrees, _ := quantity.FindUnit("deg")
			r.fault("bend-radius-none", radius.Range, "A bend without a radius", fmt.Sprintf(
				"Found none as bend_radius of the %s, but it turns by %s at %s. Write the radius of the bend, or look at the joint's place.",
				tube.blockName(), quantity.FormatNumber(turn, degrees, 1)+" deg", Quote(tube.stated("through").Several[i+1].Label)))
			return
		}
	}
}

// millimetres prints a length as a workshop reads it, to a tenth.
func millimetres(metres float64) string {
	unit, _ := quantity.FindUnit("mm")
	return quantity.FormatNumber(math.Round(metres*1e4)/1e4, unit, -1) + " mm"
}

// placeText prints a place.
func placeText(v cage.Vector) string {
	return fmt.Sprintf("[%s, %s, %s]", millimetres(v.X), millimetres(v.Y), millimetres(v.Z))
}
