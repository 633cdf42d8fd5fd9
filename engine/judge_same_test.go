package engine

import (
	"math/rand/v2"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// givens are the names handed in as a caller would hand them in.
func (w *world) givens() []Given {
	all := judgeGiven()
	for i := range all {
		g, facts := &all[i], w.given[i]
		switch {
		case g.Is.Kind == rules.List:
			for k := range g.list {
				g.list[k].cell = facts[k].cell(g.list[k].cell, nil)
			}
		case g.Is.Kind == rules.Text && facts[0].state == vehicle.Stated:
			*g = GivenText(g.Name, facts[0].text)
		default:
			g.cell = facts[0].cell(g.cell, nil)
		}
	}
	return all
}

// A told is all that a bench tells of a formula.
type told struct {
	answer  Answer
	working *Working
}

// TestJudgeSame holds that the same input gets the same answer, causes and working: twice,
// on a bench made anew, and on one bench from several goroutines at once.
func TestJudgeSame(t *testing.T) {
	t.Parallel()
	s := sit(t)
	s.draws(30, func(r *rand.Rand, seed uint64) {
		p, j := s.drawJudged(r)
		d := &drawer{Rand: r, j: j, vague: true}
		w := d.world()
		given := w.givens()
		bench := func() *Bench {
			program, faults := Compile(&rules.Rulebook{Vocabulary: judgeVocabulary(), Tables: judgeTables()})
			require.Empty(s, faults)
			sheet := w.sheet()
			c := program.Car(sheet)
			c.label(w.root, sheet.Root)
			return NewBench(program, c, w.on)
		}
		try := func(b *Bench) told {
			answer, working, err := b.Try(j.tree, p.String(), given, true)
			if err != nil {
				panic(err)
			}
			return told{answer, working}
		}
		one := bench()
		first := try(one)
		others := make([]told, 4)
		var wait sync.WaitGroup
		for i := range others {
			wait.Go(func() { others[i] = try(one) })
		}
		wait.Wait()
		for _, other := range append(others, try(one)) {
			require.Equal(s, first, other, report(seed, p, w, ""))
		}
		again := try(bench())
		require.Equal(s, first.working, again.working, report(seed, p, w, ""))
		require.Equal(s, first.answer.Missing, again.answer.Missing, report(seed, p, w, ""))
		require.Equal(s, j.answer(w), first.answer.Truth, report(seed, p, w, "")+"by its own machine, and on a bench")
		s.count("formulas told seven times over")
		if first.answer.Truth == quantity.Open {
			s.count("of them open, with causes")
			require.NotEmpty(s, first.answer.Causes, report(seed, p, w, "no cause is told"))
		}
	})
}
