package report

import (
	"fmt"
	"strings"

	"gapsheet/vehicle"
)

// frontLine is a line of the first pages: text in one piece, or in columns.
type frontLine struct {
	weight  string
	size    float64
	height  float64
	columns []frontText
	under   *frontLine // the heads of its columns, if it is a row of a table
}

// frontText is a printable text that begins so far from the left margin.
type frontText struct {
	x    float64
	text string
}

// templateSteps are the steps of using a template.
var templateSteps = []string{
	"Print at 100 %, with no fit to page, on thin paper. Measure both check lines of every page: each must be 100 mm, else do not use it.",
	"Cut out along the straight edge, the middle of the curve, the left edge, and round the tab. Halves are joined first: edge J on edge J.",
	"Before bending, scribe a line W along the tube, one line for both ends. Mark where the long point comes (cut list), with spare length.",
	"Wrap the paper with the print outside and the curve toward the joint, left edge on line W over the tab, the line of the long point on its mark. All round, the straight edge must meet itself: then it is square to the tube.",
	"Check the turn: the mark \"faces …\" must look along the main tube toward that joint, the mark \"inside of bend\" stand on the inner side of the nearest bend.",
	"Mark along the curve, cut on the side of the short strokes, offer up, grind to fit. The curve is that of the outside: ease the inner edge where the wall touches first.",
}

// stepIndent is how far the steps stand in, behind their numbers.
const stepIndent = 5.0

// thinPaper says what the paper's own thickness does: a paper of thickness t lies round a
// circle that is π t longer (elementary geometry).
const thinPaper = "Thin paper: a sheet 0.1 mm thick lies round a circle 0.3 mm longer than the tube's, so that its edges stay 0.3 mm apart. Thick paper or card misleads."

// frontPages lays the first pages out: of what sheet the templates are, the cautions, how to
// use them, the ends that have none and why, and the list of templates with their pages.
// Before is how many first pages there are.
func (s *templateSheet) frontPages(f *vehicle.Frame, pages []*templatePage, without []withoutTemplate, before int) [][]frontLine {
	s.wide = false
	width, height := s.paper.room(false)
	var lines []frontLine
	lines = append(lines, s.paragraph("Notch templates", boldType, 6, width, 1)...)
	for _, line := range s.head.Origin() {
		lines = append(lines, s.paragraph(line, regularType, textType, width, 2)...)
	}
	lines = append(lines, frontSpace(2))
	for _, caution := range s.head.Cautions() {
		lines = append(lines, s.paragraph(caution, boldType, textType, width, 3)...)
	}
	lines = append(lines, s.heading("How to use them", width)...)
	for i, step := range templateSteps {
		numbered := s.paragraph(step, regularType, textType, width-stepIndent, 4)
		for j := range numbered {
			for k := range numbered[j].columns {
				numbered[j].columns[k].x = stepIndent
			}
		}
		numbered[0].columns = append([]frontText{{0, fmt.Sprint(i + 1)}}, numbered[0].columns...)
		lines = append(lines, numbered...)
	}
	lines = append(lines, s.paragraph(thinPaper, regularType, textType, width, 3)...)
	lines = append(lines, s.withoutLines(f, without, width)...)
	lines = append(lines, s.listLines(pages, before, width)...)
	return breakFront(lines, height+frontExtra)
}

// frontExtra is how much longer a page without check lines can be.
const frontExtra = pageBottom - 24

// breakFront divides lines among pages. The heads of a table are repeated.
func breakFront(lines []frontLine, height float64) (pages [][]frontLine) {
	filled := height + 1
	for _, line := range lines {
		if filled+line.height > height {
			pages = append(pages, nil)
			filled = 0
			if line.under != nil {
				pages[len(pages)-1] = append(pages[len(pages)-1], *line.under)
				filled = line.under.height
			}
		}
		pages[len(pages)-1] = append(pages[len(pages)-1], line)
		filled += line.height
	}
	return pages
}

