package report

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestSeasonTellsWhatIsNewlyNotRecorded holds that an event names what an incident since the
// one before has left to be inspected, and nothing that was open before already.
func TestSeasonTellsWhatIsNewlyNotRecorded(t *testing.T) {
	const bales = `not_fitted = ["harness"]
incident "bales" {
  day    = "2027-03-05"
  loaded = ["seat driver"]
}
`
	sheet := "car \"Tern 2\" { weighed_mass = \"950 kg\" }\nseat \"driver\" { made = \"2023-05-04\" }\nseat \"co-driver\" { note = \"undated\" }\n"
	text := seasonText(t, workedSeason(t, eventsIn(3, dayOf(t, "2027-03-01"), 10), "2027-02-20", sheet+bales), 100)
	require.Equal(t, 1, strings.Count(text, "not recorded: 7.2 Seats on a list of the year, of seat driver\n"))
	require.Equal(t, 1, strings.Count(text, "   new       not recorded: "))
	require.Equal(t, 1, strings.Count(text, "             not recorded: "), "the log book's own line")
	require.NotContains(t, text, "of seats driver and co-driver", "the one that was open before is not new")

	without := seasonText(t, workedSeason(t, eventsIn(3, dayOf(t, "2027-03-01"), 10), "2027-02-20", sheet+"not_fitted = [\"harness\"]\n"), 100)
	require.NotContains(t, without, "not recorded: ")
}
