package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// gathered compiles a list for a list function, with a slot of its own; release gives the
// slots back.
func (c *compiler) gathered(n rules.Node) (source, func()) {
	kept := c.slots
	list := c.list(n, c.slot())
	return list, func() { c.slots = kept }
}

// list compiles a list whose members go into a slot.
func (c *compiler) list(n rules.Node, slot int32) source {
	t, leave := c.enter(n)
	defer leave()
	made := c.listOf(n, slot)
	t.list = made
	return made
}

func (c *compiler) listOf(n rules.Node, slot int32) source {
	switch n := n.(type) {
	case *rules.Parts:
		if of, ok := c.searched(n.Of); ok {
			return c.partsOf(of, n, slot)
		}
		return &listSource{c.part(n.Of), partOffset(n.IsPart), slot}
	case *rules.Rows:
		return c.rows(n.Table, slot)
	case *rules.InBand:
		return c.inBand(n, slot)
	case *rules.Given:
		return &valueList{listSource{&fixedPart{0}, c.given[n.Index], slot}, cellKindOf(*n.Type().Item)}
	case *rules.Items:
		made := &items{slot: slot}
		for _, of := range n.Of {
			made.of = append(made.of, c.expression(of))
		}
		return made
	case *rules.Filter:
		list := c.list(n.List, slot)
		c.bind(n.Element, list)
		return &filtered{list, c.condition(n.Body)}
	case *rules.Map:
		return c.mapped(n, slot)
	case *rules.Variable:
		return c.list(c.names[n.Binding].alias, slot)
	case *rules.Conditional:
		when := c.condition(n.If)
		return &eitherList{when, c.list(n.Then, slot), c.list(n.Else, slot)}
	case *rules.Define:
		var made source
		c.define(n, func(d definition, worked bool) {
			if worked {
				// The value is worked out where it is used: a list has no moment of its own.
				c.names[n.Binding] = meaning{alias: n.Value}
			}
			made = c.list(n.Rest, slot)
		})
		return made
	case *rules.Mention:
		return mentioned(c, n, func(body rules.Node) source { return c.list(body, slot) })
	}
	panic("engine: no list can be made of this node")
}

// bind makes a predicate's element stand for the member in a list's slot.
func (c *compiler) bind(element *rules.Binding, list source) {
	if element != nil {
		c.names[element] = meaning{slot: list.bound(), from: list}
	}
}

func (c *compiler) rows(t *rules.Table, slot int32) source {
	return &listSource{&fixedPart{0}, c.ground.tables[t], slot}
}

func (c *compiler) inBand(n *rules.InBand, slot int32) source {
	band := n.Table.Band
	made := &inBand{
		listSource: listSource{&fixedPart{0}, c.ground.tables[n.Table], slot},
		low:        int32(band.Low), high: int32(band.High),
		lowOpen: band.LowOpen, highOpen: band.HighOpen,
	}
	column := max(band.Low, band.High)
	made.tolerance = toleranceOf(n.Value.Type(), n.Table.Columns[column].Is)
	made.value = c.number(n.Value)
	return made
}

// mapped compiles a map; a map of lists is the members of them all.
func (c *compiler) mapped(n *rules.Map, slot int32) source {
	inner := c.slot()
	list := c.list(n.List, inner)
	c.bind(n.Element, list)
	if n.Body.Type().Kind == rules.List {
		return &nested{list, c.list(n.Body, slot)}
	}
	if k := n.Body.Type().Kind; k == rules.Part || k == rules.Row {
		return &movedPart{mapped{source: list, slot: slot}, c.part(n.Body)}
	}
	return &mapped{list, c.expression(n.Body), slot}
}

// An endOfList is the first or last member of a list, as a list of one.
type endOfList struct {
	source
	last bool
}

func (n *endOfList) at(m *machine, i int) quantity.Truth {
	from, to := 0, i
	if n.last {
		from, to = i+1, n.length(m)
	}
	beaten := quantity.No
	for other := from; other < to && beaten != quantity.Yes; other++ {
		beaten = beaten.Or(n.source.at(m, other))
	}
	return beaten.Not().And(n.source.at(m, i))
}

