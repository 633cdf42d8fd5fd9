package vehicle

import "gapsheet/vehicle/cage"

// Lengths returns how long the tube is to be cut. An end without a notch is cut square at
// its joint, as is one whose seat has a fault.
func (t FrameTube) Lengths() cage.Cut {
	developed := t.Course.Developed()
	var notches [2]*cage.Notch
	for i, end := range t.Ends {
		if end.IsNotched() {
			notches[i] = &end.Seat.Notch
			developed -= end.Short
		}
	}
	cut := cage.CutOf(developed, notches[0], notches[1])
	cut.Node = t.Course.Developed()
	return cut
}

// Mass returns the mass of the tube in kg from node to node along its centreline, before its
// ends are notched; 0 where it cannot be told.
func (t FrameTube) Mass() float64 { return t.MassPerLength * t.Course.Developed() }

// Cuttable reports whether a length to cut can be told: every corner has its bend radius,
// and the bends fit between the joints.
func (t FrameTube) Cuttable() bool { return len(t.Course.Check()) == 0 }

// AheadOfNode returns how much shorter than its centreline from node to node the tube is cut
// at one of its ends, 0 the first and 1 the last, before it is notched: the way from the
// joint to the long point, in metres.
func (t FrameTube) AheadOfNode(end int) float64 {
	if !t.Ends[end].IsNotched() {
		return 0
	}
	long, _ := t.Ends[end].Seat.Notch.LongPoint()
	return t.Ends[end].Short + long
}

// Turned returns how the notches of the tube's ends stand to each other and to its bends,
// and for which of them that means something: of a notch against the other end where both
// have one, of one against a bend where there is a bend.
func (t FrameTube) Turned() (ends cage.CutEnds, between, firstToBend, lastToBend bool) {
	bends := false
	for _, piece := range t.Course.Pieces() {
		bends = bends || piece.Turn > 0
	}
	first, last := t.Ends[0].IsNotched(), t.Ends[1].IsNotched()
	ends = t.Course.EndsOf(t.Ends[0].Seat.Toward, t.Ends[1].Seat.Toward)
	return ends, first && last, first && bends, last && bends
}