func frontSpace(height float64) frontLine { return frontLine{height: height} }

func (s *templateSheet) paragraph(text, weight string, size, width float64, most int) (lines []frontLine) {
	for _, line := range s.wrapped(text, weight, size, width, most) {
		lines = append(lines, frontLine{weight: weight, size: size, height: size * 1.4, columns: []frontText{{0, line}}})
	}
	return append(lines, frontSpace(0.8))
}

func (s *templateSheet) heading(text string, width float64) []frontLine {
	return append([]frontLine{frontSpace(2.5)}, s.paragraph(text, boldType, headType, width, 1)...)
}

// withoutLines say which ends have no template, and what of the cage is left out because its
// place is not known.
func (s *templateSheet) withoutLines(f *vehicle.Frame, without []withoutTemplate, width float64) []frontLine {
	var square []string
	var lines []frontLine
	for _, end := range without {
		if end.square {
			square = append(square, end.end.tube.Number+" "+end.end.name())
			continue
		}
		text := fmt.Sprintf("Tube %s, %s, at joint %s: %s.", end.end.tube.Number, end.end.name(), end.end.joint, end.reason)
		lines = append(lines, s.paragraph(text, regularType, textType, width, 2)...)
	}
	if len(square) > 0 {
		lines = append(lines, s.paragraph("Cut square, no notch: tubes "+strings.Join(square, ", ")+".", regularType, textType, width, 12)...)
	}
	for _, part := range f.Unplaced {
		text := fmt.Sprintf("Not known where it is, so left out: %s %s.", inWords(part.Type.Name), part.Label)
		lines = append(lines, s.paragraph(text, regularType, textType, width, 2)...)
	}
	if len(lines) == 0 {
		return nil
	}
	lines = append(lines, s.paragraph(vehicle.EndRule, regularType, textType, width, 6)...)
	return append(s.heading("Ends without a template", width), lines...)
}

// listLines are the list of templates.
func (s *templateSheet) listLines(pages []*templatePage, before int, width float64) []frontLine {
	lines := s.heading("Templates", width)
	if len(pages) == 0 {
		return append(lines, s.paragraph("None: no end of a tube needs a notch that can be drawn.", regularType, textType, width, 1)...)
	}
	columns := []float64{0, 0.16, 0.28, 0.52, 0.67, 0.79, 0.92}
	row := func(weight string, texts ...string) frontLine {
		line := frontLine{weight: weight, size: textType, height: textType * 1.4}
		for i, text := range texts {
			end := 1.0
			if i+1 < len(columns) {
				end = columns[i+1]
			}
			room := (end-columns[i])*width - 2
			line.columns = append(line.columns, frontText{columns[i] * width, s.fit(text, weight, textType, room)})
		}
		return line
	}
	heads := row(boldType, "Tube", "End", "Joint", "Onto tube", "Outside", "Angle", "Page")
	lines = append(lines, heads)
	for i, page := range pages {
		for _, placed := range page.placed {
			t := placed.piece.of
			name := t.end.name()
			if placed.piece.parts > 1 {
				name += fmt.Sprintf(" %d/2", placed.piece.part+1)
			}
			line := row(regularType, t.end.tube.Number, name, t.end.joint, t.end.onto,
				fmt.Sprintf("%.1f mm", 2000*t.notch.Branch), fmt.Sprintf("%.1f°", leastAngle(t)), fmt.Sprint(before+i+1))
			line.under = &heads
			lines = append(lines, line)
		}
	}
	return lines
}

// drawFront draws one of the first pages.
func (s *templateSheet) drawFront(lines []frontLine) {
	y := pageTop
	for _, line := range lines {
		y += line.height
		for _, column := range line.columns {
			s.write(pageLeft+column.x, y-line.size*0.3, line.weight, line.size, column.text)
		}
	}
}
