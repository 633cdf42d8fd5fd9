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

// straightOf returns the straight of a run, without its tangents, in first-order form;
// Everything where that says nothing. Points are those of the run and of those beside it,
// turns their angles. It shrinks as the radius grows.
func straightOf(points []Point, run int, radius quantity.Range, turns []quantity.Range) quantity.Range {
	if !(radius.High <= farthest) {
		return quantity.Everything
	}
	known := newReadings()
	var places [4]formVector
	for i, p := range points {
		places[i] = known.place(p)
	}
	if !known.usable() {
		return quantity.Everything
	}
	way := places[run+1].minus(&places[run])
	direction, ok := way.middle().Unit()
	if !ok {
		return quantity.Everything
	}
	length, ok := way.norm(direction)
	if !ok {
		return quantity.Everything
	}
	var tangents form
	for i, turn := range turns {
		u, v := places[i+1].minus(&places[i]), places[i+2].minus(&places[i+1])
		tangent, ok := ofTurn(&u, &v, tangentOf, halfTangent(turn))
		if !ok {
			return quantity.Everything
		}
		tangents = tangents.plus(&tangent)
	}
	most, least := length.plusTimes(&tangents, -radius.Low), length.plusTimes(&tangents, -radius.High)
	return quantity.Between(least.low(), most.high())
}
