package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// A compiler turns checked trees into nodes. Beside each node it keeps a trace, by which
// the same nodes are walked again when an answer is to be explained.
type compiler struct {
	ground *ground
	root   int32   // base of the car's root part
	given  []int32 // references of names handed in from outside
	names  map[*rules.Binding]meaning
	slots  int32 // slots in use
	most   int32 // slots ever in use
	size   int   // nodes made for the formula

	formula   *rules.Formula
	trace     *trace // the one that new traces go under
	allowance float64
	allowed   quantity.Dimension
	negated   bool // under an odd number of negations, where an allowance works the other way
}

// sizeLimit bounds the nodes of one formula with all its terms and lists in place.
const sizeLimit = 50_000

// tooLarge is what the compiler panics with, and recovers from, past sizeLimit.
type tooLarge struct{}

// A meaning is what a variable stands for: a slot, or for parts and lists another tree.
type meaning struct {
	slot  int32
	from  producer
	alias rules.Node
}

// A trace is one node of a formula with what it was compiled to.
type trace struct {
	tree    rules.Node
	formula *rules.Formula
	value   expression
	list    source
	of      []*trace
	named   string // what it is called where its own text would mislead
}

// enter opens a trace for a tree; the returned function closes it.
func (c *compiler) enter(n rules.Node) (*trace, func()) {
	c.size++
	if c.size > sizeLimit {
		panic(tooLarge{})
	}
	t := &trace{tree: n, formula: c.formula}
	parent := c.trace
	if parent != nil {
		parent.of = append(parent.of, t)
	}
	c.trace = t
	return t, func() { c.trace = parent }
}

// slot takes the next slot; slots go by nesting, so that lists beside each other share
// theirs and the same formula written twice has the same signature.
func (c *compiler) slot() int32 {
	c.slots++
	c.most = max(c.most, c.slots)
	return c.slots - 1
}

// apart compiles a tree whose slots stay taken until the caller gives them back: one that
// is worked out, or surveyed, while what comes after it stands in slots of its own.
func (c *compiler) apart(n rules.Node) expression {
	most := c.most
	c.most = c.slots
	made := c.expression(n)
	c.slots, c.most = c.most, max(most, c.most)
	return made
}

// expression compiles a tree of any kind of value.
func (c *compiler) expression(n rules.Node) expression {
	switch n.Type().Kind {
	case rules.Truth:
		return expression{asTruth: c.truth(n)}
	case rules.Number, rules.Date:
		return expression{asNumber: c.number(n), date: n.Type().Kind == rules.Date}
	default:
		return expression{asSymbol: c.symbol(n), text: n.Type().Kind == rules.Text}
	}
}

// place is where a particular of a part, or a column of a row, is found.
func (c *compiler) place(of rules.Node, offset int32) place {
	switch p := c.part(of).(type) {
	case *slotPart:
		return place{kind: inSlot, slot: p.slot, offset: offset}
	case *fixedPart:
		return place{kind: fixed, ref: p.at + offset}
	case *childPart:
		if parent, ok := p.of.(*fixedPart); ok {
			return place{kind: inPart, ref: parent.at + p.offset, offset: offset}
		}
		return place{kind: ofPart, part: p, offset: offset}
	default:
		return place{kind: ofPart, part: p, offset: offset}
	}
}

// part compiles a tree that yields one part or row and needs no search for it.
func (c *compiler) part(n rules.Node) partNode {
	switch n := n.(type) {
	case nil:
		return &fixedPart{c.root}
	case *rules.Root:
		return &childPart{c.part(n.Of), partOffset(n.IsPart)}
	case *rules.Pick:
		return &pickedPart{c.part(n.Of), partOffset(n.IsPart), uint32(c.ground.text(n.Label))}
	case *rules.Variable:
		x := c.names[n.Binding]
		if x.alias != nil {
			return c.part(x.alias)
		}
		return &slotPart{x.slot}
	case *rules.Define:
		c.names[n.Binding] = meaning{alias: n.Value}
		return c.part(n.Rest)
	}
	panic("engine: no part can be made of this node")
}

