package main

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"gapsheet/report"
)

// outcome is what one run left behind.
type outcome struct {
	code           int
	stdout, stderr string
}

// appOf is an app on a fixed day, with no environment.
func appOf(stdin string) (*app, *bytes.Buffer, *bytes.Buffer) {
	var stdout, stderr bytes.Buffer
	a := &app{
		stdin: strings.NewReader(stdin), stdout: &stdout, stderr: &stderr,
		environment: func(string) string { return "" }, called: "gapsheet",
		now: func() time.Time { return time.Date(2027, 3, 14, 23, 59, 0, 0, time.FixedZone("", 10*3600)) },
	}
	return a, &stdout, &stderr
}

func runIn(stdin string, arguments ...string) outcome {
	a, stdout, stderr := appOf(stdin)
	code := a.run(arguments)
	return outcome{code, stdout.String(), stderr.String()}
}

const (
	smallSheet = "testdata/small/tessel.hcl"
	soundSheet = "testdata/small/sound.hcl"
	smallBook  = "testdata/small/club.hcl"

	smallSeason = "testdata/small/stages.hcl"
)

func TestTodayIsTheLocalDay(t *testing.T) {
	got := runIn("", "precheck", soundSheet, "--rulebook", smallBook)
	require.Equal(t, exitMeets, got.code, got.stderr)
	require.Contains(t, got.stdout, "Day       2027-03-14, today by this machine's clock, as no day was named\n")
}

func TestSameInputSameBytes(t *testing.T) {
	for _, format := range formatNames() {
		arguments := []string{"precheck", smallSheet, soundSheet, "--rulebook", smallBook, "--on", "2027-03-14", "--format", format, "--all"}
		first := runIn("", arguments...)
		require.NotEmpty(t, first.stdout)
		for range 3 {
			require.Equal(t, first, runIn("", arguments...))
		}
	}
}

// A fault of our own ends with 4 and a sentence; the stack is for who asks for it.
func TestAFaultOfOurOwn(t *testing.T) {
	arguments := []string{"precheck", soundSheet, "--rulebook", smallBook}
	a, stdout, stderr := appOf("")
	a.now = func() time.Time { panic("the clock broke") }
	require.Equal(t, exitOwn, a.run(arguments))
	require.Empty(t, stdout.String())
	told := strings.Join(strings.Fields(stderr.String()), " ")
	require.Contains(t, told, "This is a fault of gapsheet itself, not of your files: the clock broke.")
	require.Contains(t, told, "Set GAPSHEET_TRACE=1")
	require.NotContains(t, told, "goroutine")

	a, _, stderr = appOf("")
	a.now = func() time.Time { panic("the clock broke") }
	a.environment = func(name string) string {
		if name == traceVariable {
			return "1"
		}
		return ""
	}
	require.Equal(t, exitOwn, a.run(arguments))
	require.Contains(t, stderr.String(), "goroutine")
}

type fullDisk struct{}

func (fullDisk) Write([]byte) (int, error) { return 0, errors.New("no space left") }

func TestResultsThatCannotBeWritten(t *testing.T) {
	for _, arguments := range [][]string{
		{"precheck", soundSheet, "--rulebook", smallBook},
		{"precheck", soundSheet, "--rulebook", smallBook, "--format", "json"},
		{"working", "4.1", soundSheet, "--rulebook", smallBook},
		{"tube", "45 x 2.5 mm", "--part", "main hoop", "--rulebook", smallBook},
		{"season", soundSheet, "--season", smallSeason, "--rulebook", smallBook},
		{"season", soundSheet, "--season", smallSeason, "--rulebook", smallBook, "--json"},
		{"try", "1 + 1"},
		{"try", "--lines"},
		{"version"},
	} {
		a, _, stderr := appOf(`{"formula":"1"}`)
		a.stdout = fullDisk{}
		require.Equal(t, exitOwn, a.run(arguments), arguments)
		require.Contains(t, stderr.String(), "The results could not be written: no space left.", arguments)
	}
}

// Bad input is told in a sentence, at once, and never brings the program down. What each
// message says is in testdata/script/bad_input.txtar.
func TestBadInputIsToldAtOnce(t *testing.T) {
	folder := t.TempDir()
	write := func(name, text string, count int) string {
		name = filepath.Join(folder, name)
		require.NoError(t, os.WriteFile(name, []byte(strings.Repeat(text, count)), 0o666))
		return name
	}
	for _, bad := range []string{
		write("empty.hcl", "", 1),
		write("binary.hcl", "\x00\xff\x1b[31m", 1000),
		write("large.hcl", "a = 1\n", 900_000),
		write("square.hcl", "[", 1_000_000),
		write("round.hcl", "(", 1_000_000),
		write("curly.hcl", "a {\n", 250_000),
		write("signs.hcl", "a = "+strings.Repeat("!", 900_000), 1),
		write("latin.hcl", "car \"caf\xe9\" {}\n", 1),
		write("one_line.hcl", "x", 1_000_000),
		write("lines.hcl", "a\n", 500_000),
		write("power.hcl", "a = 1e300000000\n", 1),
		folder,
		filepath.Join(folder, "nowhere.hcl"),
		filepath.Join(folder, "nowhere", "car.hcl"),
	} {
		for _, arguments := range [][]string{
			{"precheck", bad, "--rulebook", smallBook},
			{"precheck", soundSheet, "--rulebook", bad},
		} {
			begun := time.Now()
			got := runIn("", arguments...)
			took := time.Since(begun)
			require.Equal(t, exitInput, got.code, "%v\n%s", arguments, got.stdout)
			require.Empty(t, got.stdout, arguments)
			require.NotEmpty(t, got.stderr, arguments)
			require.Empty(t, firstSteering(got.stderr), arguments)
			require.NotContains(t, got.stderr, "goroutine", arguments)
			require.Less(t, took, 10*time.Second, "%v: it is done in well under one second on a machine with nothing else to do", arguments)
			t.Logf("%4d ms  %s", took.Milliseconds(), filepath.Base(bad))
		}
	}
}

func TestPapersOfAnOddKind(t *testing.T) {
	got := runIn("", "precheck", soundSheet, "--rulebook", smallBook, "--papers", "testdata/nowhere")
	require.Equal(t, exitInput, got.code)
	require.Contains(t, got.stderr, "--papers wants the folder with the papers")
}

// In a pipe COLUMNS says how wide to write, where it is a width that a page holds.
func TestColumns(t *testing.T) {
	for text, want := range map[string]int{
		"": 80, "60": 60, "40": 40, "110": 110, "39": 80, "111": 80, "-60": 80, "60.5": 80, "wide": 80, "60x": 80,
	} {
		a, stdout, _ := appOf("")
		a.environment = func(name string) string {
			if name == "COLUMNS" {
				return text
			}
			return ""
		}
		require.Equal(t, want, a.screen().Width, text)
		require.Equal(t, exitMeets, a.run([]string{"precheck", soundSheet, "--rulebook", smallBook, "--on", "2027-03-14"}))
		for _, line := range strings.Split(stdout.String(), "\n") {
			require.LessOrEqual(t, report.Width(line), want)
		}
	}
}
