package rules

import (
	"fmt"

	"github.com/expr-lang/expr/ast"
)

// logic checks and, or, && and ||, and makes one node of a row of the same.
func (c *checker) logic(n *ast.BinaryNode) Node {
	all := n.Operator == "and" || n.Operator == "&&"
	left, right := c.truth(n.Left), c.truth(n.Right)
	if left == nil || right == nil {
		return nil
	}
	at := c.join(left.Span(), c.spanOf(n), right.Span())
	row, ok := left.(*Logic)
	if !ok || row.All != all {
		row = &Logic{Base: Base{Is: Type{Kind: Truth}}, All: all, Of: []Node{left}}
	}
	row.At = at
	if more, ok := right.(*Logic); ok && more.All == all {
		row.Of = append(row.Of, more.Of...)
	} else {
		row.Of = append(row.Of, right)
	}
	return row
}

// truth checks something that has to be yes or no.
func (c *checker) truth(n ast.Node) Node {
	of := c.check(n)
	if of == nil || of.Type().Kind == Truth {
		return of
	}
	return c.fault(CodeFormulaKind, of.Span(), "Compare it with something, as in x >= 2*mm.", "%s is %s, where yes or no is wanted.", c.quote(of.Span()), of.Type())
}

// conditional checks a ? b : c and if a { b } else { c }.
func (c *checker) conditional(n *ast.ConditionalNode) Node {
	if n.Cond == n.Exp1 {
		return c.refused("short condition", c.spanOf(n.Cond))
	}
	condition, then, otherwise := c.truth(n.Cond), c.check(n.Exp1), c.check(n.Exp2)
	if condition == nil || then == nil || otherwise == nil {
		return nil
	}
	at := c.join(condition.Span(), Span{From: condition.Span().To}, otherwise.Span())
	if !n.Ternary {
		if i := c.tokenFrom(at.From) - 1; c.is(i, "if") {
			at.From = c.tokens[i].at.From
		}
		if i := c.tokenFrom(at.To); c.is(i, "}") {
			at.To = c.tokens[i].at.To
		}
	}
	then, otherwise, ok := c.alike(then, otherwise, at, "chosen between")
	if !ok {
		return nil
	}
	is := then.Type()
	is.Whole = is.Whole && otherwise.Type().Whole
	return &Conditional{Base{at, is}, condition, then, otherwise}
}

// let checks let name = value; rest.
func (c *checker) let(n *ast.VariableDeclaratorNode) Node {
	at := c.spanOf(n)
	c.letName(n.Name, at)
	value := c.check(n.Value)
	binding := &Binding{Name: n.Name}
	if value != nil {
		binding.Is = value.Type()
	}
	c.locals = append(c.locals, binding)
	rest := c.check(n.Expr)
	c.locals = c.locals[:len(c.locals)-1]
	if value == nil || rest == nil {
		return nil
	}
	from := at.From
	if i := c.tokenFrom(from) - 1; c.is(i, "let") {
		from = c.tokens[i].at.From
	}
	return &Define{Base{Span{from, c.widenRight(rest.Span().To, from)}, rest.Type()}, binding, value, rest}
}

// letName refuses names that mean something already.
func (c *checker) letName(name string, at Span) {
	means := Reserved(name, c.scope.names.vocabulary)
	switch {
	case !nameForm.MatchString(name):
		c.fault(CodeFormulaReserved, at, "Write small letters a to z, digits and underlines, a letter first.", "%s cannot be a name.", quoteCode(name))
		return
	case means != "":
	case c.isShadowed(name):
		means = "a name that is already given here"
	case c.scope.names.terms[name] != nil:
		means = "a term"
	default:
		return
	}
	c.fault(CodeFormulaReserved, at, "Choose another name.", "%s is %s.", quoteCode(name), means)
}

// otherwise checks (x ?? y).
func (c *checker) otherwise(n *ast.BinaryNode) Node {
	left, right := c.check(n.Left), c.check(n.Right)
	if left == nil || right == nil {
		return nil
	}
	at := c.join(left.Span(), c.spanOf(n), right.Span())
	if !c.inBrackets(at) {
		return c.fault(CodeFormulaOtherwise, at, fmt.Sprintf("Write (%s).", c.code(at)), "?? stands without brackets of its own.")
	}
	read, ok := left.(*Read)
	if !ok {
		return c.fault(CodeFormulaOtherwise, left.Span(), "Write a particular that may be \"none\" before it.", "%s is not read from the build sheet, so it is never stated as none.", c.quote(left.Span()))
	}
	if !read.Particular.MayBeAbsent {
		return c.fault(CodeFormulaOtherwise, at, fmt.Sprintf("Write %s alone.", c.code(left.Span())), "%s cannot be stated as none, so what stands behind ?? is never used.", c.quote(left.Span()))
	}
	_, other, ok := c.alike(left, right, at, "taken for each other")
	if !ok {
		return nil
	}
	is := read.Type()
	is.Whole = is.Whole && other.Type().Whole
	return &Otherwise{Base{at, is}, read, other}
}

// wanted checks that the whole formula yields what is wanted.
func (c *checker) wanted(tree Node, want Type) Node {
	is := tree.Type()
	at := Span{0, c.runes}
	if len(c.tokens) > 0 {
		at = Span{c.tokens[0].at.From, c.tokens[len(c.tokens)-1].at.To}
	}
	fits := want.Kind == 0 || is.Kind == want.Kind
	switch {
	case !fits:
	case want.Kind == Number:
		fits = is.Dimension == want.Dimension && (is.Whole || !want.Whole)
	case want.Kind == List && want.Item != nil:
		fits = sameType(*is.Item, *want.Item)
	case want.Kind == Choice:
		fits = want.Choices == nil || is.Choices == want.Choices
	case want.Kind == Part:
		fits = want.PartType == nil || is.PartType == want.PartType
	}
	if fits {
		return tree
	}
	advice := fmt.Sprintf("Write a formula that yields %s.", want)
	if want.Kind == Truth {
		advice = "Write what must hold, with a comparison: x >= 2*mm."
	}
	return c.fault(CodeFormulaResult, at, advice, "The formula yields %s, but %s is wanted here.", is, want)
}
