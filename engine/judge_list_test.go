package engine

import (
	"math"
	"math/rand/v2"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// A listed is a case of the list of formulas that must not be left open.
type listed struct {
	title, formula string
	given          []Given
	want           quantity.Truth
}

// readList reads the list.
func readList(t *testing.T) []listed {
	t.Helper()
	data, err := os.ReadFile("testdata/shyness.txt")
	require.NoError(t, err)
	var all []listed
	for text := range strings.SplitSeq(strings.TrimSpace(string(data)), "\n\n") {
		if strings.HasPrefix(text, "#") {
			continue
		}
		lines := strings.Split(text, "\n")
		require.Greater(t, len(lines), 3, text)
		for i := range lines {
			lines[i] = strings.TrimSpace(lines[i])
		}
		x := listed{title: lines[0], formula: lines[1]}
		for _, line := range lines[2 : len(lines)-1] {
			name, what, ok := strings.Cut(line, " = ")
			require.True(t, ok, line)
			x.given = append(x.given, listGiven(t, name, what))
		}
		switch lines[len(lines)-1] {
		case "yes":
			x.want = quantity.Yes
		case "no":
			x.want = quantity.No
		default:
			require.Fail(t, "no answer", text)
		}
		all = append(all, x)
	}
	return all
}

// listGiven reads what the list says of one name.
func listGiven(t *testing.T, name, what string) Given {
	t.Helper()
	if kind, missing := strings.CutPrefix(what, "missing "); missing {
		g, err := GivenMissing(name, kind)
		require.NoError(t, err)
		return g
	}
	return given(t, name, what)[0]
}

// exactly is a value that agrees with what is given of a name.
func (g Given) exactly(r *rand.Rand, limits []float64) Given {
	c := &g.cell
	c.flags = mayHold | written
	switch c.kind {
	case holdsTruth:
		if c.set == bitNo|bitYes {
			c.set = truthBit(r.IntN(2) == 0)
		}
	case holdsText:
		if g.text == "" {
			g.text = []string{"open", "historic", "8853-2016", "8853/98", "ts-0417", "else"}[r.IntN(6)]
		}
	default:
		low, high := c.low, c.high
		if math.IsInf(high-low, 1) {
			low, high = max(low, -100), min(high, 3000)
		}
		v := []float64{low, high, low + (high-low)*r.Float64()}[r.IntN(3)]
		if len(limits) > 0 && r.IntN(2) == 0 {
			if near := around(limits[r.IntN(len(limits))]); c.low < c.high {
				v = min(max(near[r.IntN(len(near))], low), high)
			}
		}
		if c.whole() {
			v = float64(int(v))
		}
		c.low, c.high = v, v
	}
	return g
}

// TestJudgeShynessList holds that no formula of the list is left open, that most of them
// take more than one walk, and that exact cars by chance agree with the answer.
func TestJudgeShynessList(t *testing.T) {
	list := readList(t)
	require.GreaterOrEqual(t, len(list), 40)
	settled, cars := 0, 0
	r := rand.New(rand.NewPCG(firstSeed, 3))
	for _, x := range list {
		a, err := try(x.formula, x.given...)
		require.NoError(t, err, x.title)
		require.Equal(t, x.want, a.Truth, "%s: %s", x.title, x.formula)
		tree, faults := CheckGiven(x.formula, EmptyScope(), x.given)
		require.Empty(t, faults)
		var limits []float64
		for n := range rules.Walk(tree) {
			if c, ok := n.(*rules.Constant); ok && c.Is.Kind == rules.Number {
				limits = append(limits, c.Number)
			}
		}
		if !decidedAtOnce(t, x.formula, x.given) {
			settled++
		}
		for range 40 + *rounds {
			exact := make([]Given, len(x.given))
			for i, g := range x.given {
				exact[i] = g.exactly(r, limits)
			}
			a, err := try(x.formula, exact...)
			require.NoError(t, err, x.title)
			require.Equal(t, x.want, a.Truth, "%s: %s with %+v", x.title, x.formula, exact)
			cars++
		}
	}
	require.Greater(t, settled, len(list)/2)
	t.Logf("%d formulas, none open; %d of them had to be settled; %d exact cars agree", len(list), settled, cars)
}

// decidedAtOnce reports whether one walk over the ranges decides a formula.
func decidedAtOnce(t *testing.T, formula string, given []Given) bool {
	made, m := onEmptyBench(t, formula, given)
	return made.truth(m) != quantity.Open
}

// onEmptyBench is a formula compiled with names handed in alone, and a machine for it.
func onEmptyBench(t *testing.T, formula string, given []Given) (truthNode, *machine) {
	t.Helper()
	tree, faults := CheckGiven(formula, EmptyScope(), given)
	require.Empty(t, faults, formula)
	g := EmptyBench(0).ground()
	c := &compiler{ground: g, names: map[*rules.Binding]meaning{}}
	for _, x := range given {
		c.given = append(c.given, g.lay(x))
	}
	made := c.truth(tree)
	return made, &machine{cells: g.cells, refs: g.refs, lists: g.lists, texts: g.texts, slots: make([]slot, c.most), limit: stepLimit}
}
