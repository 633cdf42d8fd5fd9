package engine

import (
	"gapsheet/vehicle/quantity"
)

// A listSource is all parts of a type that a part has, or all rows of a table.
type listSource struct {
	of     partNode
	offset int32
	slot   int32
}

func (n *listSource) list(m *machine) *list { return &m.lists[n.index(m)] }

func (n *listSource) index(m *machine) int32 { return m.refs[n.of.base(m)+n.offset] }

func (n *listSource) length(m *machine) int    { return len(n.list(m).elements) }
func (n *listSource) complete(m *machine) bool { return n.list(m).complete }
func (n *listSource) bound() int32             { return n.slot }

func (n *listSource) at(m *machine, i int) quantity.Truth {
	v := &m.slots[n.slot]
	v.base, v.index = n.list(m).elements[i], int32(i)
	return quantity.Yes
}

func (n *listSource) surveyAt(m *machine, _ *survey, i int) { n.at(m, i) }
func (n *listSource) surveyMember(*machine, *survey)        {}
func (n *listSource) signMember(m *machine, s *signer)      { (&slotPart{n.slot}).sign(m, s) }
func (n *listSource) surveyOthers(m *machine, s *survey) {
	if i := n.index(m); !m.lists[i].complete {
		s.blame(UnknownOthers, i, nil)
	}
}

func (n *listSource) sign(m *machine, s *signer) {
	s.tag('L')
	n.of.sign(m, s)
	s.int(int64(n.offset))
}

// A valueList is a list of values that was handed in: a member's base leads to its cell.
type valueList struct {
	listSource
	kind cellKind
}

func (n *valueList) at(m *machine, i int) quantity.Truth {
	n.listSource.at(m, i)
	v := &m.slots[n.slot]
	c := m.at(v.base, 0)
	v.low, v.high, v.set, v.unsure = c.low, c.high, c.set, !c.sure()
	v.truth = sureWhen(c.set == bitYes, c.set == bitNo)
	if n.kind == holdsDate {
		v.label = c.endOfLabel()
	}
	return quantity.Yes
}

func (n *valueList) surveyAt(m *machine, _ *survey, i int) { n.at(m, i) }

func (n *valueList) surveyMember(m *machine, s *survey) {
	if i := m.refs[m.slots[n.slot].base]; s.everything || !m.cells[i].known() {
		s.touch(i)
	} else {
		m.mention(s, i)
	}
}

func (n *valueList) signMember(m *machine, s *signer) { s.cell(m.refs[m.slots[n.slot].base]) }

// An items is a list written out in the formula.
type items struct {
	of   []expression
	slot int32
}

func (n *items) length(*machine) int    { return len(n.of) }
func (n *items) complete(*machine) bool { return true }
func (n *items) bound() int32           { return n.slot }

func (n *items) at(m *machine, i int) quantity.Truth {
	n.of[i].into(m, n.slot)
	m.slots[n.slot].index = int32(i)
	return quantity.Yes
}

func (n *items) surveyAt(m *machine, _ *survey, i int) { n.at(m, i) }
func (n *items) surveyOthers(*machine, *survey)        {}
func (n *items) surveyMember(m *machine, s *survey)    { n.of[m.slots[n.slot].index].node().survey(m, s) }
func (n *items) signMember(m *machine, s *signer)      { n.of[m.slots[n.slot].index].node().sign(m, s) }
func (n *items) sign(m *machine, s *signer) {
	s.tag('I')
	s.int(int64(len(n.of)))
	for _, of := range n.of {
		of.node().sign(m, s)
	}
}

// A filtered is the members of a list for which a truth holds.
type filtered struct {
	source
	body truthNode
}

func (n *filtered) at(m *machine, i int) quantity.Truth {
	t := n.source.at(m, i)
	if t == quantity.No {
		return t
	}
	return t.And(m.judge(n.body))
}

func (n *filtered) surveyAt(m *machine, s *survey, i int) {
	n.source.surveyAt(m, s, i)
	n.body.survey(m, s)
}

func (n *filtered) sign(m *machine, s *signer) {
	s.tag('F')
	n.source.sign(m, s)
	s.bind(n.bound())
	n.body.sign(m, s)
	s.unbind()
}

// judge works out a body of a list function, and settles it where that is asked for.
func (m *machine) judge(body truthNode) quantity.Truth {
	t := body.truth(m)
	if t == quantity.Open && m.deep {
		return m.settle(body)
	}
	return t
}

// A mapped is a value for each member of a list.
type mapped struct {
	source
	body expression
	slot int32
}

func (n *mapped) bound() int32 { return n.slot }

func (n *mapped) at(m *machine, i int) quantity.Truth {
	t := n.source.at(m, i)
	if t != quantity.No {
		n.body.into(m, n.slot)
	}
	return t
}

func (n *mapped) surveyAt(m *machine, s *survey, i int) { n.source.surveyAt(m, s, i); n.at(m, i) }
func (n *mapped) surveyMember(m *machine, s *survey)    { n.body.node().survey(m, s) }
func (n *mapped) signMember(m *machine, s *signer)      { n.body.node().sign(m, s) }
func (n *mapped) sign(m *machine, s *signer) {
	s.tag('M')
	n.source.sign(m, s)
	s.bind(n.source.bound())
	n.body.node().sign(m, s)
	s.unbind()
}

// An eitherList is condition ? one list : another. Both fill the same slot.
type eitherList struct {
	when            truthNode
	then, otherwise source
}

func (n *eitherList) length(m *machine) int { return n.then.length(m) + n.otherwise.length(m) }
func (n *eitherList) bound() int32          { return n.then.bound() }

func (n *eitherList) complete(m *machine) bool {
	t := n.when.truth(m)
	return (t == quantity.No || n.then.complete(m)) && (t == quantity.Yes || n.otherwise.complete(m))
}

// pick finds the list that member i belongs to, and its place there.
func (n *eitherList) pick(m *machine, i int) (of source, at int, first bool) {
	if l := n.then.length(m); i >= l {
		return n.otherwise, i - l, false
	}
	return n.then, i, true
}

func (n *eitherList) at(m *machine, i int) quantity.Truth {
	of, at, first := n.pick(m, i)
	t := n.when.truth(m)
	if !first {
		t = t.Not()
	}
	if t == quantity.No {
		return t
	}
	t = t.And(of.at(m, at))
	m.slots[n.bound()].index = int32(i)
	return t
}

func (n *eitherList) surveyAt(m *machine, s *survey, i int) {
	n.when.survey(m, s)
	of, at, _ := n.pick(m, i)
	of.surveyAt(m, s, at)
	m.slots[n.bound()].index = int32(i)
}

// member runs a look at the member in the slot with the position that its own list gave it.
func (n *eitherList) member(m *machine, look func(source)) {
	v := &m.slots[n.bound()]
	kept := v.index
	of, at, _ := n.pick(m, int(kept))
	v.index = int32(at)
	look(of)
	v.index = kept
}

func (n *eitherList) surveyMember(m *machine, s *survey) {
	n.member(m, func(of source) { of.surveyMember(m, s) })
}

func (n *eitherList) signMember(m *machine, s *signer) {
	n.member(m, func(of source) { of.signMember(m, s) })
}

func (n *eitherList) surveyOthers(m *machine, s *survey) {
	n.then.surveyOthers(m, s)
	n.otherwise.surveyOthers(m, s)
}

func (n *eitherList) sign(m *machine, s *signer) {
	s.tag('E')
	n.when.sign(m, s)
	n.then.sign(m, s)
	n.otherwise.sign(m, s)
}
