package engine

import (
	"math/rand/v2"
	"testing"

	"gapsheet/vehicle/quantity"
)

// shyLimit is how many answers of a hundred may be open though every exact car that is
// looked at gets the same one.
const shyLimit = 1.0

// agreed looks at exact cars that agree with w: at corners, then finer, then at all
// combinations where they are few. It returns the answer that they all get, open where two
// differ or one gets none.
func (tr *trial) agreed(w *world) quantity.Truth {
	first := quantity.Open
	same := func(c *world) bool {
		t := tr.j.answer(c)
		if t == quantity.Open || first != quantity.Open && t != first {
			return false
		}
		first = t
		return true
	}
	for i := range 12 {
		if !same(tr.corner(w, i)) {
			return quantity.Open
		}
	}
	for range 60 {
		if !same(tr.sample(w)) {
			return quantity.Open
		}
	}
	for range 6 { // each time other parts that nobody had spoken of, and other numbers between
		if !tr.everyCombination(w, same) {
			return quantity.Open
		}
	}
	for range 600 {
		if !same(tr.complete(w, true, func(n int) int { return max(tr.IntN(n), tr.IntN(n)) })) {
			return quantity.Open
		}
	}
	return first
}

// combinationsLooked bounds the exact cars that are gone through one by one.
const combinationsLooked = 400

// everyCombination goes through all combinations of what each fact may be, or through a
// sample of them where they are many.
func (tr *trial) everyCombination(w *world, same func(*world) bool) bool {
	total := 1
	tr.complete(w, true, func(n int) int {
		total = min(total*n, 1<<20)
		return 0
	})
	if total > combinationsLooked {
		for range combinationsLooked / 4 {
			if !same(tr.sample(w)) {
				return false
			}
		}
		return true
	}
	for k := range total {
		rest := k
		c := tr.complete(w, true, func(n int) int {
			pick := rest % n
			rest /= n
			return pick
		})
		if !same(c) {
			return false
		}
	}
	return true
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
	s.draws(600, func(r *rand.Rand, seed uint64) {
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
	if rate > shyLimit {
		for _, tell := range seen[:min(5, len(seen))] {
			s.fail("%s", tell())
		}
		s.fail("more than %.0f of 100", shyLimit)
	}
}
