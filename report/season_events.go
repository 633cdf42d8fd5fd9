package report

import (
	"fmt"
	"slices"
	"strings"

	"gapsheet/engine"
	"gapsheet/rules"
)

// eventLabel is the width of the labels of an event.
const eventLabel = 10

// writeEvents writes what holds for a car at each event.
func (s *Season) writeEvents(p *page, car *engine.CarSeason) {
	p.heading(Strong, "EVENTS", ", "+carName(car.Sheet))
	for i, e := range car.Events {
		p.gapBefore(i)
		s.writeEvent(p, car, i, e)
	}
}

func (s *Season) writeEvent(p *page, car *engine.CarSeason, at int, e *engine.EventResult) {
	event := e.Event
	name := event.Name
	if event.Place != "" {
		name += ", " + event.Place
	}
	if IsPast(event, s.Day) {
		name += " (over)"
	}
	number := s.eventNumber(event)
	p.hanging(0, p.paint.With(Strong, number)+"  ", len(number)+2, Strong, name)
	p.labelled(3, "days", eventLabel, eventDays(event))
	if event.Class != "" {
		p.labelled(3, "class", eventLabel, event.Class)
	}
	if len(event.Crew) > 0 {
		p.labelled(3, "crew", eventLabel, list(event.Crew))
	}
	if len(seasonBooks(s.Result)) > 1 {
		p.labelled(3, "rulebook", eventLabel, bookWords(e.Book))
	}
	if !e.Book.Period.Holds(event.Inspection) {
		p.labelled(3, "", eventLabel, "That edition is in force "+e.Book.Period.String()+". Name the one for this event as well.")
	}
	p.labelled(3, "counted", eventLabel, countWords(e.Whole.Counts))
	if daysDiffer(e) {
		for _, day := range e.Days {
			p.labelled(3, "", eventLabel, day.Day.String()+": "+countWords(day.Counts))
		}
	}
	s.writeNewGaps(p, car, at, e)
}

// countWords count clauses by verdict, the verdicts that matter even where there are none.
func countWords(counts verdictCounts) string {
	words := []string{engine.Plural(counts[engine.Gap], "gap", "gaps")}
	for _, v := range []engine.Verdict{engine.NotRecorded, engine.Marginal, engine.ByEye, engine.UnderDispensation, engine.Meets} {
		if counts[v] > 0 || v == engine.NotRecorded || v == engine.Marginal {
			words = append(words, fmt.Sprintf("%d %s", counts[v], v))
		}
	}
	return strings.Join(words, ", ")
}

// daysDiffer reports whether the days of an event do not all come to the same.
func daysDiffer(e *engine.EventResult) bool {
	for _, day := range e.Days {
		if day.Counts != e.Days[0].Counts {
			return true
		}
	}
	return false
}

// rowKey is one subject of one clause of one rulebook, whichever edition.
type rowKey struct{ book, number, subject string }

// standingAt visits the clauses that have a verdict at an event, or a subject with it, advice
// left out, each with those subjects.
func standingAt(e *engine.EventResult, verdict engine.Verdict, visit func(*engine.ClauseResult, []*engine.SubjectResult)) {
	for _, chapter := range e.Whole.Chapters {
		for _, clause := range chapter.Clauses {
			if clause.NotDue || clause.Clause.Concern == rules.Advice {
				continue
			}
			var short []*engine.SubjectResult
			for _, subject := range clause.Subjects {
				if subject.Verdict == verdict {
					short = append(short, subject)
				}
			}
			if len(short) > 0 || clause.Verdict == verdict {
				visit(clause, short)
			}
		}
	}
}

// rowKeyOf is the row of a subject, nil for a clause of which no subject tells.
func rowKeyOf(e *engine.EventResult, clause *engine.ClauseResult, subject *engine.SubjectResult) rowKey {
	key := rowKey{e.Book.Name, clause.Clause.Number, ""}
	if subject != nil {
		key.subject = subject.Name
	}
	return key
}

// rowsAt are the rows that have a verdict at an event.
func rowsAt(e *engine.EventResult, verdict engine.Verdict) map[rowKey]bool {
	rows := map[rowKey]bool{}
	standingAt(e, verdict, func(clause *engine.ClauseResult, short []*engine.SubjectResult) {
		for _, subject := range short {
			rows[rowKeyOf(e, clause, subject)] = true
		}
		if len(short) == 0 {
			rows[rowKeyOf(e, clause, nil)] = true
		}
	})
	return rows
}

