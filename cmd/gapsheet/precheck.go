package main

import (
	"strings"

	"github.com/spf13/cobra"

	"gapsheet/report"
)

func (a *app) precheckCommand() *cobra.Command {
	var flags asked
	var all bool
	var format string
	command := &cobra.Command{
		Use:   "precheck SHEET... --rulebook RULEBOOK",
		Short: "Say clause by clause where a car falls short of a rulebook",
		Long: `Holds build sheets against rulebooks. Shown first are the gaps, each with the
reading against its limit and with what puts it right; then what has not been
written down, with how to measure it; then what cannot be proved with the
measurement there is; then a list to tick for what only a person can judge.

A SHEET is a file, or a folder whose .hcl files are read as one. Several sheets
are checked one after the other. Editions of one rulebook are given together: the
one in force on the day counts, and a clause that keeps to the rules of another day
is judged by the edition of that day.

Exit codes: 0 no gap and nothing open, 1 a gap, 2 no gap, but something marginal or
not recorded, 3 what was given is wrong. Of several sheets the worst decides. A
fault in any one sheet or rulebook ends the run with 3 and without results for the
others; all faults are told first.`,
		Example: `  gapsheet precheck tessel16 --rulebook rulebook
  gapsheet precheck dunlin4 --rulebook rulebook --on 2027-03-14 --stage "bare shell"
  gapsheet precheck tessel16 dunlin4 --rulebook rulebook --only 4 --format json
  gapsheet precheck curlew9 --rulebook rulebook --rulebook rulebook_2028 --on 2028-03-11`,
		Args: wantArguments(1, -1, "at least one build SHEET"),
		RunE: func(_ *cobra.Command, sheets []string) error {
			return a.precheck(sheets, flags, all, format)
		},
	}
	flags.editionsFlag(command)
	flags.dayFlag(command)
	flags.stageFlag(command)
	flags.onlyFlag(command)
	flags.papersFlag(command)
	command.Flags().BoolVar(&all, "all", false, "show also what meets and what does not apply")
	command.Flags().StringVar(&format, "format", formatNames()[0], "`FORM` of the results: "+formatHelp())
	completeWords(command, "format", formatNames)
	return command
}

func (a *app) precheck(sheets []string, flags asked, all bool, formatName string) error {
	format, ok := report.FormatNamed(formatName)
	if !ok {
		return wrong("There is no format %q.%s The formats are: %s.", formatName,
			didYouMean(formatName, formatNames(), ""), strings.Join(formatNames(), ", "))
	}
	if err := flags.wantBooks(); err != nil {
		return err
	}
	request, today, err := flags.request(a.now)
	if err != nil {
		return err
	}
	request.All = all || format.Whole
	var files shelf
	groups, err := files.loadEditions(flags.books)
	if err != nil {
		return err
	}
	if err := checkOnly(flags.only, groups, request.Day); err != nil {
		return err
	}
	results, err := files.checks(sheets, groups, flags.papers, request)
	if err != nil {
		return err
	}
	if err := a.remarks(&files); err != nil {
		return err
	}
	a.code = codeOf(results)
	return format.Write(a.screen(), &report.Precheck{
		Version: programVersion(), Day: request.Day, DayIsToday: today,
		Stage: request.Stage, Only: request.Only, All: all, Results: results,
	})
}

func formatNames() []string {
	var names []string
	for _, format := range report.Formats() {
		names = append(names, format.Name)
	}
	return names
}

func formatHelp() string {
	var lines []string
	for _, format := range report.Formats() {
		lines = append(lines, format.Name+", "+format.Help)
	}
	return strings.Join(lines, "; ")
}
