package rules

import (
	"fmt"

	"github.com/expr-lang/expr/ast"
)

// items checks a list written out.
func (c *checker) items(n *ast.ArrayNode) Node {
	at := c.toClosing(c.spanOf(n).From, c.spanOf(n).From)
	list := &Items{}
	failed := false
	for _, member := range n.Nodes {
		of := c.check(member)
		if of == nil {
			failed = true
			continue
		}
		if kind := of.Type().Kind; kind == Part || kind == Row || kind == List {
			c.fault(CodeFormulaKind, of.Span(), "For parts take their list, such as cage.tubes.", "A list written out holds figures, dates, texts or yes and no, but %s is %s.", c.quote(of.Span()), of.Type())
			failed = true
			continue
		}
		list.Of = append(list.Of, of)
	}
	if len(n.Nodes) == 0 {
		return c.fault(CodeFormulaKind, at, "Write at least one member.", "A list without members has no kind.")
	}
	if failed || !c.alikeAll(list.Of, "put in one list") {
		return nil
	}
	is := list.Of[0].Type()
	for _, of := range list.Of {
		is.Whole = is.Whole && of.Type().Whole
	}
	list.Base = Base{at, Type{Kind: List, Item: &is}}
	return list
}

// alikeAll brings the members of a list, or the arguments of min, to one type.
func (c *checker) alikeAll(list []Node, done string) bool {
	lead := 0
	for i, n := range list {
		if n.Type().Kind == Choice || isBareZero(list[lead]) && !isBareZero(n) {
			lead = i
			if n.Type().Kind == Choice {
				break
			}
		}
	}
	for i := range list {
		if i == lead {
			continue
		}
		left, right := list[min(i, lead)], list[max(i, lead)]
		left, right, ok := c.alike(left, right, Span{left.Span().From, right.Span().To}, done)
		if !ok {
			return false
		}
		list[min(i, lead)], list[max(i, lead)] = left, right
	}
	return true
}

// within checks x in [..], x in list and n in a..b.
func (c *checker) within(n *ast.BinaryNode) Node {
	if c.afterNot(n) {
		return nil
	}
	if between, ok := n.Right.(*ast.BinaryNode); ok && between.Operator == ".." {
		return c.between(n, between)
	}
	of, list := c.check(n.Left), c.check(n.Right)
	if of == nil || list == nil {
		return nil
	}
	at := c.join(of.Span(), c.spanOf(n), list.Span())
	if list.Type().Kind != List {
		advice := "Write a list, as in x in ['a', 'b']."
		if kind := list.Type().Kind; kind == Text || kind == Choice {
			advice = fmt.Sprintf("For a piece of a text write %s contains %s.", c.code(list.Span()), c.code(of.Span()))
		}
		return c.fault(CodeFormulaKind, list.Span(), advice, "%s is %s, not a list.", c.quote(list.Span()), list.Type())
	}
	if items, ok := list.(*Items); ok {
		if of, list = c.amongItems(of, items); list == nil {
			return nil
		}
		return &Within{Base{at, Type{Kind: Truth}}, of, list}
	}
	member := *list.Type().Item
	if member.Kind == Part || member.Kind == Row {
		return c.fault(CodeFormulaKind, at, fmt.Sprintf("Write any(%s, …), or in map(%s, …).", c.code(list.Span()), c.code(list.Span())), "%s is %s, and %s is none of those.", c.quote(list.Span()), list.Type(), c.quote(of.Span()))
	}
	of, _, ok := c.alike(of, &Variable{Base: Base{list.Span(), member}}, at, "looked for in each other")
	if !ok {
		return nil
	}
	return &Within{Base{at, Type{Kind: Truth}}, of, list}
}

// amongItems brings a value and the members of a list written out to one type; the list
// is nil after a fault.
func (c *checker) amongItems(of Node, items *Items) (Node, Node) {
	out := &Items{Base: items.Base}
	failed := false
	for _, member := range items.Of {
		like, member, ok := c.alike(of, member, member.Span(), "looked for in each other")
		if !ok {
			failed = true
			if of.Type().Kind != Choice {
				break // each member would be told of again
			}
			continue
		}
		of = like
		out.Of = append(out.Of, member)
	}
	if failed {
		return nil, nil
	}
	is := out.Of[0].Type()
	is.Whole = items.Is.Item.Whole
	out.Is.Item = &is
	return of, out
}

// between checks n in a..b.
func (c *checker) between(n, ends *ast.BinaryNode) Node {
	of, low, high := c.check(n.Left), c.check(ends.Left), c.check(ends.Right)
	if of == nil || low == nil || high == nil {
		return nil
	}
	at := c.join(of.Span(), c.spanOf(n), high.Span())
	for _, side := range []Node{of, low, high} {
		if is := side.Type(); is.Kind != Number || !is.Whole {
			return c.fault(CodeFormulaBetween, at, fmt.Sprintf("Write %s <= %s <= %s.", c.endText(low, of), c.code(of.Span()), c.endText(high, of)),
				"a..b goes by whole counts, but %s is %s.", c.quote(side.Span()), is)
		}
	}
	if l, ok := low.(*Constant); ok {
		if h, ok := high.(*Constant); ok && l.Number > h.Number {
			return c.fault(CodeFormulaBetween, c.join(low.Span(), c.spanOf(ends), high.Span()), "Write the smaller count first.", "No count lies between %s and %s.", c.code(low.Span()), c.code(high.Span()))
		}
	}
	return &CountBetween{Base{at, Type{Kind: Truth}}, of, low, high}
}

// endText is an end of a range as it would be written in a comparison with of.
func (c *checker) endText(end, of Node) string {
	text := c.code(end.Span())
	if of.Type().Kind == Number && !of.Type().Dimension.IsNone() && end.Type().Kind == Number && end.Type().Dimension.IsNone() {
		if unit := c.unitFor(of); unit != "" {
			text += "*" + unit
		}
	}
	return text
}
