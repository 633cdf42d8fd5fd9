package report

import (
	"fmt"

	"gapsheet/engine"
)

// Of a sheet, in millimetres.
const (
	axisHigh = 8.4 // two lines of words
	footRoom = 2.0 // above the key and above the notes
)

// chartSheet is what stands on one sheet between its head and its foot.
type chartSheet struct {
	rows   []chartRow // with the axis and the flags above them, where there are any
	events []listedEvent
	list   float64 // y of the list of events, from the upper edge of the sheet
}

// listedEvent is an event in the list, with its place from the corner of the list.
type listedEvent struct {
	number string
	lines  []string
	at     spot
}

// foot is where the key begins, from the upper edge of a sheet.
func (c *seasonChart) foot() float64 {
	return sheetFrame.bottom() - c.key.high - footRoom - float64(len(c.notes))*noteLine
}

// top is where the rows begin.
func (c *seasonChart) top() float64 {
	return c.axisTop() + axisHigh
}

// axisTop is where the flags have their foot.
func (c *seasonChart) axisTop() float64 {
	return sheetFrame.y + headHigh + c.aloft + 0.5
}

// arrange deals the rows out to sheets, and after them the list of events. A group's name
// stands again where the group goes on.
func (c *seasonChart) arrange() []chartSheet {
	sheets := []chartSheet{{}}
	room := c.foot() - footRoom - c.top()
	group := chartRow{}
	y := 0.0
	if len(c.rows) == 0 {
		y = rowHigh // for the words that say so
	}
	for i, row := range c.rows {
		high := row.high
		if row.isGroup() && i+1 < len(c.rows) {
			high += c.rows[i+1].high
		}
		if y > 0 && y+high > room {
			sheets, y = append(sheets, chartSheet{}), 0
			if !row.isGroup() {
				again := group
				again.group += ", continued"
				sheets[len(sheets)-1].rows, y = []chartRow{again}, again.high
			}
		}
		if row.isGroup() {
			group = row
		}
		last := &sheets[len(sheets)-1]
		last.rows = append(last.rows, row)
		y += row.high
	}
	return c.arrangeEvents(sheets, c.top()+y+footRoom)
}

// drawSheet draws one sheet, each below the one before.
func (c *seasonChart) drawSheet(out *svgText, number int) {
	sheet := &c.sheets[number]
	out.put(`<g transform="translate(0 %v)">`, mm(sheetHigh*float64(number)))
	c.drawHead(out, number)
	if len(sheet.rows) > 0 || number == 0 {
		c.drawRows(out, sheet.rows)
	}
	c.drawList(out, sheet)
	foot := c.foot()
	if len(sheet.rows) > 0 {
		out.line(spot{sheetFrame.x, foot - 0.5}, spot{sheetFrame.right(), foot - 0.5}, 0.2)
		c.key.draw(out, spot{sheetFrame.x, foot})
	}
	for i, line := range c.notes {
		out.words(spot{sheetFrame.x, foot + c.key.high + footRoom + float64(i+1)*noteLine - 0.8}, smallText, "start", line)
	}
	out.put(`</g>`)
}

// drawHead writes the title, and the caution that stands above everything.
func (c *seasonChart) drawHead(out *svgText, number int) {
	base := sheetFrame.y + titleSize*0.75
	count := fmt.Sprintf("sheet %d of %d", number+1, len(c.sheets))
	out.words(spot{sheetFrame.x, base}, titleSize, "start", fitted(c.title(), sheetFrame.wide-textWidth(count, smallText)-5, titleSize))
	out.words(spot{sheetFrame.right(), base}, smallText, "end", count)
	out.words(spot{sheetFrame.x, base + 4.6}, smallText, "start", Caution)
	out.line(spot{sheetFrame.x, sheetFrame.y + headHigh - 2}, spot{sheetFrame.right(), sheetFrame.y + headHigh - 2}, 0.35)
}

// drawRows draws the axis with the flags above it, and the rows below.
func (c *seasonChart) drawRows(out *svgText, rows []chartRow) {
	y := c.top()
	bottom := y
	for i := range rows {
		bottom += rows[i].high
	}
	bottom = max(bottom, y+rowHigh)
	c.drawFlags(out, c.axisTop(), bottom)
	c.drawAxis(out, bottom)
	if len(rows) == 0 {
		out.words(spot{sheetFrame.x, y + barMiddle + 1}, smallText, "start", "No part has a date that ends it.")
	}
	for i := range rows {
		rows[i].draw(out, c, y)
		y += rows[i].high
	}
}

// drawAxis draws months and years, and the line of the day that is looked at.
func (c *seasonChart) drawAxis(out *svgText, bottom float64) {
	top := c.axisTop()
	months, years := c.days.ticks()
	for _, t := range months {
		out.put(`<path d="%s" stroke="#bbb" stroke-width="0.1"/>`, path([]spot{{t.x, top + axisHigh/2}, {t.x, bottom}}))
		out.words(spot{t.x + 0.6, top + axisHigh - 1.1}, smallText, "start", t.word)
	}
	for _, t := range years {
		out.put(`<path d="%s" stroke="#666" stroke-width="0.2"/>`, path([]spot{{t.x, top + 0.5}, {t.x, bottom}}))
		out.words(spot{t.x + 0.6, top + axisHigh/2 - 0.6}, smallText, "start", t.word)
	}
	out.line(spot{sheetFrame.x, top + axisHigh}, spot{c.days.right, top + axisHigh}, 0.25)
	out.line(spot{c.days.left, top}, spot{c.days.left, bottom}, 0.5)
	words := "from " + c.season.From.String()
	if c.head.DayIsToday {
		words = "today " + c.season.From.String()
	}
	out.words(spot{c.days.left - 1, top + axisHigh - 1.1}, smallText, "end", words)
	if past := c.past(); past > 0 {
		out.words(spot{c.days.left - 1, top + axisHigh/2 - 0.6}, smallText, "end", engine.Plural(past, "event", "events")+" before")
	}
}

// past counts the events that lie before the chart.
func (c *seasonChart) past() int {
	count := 0
	for _, event := range c.season.Season.Events {
		if event.Last < c.days.first {
			count++
		}
	}
	return count
}
