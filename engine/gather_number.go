package engine

import (
	"math"
	"slices"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// A gatheredNumber is count, sum, min, max, mean, median, first or last of numbers or dates.
type gatheredNumber struct {
	gathering
	fold rules.Fold
}

func (n *gatheredNumber) number(m *machine) quantity.Range {
	switch n.fold {
	case rules.FoldCount:
		return n.count(m)
	case rules.FoldSum:
		return n.sum(m)
	case rules.FoldMin, rules.FoldMax:
		return n.extreme(m)
	case rules.FoldMean, rules.FoldMedian:
		return n.middle(m)
	}
	return n.end(m)
}

// count is from the sure members to all possible ones, and without an upper end where
// there may be others.
func (n *gatheredNumber) count(m *machine) quantity.Range {
	return n.countTo(m, math.MaxInt)
}

// countTo is count, but may stop once so many are sure.
func (n *gatheredNumber) countTo(m *machine, enough int) quantity.Range {
	if f, ok := n.list.(*filtered); ok && !m.deep {
		if plain, ok := f.source.(*listSource); ok {
			return countPlain(m, plain.list(m), plain.slot, f.body, enough)
		}
	}
	low, high := 0, 0
	for i, l := 0, n.list.length(m); i < l; i++ {
		if !m.step() {
			break
		}
		switch n.list.at(m, i) {
		case quantity.Yes:
			low++
			high++
		case quantity.Open:
			high++
		}
	}
	r := quantity.Range{Low: float64(low), High: float64(high)}
	if m.exhausted || !n.list.complete(m) {
		r.High = math.Inf(1)
	}
	return r
}

// countPlain counts the members of a list for which a truth holds.
func countPlain(m *machine, l *list, slot int32, body truthNode, enough int) quantity.Range {
	low, high := 0, 0
	m.steps += len(l.elements)
	v := &m.slots[slot]
	for i, base := range l.elements {
		v.base, v.index = base, int32(i)
		switch body.truth(m) {
		case quantity.Yes:
			low++
			high++
		case quantity.Open:
			high++
		}
		if low >= enough || m.steps > stepLimit {
			return quantity.Range{Low: float64(low), High: math.Inf(1)}
		}
	}
	r := quantity.Range{Low: float64(low), High: float64(high)}
	if !l.complete {
		r.High = math.Inf(1)
	}
	return r
}

// value is the member in the slot, and notes where it may not exist.
func (n *gatheredNumber) value(m *machine) quantity.Range {
	v := &m.slots[n.list.bound()]
	if v.unsure {
		m.unsure = true
	}
	return quantity.Range{Low: v.low, High: v.high}
}

func (n *gatheredNumber) sum(m *machine) quantity.Range {
	if mapped, ok := n.list.(*mapped); ok {
		if plain, ok := mapped.source.(*listSource); ok && mapped.body.asNumber != nil {
			return sumPlain(m, plain.list(m), plain.slot, mapped.body.asNumber)
		}
	}
	var total quantity.Range
	for i, l := 0, n.list.length(m); i < l; i++ {
		if !m.step() {
			return quantity.Everything
		}
		switch n.list.at(m, i) {
		case quantity.Yes:
			total = total.Plus(n.value(m))
		case quantity.Open:
			total = total.Plus(n.value(m).Hull(quantity.Range{}))
		}
	}
	if !n.list.complete(m) {
		return quantity.Everything
	}
	return total
}

// sumPlain sums a number over all members of a list.
func sumPlain(m *machine, l *list, slot int32, body numberNode) quantity.Range {
	var total quantity.Range
	if m.steps += len(l.elements); m.steps > stepLimit || !l.complete {
		m.exhausted = m.exhausted || m.steps > stepLimit
		return quantity.Everything
	}
	v := &m.slots[slot]
	for i, base := range l.elements {
		v.base, v.index = base, int32(i)
		total = total.Plus(body.number(m))
	}
	return total
}

// extreme is the least or greatest member. A sure member bounds it from one side, any
// possible one from the other.
func (n *gatheredNumber) extreme(m *machine) quantity.Range {
	greatest := n.fold == rules.FoldMax
	var r quantity.Range
	possible, sure := false, false
	for i, l := 0, n.list.length(m); i < l; i++ {
		if !m.step() {
			m.unsure = true
			return quantity.Everything
		}
		t := n.list.at(m, i)
		if t == quantity.No {
			continue
		}
		v := n.value(m)
		if greatest {
			v = v.Negate()
		}
		switch {
		case !possible:
			r = v
		case t == quantity.Yes && !sure:
			r = quantity.Range{Low: min(r.Low, v.Low), High: v.High}
		case t == quantity.Yes:
			r = r.Min(v)
		case sure:
			r.Low = min(r.Low, v.Low)
		default:
			r = r.Hull(v)
		}
		possible = true
		sure = sure || t == quantity.Yes
	}
	if !n.list.complete(m) {
		r.Low, possible = math.Inf(-1), true
		if !sure {
			r.High = math.Inf(1)
		}
	}
	if !sure {
		m.unsure = true
	}
	if !possible {
		return quantity.Everything
	}
	if greatest {
		return r.Negate()
	}
	return r
}

// middle is the mean or median; with members that may not be there it lies between the
// least and the greatest possible one.
func (n *gatheredNumber) middle(m *machine) quantity.Range {
	var hull, total quantity.Range
	m.scratch = m.scratch[:0]
	sure, count := true, 0
	for i, l := 0, n.list.length(m); i < l; i++ {
		if !m.step() {
			m.unsure = true
			return quantity.Everything
		}
		t := n.list.at(m, i)
		if t == quantity.No {
			continue
		}
		v := n.value(m)
		if count == 0 {
			hull, total = v, v
		} else {
			hull, total = hull.Hull(v), total.Plus(v)
		}
		count++
		sure = sure && t == quantity.Yes
		m.scratch = append(m.scratch, v.Low, v.High)
	}
	if !n.list.complete(m) {
		m.unsure = m.unsure || !sure || count == 0
		return quantity.Everything
	}
	if count == 0 {
		m.unsure = true
		return quantity.Everything
	}
	if !sure {
		m.unsure = m.unsure || !n.hasSure(m)
		return hull
	}
	if n.fold == rules.FoldMean {
		return total.Over(quantity.Exactly(float64(count)))
	}
	return quantity.Range{Low: median(m.scratch, 0), High: median(m.scratch, 1)}
}

func (n *gatheredNumber) hasSure(m *machine) bool {
	for i := range n.list.length(m) {
		if n.list.at(m, i) == quantity.Yes {
			return true
		}
	}
	return false
}

// median is the median of every second value from start on. The median grows with each
// value, so the medians of the low and of the high ends bound it.
func median(ends []float64, start int) float64 {
	values := make([]float64, 0, len(ends)/2)
	for i := start; i < len(ends); i += 2 {
		values = append(values, ends[i])
	}
	slices.Sort(values)
	k := len(values) / 2
	if len(values)%2 == 1 {
		return values[k]
	}
	r := quantity.Exactly(values[k-1]).Plus(quantity.Exactly(values[k])).Over(quantity.Exactly(2))
	if start == 0 {
		return r.Low
	}
	return r.High
}

// end is the first or last member.
func (n *gatheredNumber) end(m *machine) quantity.Range { return n.endBy(m, n.value) }

func (n *gatheredNumber) endBy(m *machine, value func(*machine) quantity.Range) quantity.Range {
	r, found := quantity.Everything, false
	sure := n.ends(m, n.fold == rules.FoldLast, func(quantity.Truth) {
		if v := value(m); found {
			r = r.Hull(v)
		} else {
			r, found = v, true
		}
	})
	if !sure {
		m.unsure = true
		if !n.list.complete(m) {
			return quantity.Everything
		}
	}
	return r
}

func (n *gatheredNumber) survey(m *machine, s *survey) {
	n.surveyList(m, s, func() {
		if n.fold != rules.FoldCount {
			n.list.surveyMember(m, s)
		}
	})
	if n.fold != rules.FoldCount && n.fold != rules.FoldSum {
		n.surveyEmpty(m, s)
	}
}

func (n *gatheredNumber) sign(m *machine, s *signer) { n.signList(m, s, 'g', n.fold) }

// A gatheredSymbol is the first or last of choices or texts.
type gatheredSymbol struct {
	gathering
	fold rules.Fold
	text bool
}

func (n *gatheredSymbol) symbol(m *machine) uint64 {
	var set uint64
	found := false
	sure := n.ends(m, n.fold == rules.FoldLast, func(quantity.Truth) {
		v := &m.slots[n.list.bound()]
		if v.unsure {
			m.unsure = true
		}
		if found {
			set = joinSymbols(set, v.set, n.text)
		} else {
			set, found = v.set, true
		}
	})
	if !sure {
		m.unsure = true
	}
	return set
}

func (n *gatheredSymbol) survey(m *machine, s *survey) {
	n.surveyList(m, s, func() { n.list.surveyMember(m, s) })
	n.surveyEmpty(m, s)
}

func (n *gatheredSymbol) sign(m *machine, s *signer) { n.signList(m, s, 'f', n.fold) }
