package report

import (
	"slices"
	"strconv"
	"strings"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// Season is all that a run over a season has to tell.
type Season struct {
	Head    SeasonHead
	Day     quantity.Day // of the check: what lies before it is over
	Result  *engine.SeasonResult
	Written []string // what was written into files, a sentence each
}

// IsPast reports whether an event is over on a day: its last day and its inspection lie
// before.
func IsPast(e *vehicle.Event, day quantity.Day) bool { return max(e.Last, e.Inspection) < day }

// WriteSeason writes a season for reading: what to replace or service, by the first event
// that it misses; each event; what changes from event to event; every dated part.
func WriteSeason(screen *Screen, s *Season) error {
	p := screen.page()
	writeCaution(p)
	p.prose(0, Plain, DateCaution)
	s.writeHead(p)
	s.writeRenewals(p)
	for _, car := range s.Result.Cars {
		s.writeEvents(p, car)
	}
	for _, car := range s.Result.Cars {
		s.writeChanges(p, car)
	}
	s.writeDated(p)
	for i, sentence := range s.Written {
		if i == 0 {
			p.blank()
		}
		p.prose(0, Plain, sentence)
	}
	return p.done()
}

// writeHead names the season, the rulebooks with their editions, the sheets and the day.
func (s *Season) writeHead(p *page) {
	r := s.Result
	p.blank()
	p.labelled(2, "Season", headLabel, r.Season.Name+hashWords(r.Season.Hash))
	label, standings := "Rulebook", map[string]bool{"": true}
	for _, book := range seasonBooks(r) {
		p.labelled(2, label, headLabel, bookLine(book))
		label = ""
		if !standings[book.Standing] {
			standings[book.Standing] = true
			p.labelled(2, "", headLabel, sentence(book.Standing))
		}
	}
	p.labelled(2, "", headLabel, Bulletins)
	label = "Sheet"
	for _, car := range r.Cars {
		p.labelled(2, label, headLabel, sheetLine(car.Sheet))
		label = ""
	}
	p.labelled(2, "Day", headLabel, dayLine(s.Day, s.Head.DayIsToday))
	renew := len(alikes(r.Renew))
	p.labelled(2, "In short", headLabel, engine.Plural(renew, "thing", "things")+" to replace or service before the season is over")
	s.writeNext(p)
}

// writeNext says how the cars stand for the next event.
func (s *Season) writeNext(p *page) {
	for i, event := range s.Result.Season.Events {
		if IsPast(event, s.Day) {
			continue
		}
		p.labelled(2, "Next", headLabel, event.Name+", inspection "+event.Inspection.String())
		for _, car := range s.Result.Cars {
			p.labelled(2, "", headLabel, carName(car.Sheet)+": "+inShort(car.Events[i].Whole))
		}
		return
	}
	p.labelled(2, "Next", headLabel, "no event of the season is still to come")
}

// eventNumber is the number by which the sections speak of an event.
func (s *Season) eventNumber(e *vehicle.Event) string {
	for i, event := range s.Result.Season.Events {
		if event == e {
			return strconv.Itoa(i + 1)
		}
	}
	return ""
}

// clauseWords name a clause with its page, and with its edition where there are several.
func (s *Season) clauseWords(clause *rules.Clause) string {
	words := strings.TrimSpace(clause.Number + " " + clauseTitle(clause))
	books := seasonBooks(s.Result)
	if len(books) < 2 {
		return words
	}
	for _, book := range books {
		if !holdsClause(book, clause) {
			continue
		}
		oneName := !slices.ContainsFunc(books, func(other *rules.Rulebook) bool { return other.Name != book.Name })
		if oneName && book.Edition != "" {
			return words + " of edition " + book.Edition
		}
		return words + " of " + bookWords(book)
	}
	return words
}

func holdsClause(book *rules.Rulebook, clause *rules.Clause) bool {
	return slices.ContainsFunc(book.Chapters, func(c *rules.Chapter) bool { return slices.Contains(c.Clauses, clause) })
}

// bookWords name a rulebook with its edition.
func bookWords(book *rules.Rulebook) string {
	if book.Edition == "" {
		return book.Name
	}
	return book.Name + ", edition " + book.Edition
}
