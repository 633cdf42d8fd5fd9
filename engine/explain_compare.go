package engine

import (
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// senses are the comparisons in words.
var senses = [...]string{
	rules.Equal: "exactly", rules.NotEqual: "other than",
	rules.Less: "less than", rules.AtMost: "at most",
	rules.More: "more than", rules.AtLeast: "at least",
}

// daySenses are the comparisons of days in words.
var daySenses = [...]string{
	rules.Equal: "on", rules.NotEqual: "not on",
	rules.Less: "before", rules.AtMost: "not after",
	rules.More: "after", rules.AtLeast: "not before",
}

// comparison explains a comparison: what was read, what it is held against, and by how
// much it meets or falls short.
func (x *explainer) comparison(t *trace, f *finding) {
	sides := make([]finding, len(t.of))
	for i, of := range t.of {
		sides[i] = x.walk(of)
		f.work.Of = append(f.work.Of, sides[i].work)
	}
	d := Decided{Truth: f.work.Truth}
	switch n := t.tree.(type) {
	case *rules.Compare:
		x.compare(t, n, f, &d)
	case *rules.TextTest:
		d.What, d.Reading = t.of[0].text(), x.value(t.of[0])
		d.Sense, d.Limit = textTests[n.Test], n.Text
	case *rules.CountBetween:
		d.What, d.Reading = t.of[0].text(), x.value(t.of[0])
		d.Sense, d.Limit = "between", x.value(t.of[1])+" and "+x.value(t.of[2])
	}
	d.Place = x.placeOf(t)
	f.decided = []Decided{d}
	if f.work.Truth == quantity.No {
		f.failing = 1
	}
}

var textTests = [...]string{
	rules.Contains: "contains", rules.StartsWith: "starts with",
	rules.EndsWith: "ends with", rules.Matches: "matches",
}

// compare fills in a comparison of two values. The side that reads the car is what is
// read; with both, the left one is.
func (x *explainer) compare(t *trace, n *rules.Compare, f *finding, d *Decided) {
	reading, limit, sense := t.of[0], t.of[1], n.Sense
	if !reading.readsCar() && limit.readsCar() {
		reading, limit, sense = limit, reading, mirrored[sense]
	}
	d.What, d.Sense = reading.text(), senses[sense]
	d.Reading, d.Limit = x.value(reading), x.value(limit)
	if reading.isDate() {
		d.Sense = daySenses[sense]
	}
	if reading.value.asNumber == nil {
		return
	}
	r, l := quietly(x.m, reading.value.asNumber), quietly(x.m, limit.value.asNumber)
	if shift := allowanceOf(t); shift != 0 {
		d.Limit += ", allowance " + quantity.Exactly(shift).In(x.unitOf(limit), -1)
		if reading == t.of[0] {
			r = r.Plus(quantity.Exactly(shift))
		} else {
			l = l.Plus(quantity.Exactly(shift))
		}
	}
	if f.work.Truth == quantity.No {
		f.short = shortfall(r, l)
	}
	if sense != rules.Equal && sense != rules.NotEqual {
		d.Margin = x.margin(sense, r, l, reading, limit, f.work.Truth)
	}
}

// allowanceOf is what the clause's allowance adds to the left side of a comparison.
func allowanceOf(t *trace) float64 {
	if n, ok := t.value.asTruth.(*compareNumbers); ok {
		return n.shift
	}
	return 0
}

// margin says by how much a limit is met or missed, or that the reading straddles it.
func (x *explainer) margin(sense rules.Comparison, r, l quantity.Range, reading, limit *trace, t quantity.Truth) string {
	beyond := r.Minus(l)
	if sense == rules.Less || sense == rules.AtMost {
		beyond = beyond.Negate()
	}
	beyond = x.asRead(beyond, t)
	if !beyond.IsExact() {
		return ""
	}
	by := beyond.Abs()
	short, over := "short", "over"
	var amount string
	if reading.isDate() {
		amount, short, over = plural(int(by.Low), "day", "days"), "too early", "too late"
	} else {
		u := x.unitOf(limit)
		if u == (quantity.Unit{}) {
			u = x.unitOf(reading)
		}
		amount = by.In(differenceUnit(u), -1)
	}
	switch {
	case t == quantity.Yes && by.Low == 0:
		return "on the limit"
	case t == quantity.Yes:
		return amount + " in hand"
	case t == quantity.No && (sense == rules.Less || sense == rules.AtMost):
		return amount + " " + over
	case t == quantity.No:
		return amount + " " + short
	}
	return ""
}

// asRead takes the end of a margin that matters: the least in hand, the least that lacks.
func (x *explainer) asRead(beyond quantity.Range, t quantity.Truth) quantity.Range {
	switch t {
	case quantity.Yes:
		return quantity.Exactly(max(beyond.Low, 0))
	case quantity.No:
		return quantity.Exactly(min(beyond.High, 0))
	}
	return beyond
}

// membership explains x in list.
func (x *explainer) membership(t *trace, n *rules.Within, f *finding) {
	of := x.walk(t.of[0])
	f.work.Of = append(f.work.Of, of.work)
	d := Decided{
		What: t.of[0].text(), Sense: "one of", Reading: x.value(t.of[0]),
		Limit: textAt(t.formula, n.List.Span()), Truth: f.work.Truth, Place: x.placeOf(t),
	}
	f.decided = []Decided{d}
	if f.work.Truth == quantity.No {
		f.failing = 1
	}
}

// read explains a read: what is not recorded is said.
func (x *explainer) read(t *trace, f *finding) {
	if at, ok := placeOfNode(t.value.node()); ok {
		f.work.Note = joinNotes(f.work.Note, x.noteOn(at.cell(x.m)))
	}
	if f.work.HasTruth {
		f.decided = []Decided{{
			What: t.text(), Sense: "exactly", Reading: f.work.Value, Limit: "yes", Truth: f.work.Truth, Place: x.placeOf(t),
		}}
		if f.work.Truth == quantity.No {
			f.failing = 1
		}
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
		return ""
	}
	if len(o.value.Readings) > 1 {
		return "least favourable of " + plural(len(o.value.Readings), "reading", "readings")
	}
	if o.particular.Measured && !o.value.Readings[0].Figure.Toleranced {
		return "tolerance not stated"
	}
	return ""
}

// placeOf is where in the sheet the first reading behind a node stands.
func (x *explainer) placeOf(t *trace) hcl.Range {
	if at, ok := placeOfNode(t.value.node()); ok {
		return x.car.origins[at.cell(x.m)].place()
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
func (t *trace) text() string { return textAt(t.formula, t.tree.Span()) }

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
