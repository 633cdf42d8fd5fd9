package report

import (
	"slices"
	"strings"

	"gapsheet/engine"
	"gapsheet/vehicle/quantity"
)

// parts adds the last day of a part, or its service, and by when a new one is to be
// ordered. Several that are alike have one entry, known by the first of them.
func (m *calendarMaker) parts(group *datedGroup, parts alike) {
	d := parts[0]
	whose := group.whose(parts)
	uid := func(kind string) string {
		if group.car == nil {
			return m.uids.uid("gear", group.person, d.Name, kind)
		}
		return m.uids.uid("part", carIdentity(group.car), d.Name, kind)
	}
	why := reasonWords(d)
	missed := ""
	if d.Missed != nil {
		missed = "The first event it misses: " + d.Missed.Name + ", inspection " + d.Missed.Inspection.String() + "."
	}
	if d.HasLastDay {
		summary := "Last day: " + whose
		switch {
		case d.Renewal == engine.Service:
			summary = "Service due: " + whose
		case d.Renewal == engine.PutRight:
			summary = "Last day as it is: " + whose
		case d.Uncertain:
			summary = "Last day that is sure: " + whose
		}
		m.add(calendarEntry{uid: uid("last day"), first: d.LastDay, last: d.LastDay, summary: summary,
			before: m.remindersOf(d)}, why, missed, m.earliest(d))
	}
	if d.HasOrderBy {
		summary := "Order by today: " + whose
		switch {
		case d.Renewal == engine.Reinspect:
			summary = "Re-inspect, or order, by today: " + whose
		case isOpen(d):
			summary = "Record its date, or order by today: " + whose
		case d.Renewal == engine.Service:
			summary = "Send for service by today: " + whose
		case d.Renewal == engine.Renew:
			summary = "Renew by today: " + whose
		case d.Renewal == engine.PutRight:
			summary = "Put right by today: " + whose
		}
		if d.Missed != nil {
			summary += ", for " + d.Missed.Name
		}
		m.add(calendarEntry{uid: uid("order by"), first: d.OrderBy, last: d.OrderBy, summary: summary,
			before: []int64{weekBefore, dayBefore}}, missed, why, m.earliest(d))
	}
}

// remindersOf are as long before the last day as a new part takes to come, and a week.
func (m *calendarMaker) remindersOf(d *engine.DatedPart) []int64 {
	lead := m.season.Season.LeadOf(d.Part.Type)
	if lead <= 0 {
		lead = usualLead
	}
	if lead <= weekBefore {
		return []int64{weekBefore}
	}
	return []int64{lead, weekBefore}
}

func (m *calendarMaker) earliest(d *engine.DatedPart) string {
	if !d.HasEarliest {
		return ""
	}
	return "One that lasts the whole season: " + strings.TrimSuffix(nextWords(d), ",") + "."
}

// reasonWords say how long a part holds, and which clause with which limit ends it.
func reasonWords(d *engine.DatedPart) string {
	text := sentence(endWords(d))
	if d.Clause != nil {
		text += " Clause " + d.Clause.Number
		if d.Clause.Title != "" {
			text += ", " + d.Clause.Title
		}
		if d.Limit != "" {
			text += ": " + d.Limit
		}
		text = sentence(text)
	}
	return text
}

// isOpen says whether a part misses its first event for no more than that what is recorded
// of it is too little: it is a gap on no day of it.
func isOpen(d *engine.DatedPart) bool {
	return d.Missed != nil && !slices.ContainsFunc(d.Spans, func(s engine.Span) bool {
		return s.Verdict == engine.Gap && slices.ContainsFunc(d.Missed.Days(), func(day quantity.Day) bool { return s.From <= day && day <= s.Until })
	})
}

// endWords say up to when a part holds, and by the rules of which event, where those of
// another let it end on another day.
func endWords(d *engine.DatedPart) string {
	if d.AsEntered == nil {
		return endDay(d)
	}
	return endDay(d) + ", as entered at " + d.AsEntered.Name
}

func endDay(d *engine.DatedPart) string {
	switch {
	case d.IsOver && d.HasLastDay:
		return "held to " + d.LastDay.String()
	case d.IsOver:
		return standing(d)
	case !d.HasLastDay:
		return "nothing seen that ends it"
	case d.Uncertain:
		return "surely holds to " + d.LastDay.String() + ", perhaps longer"
	}
	return "holds to " + d.LastDay.String()
}
