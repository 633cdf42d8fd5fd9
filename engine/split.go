package engine

import (
	"maps"
	"math"
	"slices"

	"gapsheet/vehicle/quantity"
)

// split decides an open truth over pieces: where limits cut a range, over the truth of a
// comparison that occurs twice, over the members of a choice, and at last by halves, of
// what several figures follow from before those figures themselves.
func (m *machine) split(n truthNode, s *survey) quantity.Truth {
	if t := s.most(m, func(t *touch, c *cell) bool { return len(c.cutBy(t.cuts)) > 1 }); t != nil {
		return m.over(n, s, t.cell, m.cells[t.cell].cutBy(t.cuts))
	}
	for _, signature := range s.atomOrder {
		if _, done := m.assumed[signature]; done {
			continue
		}
		switch a := s.atoms[signature]; {
		case a.reflexive:
			return m.overTruths(n, signature, quantity.Yes)
		case a.count > 1:
			return m.overTruths(n, signature, quantity.Yes, quantity.No)
		}
	}
	if t := s.most(m, func(_ *touch, c *cell) bool { return len(c.members(s.texts)) > 1 }); t != nil {
		return m.over(n, s, t.cell, m.cells[t.cell].members(s.texts))
	}
	if at, ok := s.widestShared(m); ok && m.depth < deepestHalving {
		m.depth++
		defer func() { m.depth-- }()
		return m.over(n, s, at, m.cells[at].halves())
	}
	if t := s.widest(m); t != nil {
		return m.over(n, s, t.cell, m.cells[t.cell].halves())
	}
	return quantity.Open
}

// most is the touched cell that fits and occurs most often, at least twice.
func (s *survey) most(m *machine, fits func(*touch, *cell) bool) *touch {
	var best *touch
	for i := range s.touched {
		t := &s.touched[i]
		c := &m.cells[t.cell]
		if t.count < 2 && !c.fewWholes() {
			continue
		}
		if (best == nil || t.count > best.count) && fits(t, c) {
			best = t
		}
	}
	return best
}

// widest is the touched range that occurs twice and is the widest for its size.
func (s *survey) widest(m *machine) *touch {
	var best *touch
	width := 0.0
	for i := range s.touched {
		t := &s.touched[i]
		c := &m.cells[t.cell]
		if t.count < 2 && !c.fewWholes() || s.places[t.cell] || len(c.halves()) < 2 {
			continue
		}
		size := max(math.Abs(c.low), math.Abs(c.high))
		w := (c.high - c.low) / size
		if math.IsInf(size, 1) {
			w = math.Inf(1)
		}
		if best == nil || w > width {
			best, width = t, w
		}
	}
	return best
}

// deepestHalving bounds how often what figures follow from is halved, one within the other:
// working the figures out again costs more than an evaluation.
const deepestHalving = 10

// widestShared is the widest cell that several touched figures follow from.
func (s *survey) widestShared(m *machine) (at int32, ok bool) {
	width := 0.0
	for _, shared := range s.shared {
		c := &m.cells[shared]
		if len(c.halves()) == 2 && c.high-c.low > width {
			at, width, ok = shared, c.high-c.low, true
		}
	}
	return at, ok
}

// over joins the answers of the pieces of one cell. What follows from it is worked out
// again for each.
func (m *machine) over(n truthNode, s *survey, at int32, pieces []cell) quantity.Truth {
	if len(s.derived) == 0 {
		kept := m.cells[at]
		defer func() { m.cells[at] = kept }()
		return m.join(n, len(pieces), func(i int) bool { m.cells[at] = pieces[i]; return true })
	}
	kept := m.keep(s)
	defer m.putBack(s, kept)
	return m.join(n, len(pieces), func(i int) bool {
		m.putBack(s, kept)
		m.cells[at] = pieces[i]
		return m.rework(s)
	})
}

// overTruths joins the answers of supposing that a comparison holds, and that it does not;
// of a figure compared with itself only the first can be.
func (m *machine) overTruths(n truthNode, signature string, truths ...quantity.Truth) quantity.Truth {
	kept, tampered := m.assumed, m.tampered
	defer func() { m.assumed, m.tampered = kept, tampered }()
	m.assumed = maps.Clone(kept)
	if m.assumed == nil {
		m.assumed = map[string]quantity.Truth{}
	}
	m.tampered = true
	return m.join(n, len(truths), func(i int) bool { m.assumed[signature] = truths[i]; return true })
}

