package engine

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A frameQuestion is a formula over figures that follow from joints, with its closed form.
type frameQuestion struct {
	formula string
	truth   func(w *frameWorld) (yes, edge bool) // edge: rounding may decide
}

// drawQuestion draws a formula with limits near what the world has.
func drawQuestion(r *rand.Rand, w *frameWorld) frameQuestion {
	one := drawComparison(r, w)
	if r.IntN(2) == 0 {
		return one
	}
	other := drawComparison(r, w)
	word, all := "or", false
	if r.IntN(2) == 0 {
		word, all = "and", true
	}
	return frameQuestion{
		fmt.Sprintf("(%s) %s (%s)", one.formula, word, other.formula),
		func(w *frameWorld) (bool, bool) {
			a, edge := one.truth(w)
			b, also := other.truth(w)
			return all && a && b || !all && (a || b), edge || also
		},
	}
}

// drawComparison compares one figure, or the sum or the greater of two, with a limit.
func drawComparison(r *rand.Rand, w *frameWorld) frameQuestion {
	f := frameFigures[r.IntN(len(frameFigures))]
	formula, value := f.formula, f.value
	if r.IntN(3) == 0 {
		g := frameFigures[r.IntN(len(frameFigures))]
		if g.unit == f.unit {
			formula = fmt.Sprintf("%s + %s", f.formula, g.formula)
			value = func(w *frameWorld) float64 { return f.value(w) + g.value(w) }
			if r.IntN(2) == 0 {
				formula = fmt.Sprintf("max(%s, %s)", f.formula, g.formula)
				value = func(w *frameWorld) float64 { return max(f.value(w), g.value(w)) }
			}
		}
	}
	near := f.inUnit(value(w)) + r.NormFloat64()*map[string]float64{"deg": 0.5, "mm": 6}[f.unit]
	near = math.Round(near*100) / 100
	sense := []string{">=", "<", "<=", ">"}[r.IntN(4)]
	return frameQuestion{
		fmt.Sprintf("%s %s %.2f*%s", formula, sense, near, f.unit),
		func(w *frameWorld) (bool, bool) {
			v := f.inUnit(value(w))
			yes := v >= near
			if sense[0] == '<' {
				yes = v < near
			}
			return yes, math.Abs(v-near) <= 1e-6*max(1, math.Abs(near))
		},
	}
}

// A frameJudge answers formulas over sheets of the built-in vocabulary.
type frameJudge struct {
	scope   *rules.Scope
	program *Program
}

func newFrameJudge(t require.TestingT) *frameJudge {
	p, faults := Compile(&rules.Rulebook{Vocabulary: vehicle.BuiltIn()})
	require.Empty(t, faults)
	return &frameJudge{rules.NewScope(vehicle.BuiltIn()), p}
}

func (j *frameJudge) answer(t require.TestingT, formula string, sheet *vehicle.Sheet) Answer {
	tree, faults := rules.CheckText(formula, j.scope, rules.Type{Kind: rules.Truth})
	require.Empty(t, faults, formula)
	a, _, err := NewBench(j.program, j.program.Car(sheet), 0).Try(tree, formula, nil, false)
	require.NoError(t, err)
	return a
}

// TestJudgeGeometry holds answers over figures that follow from joints, all within their
// tolerances, against closed forms and against exact sheets of the same cage: what is yes or
// no is so in every exact cage, and wider tolerances never turn it round.
func TestJudgeGeometry(t *testing.T) {
	t.Parallel()
	s := sit(t)
	j := newFrameJudge(t)
	s.draws(8, func(r *rand.Rand, seed uint64) {
		w := drawFrame(r)
		sheet := w.sheet(s)
		for range 4 {
			q := drawQuestion(r, w)
			a := j.answer(s, q.formula, sheet)
			s.count("answers that are " + a.Truth.String())
			agree := j.holdExact(s, r, w, q, a.Truth, seed)
			if a.Truth == quantity.Open {
				if agree {
					s.count("open although all exact cages looked at agree")
				}
				continue
			}
			wide := j.answer(s, q.formula, w.wider(3).sheet(s)).Truth
			if wide != quantity.Open && wide != a.Truth {
				s.fail("seed %d: %s is %v, with wider tolerances %v\n%s", seed, q.formula, a.Truth, wide, w.text())
			}
		}
	})
}

// holdExact looks at exact cages of the world. It reports whether all give one answer.
func (j *frameJudge) holdExact(s *sitting, r *rand.Rand, w *frameWorld, q frameQuestion, answer quantity.Truth, seed uint64) bool {
	agree, first := true, quantity.Open
	for i := range 10 {
		exact := w.exactly(r, i < 6)
		yes, edge := q.truth(exact)
		if edge {
			s.count("exact cages where rounding may decide")
			continue
		}
		s.count("exact cages")
		want := quantity.TruthOf(yes)
		if answer != quantity.Open && want != answer {
			s.fail("seed %d: %s is %v, but in an exact cage the closed form says %v\n%s\n%s", seed, q.formula, answer, want, w.text(), exact.text())
		}
		if i%5 == 0 {
			if ours := j.answer(s, q.formula, exact.sheet(s)).Truth; ours != want {
				s.fail("seed %d: %s is %v by the closed form, %v by the program\n%s", seed, q.formula, want, ours, exact.text())
			}
		}
		agree = agree && (first == quantity.Open || first == want)
		first = want
	}
	return agree
}
