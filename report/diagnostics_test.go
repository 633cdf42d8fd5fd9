package report

import (
	"bytes"
	"flag"
	"os"
	"strings"
	"testing"

	"github.com/hashicorp/hcl/v2"
	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

var update = flag.Bool("update", false, "rewrite the expected outputs in testdata")

// requireGolden compares with a file of testdata, or rewrites it with -update.
func requireGolden(t *testing.T, name, got string) {
	t.Helper()
	name = "testdata/" + name
	if *update {
		require.NoError(t, os.WriteFile(name, []byte(got), 0o666))
	}
	want, err := os.ReadFile(name)
	require.NoError(t, err)
	require.Equal(t, string(want), got)
}

// screenOf is a screen of a width without colours.
func screenOf(out *bytes.Buffer, width int) *Screen {
	return &Screen{Writer: out, Width: width, Paint: NewPaint(false)}
}

// rangeOf is the place of the nth occurrence of a piece in a file.
func rangeOf(name, file, piece string, nth int) hcl.Range {
	from := 0
	for ; nth > 0; nth-- {
		from += strings.Index(file[from:], piece) + len(piece)
	}
	from += strings.Index(file[from:], piece)
	line := strings.Count(file[:from], "\n") + 1
	column := len([]rune(file[strings.LastIndexByte(file[:from], '\n')+1:from])) + 1
	start := hcl.Pos{Line: line, Column: column, Byte: from}
	end := hcl.Pos{Line: line, Column: column + len([]rune(piece)), Byte: from + len(piece)}
	return hcl.Range{Filename: name, Start: start, End: end}
}

const faultySheet = `car "Tessel 16" {
	weighed_mass = "1085"
	chassis      = "日本 TS-0417"   # wide
}
tube "1" { wall = "2.5", part = "main hop" }
`

func TestDiagnostics(t *testing.T) {
	var out bytes.Buffer
	file := func(name string) []byte {
		if name == "tessel.hcl" {
			return []byte(faultySheet)
		}
		return nil
	}
	at := func(piece string, nth int) hcl.Range { return rangeOf("tessel.hcl", faultySheet, piece, nth) }
	long := vehicle.Fault("no-unit", at(`"1085"`, 0), "A mass without a unit",
		`Found "1085" for weighed_mass, which is a mass. Write it with its unit, such as "1085 kg".`)
	found := hcl.Diagnostics{
		vehicle.Fault("unknown-choice", at(`"main hop"`, 0), "Unknown member of the cage",
			"Found \"main hop\".\nWrite \"main hoop\"."),
		vehicle.Warning("paper-missing", at("car", 0), "A paper is not there", "Found no file papers/a.pdf."),
		long, long,
		vehicle.Fault("wide", at(`TS-0417`, 0), "Behind wide characters", "Found it at the right place."),
		{Severity: hcl.DiagError, Summary: "No place", Detail: "Nothing to point at.\x1b[31m"},
		vehicle.Fault("gone", hcl.Range{Filename: "gone.hcl", Start: hcl.InitialPos, End: hcl.InitialPos}, "No such file", "Found no file gone.hcl."),
	}
	require.NoError(t, Diagnostics(screenOf(&out, 72), found, file))
	requireHarmless(t, out.String())
	requireGolden(t, "diagnostics.txt", out.String())
}

func TestSnippet(t *testing.T) {
	for _, c := range []struct {
		what, file, piece string
		width             int
		text, mark        string
	}{
		{"plain", "wall = \"2.5\"\n", `"2.5"`, 40, `wall = "2.5"`, `       =====`},
		{"tabs", "\t\ta\t= \"x\"\n", `"x"`, 40, `a   = "x"`, `      ===`},
		{"wide characters before", "日本 = x\n", "x", 40, "日本 = x", "       ="},
		{"wide characters marked", "a = 日本\n", "日本", 40, "a = 日本", "    ===="},
		{"combining", "e\u0301 = x\n", "x", 40, "e\u0301 = x", "    ="},
		{"control characters", "a\x1b = x\n", "x", 40, "a<U+001B> = x", "            ="},
		{"carriage return", "a = x\r\nb\r\n", "x", 40, "a = x", "    ="},
		{"long, at the start", strings.Repeat("ab", 40) + " x", "ab", 20, "ababababababababab" + "a…", "=="},
		{"long, in the middle", strings.Repeat("a", 60) + "x" + strings.Repeat("b", 60), "x", 20, "…aaaaaaxbbbbbbbbbbb…", "       ="},
		{"long, at the end", strings.Repeat("a", 60) + "x", "x", 20, "…aaaaaax", "       ="},
		{"the mark is cut with the line", strings.Repeat("a", 60), strings.Repeat("a", 60), 20, strings.Repeat("a", 19) + "…", strings.Repeat("=", 19)},
	} {
		at := rangeOf("f", c.file, c.piece, 0)
		shown, ok := snippetOf([]byte(c.file), at, c.width)
		require.True(t, ok, c.what)
		require.Equal(t, c.text, shown.text, c.what)
		require.Equal(t, c.mark, strings.Repeat(" ", shown.markAt)+strings.Repeat("=", shown.markLength), c.what)
	}
}

func TestSnippetOfOddPlaces(t *testing.T) {
	place := func(from, to int) hcl.Range {
		return hcl.Range{Filename: "f", Start: hcl.Pos{Line: 1, Column: 1, Byte: from}, End: hcl.Pos{Line: 1, Column: 1, Byte: to}}
	}
	_, ok := snippetOf([]byte("abc"), place(7, 9), 40)
	require.False(t, ok, "beyond the file")
	_, ok = snippetOf(nil, place(0, 0), 40)
	require.False(t, ok, "an empty file")
	shown, ok := snippetOf([]byte("abc"), place(3, 3), 40)
	require.True(t, ok, "the end of the file")
	require.Equal(t, snippet{"abc", 3, 1}, shown)
	shown, ok = snippetOf([]byte("abc {\n  def\n}"), place(4, 13), 40)
	require.True(t, ok, "several lines")
	require.Equal(t, snippet{"abc {", 4, 1}, shown)
	shown, ok = snippetOf(bytes.Repeat([]byte("é"), 1<<20), place(1<<20, 1<<20+2), 40)
	require.True(t, ok, "one enormous line")
	require.LessOrEqual(t, Width(shown.text), 40)
}

func FuzzSnippet(f *testing.F) {
	f.Add("wall = \"2.5\"\n", 7, 12, 40)
	f.Add("日本\t\x1b\xff\r\n", 3, 2000, 3)
	f.Fuzz(func(t *testing.T, file string, from, to, width int) {
		width = 2 + (width&0xFF)%100
		at := hcl.Range{Start: hcl.Pos{Line: 1, Column: 1, Byte: from}, End: hcl.Pos{Line: 1, Column: 1, Byte: to}}
		shown, ok := snippetOf([]byte(file), at, width)
		if !ok {
			return
		}
		requireHarmless(t, shown.text)
		require.LessOrEqual(t, Width(shown.text), width)
		require.GreaterOrEqual(t, shown.markAt, 0)
		require.Positive(t, shown.markLength)
	})
}
