package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/examples"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

// A block is one fenced block of a page.
type block struct {
	language string
	lines    []string
}

// blocks are the fenced blocks of a Markdown page.
func blocks(t *testing.T, page string) []block {
	t.Helper()
	data, err := os.ReadFile(page)
	require.NoError(t, err)
	var found []block
	inside := false
	for _, line := range strings.Split(string(data), "\n") {
		switch {
		case strings.HasPrefix(line, "```") && !inside:
			found = append(found, block{language: strings.TrimPrefix(line, "```")})
			inside = true
		case line == "```":
			inside = false
		case inside:
			last := &found[len(found)-1]
			last.lines = append(last.lines, line)
		}
	}
	require.False(t, inside, "a block is not closed")
	return found
}

// TestReadme runs every block of the README: what stands behind "$" is carried out in a
// folder with the demo in it, and prints what the block shows, where "…" stands for any
// lines, or any text of a line; so does a file that it has written, behind "cat". Sheets and rulebooks load without a fault.
func TestReadme(t *testing.T) {
	all := blocks(t, "../../README.md")
	t.Chdir(unpackedDemo(t))
	seen := map[string]int{}
	for _, b := range all {
		seen[b.language]++
		switch b.language {
		case "console":
			runConsole(t, b.lines)
		case "hcl":
			loadBlock(t, strings.Join(b.lines, "\n")+"\n")
		case "sh":
			require.Contains(t, []string{"go run ./cmd/gapsheet demo", "go test ./..."}, strings.Join(b.lines, "\n"))
		default:
			t.Errorf("a block of %q is not tried", b.language)
		}
	}
	require.Equal(t, 2, seen["sh"])
	require.Positive(t, seen["console"])
	require.Positive(t, seen["hcl"])
}

// TestLinesPage carries out the commands of LINES.md.
func TestLinesPage(t *testing.T) {
	all := blocks(t, "LINES.md")
	require.Len(t, all, 2)
	t.Chdir(t.TempDir())
	for _, b := range all {
		require.Equal(t, "console", b.language)
		runConsole(t, b.lines)
	}
}

// unpackedDemo is a folder with the demo's car and rulebook in it.
func unpackedDemo(t *testing.T) string {
	t.Helper()
	out := filepath.Join(t.TempDir(), "tryout")
	require.Equal(t, exitMeets, runIn("", "demo", "--out", out).code)
	return filepath.Join(out, filepath.Dir(filepath.FromSlash(examples.Rulebook)))
}

// runConsole carries out the commands of one block.
func runConsole(t *testing.T, lines []string) {
	t.Helper()
	var last outcome
	for i := 0; i < len(lines); {
		command, ok := strings.CutPrefix(lines[i], "$ ")
		require.True(t, ok, "a command stands first: %s", lines[i])
		next := i + 1
		for next < len(lines) && !strings.HasPrefix(lines[next], "$ ") {
			next++
		}
		want := lines[i+1 : next]
		i = next
		switch {
		case command == "echo $?":
			require.Equal(t, []string{strconv.Itoa(last.code)}, want, command)
		case strings.HasPrefix(command, "cat "):
			showFile(t, strings.TrimPrefix(command, "cat "), want)
		default:
			last = runShown(t, command)
			got := strings.Split(strings.TrimRight(last.stdout+last.stderr, "\n"), "\n")
			require.True(t, elided(want, got), "%s\nshown:\n%s\nprinted:\n%s", command, strings.Join(want, "\n"), strings.Join(got, "\n"))
		}
	}
}

// showFile compares a file that a command before has written with what is shown of it. A file
// that is not there yet is one that the reader writes.
func showFile(t *testing.T, name string, shown []string) {
	t.Helper()
	written, err := os.ReadFile(name)
	if os.IsNotExist(err) {
		require.NoError(t, os.WriteFile(name, []byte(strings.Join(shown, "\n")+"\n"), 0o666))
		return
	}
	require.NoError(t, err)
	got := strings.Split(strings.TrimRight(strings.ReplaceAll(string(written), "\r\n", "\n"), "\n"), "\n")
	require.True(t, elided(shown, got), "%s\nshown:\n%s\nwritten:\n%s", name, strings.Join(shown, "\n"), strings.Join(got, "\n"))
}

// runShown carries out one command as a shell would read it: words, quotes, < FILE.
func runShown(t *testing.T, command string) outcome {
	t.Helper()
	words := shellWords(t, command)
	require.Equal(t, "gapsheet", words[0])
	stdin := ""
	if n := len(words); n > 2 && words[n-2] == "<" {
		data, err := os.ReadFile(words[n-1])
		require.NoError(t, err)
		stdin, words = string(data), words[:n-2]
	}
	return runIn(stdin, words[1:]...)
}

// shellWords splits a command at its blanks, quotes kept together.
func shellWords(t *testing.T, command string) []string {
	t.Helper()
	var words []string
	var word bytes.Buffer
	quote := byte(0)
	for i := range len(command) {
		switch c := command[i]; {
		case quote != 0 && c == quote:
			quote = 0
		case quote == 0 && (c == '\'' || c == '"'):
			quote = c
		case quote == 0 && c == ' ':
			words = append(words, word.String())
			word.Reset()
		default:
			word.WriteByte(c)
		}
	}
	require.Zero(t, quote, "a quote is not closed: %s", command)
	return append(words, word.String())
}

// elided reports whether printed lines are what is shown, "…" standing for any lines.
func elided(shown, printed []string) bool {
	if len(shown) == 0 {
		return len(printed) == 0 || len(printed) == 1 && printed[0] == ""
	}
	if shown[0] == "…" {
		for skip := range len(printed) + 1 {
			if elided(shown[1:], printed[skip:]) {
				return true
			}
		}
		return false
	}
	return len(printed) > 0 && sameLine(shown[0], strings.TrimRight(printed[0], " ")) && elided(shown[1:], printed[1:])
}

// sameLine reports whether a printed line is what is shown, "…" in it standing for any text.
func sameLine(shown, printed string) bool {
	before, after, ok := strings.Cut(shown, "…")
	if !ok {
		return shown == printed
	}
	return strings.HasPrefix(printed, before) && strings.HasSuffix(printed[len(before):], after)
}

// loadBlock loads an example of a sheet or a rulebook.
func loadBlock(t *testing.T, text string) {
	t.Helper()
	files := fstest.MapFS{"example.hcl": {Data: []byte(text)}}
	if strings.Contains(text, "rulebook \"") {
		_, faults := rules.Load(files, "example.hcl", "example.hcl", vehicle.BuiltIn())
		require.Empty(t, faults, text)
		return
	}
	if strings.Contains(text, "season \"") {
		_, faults := vehicle.LoadSeason(files, "example.hcl", "example.hcl", nil, vehicle.BuiltIn())
		require.Empty(t, faults, text)
		return
	}
	_, faults := vehicle.Load(files, "example.hcl", "example.hcl", vehicle.BuiltIn(), vehicle.Options{})
	require.Empty(t, faults, text)
}
