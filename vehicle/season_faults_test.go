package vehicle

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/hashicorp/hcl/v2"
	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/wants"
)

// faultySeasons is the folder of seasons with faults, each announced beside it.
const faultySeasons = "../testdata/faulty/season"

func TestFaultySeasons(t *testing.T) {
	folder := os.DirFS(faultySeasons)
	entries, err := os.ReadDir(faultySeasons)
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(entries), 10)
	v := clubVocabulary(t)
	for _, entry := range entries {
		t.Run(strings.TrimSuffix(entry.Name(), ".hcl"), func(t *testing.T) {
			season, faults := LoadSeason(folder, entry.Name(), entry.Name(), nil, v)
			announced := wants.ReadAll(t, folder, entry.Name(), entry.Name())
			wants.Check(t, announced, faults)
			require.NotEmpty(t, announced, "a faulty season announces its faults")
			require.Equal(t, faults.HasErrors(), season == nil)
		})
	}
}

func TestASeasonThatIsNotThereIsSaid(t *testing.T) {
	season, faults := LoadSeason(fstest.MapFS{}, "season.hcl", "shop/season.hcl", nil, BuiltIn())
	require.Nil(t, season)
	require.Len(t, faults, 1)
	require.Equal(t, Code("no-such-file"), CodeOf(faults[0]))
	require.Contains(t, faults[0].Detail, "season")
}

func TestNobodyIsMissedWhileAFileCannotBeRead(t *testing.T) {
	folder := fstest.MapFS{
		"events.hcl": {Data: []byte(`season "2027" {
  event "Quarry Night" {
    first_day = "2027-05-15"
    last_day  = "2027-05-16"
    crew      = ["A. Penrith-Vale"]
  }
}
`)},
		"crew.hcl": {Data: []byte(`crew "A. Penrith-Vale" {`)},
	}
	season, faults := LoadSeason(folder, ".", ".", nil, BuiltIn())
	require.Nil(t, season)
	require.Len(t, faults, 1, "the crew may stand in the file that could not be read")
	require.Equal(t, "crew.hcl", faults[0].Subject.Filename)
}

func FuzzLoadSeason(f *testing.F) {
	f.Add([]byte(fullSeason))
	entries, err := os.ReadDir(faultySeasons)
	require.NoError(f, err)
	for _, entry := range entries {
		data, err := os.ReadFile(filepath.Join(faultySeasons, entry.Name()))
		require.NoError(f, err)
		f.Add(data)
	}
	v := clubVocabulary(f)
	sheet, faults := Load(fstest.MapFS{"a.hcl": {Data: []byte(logbookSheet)}}, "a.hcl", "a.hcl", v, Options{})
	require.Empty(f, faults)
	f.Fuzz(func(t *testing.T, data []byte) {
		load := func() (*Season, hcl.Diagnostics) {
			return LoadSeason(fstest.MapFS{"a.hcl": {Data: data}}, "a.hcl", "a.hcl", nil, v)
		}
		season, faults := load()
		for _, d := range faults {
			requireInside(t, d, map[string][]byte{"a.hcl": data})
		}
		require.Equal(t, faults.HasErrors(), season == nil)
		again, second := load()
		require.Equal(t, faults.Error(), second.Error(), "the same faults every time")
		if season == nil {
			return
		}
		require.Equal(t, season.Hash, again.Hash)
		requireSoundSeason(t, season, len(data))
		for _, event := range season.Events {
			with := sheet.WithCrew(season, event.Crew)
			require.Len(t, with.Root.Lists, len(sheet.Root.Lists))
		}
	})
}

// requireSoundSeason wants of a season what others rely on.
func requireSoundSeason(t *testing.T, season *Season, size int) {
	require.NotEmpty(t, season.Events)
	for i, event := range season.Events {
		require.NotEmpty(t, event.Name)
		require.LessOrEqual(t, event.First, event.Last)
		require.LessOrEqual(t, event.Inspection, event.Last)
		require.LessOrEqual(t, len(event.Days()), longestEvent+1)
		require.LessOrEqual(t, event.Range.End.Byte, size)
		if i > 0 {
			require.LessOrEqual(t, season.Events[i-1].First, event.First)
		}
		for _, name := range event.Crew {
			require.NotNil(t, season.Person(name))
		}
	}
	for _, person := range season.People {
		require.Equal(t, person.Name, person.Gear.Person)
		requireSound(t, person.Gear, size)
	}
}
