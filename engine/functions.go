package engine

import (
	"math"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// A call is a function on numbers and dates.
type call struct {
	code      rules.FunctionCode
	of        []numberNode
	tolerance quantity.Tolerance // for floor, ceil, round
}

func (n *call) number(m *machine) quantity.Range {
	a := n.of[0].number(m)
	if len(n.of) == 1 {
		return n.one(m, a)
	}
	for _, of := range n.of[1:] {
		a = n.two(a, of.number(m))
	}
	return a
}

// one is a function of one argument.
func (n *call) one(m *machine, a quantity.Range) quantity.Range {
	switch n.code {
	case rules.FunctionAbs:
		return a.Abs()
	case rules.FunctionSqrt:
		if a.Low < 0 {
			m.unsure = true
		}
		return a.Sqrt()
	case rules.FunctionFloor:
		return a.Floor(n.tolerance)
	case rules.FunctionCeil:
		return a.Ceil(n.tolerance)
	case rules.FunctionRound:
		return a.Round(n.tolerance)
	case rules.FunctionSin:
		return a.Sin()
	case rules.FunctionCos:
		return a.Cos()
	case rules.FunctionTan:
		return a.Tan()
	case rules.FunctionEndOfMonth:
		return days(a, quantity.Day.EndOfMonth)
	case rules.FunctionEndOfYear:
		return days(a, quantity.Day.EndOfYear)
	case rules.FunctionStartOfYear:
		return days(a, quantity.Day.StartOfYear)
	case rules.FunctionYearOf:
		return quantity.Range{Low: yearOf(a.Low), High: yearOf(a.High)}
	}
	return a // min, max, earliest, latest of one; end_of_label of a computed date
}

// two is a function of two arguments, or one step of a function of several.
func (n *call) two(a, b quantity.Range) quantity.Range {
	switch n.code {
	case rules.FunctionMin, rules.FunctionEarliest:
		return a.Min(b)
	case rules.FunctionMax, rules.FunctionLatest:
		return a.Max(b)
	case rules.FunctionFloor:
		return a.Over(b).Floor(n.tolerance).Times(b)
	case rules.FunctionCeil:
		return a.Over(b).Ceil(n.tolerance).Times(b)
	case rules.FunctionRound:
		return a.Over(b).Round(n.tolerance).Times(b)
	case rules.FunctionHypot:
		return a.Hypot(b)
	case rules.FunctionAtan2:
		return quantity.Atan2(a, b)
	case rules.FunctionArc:
		return a.Times(b)
	case rules.FunctionDaysAfter:
		return a.Plus(b)
	case rules.FunctionWeeksAfter:
		return a.Plus(b.Times(quantity.Exactly(7)))
	case rules.FunctionMonthsAfter:
		return after(a, b, quantity.Day.PlusMonths)
	case rules.FunctionYearsAfter:
		return after(a, b, quantity.Day.PlusYears)
	case rules.FunctionDaysBetween:
		return b.Minus(a)
	case rules.FunctionMonthsBetween:
		return between(a, b, quantity.MonthsBetween)
	case rules.FunctionYearsBetween:
		return between(a, b, quantity.YearsBetween)
	}
	return quantity.Everything
}

// farDay bounds the days that calendar functions are asked about; what lies beyond is
// without bound. It is some 100 million years off.
const farDay = 1 << 55

// asDay turns a day number of a range's end into a day; ok is false beyond all days.
func asDay(v float64) (quantity.Day, bool) {
	if v <= -farDay || v >= farDay {
		return 0, false
	}
	return quantity.Day(v), true
}

// days applies a calendar function that never falls to both ends.
func days(a quantity.Range, f func(quantity.Day) quantity.Day) quantity.Range {
	end := func(v float64) float64 {
		d, ok := asDay(v)
		if !ok {
			return v
		}
		return float64(f(d))
	}
	return quantity.Range{Low: end(a.Low), High: end(a.High)}
}

func endOfYear(v float64) float64 {
	return days(quantity.Exactly(v), quantity.Day.EndOfYear).High
}

func yearOf(v float64) float64 {
	d, ok := asDay(v)
	if !ok {
		return v
	}
	return float64(d.Year())
}

// after is the day n months or years after a. It grows with both.
func after(a, n quantity.Range, f func(quantity.Day, int64) quantity.Day) quantity.Range {
	end := func(v, n float64) float64 {
		d, ok := asDay(v)
		switch {
		case !ok:
			return v
		case math.Abs(n) >= farDay:
			return math.Inf(int(math.Copysign(1, n)))
		}
		return float64(f(d, int64(n)))
	}
	return quantity.Range{Low: end(a.Low, n.Low), High: end(a.High, n.High)}
}

// between counts whole months or years from a to b. It grows with b and falls with a.
func between(a, b quantity.Range, f func(a, b quantity.Day) int64) quantity.Range {
	end := func(a, b float64, beyond float64) float64 {
		from, ok := asDay(a)
		to, also := asDay(b)
		if !ok || !also {
			return beyond
		}
		return float64(f(from, to))
	}
	return quantity.Range{Low: end(a.High, b.Low, math.Inf(-1)), High: end(a.Low, b.High, math.Inf(1))}
}

func (n *call) survey(m *machine, s *survey) {
	for _, of := range n.of {
		of.survey(m, s)
	}
	if n.code == rules.FunctionSqrt && quietly(m, n.of[0]).Low < 0 {
		s.blame(Undefined, -1, n)
	}
}

func (n *call) sign(m *machine, s *signer) {
	s.tag('C')
	s.int(int64(n.code))
	s.int(int64(len(n.of))) // max(min(a, b), c) is not max(min(a, b, c))
	for _, of := range n.of {
		of.sign(m, s)
	}
}
