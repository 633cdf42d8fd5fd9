package quantity

import (
	"math"
	"math/big"
	"strconv"
	"strings"
)

// In prints a range in a unit, the unit behind it: "45 mm" for an exact value, "2.50 to
// 2.56 mm", "at least 44 mm", "at most 50 mm", and "any" for Everything. Decimals is as in
// FormatNumber; where both ends of a range would look alike, as many more digits are
// printed as it takes to tell them apart.
func (r Range) In(u Unit, decimals int) string {
	unit := ""
	if u.name != "" {
		unit = " " + u.name
	}
	noLow, noHigh := !(r.Low > math.Inf(-1)), !(r.High < math.Inf(1))
	switch {
	case noLow && noHigh:
		return "any"
	case noHigh:
		return "at least " + FormatNumber(r.Low, u, decimals) + unit
	case noLow:
		return "at most " + FormatNumber(r.High, u, decimals) + unit
	}
	low, high := FormatNumber(r.Low, u, decimals), FormatNumber(r.High, u, decimals)
	if low == high && decimals >= 0 && !u.dimension.Same().Same(r.Low, r.High) {
		for more := decimals + 1; low == high && more <= decimals+mostDigits; more++ {
			low, high = FormatNumber(r.Low, u, more), FormatNumber(r.High, u, more)
		}
	}
	if low == high {
		return low + unit
	}
	return low + " to " + high + unit
}

// FormatNumber prints a value in SI as a number of the given unit, without the unit.
// With decimals of 0 or more it has that many digits after the point, halves rounded away
// from zero. With less than 0 it has the fewest digits that read back as the same figure,
// and at most ten. Very large and, in the second way, very small numbers have a power of
// ten: 1.5e20. An infinity is "infinite" or "-infinite", NaN is "unknown".
func FormatNumber(v float64, u Unit, decimals int) string {
	number := u.FromSI(v)
	switch {
	case math.IsNaN(number):
		return "unknown"
	case math.IsInf(number, 1):
		return "infinite"
	case math.IsInf(number, -1):
		return "-infinite"
	case decimals >= 0 && math.Abs(number) < 1e15:
		return plainText(strconv.FormatFloat(number, 'e', 14, 64), min(decimals, 2*mostDigits))
	}
	return shortestText(number, v, u)
}

// plainText writes a number in scientific notation with a fixed count of digits after the
// point. Fifteen significant digits come in, so that what conversion leaves in the last
// bit of a float64 cannot tip a half the wrong way.
func plainText(scientific string, decimals int) string {
	text := rationalOr(scientific, 0).FloatString(decimals)
	if strings.Trim(text, "-0.") == "" {
		return strings.TrimPrefix(text, "-")
	}
	return text
}

// shortestText writes a number with the fewest digits that give the same figure as v.
func shortestText(number, v float64, u Unit) string {
	const most = 10
	same := u.dimension.Same()
	if !u.Affine() && same.Same(v, 0) {
		return "0"
	}
	for digits := 1; ; digits++ {
		scientific := strconv.FormatFloat(number, 'e', digits-1, 64)
		exact, _ := new(big.Rat).SetString(scientific)
		if digits < most && !same.Same(u.ToSI(exact), v) {
			continue
		}
		mantissa, exponent, _ := strings.Cut(scientific, "e")
		power, _ := strconv.Atoi(exponent)
		if power >= 15 || power < -6 {
			if strings.Contains(mantissa, ".") {
				mantissa = strings.TrimRight(strings.TrimRight(mantissa, "0"), ".")
			}
			return mantissa + "e" + strconv.Itoa(power)
		}
		return plainText(scientific, max(0, digits-1-power))
	}
}
