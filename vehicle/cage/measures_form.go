package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// halfSine returns the sine of half the angle between two ways, as a form, and whether it
// is known as one: half the distance between the unit vectors.
func halfSine(u, v *formVector) (form, bool) {
	apart, ok := apartness(u, v)
	if !ok {
		return form{}, false
	}
	direction, ok := apart.middle().Unit()
	if !ok {
		return form{}, false
	}
	length, ok := apart.norm(direction)
	if !ok {
		return form{}, false
	}
	return length.scaled(0.5), true
}

// tangentOf is the tangent of half an angle by the sine x of that half: x / √(1 - x²), with
// the slope 1 / √(1 - x²)³, which grows.
func tangentOf(x float64) (value, slope float64) {
	cosine := math.Sqrt(1 - x*x)
	return x / cosine, 1 / (cosine * cosine * cosine)
}

// savedBy is what an arc of radius 1 saves of the way over the corner, 2 tan(β/2) - β, by the
// sine x of half the angle: its slope 2 x² / √(1 - x²)³ grows.
func savedBy(x float64) (value, slope float64) {
	tangent, slope := tangentOf(x)
	return 2*tangent - 2*math.Asin(x), 2 * x * x * slope
}

// ofTurn returns a curve of the sine of half the turn between two ways, as a form, and
// whether it has one. The form is no use where the turn may be none, or nearly none: then
// the value hangs on where the points are across the way, as its length does not, and the
// range that is known of it does as well.
func ofTurn(u, v *formVector, f curve, known quantity.Range) (form, bool) {
	sine, ok := halfSine(u, v)
	value := form{}
	if ok {
		value, ok = sine.through(f)
	}
	if !(known.High <= farthest) {
		return value, ok
	}
	if bound := formOf(known); !ok || bound.reach() < 0.9*value.reach() {
		return bound, true
	}
	return value, true
}

// straightOf returns the straight of run i, from point i-1 to point i, without its tangents,
// in first-order form; Everything where that says nothing. It shrinks as the radius grows.
func straightOf(points []Point, i int, radius quantity.Range, bends []Bend) quantity.Range {
	known := newReadings()
	from, to := known.place(points[i-1]), known.place(points[i])
	way := to.minus(&from)
	var tangents form
	add := func(u, v formVector, bend Bend) bool {
		tangent, ok := ofTurn(&u, &v, tangentOf, halfTangent(bend.Angle))
		tangents = tangents.plus(&tangent)
		return ok
	}
	ok := radius.High <= farthest
	if ok && i >= 2 {
		before := known.place(points[i-2])
		ok = add(from.minus(&before), way, bends[i-2])
	}
	if ok && i+1 < len(points) {
		after := known.place(points[i+1])
		ok = add(way, after.minus(&to), bends[i-1])
	}
	direction, hasDirection := way.middle().Unit()
	if !ok || !hasDirection || !known.usable() {
		return quantity.Everything
	}
	length, ok := way.norm(direction)
	if !ok {
		return quantity.Everything
	}
	most, least := length.plusTimes(&tangents, -radius.Low), length.plusTimes(&tangents, -radius.High)
	return quantity.Between(least.low(), most.high())
}

// total is a sum over a whole tube: the way from point to point, and what arcs of radius 1
// save of it, each as a middle, a slope for every coordinate of every reading, and a rest.
type total struct {
	node, saved   form // their slopes are not read
	slopes        [][2]float64
	isTooFar      bool
	sizes, counts float64
}

// totalOf sums up a tube whose points have reading numbers from 1 up.
func totalOf(points []Point, readingsCount int, bends []Bend) *total {
	sum := &total{slopes: make([][2]float64, 3*readingsCount)}
	for i := 1; i < len(points); i++ {
		known := newReadings()
		from, to := known.place(points[i-1]), known.place(points[i])
		if known.tooFar {
			return &total{isTooFar: true}
		}
		way := to.minus(&from)
		direction, ok := way.middle().Unit()
		var length form
		if ok {
			length, ok = way.norm(direction)
		}
		if !ok {
			length = formOf(Distance(points[i-1], points[i]))
		}
		sum.add(&length, &known, 0)
		if i+1 == len(points) {
			break
		}
		after := known.place(points[i+1])
		if known.tooFar {
			return &total{isTooFar: true}
		}
		next := after.minus(&to)
		angle := bends[i-1].Angle
		saving, ok := ofTurn(&way, &next, savedBy, savingOf(angle, halfTangent(angle)))
		sum.isTooFar = sum.isTooFar || !ok
		sum.add(&saving, &known, 1)
	}
	return sum
}

// add adds a form of the given readings to the way (column 0) or to what is saved (1).
func (s *total) add(f *form, known *readings, column int) {
	sum := &s.node
	if column == 1 {
		sum = &s.saved
	}
	sum.middle += f.middle
	sum.rest += f.rest
	s.sizes += f.size()
	s.counts++
	for i := range known.count {
		at := 3 * (known.points[i].Reading - 1)
		for axis := range 3 {
			s.slopes[at+axis][column] += f.slope[3*i+axis]
		}
	}
}

// length returns the range of the way, less what arcs of the given radius save of it.
func (s *total) length(radius quantity.Range) quantity.Range {
	if s.isTooFar || !(radius.High <= farthest) {
		return quantity.Everything
	}
	at := func(r float64) (low, high float64) {
		middle, rest := s.node.middle-r*s.saved.middle, s.node.rest+r*s.saved.rest
		for _, slope := range s.slopes {
			rest += math.Abs(slope[0] - r*slope[1])
		}
		rest = rest*(1+slack) + slack*s.counts*(1+r)*s.sizes
		return middle - rest, middle + rest
	}
	_, most := at(radius.Low)
	least, _ := at(radius.High)
	return quantity.Between(least, most)
}
