package engine

import (
	"math"
	"math/rand/v2"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A drawer draws worlds for a formula.
type drawer struct {
	*rand.Rand
	j     *judged
	vague bool                             // readings with tolerance, missing particulars, unfinished lists
	full  bool                             // but of every list it is known whether there are others
	drawn map[quantity.Dimension][]float64 // numbers of the world that is drawn, days under time
	known map[quantity.Dimension][]float64 // and of the one that is completed
}

// dimensionOfGiven is the dimension of a name handed in.
func dimensionOfGiven(kind string) quantity.Dimension {
	if kind == "list" {
		return quantity.Length
	}
	d, _ := quantity.DimensionNamed(kind)
	return d
}

// world draws a world for the formula of the drawer. What the formula does not ask about is
// plain.
func (d *drawer) world() *world {
	d.drawn = map[quantity.Dimension][]float64{}
	w := &world{root: newBlock(judgeVocabulary().Root), on: quantity.Day(firstDay + 10950 + d.IntN(3650))}
	for i, words := range judgeGivenWords {
		n := 1
		if words[1] == "list" {
			n = judgeListLength
		}
		facts := make([]fact, n)
		for k := range facts {
			facts[k] = *plainFact(nil)
			if d.j.names[i] {
				facts[k] = d.given(words[1])
			}
		}
		w.given = append(w.given, facts)
	}
	for i, t := range judgeVocabulary().Root.Parts {
		w.root.lists[i] = d.blocks(t)
	}
	return w
}

// blocks draws all parts of a type.
func (d *drawer) blocks(t *vehicle.PartType) blocks {
	if t.Name == "car" {
		return blocks{of: []*block{d.block(t, "")}}
	}
	if !d.j.lists[t] {
		return blocks{says: absent, outside: true}
	}
	n := 1
	if t.Repeats() {
		n = []int{0, 1, 1, 2, 2, 3}[d.IntN(6)]
		if t.Name == "harness" {
			n = min(n, 2)
		}
	} else if d.IntN(3) == 0 {
		n = 0
	}
	out := blocks{}
	for i := range n {
		out.of = append(out.of, d.block(t, d.label(t, i)))
	}
	switch {
	case d.vague && n == 0 && d.IntN(2) == 0 && !(d.full && t.Repeats()):
		out.says = unsaid
	case n == 0:
		out.says = absent
	case d.vague && !d.full && t.Repeats() && d.IntN(5) == 0:
		out.says = unfinished
	}
	return out
}

func (d *drawer) label(t *vehicle.PartType, i int) string {
	switch {
	case !t.Repeats():
		return ""
	case t.Name == "harness":
		return judgeLabels.Choices[i].Value
	}
	return string(rune('1' + i))
}

// block draws one part.
func (d *drawer) block(t *vehicle.PartType, label string) *block {
	b := newBlock(t)
	b.label = label
	for i, x := range t.Particulars {
		if b.facts[i] = *plainFact(x); d.j.reads[x] {
			b.facts[i] = d.particular(x)
		}
	}
	for i, inner := range t.Parts {
		b.lists[i] = d.blocks(inner)
	}
	return b
}

// particular draws what is known of a particular.
func (d *drawer) particular(x *vehicle.Particular) fact {
	switch {
	case x.MayBeAbsent && d.IntN(5) == 0:
		return fact{state: vehicle.None}
	case d.vague && d.IntN(4) == 0:
		return fact{}
	}
	switch x.Kind {
	case vehicle.KindTruth:
		return d.ofKind("truth", quantity.Plain, quantity.Range{})
	case vehicle.KindText:
		return d.ofKind("text", quantity.Plain, quantity.Range{})
	case vehicle.KindDate:
		return d.ofKind("date", quantity.Plain, quantity.Range{Low: firstDay, High: lastDay})
	case vehicle.KindChoice:
		i := float64(d.IntN(len(x.Choices.Choices)))
		return fact{state: vehicle.Stated, low: i, high: i}
	case vehicle.KindCount:
		return d.ofKind("count", quantity.Plain, x.Plausible)
	}
	return d.ofKind("number", x.Dimension, x.Plausible)
}

// usual is the range in which numbers handed in are mostly drawn.
func usual(kind string, d quantity.Dimension) quantity.Range {
	switch {
	case kind == "count":
		return quantity.Range{Low: -3, High: 12}
	case kind == "date":
		return quantity.Range{Low: firstDay, High: lastDay}
	case d == quantity.Length:
		return quantity.Range{Low: -0.05, High: 0.12}
	case d == quantity.Mass:
		return quantity.Range{Low: -100, High: 2500}
	}
	return quantity.Range{Low: -5, High: 5}
}

// given draws what is known of a name handed in.
func (d *drawer) given(kind string) fact {
	if d.vague && d.IntN(4) == 0 {
		return fact{}
	}
	dim := dimensionOfGiven(kind)
	switch kind {
	case "truth", "text", "count", "date":
		return d.ofKind(kind, dim, usual(kind, dim))
	}
	return d.ofKind("number", dim, usual(kind, dim))
}

// ofKind draws a stated fact.
func (d *drawer) ofKind(kind string, dim quantity.Dimension, within quantity.Range) fact {
	f := fact{state: vehicle.Stated}
	switch kind {
	case "truth":
		f.truth = d.IntN(2) == 0
	case "text":
		f.text = d.text()
	case "date":
		d.date(&f, within)
	case "count":
		f.low = d.count(within)
		f.high = f.low
		if d.vague && d.IntN(6) == 0 {
			f.high = min(f.low+float64(d.IntN(4)), within.High)
		}
	default:
		d.number(&f, dim, within)
	}
	return f
}

func (d *drawer) text() string {
	if n := len(d.j.texts); n > 0 && d.IntN(2) == 0 {
		return d.j.texts[d.IntN(n)]
	}
	return judgeTexts[d.IntN(len(judgeTexts))]
}

// count draws a whole number, often one that the formula names.
func (d *drawer) count(within quantity.Range) float64 {
	if limits := d.j.limits[quantity.Plain]; len(limits) > 0 && d.IntN(2) == 0 {
		v := math.Trunc(limits[d.IntN(len(limits))]) + float64(d.IntN(3)-1)
		return max(within.Low, min(v, within.High))
	}
	return within.Low + float64(d.IntN(int(within.High-within.Low)+1))
}

// date draws a day, or a day known to its month or year, often near one that the formula
// names.
func (d *drawer) date(f *fact, within quantity.Range) {
	v := within.Low + float64(d.IntN(int(within.High-within.Low)+1))
	if n := len(d.j.days); n > 0 && d.IntN(2) == 0 {
		v = d.j.days[d.IntN(n)] + float64(d.IntN(5)-2)
	} else if days := d.drawn[quantity.Time]; len(days) > 0 && d.IntN(3) == 0 {
		v = days[d.IntN(len(days))] + float64(d.IntN(3)-1)
	}
	d.drawn[quantity.Time] = append(d.drawn[quantity.Time], v)
	day := quantity.Day(v)
	f.low, f.high = v, v
	switch year, month, _ := day.Civil(); d.IntN(3) {
	case 0:
		first, _ := quantity.CivilDay(year, month, 1)
		f.low, f.high = float64(first), float64(day.EndOfMonth())
	case 1:
		f.low, f.high = float64(day.StartOfYear()), float64(day.EndOfYear())
	}
	f.label = f.high
	if !d.vague {
		f.low, f.high = v, v
	}
}

// number draws a figure, exact or with a tolerance.
func (d *drawer) number(f *fact, dim quantity.Dimension, within quantity.Range) {
	v := d.exactly(dim, within)
	f.low, f.high = v, v
	if !d.vague || d.IntN(3) == 0 {
		return
	}
	switch half := math.Abs(v) * []float64{1e-12, 1e-9, 1e-3, 0.01, 0.1, 0.5}[d.IntN(6)]; d.IntN(6) {
	case 0:
		f.high = v + half
	case 1:
		f.low = v - half
	case 2:
		w := d.exactly(dim, within)
		f.low, f.high = min(v, w), max(v, w)
	case 3:
		if d.IntN(3) == 0 {
			f.high = math.Inf(1)
		}
	default:
		f.low, f.high = v-half, v+half
	}
}

// exactly draws a number: one at which the formula may change its answer, one that was
// drawn before, or any short one.
func (d *drawer) exactly(dim quantity.Dimension, within quantity.Range) float64 {
	v := math.NaN()
	switch limits, before := d.j.interesting(dim), d.drawn[dim]; {
	case len(limits) > 0 && d.IntN(2) == 0:
		v = limits[d.IntN(len(limits))]
	case len(before) > 0 && d.IntN(4) == 0:
		around := around(before[d.IntN(len(before))])
		v = around[d.IntN(len(around))]
	}
	if !(within.Low <= v && v <= within.High) {
		step := math.Pow(10, math.Floor(math.Log10(within.High-within.Low))-2)
		steps := int((within.High - within.Low) / step)
		v = within.Low + float64(d.IntN(steps+1))*step
	}
	d.drawn[dim] = append(d.drawn[dim], v)
	return v
}
