package engine

import (
	"maps"
	"slices"

	"gapsheet/vehicle/quantity"
)

// Which missing particulars matter is found by looking at exact cars: one matters if for
// some values of all others its own value alone can still change the answer.

// Bounds on the looks at exact cars.
const (
	allCompletions  = 512
	someCompletions = 192
)

// A looking is the look at what one missing particular can do.
type looking struct {
	*machine
	of      truthNode
	survey  *survey
	which   int      // the cell that is looked at
	kept    []cell   // all cells as they are known
	choices [][]cell // exact cells that stand for all that each cell may be
	said    bool     // some car of the last look got a yes or a no
}

// matters reports whether the value of one missing particular alone can change the answer.
// All combinations of representative values are tried where they are few, a fixed sample
// where they are many. What that does not rule out is named.
func (m *machine) matters(n truthNode, s *survey, which int) bool {
	if m.exhausted {
		return true
	}
	kept := m.keep(s)
	defer m.putBack(s, kept)
	l := &looking{machine: m, of: n, survey: s, which: which, kept: kept[:len(s.touched)]}
	total, sized := 1, true
	for i := range s.touched {
		l.choices = append(l.choices, kept[i].representatives(&s.touched[i], s.texts))
		if i != which && sized {
			total *= len(l.choices[i])
			sized = total <= allCompletions
		}
	}
	defer m.supposePatterns(s)()
	tries := total
	if !sized {
		tries = someCompletions
	}
	seed, told, doubtful := uint64(1), false, false
	for try := range tries {
		l.said = false
		if seed = l.others(try, seed, sized); l.changes() || l.mayChange() || m.exhausted {
			return true
		}
		told = told || l.said
		doubtful = doubtful || l.said && !l.same()
	}
	return told && !sized || doubtful
}

// canHold reports whether some exact car that agrees with what is known may get a yes.
func (m *machine) canHold(n truthNode) bool {
	s := newSurvey(false)
	n.survey(m, s)
	kept := m.keep(s)
	defer m.putBack(s, kept)
	l := &looking{machine: m, of: n, survey: s, which: -1, kept: kept[:len(s.touched)]}
	total := 1
	for i := range s.touched {
		l.choices = append(l.choices, kept[i].representatives(&s.touched[i], s.texts))
		if total *= len(l.choices[i]); total > allCompletions || !kept[i].exhausted(&s.touched[i]) {
			return true // not all can be gone through
		}
	}
	for try := range total {
		l.others(try, 0, true)
		if n.truth(m) == quantity.Yes {
			return true
		}
	}
	return false
}

// same reports whether the cell as it stands makes no difference, whatever it may be.
func (l *looking) same() bool {
	t, whole := &l.survey.touched[l.which], l.kept[l.which]
	if whole.exhausted(t) {
		return true
	}
	l.cells[t.cell] = whole
	return l.of.truth(l.machine) != quantity.Open
}

// mayChange reports whether the cell changes what can be told where the values of others do
// not stand for all that those may be: then they are taken as they are known.
func (l *looking) mayChange() bool {
	whole := false
	for i := range l.kept {
		if t := &l.survey.touched[i]; i != l.which && !l.kept[i].exhausted(t) {
			l.cells[t.cell], whole = l.kept[i], true
		}
	}
	return whole && differ(l.answers())
}

// others puts values of all other cells in place: combination number try, or one by chance.
func (l *looking) others(try int, seed uint64, sized bool) uint64 {
	for i, choices := range l.choices {
		if i == l.which {
			continue
		}
		pick := try % len(choices)
		try /= len(choices)
		if !sized {
			seed = seed*6364136223846793005 + 1442695040888963407
			pick = int(seed>>33) % len(choices)
		}
		l.cells[l.survey.touched[i].cell] = choices[pick]
	}
	return seed
}

// changes reports whether the answer is not the same for all values of the cell. A text
// that is none of those mentioned may answer each pattern either way.
func (l *looking) changes() bool {
	var other []quantity.Truth // the answers for such a text
	for _, suppose := range l.suppositions() {
		for signature := range l.assumed {
			l.assumed[signature] = quantity.TruthOf(suppose == everyPattern || suppose == signature)
		}
		answers := l.answers()
		if differ(answers) {
			return true
		}
		if v := l.choices[l.which][0]; v.kind == holdsText && v.set == otherText {
			other = append(other, answers[0])
		}
	}
	return len(other) > 0 && differ(other)
}

// everyPattern stands for all patterns at once.
const everyPattern = "every"

// suppositions are which patterns are answered with yes: none, all, each one alone.
func (l *looking) suppositions() []string {
	if len(l.assumed) == 0 {
		return []string{""}
	}
	return append([]string{"", everyPattern}, slices.Sorted(maps.Keys(l.assumed))...)
}

// answers are the answers for each value of the cell.
func (l *looking) answers() []quantity.Truth {
	answers := make([]quantity.Truth, len(l.choices[l.which]))
	for i, v := range l.choices[l.which] {
		l.cells[l.survey.touched[l.which].cell] = v
		answers[i] = l.of.truth(l.machine)
		l.said = l.said || answers[i] != quantity.Open
	}
	return answers
}

func differ(answers []quantity.Truth) bool {
	return slices.ContainsFunc(answers, func(t quantity.Truth) bool { return t != answers[0] })
}

// supposePatterns lets texts that are not known answer patterns as it is supposed, and
// returns how to end that.
func (m *machine) supposePatterns(s *survey) (end func()) {
	kept, tampered := m.assumed, m.tampered
	m.assumed = maps.Clone(kept)
	for _, signature := range s.atomOrder {
		if signature[0] == patternTag {
			if m.assumed == nil {
				m.assumed = map[string]quantity.Truth{}
			}
			m.assumed[signature], m.tampered = quantity.Yes, true
		}
	}
	return func() { m.assumed, m.tampered = kept, tampered }
}

// exhausted reports whether the representatives of a cell stand for all that it may be: of
// a number they do where it is held against exact limits and read nowhere else.
func (c *cell) exhausted(t *touch) bool {
	switch c.kind {
	case holdsTruth, holdsChoice, holdsText:
		return true
	}
	return t.limits >= t.count
}

// representatives are exact cells that stand for all that a cell may be: the ends of the
// pieces that limits cut it into, each choice, each text that is mentioned and any other.
// What may not be there at all is one more.
func (c cell) representatives(t *touch, texts []uint64) []cell {
	if c.flags&mayHold == 0 {
		return []cell{c}
	}
	held := c
	held.flags = written | mayHold
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
		out = held.ends(t)
	}
	if c.flags&(mayBeNone|mayLack) != 0 {
		gone := c
		gone.flags = gone.flags&^mayHold | written
		out = append(out, gone)
	}
	return out
}

// ends are the ends of the pieces that limits cut a number into; of one that is read
// elsewhere as well, those of its quarters too.
func (c *cell) ends(t *touch) []cell {
	pieces := c.cutBy(t.cuts)
	if len(pieces) == 0 {
		pieces = []cell{*c}
	}
	if !c.exhausted(t) {
		for _, half := range c.halves() {
			pieces = append(pieces, half)
			pieces = append(pieces, half.halves()...)
		}
	}
	var values []float64
	for _, piece := range pieces {
		values = append(values, piece.corner(false, nil).low, piece.corner(true, nil).low)
	}
	slices.Sort(values)
	var out []cell
	for _, v := range slices.Compact(values) {
		end := *c
		end.low, end.high = v, v
		out = append(out, end)
	}
	return out
}
