package engine

import (
	"fmt"
	"slices"

	"gapsheet/vehicle"
)

// simplest are what pieces of a kind are replaced by where a failure does not hang on them.
var simplest = map[string][]string{
	"truth": {"true", "false", "a"}, "length": {"1*mm", "x"}, "mass": {"1*kg", "u"}, "plain": {"1.5", "p"}, "count": {"1", "i"},
	"date": {"on", "d"}, "text": {"'abc'", "s"}, "class": {"car.class"}, "tubes": {"tubes"}, "lengths": {"xs"}, "bands": {"table.bands"}, "sizes": {"table.sizes"},
}

// shrink makes a formula and a world that fail as small as it can while they go on failing.
func shrink(p *piece, w *world, fails func(*piece, *world) bool) (*piece, *world) {
	budget := 3000
	try := func(p *piece, w *world) bool {
		budget--
		return budget > 0 && fails(p, w)
	}
	for again := true; again && budget > 0; {
		again = false
		if smaller := shrinkPiece(p, func(q *piece) bool { return try(q, w) }); smaller != nil {
			p, again = smaller, true
			continue
		}
		if smaller := shrinkWorld(w, func(v *world) bool { return try(p, v) }); smaller != nil {
			w, again = smaller, true
		}
	}
	return p, w
}

// shrinkPiece finds one smaller formula that still fails, nil when there is none.
func shrinkPiece(p *piece, fails func(*piece) bool) *piece {
	var found *piece
	p.places(func(at *piece, put func(*piece) *piece) bool {
		var smaller []*piece
		at.below(func(q *piece) {
			if q.kind == at.kind || q.kind == "bracketed" && at.kind == "truth" {
				smaller = append(smaller, q)
			}
		})
		for _, text := range simplest[at.kind] {
			if at.String() != text && (len(at.of) > 0 || !slices.Contains(simplest[at.kind], at.form)) {
				smaller = append(smaller, &piece{kind: at.kind, form: text})
			}
		}
		for _, q := range smaller {
			if whole := put(q); fails(whole) {
				found = whole
				return false
			}
		}
		return true
	})
	return found
}

// below visits all pieces under a piece.
func (p *piece) below(visit func(*piece)) {
	for _, of := range p.of {
		visit(of)
		of.below(visit)
	}
}

// places visits every piece with a way to put another in its place.
func (p *piece) places(visit func(at *piece, put func(*piece) *piece) bool) bool {
	if !visit(p, func(q *piece) *piece { return q }) {
		return false
	}
	for i, of := range p.of {
		more := of.places(func(at *piece, put func(*piece) *piece) bool {
			return visit(at, func(q *piece) *piece {
				out := &piece{kind: p.kind, form: p.form, of: slices.Clone(p.of)}
				out.of[i] = put(q)
				return out
			})
		})
		if !more {
			return false
		}
	}
	return true
}

// shrinkWorld finds one simpler world that still fails, nil when there is none.
func shrinkWorld(w *world, fails func(*world) bool) *world {
	var found *world
	keep := func(v *world) bool {
		if found == nil && fails(v) {
			found = v
		}
		return found != nil
	}
	w.shrinkLists(keep)
	i := 0
	w.eachFact(func(_ string, x *vehicle.Particular, f *fact) {
		at := i
		i++
		plain := *plainFact(x)
		if x == nil && f.label != 0 {
			plain.low, plain.high, plain.label = firstDay, firstDay, firstDay
		}
		if found != nil || *f == plain {
			return
		}
		exact := *f
		exact.high = exact.low
		for _, simpler := range []fact{plain, exact} {
			if simpler == *f || simpler.state != vehicle.Stated {
				continue
			}
			v := w.clone()
			k := 0
			v.eachFact(func(_ string, _ *vehicle.Particular, g *fact) {
				if k == at {
					*g = simpler
				}
				k++
			})
			if keep(v) {
				return
			}
		}
	})
	return found
}

// shrinkLists tries worlds with one part less.
func (w *world) shrinkLists(keep func(*world) bool) {
	for i, l := range w.root.lists {
		if l.outside || w.root.of.Parts[i].Name == "car" {
			continue
		}
		for k := range l.of {
			v := w.clone()
			of := &v.root.lists[i]
			of.of = slices.Delete(of.of, k, k+1)
			if len(of.of) == 0 {
				of.says = absent
			}
			if keep(v) {
				return
			}
		}
		if l.says == unfinished {
			v := w.clone()
			v.root.lists[i].says = complete
			if keep(v) {
				return
			}
		}
	}
}

// report tells a failure in its smallest form.
func report(seed uint64, p *piece, w *world, finding string) string {
	return fmt.Sprintf("seed %d\nformula: %v\nworld:\n%v%s", seed, p, w, finding)
}
