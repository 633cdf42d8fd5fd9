package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// slots is the number of readings' coordinates that a form can tell apart: those of four
// points and a bend radius.
const (
	pointsApart = 4
	radiusSlot  = 3 * pointsApart
	slots       = radiusSlot + 1
)

// form is a first-order form: with e the readings' coordinates, each scaled to the range
// from -1 to 1, the value it stands for is within rest of middle + slope · e. The readings
// that several forms have in common keep what the forms have in common: a difference of
// two equal forms is 0, where the difference of two equal ranges is not.
//
// Rounding: the result of each operation is charged with slack times the sum of the sizes
// of all terms that entered it. That is at least twice what the operation's roundings can add
// up to, each 2^-53 of a term, over sums of at most sixteen terms.
type form struct {
	middle float64
	slope  [slots]float64
	rest   float64
}

const slack = 0x1p-48

// reach returns how far the form's value can be from its middle.
func (a *form) reach() float64 {
	sum := a.rest
	for _, slope := range a.slope {
		sum += math.Abs(slope)
	}
	return sum * (1 + slack)
}

// low and high return bounds of the form's value.
func (a *form) low() float64  { return a.middle - a.reach() - slack*math.Abs(a.middle) }
func (a *form) high() float64 { return a.middle + a.reach() + slack*math.Abs(a.middle) }

// size returns a bound of the magnitude of the form's value.
func (a *form) size() float64 { return math.Abs(a.middle)*(1+slack) + a.reach() }

func (a *form) asRange() quantity.Range { return quantity.Between(a.low(), a.high()) }

// formOf returns the form of a value of which nothing is known but its range. It must be
// bounded.
func formOf(r quantity.Range) form {
	middle := r.Middle()
	return form{middle: middle, rest: max(r.High-middle, middle-r.Low) * (1 + slack)}
}

func (a *form) plus(b *form) form { return a.plusTimes(b, 1) }

func (a *form) minus(b *form) form { return a.plusTimes(b, -1) }

// plusTimes returns a + f × b.
func (a *form) plusTimes(b *form, f float64) form {
	sum := form{middle: a.middle + f*b.middle}
	terms := math.Abs(a.middle) + math.Abs(f*b.middle)
	for i := range sum.slope {
		one, other := a.slope[i], f*b.slope[i]
		sum.slope[i] = one + other
		terms += math.Abs(one) + math.Abs(other)
	}
	rest := a.rest + math.Abs(f)*b.rest
	sum.rest = rest + slack*(terms+rest)
	return sum
}

// scaled returns f × a.
func (a *form) scaled(f float64) form {
	product := form{middle: f * a.middle}
	terms := math.Abs(product.middle)
	for i := range product.slope {
		product.slope[i] = f * a.slope[i]
		terms += math.Abs(product.slope[i])
	}
	rest := math.Abs(f) * a.rest
	product.rest = rest + slack*(terms+rest)
	return product
}

// times returns a × b. Of the product of the two sums of slopes, the squares of the
// readings are between 0 and 1, so that half of their part is known; the rest is bounded
// by its size.
func (a *form) times(b *form) form {
	product := form{middle: a.middle * b.middle}
	reachA, reachB, squares, squaresSize := a.reach(), b.reach(), 0.0, 0.0
	for i := range product.slope {
		square := a.slope[i] * b.slope[i]
		squares += square
		squaresSize += math.Abs(square)
		product.slope[i] = a.middle*b.slope[i] + b.middle*a.slope[i]
	}
	product.middle += squares / 2
	product.rest = math.Abs(a.middle)*b.rest + math.Abs(b.middle)*a.rest +
		max(0, reachA*reachB-squaresSize/2) +
		slack*(math.Abs(a.middle)+reachA)*(math.Abs(b.middle)+reachB)
	return product
}

// inverse returns 1 / a, and whether a is surely above zero. For any slope -k below zero,
// 1/x + kx is convex for x > 0 and nowhere less than 2√k, and greatest at an end; the slope
// of the chord leaves least.
func (a *form) inverse() (form, bool) {
	low, high := a.low(), a.high()
	if !(low > 0) || high > farthest*farthest || low < 1/farthest/farthest {
		return form{}, false
	}
	k := 1 / (low * high)
	least := 2 * math.Sqrt(k)
	most := max(1/low+k*low, 1/high+k*high)
	result := a.scaled(-k)
	result.middle += (most + least) / 2
	result.rest += max(0, most-least)/2 + slack*(most+k*high)
	return result, true
}

// curve is a function that is convex and grows over [0, 1): its value and its slope.
type curve func(x float64) (value, slope float64)

// through returns the curve of a, for a form between 0 and 1. Between two points of the
// curve it lies below their chord and above the tangents at both, and the gap between chord
// and tangents is greatest where the tangents cross. The curve's values are taken to be
// right to 2^-44 of themselves and 2^-44 of x. It reports whether the form surely is below 1.
func (a *form) through(f curve) (form, bool) {
	low, high := max(0, a.low()), a.high()
	if !(high < 0.9999) {
		return form{}, false
	}
	valueLow, slopeLow := f(low)
	valueHigh, slopeHigh := f(high)
	if !(high-low > 1e-9) || !(slopeHigh > slopeLow) {
		margin := curveError * (valueHigh + high)
		return formOf(quantity.Between(valueLow-margin, valueHigh+margin)), true
	}
	chord := (valueHigh - valueLow) / (high - low)
	gap := max(0, (chord-slopeLow)*(slopeHigh-chord)/(slopeHigh-slopeLow)*(high-low))
	result := a.scaled(chord)
	result.middle += valueLow - chord*low - gap/2
	result.rest += gap/2 + 4*curveError*(valueHigh+high+chord*high)
	return result, true
}

const curveError = 0x1p-44
