package rules

import (
	"fmt"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// The ends of a period that has none. They lie some three thousand million years off, far
// from every day that can be written, and far from where reckoning with days ends.
const (
	BeforeAll quantity.Day = -1 << 40
	AfterAll  quantity.Day = 1 << 40
)

// Always is the period without ends.
var Always = Period{BeforeAll, AfterAll}

// Period is the days over which a rulebook or a clause is in force, both ends included. An
// end that the author did not give is BeforeAll or AfterAll.
type Period struct {
	From, Until quantity.Day
}

// Holds reports whether a day lies in the period.
func (p Period) Holds(day quantity.Day) bool { return p.From <= day && day <= p.Until }

// Bounded reports whether the author gave an end.
func (p Period) Bounded() bool { return p != Always }

// common is the days that lie in both periods; ok is false where there are none.
func (p Period) common(q Period) (both Period, ok bool) {
	both = Period{max(p.From, q.From), min(p.Until, q.Until)}
	return both, both.From <= both.Until
}

// String says which days those are: "from 2027-01-01 to 2027-06-30", "from 2027-01-01 on",
// "up to 2027-06-30", "always".
func (p Period) String() string {
	switch {
	case p.From <= BeforeAll && p.Until >= AfterAll:
		return "always"
	case p.Until >= AfterAll:
		return "from " + p.From.String() + " on"
	case p.From <= BeforeAll:
		return "up to " + p.Until.String()
	case p.From == p.Until:
		return "on " + p.From.String()
	}
	return "from " + p.From.String() + " to " + p.Until.String()
}

// period reads a period from two keys that hold a day, a month or a year: from its first
// day, until its last. from is the first as it was written.
func (f *fields) period(fromKey, untilKey string) (p Period, from quantity.DayRange) {
	p = Always
	from, hasFrom := f.days(fromKey)
	until, hasUntil := f.days(untilKey)
	if hasFrom {
		p.From = from.From
	}
	if hasUntil {
		p.Until = until.To
	}
	if p.From > p.Until {
		f.fault("period-backwards", f.at(untilKey), "A period that ends before it begins", fmt.Sprintf(
			"The %s has %s %s, and ends with %s. Write as %s the last day on which it counts, or leave the line out.", f.what, fromKey, from, until, untilKey))
		return Always, from
	}
	return p, from
}

// readPeriod reads the days over which a clause is in force; they lie within those of the
// rulebook.
func (l *loader) readPeriod(c *Clause, f *fields) {
	c.Period, _ = f.period("from", "until")
	own := l.book.Period
	for _, end := range []struct {
		key string
		day quantity.Day
	}{{"from", c.Period.From}, {"until", c.Period.Until}} {
		given := end.day != BeforeAll && end.day != AfterAll
		if given && !own.Holds(end.day) {
			f.fault("period-outside", f.at(end.key), "Outside the rulebook's own days", fmt.Sprintf(
				"Found %s as %s of the %s, but the rulebook is in force %s. Write a day of that time, or leave the line out where the clause counts as long as the rulebook does.",
				end.day, end.key, f.what, own))
			return
		}
	}
}

// A wording is one clause of a number, with the place of that number.
type wording struct {
	clause *Clause
	at     hcl.Range
}

// enterWording notes the wording of a clause. Several wordings of one number follow each
// other in time; two that count on one day are a fault.
func (l *loader) enterWording(c *Clause, at hcl.Range) {
	number := foldNumber(c.Number)
	defer func() { l.wordings[number] = append(l.wordings[number], wording{c, at}) }()
	for _, other := range l.wordings[number] {
		both, overlap := c.Period.common(other.clause.Period)
		switch {
		case !overlap:
		case !c.Period.Bounded() && !other.clause.Period.Bounded():
			l.report(vehicle.SaidTwice(at, "clause "+c.Number, other.at))
			return
		default:
			l.report(vehicle.Fault("wordings-overlap", at, "Two wordings for one day", fmt.Sprintf(
				"Found clause %s twice, here and at %s, and both count %s. %s",
				c.Number, vehicle.PlaceText(other.at), both, succession(other.clause.Period, c.Period))))
			return
		}
	}
}

// succession says what to write so that one of two wordings follows the other.
func succession(first, second Period) string {
	if second.From < first.From {
		first, second = second, first
	}
	switch {
	case second.From > first.From:
		return fmt.Sprintf("Write until = \"%s\" in the one that ends before the other begins.", second.From-1)
	case first.Until != second.Until:
		return fmt.Sprintf("Write from = \"%s\" in the one that lasts longer.", min(first.Until, second.Until)+1)
	}
	return "Give each its own days: until in the one that ends, from with the day after in the one that follows."
}

// ClauseOn finds the clause of a number that is in force on a day; nil when none is. The
// rulebook's own period is not asked.
func (b *Rulebook) ClauseOn(number string, day quantity.Day) *Clause {
	return b.clauseWhere(number, func(c *Clause) bool { return c.Period.Holds(day) })
}

// ClauseNumbered finds a clause by its number, however its letters are written: the first
// of several wordings. Nil when the book has none of that number.
func (b *Rulebook) ClauseNumbered(number string) *Clause {
	return b.clauseWhere(number, func(*Clause) bool { return true })
}

// clauseWhere is the first clause of a number that fits.
func (b *Rulebook) clauseWhere(number string, fits func(*Clause) bool) *Clause {
	wanted := vehicle.FoldText(number)
	for _, chapter := range b.Chapters {
		for _, clause := range chapter.Clauses {
			if vehicle.FoldText(clause.Number) == wanted && fits(clause) {
				return clause
			}
		}
	}
	return nil
}
