package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"gapsheet/engine"
	"gapsheet/report"
	"gapsheet/vehicle"
)

// askedSource is the name that messages give the sheet made up for a tube.
const askedSource = "the tube asked about"

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
what would have to be known. It exits like precheck.`,
		Example: "  gapsheet tube '45 x 2.5 mm' --part 'main hoop' --mass '1085 kg' --rulebook saltmarsh/",
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
	var results []*engine.Result
	for _, program := range programs {
		result, err := files.checkTube(size, facts, program, request)
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

// checkTube makes up a scrap of a sheet with the tube in it and checks it.
func (s *shelf) checkTube(size string, facts []*fact, program *engine.Program, request engine.Request) (*engine.Result, error) {
	text := scrapOf(size, facts)
	s.text(askedSource, text)
	source, found := vehicle.ParseSource(askedSource, text)
	s.add(found)
	if err := s.faults(); err != nil {
		return nil, err
	}
	sheet, found := vehicle.DecodeScrap(source, source.Body, program.Book.Vocabulary)
	s.add(found)
	if err := s.faults(); err != nil {
		return nil, err
	}
	return program.Check(program.Car(sheet), request), nil
}

// scrapOf writes the scrap of a sheet. More tubes are to come, so that what asks for
// several of them stays open.
func scrapOf(size string, facts []*fact) []byte {
	blocks := []*scrapBlock{
		{header: `tube_stock "asked"`, lines: []string{"ordered = " + quoted(size), "size = " + quoted(size)}},
		{header: `tube "asked"`, lines: []string{`stock = "asked"`}},
		{header: `car "asked"`},
		{header: "cage"},
	}
	for _, f := range facts {
		if f.value == "" {
			continue
		}
		for _, block := range blocks {
			if strings.HasPrefix(block.header+" ", f.block+" ") {
				for _, attribute := range f.attributes {
					block.lines = append(block.lines, attribute+" = "+quoted(f.value))
				}
			}
		}
	}
	var text strings.Builder
	text.WriteString("unfinished = [\"tube\"]\n")
	for _, block := range blocks {
		if len(block.lines) > 0 {
			fmt.Fprintf(&text, "%s {\n  %s\n}\n", block.header, strings.Join(block.lines, "\n  "))
		}
	}
	return []byte(text.String())
}

// scrapBlock is one block of the scrap.
type scrapBlock struct {
	header string
	lines  []string
}

// quoted writes a text as a literal of the sheet's language (HCL native syntax, quoted
// templates): nothing in it is filled in.
func quoted(text string) string {
	return `"` + strings.NewReplacer(
		`\`, `\\`, `"`, `\"`, "\n", `\n`, "\r", `\r`, "\t", `\t`, "${", "$${", "%{", "%%{",
	).Replace(text) + `"`
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
