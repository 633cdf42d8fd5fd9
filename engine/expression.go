package engine

import "gapsheet/vehicle/quantity"

// An expression is a compiled node of one of the three kinds of value.
type expression struct {
	asTruth  truthNode
	asNumber numberNode
	asSymbol symbolNode
	text     bool // asSymbol yields a text
	date     bool // asNumber yields a date
}

// node is whichever it is.
func (e *expression) node() node {
	switch {
	case e.asTruth != nil:
		return e.asTruth
	case e.asNumber != nil:
		return e.asNumber
	default:
		return e.asSymbol
	}
}

// into works the expression out and puts its value into a slot.
func (e *expression) into(m *machine, to int32) {
	saved := m.unsure
	m.unsure = false
	var r quantity.Range
	var set uint64
	var t quantity.Truth
	switch {
	case e.asTruth != nil:
		t = m.judge(e.asTruth)
	case e.asNumber != nil:
		r = e.asNumber.number(m)
	default:
		set = e.asSymbol.symbol(m)
	}
	v := &m.slots[to]
	v.low, v.high, v.set, v.truth, v.unsure = r.Low, r.High, set, t, m.unsure
	if e.date {
		label := labelOf(m, e.asNumber)
		m.slots[to].label = label
	}
	m.unsure = saved
}

func (e *expression) surveyMember(m *machine, s *survey) { e.node().survey(m, s) }
func (e *expression) signMember(m *machine, s *signer)   { e.node().sign(m, s) }

// A definition works a value out once, for the rest to read it from a slot.
type definition struct {
	value expression
	slot  int32
}

// The rest of a definition, by what it yields.
type (
	definedTruth struct {
		definition
		rest truthNode
	}
	definedNumber struct {
		definition
		rest numberNode
	}
	definedSymbol struct {
		definition
		rest symbolNode
	}
)

func (n *definition) set(m *machine) { n.value.into(m, n.slot) }

func (n *definedTruth) truth(m *machine) quantity.Truth   { n.set(m); return n.rest.truth(m) }
func (n *definedNumber) number(m *machine) quantity.Range { n.set(m); return n.rest.number(m) }
func (n *definedSymbol) symbol(m *machine) uint64         { n.set(m); return n.rest.symbol(m) }

func (n *definedTruth) survey(m *machine, s *survey)  { n.surveyRest(m, s, n.rest) }
func (n *definedNumber) survey(m *machine, s *survey) { n.surveyRest(m, s, n.rest) }
func (n *definedSymbol) survey(m *machine, s *survey) { n.surveyRest(m, s, n.rest) }

func (n *definition) surveyRest(m *machine, s *survey, rest node) {
	n.set(m)
	s.during(func() { n.set(m) }, func() { rest.survey(m, s) })
}

func (n *definedTruth) sign(m *machine, s *signer)  { n.set(m); n.rest.sign(m, s) }
func (n *definedNumber) sign(m *machine, s *signer) { n.set(m); n.rest.sign(m, s) }
func (n *definedSymbol) sign(m *machine, s *signer) { n.set(m); n.rest.sign(m, s) }
