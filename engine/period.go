package engine

import (
	"fmt"
	"math"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// stands reports whether a clause is told of: one that is not in force on the day is, as
// such, unless another wording of the same number is, or stands before it.
func (k *checker) stands(c *rules.Clause) bool {
	if c.Period.Holds(k.request.Day) {
		return true
	}
	return k.p.Book.ClauseOn(c.Number, k.request.Day) == nil && k.p.Book.ClauseNumbered(c.Number) == c
}

// onDay works one clause if it is in force.
func (k *checker) onDay(c *compiledClause) *ClauseResult {
	switch p := c.Period; {
	case p.Holds(k.request.Day):
		return k.clause(c)
	case k.request.Day < p.From:
		return &ClauseResult{Clause: c.Clause, Note: "in force from " + p.From.String()}
	default:
		return &ClauseResult{Clause: c.Clause, Note: "no longer in force after " + p.Until.String()}
	}
}

// asAt works a clause by the rules of another day: by the clause of the same number in the
// edition that was in force then, or the wording of then in this one. A day that is known to
// its month or year may fall under several; then the worst of them counts.
func (k *checker) asAt(c *compiledClause) *ClauseResult {
	if worst, _ := k.worstRules(c); worst != nil {
		return worst
	}
	return k.dayMissing(c)
}

// worstRules works a clause by the rules of every day by which it may have to be judged: the
// worst result with its day, nil where that day is not recorded.
func (k *checker) worstRules(c *compiledClause) (worst *ClauseResult, at quantity.Day) {
	for _, day := range k.rulesOf(c) {
		if one := k.byRulesOf(c, day); worst == nil || one.Verdict > worst.Verdict {
			worst, at = one, day
		}
	}
	return worst, at
}

// rulesOf are days of the past by whose rules a clause may have to be judged, one for each
// wording; none where the day is not recorded.
func (k *checker) rulesOf(c *compiledClause) (days []quantity.Day) {
	m := k.full
	saved := m.unsure
	m.unsure = false
	at := c.asAt.number(m)
	known := !m.unsure && !math.IsInf(at.Low, 0) && !math.IsInf(at.High, 0) && k.isRecorded(c)
	m.unsure = saved
	if !known {
		return nil
	}
	until := quantity.Day(at.High)
	for day := quantity.Day(at.Low); day <= until; {
		days = append(days, day)
		day = min(k.editions.until(day, until), k.wording(c, day, until)) + 1
	}
	return days
}

// isRecorded reports whether all that the day hangs on is on the sheet.
func (k *checker) isRecorded(c *compiledClause) bool {
	s := newSurvey(true)
	c.asAt.survey(k.full, s)
	for i := range s.touched {
		if k.full.cells[s.touched[i].cell].flags&written == 0 && s.touched[i].cell >= moments {
			return false
		}
	}
	return true
}

// dayMissing is a clause whose day nobody has recorded.
func (k *checker) dayMissing(c *compiledClause) *ClauseResult {
	out := &ClauseResult{Clause: c.Clause}
	s := newSurvey(true)
	c.asAt.survey(k.full, s)
	var causes []rawCause
	for i := range s.touched {
		if kind, counts := k.full.causeKind(&s.touched[i]); counts && kind != Tolerance {
			causes = append(causes, rawCause{kind: kind, cell: s.touched[i].cell, list: -1})
		}
	}
	for _, u := range s.unknown {
		causes = append(causes, u.cause())
	}
	out.add(&SubjectResult{Verdict: NotRecorded, Causes: k.named(causes), Notes: []string{"which rules count hangs on a day that is not recorded"}})
	return out
}

// wording is the last day up to which the clause in force on a day stays the one.
func (k *checker) wording(c *compiledClause, day, last quantity.Day) quantity.Day {
	edition, ok := k.editions.inForce(day)
	if !ok {
		return last
	}
	for _, clause := range edition.Program.clauses {
		if clause.Number != c.Number {
			continue
		}
		if begins := clause.Period.From; begins > day && begins <= last {
			last = begins - 1
		}
		if ends := clause.Period.Until; ends >= day && ends < last {
			last = ends
		}
	}
	return last
}

// under is a checker of another edition for the same day and car.
func (k *checker) under(edition Edition) *checker {
	other := edition.Program.checker(edition.Car, k.request)
	other.editions, other.dates, other.tried = k.editions, k.dates, k.tried
	for _, t := range k.tried {
		other.put(t)
	}
	return other
}

// An attempt is a date that is tried in place of the one that a part has, in every edition.
type attempt struct {
	part       string // its name
	particular string
	cell       cell
}

// try puts a date in place, here and in all editions that a clause is judged by.
func (k *checker) try(t attempt) {
	k.tried = append(k.tried, t)
	k.put(t)
}

func (k *checker) put(t attempt) {
	part := partNamed(k.car.Sheet, t.part)
	if part == nil {
		return
	}
	at := k.car.cellOf(part, part.Type.Particular(t.particular))
	k.full.cells[at], k.read.cells[at] = t.cell, t.cell
}

// byRulesOf works the clause as it stood on a day.
func (k *checker) byRulesOf(c *compiledClause, day quantity.Day) *ClauseResult {
	edition, ok := k.editions.inForce(day)
	if !ok {
		out := &ClauseResult{Clause: c.Clause}
		out.add(&SubjectResult{Verdict: NotRecorded, Notes: []string{fmt.Sprintf("the edition in force on %s is not given", day)}})
		return out
	}
	then := edition.Program.Book.ClauseOn(c.Number, day)
	if then == nil {
		return &ClauseResult{Clause: c.Clause, Note: fmt.Sprintf("edition %s, in force on %s, has no clause of this number then", edition.Program.Book.Edition, day)}
	}
	other := k.under(edition)
	out := other.worked(edition.Program.numbers[then])
	out.Clause = c.Clause
	note := fmt.Sprintf("by edition %s, in force on %s", edition.Program.Book.Edition, day)
	if out.Note == "" {
		out.Note = note
	}
	for _, s := range out.Subjects {
		s.Notes = append(s.Notes, note)
	}
	return out
}
