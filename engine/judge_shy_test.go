package engine

import (
	"math"
	"math/rand/v2"
	"testing"

	"gapsheet/vehicle/quantity"
)

// shyLimit is how many answers of a hundred may be open though every exact car that is
// looked at gets the same one.
const shyLimit = 1.0

// combinationsLooked bounds the exact cars that are gone through one by one.
const combinationsLooked = 1500

// agreed looks at exact cars that agree with w: at corners, then finer, at all combinations
// where they are few. It returns the answer that they all get, open where two differ or one
// gets none.
func (tr *trial) agreed(w *world) quantity.Truth {
	first := quantity.Open
	same := func(t quantity.Truth) bool {
		if t == quantity.Open || first != quantity.Open && t != first {
			return false
		}
		first = t
		return true
	}
	for range 5 { // each time other parts that nobody had spoken of, and other numbers between
		v := w.clone()
		tr.completeLists(v.root)
		corners := tr.poker(v, false)
		for i := range 20 {
			if !same(corners.answer(tr.choosing(i))) {
				return quantity.Open
			}
		}
		finer := tr.poker(v, true)
		n := finer.combinations(combinationsLooked)
		for i := range n {
			t := quantity.Open
			if n < combinationsLooked {
				t = finer.number(i)
			} else {
				t = finer.answer(tr.IntN)
			}
			if !same(t) {
				return quantity.Open
			}
		}
	}
	return first
}

// choosing picks the low corners, the high corners, and then any.
func (tr *trial) choosing(which int) choosing {
	switch which {
	case 0:
		return func(int) int { return 0 }
	case 1:
		return func(n int) int { return min(1, n-1) }
	}
	return tr.IntN
}

// shy reports whether an open answer could have been a yes or no.
func (tr *trial) shy(w *world) string {
	if tr.j.asks || tr.j.answer(w) != quantity.Open {
		return ""
	}
	if t := tr.agreed(w); t != quantity.Open {
		return "the answer is open, though every exact car gets " + t.String()
	}
	return ""
}

// TestJudgeShyness counts answers that are open though every exact car gets the same one.
func TestJudgeShyness(t *testing.T) {
	t.Parallel()
	s := sit(t)
	answers := 0
	var seen []func() string
	s.draws(120, func(r *rand.Rand, seed uint64) {
		tr := s.drawTrial(r, seed)
		tr.full = true // what may be true of parts that nobody has spoken of is open by rule
		for range 2 {
			w := tr.world()
			answers++
			if tr.j.answer(w) != quantity.Open {
				continue
			}
			s.count("answers that are open")
			if tr.j.asks {
				s.count("of them about what is recorded, which no exact car answers")
			}
			if found := tr.shy(w); found != "" {
				s.count("of them shy")
				seen = append(seen, func() string { return tr.shrunk(w, (*trial).shy) })
			}
		}
	})
	rate := 100 * float64(s.counts["of them shy"]) / float64(answers)
	s.Logf("%.2f of 100 answers are shy", rate)
	// Of few answers more than the limit may be shy by chance: three standard deviations.
	allowed := shyLimit
	if *rounds < 100 {
		allowed += 300 * math.Sqrt(shyLimit/100/float64(answers))
	}
	if rate > allowed {
		for _, tell := range seen[:min(5, len(seen))] {
			s.fail("%s", tell())
		}
		s.fail("more than %.1f of 100", allowed)
	}
}
