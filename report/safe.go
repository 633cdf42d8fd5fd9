// Package report puts results into words: for a terminal, as JSON, and as a list of what
// is wrong with a file. It decides nothing; verdicts come from the engine.
package report

import (
	"fmt"
	"regexp"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Safe makes a text that came from a file harmless on a terminal, on one line. Line
// breaks and tabs become one blank. Whatever could steer the terminal or turn the order
// of letters round (control characters and with them every escape sequence, overrides
// and marks of direction, other invisible format characters) is written out as its code
// point, "<U+001B>"; a byte that is not UTF-8 as "<0xFF>". The joiners U+200C and U+200D
// stay: some scripts cannot be written without them.
func Safe(text string) string {
	if isHarmless(text) {
		return text
	}
	var out strings.Builder
	for at := 0; at < len(text); {
		r, size := utf8.DecodeRuneInString(text[at:])
		switch {
		case r == utf8.RuneError && size == 1:
			fmt.Fprintf(&out, "<0x%02X>", text[at])
		case r == '\r' && strings.HasPrefix(text[at:], "\r\n"):
			// The line feed that follows becomes the blank.
		case r == '\n' || r == '\t' || r == '\r':
			out.WriteByte(' ')
		case steers(r):
			fmt.Fprintf(&out, "<U+%04X>", r)
		default:
			out.WriteRune(r)
		}
		at += size
	}
	return out.String()
}

// SafeLines splits a text at its line breaks and makes each line safe.
func SafeLines(text string) []string {
	lines := strings.Split(strings.ReplaceAll(text, "\r\n", "\n"), "\n")
	for i, line := range lines {
		lines[i] = Safe(line)
	}
	return lines
}

// isHarmless is the quick way out for printable ASCII, nearly every text there is.
func isHarmless(text string) bool {
	for i := 0; i < len(text); i++ {
		if text[i] < ' ' || text[i] > '~' {
			return false
		}
	}
	return true
}

// steers reports whether a rune could change how the rest of the line is shown. Cc holds
// C0, DEL and C1; Cf holds the overrides of direction and the invisible tags; Zl and Zp
// break lines on some terminals.
func steers(r rune) bool {
	if r == '\u200c' || r == '\u200d' {
		return false
	}
	return unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp)
}

// prose is a text as lines to be wrapped: where its author broke a line for the file's
// sake only, it goes on; a blank line, and the mark of a list, begin a new one.
func prose(text string) []string {
	var lines []string
	fresh := true
	for _, line := range SafeLines(strings.TrimSpace(text)) {
		line = strings.TrimSpace(line)
		switch {
		case line == "":
			fresh = true
		case fresh || listMark.MatchString(line):
			lines = append(lines, line)
			fresh = false
		default:
			lines[len(lines)-1] += " " + line
		}
	}
	if len(lines) == 0 {
		return []string{""}
	}
	return lines
}

// listMark is what an entry of a list begins with: a dash, a number, a letter in brackets.
var listMark = regexp.MustCompile(`^([-*•–]|\d+[.)]|\(?[a-z0-9]{1,3}\))\s`)
