package report

import (
	"gapsheet/engine"
)

// parts adds the last day of a part, or its service, and by when a new one is to be
// ordered. Several that are alike have one entry, known by the first of them.
func (m *calendarMaker) parts(group alike) {
	d := group[0]
	whose := group.name() + " (" + carName(d.Car) + ")"
	uid := func(kind string) string { return m.uids.uid("part", carIdentity(d.Car), d.Name, kind) }
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
		case d.Uncertain:
			summary = "Last day that is sure: " + whose
		}
		m.add(calendarEntry{uid: uid("last day"), first: d.LastDay, last: d.LastDay, summary: summary,
			before: m.remindersOf(d)}, why, missed, m.earliest(d))
	}
	if d.HasOrderBy {
		summary := "Order by today: " + whose
		if d.Renewal == engine.Service {
			summary = "Send for service by today: " + whose
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
	word := "dated"
	if d.Particular != nil {
		word = inWords(d.Particular.Name)
	}
	return "One that lasts the whole season: " + word + " " + d.Earliest.String() + " or later."
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

// endWords say up to when a part holds.
func endWords(d *engine.DatedPart) string {
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
