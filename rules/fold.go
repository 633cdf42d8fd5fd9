package rules

import (
	"math"
	"math/big"
	"strconv"
	"strings"
	"sync"

	"gapsheet/vehicle/quantity"
)

// mostBits bounds what arithmetic on numbers written out may grow to before it is
// rounded; a number of 40 digits to the 30th power stays below it.
const mostBits = 1 << 13

// exactConstant remembers of a constant what folding needs: its value before it was
// rounded, as a number and the size of the unit it stands in.
type exactConstant struct {
	of     *Constant
	number *big.Rat // in the unit
	factor *big.Rat // SI per unit, nil for a number without unit
}

// value is the constant's exact value in SI.
func (e exactConstant) value() *big.Rat {
	if e.factor == nil {
		return e.number
	}
	return new(big.Rat).Mul(e.number, e.factor)
}

// exactOf returns what is remembered of a constant. Constants that were never asked about
// (most are never folded) are read from their text now.
func (c *checker) exactOf(k *Constant) exactConstant {
	for i := len(c.exact) - 1; i >= 0; i-- {
		if c.exact[i].of == k {
			return c.exact[i]
		}
	}
	e := exactConstant{of: k}
	if k.Is.Whole && math.Abs(k.Number) < 1<<53 {
		e.number = new(big.Rat).SetInt64(int64(k.Number))
	} else if u := unitNames()[c.text(k.At)]; u != nil && u.unit == k.Unit {
		e.number, e.factor = big.NewRat(1, 1), u.factor
	} else if number, ok := new(big.Rat).SetString(strings.ReplaceAll(c.text(k.At), "_", "")); ok {
		e.number = number
	} else {
		e.number = new(big.Rat).SetFloat64(k.Number)
	}
	return e
}

// decimalsOf counts the digits after the point of a number as written.
func decimalsOf(text string) int {
	mantissa, exponent, _ := strings.Cut(strings.ToLower(text), "e")
	_, fraction, _ := strings.Cut(mantissa, ".")
	shift, _ := strconv.Atoi(strings.ReplaceAll(exponent, "_", ""))
	return max(0, len(strings.ReplaceAll(fraction, "_", ""))-shift)
}

// fold works out an operator on two constants exactly and rounds once. It returns nil
// after noting a fault where that cannot be done.
func (c *checker) fold(operator byte, left, right *Constant, at Span, is Type) Node {
	a, b := c.exactOf(left), c.exactOf(right)
	out := exactConstant{number: new(big.Rat)}
	decimals, unit := max(left.Decimals, right.Decimals), left.Unit
	switch operator {
	case '*':
		out.number.Mul(a.number, b.number)
		out.factor, unit = productFactor(a, b, false), right.Unit
		decimals = left.Decimals + right.Decimals
		if a.factor != nil {
			unit = left.Unit
		}
	case '/':
		if b.number.Sign() == 0 {
			return c.fault(CodeFormulaConstant, at, "Write what it should be divided by.", "%s divides by zero.", c.quote(at))
		}
		out.number.Quo(a.number, b.number)
		out.factor, decimals = productFactor(a, b, true), left.Decimals
	default:
		term := new(big.Rat).Set(b.number)
		out.factor = a.factor
		if a.factor != nil && b.factor != nil && a.factor.Cmp(b.factor) != 0 {
			term.Mul(term, b.factor).Quo(term, a.factor)
		} else if a.factor == nil && b.factor != nil {
			term.Mul(term, b.factor)
		} else if a.factor != nil && b.factor == nil {
			term.Quo(term, a.factor)
		}
		if operator == '-' {
			term.Neg(term)
		}
		out.number.Add(a.number, term)
	}
	if (operator == '*' && a.factor != nil || operator == '/') && b.factor != nil {
		unit = unitOfSize(is.Dimension, out.factor)
	}
	return c.folded(out, at, is, unit, decimals)
}

// productFactor is the size of the unit of a product, or of a quotient.
func productFactor(a, b exactConstant, over bool) *big.Rat {
	switch {
	case b.factor == nil:
		return a.factor
	case over && a.factor == nil:
		return new(big.Rat).Inv(b.factor)
	case over:
		return new(big.Rat).Quo(a.factor, b.factor)
	case a.factor == nil:
		return b.factor
	}
	return new(big.Rat).Mul(a.factor, b.factor)
}

