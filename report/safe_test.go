package report

import (
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
)

func TestSafe(t *testing.T) {
	// The classes of characters are those of the Unicode Standard; the overrides of
	// direction are listed in Unicode Standard Annex 9, section 2.
	for _, c := range []struct{ text, safe string }{
		{"45 x 2.5 mm", "45 x 2.5 mm"},
		{"Überrollbügel, ± 0.1 mm, 日本", "Überrollbügel, ± 0.1 mm, 日本"},
		{"\x1b[31mred\x1b[0m", "<U+001B>[31mred<U+001B>[0m"},
		{"\x1b]0;title\a", "<U+001B>]0;title<U+0007>"},
		{"\u009b2J", "<U+009B>2J"},
		{"back\b\bspace\x7f", "back<U+0008><U+0008>space<U+007F>"},
		{"abc\u202edcba\u2066x\u2069", "abc<U+202E>dcba<U+2066>x<U+2069>"},
		{"\u200fmark\ufeff", "<U+200F>mark<U+FEFF>"},
		{"soft\u00adhyphen", "soft<U+00AD>hyphen"},
		{"tag\U000e0041", "tag<U+E0041>"},
		{"two\nlines\r\nand\ta tab\rreturn", "two lines and a tab return"},
		{"line\u2028paragraph\u2029", "line<U+2028>paragraph<U+2029>"},
		{"bad\xff\xc3", "bad<0xFF><0xC3>"},
		{"\ufffd stays", "\ufffd stays"},
		{"\u200djoiners\u200c", "\u200djoiners\u200c"},
		{"", ""},
	} {
		require.Equal(t, c.safe, Safe(c.text), "%q", c.text)
	}
	require.Equal(t, []string{"one", "two<U+001B>", "", "four"}, SafeLines("one\r\ntwo\x1b\n\nfour"))
}

func TestSafeJSON(t *testing.T) {
	document := "{\"a\":\"\u202e\u009b\x7f\U000e0041é\"}\n"
	require.Equal(t, "{\"a\":\"\\u202e\\u009b\\u007f\\udb40\\udc41é\"}\n", string(SafeJSON([]byte(document))))
	require.Equal(t, "{\"a\": 1}\n", string(SafeJSON([]byte("{\"a\": 1}\n"))))
}

// requireHarmless fails when a text could steer a terminal. Line ends are allowed where
// they are expected.
func requireHarmless(t *testing.T, text string) {
	t.Helper()
	require.True(t, utf8.ValidString(text), "%q", text)
	for _, r := range strings.ReplaceAll(text, "\n", "") {
		if r == '\u200c' || r == '\u200d' {
			continue
		}
		require.False(t, unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp), "%q in %q", r, text)
	}
}

func FuzzSafe(f *testing.F) {
	for _, seed := range []string{"", "plain", "\x1b[2J\x1b]0;x\a", "a\u202eb\u2028", "\xff\xfe\x00", "日本\tx\r\n", "\U000e0001\u200d"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		safe := Safe(text)
		requireHarmless(t, safe)
		require.NotContains(t, safe, "\n")
		require.Equal(t, safe, Safe(safe), "making a safe text safe changes nothing")
		for _, line := range SafeLines(text) {
			requireHarmless(t, line)
		}
		for _, piece := range wrap(safe, 20) {
			require.LessOrEqual(t, Width(piece), 20)
		}
	})
}

func TestProse(t *testing.T) {
	require.Equal(t, []string{"One piece of a listed tube.", "New paragraph."}, prose("  One piece\n  of a listed tube.\n\nNew paragraph.\n"))
	require.Equal(t, []string{"Either", "- a plate", "(b) a gusset that goes on"}, prose("Either\n- a plate\n(b) a gusset\nthat goes on"))
	require.Equal(t, []string{""}, prose(" \n "))
}
