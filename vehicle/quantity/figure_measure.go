package quantity

import (
	"math/big"
	"strings"
)

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
