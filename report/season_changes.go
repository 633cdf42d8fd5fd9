package report

import (
	"fmt"
	"slices"
	"strconv"
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

// change is a row of the matrix with the events that have a say in it: those under its
// rulebook, and of the gear of a person those that the person goes to.
type change struct {
	*engine.Change
	has []bool
}

// changesOf are the rows that change among the events that have a say.
func changesOf(car *engine.CarSeason) []change {
	owners := ownersOf(car)
	var rows []change
	for _, c := range car.Changes {
		row := change{c, make([]bool, len(c.Verdicts))}
		person := owners[rowKey{c.Rulebook, c.Clause.Number, c.Subject}]
		first, changes := -1, false
		for i, e := range car.Events {
			row.has[i] = e.Book.Name == c.Rulebook && (person == "" || slices.Contains(e.Event.Crew, person))
			switch {
			case !row.has[i]:
			case first < 0:
				first = i
			case c.Verdicts[i] != c.Verdicts[first]:
				changes = true
			}
		}
		if changes {
			rows = append(rows, row)
		}
	}
	return rows
}

// ownersOf are the people whose gear the subjects of clauses are, of all events.
func ownersOf(car *engine.CarSeason) map[rowKey]string {
	owners := map[rowKey]string{}
	for _, e := range car.Events {
		for _, chapter := range e.Whole.Chapters {
			for _, clause := range chapter.Clauses {
				for _, subject := range clause.Subjects {
					for _, part := range subject.Parts {
						if person := personOf(part); person != "" {
							owners[rowKeyOf(e, clause, subject)] = person
						}
					}
				}
			}
		}
	}
	return owners
}

// leastRowText is how many cells the text beside the matrix has at least.
const leastRowText = 28

// writeChanges writes the matrix of what is not the same at all events: a row for each clause
// and subject, a column for each event by its number.
func (s *Season) writeChanges(p *page, car *engine.CarSeason) {
	p.heading(Strong, "WHAT CHANGES", " from event to event, "+carName(car.Sheet))
	rows := changesOf(car)
	if len(rows) == 0 {
		p.prose(0, Plain, "Nothing: every clause comes to the same at all events under its rulebook.")
		return
	}
	p.prose(0, Plain, changesKey(rows))
	most := max(1, (p.width-leastRowText)/s.cellWidth())
	for from := 0; from < len(car.Events); from += most {
		p.blank()
		s.writeColumns(p, car, rows, from, min(from+most, len(car.Events)))
	}
}

// changesKey says what the letters mean that occur.
func changesKey(rows []change) string {
	var occurs [engine.Gap + 1]bool
	blank := false
	for _, row := range rows {
		for i, v := range row.Verdicts {
			occurs[v] = occurs[v] || row.has[i]
			blank = blank || !row.has[i]
		}
	}
	var words []string
	for _, v := range engine.Verdicts() {
		if occurs[v] {
			words = append(words, verdictLetter(v)+" "+v.String())
		}
	}
	if blank {
		words = append(words, "blank: under another rulebook, or without the person whose it is")
	}
	return strings.Join(words, ", ") + ". Each at its worst over the days of the event."
}

// writeColumns writes the columns of some events.
func (s *Season) writeColumns(p *page, car *engine.CarSeason, rows []change, from, to int) {
	cell := s.cellWidth()
	var head strings.Builder
	for _, e := range car.Events[from:to] {
		head.WriteString(padLeft(s.eventNumber(e.Event), cell))
	}
	p.raw(p.paint.With(Strong, head.String()))
	for _, row := range rows {
		var cells strings.Builder
		for i := from; i < to; i++ {
			letter := " "
			if row.has[i] {
				letter = p.paint.With(InkOf(row.Verdicts[i]), verdictLetter(row.Verdicts[i]))
			}
			cells.WriteString(strings.Repeat(" ", cell-1) + letter)
		}
		text := strings.TrimSpace(row.Clause.Number + " " + row.Clause.Title)
		if row.Subject != "" {
			text += ": " + row.Subject
		}
		p.hanging(0, cells.String()+"  ", (to-from)*cell+2, Plain, text)
	}
}

// cellWidth is how many cells a column of the matrix has: those of the longest number of an
// event, and one before it.
func (s *Season) cellWidth() int { return len(strconv.Itoa(len(s.Result.Season.Events))) + 1 }

// padLeft fills a text with blanks in front, up to width cells.
func padLeft(text string, width int) string {
	return strings.Repeat(" ", max(0, width-Width(text))) + text
}
