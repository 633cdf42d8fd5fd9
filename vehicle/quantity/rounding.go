package quantity

import "math"

// Directed rounding. For each operation xBelow returns the greatest float64 that is not
// above the exact result, and xAbove the least that is not below it. The result is rounded
// to nearest first, then the sign of the error that this made is computed, and says whether
// the float has to move to its neighbour. So an exact result stays as it is.
//
// The sum's error is computed by TwoSum (D. E. Knuth, The Art of Computer Programming,
// volume 2, 4.2.2, theorem B), which is exact, in the subnormal range too. The errors of
// product, quotient and root are what a fused multiply-add makes of x × y - product,
// a - quotient × b and x - root² (J.-M. Muller et al., Handbook of Floating-Point
// Arithmetic, 2nd edition, 4.4 and 5.2, from memory). It rounds once, so that the sign is
// right whatever the size: an error that underflows to nothing is a negative zero if it was
// negative, and an error of exactly zero is a positive one (IEEE Std 754-2019, 6.3).
//
// A lower bound is never +Inf or NaN: overflow gives the greatest float64, and what has no
// meaning, such as Inf - Inf, gives -Inf. Upper bounds likewise.

// stepBelow returns the neighbour below x if rest has the sign bit set, else x; x must be
// finite, and not +0 where rest has it set. It has no branch because the sign of a
// rounding error is a toss of a coin, which no processor guesses.
func stepBelow(x, rest float64) float64 {
	bits, step := math.Float64bits(x), math.Float64bits(rest)>>63
	return math.Float64frombits(bits - step + 2*(step&(bits>>63)))
}

func sumBelow(a, b float64) float64 {
	sum := a + b
	part := sum - a
	rest := (a - (sum - part)) + (b - part)
	if math.Abs(rest) <= math.MaxFloat64 {
		return stepBelow(sum, rest)
	}
	return sumBelowCorner(a, b, sum)
}

func sumAbove(a, b float64) float64 { return 0 - sumBelow(-a, -b) }

// sumBelowCorner settles what TwoSum does not: an infinity among operands or sum, NaN, and
// the overflow of an intermediate result that can happen, with the sum still finite, when
// the second operand is close to the greatest float64 and the sum is less (S. Boldo,
// S. Graillat, J.-M. Muller, On the robustness of the 2Sum and Fast2Sum algorithms, ACM
// TOMS 44, 2017). Then the operands change places.
func sumBelowCorner(a, b, sum float64) float64 {
	switch {
	case sum != sum || sum < -math.MaxFloat64:
		return math.Inf(-1)
	case sum > math.MaxFloat64:
		return math.MaxFloat64
	}
	part := sum - b
	return stepBelow(sum, (b-(sum-part))+(a-part))
}

// productBelow takes zero times an infinite end as zero: the end is no member of its range,
// and zero times anything that is, is zero.
func productBelow(a, b float64) float64 {
	product := a * b
	rest := math.FMA(a, b, -product)
	switch {
	case a == 0 || b == 0:
		return 0
	case math.Abs(product) <= math.MaxFloat64:
		return stepBelow(product, rest)
	}
	return boundBelow(product)
}

func productAbove(a, b float64) float64 { return 0 - productBelow(-a, b) }

// boundBelow returns a lower bound for a result that came out as an infinity or NaN, or
// that is exactly zero.
func boundBelow(x float64) float64 {
	switch {
	case x == 0:
		return 0
	case x > math.MaxFloat64:
		return math.MaxFloat64
	}
	return math.Inf(-1)
}

// quotientBelow wants b > 0. The exact quotient is below the rounded one if the remainder
// a - quotient × b is negative. Over a divisor without bound the quotient's limit is zero.
func quotientBelow(a, b float64) float64 {
	quotient := a / b
	rest := math.FMA(-quotient, b, a)
	if a != 0 && b <= math.MaxFloat64 && math.Abs(quotient) <= math.MaxFloat64 {
		return stepBelow(quotient, rest)
	}
	return boundBelow(quotient)
}

func quotientAbove(a, b float64) float64 { return 0 - quotientBelow(-a, b) }

// rootBelow wants x >= 0.
func rootBelow(x float64) float64 {
	root := math.Sqrt(x)
	if x != 0 && x <= math.MaxFloat64 {
		return stepBelow(root, math.FMA(-root, root, x))
	}
	return boundBelow(root)
}

// rootAbove wants x >= 0.
func rootAbove(x float64) float64 {
	root := math.Sqrt(x)
	if x != 0 && x <= math.MaxFloat64 {
		return 0 - stepBelow(-root, math.FMA(root, root, -x))
	}
	return plainZero(root)
}

func nextBelow(x float64) float64 { return math.Nextafter(x, math.Inf(-1)) }

func nextAbove(x float64) float64 { return math.Nextafter(x, math.Inf(1)) }
