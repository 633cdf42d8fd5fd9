package report

import (
	"gapsheet/engine"
)

// Of the key, in millimetres.
const (
	chartKeySign  = 12.0
	chartKeyApart = 5.0
	chartKeyLine  = 5.4
)

// chartSign is a sign with what it means.
type chartSign struct {
	words string
	draw  func(out *svgText, at area)
	place area // of the sign, from the upper left corner of the key
}

// chartKey explains the signs that occur on the sheets, side by side.
type chartKey struct {
	signs []chartSign
	high  float64
}

// keyOf lists the signs, and gives each its place.
func (c *seasonChart) keyOf() chartKey {
	var k chartKey
	k.bars(c)
	k.marks(c)
	k.events(c)
	at := spot{}
	for i := range k.signs {
		wide := chartKeySign + textWidth(k.signs[i].words, smallText)
		if at.x > 0 && at.x+wide > sheetFrame.wide {
			at = spot{0, at.y + chartKeyLine}
		}
		k.signs[i].place = area{at.x, at.y, chartKeySign, chartKeyLine}
		at.x += wide + chartKeyApart
	}
	k.high = at.y + chartKeyLine
	return k
}

func (k *chartKey) add(words string, draw func(out *svgText, at area)) {
	k.signs = append(k.signs, chartSign{words: words, draw: draw})
}

// bars adds what bars of the verdicts that occur look like.
func (k *chartKey) bars(c *seasonChart) {
	found := map[engine.Verdict]bool{}
	goesOn, ends := false, false
	for _, row := range c.rows {
		for _, bar := range row.bars {
			found[bar.verdict] = true
			goesOn, ends = goesOn || bar.goesOn && barStyles[bar.verdict].thick, ends || bar.ends
		}
	}
	verdicts := engine.Verdicts()
	for i := len(verdicts) - 1; i >= 0; i-- {
		verdict := verdicts[i]
		if !found[verdict] {
			continue
		}
		k.add(verdict.String(), func(out *svgText, at area) {
			bar := chartBar{verdict: verdict, from: at.x, to: at.right() - 2}
			y := at.middle().y - barMiddle
			if !barStyles[verdict].thick {
				y = at.middle().y - lowLine
			}
			bar.draw(out, y)
		})
	}
	if ends {
		k.add("2027-05-31, 6.4: last day it holds, clause that ends it", func(out *svgText, at area) {
			bar := chartBar{verdict: engine.Meets, from: at.x, to: at.x + 7, ends: true}
			bar.draw(out, at.middle().y-barMiddle)
		})
	}
	if goesOn {
		k.add("goes on", func(out *svgText, at area) {
			bar := chartBar{verdict: engine.Meets, from: at.x, to: at.right() - 2, goesOn: true}
			bar.draw(out, at.middle().y-barMiddle)
		})
	}
}

// marks adds the marks that occur.
func (k *chartKey) marks(c *seasonChart) {
	var found chartMarks
	for _, row := range c.rows {
		found.hasOrder = found.hasOrder || row.marks.hasOrder
		found.hasMissed = found.hasMissed || row.marks.hasMissed
	}
	if found.hasOrder {
		k.add("order, or send for service, by this day", func(out *svgText, at area) {
			m := chartMarks{order: at.x + 5, hasOrder: true}
			m.draw(out, at.middle().y-barMiddle)
		})
	}
	if found.hasMissed {
		k.add("first event it misses", func(out *svgText, at area) {
			m := chartMarks{missed: at.x + 5, hasMissed: true}
			m.draw(out, at.middle().y-lowLine)
		})
	}
}

// events adds the signs of days.
func (k *chartKey) events(c *seasonChart) {
	inspection, listed := false, 0
	for i := range c.flags {
		inspection = inspection || c.flags[i].hasInspection(&c.days)
		if len(c.flags[i].lines) == 0 {
			listed++
		}
	}
	if len(c.flags) > 0 {
		words := "event, with its number in the list of events"
		if listed > 0 {
			words += "; " + engine.Plural(listed, "number", "numbers") + " left out for want of room"
		}
		k.add(words, func(out *svgText, at area) {
			out.put(`<rect x="%v" y="%v" width="2" height="4" fill="#d4d4d4"/>`, mm(at.x+4), mm(at.middle().y-2))
			out.line(spot{at.x + 4, at.middle().y - 2}, spot{at.x + 4, at.middle().y + 2}, 0.2)
		})
	}
	if inspection {
		k.add("its inspection day", func(out *svgText, at area) {
			out.put(`<path d="%s" stroke="#555" stroke-width="0.2" stroke-dasharray="0.6 0.6"/>`, path([]spot{{at.x + 5, at.y + 0.5}, {at.x + 5, at.bottom() - 0.5}}))
		})
	}
}

// draw draws the key with its upper left corner at a spot.
func (k *chartKey) draw(out *svgText, corner spot) {
	for _, sign := range k.signs {
		at := sign.place
		at.x, at.y = at.x+corner.x, at.y+corner.y
		sign.draw(out, at)
		out.words(spot{at.right(), at.middle().y + 1}, smallText, "start", sign.words)
	}
}
