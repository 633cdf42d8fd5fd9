package rules

import (
	"strconv"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
)

// The codes of faults in a formula. They are stable.
const (
	CodeFormulaLong      vehicle.Code = "formula-too-long"      // more bytes than a formula may have
	CodeFormulaDeep      vehicle.Code = "formula-too-deep"      // brackets, signs or lists nested too deeply
	CodeFormulaLarge     vehicle.Code = "formula-too-large"     // more parts than a formula may have
	CodeFormulaSyntax    vehicle.Code = "formula-syntax"        // cannot be read at all
	CodeFormulaDigits    vehicle.Code = "formula-digits"        // a number not written as one
	CodeFormulaName      vehicle.Code = "formula-name"          // nothing has that name
	CodeFormulaReserved  vehicle.Code = "formula-reserved"      // a name that means something else
	CodeFormulaPart      vehicle.Code = "formula-part"          // a part or list named the wrong way
	CodeFormulaLabel     vehicle.Code = "formula-label"         // no such label
	CodeFormulaKind      vehicle.Code = "formula-kind"          // a kind that does not fit here
	CodeFormulaDimension vehicle.Code = "formula-dimension"     // a length where a mass is wanted
	CodeFormulaChoice    vehicle.Code = "formula-choice"        // not one of the choices
	CodeFormulaRefused   vehicle.Code = "formula-refused"       // left out of the language on purpose
	CodeFormulaNot       vehicle.Code = "formula-not"           // not before an unbracketed comparison
	CodeFormulaOtherwise vehicle.Code = "formula-otherwise"     // ?? where it does not belong
	CodeFormulaBetween   vehicle.Code = "formula-between"       // a..b on something that is not counted
	CodeFormulaElement   vehicle.Code = "formula-element"       // .x of the wrong list
	CodeFormulaArguments vehicle.Code = "formula-arguments"     // too few or too many
	CodeFormulaPattern   vehicle.Code = "formula-pattern"       // a pattern that cannot be read
	CodeFormulaDate      vehicle.Code = "formula-date"          // not a day
	CodeFormulaConstant  vehicle.Code = "formula-constant"      // arithmetic on numbers written out that cannot be done
	CodeFormulaResult    vehicle.Code = "formula-result"        // the whole yields the wrong kind
	CodeFormulaSecond    vehicle.Code = "formula-second-reader" // refused by expr's own check
)

// formulaSummaries gives each code the few words that head its message.
var formulaSummaries = map[vehicle.Code]string{
	CodeFormulaLong:      "Formula too long",
	CodeFormulaDeep:      "Formula nested too deeply",
	CodeFormulaLarge:     "Formula too large",
	CodeFormulaSyntax:    "Formula cannot be read",
	CodeFormulaDigits:    "Number cannot be read",
	CodeFormulaName:      "Unknown name",
	CodeFormulaReserved:  "Name already taken",
	CodeFormulaPart:      "Part named the wrong way",
	CodeFormulaLabel:     "Unknown label",
	CodeFormulaKind:      "Does not fit here",
	CodeFormulaDimension: "Figures of different kinds",
	CodeFormulaChoice:    "Not one of the choices",
	CodeFormulaRefused:   "Not part of the formula language",
	CodeFormulaNot:       "Brackets needed after not",
	CodeFormulaOtherwise: "?? does not fit here",
	CodeFormulaBetween:   "Range of a measured figure",
	CodeFormulaElement:   "Member of another list",
	CodeFormulaArguments: "Wrong number of arguments",
	CodeFormulaPattern:   "Pattern cannot be read",
	CodeFormulaDate:      "Not a day",
	CodeFormulaConstant:  "Cannot be worked out",
	CodeFormulaResult:    "Formula yields the wrong kind",
	CodeFormulaSecond:    "Formula refused by the second reading",
}

// Fault is one mistake in a formula.
type Fault struct {
	Code   vehicle.Code
	At     Span   // in runes of the formula
	Found  string // a sentence: what was found
	Advice string // a sentence: what to write instead
}

// Summary is the few words that head the fault's message.
func (f Fault) Summary() string { return formulaSummaries[f.Code] }

// Detail is what was found and what to write instead, as sentences.
func (f Fault) Detail() string {
	if f.Advice == "" {
		return f.Found
	}
	return f.Found + " " + f.Advice
}

// Error returns the fault as one line, with its column in the formula counted from 1.
func (f Fault) Error() string {
	return "column " + strconv.Itoa(f.At.From+1) + ": " + f.Detail()
}

// diagnostics turns faults into messages at their places in the file. Without a position
// map the places are counted in the formula itself.
func diagnostics(source string, position *vehicle.PositionMap, faults []Fault) hcl.Diagnostics {
	var out hcl.Diagnostics
	for _, f := range faults {
		var at hcl.Range
		if position != nil {
			at = position.Range(f.At.From, f.At.To)
		} else {
			at = hcl.Range{Filename: "formula", Start: placeIn(source, f.At.From), End: placeIn(source, f.At.To)}
		}
		out = append(out, vehicle.Fault(f.Code, at, f.Summary(), f.Detail()))
	}
	return out
}

// placeIn is the line, column and byte of a rune of a formula that stands in no file.
func placeIn(source string, rune int) hcl.Pos {
	at := hcl.Pos{Line: 1, Column: 1}
	for rune > 0 && at.Byte < len(source) {
		r, size := utf8.DecodeRuneInString(source[at.Byte:])
		at.Byte += size
		at.Column++
		if r == '\n' {
			at.Line, at.Column = at.Line+1, 1
		}
		rune--
	}
	return at
}
