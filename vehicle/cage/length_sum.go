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
		s.addRun(t.Points[i-1], t.Points[i], weight)
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
	s.addCorner(t.Points[i:i+3], radius, saved, weight)
}

// addRun adds the way between two points, a run of a tube. With e its direction as read and
// d what the readings add to it, its length is |way| + e·d, and more by no more than d² over
// twice the part along e. Only points that are one reading go by forms.
func (s *lengthSum) addRun(p, q Point, weight quantity.Range) {
	if s.isTooFar = s.isTooFar || !p.isBounded() || !q.isBounded(); s.isTooFar {
		return
	}
	s.isInexact = s.isInexact || !p.isExact() || !q.isExact()
	way := q.Middle().Minus(p.Middle())
	halfP, halfQ := p.halves(), q.halves()
	off := halfP.Plus(halfQ)
	length := way.Norm()
	along, isLong := way.Unit()
	low := length - (math.Abs(along.X)*off.X+math.Abs(along.Y)*off.Y+math.Abs(along.Z)*off.Z)*(1+slack)
	if p.sharesReading(q) || !isLong || !(low > 0.5*length) {
		s.addRunByForms(p, q, weight)
		return
	}
	more := off.Dot(off) / (2 * low) * (1 + slack)
	f := form{middle: length + more/2, rest: more/2 + slack*(length+more)}
	s.most.add(&f, weight.High)
	s.least.add(&f, weight.Low)
	s.slope(p, Vector{-along.X * halfP.X, -along.Y * halfP.Y, -along.Z * halfP.Z}, weight)
	s.slope(q, Vector{along.X * halfQ.X, along.Y * halfQ.Y, along.Z * halfQ.Z}, weight)
}

// slope adds what the coordinates of a point do.
func (s *lengthSum) slope(p Point, by Vector, weight quantity.Range) {
	if p.Mirrored {
		by.Y = -by.Y
	}
	at := s.slot(p.Reading)
	for axis, slope := range [3]float64{by.X, by.Y, by.Z} {
		s.most.slopes[at+axis] += weight.High * slope
		s.least.slopes[at+axis] += weight.Low * slope
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
	s.put(&length, &known, weight.High, weight.Low)
}

func (s *lengthSum) addCorner(points []Point, radius, saved, weight quantity.Range) {
	if s.isTooFar = s.isTooFar || !(radius.High <= farthest); s.isTooFar {
		return
	}
	known := newReadings()
	before, corner, after := known.place(points[0]), known.place(points[1]), known.place(points[2])
	if s.isTooFar = known.tooFar; s.isTooFar {
		return
	}
	u, v := corner.minus(&before), after.minus(&corner)
	saving, ok := ofTurn(&u, &v, savedBy, saved)
	s.isTooFar = !ok
	s.put(&saving, &known, -weight.High*radius.Low, -weight.Low*radius.High)
}

// put adds a form of the given readings, times a factor each.
func (s *lengthSum) put(f *form, known *readings, most, least float64) {
	s.most.add(f, most)
	s.least.add(f, least)
	for i := range known.count {
		at := s.slot(known.points[i].Reading)
		for axis := range 3 {
			slope := f.slope[3*i+axis]
			s.most.slopes[at+axis] += most * slope
			s.least.slopes[at+axis] += least * slope
		}
	}
}

func (a *longForm) add(f *form, factor float64) {
	a.middle += factor * f.middle
	a.rest += math.Abs(factor) * f.rest
	a.sizes += math.Abs(factor) * f.size()
	a.count++
}

func (a *longForm) reach() float64 {
	rest := a.rest
	for _, slope := range a.slopes {
		rest += math.Abs(slope)
	}
	return rest*(1+slack) + slack*float64(a.count+1)*a.sizes
}

func (s *lengthSum) value() quantity.Range {
	if s.isTooFar || !s.isInexact {
		return s.plain
	}
	return met(s.plain, quantity.Between(s.least.middle-s.least.reach(), s.most.middle+s.most.reach()))
}
