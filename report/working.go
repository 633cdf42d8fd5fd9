package report

import (
	"fmt"
	"strings"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// mostFolded is how many parts are told on one line.
const mostFolded = 3

// decidingMark stands before what decided its parent, otherMark before the rest.
const (
	decidingMark = "> "
	otherMark    = "  "
)

// WriteWorking writes how a clause came to its verdict: the club's words, the formula, and
// for each subject the formula taken apart, each part with what it came to.
func WriteWorking(screen *Screen, head Head, working *engine.ClauseWorking) error {
	p := screen.page()
	writeCaution(p)
	clause := working.Result.Clause
	if readsDates(clause) {
		p.prose(0, Strong, DateCaution)
	}
	writeHead(p, head)
	p.heading(Strong, Safe(clause.Number), "  "+Safe(clauseTitle(clause)))
	writeWording(p, clause)
	if working.Then != nil {
		p.blank()
		p.prose(0, Plain, "It is judged by the clause as it stood on that day:")
		writeWording(p, working.Then)
	}
	if len(working.Subjects) > 0 {
		p.blank()
		p.prose(0, Faint, `What decided stands behind ">".`)
	}
	results := bySubject(working.Result)
	for i, subject := range working.Subjects {
		var of []*engine.SubjectResult
		if i < len(results) {
			of = results[i]
		}
		writeSubjectWorking(p, of, subject)
	}
	if len(working.Subjects) == 0 {
		p.blank()
		for _, subject := range working.Result.Subjects {
			writeWhy(p, subject)
		}
	}
	p.blank()
	verdict := working.Result.Verdict
	p.raw("Clause " + p.paint.With(Strong, Safe(clause.Number)) + ": " + p.paint.With(InkOf(verdict), verdict.String()))
	if working.Result.Note != "" {
		p.prose(2, Plain, working.Result.Note)
	}
	if verdict == engine.Gap || verdict == engine.Marginal || verdict == engine.ByEye {
		writeRemedy(p, finding{clause: clause}, 2)
	}
	return p.done()
}

func writeWording(p *page, clause *rules.Clause) {
	if clause.Text != "" {
		p.labelled(2, "wording", labelWidth, clause.Text)
	}
	if clause.TextAt != "" {
		p.labelled(2, "wording", labelWidth, clause.TextAt)
	}
	if clause.Period.Bounded() {
		p.labelled(2, "in force", labelWidth, clause.Period.String())
	}
	if clause.AsAt != nil {
		writeFormula(p, "as at", clause.AsAt.Source)
	}
	for _, across := range clause.Across {
		p.labelled(2, "across", labelWidth, strings.TrimSpace(across.List.Source))
	}
	if clause.Applies != nil {
		writeFormula(p, "applies", clause.Applies.Source)
	}
	if clause.Where != nil {
		writeFormula(p, "where", clause.Where.Source)
	}
	if clause.Demand != nil {
		writeFormula(p, "demand", clause.Demand.Source)
	}
}

// writeFormula writes a formula with the author's own line breaks and indents.
func writeFormula(p *page, label, source string) {
	for _, line := range SafeLines(strings.ReplaceAll(strings.TrimRight(source, "\r\n "), "\t", "  ")) {
		text := strings.TrimLeft(line, " ")
		inner := min(len(line)-len(text), p.width/4)
		p.labelled(2, label, labelWidth+inner, text)
		label = ""
	}
}

// bySubject puts to each subject of a clause the gap that its papers are of their own.
func bySubject(result *engine.ClauseResult) [][]*engine.SubjectResult {
	var of [][]*engine.SubjectResult
	for _, s := range result.Subjects {
		if n := len(of); n > 0 && len(s.MissingPapers)+len(s.OutdatedPapers) > 0 {
			of[n-1] = append(of[n-1], s)
			continue
		}
		of = append(of, []*engine.SubjectResult{s})
	}
	return of
}

// writeSubjectWorking writes what a subject came to, by its figures and by its papers, and
// how.
func writeSubjectWorking(p *page, results []*engine.SubjectResult, working *engine.SubjectWorking) {
	p.blank()
	name := working.Name
	if name == "" {
		name = "the car"
	}
	head := Safe(name)
	if len(results) > 0 {
		head += ": " + p.paint.With(InkOf(results[0].Verdict), results[0].Verdict.String())
	}
	p.raw(head)
	writeTree(p, "applies", working.Applies)
	writeTree(p, "where", working.Where)
	writeTree(p, "demand", working.Demand)
	for i, subject := range results {
		if i > 0 {
			p.raw("  papers: " + p.paint.With(InkOf(subject.Verdict), subject.Verdict.String()))
		}
		writeWhy(p, subject)
	}
}

// writeWhy writes why a subject has its verdict, and how what is missing is measured.
func writeWhy(p *page, subject *engine.SubjectResult) {
	for _, line := range linesOf(subject) {
		p.hanging(2, "- ", 2, Plain, line)
	}
	for _, cause := range subject.Causes {
		if cause.Kind == engine.Missing && cause.Particular != nil && cause.Particular.How != "" {
			p.hanging(2, "- ", 2, Plain, fmt.Sprintf("not recorded: %s. %s", cause.Text, cause.Particular.How))
		}
	}
}

func writeTree(p *page, label string, root *engine.Working) {
	if root == nil {
		return
	}
	p.labelled(2, label, labelWidth, outcome(root))
	writeNode(p, root, 4)
}

// writeNode writes a node of a formula and below it, further in, what it is made of.
func writeNode(p *page, node *engine.Working, indent int) {
	indent = min(indent, p.width/2)
	mark := otherMark
	if node.Deciding {
		mark = decidingMark
	}
	text := strings.Join(strings.Fields(node.Text), " ")
	result := cameTo(node)
	if node.Note != "" {
		result += " (" + node.Note + ")"
	}
	parts, folded := foldLeaves(node.Of)
	if folded != "" {
		result += ": " + folded
	}
	if room := p.width - indent - len(mark) - Width(result); len(parts) > 0 && room > 10 {
		text = shorten(text, room)
	}
	ink := Plain
	if node.HasTruth && node.Deciding {
		ink = inkOfTruth(node.Truth)
	}
	p.hanging(indent, mark, len(mark), ink, text+result)
	label := "from "
	for _, line := range node.From {
		p.hanging(indent+len(otherMark), label, len(label), Plain, line)
		label = "     "
	}
	for _, part := range parts {
		writeNode(p, part, indent+2)
	}
}

// foldLeaves puts parts that are readings and constants only into words that fit on the
// line of what they are parts of: "tube.wall is 2.1 mm". A constant that says the same as
// its text is left out. Where a part is made of others, or there are many, all stay parts.
func foldLeaves(of []*engine.Working) (parts []*engine.Working, folded string) {
	if len(of) > mostFolded {
		return of, ""
	}
	var said []string
	for _, part := range of {
		if len(part.Of) > 0 || len(part.From) > 0 || part.HasTruth {
			return of, ""
		}
		text := strings.Join(strings.Fields(part.Text), " ")
		if bare(text) == bare(part.Value) {
			continue
		}
		leaf := text + cameTo(part)
		if part.Note != "" {
			leaf += " (" + part.Note + ")"
		}
		said = append(said, leaf)
	}
	return nil, strings.Join(said, ", ")
}

// bare leaves out of a constant what its formula writes and its value does not: quotes,
// the sign between number and unit.
func bare(text string) string {
	return strings.NewReplacer(" ", "", "*", "", "'", "", `"`, "").Replace(text)
}

// cameTo is what a node came to behind its text; a part of the car, which comes to nothing,
// is named only.
func cameTo(node *engine.Working) string {
	if came := outcome(node); came != "" {
		return " is " + came
	}
	return ""
}

// outcome is what a node came to. A truth is told in its word.
func outcome(node *engine.Working) string {
	if node.Value == "" && node.HasTruth {
		return node.Truth.String()
	}
	return node.Value
}

func inkOfTruth(truth quantity.Truth) Ink {
	switch truth {
	case quantity.Yes:
		return Strong
	case quantity.No:
		return InkOf(engine.Gap)
	}
	return InkOf(engine.Marginal)
}

// shorten cuts a text to width cells; the cut is shown.
func shorten(text string, width int) string {
	text = Safe(text)
	if Width(text) <= width {
		return text
	}
	return cells.Truncate(text, width, "…")
}
