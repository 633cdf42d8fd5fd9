package vehicle

import (
	"bytes"
	"fmt"

	"github.com/hashicorp/hcl/v2"
)

// shape goes over the bytes of a file once, as the parser's own scanner would, and knows
// at each point how deep the parser would be. It looks only at what can nest: brackets,
// signs in front of a value, choices (a ? b : c), and fillings-in inside texts.
type shape struct {
	name   string
	data   []byte
	limit  int // how many brackets may be open at once
	at     int
	open   [256]int         // how many of each kind of bracket are open
	depth  int              // how many brackets are open in all
	signs  [deepest + 1]int // signs since the last = or comma, for each depth
	within []enclosing      // texts that we are in the midst of, filling something in
	begun  int              // where the outermost text at hand begins
	pieces int              // lines and signs $ and % in it: what the parser takes it apart into
	faults hcl.Diagnostics
}

// enclosing is a text around something to fill in.
type enclosing struct {
	marker string // closing word of a heredoc, "" for a text in double quotes
	braces int    // open braces at which the filling-in ends
}

// guardShape refuses a file whose nesting could exhaust the parser, or whose extent the
// scanner could not tell in one go.
func guardShape(name string, data []byte) hcl.Diagnostics {
	s := shape{name: name, data: data, limit: deepest}
	s.walk()
	return s.faults
}

// walk goes over the file, to its end or as far as makes sense.
func (s *shape) walk() {
	for s.at < len(s.data) && s.step() {
	}
}

// stop records a fault that makes it useless to go on.
func (s *shape) stop(code Code, size int, summary, detail string) bool {
	s.faults = append(s.faults, Fault(code, placeAt(s.name, s.data, s.at, size), summary, detail))
	return false
}

// step takes one item outside texts; false ends the walk.
func (s *shape) step() bool {
	rest := s.data[s.at:]
	switch c := rest[0]; {
	case c == '#' || bytes.HasPrefix(rest, []byte("//")):
		s.skipLine()
	case bytes.HasPrefix(rest, []byte("/*")):
		length := bytes.Index(rest[2:], []byte("*/"))
		if length < 0 {
			return s.stop("not-closed", 2, "A remark without its end", "Found /* and nowhere a */ after it. Write */ after the remark, or begin each of its lines with #.")
		}
		s.at += length + 4
	case c == '"':
		s.beginText()
		s.at++
		return s.text("")
	case bytes.HasPrefix(rest, []byte("<<")):
		return s.heredoc()
	case '0' <= c && c <= '9':
		end, fault := guardNumber(s.name, s.data, s.at)
		if fault != nil {
			s.faults = append(s.faults, fault)
		}
		s.at = end
	case isNameByte(c, false):
		for s.at < len(s.data) && isNameByte(s.data[s.at], true) {
			s.at++
		}
	default:
		return s.sign(c)
	}
	return true
}

// isNameByte reports whether a plain name can begin with the byte, or go on with it. A name
// with other letters falls into pieces here, which makes no bracket or sign go unseen.
func isNameByte(c byte, goesOn bool) bool {
	return 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' || c == '_' || goesOn && (c == '-' || '0' <= c && c <= '9')
}

// skipLine goes to the end of the line.
func (s *shape) skipLine() {
	length := bytes.IndexByte(s.data[s.at:], '\n')
	if length < 0 {
		s.at = len(s.data)
		return
	}
	s.at += length
}

// sign takes a single character that is neither a name, a number nor a text.
func (s *shape) sign(c byte) bool {
	switch c {
	case '(', '[', '{':
		return s.enter(c)
	case ')':
		s.leave('(')
	case ']':
		s.leave('[')
	case '}':
		if last := len(s.within) - 1; last >= 0 && s.within[last].braces == s.open['{'] {
			s.leave('{')
			marker := s.within[last].marker
			s.within = s.within[:last]
			s.at++
			return s.text(marker)
		}
		s.leave('{')
	case ',':
		s.signs[s.depth] = 0
	case '=':
		if !s.partOfComparison() {
			s.signs[s.depth] = 0
		}
	case '!', '-', '?', ':':
		if c == ':' && s.data[s.at-min(s.at, 1)] != ':' {
			break // one alone stands for = or in a ? b : c, and is counted there
		}
		s.signs[s.depth]++
		if s.signs[s.depth] > deepest {
			return s.stop("too-deep", 1, "Nested too deeply", fmt.Sprintf(
				"Found more than %d signs such as %c in one value. Values are literals: write the value itself.", deepest, c))
		}
	}
	s.at++
	return true
}

