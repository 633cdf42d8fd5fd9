package rules

import (
	"fmt"
	"slices"

	"github.com/expr-lang/expr/ast"
)

// listFunction is a function that takes a list.
type listFunction struct {
	fold    Fold
	asks    bool // its second argument is asked of every member and answers yes or no
	maps    bool // its second argument, if any, is a value of every member
	counted bool // its second argument may be left out
	list    bool // yields a list: filter, map
}

// listFunctions is every function that takes a list, by name.
var listFunctions = map[string]listFunction{
	"all":      {fold: FoldAll, asks: true},
	"any":      {fold: FoldAny, asks: true},
	"none":     {fold: FoldNone, asks: true},
	"one":      {fold: FoldOne, asks: true},
	"count":    {fold: FoldCount, asks: true, counted: true},
	"len":      {fold: FoldCount},
	"filter":   {asks: true, list: true},
	"map":      {maps: true, list: true},
	"sum":      {fold: FoldSum, maps: true, counted: true},
	"min":      {fold: FoldMin},
	"max":      {fold: FoldMax},
	"mean":     {fold: FoldMean},
	"median":   {fold: FoldMedian},
	"earliest": {fold: FoldMin},
	"latest":   {fold: FoldMax},
	"find":     {fold: FoldFirst, asks: true},
	"findLast": {fold: FoldLast, asks: true},
	"first":    {fold: FoldFirst},
	"last":     {fold: FoldLast},
}

func isListFunction(name string) bool { _, ok := listFunctions[name]; return ok }

// gather checks a function on a list. name stands at by, the whole call at at.
func (c *checker) gather(name string, f listFunction, at Span, arguments []ast.Node) Node {
	fewest, most := 1, 1
	if f.asks || f.maps {
		fewest, most = 2, 2
		if f.counted {
			fewest = 1
		}
	}
	if len(arguments) < fewest || len(arguments) > most {
		return c.argumentCount(name, listUsage(name), at, len(arguments))
	}
	list := c.check(arguments[0])
	if list != nil && list.Type().Kind != List {
		c.notList(name, list)
		list = nil
	}
	if len(arguments) == 1 {
		return c.foldOf(name, f, at, list)
	}
	element, body := c.each(arguments[1], list, f)
	if list == nil || body == nil {
		return nil
	}
	is := list.Type()
	inner := Base{at, is}
	switch {
	case f.maps:
		of := body.Type()
		inner.Is = Type{Kind: List, Item: &of}
		list = &Map{inner, list, element, body}
	case f.list || f.counted || f.fold == FoldFirst || f.fold == FoldLast:
		list = &Filter{inner, list, element, body}
	default:
		return &Gather{Base: Base{at, Type{Kind: Truth}}, Fold: f.fold, List: list, Element: element, Body: body}
	}
	if f.list {
		return list
	}
	return c.foldOf(name, f, at, list)
}

// each checks what is asked of, or taken from, every member of a list. A nil list is one
// with a fault: its members are of unknown type then.
func (c *checker) each(n ast.Node, list Node, f listFunction) (*Binding, Node) {
	element := &Binding{}
	if list != nil {
		element.Is = *list.Type().Item
	}
	if predicate, ok := n.(*ast.PredicateNode); ok {
		n = predicate.Node
	}
	if len(c.elements) == deepestList {
		c.fault(CodeFormulaDeep, c.spanOf(n), "Make a term of the inner ones.", "List functions are nested more than %d deep here.", deepestList)
		return nil, nil
	}
	c.elements = append(c.elements, element)
	var body Node
	if f.asks {
		body = c.truth(n)
	} else {
		body = c.check(n)
	}
	c.elements = c.elements[:len(c.elements)-1]
	if body != nil && f.maps {
		if kind := body.Type().Kind; kind == Part || kind == Row || kind == List {
			c.fault(CodeFormulaKind, body.Span(), "Take a particular of it, or count, sum, any or all of an inner list.", "%s is %s, and a list is made of figures, dates, texts, or yes and no.", c.quote(body.Span()), body.Type())
			return nil, nil
		}
	}
	return element, body
}

