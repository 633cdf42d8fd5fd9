package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

// seasonBook is a rulebook of a season's run, with what is read in its words: every edition
// has a vocabulary of its own.
type seasonBook struct {
	book    *rules.Rulebook
	program *engine.Program
	named   []string // paths by which --rulebook named it
	season  *vehicle.Season
	sheets  []*vehicle.Sheet // in the order of the command line
}

// bookGroup is the editions of one rulebook that are given together.
type bookGroup []*seasonBook

// seasonBooks are the rulebooks of a run, by --rulebook first and then as the events name
// them, each once.
type seasonBooks struct {
	all     []*seasonBook
	groups  []bookGroup
	byPath  map[string]*seasonBook
	missing hcl.Diagnostics // rulebooks that events name and that are not there
}

// loadSeasonBooks reads every rulebook that a season needs. All faults of all of them are
// reported in one run; those that are missing are left for the faults of the season.
func (s *shelf) loadSeasonBooks(named []string, folder string, paths []vehicle.RulebookPath) (*seasonBooks, error) {
	b := &seasonBooks{byPath: map[string]*seasonBook{}}
	for _, name := range named {
		if err := b.load(s, name); err != nil {
			return nil, err
		}
		if book := b.byPath[filepath.Clean(name)]; book != nil {
			book.named = append(book.named, name)
		}
	}
	for _, one := range paths {
		if fault := missingBook(folder, one); fault != nil {
			b.missing = append(b.missing, fault)
		} else if err := b.load(s, filepath.Join(folder, filepath.FromSlash(one.Path))); err != nil {
			return nil, err
		}
	}
	if err := s.faults(); err != nil {
		return nil, err
	}
	for _, book := range b.all {
		program, found := engine.Compile(book.book)
		s.add(found)
		book.program = program
	}
	b.group(s)
	return b, s.faults()
}

// load reads a rulebook, unless it has been read under that path or under another.
func (b *seasonBooks) load(s *shelf, named string) error {
	clean := filepath.Clean(named)
	if _, known := b.byPath[clean]; known {
		return nil
	}
	b.byPath[clean] = nil
	o, err := s.open(named, "rulebook")
	if err != nil {
		return err
	}
	book, found := rules.Load(o.files, o.name, o.shown, vehicle.BuiltIn())
	s.add(found)
	if book == nil || found.HasErrors() {
		return nil
	}
	at := slices.IndexFunc(b.all, func(other *seasonBook) bool { return other.book.Hash == book.Hash })
	if at < 0 {
		at = len(b.all)
		b.all = append(b.all, &seasonBook{book: book})
	}
	b.byPath[clean] = b.all[at]
	return nil
}

// missingBook reports a rulebook of an event that is not where the event says. Symbolic
// links do not lead to one that lies further off than the path may.
func missingBook(folder string, one vehicle.RulebookPath) *hcl.Diagnostic {
	reason := "there is no file or folder of that name"
	if whole, err := filepath.Abs(folder); err == nil {
		top := filepath.Dir(filepath.Dir(whole)) // the furthest that a path can lead up
		if root, err := os.OpenRoot(top); err == nil {
			defer root.Close()
			inside, err := filepath.Rel(top, filepath.Join(whole, filepath.FromSlash(one.Path)))
			if err == nil {
				_, err = root.Stat(inside)
			}
			if err == nil {
				return nil
			}
			if _, there := os.Stat(filepath.Join(top, inside)); there == nil {
				reason = "what is there lies outside the folders around the season"
			}
		}
	}
	return vehicle.Fault("rulebook-missing", one.Range, "No rulebook there", fmt.Sprintf(
		"Found %s as rulebook of the event %s, but %s. Write the path as seen from the season's folder, or leave the line out and name the rulebook with --rulebook.",
		vehicle.Quote(one.Path), vehicle.Quote(one.Event), reason))
}

// group puts editions of one name together. Two that begin on one day are a fault.
func (b *seasonBooks) group(s *shelf) {
	for _, book := range b.all {
		at := slices.IndexFunc(b.groups, func(g bookGroup) bool { return g.isOf(book) })
		if at < 0 {
			b.groups = append(b.groups, bookGroup{book})
			continue
		}
		for _, other := range b.groups[at] {
			if other.book.Period.From == book.book.Period.From {
				s.add(hcl.Diagnostics{vehicle.Fault("editions-alike", book.book.Range, "Two editions from one day", fmt.Sprintf(
					"Found %s, which is in force %s, and another edition at %s that begins on the same day. Write in_force in each, or give one of the two.",
					editionWords(book.book), book.book.Period, vehicle.PlaceText(other.book.Range)))})
			}
		}
		b.groups[at] = append(b.groups[at], book)
	}
}

// isOf reports whether a book is another edition of the group's.
func (g bookGroup) isOf(book *seasonBook) bool {
	return vehicle.FoldText(g[0].book.Name) == vehicle.FoldText(book.book.Name)
}

// ofEvent is the rulebook that an event runs under: the one it names, else the one that was
// given. That there is none, or that it could be one of several, is a fault.
func (b *seasonBooks) ofEvent(e *vehicle.Event, folder string) (bookGroup, *hcl.Diagnostic) {
	if e.Rulebook != "" {
		book := b.byPath[filepath.Join(folder, filepath.FromSlash(e.Rulebook))]
		at := slices.IndexFunc(b.groups, func(g bookGroup) bool { return slices.Contains(g, book) })
		return b.groups[at], nil
	}
	var given []bookGroup
	var names []string
	for _, g := range b.groups {
		if slices.ContainsFunc(g, func(book *seasonBook) bool { return len(book.named) > 0 }) {
			given = append(given, g)
			names = append(names, vehicle.Quote(g[0].book.Name))
		}
	}
	switch len(given) {
	case 1:
		return given[0], nil
	case 0:
		return nil, vehicle.Fault("rulebook-missing", e.Range, "No rulebook for an event", fmt.Sprintf(
			"The event %s names no rulebook, and none was given. Name the club's file or folder with --rulebook, or write rulebook = \"PATH\" in the event.", vehicle.Quote(e.Name)))
	}
	return nil, vehicle.Fault("rulebook-unclear", e.Range, "Which rulebook", fmt.Sprintf(
		"The event %s names no rulebook, and --rulebook gave %s. They are not editions of one. Write rulebook = \"PATH\" in the event, or give one of them.",
		vehicle.Quote(e.Name), strings.Join(names, " and ")))
}

// editionWords names a rulebook with its edition.
func editionWords(book *rules.Rulebook) string {
	if book.Edition == "" {
		return book.Name
	}
	return book.Name + ", edition " + book.Edition
}
