package report

import (
	"fmt"
	"math"
)

// pieceTitle names tube and end. Of a long number only the beginning is printed: the end
// must stay.
func (s *templateSheet) pieceTitle(p *templatePiece, width float64) string {
	ending := ", " + p.of.end.name()
	if p.parts > 1 {
		ending += fmt.Sprintf(", half %d of %d", p.part+1, p.parts)
	}
	s.use(boldType, headType)
	number := s.fit("Tube "+p.of.end.tube.Number, boldType, headType, width-s.pdf.GetStringWidth(ending))
	return s.fit(number+ending, boldType, headType, width)
}

// words are what is written on a piece below its title.
func (p *templatePiece) words() []string {
	t := p.of
	figures := fmt.Sprintf("%.1f°, %.1f mm outside on %.1f mm", leastAngle(t), 2000*t.notch.Branch, 2000*t.notch.Main)
	if offset := 1000 * math.Abs(t.notch.Offset); offset >= 0.05 {
		figures += fmt.Sprintf(", axes %.1f mm apart", offset)
	}
	lines := []string{"at joint " + t.end.joint + ", onto tube " + t.end.onto, figures}
	if p.part == 0 && t.end.other {
		lines = append(lines, turnWords(turnBetween(t.end.tube)))
	}
	return lines
}

// turnWords say how the ends' notches stand to each other.
func turnWords(degrees float64) string {
	turned := fmt.Sprintf("%+.1f°", degrees)
	if math.Abs(degrees) < 0.05 || math.Abs(degrees) > 179.95 { // no sign to tell apart
		turned = fmt.Sprintf("%.1f°", math.Abs(degrees))
	}
	return "last end turned " + turned + " against first, both close on line W"
}

// edgeWords say how far the straight edge is from the line of the long point.
func (p *templatePiece) edgeWords() string {
	return fmt.Sprintf("straight edge is %.1f mm from the long point", p.body()+p.of.depth())
}

// leastAngle is the angle between the axes, from 0 to 90 degrees.
func leastAngle(t *notchTemplate) float64 {
	return min(t.notch.Angle, math.Pi-t.notch.Angle) * 180 / math.Pi
}
