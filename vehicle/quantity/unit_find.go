package quantity

import (
	"strings"
	"unicode"
)

// FormulaUnits returns the units that a formula can name, in a fixed order. Each one's
// Formula is a legal identifier.
func FormulaUnits() []Unit { return append([]Unit(nil), knownUnits.formula...) }

// FindUnit finds a unit by any of its spellings, that of formulas and those of written
// figures, or builds it from a product or quotient of known units: kg/m, lb/in3, N.m,
// kg/(m.s2), ft lbf/s, N/mm^2. Sign for sign it tells upper from lower case. The error is
// a *Fault with places in text: an unknown unit with the nearest known one, a unit that
// means several things (gal, mil, ton) with the question which.
func FindUnit(text string) (Unit, error) {
	unit, fault := findUnit([]rune(text))
	if fault != nil {
		return Unit{}, fault
	}
	return unit, nil
}

// findUnit is FindUnit on runes.
func findUnit(text []rune) (Unit, *Fault) {
	const most = 60 // runes; the longest sensible unit has about twenty
	from, to := trimmed(text)
	switch {
	case from == to:
		return Unit{}, &Fault{FaultUnitMissing, 0, len(text), "There is no unit here.", "Write one such as mm, in, kg, MPa, l or deg."}
	case to-from > most:
		return Unit{}, &Fault{FaultText, from, to, "This is far too long for a unit: " + quoted(string(text[from:to])) + ".", "Write one such as mm, in, kg, MPa, l or deg."}
	}
	plain := plainUnitText(text)
	whole := strings.Join(strings.Fields(string(plain[from:to])), " ")
	if unit, ok := knownUnits.spelt[whole]; ok {
		return unit, nil
	}
	if fault := whichUnit(whole, from, to); fault != nil {
		return Unit{}, fault
	}
	return findProduct(plain, from, to)
}

// plainUnitText writes signs that look or mean alike as one, rune for rune.
func plainUnitText(text []rune) []rune {
	plain := make([]rune, len(text))
	for i, r := range text {
		switch {
		case unicode.IsSpace(r):
			r = ' '
		case strings.ContainsRune("·⋅∙*", r):
			r = '.'
		case r == 'μ': // Greek letter, beside the micro sign
			r = 'µ'
		case r == '−' || r == '‐' || r == '‑':
			r = '-'
		case r == 'º': // ordinal sign, taken for degrees by some keyboards
			r = '°'
		}
		plain[i] = r
	}
	return plain
}

// trimmed returns where the text without the blanks around it begins and ends.
func trimmed(text []rune) (from, to int) {
	to = len(text)
	for from < to && unicode.IsSpace(text[from]) {
		from++
	}
	for to > from && unicode.IsSpace(text[to-1]) {
		to--
	}
	return from, to
}
