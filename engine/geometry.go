package engine

import (
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
	touch := func(at int32) {
		if s.everything || !m.cells[at].known() {
			s.touch(at)
			s.places[at] = true
		}
	}
	for i := range sh.points {
		touch(sh.points[i].x)
		touch(sh.points[i].y)
		touch(sh.points[i].z)
	}
	if sh.isTube() && len(sh.points) > 2 {
		touch(sh.radius)
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
	case rules.FunctionDistance, rules.FunctionAngleBetween:
		return m.remembered(apartness{n.code, a, b})
	}
	ahead, _, above := cage.Offset(b.points[0].point(m), a.points[0].point(m))
	if n.code == rules.FunctionAbove {
		return above
	}
	return ahead
}

// An apartness is a distance or an angle between two shapes.
type apartness struct {
	code rules.FunctionCode
	a, b *shape
}

// apartCost is how many evaluations one distance or angle counts for where settling tries
// many coordinates: it takes as long as some dozens of comparisons.
const apartCost = 10

// A memory is what an apartness has come to for the coordinates that stood then.
type memory struct {
	of   []quantity.Range
	came quantity.Range
}

// remembered works a distance or an angle out, once for the same coordinates: clauses ask
// for every tube beside every other, and are looked at more than once.
func (m *machine) remembered(x apartness) quantity.Range {
	old := m.apart[x]
	if old != nil && m.stillStand(x, old.of) {
		return old.came
	}
	m.left -= apartCost
	made := &memory{of: m.coordinates(x)}
	if x.code == rules.FunctionDistance {
		made.came = distance(m, x.a, x.b)
	} else {
		made.came = angleBetween(m, x.a, x.b)
	}
	if m.apart == nil {
		m.apart = map[apartness]*memory{}
	}
	m.apart[x] = made
	return made.came
}

// coordinates are the ranges that an apartness hangs on.
func (m *machine) coordinates(x apartness) []quantity.Range {
	made := make([]quantity.Range, 0, 3*(len(x.a.points)+len(x.b.points))+2)
	m.eachCoordinate(x, func(r quantity.Range) bool { made = append(made, r); return true })
	return made
}

// stillStand reports whether the ranges that an apartness hangs on are those.
func (m *machine) stillStand(x apartness, those []quantity.Range) bool {
	i := -1
	same := true
	m.eachCoordinate(x, func(r quantity.Range) bool { i++; same = r == those[i]; return same })
	return same
}

func (m *machine) eachCoordinate(x apartness, visit func(quantity.Range) bool) {
	for _, s := range [2]*shape{x.a, x.b} {
		for i := range s.points {
			for _, at := range [3]int32{s.points[i].x, s.points[i].y, s.points[i].z} {
				if !visit(quantity.Range{Low: m.cells[at].low, High: m.cells[at].high}) {
					return
				}
			}
		}
		if s.isTube() && !visit(quantity.Range{Low: m.cells[s.radius].low, High: m.cells[s.radius].high}) {
			return
		}
	}
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

// distance is the distance between two places or centrelines.
func distance(m *machine, a, b *shape) quantity.Range {
	switch {
	case !a.isTube() && !b.isTube():
		return cage.Distance(a.points[0].point(m), b.points[0].point(m))
	case !a.isTube():
		return cage.DistanceToTube(a.points[0].point(m), b.tube(m))
	case !b.isTube():
		return cage.DistanceToTube(b.points[0].point(m), a.tube(m))
	}
	return cage.DistanceBetweenTubes(a.tube(m), b.tube(m))
}
