package engine

import (
	"cmp"
	"slices"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// An Entry is one car at one event: its editions have the car laid out as it is entered
// there, with that event's crew and class. Entries that are alike share their editions.
type Entry struct {
	Event    *vehicle.Event
	Editions Editions
}

// CarEntries is a car with its entries, in the order of the season.
type CarEntries struct {
	Sheet   *vehicle.Sheet
	Entries []Entry
}

// How far around the day of the check dates are looked at, in years: ahead, so that a shop
// sees what ends after the season as well; back, to tell since when something is over.
const (
	yearsAhead = 10
	yearsBack  = 10
)

// WorkSeason works cars over the events of a season, and tells of every part with a date how
// long it holds from the request's day on.
func WorkSeason(season *vehicle.Season, cars []CarEntries, r Request) *SeasonResult {
	out := &SeasonResult{Season: season, From: r.Day, Until: r.Day.PlusYears(yearsAhead)}
	for _, event := range season.Events {
		out.Until = max(out.Until, event.Last)
	}
	for _, car := range cars {
		w := &seasonWork{season: out, request: r, car: car, byName: map[string]*DatedPart{}, known: standing{}}
		made := w.events()
		w.timelines(made.Events)
		made.Dated = w.finish()
		out.Cars = append(out.Cars, made)
	}
	out.Renew = renewals(out)
	return out
}

// seasonWork is one car's season while it is worked.
type seasonWork struct {
	season  *SeasonResult
	request Request
	car     CarEntries
	dated   []*DatedPart
	byName  map[string]*DatedPart
	known   standing
	ways    []*wayIn // each way in which the car is entered, in the order of the events
}

// events works every event, and what changes between them.
func (w *seasonWork) events() *CarSeason {
	made := &CarSeason{Sheet: w.car.Sheet}
	for _, entry := range w.car.Entries {
		r := w.request
		r.Event, r.Day = entry.Event, entry.Event.Inspection
		e := &EventResult{Event: entry.Event, Book: entry.Editions.On(r.Day).Program.Book}
		e.Whole, e.Days = entry.Editions.checkEvent(r, w.known)
		made.Events = append(made.Events, e)
	}
	made.Changes = changes(made.Events)
	return made
}

// changes is the matrix of what is not the same at all events.
func changes(events []*EventResult) []*Change {
	type row struct{ book, number, subject string }
	byRow := map[row]*Change{}
	var order []*Change
	for i, e := range events {
		for _, chapter := range e.Whole.Chapters {
			for _, clause := range chapter.Clauses {
				verdicts := map[string]Verdict{}
				for _, s := range clause.Subjects {
					verdicts[s.Name] = verdicts[s.Name].Worse(s.Verdict)
				}
				if len(clause.Subjects) == 0 {
					verdicts[""] = clause.Verdict
				}
				for subject, verdict := range verdicts {
					key := row{e.Book.Name, clause.Clause.Number, subject}
					if byRow[key] == nil {
						byRow[key] = &Change{Rulebook: e.Book.Name, Clause: clause.Clause, Subject: subject, Verdicts: make([]Verdict, len(events))}
						order = append(order, byRow[key])
					}
					byRow[key].Verdicts[i] = verdict
				}
			}
		}
	}
	order = slices.DeleteFunc(order, func(c *Change) bool { return !c.isOne(events) })
	place := map[*rules.Clause]int{}
	for _, e := range events {
		for _, chapter := range e.Whole.Chapters {
			for _, clause := range chapter.Clauses {
				if _, known := place[clause.Clause]; !known {
					place[clause.Clause] = len(place)
				}
			}
		}
	}
	slices.SortStableFunc(order, func(a, b *Change) int {
		return cmp.Or(cmp.Compare(place[a.Clause], place[b.Clause]), cmp.Compare(a.Subject, b.Subject))
	})
	return order
}

// isOne reports whether the verdicts are not the same at all events that run under the
// rulebook of the clause.
func (c *Change) isOne(events []*EventResult) bool {
	first := -1
	for i, e := range events {
		switch {
		case e.Book.Name != c.Rulebook:
		case first < 0:
			first = i
		case c.Verdicts[i] != c.Verdicts[first]:
			return true
		}
	}
	return false
}

// timelines works every clause over the years, once for each way in which the car is entered.
func (w *seasonWork) timelines(events []*EventResult) {
	for _, entry := range w.car.Entries {
		if w.wayOf(entry) == nil {
			way := &wayIn{editions: entry.Editions, spans: map[*DatedPart][]Span{}, clauses: map[*DatedPart][]*rules.Clause{}}
			way.gaps = w.gapsOf(way, events)
			w.ways = append(w.ways, way)
			w.timeline(way)
		}
	}
}

// timeline works every clause of all editions, each over the days on which it is the one in
// force.
func (w *seasonWork) timeline(way *wayIn) {
	editions := way.editions
	t := &timeline{}
	last := w.season.Until
	for from := w.season.From.PlusYears(-yearsBack); from <= last; {
		until := editions.until(from, last)
		on := editions.On(from)
		k := on.Program.checker(on.Car, w.request)
		k.editions, k.dates = editions, true
		for _, clause := range on.Program.clauses {
			dated := clause.mentions.days || clause.asAt != nil || len(k.evidenceBounds(clause.Clause)) > 0
			worded := way.isWorded(on, clause.Clause)
			if !dated && !worded {
				continue // nothing of it changes with the days
			}
			stretches, dates := t.stretches(k, clause, from, until)
			if dated {
				w.enter(way, on.Car, clause.Clause, stretches, dates)
			}
			if worded {
				way.keepWordings(clause.Clause, stretches)
			}
		}
		from = until + 1
	}
	w.enterWordings(way)
}

// enter puts what a clause comes to over the days to the parts whose dates it reads.
func (w *seasonWork) enter(way *wayIn, car *Car, clause *rules.Clause, stretches []stretch, dates map[int32]bool) {
	cells := make([]int32, 0, len(dates))
	for at := range dates {
		cells = append(cells, at)
	}
	slices.Sort(cells)
	for _, at := range cells {
		if o := &car.origins[at]; o.part != nil && o.value != nil && o.value.State == vehicle.Stated {
			part := w.partOf(dateOf{part: o.part})
			if !slices.Contains(way.clauses[part], clause) {
				way.clauses[part] = append(way.clauses[part], clause)
			}
		}
	}
	for _, s := range stretches {
		if s.result == nil {
			continue
		}
		for _, subject := range s.result.Subjects {
			for _, end := range subject.endings(w.car.Sheet.Car()) {
				w.enterSpan(way, s, subject.Verdict, end)
			}
		}
	}
}

// partOf is what is told of a part, by its name: another edition or another event has the
// same part in a sheet of its own.
func (w *seasonWork) partOf(of dateOf) *DatedPart {
	name := of.name()
	if d := w.byName[name]; d != nil {
		return d
	}
	d := &DatedPart{Car: w.car.Sheet, Part: of.part, Paper: of.paper, Name: name}
	w.byName[name] = d
	w.dated = append(w.dated, d)
	return d
}

// finish works out for every dated part how long it holds.
func (w *seasonWork) finish() []*DatedPart {
	for _, d := range w.dated {
		w.settle(d)
	}
	return slices.DeleteFunc(w.dated, func(d *DatedPart) bool { return !d.HasLastDay && !d.IsOver && isWhole(d.Part) })
}

// isWhole reports whether a part is the car itself, or what a club asks of it: dates of
// those, such as when it was first registered, end nothing by themselves.
func isWhole(p *vehicle.Part) bool { return p.Type.Name == "car" || p.Type.Name == "club" }

// renewals are all parts that miss an event, in the order in which that happens.
func renewals(r *SeasonResult) []*DatedPart {
	var all []*DatedPart
	for _, car := range r.Cars {
		for _, d := range car.Dated {
			if d.Missed != nil {
				all = append(all, d)
			}
		}
	}
	slices.SortStableFunc(all, func(a, b *DatedPart) int {
		return cmp.Or(cmp.Compare(a.Missed.Inspection, b.Missed.Inspection), cmp.Compare(a.end(), b.end()))
	})
	return all
}

// end is the day by which a part is ranked: the last one it holds, none where it is over.
func (d *DatedPart) end() quantity.Day {
	if !d.HasLastDay {
		return 0
	}
	return d.LastDay
}
