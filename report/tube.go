package report

import (
	"slices"

	"gapsheet/engine"
	"gapsheet/vehicle"
)

// OfTube narrows a result to what it says of one tube: the clauses that have the tube or
// its stock for a subject, judged by that subject alone. What a clause asks of all tubes
// together stays out, as the others are not there.
func OfTube(result *engine.Result, tube, stock *vehicle.Part) *engine.Result {
	narrowed := &engine.Result{Book: result.Book, Sheet: result.Sheet, Request: result.Request}
	for _, chapter := range result.Chapters {
		kept := &engine.ChapterResult{Chapter: chapter.Chapter}
		for _, clause := range chapter.Clauses {
			if own := clauseOfTube(clause, tube, stock); own != nil {
				kept.Clauses = append(kept.Clauses, own)
				narrowed.Count(kept, own)
			}
		}
		if len(kept.Clauses) > 0 {
			narrowed.Chapters = append(narrowed.Chapters, kept)
		}
	}
	return narrowed
}

// clauseOfTube is what a clause says of the tube or its stock, nil when it says nothing.
func clauseOfTube(clause *engine.ClauseResult, tube, stock *vehicle.Part) *engine.ClauseResult {
	own := &engine.ClauseResult{Clause: clause.Clause}
	for _, subject := range clause.Subjects {
		about := slices.Contains(subject.Parts, tube) || slices.Contains(subject.Parts, stock)
		if about && subject.Verdict != engine.DoesNotApply {
			only := *subject
			only.Name, only.Place.Filename = "", "" // there is but one, and its sheet is made up
			own.Subjects = append(own.Subjects, &only)
			own.Verdict = own.Verdict.Worse(subject.Verdict)
		}
	}
	if len(own.Subjects) == 0 {
		return nil
	}
	return own
}

// WriteTube writes what rulebooks say of one tube that is yet to be bought.
func WriteTube(screen *Screen, head Head, results []*engine.Result) error {
	p := screen.page()
	writeCaution(p)
	for _, result := range results {
		head.Book = result.Book
		writeHead(p, head)
		writeTubeResult(p, result)
	}
	return p.done()
}

// toLookAtSection holds the clauses of which the figures, where there are any, meet.
var toLookAtSection = section{
	engine.ByEye, "BY EYE", ", where figures meet and the tube is still to be looked at", true, writeLookFor,
}

func writeLookFor(p *page, found finding, column int) {
	if found.clause.LookFor != "" {
		p.labelled(column, "look at", labelWidth, found.clause.LookFor)
	}
}

// waitsSection holds the clauses that ask for more than the size.
var waitsSection = section{
	engine.NotRecorded, "NOT RECORDED", ", what would have to be known besides", false, writeWaits,
}

func writeWaits(p *page, found finding, column int) {
	var titles []string
	for _, n := range needsOf([]finding{found}) {
		titles = append(titles, n.kindTitle())
	}
	p.hanging(column, "- ", 2, Plain, list(titles))
}

func writeTubeResult(p *page, result *engine.Result) {
	column := numbersWidth(result.Book, p.width)
	writeSection(p, gapSection, findingsOf(result, engine.Gap, counts), column)
	writeSection(p, meetsSection, findingsOf(result, engine.Meets, counts), column)
	writeSection(p, toLookAtSection, findingsOf(result, engine.ByEye, counts), column)
	writeSection(p, marginalSection, findingsOf(result, engine.Marginal, counts), column)
	writeSection(p, waitsSection, findingsOf(result, engine.NotRecorded, counts), column)
	writeAdvice(p, result, true, column)
	if len(result.Chapters) == 0 {
		p.heading(Strong, "NOTHING", " to hold it against")
		p.prose(0, Plain, "No clause of this rulebook looks at a tube like this by itself. Say more of it with the flags; --part matters most.")
		return
	}
	p.blank()
	p.prose(0, Plain, "The tube is taken to measure exactly what is ordered. Measure it when it comes, and write down what was measured.")
}
