package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"gapsheet/engine"
	"gapsheet/report"
	"gapsheet/vehicle"
)

// fact is a flag of the tube command that says one thing of the car or the tube.
type fact struct {
	flag, block string
	attributes  []string // all of them are given the value
	help        string
	usual       string // the value where none is given, "" for not known
	value       string
}

func tubeFacts() []*fact {
	return []*fact{
		{flag: "part", block: "tube", attributes: []string{"part"}, help: "`MEMBER` of the cage it is for, such as 'main hoop'"},
		{flag: "mass", block: "car", attributes: []string{"weighed_mass", "declared_mass"}, help: "`MASS` of the car, such as '1085 kg'"},
		{flag: "class", block: "car", attributes: []string{"class"}, help: "`CLASS` of the car, one of the rulebook's"},
		{flag: "material", block: "tube_stock", attributes: []string{"material"}, help: "`MATERIAL` of the tube, as a sheet has it"},
		{flag: "forming", block: "tube_stock", attributes: []string{"forming"}, help: "`FORMING`, how the tube was made, as a sheet has it"},
		{flag: "base", block: "cage", attributes: []string{"base_structure"}, help: "`STRUCTURE` the cage is built on, as a sheet has it"},
		{flag: "route", block: "cage", attributes: []string{"route"}, usual: "built to the tables", help: "`ROUTE` to acceptance of the cage, as a sheet has it"},
	}
}

func (a *app) tubeCommand() *cobra.Command {
	var flags asked
	facts := tubeFacts()
	command := &cobra.Command{
		Use:   "tube SIZE --rulebook RULEBOOK",
		Short: "Say which clauses a tube would meet, before it is bought",
		Long: `Holds one tube against the clauses of a rulebook that look at tubes one by one,
without a sheet. The tube is taken to measure exactly what is ordered; one that
comes thinner is another tube. What the size alone does not decide is listed with
what would have to be known. It exits like precheck: 0 no gap and nothing open, 1 a
gap, 2 no gap, but something open, 3 what was given is wrong.`,
		Example: "  gapsheet tube '45 x 2.5 mm' --part 'main hoop' --mass '1085 kg' --rulebook rulebook",
		Args:    wantArguments(1, 1, "the SIZE of a tube, such as '45 x 2.5 mm'"),
		RunE: func(_ *cobra.Command, arguments []string) error {
			return a.tube(arguments[0], facts, flags)
		},
	}
	flags.rulebookFlag(command)
	flags.dayFlag(command)
	for _, f := range facts {
		command.Flags().StringVar(&f.value, f.flag, f.usual, f.help)
	}
	completeWords(command, "part", membersOfCage)
	return command
}

func (a *app) tube(size string, facts []*fact, flags asked) error {
	if err := flags.wantBooks(); err != nil {
		return err
	}
	request, today, err := flags.request(a.now)
	if err != nil {
		return err
	}
	request.All, request.NoPapers = true, true
	var files shelf
	books, err := files.loadBooks(flags.books)
	if err != nil {
		return err
	}
	programs, err := files.compile(books)
	if err != nil {
		return err
	}
	scrap := scrapOf(size, facts)
	var results []*engine.Result
	for _, program := range programs {
		result, err := files.checkTube(scrap, program, request)
		if err != nil {
			return err
		}
		results = append(results, report.OfTube(result, askedPart(result.Sheet, "tube"), askedPart(result.Sheet, "tube_stock")))
	}
	if err := a.remarks(&files); err != nil {
		return err
	}
	a.code = codeOf(results)
	return report.WriteTube(a.screen(), report.Head{Asked: inWords(size, facts), Day: request.Day, DayIsToday: today}, results)
}

// askedPart finds the part of a type of the cage in the scrap, where there is one of each.
func askedPart(sheet *vehicle.Sheet, name string) *vehicle.Part {
	kind := sheet.Vocabulary.Type(name)
	return sheet.Root.Lists[kind.Within.Index].Parts[0].List(kind).Parts[0]
}

func inWords(size string, facts []*fact) string {
	said := []string{"tube " + size}
	for _, f := range facts {
		if f.value != "" {
			said = append(said, f.flag+" "+f.value)
		}
	}
	return strings.Join(said, ", ")
}

// membersOfCage lists the members a tube can be, for the shell to complete.
func membersOfCage() []string {
	member := vehicle.BuiltIn().Type("tube").Particular("part")
	if member == nil || member.Choices == nil {
		panic(fmt.Sprintf("the vocabulary has no members of a cage: %v", member))
	}
	var words []string
	for _, choice := range member.Choices.Choices {
		words = append(words, choice.Value)
	}
	return words
}
