package engine

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
)

// The next label that tells an end has to tell one behind the season, which lies ahead of the
// event that is missed.
func TestEarliestEndOfALabel(t *testing.T) {
	for stated, want := range map[string]string{"2027-02": "2028-02", "2026": "2028", "2027-06-30": "2028-02-12"} {
		sheet := strings.Replace(beltAndBottle, "2031", stated, 1)
		r := seasonOf(t, threeEvents, sheet, "2027-01-10", datedBook)
		found := false
		for _, d := range r.Renew {
			if d.Name == "seat driver" {
				found = true
				require.True(t, d.HasEarliest, stated)
				require.Equal(t, want, d.Earliest.String(), stated)
			}
		}
		require.True(t, found, stated)
	}
}

// seasonOfClause works a sheet of one part over the three events, by one clause.
func seasonOfClause(t *testing.T, part, demand string) *DatedPart {
	t.Helper()
	r := seasonOf(t, threeEvents, "car \"tried\" {\n}\n"+part, "2027-01-10", bookWith("  edition = \"1\"\n", `  clause "1.1" {
    title   = "Tried"
    concern = "safety"
    demand  = "`+demand+`"
  }
`))
	require.Len(t, r.Renew, 1)
	return r.Renew[0]
}

// The next tyre is told by its code. Six years before 2028-02-12, a Saturday, lies in week 06
// of 2022, which ends on the 13th (calendar arithmetic by ISO 8601-1:2019).
func TestEarliestTyre(t *testing.T) {
	tyre := func(code string) string {
		return "wheel \"front left\" {\n  tyre {\n    date_code = \"" + code + "\"\n  }\n}\n"
	}
	demand := "on <= years_after(end_of_label(week_year(wheel['front left'].tyre.date_code)), 6)"
	d := seasonOfClause(t, tyre("1021"), demand)
	require.Equal(t, []string{"2027-03-14", "0622"}, []string{d.LastDay.String(), d.NextDate()})
	require.Equal(t, "2022-02-07", d.Earliest.From.String())
	require.Empty(t, d.NextUntil())

	d = seasonOfClause(t, tyre("5220"), demand)
	require.Equal(t, []string{"2026-12-27", "0622"}, []string{d.LastDay.String(), d.NextDate()})
	require.True(t, d.IsOver)
}

func TestWeekCodes(t *testing.T) {
	for monday := rules.WeekCodes.From; monday <= rules.WeekCodes.To; monday += 7 {
		week, fault := rules.WeekOfCode(weekCode(monday))
		require.Empty(t, fault)
		require.Equal(t, monday, week.From)
	}
}

// Where newer can be too new, both ends of the window are told; a narrow one is found by the
// date that the clause names.
func TestEarliestInAWindow(t *testing.T) {
	bottle := "extinguisher \"1\" {\n  made = \"2012-07-01\"\n}\n"
	d := seasonOfClause(t, bottle, "extinguisher['1'].made <= date('2026-12-31') and on <= years_after(extinguisher['1'].made, 2)")
	require.Equal(t, []string{"2026-02-12", "2026-12-31"}, []string{d.NextDate(), d.NextUntil()})
	d = seasonOfClause(t, bottle, "extinguisher['1'].made <= date('2026-02-13') and on <= years_after(extinguisher['1'].made, 2)")
	require.Equal(t, []string{"2026-02-12", "2026-02-13"}, []string{d.NextDate(), d.NextUntil()})
	d = seasonOfClause(t, bottle, "extinguisher['1'].made <= date('2026-02-11') and on <= years_after(extinguisher['1'].made, 2)")
	require.False(t, d.HasEarliest, "what is new enough is too new")
	require.Empty(t, d.NextDate())

	d = seasonOfClause(t, strings.Replace(bottle, "2012-07-01", "2012-07", 1), "extinguisher['1'].made <= date('2026-12-31') and on <= years_after(extinguisher['1'].made, 2)")
	require.Equal(t, []string{"2026-03", "2026-12"}, []string{d.NextDate(), d.NextUntil()}, "2026-02 may be before the 12th")
}

// A fuel cell that is recertified once only is followed by a new one.
func TestEarliestAfterARecertification(t *testing.T) {
	cell := "fuel_cell {\n  made              = \"2020-06-10\"\n  recertified       = \"2025-06-02\"\n  recertified_until = \"2027-06-10\"\n}\n"
	d := seasonOfClause(t, cell, "on <= years_after(fuel_cell.made, 5) or recorded(fuel_cell.recertified) and on <= earliest(fuel_cell.recertified_until, years_after(fuel_cell.made, 7))")
	require.Equal(t, "2027-06-10", d.LastDay.String())
	require.Equal(t, []string{"2023-02-12", "made"}, []string{d.NextDate(), d.EarliestOf.Name})
	require.Equal(t, Replace, d.Renewal)
	require.Empty(t, d.AnewFrom)

	d = seasonOfClause(t, cell, "on <= years_after(fuel_cell.made, 5) or on <= fuel_cell.recertified_until")
	require.Equal(t, []string{"2028-02-12", "recertified_until", "2023-02-12", ""}, []string{d.NextDate(), d.EarliestOf.Name, d.AnewFrom, d.AnewUntil}, "either does")
}

// The next paper has to be valid up to the last day on which it is asked for.
func TestEarliestPaper(t *testing.T) {
	sheet := "car \"tried\" {\n}\nevidence \"licence\" {\n  valid_until = \"2027-08-01\"\n}\n"
	r := seasonOf(t, threeEvents, sheet, "2027-01-10", bookWith("  edition = \"1\"\n", `  clause "1.1" {
    title    = "Licence"
    concern  = "eligibility"
    evidence = ["licence"]
    look_for = "The licence."
  }
`))
	require.Len(t, r.Renew, 1)
	paper := r.Renew[0]
	require.Equal(t, []string{"2027-08-01", "2028-02-12", "Two"}, []string{paper.LastDay.String(), paper.NextDate(), paper.Missed.Name})
	require.Equal(t, Renew, paper.Renewal)
	require.Nil(t, paper.EarliestOf)
}
