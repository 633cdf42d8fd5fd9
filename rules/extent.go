package rules

import "fmt"

// mostNodes is how many nodes a formula may come to when the terms in it are written out.
// Terms that use terms could otherwise double the work with every line.
const mostNodes = 10_000

// extent says how much work a formula is, the terms in it written out.
type extent struct {
	nodes int // nodes in all
	lists int // list functions within each other
}

// extentOf measures a tree. Terms it mentions have been measured before; one that has not
// been is at fault and counts for nothing.
func (l *loader) extentOf(n Node) extent {
	var body Node
	out := extent{nodes: 1}
	switch n := n.(type) {
	case *Mention:
		out, body = l.extents[n.Term], n.Body
		out.nodes++
	case *Gather:
		body = n.Body
	case *Filter:
		body = n.Body
	case *Map:
		body = n.Body
	}
	for _, below := range Children(n) {
		if below == body {
			continue
		}
		inner := l.extentOf(below)
		out = extent{out.nodes + inner.nodes, max(out.lists, inner.lists)}
	}
	if _, mentioned := n.(*Mention); body != nil && !mentioned {
		inner := l.extentOf(body)
		out = extent{out.nodes + inner.nodes, max(out.lists, inner.lists+1)}
	}
	return out
}

// refuseExtent reports a formula that is too much work.
func (l *loader) refuseExtent(f *fields, formula *Formula) (ok bool) {
	e := l.extentOf(formula.Tree)
	switch {
	case e.nodes > mostNodes:
		f.fault(CodeFormulaLarge, formula.Range, formulaSummaries[CodeFormulaLarge], fmt.Sprintf(
			"With the terms in it written out the formula has %d parts; %d are the most. Let terms use each other less often.", e.nodes, mostNodes))
	case e.lists > deepestList:
		f.fault(CodeFormulaDeep, formula.Range, formulaSummaries[CodeFormulaDeep], fmt.Sprintf(
			"List functions are nested %d deep here, those in terms included; %d is the most. Let across name the parts one by one instead.", e.lists, deepestList))
	default:
		return true
	}
	return false
}
