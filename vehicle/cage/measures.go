package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// Measures are the lengths along a tube, in metres.
type Measures struct {
	NodeLength quantity.Range   // from point to point, corners and all
	Developed  quantity.Range   // of the centreline: straights and arcs
	Bends      []Bend           // of the inner points
	Straights  []quantity.Range // of each run without its tangents; below 0: so much is missing
}

// Missing returns by how much the bends do not fit between the points of the tube, in
// metres: the greatest of 0 and of what each straight is below 0.
func (m Measures) Missing() quantity.Range {
	var missing quantity.Range
	for _, straight := range m.Straights {
		missing = missing.Max(straight.Negate())
	}
	return missing
}

// SmallestStraight returns the shortest straight between two arcs, or between an arc and an
// end, and whether there is one.
func (m Measures) SmallestStraight() (quantity.Range, bool) {
	if len(m.Straights) == 0 {
		return quantity.Range{}, false
	}
	smallest := m.Straights[0]
	for _, straight := range m.Straights[1:] {
		smallest = smallest.Min(straight)
	}
	return smallest, true
}

// GreatestTurn returns the greatest angle of any bend, 0 without bends.
func (m Measures) GreatestTurn() quantity.Range {
	var greatest quantity.Range
	for _, bend := range m.Bends {
		greatest = greatest.Max(bend.Angle)
	}
	return greatest
}

// Measure returns the lengths along the tube. With β the angle of a bend, its tangents are
// R tan(β/2) and its arc is R β (elementary geometry), so that it saves R (2 tan(β/2) - β)
// of the way over the corner. Where a bend may turn straight back, its tangents have no
// bound. A negative radius counts as 0.
func (t Tube) Measure() Measures {
	var m Measures
	radius := quantity.Between(max(0, t.Radius.Low), max(0, t.Radius.High))
	points, readings := t.numbered()
	var saved quantity.Range
	for i := 1; i+1 < len(points); i++ {
		angle := AngleBetween(Run{points[i-1], points[i]}, Run{points[i], points[i+1]})
		tangent := halfTangent(angle)
		m.Bends = append(m.Bends, Bend{Angle: angle, Tangent: radius.Times(tangent), Arc: radius.Times(angle)})
		saved = saved.Plus(savingOf(angle, tangent))
	}
	for i := 1; i < len(points); i++ {
		length := Distance(points[i-1], points[i])
		m.NodeLength = m.NodeLength.Plus(length)
		for _, at := range []int{i - 2, i - 1} {
			if at >= 0 && at < len(m.Bends) {
				length = length.Minus(m.Bends[at].Tangent)
			}
		}
		m.Straights = append(m.Straights, met(length, straightOf(points, i, radius, m.Bends)))
	}
	m.Developed = m.NodeLength.Minus(radius.Times(saved))
	if len(points) > 2 {
		total := totalOf(points, readings, m.Bends)
		m.NodeLength = met(m.NodeLength, total.length(quantity.Range{}))
		m.Developed = met(m.Developed, total.length(radius))
	}
	return m
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
