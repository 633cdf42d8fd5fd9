package engine

// A rawCause is a cause by the number of its cell or list.
type rawCause struct {
	kind  CauseKind
	cell  int32  // -1 for none
	list  int32  // -1 for none
	label string // of the one part of the list, "" for the list; of what is undefined why it is, "" for arithmetic
}

// causesOf finds why a truth is open: the cells behind its undecided parts, and whatever
// else keeps them open. A missing particular is named only if its value alone can still
// change the answer.
func (m *machine) causesOf(n truthNode) []rawCause {
	exhausted := m.exhausted
	s := newSurvey(false)
	m.steps, m.limit, m.exhausted = 0, surveyLimit, false
	n.survey(m, s)
	m.steps, m.limit = 0, stepLimit // for all looks at what matters together
	var causes []rawCause
	alone := len(s.touched) == 1 && len(s.unknown) == 0
	for i := range s.touched {
		kind, counts := m.causeKind(&s.touched[i])
		if !counts || kind == Missing && !alone && !m.matters(n, s, i) {
			continue
		}
		causes = m.blamed(causes, kind, s.touched[i].cell)
	}
	for _, u := range s.unknown {
		// That a list may be empty follows from what its members hang on, where that is told.
		if u.kind != NoSuchPart || len(causes) == 0 {
			causes = append(causes, u.cause())
		}
	}
	if len(causes) == 0 {
		causes = m.everyMissing(s)
	}
	if exhausted {
		causes = append(causes, rawCause{kind: Budget, cell: -1, list: -1})
	}
	return causes
}

// blamed adds a cell to the causes. Where a figure that follows from others is missing, it
// is those others that are missing, or the lists that may hold more.
func (m *machine) blamed(causes []rawCause, kind CauseKind, at int32) []rawCause {
	d := m.derived[at]
	if d == nil || kind != Missing {
		return append(causes, rawCause{kind: kind, cell: at, list: -1})
	}
	for _, from := range m.missing(d) {
		causes = append(causes, rawCause{kind: Missing, cell: from, list: -1})
	}
	for _, list := range d.lists {
		causes = append(causes, rawCause{kind: UnknownOthers, cell: -1, list: list})
	}
	if d.known {
		// All that it could follow from is there, and nothing follows.
		causes = append(causes, rawCause{kind: Missing, cell: at, list: -1})
	}
	return causes
}

func (u unknown) cause() rawCause {
	return rawCause{kind: u.kind, cell: u.cell, list: u.list, label: u.label}
}

// everyMissing names all that is missing where none matters alone.
func (m *machine) everyMissing(s *survey) []rawCause {
	var causes []rawCause
	for i := range s.touched {
		if kind, counts := m.causeKind(&s.touched[i]); counts {
			causes = m.blamed(causes, kind, s.touched[i].cell)
		}
	}
	return causes
}

// causeKind says what is wrong with a cell; counts is false where nothing is.
func (m *machine) causeKind(t *touch) (kind CauseKind, counts bool) {
	c := &m.cells[t.cell]
	switch {
	case c.flags&mayLack != 0 && c.flags&mayHold == 0:
		return NotFitted, true
	case c.flags&mayHold == 0:
		return StatedNone, true
	case c.flags&written == 0:
		return Missing, true
	default:
		return Tolerance, !c.known()
	}
}
