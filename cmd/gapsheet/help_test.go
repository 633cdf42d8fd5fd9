package main

import (
	"strings"
	"testing"

	"github.com/spf13/cobra"
	"github.com/stretchr/testify/require"

	"gapsheet/report"
)

// Each command has an example, and every example can be given as it stands in the folder
// that the help names. Help fits on a page.
func TestExamplesOfHelp(t *testing.T) {
	t.Chdir(unpackedDemo(t))
	a, _, _ := appOf("")
	root := a.rootCommand()
	commands := append([]*cobra.Command{root}, root.Commands()...)
	run := 0
	for _, command := range commands {
		for _, line := range strings.Split(command.Long, "\n") {
			require.LessOrEqual(t, report.Width(line), 84, line)
		}
		if command.Name() == "completion" {
			continue // one command for each shell, from the flag library
		}
		require.NotEmpty(t, command.Example, command.Name())
		require.NotEmpty(t, command.Short, command.Name())
		for _, line := range strings.Split(command.Example, "\n") {
			line = strings.TrimSpace(line)
			stdin := ""
			if typed, piped, ok := strings.Cut(line, " | "); ok {
				stdin, line = shellWords(t, typed)[1], piped
			}
			words := shellWords(t, line)
			require.Equal(t, "gapsheet", words[0])
			got := runIn(stdin, words[1:]...)
			require.Less(t, got.code, exitInput, "%s\n%s", line, got.stderr)
			require.NotContains(t, got.stdout, `"error"`, line)
			require.NotEmpty(t, got.stdout, line)
			run++
		}
	}
	require.GreaterOrEqual(t, run, 10)
}
