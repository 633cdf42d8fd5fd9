package report

import (
	"cmp"
	"slices"
	"strings"

	"gapsheet/engine"
	"gapsheet/vehicle/quantity"
)

// A row of the chart, in millimetres from its upper edge: the middle of the thick bar, the
// line below it for days on which a part is not shown to hold, and the whole.
const (
	barMiddle = 2.3
	barHigh   = 2.6
	lowLine   = 4.9
	rowHigh   = 6.1
	rowHead   = 6.2 // a row that names a group
	headText  = 3.3
	groupRoom = 22.0 // left of the line for ", continued"
	mostLines = 2    // of a name
)

// chartRow is a row of the chart: the bar of a part, or of several that stand alike, or the
// name of a group.
type chartRow struct {
	group string
	parts alike    // none for the name of a group
	lines []string // its name
	whole string   // and uncut
	bars  []chartBar
	marks chartMarks
	label chartLabel
	high  float64
}

func (r *chartRow) isGroup() bool { return len(r.parts) == 0 }

// allRows are the rows of all cars and people, of each what ends first first.
func (c *seasonChart) allRows() []chartRow {
	var rows []chartRow
	for _, group := range datedGroups(c.season) {
		name := shortened(group.person, longestName) + ", crew"
		if group.car != nil {
			name = shortened(carName(group.car), longestName)
		}
		rows = append(rows, chartRow{group: fitted(name, sheetFrame.wide-groupRoom, headText), high: rowHead})
		slices.SortStableFunc(group.parts, func(a, b alike) int { return cmp.Compare(endOf(a[0]), endOf(b[0])) })
		for _, parts := range group.parts {
			rows = append(rows, c.row(&group, parts))
		}
	}
	return rows
}

// endOf is the day by which rows are ordered: what is over comes first, what nothing ends
// last.
func endOf(d *engine.DatedPart) quantity.Day {
	switch {
	case d.HasLastDay:
		return d.LastDay
	case d.IsOver:
		return quantity.Day(-1 << 63)
	}
	return quantity.Day(1<<63 - 1)
}

// row is the row of some parts that stand alike in a group. Its name says neither the car
// nor the person again.
func (c *seasonChart) row(group *datedGroup, parts alike) chartRow {
	r := chartRow{parts: parts, whole: parts.name()}
	name := r.whole
	if group.car == nil {
		r.whole = group.whose(parts)
		name = strings.Replace(r.whole, " of "+group.person, "", 1)
	}
	r.lines = wrapped(name, chartNames-2, smallText)
	if len(r.lines) > mostLines {
		r.lines = append(r.lines[:mostLines-1:mostLines-1], fitted(strings.Join(r.lines[mostLines-1:], " "), chartNames-2, smallText))
	}
	r.bars = c.barsOf(parts[0])
	r.marks = c.marksOf(parts[0])
	r.label = c.labelOf(&r)
	r.high = rowHigh + float64(len(r.lines)-1)*noteLine
	if r.label.below {
		r.high = max(r.high, rowHigh+noteLine)
	}
	return r
}

// draw draws the row with its upper edge at a height.
func (r *chartRow) draw(out *svgText, c *seasonChart, y float64) {
	if r.isGroup() {
		if y > c.top() {
			out.line(spot{sheetFrame.x, y + 0.5}, spot{sheetFrame.right(), y + 0.5}, 0.2)
		}
		out.put(`<rect x="%v" y="%v" width="%v" height="%v" fill="#fff"/>`, mm(sheetFrame.x), mm(y+0.9), mm(textWidth(r.group, headText)+1), mm(rowHead-1.2))
		out.words(spot{sheetFrame.x, y + 4.4}, headText, "start", r.group)
		return
	}
	out.put(`<g><title>%s</title>`, escaped(r.sentence()))
	for i, line := range r.lines {
		out.words(spot{sheetFrame.x, y + barMiddle + 1 + float64(i)*noteLine}, smallText, "start", line)
	}
	for i := range r.bars {
		r.bars[i].draw(out, y)
	}
	r.label.draw(out, y)
	r.marks.draw(out, y)
	out.put(`</g>`)
}

// sentence is the row for those who hear it.
func (r *chartRow) sentence() string {
	d := r.parts[0]
	text := shortened(r.whole, 2*longestName) + ": " + reasonWords(d)
	if d.Missed != nil {
		text += " First event missed: " + shortened(d.Missed.Name, longestName) + "."
	}
	if d.HasOrderBy {
		text += " " + sentence(orderWords(d))
	}
	return shortened(text, 400)
}

// orderWords say by when a part is to be ordered, or sent for its service.
func orderWords(d *engine.DatedPart) string {
	word := "order by "
	switch {
	case d.Renewal == engine.Reinspect:
		word = "re-inspect, or order, by "
	case isOpen(d):
		word = "record or order by "
	case d.Renewal == engine.Service:
		word = "service by "
	case d.Renewal == engine.Renew:
		word = "renew by "
	case d.Renewal == engine.PutRight:
		word = "put right by "
	}
	return word + d.OrderBy.String()
}
