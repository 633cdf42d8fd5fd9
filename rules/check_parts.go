package rules

import (
	"fmt"
	"slices"
	"strings"

	"github.com/expr-lang/expr/ast"

	"gapsheet/vehicle"
)

// part is the node of a type of parts named by its singular or plural.
func (c *checker) part(of Node, t *vehicle.PartType, plural bool, at Span) Node {
	switch is := (Type{Kind: Part, PartType: t}); {
	case plural:
		return &Parts{Base{at, Type{Kind: List, Item: &is}}, of, t}
	case !t.Repeats():
		return &Root{Base{at, is}, of, t}
	}
	return c.fault(CodeFormulaPart, at, fmt.Sprintf("Write %s for one of them, or ask all of them: all(%s, …).", c.pickExample(t, at), c.pluralOf(t, at)),
		"There can be several of %s, and this does not say which.", quoteCode(t.Name))
}

// pluralOf is a list as it would be written in place of the singular at a place.
func (c *checker) pluralOf(t *vehicle.PartType, at Span) string {
	return strings.TrimSuffix(c.code(at), t.Name) + t.Plural
}

// pickExample is one part of a list as it would be written in place of the singular at a
// place.
func (c *checker) pickExample(t *vehicle.PartType, at Span) string {
	return fmt.Sprintf("%s['%s']", c.code(at), exampleLabel(t))
}

// member checks x.y and x['y'].
func (c *checker) member(n *ast.MemberNode) Node {
	if c.is(c.tokenFrom(n.Location().From), "[") {
		return c.pick(n)
	}
	if n.Optional {
		return c.refused("optional chaining", Span{c.startOf(n), c.spanOf(n).To})
	}
	property, ok := n.Property.(*ast.StringNode)
	if !ok {
		return c.refused("index", c.spanOf(n))
	}
	end := c.spanOf(property)
	if base, ok := n.Node.(*ast.IdentifierNode); ok && !c.isShadowed(base.Value) {
		at := Span{c.spanOf(base).From, end.To}
		switch base.Value {
		case "event":
			return c.moment(property.Value, at, end)
		case "table":
			return c.tableNamed(property.Value, at, end)
		}
	}
	if p, ok := n.Node.(*ast.PointerNode); ok {
		return c.elementMember(p, property.Value, end)
	}
	of := c.node(n.Node)
	if of == nil {
		return nil
	}
	return c.memberOf(of, property.Value, c.join(of.Span(), end, end), end)
}

// memberOf checks a name behind the dot of a part or row.
func (c *checker) memberOf(of Node, name string, at, end Span) Node {
	is := of.Type()
	switch is.Kind {
	case Part:
		return c.memberOfPart(of, is.PartType, name, at, end)
	case Row:
		for i, column := range is.Table.Columns {
			if column.Name == name {
				return &Cell{Base{at, column.Is}, of, i}
			}
		}
		return c.fault(CodeFormulaName, end, c.nearestOr(name, columnNames(is.Table)), "The table %s has no column %s.", quoteCode(is.Table.Name), quoteCode(name))
	case List:
		return c.fault(CodeFormulaKind, end, c.listAdvice(is, of.Span(), name),
			"%s is a list, and a list has no %s of its own.", c.quote(of.Span()), quoteCode(name))
	}
	if read, ok := of.(*Read); ok && !isValue(of) {
		return c.memberOfPlace(read, name, at, end)
	}
	return c.fault(CodeFormulaKind, end, "Take the dot and the name away.", "%s is %s; nothing follows it after a dot.", c.quote(of.Span()), is)
}

// listAdvice says how to read a particular of the members of a list.
func (c *checker) listAdvice(is Type, at Span, name string) string {
	list, name := c.code(at), plainCode(name)
	if asks, isList := listFunctions[name]; isList || otherNames[name] == "len" {
		switch {
		case !isList, name == "count":
			return fmt.Sprintf("The function stands first: len(%s), or count(%s, …) with what is asked of each.", list, list)
		case asks.asks || asks.maps:
			return fmt.Sprintf("The function stands first: %s(%s, …).", name, list)
		}
		return fmt.Sprintf("The function stands first: %s(%s).", name, list)
	}
	if is.Item.Kind == Part && is.Item.PartType.Labels != nil {
		singular := strings.TrimSuffix(list, is.Item.PartType.Plural) + is.Item.PartType.Name
		return fmt.Sprintf("Name one of them, %s['%s'].%s, or ask all: all(%s, .%s …).", singular, is.Item.PartType.Labels.Choices[0].Value, name, list, name)
	}
	return fmt.Sprintf("Ask its members: all(%s, .%s …), any(%s, .%s …), or map(%s, .%s).", list, name, list, name, list, name)
}

