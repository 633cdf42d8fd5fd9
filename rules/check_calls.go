package rules

import (
	"fmt"
	"math/big"
	"strings"

	"github.com/expr-lang/expr/ast"

	"gapsheet/vehicle/quantity"
)

// call checks f(x) where expr has no function of that name.
func (c *checker) call(n *ast.CallNode) Node {
	name, ok := n.Callee.(*ast.IdentifierNode)
	if !ok {
		at := c.spanOf(n)
		return c.refused("method", c.toClosing(c.startOf(n.Callee), at.To))
	}
	return c.function(name.Value, c.spanOf(name), n.Arguments)
}

// function checks the call of a function whose name stands at by.
func (c *checker) function(name string, by Span, arguments []ast.Node) Node {
	at := c.toClosing(by.From, by.To)
	if c.is(c.tokenFrom(by.From)-1, "|") && len(arguments) > 0 {
		at.From = min(at.From, c.startOf(arguments[0]))
	}
	if t := c.scope.names.terms[name]; t != nil {
		return c.mentionOf(t, at, arguments)
	}
	if f, ok := listFunctions[name]; ok && (FunctionNamed(name) == nil || len(arguments) == 1) {
		return c.gather(name, f, at, arguments)
	}
	if f := FunctionNamed(name); f != nil {
		return c.scalar(f, at, arguments)
	}
	if check := specialFunction(name); check != nil {
		if wanted := map[bool]int{true: 2, false: 1}[name == "in_band"]; len(arguments) != wanted {
			return c.argumentCount(name, listUsage(name), at, len(arguments))
		}
		return check(c, at, arguments)
	}
	if advice, ok := refusedFunctions[name]; ok {
		return c.fault(CodeFormulaRefused, by, advice, "The function %s is not part of the formula language.", name)
	}
	if c.isShadowed(name) {
		return c.fault(CodeFormulaName, by, "Write the operator that is meant before the bracket, such as *.", "%s is a name, not a function.", quoteCode(name))
	}
	known := append(sortedKeys(functionsByName()), sortedKeys(listFunctions)...)
	known = append(append(known, special...), sortedKeys(c.scope.names.terms)...)
	advice := "The reference lists the functions; a unit stands behind a *, as in 45*mm."
	near := nearest(name, known)
	if meant := otherNames[strings.ToLower(name)]; meant != "" {
		near = meant
	}
	if near != "" {
		advice = fmt.Sprintf("Did you mean %s?", near)
	}
	return c.fault(CodeFormulaName, by, advice, "There is no function %s.", quoteCode(name))
}

// otherNames is what functions are called elsewhere.
var otherNames = map[string]string{
	"maximum": "max", "minimum": "min", "average": "mean", "avg": "mean", "total": "sum", "length": "len", "size": "len",
	"every": "all", "some": "any", "exists": "any", "truncate": "floor", "trunc": "floor", "atan": "atan2", "years": "years_after",
	"months": "months_after", "days": "days_after", "year": "year_of", "contains": "contains, between two texts",
}

// specialFunction is the check of a function whose argument is not simply a value, nil for
// any other name.
func specialFunction(name string) func(c *checker, at Span, arguments []ast.Node) Node {
	switch name {
	case "recorded":
		return (*checker).recorded
	case "fitted":
		return (*checker).fitted
	case "in_band":
		return (*checker).inBand
	case "date":
		return (*checker).date
	case "celsius":
		return func(c *checker, at Span, arguments []ast.Node) Node { return c.temperature("degC", at, arguments[0]) }
	case "fahrenheit":
		return func(c *checker, at Span, arguments []ast.Node) Node { return c.temperature("degF", at, arguments[0]) }
	}
	return nil
}

// argumentCount is the fault of too few or too many arguments.
func (c *checker) argumentCount(name, usage string, at Span, found int) Node {
	many := "arguments"
	if found == 1 {
		many = "argument"
	}
	return c.fault(CodeFormulaArguments, at, fmt.Sprintf("Write %s.", usage), "%s has %d %s here.", name, found, many)
}

