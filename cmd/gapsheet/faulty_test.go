package main

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/report"
)

// Every faulty file is told of within the width of the page, with a place in it, and
// nothing of it reaches the terminal raw. That the messages are the right ones is tested
// where they are made.
func TestFaultyFilesAreTold(t *testing.T) {
	read := 0
	for _, kind := range []string{"sheet", "rulebook", "formula"} {
		folder := filepath.Join("..", "..", "testdata", "faulty", kind)
		entries, err := os.ReadDir(folder)
		require.NoError(t, err)
		for _, entry := range entries {
			named := filepath.Join(folder, entry.Name())
			arguments := []string{"precheck", soundSheet, "--rulebook", named, "--on", "2027-03-14"}
			if kind == "sheet" {
				arguments = []string{"precheck", named, "--rulebook", smallBook, "--on", "2027-03-14"}
			}
			got := runIn("", arguments...)
			read++
			requireTold(t, got, named, locationEnd(entry))
		}
	}
	require.Greater(t, read, 60)
}

// requireTold wants faults with a place in a file, and nothing beyond the page.
func requireTold(t *testing.T, got outcome, named, end string) {
	t.Helper()
	require.NotEqual(t, exitOwn, got.code, "%s\n%s", named, got.stderr)
	require.Contains(t, got.stderr, filepath.ToSlash(named)+end, named)
	require.Empty(t, firstSteering(got.stderr), named)
	for _, line := range strings.Split(got.stderr, "\n") {
		if !strings.HasPrefix(line, "fault") && !strings.HasPrefix(line, "remark") {
			require.LessOrEqual(t, report.Width(line), 80, "%s: %s", named, line)
		}
	}
}

// Seasons are read from a folder with no rulebook around it, as faults of a rulebook that a
// season names are told before its own.
func TestFaultySeasonsAreTold(t *testing.T) {
	folder := filepath.Join("..", "..", "testdata", "faulty", "season")
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	sheet, err := filepath.Abs(soundSheet)
	require.NoError(t, err)
	book, err := filepath.Abs(smallBook)
	require.NoError(t, err)
	texts := map[string][]byte{}
	for _, entry := range entries {
		texts[entry.Name()], err = os.ReadFile(filepath.Join(folder, entry.Name()))
		require.NoError(t, err)
	}
	t.Chdir(t.TempDir())
	require.NoError(t, os.MkdirAll("club/2027", 0o777))
	for _, entry := range entries {
		named := filepath.Join("club", "2027", entry.Name())
		require.NoError(t, os.WriteFile(named, texts[entry.Name()], 0o666))
		got := runIn("", "season", sheet, "--season", named, "--rulebook", book, "--on", "2027-03-14")
		requireTold(t, got, named, ":")
	}
	require.Greater(t, len(entries), 8)
}

// locationEnd is what follows the name in a place: the line, or a file of a folder.
func locationEnd(entry fs.DirEntry) string {
	if entry.IsDir() {
		return "/"
	}
	return ":"
}
