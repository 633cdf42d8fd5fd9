package cage

import "math"

// Saddle is a notched end of a tube where it stands: its node, the way out of it along the
// tube, of length 1, and the notch.
type Saddle struct {
	Node, Out Vector
	End       TubeEnd
}

// On returns the place on the tube's outside at the place p round it, as in Notch.Profile,
// and so far from the node along the tube.
func (s Saddle) On(p, ahead float64) Vector {
	sine, cosine := math.Sincos(p)
	round := s.End.Toward.Times(cosine).Plus(s.Out.Cross(s.End.Toward).Times(sine))
	return s.Node.Plus(s.Out.Times(ahead)).Plus(round.Times(s.End.Notch.Branch))
}

// saddleSteps is at how many places round the tube a saddle is looked at.
const saddleSteps = 120

// edge calls a function with every place that is looked at along the edge of the saddle.
func (s Saddle) edge(look func(p, ahead float64)) {
	for i := range saddleSteps {
		p := 2 * math.Pi * float64(i) / saddleSteps
		look(p, s.End.Notch.Profile(p))
	}
}

// OffCourse returns how far the edge of the saddle, which is that on a straight tube, is off
// the outside of a main tube that bends: grind is how deep it would lie in its metal at most,
// gap how far it stands off, square to the surface, in metres. The main tube counts as going
// straight on beyond its ends.
func (s Saddle) OffCourse(main Course) (grind, gap float64) {
	points := main.Points
	if len(points) < 2 {
		return 0, 0
	}
	long := Course{Points: append([]Vector(nil), points...), Radius: main.Radius}
	beyond := func(end, inner Vector) Vector {
		way, _ := end.Minus(inner).Unit()
		return end.Plus(way)
	}
	last := len(points) - 1
	long.Points[0], long.Points[last] = beyond(points[0], points[1]), beyond(points[last], points[last-1])
	solid := SolidOf(long, 0, 0, math.Inf(1))
	s.edge(func(p, ahead float64) {
		_, away := solid.Nearest(s.On(p, ahead))
		grind, gap = max(grind, s.End.Notch.Main-away), max(gap, away-s.End.Notch.Main)
	})
	return grind, gap
}

// Reach returns how far along a direction the edge of the saddle reaches from the node, to
// both sides: least is below 0 where it reaches back.
func (s Saddle) Reach(way Vector) (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	s.edge(func(p, ahead float64) {
		along := s.On(p, ahead).Minus(s.Node).Dot(way)
		least, most = min(least, along), max(most, along)
	})
	return least, most
}

// insideBy is how deep a place must lie in the metal of another tube to count as in it, and
// insideStep how fine the way along a tube is looked at, in metres.
const (
	insideBy   = 0.5e-3
	insideStep = 1e-3
	insideMost = 0.3
)

// RunsInto returns for how far along the tube beyond its saddle its outside lies in the metal
// of another tube, in metres, at most 0.3 m: of two that land beside each other on a third
// one, where that leaves no room for both.
func (s Saddle) RunsInto(other *Solid) float64 {
	farthest := 0.0
	s.edge(func(p, ahead float64) {
		for beyond := farthest + insideStep; beyond <= insideMost; beyond += insideStep {
			if _, away := other.Nearest(s.On(p, ahead+beyond)); away > other.Outside/2-insideBy {
				break
			}
			farthest = beyond
		}
	})
	return farthest
}
