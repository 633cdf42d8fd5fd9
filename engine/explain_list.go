package engine

import (
	"fmt"
	"math"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// gather explains a list function by its members.
func (x *explainer) gather(t *trace, n *rules.Gather, f *finding) {
	if n.Fold == rules.FoldNone {
		x.negated = !x.negated
		defer func() { x.negated = !x.negated }()
	}
	list := t.of[0].list
	var body *trace
	if len(t.of) > 1 {
		body = t.of[1]
	}
	var parts []finding
	for i := range list.length(x.m) {
		member := list.at(x.m, i)
		if member == quantity.No {
			continue
		}
		if x.walked > walkLimit {
			f.work.Note = joinNotes(f.work.Note, "further members not gone into")
			break
		}
		part := finding{work: &Working{Text: x.memberName(list), Value: x.memberValue(t, list)}, hand: math.Inf(1)}
		if body != nil {
			part = x.walk(body)
			part.label = x.memberName(list) + " of " + t.of[0].text()
			part.work.Note = joinNotes(x.memberName(list), part.work.Note)
		} else if read := mapBody(t.of[0]); read != nil {
			part.decided = x.walk(read).decided
		}
		if member == quantity.Open {
			part.work.Note = joinNotes(part.work.Note, "may not be one of them")
		}
		parts = append(parts, part)
	}
	x.members(n, f, parts)
	if len(parts) == 0 && f.work.HasTruth && list.complete(x.m) {
		x.nobody(t, f)
	}
	if !list.complete(x.m) {
		f.work.Note = joinNotes(f.work.Note, "there may be others")
	}
	if len(f.work.Of) > shownMembers {
		x.shorten(f)
	}
}

// members puts the members' findings under a list function.
func (x *explainer) members(n *rules.Gather, f *finding, parts []finding) {
	switch n.Fold {
	case rules.FoldAny:
		x.alternatives(f, parts)
	case rules.FoldOne:
		x.exactlyOne(f, parts)
	case rules.FoldAll, rules.FoldNone:
		for _, part := range parts {
			same := part.work.Truth == f.work.Truth
			if n.Fold == rules.FoldNone {
				same = part.work.Truth == f.work.Truth.Not()
			}
			if same {
				x.take(f, part)
			} else {
				f.work.Of = append(f.work.Of, part.work)
			}
		}
	default:
		for _, part := range parts {
			f.work.Of = append(f.work.Of, part.work)
		}
	}
}

// exactlyOne explains one(list, …): how many there are decided it.
func (x *explainer) exactlyOne(f *finding, parts []finding) {
	low, high := 0, 0
	for _, part := range parts {
		if part.work.Truth != quantity.No {
			high++
			part.work.Deciding = true
		}
		if part.work.Truth == quantity.Yes {
			low++
		}
		f.work.Of = append(f.work.Of, part.work)
	}
	d := Decided{What: f.work.Text, Sense: "exactly", Reading: fmt.Sprint(low), Limit: "1", Truth: x.asked(f.work.Truth)}
	if low != high {
		d.Reading = fmt.Sprintf("%d to %d", low, high)
	}
	x.settled(f, d)
}

// mapBody is the trace of what a list was mapped to, nil for other lists.
func mapBody(t *trace) *trace {
	if _, ok := t.tree.(*rules.Map); ok {
		return t.of[len(t.of)-1]
	}
	return nil
}

// shorten keeps the members that decided, and the first of the others.
func (x *explainer) shorten(f *finding) {
	var kept []*Working
	for _, deciding := range []bool{true, false} {
		for _, w := range f.work.Of {
			if w.Deciding == deciding && len(kept) < shownMembers {
				kept = append(kept, w)
			}
		}
	}
	f.work.Note = joinNotes(f.work.Note, Plural(len(f.work.Of)-len(kept), "more member", "more members"))
	f.work.Of = kept
}

// farFromMet ranks an alternative that hangs on a list without members behind all others:
// no figure of it can be put right.
const farFromMet = 1000

// nobody explains a list function whose list has no members: which list it is, or which
// value no band of a table holds. It is the comparison that decided, for there is no other.
func (x *explainer) nobody(t *trace, f *finding) {
	d := Decided{What: t.of[0].text(), Reading: "empty", Truth: x.asked(f.work.Truth)}
	if in, ok := t.of[0].tree.(*rules.InBand); ok && len(t.of[0].of) > 0 {
		value := t.of[0].of[0]
		d.What, d.Reading, d.Place = value.text(), x.value(value), x.placeOf(value)
		d.Note = "no band of table." + in.Table.Name + " holds it"
	}
	x.settled(f, d)
	f.work.Note = joinNotes(f.work.Note, joinNotes("no member", d.Note))
	if d.Truth == quantity.No {
		f.failing = farFromMet
	}
}
