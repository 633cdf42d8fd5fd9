package rules

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// tokenKind tells the pieces of a formula's text apart.
type tokenKind uint8

const (
	tokenWord tokenKind = iota
	tokenNumber
	tokenText // a text in quotes
	tokenOperator
	tokenOpen  // ( [ {
	tokenClose // ) ] }
	tokenStray // a character that no formula holds
)

// token is one piece of a formula's text. The scan follows the rules of expr's lexer; it
// is there to guard expr's parser, to find the ends of what the parser's tree gives only a
// beginning of, and to put syntax errors in words.
type token struct {
	kind       tokenKind
	at         Span // runes
	start, end int  // bytes
	match      int  // of a bracket: index of its partner, -1 when it has none
}

// scanner goes through the text of a formula.
type scanner struct {
	source string
	byte   int
	rune   int
	tokens []token
	open   []int // indexes of the brackets that are open
}

// scan cuts source into tokens, which it appends to tokens. It ends early where a text or
// a comment has no end; the parser tells about that.
func scan(source string, tokens []token) []token {
	s := scanner{source: source, tokens: tokens}
	for s.byte < len(source) {
		c := source[s.byte]
		switch {
		case c == ' ' || c == '\n' || c == '\t' || c == '\r':
			s.skip(1)
		case c == '\'' || c == '"' || c == '`':
			s.quoted(c)
		case c == '/' && (s.peek(1) == '/' || s.peek(1) == '*'):
			s.comment()
		case isDigit(c) || c == '.' && isDigit(s.peek(1)):
			s.number()
		case strings.IndexByte("([{)]}", c) >= 0:
			s.bracket(c)
		case strings.IndexByte("?|:.#,;%+-^&!=*<>/", c) >= 0:
			s.operator(c)
		default:
			s.word()
		}
	}
	return s.tokens
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

// peek is the byte ahead, 0 at the end.
func (s *scanner) peek(ahead int) byte {
	if s.byte+ahead < len(s.source) {
		return s.source[s.byte+ahead]
	}
	return 0
}

// skip passes size bytes that are one rune each.
func (s *scanner) skip(size int) { s.byte, s.rune = s.byte+size, s.rune+size }

// emit appends the token that begins at byte start and rune from and ends here.
func (s *scanner) emit(kind tokenKind, start, from int) {
	s.tokens = append(s.tokens, token{kind, Span{from, s.rune}, start, s.byte, -1})
}

// next passes one rune and returns it.
func (s *scanner) next() rune {
	r, size := utf8.DecodeRuneInString(s.source[s.byte:])
	s.byte, s.rune = s.byte+size, s.rune+1
	return r
}

func (s *scanner) quoted(quote byte) {
	start, from := s.byte, s.rune
	s.skip(1)
	for s.byte < len(s.source) {
		switch c := s.source[s.byte]; {
		case c == quote && quote == '`' && s.peek(1) == '`':
			s.skip(2)
		case c == quote:
			s.skip(1)
			s.emit(tokenText, start, from)
			return
		case c == '\\' && quote != '`' && s.byte+1 < len(s.source):
			s.skip(1)
			s.next()
		case c == '\n' && quote != '`':
			s.byte = len(s.source)
		default:
			s.next()
		}
	}
}

func (s *scanner) comment() {
	end := "\n"
	if s.peek(1) == '*' {
		end = "*/"
	}
	length := strings.Index(s.source[s.byte+2:], end)
	if length < 0 {
		s.byte = len(s.source)
		return
	}
	passed := s.source[s.byte : s.byte+2+length+len(end)]
	s.byte, s.rune = s.byte+len(passed), s.rune+utf8.RuneCountInString(passed)
}

func (s *scanner) number() {
	start, from := s.byte, s.rune
	if s.peek(0) == '.' {
		s.skip(1) // expr's lexer takes a second point along, and its parser refuses that
	}
	digits := "0123456789_"
	if s.peek(0) == '0' {
		switch s.peek(1) {
		case 'x', 'X':
			digits = "0123456789abcdefABCDEF_"
			s.skip(2)
		case 'o', 'O':
			digits = "01234567_"
			s.skip(2)
		case 'b', 'B':
			digits = "01_"
			s.skip(2)
		}
	}
	s.run(digits)
	if s.peek(0) == '.' && s.peek(1) != '.' {
		s.skip(1)
		s.run(digits)
	}
	if c := s.peek(0); c == 'e' || c == 'E' {
		s.skip(1)
		if c = s.peek(0); c == '+' || c == '-' {
			s.skip(1)
		}
		s.run(digits)
	}
	s.emit(tokenNumber, start, from)
}

// run passes bytes that are in set.
func (s *scanner) run(set string) {
	for s.byte < len(s.source) && strings.IndexByte(set, s.source[s.byte]) >= 0 {
		s.skip(1)
	}
}

func (s *scanner) bracket(c byte) {
	start, from := s.byte, s.rune
	s.skip(1)
	if strings.IndexByte("([{", c) >= 0 {
		s.open = append(s.open, len(s.tokens))
		s.emit(tokenOpen, start, from)
		return
	}
	s.emit(tokenClose, start, from)
	if last := len(s.open) - 1; last >= 0 {
		here, partner := len(s.tokens)-1, s.open[last]
		s.open = s.open[:last]
		if opener := s.source[s.tokens[partner].start]; opener == '(' && c == ')' || opener == '[' && c == ']' || opener == '{' && c == '}' {
			s.tokens[here].match, s.tokens[partner].match = partner, here
		}
	}
}

func (s *scanner) operator(c byte) {
	start, from := s.byte, s.rune
	s.skip(1)
	second := ""
	switch c {
	case '|', ':', '.', '#':
		second = string(c)
	case '?':
		second = ".?"
	case '&', '!', '=', '*', '<', '>':
		second = "&=*"
	}
	if s.byte < len(s.source) && strings.IndexByte(second, s.source[s.byte]) >= 0 {
		s.skip(1)
	}
	s.emit(tokenOperator, start, from)
	if c == '#' {
		s.letters() // #index: what follows is a name, digits too
	}
}

// letters passes a name and emits it; it returns false where none begins.
func (s *scanner) letters() bool {
	start, from := s.byte, s.rune
	for s.byte < len(s.source) {
		r, size := utf8.DecodeRuneInString(s.source[s.byte:])
		if !isWordRune(r) {
			break
		}
		s.byte, s.rune = s.byte+size, s.rune+1
	}
	if s.byte > start {
		s.emit(tokenWord, start, from)
	}
	return s.byte > start
}

func (s *scanner) word() {
	start, from := s.byte, s.rune
	switch {
	case s.letters():
	case unicode.IsSpace(s.next()):
	default:
		s.emit(tokenStray, start, from)
	}
}

// isWordRune reports whether a name can hold r, as expr has it.
func isWordRune(r rune) bool {
	return 'a' <= r && r <= 'z' || r == '_' || r == '$' || unicode.IsLetter(r) || unicode.IsDigit(r)
}
