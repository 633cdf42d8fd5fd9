package engine

import (
	"cmp"
	"fmt"
	"slices"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// An ending is what makes a subject of a clause short over some days.
type ending struct {
	date  dateOf
	read  *vehicle.Particular // what was read of the part where no date of it decides
	limit string
}

// endings are what makes a subject short: its dates and papers, and where the rulebook alone
// sets the day, the part of which the clause reads something.
func (s *SubjectResult) endings(car *vehicle.Part) []ending {
	dates, limit := s.endedBy()
	var all []ending
	for _, date := range dates {
		if date.particular != nil || date.paper != "" {
			all = append(all, ending{date: date, limit: limit})
		}
	}
	if len(all) == 0 && s.Verdict == Gap && limit != "" {
		one := s.endedPart(car)
		one.limit = limit
		all = append(all, one)
	}
	return all
}

// endedPart is the part of a gap that no date decides: the one that the first comparison that
// fails is about, else the subject's own, else the car.
func (s *SubjectResult) endedPart(car *vehicle.Part) ending {
	read := s.failedPart()
	part, limit := read.part, ""
	if part == nil && len(s.Parts) > 0 {
		part = s.Parts[len(s.Parts)-1]
	}
	if part == nil {
		part = car
	}
	if read.part != nil {
		limit = read.decided.line()
	}
	return ending{date: dateOf{part: part}, read: read.particular, limit: limit}
}

// isWorded reports whether what a clause asks can change on a day although it mentions none:
// it has another wording, a day on which it begins or ceases to count, or another edition has
// it in other words. What the same words come to can differ by a term or a table: that is
// looked for where the clause is a gap at an event.
func (w *wayIn) isWorded(on Edition, c *rules.Clause) bool {
	if c.Period.Bounded() || slices.ContainsFunc(on.Program.clauses, func(other *compiledClause) bool { return other.Number == c.Number && other.Clause != c }) {
		return true
	}
	return len(w.editions) > 1 && (w.gaps[c.Number] || slices.ContainsFunc(w.editions, func(e Edition) bool {
		other := e.Program.Book.ClauseNumbered(c.Number)
		return other == nil || !slices.Equal(wordsOf(c), wordsOf(other))
	}))
}

// wordsOf are the formulas of a clause, the papers that it asks for and its allowance.
func wordsOf(c *rules.Clause) []string {
	made := []string{fmt.Sprint(c.AtLeast, c.Allowance, c.Judged)}
	of := []*rules.Formula{c.Applies, c.Where, c.Demand, c.AsAt}
	for _, across := range c.Across {
		of = append(of, across.List)
	}
	for _, formula := range of {
		if formula == nil {
			made = append(made, "")
		} else {
			made = append(made, formula.Source)
		}
	}
	return append(made, c.Evidence...)
}

// gapsOf are the numbers of the clauses that are gaps at the events to which the car comes in
// one way.
func (w *seasonWork) gapsOf(way *wayIn, events []*EventResult) map[string]bool {
	gaps := map[string]bool{}
	for i, entry := range w.car.Entries {
		if entry.Editions[0].Car != way.editions[0].Car {
			continue
		}
		for _, chapter := range events[i].Whole.Chapters {
			for _, clause := range chapter.Clauses {
				if clause.Verdict == Gap {
					gaps[clause.Clause.Number] = true
				}
			}
		}
	}
	return gaps
}

// wordings are the stretches of all wordings of one number, in whatever edition.
type wordings struct {
	number    string
	stretches []stretch
}

// keepWordings keeps the stretches of a clause beside those of its other wordings.
func (w *wayIn) keepWordings(c *rules.Clause, stretches []stretch) {
	at := slices.IndexFunc(w.worded, func(of *wordings) bool { return of.number == c.Number })
	if at < 0 {
		at = len(w.worded)
		w.worded = append(w.worded, &wordings{number: c.Number})
	}
	for _, s := range stretches {
		if s.result != nil {
			w.worded[at].stretches = append(w.worded[at].stretches, s)
		}
	}
}

// enterWordings enters the gaps that begin where one wording or edition takes over from
// another: a standard that is withdrawn ends the part that has it, though no date is read.
func (w *seasonWork) enterWordings(way *wayIn) {
	for _, of := range way.worded {
		slices.SortStableFunc(of.stretches, func(a, b stretch) int { return cmp.Compare(a.from, b.from) })
		before := map[string]Verdict{} // of each subject, up to the day before a stretch
		ended := map[string]bool{}     // by a wording, and a gap since
		for _, s := range of.stretches {
			now := map[string]Verdict{}
			for _, subject := range s.result.Subjects {
				now[subject.Name] = now[subject.Name].Worse(subject.Verdict)
			}
			for name, verdict := range now {
				last, told := before[name]
				begins := way.begins(s.result.Clause, s.from) && (told && last > DoesNotApply || s.from > w.season.From)
				ended[name] = verdict == Gap && (ended[name] || last != Gap && begins)
			}
			if s.result.Clause.Concern != rules.Advice && !s.result.NotDue {
				w.enterWording(way, s, ended)
			}
			before = now
		}
	}
}

// begins reports whether a wording or an edition begins to count on a day.
func (w *wayIn) begins(c *rules.Clause, day quantity.Day) bool {
	return c.Period.From == day || slices.ContainsFunc(w.editions[1:], func(e Edition) bool { return e.Program.Book.Period.From == day })
}

// enterWording enters the subjects of a stretch that are ended and that nothing else ends.
func (w *seasonWork) enterWording(way *wayIn, s stretch, ended map[string]bool) {
	for _, subject := range s.result.Subjects {
		if subject.Verdict != Gap || !ended[subject.Name] || len(subject.endings(w.car.Sheet.Car())) > 0 {
			continue
		}
		w.enterSpan(way, s, subject.Verdict, subject.endedPart(w.car.Sheet.Car()))
	}
}

// isWithdrawn reports whether a part is over on a day whatever its dates are.
func (w *wayIn) isWithdrawn(d *DatedPart, day quantity.Day) bool {
	return slices.ContainsFunc(w.spans[d], func(s Span) bool {
		return s.From <= day && day <= s.Until && s.isShort() && s.date.particular == nil && s.date.paper == ""
	})
}

// enterSpan puts a stretch to the part that ends in it.
func (w *seasonWork) enterSpan(way *wayIn, s stretch, verdict Verdict, end ending) {
	part := w.partOf(end.date)
	way.spans[part] = append(way.spans[part], Span{
		From: s.from, Until: s.until, Verdict: verdict, Clause: s.result.Clause, date: end.date, read: end.read, limit: end.limit,
	})
}
