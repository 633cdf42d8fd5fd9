package report

import (
	"fmt"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// Of the bands of events, in millimetres.
const (
	bandWide  = 0.5 // at least
	apartFrom = 0.8 // how far an inspection day has to lie from the band to be drawn
)

// shortDays writes closed days without their year: "13 Mar", "13–14 Mar", "27 May–7 Jun".
func shortDays(first, last quantity.Day) string {
	_, month, day := first.Civil()
	_, lastMonth, lastDay := last.Civil()
	end := fmt.Sprintf("%d %s", lastDay, monthWords[lastMonth-1])
	switch {
	case first == last:
		return end
	case month == lastMonth:
		return fmt.Sprintf("%d–%s", day, end)
	}
	return fmt.Sprintf("%d %s–%s", day, monthWords[month-1], end)
}

// hasInspection says whether the day of the inspection is drawn beside the band.
func (f *eventFlag) hasInspection(d *chartDays) bool {
	x := d.middle(f.event.Inspection)
	return d.has(f.event.Inspection) && (x < f.band.x-apartFrom || x > f.band.right()+apartFrom)
}

// middle is the middle of a day.
func (d *chartDays) middle(day quantity.Day) float64 { return d.x(day) + d.perDay()/2 }

// drawFlags draws the bands of the events from the foot of their flags down to a bottom,
// with the flags above.
func (c *seasonChart) drawFlags(out *svgText, foot, bottom float64) {
	for i := range c.flags {
		f := &c.flags[i]
		out.put(`<g><title>%s</title>`, escaped(fmt.Sprintf("Event %d, %s: %s", f.number, shortened(f.event.Name, longestName), eventDays(f.event))))
		out.put(`<rect x="%v" y="%v" width="%v" height="%v" fill="#d4d4d4"/>`, mm(f.band.x), mm(foot), mm(f.band.wide), mm(bottom-foot))
		if f.hasInspection(&c.days) {
			x := c.days.middle(f.event.Inspection)
			out.put(`<path d="%s" stroke="#555" stroke-width="0.2" stroke-dasharray="0.6 0.6"/>`, path([]spot{{x, foot}, {x, bottom}}))
		}
		if len(f.lines) > 0 {
			out.line(spot{f.pole, foot + f.box.y}, spot{f.pole, foot}, 0.2)
		}
		for i, line := range f.lines {
			at, anchor := spot{f.box.x, foot + f.box.y + float64(i+1)*noteLine - 0.9}, "start"
			if f.ends {
				at.x, anchor = f.box.right(), "end"
			}
			out.words(at, smallText, anchor, line)
		}
		out.put(`</g>`)
	}
}

// eventDays are the days of an event in words.
func eventDays(e *vehicle.Event) string {
	return "inspection " + e.Inspection.String() + ", event " + dayToDay(e.First, e.Last)
}
