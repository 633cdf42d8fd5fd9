package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// Tube is the centreline of one tube: straight runs through points, with an arc of the
// centreline bend radius at every inner one. An inner point is where the two straights
// would meet; the arc cuts its corner off.
type Tube struct {
	Points []Point
	Radius quantity.Range // of the centreline in the bends, metres; not read where there is no bend

	number int // tells tubes of one question apart
}

// Chord returns the straight from the tube's first point to its last. A tube needs a point
// to have one; without, it is the zero Run.
func (t Tube) Chord() Run {
	if len(t.Points) == 0 {
		return Run{}
	}
	return Run{t.Points[0], t.Points[len(t.Points)-1]}
}

// AsRead returns the course of the tube at the middle of its ranges.
func (t Tube) AsRead() Course {
	course := Course{Radius: t.Radius.Middle()}
	if math.IsInf(t.Radius.High, 1) || math.IsInf(t.Radius.Low, -1) {
		course.Radius = 0 // not known
	}
	for _, p := range t.Points {
		course.Points = append(course.Points, p.Middle())
	}
	return course
}

// Turn returns the angle by which the tube turns at its inner point i (0 is the second
// point), from 0 to π, in radians. It panics where there is no such point.
func (t Tube) Turn(i int) quantity.Range {
	a, corner, b := t.Points[i], t.Points[i+1], t.Points[i+2]
	if corner.Reading == 0 {
		corner.Reading = math.MinInt
	}
	return AngleBetween(Run{a, corner}, Run{corner, b})
}

// Bends returns how many of the tube's inner points it turns at by more than the limit, in
// radians: how many it surely and how many it may.
func (t Tube) Bends(limit float64) (least, most int) {
	for i := range t.inner() {
		turn := t.Turn(i)
		if turn.Low > limit {
			least++
		}
		if turn.High > limit {
			most++
		}
	}
	return least, most
}

// inner returns the number of inner points.
func (t Tube) inner() int { return max(0, len(t.Points)-2) }

// numbered returns the tube with a reading number for each point, and no negative radius.
// Points that have one keep it; the others are given numbers that nobody else has.
func (t Tube) numbered() Tube { return t.numberedFrom(math.MinInt / 2) }

// numberedFrom is numbered with numbers from first up.
func (t Tube) numberedFrom(first int) Tube {
	t.Radius = quantity.Between(max(0, t.Radius.Low), max(0, t.Radius.High))
	for i := range t.Points {
		if t.Points[i].Reading == 0 {
			return t.named(first)
		}
	}
	return t
}

// RadiusRatio returns the bend radius over the outside diameter, a plain number.
func (t Tube) RadiusRatio(outside quantity.Range) quantity.Range { return t.Radius.Over(outside) }
