package rules

// Function is a function on scalars that a formula may call.
type Function struct {
	Name   string
	Code   FunctionCode
	Usage  string // "months_after(date, months)"
	Help   string // one line
	Source string // where its meaning comes from
}

// FunctionCode tells the evaluator which function it is.
type FunctionCode uint8

// The functions on scalars.
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
)
