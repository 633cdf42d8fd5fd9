package vehicle

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// Derivation is how some particulars of one part follow from others of the sheet: a tube's
// length and angles from the joints it goes through, a cage's mass from all its tubes.
type Derivation struct {
	Part  *Part
	Gives []*Particular // what follows, particulars of Part with Derived set
	From  []Base        // what it follows from, none of it derived itself
	Open  []*PartList   // lists that may hold more than is written, so that nothing follows yet
	Takes []string      // what it takes for granted beside, such as "density of steel: 7850 kg/m3 (EN 10219-2)"
	Work  Work
}

// Base is one particular of one part that something follows from. Part is the one that
// states it (see Part.Value): a tube's stock, the original of a mirror image. It may not be
// recorded; then its whole plausible range stands, and it is what is missing.
type Base struct {
	Part       *Part
	Particular *Particular
}

// NoSuch is what Work gives for a thing that surely does not exist: the way to the nearest
// foot of a cage that has none. It holds no figure.
var NoSuch = quantity.Range{Low: math.Inf(1), High: math.Inf(-1)}

// Work works out what follows: from holds the range of each base in order, in SI, and gives
// takes the range of each result. Of a truth the range is from 0, no, to 1, yes; a count is
// whole; of a base that is no figure (which joints a tube goes through) the range says
// nothing. A result encloses every value that exact bases within their ranges give, and is
// Everything where nothing is known of it, NoSuch where it surely is not there. Work keeps nothing and may be called by several
// goroutines at once.
type Work func(from, gives []quantity.Range)

// Derivations returns how the derived particulars of the sheet follow from others: of joints
// first, then of tubes, of smaller parts and the crew, and of the cage, each in the order of
// the sheet. There is one only where the sheet says enough of how things are put together: of
// a tube of which the joints are recorded, of a head of which a coordinate is. Which joints
// lie on which tubes is settled by the figures as read, and not worked out again as figures
// are narrowed. The list is shared: it is not to be changed.
func (s *Sheet) Derivations() []*Derivation { return s.derivations }
