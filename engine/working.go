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
	s.dated = x.datedFirst(s.Decided)
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

// Working explains one clause for each of its subjects. It returns nil for a clause that
// is not one of the program's.
func (p *Program) Working(c *Car, clause *rules.Clause, r Request) *ClauseWorking {
	compiled := p.numbers[clause]
	if compiled == nil {
		return nil
	}
	r.All = true
	k := p.checker(c, r)
	out := &ClauseWorking{Result: k.clause(compiled)}
	k.eachSubject(compiled, 0, func() {
		m := k.judge(compiled)
		if o := k.worst(compiled); o.guard == quantity.No && len(compiled.across) > 0 {
			k.restoreReadings()
			return
		}
		x := &explainer{m: m, car: c, roots: true}
		w := &SubjectWorking{Name: nameOf(k.parts(compiled))}
		for _, f := range []struct {
			of *trace
			to **Working
		}{
			{compiled.traces.applies, &w.Applies},
			{compiled.traces.where, &w.Where},
			{compiled.traces.demand, &w.Demand},
		} {
			if f.of != nil {
				*f.to = x.walk(f.of).work
				(*f.to).Deciding = true
			}
		}
		k.restoreReadings()
		out.Subjects = append(out.Subjects, w)
	})
	return out
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
