package vehicle

import (
	"fmt"
	"path"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// Limits of an event, beyond which a year is taken for a slip of the pen: the longest
// marathon rallies take some weeks, and a car is inspected within a season of its event.
const (
	longestEvent    = 100
	longestBetween  = 366
	mostFoldersUp   = 2
	mostEvents      = 1000
	mostPeopleInCar = 2
)

// event reads an event.
func (r *seasonReader) event(source *Source, block *hclsyntax.Block) {
	k := &keys{source: source, block: block, what: "event"}
	label, ok := k.label(`"Saltmarsh Opening Stages"`)
	if ok {
		k.what += " " + Quote(label.text)
		r.onlyOnce(k, label.text)
	}
	e := &Event{Name: label.text, Range: k.header()}
	e.Place = k.text("place").text
	class := k.text("class")
	e.Class, e.ClassRange = class.text, class.all
	sound := k.eventDays(e)
	e.Rulebook, e.RulebookRange = k.rulebook()
	e.Note = k.note()
	read := eventRead{event: e, what: k.what, crew: k.listOnce("crew"), sound: sound}
	if len(read.crew) > mostPeopleInCar {
		k.fault("crew-too-many", read.crew[mostPeopleInCar].all, "More than two in the car", fmt.Sprintf(
			"Found %d people as crew of the %s. Write the driver, then the co-driver.", len(read.crew), k.what))
		read.crew = read.crew[:mostPeopleInCar]
	}
	k.done([]string{"inspection_day", "first_day", "last_day", "place", "class", "crew", "rulebook", "entry_closes", "note"}, "an event")
	r.gear.faults = append(r.gear.faults, k.faults...)
	r.events = append(r.events, read)
}

// onlyOnce reports a second event of one name.
func (r *seasonReader) onlyOnce(k *keys, name string) {
	if first, twice := r.named[FoldText(name)]; twice {
		k.fault("said-twice", k.header(), "Two events of one name", fmt.Sprintf(
			"Found a second %s; the first is at %s. Papers and reports speak of an event by its name: add the year to one, or keep one of the two.", k.what, PlaceText(first)))
		return
	}
	r.named[FoldText(name)] = k.header()
}

// eventDays reads the days of an event. It reports whether they can be used.
func (k *keys) eventDays(e *Event) bool {
	inspection := k.day("inspection_day")
	first, last := k.dayWanted("first_day", ""), k.dayWanted("last_day", "Of an event of one day it is the first.")
	closes := k.day("entry_closes")
	e.Inspection, e.First, e.Last = first.day, first.day, last.day
	if inspection.is {
		e.Inspection = inspection.day
	}
	e.EntryCloses, e.HasEntryCloses = closes.day, closes.is
	if !first.is || !last.is {
		return false
	}
	begins, ends := first.day, last.day
	between := quantity.DaysBetween
	switch length := between(begins, ends) + 1; {
	case length < 1:
		k.misplaced("days-order", last, "An event that ends before it begins", fmt.Sprintf("which begins on %s. Look at both days.", begins))
	case length > longestEvent:
		k.misplaced("event-too-long", last, "An event out of all proportion", fmt.Sprintf(
			"which begins on %s: %d days. Look at the years; there can be up to %d days.", begins, length, longestEvent))
	case inspection.is && inspection.day > ends:
		k.misplaced("days-order", inspection, "An inspection after the event", fmt.Sprintf("which is over on %s. Look at both days.", ends))
	case inspection.is && between(inspection.day, begins) > longestBetween:
		k.misplaced("event-too-long", inspection, "An inspection long before the event", fmt.Sprintf(
			"which begins on %s. Look at the years; there can be up to %d days between.", begins, longestBetween))
	case closes.is && closes.day > begins:
		k.misplaced("days-order", closes, "An entry that closes after the start", fmt.Sprintf("which begins on %s. Look at both days.", begins))
	default:
		return true
	}
	return false
}

// misplaced reports a day of an event that cannot be where it is; what is the rest of the
// sentence.
func (k *keys) misplaced(code Code, day dayTold, summary, what string) {
	k.fault(code, day.all, summary, fmt.Sprintf("Found %s as %s of the %s, %s", day.day, day.key, k.what, what))
}

// rulebook reads the path of the rulebook that an event runs under.
func (k *keys) rulebook() (string, hcl.Range) {
	t := k.text("rulebook")
	if t.text == "" {
		return "", hcl.Range{}
	}
	advice := ""
	clean := path.Clean(t.text)
	switch {
	case strings.Contains(t.text, `\`):
		advice = "Write / between folders: " + Quote(strings.ReplaceAll(t.text, `\`, "/")) + "."
	case strings.HasPrefix(t.text, "/") || len(t.text) > 1 && t.text[1] == ':' || strings.HasPrefix(t.text, "~"):
		advice = `Write the path as seen from the season's folder, as in "../rulebook".`
	case strings.HasPrefix(clean, strings.Repeat("../", mostFoldersUp+1)) || clean == strings.TrimSuffix(strings.Repeat("../", mostFoldersUp+1), "/"):
		advice = fmt.Sprintf("It leads more than %d folders up. Put the rulebook nearer to the season, or name it with --rulebook.", mostFoldersUp)
	case strings.Contains(t.text, "://"):
		advice = "It is no address of the net: put the rulebook beside the season, and write its path."
	default:
		return clean, t.all
	}
	k.fault("rulebook-path", t.all, "Not a path near the season", fmt.Sprintf("Found %s as rulebook of the %s. %s", Quote(t.text), k.what, advice))
	return "", hcl.Range{}
}
