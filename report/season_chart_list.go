package report

import (
	"slices"
	"strconv"
	"strings"

	"gapsheet/rules"
	"gapsheet/vehicle"
)

// The list of events has two columns, in millimetres.
const (
	listApart  = 7.0
	listNumber = 8.6
	listHead   = 5.5
	mostListed = 4 // lines of an event
)

var listWide = (sheetFrame.wide - listApart) / 2

// arrangeEvents puts the list of events below the rows of the last sheet, where the whole
// of it has room from y down, else on sheets of its own.
func (c *seasonChart) arrangeEvents(sheets []chartSheet, y float64) []chartSheet {
	events := c.listed()
	bottom := c.foot() - footRoom
	last := &sheets[len(sheets)-1]
	if left := placeEvents(events, bottom-y-listHead); left == 0 {
		last.events, last.list = events, y
		return sheets
	}
	for len(events) > 0 {
		top := sheetFrame.y + headHigh
		left := placeEvents(events, bottom-top-listHead)
		sheets = append(sheets, chartSheet{events: events[:len(events)-left], list: top})
		events = events[len(events)-left:]
	}
	return sheets
}

// listed are the events with their lines.
func (c *seasonChart) listed() []listedEvent {
	var events []listedEvent
	for i, event := range c.season.Season.Events {
		text := shortened(event.Name, 2*longestName)
		if event.Place != "" {
			text += ", " + shortened(event.Place, longestName)
		}
		lines := wrapped(text+": "+c.details(event), listWide-listNumber, smallText)
		if len(lines) > mostListed {
			lines = append(lines[:mostListed-1:mostListed-1], fitted(strings.Join(lines[mostListed-1:], " "), listWide-listNumber, smallText))
		}
		events = append(events, listedEvent{number: strconv.Itoa(i + 1), lines: lines})
	}
	return events
}

// details are the days and people of an event in short, and the edition it is held by where
// there are several.
func (c *seasonChart) details(e *vehicle.Event) string {
	words := []string{dayToDay(e.First, e.Last) + ", inspection " + e.Inspection.String()}
	if e.HasEntryCloses {
		words[0] += ", entry closes " + e.EntryCloses.String()
	}
	if e.Class != "" {
		words = append(words, e.Class)
	}
	if len(e.Crew) > 0 {
		words = append(words, list(e.Crew))
	}
	if books := seasonBooks(c.season); len(books) > 1 {
		one := !slices.ContainsFunc(books, func(b *rules.Rulebook) bool { return b.Name != books[0].Name })
		for _, book := range booksOf(c.season, e) {
			if one {
				book = strings.TrimPrefix(book, books[0].Name+", ")
			}
			words = append(words, book)
		}
	}
	return strings.Join(words, "; ")
}

// placeEvents gives events their places in two columns of a height, the first no higher
// than it has to be, and returns how many have none.
func placeEvents(events []listedEvent, high float64) (left int) {
	for column := 0.0; ; column += noteLine {
		if left = fillColumns(events, min(column, high)); left == 0 || column >= high {
			return left
		}
	}
}

func fillColumns(events []listedEvent, high float64) (left int) {
	at := spot{}
	for i := range events {
		wants := float64(len(events[i].lines)) * noteLine
		if at.y+wants > high+1e-9 {
			at = spot{at.x + listWide + listApart, 0}
		}
		if at.x > sheetFrame.wide || at.y+wants > high+1e-9 {
			return len(events) - i
		}
		events[i].at = at
		at.y += wants
	}
	return 0
}

func (c *seasonChart) drawList(out *svgText, sheet *chartSheet) {
	if len(sheet.events) == 0 {
		return
	}
	out.words(spot{sheetFrame.x, sheet.list + 4}, headText, "start", "Events")
	for _, event := range sheet.events {
		x, y := sheetFrame.x+event.at.x, sheet.list+listHead+event.at.y+noteLine-0.8
		out.words(spot{x + listNumber - 1.2, y}, smallText, "end", event.number)
		for i, line := range event.lines {
			out.words(spot{x + listNumber, y + float64(i)*noteLine}, smallText, "start", line)
		}
	}
}
