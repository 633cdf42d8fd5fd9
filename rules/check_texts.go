package rules

import (
	"errors"
	"fmt"
	"regexp"
	"regexp/syntax"
	"strings"

	"github.com/expr-lang/expr/ast"

	"gapsheet/vehicle"
)

// textTests are the tests of a text by their word.
var textTests = map[string]TextTestKind{"contains": Contains, "startsWith": StartsWith, "endsWith": EndsWith, "matches": Matches}

// textTest checks contains, startsWith, endsWith and matches.
func (c *checker) textTest(n *ast.BinaryNode) Node {
	if c.afterNot(n) {
		return nil
	}
	of, right := c.check(n.Left), c.check(n.Right)
	if of == nil || right == nil {
		return nil
	}
	k, ok := right.(*Constant)
	if !ok || k.Is.Kind != Text {
		return c.fault(CodeFormulaKind, right.Span(), "Write a text between quotes.", "%s is not a text written out, and %s looks only for such.", c.quote(right.Span()), n.Operator)
	}
	test := &TextTest{Base: Base{c.join(of.Span(), c.spanOf(n), k.At), Type{Kind: Truth}}, Test: textTests[n.Operator], Of: of, Text: k.Text}
	if test.Test == Matches {
		test.Text = n.Right.(*ast.StringNode).Value
		pattern, err := regexp.Compile("(?i:" + test.Text + ")")
		if err != nil {
			return c.fault(CodeFormulaPattern, k.At, "Check its brackets, stars and backslashes.", "%s is not a pattern: %s.", c.quote(k.At), patternFault(err))
		}
		test.Pattern = pattern
	}
	switch of.Type().Kind {
	case Text:
		return test
	case Choice:
		return c.chosenByText(test)
	}
	advice := "Only a text or a choice is looked into."
	if of.Type().Kind == List {
		advice = fmt.Sprintf("For a member of a list write %s in %s.", c.code(k.At), c.code(of.Span()))
	}
	return c.fault(CodeFormulaKind, of.Span(), advice, "%s is %s.", c.quote(of.Span()), of.Type())
}

// patternFault is what is wrong with a pattern, in a few words.
func patternFault(err error) string {
	var found *syntax.Error
	if errors.As(err, &found) {
		return found.Code.String()
	}
	return "it cannot be read"
}

// chosenByText turns a text test of a choice into the list of the choices that pass it:
// which ones do is known before any car is read.
func (c *checker) chosenByText(test *TextTest) Node {
	is := test.Of.Type()
	list := &Items{Base: Base{test.At, Type{Kind: List, Item: &is}}}
	for i, choice := range is.Choices.Choices {
		if test.Passes(vehicle.FoldText(choice.Value)) {
			list.Of = append(list.Of, &Constant{Base: Base{test.At, is}, Choice: i})
		}
	}
	if len(list.Of) == 0 {
		return c.fault(CodeFormulaChoice, test.At, c.choiceAdvice(test.Text, is.Choices), "None of the choices of %s passes this.", c.quote(test.Of.Span()))
	}
	return &Within{Base{test.At, Type{Kind: Truth}}, test.Of, list}
}

// Passes reports whether a text, folded by vehicle.FoldText, passes the test.
func (t *TextTest) Passes(folded string) bool {
	switch t.Test {
	case Contains:
		return strings.Contains(folded, t.Text)
	case StartsWith:
		return strings.HasPrefix(folded, t.Text)
	case EndsWith:
		return strings.HasSuffix(folded, t.Text)
	}
	return t.Pattern.MatchString(folded)
}
