package report

import (
	"sort"
	"strings"

	"codeberg.org/go-pdf/fpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
)

// templateSheet is a document of templates in the making. All lengths are in millimetres,
// from the upper left corner of a page.
type templateSheet struct {
	pdf    *fpdf.Fpdf
	paper  Paper
	head   CageHead
	glyphs *sfnt.Font
	buffer sfnt.Buffer

	page, pages int
	wide        bool // the page at hand is landscape
}

// The type and its weights.
const (
	templateFont = "Go"

	regularType = ""
	boldType    = "B"
)

// addFonts embeds the Go fonts (BSD licence), which have the letters of Latin, Greek and
// Cyrillic writing: the fonts that every reader has are limited to those of western Europe.
func (s *templateSheet) addFonts() {
	glyphs, err := sfnt.Parse(goregular.TTF)
	if err != nil {
		panic(err)
	}
	s.glyphs = glyphs
	s.pdf.AddUTF8FontFromBytes(templateFont, regularType, goregular.TTF)
	s.pdf.AddUTF8FontFromBytes(templateFont, boldType, gobold.TTF)
}

// longestText bounds one text, in letters.
const longestText = 2000

// printable makes a text from a file harmless, on one line; a letter that the font has not
// becomes a question mark, where the library would draw nothing or a box. What is longer
// than a page could show is cut.
func (s *templateSheet) printable(text string) string {
	if letters := []rune(text); len(letters) > longestText {
		text = string(letters[:longestText]) + "…"
	}
	return strings.Map(func(r rune) rune {
		if glyph, err := s.glyphs.GlyphIndex(&s.buffer, r); err != nil || glyph == 0 {
			return '?'
		}
		return r
	}, Safe(text))
}

// use sets weight and size of the type.
func (s *templateSheet) use(weight string, size float64) {
	s.pdf.SetFont(templateFont, weight, s.pdf.UnitToPointConvert(size))
}

// fit cuts a text to a width, with "…" where something is left out.
func (s *templateSheet) fit(text, weight string, size, width float64) string {
	s.use(weight, size)
	text = s.printable(text)
	if s.pdf.GetStringWidth(text) <= width {
		return text
	}
	letters := []rune(text)
	cut := func(length int) string { return strings.TrimRight(string(letters[:length]), " ") + "…" }
	tooLong := sort.Search(len(letters), func(length int) bool { return s.pdf.GetStringWidth(cut(length)) > width })
	if tooLong == 0 {
		return ""
	}
	return cut(tooLong - 1)
}

// wrapped breaks a text into lines of a width, at most so many; the last is cut with "…".
func (s *templateSheet) wrapped(text, weight string, size, width float64, most int) []string {
	text = s.printable(text)
	s.use(weight, size)
	lines := s.pdf.SplitText(text, width)
	if len(lines) <= most {
		return lines
	}
	lines[most-1] = s.fit(strings.Join(lines[most-1:], " "), weight, size, width)
	return lines[:most]
}

// write prints a text that is printable, its base line beginning at x, y.
func (s *templateSheet) write(x, y float64, weight string, size float64, text string) {
	s.use(weight, size)
	s.pdf.Text(x, y, text)
}

// writeUp prints a text that reads upward from x, y.
func (s *templateSheet) writeUp(x, y float64, weight string, size float64, text string) {
	s.pdf.TransformBegin()
	s.pdf.TransformRotate(90, x, y)
	s.write(x, y, weight, size, text)
	s.pdf.TransformEnd()
}
