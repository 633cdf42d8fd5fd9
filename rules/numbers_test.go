package rules

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestSelects(t *testing.T) {
	for _, c := range []struct {
		only, number string
		want         bool
	}{
		{"4", "4", true},
		{"4", "4.3.2", true},
		{"4", "41", false},
		{"4", "41.1", false},
		{"4.", "4.3.2", true},
		{"4.3", "4.3.2", true},
		{"4.3", "4.30", false},
		{"4.3", "4.3a", true},
		{"4.3.2", "4.3", false},
		{"4", "14.4", false},
		{"253", "253-8.3.2.1", true},
		{"253-8", "253-8.3.2.1", true},
		{"253-8.3", "253-8.3.2.1", true},
		{"253-8.3", "253-8.31", false},
		{"253-8.3.2.1", "253-8.3.2.1", true},
		{"8.3", "253-8.3", false},
		{"K", "K1.4.1(e)", true},
		{"K1", "K1.4.1(e)", true},
		{"K1", "K11.4", false},
		{"K1.4.1", "K1.4.1(e)", true},
		{"K1.4.1(e)", "K1.4.1(e)", true},
		{"k1.4.1(E)", "K1.4.1(e)", true},
		{"K1.4.1(", "K1.4.1(e)", true},
		{"K1.4.1(e)", "K1.4.1(ea)", false},
		{"A", "AB2", false},
		{"T", "T.2.2.3", true},
		{"T.2", "T.2.2.3", true},
		{"T.2", "T.22", false},
		{" 4 ", "4.1", true},
		{"", "4.1", false},
		{".", "4.1", false},
	} {
		require.Equal(t, c.want, Selects(c.only, c.number), "%s picks %s", c.only, c.number)
	}
}

func TestClausesAreFoundByNumberAndChapter(t *testing.T) {
	hoop, law := &Clause{Number: "253-8.1(e)"}, &Clause{Number: "9.1"}
	eight := &Chapter{Number: "8", Clauses: []*Clause{hoop}}
	hoop.Chapter, law.Chapter = eight, &Chapter{Number: "9", Clauses: []*Clause{law}}
	book := &Rulebook{Chapters: []*Chapter{eight, law.Chapter}}
	require.Same(t, hoop, book.ClauseNumbered(" 253-8.1(E)"))
	require.Nil(t, book.ClauseNumbered("253-8.1"))
	require.True(t, hoop.SelectedBy("8"))
	require.True(t, hoop.SelectedBy("253-8"))
	require.False(t, hoop.SelectedBy("8.1"))
	require.False(t, law.SelectedBy("8"))
}

func TestEveryLevelOfANumberSelectsIt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		levels := rapid.SliceOfN(rapid.IntRange(0, 30), 1, 5).Draw(t, "levels")
		words := make([]string, len(levels))
		for i, level := range levels {
			words[i] = strings.Repeat("1", level/10+1) + string(rune('0'+level%10))
		}
		number := strings.Join(words, ".")
		for k := 1; k <= len(words); k++ {
			part := strings.Join(words[:k], ".")
			require.True(t, Selects(part, number))
			require.Equal(t, part == number, Selects(number, part))
			require.False(t, Selects(part+"0", number))
		}
	})
}

func TestNumbers(t *testing.T) {
	for _, good := range []string{"4", "4.3.2", "253-8.3.2.1", "K1.4.1(e)", "§12", "T.2.2.3", "7b", "A/3", "9_1", "É2"} {
		require.Empty(t, numberFault(good), good)
	}
	for bad, want := range map[string]string{
		"":                      "empty",
		"4 .3":                  "without blanks",
		"4,3":                   "without blanks",
		".4":                    "begins with",
		"-4":                    "begins with",
		"4\x1b[1m":              "without blanks",
		"4(a":                   "brackets",
		"4)a(":                  "brackets",
		strings.Repeat("4", 41): "40 characters",
	} {
		require.Contains(t, numberFault(bad), want, "%q", bad)
	}
}
