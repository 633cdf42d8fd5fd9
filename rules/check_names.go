package rules

import (
	"fmt"
	"math/big"
	"slices"
	"strings"
	"sync"

	"github.com/expr-lang/expr/ast"

	"gapsheet/vehicle"
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

// unknownName is the fault of a name that means nothing, with the nearest that does.
func (c *checker) unknownName(name string, at Span) Node {
	found := fmt.Sprintf("%s is not the name of anything.", quoteCode(name))
	if advice, refused := refusedNames[name]; refused {
		return c.fault(CodeFormulaRefused, at, advice, "%s is not part of the language.", quoteCode(name))
	}
	if FunctionNamed(name) != nil || isListFunction(name) {
		return c.fault(CodeFormulaName, at, "Write what it is applied to in brackets behind it.", "%s is a function.", quoteCode(name))
	}
	if owner := c.ownerOf(name); owner != "" {
		return c.fault(CodeFormulaName, at, fmt.Sprintf("Write %s.%s.", owner, name), "%s is a particular, and it does not say of which part.", quoteCode(name))
	}
	if advice := twoUnits[strings.ToLower(name)]; advice != "" {
		return c.fault(CodeFormulaName, at, advice, "%s can be two things.", quoteCode(name))
	}
	if path := c.pathOf(name); path != "" {
		return c.fault(CodeFormulaName, at, fmt.Sprintf("Write %s.", path), "%s does not say what it belongs to.", quoteCode(name))
	}
	unit, err := quantity.FindUnit(name)
	if err == nil && unit.Formula() != "" {
		return c.fault(CodeFormulaName, at, fmt.Sprintf("Write %s for the unit.", unit.Formula()), "%s", found)
	}
	if near := nearest(name, c.knownNames()); near != "" {
		return c.fault(CodeFormulaName, at, fmt.Sprintf("Did you mean %s?", near), "%s", found)
	}
	return c.fault(CodeFormulaName, at, "A text stands between quotes; a part, table, term or unit is written by its name.", "%s", found)
}

// twoUnits is the names of units that mean one thing to one reader and another to the next.
var twoUnits = map[string]string{
	"mil":    "Write mm for a millimetre, thou for a thousandth of an inch.",
	"mils":   "Write mm for millimetres, thou for thousandths of an inch.",
	"gal":    "Write us_gal or imp_gal.",
	"gallon": "Write us_gal or imp_gal.",
}

// pathOf is how a type of parts that does not stand at the root is written from there, ""
// when there is none of that plural or singular, or when it stands within a list.
func (c *checker) pathOf(name string) string {
	if c.scope.names.vocabulary == nil {
		return ""
	}
	return pathWithin(c.scope.names.vocabulary.Root, "", name)
}

// pathWithin looks for a type of parts below one that is written as prefix.
func pathWithin(of *vehicle.PartType, prefix, name string) string {
	for _, t := range of.Parts {
		if prefix != "" && (t.Name == name && !t.Repeats() || t.Plural == name) {
			return prefix + name
		}
		if !t.Repeats() {
			if path := pathWithin(t, prefix+t.Name+".", name); path != "" {
				return path
			}
		}
	}
	return ""
}

// ownerOf returns what a particular that stands by itself could have been meant to belong
// to: a variable of the clause, or the one part of the car that has it; else "".
func (c *checker) ownerOf(name string) string {
	for _, b := range c.scope.variables {
		if b.Is.Kind == Part && b.Is.PartType.Particular(name) != nil {
			return b.Name
		}
	}
	if c.scope.names.vocabulary == nil {
		return ""
	}
	owner := ""
	for _, t := range c.scope.names.vocabulary.Root.Parts {
		if !t.Repeats() && t.Particular(name) != nil {
			if owner != "" {
				return ""
			}
			owner = t.Name
		}
	}
	return owner
}

// knownNames is every name that can begin a formula here, for finding the nearest.
func (c *checker) knownNames() []string {
	list := []string{"on", "event", "table", "pi", "true", "false"}
	for _, b := range slices.Concat(c.locals, c.scope.variables) {
		list = append(list, b.Name)
	}
	for _, g := range c.scope.given {
		list = append(list, g.Name)
	}
	if v := c.scope.names.vocabulary; v != nil {
		list = append(list, partNames(v.Root)...)
	}
	list = append(list, sortedKeys(c.scope.names.terms)...)
	return append(list, sortedKeys(unitNames())...)
}

// partNames is the names of the parts that belong to a part, lists by their plural.
func partNames(t *vehicle.PartType) []string {
	var list []string
	for _, p := range t.Parts {
		list = append(list, rootName(p))
	}
	return list
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
