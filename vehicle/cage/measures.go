package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// NodeLength returns the way from point to point, corners and all, in metres.
func (t Tube) NodeLength() quantity.Range { return t.numbered().nodeLength() }

// Developed returns the length of the centreline, straights and arcs, in metres. With β the
// angle of a bend, its tangents are R tan(β/2) and its arc is R β (elementary geometry), so
// that it saves R (2 tan(β/2) - β) of the way over the corner. Where a bend may turn straight
// back, its tangents have no bound. A negative radius counts as 0.
func (t Tube) Developed() quantity.Range { return t.numbered().developed() }

// StraightLeft returns what the tangents leave of a run (0 is from the first point to the
// second), in metres; below 0: so much is missing. It panics where there is no such run.
func (t Tube) StraightLeft(run int) quantity.Range { return t.numbered().straightLeft(run) }

// GreatestTurn returns the greatest angle by which the tube turns at any of its points, 0
// without inner points, in radians.
func (t Tube) GreatestTurn() quantity.Range {
	var greatest quantity.Range
	for i := range t.inner() {
		greatest = greatest.Max(t.Turn(i))
	}
	return greatest
}

// straightLeft is StraightLeft of a numbered tube.
func (t Tube) straightLeft(run int) quantity.Range {
	p, q := &t.Points[run], &t.Points[run+1]
	if len(t.Points) == 2 {
		return Distance(*p, *q)
	}
	one := quantity.Exactly(1)
	left := lengthSum{plain: Distance(*p, *q)}
	left.addRun(p, q, one)
	for _, i := range []int{run - 1, run} {
		if i < 0 || i >= t.inner() || !(t.Radius.High > 0) {
			continue
		}
		known := halfTangent(t.Turn(i))
		left.plain = left.plain.Minus(t.Radius.Times(known))
		left.addCorner(t.Points[i:i+3], &tangent, t.Radius, known, one)
	}
	return left.value()
}

// halfTangent returns the tangent of half an angle from 0 to π.
func halfTangent(angle quantity.Range) quantity.Range {
	low := quantity.Exactly(max(0, angle.Low/2)).Tan().Low
	if !(angle.High/2 < 1.5707) {
		return quantity.Range{Low: max(0, low), High: math.Inf(1)}
	}
	return quantity.Range{Low: max(0, low), High: quantity.Exactly(angle.High / 2).Tan().High}
}

// savingOf returns 2 tan(β/2) - β, which grows with β.
func savingOf(angle, halfTangent quantity.Range) quantity.Range {
	two := quantity.Exactly(2)
	low := quantity.Exactly(halfTangent.Low).Times(two).Minus(quantity.Exactly(angle.Low))
	if math.IsInf(halfTangent.High, 1) {
		return quantity.Range{Low: max(0, low.Low), High: math.Inf(1)}
	}
	high := quantity.Exactly(halfTangent.High).Times(two).Minus(quantity.Exactly(angle.High))
	return quantity.Between(max(0, low.Low), max(0, low.Low, high.High))
}
