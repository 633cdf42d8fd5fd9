package main

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/engine"
	"gapsheet/vehicle"
)

// scrapName is the name of the sheet made up for a tube. No message shows it.
const scrapName = "tube"

// scrap is a sheet made up for a tube, with a note of what each of its lines is from.
type scrap struct {
	text  []byte
	lines []*scrapLine // by line, the first is 0; nil for one that is from no value
}

// scrapLine is an attribute with a value from the command line.
type scrapLine struct {
	from      string // "SIZE", or the flag: "--mass"
	value     string // as typed
	attribute string
	block     string // the name of the block it stands in
	begins    int    // byte in the scrap at which the value begins
}

// checkTube checks a scrap. Faults are told of what was typed, once each.
func (s *shelf) checkTube(asked *scrap, program *engine.Program, request engine.Request) (*engine.Result, error) {
	for _, line := range asked.lines {
		if line != nil {
			s.text(line.from, []byte(line.value))
		}
	}
	source, found := vehicle.ParseSource(scrapName, asked.text)
	s.add(asked.asTyped(found))
	if err := s.faults(); err != nil {
		return nil, err
	}
	sheet, found := vehicle.DecodeScrap(source, source.Body, program.Book.Vocabulary)
	s.add(asked.asTyped(found))
	if err := s.faults(); err != nil {
		return nil, err
	}
	return program.Check(program.Car(sheet), request), nil
}

// scrapOf writes the scrap of a sheet. More tubes are to come, so that what asks for
// several of them stays open.
func scrapOf(size string, facts []*fact) *scrap {
	lines := []*scrapLine{
		{from: "SIZE", block: "tube_stock", attribute: "ordered", value: size},
		{from: "SIZE", block: "tube_stock", attribute: "size", value: size},
	}
	for _, f := range facts {
		for _, attribute := range f.attributes {
			if f.value != "" {
				lines = append(lines, &scrapLine{from: "--" + f.flag, block: f.block, attribute: attribute, value: f.value})
			}
		}
	}
	s := &scrap{}
	s.add(nil, `unfinished = ["tube"]`)
	for _, block := range []struct{ name, opens string }{
		{"tube_stock", `tube_stock "asked" {`}, {"tube", `tube "asked" {`}, {"car", `car "asked" {`}, {"cage", "cage {"},
	} {
		s.add(nil, block.opens)
		if block.name == "tube" {
			s.add(nil, `stock = "asked"`)
		}
		for _, line := range lines {
			if line.block == block.name {
				line.begins = len(s.text) + len(line.attribute+` = "`)
				s.add(line, line.attribute+" = "+quoted(line.value))
			}
		}
		s.add(nil, "}")
	}
	return s
}

func (s *scrap) add(line *scrapLine, text string) {
	s.text = append(append(s.text, text...), '\n')
	s.lines = append(s.lines, line)
}

// quoted writes a text as a literal of the sheet's language (HCL native syntax, quoted
// templates): nothing in it is filled in.
func quoted(text string) string {
	return `"` + strings.NewReplacer(
		`\`, `\\`, `"`, `\"`, "\n", `\n`, "\r", `\r`, "\t", `\t`, "${", "$${", "%{", "%%{",
	).Replace(text) + `"`
}

// asTyped turns what was found in the scrap into what is wrong with the command line. A
// value that stands in the scrap twice is told of once.
func (s *scrap) asTyped(found hcl.Diagnostics) hcl.Diagnostics {
	var typed hcl.Diagnostics
	told := map[string]bool{}
	for _, d := range found {
		line := s.lineOf(d.Subject)
		if line == nil {
			typed = append(typed, d)
			continue
		}
		moved := line.asTyped(d)
		key := fmt.Sprint(line.from, moved.Subject.Start.Byte, d.Summary)
		if !told[key] {
			told[key] = true
			typed = append(typed, moved)
		}
	}
	return typed
}

// lineOf is the line a place is on, nil for one that holds no value.
func (s *scrap) lineOf(at *hcl.Range) *scrapLine {
	if at == nil || at.Start.Line < 1 || at.Start.Line > len(s.lines) {
		return nil
	}
	return s.lines[at.Start.Line-1]
}

// asTyped moves a fault from the scrap to the value as it was typed. The words that say
// where it stood in the scrap are taken out.
func (line *scrapLine) asTyped(d *hcl.Diagnostic) *hcl.Diagnostic {
	moved := *d
	// The cage has no label, the rest has.
	for _, block := range []string{line.block, strings.ReplaceAll(line.block, "_", " ")} {
		moved.Detail = strings.ReplaceAll(moved.Detail, fmt.Sprintf(" as %s of the %s \"asked\"", line.attribute, block), "")
		moved.Detail = strings.ReplaceAll(moved.Detail, fmt.Sprintf(" as %s of the %s", line.attribute, block), "")
	}
	from, to := d.Subject.Start.Byte-line.begins, d.Subject.End.Byte-line.begins
	if quoted(line.value) != `"`+line.value+`"` || from < 0 || from > len(line.value) {
		from, to = 0, len(line.value) // the scrap writes it otherwise, or the whole literal is meant
	}
	to = min(max(to, from), len(line.value))
	moved.Subject, moved.Context = &hcl.Range{
		Filename: line.from,
		Start:    hcl.Pos{Line: 1, Column: utf8.RuneCountInString(line.value[:from]) + 1, Byte: from},
		End:      hcl.Pos{Line: 1, Column: utf8.RuneCountInString(line.value[:to]) + 1, Byte: to},
	}, nil
	return &moved
}
