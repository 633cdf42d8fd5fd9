package engine

import (
	"gapsheet/vehicle/quantity"
)

// An inBand is the rows of a table whose band holds a value. Empty ends are no bound.
type inBand struct {
	listSource
	value     numberNode
	low, high int32 // columns, -1 for none
	lowOpen   bool
	highOpen  bool
	tolerance quantity.Tolerance
}

func (n *inBand) at(m *machine, i int) quantity.Truth {
	n.listSource.at(m, i)
	base := m.slots[n.slot].base
	saved := m.unsure
	m.unsure = false
	v := n.value.number(m)
	unsure := m.unsure
	m.unsure = saved
	if unsure {
		return quantity.Open
	}
	t := quantity.Yes
	if n.low >= 0 {
		if c := m.at(base, n.low); c.flags&mayHold != 0 {
			t = end(v, quantity.Range{Low: c.low, High: c.high}, n.lowOpen, n.tolerance)
		}
	}
	if n.high >= 0 {
		if c := m.at(base, n.high); c.flags&mayHold != 0 {
			t = t.And(end(quantity.Range{Low: c.low, High: c.high}, v, n.highOpen, n.tolerance))
		}
	}
	return t
}

// end reports whether a is over b, or over or equal where the end is closed.
func end(a, b quantity.Range, open bool, t quantity.Tolerance) quantity.Truth {
	if open {
		return quantity.IsMoreThan(a, b, t)
	}
	return quantity.IsAtLeast(a, b, t)
}

func (n *inBand) surveyAt(m *machine, s *survey, i int) {
	t := n.at(m, i)
	if t != quantity.Open && !s.everything {
		return
	}
	n.value.survey(m, s)
	for _, column := range [2]int32{n.low, n.high} {
		if column < 0 {
			continue
		}
		if c := m.at(m.slots[n.slot].base, column); c.flags&mayHold != 0 {
			s.cutBy(m, n.value, n.tolerance.Band(c.low))
		}
	}
}

func (n *inBand) sign(m *machine, s *signer) {
	s.tag('B')
	n.listSource.sign(m, s)
	n.value.sign(m, s)
}
