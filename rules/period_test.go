package rules

import (
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

// succeeding is a rulebook in which one clause follows another of the same number, in
// another chapter's wording, with a case for each.
const succeeding = `rulebook "Marram" {
  edition  = "2027"
  in_force = "2027"
  until    = "2028-02"
}
chapter "4" {
  title = "Harness"
  clause "4.1" {
    title   = "Label"
    concern = "safety"
    across  = ["harness in harnesses", "strap in harness.straps"]
    demand  = "strap.not_after >= on"
    until   = "2027-06"
  }
  clause "4.2" {
    title   = "Wall"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.wall >= 2.5*mm"
    as_at   = "years_after(cage.built, 0)"
  }
  clause "4.1" {
    title   = "Label and year"
    concern = "safety"
    across  = "harness in harnesses"
    demand  = "all(harness.straps, .not_after >= event.last_day)"
    from    = "2027-07"
  }
}
worked_case "before" {
  clause = "4.1"
  on     = "2027-06-30"
  answer = "not recorded"
  reason = "no label"
  as_built {}
}
worked_case "after" {
  clause = "4.1"
  on     = "2027-07-01"
  answer = "not recorded"
  reason = "no label"
  as_built {}
}
worked_case "no day" {
  clause = "4.1"
  answer = "not recorded"
  reason = "no label"
  as_built {}
}
`

func TestWordingsFollowEachOther(t *testing.T) {
	book, faults := loadText(succeeding)
	require.Empty(t, describe(faults))
	dayOf := func(text string) quantity.Day { return days(t, text).From }
	require.Equal(t, Period{dayOf("2027-01-01"), dayOf("2028-02-29")}, book.Period)
	first, wall, second := book.Chapters[0].Clauses[0], book.Chapters[0].Clauses[1], book.Chapters[0].Clauses[2]
	require.Equal(t, Period{BeforeAll, dayOf("2027-06-30")}, first.Period)
	require.Equal(t, Period{dayOf("2027-07-01"), AfterAll}, second.Period)
	require.Equal(t, Always, wall.Period)
	require.Nil(t, first.AsAt)
	require.Equal(t, Date, wall.AsAt.Tree.Type().Kind)

	require.Same(t, first, book.ClauseNumbered("4.1"))
	require.Same(t, first, book.ClauseOn("4.1", dayOf("2027-06-30")))
	require.Same(t, second, book.ClauseOn("4.1", dayOf("2027-07-01")))
	require.Same(t, wall, book.ClauseOn("4.2", dayOf("1999-07-01")))
	require.Nil(t, book.ClauseOn("4.3", dayOf("2027-07-01")))
	require.True(t, first.SelectedBy("4") && second.SelectedBy("4.1"))

	require.Same(t, first, book.Cases[0].Clause)
	require.Same(t, second, book.Cases[1].Clause)
	require.Same(t, first, book.Cases[2].Clause, "without a day the first")
}

func TestPeriodHoldsBothItsEnds(t *testing.T) {
	from, until := days(t, "2027-03-01").From, days(t, "2027-03-31").From
	for text, p := range map[string]Period{
		"from 2027-03-01 to 2027-03-31": {from, until},
		"from 2027-03-01 on":            {from, AfterAll},
		"up to 2027-03-31":              {BeforeAll, until},
		"on 2027-03-01":                 {from, from},
		"always":                        Always,
	} {
		require.Equal(t, text, p.String())
		require.Equal(t, p != Always, p.Bounded())
		require.True(t, p.Holds(p.From) && p.Holds(p.Until), text)
		require.False(t, p.Holds(p.From-1) || p.Holds(p.Until+1), text)
	}
}
