package report

import (
	"regexp"
	"strings"
)

// plainFigure is what a spreadsheet takes as a number and nothing else.
var plainFigure = regexp.MustCompile(`^-?[0-9]+(\.[0-9]+)?$`)

// formulaSigns are what a formula begins with in one spreadsheet or another, the wide forms
// of East Asian keyboards included.
const formulaSigns = "=+-@|＝＋－＠｜"

// spreadsheetCell makes a text harmless as a cell: on one line, without what could steer a
// terminal, and with an apostrophe ahead where a spreadsheet would take it for a formula. A
// plain figure, negative too, stays one.
func spreadsheetCell(text string) string {
	text = strings.TrimSpace(Safe(text))
	if plainFigure.MatchString(text) {
		return text
	}
	if text != "" && strings.ContainsRune(formulaSigns, []rune(text)[0]) {
		return "'" + text
	}
	return text
}
