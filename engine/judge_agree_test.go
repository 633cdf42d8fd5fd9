package engine

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// drawJudged draws a formula that the checker takes. It refuses division by a zero that is
// written out; everything else that is drawn has to be right.
func (s *sitting) drawJudged(r *rand.Rand) (*piece, *judged) {
	for {
		p := drawFormula(r, 1+r.IntN(5))
		j, faults := newJudged(p.String())
		if len(faults) == 0 {
			return p, j
		}
		switch faults[0].Code {
		case rules.CodeFormulaConstant:
			s.count("formulas refused for dividing by a zero that is written out")
		case rules.CodeFormulaDeep:
			s.count("formulas refused for their depth")
		default:
			require.FailNow(s, "refused", "%v\n%v", p, faults[0])
		}
	}
}

// A verdictOfTwo is what the engine and expr's machine make of an exact world.
type verdictOfTwo struct {
	ours       quantity.Truth
	yes, other bool // what expr's machine says with open comparisons taken for yes, and for no
	undefined  bool // a comparison has no answer
	edge       bool // rounding may decide
	err        error
}

// compareJudges works a formula out by both judges.
func compareJudges(j *judged, second *secondJudge, w *world) verdictOfTwo {
	v := verdictOfTwo{ours: j.answer(w)}
	env := w.env()
	var r ruling
	v.yes, r, v.err = second.rule(env, true)
	v.undefined, v.edge = r.undefined, r.edge
	v.other = v.yes
	if v.err == nil && r.undefined {
		v.other, r, v.err = second.rule(env, false)
		v.edge = v.edge || r.edge
	}
	return v
}

// disagreement says what is wrong between the two, "" where nothing is.
func (v verdictOfTwo) disagreement() string {
	switch {
	case v.err != nil:
		return fmt.Sprintf("expr's machine: %v", v.err)
	case v.edge:
		return ""
	case v.ours == quantity.Open && !v.undefined:
		return fmt.Sprintf("ours is open, though nothing lacks; expr's machine says %v", v.yes)
	case v.ours == quantity.Yes && !(v.yes && v.other) || v.ours == quantity.No && (v.yes || v.other):
		return fmt.Sprintf("ours is %v; expr's machine says %v, and with what cannot be compared taken for no, %v", v.ours, v.yes, v.other)
	}
	return ""
}

// TestJudgeSecond holds answers on exact cars against expr's own machine.
func TestJudgeSecond(t *testing.T) {
	s := sit(t)
	s.draws(300, func(r *rand.Rand, seed uint64) {
		p, j := s.drawJudged(r)
		second, err := newSecondJudge(p.String())
		require.NoError(s, err, p.String())
		d := &drawer{Rand: r, j: j}
		for range 3 {
			w := d.world()
			v := compareJudges(j, second, w)
			s.count("compared")
			switch {
			case v.edge:
				s.count("of them where rounding may decide")
			case v.undefined:
				s.count("of them with a comparison that has no answer")
			}
			s.count("of them " + v.ours.String() + " by ours")
			if v.disagreement() != "" {
				p, w, v := shrinkTwo(p, w, verdictOfTwo.disagreement)
				s.fail("%s", report(seed, p, w, v.disagreement()))
				return
			}
		}
	})
}

// shrinkTwo shrinks a disagreement.
func shrinkTwo(p *piece, w *world, wrong func(verdictOfTwo) string) (*piece, *world, verdictOfTwo) {
	compared := func(p *piece, w *world) (v verdictOfTwo, ok bool) {
		tr := newTrial(p, 0)
		if tr == nil {
			return v, false
		}
		return compareJudges(tr.j, tr.second, w), true
	}
	p, w = shrink(p, w, func(p *piece, w *world) bool {
		v, ok := compared(p, w)
		return ok && wrong(v) != ""
	})
	v, _ := compared(p, w)
	return p, w, v
}
