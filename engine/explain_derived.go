package engine

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// Notes on figures that follow from others.
const (
	noteFollows = "follows from others"
	noteStated  = "stated, and follows from others"
)

// shownRoots bounds the places and figures that are told of one that follows from them.
const shownRoots = 12

// rootsOfCell puts what a derived cell follows from under its node, and what is taken for
// granted beside.
func (x *explainer) rootsOfCell(at int32, f *finding) {
	if d := x.m.derived[at]; d != nil && x.roots {
		x.told(d.from, f)
		f.work.From = append(f.work.From, d.of.Takes...)
	}
}

// rootsOfCall puts the places that a function on places and tubes reads under its node.
func (x *explainer) rootsOfCall(t *trace, f *finding) {
	n, ok := t.value.asNumber.(*geometric)
	if !ok || !x.roots {
		return
	}
	var cells []int32
	for _, of := range [2]*spot{&n.a, &n.b} {
		s := of.shape(x.m)
		if s == nil {
			continue
		}
		if s.lacks >= 0 {
			cells = append(cells, s.lacks)
		}
		cells = slices.AppendSeq(cells, s.cells(of.surface))
	}
	x.told(cells, f)
}

// told puts cells under a node, the coordinates of one place on one line. Which joints a
// tube goes through is told where their places are not.
func (x *explainer) told(cells []int32, f *finding) {
	type root struct {
		part  *vehicle.Part
		point *vehicle.Particular
	}
	line := map[root]int{}
	var lines, through []string
	for i, at := range cells {
		if slices.Contains(cells[:i], at) {
			continue
		}
		o := &x.car.origins[at]
		point, name, value := pointOf(o.particular), x.car.nameOfCell(at), x.rootText(at)
		switch {
		case point != nil:
			value = string("xyz"[slices.Index(point.Fills, o.particular.Name)]) + " " + value
			if k, known := line[root{o.part, point}]; known {
				lines[k] += ", " + value
				continue
			}
			line[root{o.part, point}] = len(lines)
			lines = append(lines, strings.TrimPrefix(name, placeOf)+": "+value)
		case x.m.cells[at].kind == holdsText && x.m.cells[at].flags&written != 0:
			through = append(through, name+": "+value)
		default:
			lines = append(lines, name+": "+value)
		}
	}
	if len(lines) == 0 {
		lines = through
	}
	if more := len(lines) - shownRoots; more > 1 {
		lines = append(lines[:shownRoots], fmt.Sprintf("and %d more", more))
	}
	f.work.From = lines
}

// rootText is the value of a cell that something follows from.
func (x *explainer) rootText(at int32) string {
	c, o := &x.m.cells[at], &x.car.origins[at]
	switch {
	case c.flags&written == 0:
		return "not recorded"
	case c.kind == holdsText:
		return x.joints(o)
	}
	if text := x.asWritten(at); text != "" {
		return text
	}
	return toleranceText(quantity.Range{Low: c.low, High: c.high}, o.unit)
}

// joints is a list of parts by their labels.
func (x *explainer) joints(o *origin) string {
	if o.value == nil {
		return ""
	}
	var labels []string
	for _, part := range o.value.Several {
		labels = append(labels, part.Label)
	}
	return strings.Join(labels, ", ")
}

// pointOf is the point that a coordinate belongs to, nil for any other particular.
func pointOf(x *vehicle.Particular) *vehicle.Particular {
	if x == nil || x.Kind != vehicle.KindNumber {
		return nil
	}
	for _, point := range x.Part.Particulars {
		if point.Kind == vehicle.KindPoint && slices.Contains(point.Fills, x.Name) {
			return point
		}
	}
	return nil
}

// figure writes a number: one that follows from places as a reading with a tolerance.
func (x *explainer) figure(t *trace, r quantity.Range, u quantity.Unit) string {
	if c, ok := t.tree.(*rules.Call); ok && c.Function.Code >= rules.FunctionDistance {
		return toleranceText(r, u)
	}
	if at, ok := placeOfNode(t.value.node()); ok && x.m.derived[at.cell(x.m)] != nil {
		return toleranceText(r, u)
	}
	return figureText(r, u, figureDigits)
}

// followedDigits is how many significant digits a figure has that follows from readings as
// read: a tape tells no more.
const followedDigits = 5

// toleranceText writes a range as its middle and half its width: "30.1 ± 0.6 deg",
// with no more digits than the width makes sense of.
func toleranceText(r quantity.Range, u quantity.Unit) string {
	half := u.FromSI(r.High)/2 - u.FromSI(r.Low)/2
	switch {
	case math.IsInf(half, 0) || u.Affine():
		return figureText(r, u, figureDigits)
	case u.Dimension().Same().Same(r.Low, r.High):
		return figureText(quantity.Exactly(r.Low/2+r.High/2), u, followedDigits)
	}
	decimals := min(max(1-int(math.Floor(math.Log10(half))), 0), 6)
	middle := quantity.FormatNumber(r.Low/2+r.High/2, u, decimals)
	either := quantity.FormatNumber(r.High/2-r.Low/2, u, decimals)
	return strings.TrimSpace(fmt.Sprintf("%s ± %s %s", middle, either, u.Name()))
}