// mentionOf checks the use of a term with a given: thick(tube).
func (c *checker) mentionOf(t *Term, at Span, arguments []ast.Node) Node {
	if t.Given == nil {
		return c.fault(CodeFormulaArguments, at, fmt.Sprintf("Write %s alone.", t.Name), "The term %s is not worked out for a part.", quoteCode(t.Name))
	}
	if len(arguments) != 1 {
		return c.argumentCount("The term "+t.Name, fmt.Sprintf("%s(%s)", t.Name, t.Given.Name), at, len(arguments))
	}
	of := c.check(arguments[0])
	if of == nil || t.Given.Is.Kind == 0 {
		return nil
	}
	if is := of.Type(); !sameType(is, t.Given.Is) {
		return c.fault(CodeFormulaKind, of.Span(), fmt.Sprintf("Give it %s.", t.Given.Is), "%s is %s, but the term %s is for %s.", c.quote(of.Span()), is, t.Name, t.Given.Is)
	}
	if t.Means == nil || t.Means.Tree == nil {
		return nil
	}
	return &Mention{Base{at, t.Means.Tree.Type()}, t, of, t.Means.Tree}
}

// recorded checks recorded(x).
func (c *checker) recorded(at Span, arguments []ast.Node) Node {
	of := c.check(arguments[0])
	if of == nil {
		return nil
	}
	if _, ok := of.(*Read); !ok {
		advice := "Name a particular of a part, as in recorded(seat.serial)."
		if kind := of.Type().Kind; kind == Part || kind == List {
			advice = fmt.Sprintf("For a part write fitted(%s).", c.code(of.Span()))
		}
		return c.fault(CodeFormulaKind, of.Span(), advice, "%s is not read from the build sheet as one particular.", c.quote(of.Span()))
	}
	return &Recorded{Base{at, Type{Kind: Truth}}, of}
}

// fitted checks fitted(part). Of a part there can be several of, the singular is taken
// for the list.
func (c *checker) fitted(at Span, arguments []ast.Node) Node {
	n := arguments[0]
	if of, t, known := c.picked(n); known {
		return nil
	} else if t != nil {
		list := &Parts{Base{Span{c.startOf(n), c.spanOf(n).To}, Type{Kind: List, Item: &Type{Kind: Part, PartType: t}}}, of, t}
		if !t.Repeats() {
			return &Fitted{Base{at, Type{Kind: Truth}}, c.part(of, t, false, list.At)}
		}
		return &Fitted{Base{at, Type{Kind: Truth}}, list}
	}
	of := c.check(n)
	switch of := of.(type) {
	case nil:
		return nil
	case *Pick, *Parts, *Root:
		return &Fitted{Base{at, Type{Kind: Truth}}, of}
	}
	advice := "Name a part of the car, as in fitted(fire_system)."
	if of.Type().Kind == Part {
		advice = "It stands for a part that is there; ask its particulars."
	} else if _, ok := of.(*Read); ok {
		advice = fmt.Sprintf("For a particular write recorded(%s).", c.code(of.Span()))
	}
	return c.fault(CodeFormulaKind, of.Span(), advice, "%s is not the name of a part.", c.quote(of.Span()))
}

// inBand checks in_band(table.t, x).
func (c *checker) inBand(at Span, arguments []ast.Node) Node {
	rows, value := c.check(arguments[0]), c.check(arguments[1])
	if rows == nil || value == nil {
		return nil
	}
	table, ok := rows.(*Rows)
	if !ok {
		return c.fault(CodeFormulaKind, rows.Span(), "Write in_band(table.name, figure).", "%s is not a table.", c.quote(rows.Span()))
	}
	if table.Table.Band == nil {
		return c.fault(CodeFormulaKind, rows.Span(), "Say in the table which columns are its bands.", "The table %s has no bands.", quoteCode(table.Table.Name))
	}
	column := max(table.Table.Band.Low, table.Table.Band.High)
	value, _, ok = c.alike(value, &Variable{Base: Base{rows.Span(), table.Table.Columns[column].Is}}, at, "looked up in each other")
	if !ok {
		return nil
	}
	return &InBand{Base{at, Type{Kind: List, Item: &Type{Kind: Row, Table: table.Table}}}, table.Table, value}
}

