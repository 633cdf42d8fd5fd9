package engine

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// Explaining walks the same nodes again, by their traces, and keeps what decided.

// An explainer explains over one machine as it stands.
type explainer struct {
	m       *machine
	car     *Car
	walked  int  // nodes explained so far
	dates   bool // keep which dates are behind a comparison
	dated   []datedRead
	reads   []partRead // of comparisons that fail, where dates are kept
	roots   bool       // tell of a figure that follows from others what those are
	negated bool       // under an odd number of negations: what is asked for is that it does not hold
}

// A finding is what a walk over one node brings back: the working, and the comparisons
// that decided it. failing and short rank alternatives: fewest failing comparisons first,
// then the least shortfall relative to its limit.
type finding struct {
	work    *Working
	decided []Decided
	failing int
	short   float64
	hand    float64 // the least margin in hand relative to its limit, of comparisons that are met
	label   string  // which member of a list it is about
}

// shownMembers bounds the members of a list whose working is shown; those that decided
// come first.
const shownMembers = 12

// truthOf is the truth of a node as the walk shows it, settled where splitting helps.
func (x *explainer) truthOf(t *trace) quantity.Truth { return x.m.decide(t.value.asTruth) }

// walkLimit bounds the nodes that one explanation goes through. A clause that compares
// every tube with every other would fill a book; past the limit nodes say only their truth.
const walkLimit = 20_000

// walk explains one node.
func (x *explainer) walk(t *trace) finding {
	if x.walked++; x.walked > walkLimit {
		return x.brief(t)
	}
	f := finding{work: &Working{Text: t.text()}, hand: math.Inf(1)}
	if t.value.asTruth != nil {
		f.work.Truth, f.work.HasTruth = x.truthOf(t), true
		f.work.Value = f.work.Truth.String()
	} else if t.list == nil {
		f.work.Value = x.value(t)
	}
	switch n := t.tree.(type) {
	case *rules.Logic:
		x.logic(t, n, &f)
	case *rules.Not:
		x.negated = !x.negated
		x.single(t, &f)
		x.negated = !x.negated
	case *rules.Compare, *rules.TextTest, *rules.CountBetween:
		x.comparison(t, &f)
	case *rules.Within:
		x.membership(t, n, &f)
	case *rules.Gather:
		x.gather(t, n, &f)
	case *rules.Conditional:
		x.conditional(t, &f)
	case *rules.Define:
		x.define(t, n, &f)
	case *rules.Mention:
		f.work.Note = "term " + n.Term.Name
		x.single(t, &f)
	case *rules.Call:
		x.single(t, &f)
		x.rootsOfCall(t, &f)
	case *rules.Read, *rules.Cell, *rules.Recorded, *rules.Fitted, *rules.Given, *rules.Moment:
		x.read(t, &f)
	default:
		x.single(t, &f)
	}
	return f
}

// brief is a node without what is below it.
func (x *explainer) brief(t *trace) finding {
	f := finding{work: &Working{Text: t.text(), Note: "not gone into"}, hand: math.Inf(1)}
	if t.value.asTruth != nil {
		f.work.Truth, f.work.HasTruth = t.value.asTruth.truth(x.m), true
		f.work.Value = f.work.Truth.String()
	}
	return f
}

// single explains a node whose parts all bear on it.
func (x *explainer) single(t *trace, f *finding) {
	for _, of := range t.of {
		x.take(f, x.walk(of))
	}
	if f.work.HasTruth && f.work.Truth == quantity.No {
		f.failing = max(f.failing, 1)
	}
}

// take puts a part's finding under a node, as one that decided it.
func (x *explainer) take(f *finding, part finding) {
	part.work.Deciding = true
	f.work.Of = append(f.work.Of, part.work)
	f.decided = append(f.decided, part.decided...)
	f.failing += part.failing
	f.short, f.hand = max(f.short, part.short), min(f.hand, part.hand)
}

// logic explains and and or. What has the truth of the whole decided it; where a
// disjunction is not met, the nearest alternative stands for the rest.
func (x *explainer) logic(t *trace, n *rules.Logic, f *finding) {
	parts := make([]finding, len(t.of))
	for i, of := range t.of {
		parts[i] = x.walk(of)
	}
	if !n.All {
		x.alternatives(f, parts)
		return
	}
	for _, part := range parts {
		if part.work.Truth == f.work.Truth {
			x.take(f, part)
		} else {
			f.work.Of = append(f.work.Of, part.work)
		}
	}
	x.together(f, parts)
}

