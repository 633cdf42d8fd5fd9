package engine

import (
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
)

// named turns raw causes into causes that a person can act on, each once.
func (k *checker) named(raw []rawCause) []Cause {
	type once struct {
		kind CauseKind
		text string
	}
	var causes []Cause
	seen := map[once]bool{}
	for _, r := range raw {
		c := k.car.cause(r)
		if key := (once{c.Kind, c.Text}); !seen[key] {
			seen[key] = true
			causes = append(causes, c)
		}
	}
	return causes
}

// cause names one cause.
func (c *Car) cause(r rawCause) Cause {
	out := Cause{Kind: r.kind}
	switch {
	case r.cell >= 0:
		o := &c.origins[r.cell]
		out.Part, out.Particular, out.List = o.part, o.particular, o.list
		if point := pointOf(o.particular); point != nil {
			out.Particular = point
		}
		out.Text, out.Place = c.nameOfCell(r.cell), o.place()
		out.Follows = r.kind == StatedNone && (o.value == nil || o.value.State != vehicle.None)
		if r.kind == NotFitted && o.particular != nil {
			out.Text = words(o.particular.Part.Name)
		}
		if r.kind == Undefined {
			out.Text += ": " + r.label
		}
	case r.list >= 0:
		if l := &c.lists[r.list]; l.says != nil {
			out.Place = l.says.Range
		}
		out.Part, out.List = c.lists[r.list].within, c.lists[r.list].of
		out.Known, out.Label = len(c.lists[r.list].elements), r.label
		out.Text = c.nameOfList(r.list)
		if r.label != "" {
			out.Text = words(c.lists[r.list].of.Name) + " " + r.label
		}
	case r.kind == Budget:
		out.Text = noteUnsettled
	case r.label != "":
		out.Text = r.label
	default:
		out.Text = "a division by what may be zero, or a root of what may be negative"
	}
	return out
}

// place is where the sheet states a cell, else where its part stands.
func (o *origin) place() hcl.Range {
	switch {
	case o.value != nil && o.value.State != vehicle.Nothing:
		return o.value.Range
	}
	for part := o.part; part != nil; part = part.Within {
		if part.Range != (hcl.Range{}) {
			return part.Range
		}
	}
	return hcl.Range{}
}

// words turns a name of the vocabulary into words.
func words(name string) string { return strings.ReplaceAll(name, "_", " ") }

// nameOfCell names a particular and its part: "wall of tube stock A".
func (c *Car) nameOfCell(i int32) string {
	o := &c.origins[i]
	switch {
	case o.list != nil:
		return "whether " + words(o.list.Name) + " is fitted"
	case o.particular == nil:
		return o.name
	case pointOf(o.particular) != nil:
		return nameOfPoint(o)
	case o.part == nil:
		return words(o.particular.Name) + " of " + words(o.particular.Part.Name)
	case o.part.Within == nil:
		return words(o.particular.Name)
	}
	return words(o.particular.Name) + " of " + o.part.Name()
}

// nameOfPoint names the place that a coordinate belongs to: whoever measures one of its
// three has the others at hand.
func nameOfPoint(o *origin) string {
	name := words(pointOf(o.particular).Name) + " of "
	if name == "at of " {
		name = placeOf
	}
	if o.part == nil {
		return name + words(o.particular.Part.Name)
	}
	return name + o.part.Name()
}

// placeOf begins the name of where a joint is.
const placeOf = "place of "

// nameOfList names a list and the part that has it: "straps of harness driver".
func (c *Car) nameOfList(i int32) string {
	l := &c.lists[i]
	switch {
	case l.of == nil:
		return l.name
	case l.within != nil && l.within.Within != nil:
		return words(l.of.Plural) + " of " + l.within.Name()
	}
	return words(l.of.Plural)
}
