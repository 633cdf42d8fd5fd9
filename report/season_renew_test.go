package report

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// Where an event has a gap that the first one has not, nothing is said to last.
func TestSeasonWithALaterGap(t *testing.T) {
	s := workedSeason(t, eventsIn(2, dayOf(t, "2027-05-01"), 10), "2027-03-05", `car "Tern 2" { weighed_mass = "950 kg" }`+"\nnot_fitted = [\"harness\", \"seat\"]\n")
	require.Contains(t, seasonText(t, s, 80), "nothing runs out before the last day of")
	clause := s.Result.Cars[0].Events[1].Whole.Chapters[0].Clauses[0]
	clause.Verdict = engine.Gap
	text := strings.Join(strings.Fields(seasonText(t, s, 80)), " ")
	require.NotContains(t, text, "nothing runs out")
	require.Contains(t, text, "there are gaps at a later event that are none at the first")
}

// A paper is renewed, and what is to be put right has no date to look for.
func TestSeasonWordsOfARenewal(t *testing.T) {
	s := workedSeason(t, eventsIn(2, dayOf(t, "2027-02-20"), 90), "2027-01-05", workedSheet)
	d := s.Result.Renew[0]
	for renewal, words := range map[engine.Renewal][]string{
		engine.Replace: {"replace", "order by 2027-05-21"}, engine.Service: {"service", "service by 2027-05-21"},
		engine.Renew: {"renew", "renew by 2027-05-21"}, engine.PutRight: {"put right", "put right by 2027-05-21"},
	} {
		d.Renewal = renewal
		require.Equal(t, words, []string{renewalWord(d.Renewal), orderWords(d)})
		require.Equal(t, renewal == engine.PutRight, earliestWords(d) == "")
		require.Contains(t, seasonText(t, s, 80), "\n   "+words[0]+"  ")
	}
}

// The date of the next one is told in the words of its label, and up to when where a later
// one is out again.
func TestSeasonWordsOfTheNext(t *testing.T) {
	part := func(of, name string) *vehicle.Particular { return vehicle.BuiltIn().Type(of).Particular(name) }
	days := func(text string) quantity.DayRange {
		read, fault := quantity.ParseDays(text)
		require.Nil(t, fault)
		return read
	}
	made, code := part("seat", "made"), part("tyre", "date_code")
	for want, d := range map[string]*engine.DatedPart{
		"made 2023-02 or later":                                                      {Particular: made, EarliestOf: made, Earliest: days("2023-02"), HasEarliest: true},
		"date code 0622 or later":                                                    {Particular: code, EarliestOf: code, Earliest: days("2022-02-07"), HasEarliest: true, EarliestCode: "0622"},
		"made 2026-07-03 to 2026-12-31":                                              {Particular: made, EarliestOf: made, Earliest: days("2026-07-03"), HasEarliest: true, Latest: days("2026-12-31"), HasLatest: true},
		"a new one made 2023-02-12 or later":                                         {Particular: part("fuel_cell", "recertified_until"), EarliestOf: made, Earliest: days("2023-02-12"), HasEarliest: true},
		"valid until 2028-10-15 or later":                                            {Paper: "log book", Earliest: days("2028-10-15"), HasEarliest: true},
		"one marked not after 2028-07 or later":                                      {Particular: part("seat", "not_after"), EarliestOf: part("seat", "not_after"), Earliest: days("2028-07"), HasEarliest: true},
		"recertified until 2028-07-03 or later, or a new one made 2023-07 or later,": {Particular: part("fuel_cell", "recertified_until"), EarliestOf: part("fuel_cell", "recertified_until"), Earliest: days("2028-07-03"), HasEarliest: true, AnewFrom: "2023-07"},
	} {
		require.Equal(t, want, nextWords(d))
		require.Equal(t, want+" carries the rest of the season", earliestWords(d))
	}
	require.Equal(t, "no date of it decides: see what the clause asks for then", earliestWords(&engine.DatedPart{}))
}
