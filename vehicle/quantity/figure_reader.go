package quantity

import (
	"strings"
	"unicode"
)

// figureReader reads a written figure from left to right.
type figureReader struct {
	text []rune // with signs that mean alike written as one, rune for rune
	at   int
	to   int // where reading ends, at most len(text)
}

// here is the rune at the reader's place, 0 at the end.
func (r *figureReader) here() rune { return r.ahead(0) }

// ahead is the rune so many places further on, 0 past the end.
func (r *figureReader) ahead(n int) rune {
	if r.at+n < r.to {
		return r.text[r.at+n]
	}
	return 0
}

// after is the first rune from a place on that is no blank, 0 at the end.
func (r *figureReader) after(at int) rune {
	if at = r.blanks(at); at < r.to {
		return r.text[at]
	}
	return 0
}

// blanks returns the first place from at on that is no blank.
func (r *figureReader) blanks(at int) int {
	for at < r.to && r.text[at] == ' ' {
		at++
	}
	return at
}

// between is a piece of the text.
func (r *figureReader) between(from, to int) string { return string(r.text[from:to]) }

// unitEnd returns where the unit that begins at from ends: before the next number, a sign
// of tolerance, the word to, or the end.
func (r *figureReader) unitEnd(from int) int {
	at := from
	for at < r.to && !r.endsUnit(from, at) {
		quote := strings.ContainsRune(`"'″′°`, r.text[at])
		at++
		if quote && at < r.to && (isDigit(r.text[at]) || vulgarFraction(r.text[at]) != "") {
			break
		}
	}
	for at > from && r.text[at-1] == ' ' {
		at--
	}
	return at
}

// endsUnit reports whether a unit that began at from cannot go on at a place.
func (r *figureReader) endsUnit(from, at int) bool {
	c := r.text[at]
	next := r.after(at + 1)
	switch {
	case strings.ContainsRune("±+<>=≤≥~,;:–—×|", c), vulgarFraction(c) != "":
		return true
	case c == '/':
		return next == '-' || next == '+' || startsNumber(next, r.runeAt(r.blanks(at+1)+1))
	case c == '-':
		return at == from || r.text[at-1] == ' ' || at+1 == r.to || r.text[at+1] == ' ' || r.rangeHyphen(at)
	case c == '.':
		return at == from || at+1 < r.to && (r.text[at+1] == '.' || isDigit(r.text[at+1]))
	case isDigit(c):
		return at == from
	case c == ' ':
		at = r.blanks(at)
		return startsNumber(next, r.runeAt(at+1)) || r.wordAt(at, "to") || r.wordAt(at, "x") || r.wordAt(at, "X")
	}
	return at == from && (r.wordAt(at, "to") || (c == 'x' || c == 'X') && startsNumber(next, r.runeAt(r.blanks(at+1)+1)))
}

// rangeHyphen reports whether a hyphen behind a unit stands before a second figure, as in
// 44mm-46mm, and not before an exponent, as in s-2.
func (r *figureReader) rangeHyphen(at int) bool {
	end := at + 1
	for end < r.to && isDigit(r.text[end]) {
		end++
	}
	return end > at+2 || end > at+1 && end < r.to && (r.text[end] == '.' && isDigit(r.runeAt(end+1)) || unicode.IsLetter(r.text[end]))
}

// runeAt is the rune at a place, 0 past the end.
func (r *figureReader) runeAt(at int) rune {
	if at < r.to {
		return r.text[at]
	}
	return 0
}

// wordAt reports whether a word stands at a place and ends there.
func (r *figureReader) wordAt(at int, word string) bool {
	end := at + len(word)
	if end > r.to || string(r.text[at:end]) != word {
		return false
	}
	return end == r.to || !unicode.IsLetter(r.text[end])
}

// startsNumber reports whether a rune, with the one behind it, begins a number without a
// sign.
func startsNumber(c, next rune) bool {
	return isDigit(c) || vulgarFraction(c) != "" || c == '.' && isDigit(next)
}
