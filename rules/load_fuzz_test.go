package rules

import (
	"os"
	"path/filepath"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

// FuzzLoadRulebook reads whatever is given as a rulebook with a table beside it. Reading
// never panics, gives a rulebook exactly when there is no fault, places every fault in a
// file, and finds the same faults in every run.
func FuzzLoadRulebook(f *testing.F) {
	good, err := filepath.Glob("../testdata/rulebook/*/*.hcl")
	require.NoError(f, err)
	faulty, err := filepath.Glob("../testdata/faulty/rulebook/*.hcl")
	require.NoError(f, err)
	for _, name := range append(good, faulty...) {
		data, err := os.ReadFile(name)
		require.NoError(f, err)
		f.Add(data, []byte("outside,mass_from,mass_below\n38 mm,,1000 kg\n"))
	}
	f.Add([]byte(csvBook), []byte(csvHeader+"45 mm,2.5 mm,1,\"a, \"\"b\"\"\",true,seamless,2030-12-31\n"))
	f.Fuzz(func(t *testing.T, book, table []byte) {
		files := fstest.MapFS{"book.hcl": {Data: book}, "sizes.csv": {Data: table}, "by_mass.csv": {Data: table}}
		read, faults := Load(files, ".", ".", vehicle.BuiltIn())
		require.Equal(t, faults.HasErrors(), read == nil)
		for _, d := range faults {
			require.NotEmpty(t, d.Subject.Filename)
			require.NotEmpty(t, vehicle.CodeOf(d))
			require.GreaterOrEqual(t, d.Subject.End.Byte, d.Subject.Start.Byte)
		}
		_, again := Load(files, ".", ".", vehicle.BuiltIn())
		require.Equal(t, describe(faults), describe(again))
	})
}
