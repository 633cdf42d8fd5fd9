package engine

import (
	"math"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// A compareLimit holds one cell against a constant: the form that most clauses have.
type compareLimit struct {
	compareNumbers
	place *place
	band  quantity.Range // the floats that are the same figure as the limit
}

func (n *compareLimit) truth(m *machine) quantity.Truth {
	c := &m.cells[n.place.cell(m)]
	if !c.sure() {
		return quantity.Open
	}
	var t quantity.Truth
	switch n.sense {
	case rules.AtLeast:
		t = sureWhen(c.low >= n.band.Low, c.high < n.band.Low)
	case rules.Less:
		t = sureWhen(c.high < n.band.Low, c.low >= n.band.Low)
	case rules.AtMost:
		t = sureWhen(c.high <= n.band.High, c.low > n.band.High)
	case rules.More:
		t = sureWhen(c.low > n.band.High, c.high <= n.band.High)
	case rules.Equal:
		t = sureWhen(c.low >= n.band.Low && c.high <= n.band.High, c.high < n.band.Low || c.low > n.band.High)
	default:
		t = sureWhen(c.high < n.band.Low || c.low > n.band.High, c.low >= n.band.Low && c.high <= n.band.High)
	}
	if t == quantity.Open && m.tampered {
		return m.supposed(&n.compareNumbers)
	}
	return t
}

// A countLimit holds a count against a constant and stops counting once it is decided.
type countLimit struct {
	compareNumbers
	count  *gatheredNumber
	enough int // so many sure members decide it
}

func (n *countLimit) truth(m *machine) quantity.Truth {
	saved := m.unsure
	m.unsure = false
	r := n.count.countTo(m, n.enough)
	unsure := m.unsure
	m.unsure = saved
	if unsure {
		return quantity.Open
	}
	t := compareRanges(n.sense, r, n.right.number(m), n.tolerance)
	if t == quantity.Open && m.tampered {
		return m.supposed(&n.compareNumbers)
	}
	return t
}

// quickly is the quick form of a comparison with a constant, the comparison itself where
// there is none.
func (n *compareNumbers) quickly() truthNode {
	limit, ok := n.right.(*constantNumber)
	if !ok || !limit.value.IsExact() || n.shift != 0 {
		return n
	}
	switch left := n.left.(type) {
	case *readNumber:
		return &compareLimit{compareNumbers: *n, place: &left.place, band: n.tolerance.Band(limit.value.Low)}
	case *gatheredNumber:
		if left.fold == rules.FoldCount && math.Abs(limit.value.Low) < 1e9 {
			// One more than the limit is sure to decide any comparison with it.
			return &countLimit{compareNumbers: *n, count: left, enough: int(math.Floor(limit.value.Low)) + 1}
		}
	}
	return n
}
