package engine_test

import (
	"os"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

// TestWorkedCasesOfTheLanguagePage works the cases in the examples of the reference for
// rules officers: what it says of a convention of dates has to come out so, on the last day
// and on the day after.
func TestWorkedCasesOfTheLanguagePage(t *testing.T) {
	page, err := os.ReadFile("../rules/LANGUAGE.md")
	require.NoError(t, err)
	worked := map[string]int{} // cases by answer
	for _, block := range regexp.MustCompile("(?ms)^```hcl\n(.*?)^```$").FindAllStringSubmatchIndex(string(page), -1) {
		text := string(page[block[2]:block[3]])
		if !strings.Contains(text, "worked_case ") {
			continue
		}
		line := strings.Count(string(page[:block[0]]), "\n") + 2
		if !strings.Contains(text, "rulebook ") {
			text += "rulebook \"Saltmarsh Stage Rally Car Rules\" {\n  edition = \"2027\"\n}\n"
		}
		book, faults := rules.Load(fstest.MapFS{"book.hcl": {Data: []byte(text)}}, "book.hcl", "book.hcl", vehicle.BuiltIn())
		require.Empty(t, faults, "the example at line %d", line)
		p, faults := engine.Compile(book)
		require.Empty(t, faults)
		for _, w := range book.Cases {
			result := workPublished(t, p, w)
			if got := publishedVerdict(result, w.Subject); got != w.Answer {
				t.Errorf("line %d, %q: the clause gives %q, the page says %q\n%s", line, w.Name, got, w.Answer, tellPublished(result))
			}
			worked[w.Answer]++
		}
	}
	require.Greater(t, worked["meets"], 15)
	require.Greater(t, worked["gap"], 15)
}
