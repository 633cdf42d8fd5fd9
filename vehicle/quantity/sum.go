package quantity

import "math"

// Sum adds up many ranges. It rounds outward once, at the end, and not at every step: the
// rounding error of each addition is itself added up (T. Ogita, S. M. Rump, S. Oishi,
// Accurate Sum and Dot Product, SIAM J. Sci. Comput. 26, 2005, algorithm Sum2, from
// memory). The zero value is an empty sum, which is exactly 0. A Sum must not be copied
// while it is in use.
type Sum struct {
	low, high endSum
	wide      bool // a range that was not exact has been added, so that the ends differ
}

// endSum is the sum of one end: total + rest, up to what rest itself was rounded by.
type endSum struct {
	total, rest, size float64 // size is the sum of the magnitudes that went into rest
	terms             float64
}

// Add adds a range.
func (s *Sum) Add(r Range) {
	if r.Low != r.High && !s.wide {
		s.high, s.wide = s.low, true
	}
	s.low.add(r.Low)
	if s.wide {
		s.high.add(r.High)
	}
}

func (e *endSum) add(v float64) {
	sum := e.total + v
	part := sum - e.total
	rest := (e.total - (sum - part)) + (v - part)
	e.total = sum
	e.rest += rest
	e.size += math.Abs(rest)
	e.terms++
}

// Total returns the range of the sum: it encloses the sums of all numbers in the ranges.
// Where an end has no bound, or the sum of the ends overflows, it has no bound there.
func (s *Sum) Total() Range {
	high := &s.low
	if s.wide {
		high = &s.high
	}
	return Range{s.low.below(), -high.mirrored().below()}
}

// mirrored is the sum of the numbers with their signs turned round.
func (e *endSum) mirrored() *endSum {
	return &endSum{-e.total, -e.rest, e.size, e.terms}
}

// below is a float64 that is not above the sum. Adding up n errors in floating point
// errs by less than n units of 2^-53 of the sum of their magnitudes (N. J. Higham,
// Accuracy and Stability of Numerical Algorithms, 2nd edition, 4.2); twice that allows for
// the rounding of size itself.
func (e *endSum) below() float64 {
	if !(math.Abs(e.total)+math.Abs(e.rest)+e.size <= math.MaxFloat64) {
		return math.Inf(-1)
	}
	return sumBelow(sumBelow(e.total, e.rest), -e.terms*0x1p-52*e.size)
}
