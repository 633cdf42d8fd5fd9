package quantity

import (
	"math"
	"math/big"
)

// lender returns the first unit of the figure that another part can take.
func (f writtenFigure) lender() (Unit, bool) {
	for _, m := range f.parts {
		if m.hasUnit && !m.closed {
			return m.unit, true
		}
	}
	return Unit{}, false
}

// lend gives parts without a unit the one offered, if any.
func (f writtenFigure) lend(unit Unit, ok bool) {
	for _, m := range f.parts {
		if !m.hasUnit && ok {
			m.unit, m.hasUnit = unit, true
		}
	}
}

// figure works out what the parts say together, once missing units are lent.
func (f writtenFigure) figure() (Figure, *Fault) {
	reading := f.parts[0]
	for _, m := range f.parts {
		if fault := m.fits(reading); fault != nil {
			return Figure{}, fault
		}
	}
	middle := reading.unit.exact(reading.number)
	low, high := middle, middle
	switch last := f.parts[len(f.parts)-1]; f.kind {
	case evenFigure, unevenFigure:
		low = new(big.Rat).Sub(middle, last.unit.exactDifference(last.number))
		high = new(big.Rat).Add(middle, f.parts[1].unit.exactDifference(f.parts[1].number))
		if last.number.Sign() < 0 {
			return Figure{}, &Fault{FaultTolerance, last.from, last.to, "The tolerance " + quoted(last.text) + " is negative.", "Write ± and the tolerance without a sign."}
		}
	case spanFigure:
		high = last.unit.exact(last.number)
		if low.Cmp(high) > 0 {
			return Figure{}, &Fault{FaultOrder, reading.from, last.to, "The range begins at " + reading.written() + ", above its end at " + last.written() + ".", "Write the lower end first."}
		}
		middle = new(big.Rat).Add(low, high)
		middle.Quo(middle, big.NewRat(2, 1))
	}
	result := Figure{
		Range:      Range{nearestFloat(low), nearestFloat(high)},
		Reading:    nearestFloat(middle),
		Unit:       reading.unit,
		Decimals:   f.decimals(),
		Toleranced: f.kind != plainFigure && f.kind != sidedFigure,
		OneSided:   f.kind == sidedFigure,
		text:       f.text(),
	}
	if math.IsInf(result.Range.Low, 0) || math.IsInf(result.Range.High, 0) {
		return Figure{}, &Fault{FaultTooLarge, reading.from, reading.to, "This figure is too large to reckon with.", "Write the figure in a unit that suits it."}
	}
	switch f.sense {
	case ">", ">=":
		result.Range.High = math.Inf(1)
	case "<", "<=":
		result.Range.Low = math.Inf(-1)
	}
	return result, nil
}

// fits refuses a part without a unit beside one with a unit that cannot be lent, and a part
// that measures something else than the reading.
func (m *measure) fits(reading *measure) *Fault {
	switch {
	case m.hasUnit != reading.hasUnit:
		bare, other := m, reading
		if m.hasUnit {
			bare, other = reading, m
		}
		return &Fault{FaultUnitMissing, bare.from, bare.to, quoted(bare.text) + " has no unit, and cannot take that of " + quoted(other.written()) + ".", "Write its unit behind it."}
	case !m.unit.sameKind(reading.unit):
		return &Fault{FaultUnitMixed, m.from, m.to, quoted(m.written()) + " is " + withArticle(m.unit) + ", and " + quoted(reading.written()) + " is " + withArticle(reading.unit) + ".", "Write both in units of one kind, such as mm and in."}
	}
	return nil
}

// withArticle names what a unit measures in the middle of a sentence.
func withArticle(u Unit) string {
	switch {
	case u.level:
		return "a level in " + u.name
	case u.dimension == Plain && u.name != "":
		return "a number in " + u.name
	case u.dimension == Plain:
		return u.dimension.String()
	}
	return "a figure of " + u.dimension.String()
}

// decimals is how many digits after the point the author meant in the reading's unit.
func (f writtenFigure) decimals() int {
	most := 0
	for _, m := range f.parts {
		if m.unit == f.parts[0].unit {
			most = max(most, m.decimals)
		}
	}
	return most
}

// text writes the figure in the one spelling of its form. A unit that all parts share is
// written once.
func (f writtenFigure) text() string {
	shared := true
	for _, m := range f.parts {
		shared = shared && m.unit == f.parts[0].unit && !m.closed
	}
	written := make([]string, len(f.parts))
	for i, m := range f.parts {
		written[i] = m.written()
		if shared && i < len(f.parts)-1 {
			written[i] = m.text
		}
	}
	switch f.kind {
	case evenFigure:
		return written[0] + " ± " + written[1]
	case unevenFigure:
		return written[0] + " +" + written[1] + "/-" + written[2]
	case spanFigure:
		return written[0] + " to " + written[1]
	case sidedFigure:
		return f.sense + " " + written[0]
	}
	return written[0]
}
