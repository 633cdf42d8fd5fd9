package rules

import (
	"fmt"
	"slices"
	"testing"
	"unicode"
	"unicode/utf8"

	"github.com/expr-lang/expr/file"
	"github.com/expr-lang/expr/parser/lexer"
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
	for _, x := range placeFormulas {
		f.Add(x.source)
	}
	for _, x := range faultyPlaces {
		f.Add(x.source)
	}
	for _, source := range []string{"(((((", "a ? b : c ? d", "é\u0301 > 3*mm", "\x00", "'\\x41", "`", "/*", "#", "1..", "let", "[[[[1]]]]", "x|y|z()", "#and", "x > 0be.", "0 in.0.", "any(list, #0"} {
		f.Add(source)
	}
	scope := fuzzScope()
	f.Fuzz(func(t *testing.T, source string) {
		requireSameBrackets(t, source)
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

// requireSameBrackets holds that the scan that guards expr's parser sees the brackets, signs
// and numbers that expr's lexer sees, wherever that can read the text at all.
func requireSameBrackets(t *testing.T, source string) {
	t.Helper()
	theirs, err := lexer.Lex(file.NewSource(source))
	if err != nil || !utf8.ValidString(source) {
		return
	}
	var expected, found []string
	for _, token := range theirs {
		switch {
		case token.Kind == lexer.Bracket, token.Kind == lexer.Number, token.Kind == lexer.Operator && token.Value != "#":
			expected = append(expected, fmt.Sprint(token.From, token.Value))
		}
	}
	tokens := scan(source, nil)
	for i, token := range tokens {
		text := source[token.start:token.end]
		if token.kind == tokenWord && i > 0 && source[tokens[i-1].start] == '#' && tokens[i-1].end == token.start {
			continue // #not is a name
		}
		switch {
		case token.kind == tokenOpen, token.kind == tokenClose, token.kind == tokenNumber, token.kind == tokenOperator && text != "#",
			token.kind == tokenWord && slices.Contains(lexerWords, text):
			found = append(found, fmt.Sprint(token.at.From, text))
		}
	}
	require.Equal(t, expected, found)
}

// lexerWords is the words that are operators to expr's lexer.
var lexerWords = []string{"not", "in", "or", "and", "matches", "contains", "startsWith", "endsWith", "let", "if", "else"}

func requireInside(t *testing.T, at Span, runes int) {
	t.Helper()
	require.True(t, 0 <= at.From && at.From <= at.To && at.To <= runes, "%v in %d runes", at, runes)
}

// fuzzScope is a scope without terms, whose bodies would have places in another text.
func fuzzScope() *Scope {
	scope := testScope()
	tube := Type{Kind: Part, PartType: scope.names.vocabulary.Root.PartNamed("cage").PartNamed("tube")}
	return withPlaces(scope.With(&Binding{Name: "tube", Is: tube}).WithGiven(testGiven()...))
}
