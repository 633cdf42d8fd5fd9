package quantity

import (
	"math/big"
	"strconv"
	"strings"
)

// factorOfUnit is one unit of a product with its exponent.
type factorOfUnit struct {
	unit     Unit
	exponent int
}

// unitOfProduct makes one unit of factors above and below the line, all exponents
// positive. One that the table knows under the name so made is the table's.
func unitOfProduct(above, below []factorOfUnit) Unit {
	above, below = joined(above), joined(below)
	name := productName(above)
	switch {
	case len(below) == 0:
	case len(above) == 0:
		name = "per " + bracketed(below)
	default:
		name += "/" + bracketed(below)
	}
	if unit, ok := knownUnits.spelt[name]; ok || name == "" {
		return unit
	}
	unit, factor := Unit{name: name}, big.NewRat(1, 1)
	for _, f := range above {
		unit.dimension = unit.dimension.Times(f.unit.dimension.Power(f.exponent))
		for range f.exponent {
			factor.Mul(factor, f.unit.Factor())
		}
	}
	for _, f := range below {
		unit.dimension = unit.dimension.Over(f.unit.dimension.Power(f.exponent))
		for range f.exponent {
			factor.Quo(factor, f.unit.Factor())
		}
	}
	unit.factor = factor.RatString()
	return unit
}

// joined brings factors of one unit together where they follow each other: m.m is m2.
func joined(factors []factorOfUnit) []factorOfUnit {
	var result []factorOfUnit
	for _, f := range factors {
		last := len(result) - 1
		if last >= 0 && result[last].unit == f.unit && result[last].exponent+f.exponent <= mostExponent {
			result[last].exponent += f.exponent
			continue
		}
		result = append(result, f)
	}
	return result
}

// productName writes factors as N.m2.
func productName(factors []factorOfUnit) string {
	var parts []string
	for _, f := range factors {
		part := f.unit.name
		if f.exponent > 1 {
			part += strconv.Itoa(f.exponent)
		}
		parts = append(parts, part)
	}
	return strings.Join(parts, ".")
}

// bracketed is productName with brackets around more than one factor.
func bracketed(factors []factorOfUnit) string {
	if len(factors) == 1 {
		return productName(factors)
	}
	return "(" + productName(factors) + ")"
}
