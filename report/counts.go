package report

import (
	"fmt"
	"slices"
	"strings"

	"gapsheet/engine"
)

// writeCounts closes a result: clauses by verdict, and what this program cannot tell.
func writeCounts(p *page, result *engine.Result) {
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
	if asRead := notedAsRead(result); asRead > 0 {
		p.prose(0, Plain, fmt.Sprintf("%s as read only: the tolerance of the reading reaches across the limit. --all shows which.", plural(asRead, "clause meets", "clauses meet")))
	}
	p.prose(0, Plain, plural(forAPerson(result), "item", "items")+" that only a person can judge.")
}

// notedAsRead counts the clauses that meet by the reading and are not proved by it.
func notedAsRead(result *engine.Result) int {
	count := 0
	for _, f := range findingsOf(result, engine.Meets, counts) {
		for _, g := range f.groups {
			if slices.Contains(g.lines, engine.NoteNotProved) {
				count++
				break
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
		p.hanging(0, head, column, Plain, fmt.Sprintf("%s against %s: %s, %d not recorded, %d marginal, %d for a person",
			sheetLine(result.Sheet), bookLine(result.Book),
			plural(result.Counts[engine.Gap], "gap", "gaps"),
			result.Counts[engine.NotRecorded], result.Counts[engine.Marginal], forAPerson(result)))
	}
}
