package engine

import (
	"fmt"
	"slices"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A checker works the clauses of one program over one car on one day.
type checker struct {
	p       *Program
	car     *Car
	request Request
	full    *machine // with tolerances
	read    *machine // as read

	hangs    []*derived // what the clause that is worked reads and may hang on several readings
	dates    bool       // keep for every subject which dates decided
	tried    []attempt  // dates that are tried in place of those of the car
	editions Editions   // that are given together, for clauses by the rules of another day
}

func (p *Program) checker(c *Car, r Request) *checker {
	return &checker{
		p: p, car: c, request: r,
		full: c.machine(p, false, r),
		read: c.machine(p, true, r),
	}
}

// Check works all clauses that the request picks and rolls them up. A clause of advice
// has its verdict but counts towards nothing; a clause that is not due has none. No other
// edition of the rulebook is at hand.
func (p *Program) Check(c *Car, r Request) *Result {
	return Editions{{p, c}}.Check(r)
}

// check works the clauses on the request's day, with the editions that are given. before is
// what was found on an earlier day of the same event, nil without: what no day changes is
// not worked again.
func (p *Program) check(c *Car, r Request, given Editions, before map[*compiledClause]*ClauseResult) *Result {
	k := p.checker(c, r)
	k.editions = given
	result := &Result{Book: p.Book, Sheet: c.Sheet, Request: r}
	chapters := map[*rules.Chapter]*ChapterResult{}
	for _, clause := range p.clauses {
		if !r.picks(clause.Clause) || !k.stands(clause.Clause) {
			continue
		}
		chapter := chapters[clause.Chapter]
		if chapter == nil {
			chapter = &ChapterResult{Chapter: clause.Chapter}
			chapters[clause.Chapter] = chapter
			result.Chapters = append(result.Chapters, chapter)
		}
		one := before[clause]
		if one == nil || k.changesByDay(clause) {
			one = k.onDay(clause)
		}
		if before != nil {
			before[clause] = one
		}
		chapter.Clauses = append(chapter.Clauses, one)
		result.Count(chapter, one)
	}
	k.logBook(result)
	return result
}

// changesByDay reports whether a clause may come to something else on another day. The
// wording by which one with as_at is judged may read the day although its own does not.
func (k *checker) changesByDay(c *compiledClause) bool {
	return c.mentions.days || c.asAt != nil || c.Period.Bounded() || len(k.paperBounds(c.Clause)) > 0
}

// changesByEvent reports whether a clause may come to something else at another event.
func (k *checker) changesByEvent(c *compiledClause) bool {
	return k.changesByDay(c) || slices.ContainsFunc(k.car.log.papers.Dispensations, func(d *vehicle.Dispensation) bool { return isNumber(d.Clause, c.Clause) })
}

// picks reports whether a clause is asked for.
func (r *Request) picks(clause *rules.Clause) bool {
	for _, only := range r.Only {
		if clause.SelectedBy(only) {
			return true
		}
	}
	return len(r.Only) == 0
}

// Count rolls one clause of a chapter up: by verdict where it is due, advice apart.
func (r *Result) Count(chapter *ChapterResult, c *ClauseResult) {
	switch {
	case c.Remark:
	case c.NotDue:
		r.NotDue++
	case c.Clause.Concern == rules.Advice:
		r.Advice[c.Verdict]++
	default:
		r.Counts[c.Verdict]++
		chapter.Worst = chapter.Worst.Worse(c.Verdict)
		r.Worst = r.Worst.Worse(c.Verdict)
	}
	if !c.NotDue && c.Clause.LookFor != "" && c.Verdict > ByEye && !c.hasByEye() {
		r.ToLookAt++
	}
}

// hasByEye reports whether a person can look at a subject of the clause already.
func (c *ClauseResult) hasByEye() bool {
	for _, s := range c.Subjects {
		if s.Verdict == ByEye {
			return true
		}
	}
	return false
}

// judge is the machine that decides under the clause's way of judging.
func (k *checker) judge(c *compiledClause) *machine {
	if c.Judged == rules.Proved {
		return k.full
	}
	return k.read
}

// clause works one clause.
func (k *checker) clause(c *compiledClause) *ClauseResult {
	out := &ClauseResult{Clause: c.Clause}
	if k.request.Stage != vehicle.StageUnset && c.stage > k.request.Stage {
		out.NotDue = true
		return out
	}
	if c.asAt != nil {
		out = k.asAt(c)
	} else {
		out = k.worked(c)
	}
	k.besidePapers(c, out)
	return out
}

// worked works one clause by its own wording.
func (k *checker) worked(c *compiledClause) *ClauseResult {
	out := &ClauseResult{Clause: c.Clause}
	if len(c.across) == 0 {
		k.subject(c, out)
		return out
	}
	if k.judge(c).decide(c.applies) == quantity.No {
		return out
	}
	tally := k.subjects(c, out, 0)
	k.others(c, out, tally)
	return out
}

// A tally counts the subjects of a clause.
type tally struct {
	sure, possible int
	complete       bool
	open           []rawCause // why it is open whether subjects count
	others         []rawCause // what keeps the lists from being complete
}

// subjects runs over the subjects of a clause from the across variable at depth on.
func (k *checker) subjects(c *compiledClause, out *ClauseResult, depth int) tally {
	if depth == len(c.across) {
		return k.subject(c, out)
	}
	t := tally{complete: true}
	m := k.judge(c)
	of := c.across[depth]
	for i := range of.length(m) {
		member := of.at(k.full, i)
		of.at(k.read, i)
		if member == quantity.No {
			continue
		}
		below := k.subjects(c, out, depth+1)
		t.sure += below.sure
		t.possible += below.possible
		t.complete = t.complete && below.complete
		t.open, t.others = append(t.open, below.open...), append(t.others, below.others...)
	}
	if !of.complete(m) {
		t.complete = false
		s := newSurvey(false)
		of.surveyOthers(m, s)
		for _, u := range s.unknown {
			t.others = append(t.others, u.cause())
		}
	}
	return t
}

// counted turns the truth of a subject's guard into a tally of one.
func counted(guard quantity.Truth) tally {
	switch guard {
	case quantity.Yes:
		return tally{sure: 1, possible: 1, complete: true}
	case quantity.Open:
		return tally{possible: 1, complete: true}
	}
	return tally{complete: true}
}

// others gives the clause its say about subjects that are not there: too few of them, or
// a list of which the sheet does not say that it is complete.
func (k *checker) others(c *compiledClause, out *ClauseResult, t tally) {
	open := k.appliesOpen(c)
	count := fmt.Sprintf("%d on the sheet, at least %d asked", t.possible, c.AtLeast)
	switch {
	case !t.complete:
		causes := append(t.others, open...)
		out.add(&SubjectResult{Verdict: NotRecorded, Causes: k.named(causes), Notes: []string{"the list is not complete"}})
	case t.possible < c.AtLeast && len(open) > 0:
		out.add(&SubjectResult{Verdict: tooFew(open), Causes: k.named(open), Notes: []string{count}})
	case t.possible < c.AtLeast:
		out.Note, out.Verdict, out.short = count, Gap, true
	case t.sure < c.AtLeast:
		count = fmt.Sprintf("%d to %d on the sheet, at least %d asked", t.sure, t.possible, c.AtLeast)
		out.add(&SubjectResult{Verdict: tooFew(t.open), Causes: k.named(t.open), Notes: []string{count}})
	case len(out.Subjects) == 0:
		out.Note = "nothing on the sheet that it is about"
	}
}

// tooFew is the verdict where it is open whether there are enough subjects. It is a gap
// only if all that keeps it open is not there.
func tooFew(open []rawCause) Verdict {
	if v := verdictOf(open); v != Gap || !hasKind(open, Tolerance) {
		return v
	}
	return Marginal
}

// appliesOpen is why it is open whether the clause applies, nil where it is not.
func (k *checker) appliesOpen(c *compiledClause) []rawCause {
	m := k.judge(c)
	if m.decide(c.applies) != quantity.Open {
		return nil
	}
	return m.causesOf(c.applies)
}

// add puts a subject's result among the clause's.
func (c *ClauseResult) add(s *SubjectResult) {
	c.Subjects = append(c.Subjects, s)
	c.Verdict = c.Verdict.Worse(s.Verdict)
}
