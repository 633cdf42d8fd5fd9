package cage

import "fmt"

// Problem says what cannot be built or worked out.
type Problem string

// The problems of a course, a section, a notch or a schedule.
const (
	TooFewPoints  Problem = "too few points"          // a tube needs two
	NotFinite     Problem = "not a finite number"     // or farther than 1000 km from the origin
	RepeatedPoint Problem = "repeated point"          // two points in a row are one place
	Reversal      Problem = "turns straight back"     // a bend of 180 degrees has no corner
	RadiusTooBig  Problem = "bend radius too big"     // Missing says by how much its tangents are too long
	NoRadius      Problem = "no bend radius"          // a course with a corner and no radius, or a negative one
	NotATube      Problem = "not a tube"              // wall thicker than half the outside, or nothing left
	BranchTooBig  Problem = "branch too big"          // the branch is thicker than the main tube, or set off too far
	NoMeeting     Problem = "tubes run alongside"     // a branch along its main tube has no notch
	CutTooLong    Problem = "longer than every bar"   // Missing says by how much
	BarsUsedUp    Problem = "no bar left for a cut"   // more cuts than the supplied bars hold
	NotALength    Problem = "not a length"            // negative, zero or not a number
	UnknownJoint  Problem = "joint that is not there" // a member goes through a joint that the cage has not
)

// Fault is something that cannot be built or worked out. It is an error that a reader can
// take apart.
type Fault struct {
	Problem Problem
	At      int     // which point, row, cut or member, counted from 0
	Missing float64 // metres too little, where that is the fault, else 0
}

// Error returns the fault in words.
func (f *Fault) Error() string {
	if f.Missing != 0 {
		return fmt.Sprintf("%s at number %d: %.1f mm are missing", f.Problem, f.At+1, f.Missing*1000)
	}
	return fmt.Sprintf("%s at number %d", f.Problem, f.At+1)
}