// date checks date('2027-01-01').
func (c *checker) date(at Span, arguments []ast.Node) Node {
	text, ok := arguments[0].(*ast.StringNode)
	if !ok {
		return c.fault(CodeFormulaDate, at, "Write the day between quotes: date('2027-01-01').", "%s is not a day written out.", c.quote(at))
	}
	days, fault := quantity.ParseDays(text.Value)
	if fault != nil {
		return c.fault(CodeFormulaDate, c.spanOf(text), fault.Advice, "%s", fault.Found)
	}
	if days.Precision != quantity.ToDay {
		return c.fault(CodeFormulaDate, c.spanOf(text), fmt.Sprintf("Write its first or its last day: '%s' or '%s'.", days.From, days.To),
			"%s is more than one day, and a limit has to be one.", c.quote(c.spanOf(text)))
	}
	return &Constant{Base: Base{at, Type{Kind: Date}}, Days: days}
}

// temperature checks celsius(135) and fahrenheit(275).
func (c *checker) temperature(unit string, at Span, argument ast.Node) Node {
	of := c.check(argument)
	if of == nil {
		return nil
	}
	k, ok := of.(*Constant)
	if !ok || k.Is.Kind != Number || !k.Is.Dimension.IsNone() {
		return c.fault(CodeFormulaKind, of.Span(), "Write the temperature as a plain number, as in celsius(135).", "%s is not a number written out.", c.quote(of.Span()))
	}
	u, err := quantity.FindUnit(unit)
	if err != nil {
		panic("rules: no unit " + unit)
	}
	number := new(big.Rat).Set(c.exactOf(k).value())
	return &Constant{Base: Base{at, Type{Kind: Number, Dimension: quantity.Temperature}}, Number: u.ToSI(number), Unit: u, Decimals: k.Decimals}
}

// refusedFunctions is expr's own functions that formulas do not have, with what to write
// instead.
var refusedFunctions = func() map[string]string {
	out := map[string]string{
		"now":           "The day comes from the run: write on, or event.inspection_day.",
		"duration":      "Write days_after(date, 30), or a figure of time such as 30*minute.",
		"timezone":      "Dates are civil days everywhere.",
		"reduce":        "Use sum, count, min, max, all or any.",
		"groupBy":       "Use filter for each group.",
		"findIndex":     "Members of a list have no numbers; use find.",
		"findLastIndex": "Members of a list have no numbers; use findLast.",
		"get":           "Name what is read: harness['driver'], or a particular after a dot.",
		"int":           "Use floor, ceil or round.",
		"float":         "All numbers are of one sort; leave it out.",
		"type":          "The kind of every particular is known before a car is read.",
	}
	lists := []string{"sortBy", "sort", "take", "reverse", "uniq", "concat", "flatten", "keys", "values", "toPairs", "fromPairs"}
	texts := []string{"string", "trim", "trimPrefix", "trimSuffix", "upper", "lower", "split", "splitAfter", "replace", "repeat", "join",
		"indexOf", "lastIndexOf", "hasPrefix", "hasSuffix", "toJSON", "fromJSON", "toBase64", "fromBase64"}
	bits := []string{"bitand", "bitor", "bitxor", "bitnand", "bitnot", "bitshl", "bitshr", "bitushr"}
	for _, name := range lists {
		out[name] = "A list is asked with all, any, count, sum, min, max, filter or map."
	}
	for _, name := range texts {
		out[name] = "Texts are compared without case or extra blanks: use ==, in, contains, startsWith, endsWith or matches."
	}
	for _, name := range bits {
		out[name] = "Use and, or, not."
	}
	return out
}()
