package engine

import (
	"slices"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A wayIn is one way in which a car is entered: under one rulebook, in one class, with one
// crew. What ends a part there need not end it at an event to which the car comes in another.
type wayIn struct {
	editions Editions
	spans    map[*DatedPart][]Span
	clauses  map[*DatedPart][]*rules.Clause // that hold its dates against days
	worded   []*wordings                    // in the order of their clauses
	gaps     map[string]bool                // numbers of the clauses that are gaps at its events
}

// wayOf is the way in which a car is entered at an event, nil where it is not worked yet.
// Entries that are alike share their editions.
func (w *seasonWork) wayOf(entry Entry) *wayIn {
	for _, way := range w.ways {
		if way.editions[0].Car == entry.Editions[0].Car {
			return way
		}
	}
	return nil
}

// isThere reports whether a part comes along to an event: what another crew wears does not.
func (d *DatedPart) isThere(entry Entry) bool {
	return d.Paper != "" || has(entry.Editions[0].Car.Sheet, d.Name)
}

// waysOf are the ways of the events to which a part comes along and that are still to come;
// of one that comes to none of those, all in which anything is told of it.
func (w *seasonWork) waysOf(d *DatedPart) []*wayIn {
	var ways []*wayIn
	for _, entry := range w.car.Entries {
		if way := w.wayOf(entry); entry.Event.Last >= w.season.From && d.isThere(entry) && !slices.Contains(ways, way) {
			ways = append(ways, way)
		}
	}
	if len(ways) > 0 {
		return ways
	}
	for _, way := range w.ways {
		if len(way.spans[d]) > 0 || len(way.clauses[d]) > 0 {
			ways = append(ways, way)
		}
	}
	return ways
}

// laidOut are the spans of a part in one way of being entered, without a hole.
func (w *seasonWork) laidOut(way *wayIn, d *DatedPart) []Span {
	return laidOut(way.spans[d], w.season.From.PlusYears(-yearsBack), w.season.Until)
}

// firstMissed is the first event, from the season's first day on, that a part does not last
// through by the rules under which the car is entered there; nil where there is none.
func (w *seasonWork) firstMissed(d *DatedPart) *Entry {
	for i, entry := range w.car.Entries {
		if entry.Event.Last < w.season.From || !d.isThere(entry) {
			continue
		}
		spans := w.fromNow(w.laidOut(w.wayOf(entry), d))
		if slices.ContainsFunc(entry.Event.Days(), func(day quantity.Day) bool { return isShortOn(spans, day) }) {
			return &w.car.Entries[i]
		}
	}
	return nil
}

// firstEntered is the first event still to come to which a car comes in one way, else the
// first of all.
func (w *seasonWork) firstEntered(way *wayIn) *vehicle.Event {
	var first *vehicle.Event
	for _, entry := range w.car.Entries {
		if w.wayOf(entry) != way {
			continue
		}
		if entry.Event.Last >= w.season.From {
			return entry.Event
		}
		if first == nil {
			first = entry.Event
		}
	}
	return first
}

// endIn is the first day from the season's on on which a part is not shown to hold in one
// way of being entered, a day after all where there is none.
func (w *seasonWork) endIn(way *wayIn, d *DatedPart) quantity.Day {
	for _, s := range w.fromNow(w.laidOut(way, d)) {
		if s.isShort() {
			return s.From
		}
	}
	return w.season.Until + 1
}

// alike reports whether a part stands the same in two ways of being entered.
func (w *seasonWork) alike(d *DatedPart, a, b *wayIn) bool {
	return a == b || slices.EqualFunc(w.fromNow(w.laidOut(a, d)), w.fromNow(w.laidOut(b, d)), func(s, t Span) bool {
		return s.From == t.From && s.Until == t.Until && s.isShort() == t.isShort()
	})
}
