package main

import (
	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// loadEditions reads the rulebooks that were named, each once, and puts the editions of one
// name together, as for a season. Books of different names stay apart: a book's own
// particulars and classes mean nothing in another.
func (s *shelf) loadEditions(named []string) ([]bookGroup, error) {
	books, err := s.loadSeasonBooks(named, "", nil)
	if err != nil {
		return nil, err
	}
	return books.groups, nil
}

// on is the edition by which a day is judged.
func (g bookGroup) on(day quantity.Day) *rules.Rulebook {
	var editions []engine.Edition
	for _, book := range g {
		editions = append(editions, engine.Edition{Program: book.program})
	}
	return engine.NewEditions(editions...).On(day).Program.Book
}

// booksOn are the editions by which a day is judged, one of each rulebook.
func booksOn(groups []bookGroup, day quantity.Day) []*rules.Rulebook {
	var books []*rules.Rulebook
	for _, group := range groups {
		books = append(books, group.on(day))
	}
	return books
}

// allBooks are the editions of all rulebooks.
func allBooks(groups []bookGroup) []*rules.Rulebook {
	var books []*rules.Rulebook
	for _, group := range groups {
		for _, book := range group {
			books = append(books, book.book)
		}
	}
	return books
}

// layOut reads a sheet in the words of every edition and lays the car out for it. Faults are
// noted on the shelf; it returns nil where there was one.
func (s *shelf) layOut(o *opened, group bookGroup, options vehicle.Options) engine.Editions {
	var editions []engine.Edition
	for _, book := range group {
		if sheet := s.loadSheet(o, book.book.Vocabulary, options); sheet != nil && s.conditions(book.program, sheet) {
			editions = append(editions, engine.Edition{Program: book.program, Car: book.program.Car(sheet)})
		}
	}
	if len(editions) < len(group) {
		return nil
	}
	return engine.NewEditions(editions...)
}

// checks holds each sheet against each rulebook, sheets first as they were named. Of several
// editions the one that is in force on the day decides.
func (s *shelf) checks(sheets []string, groups []bookGroup, papers string, request engine.Request) ([]*engine.Result, error) {
	options, err := s.papers(papers)
	if err != nil {
		return nil, err
	}
	var results []*engine.Result
	for _, name := range sheets {
		o, err := s.open(name, "build sheet")
		if err != nil {
			return nil, err
		}
		for _, group := range groups {
			if editions := s.layOut(o, group, options); editions != nil {
				results = append(results, editions.Check(request))
			}
		}
	}
	return results, s.faults()
}
