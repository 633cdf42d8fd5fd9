package vehicle

import (
	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle/quantity"
)

// Season is the events that a car, or several, is entered for, and the people who crew it.
type Season struct {
	Name    string
	Events  []*Event // by their first day, then in the order of the files
	People  []*Person
	Sources []*Source
	Hash    string // SHA-256 over the files, as of a sheet
	Range   hcl.Range

	lead  int64            // days that a new part takes where nothing else is said
	leads map[string]int64 // by block name of the part
}

// Event is one event of a season. All its days are whole and known.
type Event struct {
	Name           string
	Place          string
	Class          string       // class the car is entered in, "" for the sheet's own
	Rulebook       string       // slash path from the season's folder, "" for the one of the run
	Crew           []string     // names of people: driver, co-driver
	Inspection     quantity.Day // of the official technical inspection; the first day where none is given
	First, Last    quantity.Day
	EntryCloses    quantity.Day
	HasEntryCloses bool
	Range          hcl.Range
}

// Person is one of the people who crew cars, with the gear that belongs to them.
type Person struct {
	Name  string
	Gear  *Part // a crew_member part without a label
	Range hcl.Range
}

// Days returns the days that an event's verdict is asked of: the day of its inspection and
// each of its own, in order, each once.
func (e *Event) Days() []quantity.Day {
	var days []quantity.Day
	if e.Inspection < e.First {
		days = append(days, e.Inspection)
	}
	for day := e.First; day <= e.Last; day++ {
		days = append(days, day)
	}
	if e.Inspection > e.Last {
		days = append(days, e.Inspection)
	}
	return days
}

// LeadOf returns how many days a new part of a type takes to come.
func (s *Season) LeadOf(t *PartType) int64 {
	if days, ok := s.leads[t.Name]; ok {
		return days
	}
	return s.lead
}
