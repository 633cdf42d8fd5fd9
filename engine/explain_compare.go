package engine

import (
	"math"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// comparison explains a comparison: what was read, what it is held against, and by how
// much it meets or falls short.
func (x *explainer) comparison(t *trace, f *finding) {
	sides := make([]finding, len(t.of))
	for i, of := range t.of {
		sides[i] = x.walk(of)
		f.work.Of = append(f.work.Of, sides[i].work)
	}
	d := Decided{Truth: x.asked(f.work.Truth), What: t.of[0].text(), Reading: x.value(t.of[0])}
	switch n := t.tree.(type) {
	case *rules.Compare:
		x.compare(t, n, f, &d)
	case *rules.TextTest:
		d.Sense, d.Limit = x.word(textTests[n.Test]), n.Text
	case *rules.CountBetween:
		d.Sense, d.Limit = x.word("between"), x.value(t.of[1])+" and "+x.value(t.of[2])
	}
	d.Place = x.placeOf(t)
	if x.dates {
		x.keepDates(t, d)
	}
	x.keepPart(t, d)
	x.settled(f, d)
	if f.failing > 0 && t.of[0].value.asNumber == nil {
		f.short = math.Inf(1) // another member altogether, not one that is nearly there
	}
}

// asked is a truth as it is asked for: under a negation the other way round.
func (x *explainer) asked(t quantity.Truth) quantity.Truth {
	if x.negated {
		return t.Not()
	}
	return t
}

// word is a sense as it is asked for.
func (x *explainer) word(sense string) string {
	if x.negated {
		return "not " + sense
	}
	return sense
}

// settled makes a comparison the finding of its node.
func (x *explainer) settled(f *finding, d Decided) {
	f.decided = []Decided{d}
	if d.Truth == quantity.No {
		f.failing = 1
	}
}

// compare fills in a comparison of two values. The side that reads the car is what is
// read; with both, the left one is.
func (x *explainer) compare(t *trace, n *rules.Compare, f *finding, d *Decided) {
	reading, limit, sense := t.of[0], t.of[1], n.Sense
	if !reading.readsCar() && limit.readsCar() {
		reading, limit, sense = limit, reading, mirrored[sense]
	}
	if x.negated {
		sense = opposite[sense]
	}
	d.What, d.Sense = reading.text(), senses[sense]
	d.Reading, d.Limit = x.valueBeside(reading, limit), x.valueBeside(limit, reading)
	if reading.isDate() {
		d.Sense = daySenses[sense]
	}
	if reading.value.asNumber == nil {
		if sense == rules.Equal {
			d.Sense = ""
		}
		return
	}
	r, l := quietly(x.m, reading.value.asNumber), quietly(x.m, limit.value.asNumber)
	if shift := allowanceOf(t); shift != 0 {
		d.Limit += x.allowanceWord(sense, reading == t.of[0], shift, limit)
		if reading == t.of[0] {
			r = r.Plus(quantity.Exactly(shift))
		} else {
			l = l.Plus(quantity.Exactly(shift))
		}
	}
	switch d.Truth {
	case quantity.No:
		f.short = shortfall(r, l)
	case quantity.Yes:
		f.hand = shortfall(r, l)
	}
	if sense != rules.Equal && sense != rules.NotEqual {
		d.Margin = x.margin(sense, r, l, reading, limit, d.Truth)
	}
}

// allowanceWord says what the clause's allowance does to the limit as it is asked for.
func (x *explainer) allowanceWord(sense rules.Comparison, onReading bool, shift float64, limit *trace) string {
	helps := shift > 0
	if sense == rules.Less || sense == rules.AtMost {
		helps = !helps
	}
	if !onReading {
		helps = !helps
	}
	word := ", tightened by "
	if helps {
		word = ", loosened by "
	}
	return word + figureText(quantity.Exactly(math.Abs(shift)), x.unitOf(limit), figureDigits)
}

// allowanceOf is what the clause's allowance adds to the left side of a comparison.
func allowanceOf(t *trace) float64 {
	if n, ok := t.value.asTruth.(*compareNumbers); ok {
		return n.shift
	}
	return 0
}

// membership explains x in list.
func (x *explainer) membership(t *trace, n *rules.Within, f *finding) {
	of := x.walk(t.of[0])
	f.work.Of = append(f.work.Of, of.work)
	d := Decided{
		What: t.of[0].text(), Sense: x.word("one of"), Reading: x.value(t.of[0]),
		Limit: textAt(t.formula, n.List.Span()), Truth: x.asked(f.work.Truth), Place: x.placeOf(t),
	}
	x.keepPart(t, d)
	x.settled(f, d)
	if f.failing > 0 && t.of[0].value.asNumber == nil {
		f.short = math.Inf(1)
	}
}

// read explains a read: what is not recorded is said.
func (x *explainer) read(t *trace, f *finding) {
	if at, ok := placeOfNode(t.value.node()); ok {
		f.work.Note = joinNotes(f.work.Note, x.noteOn(at.cell(x.m)))
		x.rootsOfCell(at.cell(x.m), f)
	}
	if f.work.HasTruth {
		limit := "yes"
		if x.negated {
			limit = "no"
		}
		d := Decided{
			What: t.text(), Reading: f.work.Value, Limit: limit,
			Truth: x.asked(f.work.Truth), Place: x.placeOf(t),
		}
		x.keepPart(t, d)
		x.settled(f, d)
	}
}

// noteOn says what is special about a cell.
func (x *explainer) noteOn(i int32) string {
	c := &x.m.cells[i]
	switch {
	case c.flags&mayLack != 0 && c.flags&mayHold == 0:
		return "not fitted"
	case c.flags&mayHold == 0:
		return "stated not to exist"
	case c.flags&written == 0:
		return "not recorded"
	}
	o := &x.car.origins[i]
	if o.value == nil || len(o.value.Readings) == 0 {
		if x.m.derived[i] != nil {
			return noteFollows
		}
		return ""
	}
	if x.m.derived[i] != nil {
		return noteStated
	}
	if len(o.value.Readings) > 1 {
		return "least favourable of " + Plural(len(o.value.Readings), "reading", "readings")
	}
	if o.withoutTolerance() {
		return "tolerance not stated"
	}
	return ""
}

// placeOf is where in the sheet the first reading behind a node stands.
func (x *explainer) placeOf(t *trace) hcl.Range {
	if at, ok := placeOfNode(t.value.node()); ok {
		return x.car.origins[at.cell(x.m)].place()
	}
	if _, ok := t.tree.(*rules.Gather); ok {
		return x.placeOfFirst(t.of[0].list)
	}
	for _, of := range t.of {
		if of.list != nil {
			continue
		}
		if r := x.placeOf(of); r != (hcl.Range{}) {
			return r
		}
	}
	return hcl.Range{}
}

// placeOfFirst is where the first part of a list stands.
func (x *explainer) placeOfFirst(list source) hcl.Range {
	list = under(list)
	for i := range list.length(x.m) {
		if list.at(x.m, i) == quantity.No {
			continue
		}
		if part := x.car.partAt(x.m.slots[list.bound()].base); part != nil {
			return part.Range
		}
	}
	return hcl.Range{}
}

// placeOfNode is the place that a read reads.
func placeOfNode(n node) (*place, bool) {
	switch n := n.(type) {
	case *readNumber:
		return &n.place, true
	case *readSymbol:
		return &n.place, true
	case *readTruth:
		return &n.place, true
	case *otherwiseNumber:
		return &n.place, true
	case *otherwiseSymbol:
		return &n.place, true
	case *otherwiseTruth:
		return &n.place, true
	case *recorded:
		return &n.place, true
	}
	return nil, false
}

func (t *trace) isDate() bool { return t.tree.Type().Kind == rules.Date }

// readsCar reports whether a formula's node reads the car, or a name handed in.
func (t *trace) readsCar() bool {
	for n := range rules.Walk(t.tree) {
		switch n.(type) {
		case *rules.Read, *rules.Given, *rules.Parts, *rules.Fitted:
			return true
		}
	}
	return false
}

// text is the text of a node in its formula, on one line.
func (t *trace) text() string {
	if t.named != "" {
		return t.named
	}
	return textAt(t.formula, t.tree.Span())
}

func textAt(f *rules.Formula, at rules.Span) string {
	if f == nil {
		return ""
	}
	runes := []rune(f.Source)
	from, to := min(max(at.From, 0), len(runes)), min(max(at.To, 0), len(runes))
	if from >= to {
		return ""
	}
	return strings.Join(strings.Fields(string(runes[from:to])), " ")
}
