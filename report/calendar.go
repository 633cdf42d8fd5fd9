package report

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"time"

	ics "github.com/arran4/golang-ical"

	"gapsheet/engine"
	"gapsheet/vehicle/quantity"
)

// ErrEmptyCalendar is told of a season in which nothing has a day: RFC 5545, section 3.6,
// wants at least one entry in a calendar.
var ErrEmptyCalendar = errors.New("nothing of the season has a day to put into a calendar")

// Calendar writes the days of a season as iCalendar (RFC 5545), for the calendar of the
// shop: events with their inspection days and the closing of entries, of every dated part
// the last day it holds or its service, and by when a new one has to be ordered. All
// entries are of whole days, with reminders.
//
// The same result gives the same bytes. An entry keeps its UID when its day changes, so
// that a calendar into which the file is imported again moves it. DTSTAMP is the day from
// which the season is looked at, at 00:00 UTC: it is when this was said, as far as the
// program knows without a clock, and of two files that of the later day counts as the newer
// (section 3.8.7.2). SEQUENCE stays 0, as it counts the revisions of an organizer (section
// 3.8.7.4), and nothing is kept from one run to the next that could be counted.
//
// The error is ErrEmptyCalendar or that of the writer.
func Calendar(w io.Writer, r *engine.SeasonResult, h SeasonHead) error {
	entries := calendarEntries(r)
	if len(entries) == 0 {
		return ErrEmptyCalendar
	}
	calendar := &ics.Calendar{}
	calendar.SetVersion("2.0")
	calendar.SetProductId("-//gapsheet//NONSGML " + Safe("gapsheet "+h.Version) + "//EN")
	for i := range entries {
		calendar.AddVEvent(entries[i].event(r.From))
	}
	// Into memory first: the library keeps the errors of some writes to itself.
	var out bytes.Buffer
	if err := calendar.SerializeTo(&out, ics.WithNewLineWindows); err != nil {
		return fmt.Errorf("writing the calendar: %w", err)
	}
	if _, err := w.Write(out.Bytes()); err != nil {
		return fmt.Errorf("writing the calendar: %w", err)
	}
	return nil
}

// calendarEntry is one entry of a calendar. Its texts are safe already.
type calendarEntry struct {
	uid         string
	first, last quantity.Day
	summary     string
	location    string
	description string
	busy        bool    // the car is away
	before      []int64 // reminders, days before the first day
}

// event is the entry as the library has it.
func (e *calendarEntry) event(stamp quantity.Day) *ics.VEvent {
	event := ics.NewEvent(e.uid)
	event.SetDtStampTime(midnight(stamp))
	event.SetSequence(0)
	event.SetAllDayStartAt(midnight(e.first))
	event.SetAllDayEndAt(midnight(e.last + 1)) // the end is the first day after (section 3.6.1)
	event.SetSummary(e.summary)
	if e.location != "" {
		event.SetLocation(e.location)
	}
	event.SetDescription(e.description)
	transparency := ics.TransparencyTransparent
	if e.busy {
		transparency = ics.TransparencyOpaque
	}
	event.SetTimeTransparency(transparency)
	for _, days := range e.before {
		alarm := event.AddAlarm()
		alarm.SetAction(ics.ActionDisplay)
		alarm.SetTrigger(fmt.Sprintf("-P%dD", days))
		alarm.SetDescription(e.summary)
	}
	return event
}

// midnight is the beginning of a day. Only the day is written, or the zone is UTC.
func midnight(day quantity.Day) time.Time {
	year, month, inMonth := day.Civil()
	return time.Date(year, time.Month(month), inMonth, 0, 0, 0, 0, time.UTC)
}
