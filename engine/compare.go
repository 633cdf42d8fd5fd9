package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// compareRanges compares two ranges by the same-figure rule.
func compareRanges(sense rules.Comparison, l, r quantity.Range, t quantity.Tolerance) quantity.Truth {
	switch sense {
	case rules.AtLeast:
		return quantity.IsAtLeast(l, r, t)
	case rules.AtMost:
		return quantity.IsAtMost(l, r, t)
	case rules.More:
		return quantity.IsMoreThan(l, r, t)
	case rules.Less:
		return quantity.IsLessThan(l, r, t)
	case rules.Equal:
		return quantity.IsEqual(l, r, t)
	default:
		return quantity.IsDifferent(l, r, t)
	}
}

// A compareNumbers compares two numbers of one dimension, or two dates.
type compareNumbers struct {
	sense       rules.Comparison
	left, right numberNode
	tolerance   quantity.Tolerance
	shift       float64 // added to left: the clause's allowance
}

func (n *compareNumbers) truth(m *machine) quantity.Truth {
	saved := m.unsure
	m.unsure = false
	l, r := n.sides(m)
	unsure := m.unsure
	m.unsure = saved
	if unsure {
		return quantity.Open
	}
	t := compareRanges(n.sense, l, r, n.tolerance)
	if t == quantity.Open && m.tampered {
		return m.supposed(n)
	}
	return t
}

func (n *compareNumbers) sides(m *machine) (l, r quantity.Range) {
	l, r = n.left.number(m), n.right.number(m)
	if n.shift != 0 {
		l = l.Plus(quantity.Exactly(n.shift))
	}
	return l, r
}

func (n *compareNumbers) survey(m *machine, s *survey) {
	if s.days != nil {
		s.days.look(m, n)
	}
	t := n.truth(m)
	byRanges := m.unsupposed(n, t)
	if byRanges != quantity.Open && !s.everything {
		return
	}
	n.left.survey(m, s)
	n.right.survey(m, s)
	if byRanges != quantity.Open {
		return
	}
	saved := m.unsure
	l, r := n.sides(m)
	m.unsure = saved
	// A limit that is exact cuts the range of the cell it is held against.
	if r.IsExact() {
		s.cutBy(m, n.left, n.tolerance.Band(r.Low-n.shift))
	}
	if l.IsExact() {
		s.cutBy(m, n.right, n.tolerance.Band(l.Low))
	}
	if t != quantity.Open {
		return
	}
	a := s.atom(signature(m, n))
	a.reflexive = n.shift == 0 && signature(m, n.left) == signature(m, n.right)
}

// sign writes the comparison as one of two relations, so that a comparison and its
// negation, and a comparison read from the other side, have the same bytes.
func (n *compareNumbers) sign(m *machine, s *signer) {
	side := func(of numberNode, shift float64) []byte {
		part := signer{inner: s.inner}
		of.sign(m, &part)
		if shift != 0 {
			part.tag('+')
			part.float(shift)
		}
		return part.bytes
	}
	l, r := side(n.left, n.shift), side(n.right, 0)
	relation, _, swap := canonical(n.sense)
	if swap || relation == '=' && string(l) > string(r) {
		l, r = r, l
	}
	s.tag(relation)
	s.text(string(l))
	s.text(string(r))
}

// canonical writes a comparison as l >= r or l = r, possibly negated and with its sides
// swapped: l < r is not (l >= r), l <= r is r >= l, l > r is not (r >= l).
func canonical(sense rules.Comparison) (relation byte, negated, swap bool) {
	switch sense {
	case rules.AtLeast:
		return 'g', false, false
	case rules.Less:
		return 'g', true, false
	case rules.AtMost:
		return 'g', false, true
	case rules.More:
		return 'g', true, true
	case rules.Equal:
		return '=', false, false
	default:
		return '=', true, false
	}
}

// supposed is what settling supposes of an open comparison for the time being.
func (m *machine) supposed(n *compareNumbers) quantity.Truth {
	t, ok := m.assumed[signature(m, n)]
	if !ok {
		return quantity.Open
	}
	if _, negated, _ := canonical(n.sense); negated {
		return t.Not()
	}
	return t
}

// unsupposed is the truth of a comparison without what settling supposes of it: it still
// hangs on the cells it reads, and so does what is supposed.
func (m *machine) unsupposed(n truthNode, t quantity.Truth) quantity.Truth {
	if !m.tampered || t == quantity.Open {
		return t
	}
	m.tampered = false
	t = n.truth(m)
	m.tampered = true
	return t
}

// sureWhen is yes, no or open by two tests of which at most one holds.
func sureWhen(yes, no bool) quantity.Truth {
	if yes {
		return quantity.Yes
	}
	if no {
		return quantity.No
	}
	return quantity.Open
}

// A compareSymbols compares two choices of one list, or two texts.
type compareSymbols struct {
	negated     bool
	left, right symbolNode
	text        bool
}

func (n *compareSymbols) truth(m *machine) quantity.Truth {
	saved := m.unsure
	m.unsure = false
	l, r := n.left.symbol(m), n.right.symbol(m)
	unsure := m.unsure
	m.unsure = saved
	if unsure {
		return quantity.Open
	}
	t := sameSymbol(l, r, n.text)
	if t == quantity.Open && m.tampered {
		if supposed, ok := m.assumed[signature(m, n)]; ok {
			t = supposed
		}
	}
	if n.negated {
		return t.Not()
	}
	return t
}

// sameSymbol compares two symbols: sets of bits, or numbers of texts.
func sameSymbol(l, r uint64, text bool) quantity.Truth {
	if text {
		if l == anyText || r == anyText || l == otherText && r == otherText {
			return quantity.Open
		}
		return sureWhen(l == r, l != r)
	}
	return sureWhen(l == r && l&(l-1) == 0 && l != 0, l&r == 0)
}

func (n *compareSymbols) survey(m *machine, s *survey) {
	t := n.truth(m)
	if !s.everything && m.unsupposed(n, t) != quantity.Open {
		return
	}
	n.left.survey(m, s)
	n.right.survey(m, s)
	if t != quantity.Open {
		return
	}
	a := s.atom(signature(m, n))
	a.reflexive = signature(m, n.left) == signature(m, n.right)
}

func (n *compareSymbols) sign(m *machine, s *signer) {
	l, r := signer{inner: s.inner}, signer{inner: s.inner}
	n.left.sign(m, &l)
	n.right.sign(m, &r)
	if string(l.bytes) > string(r.bytes) {
		l, r = r, l
	}
	s.tag('s')
	s.text(string(l.bytes))
	s.text(string(r.bytes))
}

// A compareTruths is == or != on truths.
type compareTruths struct {
	negated     bool
	left, right truthNode
}

func (n *compareTruths) truth(m *machine) quantity.Truth {
	l, r := n.left.truth(m), n.right.truth(m)
	if l == quantity.Open || r == quantity.Open {
		return quantity.Open
	}
	return sureWhen((l == r) != n.negated, (l == r) == n.negated)
}

func (n *compareTruths) survey(m *machine, s *survey) {
	if s.everything || n.truth(m) == quantity.Open {
		n.left.survey(m, s)
		n.right.survey(m, s)
	}
}

func (n *compareTruths) sign(m *machine, s *signer) {
	s.tag('b')
	n.left.sign(m, s)
	n.right.sign(m, s)
}
