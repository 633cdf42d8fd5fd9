package quantity

import "math"

// Plus returns the range of x + y.
func (a Range) Plus(b Range) Range {
	return Range{sumBelow(a.Low, b.Low), sumAbove(a.High, b.High)}
}

// Minus returns the range of x - y. The two are taken as independent: r.Minus(r) is not 0
// unless r is exact.
func (a Range) Minus(b Range) Range {
	return Range{sumBelow(a.Low, -b.High), sumAbove(a.High, -b.Low)}
}

// Negate returns the range of -x.
func (a Range) Negate() Range { return guarded(0-a.High, 0-a.Low) }

// Times returns the range of x × y. Zero times a range without bound is zero.
func (a Range) Times(b Range) Range {
	if a.Low >= 0 && b.Low >= 0 {
		return Range{productBelow(a.Low, b.Low), productAbove(a.High, b.High)}
	}
	return a.timesSigned(b)
}

// timesSigned multiplies by the signs of the ends, so that no more than two products are
// taken unless both ranges straddle zero (IEEE Std 1788-2015 leaves the way open; the nine
// cases are common practice).
func (a Range) timesSigned(b Range) Range {
	switch {
	case a.High <= 0:
		return a.Negate().timesNotNegative(b).Negate()
	case a.Low >= 0:
		return a.timesNotNegative(b)
	case b.High <= 0:
		return b.Negate().timesNotNegative(a).Negate()
	case b.Low >= 0:
		return b.timesNotNegative(a)
	}
	return guarded(
		min(productBelow(a.Low, b.High), productBelow(a.High, b.Low)),
		max(productAbove(a.Low, b.Low), productAbove(a.High, b.High)))
}

// timesNotNegative is Times for a.Low >= 0.
func (a Range) timesNotNegative(b Range) Range {
	low, high := a.Low, a.High
	if b.Low < 0 {
		low = a.High
	}
	if b.High < 0 {
		high = a.Low
	}
	return Range{productBelow(low, b.Low), productAbove(high, b.High)}
}

// Over returns the range of x / y over all y but zero. Where b has zero as an end, the
// quotient has no bound on that side, as in [1, 2] / [0, 5] = [0.2, +Inf); where zero is
// inside, it has none at all, unless a is exactly zero. Over exactly zero it is Everything.
// A caller to whom division by zero matters asks b.Contains(0).
func (a Range) Over(b Range) Range {
	switch {
	case b.Low > 0:
		return a.overPositive(b)
	case b.High < 0:
		return a.Negate().overPositive(b.Negate())
	case b.Low == 0 && b.High == 0:
		return Everything
	case a.Low == 0 && a.High == 0:
		return Range{}
	case b.Low == 0:
		return a.overFromZero(b.High)
	case b.High == 0:
		return a.Negate().overFromZero(-b.Low)
	}
	return Everything
}

// overPositive is Over for b.Low > 0.
func (a Range) overPositive(b Range) Range {
	low, high := b.High, b.Low
	if a.Low < 0 {
		low = b.Low
	}
	if a.High < 0 {
		high = b.High
	}
	return Range{quotientBelow(a.Low, low), quotientAbove(a.High, high)}
}

// overFromZero is Over for b from 0 to high, zero left out.
func (a Range) overFromZero(high float64) Range {
	switch {
	case a.Low >= 0:
		return Range{quotientBelow(a.Low, high), math.Inf(1)}
	case a.High <= 0:
		return Range{math.Inf(-1), quotientAbove(a.High, high)}
	}
	return Everything
}

// Abs returns the range of |x|.
func (a Range) Abs() Range {
	switch {
	case a.Low >= 0:
		return guarded(plainZero(a.Low), a.High)
	case a.High <= 0:
		return a.Negate()
	}
	return guarded(0, max(-a.Low, a.High))
}

// Square returns the range of x², which is narrower than that of x × x.
func (a Range) Square() Range {
	size := a.Abs()
	return Range{productBelow(size.Low, size.Low), productAbove(size.High, size.High)}
}

// Sqrt returns the range of the square root. Negative numbers are left out; where there
// are no others, it is Everything.
func (a Range) Sqrt() Range {
	if !(a.High >= 0) {
		return Everything
	}
	return guarded(rootBelow(max(a.Low, 0)), rootAbove(a.High))
}

// Min returns the range of the lesser of x and y.
func (a Range) Min(b Range) Range { return guarded(min(a.Low, b.Low), min(a.High, b.High)) }

// Max returns the range of the greater of x and y.
func (a Range) Max(b Range) Range { return guarded(max(a.Low, b.Low), max(a.High, b.High)) }

// Floor returns the range of the greatest whole number that is not above x, where an x
// that is the same figure as a whole number is that number: 2.9999999999 counts as 3.
func (a Range) Floor(t Tolerance) Range {
	return guarded(t.wholeBelow(a.Low), t.wholeBelow(a.High))
}

// Ceil returns the range of the least whole number that is not below x, where an x that is
// the same figure as a whole number is that number.
func (a Range) Ceil(t Tolerance) Range {
	return guarded(plainZero(-t.wholeBelow(-a.Low)), plainZero(-t.wholeBelow(-a.High)))
}

// Round returns the range of the whole number nearest to x; a half goes away from zero, and
// so does what is the same figure as a half: 2.4999999999 counts as 2.5 and gives 3.
func (a Range) Round(t Tolerance) Range {
	return guarded(t.wholeNearest(a.Low), t.wholeNearest(a.High))
}

// wholeBelow never falls as x grows: between two whole numbers it steps up once, at the
// lower end of the upper one's band or half-way, whichever is nearer to the upper one.
func (t Tolerance) wholeBelow(x float64) float64 {
	if whole := math.Round(x); t.Same(x, whole) {
		return plainZero(whole)
	}
	return plainZero(math.Floor(x))
}

// wholeNearest never falls as x grows either: it steps up once between two whole numbers,
// at the lower end of the half's band, unless the band of the lower whole number ends
// later.
func (t Tolerance) wholeNearest(x float64) float64 {
	whole := math.Round(x)
	if t.Same(x, whole) {
		return plainZero(whole)
	}
	if half := math.Trunc(x) + math.Copysign(0.5, x); t.Same(x, half) {
		whole = half + math.Copysign(0.5, x)
	}
	return plainZero(whole)
}
