package vehicle

import (
	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle/quantity"
)

// State says how much a sheet says of a particular.
type State uint8

// The states. The zero value is Nothing: a particular that no line of the sheet mentions.
const (
	Nothing State = iota // not recorded: its whole plausible range
	Stated               // a figure, text, choice, yes/no, count or date
	None                 // stated not to exist
)

// Reading is one reading of a figure.
type Reading struct {
	Figure     quantity.Figure // as written, its own tolerance or that of the instrument included in Range
	Instrument string          // label of the instrument whose tolerance was added, or ""
	Range      hcl.Range       // where the reading is written
}

// Value is what a sheet says of one particular of one part.
type Value struct {
	State    State
	Readings []Reading           // KindNumber, KindCount: at least one when Stated
	Days     quantity.DayRange   // KindDate
	Earlier  []quantity.DayRange // KindDate of what happens often: the days before Days, as written
	Text     string              // KindText (as written), KindPartName (label); KindSize, KindPartNames, KindPoint: as written
	Choice   int                 // KindChoice: index into the particular's list
	Truth    bool                // KindTruth
	Named    *Part               // KindPartName: the part that is named
	Several  []*Part             // KindPartNames: the parts that are named, in order; of a mirror image the images of its original's
	Note     string
	Range    hcl.Range // of the value; of the attribute's name where State is None by a list; zero when Nothing
}

// Evidence is a paper or photo that a sheet names.
type Evidence struct {
	Label      string // what it shows, "material certificate"
	File       string // slash path relative to the sheet's folder, "" when only mentioned
	Dated      quantity.DayRange
	HasDate    bool
	ValidUntil quantity.Day // the last day on which it counts
	HasEnd     bool         // it stops counting after ValidUntil
	Note       string
	Found      bool   // the file is there
	Hash       string // SHA-256 over the file's bytes, hex; "" where it is not there or cannot be read
	Range      hcl.Range
}

// Part is one part of a car as the sheet has it. The root part stands for the whole sheet.
type Part struct {
	Type     *PartType
	Label    string
	Within   *Part
	Values   []Value    // by Particular.Index
	Lists    []PartList // by PartType.Index of the types in Type.Parts
	Evidence []Evidence
	Note     string
	Person   string    // of a crew_member: the name of the one whose gear it is, "" where the sheet says only the place
	Original *Part     // of a mirror image: the part it is the image of; nil for all others
	Range    hcl.Range // of the block's header; of an image without a block where it is named; zero for the root and for a part that is only implied, by its own parts or as following from others
}

// PartList is what a sheet says of all parts of one type.
type PartList struct {
	Type      *PartType
	Parts     []*Part
	Complete  bool           // no others can exist: the type has a block and is not unfinished, or it is in not_fitted
	NotFitted bool           // stated in not_fitted
	Fitted    quantity.Truth // yes with a block, no in not_fitted, else open
	Range     hcl.Range      // of the not_fitted or unfinished entry, if any
}
