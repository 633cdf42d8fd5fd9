package engine

import (
	"fmt"
	"math/bits"

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
			return dayText(r)
		}
		if c, ok := t.tree.(*rules.Constant); ok {
			return r.In(c.Unit, c.Decimals)
		}
		return r.In(x.unitOf(t), -1)
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
	if o.value != nil && len(o.value.Readings) > 1 {
		return quantity.Range{Low: c.low, High: c.high}.In(o.unit, o.decimals)
	}
	return o.text
}

// dayText writes a day or a range of days.
func dayText(r quantity.Range) string {
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
		return x.m.texts[set]
	}
	if n := bits.OnesCount64(set); n != 1 || is.Choices == nil {
		return plural(n, "choice", "choices") + " possible"
	}
	i := bits.TrailingZeros64(set)
	if i >= len(is.Choices.Choices) {
		return ""
	}
	return is.Choices.Choices[i].Value
}

// memberName names the member of a list that its slot holds.
func (x *explainer) memberName(list source) string {
	v := x.m.slots[list.bound()]
	if part := x.car.partAt(v.base); part != nil {
		return part.Name()
	}
	return fmt.Sprintf("row %d", v.index+1)
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
		return quantity.Range{Low: v.low, High: v.high}.In(x.unitOf(t), -1)
	case rules.Date:
		return dayText(quantity.Range{Low: v.low, High: v.high})
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
	if u := x.writtenUnit(t, is.Dimension); u != (quantity.Unit{}) {
		return u
	}
	return quantity.UsualUnit(is.Dimension)
}

// writtenUnit is the unit of the first constant or reading of a dimension below a node.
func (x *explainer) writtenUnit(t *trace, d quantity.Dimension) quantity.Unit {
	if c, ok := t.tree.(*rules.Constant); ok && c.Type().Dimension == d {
		return c.Unit
	}
	if n := t.value.asNumber; n != nil {
		if at, ok := placeOfNode(n); ok {
			if u := x.car.origins[at.cell(x.m)].unit; u != (quantity.Unit{}) && u.Dimension() == d {
				return u
			}
		}
	}
	for _, of := range t.of {
		if u := x.writtenUnit(of, d); u != (quantity.Unit{}) {
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

// plural writes a count of things.
func plural(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}
