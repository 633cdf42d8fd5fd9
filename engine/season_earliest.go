package engine

import (
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// earliest finds the earliest date, in the precision of the part's own, with which the part
// would hold at every event from the one it misses on. Nothing is found where not even a date
// of the day of that event's inspection would do, of a date of an end one of the last day of
// the season, or where another date of the part ends it as well.
func (w *seasonWork) earliest(d *DatedPart) {
	if d.Particular == nil {
		return
	}
	value := &d.Part.Values[d.Particular.Index]
	if value.State != vehicle.Stated {
		return
	}
	last := d.Missed.Inspection
	if d.Particular.IsEnd() {
		for _, entry := range w.car.Entries {
			last = max(last, entry.Event.Last)
		}
	}
	steps := stepsFrom(value.Days, last)
	low, high := 0, steps.count
	if !w.carries(d, steps.at(high)) {
		return
	}
	for low < high {
		if middle := (low + high) / 2; w.carries(d, steps.at(middle)) {
			high = middle
		} else {
			low = middle + 1
		}
	}
	d.Earliest, d.HasEarliest = steps.at(high), true
}

// dateSteps are dates in one precision, from one on.
type dateSteps struct {
	from      quantity.Day
	precision quantity.Precision
	count     int // of the last step
}

// stepsFrom are the dates from a stated one up to the one of a day.
func stepsFrom(stated quantity.DayRange, last quantity.Day) dateSteps {
	s := dateSteps{from: stated.From, precision: stated.Precision}
	switch stated.Precision {
	case quantity.ToYear:
		s.count = last.Year() - stated.From.Year()
	case quantity.ToMonth:
		s.count = int(quantity.MonthsBetween(stated.From, last))
	default:
		s.count = int(last - stated.From)
	}
	s.count = max(s.count, 0)
	return s
}

// at is the date so many steps on.
func (s dateSteps) at(step int) quantity.DayRange {
	r := quantity.DayRange{Precision: s.precision}
	switch s.precision {
	case quantity.ToYear:
		r.From = s.from.PlusYears(int64(step))
		r.To = r.From.EndOfYear()
	case quantity.ToMonth:
		r.From = s.from.PlusMonths(int64(step))
		r.To = r.From.EndOfMonth()
	default:
		r.From = s.from.Plus(int64(step))
		r.To = r.From
	}
	return r
}

// carries reports whether a part with another date would hold at every event from the one it
// misses on.
func (w *seasonWork) carries(d *DatedPart, date quantity.DayRange) bool {
	for _, entry := range w.car.Entries {
		if entry.Event.First < d.Missed.First || !has(entry.Editions[0].Car.Sheet, d.Name) {
			continue
		}
		for _, day := range entry.Event.Days() {
			r := w.request
			r.Event, r.Day = entry.Event, day
			if w.wayOf(entry).isWithdrawn(d, day) || !w.holdsOn(d, entry, date, r) {
				return false
			}
		}
	}
	return true
}

// holdsOn reports whether no clause is short for the date on one day.
func (w *seasonWork) holdsOn(d *DatedPart, entry Entry, date quantity.DayRange, r Request) bool {
	on := entry.Editions.On(r.Event.Inspection)
	part := partNamed(on.Car.Sheet, d.Name)
	if part == nil {
		return true
	}
	k := on.Program.checker(on.Car, r)
	k.editions, k.dates = entry.Editions, true
	at := on.Car.cellOf(part, part.Type.Particular(d.Particular.Name))
	for _, m := range []*machine{k.full, k.read} {
		m.cells[at] = dateCell(date)
	}
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
				if end.date.part == part && s.Verdict > ByEye {
					return false
				}
			}
		}
	}
	return true
}
