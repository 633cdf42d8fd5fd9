package rules

import (
	"bufio"
	"encoding/json"
	"maps"
	"os"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

// TestKindsOfExprFacts reads expressions from expr's own test corpora (github.com/expr-lang/expr,
// commit 851b241), each with the value that expr's machine gives. Whatever we let through must
// be of the kind of that value, and expr's checker must let it through as well.
func TestKindsOfExprFacts(t *testing.T) {
	file, err := os.Open("../../shared/oracles/expr-lang/vm-facts.jsonl")
	if err != nil {
		t.Skip("outside vectors not at hand")
	}
	defer file.Close()
	number, count, truth := Type{Kind: Number}, Type{Kind: Number, Whole: true}, Type{Kind: Truth}
	scope := NewScope(&vehicle.Vocabulary{Root: &vehicle.PartType{}}).WithGiven(
		GivenName{"ok", truth}, GivenName{"f64", number}, GivenName{"f32", number}, GivenName{"i", count}, GivenName{"i64", count},
		GivenName{"i32", count}, GivenName{"array", Type{Kind: List, Item: &count}})
	kinds := map[string]TypeKind{"bool": Truth, "int": Number, "int32": Number, "int64": Number, "float32": Number, "float64": Number,
		"[]interface {}": List, "[]int": List, "[]bool": List, "string": Text}
	run, refused := 0, map[vehicle.Code]int{}
	for lines := bufio.NewScanner(file); lines.Scan(); {
		var fact struct{ Expr, Type string }
		require.NoError(t, json.Unmarshal(lines.Bytes(), &fact))
		tree, faults := CheckText(fact.Expr, scope, Type{})
		if tree == nil {
			require.NotEqual(t, CodeFormulaSecond, faults[0].Code, fact.Expr)
			require.NotEqual(t, CodeFormulaName, faults[0].Code, "%s: every name is known", fact.Expr)
			refused[faults[0].Code]++
			continue
		}
		run++
		if fact.Type != "<nil>" { // find in a list without such a member
			require.Equal(t, kinds[fact.Type], tree.Type().Kind, "%s gives %s", fact.Expr, fact.Type)
		}
	}
	t.Logf("let through %d, all of the kind that expr gives", run)
	for _, code := range slices.Sorted(maps.Keys(refused)) {
		t.Logf("refused %d: %s", refused[code], code)
	}
	require.Greater(t, run, 4000)
}
