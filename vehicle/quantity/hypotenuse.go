package quantity

import "math"

// Hypot returns the range of √(x² + y²).
func (a Range) Hypot(b Range) Range {
	x, y := a.Abs(), b.Abs()
	low := hypotenuse(x.Low, y.Low)
	if x.Low == x.High && y.Low == y.High {
		return low
	}
	return guarded(low.Low, hypotenuse(x.High, y.High).High)
}

// hypotenuse encloses √(x² + y²) for x, y >= 0. An exact result is its own enclosure; any
// other is enclosed by neighbouring floats, or by one more where it is within 2^-95 of a
// float.
func hypotenuse(x, y float64) Range {
	if x < y {
		x, y = y, x
	}
	switch {
	case x != x || y != y:
		return Everything
	case x > math.MaxFloat64:
		return Range{math.MaxFloat64, math.Inf(1)}
	case y == 0:
		return Range{plainZero(x), plainZero(x)}
	case y < x*0x1p-27: // less than x + y²/2x, which is less than x + ulp(x)/2
		return Range{x, nextAbove(x)}
	case x < 0x1p500 && y > 0x1p-400:
		root, slack := rootOfSquares(x, y)
		return root.enclose(slack)
	}
	_, exponent := math.Frexp(x)
	root, slack := rootOfSquares(math.Ldexp(x, -exponent), math.Ldexp(y, -exponent))
	return root.encloseScaled(slack, exponent)
}

// rootOfSquares wants x >= y >= x × 2^-28, with the squares far from overflow and their
// errors far from underflow. It takes the root of the rounded sum and corrects it by one
// step of Newton's method with the remainder x² + y² - root², which is summed from exact
// terms. The slack is 0 if the remainder is exactly 0. Else, relative to root², the
// remainder is below 2^-50 and errs by less than 2^-101; its quotient by the root errs by
// less than 2^-50 of itself more, and the step leaves out less than remainder²: together
// less than 2^-97.
func rootOfSquares(x, y float64) (root doubled, slack float64) {
	squareX, squareY := doubledProduct(x, x), doubledProduct(y, y)
	sum := doubledSum(squareX.high, squareY.high)
	guess := math.Sqrt(sum.high + (sum.low + squareX.low + squareY.low))
	square := doubledProduct(guess, guess)

	var carried, lost float64
	rest := sum.high - square.high // exact: they agree to the last bits
	for _, term := range [...]float64{sum.low, squareX.low, squareY.low, -square.low} {
		total := doubledSum(rest, term)
		carry := doubledSum(carried, total.low)
		rest, carried = total.high, carry.high
		lost += math.Abs(carry.low)
	}
	rest += carried
	if rest == 0 && lost == 0 {
		return doubled{guess, 0}, 0
	}
	return settled(guess, rest/(2*guess)), 0x1p-96 * guess
}
