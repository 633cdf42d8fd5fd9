package report

import (
	"cmp"
	"fmt"
	"slices"

	"gapsheet/engine"
)

// dayWidth is the width of the column of last days.
const dayWidth = len("2027-03-14")

// writeDated writes every part with a date, what ends first first.
func (s *Season) writeDated(p *page) {
	p.heading(Strong, "DATED PARTS", fmt.Sprintf(", the last day each holds, looked at up to %s", s.Result.Until))
	rows := s.allDated()
	if len(rows) == 0 {
		p.prose(0, Plain, "No clause reads a date that is written down.")
		return
	}
	slices.SortStableFunc(rows, func(a, b alike) int { return cmp.Compare(endOf(a[0]), endOf(b[0])) })
	for _, row := range rows {
		d := row[0]
		day, ink := "no end", Plain
		switch {
		case d.HasLastDay:
			day = d.LastDay.String()
		case d.IsOver:
			day = "over"
		}
		if d.IsOver {
			ink = Strong
		}
		text := row.whole() + ": "
		switch {
		case d.HasLastDay || d.IsOver:
			text += endWords(d)
		default:
			text += "nothing ends it up to " + s.Result.Until.String()
			if d.AsEntered != nil {
				text += ", as entered at " + d.AsEntered.Name
			}
		}
		if d.Clause != nil {
			text += "; ended by " + s.clauseWords(d.Clause)
		}
		p.hanging(0, p.paint.With(ink, pad(day, dayWidth))+"  ", dayWidth+2, Plain, text)
	}
}

// allDated are the dated parts of all cars.
func (s *Season) allDated() []alike {
	var all []*engine.DatedPart
	for _, car := range s.Result.Cars {
		all = append(all, car.Dated...)
	}
	return alikes(all)
}
