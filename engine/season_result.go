package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// SeasonResult is what the rulebooks say of one or several cars over a season.
type SeasonResult struct {
	Season *vehicle.Season
	From   quantity.Day // from which day on dates are looked at
	Until  quantity.Day // and up to which: nothing is said of what ends later
	Cars   []*CarSeason
	Renew  []*DatedPart // of all cars and crews, what misses an event: by the first event missed, then by the last day, then as in the sheets
}

// CarSeason is one car's season.
type CarSeason struct {
	Sheet   *vehicle.Sheet
	Events  []*EventResult
	Changes []*Change    // clauses whose verdict is not the same at all events that run under their rulebook
	Dated   []*DatedPart // every part that a date ends, or that a clause reads a date of
}

// EventResult is what holds for one car at one event.
type EventResult struct {
	Event *vehicle.Event
	Book  *rules.Rulebook // the edition in force on its inspection day
	Days  []*DayResult
	Whole *Result // each clause at its worst over the days; notes of a subject say on which days where not on all
}

// DayResult is the roll-up of one day of an event.
type DayResult struct {
	Day    quantity.Day
	Worst  Verdict
	Counts [verdictCount]int
}

// Change is one row of the matrix of what changes from event to event.
type Change struct {
	Rulebook string // name of the rulebook whose clause it is; events under another have no say
	Clause   *rules.Clause
	Subject  string    // "" for the car as a whole
	Verdicts []Verdict // by event, DoesNotApply where the clause is not in force or has no such subject, and at events under another rulebook
}

// Renewal is how a dated part is made good again.
type Renewal uint8

// The ways of making a dated part good.
const (
	Replace   Renewal = iota // its date, or what its label says, cannot be changed: a new one is fitted
	Service                  // its date is that of a service, a check or a recertification
	Renew                    // it is a paper
	PutRight                 // no label or date of it decides: it is changed to meet a new wording
	Reinspect                // an incident loaded it: whatever its dates it is inspected, or replaced
)

// DatedPart is a part whose dates decide, and how long it holds.
type DatedPart struct {
	Car         *vehicle.Sheet
	Part        *vehicle.Part
	Paper       string              // label of the paper of the part that it is about, "" for the part itself
	Name        string              // "harness driver", "helmet of A. Penrith-Vale"
	Particular  *vehicle.Particular // whose date ends it, nil where nothing does
	Renewal     Renewal
	LastDay     quantity.Day      // the last day on which no clause that reads its dates is a gap, as the car is entered at Missed
	HasLastDay  bool              // false: nothing ends it up to SeasonResult.Until
	IsOver      bool              // it does not hold on SeasonResult.From: LastDay, if HasLastDay, lies before
	Uncertain   bool              // a date known to its month or year alone: it may end sooner; LastDay is the last that is sure
	Clause      *rules.Clause     // that ends it
	Limit       string            // the comparison that ends it, in words
	Missed      *vehicle.Event    // the first event it does not last through, nil
	AsEntered   *vehicle.Event    // by the rules of which event all of this is, nil where those of every event come to the same
	OrderBy     quantity.Day      // so that it is there by the inspection of Missed
	HasOrderBy  bool              // false for the car as a whole and its cage, which are not ordered
	Earliest    quantity.DayRange // earliest date, in the precision of its label, that would carry the whole season
	HasEarliest bool
	EarliestOf  *vehicle.Particular // whose date Earliest is, nil for a paper: of one that is recertified it may be the day of manufacture of a new one
	Latest      quantity.DayRange   // where a later date than Earliest can be too late: the last that would carry it, from Earliest on
	HasLatest   bool

	AnewFrom, AnewUntil      string // days of manufacture of a new one that would do as well as the recertification that Earliest is of, as its label would say them; "" where none would, and where later is never worse
	EarliestCode, LatestCode string // Earliest and Latest as the date code of a tyre, "" for what is dated otherwise
	Spans                    []Span // over From to Until, in order and without a hole
}

// Span is a stretch of days over which a part's standing is the same.
type Span struct {
	From, Until quantity.Day
	Verdict     Verdict       // Meets, or what the date makes of the worst clause
	Clause      *rules.Clause // the worst one, nil where all that read its dates are met

	date  dateOf
	read  *vehicle.Particular // what was read of the part where no date of it decides
	limit string
}

// NextDate is the date from which on the next one carries the season, as its label would say
// it: "2023-02", "3822" for a tyre. It is empty where none is known.
func (d *DatedPart) NextDate() string { return labelText(d.Earliest, d.EarliestCode, d.HasEarliest) }

// NextUntil is the last date with which the next one does, empty where later is never worse.
func (d *DatedPart) NextUntil() string { return labelText(d.Latest, d.LatestCode, d.HasLatest) }

func labelText(days quantity.DayRange, code string, known bool) string {
	switch {
	case !known:
		return ""
	case code != "":
		return code
	}
	return days.String()
}
