package report

import (
	"fmt"
	"io"
	"strings"

	"gapsheet/engine"
)

// SeasonChart writes how long the dated parts of all cars and crews hold, as an SVG of
// sheets A4 across, in millimetres. Every part has a bar over the days from the one that is
// looked at to some weeks after the last event, events are bands across, and a bar ends
// where a clause ends it, with that day and the clause's number beside. Straps and other
// parts of one whole that stand alike share a bar. Verdicts differ in shape and line
// pattern, so that a copy in black and white tells them apart.
//
// What does not fit on one sheet goes on on further ones below it: the picture is as many
// times 210 mm high as there are sheets, each whole in itself, with head, days, key and
// cautions, so that it can be cut there. The same result gives the same bytes. The error
// is that of the writer.
func SeasonChart(w io.Writer, r *engine.SeasonResult, h SeasonHead) error {
	if _, err := io.WriteString(w, newSeasonChart(r, h).picture()); err != nil {
		return fmt.Errorf("writing the chart of the season: %w", err)
	}
	return nil
}

// seasonChart is all that goes on the sheets.
type seasonChart struct {
	season *engine.SeasonResult
	head   SeasonHead
	days   chartDays
	flags  []eventFlag
	aloft  float64 // how high the flags are, mm
	rows   []chartRow
	key    chartKey
	notes  []string
	sheets []chartSheet
}

func newSeasonChart(r *engine.SeasonResult, h SeasonHead) *seasonChart {
	c := &seasonChart{season: r, head: h, days: daysOf(r)}
	c.flags, c.aloft = c.days.flags(r.Season.Events)
	c.rows = c.allRows()
	c.notes = wrapped(strings.Join(seasonCautions(r)[1:], " "), sheetFrame.wide, smallText)
	origin := seasonOrigin(r, h)
	for i, line := range origin {
		origin[i] = sentence(line)
	}
	c.notes = append(c.notes, wrapped(strings.Join(origin, " "), sheetFrame.wide, smallText)...)
	c.key = c.keyOf()
	c.sheets = c.arrange()
	return c
}

// picture is the whole document.
func (c *seasonChart) picture() string {
	var out svgText
	high := mm(sheetHigh * float64(len(c.sheets)))
	out.put(`<?xml version="1.0" encoding="UTF-8"?>`)
	out.put(`<svg xmlns="http://www.w3.org/2000/svg" width="%vmm" height="%vmm" viewBox="0 0 %v %v" role="img" aria-labelledby="title desc">`,
		mm(sheetWide), high, mm(sheetWide), high)
	out.put(`<title id="title">%s</title>`, escaped(c.title()))
	out.put(`<desc id="desc">%s</desc>`, escaped(c.description()))
	out.put(`<rect width="%v" height="%v" fill="#fff"/>`, mm(sheetWide), high)
	out.put(`<g fill="none" stroke-linejoin="round" font-family="sans-serif">`)
	for i := range c.sheets {
		c.drawSheet(&out, i)
	}
	out.put(`</g>`)
	out.put(`</svg>`)
	return out.String()
}

func (c *seasonChart) title() string {
	return "Season " + shortened(c.season.Season.Name, longestName) + ": how long dated parts hold"
}

// description is for those who hear the chart rather than see it.
func (c *seasonChart) description() string {
	parts := 0
	for _, car := range c.season.Cars {
		parts += len(car.Dated)
	}
	words := []string{fmt.Sprintf("Bars of %s of %s over %s, from %s to %s. Not in date for an event of the season: %d.",
		engine.Plural(parts, "dated part", "dated parts"), engine.Plural(len(c.season.Cars), "car", "cars"),
		engine.Plural(len(c.season.Season.Events), "event", "events"), c.days.first, c.days.last, len(c.season.Renew))}
	return strings.Join(append(words, seasonCautions(c.season)...), " ")
}
