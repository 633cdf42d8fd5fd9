package engine

import (
	"cmp"
	"slices"

	"gapsheet/vehicle/quantity"
)

// Edition is one edition of a rulebook with a car laid out for it: every edition has a
// vocabulary of its own.
type Edition struct {
	Program *Program
	Car     *Car
}

// Editions are the editions of one rulebook that are given together, by the day from which
// each is in force.
type Editions []Edition

// NewEditions puts editions in their order; those of one day stay as they were given.
func NewEditions(given ...Edition) Editions {
	made := Editions(slices.Clone(given))
	slices.SortStableFunc(made, func(a, b Edition) int {
		return cmp.Compare(a.Program.Book.Period.From, b.Program.Book.Period.From)
	})
	return made
}

// On returns the edition by which a day is judged: the latest that has come into force by
// then, else the first there is. It panics without editions.
func (e Editions) On(day quantity.Day) Edition {
	on := e[0]
	for _, edition := range e[1:] {
		if edition.Program.Book.Period.From <= day {
			on = edition
		}
	}
	return on
}

// inForce returns the edition that was in force on a day, if it is given.
func (e Editions) inForce(day quantity.Day) (Edition, bool) {
	on := e.On(day)
	return on, on.Program.Book.Period.Holds(day)
}

// until is the last day on or before which no other edition comes into force than is on the
// first of those days.
func (e Editions) until(from, last quantity.Day) quantity.Day {
	for _, edition := range e {
		if begins := edition.Program.Book.Period.From; begins > from && begins <= last {
			last = begins - 1
		}
	}
	return last
}

// Check works the clauses of the edition in force on the request's day. With an event each
// day of it is asked of, by the edition in force on that day, and every clause is told at
// its worst.
func (e Editions) Check(r Request) *Result {
	if r.Event == nil {
		on := e.On(r.Day)
		return on.Program.check(on.Car, r, e, nil)
	}
	whole, _ := e.checkEvent(r, standing{})
	return whole
}

// standing is what clauses have come to for a car, to be told again where neither a day nor an
// event changes it.
type standing map[*Car]map[*compiledClause]*ClauseResult

// of is what is known of a car at any event.
func (n standing) of(on Edition) map[*compiledClause]*ClauseResult {
	if n[on.Car] == nil {
		n[on.Car] = map[*compiledClause]*ClauseResult{}
	}
	k := &checker{p: on.Program, car: on.Car}
	for clause := range n[on.Car] {
		if k.changesByEvent(clause) {
			delete(n[on.Car], clause)
		}
	}
	return n[on.Car]
}

// checkEvent works an event day by day.
func (e Editions) checkEvent(r Request, already standing) (whole *Result, days []*DayResult) {
	before := standing{}
	var results []*Result
	for _, day := range r.Event.Days() {
		r.Day = day
		on := e.On(day)
		if before[on.Car] == nil {
			before[on.Car] = already.of(on)
		}
		result := on.Program.check(on.Car, r, e, before[on.Car])
		results = append(results, result)
		days = append(days, &DayResult{Day: day, Worst: result.Worst, Counts: result.Counts})
	}
	return worstOf(results), days
}

// worstOf puts the results of several days together: each clause at its worst, with the days
// told where it is not so on all.
func worstOf(results []*Result) *Result {
	byClause := map[string][]dayOfClause{} // by number, which the editions of an event have in common
	whole := &Result{Book: results[0].Book, Sheet: results[0].Sheet, Request: results[0].Request}
	chapters := map[string]*ChapterResult{}
	type place struct {
		number  string
		chapter *ChapterResult
	}
	var order []place
	for _, result := range results {
		for _, chapter := range result.Chapters {
			for _, clause := range chapter.Clauses {
				number := clause.Clause.Number
				if byClause[number] == nil {
					order = append(order, place{number, chapter})
				}
				byClause[number] = append(byClause[number], dayOfClause{result.Request.Day, clause})
			}
		}
	}
	for _, at := range order {
		number := at.chapter.Chapter.Number
		chapter := chapters[number]
		if chapter == nil {
			chapter = &ChapterResult{Chapter: at.chapter.Chapter}
			chapters[number] = chapter
			whole.Chapters = append(whole.Chapters, chapter)
		}
		one := worstDay(byClause[at.number], len(results))
		chapter.Clauses = append(chapter.Clauses, one)
		whole.Count(chapter, one)
	}
	return whole
}

// dayOfClause is what a clause comes to on one day.
type dayOfClause struct {
	day quantity.Day
	on  *ClauseResult
}

// worstDay is a clause at its worst over the days on which it is there. Subjects are told
// apart by their place in the clause, where every day has the same ones.
func worstDay(days []dayOfClause, all int) *ClauseResult {
	worst, same := days[0].on, true
	for _, d := range days[1:] {
		same = same && sameSubjects(d.on, days[0].on)
		if d.on.Verdict > worst.Verdict {
			worst = d.on
		}
	}
	if len(days) == 1 && all == 1 || worst.NotDue {
		return worst
	}
	out := *worst
	out.Subjects = nil
	for i, subject := range worst.Subjects {
		if same {
			for _, d := range days {
				if d.on.Subjects[i].Verdict > subject.Verdict {
					subject = d.on.Subjects[i]
				}
			}
		}
		out.Subjects = append(out.Subjects, withDays(subject, i, days, all, same))
	}
	return &out
}

func sameSubjects(a, b *ClauseResult) bool {
	return slices.EqualFunc(a.Subjects, b.Subjects, func(s, t *SubjectResult) bool { return s.Name == t.Name })
}

// withDays notes on which days a subject is at its worst, where it is not on all.
func withDays(subject *SubjectResult, i int, days []dayOfClause, all int, same bool) *SubjectResult {
	if !same || subject.Verdict <= Meets {
		return subject
	}
	var on []quantity.Day
	for _, d := range days {
		if d.on.Subjects[i].Verdict == subject.Verdict {
			on = append(on, d.day)
		}
	}
	if len(on) == all {
		return subject
	}
	out := *subject
	out.Notes = append(slices.Clone(subject.Notes), onDays(on))
	return &out
}

// onDays says on which days something is so.
func onDays(days []quantity.Day) string {
	text := "on " + days[0].String()
	if n := len(days); n > 1 && days[n-1]-days[0] == quantity.Day(n-1) {
		return "from " + days[0].String() + " to " + days[n-1].String()
	}
	for _, day := range days[1:] {
		text += ", " + day.String()
	}
	return text
}
