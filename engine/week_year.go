package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A weekYear is week_year(text): some day of the week that a tyre's date code means. A text
// that is no such code means none, and nothing can be said of a day that is none.
type weekYear struct {
	of    symbolNode
	codes [2]uint64 // an early and a late code, which stand for others where the text is not known
}

// weekYear compiles week_year.
func (c *compiler) weekYear(of rules.Node) numberNode {
	return &weekYear{c.symbol(of), [2]uint64{c.ground.text("0100"), c.ground.text("5299")}}
}

// everyWeek is all days that a code can mean.
var everyWeek = quantity.Range{Low: float64(rules.WeekCodes.From), High: float64(rules.WeekCodes.To)}

func (n *weekYear) number(m *machine) quantity.Range {
	text := n.of.symbol(m)
	if text < firstText {
		m.unsure = true // it may be no code
		return everyWeek
	}
	week, fault := rules.WeekOfCode(m.texts[text])
	if fault != "" {
		m.unsure = true
		return everyWeek
	}
	return quantity.Range{Low: float64(week.From), High: float64(week.To)}
}

// label is the last day of the week.
func (n *weekYear) label(m *machine) quantity.Range {
	r := n.number(m)
	if r != everyWeek {
		r.Low = r.High
	}
	return r
}

// survey tells which code it hangs on, that one is no code, or that a week is not a day.
func (n *weekYear) survey(m *machine, s *survey) { n.surveyAs(m, s, true) }

func (n *weekYear) surveyLabel(m *machine, s *survey) { n.surveyAs(m, s, false) }

func (n *weekYear) surveyAs(m *machine, s *survey, anyDay bool) {
	n.of.survey(m, s)
	saved := m.unsure
	text := n.of.symbol(m)
	m.unsure = saved
	found := unknown{list: -1, by: n, cell: -1}
	if at, ok := placeOfNode(n.of); ok {
		found.cell = at.cell(m)
	}
	if text < firstText {
		s.mention(n.codes[0])
		s.mention(n.codes[1])
		return
	}
	switch _, fault := rules.WeekOfCode(m.texts[text]); {
	case fault != "":
		found.kind, found.label = Undefined, vehicle.Quote(m.texts[text])+" "+fault
		s.lacks(found)
	case anyDay && !s.everything && found.cell >= 0:
		found.kind = Tolerance
		s.lacks(found)
	}
}

func (n *weekYear) sign(m *machine, s *signer) {
	s.tag('W')
	n.of.sign(m, s)
}
