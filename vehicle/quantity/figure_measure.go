package quantity

import (
	"math/big"
	"strings"
	"unicode"
)

// figureReader reads a written figure from left to right.
type figureReader struct {
	text []rune // with signs that mean alike written as one, rune for rune
	at   int
	to   int // where reading ends, at most len(text)
}

// measure is a number with its unit, as one part of a written figure.
type measure struct {
	number   *big.Rat // in unit
	unit     Unit
	hasUnit  bool
	decimals int
	text     string // the number as printed; with its unit when closed
	closed   bool   // "5 ft 2 in" and "13 bwg": no unit can be lent to or from it
	gauged   bool   // "13 bwg"
	from, to int
}

// written is the measure as it is printed.
func (m measure) written() string {
	if m.closed || m.unit.name == "" {
		return m.text
	}
	return m.text + " " + m.unit.name
}

// here is the rune at the reader's place, 0 at the end.
func (r *figureReader) here() rune { return r.ahead(0) }

// ahead is the rune so many places further on, 0 past the end.
func (r *figureReader) ahead(n int) rune {
	if r.at+n < r.to {
		return r.text[r.at+n]
	}
	return 0
}

// after is the first rune from a place on that is no blank, 0 at the end.
func (r *figureReader) after(at int) rune {
	if at = r.blanks(at); at < r.to {
		return r.text[at]
	}
	return 0
}

// blanks returns the first place from at on that is no blank.
func (r *figureReader) blanks(at int) int {
	for at < r.to && r.text[at] == ' ' {
		at++
	}
	return at
}

// between is a piece of the text.
func (r *figureReader) between(from, to int) string { return string(r.text[from:to]) }

// measure reads a number, its unit if there is one, and the smaller units that follow as
// in 5 ft 2 1/2 in.
func (r *figureReader) measure() (measure, *Fault) {
	m, fault := r.simpleMeasure()
	for fault == nil && m.hasUnit && startsNumber(r.after(r.at), r.ahead(r.blanks(r.at)-r.at+1)) {
		r.at = r.blanks(r.at)
		var smaller measure
		if smaller, fault = r.simpleMeasure(); fault == nil {
			m, fault = m.with(smaller)
		}
	}
	return m, fault
}

// simpleMeasure reads one number and its unit, if there is one.
func (r *figureReader) simpleMeasure() (measure, *Fault) {
	n, fault := r.number()
	if fault != nil {
		return measure{}, fault
	}
	m := measure{number: n.value, decimals: n.decimals, text: n.text, from: n.from, to: n.to}
	from := r.blanks(r.at)
	to := r.unitEnd(from)
	if from == to {
		return m, nil
	}
	r.at, m.to, m.hasUnit = to, to, true
	word := r.between(from, to)
	if gauge := strings.ToLower(word); gaugeWalls(gauge) != nil {
		return m.gauge(gauge)
	}
	if m.unit, fault = findUnit(r.text[from:to]); fault != nil {
		fault.From += from
		fault.To += from
		return measure{}, fault
	}
	return m, nil
}

// gauge turns a gauge number into the wall that its table gives, in inches.
func (m measure) gauge(name string) (measure, *Fault) {
	wall, ok := gaugeWall(name, m.number)
	if !ok {
		return measure{}, &Fault{FaultGauge, m.from, m.to, m.text + " is not in the table of " + name + ", which is kept for the whole numbers 7 to 20.", "Write the wall in mm or in."}
	}
	m.text += " " + name
	m.number, m.unit, m.decimals, m.closed, m.gauged = wall, knownUnits.spelt["in"], 3, true, true
	return m, nil
}

