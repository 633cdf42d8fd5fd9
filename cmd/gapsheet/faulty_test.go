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
			require.NotEqual(t, exitOwn, got.code, "%s\n%s", named, got.stderr)
			require.Contains(t, got.stderr, filepath.ToSlash(named)+locationEnd(entry), named)
			require.Empty(t, firstSteering(got.stderr), named)
			for _, line := range strings.Split(got.stderr, "\n") {
				if !strings.HasPrefix(line, "fault") && !strings.HasPrefix(line, "remark") {
					require.LessOrEqual(t, report.Width(line), 80, "%s: %s", named, line)
				}
			}
		}
	}
	require.Greater(t, read, 60)
}

// locationEnd is what follows the name in a place: the line, or a file of a folder.
func locationEnd(entry fs.DirEntry) string {
	if entry.IsDir() {
		return "/"
	}
	return ":"
}
