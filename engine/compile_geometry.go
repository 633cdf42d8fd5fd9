package engine

import (
	"slices"

	"gapsheet/rules"
	"gapsheet/vehicle"
)

// geometric compiles a function on two places or tubes that yields a number.
func (c *compiler) geometric(n *rules.Call) numberNode {
	for i, of := range n.Of {
		part, put := partOf(of)
		if searched, ok := c.searched(part); ok {
			return c.numberOf(spread(searched, n.Type(), func(part rules.Node) rules.Node {
				instead := slices.Clone(n.Of)
				instead[i] = put(part)
				return &rules.Call{Base: n.Base, Function: n.Function, Of: instead}
			}))
		}
	}
	made := &geometric{n.Function.Code, c.spot(n.Of[0]), c.spot(n.Of[1])}
	made.a.surface = n.Function.Code == rules.FunctionClearance
	made.b.surface = made.a.surface
	return made
}

// partOf is the part behind an argument, and how to put another in its place.
func partOf(of rules.Node) (part rules.Node, put func(rules.Node) rules.Node) {
	if read, ok := of.(*rules.Read); ok {
		return read.Of, func(part rules.Node) rules.Node {
			return &rules.Read{Base: read.Base, Of: part, Particular: read.Particular}
		}
	}
	return of, func(part rules.Node) rules.Node { return part }
}

// meet compiles meet(a, b, within): that the distance is no more than that. What a clause
// allows beyond its limits is not meant for it.
func (c *compiler) meet(n *rules.Call) truthNode {
	apart := &rules.Call{
		Base:     rules.Base{At: n.Span(), Is: n.Of[2].Type()},
		Function: rules.FunctionNamed("distance"), Of: n.Of[:2],
	}
	comparison := &rules.Compare{Base: n.Base, Sense: rules.AtMost, Left: apart, Right: n.Of[2]}
	c.trace.tree = comparison // it is explained as what it comes to
	kept := c.allowance
	c.allowance = 0
	made := c.compare(comparison)
	c.allowance = kept
	tubes := rules.Span{From: n.Of[0].Span().From, To: n.Of[1].Span().To}
	c.trace.of[0].named = "distance(" + textAt(c.formula, tubes) + ")"
	return made
}

// spot compiles an argument: a point, a part that stands at one, or a tube.
func (c *compiler) spot(of rules.Node) spot {
	if read, ok := of.(*rules.Read); ok {
		at := particularOffset(read.Particular)
		return spot{part: c.part(read.Of), point: at, offset: at}
	}
	return spot{part: c.part(of), point: -1, offset: particularOffset(whereabouts(of.Type().PartType))}
}

// whereabouts is the particular that tells where a part of a type is, nil where none does.
func whereabouts(t *vehicle.PartType) *vehicle.Particular {
	if t.Name == "tube" {
		return t.Particular("through")
	}
	return rules.PlaceOf(t)
}
