package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// stretchesOf returns the straights and arcs of a tube, and whether all have bounds: no
// point too far away, no bend that may turn straight back, no radius without bound. Pieces
// that are not near are left out.
func stretchesOf(t Tube, isNear func(piece int) bool) ([]stretch, bool) {
	if len(t.Points) == 0 {
		return nil, false
	}
	var parts []stretch
	for piece := range max(1, 2*len(t.Points)-3) {
		if piece%2 == 1 && !(t.Radius.High > 0) {
			continue // the corner stays sharp and is an end of the straights
		}
		if isNear != nil && !isNear(piece) {
			continue
		}
		known := newReadings()
		forms, ok := t.formsOf(&known, piece)
		if !ok || known.tooFar {
			return nil, false
		}
		part := stretch{piece: piece, forms: &forms, radius: t.Radius.Low, to: 1}
		part.measure()
		parts = append(parts, part)
	}
	return parts, true
}

// measure sets how the stretch lies as read. An arc of no more than a quarter turn on a
// chord c has a bow of c/2 × tan(a quarter of its angle), which is less than 0.15 c²/R; of
// no more than a half turn, c/2.
func (s *stretch) measure() {
	ends := s.forms.ends(s.from, s.to)
	s.asRead, s.reach = Segment{ends[0].middle(), ends[1].middle()}, 0
	for _, end := range ends {
		s.reach = max(s.reach, math.Hypot(math.Hypot(end[0].reach(), end[1].reach()), end[2].reach()))
	}
	if s.forms.arc == nil {
		return
	}
	chord := ends[0].minus(&ends[1])
	length := chord.apart().High
	s.bow = length / 2
	if length < 1.4*s.radius {
		s.bow = 0.15 * length * length / s.radius
	}
}

// halves returns the two halves of a part of an arc.
func (s stretch) halves() (first, second stretch) {
	first, second = s, s
	first.to = (s.from + s.to) / 2
	second.from = first.to
	first.measure()
	second.measure()
	return first, second
}

// pointsOf returns the points on which a piece of the tube hangs most: the two of a run, the
// three of a bend.
func (t Tube) pointsOf(piece int) []Point {
	i := piece / 2
	return t.Points[i:min(len(t.Points), i+2+piece%2)]
}

// named returns the tube with a number of its own, and a reading number for each point that
// has none, counted up from it.
func (t Tube) named(first int) Tube {
	t.number = first
	t.Points = append([]Point(nil), t.Points...)
	for i := range t.Points {
		if t.Points[i].Reading == 0 {
			t.Points[i].Reading = first + i
		}
	}
	return t
}

// pieceForms is a straight, an arc or a point in first-order form.
type pieceForms struct {
	straight [2]formVector // its ends; of a point both
	run      [2]formVector // of a straight the points whose line it lies on, bends cut off or not
	arc      *bendForms    // nil for a straight
	isPoint  bool
}

// ends returns the places from share to share of the piece; a straight is never divided.
func (p *pieceForms) ends(from, to float64) [2]formVector {
	if p.arc == nil {
		return p.straight
	}
	return [2]formVector{p.arc.at(from), p.arc.at(to)}
}

// part returns the segment between two ends of the piece. That of a run is known by the
// points of the tube, which hang on less than the ends of what its bends leave of it.
func (p *pieceForms) part(ends *[2]formVector) *partOfLine {
	part := between(&ends[0], &ends[1])
	if p.arc == nil && !p.isPoint {
		part.line = [2]*formVector{&p.run[0], &p.run[1]}
	}
	return part
}

// formsOf returns a piece of the tube in forms of the given readings.
func (t Tube) formsOf(known *readings, piece int) (forms pieceForms, ok bool) {
	i, last := piece/2, len(t.Points)-1
	if last == 0 {
		place := known.place(t.Points[0])
		return pieceForms{straight: [2]formVector{place, place}, isPoint: true}, true
	}
	if piece%2 == 1 {
		bend, ok := t.bendForms(known, t.Points, i+1)
		return pieceForms{arc: &bend}, ok
	}
	forms.run = [2]formVector{known.place(t.Points[i]), known.place(t.Points[i+1])}
	forms.straight = forms.run
	for k, at := range []int{i, i + 1} {
		if at == 0 || at == last || !(t.Radius.High > 0) {
			continue
		}
		bend, isBend := t.bendForms(known, t.Points, at)
		if !isBend {
			return forms, false
		}
		forms.straight[k] = bend.at(float64(1 - k))
	}
	return forms, true
}

// bendForms is an arc in first-order form: with a and b the unit vectors into and out of the
// corner B, w the cosine of half the turn and T the tangent's length, its points for s from
// 0 to 1 are B + T (s² b - (1-s)² a) / ((1-s)² + 2 s (1-s) w + s²): the rational quadratic
// form of a circle (L. Piegl and W. Tiller, The NURBS Book, 7.3).
type bendForms struct {
	corner, in, out formVector
	tangent, cosine form
}

func (t Tube) bendForms(known *readings, points []Point, at int) (bendForms, bool) {
	before, corner, after := known.place(points[at-1]), known.place(points[at]), known.place(points[at+1])
	u, v := corner.minus(&before), after.minus(&corner)
	bend := bendForms{corner: corner}
	frameU, okU := frameAlong(u.middle(), v.middle())
	frameV, okV := frameAlong(v.middle(), u.middle())
	if !okU || !okV || known.tooFar {
		return bend, false
	}
	in, okIn := u.unit(frameU)
	out, okOut := v.unit(frameV)
	bend.in, bend.out = in.outOf(frameU), out.outOf(frameV)
	middle := bend.in.minus(bend.out.opposite())
	direction, okMiddle := middle.middle().Unit()
	angle := AngleBetween(Run{points[at-1], points[at]}, Run{points[at], points[at+1]})
	tangent, ok := ofTurn(&u, &v, tangentOf, halfTangent(angle))
	cosine, okCosine := middle.norm(direction)
	if !okIn || !okOut || !okMiddle || !ok || !okCosine {
		return bend, false
	}
	radius := known.radius(quantity.Between(max(0, t.Radius.Low), t.Radius.High), t.number)
	bend.tangent, bend.cosine = tangent.times(&radius), cosine.scaled(0.5)
	return bend, !known.tooFar
}

func (a *formVector) opposite() *formVector {
	var nothing formVector
	opposite := nothing.minus(a)
	return &opposite
}

// at returns the point of the arc for s from 0 to 1.
func (b *bendForms) at(s float64) formVector {
	rest := 1 - s
	below := b.cosine.scaled(2 * s * rest)
	below.middle += rest*rest + s*s
	below.rest += slack
	inverse, ok := below.inverse()
	if !ok { // the cosine is above 0, and so the sum at least a half
		inverse = formOf(quantity.Between(1, 2))
	}
	length := b.tangent.times(&inverse)
	var way formVector
	for i := range way {
		part := b.in[i].scaled(-rest * rest)
		way[i] = part.plusTimes(&b.out[i], s*s)
	}
	return b.corner.plusTimes(&way, &length)
}
