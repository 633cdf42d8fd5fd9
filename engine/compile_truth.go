package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// truth compiles a tree that yields a truth.
func (c *compiler) truth(n rules.Node) truthNode {
	t, leave := c.enter(n)
	defer leave()
	made := c.truthOf(n)
	t.value.asTruth = made
	return made
}

func (c *compiler) truthOf(n rules.Node) truthNode {
	switch n := n.(type) {
	case *rules.Constant:
		return &constantTruth{quantity.TruthOf(n.Truth)}
	case *rules.Read, *rules.Cell, *rules.Given:
		at, instead := c.read(n)
		if instead != nil {
			return c.truthOf(instead)
		}
		return &readTruth{at}
	case *rules.Variable:
		x := c.names[n.Binding]
		if x.alias != nil {
			return c.truthOf(x.alias)
		}
		return &slotTruth{x.slot, x.from}
	case *rules.Not:
		c.negated = !c.negated
		of := c.truth(n.Of)
		c.negated = !c.negated
		return &not{of}
	case *rules.Logic:
		made := &logic{any: !n.All}
		for _, of := range n.Of {
			made.of = append(made.of, c.truth(of))
		}
		return made
	case *rules.Compare:
		return c.compare(n)
	case *rules.Call:
		return c.meet(n)
	case *rules.Within:
		return c.within(n)
	case *rules.CountBetween:
		return c.countBetween(n)
	case *rules.TextTest:
		return &textTest{test: n.Test, of: c.asText(n.Of), text: n.Text, pattern: n.Pattern}
	case *rules.Conditional:
		return &choiceOfTruths{c.condition(n.If), c.truth(n.Then), c.truth(n.Else)}
	case *rules.Otherwise:
		at, instead := c.read(n.Of)
		if instead != nil {
			return c.truthOf(spreadOtherwise(instead, n))
		}
		return &otherwiseTruth{readTruth{at}, c.truth(n.Else)}
	case *rules.Recorded:
		at, instead := c.read(n.Of)
		if instead != nil {
			return c.truthOf(spreadRecorded(instead, n))
		}
		return &recorded{at}
	case *rules.Fitted:
		return c.fitted(n)
	case *rules.Gather:
		return c.gatherTruth(n)
	case *rules.Define:
		var made truthNode
		c.define(n, func(d definition, worked bool) {
			made = c.truth(n.Rest)
			if worked {
				made = &definedTruth{d, made}
			}
		})
		return made
	case *rules.Mention:
		return mentioned(c, n, c.truth)
	}
	panic("engine: no truth can be made of this node")
}

// condition compiles what decides between two branches: an allowance has no side there.
func (c *compiler) condition(n rules.Node) truthNode {
	kept := c.allowance
	c.allowance = 0
	made := c.truth(n)
	c.allowance = kept
	return made
}

// spreadOtherwise puts x ?? y where the read of x has been spread to.
func spreadOtherwise(instead rules.Node, n *rules.Otherwise) rules.Node {
	return replaceRead(instead, func(read *rules.Read) rules.Node {
		return &rules.Otherwise{Base: n.Base, Of: read, Else: n.Else}
	}, n.Type())
}

func spreadRecorded(instead rules.Node, n *rules.Recorded) rules.Node {
	return replaceRead(instead, func(read *rules.Read) rules.Node {
		return &rules.Recorded{Base: n.Base, Of: read}
	}, n.Type())
}

// replaceRead rewrites the reads that spread has made.
func replaceRead(instead rules.Node, with func(*rules.Read) rules.Node, is rules.Type) rules.Node {
	switch x := instead.(type) {
	case *rules.Read:
		return with(x)
	case *rules.Conditional:
		return &rules.Conditional{
			Base: rules.Base{At: x.At, Is: is}, If: x.If,
			Then: replaceRead(x.Then, with, is), Else: replaceRead(x.Else, with, is),
		}
	case *rules.Gather:
		list := x.List.(*rules.Map)
		return &rules.Gather{
			Base: rules.Base{At: x.At, Is: is}, Fold: x.Fold,
			List: &rules.Map{
				Base: rules.Base{At: list.At, Is: rules.Type{Kind: rules.List, Item: &is}},
				List: list.List, Element: list.Element, Body: replaceRead(list.Body, with, is),
			},
		}
	}
	panic("engine: not a read that was spread")
}

// compare compiles a comparison.
func (c *compiler) compare(n *rules.Compare) truthNode {
	negated := n.Sense == rules.NotEqual
	switch n.Left.Type().Kind {
	case rules.Truth:
		return &compareTruths{negated, c.condition(n.Left), c.condition(n.Right)}
	case rules.Choice, rules.Text:
		if l, r := n.Left.Type(), n.Right.Type(); l.Kind == rules.Choice && r.Kind == rules.Choice && l.Choices == r.Choices {
			return &compareSymbols{negated: negated, left: c.symbol(n.Left), right: c.symbol(n.Right)}
		}
		return &compareSymbols{negated: negated, left: c.asText(n.Left), right: c.asText(n.Right), text: true}
	}
	made := compareNumbers{
		sense: n.Sense, left: c.number(n.Left), right: c.number(n.Right),
		tolerance: toleranceOf(n.Left.Type(), n.Right.Type()),
	}
	if c.allowance != 0 && n.Left.Type().Kind == rules.Number && dimensionOf(n) == c.allowed {
		made.shift = c.shift(n.Sense)
	}
	return made.specialised()
}

