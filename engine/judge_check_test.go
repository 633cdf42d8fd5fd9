package engine

import (
	"fmt"
	"math/rand/v2"
	"regexp"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// A drawnClause is a clause about tubes that is drawn, judged by the whole range, with the
// same as one formula: that some tube is meant and falls short, or that there are too few.
type drawnClause struct {
	applies, where, demand *piece
	atLeast                int
}

// carScope is the model's scope without names handed in, for clauses.
var carScope = sync.OnceValue(func() *rules.Scope { return judgeScope().WithGiven() })

func (c *drawnClause) String() string {
	return fmt.Sprintf("applies  %v\nwhere    %v\ndemand   %v\nat least %d", c.applies, c.where, c.demand, c.atLeast)
}

// gap is the clause as one formula that is yes where it is not met.
func (c *drawnClause) gap() string {
	return fmt.Sprintf("(%v) and (any(tubes, (let subject = #; (%v) and not (%v))) or count(tubes, (let subject = #; %v)) < %d)",
		c.applies, c.where, c.demand, c.where, c.atLeast)
}

// drawClause draws a clause; its formulas read the car alone.
func drawClause(r *rand.Rand) *drawnClause {
	draw := func(depth int, subject bool) *piece {
		g := &growth{Rand: r, names: map[string]string{}, carOnly: true}
		if subject {
			g.names["subject"], g.order = "tube", []string{"subject"}
			g.nested = 1 // as one formula it stands in a list
		}
		return g.piece("truth", depth)
	}
	c := &drawnClause{applies: &piece{form: "true"}, where: draw(1+r.IntN(2), true), demand: draw(1+r.IntN(3), true), atLeast: r.IntN(3)}
	if r.IntN(2) == 0 {
		c.applies = draw(1+r.IntN(2), false)
	}
	return c
}

// compiled makes a program of the clause, nil where the checker refuses one of its formulas.
func (c *drawnClause) compiled() *Program {
	tube := judgeVocabulary().Root.PartNamed("tube")
	binding := &rules.Binding{Name: "subject", Is: rules.Type{Kind: rules.Part, PartType: tube}}
	failed := false
	formula := func(text string, scope *rules.Scope, want rules.TypeKind) *rules.Formula {
		tree, faults := rules.CheckText(text, scope, rules.Type{Kind: want})
		failed = failed || len(faults) > 0
		return &rules.Formula{Source: text, Tree: tree}
	}
	within := carScope().With(binding)
	clause := &rules.Clause{
		Period: rules.Always,
		Number: "1.1", AtLeast: c.atLeast, Judged: rules.Proved,
		Across:  []rules.Across{{Binding: binding, List: formula("tubes", carScope(), rules.List)}},
		Applies: formula(c.applies.String(), carScope(), rules.Truth),
		Where:   formula(c.where.String(), within, rules.Truth),
		Demand:  formula(c.demand.String(), within, rules.Truth),
	}
	if failed {
		return nil
	}
	clause.Chapter = &rules.Chapter{Number: "1", Clauses: []*rules.Clause{clause}}
	p, faults := Compile(&rules.Rulebook{Vocabulary: judgeVocabulary(), Tables: judgeTables(), Chapters: []*rules.Chapter{clause.Chapter}})
	if len(faults) > 0 {
		panic(faults)
	}
	return p
}

// verdict is what the check makes of the clause over a world.
func (c *drawnClause) verdict(p *Program, w *world) Verdict {
	sheet := w.sheet()
	car := p.Car(sheet)
	car.label(w.root, sheet.Root)
	return p.Check(car, Request{Day: w.on}).Chapters[0].Clauses[0].Verdict
}

// wrongVerdict says what is wrong with a verdict, given whether the clause as one formula is
// a gap in an exact car.
func wrongVerdict(v Verdict, gap quantity.Truth) string {
	switch {
	case gap == quantity.Open: // something that is not there is compared
	case (v == Meets || v == DoesNotApply) && gap == quantity.Yes, v == Gap && gap == quantity.No:
		return fmt.Sprintf("the verdict is %v, but as one formula it is %v that it is not met", v, gap)
	}
	return ""
}

// TestJudgeClauses holds verdicts on clauses, over ranges and on exact cars that agree with
// them, against the clause as one formula, worked out on exact cars by both judges.
func TestJudgeClauses(t *testing.T) {
	t.Parallel()
	s := sit(t)
	s.draws(120, func(r *rand.Rand, seed uint64) {
		c := drawClause(r)
		p := c.compiled()
		j, faults := newJudged(c.gap())
		if p == nil || len(faults) > 0 {
			s.count("clauses that the checker refuses")
			return
		}
		second, err := newSecondJudge(c.gap())
		require.NoError(s, err, c.gap())
		d := &drawer{Rand: r, j: j, vague: true}
		for range 2 {
			w := d.world()
			verdict := c.verdict(p, w)
			s.count("verdicts that are " + verdict.String())
			for i := range 6 {
				exact := d.corner(w, i)
				v := compareJudges(j, second, exact)
				require.NoError(s, v.err, c.gap())
				if v.edge {
					continue
				}
				s.count("exact cars")
				gap := v.ours
				if gap != quantity.Open && (v.yes != v.other || v.yes != (gap == quantity.Yes)) {
					s.fail("seed %d\n%v\nworld:\n%vas one formula %v, but %v by expr's machine", seed, c, exact, gap, v.yes)
				}
				found := wrongVerdict(verdict, gap)
				if one := wrongVerdict(c.verdict(p, exact), gap); found == "" && one != "" {
					found = "on the exact car alone: " + one
				}
				if found != "" {
					s.fail("seed %d\n%v\nworld:\n%vexact car:\n%v%s", seed, c, w, exact, found)
					return
				}
			}
		}
	})
	require.Less(t, s.counts["clauses that the checker refuses"], 20**rounds)
}

// handedIn is a name that is handed in, in a form.
var handedIn = regexp.MustCompile(`\b(a|b|c|x|y|z|u|v|p|q|i|j|d|e|s|t|xs)\b`)
