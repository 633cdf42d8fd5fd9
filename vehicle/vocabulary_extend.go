package vehicle

import (
	"fmt"
	"slices"

	"github.com/hashicorp/hcl/v2"
)

// extension is a vocabulary in the making: a copy of one, with what a rulebook adds.
type extension struct {
	v      *Vocabulary
	book   string
	copies map[*PartType]*PartType
	now    map[*Particular]bool // those added by this extension
	faults hcl.Diagnostics
}

// Extend returns a vocabulary that also has what a rulebook adds: the classes a car can be
// entered in, nil for none, and particulars that DecodeParticular has read against v. Those
// for the car itself go into a part club of that rulebook. v stays as it is.
//
// The result only has more at the end: indices of parts, particulars and choices of v hold
// in it too, so several rulebooks can each extend the vocabulary of the one before. A book
// of the same name, such as an older edition, may declare the same particular again: the
// last declaration counts, and a choice that only one of them has is added to the list.
//
// What is at fault is left out of the result and reported.
func (v *Vocabulary) Extend(book string, classes *ChoiceList, added []Added) (*Vocabulary, hcl.Diagnostics) {
	e := &extension{book: book, copies: map[*PartType]*PartType{}, now: map[*Particular]bool{}}
	e.copy(v)
	if classes != nil {
		e.setClasses(classes)
	}
	var linked []Added
	for _, a := range added {
		if e.add(&a) {
			linked = append(linked, a)
		}
	}
	e.faults = append(e.faults, checkLinks(linked)...)
	return e.v, sortFaults(e.faults)
}

// copy makes a vocabulary like v that shares no part and no particular with it.
func (e *extension) copy(v *Vocabulary) {
	types := append([]*PartType{v.Root}, v.types...)
	for _, t := range types {
		c := *t
		c.book = e.book
		e.copies[t] = &c
	}
	e.v = &Vocabulary{Root: e.copies[v.Root], lists: v.lists}
	for _, t := range types {
		c := e.copies[t]
		c.Within = e.copies[t.Within]
		c.Parts = slices.Clone(t.Parts)
		for i, inner := range c.Parts {
			c.Parts[i] = e.copies[inner]
		}
		c.Particulars = slices.Clone(t.Particulars)
		for i, x := range c.Particulars {
			c.Particulars[i] = e.copyOf(x, c)
		}
		if t != v.Root {
			e.v.types = append(e.v.types, c)
		}
	}
}

// copyOf makes a particular like x that belongs to a part of the new vocabulary.
func (e *extension) copyOf(x *Particular, part *PartType) *Particular {
	c := *x
	c.Part, c.Names = part, e.copies[x.Names]
	return &c
}

// setClasses gives the car's class its choices. Where an earlier rulebook has given some,
// those keep their places.
func (e *extension) setClasses(classes *ChoiceList) {
	class := e.v.Type("car").Particular("class")
	if class.Kind == KindText {
		class.Kind, class.Choices = KindChoice, classes
		return
	}
	e.joinChoices(class, classes, classes.Name, class.Range)
}

// joinChoices adds choices to those of a particular.
func (e *extension) joinChoices(x *Particular, choices *ChoiceList, of string, at hcl.Range) {
	joined := x.Choices.join(choices)
	if len(joined.Choices) > mostChoices {
		e.faults = append(e.faults, Fault("choices-too-many", at, "Too many choices",
			fmt.Sprintf("Together with those of other rulebooks there are %d choices in %s; there can be at most %d. Check against fewer rulebooks at once.",
				len(joined.Choices), of, mostChoices)))
		return
	}
	x.Choices = joined
}

// add puts a particular where it belongs. It reports whether it could, in which case a
// holds the particular as it is in the new vocabulary.
func (e *extension) add(a *Added) bool {
	t := e.v.Type(a.Part)
	switch {
	case a.Part == "":
		t = e.club()
	case t == nil:
		return false // reported when the block was read
	}
	x := e.copyOf(a.Particular, t)
	x.Club, a.Particular = e.book, x
	e.now[x] = true
	if old := t.ClubParticular(e.book, x.Name); old != nil {
		return e.redeclare(old, x)
	}
	if taken := takenBy(t, x.Name); taken != "" {
		e.faults = append(e.faults, Fault("name-taken", x.Range, "A name that is taken",
			fmt.Sprintf("Found a particular %s for %s, which has %s of that name already. Use that one, or choose another name.", Quote(x.Name), t.Name, taken)))
		return false
	}
	x.Index = len(t.Particulars)
	t.Particulars = append(t.Particulars, x)
	return true
}

// redeclare puts x in the place of old, which the same rulebook has declared.
func (e *extension) redeclare(old, x *Particular) bool {
	if e.now[old] {
		e.faults = append(e.faults, SaidTwice(x.Range, "the particular "+Quote(x.Name), old.Range))
		return false
	}
	if x.Kind != old.Kind || x.Dimension != old.Dimension || x.Names != old.Names {
		e.faults = append(e.faults, Fault("particular-differs", x.Range, "Not the same as before",
			fmt.Sprintf("Another edition of this rulebook declares %s as another kind of thing, at %s. Check against one of the two at a time.",
				Quote(x.Name), PlaceText(old.Range))))
		return false
	}
	if x.Kind == KindChoice && x.Choices != old.Choices {
		choices := x.Choices
		x.Choices = old.Choices
		e.joinChoices(x, choices, Quote(x.Name), x.Range)
	}
	x.Index = old.Index
	x.Part.Particulars[x.Index] = x
	return true
}

// club returns the part that holds what the rulebook adds to the car itself.
func (e *extension) club() *PartType {
	if t := e.v.Club(e.book); t != nil {
		return t
	}
	root := e.v.Root
	t := &PartType{
		Name:     "club",
		Labelled: true,
		Within:   root,
		Index:    len(root.Parts),
		Place:    "papers",
		Help:     "What " + e.book + " asks for beside the usual; the label is that name.",
		Club:     e.book,
		book:     e.book,
	}
	root.Parts = append(root.Parts, t)
	e.v.types = append(e.v.types, t)
	return t
}

// takenBy says what of a part has a name already, "" when nothing has. What other rulebooks
// have added does not count.
func takenBy(t *PartType, name string) string {
	switch {
	case t.Particular(name) != nil:
		return "a particular"
	case t.PartNamed(name) != nil:
		return "a part"
	case t.PartsNamed(name) != nil:
		return "a list of parts"
	}
	return ""
}
