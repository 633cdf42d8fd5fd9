package engine

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// Settling decides truths that ranges alone leave open because one particular occurs
// twice. It splits what is not known into pieces that together cover it, and joins the
// answers: where all pieces say yes, yes holds. The budget counts evaluations, never
// time, so that a slow machine gives the same answer.

// settleBudget is how many evaluations settling one formula may take.
const settleBudget = 6000

// decide works out a truth and settles it if need be, with a budget of its own.
func (m *machine) decide(n truthNode) quantity.Truth {
	m.steps, m.limit, m.exhausted = 0, stepLimit, false
	t := n.truth(m)
	if t != quantity.Open {
		return t
	}
	m.left = settleBudget
	return m.settle(n)
}

// settle tries to decide a truth that is open as it stands.
func (m *machine) settle(n truthNode) quantity.Truth {
	if m.exhausted {
		return quantity.Open
	}
	deep := m.deep
	m.deep = false
	t := m.settleWhole(n)
	m.deep = deep
	return t
}

func (m *machine) settleWhole(n truthNode) quantity.Truth {
	if m.left <= 0 {
		m.exhausted = true
		return quantity.Open
	}
	s := newSurvey(false)
	n.survey(m, s)
	s.bases(m)
	if !s.worthSplitting(m) {
		return quantity.Open
	}
	// While a comparison is supposed to hold, an exact car may be one where it does not.
	if !m.tampered && m.differs(n, s) {
		return quantity.Open
	}
	m.deep = true
	t := m.evaluate(n)
	m.deep = false
	if t != quantity.Open {
		return t
	}
	return m.split(n, s)
}

// evaluate is one evaluation on the budget.
func (m *machine) evaluate(n truthNode) quantity.Truth {
	if m.left <= 0 {
		m.exhausted = true
		return quantity.Open
	}
	m.left--
	return n.truth(m)
}

// worthSplitting reports whether anything occurs twice, or is one of few whole numbers:
// over particulars that occur once, ranges and three-valued logic are exact already.
func (s *survey) worthSplitting(m *machine) bool {
	for i := range s.touched {
		t := &s.touched[i]
		if t.count > 1 || m.cells[t.cell].fewWholes() {
			return true
		}
	}
	for _, a := range s.atoms {
		if a.count > 1 {
			return true
		}
	}
	return len(s.shared) > 0
}

// fewWholes reports whether a cell is one of at most 16 whole numbers.
func (c *cell) fewWholes() bool {
	return c.whole() && c.high > c.low && c.high-c.low < 16
}

// differs looks at a few exact cars that agree with what is known. Where two of them get
// different answers, or one gets none, no splitting can decide.
func (m *machine) differs(n truthNode, s *survey) bool {
	kept := m.keep(s)
	defer m.putBack(s, kept)
	first, vague := quantity.Open, s.vague(m)
	for corner := range cornerLimit {
		if corner > len(s.spots)+1 {
			break
		}
		if !m.corner(s, kept, corner) {
			continue
		}
		t := m.evaluate(n)
		switch {
		case t == quantity.Open && vague:
			continue
		case t == quantity.Open, first != quantity.Open && t != first:
			return true
		}
		first = t
	}
	return false
}

// corner puts one exact car in place: all cells at their low end, all at their high end, and
// then one after the other high; what follows from others is worked out. It is false where
// no such car agrees with what is known.
func (m *machine) corner(s *survey, kept []cell, corner int) bool {
	m.putBack(s, kept)
	for i, at := range s.spots {
		high := corner == 1 || corner >= 2 && i == corner-2
		m.cells[at] = m.cells[at].corner(high, s.texts)
	}
	return m.rework(s)
}

// vague reports whether a text is not known: no text that stands for all others answers a
// pattern.
func (s *survey) vague(m *machine) bool {
	for i := range s.touched {
		if c := &m.cells[s.touched[i].cell]; c.kind == holdsText && c.set == anyText {
			return true
		}
	}
	return false
}

// cornerLimit is how many exact cars are looked at before splitting: all readings at
// their low end, all at their high end, and then one after the other high.
const cornerLimit = 10

// keep copies the cells that a survey touched, and behind them those that any of these
// follow from.
func (m *machine) keep(s *survey) []cell {
	kept := make([]cell, 0, len(s.touched)+len(s.spots))
	for i := range s.touched {
		kept = append(kept, m.cells[s.touched[i].cell])
	}
	for _, at := range s.spots {
		kept = append(kept, m.cells[at])
	}
	return kept
}

func (m *machine) putBack(s *survey, kept []cell) {
	for i := range s.touched {
		m.cells[s.touched[i].cell] = kept[i]
	}
	for i, at := range s.spots {
		m.cells[at] = kept[len(s.touched)+i]
	}
}

// corner is one exact cell that agrees with the cell: its low or its high end. What may
// not exist at all stays as it is.
func (c cell) corner(high bool, texts []uint64) cell {
	switch c.kind {
	case holdsTruth, holdsChoice:
		low := c.set & -c.set
		if high {
			for c.set&(c.set-1) != 0 {
				c.set &= c.set - 1
			}
		} else {
			c.set = low
		}
	case holdsText:
		if c.set == anyText {
			c.set = otherText
			if high && len(texts) > 0 {
				c.set = texts[0]
			}
		}
	default:
		v := finite(c.low, c.high)
		if high {
			v = -finite(-c.high, -c.low)
		}
		c.low, c.high = v, v
	}
	return c
}

// finite is the low end, or a number well below the high end where there is none.
func finite(low, high float64) float64 {
	if !math.IsInf(low, -1) {
		return low
	}
	if math.IsInf(high, 1) {
		return -1e9
	}
	return min(-1e9, high-1e9)
}
