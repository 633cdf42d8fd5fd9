package quantity

import "math"

// The first 53 bits of π and the next.
const (
	halfTurn       = 0x1.921fb54442d18p+1
	halfTurnSecond = 0x1.1a62633145c07p-53
)

// anyDirection is the range of all directions, from -π to π.
var anyDirection = Range{-nextAbove(halfTurn), nextAbove(halfTurn)}

// Atan2 returns the range of the direction of the points (x, y) in radians, in (-π, π],
// counted from the positive x axis towards the positive y axis. Where the points lie on
// both sides of the negative x axis, that is all directions. The point (0, 0) has no
// direction and is left out; a range that holds nothing else gives all directions.
func Atan2(y, x Range) Range {
	switch {
	case y.Low == 0 && y.High == 0:
		return directionOnAxis(x)
	case y.Low >= 0:
		return directionAbove(y, x)
	case y.High < 0 || y.High == 0 && x.Low >= 0:
		return directionAbove(y.Negate(), x).Negate()
	case x.Low >= 0:
		return Range{-angleOf(-y.Low, x.Low).High, angleOf(y.High, x.Low).High}
	}
	return anyDirection
}

// directionOnAxis is Atan2 for y = 0.
func directionOnAxis(x Range) Range {
	switch {
	case x.Low == 0 && x.High == 0:
		return anyDirection
	case x.Low >= 0:
		return Range{}
	case x.High <= 0:
		return angleOf(0, -1)
	case x.Low < 0:
		return Range{0, anyDirection.High}
	}
	return anyDirection
}

// directionAbove is Atan2 for y.Low >= 0 and y.High > 0. The direction falls as x grows,
// and grows with y to the right of the y axis, falls with it to the left.
func directionAbove(y, x Range) Range {
	least, greatest := y.Low, y.High
	if x.High <= 0 {
		least = y.High
	}
	if x.Low < 0 {
		greatest = y.Low
	}
	low := angleOf(least, x.High)
	if least == greatest && x.Low == x.High {
		return low
	}
	return guarded(low.Low, angleOf(greatest, x.Low).High)
}

// angleOf encloses the direction of one point, for y >= 0 and not both zero. An infinite
// coordinate stands for the limit.
func angleOf(y, x float64) Range {
	across := math.Abs(x)
	switch {
	case x != x || y != y:
		return anyDirection
	case y == 0 && x > 0 || x > math.MaxFloat64:
		return Range{}
	case y == 0 || across > math.MaxFloat64:
		return doubled{halfTurn, halfTurnSecond}.enclose(0x1p-104)
	case across == 0 || y > math.MaxFloat64:
		return doubled{rightAngle, rightAngleSecond}.enclose(0x1p-105)
	case x > 0 && y < x*0x1p-30:
		return flatAngle(y, x)
	}
	var base doubled
	_, scale := math.Frexp(max(across, y))
	opposite, adjacent := math.Ldexp(y, -scale), math.Ldexp(across, -scale)
	steep := opposite > adjacent
	if steep {
		opposite, adjacent = adjacent, opposite
	}
	angle, slack := arcTangent(opposite, adjacent)
	switch {
	case steep:
		base = doubled{rightAngle, rightAngleSecond}
	case x < 0:
		base = doubled{halfTurn, halfTurnSecond}
	}
	if steep != (x < 0) {
		angle = angle.negate()
	}
	return base.plus(angle).enclose(slack + 0x1p-100*base.high)
}

// flatAngle encloses the arc tangent of t = y/x, for 0 < t < 2^-30: it is less than t and
// more than t - t³/3, which is less than 2^-61 of t away.
func flatAngle(y, x float64) Range {
	return Range{max(0, nextBelow(quotientBelow(y, x))), quotientAbove(y, x)}
}

// arcTangent returns the arc tangent of opposite/adjacent, for 0 <= opposite <= adjacent
// and 0.5 <= adjacent < 1, and how far it may be off. It corrects a guess: the angle left
// over after turning the point back by the guess has the tangent w = left/ahead, whatever
// the guess was, and differs from w by no more than w³/3. Sine and cosine err by less than
// 2^-68, so left errs by less than 2^-66 of opposite, and w by less than 2^-65 of the
// angle; the division leaves out less than 2^-50 of w.
func arcTangent(opposite, adjacent float64) (angle doubled, slack float64) {
	guess := math.Atan2(opposite, adjacent)
	if guess < 0x1p-32 { // only beside a base: flatAngle has the others
		t := opposite / adjacent
		return doubled{t, 0}, t*0x1p-52 + t*t*t + math.SmallestNonzeroFloat64
	}
	sine, cosine := sineSeries(doubled{guess, 0}), cosineSeries(doubled{guess, 0})
	left := cosine.timesNumber(opposite).plus(sine.timesNumber(-adjacent))
	ahead := cosine.high*adjacent + float64(sine.high*opposite)
	w := left.high / ahead
	size := math.Abs(w)
	return doubledSum(guess, w), guess*0x1p-64 + size*0x1p-48 + size*size*size
}
