package engine

import (
	"slices"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// earliest finds the earliest date, in the precision of the part's own, with which the part
// would hold at every event from the one it misses on. Nothing is found where not even a date
// of the day of that event's inspection would do, of a date of an end one of the last day of
// the season, or where another date of the part ends it as well. Beside a further
// recertification, or where none helps, a new part without one is looked for.
func (w *seasonWork) earliest(d *DatedPart) {
	if d.Paper != "" {
		w.earliestPaper(d)
		return
	}
	if d.Particular == nil || w.isWithdrawnOnce(d) {
		return
	}
	last := d.Missed.Inspection
	if d.Particular.IsEnd() {
		for _, entry := range w.car.Entries {
			last = max(last, entry.Event.Last)
		}
	}
	found := w.tries(d, nextPart{particular: d.Particular}, last)
	if slices.Contains(recertifications, d.Particular.Name) {
		w.earliestAnew(d, found)
	}
}

// earliestAnew looks for a new part without a recertification, which may be done once only.
func (w *seasonWork) earliestAnew(d *DatedPart, found bool) {
	before := *d
	anew := nextPart{particular: d.Part.Type.Particular("made")}
	for _, name := range recertifications {
		if x := d.Part.Type.Particular(name); x != nil && d.Part.Values[x.Index].State == vehicle.Stated {
			anew.without = append(anew.without, x)
		}
	}
	if anew.particular == nil || !w.tries(d, anew, d.Missed.Inspection) {
		return
	}
	if !found {
		d.Renewal = Replace
		return
	}
	from, until := d.NextDate(), d.NextUntil()
	*d = before
	d.AnewFrom, d.AnewUntil = from, until
}

// recertifications are the particulars that tell of a recertification, which a new part has
// not had.
var recertifications = []string{"recertified", "recertified_until", "extended_until"}

// earliestPaper is up to when the next paper has to be valid: up to the last day of an event
// on which the one that ended is asked for.
func (w *seasonWork) earliestPaper(d *DatedPart) {
	ended := false
	everyPart(d.Car.Root, func(p *vehicle.Part) {
		for _, e := range p.Evidence {
			ended = ended || vehicle.FoldText(e.Label) == vehicle.FoldText(d.Paper) && e.HasEnd && e.ValidUntil < d.Missed.Last
		}
	})
	if !ended {
		return
	}
	var last quantity.Day
	for _, entry := range w.car.Entries {
		for _, day := range entry.Event.Days() {
			if entry.Event.First >= d.Missed.First && isShortOn(w.laidOut(w.wayOf(entry), d), day) {
				last = max(last, day)
			}
		}
	}
	d.Earliest, d.HasEarliest = quantity.DayRange{From: last, To: last, Precision: quantity.ToDay}, true
}

// tries looks for the earliest date of a next part with which a part carries the season.
func (w *seasonWork) tries(d *DatedPart, t nextPart, last quantity.Day) bool {
	value := &d.Part.Values[t.particular.Index]
	if value.State != vehicle.Stated {
		return false
	}
	stated := value.Days
	if t.particular.Kind != vehicle.KindDate {
		week, fault := rules.WeekOfCode(value.Text)
		if fault != "" {
			return false
		}
		t.isWeek, stated = true, week
	}
	t.steps = stepsFrom(stated, last)
	if t.isWeek {
		t.steps = weeksFrom(stated, min(last, rules.WeekCodes.To))
	}
	first, end, ok := t.steps.search(w.literals(d), func(step int) bool { return w.carries(d, t, step) })
	if !ok {
		return false
	}
	d.Earliest, d.HasEarliest, d.EarliestOf = t.steps.at(first), true, t.particular
	if end < t.steps.count {
		d.Latest, d.HasLatest = t.steps.at(end), true
	}
	if t.isWeek {
		d.EarliestCode = weekCode(d.Earliest.From)
		if d.HasLatest {
			d.LatestCode = weekCode(d.Latest.From)
		}
	}
	return true
}

// literals are the dates that the clauses of a part name, at which it may begin or cease to
// do.
func (w *seasonWork) literals(d *DatedPart) []quantity.Day {
	var days []quantity.Day
	for _, way := range w.ways {
		for _, clause := range way.clauses[d] {
			for _, formula := range []*rules.Formula{clause.Applies, clause.Where, clause.Demand} {
				if formula == nil {
					continue
				}
				for n := range rules.Walk(formula.Tree) {
					if c, ok := n.(*rules.Constant); ok && c.Type().Kind == rules.Date {
						days = append(days, c.Days.From, c.Days.To, c.Days.To+1)
					}
				}
			}
		}
	}
	slices.Sort(days)
	return slices.Compact(days)
}

// isWithdrawnOnce reports whether a part is over at an event from the one it misses on
// whatever its dates are.
func (w *seasonWork) isWithdrawnOnce(d *DatedPart) bool {
	return slices.ContainsFunc(w.car.Entries, func(entry Entry) bool {
		way := w.wayOf(entry)
		return entry.Event.First >= d.Missed.First && slices.ContainsFunc(entry.Event.Days(), func(day quantity.Day) bool { return way.isWithdrawn(d, day) })
	})
}

// carries reports whether a part with another date would hold at every event from the one it
// misses on.
func (w *seasonWork) carries(d *DatedPart, t nextPart, step int) bool {
	for _, entry := range w.car.Entries {
		if entry.Event.First < d.Missed.First || !has(entry.Editions[0].Car.Sheet, d.Name) {
			continue
		}
		for _, day := range entry.Event.Days() {
			r := w.request
			r.Event, r.Day = entry.Event, day
			if !w.holdsOn(d, entry, t, step, r) {
				return false
			}
		}
	}
	return true
}

// holdsOn reports whether no clause is short for the next part on one day.
func (w *seasonWork) holdsOn(d *DatedPart, entry Entry, t nextPart, step int, r Request) bool {
	on := entry.Editions.On(r.Day)
	part := partNamed(on.Car.Sheet, d.Name)
	if part == nil {
		return true
	}
	k := t.checker(on, part, step, r)
	k.editions, k.dates = entry.Editions, true
	for _, clause := range w.wayOf(entry).clauses[d] {
		compiled := on.Program.numbers[clause]
		if compiled == nil {
			if now := on.Program.Book.ClauseOn(clause.Number, r.Day); now != nil {
				compiled = on.Program.numbers[now]
			}
		}
		if compiled == nil || !compiled.Period.Holds(r.Day) {
			continue
		}
		for _, s := range k.clause(compiled).Subjects {
			for _, end := range s.endings(on.Car.Sheet.Car()) {
				if end.date.part.Name() == d.Name && s.Verdict > ByEye {
					return false
				}
			}
		}
	}
	return true
}
