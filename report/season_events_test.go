package report

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
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
	season := eventsIn(3, dayOf(t, "2027-03-01"), 10)
	text := seasonText(t, workedSeason(t, season, "2027-02-20", sheet+bales), 100)
	require.Equal(t, 1, strings.Count(text, "   open      not recorded: 7.2 Seats on a list of the year, of seat co-driver\n"), "at the first event all")
	require.Equal(t, 1, strings.Count(text, "   open      not recorded: 7.2 Seats on a list of the year, of seat driver\n"), "what is new, and not what was open before")
	require.Equal(t, 1, strings.Count(text, "             not recorded: incident bales "), "the log book's own line")
	require.Equal(t, 3, strings.Count(text, "not recorded: "))

	without := seasonText(t, workedSeason(t, season, "2027-02-20", sheet+"not_fitted = [\"harness\"]\n"), 100)
	require.Equal(t, 1, strings.Count(without, "not recorded: "))
}

// TestOpenClausesOfAnEventAreBounded holds that a sheet that is hardly begun fills no page.
func TestOpenClausesOfAnEventAreBounded(t *testing.T) {
	written := func(n int) string {
		var open []finding
		for i := range n {
			open = append(open, finding{clause: &rules.Clause{Number: fmt.Sprintf("1.%d", i+1), Title: "Wall"}})
		}
		var out bytes.Buffer
		screen := &Screen{Writer: &out, Width: 80, Paint: NewPaint(false)}
		p := screen.page()
		writeNewlyOpen(p, open)
		require.NoError(t, p.done())
		return out.String()
	}
	require.Equal(t, 9, strings.Count(written(9), "\n"))
	require.Contains(t, written(9), "1.9 Wall")
	require.Equal(t, 9, strings.Count(written(60), "\n"))
	require.Contains(t, written(60), "             and 52 clauses more; a pre-check tells them\n")
}
