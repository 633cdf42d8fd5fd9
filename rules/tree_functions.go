package rules

// Function is a function on single values, or on places, that a formula may call.
type Function struct {
	Name   string
	Code   FunctionCode
	Usage  string // "months_after(date, months)"
	Help   string // one line
	Source string // where its meaning comes from
}

// FunctionCode tells the evaluator which function it is.
type FunctionCode uint8

// The functions on scalars and, from FunctionDistance on, those on places.
const (
	FunctionAbs FunctionCode = iota
	FunctionSqrt
	FunctionMin // two or more scalars
	FunctionMax
	FunctionFloor // one argument, or a step: floor(x, 1*lb)
	FunctionCeil
	FunctionRound
	FunctionHypot
	FunctionSin
	FunctionCos
	FunctionTan
	FunctionAtan2 // (y, x) in radians, an angle
	FunctionArc   // (radius, angle): length of the arc
	FunctionDaysAfter
	FunctionWeeksAfter
	FunctionMonthsAfter
	FunctionYearsAfter
	FunctionEndOfMonth
	FunctionEndOfYear
	FunctionStartOfYear
	FunctionEndOfLabel
	FunctionYearOf
	FunctionEarliest
	FunctionLatest
	FunctionDaysBetween
	FunctionMonthsBetween
	FunctionYearsBetween
	FunctionWeekYear     // (text): the week of a tyre's date code, some day of it
	FunctionDistance     // (place or tube, place or tube): a length, of a tube from its centre line
	FunctionClearance    // (place or tube, place or tube): a length between surfaces, negative within
	FunctionAngleBetween // (tube, tube): an angle
	FunctionAbove        // (place, place): a length, negative below
	FunctionAheadOf      // (place, place): a length, negative behind
	FunctionMeet         // (tube, tube, length): a truth
)