// dimensionOf is the dimension of a comparison; a bare zero takes the other side's.
func dimensionOf(n *rules.Compare) quantity.Dimension {
	if d := n.Left.Type().Dimension; !d.IsNone() {
		return d
	}
	return n.Right.Type().Dimension
}

// shift is what the clause's allowance adds to the left side. It loosens the limit as the
// clause asks it, so it works the other way where the comparison is negated.
func (c *compiler) shift(sense rules.Comparison) float64 {
	a := c.allowance
	if c.negated {
		a = -a
	}
	switch sense {
	case rules.AtLeast, rules.More:
		return a
	case rules.AtMost, rules.Less:
		return -a
	}
	return 0
}

// toleranceOf is the same-figure rule for two numbers: whole numbers and days compare
// exactly.
func toleranceOf(l, r rules.Type) quantity.Tolerance {
	if l.Kind == rules.Date || l.Whole && r.Whole {
		return quantity.Tolerance{}
	}
	if l.Dimension.IsNone() {
		return r.Dimension.Same()
	}
	return l.Dimension.Same()
}

// mirrored is a comparison read from its other side.
var mirrored = [...]rules.Comparison{
	rules.Equal: rules.Equal, rules.NotEqual: rules.NotEqual,
	rules.Less: rules.More, rules.More: rules.Less,
	rules.AtMost: rules.AtLeast, rules.AtLeast: rules.AtMost,
}

// specialised puts a constant on the right and takes the quick form where there is one.
func (n compareNumbers) specialised() truthNode {
	if n.shift == 0 {
		if _, ok := n.left.(*constantNumber); ok {
			n.left, n.right, n.sense = n.right, n.left, mirrored[n.sense]
		}
	}
	return n.quickly()
}

// countBetween compiles n in a..b.
func (c *compiler) countBetween(n *rules.CountBetween) truthNode {
	of := c.number(n.Of)
	low := compareNumbers{sense: rules.AtLeast, left: of, right: c.number(n.Low)}
	high := compareNumbers{sense: rules.AtMost, left: of, right: c.number(n.High)}
	return &logic{of: []truthNode{low.specialised(), high.specialised()}}
}

// within compiles x in list: any member equals x.
func (c *compiler) within(n *rules.Within) truthNode {
	if made := c.withinChoices(n); made != nil {
		return made
	}
	kept := c.slots
	of := c.apart(n.Of)
	list, _ := c.gathered(n.List)
	defer func() { c.slots = kept }()
	slot := list.bound()
	var same truthNode
	switch item := n.List.Type().Item; item.Kind {
	case rules.Truth:
		same = &compareTruths{left: of.asTruth, right: &slotTruth{slot, list}}
	case rules.Choice, rules.Text:
		left, right := of.asSymbol, symbolNode(&slotSymbol{slot, list})
		text := item.Kind == rules.Text || n.Of.Type().Kind == rules.Text || item.Choices != n.Of.Type().Choices
		if text {
			left, right = c.textual(left, n.Of.Type()), c.textual(right, *item)
		}
		same = &compareSymbols{left: left, right: right, text: text}
	default:
		same = &compareNumbers{
			sense: rules.Equal, left: of.asNumber, right: &slotNumber{slot, list},
			tolerance: toleranceOf(n.Of.Type(), *item),
		}
	}
	return &gatheredTruth{gathering{list, same}, rules.FoldAny}
}

// withinChoices is the quick form for a choice and a list of constants.
func (c *compiler) withinChoices(n *rules.Within) truthNode {
	items, ok := n.List.(*rules.Items)
	if !ok || n.Of.Type().Kind != rules.Choice {
		return nil
	}
	var set uint64
	for _, item := range items.Of {
		constant, ok := item.(*rules.Constant)
		if !ok || constant.Type().Kind != rules.Choice || constant.Type().Choices != n.Of.Type().Choices {
			return nil
		}
		set |= 1 << uint(constant.Choice)
	}
	return &within{of: c.symbol(n.Of), set: set}
}

// fitted compiles fitted(part). Of a part by its label it asks for that part itself.
func (c *compiler) fitted(n *rules.Fitted) truthNode {
	var of rules.Node
	var t *vehicle.PartType
	switch x := n.Of.(type) {
	case *rules.Root:
		of, t = x.Of, x.IsPart
	case *rules.Parts:
		of, t = x.Of, x.IsPart
	case *rules.Pick:
		return &fittedPart{pickedPart{c.part(x.Of), partOffset(x.IsPart), uint32(c.ground.text(x.Label))}}
	case *rules.Variable:
		if alias := c.names[x.Binding].alias; alias != nil {
			return c.fitted(&rules.Fitted{Base: n.Base, Of: alias})
		}
		return &constantTruth{quantity.Yes} // a part that a clause runs over is there
	default:
		panic("engine: fitted of something that is no part")
	}
	return &readTruth{c.place(of, fittedOffset(t))}
}
