package report

import (
	"fmt"

	"gapsheet/engine"
	"gapsheet/vehicle"
)

// writeRenewals writes what has to be replaced or serviced, under the first event it misses.
func (s *Season) writeRenewals(p *page) {
	p.heading(Strong, "RENEW", ", by the first event that is missed without")
	rows := alikes(s.Result.Renew)
	if len(rows) == 0 {
		if s.hasLaterGaps() {
			p.prose(0, Plain, "No part is seen to end by a date, but there are gaps at a later event that are none at the first. They are told under EVENTS.")
			return
		}
		p.prose(0, Plain, "As far as dates are written down, nothing runs out before the last day of the season.")
		return
	}
	var event *vehicle.Event
	for i, row := range rows {
		d := row[0]
		p.gapBefore(i)
		if d.Missed != event {
			event = d.Missed
			p.prose(0, Strong, fmt.Sprintf("%s  %s, inspection %s", s.eventNumber(event), event.Name, event.Inspection))
		}
		s.writeRenewal(p, row, d)
	}
}

// hasLaterGaps reports whether a car has a gap at an event still to come that it does not have
// at the first of those, or that is under another rulebook.
func (s *Season) hasLaterGaps() bool {
	for _, car := range s.Result.Cars {
		var first map[rowKey]bool
		for _, e := range car.Events {
			if IsPast(e.Event, s.Day) {
				continue
			}
			rows := gapRows(e)
			if first == nil {
				first = rows
			}
			for row := range rows {
				if !first[row] {
					return true
				}
			}
		}
	}
	return false
}

// renewLabel is the width of the labels of a part to renew.
const renewLabel = 10

// writeRenewal writes one part to replace or service.
func (s *Season) writeRenewal(p *page, row alike, d *engine.DatedPart) {
	word := renewalWord(d.Renewal)
	if isOpen(d) && d.Renewal != engine.Reinspect {
		word = "look up"
	}
	p.hanging(3, p.paint.With(Strong, word)+"  ", len(word)+2, Plain, row.whole())
	p.labelled(5, "last day", renewLabel, endWords(d))
	if d.Clause != nil {
		p.labelled(5, "by clause", renewLabel, s.clauseWords(d.Clause))
		if d.Limit != "" {
			p.labelled(5, "", renewLabel, d.Limit)
		}
	}
	if d.HasOrderBy {
		p.labelled(5, "when", renewLabel, s.orderSentence(d))
	}
	if words := earliestWords(d); words != "" {
		p.labelled(5, "next one", renewLabel, words)
	}
}

// orderSentence says by when a part is to be ordered or sent in, with its lead time, and that
// the day is over where it is.
func (s *Season) orderSentence(d *engine.DatedPart) string {
	text := orderWords(d)
	if lead := s.Result.Season.LeadOf(d.Part.Type); lead > 0 {
		text += ", " + engine.Plural(int(lead), "day", "days") + " before the inspection"
	}
	if d.OrderBy < s.Day {
		text += "; that day is past"
	}
	return text
}

// earliestWords say how new the next one must be to carry the rest of the season; nothing of
// what is not dated, nor of a car or cage of which something is not recorded.
func earliestWords(d *engine.DatedPart) string {
	switch {
	case d.Renewal == engine.PutRight, d.Renewal == engine.Reinspect, isOpen(d) && !d.HasOrderBy:
		return ""
	case d.Particular == nil && d.Paper == "":
		return "no date of it decides: see what the clause asks for then"
	case !d.HasEarliest:
		return "no date is seen that alone would carry the rest of the season"
	}
	return nextWords(d) + " carries the rest of the season"
}

// nextWords say the date that the next one has to have: "made 2023-02 or later", "made
// 2026-07-03 to 2026-12-31" where a later one is out again.
func nextWords(d *engine.DatedPart) string {
	word := "valid until"
	if d.EarliestOf != nil {
		word = inWords(d.EarliestOf.Name)
	}
	switch {
	case d.EarliestOf != d.Particular:
		word = "a new one " + word
	case word == "not after":
		word = "one marked not after"
	}
	text := rangeWords(word, d.NextDate(), d.NextUntil())
	if d.AnewFrom != "" {
		text += ", or a new one " + rangeWords("made", d.AnewFrom, d.AnewUntil) + ","
	}
	return text
}

func rangeWords(word, from, until string) string {
	if until != "" {
		return word + " " + from + " to " + until
	}
	return word + " " + from + " or later"
}
