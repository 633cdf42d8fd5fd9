package rules

import (
	"fmt"
	"sync"
	"testing"

	"github.com/expr-lang/expr/parser"
	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// TestNamesByWhoGivesThem holds which of two meanings of a name wins: a let's, then one
// handed in from outside, then the clause's, then that of the rulebook, the car, the units.
func TestNamesByWhoGivesThem(t *testing.T) {
	mass := Type{Kind: Number, Dimension: quantity.Mass}
	scope := testScope().WithGiven(GivenName{"mm", mass}, GivenName{"car", mass}, GivenName{"on", mass}, GivenName{"count", mass}, GivenName{"x", mass})
	for source, want := range map[string]string{
		"mm":                           "given 0",
		"car + mm":                     "+(given 1, given 0)",
		"on < count":                   "<(given 2, given 3)",
		"count(cage.tubes, .wall > 0)": "count(filter(cage.tubes, >(#.wall, 0)))",
		"45*cm":                        "45 cm",
	} {
		tree, faults := CheckText(source, scope, Type{})
		require.Empty(t, faults, source)
		require.Equal(t, want, shape(tree))
	}
	tube := &Binding{Name: "seat", Is: Type{Kind: Part, PartType: scope.rootPart(t, "cage").PartNamed("tube")}}
	within := testScope().With(tube)
	tree, faults := CheckText("seat.wall > 0 and all(seats, .made < on)", within, Type{})
	require.Empty(t, faults, "a variable may have the name of one of the car's parts")
	require.Equal(t, "and(>(seat.wall, 0), all(seats, <(#.made, on)))", shape(tree))
	require.Same(t, tube, within.Binding("seat"))
	require.Nil(t, within.Binding("tube"))
	_, faults = CheckText("seat['driver'].made < on", within, Type{})
	require.Len(t, faults, 1)
	require.Contains(t, faults[0].Detail(), "stands for one tube at a time here")
}

// rootPart is a part of the car itself.
func (s *Scope) rootPart(t *testing.T, name string) *vehicle.PartType {
	t.Helper()
	part, _ := s.root(name)
	require.NotNil(t, part)
	return part
}

// TestFaultsAreToldOnce holds that what hangs on something faulty is no fault of its own.
func TestFaultsAreToldOnce(t *testing.T) {
	scope := testScope().With(&Binding{Name: "tube"}).WithTerms(&Term{Name: "broken", Means: &Formula{}}, &Term{Name: "nowhere"})
	for _, source := range []string{"tube.wall > 2", "broken > 3*mm and broken == 'a'", "nowhere or tube.anything.at.all", "all(tube.straps, .width > 'a')"} {
		tree, faults := CheckText(source, scope, Type{Kind: Truth})
		require.Nil(t, tree, source)
		require.Empty(t, faults, source)
	}
	_, faults := CheckText("tube.wall > 2 and car.wall > 2*mm", scope, Type{})
	require.Len(t, faults, 1, "the other fault is told")
}

// TestResults holds what a formula may yield where something certain is wanted.
func TestResults(t *testing.T) {
	scope := clauseScope(t)
	tube := scope.Binding("tube").Is
	length := Type{Kind: Number, Dimension: quantity.Length}
	for _, x := range []struct {
		source string
		want   Type
		fits   bool
	}{
		{"a", Type{Kind: Truth}, true}, {"x", Type{Kind: Truth}, false}, {"x", Type{}, true},
		{"x", length, true}, {"n", length, false}, {"n", Type{Kind: Number}, true}, {"n", Type{Kind: Number, Whole: true}, true},
		{"1.5", Type{Kind: Number, Whole: true}, false},
		{"cage.tubes", Type{Kind: List}, true}, {"cage.tubes", Type{Kind: List, Item: &tube}, true}, {"seats", Type{Kind: List, Item: &tube}, false},
		{"tube", Type{Kind: Part}, true}, {"cage", tube, false}, {"first(cage.tubes)", tube, true},
		{"tube.material", Type{Kind: Choice}, true}, {"on", Type{Kind: Date}, true}, {"tube.part", Type{Kind: Text}, true},
		{"tube.material", Type{Kind: Choice, Choices: &vehicle.ChoiceList{}}, false},
	} {
		tree, faults := CheckText(x.source, scope, x.want)
		require.Equal(t, x.fits, tree != nil, "%s as %s", x.source, x.want)
		if !x.fits {
			require.Equal(t, CodeFormulaResult, faults[0].Code)
		}
	}
}

// TestEveryParticularCanBeRead holds that formulas reach every particular of the built-in
// vocabulary, and that expr's own checker knows each as we do.
func TestEveryParticularCanBeRead(t *testing.T) {
	v := vehicle.BuiltIn()
	scope := NewScope(v)
	read := 0
	var visit func(of *vehicle.PartType, path string)
	visit = func(of *vehicle.PartType, path string) {
		for _, p := range of.Particulars {
			if p.Kind == vehicle.KindSize {
				continue
			}
			source := path + p.Name
			other := source + " == " + source
			switch p.Kind {
			case vehicle.KindPoint:
				other = "distance(" + source + ", cage.joint['1']) > 0"
			case vehicle.KindPartNames:
				other = "true"
			}
			for _, formula := range []string{"recorded(" + source + ")", other} {
				tree, faults := CheckText(formula, scope, Type{Kind: Truth})
				require.Empty(t, faults, formula)
				require.NotNil(t, tree)
			}
			read++
		}
		for _, inner := range of.Parts {
			next := path + inner.Name
			if inner.Repeats() {
				label := "1"
				if inner.Labels != nil {
					label = inner.Labels.Choices[0].Value
				}
				next += fmt.Sprintf("[%q]", label)
				_, faults := CheckText("len("+path+inner.Plural+") >= 0", scope, Type{Kind: Truth})
				require.Empty(t, faults, path+inner.Plural)
			}
			visit(inner, next+".")
		}
	}
	visit(v.Root, "")
	require.Greater(t, read, 400)
}

// TestSecondReading holds that expr's checker does read the formula against the vocabulary:
// what it is given without our own walk before it, it refuses where the kinds are wrong.
func TestSecondReading(t *testing.T) {
	scope := clauseScope(t)
	for source, refused := range map[string]bool{
		"tube.wall > 2*mm": false,
		"tube.wall > 'a'":  true,
		"tube.wal > 2*mm":  true,
		"harness['driver'].made < date('2027-01-01')":    false,
		"harness['driver'].made < 3":                     true,
		"all(cage.tubes, .wall)":                         true,
		"thick(tube) and 3 > 'b'":                        true,
		"days_after(tube.wall, 3) < on":                  true,
		"any(table.hoop_sizes, .material == 3)":          true,
		"any(table.hoop_sizes, .material == 'anything')": false,
		"floor(x, 1*mm) > 3*mm and round(n) in 1..n":     false,
	} {
		tree, err := parser.ParseWithConfig(source, scope.names.parse)
		require.NoError(t, err)
		c := checker{source: source, scope: scope, runes: len(source)}
		c.secondReading(tree)
		require.Equal(t, refused, len(c.faults) == 1, "%s: %v", source, c.faults)
		for _, f := range c.faults {
			require.Equal(t, CodeFormulaSecond, f.Code)
			requireInside(t, f.At, c.runes)
		}
	}
}

// TestOneScopeForMany holds that one scope serves several goroutines.
func TestOneScopeForMany(t *testing.T) {
	scope := clauseScope(t)
	var all sync.WaitGroup
	for range 4 {
		all.Go(func() {
			for _, x := range soundFormulas {
				tree, faults := CheckText(x.source, scope, Type{})
				if len(faults) > 0 || shape(tree) != x.shape {
					t.Errorf("%s became %v, %v", x.source, tree, faults)
				}
			}
		})
	}
	all.Wait()
}

// TestWalk holds that a walk meets every node once, from left to right, and stops when told.
func TestWalk(t *testing.T) {
	tree, faults := CheckText("let k = tube.wall; k > 2*mm and thick(tube)", clauseScope(t), Type{})
	require.Empty(t, faults)
	var met []string
	for n := range Walk(tree) {
		met = append(met, fmt.Sprintf("%T", n)[len("*rules."):])
	}
	require.Equal(t, []string{"Define", "Read", "Variable", "Logic", "Compare", "Variable", "Constant", "Mention", "Variable",
		"Compare", "Read", "Variable", "Mention", "Constant"}, met)
	count := 0
	for range Walk(tree) {
		if count++; count == 3 {
			break
		}
	}
	require.Equal(t, 3, count)
	met = nil
	Inspect(tree, func(n Node) bool {
		met = append(met, fmt.Sprintf("%T", n)[len("*rules."):])
		_, mention := n.(*Mention)
		return !mention
	})
	require.Equal(t, []string{"Define", "Read", "Variable", "Logic", "Compare", "Variable", "Constant", "Mention"}, met)
}

// TestWalkReachesEveryNode holds that no node is left out: the leaves of the sound formulas
// are those that their shapes name.
func TestWalkReachesEveryNode(t *testing.T) {
	scope := clauseScope(t)
	seen := map[string]bool{}
	for _, x := range soundFormulas {
		tree, faults := CheckText(x.source, scope, Type{})
		require.Empty(t, faults)
		for n := range Walk(tree) {
			seen[fmt.Sprintf("%T", n)[len("*rules."):]] = true
		}
	}
	for _, name := range []string{"Constant", "Root", "Pick", "Parts", "Read", "Cell", "Rows", "InBand", "Variable", "Given", "Moment", "Not", "Logic",
		"Compare", "Within", "CountBetween", "TextTest", "Arithmetic", "Negate", "Power", "Conditional", "Otherwise", "Recorded", "Fitted", "Call",
		"Gather", "Filter", "Map", "Items", "Define", "Mention"} {
		require.True(t, seen[name], name)
	}
}

// TestPartsWithoutASheetOrRulebook holds what is told where a formula reads a car and none
// was given.
func TestPartsWithoutASheetOrRulebook(t *testing.T) {
	for _, scope := range []*Scope{NewScope(nil), NewScope(&vehicle.Vocabulary{Root: &vehicle.PartType{}})} {
		for _, source := range []string{"car.weighed_mass > 1000*kg", "any(seats, .made > on)"} {
			_, faults := CheckText(source, scope, Type{})
			require.Len(t, faults, 1, source)
			require.Equal(t, CodeFormulaName, faults[0].Code)
			require.Contains(t, faults[0].Found, "neither a build sheet nor a rulebook was given")
		}
		_, faults := CheckText("metr > 1", scope, Type{})
		require.Len(t, faults, 1)
		require.Equal(t, "Did you mean metre?", faults[0].Advice)
	}
}
