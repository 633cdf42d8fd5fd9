package main

import (
	"path/filepath"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/engine"
	"gapsheet/vehicle"
)

// seasonLoad is what a season's run has read.
type seasonLoad struct {
	season  *vehicle.Season // in the words of the first rulebook; its events are those of the run
	sheets  []string
	groups  []bookGroup // by event
	books   *seasonBooks
	entered map[entryKey]engine.Editions
}

// entryKey is how a sheet is entered: under which rulebook, with which crew, in which class.
// Entries that are alike share their cars.
type entryKey struct {
	sheet       int
	rulebook    *seasonBook // its first edition
	class, crew string
}

// loadSeason reads the season, the rulebooks that it needs, and the sheets. All faults of
// each are reported in one run.
func (s *shelf) loadSeason(sheets []string, flags seasonAsked) (*seasonLoad, error) {
	o, err := s.open(flags.season, "season")
	if err != nil {
		return nil, err
	}
	folder := filepath.Dir(flags.season)
	if o.name == "." {
		folder = flags.season
	}
	crew, err := s.crewSources(flags.crew)
	if err != nil {
		return nil, err
	}
	books, err := s.loadSeasonBooks(flags.books, folder, vehicle.SeasonRulebooks(o.files, o.name, o.shown))
	if err != nil {
		return nil, err
	}
	s.add(books.missing)
	read := func(v *vehicle.Vocabulary) *vehicle.Season {
		season, found := vehicle.LoadSeason(o.files, o.name, o.shown, crew, v)
		s.add(found)
		return season
	}
	for _, book := range books.all {
		book.season = read(book.book.Vocabulary)
	}
	if len(books.all) == 0 && len(books.missing) == 0 {
		read(vehicle.BuiltIn()) // so that its faults are told before that of the command line
	}
	if err := s.faults(); err != nil {
		return nil, err
	}
	if len(books.all) == 0 {
		return nil, flags.wantBooks()
	}
	l := &seasonLoad{season: books.all[0].season, sheets: sheets, books: books, entered: map[entryKey]engine.Editions{}}
	if err := l.chooseBooks(s, folder); err != nil {
		return nil, err
	}
	return l, l.readSheets(s, flags.papers)
}

// crewSources reads further files of crew.
func (s *shelf) crewSources(named []string) ([]*vehicle.Source, error) {
	var all []*vehicle.Source
	for _, name := range named {
		o, err := s.open(name, "crew")
		if err != nil {
			return nil, err
		}
		sources, found := vehicle.ReadSources(o.files, o.name, o.shown, "crew")
		s.add(found)
		all = append(all, sources...)
	}
	return all, s.faults()
}

// chooseBooks finds the rulebook of every event, and holds the event's class against it.
func (l *seasonLoad) chooseBooks(s *shelf, folder string) error {
	for _, event := range l.season.Events {
		group, fault := l.books.ofEvent(event, folder)
		if fault != nil {
			s.add(hcl.Diagnostics{fault})
			continue
		}
		l.groups = append(l.groups, group)
		for _, book := range group {
			if fault := event.ClassFault(book.book.Vocabulary, editionWords(book.book)); fault != nil {
				s.add(hcl.Diagnostics{fault})
			}
		}
	}
	if err := s.faults(); err != nil {
		return err
	}
	for _, group := range l.books.groups {
		if !slices.ContainsFunc(l.groups, func(g bookGroup) bool { return g.isOf(group[0]) }) {
			return wrong("No event of the season runs under %q, which --rulebook gave as %q. Leave it out, or name it in an event: rulebook = \"PATH\".",
				group[0].book.Name, filepath.ToSlash(group[0].named[0]))
		}
	}
	return nil
}

// readSheets reads every sheet in the words of every edition.
func (l *seasonLoad) readSheets(s *shelf, papers string) error {
	options, err := s.papers(papers)
	if err != nil {
		return err
	}
	for _, name := range l.sheets {
		o, err := s.open(name, "build sheet")
		if err != nil {
			return err
		}
		for _, book := range l.books.all {
			options.ClassGiven = l.givesClasses(book)
			sheet := s.loadSheet(o, book.book.Vocabulary, options)
			if sheet != nil {
				s.add(book.season.Strangers(sheet))
				s.conditions(book.program, sheet)
			}
			book.sheets = append(book.sheets, sheet)
		}
	}
	return s.faults()
}

// givesClasses reports whether every event under a rulebook says the class. Then the one of
// the sheet may be none of that rulebook's.
func (l *seasonLoad) givesClasses(book *seasonBook) bool {
	for i, event := range l.season.Events {
		if event.Class == "" && l.groups[i].isOf(book) {
			return false
		}
	}
	return true
}

// cars enters every car at every event.
func (l *seasonLoad) cars() []engine.CarEntries {
	var cars []engine.CarEntries
	for i := range l.sheets {
		car := engine.CarEntries{Sheet: l.books.all[0].sheets[i]}
		for j, event := range l.season.Events {
			car.Entries = append(car.Entries, engine.Entry{Event: event, Editions: l.enter(i, l.groups[j], event)})
		}
		cars = append(cars, car)
	}
	return cars
}

// enter lays a sheet out as it is entered at an event, for every edition of its rulebook.
func (l *seasonLoad) enter(sheet int, group bookGroup, event *vehicle.Event) engine.Editions {
	key := entryKey{sheet, group[0], vehicle.FoldText(event.Class), strings.Join(event.Crew, "\n")}
	if known := l.entered[key]; known != nil {
		return known
	}
	var editions []engine.Edition
	for _, book := range group {
		car := book.program.Car(book.sheets[sheet].WithCrew(book.season, event.Crew).WithClass(event.Class))
		editions = append(editions, engine.Edition{Program: book.program, Car: car})
	}
	l.entered[key] = engine.NewEditions(editions...)
	return l.entered[key]
}

// inputs lists every file that was read, none of which is written over.
func (l *seasonLoad) inputs() []input {
	read := inputs(l.season.Sources, "the season")
	for _, person := range l.season.People {
		read = withPapers(read, person.Gear, "the season")
	}
	for _, sheet := range l.books.all[0].sheets {
		read = append(read, filesOf(sheet)...)
	}
	return read
}
