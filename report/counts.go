package report

import (
	"fmt"
	"slices"
	"strings"

	"gapsheet/engine"
)

// writeCounts closes a result: clauses by verdict, and what this program cannot tell.
func writeCounts(p *page, result *engine.Result, all bool) {
	p.heading(Strong, "COUNTED", ", each clause once, at its worst")
	for _, verdict := range engine.Verdicts() {
		count := result.Counts[verdict]
		if count == 0 && verdict != engine.Gap && verdict != engine.NotRecorded && verdict != engine.Marginal {
			continue
		}
		ink := Plain
		if count > 0 {
			ink = InkOf(verdict)
		}
		p.raw(fmt.Sprintf("%5d  ", count) + p.paint.With(ink, verdict.String()))
	}
	if result.NotDue > 0 {
		p.raw(fmt.Sprintf("%5d  not due yet", result.NotDue))
	}
	for _, note := range []struct{ note, one, many, why string }{
		{engine.NoteNotProved, "clause has subjects that meet as read only", "clauses have subjects that meet as read only", "the tolerance of the reading reaches across the limit."},
		{engine.NoteTakenAsExact, "clause wants proof and was held", "clauses want proof and were held", "against readings without a stated tolerance, taken as exact."},
	} {
		if count := noted(result, note.note); count > 0 {
			p.prose(0, Plain, engine.Plural(count, note.one, note.many)+": "+note.why+seeAll(all))
		}
	}
	items := engine.Plural(forAPerson(result), "item", "items") + " that only a person can judge"
	if result.ToLookAt > 0 {
		items += fmt.Sprintf(", and %d more once their figures are there and meet", result.ToLookAt)
	}
	p.prose(0, Plain, items+".")
}

// seeAll says how to see which clauses are meant, where they are not all shown already.
func seeAll(all bool) string {
	if all {
		return ""
	}
	return " --all shows which."
}

// noted counts the clauses with a subject that has a note.
func noted(result *engine.Result, note string) int {
	count := 0
	for _, chapter := range result.Chapters {
		for _, clause := range chapter.Clauses {
			if slices.ContainsFunc(clause.Subjects, func(s *engine.SubjectResult) bool { return slices.Contains(s.Notes, note) }) {
				count++
			}
		}
	}
	return count
}

// writeSummary closes a run of several sheets or rulebooks: one line for each.
func writeSummary(p *page, results []*engine.Result) {
	p.heading(Strong, "ALL SHEETS", ", each at its worst")
	column := 0
	for _, result := range results {
		column = max(column, Width(result.Worst.String())+2)
	}
	for _, result := range results {
		word := result.Worst.String()
		head := p.paint.With(InkOf(result.Worst), word) + strings.Repeat(" ", column-Width(word))
		p.hanging(0, head, column, Plain, fmt.Sprintf("%s against %s: %s", sheetLine(result.Sheet), bookLine(result.Book), inShort(result)))
	}
}

// inShort is what a result comes to, for one line.
func inShort(result *engine.Result) string {
	return fmt.Sprintf("%s, %d not recorded, %d marginal, %d for a person",
		engine.Plural(result.Counts[engine.Gap], "gap", "gaps"),
		result.Counts[engine.NotRecorded], result.Counts[engine.Marginal], forAPerson(result))
}
