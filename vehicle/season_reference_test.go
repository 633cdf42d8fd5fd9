package vehicle

import (
	"fmt"
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/hashicorp/hcl/v2"
	"github.com/stretchr/testify/require"
)

// loadSeasonExample reads an example of SEASON.md: a season, or a scrap of a sheet. It
// reports whether there is one without fault.
func loadSeasonExample(text string) (hcl.Diagnostics, bool) {
	if strings.HasPrefix(text, "season ") {
		season, faults := LoadSeason(fstest.MapFS{"season.hcl": {Data: []byte(text)}}, "season.hcl", "season.hcl", nil, BuiltIn())
		return faults, season != nil
	}
	sheet, faults := loadExample(text)
	return faults, sheet != nil
}

// TestExamplesOfTheSeason reads every example of SEASON.md. One marked as wrong has to have
// the faults that stand in the frame after it, word for word; the others none.
func TestExamplesOfTheSeason(t *testing.T) {
	const file = "SEASON.md"
	data, err := os.ReadFile(file)
	require.NoError(t, err)
	examples := framed.FindAllStringSubmatchIndex(string(data), -1)
	require.GreaterOrEqual(t, len(examples), 12)
	written := string(data)
	wrong := 0
	for i := len(examples) - 1; i >= 0; i-- {
		at := examples[i]
		text := string(data[at[6]:at[7]])
		if string(data[at[2]:at[3]]) != "hcl" {
			require.Equal(t, " wrong", string(data[examples[i-1][4]:examples[i-1][5]]), "a frame of messages follows a wrong example")
			continue
		}
		faults, ok := loadSeasonExample(text)
		if at[4] < 0 {
			require.Empty(t, faults, text)
			require.True(t, ok)
			continue
		}
		wrong++
		require.False(t, ok)
		var said strings.Builder
		for _, d := range faults {
			fmt.Fprintf(&said, "%d:%d: %s. %s\n", d.Subject.Start.Line, d.Subject.Start.Column, d.Summary, d.Detail)
		}
		next := examples[i+1]
		require.Equal(t, "text", string(data[next[2]:next[3]]))
		written = written[:next[6]] + said.String() + written[next[7]:]
	}
	require.GreaterOrEqual(t, wrong, 4)
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(written), 0o644))
		return
	}
	require.Equal(t, written, string(data), "run go test ./vehicle -run TestExamplesOfTheSeason -update")
}

func TestTheSeasonCarriesItsCautions(t *testing.T) {
	data, err := os.ReadFile("SEASON.md")
	require.NoError(t, err)
	for _, caution := range []string{"In date is not sound.", "heavy impact, a cut, or contact with fuel or acid", "by a licensed firm or one that their maker approves",
		"Never alter a label, a date or a reading", "The official technical inspection decides."} {
		require.Contains(t, string(data), caution)
	}
	sheet, err := os.ReadFile("SHEET.md")
	require.NoError(t, err)
	require.Contains(t, string(sheet), "(SEASON.md)")
}
