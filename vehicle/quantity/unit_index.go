package quantity

import (
	"math/big"
	"strings"
)

// pi to 63 digits, from "The On-Line Encyclopedia of Integer Sequences", A000796. A factor
// with pi in it rounds to the nearest float64 as the true one does.
const pi = "3.14159265358979323846264338327950288419716939937510582097494459"

// unitTable is what is known of units. It is built once and never changed.
type unitTable struct {
	spelt   map[string]Unit           // every spelling of a unit that is written as a whole
	factors map[string][]factorOfUnit // spellings that can stand in a product or quotient
	order   []string                  // all keys of spelt, everyday units first, for suggestions
	formula []Unit
}

var knownUnits = newUnitTable()

// newUnitTable builds the table from its rows.
func newUnitTable() *unitTable {
	t := &unitTable{spelt: map[string]Unit{}, factors: map[string][]factorOfUnit{}}
	for _, d := range everydayUnits() {
		t.add(d, "", false)
	}
	for _, d := range affineUnits() {
		t.add(d.definition, rationalOf(d.zero).RatString(), false)
	}
	t.add(definition{"dB(A)", "", "dBA|dB (A)|db(A)", "1", Plain}, "", true)
	for _, d := range otherUnits() {
		t.add(d, "", false)
	}
	for _, spelling := range t.order {
		t.addFactor(spelling)
	}
	return t
}

// add enters one row under its name, its name in formulas and its further spellings.
func (t *unitTable) add(d definition, zero string, level bool) {
	unit := Unit{d.name, d.formula, d.dimension, rationalOf(d.factor).RatString(), zero, level}
	spellings := []string{d.name}
	if _, taken := t.spelt[d.formula]; d.formula != "" && !taken {
		t.formula = append(t.formula, unit)
		if d.formula != d.name {
			spellings = append(spellings, d.formula)
		}
	}
	if d.spellings != "" {
		spellings = append(spellings, strings.Split(d.spellings, "|")...)
	}
	for _, s := range spellings {
		if _, taken := t.spelt[s]; taken {
			panic("quantity: two units are spelt " + s)
		}
		t.spelt[s] = unit
		t.order = append(t.order, s)
	}
}

// addFactor enters a spelling as one that can stand in a product, unless it holds a sign
// that a product would read otherwise. A spelling of a unit that is itself written as a
// product (Nm for N.m, sq_mm for mm2) stands for that product.
func (t *unitTable) addFactor(spelling string) {
	unit := t.spelt[spelling]
	if unit.level || unit.Affine() || strings.ContainsAny(spelling, `./^()"'′″`) {
		return
	}
	if strings.ContainsAny(spelling, "0123456789") && spelling != "g0" {
		return
	}
	if !strings.ContainsAny(unit.name, "./0123456789") || unit.name == "g0" {
		t.factors[spelling] = []factorOfUnit{{unit: unit, exponent: 1}}
		return
	}
	if strings.Contains(unit.name, "/") {
		return // kph in a larger product: the author had better write km/h
	}
	var product []factorOfUnit
	for _, part := range strings.Split(unit.name, ".") {
		symbol := strings.TrimRight(part, "0123456789")
		exponent := 1
		if digits := part[len(symbol):]; digits != "" {
			exponent = int(digits[0] - '0')
		}
		product = append(product, factorOfUnit{unit: t.spelt[symbol], exponent: exponent})
	}
	t.factors[spelling] = product
}

// rationalOf works out a factor of the table: numbers and pi joined by * and /.
func rationalOf(text string) *big.Rat {
	result, divide := big.NewRat(1, 1), false
	for _, word := range strings.Fields(text) {
		switch word {
		case "*", "/":
			divide = word == "/"
			continue
		case "pi":
			word = pi
		}
		number := rationalOr(word, 1)
		if divide {
			number.Inv(number)
		}
		result.Mul(result, number)
	}
	return result
}
