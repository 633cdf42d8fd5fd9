package engine

import (
	"slices"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// middle is the mean or median; with members that may not be there it lies between the
// least and the greatest possible one.
func (n *gatheredNumber) middle(m *machine) quantity.Range {
	var hull quantity.Range
	var total quantity.Sum
	from := len(m.scratch) // a median within a median keeps the ends of the outer one
	defer func() { m.scratch = m.scratch[:from] }()
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
			hull = v
		} else {
			hull = hull.Hull(v)
		}
		total.Add(v)
		count++
		sure = sure && t == quantity.Yes
		m.scratch = append(m.scratch, v.Low, v.High)
	}
	if !n.list.complete(m) {
		n.others(m)
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
		return total.Total().Over(quantity.Exactly(float64(count)))
	}
	ends := m.scratch[from:]
	return quantity.Range{Low: median(ends, 0), High: median(ends, 1)}
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
