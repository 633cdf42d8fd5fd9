package quantity

import "math"

// Directed rounding. For each operation xBelow returns the greatest float64 that is not
// above the exact result, and xAbove the least that is not below it. The result is rounded
// to nearest first, the rounding error of that is computed exactly, and its sign says
// whether the float has to move to its neighbour. So an exact result stays as it is.
//
// The sum's error is computed by TwoSum (D. E. Knuth, The Art of Computer Programming,
// volume 2, 4.2.2, theorem B), which is exact in the subnormal range too. The errors of
// product, quotient and root are computed by a fused multiply-add (J.-M. Muller et al.,
// Handbook of Floating-Point Arithmetic, 2nd edition, 4.4 and 5.2, from memory); they are
// exact as long as nothing underflows, which smallestSafe makes sure of; below that the
// operands are scaled by powers of two first.
//
// A lower bound is never +Inf or NaN: overflow gives the greatest float64, and what has no
// meaning, such as Inf - Inf, gives -Inf. Upper bounds likewise.

// smallestSafe is a magnitude from which the error of a product of that size, or of a
// quotient or root of an operand of that size, is a multiple of the least subnormal
// number: such an error has at most 106 bits below the leading one, and
// 2^-960 × 2^-106 > 2^-1074.
const smallestSafe = 0x1p-960

func sumBelow(a, b float64) float64 {
	sum := a + b
	part := sum - a
	rest := (a - (sum - part)) + (b - part)
	if rest >= 0 {
		return sum
	}
	return sumBelowCorner(a, b, sum, rest)
}

func sumAbove(a, b float64) float64 { return 0 - sumBelow(-a, -b) }

// sumBelowCorner settles what TwoSum does not: an infinity among operands or sum, NaN, and
// the overflow of an intermediate result that can happen, with the sum still finite, when
// the first operand is close to the greatest float64 and the sum is less (S. Boldo,
// S. Graillat, J.-M. Muller, On the robustness of the 2Sum and Fast2Sum algorithms, ACM
// TOMS 44, 2017). Then the operands change places.
func sumBelowCorner(a, b, sum, rest float64) float64 {
	switch {
	case sum != sum || sum < -math.MaxFloat64:
		return math.Inf(-1)
	case sum > math.MaxFloat64:
		return math.MaxFloat64
	case rest != rest || math.Abs(rest) > math.MaxFloat64:
		part := sum - b
		rest = (b - (sum - part)) + (a - part)
	}
	if rest >= 0 {
		return sum
	}
	return nextBelow(sum)
}

func productBelow(a, b float64) float64 {
	product := a * b
	rest := math.FMA(a, b, -product)
	if rest >= 0 && math.Abs(product) >= smallestSafe {
		return product
	}
	return productBelowCorner(a, b, product, rest)
}

func productAbove(a, b float64) float64 { return 0 - productBelow(-a, b) }

// productBelowCorner settles zero, where zero times an infinite end is zero (the end is
// no member of its range, and zero times anything that is, is zero), NaN, overflow and
// underflow.
func productBelowCorner(a, b, product, rest float64) float64 {
	switch {
	case a == 0 || b == 0:
		return 0
	case product != product || product < -math.MaxFloat64:
		return math.Inf(-1)
	case product > math.MaxFloat64:
		return math.MaxFloat64
	case math.Abs(product) < smallestSafe:
		a, scaleA := math.Frexp(a)
		b, scaleB := math.Frexp(b)
		rest = math.FMA(a, b, -math.Ldexp(product, -scaleA-scaleB))
	}
	if rest >= 0 {
		return plainZero(product)
	}
	return nextBelow(product)
}

// quotientBelow wants b > 0. The exact quotient is above the rounded one if the remainder
// a - quotient × b is positive.
func quotientBelow(a, b float64) float64 {
	quotient := a / b
	rest := math.FMA(-quotient, b, a)
	if rest >= 0 && math.Abs(a) >= smallestSafe {
		return quotient
	}
	return quotientBelowCorner(a, b, quotient, rest)
}

func quotientAbove(a, b float64) float64 { return 0 - quotientBelow(-a, b) }

// quotientBelowCorner settles zero, a divisor without bound (the quotient's limit is
// zero), NaN, overflow and underflow.
func quotientBelowCorner(a, b, quotient, rest float64) float64 {
	switch {
	case quotient != quotient || quotient < -math.MaxFloat64:
		return math.Inf(-1)
	case quotient > math.MaxFloat64:
		return math.MaxFloat64
	case a == 0 || b > math.MaxFloat64:
		return 0
	case math.Abs(a) < smallestSafe:
		a, scaleA := math.Frexp(a)
		b, scaleB := math.Frexp(b)
		rest = math.FMA(-math.Ldexp(quotient, scaleB-scaleA), b, a)
	}
	if rest >= 0 {
		return plainZero(quotient)
	}
	return nextBelow(quotient)
}

// rootBounds returns both bounds of the square root of x >= 0.
func rootBounds(x float64) (below, above float64) {
	root := math.Sqrt(x)
	rest := math.FMA(-root, root, x)
	switch {
	case x == 0 || x > math.MaxFloat64:
		return min(plainZero(root), math.MaxFloat64), plainZero(root)
	case x < smallestSafe:
		// A power of four makes the operand safe and leaves the root's digits alone.
		scaled := root * 0x1p200
		rest = math.FMA(-scaled, scaled, x*0x1p400)
	}
	switch {
	case rest > 0:
		return root, nextAbove(root)
	case rest < 0:
		return nextBelow(root), root
	}
	return root, root
}

func nextBelow(x float64) float64 { return math.Nextafter(x, math.Inf(-1)) }

func nextAbove(x float64) float64 { return math.Nextafter(x, math.Inf(1)) }
