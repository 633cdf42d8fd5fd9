package engine

import (
	"math"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A part's references lie one after the other: one for each of its particulars (the index
// of a cell), one for each type of part it has (the base of the one part, or the index of
// the list), and one for each type of part it has (the cell that says whether it is
// fitted). A row's references are the cells of its columns.

func particularOffset(x *vehicle.Particular) int32 { return int32(x.Index) }

func partOffset(t *vehicle.PartType) int32 {
	return int32(len(t.Within.Particulars) + t.Index)
}

func fittedOffset(t *vehicle.PartType) int32 {
	return int32(len(t.Within.Particulars) + len(t.Within.Parts) + t.Index)
}

func partSize(t *vehicle.PartType) int32 {
	return int32(len(t.Particulars) + 2*len(t.Parts))
}

// The ground is what every car of a program stands on: the days of the run, the tables,
// and the texts that formulas mention. A car's own cells come after it.
type ground struct {
	cells   []cell
	refs    []int32
	lists   []list
	texts   []string               // folded, as they are compared
	spelt   []string               // as they were first written
	numbers map[string]uint64      // number of each text
	tables  map[*rules.Table]int32 // ref that holds the index of a table's list
	origins []origin
}

// An origin is where a cell comes from, for whoever explains it.
type origin struct {
	part       *vehicle.Part // nil for tables, days and given names
	particular *vehicle.Particular
	value      *vehicle.Value
	list       *vehicle.PartType // the type that a fitted cell speaks of
	name       string            // days and given names
	unit       quantity.Unit
	decimals   int
	text       string // as the author wrote it, when he did
}

// moments is how many days come from the run; their cells and references come first.
const moments = 4

func newGround() *ground {
	g := &ground{numbers: map[string]uint64{}, tables: map[*rules.Table]int32{}}
	g.texts, g.spelt = make([]string, firstText), make([]string, firstText)
	for _, name := range [moments]string{"on", "event.inspection_day", "event.first_day", "event.last_day"} {
		c := exactCell(0)
		c.kind = holdsDate
		g.ref(g.add(c, origin{name: name}))
	}
	return g
}

// add appends a cell.
func (g *ground) add(c cell, o origin) int32 {
	g.cells = append(g.cells, c)
	g.origins = append(g.origins, o)
	return int32(len(g.cells) - 1)
}

// ref appends a reference.
func (g *ground) ref(to int32) int32 {
	g.refs = append(g.refs, to)
	return int32(len(g.refs) - 1)
}

// text is the number of a text however it is written. The first spelling is the one that
// is shown.
func (g *ground) text(written string) uint64 {
	folded := vehicle.FoldText(written)
	if n, ok := g.numbers[folded]; ok {
		return n
	}
	n := uint64(len(g.texts))
	g.texts, g.spelt = append(g.texts, folded), append(g.spelt, written)
	g.numbers[folded] = n
	return n
}

// table lays a table out and returns the reference that leads to its list.
func (g *ground) table(t *rules.Table) int32 {
	if ref, ok := g.tables[t]; ok {
		return ref
	}
	l := list{complete: true, name: "table." + t.Name}
	for _, row := range t.Rows {
		base := int32(len(g.refs))
		for i := range row {
			c, o := g.tableCell(&t.Columns[i], &row[i])
			g.ref(g.add(c, o))
		}
		l.elements = append(l.elements, base)
	}
	g.lists = append(g.lists, l)
	ref := g.ref(int32(len(g.lists) - 1))
	g.tables[t] = ref
	return ref
}

func (g *ground) tableCell(column *rules.Column, x *rules.TableCell) (cell, origin) {
	c := exactCell(0)
	o := origin{name: column.Name}
	if x.Empty {
		c.flags = mayBeNone | written
		return c, o
	}
	switch column.Is.Kind {
	case rules.Number:
		c.low, c.high = x.Figure.Range.Low, x.Figure.Range.High
		if column.Is.Whole {
			c.kind = holdsCount
		}
		o.unit, o.decimals, o.text = x.Figure.Unit, x.Figure.Decimals, x.Figure.String()
	case rules.Date:
		c = dateCell(x.Days)
	case rules.Truth:
		c.kind, c.set = holdsTruth, truthBit(x.Truth)
	case rules.Choice:
		c.kind, c.set = holdsChoice, 1<<uint(x.Choice)
	case rules.Text:
		c.kind, c.set = holdsText, g.text(x.Text)
		o.text = x.Text
	}
	return c, o
}

func truthBit(t bool) uint64 {
	if t {
		return bitYes
	}
	return bitNo
}

// dateCell is a date as written: its label is the last day of its precision.
func dateCell(d quantity.DayRange) cell {
	return cell{
		low: float64(d.From), high: float64(d.To), label: float64(d.To),
		flags: mayHold | written, kind: holdsDate,
	}
}

// unknownCell is a particular of which nothing is known: its plausible range.
func unknownCell(x *vehicle.Particular) cell {
	c := cell{label: math.NaN(), flags: mayHold}
	if x.MayBeAbsent {
		c.flags |= mayBeNone
	}
	switch x.Kind {
	case vehicle.KindNumber, vehicle.KindCount:
		c.low, c.high = x.Plausible.Low, x.Plausible.High
		if x.Kind == vehicle.KindCount {
			c.kind = holdsCount
		}
	case vehicle.KindDate:
		c.kind = holdsDate
		c.low, c.high = float64(x.PlausibleDays.From), float64(x.PlausibleDays.To)
	case vehicle.KindTruth:
		c.kind, c.set = holdsTruth, bitNo|bitYes
	case vehicle.KindChoice:
		c.kind, c.set = holdsChoice, allChoices(x.Choices)
	default:
		c.kind = holdsText
	}
	return c
}

// allChoices is the set of every choice of a list; an empty or missing list has one bit
// that no formula names, so that a comparison with it is open and not decided.
func allChoices(l *vehicle.ChoiceList) uint64 {
	if l == nil || len(l.Choices) == 0 {
		return math.MaxUint64
	}
	return math.MaxUint64 >> (64 - len(l.Choices))
}
