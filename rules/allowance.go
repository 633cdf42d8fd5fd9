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
	if !compares(c.Demand.Tree, c.AllowanceDimension) {
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

// compares reports whether a formula compares figures of a dimension. A count is compared
// exactly and has no allowance.
func compares(tree Node, d quantity.Dimension) bool {
	for n := range Walk(tree) {
		if c, ok := n.(*Compare); ok {
			if is := c.Left.Type(); is.Kind == Number && !is.Whole && is.Dimension == d {
				return true
			}
		}
	}
	return false
}
