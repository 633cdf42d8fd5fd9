package vehicle

import (
	"fmt"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle/quantity"
)

// strangeEvents warns of events that the log book of a sheet names and the season does not
// have: a dispensation counts at none of such a name, and who was in the car is not known. A
// paper of a day before or after the season may be of another one, so that it is told of only
// where the name is near one that the season has.
func (s *Season) strangeEvents(book *Logbook) hcl.Diagnostics {
	var faults hcl.Diagnostics
	look := func(name, key, paper string, at hcl.Range, mayBeOther bool) {
		if name == "" || s.Event(name) != nil {
			return
		}
		near := Nearest(name, s.eventNames())
		if near == "" && mayBeOther {
			return
		}
		advice := "Write the name as the season has it, or leave it where it is of another season."
		if near != "" {
			advice = fmt.Sprintf("Did you mean %s?", Quote(near))
		}
		faults = append(faults, Warning("unknown-event", at, "No event of that name", fmt.Sprintf(
			"Found %s as %s of the %s, but the season has no event of that name. %s", Quote(name), key, paper, advice)))
	}
	for _, n := range book.Notes {
		look(n.Event, "event", "logbook note "+Quote(n.Label), n.eventAt, s.isOutside(n.Day))
	}
	for _, n := range book.Inspections {
		look(n.Event, "event", "inspection "+Quote(n.Label), n.eventAt, s.isOutside(n.Day))
	}
	for _, n := range book.Incidents {
		look(n.Event, "event", "incident "+Quote(n.Label), n.eventAt, s.isOutside(n.Day))
	}
	for _, d := range book.Dispensations {
		isOver := d.HasUntil && s.isOutside(d.Until)
		for i, name := range d.Events {
			look(name, "one of the events", "dispensation "+Quote(d.Label), d.eventsAt[i], isOver)
		}
	}
	return faults
}

// eventNames are the names of the season's events.
func (s *Season) eventNames() []string {
	names := make([]string, 0, len(s.Events))
	for _, event := range s.Events {
		names = append(names, event.Name)
	}
	return names
}

// isOutside reports whether a day lies before the first inspection of the season or after its
// last day.
func (s *Season) isOutside(day quantity.Day) bool {
	first, last := s.Events[0].Inspection, s.Events[0].Last
	for _, event := range s.Events {
		first, last = min(first, event.Inspection), max(last, event.Last)
	}
	return day < first || day > last
}
