package rules

import (
	"testing"
	"unicode"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
)

// FuzzCheck holds of any text: no panic; a tree or at least one fault, never both; places
// inside the formula; messages that a terminal can print; and that our own walk never lets
// through what expr's checker refuses.
func FuzzCheck(f *testing.F) {
	for _, x := range soundFormulas {
		f.Add(x.source)
	}
	for _, x := range faultyFormulas {
		f.Add(x.source)
	}
	for _, source := range []string{"(((((", "a ? b : c ? d", "é\u0301 > 3*mm", "\x00", "'\\x41", "`", "/*", "#", "1..", "let", "[[[[1]]]]", "x|y|z()"} {
		f.Add(source)
	}
	scope := fuzzScope()
	f.Fuzz(func(t *testing.T, source string) {
		tree, faults := CheckText(source, scope, Type{})
		require.NotEqual(t, tree == nil, len(faults) == 0, "a tree or faults")
		runes := utf8.RuneCountInString(source)
		for _, fault := range faults {
			requireInside(t, fault.At, runes)
			require.NotEqual(t, CodeFormulaSecond, fault.Code, fault.Detail())
			require.NotEmpty(t, fault.Summary())
			require.NotEmpty(t, fault.Advice)
			for _, r := range fault.Detail() {
				require.True(t, unicode.IsPrint(r), "%q in a message", r)
			}
		}
		if tree == nil {
			return
		}
		for n := range Walk(tree) {
			requireInside(t, n.Span(), runes)
			require.NotZero(t, n.Type().Kind)
		}
		again, _ := CheckText(source, scope, Type{})
		require.Equal(t, shape(tree), shape(again), "the same formula, the same tree")
	})
}

func requireInside(t *testing.T, at Span, runes int) {
	t.Helper()
	require.True(t, 0 <= at.From && at.From <= at.To && at.To <= runes, "%v in %d runes", at, runes)
}

// fuzzScope is a scope without terms, whose bodies would have places in another text.
func fuzzScope() *Scope {
	scope := testScope()
	tube := Type{Kind: Part, PartType: scope.names.vocabulary.Root.PartNamed("cage").PartNamed("tube")}
	return scope.With(&Binding{Name: "tube", Is: tube}).WithGiven(testGiven()...)
}
