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

// bendCurve is a function of the turn of a bend that grows and is convex, with 0 at 0.
type bendCurve struct {
	at     func(turn float64) (value, slope float64)
	bow    func(turn float64) float64 // its second derivative, which grows
	ofSine curve                      // the same by the sine of half the turn
}

// tangent is the length of the tangents of a bend of radius 1, and saving what its arc saves
// of the way over the corner. With x = tan(β/2), the derivatives of x by β are (1 + x²)/2 and
// x (1 + x²)/2, and those of 2x - β are x² and x (1 + x²).
var (
	tangent = bendCurve{
		at:     func(turn float64) (value, slope float64) { x := math.Tan(turn / 2); return x, (1 + x*x) / 2 },
		bow:    func(turn float64) float64 { x := math.Tan(turn / 2); return x * (1 + x*x) / 2 },
		ofSine: tangentOf,
	}
	saving = bendCurve{
		at:     func(turn float64) (value, slope float64) { x := math.Tan(turn / 2); return 2*x - turn, x * x },
		bow:    func(turn float64) float64 { x := math.Tan(turn / 2); return x * (1 + x*x) },
		ofSine: savedBy,
	}
)
