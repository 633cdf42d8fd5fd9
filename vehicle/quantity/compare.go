package quantity

import "math"

// Comparing two exact numbers, a is at least b if it is greater or the same figure, and
// more than b if it is greater and not the same figure. So "at least" is what is left when
// a is surely below b, and one relation carries all six comparisons.
//
// Comparing ranges needs only their ends, because surelyBelow is monotonic: if a is surely
// below b, then every a' <= a is surely below every b' >= b. In exact arithmetic that is
// so for any Relative up to 1: raising b by d raises the gap by d and the tolerance by no
// more than Relative × d. It holds for the rounded values as well. The absolute part is a
// constant, and rounding the gap is monotonic. For the relative part, let b rise to b',
// where |b'| is the greater magnitude (else the tolerance does not grow), so b' > 0:
//
//   - if the gap to a is at least b'/2, it stays so when rounded, and the tolerance, at
//     most b'/8, is less (among subnormal numbers, b'/8 rounded is less than b'/2 rounded
//     up, and gaps are exact);
//   - else a > b'/2, and both gaps are exact (Sterbenz's lemma). The gap grows by
//     b' - b, which is at least half an ulp of b'. The tolerance grows by less than
//     Relative × (b' - b) plus the rounding errors of two products, at most
//     2^-52 × Relative × b' <= 4 × Relative × (b' - b) together: 5/8 of what the gap
//     gains at the most. Where the products are subnormal, gap and tolerance grow in steps
//     of the least subnormal number, and the latter never by more steps.
//
// Lowering a is the same by symmetry.
//
// surelyBelow and notBelow are each other's negation but for a missing bound or NaN, where
// both are false. That is what a missing bound asks for: no number is surely below -Inf or
// above +Inf, and whether all numbers are above -Inf the standing end says, not this one.

// surelyBelow reports a < b and not the same figure, of numbers that are no infinities; an
// infinite end makes it false.
func (t Tolerance) surelyBelow(a, b float64) bool {
	gap := b - a
	return gap > t.Absolute && gap > t.Relative*math.Abs(a) && gap > t.Relative*math.Abs(b)
}

// notBelow reports a >= b or the same figure; false where a is -Inf or b is +Inf.
func (t Tolerance) notBelow(a, b float64) bool {
	gap := b - a
	return gap <= t.Absolute ||
		gap <= math.MaxFloat64 && (gap <= t.Relative*math.Abs(a) || gap <= t.Relative*math.Abs(b))
}

// IsAtLeast compares by >=: Yes if every number of a is at least every number of b, No if
// none is, else Open.
func IsAtLeast(a, b Range, t Tolerance) Truth {
	if t.notBelow(a.Low, b.High) {
		return Yes
	}
	if t.surelyBelow(a.High, b.Low) {
		return No
	}
	return Open
}

// IsMoreThan compares by >: greater and not the same figure.
func IsMoreThan(a, b Range, t Tolerance) Truth {
	if t.surelyBelow(b.High, a.Low) {
		return Yes
	}
	if t.notBelow(b.Low, a.High) {
		return No
	}
	return Open
}

// IsAtMost compares by <=.
func IsAtMost(a, b Range, t Tolerance) Truth { return IsAtLeast(b, a, t) }

// IsLessThan compares by <.
func IsLessThan(a, b Range, t Tolerance) Truth { return IsMoreThan(b, a, t) }

// IsEqual compares by ==: Yes if every pair is the same figure, No if none is, else Open.
// The pairs furthest apart are at opposite ends; if the ranges have nothing in common, the
// nearest pair is at facing ends.
func IsEqual(a, b Range, t Tolerance) Truth {
	if t.surelyBelow(a.High, b.Low) || t.surelyBelow(b.High, a.Low) {
		return No
	}
	if t.notBelow(a.Low, b.High) && t.notBelow(b.Low, a.High) {
		return Yes
	}
	return Open
}

// IsDifferent compares by !=.
func IsDifferent(a, b Range, t Tolerance) Truth { return IsEqual(a, b, t).Not() }
