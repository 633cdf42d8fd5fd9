package vehicle

import (
	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle/quantity"
)

// Logbook is the papers that travel with a car: what was written into its log book, what
// inspections found, what it hit, and what it was let off. Each list is in the order of the
// files. All days are whole.
type Logbook struct {
	Notes         []*LogbookNote
	Inspections   []*Inspection
	Incidents     []*Incident
	Dispensations []*Dispensation
}

// LogbookNote is something that an inspector wrote into the log book to be put right. Only
// one that is cleared is closed; fixed is what the shop says of it.
type LogbookNote struct {
	Label     string       // "N3"
	Event     string       // where it was written, "" where not said
	Day       quantity.Day // on which it was written
	Clause    string       // number of the clause it is about, "" where not said
	Text      string
	Before    quantity.Day // by when it has to be cleared
	HasBefore bool
	Fixed     quantity.Day // when the shop put it right
	IsFixed   bool
	ClearedOn quantity.Day // when an inspector struck it out
	ClearedBy string       // who; "" exactly where it is not cleared
	IsCleared bool
	Range     hcl.Range // of the block's header

	eventAt hcl.Range // where Event is written
}

// Inspection is what an official technical inspection said of one thing.
type Inspection struct {
	Label           string
	Event           string // "" where not said
	Day             quantity.Day
	Clause          string // "" where not said
	Subject         string // what it was about, as written; "" for the car
	SubjectPart     *Part  // the part that Subject names, nil where it names none
	Outcome         Outcome
	TheirReading    quantity.Figure // what they read
	HasReading      bool
	ReadingRange    hcl.Range // where that is written
	TheirInstrument string    // what they read it with, "" where not said
	Note            string
	Range           hcl.Range

	gear    *gearNamed // that Subject is about, nil for anything else
	eventAt hcl.Range  // where Event is written
}

// Outcome is what an inspection said.
type Outcome uint8

// The outcomes. The zero value is none of them.
const (
	Accepted Outcome = iota + 1
	Corrected
	Noted
	Refused
)

// outcomeWords are the words for the outcomes, by Outcome.
var outcomeWords = [...]string{
	Accepted:  "accepted",
	Corrected: "corrected and re-presented",
	Noted:     "noted",
	Refused:   "refused",
}

// String returns the word for an outcome as it is written in a sheet: "refused".
func (o Outcome) String() string {
	if int(o) < len(outcomeWords) {
		return outcomeWords[o]
	}
	return ""
}

// Incident is something that the car hit, or that hit the car, and which parts it loaded.
type Incident struct {
	Label        string
	Day          quantity.Day
	Event        string // "" where not said
	Hit          string // what was hit and where, "" where not said
	Loaded       []*Part
	NotOnSheet   []string     // gear of the crew that was loaded and is nowhere on the sheet, as written; none once the crew is known
	Inspected    quantity.Day // when everything that was loaded had been looked at, or replaced
	HasInspected bool
	InspectedBy  string // "" exactly where it was not
	Note         string
	Range        hcl.Range

	gear    []gearNamed // of the crew, among what was loaded
	eventAt hcl.Range   // where Event is written
}

// Dispensation is a paper that lets a car off a clause.
type Dispensation struct {
	Label       string
	Clause      string   // number of the clause
	Subject     string   // what it is let off for, as written; "" for all that the clause is about
	SubjectPart *Part    // the part that Subject names, nil where it names none
	GrantedBy   string   // who granted it
	Reference   string   // number of the paper, "" where not said
	Chassis     string   // the car's chassis it is granted for, "" where not said
	LogBook     string   // the car's log book it is granted for, "" where not said
	Events      []string // the only events it is good for, none for all
	From        quantity.Day
	HasFrom     bool
	Until       quantity.Day
	HasUntil    bool
	Reason      string
	Condition   *Condition // what has to be so for it to hold, nil for nothing
	Note        string
	Range       hcl.Range

	gear     *gearNamed  // that Subject is about, nil for anything else
	eventsAt []hcl.Range // where each of Events is written
}

// Condition is a formula over the car, as it is written.
type Condition struct {
	Text     string       // as decoded, blanks around it included: Position counts its characters
	Position *PositionMap // from the characters of Text to the file
	Range    hcl.Range
}

// gearNamed is gear of the crew that a paper speaks of. Whose it is can be told only where
// the crew is known.
type gearNamed struct {
	of   *PartType // helmet, head_restraint, garment, or crew_member for all that a person wears
	name string    // as written: "helmet of A. Penrith-Vale"
	rest string    // folded, without the type in front: "driver", "of a. penrith-vale"; "" for all
	at   hcl.Range
}
