package report

import (
	"gapsheet/engine"
)

// barStyle is how days of a verdict are drawn: those on which a part is shown to hold as a
// thick bar, all others as a thin line below it.
type barStyle struct {
	thick bool
	fill  string  // of a thick bar
	comb  bool    // a thick bar with strokes across
	ink   string  // of a thin line
	wide  float64 // of a thin line, mm
	dash  float64 // length of its strokes, mm
	pause float64 // between them, mm; 0 for a line that goes through
	round bool    // the strokes are dots
	cross bool    // with crosses on it
}

var barStyles = map[engine.Verdict]*barStyle{
	engine.DoesNotApply:      {thick: true, fill: "#9aa7b2"},
	engine.Meets:             {thick: true, fill: "#9aa7b2"},
	engine.UnderDispensation: {thick: true, fill: "#fff", comb: true},
	engine.ByEye:             {thick: true, fill: "#fff"},
	engine.Marginal:          {ink: inkOfMarginal, wide: 1, dash: 3, pause: 1.5},
	engine.NotRecorded:       {ink: inkOfNotRecorded, wide: 1, dash: 0.01, pause: 1.5, round: true},
	engine.Gap:               {ink: inkOfGap, wide: 0.45, cross: true},
}

// barInk is what the edges of thick bars are drawn in.
const barInk = "#222"

// leastBar is the least length of a bar, in millimetres.
const leastBar = 0.5

// chartBar is a stretch of days of one verdict.
type chartBar struct {
	verdict  engine.Verdict
	from, to float64 // x
	ends     bool    // what holds ends here, within the chart
	goesOn   bool    // it goes on where the chart ends
}

// barsOf are the bars of a part over the days of the chart.
func (c *seasonChart) barsOf(d *engine.DatedPart) []chartBar {
	var bars []chartBar
	for i, span := range d.Spans {
		from, to, ok := c.days.stretch(span.From, span.Until)
		if !ok {
			continue
		}
		style := barStyles[span.Verdict]
		bar := chartBar{verdict: span.Verdict, from: from, to: to, goesOn: span.Until > c.days.last}
		bar.ends = style.thick && !bar.goesOn && i+1 < len(d.Spans) && !barStyles[d.Spans[i+1].Verdict].thick
		if n := len(bars); n > 0 && barStyles[bars[n-1].verdict] == style {
			bars[n-1].to, bars[n-1].ends, bars[n-1].goesOn = to, bar.ends, bar.goesOn
			continue
		}
		bars = append(bars, bar)
	}
	return bars
}

// draw draws the bar in a row whose upper edge is at y.
func (b *chartBar) draw(out *svgText, y float64) {
	style := barStyles[b.verdict]
	from, to := b.from, max(b.to, b.from+leastBar)
	if !style.thick {
		style.drawLine(out, spot{from, y + lowLine}, to)
		return
	}
	outline := area{from, y + barMiddle - barHigh/2, to - from, barHigh}
	line := []spot{{outline.right(), outline.y}, {outline.x, outline.y}, {outline.x, outline.bottom()}, {outline.right(), outline.bottom()}}
	if b.goesOn {
		line = append(line[:0:0], spot{to - barHigh/2, outline.y}, line[1], line[2], spot{to - barHigh/2, outline.bottom()}, spot{to, outline.middle().y})
	}
	out.put(`<path d="%sZ" fill="%s" stroke="%s" stroke-width="0.2"/>`, path(line), style.fill, barInk)
	if style.comb {
		out.put(`<path d="%s" stroke="%s" stroke-width="%v" stroke-dasharray="0.25 1.25"/>`,
			path([]spot{{from + 1, y + barMiddle}, {max(to-barHigh/2, from+1), y + barMiddle}}), barInk, mm(barHigh))
	}
	if b.ends {
		out.put(`<path d="%s" stroke="#000" stroke-width="0.7"/>`, path([]spot{{to, y + barMiddle - 2}, {to, y + barMiddle + 2}}))
	}
}

// drawLine draws the thin line of days on which a part is not shown to hold.
func (s *barStyle) drawLine(out *svgText, at spot, to float64) {
	if s.cross {
		out.put(`<path d="%s" stroke="%s" stroke-width="%v"/>`, path([]spot{at, {to, at.y}}), s.ink, mm(s.wide))
		const half, between = 0.75, 6.0
		for x := at.x + half + 0.5; x <= to-half; x += between {
			out.put(`<path d="%s%s" stroke="#000" stroke-width="0.3"/>`,
				path([]spot{{x - half, at.y - half}, {x + half, at.y + half}}), path([]spot{{x - half, at.y + half}, {x + half, at.y - half}}))
		}
		return
	}
	end := "butt"
	if s.round {
		end = "round"
		at.x, to = at.x+s.wide/2, max(to-s.wide/2, at.x+s.wide/2+0.01)
	}
	out.put(`<path d="%s" stroke="%s" stroke-width="%v" stroke-dasharray="%v %v" stroke-linecap="%s"/>`,
		path([]spot{at, {to, at.y}}), s.ink, mm(s.wide), mm(s.dash), mm(s.pause), end)
}

// chartMarks are the days of a row that have a mark of their own.
type chartMarks struct {
	order, missed       float64 // x
	hasOrder, hasMissed bool
}

// Half the sizes of the marks, in millimetres.
const (
	halfOrder  = 1.5
	halfMissed = 1.0
)

func (c *seasonChart) marksOf(d *engine.DatedPart) chartMarks {
	var m chartMarks
	if d.HasOrderBy && c.days.has(d.OrderBy) {
		m.order, m.hasOrder = c.days.middle(d.OrderBy), true
	}
	if d.Missed != nil {
		if from, to, ok := c.days.stretch(d.Missed.First, d.Missed.Last); ok {
			m.missed, m.hasMissed = (from+to)/2, true
		}
	}
	return m
}

func (m *chartMarks) draw(out *svgText, y float64) {
	if m.hasMissed {
		out.put(`<circle cx="%v" cy="%v" r="%v" fill="#fff" stroke="#000" stroke-width="0.45"/>`, mm(m.missed), mm(y+lowLine), mm(halfMissed))
	}
	if m.hasOrder {
		middle := y + barMiddle
		out.put(`<path d="%sZ" fill="#fff" stroke="#000" stroke-width="0.4"/>`,
			path([]spot{{m.order - halfOrder, middle}, {m.order, middle - halfOrder}, {m.order + halfOrder, middle}, {m.order, middle + halfOrder}}))
	}
}
