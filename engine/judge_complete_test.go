package engine

import (
	"math"
	"slices"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// Completions: exact worlds that agree with one of which not all is known.

// A choosing picks one of what a fact may be, given how many there are.
type choosing func(n int) int

// options are exact facts that agree with a fact: the corners first (both ends, all
// choices, none where it may be), then, where they are wanted finer, what lies at the
// limits of the formula and between.
func (d *drawer) options(x *vehicle.Particular, kind string, f *fact, finer bool) []fact {
	if f.exact() {
		return []fact{*f}
	}
	var out []fact
	switch kind {
	case "truth":
		out = []fact{{state: vehicle.Stated}, {state: vehicle.Stated, truth: true}}
	case "text":
		for _, text := range slices.Concat([]string{"none of these"}, d.j.texts, judgeTexts) {
			out = append(out, fact{state: vehicle.Stated, text: text})
		}
	case "choice":
		for i := range x.Choices.Choices {
			out = append(out, fact{state: vehicle.Stated, low: float64(i), high: float64(i)})
		}
	case "date":
		out = d.dates(x, f, finer)
	default:
		out = d.numbers(x, kind, f, finer)
	}
	if x != nil && x.MayBeAbsent && f.state == vehicle.Nothing {
		out = append(out, fact{state: vehicle.None})
	}
	return out
}

// within is what a fact about a number or date lies in.
func (f *fact) within(x *vehicle.Particular) quantity.Range {
	switch {
	case f.state == vehicle.Stated:
		return quantity.Range{Low: f.low, High: f.high}
	case x == nil:
		return quantity.Everything
	case x.Kind == vehicle.KindDate:
		return quantity.Range{Low: firstDay, High: lastDay}
	}
	return x.Plausible
}

func (d *drawer) numbers(x *vehicle.Particular, kind string, f *fact, finer bool) []fact {
	dim := quantity.Length // of a list that is handed in
	switch {
	case x != nil:
		dim = x.Dimension
	case kind != "list":
		dim = dimensionOfGiven(kind)
	}
	within := f.within(x)
	common := usual(kind, dim)
	low, high := within.Low, within.High
	if math.IsInf(low, -1) {
		low = min(common.Low, high-1)
	}
	if math.IsInf(high, 1) {
		high = max(common.High, low+1)
	}
	values := []float64{low, high}
	if finer {
		values = append(values, low/2+high/2)
		values = append(values, d.j.interesting(dim)...)
		values = append(values, d.known[dim]...)
		values = append(values, within.Low, within.High, -1e7, 1e7, -1e3, 1e3)
		values = append(values, math.Nextafter(low, high), math.Nextafter(high, low), 0)
		for range 5 {
			values = append(values, low+(high-low)*d.Float64())
		}
	}
	whole := kind == "count"
	var out []fact
	seen := map[float64]bool{}
	for _, v := range values {
		if whole {
			v = math.Round(v)
		}
		if within.Contains(v) && !math.IsInf(v, 0) && !seen[v] {
			seen[v] = true
			out = append(out, fact{state: vehicle.Stated, low: v, high: v})
		}
	}
	return out
}

// dates are days with their labels. Of a date that is not written the label is any that it
// could have been written with.
func (d *drawer) dates(x *vehicle.Particular, f *fact, finer bool) []fact {
	within := f.within(x)
	if f.state != vehicle.Stated {
		within = quantity.Range{Low: firstDay, High: lastDay}
		if x == nil { // a name handed in has no plausible range
			within = quantity.Range{Low: -200_000, High: 200_000}
		}
	}
	values := []float64{within.Low, within.High}
	if finer {
		values = append(values, math.Floor(within.Low/2+within.High/2))
		for _, day := range slices.Concat(d.j.days, d.known[quantity.Time]) {
			values = append(values, day-1, day, day+1)
		}
		for _, day := range d.known[quantity.Time] {
			values = append(values, day+float64(d.IntN(800)-400))
		}
		for range 4 {
			values = append(values, within.Low+float64(d.IntN(int(within.High-within.Low)+1)))
		}
	}
	var out []fact
	for _, v := range values {
		if !within.Contains(v) {
			continue
		}
		labels := []float64{f.label}
		if day := quantity.Day(v); f.state != vehicle.Stated {
			labels = []float64{v, float64(day.EndOfMonth()), float64(day.EndOfYear())}
		}
		for _, label := range labels {
			out = append(out, fact{state: vehicle.Stated, low: v, high: v, label: label})
		}
	}
	return out
}

// complete makes an exact world that agrees with w. choose picks among what each fact may
// be; lists that may have others get some or none by chance.
func (d *drawer) complete(w *world, finer bool, choose choosing) *world {
	out := w.clone()
	d.collect(w)
	d.completeLists(out.root)
	for i, words := range judgeGivenWords {
		for k := range out.given[i] {
			d.completeFact(nil, words[1], &out.given[i][k], finer, choose)
		}
	}
	d.completeBlock(out.root, finer, choose)
	return out
}

// collect notes the numbers and days that w knows, so that what is not known can be the same.
func (d *drawer) collect(w *world) {
	d.known = map[quantity.Dimension][]float64{}
	w.eachFact(func(_ string, x *vehicle.Particular, f *fact) {
		if f.state != vehicle.Stated || f.text != "" {
			return
		}
		dims := []quantity.Dimension{quantity.Length, quantity.Mass, quantity.Plain, quantity.Angle}
		switch {
		case f.label != 0:
			dims = []quantity.Dimension{quantity.Time}
		case x != nil && x.Kind != vehicle.KindNumber:
			dims = []quantity.Dimension{quantity.Plain}
		case x != nil:
			dims = []quantity.Dimension{x.Dimension}
		}
		for _, dim := range dims {
			d.known[dim] = append(d.known[dim], f.low, f.high)
		}
	})
}

func (d *drawer) completeBlock(b *block, finer bool, choose choosing) {
	for i, x := range b.of.Particulars {
		d.completeFact(x, kindWords[x.Kind], &b.facts[i], finer, choose)
	}
	for i := range b.lists {
		for _, of := range b.lists[i].of {
			d.completeBlock(of, finer, choose)
		}
	}
}

func (d *drawer) completeFact(x *vehicle.Particular, kind string, f *fact, finer bool, choose choosing) {
	if f.exact() {
		return
	}
	options := d.options(x, kind, f, finer)
	*f = options[choose(len(options))]
}

// completeLists says of every list that it is complete, with or without parts that nobody
// had spoken of.
func (d *drawer) completeLists(b *block) {
	for i, t := range b.of.Parts {
		l := &b.lists[i]
		if l.says == unfinished || l.says == unsaid {
			d.addOthers(l, t)
		}
		if l.says = complete; len(l.of) == 0 {
			l.says = absent
		}
		for _, of := range l.of {
			d.completeLists(of)
		}
	}
}

func (d *drawer) addOthers(l *blocks, t *vehicle.PartType) {
	most := 1
	if t.Repeats() {
		most = 2
	}
	if t.Name == "harness" {
		most -= len(l.of)
	}
	vague := d.vague
	d.vague = false
	for range d.IntN(most + 1) {
		b := d.block(t, d.label(t, len(l.of)))
		at := len(l.of)
		if t.Name != "harness" && d.IntN(2) == 0 {
			at = 0
		}
		l.of = slices.Insert(l.of, at, b)
	}
	d.vague = vague
}

// corner is an exact world at corners: all low, all high, or each by chance.
func (d *drawer) corner(w *world, which int) *world {
	switch which {
	case 0:
		return d.complete(w, false, func(int) int { return 0 })
	case 1:
		return d.complete(w, false, func(n int) int { return min(1, n-1) })
	}
	return d.complete(w, false, d.IntN)
}

// sample is an exact world anywhere within what is known.
func (d *drawer) sample(w *world) *world { return d.complete(w, true, d.IntN) }
