package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// A gathering is what all list functions share.
type gathering struct {
	list source
	body truthNode // nil, or the predicate of all, any, none, one
}

// surveyCost is how many visits of a member one survey of it counts for.
const surveyCost = 30

// surveyList surveys the members that may be in the list; look surveys one of them. Where
// values of members are taken together, splitting on who is a member keeps what taking
// them with those that may not be there loses.
func (n *gathering) surveyList(m *machine, s *survey, together bool, look func()) {
	for i := range n.list.length(m) {
		// Surveying a member costs many times what evaluating it does.
		if m.steps += surveyCost; !m.step() {
			return
		}
		t := n.list.at(m, i)
		if t == quantity.No && !s.everything {
			// What keeps it out is decided, so nothing can be learned from it.
			continue
		}
		if together && t == quantity.Open {
			n.list.surveyAt(m, s, i)
		}
		n.list.surveyAt(m, s, i)
		s.during(func() { n.list.at(m, i) }, look)
	}
	n.list.surveyOthers(m, s)
}

func (n *gathering) signList(m *machine, s *signer, tag byte, fold rules.Fold) {
	s.tag(tag)
	s.int(int64(fold))
	n.list.sign(m, s)
	if n.body != nil {
		s.bind(n.list.bound())
		n.body.sign(m, s)
		s.unbind()
	}
}

// A gatheredTruth is all, any, none or one, or first or last of a list of truths.
type gatheredTruth struct {
	gathering
	fold rules.Fold
}

func (n *gatheredTruth) truth(m *machine) quantity.Truth {
	switch n.fold {
	case rules.FoldAll:
		return n.quantify(m, quantity.No)
	case rules.FoldAny:
		return n.quantify(m, quantity.Yes)
	case rules.FoldNone:
		return n.quantify(m, quantity.Yes).Not()
	case rules.FoldOne:
		return n.one(m)
	}
	return n.end(m)
}

// quantify is all (decided by one no) or any (decided by one yes). A member's say is
// member implies body, or member and body.
func (n *gatheredTruth) quantify(m *machine, decider quantity.Truth) quantity.Truth {
	if plain, ok := n.list.(*listSource); ok && !m.deep {
		return n.quantifyPlain(m, plain.list(m), plain.slot, decider)
	}
	result := decider.Not()
	for i, l := 0, n.list.length(m); i < l; i++ {
		if !m.step() {
			return quantity.Open
		}
		member := n.list.at(m, i)
		if member == quantity.No {
			continue
		}
		t := m.judge(n.body)
		if t == decider && member == quantity.Yes {
			return decider
		}
		if t != decider.Not() {
			result = quantity.Open
		}
	}
	if !n.list.complete(m) {
		return quantity.Open
	}
	return result
}

// quantifyPlain is quantify over all members of a list, without asking each whether it is one.
func (n *gatheredTruth) quantifyPlain(m *machine, l *list, slot int32, decider quantity.Truth) quantity.Truth {
	result := decider.Not()
	if m.steps += len(l.elements); m.steps > m.limit {
		m.exhausted = true
		return quantity.Open
	}
	v := &m.slots[slot]
	for i, base := range l.elements {
		v.base, v.index = base, int32(i)
		switch t := n.body.truth(m); {
		case t == decider:
			return decider
		case t == quantity.Open:
			result = quantity.Open
		}
	}
	if !l.complete {
		return quantity.Open
	}
	return result
}

func (n *gatheredTruth) one(m *machine) quantity.Truth {
	sure, possible := 0, 0
	for i, l := 0, n.list.length(m); i < l; i++ {
		if !m.step() {
			return quantity.Open
		}
		member := n.list.at(m, i)
		if member == quantity.No {
			continue
		}
		switch member.And(m.judge(n.body)) {
		case quantity.Yes:
			sure++
			possible++
		case quantity.Open:
			possible++
		}
	}
	complete := n.list.complete(m)
	return sureWhen(sure == 1 && possible == 1 && complete, sure > 1 || possible == 0 && complete)
}

// end is the truth of the first or last member.
func (n *gatheredTruth) end(m *machine) quantity.Truth {
	result, found := quantity.Open, false
	sure := n.ends(m, n.fold == rules.FoldLast, func(t quantity.Truth) {
		v := m.slots[n.list.bound()]
		held := v.truth
		if v.unsure || found && held != result {
			held = quantity.Open
		}
		result, found = held, true
	})
	if !sure {
		return quantity.Open
	}
	return result
}

// ends visits the members that may be the first (or last) one and reports whether there
// surely is one and none that is not known can come before it.
func (n *gathering) ends(m *machine, last bool, visit func(quantity.Truth)) bool {
	l := n.list.length(m)
	for k := range l {
		i := k
		if last {
			i = l - 1 - k
		}
		if !m.step() {
			return false
		}
		switch t := n.list.at(m, i); t {
		case quantity.Yes:
			visit(t)
			return n.list.complete(m)
		case quantity.Open:
			visit(t)
		}
	}
	return false
}

func (n *gatheredTruth) survey(m *machine, s *survey) {
	if !s.everything && n.truth(m) != quantity.Open {
		return
	}
	n.surveyList(m, s, n.body == nil, func() {
		if n.body != nil {
			n.body.survey(m, s)
		} else {
			n.list.surveyMember(m, s)
		}
	})
	if n.body == nil {
		n.surveyEmpty(m, s)
	}
}

func (n *gatheredTruth) sign(m *machine, s *signer) { n.signList(m, s, 'G', n.fold) }

// surveyEmpty says so where a list may have no member though one is needed.
func (n *gathering) surveyEmpty(m *machine, s *survey) {
	kind := NotFitted
	for i := range n.list.length(m) {
		switch n.list.at(m, i) {
		case quantity.Yes:
			return
		case quantity.Open:
			kind = NoSuchPart
		}
	}
	if !n.list.complete(m) {
		kind = NoSuchPart
	}
	index := int32(-1)
	if l, ok := under(n.list).(*listSource); ok {
		index = l.index(m)
	}
	s.blame(kind, index, n.list)
}

// under is the list that filters and maps stand on.
func under(s source) source {
	for {
		switch n := s.(type) {
		case *filtered:
			s = n.source
		case *mapped:
			s = n.source
		case *valueList:
			return &n.listSource
		case *inBand:
			return &n.listSource
		default:
			return s
		}
	}
}
