package vehicle

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// figures reads one reading of a figure, or several.
func (n *entry) figures(readings []hclsyntax.Expression) {
	v := Value{}
	for _, e := range readings {
		if figure, at, ok := n.figure(e); ok {
			n.addReading(&v, n.particular, figure, at)
		}
	}
	if len(v.Readings) == len(readings) {
		n.set(n.particular, v)
	}
}

// figure reads a figure as it is written, and where its characters stand in the file.
func (n *entry) figure(e hclsyntax.Expression) (quantity.Figure, hcl.Range, bool) {
	text, place := "", func(from, to int) hcl.Range { return e.Range() }
	if number, ok := n.source.Number(e); ok {
		if text = number; !n.particular.Dimension.IsNone() {
			n.bareNumber(e, number)
			return quantity.Figure{}, hcl.Range{}, false
		}
	} else {
		if !isText(e) {
			advice := fmt.Sprintf("Write a figure with its unit in double quotes, as in %s.", n.example())
			if _, ok := e.(*hclsyntax.TupleConsExpr); ok {
				advice = fmt.Sprintf("Write several readings as { readings = [%s, %s] }.", n.example(), n.example())
			}
			n.wrongKind(e, advice)
			return quantity.Figure{}, hcl.Range{}, false
		}
		read, at, fault := n.source.Text(e)
		if fault != nil {
			n.faults = append(n.faults, fault)
			return quantity.Figure{}, hcl.Range{}, false
		}
		text, place = read, at.Range
	}
	figure, fault := quantity.ParseFigure(text)
	if fault != nil {
		n.faults = append(n.faults, FigureFault(fault, place))
		return figure, hcl.Range{}, false
	}
	whole := place(0, utf8.RuneCountInString(text))
	return figure, whole, true
}

// bareNumber reports a plain number where a figure with its unit is wanted.
func (n *entry) bareNumber(e hclsyntax.Expression, number string) {
	advice := fmt.Sprintf("Write a figure with its unit in double quotes, as in %s.", n.example())
	if figure, fault := quantity.ParseFigure(number); fault == nil {
		advice = strings.Replace(n.particular.UnitAdvice(figure), "Write the unit too", "Write the unit too, and all in double quotes", 1)
	}
	n.wrong("unit-missing", e.Range(), "A unit is missing", number, advice)
}

// FigureFault is the fault of a figure or date, at the characters that it is about: place
// leads from the characters of its text to the file.
func FigureFault(fault *quantity.Fault, place func(from, to int) hcl.Range) *hcl.Diagnostic {
	summary := "Figure not readable"
	if strings.HasPrefix(fault.Code, "date") {
		summary = "Date not readable"
	}
	return Fault(Code(fault.Code), place(fault.From, fault.To), summary, fault.Error())
}

// addReading checks a figure that stands at a place against a particular and adds it to
// its readings, with the tolerance of the instrument.
func (n *entry) addReading(v *Value, x *Particular, figure quantity.Figure, at hcl.Range) {
	if !n.fits(x, figure, at) {
		return
	}
	reading := Reading{Figure: figure, Range: at}
	if i := n.instrument; i != nil && i.Tolerance != (quantity.Figure{}) {
		together, ok := figure.WithTolerance(i.Tolerance)
		switch {
		case figure.Toleranced || figure.OneSided:
			n.wrong("tolerance-twice", at, "A tolerance and an instrument", fmt.Sprintf("%q, measured with %s", figure.String(), Quote(i.Label)),
				"The instrument has a tolerance of its own. Write the bare reading, or take measured_with out.")
			return
		case !ok:
			n.wrong("instrument-dimension", at, "An instrument for something else", fmt.Sprintf("%q, measured with %s", figure.String(), Quote(i.Label)),
				fmt.Sprintf("Its tolerance is %s (%s), which does not go with this figure. Name another instrument.", i.Tolerance, PlaceText(i.Range)))
			return
		}
		reading.Figure, reading.Instrument = together, i.Label
	}
	v.Readings = append(v.Readings, reading)
}

// fits checks the dimension of a figure and whether it is plausible.
func (n *entry) fits(x *Particular, figure quantity.Figure, at hcl.Range) bool {
	found := Quote(figure.String())
	switch unit := figure.Unit; {
	case unit == (quantity.Unit{}) && x.Unit != (quantity.Unit{}) && !(x.Dimension.IsNone() && x.Unit.Convertible()):
		n.wrong("unit-missing", at, "A unit is missing", found, x.UnitAdvice(figure))
	case unit != x.Unit && x.Unit == (quantity.Unit{}) && unit.Dimension() != x.Dimension:
		n.wrong("wrong-dimension", at, "A unit of another kind", found, "It is a plain number: write it without a unit.")
	case unit.Dimension() != x.Dimension || unit.Convertible() != x.Unit.Convertible():
		n.wrong("wrong-dimension", at, "A unit of another kind", found,
			fmt.Sprintf("That is %s. Write %s in a unit such as %s.", measures(unit), x.Name, x.Unit.Name()))
	case !x.IsPlausible(figure.Reading):
		advice := "Look at the number and its unit."
		if meant := likelyMeant(x, figure); meant != "" {
			advice = fmt.Sprintf("Did you mean %q?", meant)
		}
		n.wrong("not-plausible", at, "A figure out of all proportion", found,
			fmt.Sprintf("Plausible is %s. %s", x.Plausible.In(x.Unit, -1), advice))
	default:
		return true
	}
	return false
}

// measures says what a figure in a unit is.
func measures(u quantity.Unit) string {
	switch {
	case !u.Convertible():
		return "a level in " + u.Name()
	case u.Dimension().IsNone():
		return "a plain number"
	}
	return "a figure of " + u.Dimension().String()
}

// IsPlausible reports whether a figure or count, in SI, is within the plausible range, whose
// ends belong to it by the same-figure rule.
func (x *Particular) IsPlausible(v float64) bool {
	same := x.Dimension.Same()
	return x.Plausible.Contains(v) || same.Same(v, x.Plausible.Low) || same.Same(v, x.Plausible.High)
}
