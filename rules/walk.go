package rules

import "iter"

// Walk goes through a tree: n first, then what it is made of, from left to right. The body
// of a term that is mentioned belongs to the tree, although its spans are in the term's own
// text; a node that stands twice in a tree (the middle of 1 < x < 3) comes twice.
func Walk(n Node) iter.Seq[Node] {
	return func(yield func(Node) bool) { Inspect(n, yieldAll(yield)) }
}

// yieldAll stops for good once yield has returned false.
func yieldAll(yield func(Node) bool) func(Node) bool {
	stopped := false
	return func(n Node) bool {
		stopped = stopped || !yield(n)
		return !stopped
	}
}

// Inspect calls visit for n and then, where that returns true, for what n is made of.
func Inspect(n Node, visit func(Node) bool) {
	if n == nil || !visit(n) {
		return
	}
	for _, child := range Children(n) {
		Inspect(child, visit)
	}
}

// Children is what a node is directly made of, from left to right, nil nodes left out.
func Children(n Node) []Node {
	switch n := n.(type) {
	case *Root:
		return present(n.Of)
	case *Pick:
		return present(n.Of)
	case *Parts:
		return present(n.Of)
	case *Read:
		return present(n.Of)
	case *Cell:
		return present(n.Of)
	case *InBand:
		return present(n.Value)
	case *Not:
		return present(n.Of)
	case *Logic:
		return n.Of
	case *Compare:
		return present(n.Left, n.Right)
	case *Within:
		return present(n.Of, n.List)
	case *CountBetween:
		return present(n.Of, n.Low, n.High)
	case *TextTest:
		return present(n.Of)
	case *Arithmetic:
		return present(n.Left, n.Right)
	case *Negate:
		return present(n.Of)
	case *Power:
		return present(n.Of)
	case *Conditional:
		return present(n.If, n.Then, n.Else)
	case *Otherwise:
		return present(n.Of, n.Else)
	case *Recorded:
		return present(n.Of)
	case *Fitted:
		return present(n.Of)
	case *Call:
		return n.Of
	case *Gather:
		return present(n.List, n.Body)
	case *Filter:
		return present(n.List, n.Body)
	case *Map:
		return present(n.List, n.Body)
	case *Items:
		return n.Of
	case *Define:
		return present(n.Value, n.Rest)
	case *Mention:
		return present(n.Given, n.Body)
	}
	return nil
}

// present drops nil nodes.
func present(list ...Node) []Node {
	out := list[:0]
	for _, n := range list {
		if n != nil {
			out = append(out, n)
		}
	}
	return out
}
