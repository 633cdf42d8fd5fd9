package main

import (
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestUnpackedDemoCanBeChecked(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "a", "b")
	got := runIn("", "demo", "--out", folder)
	require.Equal(t, exitMeets, got.code, got.stderr)
	_, command, found := strings.Cut(got.stdout, "gapsheet precheck ")
	require.True(t, found, got.stdout)
	arguments := append([]string{"precheck"}, strings.Fields(command)...)
	checked := runIn("", arguments...)
	require.Equal(t, exitGap, checked.code, checked.stderr)

	// The demo shows what a check of the same files shows.
	_, wanted, _ := strings.Cut(checked.stdout, "\nGAPS")
	_, shown, _ := strings.Cut(runIn("", "demo").stdout, "\nGAPS")
	counted := func(text string) string {
		_, counts, found := strings.Cut(text, "COUNTED")
		require.True(t, found, text)
		counts, _, _ = strings.Cut(counts, "\n\n")
		return strings.TrimSpace(counts)
	}
	require.Equal(t, counted(wanted), counted(shown))

	// Nothing is overwritten.
	again := runIn("", "demo", "--out", folder)
	require.Equal(t, exitInput, again.code)
	require.Contains(t, strings.Join(strings.Fields(again.stderr), " "), "demo overwrites nothing")
}

func TestArgument(t *testing.T) {
	require.Equal(t, "trial/a-b.hcl", argument("trial/a-b.hcl"))
	require.Equal(t, "'my trial'", argument("my trial"))
	require.Equal(t, `'it'\''s'`, argument("it's"))
	require.Equal(t, "''", argument(""))
}

func TestADemoThatCannotBeWritten(t *testing.T) {
	a, _, stderr := appOf("")
	a.stdout = fullDisk{}
	require.Equal(t, exitOwn, a.run([]string{"demo"}))
	require.Contains(t, stderr.String(), "The results could not be written: no space left.")
}
