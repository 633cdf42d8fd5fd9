package report

import (
	"bufio"
	"io"
	"strings"
)

// Screen is where a report for people goes: a writer with its width and colours.
type Screen struct {
	Writer io.Writer
	Width  int // in cells
	Paint  *Paint
}

// NewScreen looks at a writer and decides on width and colour for it.
func NewScreen(w io.Writer, choice ColorChoice, environment func(string) string) *Screen {
	return &Screen{Writer: w, Width: TerminalWidth(w), Paint: NewPaint(WantsColor(w, choice, environment))}
}

// page lays text out on a screen. Texts handed to it need not be safe; it makes them so.
// A failure to write is kept and told by done.
type page struct {
	out   *bufio.Writer
	width int
	paint *Paint
}

func (s *Screen) page() *page {
	return &page{out: bufio.NewWriter(s.Writer), width: s.Width, paint: s.Paint}
}

// done hands everything to the writer and reports the first failure to write.
func (p *page) done() error { return p.out.Flush() }

// raw writes a line that has been made safe and painted already.
func (p *page) raw(line string) {
	p.out.WriteString(strings.TrimRight(line, " "))
	p.out.WriteByte('\n')
}

func (p *page) blank() { p.out.WriteByte('\n') }

// prose writes a text at an indent, broken to the page's width; its own line breaks stay.
func (p *page) prose(indent int, ink Ink, text string) {
	p.hanging(indent, "", 0, ink, text)
}

// labelled writes a label in a column of labelWidth cells and a text beside it, broken to
// the page's width and kept to the right of the label.
func (p *page) labelled(indent int, label string, labelWidth int, text string) {
	p.hanging(indent, p.paint.With(Faint, Safe(label))+strings.Repeat(" ", max(0, labelWidth-Width(Safe(label)))), labelWidth, Plain, text)
}

// hanging writes a head that is painted already and fills headWidth cells, and a text that
// hangs to the right of it.
func (p *page) hanging(indent int, head string, headWidth int, ink Ink, text string) {
	margin := strings.Repeat(" ", indent)
	rest := strings.Repeat(" ", headWidth)
	first := true
	for _, line := range prose(text) {
		for _, piece := range wrap(line, p.width-indent-headWidth) {
			lead := rest
			if first {
				lead, first = head, false
			}
			p.raw(margin + lead + p.paint.With(ink, piece))
		}
	}
}

// gapBefore sets entries of a section apart: a blank line before each but the first.
func (p *page) gapBefore(index int) {
	if index > 0 {
		p.blank()
	}
}

// heading writes a section's heading, set apart by a line of its own shape.
func (p *page) heading(ink Ink, word, text string) {
	p.blank()
	longest := 0
	for i, piece := range wrap(Safe(word+text), p.width) {
		longest = max(longest, Width(piece))
		if rest, begins := strings.CutPrefix(piece, word); i == 0 && begins {
			piece = p.paint.With(ink, word) + rest
		}
		p.raw(piece)
	}
	p.raw(strings.Repeat("~", longest))
}

// Sentence writes one sentence or paragraph, broken to the screen's width.
func Sentence(screen *Screen, text string) error {
	p := screen.page()
	p.prose(0, Plain, text)
	return p.done()
}

// Saying is a sentence and the command it speaks of.
type Saying struct{ Text, Command string }

// Say writes sentences and, moved in below each, its command. The command stays on one
// line, however long, so that it can be copied. apart sets the first from what stands
// above it.
func Say(screen *Screen, apart bool, sayings ...Saying) error {
	p := screen.page()
	for i, saying := range sayings {
		if apart || i > 0 {
			p.blank()
		}
		p.prose(0, Plain, saying.Text)
		p.raw("  " + p.paint.With(Strong, Safe(saying.Command)))
	}
	return p.done()
}
