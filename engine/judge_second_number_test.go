package engine

import (
	"math"
	"math/big"
	"slices"
)

// The second judge's numbers. They carry their dimension and whether they are whole at run
// time and are worked out in exact fractions wherever that can be done, so that they owe
// nothing to package quantity: not its ranges, not its rounding, not its same-figure rule.

// exponents are those of length, mass, time, angle.
type exponents [4]int

// A fraction is a number or a day of the second judge. lacking is what cannot be worked out
// or is not there: comparisons with it have no answer.
type fraction struct {
	exact     *big.Rat
	near      float64 // the float64 nearest to it
	off       float64 // by how much an enclosing range of float64 may be wide
	dimension exponents
	whole     bool
	day       bool
	label     float64 // of a day: the last one of the precision it was written with, NaN for none
	lacking   bool
	none      bool // lacking because it is stated not to exist
	constant  bool // written out in the formula
}

var nothingThere = &fraction{lacking: true}

// ulp is the distance to the next float64.
func ulp(v float64) float64 {
	v = math.Abs(v)
	return math.Nextafter(v, math.Inf(1)) - v
}

// exactFraction is a number as it is read.
func exactFraction(v float64, d exponents, whole bool) *fraction {
	return &fraction{exact: new(big.Rat).SetFloat64(v), near: v, dimension: d, whole: whole, label: math.NaN()}
}

func dayFraction(day, label float64) *fraction {
	f := exactFraction(day, exponents{}, true)
	f.day, f.label = true, label
	return f
}

// reckoned is a result: exact as a fraction, off by what the operands were off and one
// rounding.
func reckoned(r *big.Rat, off float64, d exponents, whole bool) *fraction {
	near, exact := r.Float64()
	if !exact || off > 0 || near == 0 && r.Sign() != 0 { // what is too small for a float64 is not exact
		off += ulp(near)
	}
	if math.IsInf(near, 0) || math.IsNaN(off) {
		off = math.Inf(1) // beyond what a float64 can hold nothing is certain
	} else if r.Num().BitLen()+r.Denom().BitLen() > 6000 {
		r = new(big.Rat).SetFloat64(near)
		off += ulp(near)
	}
	return &fraction{exact: r, near: near, off: off, dimension: d, whole: whole, label: math.NaN()}
}

// approximate is a result that no fraction can be.
func approximate(v, off float64, d exponents) *fraction {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return nothingThere
	}
	f := exactFraction(v, d, false)
	f.off = off + 4*ulp(v)
	return f
}

// lacks reports whether one of the operands is not there.
func lacks(of ...*fraction) bool {
	return slices.ContainsFunc(of, func(f *fraction) bool { return f.lacking })
}

// either is the dimension of two operands that must be of one: a bare zero has none.
func either(a, b *fraction) exponents {
	if a.dimension == (exponents{}) {
		return b.dimension
	}
	return a.dimension
}

func (d exponents) plus(e exponents, times int) exponents {
	for i := range d {
		d[i] += times * e[i]
	}
	return d
}

func addFractions(a, b *fraction, sign int64) *fraction {
	if lacks(a, b) {
		return nothingThere
	}
	r := new(big.Rat).Mul(b.exact, big.NewRat(sign, 1))
	f := reckoned(r.Add(r, a.exact), a.off+b.off, either(a, b), a.whole && b.whole)
	f.constant = a.constant && b.constant
	return f.folded()
}

func multiply(a, b *fraction) *fraction {
	if lacks(a, b) {
		return nothingThere
	}
	off := math.Abs(a.near)*b.off + math.Abs(b.near)*a.off + a.off*b.off
	f := reckoned(new(big.Rat).Mul(a.exact, b.exact), off, a.dimension.plus(b.dimension, 1), a.whole && b.whole)
	f.constant = a.constant && b.constant
	return f.folded()
}

func divide(a, b *fraction) *fraction {
	if lacks(a, b) || b.exact.Sign() == 0 {
		return nothingThere
	}
	r := new(big.Rat).Quo(a.exact, b.exact)
	near, _ := r.Float64()
	off := (a.off + math.Abs(near)*b.off) / max(math.Abs(b.near)-b.off, 0)
	f := reckoned(r, off, a.dimension.plus(b.dimension, -1), false)
	f.constant = a.constant && b.constant
	return f.folded()
}

// folded takes arithmetic on what is written out as exact: it is rounded once.
func (f *fraction) folded() *fraction {
	if f.constant {
		f.off = 0
	}
	return f
}

// rounded is a constant as it meets the figures of a car: the nearest float64.
func (f *fraction) rounded() *fraction {
	if f.constant && !f.lacking {
		out := *f
		out.exact, out.constant = new(big.Rat).SetFloat64(f.near), false
		return &out
	}
	return f
}

