package engine

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A condition is the formula of a dispensation, compiled for one car.
type condition struct {
	holds      truthNode // nil where it cannot be read in this rulebook
	ground     *ground
	read       []cell // the ground's cells with readings as read
	car        *Car
	slots      int32
	boundaries []quantity.Day // on which it may change
}

// Papers checks the conditions of a sheet's dispensations against the vocabulary, the terms
// and the tables of the program's rulebook. Every fault is told at its place in the sheet.
func (p *Program) Papers(sheet *vehicle.Sheet) hcl.Diagnostics {
	var faults hcl.Diagnostics
	if sheet.Logbook == nil {
		return nil
	}
	scope := p.scopeOf(sheet.Logbook)
	for _, d := range sheet.Logbook.Dispensations {
		if d.Condition == nil {
			continue
		}
		tree, found := rules.Check(d.Condition.Text, d.Condition.Position, scope, rules.Type{Kind: rules.Truth})
		faults = append(faults, found...)
		if tree == nil {
			continue
		}
		c := &compiler{ground: &ground{}, root: p.root, names: map[*rules.Binding]meaning{}}
		*c.ground = p.ground.copy()
		if c.conditionOf(d, tree) == nil {
			faults = append(faults, vehicle.Fault("formula-too-large", d.Condition.Range, "Formula too large", fmt.Sprintf(
				"The condition of the dispensation %s has more than %d parts once its terms and lists are put in place. Make it shorter.", vehicle.Quote(d.Label), sizeLimit)))
		}
	}
	return faults
}

// scopeOf is what conditions can name; nil where no dispensation has one.
func (p *Program) scopeOf(papers *vehicle.Logbook) *rules.Scope {
	if !slices.ContainsFunc(papers.Dispensations, func(d *vehicle.Dispensation) bool { return d.Condition != nil }) {
		return nil
	}
	return rules.NewScope(p.Book.Vocabulary, p.Book.Tables...).WithTerms(p.Book.Terms...)
}

// conditionOf compiles a checked condition; nil where it is too large.
func (c *compiler) conditionOf(d *vehicle.Dispensation, tree rules.Node) (made truthNode) {
	defer func() {
		if r := recover(); r != nil {
			if _, ok := r.(tooLarge); !ok {
				panic(r)
			}
			made = nil
		}
	}()
	made, _ = c.whole(&rules.Formula{Source: d.Condition.Text, Tree: tree, Position: d.Condition.Position, Range: d.Condition.Range})
	return made
}

// conditions compiles the conditions of a car's dispensations.
func (p *Program) conditions(car *Car) map[*vehicle.Dispensation]*condition {
	papers := car.log.papers
	scope := p.scopeOf(papers)
	if scope == nil {
		return nil
	}
	made := map[*vehicle.Dispensation]*condition{}
	for _, d := range papers.Dispensations {
		if d.Condition == nil {
			continue
		}
		one := &condition{}
		made[d] = one
		tree, _ := rules.Check(d.Condition.Text, d.Condition.Position, scope, rules.Type{Kind: rules.Truth})
		if tree == nil {
			continue
		}
		one.ground = (&Bench{program: p, car: car}).ground()
		c := &compiler{ground: one.ground, root: p.root, names: map[*rules.Binding]meaning{}}
		one.holds, one.slots = c.conditionOf(d, tree), c.most
		one.read = slices.Clone(one.ground.cells)
		copy(one.read, car.read)
		shown := *car
		shown.origins, shown.lists, shown.spelt = one.ground.origins, one.ground.lists, one.ground.spelt
		one.car = &shown
		one.findBoundaries()
	}
	return made
}

// machine is a machine to work the condition on, over the run's days.
func (c *condition) machine(asRead bool, r Request) *machine {
	cells := c.ground.cells
	if asRead {
		cells = c.read
	}
	g := c.ground
	m := &machine{cells: slices.Clone(cells), refs: g.refs, lists: g.lists, texts: g.texts, derived: c.car.derived, shapes: c.car.shapes, slots: make([]slot, c.slots), limit: stepLimit}
	m.setDays(r.days())
	return m
}

// findBoundaries finds the days on which the condition may change, over all days that a date
// can be written for and a century beyond.
func (c *condition) findBoundaries() {
	if c.holds == nil {
		return
	}
	from, _ := quantity.CivilDay(1900, 1, 1)
	until, _ := quantity.CivilDay(2300, 12, 31)
	for _, asRead := range []bool{false, true} {
		d := newDayCuts(from, until)
		m := c.machine(asRead, Request{Day: from})
		d.over(m, from, until)
		s := newSurvey(true)
		s.days = d
		c.holds.survey(m, s)
		for day := range d.at {
			c.boundaries = append(c.boundaries, day)
		}
	}
	slices.Sort(c.boundaries)
	c.boundaries = slices.Compact(c.boundaries)
}

// unmet says why the condition of a dispensation does not hold, "" where it does. It is
// judged as its clause is.
func (k *checker) unmet(d *vehicle.Dispensation, c *compiledClause) string {
	cond, text := k.car.conditions[d], oneLine(d.Condition.Text)
	if cond == nil || cond.holds == nil {
		return "its condition cannot be read with this rulebook: " + text
	}
	m := cond.machine(c.Judged == rules.AsRead, k.request)
	switch m.decide(cond.holds) {
	case quantity.Yes:
		return ""
	case quantity.No:
		return "its condition is not met: " + text
	}
	var missing []string
	for _, raw := range m.causesOf(cond.holds) {
		cause := cond.car.cause(raw)
		if cause.Text != "" && !slices.Contains(missing, cause.Text) {
			missing = append(missing, cause.Text)
		}
	}
	because := ""
	if len(missing) > 0 {
		because = " (" + strings.Join(missing, ", ") + ")"
	}
	return "whether its condition is met is open" + because + ": " + text
}
