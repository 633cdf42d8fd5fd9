package engine

import (
	"bufio"
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// The outside vectors lie beside the project. Nobody on the project wrote them.
const oracles = "../../shared/oracles"

// eachLine calls visit for each JSON line of a file of outside vectors.
func eachLine(t *testing.T, name string, visit func(line []byte)) {
	t.Helper()
	file, err := os.Open(filepath.Join(oracles, name))
	if err != nil {
		t.Skip("outside vectors not at hand")
	}
	defer file.Close()
	lines := bufio.NewScanner(file)
	lines.Buffer(nil, 1<<20)
	for lines.Scan() {
		visit(lines.Bytes())
	}
	require.NoError(t, lines.Err())
}

// A score counts what became of vectors.
type score struct {
	right   int
	wrong   []string
	skipped map[string]int
}

func (s *score) skip(reason string) {
	if s.skipped == nil {
		s.skipped = map[string]int{}
	}
	s.skipped[reason]++
}

func (s *score) miss(format string, values ...any) {
	s.wrong = append(s.wrong, fmt.Sprintf(format, values...))
}

// report prints the score; no vector may be wrong, and some must have run.
func (s *score) report(t *testing.T, name string) {
	t.Helper()
	t.Logf("%s: run %d, wrong %d", name, s.right+len(s.wrong), len(s.wrong))
	for _, reason := range slices.Sorted(maps.Keys(s.skipped)) {
		t.Logf("%s: skipped %d: %s", name, s.skipped[reason], reason)
	}
	for i, w := range s.wrong {
		if i < 20 {
			t.Error(w)
		}
	}
	require.Empty(t, len(s.wrong))
	require.Positive(t, s.right)
}

// try works out a formula over given values on an empty bench.
func try(formula string, given ...Given) (Answer, error) {
	tree, faults := CheckGiven(formula, EmptyScope(), given)
	if len(faults) > 0 {
		return Answer{}, faults[0]
	}
	a, _, err := EmptyBench(0).Try(tree, formula, given, false)
	return a, err
}

// TestKleeneVectors holds three-valued logic against SQLite, to which NULL is unknown.
// Where SQLite cannot tell, we may only where every completion gives our answer: the
// completions are enumerated over the whole numbers that the vectors use.
func TestKleeneVectors(t *testing.T) {
	var s score
	eachLine(t, "kleene-sqlite/facts.jsonl", func(line []byte) {
		var v struct {
			Expr   string
			Env    map[string]any
			Result string
		}
		require.NoError(t, json.Unmarshal(line, &v))
		a, err := try(v.Expr, kleeneGiven(v.Env)...)
		if err != nil {
			s.miss("%s: %v", v.Expr, err)
			return
		}
		want := map[string]quantity.Truth{"true": quantity.Yes, "false": quantity.No, "unknown": quantity.Open}[v.Result]
		switch {
		case a.Truth == want:
		case want == quantity.Open && completionsAgree(v.Expr, v.Env, a.Truth):
		default:
			s.miss("%s with %v: %v, want %v", v.Expr, v.Env, a.Truth, want)
			return
		}
		s.right++
	})
	s.report(t, "kleene-sqlite")
}

func kleeneGiven(env map[string]any) []Given {
	var given []Given
	for _, name := range slices.Sorted(maps.Keys(env)) {
		switch v := env[name].(type) {
		case bool:
			given = append(given, GivenTruth(name, quantity.TruthOf(v)))
		case float64:
			given = append(given, GivenNumber(name, quantity.Exactly(v), quantity.Plain, true, quantity.Unit{}))
		default:
			kind := "number"
			if name < "x" {
				kind = "truth"
			}
			g, err := GivenMissing(name, kind)
			if err != nil {
				panic(err)
			}
			given = append(given, g)
		}
	}
	return given
}

// completionsAgree fills in what is unknown in every way and reports whether the answer
// is always the same.
func completionsAgree(expr string, env map[string]any, want quantity.Truth) bool {
	for _, name := range slices.Sorted(maps.Keys(env)) {
		if env[name] != nil {
			continue
		}
		values := []any{true, false}
		if name >= "x" {
			values = nil
			for v := -12.0; v <= 12; v += 0.5 {
				values = append(values, v)
			}
		}
		for _, v := range values {
			filled := maps.Clone(env)
			filled[name] = v
			if !completionsAgree(expr, filled, want) {
				return false
			}
		}
		return true
	}
	a, err := try(expr, kleeneGiven(env)...)
	return err == nil && a.Truth == want
}

// TestDecisionModelVectors holds and, or and not against the ternary logic of the OMG
// decision model test kit (Apache-2.0). Its null is our missing truth.
func TestDecisionModelVectors(t *testing.T) {
	var s score
	files, _ := filepath.Glob(filepath.Join(oracles, "dmn-tck", "*.jsonl"))
	if len(files) == 0 {
		t.Skip("outside vectors not at hand")
	}
	type typed struct {
		Type  string
		Value any
	}
	for _, file := range files {
		eachLine(t, filepath.Join("dmn-tck", filepath.Base(file)), func(line []byte) {
			var v struct {
				Expr   string
				Inputs map[string]typed
				Expect typed
				Error  bool
			}
			require.NoError(t, json.Unmarshal(line, &v))
			if strings.ContainsAny(v.Expr, "\"0123456789") || strings.Contains(v.Expr, "=") {
				s.skip("an operand that is no truth, which we refuse")
				return
			}
			given := []Given{GivenTruth("missing_truth", quantity.Open)}
			for _, name := range slices.Sorted(maps.Keys(v.Inputs)) {
				given = append(given, GivenTruth(name, truthOfJSON(v.Inputs[name].Value)))
			}
			formula := strings.ReplaceAll(v.Expr, "null", "missing_truth")
			a, err := try(formula, given...)
			switch {
			case err != nil && v.Error:
				s.right++
			case err != nil:
				s.miss("%s: %v", formula, err)
			case a.Truth != truthOfJSON(v.Expect.Value):
				s.miss("%s with %v: %v, want %v", formula, v.Inputs, a.Truth, v.Expect.Value)
			default:
				s.right++
			}
		})
	}
	s.report(t, "dmn-tck")
}

func truthOfJSON(v any) quantity.Truth {
	if b, ok := v.(bool); ok {
		return quantity.TruthOf(b)
	}
	return quantity.Open
}

// TestExpressionVectors holds values against those that expr's own machine gives. Ours
// must contain them.
func TestExpressionVectors(t *testing.T) {
	whole := func(name string, v float64) Given {
		return GivenNumber(name, quantity.Exactly(v), quantity.Plain, true, quantity.Unit{})
	}
	half := func(name string) Given {
		return GivenNumber(name, quantity.Exactly(0.5), quantity.Plain, false, quantity.Unit{})
	}
	array, err := GivenList("array", []Given{whole("", 1), whole("", 2), whole("", 3), whole("", 4), whole("", 5)})
	require.NoError(t, err)
	given := []Given{
		GivenTruth("ok", quantity.Yes), half("f64"), half("f32"),
		whole("i", 1), whole("i64", 1), whole("i32", 1), array,
	}
	var s score
	eachLine(t, "expr-lang/vm-facts.jsonl", func(line []byte) {
		var v struct {
			Expr, Type string
			Value      any
		}
		require.NoError(t, json.Unmarshal(line, &v))
		tree, faults := CheckGiven(v.Expr, EmptyScope(), given)
		if len(faults) > 0 {
			s.skip("refused: " + faults[0].Summary())
			return
		}
		a, _, err := EmptyBench(0).Try(tree, v.Expr, given, false)
		switch {
		case err != nil:
			s.miss("%s: %v", v.Expr, err)
		case !contains(a, v.Value):
			s.miss("%s: %+v does not contain %v", v.Expr, a, v.Value)
		default:
			s.right++
		}
	})
	s.report(t, "expr-lang")
}

// contains reports whether an answer allows for a value of expr's machine. What is not a
// number there is what may not exist here.
func contains(a Answer, v any) bool {
	switch v := v.(type) {
	case bool:
		return a.Is.Kind == rules.Truth && (a.Truth == quantity.Open || a.Truth == quantity.TruthOf(v))
	case float64:
		return a.Is.Kind == rules.Number && (a.Range.Contains(v) || !a.Known)
	case string:
		if a.Is.Kind == rules.Text {
			return !a.Known || a.Text == strings.ToLower(strings.TrimSpace(v))
		}
		return a.Is.Kind == rules.Number && (!a.Known || math.IsInf(a.Range.Low, 0) || math.IsInf(a.Range.High, 0))
	case []any:
		if len(a.List) != len(v) {
			return false
		}
		for i := range v {
			if !contains(a.List[i], v[i]) {
				return false
			}
		}
		return true
	case nil:
		return !a.Known || a.Is.Kind == rules.Truth && a.Truth == quantity.Open
	}
	return false
}
