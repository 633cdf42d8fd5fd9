package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// The line: a package may import what stands to the right of it and nothing to its left.
var line = []string{"cmd/gapsheet", "report", "engine", "rules", "vehicle", "vehicle/cage", "vehicle/quantity"}

const (
	exampleData  = "examples"      // imported by commands only, imports nothing of ours
	faultReading = "vehicle/wants" // reads what the faulty files of testdata expect: for tests only
)

// imported is one import of one file.
type imported struct {
	in   string // package, relative to the module
	file string
	path string
}

func (i imported) byTest() bool { return strings.HasSuffix(i.file, "_test.go") }

// ours is the path within the module, "" for any other package.
func (i imported) ours() string {
	inside, ok := strings.CutPrefix(i.path, "gapsheet/")
	if !ok {
		return ""
	}
	return inside
}

func allImports(t *testing.T) []imported {
	t.Helper()
	root := filepath.Join("..", "..")
	var all []imported
	require.NoError(t, filepath.WalkDir(root, func(name string, entry fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if entry.IsDir() && (strings.HasPrefix(entry.Name(), ".") && entry.Name() != ".." || entry.Name() == "testdata") {
			return filepath.SkipDir
		}
		if entry.IsDir() || path.Ext(name) != ".go" {
			return nil
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		relative, err := filepath.Rel(root, name)
		if err != nil {
			return err
		}
		relative = filepath.ToSlash(relative)
		for _, spec := range file.Imports {
			imports, err := strconv.Unquote(spec.Path.Value)
			if err != nil {
				return err
			}
			all = append(all, imported{path.Dir(relative), relative, imports})
		}
		return nil
	}))
	return all
}

func TestImportsHoldTheLine(t *testing.T) {
	all := allImports(t)
	seen := map[string]bool{}
	for _, i := range all {
		seen[i.in] = true
		if i.ours() == "" {
			continue
		}
		require.True(t, mayImport(i), "%s imports %s", i.file, i.path)
	}
	for _, room := range line {
		if room != "vehicle/cage" { // which may be empty of code
			require.True(t, seen[room], "no imports were found in %s: is it read at all?", room)
		}
	}
	for room := range seen {
		require.True(t, slices.Contains(line, room) || room == exampleData || room == faultReading,
			"%s has no place in the line %s", room, strings.Join(line, " -> "))
	}
}

func mayImport(i imported) bool {
	switch i.ours() {
	case faultReading:
		return i.byTest()
	case exampleData:
		return i.in == "cmd/gapsheet" || i.byTest()
	}
	if i.in == exampleData || i.in == faultReading {
		return i.byTest()
	}
	from, to := slices.Index(line, i.in), slices.Index(line, i.ours())
	// A test outside its package imports that package itself.
	return from >= 0 && to >= 0 && (from < to || from == to && i.byTest())
}

func TestMayImport(t *testing.T) {
	for _, c := range []struct {
		file, path string
		may        bool
	}{
		{"report/json.go", "gapsheet/engine", true},
		{"engine/car.go", "gapsheet/report", false},
		{"vehicle/sheet.go", "gapsheet/rules", false},
		{"vehicle/quantity/unit.go", "gapsheet/vehicle/cage", false},
		{"vehicle/cage/joint.go", "gapsheet/vehicle/quantity", true},
		{"rules/load.go", "gapsheet/vehicle/wants", false},
		{"rules/load_test.go", "gapsheet/vehicle/wants", true},
		{"cmd/gapsheet/demo.go", "gapsheet/examples", true},
		{"report/demo.go", "gapsheet/examples", false},
		{"other/x.go", "gapsheet/vehicle", false},
		{"rules/load_test.go", "gapsheet/rules", true},
		{"rules/load.go", "gapsheet/rules", false},
	} {
		require.Equal(t, c.may, mayImport(imported{path.Dir(c.file), c.file, c.path}), "%s imports %s", c.file, c.path)
	}
}

// TestQuantityKnowsTheStandardLibraryOnly looks at the first element of each path: those of
// the standard library have no dot.
func TestQuantityKnowsTheStandardLibraryOnly(t *testing.T) {
	read := 0
	for _, i := range allImports(t) {
		if i.in != "vehicle/quantity" || i.byTest() {
			continue
		}
		read++
		first, _, _ := strings.Cut(i.path, "/")
		require.NotContains(t, first, ".", "%s imports %s", i.file, i.path)
		require.NotEqual(t, "gapsheet", first, "%s imports %s", i.file, i.path)
	}
	require.Positive(t, read)
}
