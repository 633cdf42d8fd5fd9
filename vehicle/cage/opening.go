package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// Opening is the opening of a door between four corners, in the order lower front, upper
// front, upper rear, lower rear, as in a drawing of the car's side.
type Opening [4]Point

// Width returns the lesser of the distances fore and aft between the front and the rear
// corners, below and above, in metres, between axes. Between straight sides no level line is
// shorter than both.
func (o Opening) Width() quantity.Range {
	return offset(o[3], o[0]).x.Abs().Min(offset(o[2], o[1]).x.Abs())
}

// Height returns the lesser of the differences in height between the lower and the upper
// corners, in front and behind, in metres, between axes.
func (o Opening) Height() quantity.Range {
	return offset(o[0], o[1]).z.Abs().Min(offset(o[3], o[2]).z.Abs())
}

// SidewaysAngle returns the angle between the run and the line fore and aft, seen from above,
// from 0 to π/2, in radians; any angle where the run may be seen end on.
func (r Run) SidewaysAngle() quantity.Range {
	way := offset(r.From, r.To)
	return steepness(way.y, way.x)
}

// SpreadFromAbove returns the angle between the directions of two runs as seen from above,
// from 0 to π, in radians; any angle where one may be seen end on.
func SpreadFromAbove(a, b Run) quantity.Range {
	return AngleBetween(a.fromAbove(), b.fromAbove())
}

// fromAbove returns the run's image on the ground, of the same readings.
func (r Run) fromAbove() Run {
	r.From.Z, r.To.Z = quantity.Range{}, quantity.Range{}
	return r
}

// Spot is a place on the centreline of a tube: one of its points, or on one of its runs.
type Spot struct {
	At      Point
	Index   int  // which of the tube's points, or the run from that point on
	IsOnRun bool // between two points
}

func (s Spot) order() int {
	if s.IsOnRun {
		return 2*s.Index + 1
	}
	return 2 * s.Index
}

// Covered returns the length of the centreline between two places on it, in metres. At a
// point where the tube bends, the middle of the arc is meant. It panics where a spot is on no
// point or run of the tube.
func (t Tube) Covered(a, b Spot) quantity.Range {
	if a.order() > b.order() {
		a, b = b, a
	}
	t = t.numbered()
	between := Tube{Points: []Point{t.at(a)}, Radius: t.Radius}
	for i := range t.Points {
		if 2*i > a.order() && 2*i < b.order() {
			between.Points = append(between.Points, t.Points[i])
		}
	}
	between.Points = append(between.Points, t.at(b))
	var length lengthSum
	length.add(between.numberedFrom(math.MinInt/4), quantity.Exactly(1))
	for _, end := range []Spot{a, b} {
		if !end.IsOnRun && end.Index > 0 && end.Index < len(t.Points)-1 && t.Radius.High > 0 {
			length.bend(t, end.Index-1, halfOf(t.Radius), quantity.Exactly(1))
		}
	}
	return notBelowZero(length.value())
}

func (t Tube) at(s Spot) Point {
	if s.IsOnRun {
		return s.At
	}
	return t.Points[s.Index]
}

// BallClearance returns the distance between a ball, given by its highest point and its
// radius, and the nearest surface of tubes with the given outside diameters, in metres: that
// of a helmet in a cage. It is below 0 where the ball runs into a tube, and Everything
// without tubes.
//
// As the radius grows by a step, the middle sinks by as much and comes nearer to a tube by
// no more, so that the clearance never grows: its ends are those of the radius.
func BallClearance(top Point, radius quantity.Range, tubes []Tube, outsides []quantity.Range) quantity.Range {
	at := func(r float64) quantity.Range {
		middle, exactly := top, quantity.Exactly(r)
		middle.Z = top.Z.Minus(exactly)
		_, clearance := NearestSurface(middle, tubes, outsides)
		return clearance.Minus(exactly)
	}
	clearance := at(radius.High)
	if !radius.IsExact() {
		clearance.High = at(radius.Low).High
	}
	return clearance
}
