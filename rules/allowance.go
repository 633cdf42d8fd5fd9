package rules

import (
	"fmt"
	"math/big"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// readAllowance reads a figure by which limits are loosened, or tightened where it is
// negative. Its dimension has to occur in a comparison of the demand, or it would do
// nothing.
func (l *loader) readAllowance(c *Clause, f *fields) {
	t, ok := f.text("allowance")
	if !ok {
		return
	}
	figure, fault := quantity.ParseFigure(t.text)
	if fault != nil {
		f.report(vehicle.FigureFault(fault, t.at.Range))
		return
	}
	if !isOne(figure) || figure.Reading == 0 {
		f.fault("one-figure-wanted", t.all, "One figure is wanted", fmt.Sprintf(
			"Found %s as allowance of the %s. Write a single figure other than 0 without a tolerance, as in \"0.1 mm\".", vehicle.Quote(t.text), f.what))
		return
	}
	c.Allowance, c.AllowanceDimension = difference(figure), figure.Unit.Dimension()
	loosened, beyond := reach(c.Demand.Tree, c.AllowanceDimension)
	switch {
	case beyond:
		f.fault("allowance-beyond", t.all, "An allowance that does not reach a limit", fmt.Sprintf(
			"Found an allowance of %s, but the demand compares figures of that kind (%s) where an allowance has no direction: with == or !=, or inside a count, a filter, one(…), a let or a condition. Write that limit as it is meant, or in a clause of its own.",
			vehicle.Quote(t.text), c.AllowanceDimension))
	case !loosened:
		f.fault("allowance-unused", t.all, "An allowance that does nothing", fmt.Sprintf(
			"Found an allowance of %s, but the demand compares no figure of that kind (%s). Write a figure of the kind that the limit has.",
			vehicle.Quote(t.text), c.AllowanceDimension))
	}
}

// isOne reports whether a figure is a single one, without tolerance or open end.
func isOne(f quantity.Figure) bool {
	return !f.Toleranced && !f.OneSided && f.Range.IsExact()
}

// difference is a figure in SI as a difference of two: 2 degC are 2 K, not 275.15 K.
func difference(f quantity.Figure) float64 {
	if !f.Unit.Affine() {
		return f.Reading
	}
	number, ok := new(big.Rat).SetString(quantity.FormatNumber(f.Reading, f.Unit, f.Decimals))
	if !ok {
		panic("rules: a figure was printed as no number: " + f.String())
	}
	return f.Unit.DifferenceToSI(number)
}

// reach reports whether an allowance of a dimension loosens a limit of a formula, and
// whether there is a comparison of that dimension that it cannot loosen. What it does to a
// comparison must have one direction: the comparison may stand under and, or, not, all, any
// and none, and not where something is counted, chosen or only named by it.
func reach(n Node, d quantity.Dimension) (loosened, beyond bool) {
	var below []Node
	switch n := n.(type) {
	case *Compare:
		beyond = anyCompare(n.Left, d) || anyCompare(n.Right, d)
		if !compares(n, d) {
			break
		}
		directed := n.Sense != Equal && n.Sense != NotEqual
		return directed, beyond || !directed
	case *Logic:
		below = n.Of
	case *Not:
		below = []Node{n.Of}
	case *Conditional:
		below = []Node{n.Then, n.Else}
		beyond = anyCompare(n.If, d)
	case *Define:
		below = []Node{n.Rest}
		beyond = anyCompare(n.Value, d)
	case *Mention:
		below = []Node{n.Body}
	case *Gather:
		if n.Fold == FoldAll || n.Fold == FoldAny || n.Fold == FoldNone {
			below = []Node{n.Body}
			beyond = anyCompare(n.List, d)
		} else {
			beyond = anyCompare(n, d)
		}
	default:
		beyond = anyCompare(n, d)
	}
	for _, of := range below {
		if of == nil {
			continue
		}
		also, other := reach(of, d)
		loosened, beyond = loosened || also, beyond || other
	}
	return loosened, beyond
}

// anyCompare reports whether figures of a dimension are compared at a node or below it.
func anyCompare(n Node, d quantity.Dimension) bool {
	for below := range Walk(n) {
		if c, ok := below.(*Compare); ok && compares(c, d) {
			return true
		}
	}
	return false
}

// compares reports whether a comparison is one of figures of a dimension. A count is
// compared exactly and has no allowance.
func compares(c *Compare, d quantity.Dimension) bool {
	is := c.Left.Type()
	return is.Kind == Number && !is.Whole && is.Dimension == d
}
