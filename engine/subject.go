package engine

import (
	"math"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// Notes on a subject.
const (
	noteNotProved = "as read, not proved"
	noteMeetsRead = "meets as read"
	noteShortRead = "short as read"
	noteByEye     = "figures meet, still to be looked at"
	noteUnsettled = "not settled"
)

// subject works the clause for the subject that its across variables stand for at
// present, and returns the truth of its guard.
func (k *checker) subject(c *compiledClause, out *ClauseResult) quantity.Truth {
	m := k.judge(c)
	guard, whole := k.worst(m, c)
	if guard == quantity.No {
		return guard
	}
	s := &SubjectResult{Parts: k.parts(c)}
	s.Name = nameOf(s.Parts)
	k.verdict(s, m, c, guard, whole)
	if guard == quantity.Yes {
		k.papers(s, c)
	}
	k.explain(s, m, c, whole)
	m.restoreReadings(k)
	out.add(s)
	return guard
}

// worst works guard and demand; where particulars were read several times, once for each
// combination of readings, and the least favourable one stays in place.
func (k *checker) worst(m *machine, c *compiledClause) (guard, whole quantity.Truth) {
	guard = m.decide(c.guard)
	if guard == quantity.No && len(k.car.several) == 0 {
		return guard, quantity.Yes
	}
	several := k.severalIn(m, c)
	if len(several) == 0 {
		if guard == quantity.No {
			return guard, quantity.Yes
		}
		return guard, m.decide(c.whole)
	}
	return k.leastFavourable(m, c, several)
}

// verdict turns the truths of guard and whole into a verdict with its notes and causes.
func (k *checker) verdict(s *SubjectResult, m *machine, c *compiledClause, guard, whole quantity.Truth) {
	switch {
	case guard == quantity.Open && c.Demand == nil:
		// Nobody can tell yet whether there is anything to look at or to ask for.
		k.undecided(s, m, c, c.guard)
	case whole == quantity.No:
		s.Verdict = Gap
	case whole == quantity.Open:
		k.undecided(s, m, c, c.whole)
	case c.LookFor != "" && c.Demand != nil:
		s.Verdict = ByEye
		s.Notes = append(s.Notes, noteByEye)
	case c.LookFor != "":
		s.Verdict = ByEye
	default:
		s.Verdict = Meets
	}
	if c.Judged == rules.AsRead && whole != quantity.Open && k.full.decide(c.whole) == quantity.Open {
		s.Notes = append(s.Notes, noteNotProved)
	}
}

// undecided turns an open truth into a verdict by its causes.
func (k *checker) undecided(s *SubjectResult, m *machine, c *compiledClause, open truthNode) {
	causes := m.causesOf(open)
	s.Causes = k.named(causes)
	s.Verdict = verdictOf(causes)
	switch s.Verdict {
	case Gap:
		for _, cause := range s.Causes {
			s.Notes = append(s.Notes, gapWord(cause.Kind)+": "+cause.Text)
		}
	case Marginal:
		if m.exhausted {
			s.Notes = append(s.Notes, noteUnsettled)
		}
		if c.Judged == rules.Proved {
			switch k.read.decide(open) {
			case quantity.Yes:
				s.Notes = append(s.Notes, noteMeetsRead)
			case quantity.No:
				s.Notes = append(s.Notes, noteShortRead)
			}
		}
	}
}

func gapWord(kind CauseKind) string {
	if kind == StatedNone {
		return "stated not to exist"
	}
	return "not fitted"
}

// verdictOf is the verdict of an open truth: not recorded with any missing cause, a gap
// where all that is wrong is that a part is not there, marginal with tolerances only.
func verdictOf(causes []rawCause) Verdict {
	absent := false
	for _, c := range causes {
		switch c.kind {
		case Missing, UnknownOthers, NoSuchPart, Undefined:
			return NotRecorded
		case NotFitted, StatedNone:
			absent = true
		}
	}
	if absent {
		return Gap
	}
	return Marginal
}

// parts are the parts that the across variables stand for.
func (k *checker) parts(c *compiledClause) []*vehicle.Part {
	var parts []*vehicle.Part
	for _, of := range c.across {
		base := k.full.slots[of.bound()].base
		if part := k.car.partAt(base); part != nil {
			parts = append(parts, part)
		}
	}
	return parts
}

// nameOf names the subject: its last part says where it belongs.
func nameOf(parts []*vehicle.Part) string {
	if len(parts) == 0 {
		return ""
	}
	return parts[len(parts)-1].Name()
}

// severalIn finds the particulars with several readings that the clause reads for this
// subject.
func (k *checker) severalIn(m *machine, c *compiledClause) []severalReadings {
	if len(k.car.several) == 0 {
		return nil
	}
	s := newSurvey(true)
	c.whole.survey(m, s)
	var found []severalReadings
	for _, x := range k.car.several {
		if _, ok := s.where[x.cell]; ok {
			found = append(found, x)
		}
	}
	return found
}

// combinationLimit bounds the combinations of readings that are tried one by one; past it
// the readings are taken as one range, which is never more favourable.
const combinationLimit = 256

// leastFavourable tries every combination of readings and leaves the worst in place.
func (k *checker) leastFavourable(m *machine, c *compiledClause, several []severalReadings) (guard, whole quantity.Truth) {
	total := 1
	for _, x := range several {
		if total *= len(x.full); total > combinationLimit {
			return m.decide(c.guard), m.decide(c.whole)
		}
	}
	worst, hand := 0, math.Inf(1)
	guard, whole = quantity.No, quantity.Yes
	for try := range total {
		m.takeReadings(k, several, try)
		g, w := m.decide(c.guard), quantity.Yes
		if g != quantity.No {
			w = m.decide(c.whole)
		}
		h := k.favour(m, c)
		if try == 0 || w < whole || w == whole && (g > guard || g == guard && h < hand) {
			guard, whole, hand, worst = g, w, h, try
		}
	}
	m.takeReadings(k, several, worst)
	return guard, whole
}

// favour ranks readings that give the same answer: by how much the nearest limit is met,
// or missed, relative to it. The less, the less favourable.
func (k *checker) favour(m *machine, c *compiledClause) float64 {
	if c.traces.demand == nil {
		return 0
	}
	f := (&explainer{m: m, car: k.car}).walk(c.traces.demand)
	if f.failing > 0 {
		return -f.short
	}
	return f.hand
}

// takeReadings puts one combination of readings in place.
func (m *machine) takeReadings(k *checker, several []severalReadings, try int) {
	for _, x := range several {
		pick := try % len(x.full)
		try /= len(x.full)
		r := x.full[pick]
		if m == k.read {
			r = x.read[pick]
		}
		m.cells[x.cell].low, m.cells[x.cell].high = r.Low, r.High
	}
}

// restoreReadings takes the ranges of all readings back.
func (m *machine) restoreReadings(k *checker) {
	from := k.car.full
	if m == k.read {
		from = k.car.read
	}
	for _, x := range k.car.several {
		m.cells[x.cell].low, m.cells[x.cell].high = from[x.cell].low, from[x.cell].high
	}
}

// partAt is the part that is laid out at a base.
func (c *Car) partAt(base int32) *vehicle.Part { return c.parts[base] }
