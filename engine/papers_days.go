package engine

import (
	"slices"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// paperBounds are the days on which a paper that bears on a clause begins or ceases to count,
// or to say something beside it.
func (k *checker) paperBounds(c *rules.Clause) []quantity.Day {
	papers := k.car.log.papers
	var days []quantity.Day
	for _, d := range papers.Dispensations {
		if isNumber(d.Clause, c) {
			days = append(days, k.dispensationBounds(d)...)
		}
	}
	for _, n := range papers.Notes {
		if isNumber(n.Clause, c) {
			days = append(days, noteBounds(n)...)
		}
	}
	for _, n := range papers.Inspections {
		if isNumber(n.Clause, c) {
			days = append(days, n.Day)
		}
	}
	if len(c.Evidence) > 0 {
		days = append(days, k.evidenceBounds(c)...)
	}
	if k.p.numbers[c].mentions.dates {
		days = append(days, incidentBounds(papers)...)
	}
	return days
}

// incidentBounds are the days from which on a date that is read says nothing of a loaded part,
// and those from which on it does again.
func incidentBounds(papers *vehicle.Logbook) []quantity.Day {
	var days []quantity.Day
	for _, n := range papers.Incidents {
		days = append(days, n.Day)
		if n.HasInspected {
			days = append(days, n.Inspected)
		}
	}
	return days
}

func (k *checker) dispensationBounds(d *vehicle.Dispensation) []quantity.Day {
	var days []quantity.Day
	if d.HasFrom {
		days = append(days, d.From)
	}
	if d.HasUntil {
		days = append(days, d.Until+1)
	}
	if made := k.car.conditions[d]; made != nil {
		days = append(days, made.boundaries...)
	}
	return days
}

func noteBounds(n *vehicle.LogbookNote) []quantity.Day {
	days := []quantity.Day{n.Day}
	if n.HasBefore {
		days = append(days, n.Before+1)
	}
	if n.IsFixed {
		days = append(days, n.Fixed)
	}
	if n.IsCleared {
		days = append(days, n.ClearedOn)
	}
	return days
}

// evidenceBounds are the days on which papers that a clause asks for begin or cease to count.
func (k *checker) evidenceBounds(c *rules.Clause) []quantity.Day {
	var wanted []string
	for _, label := range c.Evidence {
		wanted = append(wanted, vehicle.FoldText(label))
	}
	var days []quantity.Day
	everyPart(k.car.Sheet.Root, func(p *vehicle.Part) {
		for i := range p.Evidence {
			e := &p.Evidence[i]
			if !slices.Contains(wanted, vehicle.FoldText(e.Label)) {
				continue
			}
			if e.HasDate {
				days = append(days, e.Dated.From)
			}
			if e.HasEnd {
				days = append(days, e.ValidUntil+1)
			}
		}
	})
	return days
}
