package engine

import (
	"math"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// A date keeps the precision it was written with: "2027-03" is a day of March, and its
// label ends on the 31st whichever day that is. The label goes with the date wherever the
// date itself is handed on: by a name, a condition, the first of a list. A date that is
// worked out from others is a day, and its label ends with it.

// A labelled node yields a date that may have been written to its month or year.
type labelled interface {
	numberNode
	label(m *machine) quantity.Range
	surveyLabel(m *machine, s *survey)
}

// labelOf is the last day of the label of what a node yields.
func labelOf(m *machine, n numberNode) quantity.Range {
	if l, ok := n.(labelled); ok {
		return l.label(m)
	}
	return n.number(m)
}

func surveyLabelOf(m *machine, s *survey, n numberNode) {
	if l, ok := n.(labelled); ok {
		l.surveyLabel(m, s)
		return
	}
	n.survey(m, s)
}

// An endOfLabel is end_of_label(x).
type endOfLabel struct{ of numberNode }

func (n *endOfLabel) number(m *machine) quantity.Range { return labelOf(m, n.of) }
func (n *endOfLabel) survey(m *machine, s *survey)     { surveyLabelOf(m, s, n.of) }
func (n *endOfLabel) sign(m *machine, s *signer)       { s.tag('e'); n.of.sign(m, s) }

// label is the one written; of a date that is not written it is some day to the end of the
// year.
func (n *readNumber) label(m *machine) quantity.Range {
	c := &m.cells[n.cell(m)]
	if !c.sure() {
		m.unsure = true
	}
	return c.endOfLabel()
}

func (c *cell) endOfLabel() quantity.Range {
	if !math.IsNaN(c.label) {
		return quantity.Exactly(c.label)
	}
	return quantity.Range{Low: c.low, High: endOfYear(c.high)}
}

func (n *readNumber) surveyLabel(m *machine, s *survey) {
	i := n.cell(m)
	if c := &m.cells[i]; s.everything || !c.sure() || math.IsNaN(c.label) {
		n.place.survey(m, s)
	}
}

func (n *slotNumber) label(m *machine) quantity.Range {
	v := &m.slots[n.slot]
	if v.unsure {
		m.unsure = true
	}
	return v.label
}

func (n *slotNumber) surveyLabel(m *machine, s *survey) { n.survey(m, s) }

func (n *choiceOfNumbers) label(m *machine) quantity.Range {
	switch n.when.truth(m) {
	case quantity.Yes:
		return labelOf(m, n.then)
	case quantity.No:
		return labelOf(m, n.otherwise)
	}
	return labelOf(m, n.then).Hull(labelOf(m, n.otherwise))
}

func (n *choiceOfNumbers) surveyLabel(m *machine, s *survey) {
	surveyChoice(m, s, n.when, &endOfLabel{n.then}, &endOfLabel{n.otherwise})
}

func (n *otherwiseNumber) label(m *machine) quantity.Range {
	c := &m.cells[n.cell(m)]
	if c.flags&mayLack != 0 {
		m.unsure = true
	}
	switch c.flags & (mayHold | mayBeNone) {
	case mayHold:
		return c.endOfLabel()
	case mayBeNone:
		return labelOf(m, n.otherwise)
	}
	return c.endOfLabel().Hull(labelOf(m, n.otherwise))
}

func (n *otherwiseNumber) surveyLabel(m *machine, s *survey) { n.survey(m, s) }

func (n *definedNumber) label(m *machine) quantity.Range {
	n.set(m)
	return labelOf(m, n.rest)
}

func (n *definedNumber) surveyLabel(m *machine, s *survey) {
	n.set(m)
	surveyLabelOf(m, s, n.rest)
}

// label of the first or last of a list is that of the member; of any other it is the day.
func (n *gatheredNumber) label(m *machine) quantity.Range {
	if n.fold == rules.FoldFirst || n.fold == rules.FoldLast {
		return n.endBy(m, n.labelOfMember)
	}
	return n.number(m)
}

func (n *gatheredNumber) labelOfMember(m *machine) quantity.Range {
	v := &m.slots[n.list.bound()]
	if v.unsure {
		m.unsure = true
	}
	return v.label
}

func (n *gatheredNumber) surveyLabel(m *machine, s *survey) { n.survey(m, s) }
