package vehicle

import (
	"slices"
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
// is near. Near is a word with slips in at most a third of its letters, the longer of the
// two counted, and in none of three where both have as many: fwd and rwd are opposites.
// Texts of several words are held together word by word as well. Upper and lower case,
// blanks, dashes and underlines are no difference. Of two equally near the first in known
// is taken.
func Nearest(word string, known []string) string {
	if len(word) > longestWord {
		return ""
	}
	wanted, words := bareWord(word), wordsOf(word)
	best, nearest := longestWord, ""
	for _, candidate := range known {
		bare := bareWord(candidate)
		distance, near := slips(wanted, bare, 3)
		if !near || distance >= best {
			continue
		}
		if wanted == bare || nearWordByWord(words, wordsOf(candidate)) {
			best, nearest = distance, candidate
		}
	}
	return nearest
}

// longestShort is how many letters a word has in which another letter makes another word.
const longestShort = 3

// slips counts the letters to change, add or leave out between two words, and reports
// whether they are at most one of so many letters.
func slips(a, b string, letters int) (count int, near bool) {
	count = levenshtein.Distance(a, b, nil)
	shorter, longer := utf8.RuneCountInString(a), utf8.RuneCountInString(b)
	if shorter > longer {
		shorter, longer = longer, shorter
	}
	another := longer <= longestShort && shorter == longer
	return count, count == 0 || !another && letters*count <= longer
}

// nearWordByWord reports whether each word of a text has slips in at most half of its
// letters against its partner in another, so that two-wheel drive is not taken for
// four-wheel drive. A text with words more must differ in another way than by those: what
// is called shoulder can be left shoulder and right shoulder alike. Numbers among the words,
// as in those of clauses, count as part of the whole only.
func nearWordByWord(a, b []string) bool {
	if len(a) != len(b) {
		return !isWithin(a, b) && !isWithin(b, a)
	}
	for i := range a {
		_, near := slips(a[i], b[i], 2)
		if !near && isLettered(a[i]) && isLettered(b[i]) {
			return false
		}
	}
	return true
}

// isLettered reports whether there is a letter in a word.
func isLettered(word string) bool { return strings.ContainsFunc(word, unicode.IsLetter) }

// isWithin reports whether every one of some words is among others.
func isWithin(words, others []string) bool {
	for _, word := range words {
		if !slices.Contains(others, word) {
			return false
		}
	}
	return true
}

// wordsOf is the words of a text in lower case: runs of letters and digits.
func wordsOf(text string) []string {
	return strings.FieldsFunc(strings.ToLower(norm.NFC.String(text)), func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && !unicode.IsMark(r)
	})
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
