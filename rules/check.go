package rules

import (
	"fmt"
	"slices"
	"unicode/utf8"

	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/parser"
	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
)

// Check reads a formula and returns its tree, every name, kind and dimension settled. All
// its faults are returned, each at its place: in the file by position, or in the formula
// itself (file name "formula") when position is nil. want says what the formula must
// yield; of it the zero value takes anything, a list without Item any list, and a number
// is compared by dimension. The tree is nil when there is a fault.
func Check(source string, position *vehicle.PositionMap, scope *Scope, want Type) (Node, hcl.Diagnostics) {
	tree, faults := CheckText(source, scope, want)
	return tree, diagnostics(source, position, faults)
}

// CheckText is Check with the faults as they are found, placed in the formula.
func CheckText(source string, scope *Scope, want Type) (Node, []Fault) {
	if faults := guardText(source); faults != nil {
		return nil, faults
	}
	c := checker{source: source, scope: scope, runes: utf8.RuneCountInString(source)}
	c.tokens = scan(source, make([]token, 0, min(len(source)/3+4, 64)))
	if faults := guard(source, c.tokens); faults != nil {
		return nil, faults
	}
	read, err := parser.ParseWithConfig(source, scope.names.parse)
	if err != nil {
		return nil, c.rewordSyntax(err)
	}
	tree := c.check(read.Node)
	if tree != nil && len(c.faults) == 0 {
		tree = c.wanted(tree, want)
	}
	if tree != nil && c.chained && c.isUnrolledTooFar(tree) {
		c.faults = append(c.faults, c.tooLarge())
	}
	if tree != nil && len(c.faults) == 0 && !scope.quick {
		c.secondReading(read)
	}
	if len(c.faults) > 0 {
		return nil, inOrder(c.faults)
	}
	if tree == nil {
		// A term that has a fault of its own was used; that fault is told there.
		return nil, nil
	}
	return tree, nil
}

// isUnrolledTooFar reports whether a tree grows beyond measure where the middles of chains
// such as 1 < x < 3, which stand in it twice, hold chains themselves: whoever walks the
// tree would walk the innermost two to the power of their depth times.
func (c *checker) isUnrolledTooFar(tree Node) bool {
	visits, most := 0, 4*c.scope.names.parts
	Inspect(tree, func(n Node) bool {
		visits++
		_, mention := n.(*Mention)
		return !mention && visits <= most
	})
	return visits > most
}

// inOrder sorts faults by place and drops what is told twice.
func inOrder(faults []Fault) []Fault {
	slices.SortStableFunc(faults, func(a, b Fault) int { return a.At.From - b.At.From })
	return slices.Compact(faults)
}

// checker walks one formula.
type checker struct {
	source   string
	runes    int
	tokens   []token
	scope    *Scope
	faults   []Fault
	locals   []*Binding // names of the lets around the place, innermost last
	elements []*Binding // members of the list functions around it, innermost last
	exact    []exactConstant
	repeated ast.Node // the middle of 1 < x < 3, which expr's tree holds twice,
	again    Node     // and what it was checked to
	chained  bool     // there is such a middle
}

// fault notes a fault and returns nil, the node of something that cannot be used.
func (c *checker) fault(code vehicle.Code, at Span, advice, found string, values ...any) Node {
	c.faults = append(c.faults, Fault{code, at, fmt.Sprintf(found, values...), advice})
	return nil
}

// check turns a node of expr's tree into a node of ours, nil when it has a fault. What is
// read without being a value of its own, such as a place, is a fault.
func (c *checker) check(n ast.Node) Node {
	of := c.node(n)
	if of != nil && !isValue(of) {
		return c.notValue(of.(*Read))
	}
	return of
}

// node is check for who can do with what is no value of its own.
func (c *checker) node(n ast.Node) Node {
	switch n := n.(type) {
	case *ast.IdentifierNode:
		return c.name(n)
	case *ast.IntegerNode:
		return c.literal(c.spanOf(n), true)
	case *ast.FloatNode:
		return c.literal(c.spanOf(n), false)
	case *ast.BoolNode:
		return &Constant{Base: Base{c.spanOf(n), Type{Kind: Truth}}, Truth: n.Value}
	case *ast.StringNode:
		return &Constant{Base: Base{c.spanOf(n), Type{Kind: Text}}, Text: vehicle.FoldText(n.Value)}
	case *ast.UnaryNode:
		return c.unary(n)
	case *ast.BinaryNode:
		return c.binary(n)
	case *ast.MemberNode:
		return c.member(n)
	case *ast.CallNode:
		return c.call(n)
	case *ast.BuiltinNode:
		return c.function(n.Name, c.spanOf(n), n.Arguments)
	case *ast.PointerNode:
		return c.pointer(n)
	case *ast.ConditionalNode:
		return c.conditional(n)
	case *ast.VariableDeclaratorNode:
		return c.let(n)
	case *ast.ArrayNode:
		return c.items(n)
	}
	return c.refusedNode(n)
}