// together explains a truth that none of the parts has by itself: all open parts decided
// it, one way or the other in every car that agrees with the sheet.
func (x *explainer) together(f *finding, parts []finding) {
	for _, part := range parts {
		if part.work.Truth == f.work.Truth {
			return
		}
	}
	for _, part := range parts {
		if part.work.Truth == quantity.Open {
			part.work.Deciding = true
			f.decided = append(f.decided, part.decided...)
			f.work.Note = noteTogether
		}
	}
}

// noteTogether marks what is settled although its parts, each alone, are not.
const noteTogether = "settled by its open parts together, whichever way each of them is"

// alternatives explains one-of-these: the first that holds, all that are open, or the
// nearest of those that fail.
func (x *explainer) alternatives(f *finding, parts []finding) {
	nearest := -1
	for i, part := range parts {
		f.work.Of = append(f.work.Of, part.work)
		if part.work.Truth != f.work.Truth {
			continue
		}
		if nearest < 0 || f.work.Truth == quantity.No && part.nearer(parts[nearest]) {
			nearest = i
		}
		if f.work.Truth == quantity.Open {
			part.work.Deciding = true
			f.decided = append(f.decided, part.decided...)
		}
	}
	if nearest < 0 || f.work.Truth == quantity.Open {
		x.together(f, parts)
		return
	}
	part := parts[nearest]
	part.work.Deciding = true
	f.decided, f.failing, f.short, f.hand = part.decided, part.failing, part.short, part.hand
	if f.work.Truth == quantity.No && !x.negated && len(parts) > 1 {
		part.work.Note = joinNotes(part.work.Note, "nearest alternative")
		f.decided = slices.Clone(part.decided)
		for i := range f.decided {
			note := joinNotes(f.decided[i].Note, part.label)
			if !strings.Contains(note, nearestOf) { // the innermost says enough
				note = joinNotes(note, fmt.Sprintf("%s %d alternatives", nearestOf, len(parts)))
			}
			f.decided[i].Note = note
		}
	}
}

const nearestOf = "nearest of"

// nearer ranks two failing alternatives.
func (f finding) nearer(g finding) bool {
	if f.failing != g.failing {
		return f.failing < g.failing
	}
	return f.short < g.short
}

func joinNotes(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + "; " + b
}

// conditional explains condition ? then : otherwise.
func (x *explainer) conditional(t *trace, f *finding) {
	when := x.walk(t.of[0])
	condition := when.decided
	when.decided = nil
	x.take(f, when)
	f.failing, f.short = 0, 0
	if when.work.Truth != quantity.No {
		x.take(f, x.branch(t, 1, when.work.Truth))
	}
	if when.work.Truth != quantity.Yes {
		x.take(f, x.branch(t, 2, when.work.Truth))
	}
	if len(f.decided) == 0 {
		// Branches that are plain yes or no leave the condition to decide.
		f.decided = condition
	}
}

// branch explains one branch of a condition. While the condition is open, what the branch
// asks is asked only if it comes to that.
func (x *explainer) branch(t *trace, which int, when quantity.Truth) finding {
	part := x.walk(t.of[which])
	if when != quantity.Open {
		return part
	}
	note := "if " + t.of[0].text()
	if which == 2 {
		note = "unless " + t.of[0].text()
	}
	part.decided = slices.Clone(part.decided)
	for i := range part.decided {
		part.decided[i].Note = joinNotes(note, part.decided[i].Note)
	}
	return part
}

// define explains let: the value stands in its slot while the rest is explained.
func (x *explainer) define(t *trace, n *rules.Define, f *finding) {
	if d := definitionOf(t); d != nil {
		d.set(x.m)
	}
	for i, of := range t.of {
		part := x.walk(of)
		if i < len(t.of)-1 {
			part.work.Note = joinNotes(part.work.Note, n.Binding.Name)
			part.decided = nil
		}
		x.take(f, part)
	}
}

// definitionOf is the definition that a let was compiled to, nil for a part or list.
func definitionOf(t *trace) *definition {
	switch n := t.value.node().(type) {
	case *definedTruth:
		return &n.definition
	case *definedNumber:
		return &n.definition
	case *definedSymbol:
		return &n.definition
	}
	return nil
}

// shortfall is by how much a comparison is missed relative to its limit.
func shortfall(reading, limit quantity.Range) float64 {
	gap := max(reading.Low-limit.High, limit.Low-reading.High, 0)
	size := max(math.Abs(limit.Low), math.Abs(limit.High))
	if size == 0 || math.IsInf(size, 0) {
		return gap
	}
	return gap / size
}