// foldOf checks what a function makes of the members of a list, nil where the list has a
// fault.
func (c *checker) foldOf(name string, f listFunction, at Span, list Node) Node {
	if list == nil {
		return nil
	}
	member := *list.Type().Item
	is := member
	switch f.fold {
	case FoldCount:
		if name == "count" && member.Kind == Truth && !isFiltered(list) {
			return c.fault(CodeFormulaArguments, at, "Write count(list, #) for those that are yes, len(list) for all.", "This does not say which members are counted.")
		}
		is = Type{Kind: Number, Whole: true}
	case FoldSum, FoldMean, FoldMedian, FoldMin, FoldMax:
		dates := name == "earliest" || name == "latest"
		if dates != (member.Kind == Date) || !dates && member.Kind != Number {
			return c.notFoldable(name, list)
		}
		is.Whole = is.Whole && f.fold != FoldMean && f.fold != FoldMedian
	}
	return &Gather{Base: Base{at, is}, Fold: f.fold, List: list}
}

func isFiltered(n Node) bool { _, ok := n.(*Filter); return ok }

// notFoldable is the fault of the sum of a list of dates and the like.
func (c *checker) notFoldable(name string, list Node) Node {
	member := list.Type().Item
	advice := "It takes a list of figures."
	switch {
	case name == "earliest" || name == "latest":
		advice = "It takes a list of dates."
	case member.Kind == Date && (name == "min" || name == "max"):
		advice = fmt.Sprintf("Write %s.", map[string]string{"min": "earliest", "max": "latest"}[name])
	case member.Kind == Part || member.Kind == Row:
		advice = fmt.Sprintf("Say which figure of each: %s(map(%s, …)).", name, c.code(list.Span()))
	}
	at := list.Span()
	if m, ok := list.(*Map); ok && name == "sum" {
		at = m.Body.Span()
	}
	return c.fault(CodeFormulaKind, at, advice, "%s gives %s, and %s cannot be made of it.", c.quote(at), list.Type(), name)
}

// notList is the fault of a list function on something else.
func (c *checker) notList(name string, of Node) {
	advice := "Write a list, such as cage.tubes or [1, 2, 3]."
	switch of.Type().Kind {
	case Part:
		advice = "It is one part; ask its particulars directly."
	case Text:
		advice = "A text is no list; its length is not asked."
	}
	c.fault(CodeFormulaKind, of.Span(), advice, "%s is %s, and %s goes through a list.", c.quote(of.Span()), of.Type(), name)
}

// pointer checks # by itself.
func (c *checker) pointer(n *ast.PointerNode) Node {
	at := c.spanOf(n)
	if n.Name != "" {
		at.To = min(at.To+len(n.Name), c.runes)
		return c.refused("counter", at)
	}
	if len(c.elements) == 0 {
		return c.refused("counter", at)
	}
	return variableOf(c.elements[len(c.elements)-1], at)
}

// elementMember checks .x, or #.x, of the member of a list.
func (c *checker) elementMember(p *ast.PointerNode, name string, end Span) Node {
	of := c.pointer(p)
	if of == nil {
		return nil
	}
	at := Span{of.Span().From, end.To}
	if !hasMember(of.Type(), name) {
		for _, outer := range slices.Backward(c.elements[:len(c.elements)-1]) {
			if hasMember(outer.Is, name) {
				return c.fault(CodeFormulaElement, at, fmt.Sprintf("Name the outer one before the inner list, let own = .%s; and write own here.", name),
					"Inside the inner list the dot means %s, but %s belongs to %s of the outer list.", of.Type(), quoteCode("."+name), outer.Is)
			}
		}
	}
	return c.memberOf(of, name, at, end)
}

// hasMember reports whether a part or row has something of that name.
func hasMember(is Type, name string) bool {
	switch is.Kind {
	case Part:
		t, _ := within(is.PartType, name)
		return t != nil || is.PartType.Particular(name) != nil
	case Row:
		return slices.Contains(columnNames(is.Table), name)
	}
	return false
}
