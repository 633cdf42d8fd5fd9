package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// number compiles a tree that yields a number or a date.
func (c *compiler) number(n rules.Node) numberNode {
	t, leave := c.enter(n)
	defer leave()
	made := c.numberOf(n)
	t.value.asNumber = made
	return made
}

func (c *compiler) numberOf(n rules.Node) numberNode {
	switch n := n.(type) {
	case *rules.Constant:
		if n.Type().Kind == rules.Date {
			return &constantNumber{quantity.Range{Low: float64(n.Days.From), High: float64(n.Days.To)}}
		}
		return &constantNumber{quantity.Exactly(n.Number)}
	case *rules.Read, *rules.Cell, *rules.Given, *rules.Moment:
		at, instead := c.read(n)
		if instead != nil {
			return c.numberOf(instead)
		}
		return &readNumber{at}
	case *rules.Variable:
		x := c.names[n.Binding]
		if x.alias != nil {
			return c.numberOf(x.alias)
		}
		return &slotNumber{x.slot, x.from}
	case *rules.Arithmetic:
		return &binaryNumber{n.Operator, c.number(n.Left), c.number(n.Right)}
	case *rules.Negate:
		return &negatedNumber{c.number(n.Of)}
	case *rules.Power:
		return &power{c.number(n.Of), n.Exponent}
	case *rules.Conditional:
		return &choiceOfNumbers{c.condition(n.If), c.number(n.Then), c.number(n.Else)}
	case *rules.Otherwise:
		at, instead := c.read(n.Of)
		if instead != nil {
			return c.numberOf(spreadOtherwise(instead, n))
		}
		return &otherwiseNumber{at, c.number(n.Else)}
	case *rules.Call:
		if n.Function.Code >= rules.FunctionDistance {
			return c.geometric(n)
		}
		return c.call(n)
	case *rules.Gather:
		list, release := c.gathered(n.List)
		defer release()
		return &gatheredNumber{gathering{list: list}, n.Fold, c.surelyThere(n.List)}
	case *rules.Define:
		var made numberNode
		c.define(n, func(d definition, worked bool) {
			made = c.number(n.Rest)
			if worked {
				made = &definedNumber{d, made}
			}
		})
		return made
	case *rules.Mention:
		return mentioned(c, n, c.number)
	}
	panic("engine: no number can be made of this node")
}

// call compiles a function of numbers and dates.
func (c *compiler) call(n *rules.Call) numberNode {
	if n.Function.Code == rules.FunctionEndOfLabel {
		return &endOfLabel{c.number(n.Of[0])}
	}
	if n.Function.Code == rules.FunctionWeekYear {
		return c.weekYear(n.Of[0])
	}
	made := &call{code: n.Function.Code, tolerance: n.Of[0].Type().Dimension.Same()}
	if len(n.Of) > 1 {
		made.tolerance = quantity.Plain.Same() // what is rounded is the number of steps
	}
	for _, of := range n.Of {
		made.of = append(made.of, c.number(of))
	}
	return made
}

// symbol compiles a tree that yields a choice or a text.
func (c *compiler) symbol(n rules.Node) symbolNode {
	t, leave := c.enter(n)
	defer leave()
	made := c.symbolOf(n)
	t.value.asSymbol, t.value.text = made, n.Type().Kind == rules.Text
	return made
}

func (c *compiler) symbolOf(n rules.Node) symbolNode {
	text := n.Type().Kind == rules.Text
	switch n := n.(type) {
	case *rules.Constant:
		if text {
			return &constantSymbol{c.ground.text(n.Text), true}
		}
		return &constantSymbol{set: 1 << uint(n.Choice)}
	case *rules.Read, *rules.Cell, *rules.Given:
		at, instead := c.read(n)
		if instead != nil {
			return c.symbolOf(instead)
		}
		return &readSymbol{at}
	case *rules.Variable:
		x := c.names[n.Binding]
		if x.alias != nil {
			return c.symbolOf(x.alias)
		}
		return &slotSymbol{x.slot, x.from}
	case *rules.Conditional:
		return &choiceOfSymbols{c.condition(n.If), c.symbol(n.Then), c.symbol(n.Else), text}
	case *rules.Otherwise:
		at, instead := c.read(n.Of)
		if instead != nil {
			return c.symbolOf(spreadOtherwise(instead, n))
		}
		return &otherwiseSymbol{at, c.symbol(n.Else), text}
	case *rules.Gather:
		list, release := c.gathered(n.List)
		defer release()
		return &gatheredSymbol{gathering{list: list}, n.Fold, text}
	case *rules.Define:
		var made symbolNode
		c.define(n, func(d definition, worked bool) {
			made = c.symbol(n.Rest)
			if worked {
				made = &definedSymbol{d, made}
			}
		})
		return made
	case *rules.Mention:
		return mentioned(c, n, c.symbol)
	}
	panic("engine: no choice or text can be made of this node")
}

// asText compiles a choice or a text as a text.
func (c *compiler) asText(n rules.Node) symbolNode { return c.textual(c.symbol(n), n.Type()) }

func (c *compiler) textual(of symbolNode, is rules.Type) symbolNode {
	if is.Kind == rules.Text || is.Choices == nil {
		return of
	}
	made := &textOfChoice{of: of}
	for _, choice := range is.Choices.Choices {
		made.texts = append(made.texts, c.ground.text(choice.Value))
	}
	return made
}
