package engine

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// wider is a world that w agrees with: some ranges wider, some of what is known missing,
// some lists that may have others.
func (d *drawer) wider(w *world) *world {
	out := w.clone()
	i := 0
	out.eachGiven(func(at int, kind string, f *fact) {
		i++
		if d.j.names[at] && d.IntN(3) == 0 {
			d.widen(nil, kind, f)
		}
	})
	d.widenBlock(out.root)
	return out
}

// eachGiven visits the facts about names handed in.
func (w *world) eachGiven(visit func(at int, kind string, f *fact)) {
	for i, words := range judgeGivenWords {
		for k := range w.given[i] {
			visit(i, words[1], &w.given[i][k])
		}
	}
}

func (d *drawer) widenBlock(b *block) {
	for i, x := range b.of.Particulars {
		if d.j.reads[x] && d.IntN(3) == 0 {
			d.widen(x, kindWords[x.Kind], &b.facts[i])
		}
	}
	for i, t := range b.of.Parts {
		l := &b.lists[i]
		for _, of := range l.of {
			d.widenBlock(of)
		}
		if l.outside || t.Name == "car" || d.IntN(4) > 0 {
			continue
		}
		switch {
		case len(l.of) == 0:
			l.says = unsaid
		case t.Repeats():
			l.says = unfinished
		}
	}
}

// widen says less of one particular.
func (d *drawer) widen(x *vehicle.Particular, kind string, f *fact) {
	numeric := kind != "truth" && kind != "text" && kind != "choice"
	if f.state != vehicle.Stated || !numeric || d.IntN(3) == 0 {
		if fits := x == nil || f.within(x).Low >= x.Plausible.Low && f.within(x).High <= x.Plausible.High; !numeric || kind == "date" || f.state != vehicle.Stated || fits {
			*f = fact{}
		}
		return
	}
	if kind == "date" {
		f.low -= float64(d.IntN(40))
		f.high = min(f.high+float64(d.IntN(40)), f.label)
		return
	}
	by := math.Abs(f.low) * []float64{1e-9, 1e-3, 0.1, 1}[d.IntN(4)]
	if kind == "count" {
		by = float64(d.IntN(4))
	}
	f.low, f.high = f.low-by, f.high+by
}

// narrowed says what is wrong between the answer in a world and in one that is wider.
func narrowed(narrow, wide quantity.Truth) string {
	if narrow != quantity.Open && wide != quantity.Open && narrow != wide {
		return fmt.Sprintf("%v, and %v where less is known", narrow, wide)
	}
	return ""
}

// TestJudgeWidening holds that knowing less may turn yes or no into open, and never into
// the other; and so that splitting never turns yes into no.
func TestJudgeWidening(t *testing.T) {
	t.Parallel()
	s := sit(t)
	s.draws(240, func(r *rand.Rand, seed uint64) {
		tr := s.drawTrial(r, seed)
		tr.vague = tr.IntN(3) > 0
		w := tr.world()
		narrow := tr.j.answer(w)
		for range 3 {
			v := tr.wider(w)
			wide := tr.j.answer(v)
			s.count("pairs")
			switch {
			case narrow == wide:
				s.count("of them with one answer")
			case wide == quantity.Open:
				s.count("of them open where less is known")
			case narrow == quantity.Open:
				s.count("of them open only where more is known")
			}
			if narrowed(narrow, wide) != "" {
				s.fail("%s\nwider:\n%v", report(seed, tr.piece, w, narrowed(narrow, wide)), v)
				return
			}
			w, narrow = v, wide
		}
	})
}