// foldPower works out a constant to a whole power.
func (c *checker) foldPower(of *Constant, exponent int, at Span, is Type) Node {
	a := c.exactOf(of)
	if a.number.Sign() == 0 && exponent < 0 {
		return c.fault(CodeFormulaConstant, at, "Write what it should be divided by.", "%s divides by zero.", c.quote(at))
	}
	out := exactConstant{number: powerOf(a.number, exponent)}
	unit, decimals := of.Unit, of.Decimals*max(exponent, 0)
	if a.factor != nil {
		out.factor = powerOf(a.factor, exponent)
		unit = unitOfSize(is.Dimension, out.factor)
	}
	return c.folded(out, at, is, unit, decimals)
}

// powerOf is r to a power within ±30.
func powerOf(r *big.Rat, exponent int) *big.Rat {
	n := big.NewInt(int64(max(exponent, -exponent)))
	num, denom := new(big.Int).Exp(r.Num(), n, nil), new(big.Int).Exp(r.Denom(), n, nil)
	if exponent < 0 {
		num, denom = denom, num
	}
	return new(big.Rat).SetFrac(num, denom)
}

// folded makes the constant of an exact value.
func (c *checker) folded(e exactConstant, at Span, is Type, unit quantity.Unit, decimals int) Node {
	value := e.value()
	printed := e.number
	if unit == (quantity.Unit{}) || unit.Affine() {
		unit, printed = quantity.CoherentUnit(is.Dimension), value
		if !is.Dimension.IsNone() {
			decimals = 0
		}
	}
	if e.factor == nil && !is.Dimension.IsNone() {
		e.factor = big.NewRat(1, 1) // a difference of temperatures
	}
	k := &Constant{Base: Base{at, is}, Unit: unit}
	k.Number, _ = value.Float64()
	k.Number += 0 // no minus zero
	if math.IsInf(k.Number, 0) || k.Number == 0 && value.Sign() != 0 || value.Num().BitLen()+value.Denom().BitLen() > mostBits {
		return c.fault(CodeFormulaConstant, at, "Write the result itself.", "%s is too large or too small to work out.", c.quote(at))
	}
	k.Decimals = digitsOf(printed, decimals)
	e.of = k
	c.exact = append(c.exact, e)
	return k
}

// mostDecimals is how many digits after the point a folded number is printed with at most.
const mostDecimals = 10

// digitsOf is the number of digits after the point that a number needs, at least as many
// as the author meant; -1 when no ten would do, so that the shortest is printed.
func digitsOf(number *big.Rat, meant int) int {
	digits, exact := number.FloatPrec()
	if !exact || max(digits, meant) > mostDecimals {
		return -1
	}
	return max(digits, meant)
}

// productUnits is every unit that a product of formula units may be printed in, those with
// a usual spelling as a product first.
var productUnits = sync.OnceValue(func() map[quantity.Dimension][]*unitName {
	units := map[quantity.Dimension][]*unitName{}
	add := func(u quantity.Unit) {
		units[u.Dimension()] = append(units[u.Dimension()], &unitName{unit: u, factor: u.Factor()})
	}
	for _, text := range []string{"mm2", "cm2", "m2", "in2", "mm3", "cm3", "m3", "in3", "mm4", "cm4", "in4",
		"km/h", "mph", "m/s", "kg/m", "lb/ft", "N.m", "lbf.ft", "N/mm2", "lb/in2"} {
		if u, err := quantity.FindUnit(text); err == nil {
			add(u)
		}
	}
	for _, u := range quantity.FormulaUnits() {
		add(u)
	}
	return units
})

// unitOfSize is the unit of a dimension that is as large as factor says, so that
// 90*km/hour is printed in km/h; no unit when none has that size.
func unitOfSize(d quantity.Dimension, factor *big.Rat) quantity.Unit {
	for _, u := range productUnits()[d] {
		if factor != nil && u.factor.Cmp(factor) == 0 {
			return u.unit
		}
	}
	return quantity.Unit{}
}
