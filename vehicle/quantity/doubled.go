package quantity

import "math"

// doubled is an unevaluated sum of two float64, with |low| at most half an ulp of high: a
// number with some 106 bits. Its operations take no account of overflow and underflow;
// their users scale first. With u = 2^-53, times errs by less than 5u², plus by less than
// 4u² and over by less than 16u² relative (M. Joldes, J.-M. Muller, V. Popescu, Tight and
// rigorous error bounds for basic building blocks of double-word arithmetic, ACM TOMS 44,
// 2017, from memory). All bounds used here are at least 16 times as wide.
type doubled struct{ high, low float64 }

// doubledSum returns a + b, exactly.
func doubledSum(a, b float64) doubled {
	sum := a + b
	part := sum - a
	return doubled{sum, (a - (sum - part)) + (b - part)}
}

// settled returns high + low, exactly, for |high| >= |low|.
func settled(high, low float64) doubled {
	sum := high + low
	return doubled{sum, low - (sum - high)}
}

// doubledProduct returns a × b, exactly.
func doubledProduct(a, b float64) doubled {
	product := a * b
	return doubled{product, math.FMA(a, b, -product)}
}

func (d doubled) negate() doubled { return doubled{-d.high, -d.low} }

func (d doubled) plus(e doubled) doubled {
	high, low := doubledSum(d.high, e.high), doubledSum(d.low, e.low)
	first := settled(high.high, high.low+low.high)
	return settled(first.high, first.low+low.low)
}

func (d doubled) times(e doubled) doubled {
	product := doubledProduct(d.high, e.high)
	return settled(product.high, product.low+math.FMA(d.high, e.low, float64(d.low*e.high)))
}

func (d doubled) timesNumber(f float64) doubled {
	product := doubledProduct(d.high, f)
	return settled(product.high, math.FMA(d.low, f, product.low))
}

func (d doubled) over(e doubled) doubled {
	quotient := d.high / e.high
	rest := d.plus(e.timesNumber(-quotient))
	return settled(quotient, rest.high/e.high)
}

// enclose returns the range from d - slack to d + slack, rounded outward.
func (d doubled) enclose(slack float64) Range {
	return Range{sumBelow(d.high, d.low-slack), sumAbove(d.high, d.low+slack)}
}
