package report

import (
	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// Precheck is all that one run has to tell: every sheet against every rulebook.
type Precheck struct {
	Version    string // of this program, passed in
	Day        quantity.Day
	DayIsToday bool
	Stage      vehicle.Stage
	Only       []string
	All        bool             // also what meets and what does not apply
	Results    []*engine.Result // by sheet and then by rulebook, as they were named
}

// Format is one form in which the results of a precheck can be written.
type Format struct {
	Name  string // as given to --format
	Help  string
	Whole bool // tells of every clause, whatever is asked to be shown
	Write func(screen *Screen, run *Precheck) error
}

// Formats lists the forms, the usual one first. A new form is one file and one line here.
func Formats() []Format {
	return []Format{
		{"terminal", "for reading on a screen", false, WriteTerminal},
		{"json", "for other programs, every clause with its subjects", true, WriteJSON},
	}
}

// FormatNamed finds a format by its name.
func FormatNamed(name string) (Format, bool) {
	for _, format := range Formats() {
		if format.Name == name {
			return format, true
		}
	}
	return Format{}, false
}

// forAPerson counts what only a person can judge: each clause once for what is to be
// looked at, advice included as it stands on the same list, and the papers of the car.
func forAPerson(result *engine.Result) int {
	count := len(findingsOf(result, engine.ByEye, counts)) + len(findingsOf(result, engine.ByEye, advice))
	for _, paper := range papersOf(result) {
		if paper.Verdict == engine.ByEye {
			count++
		}
	}
	return count
}

// headOf is the head over one result of a run.
func (run *Precheck) headOf(result *engine.Result) Head {
	return Head{
		Book: result.Book, Sheet: result.Sheet,
		Day: run.Day, DayIsToday: run.DayIsToday,
		Stage: run.Stage, Only: run.Only,
	}
}

// numbersWidth is how wide the column of clause numbers has to be, at most an eighth of
// the page; a longer number pushes its own line.
func numbersWidth(book *rules.Rulebook, pageWidth int) int {
	widest := 0
	for _, chapter := range book.Chapters {
		for _, clause := range chapter.Clauses {
			widest = max(widest, Width(Safe(clause.Number)))
		}
	}
	return min(widest, pageWidth/8) + 2
}
