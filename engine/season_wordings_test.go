package engine

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const oldHelmet = `car "tried" {
  weighed_mass = "950 kg"
}
crew_member "driver" {
  helmet {
    standard = "Snell SA2015"
  }
}
`

// helmetClause is a clause of helmets with what makes its wording.
func helmetClause(period, list string) string {
	return `  clause "1.1" {
    title   = "Helmets"
    concern = "safety"
` + period + `    across  = "member in crew_members"
    demand  = "member.helmet.standard in [` + list + `]"
  }
`
}

func bookWith(head string, clauses ...string) string {
	return "rulebook \"Tried\" {\n" + head + "}\nchapter \"1\" {\n  title = \"Helmets\"\n" + strings.Join(clauses, "") + "}\n"
}

const (
	bothStandards = "'Snell SA2015', 'Snell SA2020'"
	newStandard   = "'Snell SA2020'"
)

// A standard can be withdrawn without any formula that mentions a day: by a clause that takes
// over from another of its number, by one that comes into force, or by another edition. The
// helmet is what ends, not the person who wears it.
func TestSeasonWithdrawnByWording(t *testing.T) {
	for name, books := range map[string][]string{
		"successive wordings": {bookWith("  edition = \"1\"\n", helmetClause("    until = \"2027-12-31\"\n", bothStandards), helmetClause("    from = \"2028-01-01\"\n", newStandard))},
		"a clause to come":    {bookWith("  edition = \"1\"\n", helmetClause("    from = \"2028-01-01\"\n", newStandard))},
		"editions": {
			bookWith("  edition = \"1\"\n  in_force = \"2026-01-01\"\n", helmetClause("", bothStandards)),
			bookWith("  edition = \"2\"\n  in_force = \"2028-01-01\"\n", helmetClause("", newStandard)),
		},
	} {
		r := seasonOf(t, threeEvents, oldHelmet, "2027-01-10", books...)
		require.Len(t, r.Renew, 1, name)
		helmet := r.Renew[0]
		require.Equal(t, []string{"helmet of crew member driver", "2027-12-31", "Three", "2028-01-27"},
			[]string{helmet.Name, helmet.LastDay.String(), helmet.Missed.Name, helmet.OrderBy.String()}, name)
		require.Equal(t, Replace, helmet.Renewal, name)
		require.Contains(t, helmet.Limit, "Snell SA2015", name)
		require.False(t, helmet.HasEarliest, name)
	}
}

// What is a gap by every wording does not run out, nor does what a clause asked before the
// season began.
func TestSeasonNotWithdrawn(t *testing.T) {
	for name, book := range map[string]string{
		"by both":     bookWith("  edition = \"1\"\n", helmetClause("    until = \"2027-12-31\"\n", newStandard), helmetClause("    from = \"2028-01-01\"\n", newStandard)),
		"long before": bookWith("  edition = \"1\"\n", helmetClause("    from = \"2020-01-01\"\n", newStandard)),
	} {
		r := seasonOf(t, threeEvents, oldHelmet, "2027-01-10", book)
		require.Equal(t, Gap, r.Cars[0].Events[0].Whole.Worst, name)
		require.Empty(t, r.Renew, name)
	}
	r := seasonOf(t, threeEvents, oldHelmet, "2028-01-10", bookWith("  edition = \"1\"\n",
		helmetClause("    until = \"2027-12-31\"\n", bothStandards), helmetClause("    from = \"2028-01-01\"\n", newStandard)))
	require.True(t, r.Renew[0].IsOver, "it was good for this club up to the new year")
	require.Equal(t, "2027-12-31", r.Renew[0].LastDay.String())
}

// The car as a whole is neither replaced nor ordered.
func TestSeasonOfANewMass(t *testing.T) {
	r := seasonOf(t, threeEvents, oldHelmet, "2027-01-10", bookWith("  edition = \"1\"\n", `  clause "1.2" {
    title   = "Mass"
    concern = "eligibility"
    from    = "2027-07-01"
    demand  = "car.weighed_mass >= 960*kg"
  }
`))
	require.Len(t, r.Renew, 1)
	car := r.Renew[0]
	require.Equal(t, []string{"car tried", "2027-06-30", "Two"}, []string{car.Name, car.LastDay.String(), car.Missed.Name})
	require.Equal(t, PutRight, car.Renewal)
	require.False(t, car.HasOrderBy)
}

// A date that carries a part does not carry one whose standard is withdrawn as well.
func TestSeasonDatedAndWithdrawn(t *testing.T) {
	sheet := strings.Replace(oldHelmet, "SA2015\"\n", "SA2015\"\n    made = \"2017-05-01\"\n", 1)
	tenYears := strings.Replace(strings.Replace(helmetClause("", ""), "1.1", "1.2", 1), "member.helmet.standard in []", "on <= years_after(member.helmet.made, 10)", 1)
	r := seasonOf(t, threeEvents, sheet, "2027-01-10", bookWith("  edition = \"1\"\n", tenYears))
	require.Equal(t, "2018-02-12", r.Renew[0].Earliest.String())
	r = seasonOf(t, threeEvents, sheet, "2027-01-10", bookWith("  edition = \"1\"\n", tenYears,
		helmetClause("    until = \"2027-12-31\"\n", bothStandards), helmetClause("    from = \"2028-01-01\"\n", newStandard)))
	require.Equal(t, "2027-05-01", r.Renew[0].LastDay.String())
	require.False(t, r.Renew[0].HasEarliest)
}
