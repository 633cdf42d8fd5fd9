package engine

import "gapsheet/vehicle/quantity"

// A constantTruth is true or false.
type constantTruth struct{ value quantity.Truth }

func (n *constantTruth) truth(*machine) quantity.Truth { return n.value }
func (n *constantTruth) survey(*machine, *survey)      {}
func (n *constantTruth) sign(_ *machine, s *signer)    { s.tag('v'); s.int(int64(n.value)) }

// A readTruth reads a yes/no particular, or whether a type of part is fitted.
type readTruth struct{ place }

func (n *readTruth) truth(m *machine) quantity.Truth {
	c := &m.cells[n.cell(m)]
	if !c.sure() {
		return quantity.Open
	}
	return sureWhen(c.set == bitYes, c.set == bitNo)
}

func (n *readTruth) survey(m *machine, s *survey) { n.place.survey(m, s) }

// A slotTruth is a truth that a variable stands for.
type slotTruth struct {
	slot int32
	from producer
}

func (n *slotTruth) truth(m *machine) quantity.Truth {
	v := &m.slots[n.slot]
	if v.unsure {
		return quantity.Open
	}
	return v.truth
}

func (n *slotTruth) survey(m *machine, s *survey) {
	if s.everything || n.truth(m) == quantity.Open {
		n.from.surveyMember(m, s)
	}
}

func (n *slotTruth) sign(m *machine, s *signer) { signSlot(m, s, n.slot, n.from) }

// A not is negation.
type not struct{ of truthNode }

func (n *not) truth(m *machine) quantity.Truth { return n.of.truth(m).Not() }
func (n *not) survey(m *machine, s *survey)    { n.of.survey(m, s) }
func (n *not) sign(m *machine, s *signer)      { s.tag('!'); n.of.sign(m, s) }

// A logic is a conjunction or, with any set, a disjunction. Its decider is the truth of
// one part that decides the whole: no for a conjunction, yes for a disjunction.
type logic struct {
	any bool
	of  []truthNode
}

func (n *logic) decider() quantity.Truth {
	if n.any {
		return quantity.Yes
	}
	return quantity.No
}

func (n *logic) truth(m *machine) quantity.Truth {
	decider := n.decider()
	result := decider.Not()
	for _, of := range n.of {
		t := of.truth(m)
		if t == quantity.Open && m.deep {
			t = m.settle(of)
		}
		if t == decider {
			return decider
		}
		if t == quantity.Open {
			result = quantity.Open
		}
	}
	return result
}

func (n *logic) survey(m *machine, s *survey) {
	if !s.everything && n.truth(m) != quantity.Open {
		return
	}
	for _, of := range n.of {
		of.survey(m, s)
	}
}

func (n *logic) sign(m *machine, s *signer) {
	if n.any {
		s.tag('u')
	} else {
		s.tag('a')
	}
	s.int(int64(len(n.of)))
	for _, of := range n.of {
		of.sign(m, s)
	}
}

// A choiceOfTruths is condition ? then : otherwise on truths.
type choiceOfTruths struct{ when, then, otherwise truthNode }

func (n *choiceOfTruths) truth(m *machine) quantity.Truth {
	switch n.when.truth(m) {
	case quantity.Yes:
		return n.then.truth(m)
	case quantity.No:
		return n.otherwise.truth(m)
	}
	if t := n.then.truth(m); t == n.otherwise.truth(m) {
		return t
	}
	return quantity.Open
}

func (n *choiceOfTruths) survey(m *machine, s *survey) {
	if s.everything || n.truth(m) == quantity.Open {
		surveyChoice(m, s, n.when, n.then, n.otherwise)
	}
}

func (n *choiceOfTruths) sign(m *machine, s *signer) { signChoice(m, s, n.when, n.then, n.otherwise) }

// An otherwiseTruth is x ?? y on truths.
type otherwiseTruth struct {
	readTruth
	otherwise truthNode
}

func (n *otherwiseTruth) truth(m *machine) quantity.Truth {
	c := &m.cells[n.cell(m)]
	if c.flags&mayLack != 0 {
		return quantity.Open
	}
	held := sureWhen(c.set == bitYes, c.set == bitNo)
	switch c.flags & (mayHold | mayBeNone) {
	case mayHold:
		return held
	case mayBeNone:
		return n.otherwise.truth(m)
	}
	if n.otherwise.truth(m) == held {
		return held
	}
	return quantity.Open
}

func (n *otherwiseTruth) survey(m *machine, s *survey) {
	n.place.surveyUnlessNone(m, s)
	if m.cells[n.cell(m)].flags&mayBeNone != 0 || s.everything {
		n.otherwise.survey(m, s)
	}
}

func (n *otherwiseTruth) sign(m *machine, s *signer) {
	s.tag('|')
	n.place.sign(m, s)
	n.otherwise.sign(m, s)
}

// A recorded is recorded(x): it asks what the sheet says, not what the car has, so that
// splitting a cell never answers it.
type recorded struct{ place }

func (n *recorded) truth(m *machine) quantity.Truth {
	c := &m.cells[n.cell(m)]
	if c.flags&written == 0 || c.flags&mayLack != 0 {
		return quantity.Open
	}
	return sureWhen(c.flags&mayHold != 0, c.flags&mayBeNone != 0)
}

func (n *recorded) survey(m *machine, s *survey) {
	if i := n.cell(m); s.everything || n.truth(m) == quantity.Open {
		s.touch(i).limits++ // whatever the figure, it is one
	}
}

func (n *recorded) sign(m *machine, s *signer) { s.tag('r'); n.place.sign(m, s) }

// A within is membership in a written-out set of choices.
type within struct {
	of  symbolNode
	set uint64
}

func (n *within) truth(m *machine) quantity.Truth {
	saved := m.unsure
	m.unsure = false
	set := n.of.symbol(m)
	unsure := m.unsure
	m.unsure = saved
	if unsure {
		return quantity.Open
	}
	return sureWhen(set&^n.set == 0, set&n.set == 0)
}

func (n *within) survey(m *machine, s *survey) {
	if s.everything || n.truth(m) == quantity.Open {
		n.of.survey(m, s)
	}
}

func (n *within) sign(m *machine, s *signer) {
	s.tag('w')
	n.of.sign(m, s)
	s.int(int64(n.set))
}

// A fittedPart is fitted(part) of one part by its label.
type fittedPart struct{ pickedPart }

func (n *fittedPart) truth(m *machine) quantity.Truth {
	l := n.list(m)
	for _, label := range l.labels {
		if label == n.label {
			return quantity.Yes
		}
	}
	return sureWhen(false, l.complete)
}

func (n *fittedPart) survey(m *machine, s *survey) {
	if s.everything || n.truth(m) == quantity.Open {
		s.blame(UnknownOthers, m.refs[n.of.base(m)+n.offset], n)
	}
}

func (n *fittedPart) sign(m *machine, s *signer) { s.tag('q'); n.pickedPart.sign(m, s) }
