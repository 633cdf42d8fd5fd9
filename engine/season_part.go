package engine

import (
	"cmp"
	"slices"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// settle works out how long a part holds, by the rules of the first event that it does not
// last through; where it lasts through all, by those under which it ends first.
func (w *seasonWork) settle(d *DatedPart) {
	ways := w.waysOf(d)
	var chosen *wayIn
	if entry := w.firstMissed(d); entry != nil {
		chosen, d.Missed = w.wayOf(*entry), entry.Event
	} else {
		chosen = slices.MinFunc(ways, func(a, b *wayIn) int { return cmp.Compare(w.endIn(a, d), w.endIn(b, d)) })
	}
	w.holds(d, w.laidOut(chosen, d))
	if slices.ContainsFunc(ways, func(other *wayIn) bool { return !w.alike(d, chosen, other) }) {
		d.AsEntered = d.Missed
		if d.AsEntered == nil {
			d.AsEntered = w.firstEntered(chosen)
		}
	}
	if d.Missed != nil {
		if isOrdered(d.Part) || d.Paper != "" {
			d.OrderBy, d.HasOrderBy = d.Missed.Inspection.Plus(-w.season.Season.LeadOf(d.Part.Type)), true
		}
		w.earliest(d)
	}
}

// holds works out how long a part holds by its spans in one way of being entered: from the
// season's first day on, up to the day before the first on which a clause is not met, or is
// open, for one of its dates.
func (w *seasonWork) holds(d *DatedPart, spans []Span) {
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
		d.Uncertain = end.Verdict != Gap && d.Renewal != Reinspect
	}
	d.Spans = w.fromNow(spans)
}

// fromNow are spans from the season's first day on.
func (w *seasonWork) fromNow(spans []Span) []Span {
	var out []Span
	for _, s := range spans {
		if s.Until >= w.season.From {
			s.From = max(s.From, w.season.From)
			out = append(out, s)
		}
	}
	return out
}

// endsIn tells of the span in which a part does not hold any more.
func (d *DatedPart) endsIn(s Span) {
	d.Clause, d.Particular, d.Limit = s.Clause, s.date.particular, s.limit
	switch p := s.date.particular; {
	case d.Paper != "":
		d.Renewal = Renew
	case s.date.loaded:
		d.Renewal = Reinspect
	case p != nil && p.Changeable && !p.IsEnd():
		d.Renewal = Service
	case p != nil:
		d.Renewal = Replace
	case !isOrdered(d.Part) || s.read == nil || s.read.Changeable || s.read.Kind == vehicle.KindNumber:
		d.Renewal = PutRight
	default:
		d.Renewal = Replace
	}
}

// isOrdered reports whether a part can be ordered anew: not the car, what a club asks of it,
// nor its cage.
func isOrdered(p *vehicle.Part) bool {
	for ; p != nil; p = p.Within {
		if isWhole(p) || p.Type.Name == "cage" {
			return false
		}
	}
	return true
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

// isShortOn reports whether a part cannot be shown to hold on a day.
func (d *DatedPart) isShortOn(day quantity.Day) bool {
	return isShortOn(d.Spans, day)
}

func isShortOn(spans []Span, day quantity.Day) bool {
	return slices.ContainsFunc(spans, func(s Span) bool { return s.From <= day && day <= s.Until && s.isShort() })
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
