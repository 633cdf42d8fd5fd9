package rules

import (
	"fmt"
	"strings"

	"github.com/expr-lang/expr/ast"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// senses are the comparisons by their sign.
var senses = map[string]Comparison{"==": Equal, "!=": NotEqual, "<": Less, "<=": AtMost, ">": More, ">=": AtLeast}

// comparison checks a == b and its kin. The middle of 1 < x < 3 stands twice in expr's
// tree and is checked once.
func (c *checker) comparison(n *ast.BinaryNode) Node {
	if n.Left != c.repeated && c.afterNot(n) {
		return nil
	}
	left := c.leftOf(n)
	right := c.node(n.Right)
	c.repeated, c.again = n.Right, right
	if left == nil || right == nil {
		return nil
	}
	at := c.join(left.Span(), c.spanOf(n), right.Span())
	if !isValue(left) || !isValue(right) {
		return c.comparedPlaces(at, left, right)
	}
	for _, side := range []Node{left, right} {
		if kind := side.Type().Kind; kind == Part || kind == Row || kind == List {
			return c.fault(CodeFormulaKind, at, "Compare particulars of it, or ask the members of a list.", "%s is %s, and that is not compared as a whole.", c.quote(side.Span()), side.Type())
		}
	}
	left, right, ok := c.alike(left, right, at, "compared")
	if !ok {
		return nil
	}
	sense := senses[n.Operator]
	switch left.Type().Kind {
	case Text, Choice, Truth:
		if sense != Equal && sense != NotEqual {
			return c.fault(CodeFormulaKind, at, "Only == and != compare them; for several values write in [...].", "%s is %s, which is neither more nor less than another.", c.quote(left.Span()), left.Type())
		}
	}
	return &Compare{Base{at, Type{Kind: Truth}}, sense, left, right}
}

// leftOf checks the left side of a comparison, or takes it over from the comparison
// before it in a chain.
func (c *checker) leftOf(n *ast.BinaryNode) Node {
	if n.Left == c.repeated && c.repeated != nil {
		c.chained = true
		return c.again
	}
	return c.node(n.Left)
}

// afterNot refuses not a == b, which means (not a) == b, and returns whether it did.
func (c *checker) afterNot(n *ast.BinaryNode) bool {
	not, ok := n.Left.(*ast.UnaryNode)
	if !ok || not.Operator != "not" && not.Operator != "!" {
		return false
	}
	sign, by := c.spanOf(not), c.spanOf(n)
	if sign.From >= c.startOf(not.Node) || c.widenLeft(sign.From, by.From) < sign.From {
		return false // a not in b; (not a) == b
	}
	c.check(not.Node)
	end, advice := by.To, "Put the comparison in brackets: not (a == b)."
	right := c.check(n.Right)
	if c.repeated, c.again = n.Right, right; right != nil {
		end = c.widenRight(right.Span().To, by.From)
		advice = fmt.Sprintf("Write %s (%s).", c.code(sign), strings.TrimSpace(c.code(Span{sign.To, end})))
	}
	c.fault(CodeFormulaNot, Span{sign.From, end}, advice, "%s turns only what follows it at once, not the whole comparison.", c.quote(sign))
	return true
}

// alike brings two values that are to be compared or chosen between to one type: a bare
// zero takes the other's dimension, a text written out becomes one of the other's choices.
// done is what was to be done with them, for the message.
func (c *checker) alike(left, right Node, at Span, done string) (Node, Node, bool) {
	l, r := left.Type(), right.Type()
	if l.Kind == Number && r.Kind == Number {
		switch {
		case l.Dimension == r.Dimension:
		case isBareZero(left):
			left = zeroOf(left, r)
		case isBareZero(right):
			right = zeroOf(right, l)
		default:
			c.mixed(at, left, right, done)
			return nil, nil, false
		}
		return left, right, true
	}
	if l.Kind == Choice && r.Kind == Text {
		right = c.asChoice(right, l.Choices, left.Span())
		return left, right, right != nil
	}
	if l.Kind == Text && r.Kind == Text {
		named, other := c.asLabel(left, right), c.asLabel(right, left)
		return named, other, named != nil && other != nil
	}
	if l.Kind == Text && r.Kind == Choice {
		left = c.asChoice(left, r.Choices, right.Span())
		return left, right, left != nil
	}
	if l.Kind != r.Kind {
		c.differentKinds(at, left, right, done)
		return nil, nil, false
	}
	if l.Kind == Choice && l.Choices != r.Choices || l.Kind == Part && l.PartType != r.PartType || l.Kind == Row && l.Table != r.Table ||
		l.Kind == List && !sameType(*l.Item, *r.Item) {
		c.fault(CodeFormulaKind, at, "Compare each with a value written out.", "%s and %s are taken from different lists.", c.quote(left.Span()), c.quote(right.Span()))
		return nil, nil, false
	}
	return left, right, true
}

// sameType reports whether two types are one but for being a count.
func sameType(a, b Type) bool {
	if a.Kind == List && b.Kind == List {
		return sameType(*a.Item, *b.Item)
	}
	a.Whole, b.Whole, a.Item, b.Item = false, false, nil, nil
	return a == b
}

// isBareZero reports whether a node is 0 without a unit.
func isBareZero(n Node) bool {
	k, ok := n.(*Constant)
	return ok && k.Is.Kind == Number && k.Number == 0 && k.Is.Dimension.IsNone() && k.Unit == (quantity.Unit{})
}

// zeroOf is a bare zero with another's dimension.
func zeroOf(n Node, is Type) Node {
	k := *n.(*Constant)
	k.Is = Type{Kind: Number, Dimension: is.Dimension}
	return &k
}

// differentKinds is the fault of a date that is compared with a number and the like.
func (c *checker) differentKinds(at Span, left, right Node, done string) {
	advice := "Only values of one kind can be " + done + "."
	for _, pair := range [2][2]Node{{left, right}, {right, left}} {
		if k, ok := pair[0].(*Constant); ok && (k.Is.Kind == Text || k.Is.Kind == Number && pair[1].Type().Kind == Date) {
			advice = c.meantFor(k, pair[1])
		}
	}
	c.fault(CodeFormulaKind, at, advice, "%s is %s, %s is %s.", c.quote(left.Span()), left.Type(), c.quote(right.Span()), right.Type())
}

// meantFor says how a value written out would be written to go with another value.
func (c *checker) meantFor(k *Constant, other Node) string {
	switch kind := other.Type().Kind; {
	case kind == Date && k.Is.Kind == Number:
		return fmt.Sprintf("Write a day, as in date('2027-01-01'), or compare the year: year_of(%s).", c.code(other.Span()))
	case kind == Date:
		if days, fault := quantity.ParseDays(k.Text); fault == nil && days.Precision == quantity.ToDay {
			return fmt.Sprintf("Write date(%s).", c.code(k.At))
		}
		return "Write a day, as in date('2027-01-01')."
	case kind == Truth:
		return "Write true or false without quotes."
	}
	if figure, fault := quantity.ParseFigure(k.Text); fault == nil && figure.Range.IsExact() && figure.Unit.Formula() != "" {
		return fmt.Sprintf("Write %s*%s.", quantity.FormatNumber(figure.Reading, figure.Unit, figure.Decimals), figure.Unit.Formula())
	}
	return "Write a number without quotes, with its unit: 45*mm."
}

// asChoice makes of a text written out (or of two behind a condition) one of the choices
// that list holds for what stands at of; nil after noting a fault.
func (c *checker) asChoice(n Node, list *vehicle.ChoiceList, of Span) Node {
	switch n := n.(type) {
	case *Constant:
		if i := list.Find(n.Text); i >= 0 {
			return &Constant{Base: Base{n.At, Type{Kind: Choice, Choices: list}}, Choice: i}
		}
		return c.fault(CodeFormulaChoice, n.At, c.choiceAdvice(n.Text, list), "%s is not one of the choices of %s.", c.quote(n.At), c.quote(of))
	case *Conditional:
		then, otherwise := c.asChoice(n.Then, list, of), c.asChoice(n.Else, list, of)
		if then == nil || otherwise == nil {
			return nil
		}
		return &Conditional{Base{n.At, then.Type()}, n.If, then, otherwise}
	}
	return c.fault(CodeFormulaKind, n.Span(), "Compare it with one of the choices written out between quotes.", "%s is a free text, but %s is a choice from a list.", c.quote(n.Span()), c.quote(of))
}

// choiceAdvice names the nearest choice, or the choices.
func (c *checker) choiceAdvice(text string, list *vehicle.ChoiceList) string {
	var values, spellings []string
	for _, choice := range list.Choices {
		values = append(values, "'"+choice.Value+"'")
		spellings = append(append(spellings, choice.Value), choice.Synonyms...)
	}
	if near := vehicle.Nearest(text, spellings); near != "" {
		return fmt.Sprintf("Did you mean '%s'?", list.Choices[list.Find(near)].Value)
	}
	if len(values) > 8 {
		return fmt.Sprintf("There are %s and %d more.", strings.Join(values[:8], ", "), len(values)-8)
	}
	return "It can be " + listOf(values, "or") + "."
}
