package quantity

import (
	"math"
	"math/bits"
)

// turn is an angle in radians taken apart: angle = nearest × π/2 + rest, with |rest| at
// most a little over π/4.
type turn struct {
	nearest  int // modulo 8
	quadrant int // modulo 8: how many whole right angles lie at or below the angle
	rest     doubled
}

// turnOf takes a finite angle apart. The rest errs by less than 2^-72 of itself. No finite
// float64 but 0 is closer than 2^-62 to a multiple of π/2, in units of it (W. Kahan's
// search; the tests repeat it), so the rest is never 0 by cancellation, and it is enough
// that it errs by less than 2^-136.
func turnOf(angle float64) turn {
	var t turn
	switch size := math.Abs(angle); {
	case size <= math.Pi/4:
		t.rest = doubled{angle, 0}
	case size <= 0x1p20:
		t = turnOfOrdinary(angle)
	default:
		t = turnOfLarge(size)
		if angle < 0 {
			t.nearest, t.rest = -t.nearest, t.rest.negate()
		}
	}
	t.quadrant = t.nearest
	if t.rest.high < 0 {
		t.quadrant--
	}
	t.nearest &= 7
	t.quadrant &= 7
	return t
}

// The first 53 bits of π/2, the next, and the next, each rounded to nearest: together
// they are π/2 to within 2^-163.
const (
	rightAngle       = 0x1.921fb54442d18p+0
	rightAngleSecond = 0x1.1a62633145c07p-54
	rightAngleThird  = -0x1.f1976b7ed8fbcp-110
)

// turnOfOrdinary subtracts n × π/2 (W. J. Cody and W. Waite's reduction, with exact
// products), for n up to 2^20. angle - first.high is exact by Sterbenz's lemma, and so are
// the two sums that follow. The third part leaves out less than n × 2^-163. In the tail,
// the low halves are below 2^-52 of the rest, or, where the second part takes most of it
// away, below n × 2^-105, like the second and third part themselves: it is rounded by less
// than 2^-104 of the rest or n × 2^-157.
func turnOfOrdinary(angle float64) turn {
	nearest := math.RoundToEven(angle * (2 / math.Pi))
	first := doubledProduct(nearest, rightAngle)
	second := doubledProduct(nearest, rightAngleSecond)
	third := nearest * rightAngleThird
	rest := doubledSum(angle-first.high, -first.low)
	next := doubledSum(rest.high, -second.high)
	tail := next.low + (rest.low - second.low - third)
	return turn{nearest: int(nearest), rest: doubledSum(next.high, tail)}
}

// twoOverPi is 2/π in binary, from the first bit after the point.
var twoOverPi = [...]uint64{
	0xa2f9836e4e441529, 0xfc2757d1f534ddc0, 0xdb6295993c439041, 0xfe5163abdebbc561,
	0xb7246e3a424dd2e0, 0x06492eea09d1921c, 0xfe1deb1cb129a73e, 0xe88235f52ebb4484,
	0xe99c7026b45f7e41, 0x3991d639835339f4, 0x9c845f8bbdf9283b, 0x1ff897ffde05980f,
	0xef2f118b5a0a6d1f, 0x6d367ecf27cb09b7, 0x4f463f669e5fea2d, 0x7527bac7ebe5f17b,
	0x3d0739f78a5292ea, 0x6bfb5fb11f8d5d08, 0x56033046fc7b6bab, 0xf0cfbc209af4361d,
}

// turnOfLarge multiplies by 2/π (M. H. Payne and R. N. Hanek, Radian reduction for
// trigonometric functions, SIGNUM Newsletter 18, 1983). The angle is m × 2^e with a whole
// m below 2^53. Bits of 2/π whose product with it is a multiple of 8 are left out at the
// front; 256 bits are taken from there, so that what is left out at the end is below
// 2^53 × 2^-253 = 2^-200.
func turnOfLarge(angle float64) turn {
	fraction, exponent := math.Frexp(angle)
	m, e := uint64(fraction*(1<<53)), exponent-53
	var product [4]uint64 // m × those bits, modulo 2^256, in units of 2^-253; [0] is the top
	var carry uint64
	for i := 3; i >= 0; i-- {
		high, low := bits.Mul64(m, bitsOfTwoOverPi(e-3+64*i))
		var over uint64
		product[i], over = bits.Add64(low, carry, 0)
		carry = high + over
	}
	nearest := int(product[0] >> 61)
	product[0] &= 1<<61 - 1
	negative := product[0]>>60 == 1 // half a right angle or more: count from the next
	if negative {
		nearest++
		product = complement(product)
	}
	rest := doubledOf(product).times(doubled{rightAngle, rightAngleSecond})
	if negative {
		rest = rest.negate()
	}
	return turn{nearest: nearest, rest: rest}
}

// bitsOfTwoOverPi returns 64 bits of 2/π, leaving out the first skip bits after the point;
// with skip < 0 there are zeros from before the point.
func bitsOfTwoOverPi(skip int) uint64 {
	if skip < 0 {
		if skip <= -64 {
			return 0
		}
		return twoOverPi[0] >> -skip
	}
	word, shift := skip/64, skip%64
	return twoOverPi[word]<<shift | twoOverPi[word+1]>>(64-shift)
}

// complement returns 2^253 - n, for 0 < n < 2^253.
func complement(n [4]uint64) [4]uint64 {
	var borrow uint64
	for i := 3; i >= 0; i-- {
		n[i], borrow = bits.Sub64(0, n[i], borrow)
	}
	n[0] &= 1<<61 - 1
	return n
}

// doubledOf returns n × 2^-253, for n < 2^253, cut off after the first 106 significant
// bits or more.
func doubledOf(n [4]uint64) doubled {
	exponent := -253 + 256
	for n[0] == 0 && exponent > -192 {
		n = [4]uint64{n[1], n[2], n[3], 0}
		exponent -= 64
	}
	shift := bits.LeadingZeros64(n[0])
	top, next := n[0]<<shift|n[1]>>(64-shift), n[1]<<shift|n[2]>>(64-shift)
	high, low := top>>11, (top&0x7ff)<<42|next>>22
	exponent -= shift
	return settled(math.Ldexp(float64(high), exponent-53), math.Ldexp(float64(low), exponent-106))
}
