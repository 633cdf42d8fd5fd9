package rules

import (
	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// Concern is what a clause is about.
type Concern uint8

// The concerns. Advice is shown and never counts towards the exit code.
const (
	Safety Concern = iota
	Eligibility
	Advice
)

// Judged says how a reading's tolerance is treated.
type Judged uint8

// The two ways of judging.
const (
	AsRead Judged = iota // the reading itself decides
	Proved               // the whole range must meet
)

// Rulebook is a checked rulebook.
type Rulebook struct {
	Name           string
	Edition        string
	InForce        quantity.DayRange
	Period         Period // from in_force to until
	Judged         Judged
	MeanOfReadings bool                // readings = "mean": the mean of several readings governs, else the least favourable
	Standing       string              // "for trying the program, not a rulebook to build to"
	Classes        *vehicle.ChoiceList // choices of car.class, nil when the book knows none
	Hash           string              // SHA-256 over the files in path order, hex
	Chapters       []*Chapter
	Terms          []*Term
	Tables         []*Table
	Cases          []*WorkedCase
	Vocabulary     *vehicle.Vocabulary // the built-in one and what the books of this run add
	Range          hcl.Range
}

// Chapter is a chapter of a rulebook.
type Chapter struct {
	Number  string
	Title   string
	Clauses []*Clause
	Range   hcl.Range
}

// Clause is one clause with its formulas checked.
type Clause struct {
	Number             string
	Title              string
	Concern            Concern
	Page               string
	Stage              vehicle.Stage // StageUnset when the author gave none
	Text               string
	TextAt             string
	Across             []Across
	Applies            *Formula // nil when it always applies
	Where              *Formula // nil when every subject counts
	AtLeast            int      // subjects that must exist
	Period             Period   // the days on which it counts
	AsAt               *Formula // of a Date: the day by whose rules it is judged; nil for the day of the check
	Demand             *Formula // nil for a clause that a person judges
	LookFor            string
	Rectify            string
	Evidence           []string
	Allowance          float64 // SI; loosens (positive) or tightens every limit of AllowanceDimension in the demand
	AllowanceDimension quantity.Dimension
	Judged             Judged
	Range              hcl.Range
	Chapter            *Chapter
}

// Across is one variable that a clause runs over.
type Across struct {
	Binding *Binding
	List    *Formula // of a List of Part
}

// Formula is one checked formula.
type Formula struct {
	Source   string // as the author sees it: decoded, indent cut
	Tree     Node
	Position *vehicle.PositionMap
	Range    hcl.Range // of the whole expression in the file
}

// Term is a named formula.
type Term struct {
	Name  string
	Given *Binding // nil when it has none
	Means *Formula
	Range hcl.Range
}

// Column is a column of a table.
type Column struct {
	Name string
	Is   Type
	Like *vehicle.Particular // the particular whose kind it has, nil for count, text, truth
}

// TableCell is one value of a table. Empty only in a column of a band.
type TableCell struct {
	Empty  bool
	Figure quantity.Figure
	Days   quantity.DayRange
	Text   string
	Choice int
	Truth  bool
	Range  hcl.Range
}

// Band says which columns hold the ends of a table's bands; -1 for a side that has no column.
type Band struct {
	Low, High         int
	LowOpen, HighOpen bool // above / below rather than from / up to
}

// Table is a table of a rulebook.
type Table struct {
	Name    string
	Columns []Column
	Rows    [][]TableCell
	Band    *Band // nil when the table has no bands
	Issued  quantity.DayRange
	Range   hcl.Range
}

// WorkedCase is a worked example that the rulebook's author answered by hand.
type WorkedCase struct {
	Name    string
	Clause  *Clause
	Subject string // label of the subject it speaks of, "" for the worst
	AsBuilt *vehicle.Sheet
	On      quantity.DayRange // zero for the day of the check
	HasOn   bool
	Answer  string // a verdict's word
	Reason  string
	Source  string // the document the answer is taken from
	Status  string // how far that was confirmed
	Range   hcl.Range
}
