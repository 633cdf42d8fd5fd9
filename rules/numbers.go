package rules

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"gapsheet/vehicle"
)

// longestLabel is how many characters a clause or chapter number may have: more is a
// title in the wrong place.
const longestLabel = 40

// Selects reports whether only, as given to --only, picks the clause or chapter with
// that number: the number itself or one that lies within it. "4" picks 4 and 4.3.2 but
// not 41, "253-8.3" picks 253-8.3.2.1, "K1.4.1" picks K1.4.1(e), "K" picks K1.4 and
// "4.3" picks 4.3a, because where a digit meets a letter one level ends and the next
// begins. Capitals do not matter, nor does a full stop or dash left at the end of only
// ("4."). An empty only picks nothing.
func Selects(only, number string) bool {
	within := strings.TrimRight(foldNumber(only), ".-/")
	number = foldNumber(number)
	if within == "" || !strings.HasPrefix(number, within) {
		return false
	}
	rest := number[len(within):]
	if rest == "" {
		return true
	}
	before, _ := utf8.DecodeLastRuneInString(within)
	after, _ := utf8.DecodeRuneInString(rest)
	return endsLevel(before, after)
}

// SelectedBy reports whether only, as given to --only, picks the clause: by its number, or
// by that of its chapter, so that a chapter "8" is picked whole although its clauses are
// numbered 253-8.1 and on.
func (c *Clause) SelectedBy(only string) bool {
	if Selects(only, c.Number) {
		return true
	}
	// 4 does not pick a clause 41, not even one that stands in chapter 4.
	longer := strings.HasPrefix(vehicle.FoldText(c.Number), vehicle.FoldText(only))
	return !longer && c.Chapter != nil && Selects(only, c.Chapter.Number)
}

// endsLevel reports whether a new level of a number begins between two of its characters.
func endsLevel(before, after rune) bool {
	switch {
	case unicode.IsLetter(before):
		return !unicode.IsLetter(after)
	case unicode.IsDigit(before):
		return !unicode.IsDigit(after)
	default:
		return true
	}
}

// foldNumber makes two spellings of one number equal.
func foldNumber(number string) string { return strings.ToLower(strings.TrimSpace(number)) }

// numberFault says what is wrong with a clause or chapter number, or nothing when it can
// stand. Numbers are labels: they are quoted, searched for and given on the command line,
// so they hold no blank and no comma.
func numberFault(number string) string {
	if number == "" {
		return "The number is empty."
	}
	if utf8.RuneCountInString(number) > longestLabel {
		return "The number is longer than 40 characters."
	}
	open := 0
	for i, r := range number {
		switch {
		case unicode.IsLetter(r), unicode.IsDigit(r), r == '§':
		case i == 0 && r != '(':
			return "A number begins with a letter, a digit or §."
		case r == '(':
			open++
		case r == ')':
			open--
		case !strings.ContainsRune(".-/_", r):
			return "A number holds letters, digits and . - / _ ( ) only, without blanks."
		}
		if open < 0 {
			break
		}
	}
	if open != 0 {
		return "The brackets in the number do not match."
	}
	return ""
}
