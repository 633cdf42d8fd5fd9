package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"regexp"
	"unicode/utf8"
)

// notJSON tells in plain words where a text stops being JSON, and what is wrong there.
// Grammar: RFC 8259.
func notJSON(text []byte) error {
	var fault *json.SyntaxError
	at := len(text)
	err := json.NewDecoder(bytes.NewReader(text)).Decode(new(json.RawMessage))
	if errors.As(err, &fault) {
		at = int(fault.Offset) - 1
	}
	from, found := strayPiece(text, at)
	return wrong("The line is not JSON: column %d: %s", utf8.RuneCount(text[:from])+1, found)
}

// unfinishedEscape is what stands before a character that ends an escape too soon.
var unfinishedEscape = regexp.MustCompile(`\\(u[0-9A-Fa-f]{0,3})?$`)

// strayPiece says what is wrong with the piece of a text that the byte at belongs to, and
// where the piece begins.
func strayPiece(text []byte, at int) (from int, sentence string) {
	before := bytes.TrimRight(text[:at], " \t\r\n")
	if at == len(text) {
		return at, "The line ends too soon. A quote, a bracket or a value is missing."
	}
	sign, _ := utf8.DecodeRune(text[at:])
	switch {
	case unfinishedEscape.Match(text[:at]):
		return at, `Behind \ in a text stands one of " \ / b f n r t, or u and four digits from 0 to f.`
	case sign < ' ':
		return at, `Found a control character. In a text it is written as \t, \n or \u0000.`
	case sign == '\'':
		return at, "Found a single quote. Texts and names stand in double quotes."
	case (sign == '}' || sign == ']') && bytes.HasSuffix(before, []byte(",")):
		return len(before) - 1, fmt.Sprintf("Found a comma with nothing between it and the %c. Take it out.", sign)
	}
	from, word := wordAt(text, at)
	switch {
	case word == "" || !isOfWord(text[at]) && json.Valid([]byte(word)):
		return at, fmt.Sprintf("Found %q where something else is wanted. Look for a comma, colon, quote or bracket that is missing or too many.", sign)
	case json.Valid([]byte(word)):
		return from, fmt.Sprintf("Found %s out of place. Names stand in double quotes, a colon behind a name, a comma between two values.", shortened([]byte(word)))
	case word[0] >= '0' && word[0] <= '9' || word[0] == '-' || word[0] == '+' || word[0] == '.':
		return from, fmt.Sprintf("Found %s, which is no number as JSON has it. Write it as 2, -0.5 or 1.5e3.", shortened([]byte(word)))
	}
	return from, fmt.Sprintf("Found %s without quotes. Texts and names stand in double quotes; only true, false and null stand without.", shortened([]byte(word)))
}

// wordAt is the run of letters, digits, signs and full stops that a byte belongs to or
// that ends before it, "" where there is none.
func wordAt(text []byte, at int) (from int, word string) {
	to := at
	for from = at; from > 0 && isOfWord(text[from-1]); from-- {
	}
	for to < len(text) && isOfWord(text[to]) {
		to++
	}
	return from, string(text[from:to])
}

func isOfWord(b byte) bool {
	return b >= utf8.RuneSelf || b >= '0' && b <= '9' || b >= 'a' && b <= 'z' || b >= 'A' && b <= 'Z' || bytes.IndexByte([]byte("+-._"), b) >= 0
}
