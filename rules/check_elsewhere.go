package rules

import (
	"fmt"
	"strings"

	"github.com/expr-lang/expr/ast"

	"gapsheet/vehicle"
)

// Parts that belong to others are often written by their own name alone. These say how such
// a part is written in full.

// typesNamed is the types of parts of any depth with a name as their singular or plural.
func (c *checker) typesNamed(name string) []*vehicle.PartType {
	if c.scope.names.vocabulary == nil {
		return nil
	}
	return typesBelow(c.scope.names.vocabulary.Root, name, nil)
}

func typesBelow(of *vehicle.PartType, name string, found []*vehicle.PartType) []*vehicle.PartType {
	for _, t := range of.Parts {
		if t.Name == name || t.Repeats() && t.Plural == name {
			found = append(found, t)
		}
		found = typesBelow(t, name, found)
	}
	return found
}

// pathTo is how a part is written in full, given how it is written after what it belongs to:
// from a variable that stands for that, else from the car. It is "" where a variable has
// taken a name on the way.
func (c *checker) pathTo(t *vehicle.PartType, written string) string {
	for of := t.Within; of != nil && of.Within != nil; of = of.Within {
		if name := c.variableFor(of); name != "" {
			return name + "." + written
		}
		step := of.Name
		if of.Repeats() {
			step = fmt.Sprintf("%s['%s']", of.Name, exampleLabel(of))
		}
		written = step + "." + written
	}
	if name, _, _ := strings.Cut(written, "."); c.isShadowed(strings.SplitN(name, "[", 2)[0]) {
		return ""
	}
	return written
}

// variableFor is the name of a variable that stands for a part of a type, "" for none.
func (c *checker) variableFor(t *vehicle.PartType) string {
	for _, b := range c.scope.variables {
		if b.Is.Kind == Part && b.Is.PartType == t {
			return b.Name
		}
	}
	return ""
}

// exampleLabel is a label that a part of a type can have.
func exampleLabel(t *vehicle.PartType) string {
	if t.Labels != nil && len(t.Labels.Choices) > 0 {
		return t.Labels.Choices[0].Value
	}
	return "…"
}

// inFull is how parts with a name are written in full; "" where there are none, or where a
// variable is in the way.
func (c *checker) inFull(name string) string {
	var paths []string
	for _, t := range c.typesNamed(name) {
		written := name
		if t.Repeats() && t.Name == name {
			written = fmt.Sprintf("%s['%s']", name, exampleLabel(t))
		}
		if path := c.pathTo(t, written); path != "" {
			paths = append(paths, path)
		}
	}
	if len(paths) == 0 {
		return ""
	}
	return listOf(paths, "or")
}

// pickedElsewhere notes the fault of a label behind a name that does not stand for parts
// where it is written, and returns whether it did.
func (c *checker) pickedElsewhere(n *ast.MemberNode) bool {
	label, ok := n.Property.(*ast.StringNode)
	if !ok {
		return false
	}
	if base, ok := n.Node.(*ast.IdentifierNode); ok && !c.isShadowed(base.Value) {
		if paths := c.labelled(base.Value, label); paths != "" {
			c.fault(CodeFormulaName, c.spanOf(base), fmt.Sprintf("Write %s.", paths), "%s does not say what it belongs to.", quoteCode(base.Value))
			return true
		}
	}
	return c.check(n.Node) == nil
}

// labelled is how the parts with a name and a label are written in full, "" where there are
// none.
func (c *checker) labelled(name string, label *ast.StringNode) string {
	var paths []string
	for _, t := range c.typesNamed(name) {
		if path := c.pathTo(t, fmt.Sprintf("%s[%s]", t.Name, c.code(c.spanOf(label)))); path != "" && t.Repeats() {
			paths = append(paths, path)
		}
	}
	if len(paths) == 0 {
		return ""
	}
	return listOf(paths, "or")
}

// labelInRound notes the fault of a label in round brackets, cage.joint('A'), and returns
// whether it was one.
func (c *checker) labelInRound(name string, at Span, arguments []ast.Node) bool {
	if len(arguments) != 1 {
		return false
	}
	label, ok := arguments[0].(*ast.StringNode)
	if !ok {
		return false
	}
	paths := c.labelled(name, label)
	if paths == "" {
		return false
	}
	c.fault(CodeFormulaPart, at, fmt.Sprintf("Write %s.", paths), "A label stands in square brackets.")
	return true
}

// choiceMeant says how tubes of a kind are asked for, where a name is one of the choices of
// what a tube is for: main_hoop; else "".
func (c *checker) choiceMeant(name string) string {
	for _, t := range c.typesNamed("tube") {
		part := t.Particular("part")
		if !isTube(t) || part == nil || part.Choices == nil {
			continue
		}
		if i := part.Choices.Find(strings.ReplaceAll(name, "_", " ")); i >= 0 {
			if list := c.pathTo(t, t.Plural); list != "" {
				value := part.Choices.Choices[i].Value
				return fmt.Sprintf("Write '%s' to compare with, or ask the tubes: any(%s, .part == '%s' and …).", value, list, value)
			}
		}
	}
	return ""
}
