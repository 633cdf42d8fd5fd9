package rules

import (
	"os"
	"path"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/wants"
)

// TestFaultyFormulaFiles holds what is told of faulty formulas in rulebooks of every way of
// writing them, each at its line and column.
func TestFaultyFormulaFiles(t *testing.T) {
	data := os.DirFS("../testdata")
	files, err := os.ReadDir("../testdata/faulty/formula")
	require.NoError(t, err)
	told := 0
	for _, file := range files {
		name := path.Join("faulty/formula", file.Name())
		announced := wants.ReadAll(t, data, name, name)
		require.NotEmpty(t, announced, name)
		told += len(announced)
		book, found := Load(data, name, name, vehicle.BuiltIn())
		wants.Check(t, announced, found)
		require.Nil(t, book, name)
	}
	t.Logf("%d faults in %d files", told, len(files))
}
