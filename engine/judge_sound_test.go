package engine

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

// A trial is one formula before both judges, with what to draw worlds by.
type trial struct {
	*drawer
	piece  *piece
	second *secondJudge
	seed   uint64
}

// newTrial is nil where the formula does not hold up to the checker.
func newTrial(p *piece, seed uint64) *trial {
	j, faults := newJudged(p.String())
	if len(faults) > 0 {
		return nil
	}
	second, err := newSecondJudge(p.String())
	if err != nil {
		return nil
	}
	return &trial{drawer: &drawer{Rand: rand.New(rand.NewPCG(seed, 11)), j: j, vague: true, drawn: map[quantity.Dimension][]float64{}}, piece: p, second: second, seed: seed}
}

// drawTrial draws a formula and makes a trial of it.
func (s *sitting) drawTrial(r *rand.Rand, seed uint64) *trial {
	p, _ := s.drawJudged(r)
	tr := newTrial(p, seed)
	require.NotNil(s, tr, p.String())
	return tr
}

// exactCars are exact worlds that agree with w: corners, and others.
func (tr *trial) exactCars(w *world, corners, samples int) []*world {
	var all []*world
	for i := range corners {
		all = append(all, tr.corner(w, i))
	}
	for range samples {
		all = append(all, tr.sample(w))
	}
	return all
}

// unsound looks for an exact world that does not get the answer that w has got, and says
// what was found.
func (tr *trial) unsound(w *world, answer quantity.Truth, looked func()) string {
	for _, c := range tr.exactCars(w, 4, 10) {
		v := compareJudges(tr.j, tr.second, c)
		looked()
		yes := answer == quantity.Yes
		switch {
		case v.err != nil:
			return fmt.Sprintf("expr's machine: %v", v.err)
		case v.edge:
		case v.ours != answer, v.yes != yes, v.other != yes:
			return fmt.Sprintf("the answer is %v, but in\n%v it is %v by ours, %v or %v by expr's machine", answer, c, v.ours, v.yes, v.other)
		}
	}
	return ""
}

// shrunk makes a failure small. finding says what is wrong with a trial of a world, "" for
// nothing.
func (tr *trial) shrunk(w *world, finding func(*trial, *world) string) string {
	last := ""
	p, w := shrink(tr.piece, w, func(p *piece, w *world) bool {
		small := newTrial(p, tr.seed)
		if small == nil {
			return false
		}
		found := finding(small, w)
		if found != "" {
			last = found
		}
		return found != ""
	})
	return report(tr.seed, p, w, last)
}

// TestJudgeSoundness holds every yes and no over ranges against exact cars that agree with
// them, by our evaluator and by the second judge.
func TestJudgeSoundness(t *testing.T) {
	t.Parallel()
	s := sit(t)
	finding := func(tr *trial, w *world) string {
		if t := tr.j.answer(w); t != quantity.Open {
			return tr.unsound(w, t, func() {})
		}
		return ""
	}
	s.draws(180, func(r *rand.Rand, seed uint64) {
		tr := s.drawTrial(r, seed)
		for range 2 {
			w := tr.world()
			answer := tr.j.answer(w)
			s.count("answers that are " + answer.String())
			if answer == quantity.Open {
				continue
			}
			if tr.unsound(w, answer, func() { s.count("exact cars") }) != "" {
				s.fail("%s", tr.shrunk(w, finding))
				return
			}
		}
	})
}
