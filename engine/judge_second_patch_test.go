package engine

import (
	"math"
	"math/big"
	"slices"
	"strconv"
	"time"

	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/parser"

	"gapsheet/vehicle/quantity"
)

// unitFactors are the units of the model's formulas, as fractions of the SI unit.
var unitFactors = map[string]struct {
	num, denom int64
	dimension  exponents
}{
	"mm": {1, 1000, exponents{1}}, "cm": {1, 100, exponents{1}}, "metre": {1, 1, exponents{1}},
	"inch": {254, 10000, exponents{1}}, "ft": {3048, 10000, exponents{1}}, "thou": {254, 10000000, exponents{1}},
	"kg": {1, 1, exponents{0, 1}}, "gram": {1, 1000, exponents{0, 1}}, "tonne": {1000, 1, exponents{0, 1}}, "lb": {45359237, 100000000, exponents{0, 1}},
	"sq_mm": {1, 1000000, exponents{2}}, "sq_cm": {1, 10000, exponents{2}}, "sq_in": {254 * 254, 100000000, exponents{2}},
}

// writtenOut is a number or unit that is written out.
func writtenOut(r *big.Rat, d exponents, whole bool) *fraction {
	near, _ := r.Float64()
	return &fraction{exact: r, near: near, dimension: d, whole: whole, label: math.NaN(), constant: true}
}

// patcher rewrites expr's tree.
type patcher struct {
	named   []string // names of lets around the place
	unknown []string
}

func (p *patcher) isNamed(name string) bool {
	for _, known := range p.named {
		if known == name {
			return true
		}
	}
	return false
}

func callOf(name string, of ...ast.Node) ast.Node {
	return &ast.CallNode{Callee: &ast.IdentifierNode{Value: name}, Arguments: of}
}

// truths are the particulars of the model that are yes or no.
var truths = []string{"guarded", "hydraulic", "armed", "straight", "damaged"}

// patch rewrites one node and what is below it.
func (p *patcher) patch(n ast.Node) ast.Node {
	switch n := n.(type) {
	case *ast.IdentifierNode:
		return p.identifier(n)
	case *ast.IntegerNode:
		return constant(writtenOut(big.NewRat(int64(n.Value), 1), exponents{}, true))
	case *ast.FloatNode:
		r, _ := new(big.Rat).SetString(strconv.FormatFloat(n.Value, 'g', -1, 64))
		return constant(writtenOut(r, exponents{}, false))
	case *ast.BoolNode, *ast.StringNode, *ast.PointerNode:
		return n
	case *ast.UnaryNode:
		return p.unary(n)
	case *ast.BinaryNode:
		return p.binary(n)
	case *ast.MemberNode:
		if name, ok := n.Property.(*ast.StringNode); ok && slices.Contains(truths, name.Value) {
			return callOf("asTruth", p.read(n))
		}
		return p.read(n)
	case *ast.CallNode:
		return p.call(n)
	case *ast.BuiltinNode:
		return p.builtin(n)
	case *ast.PredicateNode:
		return &ast.PredicateNode{Node: p.patch(n.Node)}
	case *ast.ConditionalNode:
		return &ast.ConditionalNode{Ternary: true, Cond: p.patch(n.Cond), Exp1: p.patch(n.Exp1), Exp2: p.patch(n.Exp2)}
	case *ast.VariableDeclaratorNode:
		value := p.patch(n.Value)
		p.named = append(p.named, n.Name)
		rest := p.patch(n.Expr)
		p.named = p.named[:len(p.named)-1]
		return &ast.VariableDeclaratorNode{Name: n.Name, Value: value, Expr: rest}
	case *ast.ArrayNode:
		return &ast.ArrayNode{Nodes: p.all(n.Nodes)}
	}
	p.unknown = append(p.unknown, n.String())
	return n
}

func (p *patcher) all(of []ast.Node) []ast.Node {
	out := make([]ast.Node, len(of))
	for i, n := range of {
		out[i] = p.patch(n)
	}
	return out
}

func constant(f *fraction) ast.Node { return &ast.ConstantNode{Value: f} }

// constantOf is the fraction of a node that is written out.
func constantOf(n ast.Node) (*fraction, bool) {
	c, ok := n.(*ast.ConstantNode)
	if !ok {
		return nil, false
	}
	f, ok := c.Value.(*fraction)
	return f, ok
}

// identifier puts in units and terms; everything else is read from the world.
func (p *patcher) identifier(n *ast.IdentifierNode) ast.Node {
	if p.isNamed(n.Value) {
		return n
	}
	if n.Value == "deg" {
		u, _ := quantity.FindUnit("deg")
		return constant(writtenOut(u.Factor(), exponents{0, 0, 0, 1}, false))
	}
	if u, ok := unitFactors[n.Value]; ok {
		return constant(writtenOut(big.NewRat(u.num, u.denom), u.dimension, false))
	}
	for _, term := range judgeTermTexts {
		if term.name == n.Value {
			return p.term(term.means)
		}
	}
	return n
}

func (p *patcher) term(means string) ast.Node {
	tree, err := parser.Parse(means)
	if err != nil {
		panic(err)
	}
	return p.patch(tree.Node)
}

func (p *patcher) unary(n *ast.UnaryNode) ast.Node {
	of := p.patch(n.Node)
	if n.Operator == "not" || n.Operator == "!" {
		return &ast.UnaryNode{Operator: "not", Node: of}
	}
	if f, ok := constantOf(of); ok {
		return constant(negateFraction(f))
	}
	return callOf("f_negate", of)
}

