package report

import (
	"fmt"
	"math"

	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// templateMark is a place round the tube and what it is for.
type templateMark struct {
	at    float64 // p, from 0 to 2π
	words string
}

// setMarks says where round the tube the paper's edges meet, which side faces where, and
// where the inside of the nearest bend is.
//
// The edges meet on a line W along the tube, the same at both ends: that of the first
// notch's profile (p = 0). As p grows right-handed about the way out of the node, which at
// the last end is against the way along the tube, W is there at p = CutEnds.Between. The
// inside of the bend is at -FirstToBend and, for the same reason, at +LastToBend.
func (t *notchTemplate) setMarks(f *vehicle.Frame) {
	tube := t.end.tube
	end := tube.Ends[0]
	if t.end.last {
		end = tube.Ends[1]
	}
	ends := tube.Course.EndsOf(tube.Ends[0].Seat.Toward, tube.Ends[1].Seat.Toward)
	inside := -ends.FirstToBend
	if t.end.last {
		inside = ends.LastToBend
		if t.end.other {
			t.seam = roundTurn(ends.Between)
		}
	}
	if joint := facedJoint(f, end, end.Seat.Toward); joint != "" {
		t.marks = append(t.marks, templateMark{0, "faces " + joint})
	} else if joint := facedJoint(f, end, end.Seat.Toward.Times(-1)); joint != "" {
		t.marks = append(t.marks, templateMark{math.Pi, "faces " + joint})
	}
	if courseBends(tube.Course) {
		mark := templateMark{at: roundTurn(inside)}
		fromSeam := 1000 * t.notch.Branch * roundTurn(mark.at-t.seam)
		mark.words = fmt.Sprintf("inside of bend, %.1f mm from W", fromSeam)
		t.marks = append(t.marks, mark)
	}
}

// turnBetween is by how much the last end's notch is turned against the first one's, in
// degrees.
func turnBetween(tube *vehicle.FrameTube) float64 {
	return tube.Course.EndsOf(tube.Ends[0].Seat.Toward, tube.Ends[1].Seat.Toward).Between * 180 / math.Pi
}

// roundTurn returns an angle within one turn, from 0 to below 2π. What is within a billionth
// of a full turn is 0, so that no rounding puts an edge on the far side.
func roundTurn(angle float64) float64 {
	angle = math.Mod(angle, 2*math.Pi)
	if angle < 0 {
		angle += 2 * math.Pi
	}
	if angle < 1e-9 || angle > 2*math.Pi-1e-9 {
		return 0
	}
	return angle
}

func courseBends(c cage.Course) bool {
	for _, piece := range c.Pieces() {
		if piece.Turn != 0 {
			return true
		}
	}
	return false
}

// facedJoint returns the joint of the main tube that a side of the branch looks toward: the
// next one along that tube on that side of the node; "" where the main tube ends there.
func facedJoint(f *vehicle.Frame, end vehicle.FrameEnd, side cage.Vector) string {
	main := f.Tubes[end.Onto]
	node := f.Joints[end.Joint].At
	nearest, run := math.Inf(1), -1
	for i := 1; i < len(main.Through); i++ {
		piece := cage.Segment{From: f.Joints[main.Through[i-1]].At, To: f.Joints[main.Through[i]].At}
		if _, away := piece.Nearest(node); away < nearest-1e-9 {
			nearest, run = away, i-1
		}
	}
	if run < 0 {
		return ""
	}
	way := f.Joints[main.Through[run+1]].At.Minus(f.Joints[main.Through[run]].At)
	at, step := run, -1
	if way.Dot(side) >= 0 {
		at, step = run+1, 1
	}
	for ; at >= 0 && at < len(main.Through); at += step {
		if joint := f.Joints[main.Through[at]]; joint.At.Distance(node) > max(f.Structure.Tolerance, 1e-6) {
			return joint.Name
		}
	}
	return ""
}
