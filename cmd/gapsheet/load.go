package main

import (
	"io/fs"
	"path"
	"path/filepath"

	"gapsheet/engine"
	"gapsheet/report"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

// loadBooks reads rulebooks, each apart from the others: a book's own particulars and
// classes mean nothing in another. All faults of all of them are reported in one run.
func (s *shelf) loadBooks(named []string) ([]*rules.Rulebook, error) {
	var books []*rules.Rulebook
	for _, name := range named {
		o, err := s.open(name, "rulebook")
		if err != nil {
			return nil, err
		}
		book, found := rules.Load(o.files, o.name, o.shown, vehicle.BuiltIn())
		s.add(found)
		books = append(books, book)
	}
	return books, s.faults()
}

// papers opens the extra folder of evidence files, if one was named.
func (s *shelf) papers(named string) (vehicle.Options, error) {
	if named == "" {
		return vehicle.Options{}, nil
	}
	o, err := s.open(named, "papers")
	if err != nil {
		return vehicle.Options{}, err
	}
	info, err := fs.Stat(o.files, o.name)
	if err != nil || !info.IsDir() {
		return vehicle.Options{}, wrong("--papers wants the folder with the papers; %q is none.", filepath.ToSlash(named))
	}
	return vehicle.Options{Papers: o.files, PapersShown: path.Clean(o.shown)}, nil
}

// loadSheet reads a sheet in the words of one rulebook. Faults are noted on the shelf, so
// that those of several sheets are told together; the sheet is nil then.
func (s *shelf) loadSheet(o *opened, v *vehicle.Vocabulary, options vehicle.Options) *vehicle.Sheet {
	sheet, found := vehicle.Load(o.files, o.name, o.shown, v, options)
	s.add(found)
	if found.HasErrors() {
		return nil
	}
	return sheet
}

// conditions checks the formulas of a sheet's papers against a rulebook. Faults are noted on
// the shelf; it reports whether there was none.
func (s *shelf) conditions(program *engine.Program, sheet *vehicle.Sheet) bool {
	found := program.Papers(sheet)
	s.add(found)
	return !found.HasErrors()
}

// compile makes rulebooks ready to be worked.
func (s *shelf) compile(books []*rules.Rulebook) ([]*engine.Program, error) {
	var programs []*engine.Program
	for _, book := range books {
		program, found := engine.Compile(book)
		s.add(found)
		programs = append(programs, program)
	}
	return programs, s.faults()
}

// remarks writes what was found besides faults, such as a paper that is not in its place.
func (a *app) remarks(s *shelf) error {
	if len(s.found) == 0 {
		return nil
	}
	return report.Diagnostics(a.faultScreen(), s.found, s.file)
}
