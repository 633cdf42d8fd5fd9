package report

import (
	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

// jsonSeasonFormat is the number of the form of a season. It grows when a field changes its
// meaning or goes.
const jsonSeasonFormat = 1

// WriteSeasonJSON writes a season as one JSON document, whatever a screen shows of it.
func WriteSeasonJSON(screen *Screen, s *Season) error {
	r := s.Result
	document := jsonSeasonRun{
		Caution: Caution, DateCaution: DateCaution, Bulletins: Bulletins, Format: jsonSeasonFormat,
		Program: jsonProgram{"gapsheet", s.Head.Version},
		Day:     s.Day.String(), Today: s.Head.DayIsToday, Until: r.Until.String(),
		Season:    jsonSeason{r.Season.Name, r.Season.Hash, jsonCrewPapers(r.Season)},
		Rulebooks: []jsonRulebook{}, Events: []jsonSeasonEvent{}, Renew: []jsonDated{}, Cars: []jsonSeasonCar{},
	}
	for _, book := range seasonBooks(r) {
		document.Rulebooks = append(document.Rulebooks, jsonRulebook{book.Name, book.Edition, book.Hash, book.Standing})
	}
	for _, event := range r.Season.Events {
		document.Events = append(document.Events, s.jsonEvent(event))
	}
	for _, row := range alikes(r.Renew) {
		document.Renew = append(document.Renew, s.jsonParts(row)...)
	}
	for _, car := range r.Cars {
		document.Cars = append(document.Cars, s.jsonCar(car))
	}
	return writeDocument(screen.Writer, document)
}

func (s *Season) jsonEvent(e *vehicle.Event) jsonSeasonEvent {
	written := jsonSeasonEvent{
		Name: e.Name, Place: e.Place, Class: e.Class, Crew: notNil(e.Crew),
		Inspection: e.Inspection.String(), First: e.First.String(), Last: e.Last.String(), Over: IsPast(e, s.Day),
	}
	if e.HasEntryCloses {
		written.EntryCloses = e.EntryCloses.String()
	}
	return written
}

// jsonCrewPapers lists the papers of what the people of a season wear.
func jsonCrewPapers(season *vehicle.Season) []jsonPaper {
	papers := []jsonPaper{}
	for _, person := range season.People {
		papers = jsonPapers(person.Gear, papers)
	}
	return papers
}

func (s *Season) jsonCar(car *engine.CarSeason) jsonSeasonCar {
	written := jsonSeasonCar{Sheet: jsonSheetOf(car.Sheet), Papers: jsonPapersOf(car.Sheet), Events: []jsonCarEvent{}, Changes: []jsonChange{}, Dated: []jsonDated{}}
	for i, e := range car.Events {
		written.Events = append(written.Events, jsonCarEventOf(car, i, e))
	}
	for _, change := range changesOf(car) {
		row := jsonChange{Rulebook: change.Rulebook, Clause: change.Clause.Number, Title: change.Clause.Title, Subject: change.Subject, Verdicts: []string{}}
		for i, v := range change.Verdicts {
			word := ""
			if change.has[i] {
				word = v.String()
			}
			row.Verdicts = append(row.Verdicts, word)
		}
		written.Changes = append(written.Changes, row)
	}
	for _, row := range alikes(car.Dated) {
		written.Dated = append(written.Dated, s.jsonParts(row)...)
	}
	return written
}

func jsonCarEventOf(car *engine.CarSeason, at int, e *engine.EventResult) jsonCarEvent {
	written := jsonCarEvent{
		Event: e.Event.Name, Rulebook: e.Book.Name, Edition: e.Book.Edition,
		Worst: e.Whole.Worst.String(), Counts: jsonCounts(e.Whole.Counts), Advice: jsonCounts(e.Whole.Advice),
		ForAPerson: forAPerson(e.Whole),
		Days:       []jsonEventDay{}, NewGaps: []jsonRow{}, Verdicts: []jsonVerdict{}, Clauses: []jsonClause{},
	}
	for _, day := range e.Days {
		written.Days = append(written.Days, jsonEventDay{day.Day.String(), day.Worst.String(), jsonCounts(day.Counts)})
	}
	for _, f := range newGaps(car, at) {
		if len(f.subjects) == 0 {
			written.NewGaps = append(written.NewGaps, jsonRow{f.clause.Number, ""})
		}
		for _, subject := range f.subjects {
			written.NewGaps = append(written.NewGaps, jsonRow{f.clause.Number, subject.Name})
		}
	}
	for _, chapter := range e.Whole.Chapters {
		for _, clause := range chapter.Clauses {
			if !clause.Remark {
				written.Verdicts = append(written.Verdicts, jsonVerdict{clause.Clause.Number, clause.Verdict.String()})
			}
			if clause.Verdict > engine.ByEye || clause.Verdict == engine.UnderDispensation {
				written.Clauses = append(written.Clauses, jsonClauseOf(clause))
			}
		}
	}
	return written
}

// jsonParts are alike parts, one by one.
func (s *Season) jsonParts(group alike) []jsonDated {
	var parts []jsonDated
	for _, thing := range group.things() {
		parts = append(parts, s.jsonPart(thing))
	}
	return parts
}

func (s *Season) jsonPart(d datedThing) jsonDated {
	written := jsonDated{
		Part: d.Name, Person: personOf(d.Part), Cars: []string{}, Renewal: renewalWord(d.Renewal),
		Over: d.IsOver, Uncertain: d.Uncertain, Clause: jsonEndingOf(d.Clause), Limit: d.Limit,
		LeadDays: s.Result.Season.LeadOf(d.Part.Type), Spans: []jsonSpan{}, Place: jsonPlaceOf(d.Part.Range),
	}
	for _, car := range d.cars {
		written.Cars = append(written.Cars, car.Name)
	}
	if d.Particular != nil {
		written.Particular = d.Particular.Name
	}
	if d.HasLastDay {
		written.LastDay = d.LastDay.String()
	}
	if d.Missed != nil {
		written.Missed = d.Missed.Name
	}
	if d.AsEntered != nil {
		written.AsEntered = d.AsEntered.Name
	}
	if d.HasOrderBy {
		written.OrderBy = d.OrderBy.String()
	}
	written.Earliest, written.Latest = d.NextDate(), d.NextUntil()
	written.AnewFrom, written.AnewUntil = d.AnewFrom, d.AnewUntil
	if d.EarliestOf != nil {
		written.EarliestOf = d.EarliestOf.Name
	}
	for _, span := range d.Spans {
		one := jsonSpan{From: span.From.String(), Until: span.Until.String(), Verdict: span.Verdict.String()}
		if span.Clause != nil {
			one.Clause = span.Clause.Number
		}
		written.Spans = append(written.Spans, one)
	}
	return written
}

func jsonEndingOf(clause *rules.Clause) *jsonEnding {
	if clause == nil {
		return nil
	}
	return &jsonEnding{clause.Number, clause.Title, concernWord(clause.Concern), clause.Page, jsonPlaceOf(clause.Range)}
}

// renewalWord is the word for how a part is made good.
func renewalWord(renewal engine.Renewal) string {
	switch renewal {
	case engine.Service:
		return "service"
	case engine.Renew:
		return "renew"
	case engine.PutRight:
		return "put right"
	case engine.Reinspect:
		return "re-inspect or replace"
	}
	return "replace"
}
