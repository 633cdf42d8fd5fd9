package engine

import (
	"iter"
	"math"

	"gapsheet/rules"
	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// The functions on places and tubes read the coordinates behind them: every place and every
// tube of the car has a shape, which says in which cells those are.

// A shapeKey is a part's place or course, or that of one of its points.
type shapeKey struct {
	base  int32
	point int32 // position of the point among the part's particulars, -1 for the part itself
}

// A shape is where a place or the centreline of a tube is.
type shape struct {
	points []pointCells
	radius int32 // cell of a tube's bend radius, -1 for a place
	lacks  int32 // cell of what the sheet would have to say first, -1 where nothing is missing

	// What its surface hangs on, beside where it is:
	outside int32 // cell of a tube's outside diameter, -1 for a place
	ball    int32 // cell of the radius of a ball that has its highest point there, else -1
}

// pointCells are the cells of a place's coordinates.
type pointCells struct {
	x, y, z  int32
	reading  int // places with the same one are one reading
	mirrored bool
	read     cage.Vector // as read, which says what lies on what
}

// point is the place as the cells stand.
func (p *pointCells) point(m *machine) cage.Point {
	at := func(i int32) quantity.Range { return quantity.Range{Low: m.cells[i].low, High: m.cells[i].high} }
	made := cage.Point{X: at(p.x), Y: at(p.y), Z: at(p.z), Reading: p.reading, Mirrored: p.mirrored}
	if p.mirrored {
		made.Y = made.Y.Negate()
	}
	return made
}

// same reports whether two places are one joint.
func (p *pointCells) same(q *pointCells) bool {
	return p.reading == q.reading && p.mirrored == q.mirrored
}

// isTube reports whether the shape has a course rather than one place.
func (s *shape) isTube() bool { return s.radius >= 0 }

// isBall reports whether the shape is a ball below its one place.
func (s *shape) isBall() bool { return s.ball >= 0 }

// cells are the cells that a shape hangs on, with those of its surface where asked.
func (s *shape) cells(surface bool) iter.Seq[int32] {
	return func(yield func(int32) bool) {
		for i := range s.points {
			p := &s.points[i]
			if !yield(p.x) || !yield(p.y) || !yield(p.z) {
				return
			}
		}
		if s.isTube() && len(s.points) > 2 && !yield(s.radius) {
			return
		}
		if surface && s.isTube() {
			yield(s.outside)
		}
		if surface && s.isBall() {
			yield(s.ball)
		}
	}
}

// tube is the centreline as the cells stand; of a place it is that one point.
func (s *shape) tube(m *machine) cage.Tube {
	t := cage.Tube{Points: make([]cage.Point, len(s.points))}
	for i := range s.points {
		t.Points[i] = s.points[i].point(m)
	}
	if s.isTube() {
		t.Radius = quantity.Range{Low: m.cells[s.radius].low, High: m.cells[s.radius].high}
	}
	return t
}

// A spot is an argument of a function on places and tubes.
type spot struct {
	part   partNode
	point  int32 // as in shapeKey
	offset int32 // of the particular that tells where it is

	surface bool // what is asked hangs on its surface too
}

// shape is what the spot stands for; nil where its part is not there.
func (n *spot) shape(m *machine) *shape { return m.shapes[shapeKey{n.part.base(m), n.point}] }

func (n *spot) survey(m *machine, s *survey) {
	n.part.survey(m, s)
	sh := n.shape(m)
	switch {
	case sh == nil:
		if picked, ok := n.part.(*pickedPart); !ok || picked.base(m) != picked.list(m).phantom {
			s.touch(m.refs[n.part.base(m)+n.offset])
		}
		return
	case sh.lacks >= 0:
		s.lacks(unknown{kind: Missing, list: -1, cell: sh.lacks})
		return
	}
	for at := range sh.cells(n.surface) {
		if s.everything || !m.cells[at].known() {
			s.touch(at)
			s.places[at] = true
		}
	}
}

func (n *spot) sign(m *machine, s *signer) {
	n.part.sign(m, s)
	s.int(int64(n.point))
}

// A geometric is a function on two places or tubes that yields a number.
type geometric struct {
	code rules.FunctionCode
	a, b spot
}

func (n *geometric) survey(m *machine, s *survey) { n.a.survey(m, s); n.b.survey(m, s) }
func (n *geometric) sign(m *machine, s *signer) {
	s.tag('g')
	s.int(int64(n.code))
	n.a.sign(m, s)
	n.b.sign(m, s)
}

func (n *geometric) number(m *machine) quantity.Range {
	a, b := n.a.shape(m), n.b.shape(m)
	if a == nil || b == nil {
		m.unsure = true
		return n.any()
	}
	if a.lacks >= 0 || b.lacks >= 0 {
		return n.any()
	}
	switch n.code {
	case rules.FunctionDistance, rules.FunctionClearance, rules.FunctionAngleBetween:
		return m.remembered(apartness{n.code, a, b})
	}
	ahead, _, above := cage.Offset(b.points[0].point(m), a.points[0].point(m))
	if n.code == rules.FunctionAbove {
		return above
	}
	return ahead
}

// any is all that the function can come to.
func (n *geometric) any() quantity.Range {
	switch n.code {
	case rules.FunctionDistance:
		return quantity.Range{High: math.Inf(1)}
	case rules.FunctionAngleBetween:
		return quantity.Range{High: math.Nextafter(math.Pi, 4)}
	}
	return quantity.Everything
}
