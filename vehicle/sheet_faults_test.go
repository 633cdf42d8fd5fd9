package vehicle

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/wants"
)

// faultySheets is the folder of sheets with faults, each announced beside it.
const faultySheets = "../testdata/faulty/sheet"

// clubVocabulary is the built-in vocabulary with what an invented club adds.
func clubVocabulary(t testing.TB) *Vocabulary {
	t.Helper()
	source, faults := ParseSource("club.hcl", []byte(`
particular "decal" {
  kind = "yes or no"
  help = "Whether the decals are on."
  how  = "Look at both doors."
}
particular "paint_mark" {
  part = "tube"
  kind = "text"
  help = "Colour of the club's mark."
  how  = "Look at the lower end."
}
`))
	require.Empty(t, faults)
	var added []Added
	for _, block := range source.Body.Blocks {
		a, faults := DecodeParticular(source, block, BuiltIn())
		require.Empty(t, faults)
		added = append(added, a)
	}
	v, faults := BuiltIn().Extend("Saltmarsh Stage Rallye", nil, added)
	require.Empty(t, faults)
	return v
}

func TestFaultySheets(t *testing.T) {
	folder := os.DirFS(faultySheets)
	entries, err := os.ReadDir(faultySheets)
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(entries), 40)
	v := clubVocabulary(t)
	for _, entry := range entries {
		t.Run(strings.TrimSuffix(entry.Name(), ".hcl"), func(t *testing.T) {
			sheet, faults := Load(folder, entry.Name(), entry.Name(), v, Options{})
			announced := wants.ReadAll(t, folder, entry.Name(), entry.Name())
			require.NotEmpty(t, announced, "a faulty sheet announces its faults")
			wants.Check(t, announced, faults)
			require.Equal(t, faults.HasErrors(), sheet == nil)
		})
	}
}
