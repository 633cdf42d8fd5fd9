package engine

import (
	"math"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A flag says what a cell may still turn out to be.
type flag uint8

const (
	mayHold   flag = 1 << iota // it may hold a figure, a text, a choice …
	mayBeNone                  // it may be stated not to exist
	mayLack                    // the part it belongs to may not be there at all
	written                    // the sheet says it: not a state that splitting can bring about
)

// A cell is what is known of one particular, one table cell, one day or one given name.
// Numbers are in SI, dates are day numbers. Splitting narrows a cell and keeps written.
type cell struct {
	low, high float64
	label     float64 // date: the last day of the precision it was written with, NaN when not written
	set       uint64  // truth: bit 0 no, bit 1 yes; choice: one bit a choice; text: its number, 0 for any text
	flags     flag
	kind      cellKind
}

// A cellKind says what a cell holds.
type cellKind uint8

const (
	holdsNumber cellKind = iota
	holdsCount
	holdsDate
	holdsTruth
	holdsChoice
	holdsText
)

// whole reports whether the cell holds whole numbers only.
func (c *cell) whole() bool { return c.kind == holdsCount || c.kind == holdsDate }

// known reports whether nothing about the cell can be narrowed any further.
func (c *cell) known() bool {
	if !c.sure() {
		return false
	}
	switch c.kind {
	case holdsTruth, holdsChoice:
		return c.set&(c.set-1) == 0
	case holdsText:
		return c.set != anyText
	default:
		return c.low == c.high
	}
}

// Bits of a truth cell.
const (
	bitNo  = 1
	bitYes = 2
)

// Numbers of texts that are not a text.
const (
	anyText   = 0 // not known
	otherText = 1 // known to be none of the texts that a formula mentions
	firstText = 2
)

// sure reports whether reading the cell cannot fail.
func (c *cell) sure() bool { return c.flags&(mayHold|mayBeNone|mayLack) == mayHold }

// exactCell is a cell that holds one number.
func exactCell(v float64) cell {
	return cell{low: v, high: v, label: math.NaN(), flags: mayHold | written}
}

// A list is all parts of one type that a part has, all rows of a table, or a given list.
type list struct {
	elements []int32  // bases
	labels   []uint32 // text numbers of the parts' labels, nil for rows
	complete bool
	phantom  int32             // base of a part that no block speaks of, for a label that is not there
	of       *vehicle.PartType // nil for rows and given lists
	says     *vehicle.PartList // what the sheet says of it, nil where it says nothing
	within   *vehicle.Part     // the part that has it
	name     string            // of a table or a given list
}

// A slot holds what a variable stands for: the base of a part or row, or a value.
type slot struct {
	low, high float64
	label     quantity.Range // of a date: last day of the label it was written with
	set       uint64
	base      int32
	index     int32 // which member of its list it is
	unsure    bool
	truth     quantity.Truth
}

// A machine evaluates compiled formulas over one car. It is not safe for concurrent use.
type machine struct {
	cells []cell
	refs  []int32
	lists []list
	slots []slot
	texts []string

	derived map[int32]*derived    // by cell: what follows from other cells
	apart   map[apartness]*memory // distances and angles worked out before
	shapes  map[shapeKey]*shape   // places and tubes of the car
	depth   int                   // how often bases have been halved, one within the other

	unsure    bool // the number or symbol just worked out may not exist
	deep      bool // settle open bodies of list functions one by one
	tampered  bool // assumed is not empty
	exhausted bool // a budget ran out
	steps     int  // members visited since the last reset
	limit     int  // of steps, past which the machine is exhausted
	left      int  // evaluations that settling may still spend
	assumed   map[string]quantity.Truth
	scratch   []float64
}

// stepLimit bounds the members that one evaluation may visit, so that lists nested over
// thousands of parts end as "not settled" and not as a hang.
const stepLimit = 4_000_000

// surveyLimit bounds the visits of one look for causes, which must not miss a cell for
// want of budget in any clause that makes sense.
const surveyLimit = 40_000_000

// step counts one visited member and reports whether the evaluation may go on.
func (m *machine) step() bool {
	m.steps++
	if m.steps > m.limit {
		m.exhausted = true
		return false
	}
	return true
}

// at is the cell of a member of the part or row at base.
func (m *machine) at(base, offset int32) *cell { return &m.cells[m.refs[base+offset]] }
