package main

import (
	"fmt"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"gapsheet/engine"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// asked is the flags that say what is checked, shared by the commands.
type asked struct {
	books  []string
	day    string
	stage  string
	only   []string
	papers string
}

func (f *asked) rulebookFlag(command *cobra.Command) {
	command.Flags().StringArrayVar(&f.books, "rulebook", nil,
		"`RULEBOOK` to work with, a file or a folder; several, each worked apart, with the flag repeated")
}

// editionsFlag is rulebookFlag for what puts editions of one rulebook together.
func (f *asked) editionsFlag(command *cobra.Command) {
	command.Flags().StringArrayVar(&f.books, "rulebook", nil,
		"`RULEBOOK` to work with, a file or a folder; several with the flag repeated: of editions of one name the one in force on the day counts, those of different names are worked apart")
}

func (f *asked) dayFlag(command *cobra.Command) {
	command.Flags().StringVar(&f.day, "on", "", "`DAY` of the check, such as 2027-03-14; today when none is named")
}

func (f *asked) stageFlag(command *cobra.Command) {
	command.Flags().StringVar(&f.stage, "stage", "",
		"`STAGE` of the build: what is not due by then is counted, not shown ("+strings.Join(stageWords(), ", ")+")")
	completeWords(command, "stage", stageWords)
}

func (f *asked) onlyFlag(command *cobra.Command) {
	command.Flags().StringArrayVar(&f.only, "only", nil,
		"`NUMBER` of the chapter or clause to check with all below it; several with the flag repeated")
}

func (f *asked) papersFlag(command *cobra.Command) {
	command.Flags().StringVar(&f.papers, "papers", "", "`FOLDER` in which papers are looked for besides the sheet's own")
}

// wantBooks reports that no rulebook was named.
func (f *asked) wantBooks() error {
	if len(f.books) > 0 {
		return nil
	}
	return wrong("No rulebook was named. Name the club's file or folder: --rulebook saltmarsh/rulebook.")
}

// request reads the flags. today tells that no day was named.
func (f *asked) request(now func() time.Time) (request engine.Request, today bool, err error) {
	if request.Day, today, err = f.dayOf(now); err != nil {
		return request, false, err
	}
	if request.Stage, err = stageNamed(f.stage); err != nil {
		return request, false, err
	}
	request.Only = f.only
	return request, today, nil
}

// dayOf is the day of the check: the one named, else today by the local clock.
func (f *asked) dayOf(now func() time.Time) (day quantity.Day, today bool, err error) {
	if f.day == "" {
		year, month, date := now().Date()
		day, ok := quantity.CivilDay(year, int(month), date)
		if !ok {
			return 0, false, wrong("This machine's clock shows the year %d. Name the day of the check: --on 2027-03-14.", year)
		}
		return day, true, nil
	}
	days, fault := quantity.ParseDays(f.day)
	if fault != nil {
		return 0, false, wrong("--on cannot be %q. %s %s", f.day, fault.Found, fault.Advice)
	}
	if days.Precision != quantity.ToDay {
		return 0, false, wrong("--on wants one day, and %q is a longer time. Write it as %s.", f.day, days.From)
	}
	return days.From, false, nil
}

func stages() []vehicle.Stage {
	return []vehicle.Stage{
		vehicle.StageBeforeCutting, vehicle.StageBareShell, vehicle.StageBeforePaint,
		vehicle.StageBeforeTrim, vehicle.StageBeforeEvent,
	}
}

func stageWords() []string {
	var words []string
	for _, stage := range stages() {
		words = append(words, stage.String())
	}
	return words
}

func stageNamed(word string) (vehicle.Stage, error) {
	if word == "" {
		return vehicle.StageUnset, nil
	}
	for _, stage := range stages() {
		if vehicle.FoldText(word) == stage.String() {
			return stage, nil
		}
	}
	return vehicle.StageUnset, wrong("There is no stage %q.%s The stages are: %s.",
		word, didYouMean(vehicle.FoldText(word), stageWords(), ""), strings.Join(stageWords(), ", "))
}

// codeOf is the exit code for results: the worst of them decides.
func codeOf(results []*engine.Result) int {
	worst := engine.DoesNotApply
	for _, result := range results {
		worst = worst.Worse(result.Worst)
	}
	switch worst {
	case engine.Gap:
		return exitGap
	case engine.NotRecorded, engine.Marginal:
		return exitOpen
	case engine.ByEye, engine.UnderDispensation, engine.Meets, engine.DoesNotApply:
		return exitMeets
	}
	panic(fmt.Sprintf("a verdict without an exit code: %d", worst))
}
