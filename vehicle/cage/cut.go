package cage

import "math"

// TubeEnd is one end of a tube that sits on a main tube.
type TubeEnd struct {
	Notch  Notch
	Toward Vector // square to the tube: the side where the notch's profile begins (p = 0)
}

// Seat returns the end of a branch that sits on a main tube at a node: the angle between
// the axes, and the offset where the branch's line passes the main tube's axis without
// meeting it. Out is the way out of the node along the branch, main a direction of the main
// tube's axis, and through a place on that axis. The fault is that of Notch.Check.
//
// Of the two directions of the main tube the one drawn counts, so that the profile begins
// on the side of its far end.
func Seat(node, out Vector, branchOutside float64, through, main Vector, mainOutside float64) (TubeEnd, *Fault) {
	out, okOut := out.Unit()
	main, okMain := main.Unit()
	if !okOut || !okMain {
		return TubeEnd{}, &Fault{Problem: NoMeeting}
	}
	end := TubeEnd{Notch: Notch{Branch: branchOutside / 2, Main: mainOutside / 2, Angle: out.Angle(main)}}
	toward, ok := across(out, main)
	if !ok {
		return end, &Fault{Problem: NoMeeting}
	}
	end.Toward = toward
	// The third direction, out × toward, is square to both axes; p grows toward it.
	end.Notch.Offset = through.Minus(node).Dot(out.Cross(toward))
	return end, end.Notch.Check()
}

// Witness returns the angle by which the direction to is turned against the direction from
// about the way along a tube, right-handed, from -π (left out) to π: parts along the tube do
// not count. It is 0 where one of them has no part across.
func Witness(along, from, to Vector) float64 {
	axis, ok := along.Unit()
	one, okOne := across(axis, from)
	other, okOther := across(axis, to)
	if !ok || !okOne || !okOther {
		return 0
	}
	return halfTurned(math.Atan2(axis.Dot(one.Cross(other)), one.Dot(other)))
}

// halfTurned turns -π into π.
func halfTurned(angle float64) float64 {
	if angle <= -math.Pi {
		return math.Pi
	}
	return angle
}

// CutEnds is how the notches of a tube's two ends stand to each other and to its bends, in
// radians, right-handed about the way from the first end to the last.
type CutEnds struct {
	// Between is by how much the last end's notch is turned against the first one's. It is
	// seen along the straightened tube: bends do not twist it.
	Between float64
	// FirstToBend and LastToBend are by how much each notch is turned against the plane of
	// the nearest bend: against the side to which that bend turns. 0 without bends.
	FirstToBend, LastToBend float64
}

// EndsOf returns how two notches on the ends of a course stand. First and last are the
// directions in which the profiles begin.
func (c Course) EndsOf(first, last Vector) CutEnds {
	var ends CutEnds
	pieces := c.Pieces()
	if len(pieces) == 0 {
		return ends
	}
	seen, hasBend := first, false
	var lastNormal Vector
	for _, piece := range pieces {
		if piece.Turn == 0 {
			continue
		}
		if !hasBend {
			inward := piece.Centre.Minus(piece.From)
			ends.FirstToBend = Witness(piece.Direction(0), inward, first)
		}
		seen = seen.Turned(piece.Normal, piece.Turn)
		lastNormal, hasBend = piece.Normal, true
	}
	end := pieces[len(pieces)-1].Direction(1)
	if hasBend {
		ends.LastToBend = Witness(end, lastNormal.Cross(end), last)
	}
	ends.Between = Witness(end, seen, last)
	return ends
}

// Cut is the length of a tube with notched ends, in metres.
type Cut struct {
	Node      float64 // from node to node along the centreline, straights and arcs
	Centre    float64 // on the centreline, from surface to surface
	LongPoint float64 // from long point to long point: what is cut off the bar
}

// CutOf returns the lengths of a tube whose centreline has the developed length from node to
// node; an end without a notch (nil) is cut square at its node.
func CutOf(developed float64, first, last *Notch) Cut {
	cut := Cut{developed, developed, developed}
	for _, notch := range []*Notch{first, last} {
		if notch == nil {
			continue
		}
		cut.Centre -= notch.OnCentreline()
		long, _ := notch.LongPoint()
		cut.LongPoint -= long
	}
	return cut
}
