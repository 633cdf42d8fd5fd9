package engine

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A fact is what a world says of one particular: nothing, none, or something between low
// and high. Dates are day numbers, choices positions. Of truths, choices and texts that
// are not known only Nothing is said.
type fact struct {
	state     vehicle.State
	low, high float64
	label     float64 // date: last day of the precision it was written with
	text      string
	truth     bool
}

// exact reports whether nothing about the fact is left open.
func (f *fact) exact() bool {
	return f.state == vehicle.None || f.state == vehicle.Stated && f.low == f.high
}

// A block is one part of a world.
type block struct {
	of    *vehicle.PartType
	label string
	facts []fact   // by Particular.Index
	lists []blocks // by PartType.Index
}

// blocks is what a world says of all parts of one type.
type blocks struct {
	of      []*block
	says    listState
	outside bool // the formula does not ask about it
}

// A listState says how much is known of a list.
type listState uint8

const (
	complete   listState = iota // those there are, and no others
	unfinished                  // there may be others
	absent                      // stated not to be fitted
	unsaid                      // nobody has said anything
)

// A world is a build sheet and the names handed in, exact or not.
type world struct {
	root  *block
	given [][]fact // by position in judgeGiven; several for a list
	on    quantity.Day
}

func newBlock(t *vehicle.PartType) *block {
	return &block{of: t, facts: make([]fact, len(t.Particulars)), lists: make([]blocks, len(t.Parts))}
}

func (b *block) clone() *block {
	out := &block{of: b.of, label: b.label, facts: slices.Clone(b.facts), lists: slices.Clone(b.lists)}
	for i := range out.lists {
		out.lists[i].of = slices.Clone(out.lists[i].of)
		for k, of := range out.lists[i].of {
			out.lists[i].of[k] = of.clone()
		}
	}
	return out
}

func (w *world) clone() *world {
	out := &world{root: w.root.clone(), on: w.on}
	for _, g := range w.given {
		out.given = append(out.given, slices.Clone(g))
	}
	return out
}

// eachFact visits every fact with the particular it is about, nil for names handed in.
func (w *world) eachFact(visit func(name string, x *vehicle.Particular, f *fact)) {
	for i, words := range judgeGivenWords {
		for k := range w.given[i] {
			name := words[0]
			if len(w.given[i]) > 1 {
				name = fmt.Sprintf("%s %d", name, k+1)
			}
			visit(name, nil, &w.given[i][k])
		}
	}
	w.root.eachFact("", visit)
}

func (b *block) eachFact(path string, visit func(string, *vehicle.Particular, *fact)) {
	for i, x := range b.of.Particulars {
		visit(path+x.Name, x, &b.facts[i])
	}
	for i := range b.lists {
		for k, of := range b.lists[i].of {
			of.eachFact(path+of.name(k)+".", visit)
		}
	}
}

// String tells the world as far as it differs from the one that asks for nothing.
func (w *world) String() string {
	var out strings.Builder
	w.eachFact(func(name string, x *vehicle.Particular, f *fact) {
		if f.state == vehicle.Stated && *f != *plainFact(x) {
			fmt.Fprintf(&out, "  %s = %s\n", name, f.describe(x))
		} else if f.state != vehicle.Stated {
			fmt.Fprintf(&out, "  %s = %s\n", name, map[vehicle.State]string{vehicle.Nothing: "missing", vehicle.None: "none"}[f.state])
		}
	})
	w.root.describe("", &out)
	return out.String()
}

func (b *block) describe(path string, out *strings.Builder) {
	for i, t := range b.of.Parts {
		l := &b.lists[i]
		if l.outside {
			continue
		}
		fmt.Fprintf(out, "  %s%s: %d, %s\n", path, t.Name, len(l.of), [...]string{"complete", "unfinished", "not fitted", "not said"}[l.says])
		for k, of := range l.of {
			of.describe(fmt.Sprintf("%s%s %d.", path, t.Name, k+1), out)
		}
	}
}

func (f *fact) describe(x *vehicle.Particular) string {
	switch {
	case f.text != "":
		return fmt.Sprintf("%q", f.text)
	case f.low == 0 && f.high == 0 && f.label == 0:
		return fmt.Sprintf("%v (or 0)", f.truth)
	case f.label != 0:
		return fmt.Sprintf("%v to %v, label to %v", quantity.Day(f.low), quantity.Day(f.high), quantity.Day(f.label))
	case f.low == f.high:
		return fmt.Sprintf("%v (%x)", f.low, f.low)
	}
	return fmt.Sprintf("%v to %v (%x to %x)", f.low, f.high, f.low, f.high)
}

// plainFact is what a particular is where the formula does not ask about it.
func plainFact(x *vehicle.Particular) *fact {
	f := &fact{state: vehicle.Stated}
	if x == nil {
		f.text = "plain" // numbers, days and truths have none to show
		return f
	}
	switch x.Kind {
	case vehicle.KindNumber, vehicle.KindCount:
		f.low, f.high = x.Plausible.High, x.Plausible.High
	case vehicle.KindDate:
		f.low, f.high, f.label = firstDay, firstDay, firstDay
	case vehicle.KindText:
		f.text = "plain"
	}
	return f
}

// sheet writes a world as a build sheet.
func (w *world) sheet() *vehicle.Sheet {
	return &vehicle.Sheet{Name: "judge", Root: w.root.part(nil)}
}

func (b *block) part(within *vehicle.Part) *vehicle.Part {
	p := &vehicle.Part{Type: b.of, Label: b.label, Within: within}
	for i, x := range b.of.Particulars {
		p.Values = append(p.Values, b.facts[i].value(x))
	}
	for i, t := range b.of.Parts {
		l := &b.lists[i]
		out := vehicle.PartList{Type: t, Complete: l.says == complete || l.says == absent, NotFitted: l.says == absent, Fitted: quantity.Open}
		for _, of := range l.of {
			out.Parts = append(out.Parts, of.part(p))
		}
		switch {
		case len(l.of) > 0:
			out.Fitted = quantity.Yes
		case l.says == absent:
			out.Fitted = quantity.No
		}
		p.Lists = append(p.Lists, out)
	}
	return p
}

func (f *fact) value(x *vehicle.Particular) vehicle.Value {
	v := vehicle.Value{State: f.state}
	if f.state != vehicle.Stated {
		return v
	}
	switch x.Kind {
	case vehicle.KindNumber, vehicle.KindCount:
		r := quantity.Range{Low: f.low, High: f.high}
		v.Readings = []vehicle.Reading{{Figure: quantity.Figure{Range: r, Reading: r.Middle(), Unit: x.Unit, Toleranced: f.low < f.high}}}
	case vehicle.KindDate:
		v.Days = quantity.DayRange{From: quantity.Day(f.low), To: quantity.Day(f.high), Precision: quantity.ToDay}
	case vehicle.KindText:
		v.Text = f.text
	case vehicle.KindChoice:
		v.Choice = int(f.low)
	case vehicle.KindTruth:
		v.Truth = f.truth
	}
	return v
}

// cell puts a fact about a name handed in into its cell; what is missing leaves it as it is.
func (f *fact) cell(c cell, texts map[string]uint64) cell {
	if f.state != vehicle.Stated {
		return c
	}
	c.flags = mayHold | written
	switch c.kind {
	case holdsTruth:
		c.set = truthBit(f.truth)
	case holdsText:
		c.set = texts[vehicle.FoldText(f.text)]
	default:
		c.low, c.high = f.low, f.high
		c.label = math.NaN()
		if c.kind == holdsDate {
			c.label = f.label
		}
	}
	return c
}
