package engine

import (
	"github.com/hashicorp/hcl/v2"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// Request says what to check.
type Request struct {
	Day      quantity.Day   // the day of the check
	Event    *vehicle.Event // whose days formulas read as event.…; nil: those are the day of the check
	Stage    vehicle.Stage  // StageUnset: everything is due
	Only     []string       // clause or chapter numbers; empty: all
	NoPapers bool           // ask for no evidence: there is no sheet yet that could name it
	All      bool           // tell the deciding comparisons of clauses that are met as well
}

// Result is what a rulebook says of one car.
type Result struct {
	Book     *rules.Rulebook
	Sheet    *vehicle.Sheet
	Request  Request
	Chapters []*ChapterResult
	Worst    Verdict           // over clauses that are due, advice left out
	Counts   [verdictCount]int // due clauses by Verdict, advice left out
	Advice   [verdictCount]int // due clauses of advice by Verdict
	NotDue   int               // clauses not due at the stage asked for
	ToLookAt int               // due clauses that a person has still to look at once their figures are there
}

// ChapterResult is what one chapter says of a car.
type ChapterResult struct {
	Chapter *rules.Chapter
	Worst   Verdict // over its due clauses, advice left out
	Clauses []*ClauseResult
}

// IsLogBook reports whether it is the chapter that the papers of the car make: the last one,
// without a number, with a clause for each paper. Its clauses are in no rulebook.
func (c *ChapterResult) IsLogBook() bool { return c.Chapter.Number == "" }

// ClauseResult is what one clause says of a car.
type ClauseResult struct {
	Clause   *rules.Clause
	Verdict  Verdict // the worst over subjects
	NotDue   bool    // not due at the stage asked for: no verdict, no subjects
	Note     string  // why, where no subject tells it: "1 of 2 required", "no such part on the sheet"
	Subjects []*SubjectResult
	Remark   bool // of a paper in the log book that is only told of: its verdict counts towards nothing

	short    bool // fewer subjects than the clause asks for: a gap that no subject tells
	pardoned []pardon
}

// SubjectResult is what one clause says of one subject: a tube, a strap, the car.
type SubjectResult struct {
	Parts          []*vehicle.Part // one for each across variable; empty for the car as a whole
	Name           string          // "tube main hoop"; "" for the car as a whole
	Verdict        Verdict
	Notes          []string        // "as read, not proved", "short as read", "figures meet, still to be looked at"
	Causes         []Cause         // why it is not decided, or not met
	Decided        []Decided       // the comparisons that decided
	MissingPapers  []string        // evidence that the clause asks for and the sheet does not name
	OutdatedPapers []OutdatedPaper // evidence that the clause asks for and that does not count on the day
	Dispensation   string          // label of the one that it stands under, "" for none
	Place          hcl.Range       // where in the sheet: the deciding reading, else the subject's block; zero for nowhere

	dated    []datedRead   // where a checker keeps them
	reads    []partRead    // what comparisons that fail read, where it keeps dates
	car      *vehicle.Part // of papers that stand with the car
	compared []comparison  // what inspections read, beside what the sheet says
}

// OutdatedPaper is a paper that the sheet names and that does not count on the day.
type OutdatedPaper struct {
	Label string // what it shows, as the clause calls it
	Why   string // "ended 2027-03-31"
}

// CauseKind says why a truth is open, or why an open truth counts as a gap.
type CauseKind uint8

// The causes.
const (
	Missing       CauseKind = iota // a particular is not recorded
	Tolerance                      // the reading's range straddles a limit, or an uncertain date does
	NoSuchPart                     // a list function needs a member and there may be none
	NotFitted                      // a part that is stated not to be fitted, or is surely not there
	StatedNone                     // a particular that is stated not to exist
	UnknownOthers                  // a list that is not complete
	Undefined                      // division by a figure that may be zero, and the like
	Budget                         // not settled within the budget of evaluations
	Loaded                         // an incident loaded the part, and nobody has inspected it since
)

// Cause is one reason why a truth is open.
type Cause struct {
	Kind       CauseKind
	Part       *vehicle.Part       // the part whose particular or list it is; nil for Budget, Undefined
	Particular *vehicle.Particular // Missing, Tolerance, StatedNone; nil where it is missing whether a part is fitted
	List       *vehicle.PartType   // of what type the list or the part is that may or may not be there; nil where it is about a particular
	Label      string              // of the one part of the list that is meant, "" for the whole list
	Follows    bool                // StatedNone: nobody has stated it, it follows from what is there
	Known      int                 // how many of that type the sheet describes
	Text       string              // the particular or part as a person names it: "wall of tube 4"
	Place      hcl.Range           // of the reading or the part in the sheet; zero for what is not there
}

// Decided is one comparison that decided a subject.
type Decided struct {
	What    string // the side that is read, as the formula has it: "tube.wall"
	Sense   string // "at least", "less than", …
	Reading string // the figure with its tolerance and unit, or text
	Limit   string // the figure it is held against, in the author's unit
	Margin  string // by how much it meets or falls short: "0.2 mm short", "" where it makes no sense
	Note    string // "row 2 of table.hoop_sizes; nearest of 2 alternatives", "" for none
	Truth   quantity.Truth
	Place   hcl.Range // of the reading in the sheet
}

// Working is the explanation of one node of a formula.
type Working struct {
	Text     string // the node's text in the formula
	Value    string // what it came to, with unit
	Truth    quantity.Truth
	HasTruth bool
	Deciding bool   // it decided its parent
	Note     string // "nearest alternative", "term thick", "not recorded: …"
	Of       []*Working
	From     []string // of a figure that follows from others: those, a place to a line
}

// SubjectWorking is the working of a clause for one subject.
type SubjectWorking struct {
	Name                   string
	Applies, Where, Demand *Working // nil where the clause has none
}

// ClauseWorking is a clause's verdict with its working.
type ClauseWorking struct {
	Result   *ClauseResult
	Then     *rules.Clause // the wording it is judged by, where that is one of another day; else nil
	Subjects []*SubjectWorking
}