func (p *patcher) binary(n *ast.BinaryNode) ast.Node {
	if n.Operator == "??" {
		left, right := p.patch(n.Left), p.patch(n.Right)
		if wrapped, ok := left.(*ast.CallNode); ok && wrapped.Callee.String() == "asTruth" {
			return callOf("asTruth", callOf("otherwise", wrapped.Arguments[0], right))
		}
		return callOf("otherwise", left, right)
	}
	if between, ok := n.Right.(*ast.BinaryNode); ok && between.Operator == ".." {
		of := p.patch(n.Left)
		return &ast.BinaryNode{Operator: "and",
			Left:  callOf("cmp>=", of, p.patch(between.Left)),
			Right: callOf("cmp<=", of, p.patch(between.Right))}
	}
	left, right := p.patch(n.Left), p.patch(n.Right)
	switch n.Operator {
	case "and", "or", "&&", "||":
		return &ast.BinaryNode{Operator: n.Operator, Left: left, Right: right}
	case "==", "!=", "<", "<=", ">", ">=":
		return callOf("cmp"+n.Operator, left, right)
	case "in":
		return callOf("isIn", left, right)
	case "contains", "startsWith", "endsWith", "matches":
		return callOf("t_"+n.Operator, left, right)
	}
	return arithmetic(n.Operator, left, right)
}

// arithmetic is + - * / **; what is written out on both sides is folded exactly.
func arithmetic(operator string, left, right ast.Node) ast.Node {
	a, aok := constantOf(left)
	b, bok := constantOf(right)
	if operator == "**" {
		if aok {
			return constant(powerFraction(a, int(b.near)))
		}
		return callOf("f_power", left, right)
	}
	if aok && bok {
		return constant(fractionFunctions[operator](nil, []*fraction{a, b}))
	}
	return callOf("f_"+operator, left, right)
}

// read is a particular, a part by its label, or a list of a part.
func (p *patcher) read(n *ast.MemberNode) ast.Node {
	of := n.Node
	if base, ok := of.(*ast.IdentifierNode); !ok || p.isNamed(base.Value) {
		of = p.patch(of)
	}
	return callOf("member", of, n.Property)
}

func (p *patcher) call(n *ast.CallNode) ast.Node {
	name := n.Callee.String()
	switch name {
	case "recorded":
		return callOf("isRecorded", p.read(n.Arguments[0].(*ast.MemberNode)))
	case "fitted":
		of := n.Arguments[0]
		if base, ok := of.(*ast.IdentifierNode); ok && base.Value == "tube" {
			return callOf("isFitted", &ast.IdentifierNode{Value: "tubes"})
		}
		return callOf("isFitted", p.patch(of))
	case "earliest":
		name = "min"
	case "latest":
		name = "max"
	case "in_band":
		return callOf("inBand", p.all(n.Arguments)...)
	}
	for _, term := range judgeTermTexts {
		if term.name == name {
			given := p.patch(n.Arguments[0])
			p.named = append(p.named, term.given)
			body := p.term(term.means)
			p.named = p.named[:len(p.named)-1]
			return &ast.VariableDeclaratorNode{Name: term.given, Value: given, Expr: body}
		}
	}
	return callOf("f_"+name, p.all(n.Arguments)...)
}

// builtin keeps expr's own list functions, and turns those on figures into ours.
func (p *patcher) builtin(n *ast.BuiltinNode) ast.Node {
	of := p.all(n.Arguments)
	own := func(name string, of ...ast.Node) ast.Node { return &ast.BuiltinNode{Name: name, Arguments: of} }
	switch n.Name {
	case "all", "any", "none", "one", "filter", "map", "find", "first":
		return own(n.Name, of...)
	case "last": // expr v1.17.8 leaves a value on its stack in findLast: 10 - findLast([3], true) fails
		return own("first", callOf("backwards", of[0]))
	case "findLast":
		return own("find", callOf("backwards", of[0]), of[1])
	case "count":
		if len(of) == 1 {
			return callOf("counted", own("len", callOf("asList", of[0])))
		}
		return callOf("counted", own("count", of...))
	case "len":
		return callOf("counted", own("len", callOf("asList", of[0])))
	case "date":
		day, err := time.Parse(time.DateOnly, n.Arguments[0].(*ast.StringNode).Value)
		if err != nil {
			panic(err)
		}
		return &ast.ConstantNode{Value: dayFraction(ofDay(day), ofDay(day))}
	case "sum":
		if len(of) == 2 {
			return callOf("f_sum", own("map", of...))
		}
	}
	return callOf("f_"+n.Name, of...)
}

// env is an exact world as the machine reads it.
func (w *world) env() map[string]any {
	env := map[string]any{}
	for i, words := range judgeGivenWords {
		values := make([]any, len(w.given[i]))
		for k := range values {
			values[k] = w.given[i][k].env(words[1], exponentsOf(dimensionOfGiven(words[1])), nil)
		}
		if env[words[0]] = values[0]; words[1] == "list" {
			env[words[0]] = values
		}
	}
	w.root.env(env)
	on := dayFraction(float64(w.on), float64(w.on))
	env["on"] = on
	env["event"] = map[string]any{"last_day": on}
	env["table"] = tablesEnv()
	return env
}

func exponentsOf(d quantity.Dimension) exponents {
	return exponents{int(d.Length), int(d.Mass), int(d.Time), int(d.Angle)}
}
