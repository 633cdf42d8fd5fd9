package quantity

import (
	"strings"
	"unicode"
)

// factor reads one unit or a bracket, with its power.
func (r *productReader) factor() ([]factorOfUnit, *Fault) {
	if r.at < r.to && r.text[r.at] == '(' {
		return r.bracket()
	}
	start := r.at
	power := r.powerWord()
	length, factors := r.longest()
	if length == 0 {
		return nil, r.unknown()
	}
	spelling := string(r.text[r.at : r.at+length])
	r.at += length
	exponent, written, fault := r.exponent()
	if fault != nil {
		return nil, fault
	}
	simple := len(factors) == 1 && factors[0].exponent == 1 && !strings.ContainsAny(spelling, "0123456789")
	if (written || power > 1) && !simple || written && power > 1 {
		return nil, r.fault(start, r.at, "A power on "+quoted(spelling)+" can be read in two ways.", "Write it out as a product of simple units with their powers, as in N.m2.")
	}
	if simple {
		factors = []factorOfUnit{{factors[0].unit, exponent * power}}
	}
	return factors, nil
}

// bracket reads a product in brackets. Brackets in brackets are not units any more.
func (r *productReader) bracket() ([]factorOfUnit, *Fault) {
	open := r.at
	if r.brackets > 0 {
		return nil, r.fault(open, r.to, "There are brackets within brackets in this unit.", "Write one pair, as in kg/(m.s2).")
	}
	r.brackets++
	r.at = r.blanks(r.at + 1)
	product, fault := r.product()
	if fault != nil {
		return nil, fault
	}
	r.at = r.blanks(r.at)
	if r.at >= r.to || r.text[r.at] != ')' {
		return nil, r.fault(open, r.to, "A bracket in this unit is not closed.", "Write a pair, as in kg/(m.s2).")
	}
	r.at++
	r.brackets--
	return product, nil
}

// powerWord skips sq, square, cu or cubic before a unit and returns 2, 3 or, without such
// a word, 1.
func (r *productReader) powerWord() int {
	rest := string(r.text[r.at:r.to])
	for _, word := range []struct {
		text  string
		power int
	}{{"sq. ", 2}, {"sq ", 2}, {"square ", 2}, {"cu. ", 3}, {"cu ", 3}, {"cubic ", 3}} {
		if strings.HasPrefix(rest, word.text) {
			r.at = r.blanks(r.at + len(word.text))
			return word.power
		}
	}
	return 1
}

// longest finds the longest spelling of a unit that begins here and ends at a word's end.
func (r *productReader) longest() (int, []factorOfUnit) {
	const longestSpelling = 20
	for length := min(longestSpelling, r.to-r.at); length > 0; length-- {
		end := r.at + length
		if end < r.to && isLetter(r.text[end]) {
			continue
		}
		if factors, ok := knownUnits.factors[string(r.text[r.at:end])]; ok {
			return length, factors
		}
	}
	return 0, nil
}

// exponent reads the power of a unit: m2, m^2, m^-2, m-2, m². Written is false and the
// exponent 1 when there is none.
func (r *productReader) exponent() (exponent int, written bool, fault *Fault) {
	start, at, sign := r.at, r.at, 1
	if at < r.to && r.text[at] == '^' {
		at++
	}
	if at+1 < r.to && (r.text[at] == '-' || r.text[at] == '⁻') && digitOf(r.text[at+1]) >= 0 {
		sign = -1
		at++
	}
	digits := at
	for at < r.to && digitOf(r.text[at]) >= 0 {
		exponent = min(exponent*10+digitOf(r.text[at]), mostExponent+1)
		at++
	}
	if at == digits {
		return 1, false, nil
	}
	r.at = at
	if exponent == 0 || exponent > mostExponent {
		return 0, true, r.fault(start, at, "The power "+quoted(string(r.text[start:at]))+" on a unit is not one to nine.", "Write a power such as mm2 or s-2.")
	}
	return exponent * sign, true, nil
}

// unknown makes the fault for the word that begins here.
func (r *productReader) unknown() *Fault {
	end := r.at
	for end < r.to && (isLetter(r.text[end]) || digitOf(r.text[end]) >= 0) {
		end++
	}
	if end == r.at {
		end = min(r.at+1, r.to)
	}
	word := string(r.text[r.at:end])
	if fault := whichUnit(word, r.at, end); fault != nil {
		return fault
	}
	if unit := knownUnits.spelt[word]; unit.Affine() {
		return r.fault(r.at, end, word+" cannot stand in a product or quotient of units.", "Write K: a difference of one degree Celsius is one kelvin.")
	}
	return unknownUnit(word, r.at, end)
}

// isLetter reports whether a rune is part of a unit's word.
func isLetter(c rune) bool { return unicode.IsLetter(c) || c == '_' || c == '°' || c == '%' }

// digitOf returns the value of a plain or raised digit, -1 for anything else.
func digitOf(c rune) int {
	if c >= '0' && c <= '9' {
		return int(c - '0')
	}
	for i, raised := range []rune("⁰¹²³⁴⁵⁶⁷⁸⁹") {
		if c == raised {
			return i
		}
	}
	return -1
}
