package report

import (
	"gapsheet/engine"
	"gapsheet/vehicle"
)

// tubeStyle is how tubes of a verdict are drawn: as a band as wide as the tube to scale,
// with two edges and, along the middle, a mark. Styles differ in the thickness of the
// edges, in the width of the band and in the pattern of the mark, so that a copy in black
// and white tells them apart.
type tubeStyle struct {
	verdict engine.Verdict
	edge    string  // colour of the edges
	fill    string  // colour between them
	ink     string  // colour of the mark
	beyond  float64 // by how much the band reaches beyond the tube on each side, mm
	thick   float64 // of the edges, mm
	mark    float64 // width of the mark as a share of the band's, 0 for none
	dash    float64 // length of the mark's strokes, mm
	pause   float64 // between them, mm
	round   bool    // their ends are round: dots
}

// The styles, worst first: the heavier, the worse.
var tubeStyles = []*tubeStyle{
	{verdict: engine.Gap, edge: "#000", fill: inkOfGap, ink: inkOfGap, beyond: 0.35, thick: 0.5},
	{verdict: engine.NotRecorded, edge: inkOfNotRecorded, fill: "#fff", ink: inkOfNotRecorded, beyond: 0.1, thick: 0.25, mark: 0.5, dash: 0.01, pause: 1.5, round: true},
	{verdict: engine.Marginal, edge: "#000", fill: "#fff", ink: inkOfMarginal, beyond: 0.2, thick: 0.35, mark: 0.5, dash: 3, pause: 1.5},
}

// plainStyle is for all other tubes.
var plainStyle = &tubeStyle{edge: "#000", fill: "#fff", thick: 0.16}

// The least width of a band on paper in millimetres: of one whose pattern has to be seen,
// and of one that is no more than two edges with white between.
const (
	leastMarked = 1.5
	leastPlain  = 0.6
)

// styleOf is the style of a part. Parts that no clause was held against have none of their
// own.
func styleOf(verdicts map[*vehicle.Part]engine.Verdict, part *vehicle.Part) *tubeStyle {
	verdict, judged := verdicts[part]
	for _, style := range tubeStyles {
		if judged && style.verdict == verdict {
			return style
		}
	}
	return plainStyle
}

// worse is the style of the worse verdict.
func (s *tubeStyle) worse(t *tubeStyle) *tubeStyle {
	if s == plainStyle || t != plainStyle && t.verdict > s.verdict {
		return t
	}
	return s
}

// band draws a line of a width in millimetres in the style. From is how far along its tube
// the line begins, where its strokes go on. Overlap is by how much the fill reaches beyond
// the edges at both ends: of a stretch drawn once more, so that no hairline stays across.
func (s *tubeStyle) band(out *svgText, line []spot, width, from, overlap float64) {
	d := path(line)
	switch wide := s.wide(width); {
	case width == 0 && s == plainStyle:
		out.put(`<path d="%s" stroke="#fff" stroke-width="1.1"/>`, d)
		out.put(`<path d="%s" stroke="#000" stroke-width="0.35" stroke-dasharray="4 0.9 0.5 0.9" stroke-dashoffset="%v"/>`, d, mm(from))
	case wide < leastPlain:
		out.put(`<path d="%s" stroke="%s" stroke-width="%v"/>`, d, s.edge, mm(max(wide, 0.13)))
	default:
		out.put(`<path d="%s" stroke="%s" stroke-width="%v"/>`, d, s.edge, mm(wide))
		out.put(`<path d="%s" stroke="%s" stroke-width="%v"/>`, path(lengthened(line, overlap)), s.fill, mm(wide-2*s.thick))
	}
	if s.mark > 0 {
		end := "butt"
		if s.round {
			end = "round"
		}
		out.put(`<path d="%s" stroke="%s" stroke-width="%v" stroke-dasharray="%v %v" stroke-dashoffset="%v" stroke-linecap="%s"/>`,
			d, s.ink, mm(s.wide(width)*s.mark), mm(s.dash), mm(s.pause), mm(from+s.dash+s.pause/2), end)
	}
}

// wide is how wide the band is on paper for a tube that is so wide to scale, 0 where its
// size is not recorded.
func (s *tubeStyle) wide(width float64) float64 {
	if s == plainStyle {
		return width
	}
	return max(width, leastMarked) + 2*s.beyond
}

// disc draws a tube that is seen end on.
func (s *tubeStyle) disc(out *svgText, at spot, width float64) {
	wide := max(s.wide(width), 0.4)
	out.put(`<circle cx="%v" cy="%v" r="%v" fill="%s" stroke="%s" stroke-width="%v"/>`, mm(at.x), mm(at.y), mm(max(wide-s.thick, 0.2)/2), s.fill, s.edge, mm(s.thick))
	if s.mark > 0 {
		out.put(`<circle cx="%v" cy="%v" r="%v" fill="%s" stroke="none"/>`, mm(at.x), mm(at.y), mm(wide*s.mark/2), s.ink)
	}
}

// lengthened reaches beyond both ends of a line, straight on.
func lengthened(line []spot, by float64) []spot {
	if by == 0 || len(line) < 2 {
		return line
	}
	longer := append([]spot{}, line...)
	last := len(line) - 1
	longer[0] = line[0].toward(line[1], -by)
	longer[last] = line[last].toward(line[last-1], -by)
	return longer
}
