package vehicle

import (
	"fmt"
	"math/big"
	"strings"

	"gapsheet/vehicle/quantity"
)

// counterparts is, for the units that the vocabulary measures in, the unit in which a
// workshop with the other sort of instruments reads the same thing.
var counterparts = map[string]string{
	"mm": "in", "in": "mm", "m": "ft", "um": "thou", "cm2": "in2", "cc": "in3", "l": "US gal",
	"kg": "lb", "g": "oz", "MPa": "ksi", "bar": "psi", "kN": "lbf", "N.m": "lbf.ft", "degC": "degF",
}

// usualUnits are units that people mistake for one another.
var usualUnits = []string{
	"mm", "cm", "m", "in", "ft", "g", "kg", "t", "lb", "ml", "l", "US gal", "mm2", "cm2", "in2",
	"kPa", "MPa", "bar", "psi", "N", "kN", "lbf", "N.m", "lbf.ft", "deg", "rad", "degC", "degF", "km/h", "mph",
}

// UnitAdvice says what to write for a figure of x that was written without its unit: with
// each of the two usual units that make it plausible, inches alone for a fraction.
func (x *Particular) UnitAdvice(figure quantity.Figure) string {
	number := new(big.Rat).SetFloat64(figure.Reading)
	units := []quantity.Unit{x.Unit}
	if other, err := quantity.FindUnit(counterparts[x.Unit.Name()]); err == nil {
		units = append(units, other)
	}
	fits := plausibleUnits(x, number, units)
	if len(fits) == 0 {
		fits = plausibleUnits(x, number, unitsNamed(usualUnits))
		fits = fits[:min(len(fits), 1)]
	}
	if len(fits) > 1 && strings.Contains(figure.String(), "/") && !figure.Toleranced {
		fits = fits[len(fits)-1:] // nobody writes 3/32 of a millimetre
	}
	if len(fits) == 0 {
		return fmt.Sprintf("Write the unit too, and look at the number: plausible is %s.", x.Plausible.In(x.Unit, -1))
	}
	var written []string
	for _, u := range fits {
		written = append(written, figure.String()+" "+u.Name())
	}
	return fmt.Sprintf("Write the unit too, as in %s.", quotedList(written, "or"))
}

// likelyMeant is the figure with another unit, with which it would be plausible; "" when
// no unit makes it so.
func likelyMeant(x *Particular, figure quantity.Figure) string {
	number := new(big.Rat).SetFloat64(figure.Unit.FromSI(figure.Reading))
	for _, u := range plausibleUnits(x, number, append([]quantity.Unit{x.Unit}, unitsNamed(usualUnits)...)) {
		if u != figure.Unit && u.Convertible() {
			return quantity.FormatNumber(figure.Reading, figure.Unit, figure.Decimals) + " " + u.Name()
		}
	}
	return ""
}

// plausibleUnits are those of some units with which a number, nil for none, is a plausible
// figure of x.
func plausibleUnits(x *Particular, number *big.Rat, units []quantity.Unit) []quantity.Unit {
	var fits []quantity.Unit
	for _, u := range units {
		if number != nil && u.Dimension() == x.Dimension && u.Convertible() == x.Unit.Convertible() && x.IsPlausible(u.ToSI(number)) {
			fits = append(fits, u)
		}
	}
	return fits
}

// unitsNamed are the units with some names.
func unitsNamed(names []string) []quantity.Unit {
	var units []quantity.Unit
	for _, name := range names {
		if u, err := quantity.FindUnit(name); err == nil {
			units = append(units, u)
		}
	}
	return units
}
