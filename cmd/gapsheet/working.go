package main

import (
	"strings"

	"github.com/spf13/cobra"

	"gapsheet/engine"
	"gapsheet/report"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

func (a *app) workingCommand() *cobra.Command {
	var flags asked
	command := &cobra.Command{
		Use:   "working CLAUSE SHEET --rulebook RULEBOOK",
		Short: "Show how a clause came to its verdict on a car",
		Long: `Shows a clause's wording and formula, and the formula taken apart for each
subject: what each part of it came to, which part decided, and where there are
several ways to meet it, the nearest. It exits like precheck, by this clause alone.`,
		Example: "  gapsheet working 4.6 tessel16 --rulebook rulebook --on 2027-03-14",
		Args:    wantArguments(2, 2, "the number of a CLAUSE and a build SHEET"),
		RunE: func(_ *cobra.Command, arguments []string) error {
			return a.working(arguments[0], arguments[1], flags)
		},
		ValidArgsFunction: func(_ *cobra.Command, given []string, begun string) ([]string, cobra.ShellCompDirective) {
			if len(given) > 0 {
				return nil, cobra.ShellCompDirectiveDefault
			}
			return clausesBeginning(flags.books, begun), cobra.ShellCompDirectiveNoFileComp
		},
	}
	flags.editionsFlag(command)
	flags.dayFlag(command)
	flags.papersFlag(command)
	return command
}

func (a *app) working(number, sheetName string, flags asked) error {
	if err := flags.wantBooks(); err != nil {
		return err
	}
	request, today, err := flags.request(a.now)
	if err != nil {
		return err
	}
	var files shelf
	groups, err := files.loadEditions(flags.books)
	if err != nil {
		return err
	}
	group, err := clauseIn(groups, number, sheetName, request.Day)
	if err != nil {
		return err
	}
	options, err := files.papers(flags.papers)
	if err != nil {
		return err
	}
	o, err := files.open(sheetName, "build sheet")
	if err != nil {
		return err
	}
	editions := files.layOut(o, group, options)
	if err := files.faults(); err != nil {
		return err
	}
	if err := a.remarks(&files); err != nil {
		return err
	}
	working := editions.Working(number, request)
	a.code = codeOfClause(working.Result)
	on := editions.On(request.Day)
	head := report.Head{Book: on.Program.Book, Sheet: on.Car.Sheet, Day: request.Day, DayIsToday: today}
	return report.WriteWorking(a.screen(), head, working)
}

// codeOfClause is the exit code for one clause. Advice never counts.
func codeOfClause(result *engine.ClauseResult) int {
	if result.Clause.Concern == rules.Advice {
		return exitMeets
	}
	return codeOf([]*engine.Result{{Worst: result.Verdict}})
}

// clausesBeginning lists clauses for the shell to complete. A rulebook that cannot be read
// gives none: completion is no place for faults.
func clausesBeginning(named []string, begun string) []string {
	var files shelf
	books, err := files.loadBooks(named)
	if err != nil {
		return nil
	}
	var fitting []string
	for _, book := range books {
		for _, chapter := range book.Chapters {
			for _, clause := range chapter.Clauses {
				if strings.HasPrefix(vehicle.FoldText(clause.Number), vehicle.FoldText(begun)) {
					fitting = append(fitting, clause.Number+"\t"+report.Safe(clause.Title))
				}
			}
		}
	}
	return fitting
}
