package vehicle

import (
	"math"
	"slices"

	"gapsheet/vehicle/cage"
)

// FrameHead is the head of one of the crew, with its helmet.
type FrameHead struct {
	Part   *Part
	Top    cage.Vector // of the helmet
	Radius float64     // of the helmet taken as a ball, 0 where it is not recorded
}

// Centre returns the middle of the helmet's ball.
func (h FrameHead) Centre() cage.Vector { return h.Top.Minus(cage.Vector{Z: h.Radius}) }

// heads returns the heads of which the top's place is recorded.
func (s *Sheet) heads() []FrameHead {
	var heads []FrameHead
	for _, part := range s.partsNamed("head") {
		x, okX := part.asRead("top_x")
		y, okY := part.asRead("top_y")
		z, okZ := part.asRead("top_z")
		if okX && okY && okZ {
			heads = append(heads, FrameHead{part, cage.Vector{X: x, Y: y, Z: z}, part.firstRead("helmet_radius")})
		}
	}
	return heads
}

// headFindings are the helmets that are inside a tube; a head without a helmet's radius by
// its top alone.
func (f *Frame) headFindings() []FrameFinding {
	var found []FrameFinding
	for _, head := range f.Heads {
		for i, tube := range f.Tubes {
			_, away := tube.Course.Nearest(head.Centre())
			if into := head.Radius + tube.Outside/2 - away; into > 0 {
				found = append(found, FrameFinding{Kind: HeadInTube, Tubes: []int{i}, Part: head.Part, Away: into})
			}
		}
	}
	return found
}

// mostOverlaps bounds how many pairs of tubes are told for each tube of a frame.
const mostOverlaps = 5

// overlapMargin is by how much two axes must be nearer than half the sum of the outsides for
// the tubes to go through each other, in metres: as the joints' tolerance, at least 1 mm,
// since tubes welded side by side touch, and at most 5 mm.
func (f *Frame) overlapMargin() float64 {
	return min(max(1e-3, f.Structure.Tolerance), 5e-3)
}

// overlapFindings are the tubes that go through each other where no joint says so. What is
// beside a joint of both, or in the end of one that lands on the other or beside the other
// on a third, belongs to that joint, and an end in the air is told as such.
func (f *Frame) overlapFindings() []FrameFinding {
	var found []FrameFinding
	solids := make([]cage.Solid, len(f.Tubes))
	for i, tube := range f.Tubes {
		ahead, behind := tube.metalAhead(0), tube.metalAhead(1)
		solids[i] = cage.SolidOf(tube.Course, tube.Outside, ahead, tube.Course.Developed()-behind)
	}
	meets := f.meetingPlaces()
	for one := range f.Tubes {
		for other := one + 1; other < len(f.Tubes) && len(found) < mostOverlaps*len(f.Tubes); other++ {
			for _, o := range solids[one].Overlaps(&solids[other], f.overlapMargin()) {
				if !f.isDoubled(one, other) && !f.isExplained(one, other, o, meets) {
					found = append(found, FrameFinding{Kind: ThroughEachOther, Tubes: []int{one, other}, At: o.At, Away: o.Apart})
				}
			}
		}
	}
	return found
}

// metalAhead returns how far from its end joint a tube's metal begins along its centreline.
func (t FrameTube) metalAhead(end int) float64 {
	if !t.Ends[end].IsNotched() {
		return 0
	}
	return max(0, t.Ends[end].Short+t.Ends[end].Seat.Notch.OnCentreline())
}

// aheadAt returns how far from a joint a tube's metal begins that ends there: at a small
// angle far along the tube.
func (f *Frame) aheadAt(tube, joint int) float64 {
	ahead := 0.0
	for k, end := range f.Tubes[tube].Ends {
		if end.Joint == joint {
			ahead = max(ahead, f.Tubes[tube].metalAhead(k))
		}
	}
	return ahead
}

// meetingPlaces returns by tube where others may meet it: its joints, those at their place,
// and those that lie on it.
func (f *Frame) meetingPlaces() []map[int]bool {
	same := f.samePlaces()
	meets := make([]map[int]bool, len(f.Tubes))
	for i, tube := range f.Tubes {
		meets[i] = map[int]bool{}
		for _, joint := range tube.Through {
			for _, there := range same[joint] {
				meets[i][there] = true
			}
		}
	}
	for _, rest := range f.looked.Resting {
		meets[rest.Member][rest.Joint] = true
	}
	return meets
}

// isExplained reports whether an overlap of two tubes is beside a joint where they meet.
func (f *Frame) isExplained(one, other int, o cage.Overlap, meets []map[int]bool) bool {
	reach := (f.Tubes[one].Outside + f.Tubes[other].Outside) / 2
	course := f.Tubes[one].Course
	isBeside := func(joint int) bool {
		along, away := course.Nearest(f.Joints[joint].At)
		slack := reach + max(f.aheadAt(one, joint), f.aheadAt(other, joint))
		return away <= reach+course.Radius && along >= o.From-slack && along <= o.To+slack
	}
	for _, joint := range f.Tubes[one].Through {
		if meets[other][joint] && isBeside(joint) {
			return true
		}
	}
	for _, joint := range f.Tubes[other].Through {
		if meets[one][joint] && isBeside(joint) {
			return true
		}
	}
	return f.endsIn(one, other, o) || f.endsIn(other, one, o)
}

// endsIn reports whether an overlap is at an end of a tube that is told elsewhere: one that
// hangs in the air inside the other's metal, or one that lands on a third tube where the
// other meets that one as well, which wants a second notch.
func (f *Frame) endsIn(tube, other int, o cage.Overlap) bool {
	reach := (f.Tubes[tube].Outside + f.Tubes[other].Outside) / 2
	for k, end := range f.Tubes[tube].Ends {
		at := f.Joints[end.Joint].At
		if at.Distance(o.At) > 2*reach+f.Tubes[tube].metalAhead(k) {
			continue
		}
		if f.isInTheAir(tube, end.Joint) && at.Distance(o.At) <= reach {
			return true
		}
		if end.Onto >= 0 && end.Onto != other && slices.ContainsFunc(f.meetingsOf(other, end.Onto), func(joint int) bool {
			return f.Joints[joint].At.Distance(at) <= reach+f.Tubes[end.Onto].Outside/2
		}) {
			return true
		}
	}
	return false
}

// meetingsOf returns the joints of a tube at which it meets another.
func (f *Frame) meetingsOf(tube, other int) []int {
	var joints []int
	for _, joint := range f.Tubes[tube].Through {
		if _, away := f.Tubes[other].Course.Nearest(f.Joints[joint].At); away <= f.Structure.Tolerance || slices.Contains(f.Tubes[other].Through, joint) {
			joints = append(joints, joint)
		}
	}
	return joints
}

func (f *Frame) isInTheAir(tube, joint int) bool {
	return slices.ContainsFunc(f.looked.InTheAir, func(end cage.LooseEnd) bool { return end.Member == tube && end.Joint == joint })
}

// NearestTube returns the tube whose axis is nearest to a place, but for one; how far the
// axis is, and where on it. It is -1 where there is no other.
func (f *Frame) NearestTube(place cage.Vector, but int) (nearest int, away float64, at cage.Vector) {
	nearest, away = -1, math.Inf(1)
	for i, tube := range f.Tubes {
		if i == but {
			continue
		}
		if there, _ := axisAt(tube.Course, place); there.Distance(place) < away {
			nearest, away, at = i, there.Distance(place), there
		}
	}
	return nearest, away, at
}
