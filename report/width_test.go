package report

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestWidth(t *testing.T) {
	// Unicode Standard Annex 11: wide characters fill two cells, combining marks none.
	require.Equal(t, 5, Width("45 mm"))
	require.Equal(t, 4, Width("日本"))
	require.Equal(t, 1, Width("e\u0301"))
	require.Equal(t, 80, TerminalWidth(&bytes.Buffer{}), "a writer that is no terminal")
}

func TestWrap(t *testing.T) {
	require.Equal(t, []string{"Re-make the hoop", "in a listed size"}, wrap("Re-make the hoop in a  listed size", 17))
	require.Equal(t, []string{"abcdefghij", "klmno pq"}, wrap("abcdefghijklmno pq", 10), "a long word is cut")
	require.Equal(t, []string{"日本", "日本"}, wrap("日本日本", 5))
	require.Equal(t, []string{""}, wrap("   ", 10))
	require.Equal(t, []string{"a", "日"}, wrap("a日", 1), "never narrower than the widest character")
}

func TestWrapKeepsEveryCharacter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := Safe(rapid.String().Draw(t, "text"))
		width := rapid.IntRange(2, 60).Draw(t, "width")
		pieces := wrap(text, width)
		for _, piece := range pieces {
			if Width(piece) > width {
				require.Empty(t, cells.Truncate(piece, width, ""), "only what cannot be cut may be wider")
			}
		}
		without := func(s string) string { return strings.Join(strings.Fields(s), "") }
		require.Equal(t, without(text), without(strings.Join(pieces, " ")))
	})
}
