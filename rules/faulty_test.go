package rules

import (
	"os"
	"path"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/wants"
)

func TestFaultyRulebooks(t *testing.T) {
	data := os.DirFS("../testdata")
	files, err := os.ReadDir("../testdata/faulty/rulebook")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, file := range files {
		name := path.Join("faulty/rulebook", file.Name())
		t.Run(file.Name(), func(t *testing.T) {
			announced := wants.ReadAll(t, data, name, name)
			require.NotEmpty(t, announced, "a faulty file announces its faults")
			book, found := Load(data, name, name, vehicle.BuiltIn())
			wants.Check(t, announced, found)
			require.Nil(t, book)
		})
	}
}
