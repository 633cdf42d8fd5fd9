package engine

import (
	"gapsheet/vehicle/quantity"
)

// A constantNumber is a number in SI or a day.
type constantNumber struct{ value quantity.Range }

func (n *constantNumber) number(*machine) quantity.Range { return n.value }
func (n *constantNumber) survey(*machine, *survey)       {}
func (n *constantNumber) sign(_ *machine, s *signer) {
	s.tag('n')
	s.float(n.value.Low)
	s.float(n.value.High)
}

// A readNumber reads a number, a count or a date.
type readNumber struct{ place }

func (n *readNumber) number(m *machine) quantity.Range {
	c := &m.cells[n.cell(m)]
	if !c.sure() {
		m.unsure = true
	}
	return quantity.Range{Low: c.low, High: c.high}
}

func (n *readNumber) survey(m *machine, s *survey) { n.place.survey(m, s) }

// A slotNumber is a number that a variable stands for.
type slotNumber struct {
	slot int32
	from producer
}

// A producer tells what is behind a variable's value.
type producer interface {
	surveyMember(m *machine, s *survey)
	signMember(m *machine, s *signer)
}

func (n *slotNumber) number(m *machine) quantity.Range {
	v := &m.slots[n.slot]
	if v.unsure {
		m.unsure = true
	}
	return quantity.Range{Low: v.low, High: v.high}
}

func (n *slotNumber) survey(m *machine, s *survey) { n.from.surveyMember(m, s) }
func (n *slotNumber) sign(m *machine, s *signer)   { signSlot(m, s, n.slot, n.from) }

func signSlot(m *machine, s *signer, slot int32, from producer) {
	if s.bound(slot) {
		s.tag('m')
		s.int(int64(slot))
		return
	}
	from.signMember(m, s)
}

// A binaryNumber is + - * /.
type binaryNumber struct {
	operator    byte
	left, right numberNode
}

func (n *binaryNumber) number(m *machine) quantity.Range {
	l := n.left.number(m)
	r := n.right.number(m)
	switch n.operator {
	case '+':
		return l.Plus(r)
	case '-':
		return l.Minus(r)
	case '*':
		return l.Times(r)
	default:
		if r.Contains(0) {
			m.unsure = true
		}
		return l.Over(r)
	}
}

func (n *binaryNumber) survey(m *machine, s *survey) {
	n.left.survey(m, s)
	n.right.survey(m, s)
	if n.operator == '/' && quietly(m, n.right).Contains(0) {
		s.blame(Undefined, -1, n)
	}
}

func (n *binaryNumber) sign(m *machine, s *signer) {
	s.tag(n.operator)
	n.left.sign(m, s)
	n.right.sign(m, s)
}

// quietly works out a number without leaving a trace of its being unsure.
func quietly(m *machine, n numberNode) quantity.Range {
	saved := m.unsure
	r := n.number(m)
	m.unsure = saved
	return r
}

// A negatedNumber is unary minus.
type negatedNumber struct{ of numberNode }

func (n *negatedNumber) number(m *machine) quantity.Range { return n.of.number(m).Negate() }
func (n *negatedNumber) survey(m *machine, s *survey)     { n.of.survey(m, s) }
func (n *negatedNumber) sign(m *machine, s *signer)       { s.tag('~'); n.of.sign(m, s) }

// A power is a number to a whole power.
type power struct {
	of       numberNode
	exponent int
}

func (n *power) number(m *machine) quantity.Range {
	r := n.of.number(m)
	if n.exponent < 0 && r.Contains(0) {
		m.unsure = true
	}
	return r.Power(n.exponent)
}

func (n *power) survey(m *machine, s *survey) {
	n.of.survey(m, s)
	if n.exponent < 0 && quietly(m, n.of).Contains(0) {
		s.blame(Undefined, -1, n)
	}
}

func (n *power) sign(m *machine, s *signer) {
	s.tag('^')
	s.int(int64(n.exponent))
	n.of.sign(m, s)
}

// A choiceOfNumbers is condition ? then : otherwise.
type choiceOfNumbers struct {
	when            truthNode
	then, otherwise numberNode
}

func (n *choiceOfNumbers) number(m *machine) quantity.Range {
	switch n.when.truth(m) {
	case quantity.Yes:
		return n.then.number(m)
	case quantity.No:
		return n.otherwise.number(m)
	}
	return n.then.number(m).Hull(n.otherwise.number(m))
}

func (n *choiceOfNumbers) survey(m *machine, s *survey) {
	surveyChoice(m, s, n.when, n.then, n.otherwise)
}

func (n *choiceOfNumbers) sign(m *machine, s *signer) { signChoice(m, s, n.when, n.then, n.otherwise) }

func surveyChoice(m *machine, s *survey, when truthNode, then, otherwise node) {
	when.survey(m, s)
	t := when.truth(m)
	if _, ok := then.(truthNode); !ok && t == quantity.Open {
		when.survey(m, s) // the hull of two values loses what a split on the condition keeps
	}
	if t != quantity.No || s.everything {
		then.survey(m, s)
	}
	if t != quantity.Yes || s.everything {
		otherwise.survey(m, s)
	}
}

func signChoice(m *machine, s *signer, when truthNode, then, otherwise node) {
	s.tag('?')
	when.sign(m, s)
	then.sign(m, s)
	otherwise.sign(m, s)
}

// An otherwiseNumber is x ?? y on numbers and dates.
type otherwiseNumber struct {
	place
	otherwise numberNode
}

func (n *otherwiseNumber) number(m *machine) quantity.Range {
	c := &m.cells[n.cell(m)]
	if c.flags&mayLack != 0 {
		m.unsure = true
	}
	switch c.flags & (mayHold | mayBeNone) {
	case mayHold:
		return quantity.Range{Low: c.low, High: c.high}
	case mayBeNone:
		return n.otherwise.number(m)
	}
	return quantity.Range{Low: c.low, High: c.high}.Hull(n.otherwise.number(m))
}

func (n *otherwiseNumber) survey(m *machine, s *survey) {
	n.place.surveyUnlessNone(m, s)
	if m.cells[n.cell(m)].flags&mayBeNone != 0 || s.everything {
		n.otherwise.survey(m, s)
	}
}

func (n *otherwiseNumber) sign(m *machine, s *signer) {
	s.tag('|')
	n.place.sign(m, s)
	n.otherwise.sign(m, s)
}
