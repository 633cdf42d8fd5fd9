package engine

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// smallLeaves are comparisons with what is written out, and truths: all that the values of
// one particular can do to them can be gone through.
var smallLeaves = strings.Split(
	"a; b; c; a; b; car.guarded; x >= 45*mm; x < 40*mm; x == 40*mm; y > 2*mm; u <= 1000*kg; u > 900*kg; "+
		"car.class == 'open'; car.class in ['open', 'junior']; car.class != 'historic'; d >= date('2027-01-01'); d < date('2024-02-29'); "+
		"s == 'abc'; s in ['abc', 'plain']; i == 2; i >= 1; i in 1..3; (car.hydraulic ?? a); car.dent <= 1*mm; (car.dent ?? 0) <= 1*mm; "+
		"car.hydraulic; recorded(car.dent); recorded(car.seal); car.seal == 'abc'; (car.wheels ?? (2)) >= 2; fire_system.armed; fitted(fire_system); "+
		"all(tubes, .straight); any(tubes, .part == 'backstay'); count(tubes, .straight) >= 1; all(tubes, .wall >= 2*mm or .straight); tube['1'].straight; "+
		"(a ? x : y) >= 40*mm; (a ? car.class : car.shade) == 'open'; s matches '^abc$'; s startsWith 'x'; abs(x) >= 40*mm; x + y >= 40*mm; x >= y", "; ")

// smallFormula draws a formula of few of them.
func smallFormula(r *rand.Rand, depth int) string {
	if depth == 0 || r.IntN(4) == 0 {
		return "(" + smallLeaves[r.IntN(len(smallLeaves))] + ")"
	}
	of := func() string { return smallFormula(r, depth-1) }
	switch r.IntN(6) {
	case 0:
		return "(not " + of() + ")"
	case 1:
		return "(" + of() + " ? " + of() + " : " + of() + ")"
	case 2:
		return "(" + of() + " == " + of() + ")"
	case 3, 4:
		return "(" + of() + " and " + of() + ")"
	}
	return "(" + of() + " or " + of() + ")"
}

// bruteLimit bounds the worlds that are gone through for one formula.
const bruteLimit = 2000

// whatMatters goes through all combinations of what is not known and returns which facts
// that are missing can alone change the answer; ok is false where there are too many.
func (d *drawer) whatMatters(w *world) (matters map[string]bool, ok bool) {
	type open struct {
		name    string
		missing bool
		at      func(*world) *fact
		options []fact
	}
	var all []open
	d.collect(w)
	total, k := 1, 0
	w.eachFact(func(name string, x *vehicle.Particular, f *fact) {
		at := k
		k++
		kind := kindOfName(name, x)
		if f.exact() {
			return
		}
		o := open{name: name, missing: f.state == vehicle.Nothing, options: d.options(x, kind, f, true)}
		o.options = slices.DeleteFunc(o.options, func(f fact) bool { return o.missing && kind == "date" && f.label != f.low })
		o.at = func(v *world) (found *fact) {
			i := 0
			v.eachFact(func(_ string, _ *vehicle.Particular, f *fact) {
				if i == at {
					found = f
				}
				i++
			})
			return found
		}
		all = append(all, o)
		total *= len(o.options)
	})
	if total > bruteLimit {
		return nil, false
	}
	answers := make([]quantity.Truth, total)
	v := w.clone()
	at := make([]*fact, len(all))
	for i, o := range all {
		at[i] = o.at(v)
	}
	for n := range answers {
		rest := n
		for i, o := range all {
			*at[i] = o.options[rest%len(o.options)]
			rest /= len(o.options)
		}
		answers[n] = d.j.answer(v)
	}
	matters = map[string]bool{}
	stride := 1
	for _, o := range all {
		for n := range answers {
			if pick := n / stride % len(o.options); o.missing && pick > 0 && answers[n] != answers[n-pick*stride] {
				matters[o.name] = true
				break
			}
		}
		stride *= len(o.options)
	}
	return matters, true
}

// kindOfName is the kind of a fact by its name, or that of its particular.
func kindOfName(name string, x *vehicle.Particular) string {
	if x != nil {
		return kindWords[x.Kind]
	}
	for _, words := range judgeGivenWords {
		if strings.HasPrefix(name+" ", words[0]+" ") {
			return words[1]
		}
	}
	return ""
}

// named is which missing facts the engine names, by their names in the world.
func (j *judged) named(w *world) (t quantity.Truth, names map[string]bool) {
	m, c := j.machine(w)
	names = map[string]bool{}
	if t = m.decide(j.node); t != quantity.Open {
		return t, names
	}
	byCell := map[int32]string{}
	for i, ref := range j.given {
		if len(w.given[i]) == 1 {
			byCell[m.refs[ref]] = judgeGivenWords[i][0]
		}
	}
	w.root.cells(c, c.Sheet.Root, "", byCell)
	for _, raw := range m.causesOf(j.node) {
		if raw.kind == Missing {
			names[byCell[raw.cell]] = true
		}
	}
	return t, names
}

// cells says which cell holds which fact.
func (b *block) cells(c *Car, p *vehicle.Part, path string, to map[int32]string) {
	for i, x := range b.of.Particulars {
		to[c.refs[c.bases[p]+particularOffset(x)]] = path + b.of.Particulars[i].Name
	}
	for i := range b.lists {
		for k, of := range b.lists[i].of {
			name := of.of.Name
			if of.of.Repeats() {
				name = fmt.Sprintf("%s %d", name, k+1)
			}
			of.cells(c, p.Lists[i].Parts[k], path+name+".", to)
		}
	}
}

// TestJudgeMissing holds which missing particulars are named against all completions of
// small worlds: those that can alone change the answer, and no others.
func TestJudgeMissing(t *testing.T) {
	t.Parallel()
	s := sit(t)
	s.draws(500, func(r *rand.Rand, seed uint64) {
		formula := smallFormula(r, 1+r.IntN(3))
		j, faults := newJudged(formula)
		require.Empty(s, faults, formula)
		d := &drawer{Rand: r, j: j, vague: true, full: true}
		w := d.world()
		for i, l := range w.root.lists { // whether a part is fitted is no particular
			if l.says == unsaid {
				w.root.lists[i].says = absent
			}
		}
		answer, named := j.named(w)
		if answer != quantity.Open {
			s.count("decided")
			return
		}
		matters, ok := d.whatMatters(w)
		switch {
		case !ok:
			s.count("with too many completions to go through")
			return
		case len(matters) == 0 && len(named) == 0:
			s.count("open by tolerance or by what is not there alone")
			return
		}
		if strings.Contains(formula, " matches ") || strings.Contains(formula, " startsWith ") {
			// Two patterns may exclude each other, which the engine cannot know.
			for name := range matters {
				if !named[name] {
					s.fail("seed %d\nformula: %s\nworld:\n%v%s is not named", seed, formula, w, name)
				}
			}
			s.count("open, gone through for what is left out")
			return
		}
		if len(matters) == 0 {
			s.count("open, though nothing that was gone through makes a difference")
			return
		}
		s.count("open, gone through")
		if !maps.Equal(named, matters) {
			s.fail("seed %d\nformula: %s\nworld:\n%vnamed %v, but what can change the answer is %v", seed, formula, w,
				slices.Sorted(maps.Keys(named)), slices.Sorted(maps.Keys(matters)))
		}
	})
}
