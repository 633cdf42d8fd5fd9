package report

import (
	"cmp"
	"slices"
	"strings"

	"gapsheet/engine"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// Reminders in days before the day itself: of what may have to be ordered first where the
// season names no lead time, and of everything else.
const (
	usualLead  = 21
	weekBefore = 7
	dayBefore  = 1
)

// calendarMaker gathers the entries.
type calendarMaker struct {
	season   *engine.SeasonResult
	cautions []string
	uids     uidMaker
	entries  []calendarEntry
}

// calendarEntries are the entries of a season by their first day; of one day first those of
// events, then those of parts, each as in the result.
func calendarEntries(r *engine.SeasonResult) []calendarEntry {
	m := &calendarMaker{season: r, cautions: seasonCautions(r), uids: uidMaker{}}
	for _, event := range r.Season.Events {
		m.event(event)
	}
	for _, group := range datedGroups(r) {
		for _, parts := range group.parts {
			m.parts(&group, parts)
		}
	}
	slices.SortStableFunc(m.entries, func(a, b calendarEntry) int { return cmp.Compare(a.first, b.first) })
	return m.entries
}

// add adds an entry with a paragraph for each of some texts, and the cautions.
func (m *calendarMaker) add(e calendarEntry, paragraphs ...string) {
	paragraphs = slices.DeleteFunc(append(paragraphs, strings.Join(m.cautions, " ")), func(text string) bool { return text == "" })
	for i, text := range paragraphs {
		paragraphs[i] = calendarText(text)
	}
	e.summary, e.location = calendarText(e.summary), calendarText(e.location)
	e.description = strings.Join(paragraphs, "\n\n")
	m.entries = append(m.entries, e)
}

// calendarText is a text on one line with single blanks only: a line that is folded where
// there are many would be blank, and get lost in some readers.
func calendarText(text string) string { return strings.Join(strings.Fields(Safe(text)), " ") }

// event adds what an event puts into the calendar.
func (m *calendarMaker) event(e *vehicle.Event) {
	details := eventDetails(m.season, e)
	uid := func(kind string) string { return m.uids.uid("event", m.season.Season.Name, e.Name, kind) }
	reminders := []int64{weekBefore, dayBefore}
	if e.HasEntryCloses {
		m.add(calendarEntry{uid: uid("entry closes"), first: e.EntryCloses, last: e.EntryCloses,
			summary: "Entry closes: " + e.Name, before: reminders}, details)
	}
	m.add(calendarEntry{uid: uid("inspection"), first: e.Inspection, last: e.Inspection,
		summary: "Official technical inspection: " + e.Name, location: e.Place, busy: true, before: reminders}, details, m.missing(e))
	m.add(calendarEntry{uid: uid("days"), first: e.First, last: e.Last,
		summary: e.Name, location: e.Place, busy: true, before: reminders}, details, m.missing(e))
}

// eventDetails are the days and people of an event in a few sentences.
func eventDetails(r *engine.SeasonResult, e *vehicle.Event) string {
	text := "Inspection " + e.Inspection.String() + ", event " + dayToDay(e.First, e.Last)
	if e.HasEntryCloses {
		text += ", entry closes " + e.EntryCloses.String()
	}
	text += "."
	if e.Class != "" {
		text += " Class " + e.Class + "."
	}
	if len(e.Crew) > 0 {
		text += " Crew " + list(e.Crew) + "."
	}
	if books := booksOf(r, e); len(books) > 0 {
		text += " By " + list(books) + "."
	}
	return text
}

// booksOf are the editions by which an event is looked at, each once.
func booksOf(r *engine.SeasonResult, e *vehicle.Event) []string {
	var names []string
	for _, car := range r.Cars {
		for _, result := range car.Events {
			if result.Event != e || result.Book == nil {
				continue
			}
			name := result.Book.Name
			if result.Book.Edition != "" {
				name += ", edition " + result.Book.Edition
			}
			if !slices.Contains(names, name) {
				names = append(names, name)
			}
		}
	}
	return names
}

// dayToDay writes closed days: one, or the first and the last.
func dayToDay(first, last quantity.Day) string {
	if first == last {
		return first.String()
	}
	return first.String() + " to " + last.String()
}

// missing names the parts of which this is the first event that they miss.
func (m *calendarMaker) missing(e *vehicle.Event) string {
	var parts []*engine.DatedPart
	for _, part := range m.season.Renew {
		if part.Missed == e {
			parts = append(parts, part)
		}
	}
	var names []string
	for _, group := range alikes(parts) {
		name := group.name()
		if personOf(group[0].Part) == "" {
			name += " of " + carName(group[0].Car)
		}
		names = append(names, name+" ("+endWords(group[0])+")")
	}
	if len(names) == 0 {
		return ""
	}
	return "Not in date for this event, unless renewed before: " + list(names) + "."
}
