package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// An Answer is what a formula comes to.
type Answer struct {
	Is      rules.Type
	Truth   quantity.Truth // Truth
	Range   quantity.Range // Number in SI, Date in day numbers
	Unit    quantity.Unit  // Number: the unit that suits it
	Text    string         // Text and Choice
	Known   bool           // Text and Choice: false when it can be several; Number and Date: false when it may not exist
	List    []Answer       // List: its members
	Missing []string       // names of what is missing and can still change the answer
	Causes  []Cause        // of an open truth
}

// A Bench is where single formulas are tried: a program, a car on a day, or nothing but
// the names that are handed in.
type Bench struct {
	program *Program
	car     *Car
	on      quantity.Day
}

// NewBench makes a bench over a car of a program.
func NewBench(p *Program, c *Car, on quantity.Day) *Bench {
	return &Bench{program: p, car: c, on: on}
}

// EmptyBench makes a bench on which formulas can read only the names handed in, and days.
func EmptyBench(on quantity.Day) *Bench {
	g := newGround()
	p := &Program{ground: *g}
	return &Bench{program: p, car: &Car{
		full: g.cells, read: g.cells, refs: g.refs, lists: g.lists, texts: g.texts, spelt: g.spelt, origins: g.origins,
	}, on: on}
}

// Try works a checked formula out over the full ranges, without taking readings as read.
// Text is the formula as written, for the working. Given must be the names that the
// formula was checked with, in the same order. The working is nil unless it is wanted. A
// bench may be used by several goroutines at once.
func (b *Bench) Try(tree rules.Node, text string, given []Given, wantWorking bool) (Answer, *Working, error) {
	g := b.ground()
	c := &compiler{ground: g, names: map[*rules.Binding]meaning{}, root: b.program.root}
	for _, x := range given {
		c.given = append(c.given, g.lay(x))
	}
	top := &trace{}
	c.trace, c.formula = top, &rules.Formula{Source: text, Tree: tree}
	if err := c.compileAny(tree); err != nil {
		return Answer{}, nil, err
	}
	m := &machine{cells: g.cells, refs: g.refs, lists: g.lists, texts: g.texts, derived: b.car.derived, shapes: b.car.shapes, slots: make([]slot, c.most), limit: stepLimit}
	m.setDays(Request{Day: b.on}.days())
	car := *b.car
	car.origins, car.lists, car.spelt = g.origins, g.lists, g.spelt
	x := &explainer{m: m, car: &car, roots: wantWorking}
	answer := x.answer(top.of[0])
	if !wantWorking || top.of[0].list != nil {
		return answer, nil, nil
	}
	return answer, x.walk(top.of[0]).work, nil
}

// ground is the bench's cells, for a formula to add to.
func (b *Bench) ground() *ground {
	base := ground{
		cells: b.car.full, refs: b.car.refs, lists: b.car.lists, texts: b.car.texts, spelt: b.car.spelt, origins: b.car.origins,
		numbers: b.car.numbers, tables: b.program.ground.tables,
	}
	g := base.copy()
	return &g
}

// errTooLarge is an error for a formula past sizeLimit.
type errTooLarge struct{}

func (errTooLarge) Error() string {
	return "the formula is too large once its terms and lists are put in place; split it up"
}

// compileAny compiles a formula of any kind into the trace that is open.
func (c *compiler) compileAny(n rules.Node) (err error) {
	defer func() {
		if r := recover(); r != nil {
			if _, ok := r.(tooLarge); !ok {
				panic(r)
			}
			err = errTooLarge{}
		}
	}()
	switch n.Type().Kind {
	case rules.List:
		c.gathered(n)
	case rules.Part, rules.Row:
		return errPart{}
	default:
		c.expression(n)
	}
	return nil
}

// errPart is an error for a formula that yields a part.
type errPart struct{}

func (errPart) Error() string {
	return "the formula names a part; ask for one of its particulars, such as .standard"
}

// answer works a compiled formula out.
func (x *explainer) answer(t *trace) Answer {
	a := Answer{Is: t.tree.Type(), Known: true}
	m := x.m
	switch {
	case t.list != nil:
		x.listAnswer(t, &a)
	case t.value.asTruth != nil:
		a.Truth = m.decide(t.value.asTruth)
		if a.Truth == quantity.Open {
			x.whyOpen(t.value.asTruth, &a)
		}
	case t.value.asNumber != nil:
		a.Range = t.value.asNumber.number(m)
		a.Known = !m.unsure
		a.Unit = x.unitOf(t)
	default:
		set := t.value.asSymbol.symbol(m)
		a.Text = x.symbolText(a.Is, set)
		a.Known = !m.unsure && (a.Is.Kind == rules.Text && set >= firstText || a.Is.Kind == rules.Choice && set&(set-1) == 0)
	}
	return a
}

// whyOpen names what keeps a truth open.
func (x *explainer) whyOpen(n truthNode, a *Answer) {
	seen := map[string]bool{}
	for _, raw := range x.m.causesOf(n) {
		cause := x.car.cause(raw)
		a.Causes = append(a.Causes, cause)
		if cause.Kind == Missing && !seen[cause.Text] {
			seen[cause.Text] = true
			a.Missing = append(a.Missing, cause.Text)
		}
	}
}

// listAnswer works a list out; members that may not be in it make it unknown.
func (x *explainer) listAnswer(t *trace, a *Answer) {
	a.Known = t.list.complete(x.m)
	item := a.Is.Item
	for i := range t.list.length(x.m) {
		member := t.list.at(x.m, i)
		if member == quantity.No {
			continue
		}
		a.Known = a.Known && member == quantity.Yes
		v := x.m.slots[t.list.bound()]
		of := Answer{Is: *item, Known: !v.unsure}
		switch item.Kind {
		case rules.Truth:
			of.Truth = v.truth
		case rules.Number, rules.Date:
			of.Range, of.Unit = quantity.Range{Low: v.low, High: v.high}, x.unitOf(t)
		case rules.Text, rules.Choice:
			of.Text = x.symbolText(*item, v.set)
		default:
			of.Text = x.memberName(t.list)
		}
		a.List = append(a.List, of)
	}
}

// CheckGiven checks a formula against a scope and the names handed in.
func CheckGiven(source string, s *rules.Scope, given []Given) (rules.Node, []rules.Fault) {
	return rules.CheckText(source, Scope(s, given), rules.Type{})
}

// EmptyScope is the scope of formulas that read only the names handed in.
func EmptyScope() *rules.Scope {
	return rules.NewScope(&vehicle.Vocabulary{Root: &vehicle.PartType{}}).Quick(10_000)
}
