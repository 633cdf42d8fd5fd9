package main

import (
	"runtime"

	"github.com/spf13/cobra"

	"gapsheet/engine"
	"gapsheet/report"
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// formulaSource is the name that messages give a formula of the command line.
const formulaSource = "formula"

// trial is the flags of the try command.
type trial struct {
	asked
	sheet string
	let   []string
	unit  string
	lines bool
}

func (a *app) tryCommand() *cobra.Command {
	var flags trial
	command := &cobra.Command{
		Use:   "try FORMULA | --lines",
		Short: "Work out one formula, or many as JSON lines",
		Long: `Works out a formula and shows what it came to and how. It reads the names given with
--let, and the particulars of a car: those of --sheet, else nothing is recorded.
Tolerances count in full. It exits with 0 when the formula could be worked out,
whatever it came to.

With --lines, formulas are read from standard input, one JSON object a line, and
each is answered with one line, in order. A line that cannot be worked out is
answered with an error, the run goes on, and the exit code is 0 all the same; look
at the answers. All of it is set out in the project's cmd/gapsheet/LINES.md.

An object holds formula, and as need be id (given back), let (values by name) and
unit (for the answer). A value is true or false, a number, a text, a list, or one
of these objects:
  {"low": 1.2, "high": 1.4, "unit": "mm"}   a range; an end that is left out, null,
                                            "-inf" or "inf" has no bound
  {"value": 1.3, "unit": "mm"}              a figure
  {"figure": "1.3 mm +/- 0.1 mm"}           a figure as a sheet has it
  {"date": "2024-02-29"}                    a day, month or year
  {"from": "2024-02-29", "to": "2024-03-02"}
  {"missing": "length"}                     not known: truth, date, text, length …`,
		Example: `  gapsheet try 'x >= 44.45*mm' --let 'x=1.75 in'
  gapsheet try 'car.weighed_mass >= 1000*kg' --sheet tessel16 --rulebook rulebook
  echo '{"id": 1, "formula": "x >= 44.45*mm", "let": {"x": {"value": 1.75, "unit": "in"}}}' | gapsheet try --lines`,
		RunE: func(command *cobra.Command, arguments []string) error {
			if flags.lines {
				if err := wantArguments(0, 0, "no FORMULA beside --lines")(command, arguments); err != nil {
					return err
				}
				return a.tryLines(flags)
			}
			if err := wantArguments(1, 1, "one FORMULA in quotes, or --lines")(command, arguments); err != nil {
				return err
			}
			return a.try(arguments[0], flags)
		},
	}
	flags.rulebookFlag(command)
	flags.dayFlag(command)
	flags.papersFlag(command)
	command.Flags().StringVar(&flags.sheet, "sheet", "", "`SHEET` whose particulars the formula reads")
	command.Flags().StringArrayVar(&flags.let, "let", nil,
		"`NAME=VALUE` for the formula: a figure, date, text, true, false, or 'missing length'; several with the flag repeated")
	command.Flags().StringVar(&flags.unit, "unit", "", "`UNIT` in which to give the answer")
	command.Flags().BoolVar(&flags.lines, "lines", false, "read formulas from standard input, one JSON object a line, and answer each with one")
	return command
}

func (a *app) try(formula string, flags trial) error {
	request, today, err := flags.request(a.now)
	if err != nil {
		return err
	}
	given, err := letsOf(flags.let)
	if err != nil {
		return err
	}
	var files shelf
	place, err := files.trialPlace(flags, request.Day)
	if err != nil {
		return err
	}
	files.text(formulaSource, []byte(formula))
	tree, found := rules.Check(formula, nil, engine.Scope(place.scope, given), rules.Type{})
	files.add(found)
	if err := files.faults(); err != nil {
		return err
	}
	if err := a.remarks(&files); err != nil {
		return err
	}
	answer, working, err := place.bench.Try(tree, formula, given, true)
	if err != nil {
		return wrong("It cannot be worked out: %v.", err)
	}
	if flags.unit != "" {
		if answer.Unit, err = unitFor(flags.unit, answer); err != nil {
			return err
		}
	}
	head := report.Head{Book: place.book, Sheet: place.sheet, Day: request.Day, DayIsToday: today}
	return report.WriteTry(a.screen(), head, formula, answer, working)
}

func (a *app) tryLines(flags trial) error {
	if len(flags.let) > 0 || flags.unit != "" {
		return wrong("--let and --unit go with a FORMULA; with --lines each line has its own let and unit.")
	}
	request, _, err := flags.request(a.now)
	if err != nil {
		return err
	}
	worker := &lineWorker{bench: engine.EmptyBench(request.Day), scope: engine.EmptyScope()}
	if flags.sheet != "" || len(flags.books) > 0 {
		var files shelf
		place, err := files.trialPlace(flags, request.Day)
		if err != nil {
			return err
		}
		if err := a.remarks(&files); err != nil {
			return err
		}
		worker = &lineWorker{bench: place.bench, scope: place.scope}
	}
	workers := make([]answerer, runtime.GOMAXPROCS(0))
	for i := range workers {
		workers[i] = worker
	}
	return answerLines(a.stdin, a.stdout, workers)
}

// trialPlace is where formulas are tried: a rulebook's names and a car's particulars.
type trialPlace struct {
	book  *rules.Rulebook // nil when none was named
	sheet *vehicle.Sheet  // nil when none was named
	scope *rules.Scope
	bench *engine.Bench
}

// trialPlace reads the rulebook and the sheet that were named. Without a rulebook there are
// the particulars every sheet can have; without a sheet none of them is recorded.
func (s *shelf) trialPlace(flags trial, day quantity.Day) (*trialPlace, error) {
	if len(flags.books) > 1 {
		return nil, wrong("try works with one rulebook; found %d.", len(flags.books))
	}
	books, err := s.loadBooks(flags.books)
	if err != nil {
		return nil, err
	}
	var place trialPlace
	book := &rules.Rulebook{Vocabulary: vehicle.BuiltIn()}
	if len(books) > 0 {
		book, place.book = books[0], books[0]
	}
	sheet, err := s.trialSheet(flags, book.Vocabulary)
	if err != nil {
		return nil, err
	}
	if flags.sheet != "" {
		place.sheet = sheet
	}
	programs, err := s.compile([]*rules.Rulebook{book})
	if err != nil {
		return nil, err
	}
	place.scope = rules.NewScope(book.Vocabulary, book.Tables...).WithTerms(book.Terms...)
	place.bench = engine.NewBench(programs[0], programs[0].Car(sheet), day)
	return &place, nil
}

// trialSheet reads the sheet that was named, else makes one that says nothing.
func (s *shelf) trialSheet(flags trial, v *vehicle.Vocabulary) (*vehicle.Sheet, error) {
	if flags.sheet == "" {
		source, found := vehicle.ParseSource("nothing", nil)
		s.add(found)
		if err := s.faults(); err != nil {
			return nil, err
		}
		sheet, found := vehicle.DecodeScrap(source, source.Body, v)
		s.add(found)
		return sheet, s.faults()
	}
	options, err := s.papers(flags.papers)
	if err != nil {
		return nil, err
	}
	o, err := s.open(flags.sheet, "build sheet")
	if err != nil {
		return nil, err
	}
	sheet := s.loadSheet(o, v, options)
	return sheet, s.faults()
}
