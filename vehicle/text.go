package vehicle

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/agext/levenshtein"
	"golang.org/x/text/unicode/norm"
)

// FoldText brings a text into the form in which texts are compared: Unicode NFC, trimmed,
// every inner run of white space one blank, lower case. Folding twice changes nothing.
func FoldText(s string) string {
	if isFolded(s) {
		return s
	}
	lower := strings.ToLower(norm.NFC.String(s))
	// A small letter can have a composed form with a mark where the capital has none (H with
	// a macron below), so the normal form is taken once more.
	return strings.Join(strings.Fields(norm.NFC.String(lower)), " ")
}

// isFolded reports whether s surely is in folded form already: the usual case, worth
// telling without copying.
func isFolded(s string) bool {
	blank := true
	for i := 0; i < len(s); i++ {
		c := s[i]
		if c >= utf8.RuneSelf || c < ' ' || 'A' <= c && c <= 'Z' || c == ' ' && blank {
			return false
		}
		blank = c == ' '
	}
	return !blank || s == ""
}

// longestWord is the length in bytes beyond which no nearest word is looked for.
const longestWord = 64

// Nearest returns the member of known that word was most likely meant to be, "" when none
// is near: at most one slip for every three letters and none in a single one, where upper and lower case, blanks,
// dashes and underlines are no difference. Of two equally near the first in known is taken.
func Nearest(word string, known []string) string {
	if len(word) > longestWord {
		return ""
	}
	wanted := bareWord(word)
	best, nearest := (utf8.RuneCountInString(wanted)+1)/3+1, ""
	for _, candidate := range known {
		if distance := levenshtein.Distance(wanted, bareWord(candidate), nil); distance < best {
			best, nearest = distance, candidate
		}
	}
	return nearest
}

// bareWord is word in lower case without blanks, dashes and underlines.
func bareWord(word string) string {
	return strings.Map(func(r rune) rune {
		if r == '_' || r == '-' || unicode.IsSpace(r) {
			return -1
		}
		return unicode.ToLower(r)
	}, norm.NFC.String(word))
}
