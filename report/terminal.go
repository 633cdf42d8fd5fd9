package report

import (
	"fmt"
	"strings"

	"gapsheet/engine"
)

// WriteTerminal writes a run for reading: of each sheet and rulebook what to do, most
// urgent first. Gaps come with the reading against its limit and with what puts them
// right; then what has not been written down, by what is to be measured; then what cannot
// be proved with the measurement there is; then a list to tick for what only a person can
// judge.
func WriteTerminal(screen *Screen, run *Precheck) error {
	p := screen.page()
	writeCaution(p)
	writeDateCaution(p, run.Results, run.All)
	for _, result := range run.Results {
		writeHead(p, run.headOf(result))
		writeResult(p, result, run.All)
	}
	if len(run.Results) > 1 {
		writeSummary(p, run.Results)
	}
	return p.done()
}

func writeResult(p *page, result *engine.Result, all bool) {
	column := numbersWidth(result.Book, p.width)
	p.labelled(2, "In short", headLabel, inShort(result))
	writeSection(p, gapSection, findingsOf(result, engine.Gap, counts), column)
	writeLogBook(p, result, all)
	writeNeeds(p, findingsOf(result, engine.NotRecorded, counts))
	writeSection(p, marginalSection, findingsOf(result, engine.Marginal, counts), column)
	writeToLookAt(p, result, column)
	writeSection(p, dispensationSection, findingsOf(result, engine.UnderDispensation, counts), column)
	if all {
		writeSection(p, meetsSection, findingsOf(result, engine.Meets, counts), column)
		writeSection(p, doesNotApplySection, findingsOf(result, engine.DoesNotApply, counts), column)
	}
	writeAdvice(p, result, all, column)
	writeCounts(p, result, all)
}

// section is how the clauses of one verdict are set out.
type section struct {
	verdict    engine.Verdict
	word, text string                                   // the heading, its first part in the verdict's ink
	apart      bool                                     // a blank line between clauses
	remedy     func(p *page, found finding, column int) // what stands below a clause, nil for nothing
}

var (
	gapSection          = section{engine.Gap, "GAPS", ", to put right", true, writeRemedy}
	marginalSection     = section{engine.Marginal, "MARGINAL", ", not to be proved with this measurement", true, writeCloser}
	dispensationSection = section{engine.UnderDispensation, "UNDER DISPENSATION", "", false, nil}
	meetsSection        = section{engine.Meets, "MEETS", ", as far as figures go", false, nil}
	doesNotApplySection = section{engine.DoesNotApply, "DOES NOT APPLY", "", false, nil}
)

func writeSection(p *page, s section, found []finding, column int) {
	if len(found) == 0 {
		return
	}
	p.heading(InkOf(s.verdict), s.word, s.text)
	for i, f := range found {
		if s.apart {
			p.gapBefore(i)
		}
		writeFinding(p, f, column)
		if s.remedy != nil {
			s.remedy(p, f, column)
		}
	}
}

// labelWidth is the width of the labels beside a finding's texts.
const labelWidth = 11

// writeFinding writes a clause with its subjects and why.
func writeFinding(p *page, f finding, column int) {
	number := Safe(f.clause.Number)
	p.hanging(0, p.paint.With(Strong, pad(number, column-2))+"  ", max(column, Width(number)+2), Plain, clauseTitle(f.clause))
	if f.note != "" {
		p.prose(column, Plain, f.note)
	}
	for _, g := range f.groups {
		writeGroup(p, g, column)
	}
}

func writeGroup(p *page, g group, column int) {
	names, places := g.names(), g.places()
	lines := g.lines
	switch {
	case names != "" && places != "":
		names += " (" + places + ")"
	case names == "" && places != "" && len(lines) > 0:
		lines = append([]string{lines[0] + " (" + places + ")"}, lines[1:]...)
	case names == "":
		names = places
	}
	indent := column
	if names != "" {
		p.prose(column, Plain, names)
		indent += 2
	}
	for _, line := range lines {
		p.hanging(indent, "- ", 2, Plain, line)
	}
}

func writeNeeds(p *page, found []finding) {
	if len(found) == 0 {
		return
	}
	p.heading(InkOf(engine.NotRecorded), "NOT RECORDED", ", to measure or look up and write down")
	told := "" // the same advice is given once for all lists that stand together
	for i, n := range needsOf(found) {
		p.gapBefore(i)
		p.prose(0, Strong, n.title())
		if n.how != "" && n.how != told {
			p.labelled(2, "how", labelWidth, n.how)
		}
		told = n.how
		p.labelled(2, "asked by", labelWidth, n.clauseList())
		if place := n.place(); place != "" {
			p.labelled(2, "write", labelWidth, place)
		}
	}
}

// writeCloser says how to measure more closely, and else what a gap's remedy is.
func writeCloser(p *page, found finding, column int) {
	for _, how := range measuredAgain(found) {
		p.labelled(column, "closer", labelWidth, how)
	}
	writeRemedy(p, found, column)
}

// measuredAgain says how the readings whose tolerance is too wide can be taken again.
func measuredAgain(f finding) []string {
	var hows []string
	for _, g := range f.groups {
		for _, subject := range g.subjects {
			for _, cause := range subject.Causes {
				if cause.Kind != engine.Tolerance || cause.Particular == nil || cause.Particular.How == "" {
					continue
				}
				how := fmt.Sprintf("%s: %s", cause.Particular.Name, cause.Particular.How)
				if !strings.Contains(strings.Join(hows, "\n"), how) {
					hows = append(hows, how)
				}
			}
		}
	}
	return hows
}

// writeToLookAt writes the list to tick.
func writeToLookAt(p *page, result *engine.Result, column int) {
	found := append(findingsOf(result, engine.ByEye, counts), findingsOf(result, engine.ByEye, advice)...)
	if len(found) == 0 {
		return
	}
	p.heading(InkOf(engine.ByEye), "BY EYE", fmt.Sprintf(", %s that only a person can judge", engine.Plural(len(found), "item", "items")))
	for _, f := range found {
		p.hanging(0, "[ ] "+p.paint.With(Strong, pad(Safe(f.clause.Number), column-2))+"  ", 4+max(column, Width(Safe(f.clause.Number))+2), Plain, clauseTitle(f.clause))
		if f.clause.LookFor != "" {
			p.prose(4+column, Plain, f.clause.LookFor)
		}
		if names := f.names(); names != "" {
			p.labelled(4+column, "at", 4, names)
		}
	}
}

// writeAdvice writes what the rulebook advises and the car has not; with all, also the rest.
func writeAdvice(p *page, result *engine.Result, all bool, column int) {
	index := 0
	for _, verdict := range engine.Verdicts() {
		quiet := verdict == engine.Meets || verdict == engine.DoesNotApply
		if verdict == engine.ByEye || quiet && !all {
			continue // what is by eye stands on the list to tick
		}
		for _, f := range findingsOf(result, verdict, advice) {
			if index == 0 {
				p.heading(Strong, "ADVICE", ", which does not count")
			}
			p.gapBefore(index)
			index++
			writeOneAdvice(p, f, quiet, column)
		}
	}
}

func writeOneAdvice(p *page, f finding, quiet bool, column int) {
	waits := needsOf([]finding{f})
	if f.verdict == engine.NotRecorded {
		f.groups = nil // told by what it waits for
	} else {
		waits = nil
	}
	f.note = strings.TrimSuffix(f.verdict.String()+"; "+f.note, "; ")
	writeFinding(p, f, column)
	for _, n := range waits {
		p.hanging(column, "- ", 2, Plain, n.title())
	}
	if !quiet {
		writeRemedy(p, f, column)
	}
}
