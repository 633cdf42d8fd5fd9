package rules

import (
	"sort"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/expr-lang/expr/ast"
)

// spanOf is the place that expr's tree gives a node: of one piece only, such as the
// operator of a sum or the name of a function.
func (c *checker) spanOf(n ast.Node) Span {
	at := n.Location()
	from := min(max(at.From, 0), c.runes)
	return Span{from, min(max(at.To, from), c.runes)}
}

// tokenFrom is the index of the first token that begins at or after a rune.
func (c *checker) tokenFrom(rune int) int {
	return sort.Search(len(c.tokens), func(i int) bool { return c.tokens[i].at.From >= rune })
}

// is reports whether token i is there and reads text.
func (c *checker) is(i int, text string) bool {
	return i >= 0 && i < len(c.tokens) && c.source[c.tokens[i].start:c.tokens[i].end] == text
}

// join is the span of a node made of a left and a right one around the operator at by:
// from the left to the right end, brackets around either included.
func (c *checker) join(left, by, right Span) Span {
	return Span{c.widenLeft(left.From, by.From), c.widenRight(right.To, by.From)}
}

// widenLeft moves the beginning of an operand to the left over the brackets that close
// before a rune, that is around the operand alone.
func (c *checker) widenLeft(from, before int) int {
	for i := c.tokenFrom(from) - 1; c.is(i, "("); i-- {
		if partner := c.tokens[i].match; partner < 0 || c.tokens[partner].at.From >= before {
			break
		}
		from = c.tokens[i].at.From
	}
	return from
}

// widenRight moves the end of an operand to the right over the brackets that open after
// a rune.
func (c *checker) widenRight(to, after int) int {
	for i := c.tokenFrom(to); c.is(i, ")"); i++ {
		if partner := c.tokens[i].match; partner < 0 || c.tokens[partner].at.From <= after {
			break
		}
		to = c.tokens[i].at.To
	}
	return to
}

// inBrackets reports whether a span stands directly between round brackets.
func (c *checker) inBrackets(at Span) bool {
	i := c.tokenFrom(at.From) - 1
	return c.is(i, "(") && c.tokens[i].match >= 0 && c.tokens[i].match == c.tokenFrom(at.To)
}

// toClosing is the span from a node's beginning to the end of the bracket that opens at
// or after rune: a call to its last bracket.
func (c *checker) toClosing(from, rune int) Span {
	i := c.tokenFrom(rune)
	if i < len(c.tokens) && c.tokens[i].match >= 0 {
		return Span{from, c.tokens[c.tokens[i].match].at.To}
	}
	return Span{from, max(from, rune)}
}

// text is what stands at a place of the formula.
func (c *checker) text(at Span) string {
	if c.runes == len(c.source) {
		return c.source[at.From:at.To]
	}
	start, end, rune := len(c.source), len(c.source), 0
	for i := range c.source {
		if rune == at.From {
			start = i
		}
		if rune == at.To {
			end = i
			break
		}
		rune++
	}
	return c.source[start:max(start, end)]
}

// quote repeats what stands at a place, for a message.
func (c *checker) quote(at Span) string { return quoteCode(c.text(at)) }

// code repeats what stands at a place without quotes, for what an author is to write.
func (c *checker) code(at Span) string { return plainCode(c.text(at)) }

// longestQuote is how many characters of a formula a message repeats.
const longestQuote = 60

// plainCode brings a piece of a formula into a form fit for a message: on one line, cut
// when long, and with nothing in it that a terminal would act on.
func plainCode(text string) string {
	text = strings.Join(strings.Fields(text), " ")
	if utf8.RuneCountInString(text) > longestQuote {
		text = string([]rune(text)[:longestQuote-1]) + "…"
	}
	return strings.Map(func(r rune) rune {
		if !unicode.IsPrint(r) {
			return unicode.ReplacementChar
		}
		return r
	}, text)
}

// quoteCode repeats a piece of a formula in a message, as plainCode, set off by quotes
// that it does not hold itself. A text keeps its own.
func quoteCode(text string) string {
	text = plainCode(text)
	if last := len(text) - 1; last > 0 && text[0] == text[last] && strings.IndexByte("'\"`", text[0]) >= 0 {
		return text
	}
	if strings.Contains(text, `"`) {
		return "`" + text + "`"
	}
	return `"` + text + `"`
}
