package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

const smallCage = `car "Tessel 16" {}

tube_stock "A" { ordered = "45 x 2.5 mm" }

joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
joint "B" { at = ["0 mm", "600 mm", "1150 mm"] }

tube "1" {
  stock   = "A"
  through = ["A", "B"]
}

foot "1" { joint = "A" }
foot "2" { joint = "B" }
`

func TestCageThatCannotBeTold(t *testing.T) {
	sheet := filepath.Join(t.TempDir(), "car.hcl")
	require.NoError(t, os.WriteFile(sheet, []byte(smallCage), 0o666))
	a, _, stderr := appOf("")
	a.stdout = fullDisk{}
	require.Equal(t, exitOwn, a.run([]string{"cage", sheet}))
	require.Contains(t, stderr.String(), "The results could not be written: no space left.")
}

// Files are all there or none is: what is written beside them is gone in either case, and a
// file of before stays as it was.
func TestWriteAll(t *testing.T) {
	folder := t.TempDir()
	there := filepath.Join(folder, "a.csv")
	require.NoError(t, os.WriteFile(there, []byte("Cage cut list, before"), 0o666))
	outputs := []output{{path: there, text: []byte("after")}, {path: filepath.Join(folder, "nowhere", "b.svg"), text: []byte("b")}}
	require.ErrorContains(t, writeAll(outputs), "b.svg")
	require.Equal(t, []string{"a.csv"}, namesIn(t, folder))
	text, err := os.ReadFile(there)
	require.NoError(t, err)
	require.Equal(t, "Cage cut list, before", string(text))

	// A name beside it that is taken is passed over.
	require.NoError(t, os.WriteFile(there+".0.part", nil, 0o666))
	outputs[1].path = filepath.Join(folder, "b.svg")
	require.NoError(t, writeAll(outputs))
	require.Equal(t, []string{"a.csv", "a.csv.0.part", "b.svg"}, namesIn(t, folder))
	text, err = os.ReadFile(there)
	require.NoError(t, err)
	require.Equal(t, "after", string(text))
}

func namesIn(t *testing.T, folder string) []string {
	t.Helper()
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	var names []string
	for _, entry := range entries {
		names = append(names, entry.Name())
	}
	return names
}