// with joins a measure and a smaller one behind it: 5 ft and 2 1/2 in. The sum is kept in
// the smaller unit.
func (m measure) with(smaller measure) (measure, *Fault) {
	fault := func(found, advice string) (measure, *Fault) {
		return measure{}, &Fault{FaultForm, smaller.from, smaller.to, found, advice}
	}
	const forms = "Write ± before a tolerance and to between the ends of a range."
	whole, part := new(big.Rat).Abs(m.number), smaller.number
	switch {
	case m.hasUnit && !smaller.hasUnit:
		return fault("A second number "+quoted(smaller.text)+" follows the figure and has no unit.", forms)
	case !m.unit.sameKind(smaller.unit) || m.unit.Affine() || m.unit.level || smaller.closed || m.gauged:
		return fault("A second figure "+quoted(smaller.written())+" follows the first.", forms)
	case m.unit.Factor().Cmp(smaller.unit.Factor()) <= 0:
		return fault("A second figure "+quoted(smaller.written())+" follows the first, and its unit is not a smaller one.", forms)
	case !m.number.IsInt() && !m.closed:
		return fault("A smaller unit follows the broken number "+quoted(m.text)+".", "Write whole numbers before the last unit, as in 5 ft 2.5 in.")
	case part.Sign() < 0 || smaller.unit.exactDifference(part).Cmp(m.unit.Factor()) >= 0:
		return fault(quoted(smaller.written())+" is not less than one "+m.unit.name+".", "Write the figure in one unit.")
	}
	whole.Mul(whole, new(big.Rat).Quo(m.unit.Factor(), smaller.unit.Factor()))
	whole.Add(whole, part)
	if strings.HasPrefix(m.text, "-") {
		whole.Neg(whole)
	}
	return measure{number: whole, unit: smaller.unit, hasUnit: true, decimals: smaller.decimals,
		text: m.written() + " " + smaller.written(), closed: true, from: m.from, to: smaller.to}, nil
}

// unitEnd returns where the unit that begins at from ends: before the next number, a sign
// of tolerance, the word to, or the end.
func (r *figureReader) unitEnd(from int) int {
	at := from
	for at < r.to && !r.endsUnit(from, at) {
		quote := strings.ContainsRune(`"'″′°`, r.text[at])
		at++
		if quote && at < r.to && (isDigit(r.text[at]) || vulgarFraction(r.text[at]) != "") {
			break
		}
	}
	for at > from && r.text[at-1] == ' ' {
		at--
	}
	return at
}

// endsUnit reports whether a unit that began at from cannot go on at a place.
func (r *figureReader) endsUnit(from, at int) bool {
	c := r.text[at]
	next := r.after(at + 1)
	switch {
	case strings.ContainsRune("±+<>=≤≥~,;:–—×|", c), vulgarFraction(c) != "":
		return true
	case c == '/':
		return next == '-' || next == '+' || startsNumber(next, r.runeAt(r.blanks(at+1)+1))
	case c == '-':
		return at == from || r.text[at-1] == ' ' || at+1 == r.to || r.text[at+1] == ' ' || r.rangeHyphen(at)
	case c == '.':
		return at == from || at+1 < r.to && (r.text[at+1] == '.' || isDigit(r.text[at+1]))
	case isDigit(c):
		return at == from
	case c == ' ':
		at = r.blanks(at)
		return startsNumber(next, r.runeAt(at+1)) || r.wordAt(at, "to") || r.wordAt(at, "x") || r.wordAt(at, "X")
	}
	return at == from && (r.wordAt(at, "to") || (c == 'x' || c == 'X') && startsNumber(next, r.runeAt(r.blanks(at+1)+1)))
}

// rangeHyphen reports whether a hyphen behind a unit stands before a second figure, as in
// 44mm-46mm, and not before an exponent, as in s-2.
func (r *figureReader) rangeHyphen(at int) bool {
	end := at + 1
	for end < r.to && isDigit(r.text[end]) {
		end++
	}
	return end > at+2 || end > at+1 && end < r.to && (r.text[end] == '.' && isDigit(r.runeAt(end+1)) || unicode.IsLetter(r.text[end]))
}

// runeAt is the rune at a place, 0 past the end.
func (r *figureReader) runeAt(at int) rune {
	if at < r.to {
		return r.text[at]
	}
	return 0
}

// wordAt reports whether a word stands at a place and ends there.
func (r *figureReader) wordAt(at int, word string) bool {
	end := at + len(word)
	if end > r.to || string(r.text[at:end]) != word {
		return false
	}
	return end == r.to || !unicode.IsLetter(r.text[end])
}

// startsNumber reports whether a rune, with the one behind it, begins a number without a
// sign.
func startsNumber(c, next rune) bool {
	return isDigit(c) || vulgarFraction(c) != "" || c == '.' && isDigit(next)
}
