package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// AngleBetween returns the angle between the directions of two runs, each from its first
// point to its second, from 0 to π, in radians. Where a run may have no length, the angle
// can be any.
//
// Over ranges it is the arc tangent of |u × v| over u · v. That forgets that both products
// are of the same readings, so the angle is also worked out in first-order form, as twice
// the arc sine of half the distance between the unit vectors, and the two ranges are met
// (but for runs so long against their tolerance that the first has nothing to add).
// Both are sharp for small angles, where an arc cosine is not: its slope has no bound
// there. Of ways that are far from lying alongside, a quicker form says as much (quickAngle).
func AngleBetween(a, b Run) quantity.Range {
	if quick, ok := quickAngle(a, b); ok {
		return quick
	}
	known := newReadings()
	aFrom, aTo, bFrom, bTo := known.place(a.From), known.place(a.To), known.place(b.From), known.place(b.To)
	if !known.usable() {
		return angleOfRanges(offset(a.From, a.To), offset(b.From, b.To))
	}
	first, second := aTo.minus(&aFrom), bTo.minus(&bFrom)
	sharp, ok := angleOfForms(&first, &second)
	if ok && first.isFirm() && second.isFirm() {
		return sharp
	}
	plain := angleOfRanges(offset(a.From, a.To), offset(b.From, b.To))
	if !ok {
		return plain
	}
	return met(plain, sharp)
}

// isFirm reports whether a way is known to a hundredth of its length in each coordinate, so
// that what a first-order form leaves over is a small part of what it says, and ranges alone
// have nothing to add.
func (a *formVector) isFirm() bool {
	square := a.middle().Dot(a.middle())
	for i := range a {
		if reach := a[i].reach(); !(1e4*reach*reach < square) {
			return false
		}
	}
	return true
}

// AngleAt returns the angle at the corner of the way from a over corner to b, between the
// two directions that leave the corner: π where the way is straight.
func AngleAt(a, corner, b Point) quantity.Range {
	if corner.Reading == 0 {
		corner.Reading = math.MinInt
	}
	return AngleBetween(Run{corner, a}, Run{corner, b})
}

// AcuteAngle returns the angle between the lines of two runs, from 0 to π/2, whatever way
// each is drawn.
func AcuteAngle(a, b Run) quantity.Range {
	angle := AngleBetween(a, b)
	supplement := halfTurn.Minus(angle)
	acute := angle.Min(supplement)
	acute.Low, acute.High = max(acute.Low, 0), min(acute.High, quarterTurn.High)
	return acute
}

// angleOfRanges is the angle from ranges alone.
func angleOfRanges(u, v rangeVector) quantity.Range {
	opposite, adjacent := u.cross(v).norm(), u.dot(v)
	if opposite.Low <= 0 && adjacent.Contains(0) {
		return quantity.Range{High: halfTurn.High}
	}
	return quantity.Atan2(opposite, adjacent)
}

// angleOfForms returns the angle between u and v, and whether both surely have a direction.
// Of an obtuse angle it takes the supplement, so that the arc sine stays far from 1.
func angleOfForms(u, v *formVector) (quantity.Range, bool) {
	isObtuse := u.middle().Dot(v.middle()) < 0
	if isObtuse {
		var nothing formVector
		opposite := nothing.minus(v)
		v = &opposite
	}
	apart, ok := apartness(u, v)
	if !ok {
		return quantity.Range{}, false
	}
	half := apart.length().Times(quantity.Exactly(0.5))
	angle := arcSine(half).Times(quantity.Exactly(2))
	if isObtuse {
		angle = halfTurn.Minus(angle)
	}
	return quantity.Between(max(0, angle.Low-frameError), angle.High+frameError), true
}

// arcSine returns the range of the arc sine of numbers from 0 up; what is above 1 counts as
// 1. It grows, so that its ends are those of its range. The library's arc sine is right to
// some units in the last place; it is charged with thousands.
func arcSine(r quantity.Range) quantity.Range {
	at := func(x float64) float64 { return math.Asin(min(1, max(0, x))) }
	return quantity.Between(at(r.Low)*(1-frameError), at(r.High)*(1+frameError))
}

// apartness returns the way from the unit vector of u to that of v, along a frame whose
// third direction is that midway between the two, in which it is thin. Its length is twice
// the sine of half the angle.
func apartness(u, v *formVector) (formVector, bool) {
	middleU, middleV := u.middle(), v.middle()
	frameU, ok := frameAlong(middleU, middleV)
	if !ok {
		return formVector{}, false
	}
	frameV, ok := frameAlong(middleV, middleU)
	if !ok {
		return formVector{}, false
	}
	// The two planes are one; the third direction of the second frame is turned round.
	unitU, okU := u.unit(frameU)
	unitV, okV := v.unit(frameV)
	between, ok := frameAlong(frameU.first.Plus(frameV.first), frameU.third)
	if !okU || !okV || !ok {
		return formVector{}, false
	}
	way := turned(&unitV, frameV, between)
	from := turned(&unitU, frameU, between)
	way = way.minus(&from)
	// Of `between`, the second direction is the plane's normal and the third lies in it.
	return formVector{way[2], way[1], way[0]}, true
}

// turned returns along the frame to what is given along the frame from.
func turned(a *formVector, from, to frame) formVector {
	row := func(d Vector) Vector { return Vector{d.Dot(from.first), d.Dot(from.second), d.Dot(from.third)} }
	return a.in(frame{row(to.first), row(to.second), row(to.third)})
}
