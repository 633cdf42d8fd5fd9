package rules

import (
	"fmt"
	"strings"

	"github.com/expr-lang/expr/ast"

	"gapsheet/vehicle"
)

// pick checks harness['driver'].
func (c *checker) pick(n *ast.MemberNode) Node {
	of, t, known := c.picked(n.Node)
	if t == nil {
		if known || c.pickedVariable(n) || c.pickedElsewhere(n) {
			return nil
		}
		return c.refused("index", c.toClosing(c.startOf(n.Node), n.Location().From))
	}
	at := c.toClosing(c.startOf(n.Node), n.Location().From)
	name := Span{at.From, max(at.From, n.Location().From)}
	written := strings.TrimSpace(c.code(name))
	if !t.Repeats() {
		return c.fault(CodeFormulaPart, at, fmt.Sprintf("Write %s.", written), "A car has one %s only, so it has no label.", quoteCode(spoken(t.Name)))
	}
	label, ok := n.Property.(*ast.StringNode)
	if !ok {
		return c.fault(CodeFormulaRefused, at, "Name one by its label between quotes, as in harness['driver'].", "Parts are not numbered, they have labels.")
	}
	if strings.HasSuffix(written, t.Plural) {
		return c.fault(CodeFormulaPart, at, fmt.Sprintf("Write the singular: %s%s[%s].", strings.TrimSuffix(written, t.Plural), t.Name, c.code(c.spanOf(label))), "%s is the list of all.", quoteCode(written))
	}
	folded, ok := c.labelOf(t, label.Value, c.spanOf(label))
	if !ok {
		return nil
	}
	return &Pick{Base{at, Type{Kind: Part, PartType: t}}, of, t, folded}
}

// pickedVariable refuses a label behind the name of a variable that stands for one part,
// and returns whether it did.
func (c *checker) pickedVariable(n *ast.MemberNode) bool {
	name, ok := n.Node.(*ast.IdentifierNode)
	if !ok {
		return false
	}
	of, _ := c.variable(name.Value, c.spanOf(name))
	if of == nil || of.Type().Kind != Part {
		return false
	}
	advice := "Choose it with where, or give the variable another name."
	if label, ok := n.Property.(*ast.StringNode); ok {
		t := of.Type().PartType
		if path := c.pathTo(t, fmt.Sprintf("%s[%s]", t.Name, c.code(c.spanOf(label)))); path != "" {
			advice = fmt.Sprintf("For the one with that label write %s; else choose it with where.", path)
		}
	}
	c.fault(CodeFormulaPart, c.toClosing(c.spanOf(name).From, n.Location().From), advice,
		"%s stands for one %s at a time here, so it has no label.", quoteCode(name.Value), spoken(of.Type().PartType.Name))
	return true
}

// picked finds the type of parts that stands before ['label']. known is true where a fault
// has been noted already.
func (c *checker) picked(n ast.Node) (of Node, t *vehicle.PartType, known bool) {
	switch n := n.(type) {
	case *ast.IdentifierNode:
		if !c.isShadowed(n.Value) {
			t, _ = c.scope.root(n.Value)
		}
	case *ast.MemberNode:
		property, ok := n.Property.(*ast.StringNode)
		if !ok || c.is(c.tokenFrom(n.Location().From), "[") {
			return nil, nil, false
		}
		if base, ok := n.Node.(*ast.IdentifierNode); ok && (base.Value == "table" || base.Value == "event") && !c.isShadowed(base.Value) {
			return nil, nil, false
		}
		if of = c.check(n.Node); of == nil {
			return nil, nil, true
		}
		if of.Type().Kind == Part {
			t, _ = within(of.Type().PartType, property.Value)
		}
	}
	return of, t, false
}

// startOf is where the text of a node begins, by its leftmost piece.
func (c *checker) startOf(n ast.Node) int {
	for {
		from := c.spanOf(n).From
		piped := c.is(c.tokenFrom(from)-1, "|")
		switch inner := n.(type) {
		case *ast.MemberNode:
			n = inner.Node
		case *ast.BuiltinNode:
			if !piped || len(inner.Arguments) == 0 {
				return from
			}
			n = inner.Arguments[0]
		case *ast.CallNode:
			if !piped || len(inner.Arguments) == 0 {
				return from
			}
			n = inner.Arguments[0]
		default:
			return from
		}
	}
}

// labelOf folds a label and checks it against those a type of parts can have.
func (c *checker) labelOf(t *vehicle.PartType, label string, at Span) (string, bool) {
	folded := vehicle.FoldText(label)
	if t.Labels == nil {
		return folded, true
	}
	if i := t.Labels.Find(folded); i >= 0 {
		return vehicle.FoldText(t.Labels.Choices[i].Value), true
	}
	c.fault(CodeFormulaLabel, at, c.choiceAdvice(label, t.Labels), "No %s is called %s.", spoken(t.Name), vehicle.Quote(label))
	return "", false
}

// asLabel checks a text written out that is compared with the name of a part, such as
// harness.seat == 'driver': a label that no such part can have would turn the rule off. It
// returns nil after noting a fault.
func (c *checker) asLabel(n, other Node) Node {
	read, ok := other.(*Read)
	k, written := n.(*Constant)
	if !ok || !written || read.Particular.Names == nil {
		return n
	}
	label, ok := c.labelOf(read.Particular.Names, k.Text, k.At)
	if !ok {
		return nil
	}
	named := *k
	named.Text = label
	return &named
}
