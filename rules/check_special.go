package rules

import (
	"fmt"
	"math/big"

	"github.com/expr-lang/expr/ast"

	"gapsheet/vehicle/quantity"
)

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

// recorded checks recorded(x).
func (c *checker) recorded(at Span, arguments []ast.Node) Node {
	of := c.node(arguments[0])
	if of == nil {
		return nil
	}
	if of.Type().Kind == Place {
		return c.recordedPlace(at, of.(*Read))
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
	of := c.node(n)
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
