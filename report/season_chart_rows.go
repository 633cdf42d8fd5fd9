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

// allRows are the rows of all cars: of each first what belongs to the car, then what
// belongs to each person, what ends first first.
func (c *seasonChart) allRows() []chartRow {
	var rows []chartRow
	for _, car := range c.season.Cars {
		groups := map[string][]alike{}
		people := []string{""}
		for _, parts := range alikes(car.Dated) {
			person := personOf(parts[0].Part)
			if !slices.Contains(people, person) {
				people = append(people, person)
			}
			groups[person] = append(groups[person], parts)
		}
		for _, person := range people {
			if len(groups[person]) == 0 {
				continue
			}
			name := shortened(carName(car.Sheet), longestName)
			if person != "" {
				name = shortened(person, longestName) + ", crew of " + name
			}
			rows = append(rows, chartRow{group: fitted(name, sheetFrame.wide-groupRoom, headText), high: rowHead})
			slices.SortStableFunc(groups[person], func(a, b alike) int { return cmp.Compare(endOf(a[0]), endOf(b[0])) })
			for _, parts := range groups[person] {
				rows = append(rows, c.row(parts, person))
			}
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

// row is the row of some parts that stand alike, in the group of a person or a car.
func (c *seasonChart) row(parts alike, person string) chartRow {
	r := chartRow{parts: parts, whole: parts.name()}
	name := r.whole
	if person != "" {
		name = strings.TrimSuffix(name, " of "+person)
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
	if d.Renewal == engine.Service {
		return "service by " + d.OrderBy.String()
	}
	return "order by " + d.OrderBy.String()
}
