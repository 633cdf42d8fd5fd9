package engine

import (
	"fmt"
	"math"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// A Given is a value handed in from outside a formula under a name of its own.
type Given struct {
	Name string
	Is   rules.Type
	cell cell
	unit quantity.Unit
	text string  // of a text; what is shown of a figure
	list []Given // of a list
}

// GivenTruth is a truth; Open is one that is not known and counts as missing.
func GivenTruth(name string, t quantity.Truth) Given {
	g := Given{Name: name, Is: rules.Type{Kind: rules.Truth}, cell: exactCell(0)}
	g.cell.kind = holdsTruth
	switch t {
	case quantity.Yes:
		g.cell.set = bitYes
	case quantity.No:
		g.cell.set = bitNo
	default:
		g.cell.set, g.cell.flags = bitNo|bitYes, mayHold
	}
	return g
}

// GivenNumber is a range in SI of a dimension. Whole marks a count, which compares
// exactly. Unit is the one to print it in and may be the zero Unit.
func GivenNumber(name string, r quantity.Range, d quantity.Dimension, whole bool, unit quantity.Unit) Given {
	g := Given{Name: name, Is: rules.Type{Kind: rules.Number, Dimension: d, Whole: whole}, cell: exactCell(0), unit: unit}
	g.cell.low, g.cell.high = r.Low, r.High
	if whole {
		g.cell.kind = holdsCount
	}
	return g
}

// GivenDate is a day, or a day known to its month or year.
func GivenDate(name string, d quantity.DayRange) Given {
	return Given{Name: name, Is: rules.Type{Kind: rules.Date}, cell: dateCell(d)}
}

// GivenText is a text.
func GivenText(name, text string) Given {
	g := Given{Name: name, Is: rules.Type{Kind: rules.Text}, cell: exactCell(0), text: text}
	g.cell.kind = holdsText
	return g
}

// GivenMissing is a value of which only the kind is known: "truth", "text", "date",
// "count", or a dimension by name ("length", "number").
func GivenMissing(name, kind string) (Given, error) {
	switch kind {
	case "truth":
		return GivenTruth(name, quantity.Open), nil
	case "text":
		g := GivenText(name, "")
		g.cell.flags = mayHold
		return g, nil
	case "date":
		g := GivenDate(name, quantity.DayRange{})
		g.cell.low, g.cell.high = math.Inf(-1), math.Inf(1)
		g.cell.label, g.cell.flags = math.NaN(), mayHold
		return g, nil
	}
	d, ok := quantity.DimensionNamed(kind)
	if !ok && kind != "count" {
		return Given{}, fmt.Errorf("%q is not a kind: write truth, text, date, count, number, length, mass or another dimension", kind)
	}
	g := GivenNumber(name, quantity.Everything, d, kind == "count", quantity.UsualUnit(d))
	g.cell.flags = mayHold
	return g, nil
}

// GivenList is a list of values of one kind. An empty list is one of numbers. Values of
// different kinds or dimensions are an error.
func GivenList(name string, of []Given) (Given, error) {
	item := rules.Type{Kind: rules.Number}
	for i, x := range of {
		switch {
		case i == 0:
			item = x.Is
		case x.Is.Kind != item.Kind || x.Is.Dimension != item.Dimension || x.Is.Item != nil:
			return Given{}, fmt.Errorf("the list %s mixes kinds: its first value and its value %d differ", name, i+1)
		}
		item.Whole = item.Whole && x.Is.Whole
	}
	return Given{Name: name, Is: rules.Type{Kind: rules.List, Item: &item}, list: of}, nil
}

// Scope returns a formula's scope with the names handed in.
func Scope(s *rules.Scope, given []Given) *rules.Scope {
	names := make([]rules.GivenName, len(given))
	for i, g := range given {
		names[i] = rules.GivenName{Name: g.Name, Is: g.Is}
	}
	return s.WithGiven(names...)
}

// lay puts a given value on the ground and returns the reference that leads to it.
func (g *ground) lay(x Given) int32 {
	if x.Is.Kind != rules.List {
		c := x.cell
		if c.kind == holdsText && c.flags&written != 0 {
			c.set = g.text(x.text)
		}
		return g.ref(g.add(c, origin{name: x.Name, unit: x.unit, text: x.text}))
	}
	l := list{complete: true, name: x.Name}
	for _, of := range x.list {
		l.elements = append(l.elements, g.lay(of))
	}
	g.lists = append(g.lists, l)
	return g.ref(int32(len(g.lists) - 1))
}
