package report

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
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
