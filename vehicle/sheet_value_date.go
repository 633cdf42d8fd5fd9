package vehicle

import (
	"cmp"
	"fmt"
	"slices"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// date reads a day, or a month or year where no more is known. What happens again and again
// can be a list of dates.
func (n *entry) date(e hclsyntax.Expression) {
	list, isList := e.(*hclsyntax.TupleConsExpr)
	if n.particular.Happens != HappensUnsaid && isList {
		n.dates(list)
		return
	}
	if days, ok := n.oneDate(e); ok {
		n.set(n.particular, Value{Days: days})
	}
}

// dates reads the days of what happens again and again. The last one counts, which of two
// known to their month or year is the one that may be the later.
func (n *entry) dates(list *hclsyntax.TupleConsExpr) {
	x := n.particular
	switch count := len(list.Exprs); {
	case count == 0:
		n.wrong("list-empty", list.Range(), "An empty list", "an empty list", "Write the day, or \"none\" where there was none.")
		return
	case count > 1 && x.Happens == HappensOnce:
		n.wrong("happened-twice", list.Range(), "More than once", fmt.Sprintf("%d dates", count),
			fmt.Sprintf("A %s has that once at most. Write the one that its papers name; what came after it does not count.", plain(n.part.Type.Name)))
		return
	case count > mostListed:
		n.wrong("names-count", list.Range(), "Too many dates", fmt.Sprintf("%d dates", count), fmt.Sprintf("There can be at most %d.", mostListed))
		return
	}
	var read []quantity.DayRange
	for _, member := range list.Exprs {
		if days, ok := n.oneDate(member); ok {
			read = append(read, days)
		}
	}
	if len(read) < len(list.Exprs) {
		return
	}
	slices.SortStableFunc(read, func(a, b quantity.DayRange) int { return cmp.Or(cmp.Compare(a.To, b.To), cmp.Compare(a.From, b.From)) })
	last := len(read) - 1
	n.set(x, Value{Days: read[last], Earlier: read[:last]})
}

// oneDate reads one date.
func (n *entry) oneDate(e hclsyntax.Expression) (quantity.DayRange, bool) {
	x := n.particular
	t, ok := n.words(e, "Write a day, month or year in double quotes, as in \"2027-03-14\", \"2027-03\" or \"2027\".")
	if !ok {
		return quantity.DayRange{}, false
	}
	days, fault := quantity.ParseDays(t.text)
	switch {
	case fault != nil:
		n.faults = append(n.faults, FigureFault(fault, t.place))
	case days.From < x.PlausibleDays.From || days.To > x.PlausibleDays.To:
		n.wrong("not-plausible", t.all, "A date out of all proportion", Quote(t.text),
			fmt.Sprintf("Plausible is %s to %s. Look at the year.", x.PlausibleDays.From, x.PlausibleDays.To))
	default:
		return days, true
	}
	return quantity.DayRange{}, false
}
