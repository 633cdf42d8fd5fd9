package rules

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
)

var (
	caseKeys = []string{"clause", "subject", "on", "answer", "reason", "source", "status"}
	// verdictWords are the answers that a clause can give, worst first.
	verdictWords = []string{"gap", "not recorded", "marginal", "by eye", "under dispensation", "meets", "does not apply"}
)

// readCases reads the worked cases: scraps of a build sheet with the answer that a clause
// gives, worked out by hand.
func (l *loader) readCases() {
	places := map[string]hcl.Range{}
	for _, block := range l.blocks["worked_case"] {
		w := &WorkedCase{Range: vehicle.HeaderOf(block.Block)}
		var ok bool
		if w.Name, ok = l.label(block, "worked case", `"thin wall"`); ok {
			l.nameOnce(places, w.Name, block.LabelRanges[0])
		}
		f := l.fieldsOf(block, "worked case "+vehicle.Quote(w.Name), caseKeys, []string{"as_built"})
		l.readCase(w, f)
		l.book.Cases = append(l.book.Cases, w)
	}
}

// readCase reads what a worked case says.
func (l *loader) readCase(w *WorkedCase, f *fields) {
	if f.has("on") {
		w.On, w.HasOn = f.day("on")
	}
	if f.want("clause", `"4.3.2"`) {
		w.Clause = l.caseClause(w, f)
	}
	if f.want("answer", `"gap" or "meets"`) {
		if i := f.word("answer", verdictWords); i >= 0 {
			w.Answer = verdictWords[i]
		}
	}
	w.Reason, w.Source, w.Status = f.prose("reason"), f.line("source"), f.line("status")
	if !f.has("reason") && !f.has("source") {
		f.fault("case-without-reason", w.Range, "An answer without a reason", fmt.Sprintf(
			"The %s has neither reason nor source. Write why the answer is as it is, or the document that it is taken from.", f.what))
	}
	l.readAsBuilt(w, f)
	if f.has("subject") {
		l.readSubject(w, f)
	}
}

// caseClause finds the clause that a case is about: of several wordings the one in force on
// the day of the case, else the first.
func (l *loader) caseClause(w *WorkedCase, f *fields) *Clause {
	number := f.line("clause")
	if number == "" {
		return nil
	}
	if w.HasOn {
		if c := l.book.ClauseOn(number, w.On.From); c != nil {
			return c
		}
	}
	if c := l.book.ClauseNumbered(number); c != nil {
		return c
	}
	f.fault("no-such-clause", f.at("clause"), "No such clause", fmt.Sprintf(
		"Found %s as clause of the %s, but the rulebook has no clause of that number. Write the number as the clause has it.", vehicle.Quote(number), f.what))
	return nil
}

// readAsBuilt reads the scrap of a build sheet.
func (l *loader) readAsBuilt(w *WorkedCase, f *fields) {
	scraps := f.blocks("as_built")
	if len(scraps) == 0 {
		f.fault("as-built-missing", w.Range, "Something is missing", fmt.Sprintf(
			"The %s has no as_built. Write what the build sheet would say between as_built { and }, on lines of its own: tube \"1\" { wall = \"2.4 mm\" }.", f.what))
		return
	}
	for _, second := range scraps[1:] {
		f.report(vehicle.SaidTwice(vehicle.HeaderOf(second.Block), "as_built", vehicle.HeaderOf(scraps[0].Block)))
	}
	if labels := scraps[0].LabelRanges; len(labels) > 0 {
		f.fault("label-count", labels[0], "A name too many", "Found a name behind as_built. Write as_built { … } without one.")
	}
	sheet, faults := vehicle.DecodeScrap(f.source, scraps[0].Body, l.book.Vocabulary)
	l.faults = append(l.faults, faults...)
	w.AsBuilt = sheet
}

// readSubject reads the label of the part that a case speaks of. It has to be a part of
// the scrap over which the clause runs.
func (l *loader) readSubject(w *WorkedCase, f *fields) {
	w.Subject = f.line("subject")
	if w.Clause == nil || w.Subject == "" || w.AsBuilt == nil {
		return
	}
	if len(w.Clause.Across) == 0 {
		f.fault("subject-of-none", f.at("subject"), "A subject too many", fmt.Sprintf(
			"Found a subject, but clause %s speaks of the whole car. Take the line out.", w.Clause.Number))
		return
	}
	var labels []string
	for _, a := range w.Clause.Across {
		labels = append(labels, labelsOf(w.AsBuilt.Root, a.Binding.Is.PartType)...)
	}
	folded := vehicle.FoldText(w.Subject)
	if !slices.ContainsFunc(labels, func(label string) bool { return vehicle.FoldText(label) == folded }) {
		f.fault("no-such-subject", f.at("subject"), "No such subject", fmt.Sprintf(
			"Found %s as subject, but as_built has no part of that label over which clause %s runs. Its parts are: %s.",
			vehicle.Quote(w.Subject), w.Clause.Number, strings.Join(labels, ", ")))
	}
}

// labelsOf lists the labels of all parts of a type in and below a part.
func labelsOf(p *vehicle.Part, t *vehicle.PartType) []string {
	var labels []string
	for _, list := range p.Lists {
		for _, inner := range list.Parts {
			if inner.Type == t {
				labels = append(labels, inner.Label)
			}
			labels = append(labels, labelsOf(inner, t)...)
		}
	}
	return labels
}