// memberOfPart checks a particular, a part or a list of parts of a part.
func (c *checker) memberOfPart(of Node, t *vehicle.PartType, name string, at, end Span) Node {
	if p := t.Particular(name); p != nil {
		if p.Kind == vehicle.KindSize {
			return c.fault(CodeFormulaKind, end, fmt.Sprintf("Read %s or %s.", p.Fills[0], p.Fills[1]),
				"%s is a size, which the sheet writes as a pair.", c.quote(at))
		}
		return &Read{Base{at, typeOfParticular(p)}, of, p}
	}
	if inner, plural := within(t, name); inner != nil {
		return c.part(of, inner, plural, at)
	}
	known := partNames(t)
	for _, p := range t.Particulars {
		known = append(known, p.Name)
	}
	advice := c.nearestOr(name, known)
	if meant := vehicle.NameMeant(name, known); meant != "" {
		advice = fmt.Sprintf("Did you mean %s?", meant)
	}
	if elsewhere, plural := c.scope.root(name); elsewhere != nil && plural {
		advice = fmt.Sprintf("Write %s by itself, without what stands before the dot.", name)
	}
	return c.fault(CodeFormulaName, end, advice, "The build sheet knows no %s of %s.", quoteCode(name), article(spoken(t.Name)))
}

// typeOfParticular is what reading a particular yields.
func typeOfParticular(p *vehicle.Particular) Type {
	switch p.Kind {
	case vehicle.KindNumber:
		return Type{Kind: Number, Dimension: p.Dimension}
	case vehicle.KindCount:
		return Type{Kind: Number, Whole: true}
	case vehicle.KindDate:
		return Type{Kind: Date}
	case vehicle.KindChoice:
		return Type{Kind: Choice, Choices: p.Choices}
	case vehicle.KindTruth:
		return Type{Kind: Truth}
	case vehicle.KindPoint:
		return Type{Kind: Place}
	}
	return Type{Kind: Text}
}

// nearestOr advises the nearest of the known names, or lists them when they are few.
func (c *checker) nearestOr(name string, known []string) string {
	if near := nearest(name, known); near != "" {
		return fmt.Sprintf("Did you mean %s?", near)
	}
	known = slices.Clone(known)
	slices.Sort(known)
	if len(known) > 12 {
		return "There are: " + strings.Join(known[:12], ", ") + " and others."
	}
	return "There is: " + listOf(known, "and") + "."
}

// nearest is the known name that was most likely meant, "" when none is near or the name
// is too short to tell.
func nearest(name string, known []string) string {
	if len(name) < 3 {
		return ""
	}
	return vehicle.Nearest(name, known)
}

// columnNames is the names of a table's columns.
func columnNames(t *Table) []string {
	list := make([]string, len(t.Columns))
	for i, column := range t.Columns {
		list[i] = column.Name
	}
	return list
}

// moment checks event.x.
func (c *checker) moment(name string, at, end Span) Node {
	days := map[string]MomentDay{"inspection_day": InspectionDay, "first_day": FirstDay, "last_day": LastDay}
	day, ok := days[name]
	if !ok {
		return c.fault(CodeFormulaName, end, c.nearestOr(name, sortedKeys(days)), "An event has no %s.", quoteCode(name))
	}
	return &Moment{Base{at, Type{Kind: Date}}, day}
}

// tableNamed checks table.x.
func (c *checker) tableNamed(name string, at, end Span) Node {
	t := c.scope.names.tables[name]
	if t == nil {
		if term := c.scope.names.terms[name]; term != nil {
			advice := fmt.Sprintf("Write %s alone.", name)
			if term.Given != nil {
				advice = fmt.Sprintf("Write %s(%s).", name, term.Given.Name)
			}
			return c.fault(CodeFormulaName, at, advice, "%s is a term, not a table.", quoteCode(name))
		}
		known := sortedKeys(c.scope.names.tables)
		if len(known) == 0 {
			return c.fault(CodeFormulaName, end, "Declare it in a table block.", "This rulebook has no table %s.", quoteCode(name))
		}
		return c.fault(CodeFormulaName, end, c.nearestOr(name, known), "This rulebook has no table %s.", quoteCode(name))
	}
	return &Rows{Base{at, Type{Kind: List, Item: &Type{Kind: Row, Table: t}}}, t}
}
