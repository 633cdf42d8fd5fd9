package rules

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
)

var termKeys = []string{"given", "means"}

// draft is a term while its formula is not checked yet.
type draft struct {
	term  *Term
	f     *fields
	means written
	uses  []use
	state draftState
}

// use is the mention of a term in the formula of another.
type use struct {
	of *draft
	at Span
}

// draftState says how far the checking of a term has come.
type draftState uint8

const (
	waiting draftState = iota
	underWay
	done
)

// mostTerms is how many terms a rulebook may have: far more than anyone can remember.
const mostTerms = 500

// readTerms reads the terms. They may use each other in any order, but not in a circle.
func (l *loader) readTerms() {
	if blocks := l.blocks["term"]; len(blocks) > mostTerms {
		l.report(vehicle.Fault("terms-too-many", vehicle.HeaderOf(blocks[mostTerms].Block), "Too many terms", fmt.Sprintf(
			"Found %d terms; a rulebook can have at most %d. Put figures that differ into a table.", len(blocks), mostTerms)))
		l.blocks["term"] = blocks[:mostTerms]
	}
	drafts := l.draftTerms()
	for _, d := range drafts {
		d.uses = usesIn(d.means.text, drafts)
	}
	var path []*draft
	for _, d := range drafts {
		l.finishTerm(d, path)
	}
	l.scope = l.scope.WithTerms(l.book.Terms...)
}

// draftTerms reads names and texts of all terms, so that each is known to all.
func (l *loader) draftTerms() []*draft {
	var drafts []*draft
	places := map[string]hcl.Range{}
	for _, block := range l.blocks["term"] {
		name, ok := l.nameOf(block, "term", `"thick"`, places)
		f := l.fieldsOf(block, strings.TrimSpace("term "+name), termKeys, nil)
		if ok {
			ok = l.refusePartName(name, block.LabelRanges[0])
		}
		if !ok {
			name = ""
		}
		d := &draft{term: &Term{Name: name, Range: vehicle.HeaderOf(block.Block)}, f: f}
		if f.want("means", `"tube.wall >= 2.5*mm"`) {
			d.means, _ = f.text("means")
		}
		drafts = append(drafts, d)
	}
	for _, d := range drafts {
		if d.term.Name != "" {
			l.book.Terms = append(l.book.Terms, d.term)
		}
	}
	return drafts
}

// refusePartName reports a term that is named as a part is: formulas pick parts by that
// name, and across gives it to a variable.
func (l *loader) refusePartName(name string, at hcl.Range) bool {
	for _, t := range l.book.Vocabulary.Types() {
		if t.Name == name || t.Plural == name {
			l.report(vehicle.Fault("name-taken", at, "A name that cannot be used", fmt.Sprintf(
				"Found %s as name of a term. It is a part in every formula. Choose another name.", vehicle.Quote(name))))
			return false
		}
	}
	return true
}

// usesIn finds the terms that a formula mentions. A name behind a dot belongs to what
// stands before it.
func usesIn(formula string, drafts []*draft) []use {
	var uses []use
	if len(formula) > longestFormula {
		return nil
	}
	tokens := scan(formula, nil)
	for i, t := range tokens {
		if t.kind != tokenWord || i > 0 && strings.HasSuffix(formula[tokens[i-1].start:tokens[i-1].end], ".") {
			continue
		}
		word := formula[t.start:t.end]
		if j := slices.IndexFunc(drafts, func(d *draft) bool { return d.term.Name == word }); j >= 0 {
			uses = append(uses, use{drafts[j], t.at})
		}
	}
	return uses
}

// finishTerm checks a term after those it uses. path holds the terms that led to it.
func (l *loader) finishTerm(d *draft, path []*draft) {
	if d.state != waiting {
		return
	}
	d.state = underWay
	path = append(path, d)
	for _, u := range d.uses {
		if u.of.state == underWay {
			l.report(circleFault(path, u))
			continue
		}
		l.finishTerm(u.of, path)
	}
	l.checkTerm(d)
	d.state = done
}

// circleFault names the circle that a mention closes.
func circleFault(path []*draft, closing use) *hcl.Diagnostic {
	start := slices.Index(path, closing.of)
	var names []string
	for _, d := range path[start:] {
		names = append(names, d.term.Name)
	}
	names = append(names, closing.of.term.Name)
	at := path[len(path)-1].means.at.Range(closing.at.From, closing.at.To)
	return vehicle.Fault("term-circle", at, "Terms in a circle", fmt.Sprintf(
		"Found terms that are explained by each other: %s. Write one of them without the others.", strings.Join(names, " → ")))
}

// checkTerm checks the formula of a term. Terms that are not done have no tree yet, so
// that their use here is no fault, and none is told twice.
func (l *loader) checkTerm(d *draft) {
	if d.means.at == nil {
		return
	}
	scope := l.scope.WithTerms(l.book.Terms...)
	if d.f.has("given") {
		d.term.Given = &Binding{}
		if t, ok := d.f.text("given"); ok {
			d.term.Given, _ = l.naming(d.f, "given", t, scope)
			scope = scope.With(d.term.Given)
		}
	}
	if d.term.Means = l.formula(d.f, "means", scope, Type{}); d.term.Means != nil {
		l.extents[d.term] = l.extentOf(d.term.Means.Tree)
	}
}
