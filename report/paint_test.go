package report

import (
	"bytes"
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
)

func environmentOf(pairs map[string]string) func(string) string {
	return func(name string) string { return pairs[name] }
}

func TestWantsColor(t *testing.T) {
	empty := environmentOf(nil)
	require.False(t, WantsColor(&bytes.Buffer{}, ColorAuto, empty), "no terminal")
	require.True(t, WantsColor(&bytes.Buffer{}, ColorAlways, environmentOf(map[string]string{"NO_COLOR": "1"})),
		"what is asked for on the command line goes before the environment")
	require.False(t, WantsColor(&bytes.Buffer{}, ColorNever, empty))
	file, err := os.Create(t.TempDir() + "/out")
	require.NoError(t, err)
	defer file.Close()
	require.False(t, WantsColor(file, ColorAuto, empty), "a file is no terminal")
}

func TestParseColorChoice(t *testing.T) {
	for _, choice := range ColorChoices() {
		parsed, err := ParseColorChoice(string(choice))
		require.NoError(t, err)
		require.Equal(t, choice, parsed)
	}
	_, err := ParseColorChoice("blue\x1b")
	require.EqualError(t, err, `--color takes auto, always or never, not "blue<U+001B>"`)
}

func TestPaint(t *testing.T) {
	plain, colored := NewPaint(false), NewPaint(true)
	for _, verdict := range engine.Verdicts() {
		require.Equal(t, "gap", plain.With(InkOf(verdict), "gap"))
		if verdict != engine.Meets {
			require.Contains(t, colored.With(InkOf(verdict), "gap"), "\x1b[")
		}
	}
	require.Equal(t, "gap", colored.With(Plain, "gap"))
	require.Equal(t, "", colored.With(Strong, ""))
	// 100 % of a text stays as it is: it is no format.
	require.Equal(t, "100 %d", plain.With(Strong, "100 %d"))
}
