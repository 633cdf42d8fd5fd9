package vehicle

import (
	"fmt"
	"io/fs"
	"path"
	"slices"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle/quantity"
)

// Season is the events that a car, or several, is entered for, and the people who crew it.
type Season struct {
	Name    string
	Events  []*Event // by their first day, then in the order of the files
	People  []*Person
	Note    string
	Sources []*Source // of the season, then the further files of crew
	Hash    string    // SHA-256 over the files, as of a sheet
	Range   hcl.Range

	lead  int64            // days that a new part takes where nothing else is said
	leads map[string]int64 // by block name of the part
}

// Event is one event of a season. All its days are whole and known.
type Event struct {
	Name           string
	Place          string
	Class          string       // class the car is entered in, "" for the sheet's own
	ClassRange     hcl.Range    // where that is written
	Rulebook       string       // slash path from the season's folder, perhaps up to two folders above it; "" for the one of the run
	RulebookRange  hcl.Range    // where that is written
	Crew           []string     // names of people: driver, co-driver; none where the season does not say
	Inspection     quantity.Day // of the official technical inspection; the first day where none is given
	First, Last    quantity.Day
	EntryCloses    quantity.Day
	HasEntryCloses bool
	Note           string
	Range          hcl.Range
}

// Person is one of the people who crew cars, with the gear that belongs to them.
type Person struct {
	Name  string
	Gear  *Part // a crew_member part without a label, in no sheet
	Range hcl.Range
}

// LoadSeason reads a season: a file, or a folder whose *.hcl files are read as one, with
// exactly one season block. name is where it is in fsys, "." for fsys itself; shown is the
// slash path by which messages speak of it. crew is further files that hold crew blocks,
// parsed already. What the gear of the crew can be said to be is in v.
//
// The season is nil when the diagnostics hold an error. They hold every fault that can be
// told in one run, in the order of the files' names. Warnings, such as one person at two
// events at once, come with a usable season. Papers of the crew's gear are looked for in
// the folder of the season, those of the further files nowhere. Whether the rulebook that
// an event names is there is not looked at.
func LoadSeason(fsys fs.FS, name, shown string, crew []*Source, v *Vocabulary) (*Season, hcl.Diagnostics) {
	sources, faults := ReadSources(fsys, name, shown, "season")
	folder := name
	if info, err := fs.Stat(fsys, name); err == nil && !info.IsDir() {
		folder = path.Dir(name)
	}
	r := newSeasonReader(shown, v)
	r.gear.faults = faults
	r.gear.whole = AllRead(sources, faults)
	if !r.isSeason(sources) {
		return nil, r.gear.faults
	}
	r.instruments(slices.Concat(sources, crew))
	r.gear.folder = &paperCase{folder: fsys, dir: folder}
	for _, source := range sources {
		r.read(source, "season")
	}
	r.gear.folder = nil
	for _, source := range crew {
		r.read(source, "crew")
	}
	r.wantSeason(sources)
	r.check()
	return r.result(sources, crew)
}

// hashSeason is the SHA-256 over the files of a season and the further ones of its crew,
// which may have equal names.
func hashSeason(sources, crew []*Source) string {
	files := map[string][]byte{}
	for _, source := range sources {
		files[path.Base(source.Name)] = source.Bytes
	}
	for i, source := range crew {
		files[fmt.Sprintf("crew/%d/%s", i, path.Base(source.Name))] = source.Bytes
	}
	return HashFiles(files)
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

// begins is the first day on which an event wants the car and its crew.
func (e *Event) begins() quantity.Day { return min(e.Inspection, e.First) }

// LeadOf returns how many days a new part of a type takes to come: what the season says of
// the type, else of the one it belongs to (of a strap, of its harness), else of parts in
// general; 0 where it says nothing.
func (s *Season) LeadOf(t *PartType) int64 {
	for ; t != nil; t = t.Within {
		if days, ok := s.leads[t.Name]; ok {
			return days
		}
	}
	return s.lead
}

// Person returns the one of that name, upper and lower case no difference; nil when there
// is none.
func (s *Season) Person(name string) *Person {
	for _, person := range s.People {
		if FoldText(person.Name) == FoldText(name) {
			return person
		}
	}
	return nil
}

// Event returns the event of that name, upper and lower case no difference; nil when there
// is none.
func (s *Season) Event(name string) *Event {
	for _, event := range s.Events {
		if FoldText(event.Name) == FoldText(name) {
			return event
		}
	}
	return nil
}
