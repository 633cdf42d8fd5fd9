package report

import (
	"encoding/xml"
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"
)

// A sheet is A4 across (ISO 216), 297 × 210 mm. Everything stands inside a frame that also
// prints on Letter (279.4 × 215.9 mm), with the wide margin for filing on the left as in
// ISO 5457 (from memory).
const (
	sheetWide, sheetHigh = 297.0, 210.0
	headHigh             = 11.5 // the title with the line below it
)

var sheetFrame = area{20, 10, 253, 190}

// Sizes of text in millimetres. Capital letters of a sans-serif face are about 0.72 of the
// font's size high, so that the smallest text of a sheet has 2 mm.
const (
	smallText = 2.8
	titleSize = 4.5
	noteLine  = 3.6 // from line to line of small text
)

// Colours of what is not well. They are of the palette of M. Okabe and K. Ito ("Color
// Universal Design", from memory), which people with any kind of colour vision tell apart;
// each has at least three times the contrast of white paper.
const (
	inkOfGap         = "#D55E00" // vermilion
	inkOfNotRecorded = "#0072B2" // blue
	inkOfMarginal    = "#CC79A7" // reddish purple
)

// spot is a place on the paper in millimetres, x to the right and y down, as SVG has them.
type spot struct{ x, y float64 }

func (a spot) distance(b spot) float64 { return math.Hypot(a.x-b.x, a.y-b.y) }

// toward is the spot the way s from a on the straight to b; a where the two are one.
func (a spot) toward(b spot, way float64) spot {
	whole := a.distance(b)
	if whole == 0 {
		return a
	}
	return spot{a.x + (b.x-a.x)*way/whole, a.y + (b.y-a.y)*way/whole}
}

// area is an upright rectangle on the paper in millimetres.
type area struct{ x, y, wide, high float64 }

func areaAround(middle spot, wide, high float64) area {
	return area{middle.x - wide/2, middle.y - high/2, wide, high}
}

func (a area) right() float64  { return a.x + a.wide }
func (a area) bottom() float64 { return a.y + a.high }
func (a area) middle() spot    { return spot{a.x + a.wide/2, a.y + a.high/2} }

// grown is the area with a margin added on every side.
func (a area) grown(by float64) area { return area{a.x - by, a.y - by, a.wide + 2*by, a.high + 2*by} }

func (a area) holds(p spot) bool {
	return p.x >= a.x && p.x <= a.right() && p.y >= a.y && p.y <= a.bottom()
}

// mm is a length on the paper as it is written: with two decimals at most, none where
// they are zero, and never as minus zero.
type mm float64

func (m mm) String() string {
	return strconv.FormatFloat(math.Round(float64(m)*100)/100+0, 'f', -1, 64)
}

// svgText collects the elements of a sheet. Numbers are handed to put as mm, texts from
// files as escaped.
type svgText struct{ strings.Builder }

func (s *svgText) put(format string, values ...any) { fmt.Fprintf(s, format+"\n", values...) }

// escaped makes a text from a file fit for an element or attribute of XML 1.0.
func escaped(text string) string {
	var out strings.Builder
	// A strings.Builder takes whatever it is handed, so there is no error to look at.
	_ = xml.EscapeText(&out, []byte(Safe(text)))
	return out.String()
}

// lineOf draws a straight line.
func (s *svgText) line(from, to spot, width float64) {
	s.put(`<line x1="%v" y1="%v" x2="%v" y2="%v" stroke="#000" stroke-width="%v"/>`, mm(from.x), mm(from.y), mm(to.x), mm(to.y), mm(width))
}

// words writes a text on its base line. Anchor is start, middle or end.
func (s *svgText) words(at spot, size float64, anchor, text string) {
	s.put(`<text x="%v" y="%v" font-size="%v" text-anchor="%s" fill="#000">%s</text>`, mm(at.x), mm(at.y), mm(size), anchor, escaped(text))
}

// path is the attribute d of a line through spots.
func path(line []spot) string {
	var out strings.Builder
	letter := "M"
	for _, p := range line {
		fmt.Fprintf(&out, "%s%v %v", letter, mm(p.x), mm(p.y))
		letter = "L"
	}
	return out.String()
}

// textWidth is how wide a text of a font size is at most, both in millimetres. A viewer
// chooses the font itself, so each letter counts as in a wide sans-serif face.
func textWidth(text string, size float64) float64 {
	wide := 0.0
	for _, r := range text {
		switch {
		case strings.ContainsRune("iIjl.,:;'|! ", r):
			wide += 0.36
		case strings.ContainsRune("tfr()[]-/\"", r):
			wide += 0.46
		case strings.ContainsRune("mwMW@%…\ufffe\uffff", r): // the last two are written as U+FFFD
			wide += 1
		case cells.RuneWidth(r) > 1:
			wide += 1.1
		case cells.RuneWidth(r) == 0:
		case unicode.IsLower(r) || unicode.IsDigit(r):
			wide += 0.64
		default:
			wide += 0.84
		}
	}
	return wide * size
}

// wrapped breaks a text into lines that are at most so many millimetres wide.
func wrapped(text string, wide, size float64) []string {
	text = Safe(text)
	for count := int(wide / size * 2.2); ; count-- {
		lines := wrap(text, count)
		fits := true
		for _, line := range lines {
			fits = fits && textWidth(line, size) <= wide
		}
		if fits || count <= 4 {
			return lines
		}
	}
}

// fitted cuts a text to so many millimetres, with an ellipsis where something is cut off.
func fitted(text string, wide, size float64) string {
	text = Safe(text)
	if textWidth(text, size) <= wide {
		return text
	}
	letters := []rune(text)
	used := textWidth("…", size)
	for i, r := range letters {
		if used += textWidth(string(r), size); used > wide {
			return string(letters[:i]) + "…"
		}
	}
	return text
}