func powerFraction(a *fraction, n int) *fraction {
	if a.lacking {
		return nothingThere
	}
	f := &fraction{exact: big.NewRat(1, 1), near: 1, constant: a.constant, label: math.NaN()}
	for range max(n, -n) {
		f = multiply(f, a)
	}
	if n < 0 {
		f = divide(&fraction{exact: big.NewRat(1, 1), near: 1, constant: a.constant}, f)
	}
	return f
}

func negateFraction(a *fraction) *fraction {
	if a.lacking {
		return nothingThere
	}
	f := *a
	f.exact, f.near = new(big.Rat).Neg(a.exact), 0-a.near // no minus zero
	return &f
}

// floors by dimension below which two numbers are the same figure, as semantics has them:
// 1 nm, 1 mg, 1e-9 rad and so on.
var sameFloors = map[exponents]float64{
	{}: 1e-12, {1}: 1e-9, {2}: 1e-12, {3}: 1e-15, {4}: 1e-21, {0, 1}: 1e-6, {0, 0, 1}: 1e-9, {0, 0, 0, 1}: 1e-9,
}

// A ruling is one run of the second judge. Where a comparison has no answer it takes the
// one it is told to, and remembers; where rounding may decide, it remembers too.
type ruling struct {
	suppose         bool
	undefined, edge bool
}

// compare compares two numbers by the same-figure rule: -1, 0 or 1.
func (r *ruling) compare(a, b *fraction) int {
	gap := math.Abs(a.near - b.near)
	tolerance := 0.0
	if !(a.whole && b.whole) {
		tolerance = max(1e-9*max(math.Abs(a.near), math.Abs(b.near)), sameFloors[either(a, b)])
	}
	if off := a.off + b.off; off > 0 && !(math.Abs(gap-tolerance) > 4*off+4*ulp(gap)+4*ulp(tolerance)) {
		r.edge = true
	}
	switch {
	case gap <= tolerance:
		return 0
	case a.near < b.near:
		return -1
	}
	return 1
}

// stepped is floor, ceil or round: of a number, or to a multiple of a step.
func (r *ruling) stepped(name string, of, step *fraction) *fraction {
	if lacks(of, step) {
		return nothingThere
	}
	x := divide(of, step)
	if x.lacking {
		return x
	}
	whole := &fraction{exact: new(big.Rat), whole: true, label: math.NaN()}
	whole.near = r.toWhole(name, x)
	whole.exact.SetFloat64(whole.near)
	if step.dimension == (exponents{}) && step.near == 1 && step.whole {
		return whole
	}
	out := multiply(whole, step)
	out.whole = of.whole && step.whole
	return out
}

func (r *ruling) toWhole(name string, x *fraction) float64 {
	near := math.Round(x.near)
	if r.same(x, near) {
		return near
	}
	switch name {
	case "floor":
		return math.Floor(x.near)
	case "ceil":
		return math.Ceil(x.near)
	}
	if half := math.Trunc(x.near) + math.Copysign(0.5, x.near); r.same(x, half) {
		return half + math.Copysign(0.5, x.near)
	}
	return near
}

func (r *ruling) same(x *fraction, v float64) bool {
	plain := *x
	plain.dimension, plain.whole = exponents{}, false
	return r.compare(&plain, exactFraction(v, exponents{}, false)) == 0
}

// gather is sum, min, max, mean, median of a list.
func (r *ruling) gather(name string, of []*fraction) *fraction {
	if len(of) == 0 {
		if name == "sum" {
			return exactFraction(0, exponents{}, true)
		}
		return nothingThere
	}
	if lacks(of...) {
		return nothingThere
	}
	total := pickFraction(of[0], of[0], true)
	for _, f := range of[1:] {
		switch name {
		case "min":
			total = pickFraction(total, f, total.near <= f.near)
		case "max":
			total = pickFraction(total, f, total.near >= f.near)
		default:
			total = addFractions(total, f, 1)
		}
	}
	n := exactFraction(float64(len(of)), exponents{}, true)
	switch name {
	case "mean":
		return divide(total, n)
	case "median":
		return medianFraction(of)
	}
	return total
}

// pickFraction is one of two; whether it is whole depends on both.
func pickFraction(a, b *fraction, first bool) *fraction {
	f := *b
	if first {
		f = *a
	}
	f.dimension, f.whole, f.off, f.label = either(a, b), a.whole && b.whole, max(a.off, b.off), math.NaN()
	return &f
}

func medianFraction(of []*fraction) *fraction {
	sorted := slices.Clone(of)
	slices.SortFunc(sorted, func(a, b *fraction) int { return a.exact.Cmp(b.exact) })
	k := len(sorted) / 2
	mid := *sorted[k]
	if len(sorted)%2 == 0 {
		mid = *divide(addFractions(sorted[k-1], &mid, 1), exactFraction(2, exponents{}, true))
	}
	mid.whole = false
	for _, f := range of {
		mid.off = max(mid.off, 2*f.off)
	}
	return &mid
}
