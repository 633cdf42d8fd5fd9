package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// explain gives a subject the comparisons that decided it, and its place in the sheet.
func (k *checker) explain(s *SubjectResult, m *machine, c *compiledClause, whole quantity.Truth) {
	if len(s.Parts) > 0 {
		s.Place = s.Parts[len(s.Parts)-1].Range
	}
	for _, cause := range s.Causes {
		if cause.Place != s.Place && cause.Place.Filename != "" {
			s.Place = cause.Place
			break
		}
	}
	if c.traces.demand == nil || s.Verdict == Meets && !k.request.All {
		return
	}
	x := &explainer{m: m, car: k.car, dates: k.dates}
	f := x.walk(c.traces.demand)
	s.Decided = once(f.decided)
	s.dated, s.reads = x.datedFirst(s.Decided), x.reads
	if whole == quantity.Open {
		return
	}
	for _, d := range s.Decided {
		if d.Place.Filename != "" {
			s.Place = d.Place
			break
		}
	}
}

// once drops comparisons that say the same a second time.
func once(all []Decided) []Decided {
	seen := map[Decided]bool{}
	var out []Decided
	for _, d := range all {
		if !seen[d] {
			seen[d] = true
			out = append(out, d)
		}
	}
	return out
}

// Working explains the clause of a number as Check works it: by its wording of the request's
// day in the edition of that day, and where none is in force then, by its first. It returns nil
// where that edition has no clause of the number. An event of the request is not asked.
func (e Editions) Working(number string, r Request) *ClauseWorking {
	on := e.On(r.Day)
	clause := on.Program.Book.ClauseOn(number, r.Day)
	if clause == nil {
		clause = on.Program.Book.ClauseNumbered(number)
	}
	if clause == nil {
		return nil
	}
	return on.working(on.Program.numbers[clause], r, e)
}

// Working explains one clause for each of its subjects. It returns nil for a clause that
// is not one of the program's. No other edition of the rulebook is at hand.
func (p *Program) Working(c *Car, clause *rules.Clause, r Request) *ClauseWorking {
	compiled := p.numbers[clause]
	if compiled == nil {
		return nil
	}
	on := Edition{p, c}
	return on.working(compiled, r, Editions{on})
}

// working explains one clause of an edition, with the editions that are given.
func (on Edition) working(c *compiledClause, r Request, given Editions) *ClauseWorking {
	r.All = true
	k := on.Program.checker(on.Car, r)
	k.editions = given
	out := &ClauseWorking{Result: k.onDay(c)}
	if !c.Period.Holds(r.Day) {
		return out
	}
	k, then := k.judgedBy(c)
	if then == nil {
		return out
	}
	if then != c {
		out.Then = then.Clause
	}
	k.eachSubject(then, 0, func() {
		if one := k.subjectWorking(then); one != nil {
			out.Subjects = append(out.Subjects, one)
		}
		k.restoreReadings()
	})
	return out
}

// subjectWorking takes the formulas of a clause apart for the subject it is at; nil for one
// that the clause is not about.
func (k *checker) subjectWorking(c *compiledClause) *SubjectWorking {
	m := k.judge(c)
	if o := k.worst(c); o.guard == quantity.No && len(c.across) > 0 {
		return nil
	}
	x := &explainer{m: m, car: k.car, roots: true}
	w := &SubjectWorking{Name: nameOf(k.parts(c))}
	for _, f := range []struct {
		of *trace
		to **Working
	}{
		{c.traces.applies, &w.Applies},
		{c.traces.where, &w.Where},
		{c.traces.demand, &w.Demand},
	} {
		if f.of != nil {
			*f.to = x.walk(f.of).work
			(*f.to).Deciding = true
		}
	}
	return w
}

// judgedBy is the clause that a clause is judged by, with a checker of its edition: itself,
// or for one by the rules of another day the one of then, of several the worst. The clause is
// nil where that day is not known, or no clause of then is given.
func (k *checker) judgedBy(c *compiledClause) (*checker, *compiledClause) {
	if c.asAt == nil {
		return k, c
	}
	worst, at := k.worstRules(c)
	on, ok := k.editions.inForce(at)
	if worst == nil || !ok {
		return k, nil
	}
	return k.under(on), on.Program.numbers[on.Program.Book.ClauseOn(c.Number, at)]
}

// eachSubject runs over all members of the across lists.
func (k *checker) eachSubject(c *compiledClause, depth int, visit func()) {
	if depth == len(c.across) {
		visit()
		return
	}
	of := c.across[depth]
	for i := range of.length(k.judge(c)) {
		member := of.at(k.full, i)
		of.at(k.read, i)
		if member != quantity.No {
			k.eachSubject(c, depth+1, visit)
		}
	}
}
