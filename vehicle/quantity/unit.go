package quantity

import (
	"math"
	"math/big"
)

// Unit is a unit of measure. Units are compared with ==: the same unit found twice, under
// whatever spelling, is equal; N/mm2 and MPa are two units although their factors agree,
// so that a figure is printed in the one its author chose. The zero value is no unit: a
// plain number.
type Unit struct {
	name      string
	formula   string
	dimension Dimension
	factor    string // exact rational "a/b": how many SI units one of these is; "" is 1
	zero      string // exact rational: where this unit's zero stands in SI; "" is 0
	level     bool   // a level such as dB(A), which no factor turns into another unit
}

// Name is the unit as it is printed after a number: "mm", "N/mm2", "US gal". It is empty
// for no unit.
func (u Unit) Name() string { return u.name }

// String is Name, for formatted printing.
func (u Unit) String() string { return u.name }

// Formula is the name that a formula uses for the unit: "metre" for m, "MPa" for N/mm2.
// It is empty when a formula has none and must spell the unit as a product.
func (u Unit) Formula() string { return u.formula }

// Dimension is what the unit measures.
func (u Unit) Dimension() Dimension { return u.dimension }

// Factor returns how many units of the International System one of this unit is, as an
// exact rational. For an angle the rational stands for pi with 63 digits. For an affine
// unit it is the size of one degree. The caller owns the result.
func (u Unit) Factor() *big.Rat { return rationalOr(u.factor, 1) }

// Affine reports whether the unit's zero is not that of SI, so that a reading and a
// difference convert differently: degC and degF.
func (u Unit) Affine() bool { return u.zero != "" }

// Convertible reports whether a figure in this unit can be turned into another unit of
// its dimension. A level, dB(A), cannot: it compares with figures in dB(A) only.
func (u Unit) Convertible() bool { return !u.level }

// ToSI turns a reading in this unit into SI: exact rational arithmetic, rounded once to
// the nearest float64, so that 1.75 in and 44.45 mm give one float. It answers ±Inf where
// the result is beyond a float64.
func (u Unit) ToSI(number *big.Rat) float64 { return nearestFloat(u.exact(number)) }

// DifferenceToSI turns a difference of two readings in this unit, such as a tolerance,
// into SI. It differs from ToSI for affine units only.
func (u Unit) DifferenceToSI(number *big.Rat) float64 { return nearestFloat(u.exactDifference(number)) }

// FromSI turns a value in SI into the float64 nearest to its number in this unit. NaN and
// the infinities stay what they are.
func (u Unit) FromSI(v float64) float64 {
	exact := new(big.Rat).SetFloat64(v)
	if exact == nil {
		return v
	}
	exact.Sub(exact, rationalOr(u.zero, 0))
	return nearestFloat(exact.Quo(exact, u.Factor()))
}

// exact is ToSI before rounding.
func (u Unit) exact(number *big.Rat) *big.Rat {
	si := u.exactDifference(number)
	return si.Add(si, rationalOr(u.zero, 0))
}

// exactDifference is DifferenceToSI before rounding. No number counts as zero.
func (u Unit) exactDifference(number *big.Rat) *big.Rat {
	if number == nil {
		return new(big.Rat)
	}
	return new(big.Rat).Mul(number, u.Factor())
}

// sameKind reports whether figures in the two units can stand in one figure: same
// dimension, and no level unless both are the same level.
func (u Unit) sameKind(v Unit) bool {
	return u.dimension == v.dimension && u.level == v.level && (!u.level || u == v)
}

// nearestFloat rounds to the nearest float64, ties to even.
func nearestFloat(exact *big.Rat) float64 {
	v, _ := exact.Float64()
	if v == 0 {
		return math.Abs(v) // no minus zero from a tiny negative figure
	}
	return v
}

// rationalOr reads the text that a Unit keeps; an empty one is the given whole number.
func rationalOr(text string, empty int64) *big.Rat {
	if text == "" {
		return big.NewRat(empty, 1)
	}
	r, ok := new(big.Rat).SetString(text)
	if !ok {
		panic("quantity: a unit keeps a factor that is no rational: " + text)
	}
	return r
}

// CoherentUnit returns the unit of the International System for a dimension, named in base
// units unless it has a symbol: mm is not coherent, m is; "kg/m", "m4", "Pa". For a plain
// number it is no unit.
func CoherentUnit(d Dimension) Unit {
	for _, symbol := range []string{"N", "Pa", "N.m", "W", "V"} {
		if u := knownUnits.spelt[symbol]; u.dimension == d {
			return u
		}
	}
	var above, below []factorOfUnit
	for i, symbol := range [...]string{"m", "kg", "s", "rad", "K", "A"} {
		unit := knownUnits.spelt[symbol]
		switch exponent := int(d.exponents()[i]); {
		case exponent > 0:
			above = append(above, factorOfUnit{unit: unit, exponent: exponent})
		case exponent < 0:
			below = append(below, factorOfUnit{unit: unit, exponent: -exponent})
		}
	}
	return unitOfProduct(above, below)
}
