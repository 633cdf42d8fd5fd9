package report

import (
	"fmt"
	"math"
)

// templatePiece is what is drawn in one place: a whole template, or one half of it.
// Lengths are in millimetres.
type templatePiece struct {
	of            *notchTemplate
	part, parts   int
	lines         []string // printable, the first one bold
	width, height float64  // with the tab and the strip below the line of the long point
}

// What a piece needs beside its curve.
const (
	tabWidth   = 8.0
	stripBelow = 5.5 // below the line of the long point
	markRow    = 3.6 // for each mark at the straight edge
	linePitch  = 3.9
	leastBody  = 20.0 // from the straight edge to the bottom of the notch: a wrap to hold on to
	pieceGap   = 5.0  // between pieces

	mostNoteLines = 5 // of one remark on a piece
)

// templatePage is a page and the pieces on it.
type templatePage struct {
	landscape bool
	placed    []placedPiece
}

type placedPiece struct {
	piece *templatePiece
	x, y  float64 // its upper left corner on the page
}

// round is how much of the way round the tube the piece covers, in millimetres.
func (p *templatePiece) round() float64 { return p.of.circumference() / float64(p.parts) }

// body is from the straight edge to the bottom of the notch.
func (p *templatePiece) body() float64 {
	need := p.marksHeight() + linePitch*float64(len(p.lines)+1) + 3
	return max(leastBody, math.Ceil(need))
}

// marksHeight is how far down from the straight edge the marks reach.
func (p *templatePiece) marksHeight() float64 { return markRow*float64(max(1, len(p.of.marks))) + 1 }

// layTemplates lays the templates out in rows, upright pages first, then landscape ones;
// within them in the order of the sheet. Those that no page holds are returned with the
// reason.
func layTemplates(s *templateSheet, planned []*notchTemplate) (pages []*templatePage, refused []withoutTemplate) {
	var upright, landscape []*templatePiece
	for _, t := range planned {
		pieces, wide := cutToFit(s, t)
		switch {
		case pieces == nil:
			refused = append(refused, withoutTemplate{t.end, false, tooBig(s, t)})
		case wide:
			landscape = append(landscape, pieces...)
		default:
			upright = append(upright, pieces...)
		}
	}
	pages = pack(upright, s.paper, false)
	return append(pages, pack(landscape, s.paper, true)...), refused
}

// cutToFit returns a template whole where a page holds it, upright before landscape, else
// in two halves, or nil.
func cutToFit(s *templateSheet, t *notchTemplate) (pieces []*templatePiece, landscape bool) {
	for parts := 1; parts <= 2; parts++ {
		for _, landscape := range []bool{false, true} {
			width, height := s.paper.room(landscape)
			pieces = nil
			for part := range parts {
				piece := s.newPiece(t, part, parts)
				if piece.width <= width && piece.height <= height {
					pieces = append(pieces, piece)
				}
			}
			if len(pieces) == parts {
				return pieces, landscape
			}
		}
	}
	return nil, false
}

// newPiece returns a part of a template with its lines broken to its width.
func (s *templateSheet) newPiece(t *notchTemplate, part, parts int) *templatePiece {
	piece := &templatePiece{of: t, part: part, parts: parts}
	width := piece.round() - 2*textInset
	piece.lines = []string{s.pieceTitle(piece, width)}
	for _, line := range piece.words() {
		piece.lines = append(piece.lines, s.wrapped(line, regularType, textType, width, 2)...)
	}
	if part == 0 {
		for _, note := range t.notes {
			piece.lines = append(piece.lines, s.wrapped(note, regularType, textType, width, mostNoteLines)...)
		}
	}
	piece.width = piece.round() + tabWidth
	piece.height = piece.body() + t.depth() + stripBelow
	return piece
}

// tooBig says why no page holds a template.
func tooBig(s *templateSheet, t *notchTemplate) string {
	wide, _ := s.paper.room(true)
	if half := t.circumference()/2 + tabWidth; half > wide {
		return fmt.Sprintf("it is %.1f mm round, too wide for two halves on %s", t.circumference(), s.paper.Name)
	}
	return fmt.Sprintf("at so flat an angle its notch is %.0f mm deep, deeper than %s holds: mark it out from tube %s itself", t.depth(), s.paper.Name, t.end.onto)
}

// pack fills pages row by row, left to right. A piece that has no room left in its row
// begins the next one.
func pack(pieces []*templatePiece, paper Paper, landscape bool) (pages []*templatePage) {
	width, height := paper.room(landscape)
	var page *templatePage
	var x, y, rowHeight float64
	for _, piece := range pieces {
		if page != nil && x+piece.width > width {
			x, y, rowHeight = 0, y+rowHeight+pieceGap, 0
		}
		if page == nil || y+piece.height > height {
			page = &templatePage{landscape: landscape}
			pages = append(pages, page)
			x, y, rowHeight = 0, 0, 0
		}
		page.placed = append(page.placed, placedPiece{piece, pageLeft + x, pageTop + y})
		x += piece.width + pieceGap
		rowHeight = max(rowHeight, piece.height)
	}
	return pages
}
