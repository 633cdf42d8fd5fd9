package rules

import (
	"fmt"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
)

var (
	clauseKeys = []string{"title", "concern", "page", "stage", "text", "text_at", "across", "applies", "where", "at_least",
		"demand", "look_for", "rectify", "evidence", "allowance", "judged", "from", "until", "as_at"}
	concernWords = []string{"safety", "eligibility", "advice"} // by Concern
)

// mostSubjects is the greatest at_least: more parts of one sort no car has.
const mostSubjects = 1000

// readChapters reads the chapters with their clauses. A chapter stands in one block, its
// number is given once in the rulebook; that of a clause once for each day.
func (l *loader) readChapters() {
	chapters, clauses := map[string]hcl.Range{}, 0
	for _, block := range l.blocks["chapter"] {
		chapter := &Chapter{Range: vehicle.HeaderOf(block.Block)}
		chapter.Number = l.number(block, "chapter", `"4"`)
		l.chapterOnce(chapter.Number, block, chapters)
		f := l.fieldsOf(block, strings.TrimSpace("chapter "+chapter.Number), []string{"title"}, []string{"clause"})
		if f.want("title", `"Safety cage"`) {
			chapter.Title = f.line("title")
		}
		for _, inner := range f.blocks("clause") {
			clause := &Clause{Chapter: chapter, Range: vehicle.HeaderOf(inner.Block)}
			clauses++
			clause.Number = l.number(inner, "clause", `"4.3.2"`)
			l.readClause(clause, inner)
			if clause.Number != "" {
				l.enterWording(clause, inner.LabelRanges[0])
			}
			chapter.Clauses = append(chapter.Clauses, clause)
		}
		l.book.Chapters = append(l.book.Chapters, chapter)
	}
	if clauses == 0 && !l.faults.HasErrors() {
		l.report(vehicle.Warning("no-clauses", l.book.Range, "A rulebook without clauses",
			"The rulebook has no clause, so nothing will be checked. Write its clauses into chapters: clause \"4.1\" { … } on lines of its own inside chapter \"4\" { … }."))
	}
}

// number reads the number of a chapter or clause; "" when it has a fault.
func (l *loader) number(block located, what, example string) string {
	number, ok := l.label(block, what, example)
	if !ok {
		return ""
	}
	at := block.LabelRanges[0]
	if found := numberFault(number); found != "" {
		l.report(vehicle.Fault("number-form", at, "Not a "+what+" number", fmt.Sprintf(
			"Found %s as number of a %s. %s Write it like %s.", vehicle.Quote(number), what, found, example)))
		return ""
	}
	return number
}

// chapterOnce reports a chapter's number that was given before.
func (l *loader) chapterOnce(number string, block located, places map[string]hcl.Range) {
	if number == "" {
		return
	}
	at, folded := block.LabelRanges[0], foldNumber(number)
	if first, twice := places[folded]; twice {
		l.report(vehicle.SaidTwice(at, "chapter "+number, first))
		return
	}
	places[folded] = at
}

// readClause reads what a clause says.
func (l *loader) readClause(c *Clause, block located) {
	f := l.fieldsOf(block, strings.TrimSpace("clause "+c.Number), clauseKeys, nil)
	if f.want("title", `"Main hoop tube"`) {
		c.Title = f.line("title")
	}
	if f.want("concern", `"safety", "eligibility" or "advice"`) {
		c.Concern = Concern(max(0, f.word("concern", concernWords)))
	}
	c.Page = f.page()
	c.Stage = f.stage()
	l.readPeriod(c, f)
	c.Text, c.TextAt = f.prose("text"), f.line("text_at")
	c.LookFor, c.Rectify = f.prose("look_for"), f.prose("rectify")
	c.Evidence = texts(f.lines("evidence"))
	c.AtLeast = f.count("at_least", mostSubjects)
	c.Judged = l.book.Judged
	if f.has("judged") {
		c.Judged = Judged(max(0, f.word("judged", judgedWords)))
	}
	if !f.has("demand") && !f.has("look_for") && !f.has("evidence") {
		f.fault("clause-asks-nothing", c.Range, "A clause that asks nothing", fmt.Sprintf(
			"The %s has neither demand nor look_for nor evidence. Write a formula as demand, "+
				"what a person is to look at as look_for, or the papers wanted as evidence.", f.what))
	}
	f.needs("where", "across", "It chooses among the parts that across names; a condition on the whole car is written as applies.")
	f.needs("at_least", "across", `It counts the parts that across names; write across = "tube in cage.tubes".`)
	f.needs("allowance", "demand", "It loosens a limit in the demand.")
	f.needs("as_at", "demand", "It says by the rules of which day the demand is judged.")
	l.readFormulas(c, f)
}

