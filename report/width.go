package report

import (
	"io"
	"os"
	"strings"

	"github.com/mattn/go-runewidth"
	"golang.org/x/term"
)

// The width a page has when its writer is no terminal, and the bounds it is held to on
// one: below 40 cells the columns would not hold, and beyond 110 prose is hard to read.
const (
	usualWidth    = 80
	leastWidth    = 40
	greatestWidth = 110
)

// cells measures text in the cells of a terminal. It is fixed, so that the same input
// gives the same bytes whatever the locale of the machine says of ambiguous characters.
var cells = runewidth.Condition{EastAsianWidth: false, StrictEmojiNeutral: true}

// Width is how many cells of a terminal a text fills; wide characters fill two,
// combining ones none.
func Width(text string) int { return cells.StringWidth(text) }

// TerminalWidth is the width to write for: that of the terminal behind the writer within
// bounds, or 80 where there is none.
func TerminalWidth(w io.Writer) int {
	file, ok := w.(*os.File)
	if !ok {
		return usualWidth
	}
	width, _, err := term.GetSize(int(file.Fd()))
	if err != nil || width <= 0 {
		return usualWidth
	}
	return min(max(width, leastWidth), greatestWidth)
}

// wrap breaks a line at blanks so that no piece is wider than width cells. A word that is
// wider than that by itself is cut; a single character that is wider stands alone. There
// is always at least one piece.
func wrap(line string, width int) []string {
	width = max(width, 2)
	var pieces []string
	var piece strings.Builder
	filled := 0
	flush := func() {
		pieces = append(pieces, piece.String())
		piece.Reset()
		filled = 0
	}
	for word := range strings.FieldsSeq(line) {
		wide := Width(word)
		if piece.Len() > 0 && filled+1+wide > width {
			flush()
		}
		for wide > width {
			head := cells.Truncate(word, width, "")
			if head == "" {
				break
			}
			piece.WriteString(head)
			flush()
			word = word[len(head):]
			wide = Width(word)
		}
		if piece.Len() > 0 {
			piece.WriteByte(' ')
			filled++
		}
		piece.WriteString(word)
		filled += wide
	}
	if piece.Len() > 0 || len(pieces) == 0 {
		flush()
	}
	return pieces
}

// pad fills a text with blanks up to width cells.
func pad(text string, width int) string {
	return text + strings.Repeat(" ", max(0, width-Width(text)))
}
