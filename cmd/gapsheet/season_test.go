package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

// Entries that are alike share a car, so that each way of entering it is laid out and worked
// over the years once.
func TestAlikeEntriesShareTheirCars(t *testing.T) {
	season := filepath.Join(t.TempDir(), "season.hcl")
	require.NoError(t, os.WriteFile(season, []byte(`season "2027" {
  event "One" {
    first_day = "2027-03-13"
    last_day  = "2027-03-14"
    crew      = ["A. Penrith-Vale", "B. Oakhollow"]
  }
  event "Two" {
    first_day = "2027-04-13"
    last_day  = "2027-04-14"
    crew      = ["a. penrith-vale", "B. Oakhollow"]
  }
  event "Three" {
    first_day = "2027-05-13"
    last_day  = "2027-05-14"
    crew      = ["B. Oakhollow", "A. Penrith-Vale"]
  }
  event "Four" {
    first_day = "2027-06-13"
    last_day  = "2027-06-14"
    class     = "standard"
    crew      = ["A. Penrith-Vale", "B. Oakhollow"]
  }
}
crew "A. Penrith-Vale" {}
crew "B. Oakhollow" {}
`), 0o666))
	var files shelf
	load, err := files.loadSeason([]string{soundSheet, smallSheet}, seasonAsked{season: season, asked: asked{books: []string{smallBook}}})
	require.NoError(t, err)
	cars := load.cars()
	require.Len(t, cars, 2)
	entries := cars[0].Entries
	require.Len(t, entries, 4)
	require.Same(t, entries[0].Editions[0].Car, entries[1].Editions[0].Car)
	require.NotSame(t, entries[0].Editions[0].Car, entries[2].Editions[0].Car, "who drives makes a difference")
	require.NotSame(t, entries[0].Editions[0].Car, entries[3].Editions[0].Car)
	require.NotSame(t, entries[0].Editions[0].Car, cars[1].Entries[0].Editions[0].Car)
	require.Same(t, load.season.Events[3], entries[3].Event)

	var read []string
	for _, one := range load.inputs() {
		read = append(read, one.of)
	}
	require.Equal(t, []string{"the season", "the sheet", "the sheet"}, read)
}
