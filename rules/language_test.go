package rules

import (
	"flag"
	"fmt"
	"os"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

var update = flag.Bool("update", false, "rewrite the generated parts of LANGUAGE.md")

// generated begins a generated part of LANGUAGE.md.
const generated = "<!-- %s: written by go test ./rules -run TestLanguageReference -update -->"

// TestLanguageReference holds that the tables of functions and units are those the checker
// has.
func TestLanguageReference(t *testing.T) {
	data, err := os.ReadFile("LANGUAGE.md")
	require.NoError(t, err)
	text := string(data)
	for part, table := range map[string]string{"functions": functionReference(), "units": unitReference()} {
		begin, end := fmt.Sprintf(generated, part), "<!-- end of "+part+" -->"
		before, rest, found := strings.Cut(text, begin)
		require.True(t, found, "LANGUAGE.md has lost the line %s", begin)
		_, after, found := strings.Cut(rest, end)
		require.True(t, found, "LANGUAGE.md has lost the line %s", end)
		text = before + begin + "\n\n" + table + "\n" + end + after
	}
	if *update {
		require.NoError(t, os.WriteFile("LANGUAGE.md", []byte(text), 0o644))
		return
	}
	require.Equal(t, text, string(data), "run go test ./rules -run TestLanguageReference -update")
}

// functionReference is the table of all functions.
func functionReference() string {
	var out strings.Builder
	out.WriteString("| function | yields |\n| --- | --- |\n")
	for _, u := range Usages() {
		fmt.Fprintf(&out, "| `%s` | %s |\n", strings.ReplaceAll(u.Usage, " or ", "`, `"), u.Help)
	}
	return out.String()
}

// unitReference is the table of all units that have a name in formulas.
func unitReference() string {
	var out strings.Builder
	out.WriteString("| in formulas | measures | in figures of a sheet or table |\n| --- | --- | --- |\n")
	for _, u := range quantity.FormulaUnits() {
		fmt.Fprintf(&out, "| `%s` | %s | %s |\n", u.Formula(), u.Dimension(), u.Name())
	}
	return out.String()
}

var fence = regexp.MustCompile("(?ms)^```(hcl|formula|formula wrong)\n(.*?)^```$")

// TestLanguageExamples tries everything in the reference that looks like a rulebook or a
// formula: the sound ones are sound, and the wrong ones are told of in the words beside them.
func TestLanguageExamples(t *testing.T) {
	data, err := os.ReadFile("LANGUAGE.md")
	require.NoError(t, err)
	scope := languageScope()
	counts := map[string]int{}
	for _, block := range fence.FindAllSubmatchIndex(data, -1) {
		sort, text := string(data[block[2]:block[3]]), string(data[block[4]:block[5]])
		line := strings.Count(string(data[:block[0]]), "\n") + 2
		counts[sort]++
		switch sort {
		case "hcl":
			loadExample(t, line, text)
		case "formula":
			for _, source := range strings.Split(strings.TrimSpace(text), "\n\n") {
				tree, faults := CheckText(source, scope, Type{Kind: Truth})
				require.Empty(t, faults, "line %d: %s", line, source)
				require.NotNil(t, tree)
			}
		default:
			source, message, found := strings.Cut(strings.TrimSpace(text), "\n→ ")
			require.True(t, found, "line %d: a wrong formula states its message", line)
			_, faults := CheckText(source, scope, Type{Kind: Truth})
			require.Len(t, faults, 1, "line %d: %s", line, source)
			require.Equal(t, message, faults[0].Detail(), "line %d", line)
		}
	}
	require.Greater(t, counts["hcl"], 5)
	require.Greater(t, counts["formula"], 15)
	require.Greater(t, counts["formula wrong"], 5)
}

// loadExample loads a rulebook, or what may stand in one.
func loadExample(t *testing.T, line int, text string) {
	t.Helper()
	if !strings.Contains(text, "chapter ") {
		text = "chapter \"1\" {\n  title = \"Example\"\n" + text + "}\n"
	}
	if !strings.Contains(text, "rulebook ") {
		text += "rulebook \"Saltmarsh Stage Rally Car Rules\" {\n  edition = \"2027\"\n}\n"
	}
	folder := fstest.MapFS{"book.hcl": {Data: []byte(text)}}
	book, faults := Load(folder, "book.hcl", "book.hcl", vehicle.BuiltIn())
	require.Empty(t, faults, "the example at line %d", line)
	require.NotNil(t, book)
}

// languageScope is the scope of the reference's formulas: the real vocabulary, and a
// variable for each part that they speak of.
func languageScope() *Scope {
	v := vehicle.BuiltIn()
	scope := NewScope(v)
	for name, part := range map[string]*vehicle.PartType{
		"tube": v.Type("tube"), "foot": v.Type("foot"), "harness": v.Type("harness"), "seat": v.Type("seat"), "strap": v.Type("strap"),
		"other": v.Type("tube"), "joint": v.Type("joint"), "head": v.Type("head"),
	} {
		scope = scope.With(&Binding{Name: name, Is: Type{Kind: Part, PartType: part}})
	}
	return scope
}
