package vehicle

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"golang.org/x/text/unicode/norm"
	"pgregory.net/rapid"
)

func TestTextsAreFolded(t *testing.T) {
	for text, want := range map[string]string{
		"":                       "",
		"  ":                     "",
		"main hoop":              "main hoop",
		"  Main\t\n Hoop ":       "main hoop",
		"FIA 8853/98":            "fia 8853/98",
		"E\u0301tai":             "\u00e9tai",
		"\u00c9TAI":              "\u00e9tai",
		"a\u00a0b":               "a b",
		"a b ":                   "a b",
		" a b":                   "a b",
		"\u0130stanbul":          "istanbul",
		"H\u0331":                "\u1e96",
		"two-wheel  drive  open": "two-wheel drive open",
	} {
		require.Equal(t, want, FoldText(text), "%q", text)
	}
}

func TestFoldingTwiceChangesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		folded := FoldText(rapid.String().Draw(t, "text"))
		require.Equal(t, folded, FoldText(folded))
		require.True(t, norm.NFC.IsNormalString(folded))
		require.Equal(t, strings.TrimSpace(folded), folded)
		require.NotContains(t, folded, "  ")
	})
}

func TestTheNearestWordIsFound(t *testing.T) {
	known := []string{"tube", "tube_stock", "wall", "ordered_wall", "main hoop", "A", "4.1", "low"}
	for word, want := range map[string]string{
		"tubestock":              "tube_stock",
		"Tube-Stock":             "tube_stock",
		"tube stok":              "tube_stock",
		"wal":                    "wall",
		"WALL":                   "wall",
		"main hop":               "main hoop",
		"tub":                    "tube",
		"a":                      "A",
		"4.11":                   "4.1",
		"lo":                     "low",
		"B":                      "",
		"walrus":                 "",
		"":                       "",
		"fuel_cell":              "",
		strings.Repeat("x", 1e6): "",
	} {
		require.Equal(t, want, Nearest(word, known), "%.20q", word)
	}
	for word, not := range map[string]string{
		"rwd": "4WD", "2wd": "4WD", "two-wheel drive": "four-wheel drive", "left lap": "right lap",
		"shoulder": "left shoulder", "hoop": "B hoop", "front right": "front left", "car": "bar",
	} {
		require.Empty(t, Nearest(word, []string{not}), "%s is not %s", word, not)
	}
	require.Equal(t, "wale", Nearest("wal", []string{"tube", "wale", "wall"}), "the first of two equally near")
	require.Empty(t, Nearest("wall", nil))
}

func TestTextsAreQuotedForMessages(t *testing.T) {
	require.Equal(t, `"a \"b\""`, Quote(`a "b"`))
	require.Equal(t, `"\x1b[2J\a\u202e"`, Quote("\x1b[2J\a\u202e"))
	require.Equal(t, "\"é 日\"", Quote("é 日"))
	require.Equal(t, "\""+strings.Repeat("é", quotedLimit)+"\"", Quote(strings.Repeat("é", quotedLimit)))
	require.Equal(t, "\""+strings.Repeat("é", quotedLimit-1)+"…\"", Quote(strings.Repeat("é", quotedLimit+1)))
}
