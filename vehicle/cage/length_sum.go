package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// Weighed is a tube and what each metre of it counts for: 1 in a sum of lengths, its mass
// per metre in a sum of masses.
type Weighed struct {
	Tube
	PerMetre quantity.Range // not below 0
}

// SumOf returns the sum over tubes of their developed lengths, each times what a metre of
// the tube counts for. Points with the same reading number are one reading in all of them:
// where a joint moves, one tube grows and another shrinks.
func SumOf(tubes []Weighed) quantity.Range {
	sum, first := lengthSum{}, math.MinInt/2
	for _, tube := range tubes {
		sum.add(tube.Tube.numberedFrom(first), notBelowZero(tube.PerMetre))
		first += len(tube.Points)
	}
	return sum.value()
}

// notBelowZero cuts off what cannot be of a mass or a length.
func notBelowZero(r quantity.Range) quantity.Range {
	return quantity.Range{Low: max(0, r.Low), High: max(0, r.High)}
}

func (t Tube) nodeLength() quantity.Range {
	t.Radius = quantity.Range{}
	return t.developed()
}

// developed is the length of a numbered tube. That of a single run is sharp without forms.
func (t Tube) developed() quantity.Range {
	if len(t.Points) == 2 {
		return Distance(t.Points[0], t.Points[1])
	}
	var sum lengthSum
	sum.add(t, quantity.Exactly(1))
	return sum.value()
}

// lengthSum is a sum of lengths over many tubes: in ranges, and in first-order forms of as
// many readings as there are. A length shrinks as a radius grows, and counts for more with
// its weight, so that the most and the least are sums of their own.
type lengthSum struct {
	plain       quantity.Range
	most, least longForm
	numbers     []int // the readings' numbers in the order of their slopes
	slots       map[int]int
	isTooFar    bool // a length is not known as a form
	isInexact   bool // a coordinate has a tolerance
}

// longForm is a form with slopes for any number of readings, three for each.
type longForm struct {
	middle, rest, sizes float64
	count               int
	slopes              []float64
}

// fewReadings is up to how many readings a walk through them finds a number sooner than a
// map would.
const fewReadings = 12

// slot returns where the slopes of a reading begin.
func (s *lengthSum) slot(number int) int {
	if s.slots == nil {
		for i, known := range s.numbers {
			if known == number {
				return 3 * i
			}
		}
	} else if at, ok := s.slots[number]; ok {
		return at
	}
	at := 3 * len(s.numbers)
	s.numbers = append(s.numbers, number)
	s.most.slopes, s.least.slopes = append(s.most.slopes, 0, 0, 0), append(s.least.slopes, 0, 0, 0)
	if s.slots == nil && len(s.numbers) > fewReadings {
		s.slots = make(map[int]int, 4*fewReadings)
		for i, known := range s.numbers {
			s.slots[known] = 3 * i
		}
	} else if s.slots != nil {
		s.slots[number] = at
	}
	return at
}

// add adds the length of a tube, numbered and without negative radius, times its weight.
func (s *lengthSum) add(t Tube, weight quantity.Range) {
	before := s.plain
	s.plain = quantity.Range{}
	for i := 1; i < len(t.Points); i++ {
		s.plain = s.plain.Plus(Distance(t.Points[i-1], t.Points[i]))
		s.addRun(&t.Points[i-1], &t.Points[i], weight)
	}
	if t.Radius.High > 0 {
		for i := range t.inner() {
			s.bend(t, i, t.Radius, weight)
		}
	}
	// A length that may be below zero, of bends that do not fit, does not grow with its weight.
	s.isTooFar = s.isTooFar || !(weight.High <= farthest) || s.plain.Low < 0 && !weight.IsExact()
	s.plain = before.Plus(s.plain.Times(weight))
}

// bend takes off what an arc of a radius saves of the way over an inner point of the tube.
func (s *lengthSum) bend(t Tube, i int, radius, weight quantity.Range) {
	angle := t.Turn(i)
	saved := savingOf(angle, halfTangent(angle))
	s.plain = s.plain.Minus(radius.Times(saved))
	s.addCorner(t.Points[i:i+3], &saving, radius, saved, weight)
}