func (n *endOfList) surveyAt(m *machine, s *survey, i int) {
	for other := range n.length(m) {
		n.source.surveyAt(m, s, other)
	}
	n.at(m, i)
}

func (n *endOfList) sign(m *machine, s *signer) {
	s.tag('1')
	if n.last {
		s.tag('l')
	}
	n.source.sign(m, s)
}

// A movedPart is a part for each member of a list, such as the mount of each seat.
type movedPart struct {
	mapped
	to partNode
}

func (n *movedPart) at(m *machine, i int) quantity.Truth {
	t := n.source.at(m, i)
	if t != quantity.No {
		v := &m.slots[n.slot]
		v.base, v.index = n.to.base(m), int32(i)
	}
	return t
}

func (n *movedPart) surveyAt(m *machine, s *survey, i int) { n.source.surveyAt(m, s, i); n.at(m, i) }
func (n *movedPart) surveyMember(*machine, *survey)        {}
func (n *movedPart) signMember(m *machine, s *signer)      { (&slotPart{n.slot}).sign(m, s) }
func (n *movedPart) sign(m *machine, s *signer) {
	s.tag('V')
	n.source.sign(m, s)
	s.bind(n.source.bound())
	n.to.sign(m, s)
	s.unbind()
}

// partsOf compiles the list of a part that has to be searched for: the members of the
// lists of all parts that it may be.
func (c *compiler) partsOf(of rules.Node, n *rules.Parts, slot int32) source {
	switch x := of.(type) {
	case *rules.Conditional:
		then := &rules.Parts{Base: n.Base, Of: x.Then, IsPart: n.IsPart}
		otherwise := &rules.Parts{Base: n.Base, Of: x.Else, IsPart: n.IsPart}
		return &eitherList{c.condition(x.If), c.list(then, slot), c.list(otherwise, slot)}
	case *rules.Gather:
		outer := c.slot()
		only := &endOfList{c.list(x.List, outer), x.Fold == rules.FoldLast}
		return &nested{only, &listSource{&slotPart{outer}, partOffset(n.IsPart), slot}}
	}
	panic("engine: not a part to search for")
}

// gatherTruth compiles all, any, none, one, and first and last of truths.
func (c *compiler) gatherTruth(n *rules.Gather) truthNode {
	list, release := c.gathered(n.List)
	defer release()
	made := &gatheredTruth{gathering{list: list}, n.Fold}
	if n.Body != nil {
		c.bind(n.Element, list)
		negated := c.negated
		if n.Fold == rules.FoldNone {
			c.negated = !c.negated
		}
		made.body = c.truth(n.Body)
		c.negated = negated
	} else if n.Fold <= rules.FoldOne {
		made.body = &slotTruth{list.bound(), list}
	}
	return made
}

// surelyThere reports whether each member of a list has a value, whatever it may be: where
// the list is one of a particular of parts that cannot be stated as none.
func (c *compiler) surelyThere(list rules.Node) bool {
	switch n := list.(type) {
	case *rules.Filter:
		return c.surelyThere(n.List)
	case *rules.Variable:
		return c.names[n.Binding].alias != nil && c.surelyThere(c.names[n.Binding].alias)
	case *rules.Map:
		read, ok := n.Body.(*rules.Read)
		if !ok || read.Particular.MayBeAbsent {
			return false
		}
		of, ok := read.Of.(*rules.Variable)
		return ok && of.Binding == n.Element
	}
	return false
}

// cellKindOf is the kind of cell that holds values of a type.
func cellKindOf(t rules.Type) cellKind {
	switch t.Kind {
	case rules.Truth:
		return holdsTruth
	case rules.Date:
		return holdsDate
	case rules.Text:
		return holdsText
	case rules.Choice:
		return holdsChoice
	}
	if t.Whole {
		return holdsCount
	}
	return holdsNumber
}
