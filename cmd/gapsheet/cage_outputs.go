package main

import (
	"bytes"
	"fmt"
	"path/filepath"

	"github.com/spf13/cobra"

	"gapsheet/engine"
	"gapsheet/report"
	"gapsheet/vehicle"
)

// cageOutputs are the files that the cage command writes, "" for one that is not asked for.
type cageOutputs struct {
	cutList, templates, drawing string
	paperName                   string
	paper                       report.Paper
}

func (o *cageOutputs) flags(command *cobra.Command) {
	command.Flags().StringVar(&o.cutList, "cut-list", "", "`FILE.csv` to write the cut list, the bend schedule and the bars into")
	command.Flags().StringVar(&o.templates, "templates", "", "`FILE.pdf` to write the notch templates into, at 1:1")
	command.Flags().StringVar(&o.paperName, "paper", report.A4.Name, "`PAPER` of the templates: A4 or Letter")
	command.Flags().StringVar(&o.drawing, "draw", "", "`FILE.svg` to write the drawing into: side, front, plan and isometric view")
	completeWords(command, "paper", func() []string { return []string{report.A4.Name, report.Letter.Name} })
}

// asked lists the outputs that were asked for.
func (o *cageOutputs) asked() []output {
	return wanted(
		output{flag: "--cut-list", path: o.cutList, what: "cut list", begins: "Cage cut list"},
		output{flag: "--templates", path: o.templates, what: "PDF", begins: "%PDF-"},
		output{flag: "--draw", path: o.drawing, what: "drawing", begins: svgBegins},
	)
}

// check looks at the flags before any file is read: the paper, and one file for two outputs.
func (o *cageOutputs) check() error {
	paper, err := report.ParsePaper(o.paperName)
	if err != nil {
		return wrong("--paper is wrong: %v.", err)
	}
	o.paper = paper
	return onePlaceEach(o.asked())
}

// write makes every output that was asked for and then writes them, all or none. It returns
// what was written, a sentence each.
func (o *cageOutputs) write(cage *report.Cage) ([]string, error) {
	outputs := o.asked()
	var said []string
	for i := range outputs {
		one := &outputs[i]
		var text bytes.Buffer
		if err := o.make(&text, one.flag, cage); err != nil {
			return nil, err
		}
		one.text = text.Bytes()
		if err := one.refuse(filesOf(cage.Frame.Sheet)); err != nil {
			return nil, err
		}
		said = append(said, fmt.Sprintf("Written: %s, %s.", filepath.ToSlash(one.path), writtenWords(one.flag, cage.Frame, o.paper)))
	}
	return said, writeAll(outputs)
}

func (o *cageOutputs) make(text *bytes.Buffer, flag string, cage *report.Cage) error {
	switch flag {
	case "--cut-list":
		return report.CutList(text, cage.Frame, cage.Head)
	case "--templates":
		return report.Templates(text, cage.Frame, o.paper, cage.Head)
	}
	var verdicts map[*vehicle.Part]engine.Verdict
	if cage.Result != nil {
		verdicts = report.CageVerdicts(cage.Frame, cage.Result)
	}
	return report.Drawing(text, cage.Frame, verdicts, cage.Head)
}

// writtenWords says what a file holds.
func writtenWords(flag string, f *vehicle.Frame, paper report.Paper) string {
	switch flag {
	case "--cut-list":
		return fmt.Sprintf("the cut list of %d tubes with bend schedule and bars", len(f.Tubes))
	case "--templates":
		return fmt.Sprintf("the notch templates on %s: print at 100 %% and measure the check line of 100 mm first", paper.Name)
	}
	return "the drawing"
}
