package rules

import (
	"fmt"

	"github.com/expr-lang/expr/ast"

	"gapsheet/vehicle/quantity"
)

// parameter is what a function on scalars takes at one place.
type parameter uint8

const (
	takesNumber parameter = iota // any figure
	takesAngle
	takesDate
	takesCount
	takesLength
	takesText        // a tyre's date code
	takesPlace       // a place, or a part that stands for one
	takesTube        // a part that is a tube
	takesPlaceOrTube // either
)

// signature is how a function on scalars or on places is called: what it takes, and whether the last
// may be left out or come any number of times.
type signature struct {
	takes    []parameter
	optional bool // the last one may be left out
	repeats  bool // the last one may come again
	alike    bool // all arguments are of one dimension
	apart    bool // the first two are places or tubes, and not the same
}

// signatures is the signature of each function.
var signatures = map[FunctionCode]signature{
	FunctionAbs:           {takes: []parameter{takesNumber}},
	FunctionSqrt:          {takes: []parameter{takesNumber}},
	FunctionMin:           {takes: []parameter{takesNumber, takesNumber}, repeats: true, alike: true},
	FunctionMax:           {takes: []parameter{takesNumber, takesNumber}, repeats: true, alike: true},
	FunctionFloor:         {takes: []parameter{takesNumber, takesNumber}, optional: true, alike: true},
	FunctionCeil:          {takes: []parameter{takesNumber, takesNumber}, optional: true, alike: true},
	FunctionRound:         {takes: []parameter{takesNumber, takesNumber}, optional: true, alike: true},
	FunctionHypot:         {takes: []parameter{takesNumber, takesNumber}, alike: true},
	FunctionSin:           {takes: []parameter{takesAngle}},
	FunctionCos:           {takes: []parameter{takesAngle}},
	FunctionTan:           {takes: []parameter{takesAngle}},
	FunctionAtan2:         {takes: []parameter{takesNumber, takesNumber}, alike: true},
	FunctionArc:           {takes: []parameter{takesNumber, takesAngle}},
	FunctionDaysAfter:     {takes: []parameter{takesDate, takesCount}},
	FunctionWeeksAfter:    {takes: []parameter{takesDate, takesCount}},
	FunctionMonthsAfter:   {takes: []parameter{takesDate, takesCount}},
	FunctionYearsAfter:    {takes: []parameter{takesDate, takesCount}},
	FunctionEndOfMonth:    {takes: []parameter{takesDate}},
	FunctionEndOfYear:     {takes: []parameter{takesDate}},
	FunctionStartOfYear:   {takes: []parameter{takesDate}},
	FunctionEndOfLabel:    {takes: []parameter{takesDate}},
	FunctionYearOf:        {takes: []parameter{takesDate}},
	FunctionEarliest:      {takes: []parameter{takesDate, takesDate}, repeats: true},
	FunctionLatest:        {takes: []parameter{takesDate, takesDate}, repeats: true},
	FunctionDaysBetween:   {takes: []parameter{takesDate, takesDate}},
	FunctionMonthsBetween: {takes: []parameter{takesDate, takesDate}},
	FunctionYearsBetween:  {takes: []parameter{takesDate, takesDate}},
	FunctionWeekYear:      {takes: []parameter{takesText}},
	FunctionDistance:      {takes: []parameter{takesPlaceOrTube, takesPlaceOrTube}, apart: true},
	FunctionClearance:     {takes: []parameter{takesPlaceOrTube, takesPlaceOrTube}, apart: true},
	FunctionAngleBetween:  {takes: []parameter{takesTube, takesTube}, apart: true},
	FunctionAbove:         {takes: []parameter{takesPlace, takesPlace}, apart: true},
	FunctionAheadOf:       {takes: []parameter{takesPlace, takesPlace}, apart: true},
	FunctionMeet:          {takes: []parameter{takesTube, takesTube, takesLength}, apart: true},
}

// scalar checks the call of a function on scalars or on places.
func (c *checker) scalar(f *Function, at Span, arguments []ast.Node) Node {
	s := signatures[f.Code]
	fewest, most := len(s.takes), len(s.takes)
	if s.optional {
		fewest--
	}
	if len(arguments) < fewest || len(arguments) > most && !s.repeats {
		return c.argumentCount(f.Name, f.Usage, at, len(arguments))
	}
	of := make([]Node, 0, len(arguments))
	for i, argument := range arguments {
		if n := c.argument(f, s.takes[min(i, most-1)], argument); n != nil {
			of = append(of, n)
		}
	}
	if len(of) < len(arguments) || s.alike && !c.alikeAll(of, "used together in "+f.Name) {
		return nil
	}
	if s.apart && c.isSame(f, at, of) {
		return nil
	}
	is, ok := c.yield(f, at, of)
	if !ok {
		return nil
	}
	return &Call{Base{at, is}, f, of}
}

