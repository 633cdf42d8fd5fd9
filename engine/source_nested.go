package engine

import (
	"gapsheet/vehicle/quantity"
)

// A nested is the members of the lists that the members of another list have.
type nested struct {
	outer, inner source
}

// find walks to member i: it fills the outer slot and returns the place in the inner list.
func (n *nested) find(m *machine, i int) (outer quantity.Truth, at int) {
	for o := 0; ; o++ {
		t := n.outer.at(m, o)
		l := 0
		if t != quantity.No {
			l = n.inner.length(m)
		}
		if i < l {
			return t, i
		}
		i -= l
	}
}

func (n *nested) length(m *machine) int {
	total := 0
	for o := range n.outer.length(m) {
		if n.outer.at(m, o) != quantity.No {
			total += n.inner.length(m)
		}
	}
	return total
}

func (n *nested) complete(m *machine) bool {
	if !n.outer.complete(m) {
		return false
	}
	for o := range n.outer.length(m) {
		if n.outer.at(m, o) != quantity.No && !n.inner.complete(m) {
			return false
		}
	}
	return true
}

func (n *nested) bound() int32 { return n.inner.bound() }

func (n *nested) at(m *machine, i int) quantity.Truth {
	t, at := n.find(m, i)
	return t.And(n.inner.at(m, at))
}

func (n *nested) surveyAt(m *machine, s *survey, i int) {
	for o := range n.outer.length(m) {
		n.outer.surveyAt(m, s, o)
	}
	_, at := n.find(m, i)
	n.inner.surveyAt(m, s, at)
}

func (n *nested) surveyMember(m *machine, s *survey) { n.inner.surveyMember(m, s) }
func (n *nested) signMember(m *machine, s *signer)   { n.inner.signMember(m, s) }
func (n *nested) surveyOthers(m *machine, s *survey) {
	n.outer.surveyOthers(m, s)
	for o := range n.outer.length(m) {
		if n.outer.at(m, o) != quantity.No {
			n.inner.surveyOthers(m, s)
		}
	}
}

func (n *nested) sign(m *machine, s *signer) {
	s.tag('N')
	n.outer.sign(m, s)
	s.bind(n.outer.bound())
	n.inner.sign(m, s)
	s.unbind()
}
