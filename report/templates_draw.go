package report

import (
	"math"

	"codeberg.org/go-pdf/fpdf"
)

// textInset keeps words clear of the edges of a piece.
const textInset = 6.0

// span is the stretch of p that a piece covers.
func (p *templatePiece) span() (from, to float64) {
	share := 2 * math.Pi / float64(p.parts)
	from = p.of.seam + float64(p.part)*share
	return from, from + share
}

// across returns where on the piece a place round the tube is, from its left edge, and
// whether the piece covers it. Printed outside, with the joint below, p grows to the right.
func (p *templatePiece) across(at float64) (x float64, on bool) {
	from, to := p.span()
	turned := roundTurn(at - from)
	return turned * 1000 * p.of.notch.Branch, turned < to-from+1e-9
}

// curve returns the edge to be cut, as heights above the line of the long point over the
// way from the left edge of the piece.
func (p *templatePiece) curve() (points []fpdf.PointType) {
	n, steps := p.of.notch, p.of.steps
	round, height := n.Template(steps)
	long, _ := n.LongPoint()
	step := 2 * math.Pi / float64(steps)
	from, to := p.span()
	at := func(angle float64) fpdf.PointType {
		return fpdf.PointType{X: 1000 * n.Branch * (angle - from), Y: 1000 * (n.Profile(angle) - long)}
	}
	points = append(points, at(from))
	for i := int(math.Floor(from/step)) + 1; float64(i)*step < to-1e-9; i++ {
		if float64(i)*step < from+1e-9 {
			continue
		}
		turns := float64(i/steps) * 2 * math.Pi
		points = append(points, fpdf.PointType{X: 1000 * (round[i%steps] + n.Branch*(turns-from)), Y: 1000 * height[i%steps]})
	}
	return append(points, at(to))
}

// drawPiece draws a piece with its upper left corner, the left end of its straight edge, at
// x, y: the joint is below.
func (s *templateSheet) drawPiece(p *templatePiece, x, y float64) {
	right, long := x+p.round(), y+p.body()+p.of.depth()
	points := p.curve()
	for i := range points {
		points[i] = fpdf.PointType{X: x + points[i].X, Y: long - points[i].Y}
	}
	first, last := points[0], points[len(points)-1]
	s.drawWaste(points)
	s.dashed(x, long, right, long, hairWidth)
	s.line(x, y, right, y, edgeWidth)
	s.line(x, y, x, first.Y, edgeWidth)
	s.line(right, y, right, last.Y, edgeWidth)
	s.drawTab(right, y, last.Y)
	s.pdf.SetLineWidth(curveWidth)
	s.pdf.MoveTo(points[0].X, points[0].Y)
	for _, point := range points[1:] {
		s.pdf.LineTo(point.X, point.Y)
	}
	s.pdf.DrawPath("D")
	s.drawMarks(p, x, y)
	s.drawWords(p, x, y+p.marksHeight())
	s.drawStrip(p, x, right, long)
}

// drawWaste draws short strokes square to the curve, on the side that is cut away.
func (s *templateSheet) drawWaste(points []fpdf.PointType) {
	const every, stroke = 3.0, 1.3
	next := every / 2
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		along := math.Hypot(b.X-a.X, b.Y-a.Y)
		for ; next < along; next += every {
			share := next / along
			x, y := a.X+(b.X-a.X)*share, a.Y+(b.Y-a.Y)*share
			s.line(x, y, x-(b.Y-a.Y)/along*stroke, y+(b.X-a.X)/along*stroke, hairWidth)
		}
		next -= along
	}
}

// drawTab draws what goes under the other edge, set back from the curve.
func (s *templateSheet) drawTab(right, top, cut float64) {
	bottom := cut - 1
	low := max(bottom-tabWidth/2, top+(bottom-top)/2)
	s.dashed(right, top, right+tabWidth, top+2, hairWidth)
	s.dashed(right+tabWidth, top+2, right+tabWidth, low, hairWidth)
	s.dashed(right+tabWidth, low, right, bottom, hairWidth)
	words := "tab, goes under"
	if s.use(regularType, smallType); s.pdf.GetStringWidth(words) > low-top-3 {
		words = "tab"
	}
	s.writeUp(right+tabWidth/2+0.9, low-0.5, regularType, smallType, words)
}

// drawMarks draws the letters of the edges that meet and the marks at the straight edge.
func (s *templateSheet) drawMarks(p *templatePiece, x, y float64) {
	left, right := "W", "W"
	if p.parts > 1 {
		left, right = []string{"W", "J"}[p.part], []string{"J", "W"}[p.part]
	}
	end := x + p.round()
	s.write(x+1.3, y+4.2, boldType, headType, left)
	s.use(boldType, headType)
	s.write(end-1.3-s.pdf.GetStringWidth(right), y+4.2, boldType, headType, right)
	for row, mark := range p.of.marks {
		at, on := p.across(mark.at)
		if !on {
			continue
		}
		tick, down := x+at, y+markRow*float64(row+1)
		s.line(tick, y, tick, down, edgeWidth)
		s.pdf.Polygon([]fpdf.PointType{{X: tick - 1, Y: y + 2}, {X: tick + 1, Y: y + 2}, {X: tick, Y: y}}, "F")
		words := s.fit(mark.words, regularType, smallType, p.round()-2*textInset-2)
		s.write(s.besideTick(p, x, tick, row, words), down-0.4, regularType, smallType, words)
	}
}

// besideTick returns where the words of a mark begin: behind its tick, or before it where the
// piece ends, and clear of the ticks of the rows below, which come down through its row.
func (s *templateSheet) besideTick(p *templatePiece, x, tick float64, row int, words string) float64 {
	wide := s.pdf.GetStringWidth(words)
	least, most := x+textInset, x+p.round()-textInset-wide
	behind, before := max(tick+1.2, least), min(tick-1.2-wide, most)
	for _, below := range p.of.marks[row+1:] {
		at, on := p.across(below.at)
		if at += x; on && at > behind-1 && at < behind+wide+1 {
			behind = at + 1.2
		}
		if on && at > before-1 && at < before+wide+1 {
			before = at - 1.2 - wide
		}
	}
	if behind <= most || before < least {
		return max(least, min(behind, most))
	}
	return before
}

// drawWords writes what the piece is, from the given height down.
func (s *templateSheet) drawWords(p *templatePiece, x, y float64) {
	y += headType - 0.6
	for i, line := range append(p.lines[:len(p.lines):len(p.lines)], p.edgeWords()) {
		if i == 0 {
			s.write(x+textInset, y, boldType, headType, line)
		} else {
			s.write(x+textInset, y, regularType, textType, s.fit(line, regularType, textType, p.round()-2*textInset))
		}
		y += linePitch
	}
}

// drawStrip says what the line of the long point is, and on which side is the waste.
func (s *templateSheet) drawStrip(p *templatePiece, x, right, long float64) {
	words := s.fit("long point; below the curve is cut away, tube "+p.of.end.onto+" lies this way", regularType, smallType, right-x-6)
	s.write(x+5, long+4, regularType, smallType, words)
	tip := fpdf.PointType{X: x + 2.5, Y: long + 4.6}
	s.pdf.Polygon([]fpdf.PointType{{X: tip.X - 1.2, Y: tip.Y - 2.4}, {X: tip.X + 1.2, Y: tip.Y - 2.4}, tip}, "F")
}
