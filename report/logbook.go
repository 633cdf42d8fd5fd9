package report

import (
	"gapsheet/engine"
)

// papersOf is what the papers of a car come to, in the order in which they are told.
func papersOf(result *engine.Result) []*engine.ClauseResult {
	for _, chapter := range result.Chapters {
		if chapter.IsLogBook() {
			return chapter.Clauses
		}
	}
	return nil
}

// writeLogBook writes what the papers that travel with the car come to. What is closed is
// left out, unless all is asked for.
func writeLogBook(p *page, result *engine.Result, all bool) {
	var shown []*engine.ClauseResult
	for _, paper := range papersOf(result) {
		if all || paper.Remark || paper.Verdict != engine.Meets {
			shown = append(shown, paper)
		}
	}
	if len(shown) == 0 {
		return
	}
	p.heading(Strong, "LOG BOOK", ", and what else travels with the car")
	for i, paper := range shown {
		p.gapBefore(i)
		writePaper(p, paper)
	}
}

// paperIndent is how far what is said of a paper stands in from its name.
const paperIndent = 4

// writePaper writes one paper: its name with its verdict, what it says, and by its verdicts
// the parts that it speaks of.
func writePaper(p *page, paper *engine.ClauseResult) {
	head := p.paint.With(Strong, Safe(paper.Clause.Number))
	switch {
	case paper.Remark:
	case paper.Verdict == engine.ByEye:
		head = "[ ] " + head + ": " + p.paint.With(InkOf(paper.Verdict), paper.Verdict.String())
	default:
		head += ": " + p.paint.With(InkOf(paper.Verdict), paper.Verdict.String())
	}
	p.raw(head)
	p.prose(paperIndent, Plain, paper.Clause.Title)
	if paper.Note != "" {
		p.prose(paperIndent, Plain, paper.Note)
	}
	for _, verdict := range engine.Verdicts() {
		if f, ok := findingOf(paper, verdict); ok {
			for _, g := range f.groups {
				writeGroup(p, g, paperIndent)
			}
		}
	}
}
