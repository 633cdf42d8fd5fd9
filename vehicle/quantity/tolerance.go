package quantity

import "math"

// Tolerance says how close two numbers must be to count as the same figure. The zero value
// asks for equality, as for counts and dates.
//
// Both fields are at least 0, and Relative is at most 1/8: up to there the rule is
// monotonic in floating-point arithmetic too, as shown at surelyBelow. The tolerances that
// dimensions have are 1e-9 relative and far below what a workshop measures absolute.
type Tolerance struct {
	Relative float64 // of the greater magnitude of the two
	Absolute float64 // SI
}

// Same reports whether a and b are the same figure: whether |a-b| is at most
// Relative × max(|a|, |b|), or at most Absolute. An infinity is the same figure as itself
// only, and NaN is the same figure as nothing.
func (t Tolerance) Same(a, b float64) bool {
	gap := math.Abs(a - b)
	return gap <= math.MaxFloat64 &&
		(gap <= t.Absolute || gap <= t.Relative*math.Abs(a) || gap <= t.Relative*math.Abs(b)) ||
		a == b
}

// Band returns the least and the greatest float64 that are the same figure as limit. The
// ends are exact: the next float64 outside them is a different figure, so that cutting a
// range there separates what compares the same with limit from what does not. NaN gives
// Everything, and an infinite limit, with which no finite number compares the same, the
// range that Exactly gives.
func (t Tolerance) Band(limit float64) Range {
	if !(math.Abs(limit) <= math.MaxFloat64) {
		return Exactly(limit)
	}
	return Range{Low: plainZero(-t.lastSame(-limit)), High: plainZero(t.lastSame(limit))}
}

// lastSame returns the greatest float64 that is the same figure as limit. The figures that
// are the same as limit are a run of neighbouring floats, because the rule is monotonic;
// its upper end is found by halving the distance, in the order of all floats, from limit
// to a float that is another figure, at most 64 times.
func (t Tolerance) lastSame(limit float64) float64 {
	far := max(limit+2*max(t.Absolute, t.Relative*math.Abs(limit)), nextAbove(limit))
	if t.Same(far, limit) {
		far = math.Inf(1)
	}
	same, other := placeOf(limit), placeOf(far)
	for other-same > 1 {
		middle := same + (other-same)/2
		if t.Same(floatAt(middle), limit) {
			same = middle
		} else {
			other = middle
		}
	}
	return floatAt(same)
}

// placeOf returns the place of x in the order of all float64 values: neighbours differ by
// one, and both zeros have place 0. The distance from -Inf to +Inf is less than 2^64, so
// differences are taken as uint64.
func placeOf(x float64) uint64 {
	const origin = 1 << 63
	bits := math.Float64bits(x)
	if bits >= origin {
		return origin - (bits - origin)
	}
	return origin + bits
}

// floatAt is the inverse of placeOf.
func floatAt(place uint64) float64 {
	const origin = 1 << 63
	if place < origin {
		return math.Float64frombits(origin - place + origin)
	}
	return math.Float64frombits(place - origin)
}

// plainZero turns a negative zero into zero and leaves every other value.
func plainZero(x float64) float64 { return x + 0 }
