package rules

import (
	"fmt"
	"strings"

	"github.com/expr-lang/expr/ast"
)

// call checks f(x) where expr has no function of that name.
func (c *checker) call(n *ast.CallNode) Node {
	name, ok := n.Callee.(*ast.IdentifierNode)
	if !ok {
		at := c.toClosing(c.startOf(n.Callee), c.spanOf(n).To)
		if member, ok := n.Callee.(*ast.MemberNode); ok {
			if of, ok := member.Property.(*ast.StringNode); ok && c.labelInRound(of.Value, at, n.Arguments) {
				return nil
			}
		}
		return c.refused("method", at)
	}
	return c.function(name.Value, c.spanOf(name), n.Arguments)
}

// function checks the call of a function whose name stands at by.
func (c *checker) function(name string, by Span, arguments []ast.Node) Node {
	at := c.toClosing(by.From, by.To)
	if c.is(c.tokenFrom(by.From)-1, "|") && len(arguments) > 0 {
		at.From = min(at.From, c.startOf(arguments[0]))
	}
	if t := c.scope.names.terms[name]; t != nil {
		return c.mentionOf(t, at, arguments)
	}
	if f, ok := listFunctions[name]; ok && (FunctionNamed(name) == nil || len(arguments) == 1) {
		return c.gather(name, f, at, arguments)
	}
	if f := FunctionNamed(name); f != nil {
		return c.scalar(f, at, arguments)
	}
	if check := specialFunction(name); check != nil {
		if wanted := map[bool]int{true: 2, false: 1}[name == "in_band"]; len(arguments) != wanted {
			return c.argumentCount(name, listUsage(name), at, len(arguments))
		}
		return check(c, at, arguments)
	}
	if advice, ok := refusedFunctions[name]; ok {
		return c.fault(CodeFormulaRefused, by, advice, "The function %s is not part of the formula language.", name)
	}
	if c.scope.names.tables[name] != nil {
		return c.fault(CodeFormulaName, by, fmt.Sprintf("Write any(table.%s, …) with what is asked of a row.", name), "%s is a table, not a function.", quoteCode(name))
	}
	if c.labelInRound(name, at, arguments) {
		return nil
	}
	if c.isShadowed(name) {
		return c.fault(CodeFormulaName, by, "Write the operator that is meant before the bracket, such as *.", "%s is a name, not a function.", quoteCode(name))
	}
	known := append(sortedKeys(functionsByName()), sortedKeys(listFunctions)...)
	known = append(append(known, special...), sortedKeys(c.scope.names.terms)...)
	advice := "The reference lists the functions; a unit stands behind a *, as in 45*mm."
	near := nearest(name, known)
	if meant := otherNames[strings.ToLower(name)]; meant != "" {
		near = meant
	}
	if near != "" {
		advice = fmt.Sprintf("Did you mean %s?", near)
	}
	return c.fault(CodeFormulaName, by, advice, "There is no function %s.", quoteCode(name))
}

// otherNames is what functions are called elsewhere.
var otherNames = map[string]string{
	"maximum": "max", "minimum": "min", "average": "mean", "avg": "mean", "total": "sum", "length": "len", "size": "len",
	"every": "all", "some": "any", "exists": "any", "truncate": "floor", "trunc": "floor", "atan": "atan2", "years": "years_after",
	"months": "months_after", "days": "days_after", "year": "year_of", "contains": "contains, between two texts",
	"dist": "distance", "gap": "clearance", "angle": "angle_between", "higher": "above", "ahead": "ahead_of", "touch": "meet", "cross": "meet",
	"below": "above, with the two the other way round", "behind": "ahead_of, with the two the other way round",
}

// argumentCount is the fault of too few or too many arguments.
func (c *checker) argumentCount(name, usage string, at Span, found int) Node {
	many := "arguments"
	if found == 1 {
		many = "argument"
	}
	return c.fault(CodeFormulaArguments, at, fmt.Sprintf("Write %s.", usage), "%s has %d %s here.", name, found, many)
}

// mentionOf checks the use of a term with a given: thick(tube).
func (c *checker) mentionOf(t *Term, at Span, arguments []ast.Node) Node {
	if t.Given == nil {
		return c.fault(CodeFormulaArguments, at, fmt.Sprintf("Write %s alone.", t.Name), "The term %s is not worked out for a part.", quoteCode(t.Name))
	}
	if len(arguments) != 1 {
		return c.argumentCount("The term "+t.Name, fmt.Sprintf("%s(%s)", t.Name, t.Given.Name), at, len(arguments))
	}
	of := c.check(arguments[0])
	if of == nil || t.Given.Is.Kind == 0 {
		return nil
	}
	if is := of.Type(); !sameType(is, t.Given.Is) {
		return c.fault(CodeFormulaKind, of.Span(), fmt.Sprintf("Give it %s.", t.Given.Is), "%s is %s, but the term %s is for %s.", c.quote(of.Span()), is, t.Name, t.Given.Is)
	}
	if t.Means == nil || t.Means.Tree == nil {
		return nil
	}
	return &Mention{Base{at, t.Means.Tree.Type()}, t, of, t.Means.Tree}
}
