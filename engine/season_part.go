package engine

import (
	"slices"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// holds works out how long a part holds: from the season's first day on, up to the day
// before the first on which a clause is not met, or is open, for one of its dates.
func (w *seasonWork) holds(d *DatedPart) {
	spans := laidOut(w.spans[d], w.season.From.PlusYears(-yearsBack), w.season.Until)
	at := slices.IndexFunc(spans, func(s Span) bool { return s.Until >= w.season.From })
	if spans[at].isShort() {
		d.IsOver = true
		d.endsIn(spans[at])
		for at > 0 && spans[at-1].isShort() {
			at--
			d.endsIn(spans[at])
		}
		if at > 0 {
			d.LastDay, d.HasLastDay = spans[at].From-1, true
		}
	} else if next := slices.IndexFunc(spans[at:], Span.isShort); next >= 0 {
		end := spans[at+next]
		d.endsIn(end)
		d.LastDay, d.HasLastDay = end.From-1, true
		d.Uncertain = end.Verdict != Gap
	}
	for _, s := range spans {
		if s.Until < w.season.From {
			continue
		}
		s.From = max(s.From, w.season.From)
		d.Spans = append(d.Spans, s)
	}
}

// endsIn tells of the span in which a part does not hold any more.
func (d *DatedPart) endsIn(s Span) {
	d.Clause, d.Particular, d.Limit = s.Clause, s.date.particular, s.limit
	d.Renewal = Replace
	if p := s.date.particular; p != nil && p.Changeable && !p.IsEnd() {
		d.Renewal = Service
	}
}

// isShort reports whether a part cannot be shown to hold in the span.
func (s Span) isShort() bool { return s.Verdict > ByEye }

// laidOut puts spans that may overlap side by side, the worst where there are several, with
// what holds between them.
func laidOut(spans []Span, from, until quantity.Day) []Span {
	var starts []quantity.Day
	for _, s := range spans {
		starts = append(starts, max(s.From, from), s.Until+1)
	}
	starts = append(starts, from)
	slices.Sort(starts)
	starts = slices.Compact(starts)
	var out []Span
	for i, start := range starts {
		if start < from || start > until {
			continue
		}
		end := until
		if i+1 < len(starts) {
			end = min(end, starts[i+1]-1)
		}
		worst := Span{From: start, Until: end, Verdict: Meets}
		for _, s := range spans {
			if s.From <= start && start <= s.Until && s.Verdict > worst.Verdict {
				worst = s
				worst.From, worst.Until = start, end
			}
		}
		if n := len(out); n > 0 && out[n-1].same(worst) {
			out[n-1].Until = end
			continue
		}
		out = append(out, worst)
	}
	return out
}

func (s Span) same(t Span) bool {
	return s.Verdict == t.Verdict && s.Clause == t.Clause && s.date == t.date
}

// missed finds the first event that a part does not last through, by when a new one has to
// be ordered, and how new it has to be.
func (w *seasonWork) missed(d *DatedPart) {
	for _, entry := range w.car.Entries {
		if entry.Event.Last < w.season.From || d.Paper == "" && !has(entry.Editions[0].Car.Sheet, d.Name) {
			continue
		}
		if slices.ContainsFunc(entry.Event.Days(), d.isShortOn) {
			d.Missed = entry.Event
			break
		}
	}
	if d.Missed == nil {
		return
	}
	d.OrderBy, d.HasOrderBy = d.Missed.Inspection.Plus(-w.season.Season.LeadOf(d.Part.Type)), true
	w.earliest(d)
}

// isShortOn reports whether a part cannot be shown to hold on a day.
func (d *DatedPart) isShortOn(day quantity.Day) bool {
	return slices.ContainsFunc(d.Spans, func(s Span) bool { return s.From <= day && day <= s.Until && s.isShort() })
}

// has reports whether a sheet has a part of that name.
func has(sheet *vehicle.Sheet, name string) bool { return partNamed(sheet, name) != nil }

func partNamed(sheet *vehicle.Sheet, name string) *vehicle.Part {
	var found *vehicle.Part
	everyPart(sheet.Root, func(p *vehicle.Part) {
		if found == nil && p.Within != nil && p.Name() == name {
			found = p
		}
	})
	return found
}
