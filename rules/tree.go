package rules

import (
	"regexp"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A checked formula is a tree of the nodes below. The checker builds it from expr's
// syntax tree once every name, kind and dimension is known, so that whoever evaluates
// it (the engine) or puts it in words (a report) meets no unknown name and no mixed
// dimension, and needs no second look at the text.

// Span is a place in a formula's text, in runes, To exclusive.
type Span struct{ From, To int }

// TypeKind says what a node yields.
type TypeKind uint8

// What a node can yield.
const (
	Truth  TypeKind = iota + 1
	Number          // has a Dimension; Whole for a count
	Date
	Text
	Choice // one of Choices
	Part   // one part of the car, of type PartType
	Row    // one row of Table
	List   // a list of Item
	Place  // a place on the car, read of a particular; only an argument of a function on places
)

// Type is the type of a node.
type Type struct {
	Kind      TypeKind
	Dimension quantity.Dimension  // Number
	Whole     bool                // Number: a count, compared exactly
	Choices   *vehicle.ChoiceList // Choice
	PartType  *vehicle.PartType   // Part
	Table     *Table              // Row
	Item      *Type               // List
}

// Node is a node of a checked formula.
type Node interface {
	Span() Span // the whole text of the node, brackets around it left out
	Type() Type
}

// Base carries what every node has; the checker fills it.
type Base struct {
	At Span
	Is Type
}

// Span returns where the node stands in the formula.
func (b Base) Span() Span { return b.At }

// Type returns what the node yields.
func (b Base) Type() Type { return b.Is }

// Constant is a literal, a unit, or arithmetic on literals and units folded exactly.
type Constant struct {
	Base
	Number   float64           // Number: SI; folded by exact rationals and rounded once
	Unit     quantity.Unit     // Number: unit as written, to print it back; zero when none
	Decimals int               // Number: digits after the point as written in that unit
	Days     quantity.DayRange // Date
	Text     string            // Text: folded by vehicle.FoldText
	Choice   int               // Choice: index into Is.Choices
	Truth    bool              // Truth
}

// Root is a part that can be there once: car, cage, fuel_cell, cage.certificate.
type Root struct {
	Base
	Of     Node // the part it belongs to, nil for the car's root
	IsPart *vehicle.PartType
}

// Pick is one part of a list by its label: harness["driver"].
type Pick struct {
	Base
	Of     Node // the part the list belongs to, nil for the car's root
	IsPart *vehicle.PartType
	Label  string // folded by vehicle.FoldText
}

// Parts is the list of all parts of a type: seats, cage.tubes, harness["driver"].straps.
type Parts struct {
	Base
	Of     Node // the part the list belongs to, nil for the car's root
	IsPart *vehicle.PartType
}

// Read reads a particular of a part.
type Read struct {
	Base
	Of         Node // Part
	Particular *vehicle.Particular
}

// Cell reads a column of a table's row.
type Cell struct {
	Base
	Of     Node // Row
	Column int  // index into Table.Columns
}

// Rows is all rows of a table.
type Rows struct {
	Base
	Table *Table
}

// InBand is the rows of a table whose band holds a value.
type InBand struct {
	Base
	Table *Table
	Value Node
}

// Variable reads what an across, a given, a predicate or a let has named. Two Variable
// nodes mean the same thing when they point to the same Binding.
type Variable struct {
	Base
	Binding *Binding
}

// Binding is the naming of a variable.
type Binding struct {
	Name string // "" for the unnamed element of a predicate
	Is   Type
}

// Given is a name handed in from outside the formula (try --let), by its position.
type Given struct {
	Base
	Name  string
	Index int
}

// Moment is a day that comes from the run: on, event.inspection_day, event.first_day, event.last_day.
type Moment struct {
	Base
	Day MomentDay
}

// MomentDay names a day that comes from the run.
type MomentDay uint8

// The days a formula can read.
const (
	On MomentDay = iota
	InspectionDay
	FirstDay
	LastDay
	moments // how many there are
)

// Not is negation.
type Not struct {
	Base
	Of Node
}

// Logic is a conjunction (All true) or disjunction of at least two nodes, flattened.
type Logic struct {
	Base
	All bool
	Of  []Node
}

// Comparison is the sense of a Compare.
type Comparison uint8

// The comparisons.
const (
	Equal Comparison = iota
	NotEqual
	Less
	AtMost
	More
	AtLeast
)

// Compare compares two nodes of one kind. Numbers are of one dimension, unless one side
// is a bare zero, which the checker has given the other's dimension.
type Compare struct {
	Base
	Sense       Comparison
	Left, Right Node
}

// Within is x in [..], x in list: yes when x equals a member.
type Within struct {
	Base
	Of   Node
	List Node
}

// CountBetween is n in a..b on counts.
type CountBetween struct {
	Base
	Of        Node
	Low, High Node
}

// TextTest is contains, startsWith, endsWith or matches, without case.
type TextTest struct {
	Base
	Test    TextTestKind
	Of      Node
	Text    string         // folded; for Matches the pattern as written
	Pattern *regexp.Regexp // Matches only, case-insensitive
}

// TextTestKind is the sense of a TextTest.
type TextTestKind uint8

// The text tests.
const (
	Contains TextTestKind = iota
	StartsWith
	EndsWith
	Matches
)

// Arithmetic is + - * / on numbers.
type Arithmetic struct {
	Base
	Operator    byte // one of + - * /
	Left, Right Node
}

// Negate is unary minus.
type Negate struct {
	Base
	Of Node
}

// Power is a number to a whole power.
type Power struct {
	Base
	Of       Node
	Exponent int
}

// Conditional is condition ? then : otherwise.
type Conditional struct {
	Base
	If, Then, Else Node
}

// Otherwise is x ?? y: y where x is stated not to exist.
type Otherwise struct {
	Base
	Of   *Read
	Else Node
}

// Recorded is recorded(x): yes for a figure, no for none, open for nothing.
type Recorded struct {
	Base
	Of Node // a *Read
}

// Fitted is fitted(part).
type Fitted struct {
	Base
	Of Node // *Root, *Pick or *Parts
}

// Call is a function from the table Functions. Of one on places the first two of Of are
// Place or Part: a Part is a tube, or stands for the place that PlaceOf tells.
type Call struct {
	Base
	Function *Function
	Of       []Node
}
