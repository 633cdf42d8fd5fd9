package vehicle

import "gapsheet/vehicle/cage"

// Frame is the cage of a sheet as read, without tolerance: what drawings, cut lists and
// templates are made from. Joints, tubes and feet are numbered in the order of the sheet,
// and Structure has the same numbers.
type Frame struct {
	Sheet     *Sheet
	Joints    []FrameJoint
	Tubes     []FrameTube
	Feet      []FrameFoot
	Dies      []FrameDie
	Heads     []FrameHead
	Structure *cage.Structure // its tolerance is the greatest of the joints, at least a millimetre
	Unplaced  []*Part         // tubes and joints without a known place, left out above

	looked cage.Findings // of the structure
}

// FrameJoint is a joint of which the place is known.
type FrameJoint struct {
	Part *Part
	Name string // its label
	At   cage.Vector
}

// FrameTube is a tube that can be drawn.
type FrameTube struct {
	Part          *Part
	Number        string      // its label
	Member        string      // which member of the cage it is, "" where not recorded
	Through       []int       // joints, by number
	Course        cage.Course // without joints at which it goes straight on, see Corners
	Corners       []int       // joints, by number: those of Course's points, both ends included
	Outside, Wall float64     // metres, as measured, else as ordered; 0 where neither is recorded
	MassPerLength float64     // kg/m, 0 where its size is not recorded, or its material is stated not to be plain steel and no density is
	Stock         *Part       // nil where it has none
	Die           *FrameDie   // it is bent with; nil where it has no bend or the sheet has no die for it
	Ends          [2]FrameEnd
}

// FrameEnd is how a tube ends at its first or last joint.
type FrameEnd struct {
	Joint int
	Onto  int          // the tube it meets and is notched onto, -1 where it is cut square
	Seat  cage.TubeEnd // its notch and where that begins, when Onto is not -1
	Short float64      // how far ahead of the joint the seat's node is, metres: 0 but where Onto's axis does not pass the joint, as at a bend, whose arc cuts the corner (below 0 from the outside of the bend)
	Fault *cage.Fault  // why it has no notch although it meets Onto
}

// IsNotched reports whether the end has a notch to cut: it meets another tube, and nothing
// is wrong with its seat.
func (e FrameEnd) IsNotched() bool { return e.Onto >= 0 && e.Fault == nil }

// FrameFoot is a foot that is at a joint.
type FrameFoot struct {
	Part  *Part
	Joint int
}