// addRun adds the way between two points, a run of a tube. With e its direction as read and
// d what the readings add to it, its length is |way| + e·d, and more by no more than d² over
// twice the part along e. Only points that are one reading go by forms.
func (s *lengthSum) addRun(p, q *Point, weight quantity.Range) {
	if s.isTooFar = s.isTooFar || !p.isBounded() || !q.isBounded(); s.isTooFar {
		return
	}
	var halfP, halfQ Vector
	from, to := p.center(&halfP), q.center(&halfQ)
	way, off := to.Minus(from), halfP.Plus(halfQ)
	s.isInexact = s.isInexact || off != Vector{}
	length := way.Norm()
	if p.sharesReading(*q) || !(length > 1/farthest) {
		s.addRunByForms(*p, *q, weight)
		return
	}
	along := way.Times(1 / length)
	low := length - (math.Abs(along.X)*off.X+math.Abs(along.Y)*off.Y+math.Abs(along.Z)*off.Z)*(1+slack)
	if !(low > 0.5*length) {
		s.addRunByForms(*p, *q, weight)
		return
	}
	more := off.Dot(off) / (2 * low) * (1 + slack)
	s.put(length+more/2, more/2+slack*(length+more), weight.High, weight.Low)
	s.slope(p, Vector{-along.X * halfP.X, -along.Y * halfP.Y, -along.Z * halfP.Z}, weight.High, weight.Low)
	s.slope(q, Vector{along.X * halfQ.X, along.Y * halfQ.Y, along.Z * halfQ.Z}, weight.High, weight.Low)
}

// slope adds what the coordinates of a point do, times a factor each.
func (s *lengthSum) slope(p *Point, by Vector, most, least float64) {
	if p.Mirrored {
		by.Y = -by.Y
	}
	at := s.slot(p.Reading)
	for axis, slope := range [3]float64{by.X, by.Y, by.Z} {
		s.most.slopes[at+axis] += most * slope
		s.least.slopes[at+axis] += least * slope
	}
}

func (s *lengthSum) addRunByForms(p, q Point, weight quantity.Range) {
	known := newReadings()
	from, to := known.place(p), known.place(q)
	way := to.minus(&from)
	var length form
	direction, ok := way.middle().Unit()
	if ok {
		length, ok = way.norm(direction)
	}
	if !ok {
		length = formOf(Distance(p, q))
	}
	s.putForm(&length, &known, weight.High, weight.Low)
}

// addCorner takes off what a bend is in the way, by a curve of the turn at the middle one of
// three points, times a radius.
func (s *lengthSum) addCorner(points []Point, of *bendCurve, radius, known, weight quantity.Range) {
	if s.isTooFar = s.isTooFar || !(radius.High <= farthest); s.isTooFar {
		return
	}
	most, least := -weight.High*radius.Low, -weight.Low*radius.High
	var turn quickTurn
	if turn.of([4]Point{points[0], points[1], points[1], points[2]}) && turn.high < 2.5 {
		value, slope := of.at(turn.read)
		off := turn.high - turn.read
		more := of.bow(turn.high) / 2 * off * off * (1 + frameError)
		s.put(value+more/2, slope*turn.rest+more/2+curveError*(value+slope+turn.high), most, least)
		for i := range turn.points {
			s.slope(&turn.points[i], turn.slopes[i].Times(slope), most, least)
		}
		return
	}
	s.addCornerByForms(points, of, known, most, least)
}

func (s *lengthSum) addCornerByForms(points []Point, of *bendCurve, known quantity.Range, most, least float64) {
	readings := newReadings()
	before, corner, after := readings.place(points[0]), readings.place(points[1]), readings.place(points[2])
	if s.isTooFar = readings.tooFar; s.isTooFar {
		return
	}
	u, v := corner.minus(&before), after.minus(&corner)
	value, ok := ofTurn(&u, &v, of.ofSine, known)
	s.isTooFar = !ok
	s.putForm(&value, &readings, most, least)
}

// put adds a value without its slopes, times a factor each.
func (s *lengthSum) put(middle, rest, most, least float64) {
	s.most.put(middle, rest, most)
	s.least.put(middle, rest, least)
}

// putForm adds a form of the given readings, times a factor each.
func (s *lengthSum) putForm(f *form, known *readings, most, least float64) {
	s.most.put(f.middle, f.rest, most)
	s.least.put(f.middle, f.rest, least)
	for i := range known.count {
		slope := f.slope[3*i:]
		by := Vector{slope[0], slope[1], slope[2]}
		if known.points[i].Mirrored { // the form's slopes are those of the reading
			by.Y = -by.Y
		}
		s.slope(&known.points[i], by, most, least)
	}
}

func (a *longForm) put(middle, rest, factor float64) {
	a.middle += factor * middle
	a.rest += math.Abs(factor) * rest
	a.sizes += math.Abs(factor) * (math.Abs(middle) + rest)
	a.count++
}

func (a *longForm) reach() float64 {
	rest := a.rest
	for _, slope := range a.slopes {
		rest += math.Abs(slope)
	}
	return rest*(1+slack) + slack*float64(a.count+1)*(a.sizes+rest)
}

func (s *lengthSum) value() quantity.Range {
	if s.isTooFar || !s.isInexact {
		return s.plain
	}
	return met(s.plain, quantity.Between(s.least.middle-s.least.reach(), s.most.middle+s.most.reach()))
}
