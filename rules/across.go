package rules

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"gapsheet/vehicle"
)

// mostAcross is how many variables a clause can run over.
const mostAcross = 2

// readAcross reads the variables a clause runs over and returns the scope with them in it.
// The second list may use the first variable: "strap in harness.straps".
func (l *loader) readAcross(c *Clause, f *fields) *Scope {
	scope := l.scope
	list := f.lines("across")
	for i, t := range list {
		if i == mostAcross {
			f.fault("across-too-many", t.all, "Too many variables", fmt.Sprintf(
				"Found %d variables in across of the %s; a clause runs over one or two.", len(list), f.what))
			break
		}
		binding, parts := l.naming(f, "across", t, scope)
		if parts != nil {
			c.Across = append(c.Across, Across{Binding: binding, List: parts})
		}
		scope = scope.With(binding)
	}
	return scope
}

// naming reads "tube in cage.tubes": a name for each part of a list in turn. Where that has
// a fault, the formula is nil and the binding has no type, so that the formulas which use
// the name are looked at for what else is wrong with them.
func (l *loader) naming(f *fields, key string, t written, scope *Scope) (*Binding, *Formula) {
	name, start, ok := cutNaming(t.text)
	if !ok {
		f.fault("naming-form", t.all, "Not a name and a list", fmt.Sprintf(
			"Found %s as %s of the %s. Write a name, the word in and a list of parts: \"tube in cage.tubes\".", vehicle.Quote(t.text), key, f.what))
		return &Binding{Name: l.guessName(t.text)}, nil
	}
	from := strings.Index(t.text, name)
	at := t.at.Range(utf8.RuneCountInString(t.text[:from]), utf8.RuneCountInString(t.text[:from+len(name)]))
	if found := l.nameFault(name); found != "" {
		f.fault("name-taken", at, "A name that cannot be used", fmt.Sprintf(
			"Found %s as a name in %s of the %s. %s", vehicle.Quote(name), key, f.what, found))
		return &Binding{Name: name}, nil
	}
	if scope.Binding(name) != nil {
		f.fault("name-taken", at, "A name used twice", fmt.Sprintf(
			"Found %s twice as a name in %s of the %s. Give the second its own name.", name, key, f.what))
		return &Binding{Name: name}, nil
	}
	// Blanks in place of the naming keep every place of the list in the text.
	list := strings.Repeat(" ", utf8.RuneCountInString(t.text[:start])) + t.text[start:]
	tree, faults := Check(list, t.at, scope, Type{})
	if plural := l.pluralFor(t.text[start:], scope); plural != "" && faults.HasErrors() {
		begins := utf8.RuneCountInString(t.text[:start])
		f.fault("parts-wanted", t.at.Range(begins, begins+utf8.RuneCountInString(strings.TrimSpace(t.text[start:]))), "Not a list of parts", fmt.Sprintf(
			"Found %s after the word in, which is one part. Write the list of all: %s.", vehicle.Quote(strings.TrimSpace(t.text[start:])), plural))
		return &Binding{Name: name}, nil
	}
	l.faults = append(l.faults, faults...)
	if tree == nil || faults.HasErrors() {
		return &Binding{Name: name}, nil
	}
	is := tree.Type()
	if is.Kind != List || is.Item.Kind != Part {
		span := tree.Span()
		f.fault("parts-wanted", t.at.Range(span.From, span.To), "Not a list of parts", fmt.Sprintf(
			"Found %s after the word in, which is not a list of parts. Write a list such as cage.tubes.", vehicle.Quote(strings.TrimSpace(t.text[start:]))))
		return &Binding{Name: name}, nil
	}
	return &Binding{Name: name, Is: *is.Item}, &Formula{Source: t.text, Tree: tree, Position: t.at, Range: t.all}
}

// pluralFor is a list with its last name, the singular of a sort of parts, put into the
// plural; "" where that is no list of parts either.
func (l *loader) pluralFor(list string, scope *Scope) string {
	list = strings.TrimSpace(list)
	at := strings.LastIndex(list, ".") + 1
	for _, t := range l.book.Vocabulary.Types() {
		if t.Name != list[at:] || !t.Repeats() {
			continue
		}
		plural := list[:at] + t.Plural
		if tree, faults := CheckText(plural, scope, Type{Kind: List}); tree != nil && len(faults) == 0 {
			return plural
		}
	}
	return ""
}

// guessName is the name that was most likely meant where none can be made out: that of a
// part of the list, or the first word.
func (l *loader) guessName(text string) string {
	words := strings.Fields(text)
	_, list, _ := strings.Cut(words[len(words)-1], ".")
	for _, t := range l.book.Vocabulary.Types() {
		if len(words) == 1 && t.Repeats() && (t.Plural == list || t.Plural == words[0]) {
			return t.Name
		}
	}
	return words[0]
}

// cutNaming cuts "tube in cage.tubes" into the name and the byte where the list starts.
func cutNaming(text string) (name string, list int, ok bool) {
	words := strings.Fields(text)
	if len(words) < 3 || words[1] != "in" {
		return "", 0, false
	}
	name = words[0]
	after := strings.Index(text, name) + len(name)
	after += strings.Index(text[after:], "in") + len("in")
	return name, after + strings.IndexFunc(text[after:], func(r rune) bool { return !unicode.IsSpace(r) }), true
}

// nameFault says why a name cannot be given to a variable, with what to do instead; ""
// when it can.
func (l *loader) nameFault(name string) string {
	if !nameForm.MatchString(name) {
		return "A name is written in small letters a to z, digits and underlines, and begins with a letter."
	}
	if means := Reserved(name, l.book.Vocabulary); means != "" {
		return fmt.Sprintf("It is %s in every formula. Choose another name.", means)
	}
	for _, term := range l.book.Terms {
		if term.Name == name {
			return fmt.Sprintf("It is a term of this rulebook (%s). Choose another name.", vehicle.PlaceText(term.Range))
		}
	}
	return ""
}
