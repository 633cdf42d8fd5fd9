package engine

import (
	"slices"
	"strings"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// Notes on a subject.
const (
	noteMeetsRead = "meets as read"
	noteShortRead = "short as read"
	noteByEye     = "figures meet, still to be looked at"
	noteUnsettled = "not settled"
)

// subject works the clause for the subject that its across variables stand for at
// present, and returns what it says of whether the subject counts.
func (k *checker) subject(c *compiledClause, out *ClauseResult) tally {
	m := k.judge(c)
	o := k.worst(c)
	if o.guard != quantity.No {
		s := &SubjectResult{Parts: k.parts(c)}
		s.Name = nameOf(s.Parts)
		k.verdict(s, m, c, o.guard, o.whole)
		if c.Judged == rules.Proved && o.whole != quantity.Open && k.readsWithoutTolerance(m, c) {
			s.Notes = append(s.Notes, NoteTakenAsExact)
		}
		k.explain(s, m, c, o.whole)
		k.readingsBeside(s, c)
		k.loadedBeside(s, c)
		out.add(s)
		if o.guard == quantity.Yes {
			k.papers(s, c, out)
		}
	}
	if o.least == quantity.Open && len(k.severalIn(c)) == 0 {
		// So many subjects are asked for where the clause applies; whether it does is open
		// for all of them at once.
		o.least = m.decide(c.where)
	}
	t := counted(o.least)
	if o.least == quantity.Open {
		t.open = m.causesOf(c.guard)
	}
	k.restoreReadings()
	return t
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
		s.Notes = append(s.Notes, NoteNotProved)
	}
}

// undecided turns an open truth into a verdict by its causes.
func (k *checker) undecided(s *SubjectResult, m *machine, c *compiledClause, open truthNode) {
	causes := m.causesOf(open)
	s.Causes = k.named(causes)
	s.Verdict = verdictOf(causes)
	if s.Verdict == Gap && hasKind(causes, Tolerance) && m.canHold(open) {
		s.Verdict = Marginal // what is not there is not all that it hangs on
	}
	switch s.Verdict {
	case Gap:
		for _, cause := range s.Causes {
			if cause.Kind != Tolerance { // what is known to a range is there
				s.Notes = append(s.Notes, gapNote(cause))
			}
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

func hasKind(causes []rawCause, kind CauseKind) bool {
	return slices.ContainsFunc(causes, func(c rawCause) bool { return c.kind == kind })
}

// gapNote says why what is not there makes a gap.
func gapNote(cause Cause) string {
	switch {
	case cause.Kind == StatedNone && cause.Follows:
		return "there is none: " + cause.Text
	case cause.Kind == StatedNone:
		return "stated not to exist: " + cause.Text
	case cause.Kind == NotFitted && cause.List == nil && cause.Part == nil && cause.Particular == nil:
		return "no row fits: " + cause.Text
	}
	return "not fitted: " + cause.Text
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

// nameOf names the subject. Of parts of which each belongs to the one before, as a strap to
// its harness, the last says it all.
func nameOf(parts []*vehicle.Part) string {
	var names []string
	for i, part := range parts {
		if i+1 == len(parts) || parts[i+1].Within != part {
			names = append(names, part.Name())
		}
	}
	return strings.Join(names, " with ")
}

// readsWithoutTolerance reports whether the demand reads a measured figure whose sheet
// states neither a tolerance nor an instrument.
func (k *checker) readsWithoutTolerance(m *machine, c *compiledClause) bool {
	s := newSurvey(true)
	c.demand.survey(m, s)
	for i := range s.touched {
		if k.car.origins[s.touched[i].cell].withoutTolerance() {
			return true
		}
	}
	return false
}

// withoutTolerance reports whether a cell is a measured figure with no tolerance stated.
func (o *origin) withoutTolerance() bool {
	if o.value == nil || !o.particular.Measured {
		return false
	}
	for i := range o.value.Readings {
		if f := &o.value.Readings[i].Figure; !f.Toleranced && !f.OneSided {
			return true
		}
	}
	return false
}

// partAt is the part that is laid out at a base.
func (c *Car) partAt(base int32) *vehicle.Part { return c.parts[base] }
