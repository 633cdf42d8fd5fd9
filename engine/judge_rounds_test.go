package engine

import (
	flags "flag"
	"math/rand/v2"
	"testing"
	"time"
)

var rounds = flags.Int("rounds", 1, "how many times over the judges draw; 100 makes their draws in full")

// firstSeed is the seed of the first draw of every judge; each round has the next one.
const firstSeed = 20270314

// A sitting of a judge makes draws, keeps count and says in the end what it did.
type sitting struct {
	*testing.T
	counts  map[string]int
	order   []string
	started time.Time
}

func sit(t *testing.T) *sitting {
	t.Helper()
	return &sitting{T: t, counts: map[string]int{}, started: time.Now()}
}

// count counts one more of something.
func (s *sitting) count(what string) {
	if _, known := s.counts[what]; !known {
		s.order = append(s.order, what)
	}
	s.counts[what]++
}

// draws calls draw so many times a round. Each draw has a seed of its own, told to draw, by
// which it can be made again.
func (s *sitting) draws(perRound int, draw func(r *rand.Rand, seed uint64)) {
	s.Helper()
	s.drawsInAll(perRound**rounds, draw)
}

// longDraws is draws for one that goes through every day of ten years: one in five rounds.
func (s *sitting) longDraws(draw func(r *rand.Rand, seed uint64)) {
	s.Helper()
	s.drawsInAll((*rounds+4)/5, draw)
}

func (s *sitting) drawsInAll(draws int, draw func(r *rand.Rand, seed uint64)) {
	s.Helper()
	for i := range draws {
		seed := uint64(firstSeed + i)
		draw(rand.New(rand.NewPCG(seed, 7)), seed)
		if s.Failed() && s.counts["failures"] >= 3 {
			break
		}
	}
	s.tell(draws)
}

// tell prints what the judge did.
func (s *sitting) tell(draws int) {
	s.Helper()
	s.Logf("%d draws, seeds from %d, %.1f s", draws, firstSeed, time.Since(s.started).Seconds())
	for _, what := range s.order {
		s.Logf("%8d %s", s.counts[what], what)
	}
}

// fail reports a failure; draws stop after the third.
func (s *sitting) fail(format string, values ...any) {
	s.Helper()
	s.count("failures")
	s.Errorf(format, values...)
}
