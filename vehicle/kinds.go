package vehicle

import (
	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle/quantity"
)

// Kind says what sort of thing a particular is.
type Kind uint8

// The kinds a particular can have.
const (
	KindNumber    Kind = iota + 1 // a figure with a dimension (possibly none: a ratio)
	KindCount                     // a whole number of things, compared exactly
	KindDate                      // a civil day, or a day known to its month or year
	KindText                      // free text, compared trimmed, NFC and without case
	KindChoice                    // one of a list of values, each with its synonyms
	KindTruth                     // yes or no
	KindSize                      // a tube size such as "45 x 2.5 mm"; fills two number particulars
	KindPartName                  // the label of a part of another type, such as a tube's stock
	KindPartNames                 // labels of parts of another type in their order, such as the joints of a tube
	KindPoint                     // a place on the car; fills three number particulars, along x, y and z of the sheet's axes
)

// Stage is a moment in the build by which a particular can be known or a clause is due.
type Stage uint8

// The stages in the order of the build. StageUnset sorts before all of them.
const (
	StageUnset Stage = iota
	StageBeforeCutting
	StageBareShell
	StageBeforePaint
	StageBeforeTrim
	StageBeforeEvent
)

// Choice is one value of a choice particular.
type Choice struct {
	Value    string   // the one spelling that is printed
	Synonyms []string // other spellings that mean the same
	Means    string   // one line of help, may be empty
	Club     string   // name of the rulebook that added it to a built-in list, "" for all others
}

// ChoiceList is an ordered list of at most 64 choices. Two particulars with the same
// list pointer can be compared with each other by position.
type ChoiceList struct {
	Name    string
	Choices []Choice
}

// Happens says how often there can be what a date is the day of.
type Happens uint8

// The ways. Without one there is one date, such as that of manufacture.
const (
	HappensUnsaid Happens = iota
	HappensOnce           // once at most, such as the re-certification of a fuel cell
	HappensOften          // again and again, such as a service: the last one counts
)

// Particular is one thing a build sheet can say of a part.
type Particular struct {
	Name          string // the attribute in a sheet and the member name in a formula
	Part          *PartType
	Index         int // position in Part.Particulars and in Part.Values
	Kind          Kind
	Dimension     quantity.Dimension // KindNumber only
	Unit          quantity.Unit      // the unit it is printed in when the author gave none
	Plausible     quantity.Range     // KindNumber and KindCount: SI, whole plausible range
	PlausibleDays quantity.DayRange  // KindDate: whole plausible range
	Happens       Happens            // KindDate: how often there can be such a day
	Choices       *ChoiceList        // KindChoice
	Names         *PartType          // KindPartName, KindPartNames: the type of part that is named
	Inherits      string             // name of a KindPartName particular of the same part: when this one is not stated, the same-named particular of the part named there stands
	Fills         []string           // KindSize: the two particulars (outside, wall) that the pair sets; KindPoint: the three of x, y and z
	Derived       bool               // follows from other particulars where those are on the sheet (see Sheet.Derivations); may be stated all the same
	Mirrored      bool               // a mirror image of the part has it from its original unless it states its own
	MayBeAbsent   bool               // "none" may be stated
	Changeable    bool               // a shop can change it (not a date of manufacture, not a serial number)
	Measured      bool               // read with an instrument, so a missing tolerance is worth saying
	Stage         Stage              // by when it can be known
	Help          string             // one line: what it is
	How           string             // one line: how and with what it is measured in a workshop
	Club          string             // name of the rulebook that added it, "" for the built-in vocabulary
	Range         hcl.Range          // where it is declared
}

// PartType is a kind of block: seat, harness, tube.
type PartType struct {
	Name        string      // block name in a sheet, singular: "tube"
	Plural      string      // list name in formulas: "tubes"; empty when there can be one only
	Within      *PartType   // the part it belongs to; the root type for a part of the car itself
	AtTop       bool        // written at the top level of the sheet although Within is another part (tubes belong to the cage)
	Index       int         // position in Within.Parts and in Part.Lists
	Labelled    bool        // a block carries a label: always when there can be several, else only where the part has a name of its own
	Labels      *ChoiceList // allowed labels, nil when any label will do
	Particulars []*Particular
	Parts       []*PartType // types of parts that belong to it
	Place       string      // where on the car it is looked for: groups measuring sheets and checklists
	Help        string
	Club        string // name of the rulebook that added it, "" for the built-in vocabulary
	Range       hcl.Range
	book        string // the rulebook whose particulars a look-up by name finds beside the built-in ones
}

// Repeats reports whether a sheet can hold several parts of the type.
func (t *PartType) Repeats() bool { return t.Plural != "" }
