package quantity

import (
	"strconv"
	"unicode/utf8"
)

// Fault says what is wrong with a written figure, unit or date, and what to write
// instead. It is an author's mistake, never one of the program.
type Fault struct {
	Code     string // stable, one of the codes below
	From, To int    // the runes of the text that are at fault, To exclusive; 0 <= From <= To <= runes of the text
	Found    string // one sentence: what stands there
	Advice   string // one sentence: what to write instead
}

// The codes of faults.
const (
	FaultEmpty         = "figure-empty"        // nothing written
	FaultText          = "text-not-readable"   // not UTF-8, control characters, too long
	FaultNumber        = "number-not-readable" // no number where one must stand, or one in a form we do not read
	FaultComma         = "number-comma"        // a decimal or thousands comma
	FaultTooLarge      = "number-out-of-reach" // exponents beyond ±30, too many digits
	FaultFraction      = "number-fraction"     // a fraction by zero, or a mixed number with an improper fraction
	FaultForm          = "figure-form"         // something left over after a figure
	FaultOrder         = "figure-order"        // "a to b" with a above b, outside smaller than two walls
	FaultTolerance     = "figure-tolerance"    // a tolerance that is half stated, negative or of another kind
	FaultUnitMissing   = "unit-missing"        // a size without any unit
	FaultUnitUnknown   = "unit-unknown"        // a unit nobody knows, with the nearest one
	FaultUnitWhich     = "unit-ambiguous"      // gal, mil, ton, ga: a unit that means several things
	FaultUnitForm      = "unit-form"           // a product or quotient of units that cannot be read one way only
	FaultUnitMixed     = "unit-mixed"          // two units in one figure that do not measure the same thing
	FaultGauge         = "gauge-unknown"       // a wall gauge that is not in the published table
	FaultDate          = "date-form"           // a date in another form than 2027-03-14, 2027-03, 2027
	FaultDateNoSuchDay = "date-no-such-day"    // 30 February, month 13
	FaultDateReach     = "date-out-of-reach"   // a year before 1900 or after 2200
)

// Error gives both sentences, so that a Fault can travel as an error.
func (f *Fault) Error() string { return f.Found + " " + f.Advice }

// quoted shows a piece of an author's text inside a sentence: in double quotes, control
// and invisible characters escaped so that they cannot reach a terminal, long text cut.
func quoted(text string) string {
	const most = 40
	if utf8.RuneCountInString(text) > most {
		text = string([]rune(text)[:most-1]) + "…"
	}
	return strconv.Quote(text)
}
