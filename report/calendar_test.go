package report

import (
	"bytes"
	"fmt"
	"sort"
	"strings"
	"testing"
	"unicode/utf8"

	ics "github.com/arran4/golang-ical"
	"github.com/emersion/go-ical"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"gapsheet/engine"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

func written(t require.TestingT, r *engine.SeasonResult) string {
	var out bytes.Buffer
	require.NoError(t, Calendar(&out, r, handMadeSeasonHead()))
	return out.String()
}

func TestCalendarGolden(t *testing.T) {
	m := handMadeSeason(t)
	text := written(t, m.SeasonResult)
	requireCalendar(t, text, m.SeasonResult)
	requireGolden(t, "calendar.ics", text)
	require.Equal(t, text, written(t, handMadeSeason(t).SeasonResult), "the same bytes again")
}

// entryRead is an entry as a reader gives it back.
type entryRead struct {
	uid, start, end, summary, location, description, stamp, sequence, transparency string
	alarms                                                                         string
}

// requireCalendar holds a calendar to RFC 5545, and to what two readers that have nothing in
// common make of it: both give back what was put in.
func requireCalendar(t require.TestingT, text string, r *engine.SeasonResult) []entryRead {
	requireLines(t, text)
	one, other := readByFirst(t, text), readBySecond(t, text)
	require.Equal(t, one, other)
	var want []entryRead
	uids := map[string]bool{}
	for _, e := range calendarEntries(r) {
		read := entryRead{uid: e.uid, start: basic(e.first), end: basic(e.last + 1), summary: e.summary, location: e.location, description: e.description,
			stamp: basic(r.From) + "T000000Z", sequence: "0", transparency: "TRANSPARENT"}
		if e.busy {
			read.transparency = "OPAQUE"
		}
		for _, days := range e.before {
			read.alarms += fmt.Sprintf("DISPLAY -P%dD %s\n", days, e.summary)
		}
		want = append(want, read)
		require.False(t, uids[e.uid], "one UID, one entry")
		uids[e.uid] = true
	}
	require.Equal(t, want, one)
	return one
}

// basic is a day in the basic form of ISO 8601 (RFC 5545, section 3.3.4).
func basic(day quantity.Day) string { return strings.ReplaceAll(day.String(), "-", "") }

// requireLines holds the lines to section 3.1 of RFC 5545: each ends with CR and LF, none
// has more than 75 octets without them, and here none is cut within a letter.
func requireLines(t require.TestingT, text string) {
	require.True(t, strings.HasSuffix(text, "\r\n"))
	require.NotContains(t, strings.ReplaceAll(text, "\r\n", ""), "\n")
	require.NotContains(t, strings.ReplaceAll(text, "\r\n", ""), "\r")
	for _, line := range strings.Split(strings.TrimSuffix(text, "\r\n"), "\r\n") {
		require.LessOrEqual(t, len(line), 75, line)
		require.True(t, utf8.ValidString(line), line)
		require.NotEmpty(t, strings.TrimLeft(line, " "))
		for _, r := range line {
			require.True(t, r >= ' ' && r != 0x7f, "control character %U", r)
		}
	}
	whole := strings.ReplaceAll(text, "\r\n ", "")
	require.True(t, strings.HasPrefix(whole, "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//gapsheet//NONSGML gapsheet 0.4//EN\r\nBEGIN:VEVENT\r\n"))
	for _, line := range strings.Split(whole, "\r\n") {
		name, _, _ := strings.Cut(line, ":")
		name, _, _ = strings.Cut(name, ";")
		require.False(t, strings.HasPrefix(name, "X-"), line)
		require.NotEqual(t, "METHOD", name)
	}
	require.Equal(t, strings.Count(whole, "\r\nDTSTART;VALUE=DATE:"), strings.Count(whole, "\r\nBEGIN:VEVENT\r\n"))
	require.Equal(t, strings.Count(whole, "\r\nDTEND;VALUE=DATE:"), strings.Count(whole, "\r\nBEGIN:VEVENT\r\n"))
}

func readByFirst(t require.TestingT, text string) []entryRead {
	calendar, err := ical.NewDecoder(strings.NewReader(text)).Decode()
	require.NoError(t, err)
	textOf := func(c *ical.Component, name string) string {
		value, err := c.Props.Text(name)
		require.NoError(t, err)
		return value
	}
	valueOf := func(c *ical.Component, name string) string {
		require.Len(t, c.Props.Values(name), 1, name)
		return c.Props.Get(name).Value
	}
	var entries []entryRead
	for _, event := range calendar.Events() {
		start, err := event.DateTimeStart(nil)
		require.NoError(t, err)
		end, err := event.DateTimeEnd(nil)
		require.NoError(t, err)
		e := entryRead{uid: textOf(event.Component, "UID"), start: start.Format("20060102"), end: end.Format("20060102"), summary: textOf(event.Component, "SUMMARY"),
			location: textOf(event.Component, "LOCATION"), description: textOf(event.Component, "DESCRIPTION"),
			stamp: valueOf(event.Component, "DTSTAMP"), sequence: valueOf(event.Component, "SEQUENCE"), transparency: textOf(event.Component, "TRANSP")}
		require.Equal(t, ical.ValueDate, event.Props.Get("DTSTART").ValueType())
		for _, alarm := range event.Children {
			require.Equal(t, "VALARM", alarm.Name)
			e.alarms += textOf(alarm, "ACTION") + " " + valueOf(alarm, "TRIGGER") + " " + textOf(alarm, "DESCRIPTION") + "\n"
			before, err := alarm.Props.Get("TRIGGER").Duration()
			require.NoError(t, err)
			require.Negative(t, before)
		}
		entries = append(entries, e)
	}
	return entries
}

func readBySecond(t require.TestingT, text string) []entryRead {
	calendar, err := ics.ParseCalendar(strings.NewReader(text))
	require.NoError(t, err)
	valueOf := func(c *ics.ComponentBase, name ics.ComponentProperty) string {
		if p := c.GetProperty(name); p != nil {
			return p.Value
		}
		return ""
	}
	var entries []entryRead
	for _, event := range calendar.Events() {
		start, err := event.GetAllDayStartAt()
		require.NoError(t, err)
		end, err := event.GetAllDayEndAt()
		require.NoError(t, err)
		c := &event.ComponentBase
		e := entryRead{uid: event.Id(), start: start.Format("20060102"), end: end.Format("20060102"), summary: valueOf(c, "SUMMARY"), location: valueOf(c, "LOCATION"),
			description: valueOf(c, "DESCRIPTION"), stamp: valueOf(c, "DTSTAMP"), sequence: valueOf(c, "SEQUENCE"), transparency: valueOf(c, "TRANSP")}
		for _, alarm := range event.Alarms() {
			e.alarms += valueOf(&alarm.ComponentBase, "ACTION") + " " + valueOf(&alarm.ComponentBase, "TRIGGER") + " " + valueOf(&alarm.ComponentBase, "DESCRIPTION") + "\n"
		}
		entries = append(entries, e)
	}
	return entries
}

// What a shop has to find: days, words and reminders of a few entries, by hand.
func TestCalendarEntries(t *testing.T) {
	m := handMadeSeason(t)
	bySummary := map[string]entryRead{}
	var days []string
	for _, e := range requireCalendar(t, written(t, m.SeasonResult), m.SeasonResult) {
		require.NotContains(t, bySummary, e.summary)
		bySummary[e.summary] = e
		days = append(days, e.start)
		require.Contains(t, e.description, Caution)
		require.Contains(t, e.description, DateCaution)
		require.Contains(t, e.description, Bulletins)
	}
	require.True(t, sort.StringsAreSorted(days))

	event := bySummary["Three Rivers Marathon"]
	require.Equal(t, []string{"20280527", "20280608", "Tarn Bridge", "OPAQUE"}, []string{event.start, event.end, event.location, event.transparency}, "the end is the day after")
	require.Contains(t, event.description, "Inspection 2028-05-25, event 2028-05-27 to 2028-06-07. By Kettleford Stage Car Rules, edition 2028.")
	require.Contains(t, event.description, "Not in date for this event, unless renewed before: fire system of Tessel 16 (holds to 2028-05-31) and helmet of B. Oakhollow (holds to 2028-05-27).")
	require.Equal(t, "20280525", bySummary["Official technical inspection: Three Rivers Marathon"].start)
	require.Equal(t, "20270226", bySummary["Entry closes: Saltmarsh Opening Stages"].start)
	require.Contains(t, bySummary["Saltmarsh Opening Stages"].description, "entry closes 2027-02-26. Class two-wheel drive open. Crew A. Penrith-Vale and B. Oakhollow.")

	belt := bySummary["Last day: harness driver (Tessel 16)"]
	require.Equal(t, []string{"20270531", "20270601", "TRANSPARENT"}, []string{belt.start, belt.end, belt.transparency})
	require.Contains(t, belt.description, "Holds to 2027-05-31. Clause 6.4, Dates of harness: years after made is 5.1, at most 5 asked.")
	require.Contains(t, belt.description, "The first event it misses: Midsummer Stages, inspection 2027-06-18.")
	require.Regexp(t, "^DISPLAY -P28D .*\nDISPLAY -P7D .*\n$", belt.alarms, "as long as a harness takes to come")
	require.Regexp(t, "^DISPLAY -P21D ", bySummary["Last day: helmet of B. Oakhollow"].alarms)
	require.Equal(t, "20270521", bySummary["Order by today: harness driver (Tessel 16), for Midsummer Stages"].start)
	require.Equal(t, "20270619", bySummary["Service due: extinguisher behind the seats (Tessel 16)"].start)
	require.Equal(t, "20270528", bySummary["Send for service by today: extinguisher behind the seats (Tessel 16), for Midsummer Stages"].start)
	require.Contains(t, bySummary, "Last day that is sure: overalls garment of A. Penrith-Vale")
	require.NotContains(t, written(t, m.SeasonResult), "battery", "nothing ends it")
}

// An entry is the same one when its day changes, when others come or go, and when a sheet is
// renamed whose car has a chassis number; and another one for another car.
func TestCalendarKeepsItsUIDs(t *testing.T) {
	uids := func(r *engine.SeasonResult) map[string]string {
		by := map[string]string{}
		for _, e := range calendarEntries(r) {
			by[e.summary] = e.uid
			require.Regexp(t, "^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$", e.uid)
		}
		return by
	}
	before := uids(handMadeSeason(t).SeasonResult)
	m := handMadeSeason(t)
	m.From += 40
	for _, event := range m.Season.Events {
		event.Inspection, event.First, event.Last = event.Inspection+3, event.First+3, event.Last+4
	}
	for _, d := range m.Cars[0].Dated {
		d.LastDay, d.OrderBy = d.LastDay+100, d.OrderBy-5
	}
	m.Cars[0].Sheet.Name = "elsewhere.hcl"
	m.part(0, "harness", "harness spare", "6.4", "meets, gap 2027-06-01")
	after := uids(m.SeasonResult)
	require.Len(t, after, len(before)+2)
	for summary, uid := range before {
		require.Equal(t, uid, after[summary], summary)
	}

	other := handMadeSeason(t)
	other.Cars[0].Sheet = loadedSheet(t, strings.Replace(seasonSheet, "TS-0416", "TS-0417", 1))
	for _, d := range other.Cars[0].Dated {
		d.Car = other.Cars[0].Sheet
	}
	for summary, uid := range uids(other.SeasonResult) {
		if strings.Contains(summary, "(Tessel 16)") {
			require.NotEqual(t, before[summary], uid, summary)
		} else {
			require.Equal(t, before[summary], uid, "an event is one for all cars")
		}
	}
	require.NotEqual(t, uuidOf([]string{"a", "bc"}), uuidOf([]string{"ab", "c"}))
}

// Long and hostile texts come back as they are, made safe, and reach nowhere else.
func TestCalendarHostileTexts(t *testing.T) {
	for _, text := range []string{
		"Höhenübung, für; \\n \\ Gößnitz: \"x\"", strings.Repeat("日本", 90), strings.Repeat("ü", 200) + strings.Repeat(" ", 90) + "x", strings.Repeat("a,;\\", 60),
		"x\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nSUMMARY:y", "a\x00b\x1b[2J\u0085\u2028", "\xff\xfe", strings.Repeat("W", 4000), "\u202etfel", "👩‍🔧" + strings.Repeat("👨‍👩‍👧", 30), "<b>x</b> <", "",
		strings.Repeat("x", 60) + " " + strings.Repeat("é", 100), " leading", "trailing ", "\t",
	} {
		m := handMadeSeason(t)
		m.renamed(text)
		written := written(t, m.SeasonResult)
		requireCalendar(t, written, m.SeasonResult)
		require.False(t, strings.Contains(written, "\r\nSUMMARY:y"), text)
	}
}

// renamed puts a text wherever one can come from a file.
func (m *seasonMaker) renamed(text string) {
	for _, event := range m.Season.Events {
		event.Name, event.Place, event.Class = text, text, text
		if len(event.Crew) > 0 {
			event.Crew = []string{text, text}
		}
	}
	m.Season.Name = text
	for _, person := range m.Season.People {
		person.Name, person.Gear.Person = text, text
	}
	for _, book := range m.books {
		book.Name, book.Edition, book.Standing = text, text, text
	}
	for _, car := range m.Cars {
		car.Sheet.Name, car.Sheet.Car().Label = text, text
		for _, d := range car.Dated {
			d.Name, d.Limit = text, text
			if d.Clause != nil {
				d.Clause.Number, d.Clause.Title = text, text
			}
		}
	}
}

func TestCalendarAnyTexts(t *testing.T) {
	rapid.Check(t, func(draw *rapid.T) {
		m := handMadeSeason(t)
		m.renamed(rapid.String().Draw(draw, "text"))
		requireCalendar(draw, written(draw, m.SeasonResult), m.SeasonResult)
	})
}

func TestCalendarOfNothing(t *testing.T) {
	empty := &engine.SeasonResult{Season: &vehicle.Season{}}
	require.ErrorIs(t, Calendar(&bytes.Buffer{}, empty, handMadeSeasonHead()), ErrEmptyCalendar)
	require.ErrorIs(t, Calendar(fullWriter{}, handMadeSeason(t).SeasonResult, handMadeSeasonHead()), errFull)
}