// argument checks one argument. min and max take lists among figures, of which their
// least or greatest counts.
func (c *checker) argument(f *Function, takes parameter, argument ast.Node) Node {
	if takes >= takesPlace {
		return c.place(f, takes, argument)
	}
	n := c.check(argument)
	if n == nil {
		return nil
	}
	if list, ok := listFunctions[f.Name]; ok && n.Type().Kind == List {
		return c.foldOf(f.Name, list, n.Span(), n)
	}
	is, wanted, advice := n.Type(), "a figure", "Write "+f.Usage+"."
	fits := is.Kind == Number
	switch takes {
	case takesAngle:
		wanted = "an angle"
		if isBareZero(n) {
			return zeroOf(n, Type{Dimension: quantity.Angle})
		}
		if fits && is.Dimension.IsNone() {
			advice = fmt.Sprintf("Write %s*deg.", c.code(n.Span()))
		}
		fits = fits && is.Dimension == quantity.Angle
	case takesCount:
		wanted = "a count"
		if fits = fits && is.Whole; is.Kind == Number && is.Dimension == quantity.Time {
			advice = fmt.Sprintf("Write a number alone: %s.", f.Usage)
		}
	case takesLength:
		return c.length(f, n)
	case takesText:
		return c.codeText(f, n)
	case takesDate:
		wanted = "a date"
		if fits = is.Kind == Date; is.Kind == Text {
			advice = fmt.Sprintf("Write date(%s).", c.code(n.Span()))
		}
	default:
		if is.Kind == Date && (f.Code == FunctionMin || f.Code == FunctionMax) {
			advice = "Write " + map[FunctionCode]string{FunctionMin: "earliest", FunctionMax: "latest"}[f.Code] + " for dates."
		}
	}
	if fits {
		return n
	}
	code := CodeFormulaKind
	if is.Kind == Number && takes == takesAngle {
		code = CodeFormulaDimension
	}
	return c.fault(code, n.Span(), advice, "%s is %s, where %s takes %s.", c.quote(n.Span()), is, f.Name, wanted)
}

// yield is what a function yields of its arguments.
func (c *checker) yield(f *Function, at Span, of []Node) (Type, bool) {
	is := of[0].Type()
	whole := true
	for _, n := range of {
		whole = whole && n.Type().Whole
	}
	switch f.Code {
	case FunctionAbs, FunctionMin, FunctionMax:
		return Type{Kind: Number, Dimension: is.Dimension, Whole: whole}, true
	case FunctionSqrt:
		root, ok := is.Dimension.Root(2)
		if !ok {
			c.fault(CodeFormulaDimension, at, "A root is taken of a plain number, of an area, or of what else is a square.", "%s is %s, and its root measures nothing.", c.quote(of[0].Span()), is)
		}
		return Type{Kind: Number, Dimension: root}, ok
	case FunctionFloor, FunctionCeil, FunctionRound:
		return c.yieldStep(f, of, whole)
	case FunctionHypot:
		return Type{Kind: Number, Dimension: is.Dimension}, true
	case FunctionSin, FunctionCos, FunctionTan:
		return Type{Kind: Number}, true
	case FunctionAtan2:
		return Type{Kind: Number, Dimension: quantity.Angle}, true
	case FunctionArc:
		if is.Dimension != quantity.Length {
			c.fault(CodeFormulaDimension, of[0].Span(), "Write the radius first: "+f.Usage+".", "%s is %s, where arc takes a length.", c.quote(of[0].Span()), is)
			return Type{}, false
		}
		return is, true
	case FunctionDistance, FunctionClearance, FunctionAbove, FunctionAheadOf:
		return Type{Kind: Number, Dimension: quantity.Length}, true
	case FunctionAngleBetween:
		return Type{Kind: Number, Dimension: quantity.Angle}, true
	case FunctionMeet:
		return Type{Kind: Truth}, true
	case FunctionYearOf, FunctionDaysBetween, FunctionMonthsBetween, FunctionYearsBetween:
		return Type{Kind: Number, Whole: true}, true
	}
	return Type{Kind: Date}, true
}

// yieldStep is what floor, ceil and round yield. Without a step they take a plain number.
func (c *checker) yieldStep(f *Function, of []Node, whole bool) (Type, bool) {
	is := of[0].Type()
	if len(of) == 1 {
		if !is.Dimension.IsNone() {
			unit := c.unitFor(of[0])
			if unit == "" {
				unit = "step"
			}
			c.fault(CodeFormulaDimension, of[0].Span(), fmt.Sprintf("Say to what: %s(%s, 1*%s).", f.Name, c.code(of[0].Span()), unit), "%s is %s, and it would be a different whole number in every unit.", c.quote(of[0].Span()), is)
			return Type{}, false
		}
		return Type{Kind: Number, Whole: true}, true
	}
	if step, ok := of[1].(*Constant); ok && step.Number <= 0 {
		c.fault(CodeFormulaConstant, step.At, "Write a step greater than zero.", "The step %s leads nowhere.", c.quote(step.At))
		return Type{}, false
	}
	return Type{Kind: Number, Dimension: is.Dimension, Whole: whole}, true
}
