package quantity

import "math"

// Power returns the range of xⁿ; x⁰ is 1 for every x, zero included. For n < 0 it is the
// range of 1 / x⁻ⁿ over all x but zero, with no bound where x comes near to zero, and
// Everything where x is exactly zero.
func (a Range) Power(n int) Range {
	switch {
	case n == 0:
		return Range{1, 1}
	case n == 1:
		return guarded(plainZero(a.Low), plainZero(a.High))
	case n == 2:
		return a.Square()
	case n > 0:
		return a.raised(uint64(n), n%2 == 0)
	}
	return a.raisedBelow(-uint64(n), n%2 == 0)
}

func (a Range) raised(n uint64, even bool) Range {
	if even {
		a = a.Abs()
	}
	low := signedPower(a.Low, n, false)
	if a.Low == a.High {
		return low
	}
	return guarded(low.Low, signedPower(a.High, n, false).High)
}

// raisedBelow returns the range of 1 / xⁿ, which falls with |x|.
func (a Range) raisedBelow(n uint64, even bool) Range {
	if even {
		a = a.Abs()
	}
	switch {
	case a.Low == 0 && a.High == 0:
		return Everything
	case a.Low >= 0:
		return guarded(powerOf(a.High, n, true).Low, powerOf(a.Low, n, true).High)
	case a.High <= 0:
		return guarded(signedPower(a.High, n, true).Low, signedPower(a.Low, n, true).High)
	}
	return Everything
}

// signedPower is powerOf for x of any sign where n is odd. Zero counts as negative where the power
// has no bound: there it is the upper end of a range below zero.
func signedPower(x float64, n uint64, inverse bool) Range {
	if x < 0 || x == 0 && inverse {
		return powerOf(-x, n, inverse).Negate()
	}
	return powerOf(x, n, inverse)
}

// powerOf encloses xⁿ, or 1/xⁿ, for x >= 0 and n > 0. An exact result is its own enclosure;
// up to n = 2^40 any other is enclosed by neighbouring floats, or by one more where it is
// within n × 2^-99 of a float. It multiplies the fractions of x by repeated squaring in
// doubled precision and keeps the exponent apart, so that nothing overflows on the way.
// The power is a product with n-1 multiplication signs, each of which errs by less than
// 2^-100 relative, so the whole errs by less than n × 2^-99.
func powerOf(x float64, n uint64, inverse bool) Range {
	isZero, isUnbounded := x == 0, x > math.MaxFloat64
	switch {
	case x != x:
		return Everything
	case isZero && inverse || isUnbounded && !inverse:
		return Range{math.MaxFloat64, math.Inf(1)}
	case isZero || isUnbounded:
		return Range{}
	}
	fraction, exponent := math.Frexp(x)
	power := scaledPower(scaled{doubled{fraction, 0}, exponent, false}, n)
	slack := float64(n) * 0x1p-99
	switch {
	case inverse && fraction == 0.5: // a power of two
		return doubled{1, 0}.encloseScaled(0, 1-power.exponent)
	case inverse:
		power.doubled = doubled{1, 0}.over(power.doubled)
		power.exponent = -power.exponent
	case !power.rounded:
		slack = 0
	}
	return power.encloseScaled(slack*power.high, power.exponent)
}

// scaled is doubled × 2^exponent, with the doubled at least 0.5 and at most 1. It counts as rounded once a factor had more than 53
// bits. That loses no exact float64: if x has an odd number m as its digits, xⁿ has mⁿ,
// and when a lower power of m has more than 53 bits, mⁿ has too.
type scaled struct {
	doubled
	exponent int
	rounded  bool
}

// exponentWall is past every exponent that makes a difference: what reaches it has
// overflowed or underflowed.
const exponentWall = 1 << 20

func (s scaled) times(f scaled) scaled {
	product := s.doubled.times(f.doubled)
	exponent := s.exponent + f.exponent
	if product.high < 0.5 {
		product = doubled{2 * product.high, 2 * product.low}
		exponent--
	}
	return scaled{
		doubled:  product,
		exponent: max(-exponentWall, min(exponent, exponentWall)),
		rounded:  s.rounded || f.rounded || s.low != 0 || f.low != 0,
	}
}

func scaledPower(base scaled, n uint64) scaled {
	power, started := base, false
	for ; ; base = base.times(base) {
		if n&1 == 1 && started {
			power = power.times(base)
		} else if n&1 == 1 {
			power, started = base, true
		}
		if n >>= 1; n == 0 {
			return power
		}
	}
}

// encloseScaled encloses (d ± slack) × 2^exponent, for d from 0.25 to 2.
func (d doubled) encloseScaled(slack float64, exponent int) Range {
	r := d.enclose(slack)
	if -1000 < exponent && exponent < 1000 { // far from underflow and overflow: exact
		scale := math.Float64frombits(uint64(exponent+1023) << 52)
		return Range{r.Low * scale, r.High * scale}
	}
	low, high := math.Ldexp(r.Low, exponent), math.Ldexp(r.High, exponent)
	low = min(low, math.MaxFloat64)
	if math.Ldexp(low, -exponent) > r.Low {
		low = nextBelow(low)
	}
	if math.Ldexp(high, -exponent) < r.High {
		high = nextAbove(high)
	}
	return Range{low, high}
}
