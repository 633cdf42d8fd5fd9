package engine

import (
	"maps"
	"slices"

	"gapsheet/vehicle/quantity"
)

// A stretch is days on end over which a clause comes to the same.
type stretch struct {
	from, until quantity.Day
	result      *ClauseResult // nil where the clause does not stand in the edition of those days
}

// A timeline works clauses over stretches of days: between two cuts every comparison that
// reads a day is what it is, so that one evaluation tells them all.
type timeline struct {
	evaluations int // clauses worked
	cuts        int // days at which something may change
}

// stretches works a clause, as it stands in the edition in force on from, up to until.
func (t *timeline) stretches(k *checker, c *compiledClause, from, until quantity.Day) (made []stretch, dates map[int32]bool) {
	cuts, dates := k.cutsOf(c, from, until)
	starts := append([]quantity.Day{from}, cuts...)
	t.cuts += len(starts) - 1
	for i, start := range starts {
		end := until
		if i+1 < len(starts) {
			end = starts[i+1] - 1
		}
		k.setDay(start)
		s := stretch{from: start, until: end}
		if k.stands(c.Clause) {
			t.evaluations++
			s.result = k.onDay(c)
		}
		made = append(made, s)
	}
	return made, dates
}

// setDay makes a day that of the check.
func (k *checker) setDay(day quantity.Day) {
	k.request.Day = day
	days := k.request.days()
	k.full.setDays(days)
	k.read.setDays(days)
}

// cutsOf are the days after from, up to until, on which what a clause comes to may change, and
// the cells of the dates that it holds against days.
func (k *checker) cutsOf(c *compiledClause, from, until quantity.Day) (cuts []quantity.Day, dates map[int32]bool) {
	d := k.surveyed(c, from, until)
	for _, day := range k.bounds(c) {
		d.at[day] = true
	}
	dates = d.dates
	if c.asAt != nil {
		k.cutsOfThen(c, d)
	}
	for day := range d.at {
		if day > from && day <= until {
			cuts = append(cuts, day)
		}
	}
	slices.Sort(cuts)
	return cuts, dates
}

// surveyed looks for the cuts that the formulas of a clause bring.
func (k *checker) surveyed(c *compiledClause, from, until quantity.Day) *dayCuts {
	d := newDayCuts(from, until)
	m := k.judge(c)
	d.over(m, from, until)
	s := newSurvey(true)
	s.days = d
	c.applies.survey(m, s)
	k.surveyDays(c, s, 0)
	return d
}

// cutsOfThen adds what a clause that is judged by the rules of another day changes on, in
// every wording that it may be judged by.
func (k *checker) cutsOfThen(c *compiledClause, d *dayCuts) {
	for _, day := range k.rulesOf(c) {
		edition, ok := k.editions.inForce(day)
		if !ok {
			continue
		}
		then := edition.Program.Book.ClauseOn(c.Number, day)
		if then == nil || then == c.Clause {
			continue
		}
		other := k.under(edition)
		compiled := edition.Program.numbers[then]
		found := other.surveyed(compiled, d.from, d.until)
		maps.Copy(d.at, found.at)
		for _, cut := range other.paperBounds(then) {
			d.at[cut] = true
		}
		for at := range found.dates {
			if own, ok := k.sameCell(other.car, at); ok {
				d.dates[own] = true
			}
		}
	}
}

// sameCell finds the cell of a particular that another edition has in a sheet of its own.
func (k *checker) sameCell(of *Car, at int32) (own int32, ok bool) {
	o := &of.origins[at]
	if o.part == nil || o.particular == nil {
		return 0, false
	}
	part := partNamed(k.car.Sheet, o.part.Name())
	if part == nil {
		return 0, false
	}
	particular := part.Type.Particular(o.particular.Name)
	if particular == nil {
		return 0, false
	}
	return k.car.cellOf(part, particular), true
}

// surveyDays looks for cuts in every subject of a clause.
func (k *checker) surveyDays(c *compiledClause, s *survey, depth int) {
	m := k.judge(c)
	if depth == len(c.across) {
		c.where.survey(m, s)
		c.demand.survey(m, s)
		return
	}
	of := c.across[depth]
	for i := range of.length(m) {
		of.at(k.full, i)
		of.at(k.read, i)
		of.surveyAt(m, s, i)
		s.during(func() { of.at(m, i) }, func() { k.surveyDays(c, s, depth+1) })
	}
	of.surveyOthers(m, s)
}

// bounds are the days on which a clause begins or ceases to be in force, one of its wordings
// takes over from another, or a paper of the car begins or ceases to count.
func (k *checker) bounds(c *compiledClause) []quantity.Day {
	var days []quantity.Day
	for _, other := range k.p.clauses {
		if other.Number == c.Number {
			days = append(days, other.Period.From, other.Period.Until+1)
		}
	}
	return append(days, k.paperBounds(c.Clause)...)
}
