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

// clubVocabulary is the built-in vocabulary with what two invented clubs add.
func clubVocabulary(t testing.TB) *Vocabulary {
	t.Helper()
	v, faults := extended(t, BuiltIn(), "Quarry Sprint Rules",
		block("checked_strap", "part = \"harness\"\nkind = \"part name\"\nnames = \"strap\"\n"), nil)
	require.Empty(t, faults)
	v, faults = extended(t, v, "Saltmarsh Stage Rallye", block("decal", "kind = \"yes or no\"\n")+
		block("paint_mark", "part = \"tube\"\nkind = \"text\"\n"), nil)
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
			wants.Check(t, announced, faults)
			require.NotEmpty(t, announced, "a faulty sheet announces its faults")
			require.Equal(t, faults.HasErrors(), sheet == nil)
		})
	}
}
