package report

import (
	"strings"

	"gapsheet/engine"
)

// How many parts without a place are named at most, and in how many lines.
const (
	mostUnplaced  = 12
	unplacedLines = 4
)

// drawHead writes the title with the caution that stands above everything.
func (d *drawing) drawHead(out *svgText) {
	out.words(spot{sheetFrame.x, sheetFrame.y + titleSize*0.75}, titleSize, "start", fitted(d.title(), sheetFrame.wide, titleSize))
	out.words(spot{sheetFrame.x, sheetFrame.y + titleSize*0.75 + 4.6}, smallText, "start", d.head.Cautions()[0])
	out.line(spot{sheetFrame.x, sheetFrame.y + headHigh - 2}, spot{sheetFrame.right(), sheetFrame.y + headHigh - 2}, 0.35)
}

// notes are the lines of text for a width: what is left out, the cautions that do not
// stand in the head, and what the drawing was made from.
func (d *drawing) notes(wide float64) []string {
	lines := d.unplaced(wide)
	lines = append(lines, wrapped(strings.Join(d.head.Cautions()[1:], " "), wide, smallText)...)
	for _, line := range d.head.Origin() {
		lines = append(lines, wrapped(line, wide, smallText)...)
	}
	return lines
}

// unplaced names what is not drawn, with its verdict, in the lines there are for it; what
// has no room is counted.
func (d *drawing) unplaced(wide float64) []string {
	var names []string
	for _, part := range d.frame.Unplaced {
		names = append(names, inWords(part.Type.Name)+" "+shortened(part.Label, longestName/2)+d.verdictWords(part))
	}
	for number, course := range d.courses {
		if tube := &d.frame.Tubes[number]; course == nil {
			names = append(names, "tube "+shortened(tube.Number, longestName/2)+d.verdictWords(tube.Part))
		}
	}
	var before string
	if d.drawn() == 0 {
		before = "No tube can be drawn. "
	}
	for named := min(len(names), mostUnplaced); named > 0; named-- {
		told := names[:named:named]
		if over := len(names) - named; over > 0 {
			told = append(told, engine.Plural(over, "other", "others"))
		}
		lines := wrapped(before+"Not drawn, as the place is not known: "+list(told)+".", wide, smallText)
		if len(lines) <= unplacedLines || named == 1 {
			return lines
		}
	}
	if before == "" {
		return nil
	}
	return wrapped(before, wide, smallText)
}
