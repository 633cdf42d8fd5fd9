package engine

import (
	"slices"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A dateOf is one date of one part.
type dateOf struct {
	part       *vehicle.Part
	particular *vehicle.Particular
}

// A datedRead is a comparison that decided, with the dates that it read.
type datedRead struct {
	decided Decided
	dates   []dateOf
}

// keepDates keeps which dates are behind a comparison.
func (x *explainer) keepDates(t *trace, d Decided) {
	s := newSurvey(true)
	t.value.asTruth.survey(x.m, s)
	var dates []dateOf
	for i := range s.touched {
		at := s.touched[i].cell
		if o := &x.car.origins[at]; o.part != nil && x.m.isDated(at) {
			dates = append(dates, dateOf{o.part, o.particular})
		}
	}
	if len(dates) > 0 {
		x.dated = append(x.dated, datedRead{d, dates})
	}
}

// datedAmong are the comparisons on dates among those that decided, whatever was noted on
// them since.
func (x *explainer) datedAmong(decided []Decided) []datedRead {
	var found []datedRead
	for _, d := range decided {
		d.Note = ""
		for _, read := range x.dated {
			bare := read.decided
			if bare.Note = ""; bare == d {
				found = append(found, read)
				break
			}
		}
	}
	return found
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
	case NotRecorded, Marginal:
		for _, cause := range s.Causes {
			if cause.Particular != nil && cause.Particular.Kind == vehicle.KindDate {
				add(dateOf{cause.Part, cause.Particular})
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
