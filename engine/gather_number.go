package engine

import (
	"math"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// A gatheredNumber is count, sum, min, max, mean, median, first or last of numbers or dates.
type gatheredNumber struct {
	gathering
	fold  rules.Fold
	total bool // the value of a member that nobody has spoken of is sure to exist
}

// others notes that there may be members that nobody has spoken of, whose value need not
// exist.
func (n *gatheredNumber) others(m *machine) {
	if !n.total {
		m.unsure = true
	}
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
		if low >= enough || m.steps > m.limit {
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
			l := plain.list(m)
			if !l.complete {
				n.others(m)
			}
			return sumPlain(m, l, plain.slot, mapped.body.asNumber)
		}
	}
	var total quantity.Sum
	for i, l := 0, n.list.length(m); i < l; i++ {
		if !m.step() {
			return quantity.Everything
		}
		switch n.list.at(m, i) {
		case quantity.Yes:
			total.Add(n.value(m))
		case quantity.Open:
			total.Add(n.value(m).Hull(quantity.Range{}))
		}
	}
	if !n.list.complete(m) {
		n.others(m)
		return quantity.Everything
	}
	return total.Total()
}

// sumPlain sums a number over all members of a list.
func sumPlain(m *machine, l *list, slot int32, body numberNode) quantity.Range {
	if m.steps += len(l.elements); m.steps > m.limit || !l.complete {
		m.exhausted = m.exhausted || m.steps > m.limit
		return quantity.Everything
	}
	var total quantity.Sum
	v := &m.slots[slot]
	for i, base := range l.elements {
		v.base, v.index = base, int32(i)
		total.Add(body.number(m))
	}
	return total.Total()
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
		n.others(m)
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
	n.surveyList(m, s, n.fold != rules.FoldCount, func() {
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
	n.surveyList(m, s, true, func() { n.list.surveyMember(m, s) })
	n.surveyEmpty(m, s)
}

func (n *gatheredSymbol) sign(m *machine, s *signer) { n.signList(m, s, 'f', n.fold) }