// partOfComparison reports whether the = at hand belongs to == != <= >= or =>.
func (s *shape) partOfComparison() bool {
	before := s.at > 0 && bytes.IndexByte([]byte("=!<>"), s.data[s.at-1]) >= 0
	after := s.at+1 < len(s.data) && (s.data[s.at+1] == '=' || s.data[s.at+1] == '>')
	return before || after
}

// enter opens a bracket.
func (s *shape) enter(c byte) bool {
	if s.depth == s.limit {
		return s.stop("too-deep", 1, "Nested too deeply", fmt.Sprintf(
			"Found more than %d brackets open at once. Close those that are meant to be closed; no sheet or rulebook needs as many.", s.limit))
	}
	s.open[c]++
	s.depth++
	s.signs[s.depth] = 0
	s.at++
	return true
}

// leave closes a bracket. One that closes nothing of its own kind leaves the depth as it
// is, so that the depth is never below the parser's.
func (s *shape) leave(open byte) {
	if s.open[open] > 0 {
		s.open[open]--
		s.depth--
	}
}

// heredoc takes <<: the beginning of a text over several lines, or nothing.
func (s *shape) heredoc() bool {
	line := s.data[s.at+2:]
	if end := bytes.IndexByte(line, '\n'); end >= 0 {
		line = line[:end]
	}
	word := bytes.TrimSuffix(bytes.TrimPrefix(line, []byte("-")), []byte("\r"))
	if len(word) == 0 || word[0] < 0x80 && !isNameByte(word[0], false) || s.at+2+len(line) == len(s.data) {
		s.at++
		return true
	}
	for _, c := range word {
		switch {
		case c >= 0x80:
			return s.stop("heredoc-word", 2+len(line), "A text with a strange closing word",
				fmt.Sprintf("Found %s. Write the word after << in plain letters, as in <<-TEXT.", Quote("<<"+string(line))))
		case !isNameByte(c, true):
			s.at++
			return true
		}
	}
	s.beginText()
	s.at += 2 + len(line) + 1
	return s.closesHere(string(word)) || s.text(string(word))
}

// beginText notes where a text begins, unless it stands inside another.
func (s *shape) beginText() {
	if len(s.within) == 0 {
		s.begun, s.pieces = s.at, 0
	}
}

// text takes the rest of a text: up to its closing quote, or the closing word of a heredoc,
// or something to fill in.
func (s *shape) text(marker string) bool {
	for s.at < len(s.data) {
		c := s.data[s.at]
		rest := s.data[s.at+1:]
		if c == '\n' || c == '$' || c == '%' {
			s.pieces++
		}
		if s.at-s.begun > longestText || s.pieces > mostPieces {
			s.at = s.begun
			return s.stop("text-too-long", 1, "A text too long", fmt.Sprintf(
				"Found a text of more than %d characters or %d lines. Close it where it is meant to end, or shorten it.", longestText, mostPieces))
		}
		switch {
		case c == '"' && marker == "":
			s.at++
			return true
		case c == '\\' && marker == "" && len(rest) > 0 && rest[0] != '\n' && rest[0] != '\r':
			s.at += 2
		case (c == '$' || c == '%') && len(rest) >= 2 && rest[0] == c && rest[1] == '{':
			s.at += 3
		case (c == '$' || c == '%') && len(rest) > 0 && rest[0] == '{':
			s.at++
			if !s.enter('{') {
				return false
			}
			s.within = append(s.within, enclosing{marker, s.open['{']})
			return true
		default:
			s.at++
			if c == '\n' && marker != "" && s.closesHere(marker) {
				return true
			}
		}
	}
	return true
}

// closesHere reports whether the line at hand is the closing word of a heredoc, and if so
// goes behind it.
func (s *shape) closesHere(marker string) bool {
	length := bytes.IndexByte(s.data[s.at:], '\n')
	if length < 0 || string(bytes.TrimSpace(s.data[s.at:s.at+length])) != marker {
		return false
	}
	s.at += length
	return true
}
