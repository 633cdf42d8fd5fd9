package report

import (
	"fmt"
	"strings"

	"gapsheet/engine"
)

// verdictLetter is the sign of a verdict in the matrix. No two are told apart by colour alone.
func verdictLetter(v engine.Verdict) string {
	switch v {
	case engine.Gap:
		return "G"
	case engine.NotRecorded:
		return "N"
	case engine.Marginal:
		return "M"
	case engine.ByEye:
		return "E"
	case engine.UnderDispensation:
		return "D"
	case engine.Meets:
		return "+"
	case engine.DoesNotApply:
		return "-"
	}
	panic(fmt.Sprintf("a verdict without a letter: %d", v))
}

// leastRowText is how many cells the text beside the matrix has at least.
const leastRowText = 28

// writeChanges writes the matrix of what is not the same at all events: a row for each clause
// and subject, a column for each event by its number.
func (s *Season) writeChanges(p *page, car *engine.CarSeason) {
	p.heading(Strong, "WHAT CHANGES", " from event to event, "+carName(car.Sheet))
	if len(car.Changes) == 0 {
		p.prose(0, Plain, "Nothing: every clause comes to the same at all events under its rulebook.")
		return
	}
	p.prose(0, Plain, changesKey(car))
	cell := len(s.eventNumber(car.Events[len(car.Events)-1].Event)) + 1
	most := max(1, (p.width-leastRowText)/cell)
	for from := 0; from < len(car.Events); from += most {
		p.blank()
		writeChangesOf(p, s, car, from, min(from+most, len(car.Events)), cell)
	}
}

// changesKey says what the letters mean that occur.
func changesKey(car *engine.CarSeason) string {
	var occurs [engine.Gap + 1]bool
	other := false
	for _, change := range car.Changes {
		for i, v := range change.Verdicts {
			if car.Events[i].Book.Name == change.Rulebook {
				occurs[v] = true
			} else {
				other = true
			}
		}
	}
	var words []string
	for _, v := range engine.Verdicts() {
		if occurs[v] {
			words = append(words, verdictLetter(v)+" "+v.String())
		}
	}
	if other {
		words = append(words, "blank: another rulebook")
	}
	return strings.Join(words, ", ") + ". Each at its worst over the days of the event."
}

// writeChangesOf writes the columns of some events.
func writeChangesOf(p *page, s *Season, car *engine.CarSeason, from, to, cell int) {
	var head strings.Builder
	for _, e := range car.Events[from:to] {
		head.WriteString(padLeft(s.eventNumber(e.Event), cell))
	}
	p.raw(p.paint.With(Strong, head.String()))
	for _, change := range car.Changes {
		var cells strings.Builder
		for i := from; i < to; i++ {
			letter := " "
			if car.Events[i].Book.Name == change.Rulebook {
				letter = p.paint.With(InkOf(change.Verdicts[i]), verdictLetter(change.Verdicts[i]))
			}
			cells.WriteString(strings.Repeat(" ", cell-1) + letter)
		}
		text := strings.TrimSpace(change.Clause.Number + " " + change.Clause.Title)
		if change.Subject != "" {
			text += ": " + change.Subject
		}
		p.hanging(0, cells.String()+"  ", (to-from)*cell+2, Plain, text)
	}
}

// padLeft fills a text with blanks in front, up to width cells.
func padLeft(text string, width int) string {
	return strings.Repeat(" ", max(0, width-Width(text))) + text
}
