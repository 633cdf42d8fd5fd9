package report

import (
	"gapsheet/engine"
)

// labelBox is the height of a row's label in millimetres.
const labelBox = 3.4

// chartLabel says beside a bar when it ends, and by which clause.
type chartLabel struct {
	text   string
	box    area // y from the upper edge of the row
	below  bool // in a line of its own below the bar
	framed bool // on a bar
}

// labelOf finds a place for the label of a row: right of where the bar ends, where nothing
// holds any more; else on the bar, left of its end; else in a line of its own. It covers no
// mark and no bar but the one it stands on.
func (c *seasonChart) labelOf(r *chartRow) chartLabel {
	text := fitted(c.labelWords(r.parts[0]), c.days.right-c.days.left-2, smallText)
	l := chartLabel{text: text, box: area{y: barMiddle - labelBox/2, wide: textWidth(text, smallText) + 1, high: labelBox}}
	end := c.days.left
	at := -1
	for i, bar := range r.bars {
		if barStyles[bar.verdict].thick && !r.parts[0].IsOver {
			end, at = bar.to, i
			break
		}
	}
	// Bars that follow without an end between are one that holds.
	for at >= 0 && at+1 < len(r.bars) && barStyles[r.bars[at+1].verdict].thick {
		at++
		end = r.bars[at].to
	}
	const beside, farthest = 1.0, 20.0
	for l.box.x = end + beside; l.box.x <= end+farthest; l.box.x += 0.5 {
		if l.box.right() <= c.days.right && !r.covers(l.box, -1) {
			return l
		}
	}
	if at >= 0 {
		l.framed = true
		for l.box.x = end - l.box.wide - barHigh; l.box.x >= r.bars[at].from+beside; l.box.x -= 0.5 {
			if !r.covers(l.box, at) {
				return l
			}
		}
		l.framed = false
	}
	l.below = true
	l.box.y = rowHigh
	l.box.x = max(min(end, c.days.right-l.box.wide), c.days.left+beside)
	return l
}

// covers says whether a box in the line of the bars covers a mark, or a thick bar other
// than one.
func (r *chartRow) covers(box area, but int) bool {
	for i, bar := range r.bars {
		if i != but && barStyles[bar.verdict].thick && box.x < bar.to+0.6 && box.right() > bar.from-0.6 {
			return true
		}
	}
	return r.marks.hasOrder && box.x < r.marks.order+halfOrder+0.4 && box.right() > r.marks.order-halfOrder-0.4
}

// labelWords are the last day with the clause, and by when a new part is to be ordered.
func (c *seasonChart) labelWords(d *engine.DatedPart) string {
	var text string
	switch {
	case d.IsOver && d.HasLastDay:
		text = "held to " + d.LastDay.String()
	case d.IsOver:
		text = standing(d)
	case !d.HasLastDay:
		text = "no end up to " + c.season.Until.String()
	case d.Uncertain:
		text = "sure to " + d.LastDay.String()
	default:
		text = d.LastDay.String()
	}
	if d.Clause != nil {
		text += ", " + shortened(d.Clause.Number, 12)
	}
	if d.HasOrderBy {
		text += "; " + orderWords(d)
	}
	return text
}

// standing is the word for what a part that does not hold is.
func standing(d *engine.DatedPart) string {
	if len(d.Spans) > 0 && d.Spans[0].Verdict != engine.Gap {
		return d.Spans[0].Verdict.String()
	}
	return "not in date"
}

// draw writes the label in a row whose upper edge is at y.
func (l *chartLabel) draw(out *svgText, y float64) {
	if l.text == "" {
		return
	}
	edge := "none"
	if l.framed {
		edge = barInk
	}
	out.put(`<rect x="%v" y="%v" width="%v" height="%v" fill="#fff" stroke="%s" stroke-width="0.15"/>`,
		mm(l.box.x), mm(y+l.box.y+0.2), mm(l.box.wide), mm(l.box.high-0.4), edge)
	out.words(spot{l.box.x + 0.5, y + l.box.middle().y + 1}, smallText, "start", l.text)
}
