package vehicle

import (
	"math"
	"strings"
	"unicode"
)

// farFromMirror is how far from the mirror place of its original an image that was measured
// by itself can be before that is a look-at, in metres: shells are out by a few millimetres
// from side to side, not by more than a tube.
const farFromMirror = 50e-3

// sideFindings are joints that seem to be on the wrong side of the car: images on the side
// of their originals or far from their mirror places, and joints whose label names the
// other side. A joint within the tolerance of the middle is on both.
func (f *Frame) sideFindings() []FrameFinding {
	var found []FrameFinding
	numbers := map[*Part]int{}
	for i, joint := range f.Joints {
		numbers[joint.Part] = i
	}
	for i, joint := range f.Joints {
		if joint.Part == nil {
			continue
		}
		y := joint.At.Y
		isOff := math.Abs(y) > f.Structure.Tolerance
		if original, ok := numbers[joint.Part.Original]; ok && hasOwnPlace(joint.Part) {
			pair := FrameFinding{Weight: ToLookAt, Joints: []int{i, original}, Away: f.Joints[original].At.Mirror().Distance(joint.At)}
			switch at := f.Joints[original].At; {
			case at.Distance(joint.At) <= f.Structure.Tolerance: // told as OnePlace
				continue
			case isOff && y*at.Y > 0:
				pair.Kind = ImageOnSameSide
				found = append(found, pair)
				continue
			case pair.Away > farFromMirror:
				pair.Kind = ImageFarOff
				found = append(found, pair)
			}
		}
		if side := sideNamed(joint.Part.Label); isOff && side != 0 && side*y < 0 {
			found = append(found, FrameFinding{Kind: LabelOfOtherSide, Weight: ToLookAt, Joints: []int{i}})
		}
	}
	return found
}

// sideNamed returns 1 for a label with the word left, -1 for right, 0 for neither or both.
func sideNamed(label string) float64 {
	side := 0.0
	for _, word := range strings.FieldsFunc(strings.ToLower(label), func(r rune) bool { return !unicode.IsLetter(r) }) {
		switch word {
		case "left":
			side++
		case "right":
			side--
		}
	}
	return side
}
