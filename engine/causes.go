package engine

import (
	"gapsheet/vehicle/quantity"
)

// A rawCause is a cause by the number of its cell or list.
type rawCause struct {
	kind  CauseKind
	cell  int32  // -1 for none
	list  int32  // -1 for none
	label string // of the one part of the list, "" for the list
}

// causesOf finds why a truth is open: the cells behind its undecided parts, and whatever
// else keeps them open. A missing particular is named only if its value alone can still
// change the answer.
func (m *machine) causesOf(n truthNode) []rawCause {
	s := newSurvey(false)
	n.survey(m, s)
	exhausted := m.exhausted
	var causes []rawCause
	missing := s.missing(m)
	for i := range s.touched {
		kind, counts := m.causeKind(&s.touched[i])
		if !counts || kind == Missing && missing > 1 && !m.matters(n, s, i) {
			continue
		}
		causes = append(causes, rawCause{kind: kind, cell: s.touched[i].cell, list: -1})
	}
	for _, u := range s.unknown {
		causes = append(causes, u.cause())
	}
	if len(causes) == 0 {
		causes = m.everyMissing(s)
	}
	if exhausted {
		causes = append(causes, rawCause{kind: Budget, cell: -1, list: -1})
	}
	return causes
}

func (u unknown) cause() rawCause {
	return rawCause{kind: u.kind, cell: -1, list: u.list, label: u.label}
}

// everyMissing names all that is missing where none matters alone.
func (m *machine) everyMissing(s *survey) []rawCause {
	var causes []rawCause
	for i := range s.touched {
		if kind, counts := m.causeKind(&s.touched[i]); counts {
			causes = append(causes, rawCause{kind: kind, cell: s.touched[i].cell, list: -1})
		}
	}
	return causes
}

func (s *survey) missing(m *machine) int {
	n := 0
	for i := range s.touched {
		if kind, counts := m.causeKind(&s.touched[i]); counts && kind == Missing {
			n++
		}
	}
	return n
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

// Bounds on the looks at exact cars that tell whether a missing particular matters.
const (
	allCompletions  = 512
	someCompletions = 192
)

// matters reports whether the value of one missing particular alone can change the
// answer for some values of the others. All combinations of representative values are
// tried where they are few; where they are many, a fixed sample is, and what it does not
// rule out is named.
func (m *machine) matters(n truthNode, s *survey, which int) bool {
	kept := m.keep(s)
	defer m.putBack(s, kept)
	choices := make([][]cell, len(s.touched))
	total := 1
	for i := range s.touched {
		choices[i] = kept[i].representatives(&s.touched[i], s.texts)
		if i != which && total <= allCompletions {
			total *= len(choices[i])
		}
	}
	all := total <= allCompletions
	tries := total
	if !all {
		tries = someCompletions
	}
	seed := uint64(1)
	for try := range tries {
		rest := try
		for i := range s.touched {
			if i == which {
				continue
			}
			pick := rest % len(choices[i])
			rest /= len(choices[i])
			if !all {
				seed = seed*6364136223846793005 + 1442695040888963407
				pick = int(seed>>33) % len(choices[i])
			}
			m.cells[s.touched[i].cell] = choices[i][pick]
		}
		if m.changes(n, s.touched[which].cell, choices[which]) {
			return true
		}
	}
	return !all
}

// changes reports whether the answer is not the same for all values of one cell.
func (m *machine) changes(n truthNode, at int32, values []cell) bool {
	var first quantity.Truth
	for i, v := range values {
		m.cells[at] = v
		t := n.truth(m)
		if i > 0 && t != first {
			return true
		}
		first = t
	}
	return false
}

// representatives are exact cells that stand for all that a cell may be: the ends of the
// pieces that limits cut it into, each choice, each text that is mentioned. What may not
// be there at all is one more.
func (c cell) representatives(t *touch, texts []uint64) []cell {
	if c.flags&mayHold == 0 {
		return []cell{c}
	}
	held := c
	held.flags = c.flags&written | mayHold
	var out []cell
	switch c.kind {
	case holdsTruth, holdsChoice:
		out = held.bits()
	case holdsText:
		out = []cell{held.corner(false, nil)}
		if c.set == anyText {
			for _, text := range texts {
				held.set = text
				out = append(out, held)
			}
		}
	default:
		pieces := held.cutBy(t.cuts)
		if len(pieces) == 0 {
			pieces = held.halves()
		}
		if len(pieces) == 0 {
			pieces = []cell{held}
		}
		for _, piece := range pieces {
			out = append(out, piece.corner(false, nil), piece.corner(true, nil))
		}
	}
	if c.flags&(mayBeNone|mayLack) != 0 {
		gone := c
		gone.flags &^= mayHold
		out = append(out, gone)
	}
	return out
}
