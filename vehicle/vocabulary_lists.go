package vehicle

import (
	"fmt"
	"slices"

	"github.com/hashicorp/hcl/v2"
)

// mostChoices is how many values one list of choices can have.
const mostChoices = 64

// Find returns the position of the choice that a text means: its value or one of its
// synonyms, compared by FoldText. It is -1 when the text means none of them.
func (l *ChoiceList) Find(text string) int {
	folded := FoldText(text)
	return slices.IndexFunc(l.Choices, func(c Choice) bool {
		return FoldText(c.Value) == folded || slices.ContainsFunc(c.Synonyms, func(s string) bool { return FoldText(s) == folded })
	})
}

// Values returns the printed spelling of each choice.
func (l *ChoiceList) Values() []string {
	values := make([]string, len(l.Choices))
	for i, c := range l.Choices {
		values[i] = c.Value
	}
	return values
}

// join returns the list with the choices of another one added. A choice of other that
// means one of the list's is that one, its further spellings included, so that every
// position in the list stays as it is.
func (l *ChoiceList) join(other *ChoiceList) *ChoiceList {
	joined := &ChoiceList{Name: l.Name, Choices: slices.Clone(l.Choices)}
	for _, c := range other.Choices {
		at := joined.Find(c.Value)
		if at < 0 {
			at = len(joined.Choices)
			joined.Choices = append(joined.Choices, Choice{Value: c.Value, Means: c.Means, Club: c.Club})
		}
		own := &joined.Choices[at]
		own.Synonyms = slices.Clone(own.Synonyms)
		for _, s := range c.Synonyms {
			if joined.Find(s) < 0 {
				own.Synonyms = append(own.Synonyms, s)
			}
		}
	}
	return joined
}

// listReader gathers a list of choices and sees to it that no spelling means two of them.
type listReader struct {
	keys   *keys // of the block that the list stands in
	list   *ChoiceList
	places map[string]hcl.Range // of every spelling, folded
}

// newListReader begins to read the list of choices of a block.
func newListReader(k *keys, name string) *listReader {
	return &listReader{keys: k, list: &ChoiceList{Name: name}, places: map[string]hcl.Range{}}
}

// spelling notes a way to write a choice. It reports one that is taken, and "none", by
// which a sheet says that there is nothing.
func (r *listReader) spelling(t told) {
	folded := FoldText(t.text)
	if folded == "none" {
		r.keys.fault("choice-none", t.all, "A choice called none",
			`Found "none", by which a sheet says that something is not there. Use another word, such as "unlabelled", or write may_be_absent = true.`)
	}
	if first, twice := r.places[folded]; twice {
		r.keys.faults = append(r.keys.faults, SaidTwice(t.all, Quote(t.text), first))
		return
	}
	r.places[folded] = t.all
}

// plain reads choices = ["…", "…"].
func (r *listReader) plain(values []told) {
	for _, t := range values {
		r.spelling(t)
		r.list.Choices = append(r.list.Choices, Choice{Value: t.text})
	}
}

// blocks reads value "…" { synonyms = […] means = "…" } blocks.
func (r *listReader) blocks() {
	for _, block := range r.keys.inner("value") {
		k := &keys{source: r.keys.source, block: block, what: "value"}
		if label, ok := k.label(`"main hoop"`); ok {
			r.spelling(label)
			c := Choice{Value: label.text, Means: k.text("means").text}
			for _, s := range k.texts("synonyms") {
				r.spelling(s)
				c.Synonyms = append(c.Synonyms, s.text)
			}
			r.list.Choices = append(r.list.Choices, c)
		}
		k.done([]string{"synonyms", "means"}, "")
		r.keys.faults = append(r.keys.faults, k.faults...)
	}
}

// done returns the list, which must have from one to 64 choices.
func (r *listReader) done() *ChoiceList {
	switch n := len(r.list.Choices); {
	case n == 0:
		r.keys.fault("choices-missing", r.keys.header(), "No choices",
			fmt.Sprintf(`The %s has no choices. Write choices = ["…", "…"], or a value "…" { } block for each.`, r.keys.what))
	case n > mostChoices:
		r.keys.fault("choices-too-many", r.keys.header(), "Too many choices",
			fmt.Sprintf("Found %d choices in the %s; there can be at most %d. Leave some out, or make it a text.", n, r.keys.what, mostChoices))
	}
	return r.list
}
