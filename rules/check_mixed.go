package rules

import (
	"fmt"
	"strings"

	"gapsheet/vehicle/quantity"
)

// notNumbers is the fault of arithmetic on something else.
func (c *checker) notNumbers(operator string, at Span, left, right Node) Node {
	l, r := left.Type().Kind, right.Type().Kind
	switch {
	case l == Date && r == Date && operator == "-":
		return c.fault(CodeFormulaRefused, at, fmt.Sprintf("Write days_between(%s, %s).", c.code(right.Span()), c.code(left.Span())),
			"Dates are not subtracted with a sign.")
	case l == Date || r == Date:
		date, other := left, right
		if l != Date {
			date, other = right, left
		}
		return c.fault(CodeFormulaRefused, at, fmt.Sprintf("Write days_after(%s, %s), or weeks_after, months_after or years_after.", c.code(date.Span()), c.countIn(other)),
			"Dates are not reckoned with by signs.")
	case (l == Text || l == Choice) && operator == "+":
		return c.fault(CodeFormulaRefused, at, "Compare each of them by itself.", "Texts are not joined in a formula.")
	}
	odd, advice := left, "Only numbers and figures are reckoned with."
	if l == Number {
		odd = right
	}
	if odd.Type().Kind == List {
		advice = "A unit stands with each member of a list: [45*mm, 50*mm]."
	}
	return c.fault(CodeFormulaKind, odd.Span(), advice, "%s is %s.", c.quote(odd.Span()), odd.Type())
}

// countIn is how many days a duration written out was meant to be, "…" when it is none.
func (c *checker) countIn(n Node) string {
	if k, ok := n.(*Constant); ok && k.Is.Kind == Number {
		unit := quantity.CoherentUnit(quantity.Time)
		if k.Is.Dimension == quantity.Time {
			unit, _ = quantity.FindUnit("day")
		}
		if k.Is.Dimension == quantity.Time || k.Is.Dimension.IsNone() {
			return quantity.FormatNumber(k.Number, unit, -1)
		}
	}
	return "…"
}

// mixed is the fault of two figures of different dimension that are added, subtracted or
// compared.
func (c *checker) mixed(at Span, left, right Node, done string) Node {
	for _, pair := range [2][2]Node{{left, right}, {right, left}} {
		k, ok := pair[0].(*Constant)
		if ok && k.Is.Dimension.IsNone() && k.Unit == (quantity.Unit{}) {
			if pair[1].Type().Dimension == quantity.Temperature {
				return c.fault(CodeFormulaDimension, k.At, fmt.Sprintf("Write celsius(%s) or fahrenheit(%s).", c.code(k.At), c.code(k.At)),
					"%s has no unit, but %s is %s.", c.quote(k.At), c.quote(pair[1].Span()), pair[1].Type())
			}
			if unit := c.unitFor(pair[1]); unit != "" {
				return c.fault(CodeFormulaDimension, k.At, fmt.Sprintf("Write %s*%s.", c.code(k.At), unit),
					"%s has no unit, but %s is %s.", c.quote(k.At), c.quote(pair[1].Span()), pair[1].Type())
			}
		}
	}
	return c.fault(CodeFormulaDimension, at, "Only figures of one kind can be "+done+"."+c.sameNumber(left, right),
		"%s is %s, %s is %s.", c.quote(left.Span()), left.Type(), c.quote(right.Span()), right.Type())
}

// sameNumber offers a figure written out with a unit that goes with the other side: 30*deg
// for 30*mm beside an angle. It is "" where neither side alone is written out.
func (c *checker) sameNumber(left, right Node) string {
	k, written := left.(*Constant)
	other := right
	if !written {
		k, written = right.(*Constant)
		other = left
	}
	if _, both := other.(*Constant); !written || both || k.Unit.Formula() == "" || k.Unit.Affine() {
		return ""
	}
	unit, number := c.unitFor(other), quantity.FormatNumber(k.Number, k.Unit, k.Decimals)
	if digits, _, _ := strings.Cut(c.code(k.At), "*"); unit == "" || strings.TrimSpace(digits) != number {
		return "" // reckoned, not written
	}
	return fmt.Sprintf(" Did you mean %s*%s?", number, unit)
}

// unitFor is a unit as formulas write it in which a figure of the kind of n is usual.
func (c *checker) unitFor(n Node) string {
	unit := quantity.Unit{}
	switch n := n.(type) {
	case *Read:
		unit = n.Particular.Unit
	case *Constant:
		unit = n.Unit
	case *Cell:
		if like := n.Of.Type().Table.Columns[n.Column].Like; like != nil {
			unit = like.Unit
		}
	}
	d := n.Type().Dimension
	if unit.Formula() == "" || unit.Dimension() != d {
		unit = quantity.Unit{}
		for _, u := range quantity.FormulaUnits() {
			if u.Dimension() == d && !u.Affine() {
				unit = u
				break
			}
		}
	}
	if unit.Affine() {
		return ""
	}
	return unit.Formula()
}
