package vehicle

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// examplePoint is how a place could be written.
const examplePoint = `["1200 mm", "-480 mm", "310 mm"]`

// hasPoint reports whether parts of the type have a place on the car.
func (t *PartType) hasPoint() bool {
	return slices.ContainsFunc(t.Particulars, func(x *Particular) bool { return x.Kind == KindPoint })
}

// points reads a place, or several readings of one, and fills its three coordinates.
func (n *entry) points(readings []hclsyntax.Expression) {
	var axes [3]entry
	var values [3]Value
	for i, name := range n.particular.Fills {
		axes[i] = *n
		axes[i].particular = n.part.Type.Particular(name)
	}
	var texts []string
	for _, e := range readings {
		list, ok := n.coordinates(e)
		if !ok {
			return
		}
		var written []string
		for i := range axes {
			if len(readings) == 1 {
				axes[i].all = list[i].Range()
			}
			if figure, at, ok := axes[i].figure(list[i]); ok {
				axes[i].addReading(&values[i], axes[i].particular, figure, at)
				written = append(written, figure.String())
			}
		}
		texts = append(texts, strings.Join(written, ", "))
	}
	for _, v := range values {
		if len(v.Readings) != len(readings) {
			return
		}
	}
	for i := range axes {
		axes[i].set(axes[i].particular, values[i])
	}
	n.set(n.particular, Value{Text: strings.Join(texts, "; ")})
}

// coordinates takes a place apart, which must be a list of three.
func (n *entry) coordinates(e hclsyntax.Expression) ([]hclsyntax.Expression, bool) {
	list, ok := e.(*hclsyntax.TupleConsExpr)
	if !ok {
		n.wrongKind(e, "Write its three coordinates, forward, to the left and up, as in "+examplePoint+".")
		return nil, false
	}
	if slices.ContainsFunc(list.Exprs, func(inner hclsyntax.Expression) bool { _, nested := inner.(*hclsyntax.TupleConsExpr); return nested }) {
		n.wrong("point-form", e.Range(), "Lists where coordinates are wanted", "a list of lists",
			fmt.Sprintf("Write several readings as { readings = [%s, %s] }.", examplePoint, examplePoint))
		return nil, false
	}
	if count := len(list.Exprs); count != 3 {
		n.wrong("point-form", e.Range(), "Not three coordinates", fmt.Sprintf("a list of %d", count),
			"Write three, forward, to the left and up, as in "+examplePoint+"; what is not known is left out by writing the others singly, as in x = \"1200 mm\".")
		return nil, false
	}
	return list.Exprs, true
}

// greatestTolerance is the greatest tolerance of a coordinate that is believed, in metres.
const greatestTolerance = 0.1

// pointTolerance reads the tolerance that a block states for all coordinates in it that have
// none of their own.
func (r *sheetReader) pointTolerance(b *opened) {
	a := b.block.Body.Attributes["tolerance"]
	if a == nil || b.club != "" || !b.part.Type.hasPoint() {
		return
	}
	halves, ok := b.halfWidths(a.Expr)
	if !ok {
		return
	}
	isWanted := false
	for _, x := range b.part.Type.Particulars {
		if x.Kind != KindPoint {
			continue
		}
		for i, name := range x.Fills {
			filled := b.part.Type.Particular(name)
			isGiven := b.block.Body.Attributes[name] != nil || b.block.Body.Attributes[x.Name] != nil
			if v := &b.part.Values[filled.Index]; v.State == Nothing {
				isWanted = isWanted || isGiven // it has a fault of its own
			} else if wanted, sound := b.widen(v, halves[i], filled, a); !sound {
				return
			} else {
				isWanted = isWanted || wanted
			}
		}
	}
	if !isWanted {
		b.fault("tolerance-unused", a.NameRange, "A tolerance of nothing", fmt.Sprintf(
			"Found a tolerance in the %s, but no coordinate in it that could have it. Write the coordinates too, or take the line out.", b.what))
	}
}

// halfWidths reads a tolerance for all three axes, or one for each.
func (b *opened) halfWidths(e hclsyntax.Expression) ([3]quantity.Figure, bool) {
	written := []hclsyntax.Expression{e, e, e}
	if list, ok := e.(*hclsyntax.TupleConsExpr); ok {
		if written = list.Exprs; len(written) != 3 {
			b.fault("point-form", e.Range(), "Not three tolerances", fmt.Sprintf(
				"Found a list of %d as tolerance of the %s. Write one for all axes, \"3 mm\", or one for each: [\"2 mm\", \"2 mm\", \"4 mm\"].", len(written), b.what))
			return [3]quantity.Figure{}, false
		}
	}
	var halves [3]quantity.Figure
	for i, one := range written {
		if i > 0 && one == written[0] {
			halves[i] = halves[0]
			continue
		}
		t, ok := b.one("tolerance", one)
		if !ok {
			return halves, false
		}
		if halves[i], ok = b.halfWidth(one, "point-tolerance", "3 mm"); !ok || !b.fitsPoint(halves[i], t.all) {
			return halves, false
		}
	}
	return halves, true
}

// fitsPoint reports whether a figure can be the tolerance of a coordinate.
func (b *opened) fitsPoint(half quantity.Figure, at hcl.Range) bool {
	found := fmt.Sprintf("Found %q as tolerance of the %s.", half.String(), b.what)
	switch {
	case half.Unit.Dimension() != quantity.Length:
		b.fault("wrong-dimension", at, "A unit of another kind", found+" Write a length, as in \"3 mm\".")
	case half.Reading > greatestTolerance:
		b.fault("not-plausible", at, "A figure out of all proportion", found+" Plausible is up to 100 mm. Look at the number and its unit.")
	default:
		return true
	}
	return false
}

// widen gives a coordinate the tolerance of its block where it has none of its own. It
// reports whether the coordinate had a use for it, and whether there was no fault.
func (b *opened) widen(v *Value, half quantity.Figure, x *Particular, a *hclsyntax.Attribute) (wanted, sound bool) {
	for i := range v.Readings {
		reading := &v.Readings[i]
		if reading.Instrument != "" {
			b.fault("tolerance-twice", a.Expr.Range(), "A tolerance and an instrument", fmt.Sprintf(
				"Found a tolerance in the %s, and %s in it measured with %s, which has a tolerance of its own. Take the one or the other out.",
				b.what, x.Name, Quote(reading.Instrument)))
			return false, false
		}
		if together, ok := reading.Figure.WithTolerance(half); ok {
			reading.Figure, wanted = together, true
		}
	}
	return wanted, true
}
