package engine

import (
	"slices"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A dateOf is one date of one part, or the end of one of its papers.
type dateOf struct {
	part       *vehicle.Part
	particular *vehicle.Particular // nil for a paper, and where the rulebook alone sets the day
	paper      string              // its label, "" for the part itself
	loaded     bool                // an incident loaded the part, and nobody has inspected it since
}

// name is what is told of as the thing that ends.
func (d dateOf) name() string {
	if d.paper != "" {
		return d.paper + " of " + d.part.Name()
	}
	return d.part.Name()
}

// A datedRead is a comparison that decided, with the dates that it read: none where a day of
// the run is held against a day that the rulebook sets.
type datedRead struct {
	decided Decided
	dates   []dateOf
}

// keepDates keeps which dates are behind a comparison.
func (x *explainer) keepDates(t *trace, d Decided) {
	s := newSurvey(true)
	t.value.asTruth.survey(x.m, s)
	dates := x.car.datesIn(x.m, s)
	if len(dates) > 0 || s.readsDay() {
		x.dated = append(x.dated, datedRead{d, dates})
	}
}

// datesIn are the dates of the car's parts among the cells that a survey touched.
func (c *Car) datesIn(m *machine, s *survey) []dateOf {
	var dates []dateOf
	for i := range s.touched {
		at := s.touched[i].cell
		if o := &c.origins[at]; o.part != nil && m.isDated(at) {
			dates = append(dates, dateOf{part: o.part, particular: o.particular})
		}
	}
	return dates
}

// isAmong reports whether a comparison is one of those, whatever was noted on it since.
func (d Decided) isAmong(all []Decided) bool {
	return slices.ContainsFunc(all, func(other Decided) bool {
		other.Note = d.Note
		return other == d
	})
}

// datedFirst are the comparisons on dates, those that decided before others that failed
// beside them: of alternatives that have all ended each is an end.
func (x *explainer) datedFirst(decided []Decided) []datedRead {
	var first, others []datedRead
	for _, read := range x.dated {
		if read.decided.isAmong(decided) {
			first = append(first, read)
		} else {
			others = append(others, read)
		}
	}
	return append(first, others...)
}

// endedBy are the dates that make a subject what it is: of a gap those of comparisons that
// fail, of what is open those that keep it open.
func (s *SubjectResult) endedBy() (dates []dateOf, limit string) {
	add := func(d dateOf) {
		if d.part != nil && !slices.Contains(dates, d) {
			dates = append(dates, d)
		}
	}
	switch s.Verdict {
	case Gap:
		for _, read := range s.dated {
			if read.decided.Truth != quantity.No {
				continue
			}
			for _, date := range read.dates {
				add(date)
			}
			if limit == "" {
				limit = read.decided.line()
			}
		}
		for _, paper := range s.OutdatedPapers {
			limit = paper.Label + " " + paper.Why
			if n := len(s.Parts); n > 0 {
				add(dateOf{part: s.Parts[n-1], paper: paper.Label})
			} else {
				add(dateOf{part: s.car, paper: paper.Label})
			}
		}
		if n := len(s.Parts); len(dates) == 0 && limit != "" && n > 0 {
			add(dateOf{part: s.Parts[n-1]}) // it is over for all of its kind
		}
	case NotRecorded, Marginal:
		for _, cause := range s.Causes {
			if cause.Particular != nil && cause.Particular.Kind == vehicle.KindDate {
				add(dateOf{part: cause.Part, particular: cause.Particular, loaded: cause.Kind == Loaded})
			}
			if cause.Kind == Loaded && limit == "" {
				limit = cause.Text
			}
		}
	}
	return dates, limit
}

// line is a comparison on one line.
func (d *Decided) line() string {
	text := d.What + " is " + d.Reading
	if d.Limit != "" {
		text += ", " + d.Sense + " " + d.Limit + " asked"
	}
	return text
}
