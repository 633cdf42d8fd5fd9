package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// An apartness is a distance, a clearance or an angle between two shapes.
type apartness struct {
	code rules.FunctionCode
	a, b *shape
}

// apartCost is how many evaluations one of them counts for where settling tries
// many coordinates: it takes as long as some dozens of comparisons.
const apartCost = 10

// A memory is what an apartness has come to for the cells that stood then.
type memory struct {
	of   []quantity.Range
	came quantity.Range
}

// remembered works an apartness out, once for the same coordinates and sizes: clauses ask
// for every tube beside every other, and are looked at more than once.
func (m *machine) remembered(x apartness) quantity.Range {
	old := m.apart[x]
	if old != nil && m.stillStand(x, old.of) {
		return old.came
	}
	m.left -= apartCost
	made := &memory{of: m.rangesOf(x)}
	switch x.code {
	case rules.FunctionDistance:
		made.came = distance(m, x.a, x.b)
	case rules.FunctionClearance:
		made.came = clearance(m, x.a, x.b)
	default:
		made.came = angleBetween(m, x.a, x.b)
	}
	if m.apart == nil {
		m.apart = map[apartness]*memory{}
	}
	m.apart[x] = made
	return made.came
}

// rangesOf are the ranges that an apartness hangs on.
func (m *machine) rangesOf(x apartness) []quantity.Range {
	made := make([]quantity.Range, 0, 3*(len(x.a.points)+len(x.b.points))+4)
	m.eachRange(x, func(r quantity.Range) bool { made = append(made, r); return true })
	return made
}

// stillStand reports whether the ranges that an apartness hangs on are those.
func (m *machine) stillStand(x apartness, those []quantity.Range) bool {
	i := -1
	same := true
	m.eachRange(x, func(r quantity.Range) bool { i++; same = r == those[i]; return same })
	return same
}

// eachRange visits the ranges that an apartness hangs on until one visit says no.
func (m *machine) eachRange(x apartness, visit func(quantity.Range) bool) {
	for _, s := range [2]*shape{x.a, x.b} {
		for at := range s.cells(x.code == rules.FunctionClearance) {
			if !visit(m.rangeAt(at)) {
				return
			}
		}
	}
}

// rangeAt is the range of a cell that holds a figure.
func (m *machine) rangeAt(at int32) quantity.Range {
	return quantity.Range{Low: m.cells[at].low, High: m.cells[at].high}
}

// distance is the distance between two places or centrelines.
func distance(m *machine, a, b *shape) quantity.Range { return linesApart(a.tube(m), b.tube(m)) }

// linesApart is the distance between two centrelines; one of a single point is that place.
func linesApart(a, b cage.Tube) quantity.Range {
	switch {
	case len(a.Points) == 1 && len(b.Points) == 1:
		return cage.Distance(a.Points[0], b.Points[0])
	case len(a.Points) == 1:
		return cage.DistanceToTube(a.Points[0], b)
	case len(b.Points) == 1:
		return cage.DistanceToTube(b.Points[0], a)
	}
	return cage.DistanceBetweenTubes(a, b)
}

// clearance is the distance between the surfaces of two places or tubes, below 0 where they
// run into each other: a tube is half its outside diameter thick, a helmet is a ball.
//
// As a ball grows by a step, its middle sinks by as much and comes nearer by no more than
// that, so that the clearance never grows: its ends are those of the radii.
func clearance(m *machine, a, b *shape) quantity.Range {
	least := surfacesApart(m, a, b, func(radius quantity.Range) float64 { return radius.High })
	if !a.isBall() && !b.isBall() {
		return least
	}
	most := surfacesApart(m, a, b, func(radius quantity.Range) float64 { return radius.Low })
	return quantity.Range{Low: least.Low, High: most.High}
}

// surfacesApart is the distance between two surfaces, with one radius for each ball.
func surfacesApart(m *machine, a, b *shape, radiusOf func(quantity.Range) float64) quantity.Range {
	lineA, thickA := a.solid(m, radiusOf)
	lineB, thickB := b.solid(m, radiusOf)
	return linesApart(lineA, lineB).Minus(thickA).Minus(thickB)
}

// solid is the line that the surface of a shape runs about, and how far from it: a tube's
// centreline and half its outside diameter, a ball's middle and radius, a place itself.
func (s *shape) solid(m *machine, radiusOf func(quantity.Range) float64) (cage.Tube, quantity.Range) {
	line := s.tube(m)
	switch {
	case s.isBall():
		radius := quantity.Exactly(radiusOf(m.rangeAt(s.ball)))
		middle := &line.Points[0]
		middle.Z = middle.Z.Minus(radius)
		middle.Reading = 0 // it is no longer the place that was read
		return line, radius
	case s.isTube():
		return line, m.rangeAt(s.outside).Times(quantity.Exactly(0.5))
	}
	return line, quantity.Exactly(0)
}
