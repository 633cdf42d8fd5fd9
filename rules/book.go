package rules

import (
	"fmt"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
)

var (
	bookKeys      = []string{"edition", "in_force", "until", "judged", "readings", "classes", "standing"}
	judgedWords   = []string{"as read", "proved"} // by Judged
	readingsWords = []string{"least favourable", "mean"}
	classKeys     = []string{"synonyms", "means"}
)

// mostClasses is how many choices one particular can have.
const mostClasses = 64

// readBook reads the rulebook block, of which there is exactly one.
func (l *loader) readBook() {
	block := l.blocks["rulebook"][0]
	for _, second := range l.blocks["rulebook"][1:] {
		l.report(vehicle.SaidTwice(vehicle.HeaderOf(second.Block), "the rulebook block", vehicle.HeaderOf(block.Block)))
	}
	book := l.book
	book.Range = vehicle.HeaderOf(block.Block)
	book.Name, _ = l.label(block, "rulebook", "\"Saltmarsh Stage Rally Car Rules\"")
	f := l.fieldsOf(block, "rulebook", bookKeys, []string{"class"})
	if f.want("edition", `"2027"`) {
		book.Edition = f.line("edition")
	}
	book.Period, book.InForce = f.period("in_force", "until")
	book.Judged = Judged(max(0, f.word("judged", judgedWords)))
	book.MeanOfReadings = f.word("readings", readingsWords) == 1
	book.Standing = f.line("standing")
	book.Classes = l.readClasses(f)
}

// label reads the one label of a block: its name or number, on one line. example is how
// it could be written.
func (l *loader) label(block located, what, example string) (text string, ok bool) {
	f := fields{source: block.source, block: block.Block, what: what, report: l.report}
	switch len(block.LabelRanges) {
	case 1:
		return f.labelAt(0)
	case 0:
		f.fault("label-count", block.TypeRange, "A name is missing", fmt.Sprintf(
			"The %s has no name. Write it in double quotes before the {: %s %s {.", what, block.Type, example))
	default:
		f.fault("label-count", block.LabelRanges[1], "One name too many", fmt.Sprintf(
			"The %s has %d names. Keep one in double quotes.", what, len(block.LabelRanges)))
	}
	return "", false
}

// readClasses reads the classes that a car can be entered in: a list of names, or class
// blocks where a class has synonyms or a line of help. Nil when there are none.
func (l *loader) readClasses(f *fields) *vehicle.ChoiceList {
	list := &vehicle.ChoiceList{Name: "classes of " + l.book.Name}
	places := map[string]hcl.Range{}
	add := func(c vehicle.Choice, at hcl.Range, synonyms []written) {
		for _, s := range append([]written{{text: c.Value, all: at}}, synonyms...) {
			l.nameOnce(places, s.text, s.all)
			if vehicle.FoldText(s.text) == "none" {
				f.fault("choice-none", s.all, "A class called none",
					`Found "none", by which a sheet says that something is not there. Use another word.`)
			}
		}
		list.Choices = append(list.Choices, c)
	}
	for _, w := range f.lines("classes") {
		add(vehicle.Choice{Value: w.text}, w.all, nil)
	}
	for _, block := range f.blocks("class") {
		if f.has("classes") {
			f.fault("classes-twice", vehicle.HeaderOf(block.Block), "Classes said in two ways", "Found class blocks beside classes = […]. "+
				"Write every class as a block, or all in the list.")
			break
		}
		inner := l.fieldsOf(block, "class", classKeys, nil)
		name, ok := l.label(block, "class", `"two-wheel drive open"`)
		if !ok {
			continue
		}
		synonyms := inner.lines("synonyms")
		add(vehicle.Choice{Value: name, Synonyms: texts(synonyms), Means: inner.line("means")}, vehicle.HeaderOf(block.Block), synonyms)
	}
	if len(list.Choices) > mostClasses {
		f.fault("classes-too-many", vehicle.HeaderOf(f.block), "Too many classes", fmt.Sprintf(
			"Found %d classes; a rulebook can tell at most %d apart.", len(list.Choices), mostClasses))
	}
	if len(list.Choices) == 0 {
		return nil
	}
	return list
}

// nameOnce reports a name that was given before, compared as texts are compared.
func (l *loader) nameOnce(places map[string]hcl.Range, name string, at hcl.Range) {
	folded := vehicle.FoldText(name)
	if first, twice := places[folded]; twice {
		l.report(vehicle.SaidTwice(at, vehicle.Quote(name), first))
		return
	}
	places[folded] = at
}

// readStandards adds the equipment standards that the rulebook knows beside the built-in ones
// to the lists of the vocabulary.
func (l *loader) readStandards() {
	var added []vehicle.AddedStandard
	for _, block := range l.blocks["standard"] {
		one, faults := vehicle.DecodeStandard(block.source, block.Block, l.book.Vocabulary)
		l.faults = append(l.faults, faults...)
		if !faults.HasErrors() {
			added = append(added, one)
		}
	}
	extended, faults := l.book.Vocabulary.WithStandards(l.book.Name, added)
	l.faults = append(l.faults, faults...)
	l.book.Vocabulary = extended
}

// readParticulars extends the vocabulary by what the rulebook adds to it.
func (l *loader) readParticulars() {
	var added []vehicle.Added
	for _, block := range l.blocks["particular"] {
		one, faults := vehicle.DecodeParticular(block.source, block.Block, l.book.Vocabulary)
		l.faults = append(l.faults, faults...)
		if !faults.HasErrors() {
			added = append(added, one)
		}
	}
	extended, faults := l.book.Vocabulary.Extend(l.book.Name, l.book.Classes, added)
	l.faults = append(l.faults, faults...)
	if extended != nil {
		l.book.Vocabulary = extended
	}
}
