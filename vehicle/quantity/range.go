package quantity

import "math"

// Range is a closed range of real numbers in SI units, from Low to High. An infinite end
// means that there is no bound on that side; the infinity itself is never a member. Ranges
// made by this package are never empty and have no NaN. A range put together by hand with
// a NaN in it, or with its ends the wrong way round, stands for nothing in particular:
// results on it have no NaN either, but no other meaning.
type Range struct{ Low, High float64 }

// Everything is the range of all numbers.
var Everything = Range{math.Inf(-1), math.Inf(1)}

// Exactly returns the range that holds v alone. NaN gives Everything, and an infinity the
// numbers that are too large in magnitude for a float64.
func Exactly(v float64) Range { return Between(v, v) }

// Between returns the range from low to high. It puts nothing in order: ends the wrong way
// round give Everything, as does NaN, so that a slip widens a range and never loses what
// it stands for. A lower end of +Inf counts as the greatest float64 and an upper end of
// -Inf as the least.
func Between(low, high float64) Range {
	if !(low <= high) {
		return Everything
	}
	return Range{plainZero(min(low, math.MaxFloat64)), plainZero(max(high, -math.MaxFloat64))}
}

// IsExact reports whether the range holds a single number.
func (r Range) IsExact() bool { return r.Low == r.High }

// Width returns High - Low, rounded up; +Inf where a bound is missing.
func (r Range) Width() float64 { return sumAbove(r.High, -r.Low) }

// Middle returns the float64 nearest to the middle of the range, always finite: 0 for
// Everything, and the greatest float64, or the least, where one bound is missing (as
// IEEE Std 1788-2015, 12.12.8 has it).
func (r Range) Middle() float64 {
	low, high := finite(r.Low), finite(r.High)
	switch {
	case low == high:
		return low
	case r.Low != r.Low || r.High != r.High || r.Low < low && r.High > high:
		return 0
	case r.Low < low:
		return low
	case r.High > high:
		return high
	}
	if sum := low + high; math.Abs(sum) <= math.MaxFloat64 {
		return sum / 2
	}
	return low/2 + high/2
}

// finite returns the float64 nearest to x that is no infinity.
func finite(x float64) float64 { return max(-math.MaxFloat64, min(x, math.MaxFloat64)) }

// Contains reports whether v lies in the range, its ends included. Nothing contains NaN.
func (r Range) Contains(v float64) bool { return r.Low <= v && v <= r.High }

// Hull returns the smallest range that holds both.
func (r Range) Hull(s Range) Range {
	return guarded(min(r.Low, s.Low), max(r.High, s.High))
}

// Meet returns what the ranges have in common, and whether there is anything; without it,
// the range returned is r.
func (r Range) Meet(s Range) (Range, bool) {
	low, high := max(r.Low, s.Low), min(r.High, s.High)
	if !(low <= high) {
		return guarded(r.Low, r.High), false
	}
	return Range{low, high}, true
}

// guarded returns the range from low to high, with no bound on a side that is NaN.
func guarded(low, high float64) Range {
	if low != low {
		low = math.Inf(-1)
	}
	if high != high {
		high = math.Inf(1)
	}
	return Range{low, high}
}
