package vehicle

import (
	"fmt"
	"os"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/hashicorp/hcl/v2"
	"github.com/stretchr/testify/require"
)

// framed finds the framed examples of SHEET.md: what it is marked as, and what it holds.
var framed = regexp.MustCompile("(?ms)^```(\\w+)( wrong)?\n(.*?)^```$")

// loadExample reads an example: as a sheet if it has a car, else as a scrap of one.
func loadExample(text string) (*Sheet, hcl.Diagnostics) {
	folder := fstest.MapFS{"sheet.hcl": {Data: []byte(text)}, "papers/tube-A.pdf": {}}
	if strings.Contains(text, "car \"") {
		return Load(folder, "sheet.hcl", "sheet.hcl", BuiltIn(), Options{})
	}
	source, faults := ParseSource("sheet.hcl", []byte(text))
	if faults.HasErrors() {
		return nil, faults
	}
	return DecodeScrap(source, source.Body, BuiltIn())
}

// TestExamplesOfTheReference reads every example of SHEET.md. One marked as wrong has to
// have the faults that stand in the frame after it, word for word; the others none.
func TestExamplesOfTheReference(t *testing.T) {
	data, err := os.ReadFile("SHEET.md")
	require.NoError(t, err)
	examples := framed.FindAllStringSubmatch(string(data), -1)
	wrong := 0
	for i, example := range examples {
		if example[1] != "hcl" {
			require.Equal(t, " wrong", examples[i-1][2], "a frame of messages follows a wrong example")
			continue
		}
		sheet, faults := loadExample(example[3])
		if example[2] == "" {
			require.Empty(t, faults, example[3])
			require.NotNil(t, sheet)
			continue
		}
		wrong++
		var said strings.Builder
		for _, d := range faults {
			fmt.Fprintf(&said, "%d:%d: %s. %s\n", d.Subject.Start.Line, d.Subject.Start.Column, d.Summary, d.Detail)
		}
		require.Less(t, i+1, len(examples))
		require.Equal(t, "text", examples[i+1][1])
		require.Equal(t, examples[i+1][3], said.String())
	}
	require.GreaterOrEqual(t, wrong, 5)
	require.GreaterOrEqual(t, len(examples), 20)
}