// gapRows are the rows that are gaps at an event.
func gapRows(e *engine.EventResult) map[rowKey]bool { return rowsAt(e, engine.Gap) }

// lastAlike is the event before, under the same rulebook; nil where there is none.
func lastAlike(car *engine.CarSeason, at int) *engine.EventResult {
	for i := at - 1; i >= 0; i-- {
		if car.Events[i].Book.Name == car.Events[at].Book.Name {
			return car.Events[i]
		}
	}
	return nil
}

// newGaps are the gaps of an event that were none at the one before, under the same rulebook;
// of the first one under it, all.
func newGaps(car *engine.CarSeason, at int) []finding { return newAt(car, at, engine.Gap) }

// newAt are the clauses and subjects of a verdict at an event that had another one at the event
// before, under the same rulebook; of the first one under it, all.
func newAt(car *engine.CarSeason, at int, verdict engine.Verdict) []finding {
	e := car.Events[at]
	var before map[rowKey]bool
	if last := lastAlike(car, at); last != nil {
		before = rowsAt(last, verdict)
	}
	var fresh []finding
	standingAt(e, verdict, func(clause *engine.ClauseResult, short []*engine.SubjectResult) {
		only := *clause
		only.Subjects = slices.DeleteFunc(short, func(s *engine.SubjectResult) bool { return before[rowKeyOf(e, clause, s)] })
		if len(only.Subjects) > 0 || len(short) == 0 && !before[rowKeyOf(e, clause, nil)] {
			f, _ := findingOf(&only, verdict)
			fresh = append(fresh, f)
		}
	})
	return fresh
}

// writeNewGaps writes the gaps that are new at an event, a clause each.
func (s *Season) writeNewGaps(p *page, car *engine.CarSeason, at int, e *engine.EventResult) {
	label := "new gaps"
	last := lastAlike(car, at)
	if last == nil {
		label = "gaps"
	}
	for _, f := range newGaps(car, at) {
		head := p.paint.With(InkOf(engine.Gap), label) + strings.Repeat(" ", max(0, eventLabel-len(label)))
		p.hanging(3, head, eventLabel, Plain, gapWords(f))
		label = ""
	}
	writeNewlyOpen(p, newAt(car, at, engine.NotRecorded))
	if last == nil {
		return
	}
	gone := 0
	now := gapRows(e)
	for row := range gapRows(last) {
		if !now[row] {
			gone++
		}
	}
	if gone > 0 {
		p.labelled(3, "gone", eventLabel, engine.Plural(gone, "gap", "gaps")+" of "+last.Event.Name)
	}
}

// openNamed is how many clauses that are not recorded are named at an event: a sheet that is
// hardly begun has more than anybody reads here.
const openNamed = 8

// writeNewlyOpen writes what is not recorded at an event and was something else at the one
// before, a clause each with its subjects. Why is told by a pre-check.
func writeNewlyOpen(p *page, open []finding) {
	label := "open"
	for i, f := range open {
		head := p.paint.With(InkOf(engine.NotRecorded), label) + strings.Repeat(" ", eventLabel-len(label))
		label = ""
		if i == openNamed && len(open) > openNamed+1 {
			p.hanging(3, head, eventLabel, Plain, fmt.Sprintf("and %d clauses more; a pre-check tells them", len(open)-i))
			return
		}
		text := "not recorded: " + f.clause.Number + " " + f.clause.Title
		if names := f.names(); names != "" {
			text += ", of " + names
		}
		p.hanging(3, head, eventLabel, Plain, text)
	}
}

// gapWords are a clause with its subjects and why, on one line.
func gapWords(f finding) string {
	text := f.clause.Number + " " + clauseTitle(f.clause)
	var why []string
	if f.note != "" {
		why = append(why, f.note)
	}
	for _, g := range f.groups {
		words := g.names()
		if lines := strings.Join(g.lines, "; "); lines != "" {
			words = strings.TrimPrefix(words+": "+lines, ": ")
		}
		if words != "" {
			why = append(why, words)
		}
	}
	if len(why) > 0 {
		text += ". " + strings.Join(why, "; ")
	}
	return text
}
