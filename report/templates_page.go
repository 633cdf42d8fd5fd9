package report

import (
	"fmt"
	"strings"

	"codeberg.org/go-pdf/fpdf"
)

// What a page keeps free for its head, foot, margins and check lines.
const (
	pageLeft    = 17.0 // the check line along the page stands in it
	pageRight   = 8.0
	pageTop     = 15.0
	pageBottom  = 31.0
	checkLength = 100.0
)

// The sizes of type: of the foot, of what stands beside lines, of text, of headings.
const (
	footType  = 2.3
	smallType = 2.5
	textType  = 3.0
	headType  = 4.2
)

// checkWords stand beside each check line.
const (
	checkWords = "must measure 100 mm, else do not use"
	scaleWords = "print at 100 %, no fit to page"
)

// size returns width and height of the page at hand.
func (s *templateSheet) size() (width, height float64) {
	if s.wide {
		return s.paper.Height, s.paper.Width
	}
	return s.paper.Width, s.paper.Height
}

// room returns how much of a page templates can fill.
func (p Paper) room(landscape bool) (width, height float64) {
	width, height = p.Width, p.Height
	if landscape {
		width, height = height, width
	}
	return width - pageLeft - pageRight, height - pageTop - pageBottom
}

// addPage begins a page with its head and its foot, which carries all cautions.
func (s *templateSheet) addPage(landscape bool) {
	s.wide = landscape
	orientation := "P"
	if landscape {
		orientation = "L"
	}
	s.pdf.AddPageFormat(orientation, fpdf.SizeType{Wd: s.paper.Width, Ht: s.paper.Height})
	s.page++
	width, height := s.size()
	filled := width - pageLeft - pageRight
	number := fmt.Sprintf("page %d of %d", s.page, s.pages)
	s.use(regularType, smallType)
	numberWide := s.pdf.GetStringWidth(number)
	title := "Notch templates at 1:1, " + s.paper.Name + ": " + s.head.Sheet
	if s.head.Car != "" {
		title += ", " + s.head.Car
	}
	s.write(pageLeft, 10.5, boldType, smallType, s.fit(title, boldType, smallType, filled-numberWide-4))
	s.write(width-pageRight-numberWide, 10.5, regularType, smallType, number)
	s.line(pageLeft, 12, width-pageRight, 12, hairWidth)
	y := height - 20
	for _, line := range s.footLines(filled) {
		s.write(pageLeft, y, regularType, footType, line)
		y += 3
	}
}

// footLines are the cautions one after the other, each at most one line long by itself, so
// that what a rulebook says of itself cannot push the others off the page.
func (s *templateSheet) footLines(width float64) []string {
	var cautions []string
	for _, caution := range s.head.Cautions() {
		cautions = append(cautions, s.fit(caution, regularType, footType, width))
	}
	return s.wrapped(strings.Join(cautions, " "), regularType, footType, width, 5)
}

// drawCheckLines draws a line of 100 mm along the page and one across it, to be measured
// before a template is used.
func (s *templateSheet) drawCheckLines() {
	_, height := s.size()
	x, y := pageLeft, height-26
	s.line(x, y, x+checkLength, y, edgeWidth)
	s.line(x, y-1.5, x, y+1.5, edgeWidth)
	s.line(x+checkLength, y-1.5, x+checkLength, y+1.5, edgeWidth)
	s.write(x+checkLength+2, y+0.9, boldType, smallType, checkWords+"; "+scaleWords)
	x, y = 11, pageTop+2
	s.line(x, y, x, y+checkLength, edgeWidth)
	s.line(x-1.5, y, x+1.5, y, edgeWidth)
	s.line(x-1.5, y+checkLength, x+1.5, y+checkLength, edgeWidth)
	s.use(boldType, smallType)
	s.writeUp(x-2, y+checkLength/2+s.pdf.GetStringWidth(checkWords)/2, boldType, smallType, checkWords)
}

// Widths of lines.
const (
	hairWidth  = 0.12
	edgeWidth  = 0.25
	curveWidth = 0.35
)

// line draws a straight line.
func (s *templateSheet) line(x1, y1, x2, y2, width float64) {
	s.pdf.SetLineWidth(width)
	s.pdf.Line(x1, y1, x2, y2)
}

// dashed draws a line of dashes.
func (s *templateSheet) dashed(x1, y1, x2, y2, width float64) {
	s.pdf.SetDashPattern([]float64{2, 1.2}, 0)
	s.line(x1, y1, x2, y2, width)
	s.pdf.SetDashPattern(nil, 0)
}
