package rules

import (
	"fmt"
	"math/big"
	"slices"
	"sync"

	"github.com/expr-lang/expr/ast"

	"gapsheet/vehicle/quantity"
)

// name checks a name that stands by itself.
func (c *checker) name(n *ast.IdentifierNode) Node {
	at := c.spanOf(n)
	if v, found := c.variable(n.Value, at); found {
		return v
	}
	switch n.Value {
	case "on":
		return &Moment{Base{at, Type{Kind: Date}}, On}
	case "pi":
		return c.pi(at)
	case "event":
		return c.fault(CodeFormulaPart, at, "Write event.inspection_day, event.first_day or event.last_day.", "An event is not a value by itself.")
	case "table":
		return c.fault(CodeFormulaPart, at, "Write the table's name after it: table.hoop_sizes.", "\"table\" alone does not say which table.")
	}
	if t := c.scope.names.terms[n.Value]; t != nil {
		return c.mention(t, at)
	}
	if t, plural := c.scope.root(n.Value); t != nil {
		return c.part(nil, t, plural, at)
	}
	if u := unitNames()[n.Value]; u != nil {
		return &Constant{Base: Base{at, u.is}, Number: u.si, Unit: u.unit}
	}
	return c.unknownName(n.Value, at)
}

// variable looks a name up among what the formula and its clause have named, and what was
// handed in. Found is true without a node where the variable itself has a fault.
func (c *checker) variable(name string, at Span) (n Node, found bool) {
	for _, b := range slices.Backward(c.locals) {
		if b.Name == name {
			return variableOf(b, at), true
		}
	}
	for i, g := range c.scope.given {
		if g.Name == name {
			return &Given{Base{at, g.Is}, name, i}, true
		}
	}
	if b := c.scope.Binding(name); b != nil {
		return variableOf(b, at), true
	}
	return nil, false
}

// variableOf is a reading of a binding; nil where the binding's value has a fault, which
// was told where it is named.
func variableOf(b *Binding, at Span) Node {
	if b.Is.Kind == 0 {
		return nil
	}
	return &Variable{Base{at, b.Is}, b}
}

// isShadowed reports whether a name has been given to something else than what it usually
// means.
func (c *checker) isShadowed(name string) bool {
	_, found := c.variable(name, Span{})
	return found
}

// halfTurn is pi as the units of quantity have it: 180 degrees.
var halfTurn = sync.OnceValue(func() *big.Rat {
	degree, err := quantity.FindUnit("deg")
	if err != nil {
		panic("rules: no degree among the units")
	}
	return new(big.Rat).Mul(degree.Factor(), big.NewRat(180, 1))
})

// pi is the plain number.
func (c *checker) pi(at Span) Node {
	value, _ := halfTurn().Float64()
	k := &Constant{Base: Base{at, Type{Kind: Number}}, Number: value, Decimals: -1}
	c.exact = append(c.exact, exactConstant{of: k, number: halfTurn()})
	return k
}

// mention checks the use of a term without a given.
func (c *checker) mention(t *Term, at Span) Node {
	if t.Given != nil {
		return c.fault(CodeFormulaArguments, at, fmt.Sprintf("Write %s(%s).", t.Name, t.Given.Name),
			"The term %s is worked out for one part, and none is named.", quoteCode(t.Name))
	}
	if t.Means == nil || t.Means.Tree == nil {
		return nil
	}
	return &Mention{Base: Base{at, t.Means.Tree.Type()}, Term: t, Body: t.Means.Tree}
}
