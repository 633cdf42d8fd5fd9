package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle"
)

// mentions are the particulars that a clause reads, by their names, and whether it asks for
// the places of parts or for a day: enough to tell for most clauses that a figure which was
// read more than once is not theirs.
type mentions struct {
	names  map[string]bool
	places bool
	days   bool // reads a day of the run
	dates  bool // reads a date or a day of any kind
}

func mentionsOf(c *rules.Clause) mentions {
	m := mentions{names: map[string]bool{}}
	formulas := []*rules.Formula{c.AsAt, c.Applies, c.Where, c.Demand}
	for i := range c.Across {
		formulas = append(formulas, c.Across[i].List)
	}
	for _, f := range formulas {
		if f == nil {
			continue
		}
		for n := range rules.Walk(f.Tree) {
			m.dates = m.dates || n.Type().Kind == rules.Date
			switch n := n.(type) {
			case *rules.Read:
				m.names[n.Particular.Name] = true
			case *rules.Moment:
				m.days = true
			case *rules.Call:
				m.places = m.places || n.Function.Code >= rules.FunctionDistance
			}
		}
	}
	return m
}

// anyOf reports whether the clause may read one of the particulars with several readings,
// itself or through what follows from it.
func (m *mentions) anyOf(c *Car) bool {
	for _, x := range c.several {
		of := c.origins[x.cell].particular
		if m.names[of.Name] || m.places && tellsWhere(of) {
			return true
		}
	}
	for _, d := range c.hanging {
		for _, x := range d.of.Gives {
			if m.names[x.Name] {
				return true
			}
		}
	}
	return false
}

// tellsWhere reports whether a particular bears on where a place or a tube is, or on where
// its surface is.
func tellsWhere(x *vehicle.Particular) bool {
	switch x.Name {
	case "bend_radius", "outside", "ordered_outside", "helmet_radius":
		return true
	}
	return pointOf(x) != nil
}