// needs reports that key is given without other.
func (f *fields) needs(key, other, why string) {
	if f.has(key) && !f.has(other) {
		f.fault("needs-another", f.block.Body.Attributes[key].NameRange, "Something is missing", fmt.Sprintf(
			"The %s has %s without %s. %s", f.what, key, other, why))
	}
}

// readFormulas reads across, applies, where, demand, as_at and allowance of a clause.
func (l *loader) readFormulas(c *Clause, f *fields) {
	scope := l.readAcross(c, f)
	c.Applies = l.formula(f, "applies", scope, Type{Kind: Truth})
	l.refuseSubject(c, f, "applies", c.Applies, "Write the condition on %s as where.")
	c.Where = l.formula(f, "where", scope, Type{Kind: Truth})
	c.Demand = l.formula(f, "demand", scope, Type{Kind: Truth})
	c.AsAt = l.formula(f, "as_at", scope, Type{Kind: Date})
	l.refuseSubject(c, f, "as_at", c.AsAt, "Name a day of the car, as in cage.built, instead of one of %s.")
	l.refuseMoment(f, c.AsAt)
	if f.has("allowance") && c.Demand != nil {
		l.readAllowance(c, f)
	}
}

// formula reads and checks the formula of key, which has to yield want. Nil when it is not
// given or wrong.
func (l *loader) formula(f *fields, key string, scope *Scope, want Type) *Formula {
	t, ok := f.text(key)
	if !ok {
		return nil
	}
	tree, faults := Check(t.text, t.at, scope, want)
	l.faults = append(l.faults, faults...)
	if tree == nil || faults.HasErrors() {
		return nil
	}
	formula := &Formula{Source: t.text, Tree: tree, Position: t.at, Range: t.all}
	if !l.refuseExtent(f, formula) {
		return nil
	}
	l.weighLimits(f, formula)
	return formula
}

// refuseSubject reports where the formula of key reads a variable of across: it is asked
// before there is any subject. advice has a place for the variable's name.
func (l *loader) refuseSubject(c *Clause, f *fields, key string, formula *Formula, advice string) {
	if formula == nil {
		return
	}
	for node := range Walk(formula.Tree) {
		v, ok := node.(*Variable)
		if !ok || !isAcross(c, v.Binding) {
			continue
		}
		at := formula.Position.Range(v.Span().From, v.Span().To)
		f.fault(vehicle.Code(strings.ReplaceAll(key, "_", "-")+"-reads-subject"), at, "A formula about one part", fmt.Sprintf(
			"Found %s in %s, which is asked of the whole car before any part is looked at. "+advice, v.Binding.Name, key, v.Binding.Name))
		return
	}
}

// refuseMoment reports where as_at reads the day of the check or the event's days: which
// rules count is fixed by the car's own history, or the clause would need none of it.
func (l *loader) refuseMoment(f *fields, formula *Formula) {
	if formula == nil {
		return
	}
	for node := range Walk(formula.Tree) {
		if _, ok := node.(*Moment); ok {
			at := formula.Position.Range(node.Span().From, node.Span().To)
			f.fault("as-at-reads-day", at, "A day that moves", "Found the day of the check or of the event in as_at. "+
				"Name a day of the car that stays, as in cage.built; a clause without as_at is judged by the rules of the day anyway.")
			return
		}
	}
}

// isAcross reports whether b is one of the variables that a clause runs over.
func isAcross(c *Clause, b *Binding) bool {
	for _, a := range c.Across {
		if a.Binding == b {
			return true
		}
	}
	return false
}
