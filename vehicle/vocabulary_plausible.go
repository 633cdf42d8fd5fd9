package vehicle

import (
	"fmt"
	"math"
	"strings"

	"gapsheet/vehicle/quantity"
)

// unit reads the unit in which a figure is printed when its author gave none. Only a plain
// number can do without.
func (k *keys) unit(x *Particular) {
	if x.Dimension.IsNone() && k.value("unit") == nil {
		return
	}
	t := k.wanted("unit", quantity.CoherentUnit(x.Dimension).Name(), "It is what the figure is printed in.")
	if t.text == "" {
		return
	}
	unit, err := quantity.FindUnit(t.text)
	switch {
	case err != nil:
		k.fault("unit-unknown", t.all, "Unknown unit", fmt.Sprintf("The unit of the %s cannot be read. %v", k.what, err))
	case unit.Dimension() != x.Dimension:
		k.fault("unit-unfit", t.all, "A unit of something else",
			fmt.Sprintf("Found %s as unit of the %s: that is for %s, and it is %s. Change the one or the other.", Quote(t.text), k.what, unit.Dimension(), x.Dimension))
	default:
		x.Unit = unit
	}
}

// plausible reads the range within which a figure or count has to lie to be believed.
func (k *keys) plausible(x *Particular) {
	example := "10 mm to 120 mm"
	if x.Kind == KindCount {
		example = "0 to 20"
	}
	t := k.wanted("plausible", example, "Anything outside it will be taken for a slip of the pen.")
	if t.text == "" {
		return
	}
	figure, fault := quantity.ParseFigure(t.text)
	if fault != nil {
		k.fault(Code(fault.Code), t.place(fault.From, fault.To), "Not a figure that can be read", fault.Error())
		return
	}
	x.Plausible = figure.Range
	unit := figure.Unit
	switch low, high := figure.Range.Low, figure.Range.High; {
	case unit.Dimension() != x.Dimension || unit.Convertible() != x.Unit.Convertible():
		k.fault("plausible-unit", t.all, "A range of something else",
			fmt.Sprintf("Found %s as plausible range of the %s. Write both ends in a unit for %s.", Quote(t.text), k.what, x.Dimension))
	case !figure.Toleranced || figure.OneSided || low >= high:
		k.fault("plausible-form", t.all, "Not a range",
			fmt.Sprintf("Found %s as plausible range of the %s. Write its two ends, as in %q.", Quote(t.text), k.what, example))
	case x.Kind == KindCount && (low < 0 || low != math.Trunc(low) || high != math.Trunc(high)):
		k.fault("plausible-count", t.all, "Not a range of counts",
			fmt.Sprintf("Found %s as plausible range of the %s. Write two whole numbers from 0 up, as in %q.", Quote(t.text), k.what, example))
	}
}

// plausibleDays reads the range of days of a date. It is 1900 to 2200, which is all that
// can be written, when the key is not given.
func (k *keys) plausibleDays(x *Particular) {
	t := k.text("plausible")
	text := t.text
	if text == "" {
		text = "1900 to 2200"
	}
	from, to, found := strings.Cut(text, " to ")
	first, fault := quantity.ParseDays(from)
	last, second := quantity.ParseDays(to)
	switch {
	case !found || fault != nil || second != nil:
		k.fault("plausible-form", t.all, "Not a range of dates",
			fmt.Sprintf("Found %s as plausible range of the %s. Write two years, months or days, as in \"1990 to 2100\".", Quote(text), k.what))
	case first.From >= last.To:
		k.fault("plausible-form", t.all, "A range of dates that ends before it begins",
			fmt.Sprintf("Found %s as plausible range of the %s. Write the earlier one first.", Quote(text), k.what))
	default:
		x.PlausibleDays = quantity.DayRange{From: first.From, To: last.To}
	}
}
