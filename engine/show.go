package engine

import (
	"fmt"
	"math"
	"math/bits"
	"strings"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// value is what a node comes to, as a person writes it.
func (x *explainer) value(t *trace) string {
	is := t.tree.Type()
	saved := x.m.unsure
	defer func() { x.m.unsure = saved }()
	switch {
	case t.value.asTruth != nil:
		return t.value.asTruth.truth(x.m).String()
	case t.value.asNumber != nil:
		if at, ok := placeOfNode(t.value.asNumber); ok {
			if text := x.asWritten(at.cell(x.m)); text != "" {
				return text
			}
		}
		r := t.value.asNumber.number(x.m)
		if is.Kind == rules.Date {
			return DayText(r)
		}
		if c, ok := t.tree.(*rules.Constant); ok {
			return r.In(c.Unit, c.Decimals)
		}
		return x.figure(t, r, x.unitOf(t))
	case t.value.asSymbol != nil:
		return x.symbolText(is, t.value.asSymbol.symbol(x.m))
	}
	return ""
}

// asWritten is a reading as its author wrote it; "" for what is not written or has been
// narrowed to something else, such as one of several readings.
func (x *explainer) asWritten(i int32) string {
	c, o := &x.m.cells[i], &x.car.origins[i]
	if c.flags&written == 0 || c.flags&mayHold == 0 {
		return ""
	}
	switch {
	case o.value == nil || len(o.value.Readings) == 0:
		return o.text
	case len(o.value.Readings) == 1 && x.m.derived[i] == nil:
		return o.value.Readings[0].Figure.String()
	}
	for _, reading := range o.value.Readings {
		for _, r := range [2]quantity.Range{reading.Figure.Range, asRead(reading.Figure)} {
			if r.Low == c.low && r.High == c.high {
				return reading.Figure.String()
			}
		}
	}
	r := quantity.Range{Low: c.low, High: c.high}
	if x.m.derived[i] != nil {
		return toleranceText(r, o.unit)
	}
	return figureText(r, o.unit, figureDigits)
}

// Digits of figures that nobody wrote: enough to tell a worked-out figure from its limit,
// and no more of a margin than a person can use.
const (
	figureDigits = 6
	marginDigits = 4
)

// figureText writes a figure that was worked out, with so many significant digits at the
// most.
func figureText(r quantity.Range, u quantity.Unit, digits int) string {
	size := max(math.Abs(u.FromSI(r.Low)), math.Abs(u.FromSI(r.High)))
	decimals := digits
	if size > 0 && !math.IsInf(size, 0) {
		decimals = digits - 1 - int(math.Floor(math.Log10(size)))
	}
	decimals = min(max(decimals, 0), 15)
	low, high := trimmed(r.Low, u, decimals), trimmed(r.High, u, decimals)
	if math.IsInf(r.Low, 0) || math.IsInf(r.High, 0) {
		return r.In(u, -1)
	}
	// A range that comes of outward rounding alone is one figure to a person.
	text := low
	if low != high {
		text += " to " + high
	}
	if name := u.Name(); name != "" {
		text += " " + name
	}
	return text
}

// trimmed is a number in a unit without zeros that say nothing.
func trimmed(v float64, u quantity.Unit, decimals int) string {
	text := quantity.FormatNumber(v, u, decimals)
	if strings.Contains(text, ".") && !strings.Contains(text, "e") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	return text
}

// valueBeside is the value of one side of a comparison, in the unit of the other side
// where its own is written nowhere.
func (x *explainer) valueBeside(t, other *trace) string {
	n := t.value.asNumber
	if n == nil || t.isDate() {
		return x.value(t)
	}
	if c, ok := t.tree.(*rules.Constant); ok {
		if _, err := quantity.FindUnit(c.Unit.Name()); err == nil || c.Unit == (quantity.Unit{}) {
			return x.value(t)
		}
		return figureText(quantity.Exactly(c.Number), x.unitBeside(other, other), figureDigits) // a product of units that has no name
	}
	if at, ok := placeOfNode(n); ok && x.asWritten(at.cell(x.m)) != "" {
		return x.value(t)
	}
	return x.figure(t, quietly(x.m, n), x.unitBeside(t, other))
}

// unitBeside is the unit of one side of a comparison, else of the other, else the usual one.
func (x *explainer) unitBeside(t, other *trace) quantity.Unit {
	d := t.tree.Type().Dimension
	for _, side := range [2]*trace{t, other} {
		if u := x.writtenUnit(side, d, false); u != (quantity.Unit{}) {
			return u
		}
	}
	return quantity.UsualUnit(d)
}

// DayText writes a day or a range of days.
func DayText(r quantity.Range) string {
	from, ok := asDay(r.Low)
	to, also := asDay(r.High)
	switch {
	case !ok && !also:
		return "any day"
	case !ok:
		return "until " + to.String()
	case !also:
		return "from " + from.String()
	case from == to:
		return from.String()
	}
	return from.String() + " to " + to.String()
}

// symbolText writes a choice or a text.
func (x *explainer) symbolText(is rules.Type, set uint64) string {
	if is.Kind == rules.Text {
		if set < firstText {
			return "any text"
		}
		return x.car.spelt[set]
	}
	if n := bits.OnesCount64(set); n != 1 || is.Choices == nil {
		return Plural(n, "choice", "choices") + " possible"
	}
	i := bits.TrailingZeros64(set)
	if i >= len(is.Choices.Choices) {
		return ""
	}
	return is.Choices.Choices[i].Value
}

// memberName names the member of a list that its slot holds.
func (x *explainer) memberName(list source) string {
	if part := x.car.partAt(x.m.slots[under(list).bound()].base); part != nil {
		return part.Name()
	}
	return fmt.Sprintf("row %d", x.m.slots[list.bound()].index+1)
}

// memberValue is the value of the member, where the list is one of values.
func (x *explainer) memberValue(t *trace, list source) string {
	item := t.of[0].tree.Type().Item
	if item == nil {
		return ""
	}
	v := x.m.slots[list.bound()]
	switch item.Kind {
	case rules.Number:
		return figureText(quantity.Range{Low: v.low, High: v.high}, x.unitOf(t), figureDigits)
	case rules.Date:
		return DayText(quantity.Range{Low: v.low, High: v.high})
	case rules.Truth:
		return v.truth.String()
	case rules.Choice, rules.Text:
		return x.symbolText(*item, v.set)
	}
	return ""
}

// unitOf is the unit that a node's number is best printed in: the one it is written in,
// else that of what it is made from, else a common one of its dimension.
func (x *explainer) unitOf(t *trace) quantity.Unit {
	is := t.tree.Type()
	if is.Kind == rules.List && is.Item != nil {
		is = *is.Item
	}
	if u := x.writtenUnit(t, is.Dimension, false); u != (quantity.Unit{}) {
		return u
	}
	return quantity.UsualUnit(is.Dimension)
}

// writtenUnit is the unit of the first constant or reading of a dimension below a node.
// Inside a list no member stands in its slot, so that a read there has the unit in which
// its particular is usually printed.
func (x *explainer) writtenUnit(t *trace, d quantity.Dimension, inList bool) quantity.Unit {
	if t.tree.Type().Dimension == d {
		switch n := t.tree.(type) {
		case *rules.Constant:
			return n.Unit
		case *rules.Read:
			if inList {
				return n.Particular.Unit
			}
		}
		if at, ok := placeOfNode(t.value.node()); ok && !inList {
			if u := x.car.origins[at.cell(x.m)].unit; u != (quantity.Unit{}) && u.Dimension() == d {
				return u
			}
		}
	}
	_, gathers := t.tree.(*rules.Gather)
	for _, of := range t.of {
		if u := x.writtenUnit(of, d, inList || gathers || of.list != nil); u != (quantity.Unit{}) {
			return u
		}
	}
	return quantity.Unit{}
}

// differenceUnit is the unit of a difference of two figures: of two temperatures in
// degrees it is a number of kelvins.
func differenceUnit(u quantity.Unit) quantity.Unit {
	if u.Affine() {
		return quantity.UsualUnit(quantity.Temperature)
	}
	return u
}

// Plural writes a count of things.
func Plural(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}
