package rules

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/expr-lang/expr/ast"

	"gapsheet/vehicle/quantity"
)

// literal checks a number written out.
func (c *checker) literal(at Span, whole bool) Node {
	text := c.text(at)
	k := &Constant{Base: Base{at, Type{Kind: Number, Whole: whole}}}
	if !whole {
		k.Decimals = decimalsOf(text)
	}
	// The guards have let only decimal numbers through, none beyond a float64.
	k.Number, _ = strconv.ParseFloat(strings.ReplaceAll(text, "_", ""), 64)
	return k
}

// unary checks -x, +x, not x and x not in y.
func (c *checker) unary(n *ast.UnaryNode) Node {
	by := c.spanOf(n)
	of := c.check(n.Node)
	if of == nil {
		return nil
	}
	from := min(by.From, of.Span().From)
	at := Span{from, c.widenRight(of.Span().To, by.From)}
	if n.Operator == "not" || n.Operator == "!" {
		if of.Type().Kind != Truth {
			return c.fault(CodeFormulaKind, of.Span(), "Compare it with something, as in x >= 2*mm.", "%s is %s, and only yes or no can be turned around.", c.quote(of.Span()), of.Type())
		}
		return &Not{Base{at, Type{Kind: Truth}}, of}
	}
	if of.Type().Kind != Number {
		return c.fault(CodeFormulaKind, of.Span(), "Take the sign away.", "%s is %s, and only a number can have a sign.", c.quote(of.Span()), of.Type())
	}
	if n.Operator == "+" {
		return of
	}
	if k, ok := of.(*Constant); ok {
		e := c.exactOf(k)
		negated := *k
		negated.At, negated.Number = at, 0-k.Number
		e.of, e.number = &negated, powerOf(e.number, 1)
		e.number.Neg(e.number)
		c.exact = append(c.exact, e)
		return &negated
	}
	return &Negate{Base{at, of.Type()}, of}
}

// binary checks an operator between two values.
func (c *checker) binary(n *ast.BinaryNode) Node {
	switch n.Operator {
	case "and", "&&", "or", "||":
		return c.logic(n)
	case "==", "!=", "<", "<=", ">", ">=":
		return c.comparison(n)
	case "in":
		return c.within(n)
	case "matches", "contains", "startsWith", "endsWith":
		return c.textTest(n)
	case "+", "-", "*", "/":
		return c.arithmetic(n)
	case "**", "^":
		return c.power(n)
	case "??":
		return c.otherwise(n)
	case "..":
		return c.refused("range", c.spanOf(n))
	case "%":
		return c.refused("remainder", c.spanOf(n))
	}
	return c.refused("operator", c.spanOf(n))
}

// arithmetic checks + - * /.
func (c *checker) arithmetic(n *ast.BinaryNode) Node {
	left, right := c.check(n.Left), c.check(n.Right)
	if left == nil || right == nil {
		return nil
	}
	at := c.join(left.Span(), c.spanOf(n), right.Span())
	l, r := left.Type(), right.Type()
	if l.Kind != Number || r.Kind != Number {
		return c.notNumbers(n.Operator, at, left, right)
	}
	operator := n.Operator[0]
	is := Type{Kind: Number, Whole: l.Whole && r.Whole && operator != '/'}
	switch operator {
	case '*':
		is.Dimension = l.Dimension.Times(r.Dimension)
	case '/':
		is.Dimension = l.Dimension.Over(r.Dimension)
	default:
		if is.Dimension = l.Dimension; l.Dimension != r.Dimension {
			return c.mixed(at, left, right, map[byte]string{'+': "added", '-': "subtracted"}[operator])
		}
	}
	if tooManyDimensions(is.Dimension) {
		return c.fault(CodeFormulaDimension, at, "Look for a factor too many.", "%s yields %s, which measures nothing.", c.quote(at), is.Dimension)
	}
	if a, ok := left.(*Constant); ok {
		if b, ok := right.(*Constant); ok {
			return c.fold(operator, a, b, at, is)
		}
	}
	if k, ok := right.(*Constant); ok && operator == '/' && k.Number == 0 {
		return c.fault(CodeFormulaConstant, at, "Write what it should be divided by.", "%s divides by zero.", c.quote(at))
	}
	return &Arithmetic{Base{at, is}, operator, left, right}
}

// tooManyDimensions reports whether a dimension is one that no formula of the trade has.
func tooManyDimensions(d quantity.Dimension) bool {
	for _, e := range [...]int8{d.Length, d.Mass, d.Time, d.Angle, d.Temperature, d.Current} {
		if e > 24 || e < -24 {
			return true
		}
	}
	return false
}

// power checks x**2 and x^2.
func (c *checker) power(n *ast.BinaryNode) Node {
	left, right := c.check(n.Left), c.check(n.Right)
	if left == nil || right == nil {
		return nil
	}
	at := c.join(left.Span(), c.spanOf(n), right.Span())
	if left.Type().Kind != Number || right.Type().Kind != Number {
		return c.notNumbers(n.Operator, at, left, right)
	}
	k, ok := right.(*Constant)
	exponent := 0
	if ok {
		exponent = int(max(-1000, min(1000, k.Number)))
	}
	if !ok || !k.Is.Dimension.IsNone() || float64(exponent) != k.Number {
		advice := "Write a whole number, as in x**2."
		if ok && k.Number == 0.5 {
			advice = fmt.Sprintf("Write sqrt(%s).", c.code(left.Span()))
		}
		return c.fault(CodeFormulaRefused, right.Span(), advice, "%s is not a whole power.", c.quote(right.Span()))
	}
	if exponent < -largestExponent || exponent > largestExponent {
		return c.fault(CodeFormulaConstant, right.Span(), fmt.Sprintf("Powers go from -%d to %d.", largestExponent, largestExponent), "The power %s is out of reach.", c.quote(right.Span()))
	}
	is := Type{Kind: Number, Dimension: left.Type().Dimension.Power(exponent)}
	if tooManyDimensions(is.Dimension) {
		return c.fault(CodeFormulaDimension, at, "Look for a power too high.", "%s yields %s, which measures nothing.", c.quote(at), is.Dimension)
	}
	if of, ok := left.(*Constant); ok {
		return c.foldPower(of, exponent, at, is)
	}
	return &Power{Base{at, is}, left, exponent}
}
