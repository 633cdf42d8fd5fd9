package quantity

import "math"

// The Taylor series of sine and cosine up to a little over π/4 in magnitude, where the
// square z of the angle is below 0.62. The first terms are summed in doubled precision, the
// last in float64, by Horner's rule. The first term so summed is z⁴/9! (below 2^-21) for
// the sine, relative to the angle, and z⁵/10! (below 2^-25) for the cosine, relative to at
// least 0.7. With at most 4 rounding errors of 2^-53 weighing on it, the series errs by
// less than 2^-72. The first term left out, z¹¹/23! or z¹¹/22!, is below 2^-77.

// The doubled coefficients 1/n!, signs as in the series.
var (
	sineTerms   = [...]doubled{inverseFactorial(7).negate(), inverseFactorial(5), inverseFactorial(3).negate()}
	cosineTerms = [...]doubled{inverseFactorial(8), inverseFactorial(6).negate(), inverseFactorial(4), {-0.5, 0}}
)

// The float64 coefficients, last first.
var (
	sineTail   = tailOf(21, 9)
	cosineTail = tailOf(20, 10)
)

func inverseFactorial(n int) doubled {
	factorial := 1.0
	for i := 2; i <= n; i++ {
		factorial *= float64(i)
	}
	return doubled{1, 0}.over(doubled{factorial, 0})
}

// tailOf returns 1/n! from n = last down to first in steps of two, with the sign that the
// term has in its series.
func tailOf(last, first int) []float64 {
	var tail []float64
	for n := last; n >= first; n -= 2 {
		coefficient := inverseFactorial(n).high
		if n%4 >= 2 {
			coefficient = -coefficient
		}
		tail = append(tail, coefficient)
	}
	return tail
}

func sineSeries(angle doubled) doubled {
	square := angle.times(angle)
	sum := horner(square, sineTail, sineTerms[:])
	return angle.plus(angle.times(square.times(sum)))
}

func cosineSeries(angle doubled) doubled {
	square := angle.times(angle)
	sum := square.times(horner(square, cosineTail, cosineTerms[:]))
	return settled(1, sum.high).plusSmall(sum.low)
}

// horner sums the tail in float64 and the terms in doubled precision. Each term is greater
// in magnitude than the sum of all that follow it, times z.
func horner(z doubled, tail []float64, terms []doubled) doubled {
	last := 0.0
	for _, coefficient := range tail {
		last = math.FMA(last, z.high, coefficient)
	}
	sum := doubled{last, 0}
	for i, term := range terms {
		if i == 0 {
			sum = settled(term.high, last*z.high).plusSmall(term.low)
			continue
		}
		next := z.times(sum)
		sum = settled(term.high, next.high).plusSmall(term.low + next.low)
	}
	return sum
}

// plusSmall adds a number of the size of d.low.
func (d doubled) plusSmall(f float64) doubled { return settled(d.high, d.low+f) }
