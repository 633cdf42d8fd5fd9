package main

import (
	"github.com/spf13/cobra"

	"gapsheet/engine"
	"gapsheet/report"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

func (a *app) cageCommand() *cobra.Command {
	var flags asked
	var outputs cageOutputs
	command := &cobra.Command{
		Use:   "cage SHEET",
		Short: "Look a cage over, and write its cut list, notch templates and drawing",
		Long: `Takes the cage of a build sheet as it is read and says what cannot be built as it is
written: joints that nothing holds, tubes that end in the air, tubes written twice,
bends that do not fit or that the die cannot make, ends that no notch fits; then
what has no place yet and why, and mass, length and bars by stock.

With files named, it writes what a shop works from: a cut list with bend schedule
and bars as CSV, wrap-round notch templates at 1:1 as PDF, a drawing as SVG. Either
all of them are written or none. With a rulebook the drawing shows its verdicts.

Exit codes: 0 nothing found, 1 something that cannot be built as written, 2 nothing
of that, but something without a place or not recorded, 3 what was given is wrong.
What the rulebook says has no part in it; gapsheet precheck tells that.`,
		Example: `  gapsheet cage tessel16
  gapsheet cage tessel16 --cut-list cut.csv --templates notches.pdf --paper A4
  gapsheet cage tessel16 --rulebook rulebook --on 2027-03-14 --draw cage.svg`,
		Args: wantArguments(1, 1, "one build SHEET"),
		RunE: func(command *cobra.Command, arguments []string) error {
			if err := checkCageFlags(command, flags); err != nil {
				return err
			}
			return a.cage(arguments[0], flags, outputs)
		},
	}
	flags.rulebookFlag(command)
	flags.dayFlag(command)
	flags.stageFlag(command)
	flags.papersFlag(command)
	outputs.flags(command)
	return command
}

// checkCageFlags refuses flags that would do nothing, and a second rulebook: a drawing shows
// the verdicts of one.
func checkCageFlags(command *cobra.Command, flags asked) error {
	if len(flags.books) > 1 {
		return wrong("cage works with one rulebook at a time; found %d. Name one.", len(flags.books))
	}
	for _, name := range []string{"on", "stage"} {
		if command.Flags().Changed(name) && len(flags.books) == 0 {
			return wrong("--%s is about a check, and no rulebook was named. Name the club's file or folder too: --rulebook saltmarsh/rulebook.", name)
		}
	}
	if command.Flags().Changed("paper") && !command.Flags().Changed("templates") {
		return wrong("--paper is about the templates. Name their file too: --templates notches.pdf.")
	}
	return nil
}

func (a *app) cage(sheetName string, flags asked, outputs cageOutputs) error {
	if err := outputs.check(); err != nil {
		return err
	}
	request, today, err := flags.request(a.now)
	if err != nil {
		return err
	}
	var files shelf
	book, program, err := files.oneBook(flags.books)
	if err != nil {
		return err
	}
	sheet, err := files.oneSheet(sheetName, book, flags.papers)
	if err != nil {
		return err
	}
	if program != nil && !files.conditions(program, sheet) {
		return files.faults()
	}
	cage := &report.Cage{
		Head: report.CageHeadOf(sheet, book, programVersion()), Frame: sheet.Frame(),
		Day: request.Day, DayIsToday: today,
	}
	cage.Findings = cage.Frame.FindingsOnce()
	if program != nil {
		cage.Result = program.Check(program.Car(sheet), request)
	}
	if cage.Written, err = outputs.write(cage); err != nil {
		return err
	}
	if err := a.remarks(&files); err != nil {
		return err
	}
	a.code = cageCode(cage.Findings)
	return report.WriteCage(a.screen(), cage)
}

// oneBook reads the rulebook that was named and compiles it; nil where none was.
func (s *shelf) oneBook(named []string) (*rules.Rulebook, *engine.Program, error) {
	books, err := s.loadBooks(named)
	if err != nil || len(books) == 0 {
		return nil, nil, err
	}
	programs, err := s.compile(books)
	if err != nil {
		return nil, nil, err
	}
	return books[0], programs[0], nil
}

// oneSheet reads a sheet, in the words of the rulebook where there is one.
func (s *shelf) oneSheet(named string, book *rules.Rulebook, papers string) (*vehicle.Sheet, error) {
	options, err := s.papers(papers)
	if err != nil {
		return nil, err
	}
	o, err := s.open(named, "build sheet")
	if err != nil {
		return nil, err
	}
	vocabulary := vehicle.BuiltIn()
	if book != nil {
		vocabulary = book.Vocabulary
	}
	sheet := s.loadSheet(o, vocabulary, options)
	return sheet, s.faults()
}

// cageCode is the exit code for findings: the heaviest decides.
func cageCode(findings []vehicle.FrameFinding) int {
	code := exitMeets
	for _, found := range findings {
		switch {
		case found.Weight == vehicle.CannotBeBuilt:
			return exitGap
		case found.Weight == vehicle.StillOpen:
			code = exitOpen
		}
	}
	return code
}
