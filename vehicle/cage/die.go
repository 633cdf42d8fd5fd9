package cage

import "math"

// Die is a bending die and what its machine needs, in metres. A zero says that nothing is
// known of it and nothing checked.
type Die struct {
	Outside         float64 // of the tubes it is for
	Radius          float64 // of the centreline
	GripLength      float64 // straight that the clamp needs ahead of the first bend
	MinimumStraight float64 // between two bends
	Springback      float64 // how far a bend opens when let go, as a share of the finished angle
	StartOffset     float64 // how far the bend starts behind the mark, toward the tube's last point
}

// DieProblem says why a die cannot make a bend.
type DieProblem string

// What can stand between a die and a bend.
const (
	OtherOutside    DieProblem = "die for another outside diameter"
	OtherRadius     DieProblem = "die with another radius"
	TooLittleGrip   DieProblem = "too little straight to grip"
	BendsTooClose   DieProblem = "bends too close together"
	BeyondHalfTurn  DieProblem = "bend with springback beyond a half turn"
	MarkBeforeStart DieProblem = "mark before the start of the tube"
)

// DieFault is a bend that the die cannot make as it stands.
type DieFault struct {
	Problem       DieProblem
	Bend          int     // counted from 0; with OtherOutside and OtherRadius all of the tube's
	Found, Needed float64 // metres, radians for BeyondHalfTurn
}

// Check returns the bends of a schedule that the die cannot make, for a tube of the given
// outside diameter. A tube can be fed from either end: too little to grip is a fault only
// where both ends have too little, and the longer one is what was found. Sizes within a
// tenth of a millimetre are the same.
func (d Die) Check(s Schedule, outside float64) []DieFault {
	bends := len(s.Rows) - 1
	if bends < 1 {
		return nil
	}
	const same = 1e-4
	var faults []DieFault
	if d.Outside > 0 && !(math.Abs(outside-d.Outside) <= same) {
		faults = append(faults, DieFault{OtherOutside, 0, outside, d.Outside})
	}
	if d.Radius > 0 && !(math.Abs(s.Radius-d.Radius) <= same) {
		faults = append(faults, DieFault{OtherRadius, 0, s.Radius, d.Radius})
	}
	if grip := max(s.Rows[0].Length, s.Rows[bends].Length); grip < d.GripLength-closest {
		faults = append(faults, DieFault{TooLittleGrip, 0, grip, d.GripLength})
	}
	for i, row := range s.Rows[:bends] {
		if i > 0 && row.Length < d.MinimumStraight-closest {
			faults = append(faults, DieFault{BendsTooClose, i, row.Length, d.MinimumStraight})
		}
		if angle := d.BendTo(row.Angle); !(angle < math.Pi) {
			faults = append(faults, DieFault{BeyondHalfTurn, i, angle, math.Pi})
		}
	}
	for i, mark := range d.Marks(s) {
		if mark < -closest {
			faults = append(faults, DieFault{MarkBeforeStart, i, mark, 0})
		}
	}
	return faults
}

// BendTo returns the angle to which to bend so that the given one remains, in radians.
func (d Die) BendTo(angle float64) float64 { return angle * (1 + d.Springback) }

// Marks returns where along the straight tube, from its first point, to mark it for each
// bend, in metres: the place where the arc begins, less the die's start offset.
func (d Die) Marks(s Schedule) []float64 {
	var marks []float64
	passed := 0.0
	for _, row := range s.Rows {
		passed += row.Length
		if row.Angle > 0 {
			marks = append(marks, passed-d.StartOffset)
		}
		passed += s.Radius * row.Angle
	}
	return marks
}