// join is the answer that all cases give, open where one is open or two differ. A case that
// put says no car can be like has no say.
func (m *machine) join(n truthNode, cases int, put func(i int) bool) quantity.Truth {
	result := quantity.Open
	for i := range cases {
		if !put(i) {
			continue
		}
		t := m.evaluate(n)
		if t == quantity.Open {
			t = m.settleWhole(n)
		}
		if t == quantity.Open || result != quantity.Open && t != result {
			return quantity.Open
		}
		result = t
	}
	return result
}

// cutBy is the pieces of a numeric cell that cuts leave: each cut starts a piece.
func (c *cell) cutBy(cuts []float64) []cell {
	if len(cuts) == 0 || !c.sure() || c.low == c.high {
		return nil
	}
	starts := []float64{c.low}
	for _, cut := range slices.Sorted(slices.Values(cuts)) {
		if c.whole() {
			cut = math.Ceil(cut)
		}
		if cut > starts[len(starts)-1] && cut <= c.high {
			starts = append(starts, cut)
		}
	}
	pieces := make([]cell, len(starts))
	for i, start := range starts {
		pieces[i] = *c
		pieces[i].low = start
		if i+1 < len(starts) {
			pieces[i].high = c.before(starts[i+1])
		}
	}
	return pieces
}

// before is the greatest value of the cell's kind below v.
func (c *cell) before(v float64) float64 {
	if c.whole() {
		return v - 1
	}
	return math.Nextafter(v, math.Inf(-1))
}

// members is the pieces of a choice, a truth, a text or a few whole numbers, and of
// something that may be stated not to exist.
func (c *cell) members(texts []uint64) []cell {
	switch {
	case c.flags&(mayHold|mayBeNone) == mayHold|mayBeNone:
		held, none := *c, *c
		held.flags &^= mayBeNone
		none.flags &^= mayHold
		return []cell{held, none}
	case c.kind == holdsTruth || c.kind == holdsChoice:
		return c.bits()
	case c.kind == holdsText && c.set == anyText && len(texts) > 0:
		return c.oneOf(texts)
	case c.fewWholes():
		var pieces []cell
		for v := math.Ceil(c.low); v <= c.high; v++ {
			piece := *c
			piece.low, piece.high = v, v
			pieces = append(pieces, piece)
		}
		return pieces
	}
	return nil
}

func (c *cell) bits() []cell {
	var pieces []cell
	for set := c.set; set != 0; set &= set - 1 {
		piece := *c
		piece.set = set & -set
		pieces = append(pieces, piece)
	}
	return pieces
}

// oneOf is each text that a formula mentions, and any other.
func (c *cell) oneOf(texts []uint64) []cell {
	piece := *c
	piece.set = otherText
	pieces := []cell{piece}
	for _, text := range slices.Sorted(slices.Values(texts)) {
		piece.set = text
		pieces = append(pieces, piece)
	}
	return pieces
}

// halves is the two halves of a numeric cell; nil when it cannot be halved any more.
func (c *cell) halves() []cell {
	if c.kind == holdsTruth || c.kind == holdsChoice || c.kind == holdsText || c.low >= c.high {
		return nil
	}
	mid := middle(c.low, c.high)
	upper := math.Nextafter(mid, math.Inf(1))
	if c.whole() {
		mid = math.Floor(mid)
		upper = mid + 1
	}
	if mid < c.low || upper > c.high || math.IsInf(mid, 0) || math.IsInf(upper, 0) {
		return nil
	}
	low, high := *c, *c
	low.high, high.low = mid, upper
	return []cell{low, high}
}

// middle is a number between two ends of which either may be without bound.
func middle(low, high float64) float64 {
	switch {
	case math.IsInf(low, -1) && math.IsInf(high, 1):
		return 0
	case math.IsInf(low, -1):
		return min(-1, 2*high)
	case math.IsInf(high, 1):
		return max(1, 2*low)
	}
	return low/2 + high/2
}