// searched reports whether a part has to be searched for: the first of a list, or one of
// two by a condition. Reads of it are compiled as reads of each that it may be.
func (c *compiler) searched(n rules.Node) (rules.Node, bool) {
	for {
		switch x := n.(type) {
		case *rules.Conditional, *rules.Gather:
			return n, true
		case *rules.Variable:
			alias := c.names[x.Binding].alias
			if alias == nil {
				return nil, false
			}
			n = alias
		default:
			return nil, false
		}
	}
}

// spread rewrites a read of a part that has to be searched for.
func spread(of rules.Node, is rules.Type, read func(of rules.Node) rules.Node) rules.Node {
	base := func(at rules.Span) rules.Base { return rules.Base{At: at, Is: is} }
	switch x := of.(type) {
	case *rules.Conditional:
		return &rules.Conditional{Base: base(x.Span()), If: x.If, Then: read(x.Then), Else: read(x.Else)}
	case *rules.Gather:
		element := &rules.Binding{Is: x.Type()}
		member := &rules.Variable{Base: rules.Base{At: x.Span(), Is: x.Type()}, Binding: element}
		list := &rules.Map{
			Base: rules.Base{At: x.Span(), Is: rules.Type{Kind: rules.List, Item: &is}},
			List: x.List, Element: element, Body: read(member),
		}
		return &rules.Gather{Base: base(x.Span()), Fold: x.Fold, List: list}
	}
	panic("engine: not a part to search for")
}

// read compiles the place of a read, or says what to compile instead.
func (c *compiler) read(n rules.Node) (at place, instead rules.Node) {
	switch n := n.(type) {
	case *rules.Read:
		if of, ok := c.searched(n.Of); ok {
			return place{}, spread(of, n.Type(), func(of rules.Node) rules.Node {
				return &rules.Read{Base: n.Base, Of: of, Particular: n.Particular}
			})
		}
		return c.place(n.Of, particularOffset(n.Particular)), nil
	case *rules.Cell:
		if of, ok := c.searched(n.Of); ok {
			return place{}, spread(of, n.Type(), func(of rules.Node) rules.Node {
				return &rules.Cell{Base: n.Base, Of: of, Column: n.Column}
			})
		}
		return c.place(n.Of, int32(n.Column)), nil
	case *rules.Given:
		return place{kind: fixed, ref: c.given[n.Index]}, nil
	case *rules.Moment:
		return place{kind: fixed, ref: int32(n.Day)}, nil
	}
	panic("engine: not a read")
}

// define compiles let name = value; rest, with rest compiled by then. Parts and lists
// stand for themselves; values are worked out once, into a slot.
func (c *compiler) define(n *rules.Define, then func(definition, bool)) {
	switch n.Value.Type().Kind {
	case rules.Part, rules.Row, rules.List:
		c.names[n.Binding] = meaning{alias: n.Value}
		then(definition{}, false)
		return
	}
	kept := c.slots
	d := definition{value: c.apart(n.Value)}
	d.slot = c.slot()
	c.names[n.Binding] = meaning{slot: d.slot, from: &d.value}
	then(d, true)
	c.slots = kept
}

// mentioned compiles the use of a term, with its given bound, by what compiles its body.
func mentioned[T any](c *compiler, n *rules.Mention, compile func(body rules.Node) T) T {
	kept := c.formula
	c.formula = n.Term.Means
	defer func() { c.formula = kept }()
	if given := n.Term.Given; given != nil {
		if saved, had := c.names[given]; had {
			defer func() { c.names[given] = saved }()
		}
		c.names[given] = c.resolved(n.Given)
	}
	return compile(n.Body)
}

// resolved is what a part that is handed to a term stands for. A variable is looked up
// now, since the term may use a name of its own for another part.
func (c *compiler) resolved(n rules.Node) meaning {
	if v, ok := n.(*rules.Variable); ok {
		return c.names[v.Binding]
	}
	return meaning{alias: n}
}
