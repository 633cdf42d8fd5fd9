package report

import (
	"slices"
	"strconv"

	"gapsheet/engine"
)

// alike are dated parts of one whole that are told of as one: the straps of a harness that
// end together. There is at least one, and all are like the first.
type alike []*engine.DatedPart

// alikes puts the dated parts of a car together that belong to one whole, are of one type
// and stand the same on every day, each group where its first part is.
func alikes(dated []*engine.DatedPart) []alike {
	var groups []alike
	for _, d := range dated {
		at := slices.IndexFunc(groups, func(g alike) bool { return isAlike(g[0], d) })
		if at >= 0 {
			groups[at] = append(groups[at], d)
		} else {
			groups = append(groups, alike{d})
		}
	}
	return groups
}

// isAlike says whether two parts of a car are told of as one. The words of their limits
// may differ, as those name the part.
func isAlike(a, b *engine.DatedPart) bool {
	inOne := a.Part.Within != nil && a.Part.Within.Within != nil && a.Part.Within == b.Part.Within
	return inOne && a.Part.Type == b.Part.Type && a.Particular == b.Particular && a.Renewal == b.Renewal &&
		a.HasLastDay == b.HasLastDay && a.LastDay == b.LastDay && a.IsOver == b.IsOver && a.Uncertain == b.Uncertain &&
		a.Clause == b.Clause && a.Missed == b.Missed && a.HasOrderBy == b.HasOrderBy && a.OrderBy == b.OrderBy &&
		a.HasEarliest == b.HasEarliest && a.Earliest == b.Earliest &&
		slices.EqualFunc(a.Spans, b.Spans, func(s, t engine.Span) bool {
			return s.From == t.From && s.Until == t.Until && s.Verdict == t.Verdict && s.Clause == t.Clause
		})
}

// fewAlike is how many parts are named one by one where they are told of as one.
const fewAlike = 2

// name is what the parts are called: "harness driver", "left lap and right lap straps of
// harness driver", "6 straps of harness driver".
func (g alike) name() string {
	var things []named
	for _, d := range g {
		things = append(things, named{d.Name, d.Part})
	}
	if _, after := shared(things[0]); len(g) > fewAlike && after != "" {
		return strconv.Itoa(len(g)) + after
	}
	return nameList(things)
}
