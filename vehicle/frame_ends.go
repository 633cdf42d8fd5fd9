package vehicle

import (
	"math"
	"slices"

	"gapsheet/vehicle/cage"
)

// EndRule is the rule of findEnds in words, to print beside whatever follows from it.
const EndRule = "A tube is notched onto the tube that passes its end joint; of several onto the one thickest outside, of equal ones (within 0.5 mm) onto the first in the sheet. Where all tubes end at the joint, the thickest, then the first in the sheet, runs through to it and is cut square there. An end with nothing but a foot is cut square at its joint."

// findEnds decides for both ends of every tube which other tube it is notched onto at its
// joint:
//
//   - a tube that passes there: that goes through the joint without ending at it, or on
//     which the joint lies. Of several it is the one thickest outside, then the one first
//     in the sheet;
//   - where all tubes end at the joint, the thickest, then the first in the sheet, runs
//     through to the node and is cut square, and the others are notched onto it;
//   - where no other tube is, the end is cut square at its joint.
//
// Joints that no tolerance parts are one. A tube thicker than the one it meets, or one that
// misses it, keeps Onto with the fault of its seat.
func (f *Frame) findEnds() {
	same := f.samePlaces()
	resting := make([][]int, len(f.Joints)) // by joint: the tubes it lies on
	for _, rest := range f.looked.Resting {
		resting[rest.Joint] = append(resting[rest.Joint], rest.Member)
	}
	for i := range f.Tubes {
		through := f.Tubes[i].Through
		for k, joint := range []int{through[0], through[len(through)-1]} {
			end := FrameEnd{Joint: joint, Onto: f.onto(i, same[joint], resting)}
			if end.Onto >= 0 {
				f.seat(i, k == 1, &end)
			}
			f.Tubes[i].Ends[k] = end
		}
	}
}

// samePlaces returns by joint those at its place, itself first.
func (f *Frame) samePlaces() [][]int {
	same := make([][]int, len(f.Joints))
	for i := range f.Joints {
		same[i] = []int{i}
	}
	for _, pair := range f.looked.SamePlaces {
		same[pair[0]] = append(same[pair[0]], pair[1])
		same[pair[1]] = append(same[pair[1]], pair[0])
	}
	return same
}

// onto returns the tube that a tube is notched onto where it ends at joints of one place,
// -1 for none.
func (f *Frame) onto(tube int, joints []int, resting [][]int) int {
	var passing, ending []int
	for _, joint := range joints {
		passing = append(passing, resting[joint]...)
		for _, other := range f.Structure.MembersAt(joint) {
			through := f.Tubes[other].Through
			if through[0] == joint || through[len(through)-1] == joint {
				ending = append(ending, other)
			} else {
				passing = append(passing, other)
			}
		}
	}
	// A tube that ends at one of the joints lies on the others at the same place.
	passing = slices.DeleteFunc(passing, func(other int) bool { return other == tube || slices.Contains(ending, other) })
	if len(passing) > 0 {
		return f.thickest(passing)
	}
	if first := f.thickest(ending); first != tube {
		return first
	}
	return -1
}

// sameSize is the difference in outside diameter up to which two tubes are as thick as each
// other, in metres: two deliveries of one size may differ by it (EN 10219-2 allows 1 %, at
// least 0.5 mm; from memory).
const sameSize = 0.5e-3

// thickest returns the tube thickest outside, the first in the sheet of equal ones.
func (f *Frame) thickest(tubes []int) int {
	most := 0.0
	for _, tube := range tubes {
		most = max(most, f.Tubes[tube].Outside)
	}
	best := -1
	for _, tube := range tubes {
		if f.Tubes[tube].Outside >= most-sameSize && (best < 0 || tube < best) {
			best = tube
		}
	}
	return best
}

// seat works out the seat of a tube's end on the tube it meets. Where that one bends at the
// joint, its arc does not pass the joint: the seat is where the tube's straight comes
// nearest to the arc, and the main tube is taken to go straight on there. Axes that pass each
// other within the frame's tolerance meet, and a main tube thinner by no more than what
// counts as the same size is as thick: both are readings, and a saddle can be cut.
func (f *Frame) seat(tube int, isLast bool, end *FrameEnd) {
	main := f.Tubes[end.Onto]
	node, out := endOf(f.Tubes[tube].Course, isLast)
	place, way := axisAt(main.Course, node)
	farthest := main.Course.Radius + 10*f.Structure.Tolerance
	for range seatSteps {
		ahead, ok := nearestAlong(node, out, place, way)
		if !ok || math.Abs(ahead-end.Short) < 1e-12 || math.Abs(ahead) > farthest {
			break
		}
		end.Short = ahead
		place, way = axisAt(main.Course, node.Plus(out.Times(ahead)))
	}
	way = leaning(out, way)
	node = node.Plus(out.Times(end.Short))
	thick, mainThick := f.Tubes[tube].Outside, main.Outside
	if mainThick > 0 && thick-mainThick <= sameSize {
		mainThick = max(mainThick, thick)
	}
	end.Seat, end.Fault = cage.Seat(node, out, thick, place, way, mainThick)
	if end.Fault == nil || end.Fault.Problem == cage.BranchTooBig {
		if away := math.Abs(end.Seat.Notch.Offset); away > 0 && away <= f.Structure.Tolerance {
			end.Seat, end.Fault = cage.Seat(node, out, thick, node, way, mainThick)
		}
	}
}

// seatSteps bounds the steps in which the nearest places of a straight and an arc are
// found; each takes the arc for its tangent.
const seatSteps = 40

// squareAngle is by how much an angle may differ from a right one and still count as one, in
// radians, so that rounding does not turn a square notch round.
const squareAngle = 1e-6

// leaning returns the direction of a main tube's axis on the side to which a branch leans
// that leaves it along out. A square branch leans to neither: then it is the direction
// upward, or else forward, or else to the left.
func leaning(out, way cage.Vector) cage.Vector {
	lean := math.Pi/2 - out.Angle(way)
	if math.Abs(lean) <= squareAngle {
		for _, lean = range []float64{way.Z, way.X, way.Y} {
			if math.Abs(lean) > squareAngle {
				break
			}
		}
	}
	if lean < 0 {
		return way.Times(-1)
	}
	return way
}

// endOf returns where a course ends and the way out of that end along it.
func endOf(course cage.Course, isLast bool) (node, out cage.Vector) {
	pieces := course.Pieces()
	if isLast {
		last := pieces[len(pieces)-1]
		return last.To, last.Direction(1).Times(-1)
	}
	return pieces[0].From, pieces[0].Direction(0)
}

// axisAt returns the place of a course nearest to a place, and the direction of the course
// there.
func axisAt(course cage.Course, near cage.Vector) (place, way cage.Vector) {
	least := math.Inf(1)
	for _, piece := range course.Pieces() {
		if share, away := piece.Nearest(near); away < least {
			least, place, way = away, piece.At(share), piece.Direction(share)
		}
	}
	return place, way
}

// nearestAlong returns how far along out from node the line comes nearest to the line
// through place along way; false where they run side by side. Both directions have length 1.
func nearestAlong(node, out, place, way cage.Vector) (float64, bool) {
	apart, cosine := place.Minus(node), out.Dot(way)
	sine := 1 - cosine*cosine
	if sine < 1e-6 {
		return 0, false
	}
	return (apart.Dot(out) - apart.Dot(way)*cosine) / sine, true
}
