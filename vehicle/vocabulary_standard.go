package vehicle

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// standardList ends the name of every list of equipment standards, the lists that a rulebook
// can add to.
const standardList = " standard"

// AddedStandard is an equipment standard that was declared in a rulebook and is not yet part
// of a vocabulary.
type AddedStandard struct {
	List      string // name of the list that it is for: "harness standard"
	Choice    Choice
	spellings []told // the value and its synonyms, with their places
}

// DecodeStandard reads a standard block of a rulebook:
//
//	standard "SFI 16.7" { list = "harness standard"  synonyms = ["16.7"]  means = "…" }
//
// v is the vocabulary it will be added to. All faults of the block are reported; what was
// read is of use only when there are none.
func DecodeStandard(src *Source, block *hclsyntax.Block, v *Vocabulary) (AddedStandard, hcl.Diagnostics) {
	k := &keys{source: src, block: block, what: "standard", added: true}
	var a AddedStandard
	once := newListReader(k, "")
	if label, ok := k.label(`"SFI 16.7"`); ok {
		k.what = fmt.Sprintf("standard %q", label.text)
		once.spelling(label)
		a.Choice.Value, a.spellings = label.text, append(a.spellings, label)
	}
	for _, synonym := range k.texts("synonyms") {
		once.spelling(synonym)
		a.Choice.Synonyms, a.spellings = append(a.Choice.Synonyms, synonym.text), append(a.spellings, synonym)
	}
	a.Choice.Means = k.text("means").text
	names := v.standardLists()
	list := k.wanted("list", "harness standard", "It is one of: "+strings.Join(names, ", ")+".")
	a.List = FoldText(list.text)
	if list.text != "" && !slices.ContainsFunc(names, func(name string) bool { return FoldText(name) == a.List }) {
		advice := "Write one of: " + strings.Join(names, ", ") + "."
		if near := Nearest(list.text, names); near != "" {
			advice = fmt.Sprintf("Did you mean %q? %s", near, advice)
		}
		k.fault("choices-unknown", list.all, "No such list of standards", fmt.Sprintf("Found %s as list of the %s. %s", Quote(list.text), k.what, advice))
	}
	k.done([]string{"list", "synonyms", "means"}, "")
	return a, sortFaults(k.faults)
}

// standardLists are the names of the lists of equipment standards.
func (v *Vocabulary) standardLists() []string {
	var names []string
	for _, list := range v.lists {
		if strings.HasSuffix(list.Name, standardList) {
			names = append(names, list.Name)
		}
	}
	return names
}

// WithStandards returns a vocabulary that also has the equipment standards of a rulebook,
// which DecodeStandard has read against v, at the end of their lists. v stays as it is, and
// what holds for Extend holds here: positions in a list stay. A standard that another
// rulebook of the run has added under the same name, such as an older edition, is that one,
// with the synonyms of both. What is at fault is left out of the result and reported.
func (v *Vocabulary) WithStandards(book string, added []AddedStandard) (*Vocabulary, hcl.Diagnostics) {
	if len(added) == 0 {
		return v, nil
	}
	e := &extension{book: book, copies: map[*PartType]*PartType{}, now: map[*Particular]bool{}}
	e.copy(v)
	e.v.lists = slices.Clone(v.lists)
	places := map[string]hcl.Range{}
	for _, a := range added {
		e.addStandard(&a, places)
	}
	for i, list := range v.lists {
		if e.v.lists[i] != list {
			e.replace(list, e.v.lists[i])
		}
	}
	return e.v, sortFaults(e.faults)
}

// addStandard puts a standard into its list. places are the spellings that the rulebook has
// used, by list.
func (e *extension) addStandard(a *AddedStandard, places map[string]hcl.Range) {
	at := slices.IndexFunc(e.v.lists, func(list *ChoiceList) bool { return FoldText(list.Name) == a.List })
	if at < 0 {
		return // reported when the block was read
	}
	list := e.v.lists[at]
	same := list.Find(a.Choice.Value)
	for _, s := range a.spellings {
		if !e.isFree(s, list, same, places) {
			return
		}
	}
	one := a.Choice
	one.Club = e.book
	joined := list.join(&ChoiceList{Choices: []Choice{one}})
	if len(joined.Choices) > mostChoices {
		e.faults = append(e.faults, Fault("choices-too-many", a.spellings[0].all, "Too many choices", fmt.Sprintf(
			"Found a standard for the list %s, which has %d already, those of other rulebooks among them; there can be at most %d. Take one out that no rule asks for.",
			Quote(list.Name), len(list.Choices), mostChoices)))
		return
	}
	for _, s := range a.spellings {
		places[list.Name+"\n"+FoldText(s.text)] = s.all
	}
	e.v.lists[at] = joined
}

// isFree reports a spelling that means something in the list already. same is the position of
// the choice that the standard's own name means there, -1 for none: one that another rulebook
// has added is the same standard, and may share further spellings.
func (e *extension) isFree(s told, list *ChoiceList, same int, places map[string]hcl.Range) bool {
	if first, twice := places[list.Name+"\n"+FoldText(s.text)]; twice {
		e.faults = append(e.faults, SaidTwice(s.all, Quote(s.text), first))
		return false
	}
	taken := list.Find(s.text)
	if taken < 0 || taken == same && list.Choices[taken].Club != "" {
		return true
	}
	has := list.Choices[taken]
	as := "as a standard of its own"
	if FoldText(has.Value) != FoldText(s.text) {
		as = "as a synonym of " + Quote(has.Value)
	}
	advice := "Take it out here, and write the standard in clauses and build sheets as it is."
	if has.Club != "" {
		advice = fmt.Sprintf("The rulebook %s has put it there. Check against one of the two at a time, or agree on one spelling.", Quote(has.Club))
	}
	e.faults = append(e.faults, Fault("standard-exists", s.all, "A standard that is there already",
		fmt.Sprintf("Found %s, which the list %s has %s. %s", Quote(s.text), Quote(list.Name), as, advice)))
	return false
}

// replace puts a list in the place of another wherever choices or labels are taken from it.
func (e *extension) replace(old, list *ChoiceList) {
	for _, t := range append([]*PartType{e.v.Root}, e.v.types...) {
		if t.Labels == old {
			t.Labels = list
		}
		for _, x := range t.Particulars {
			if x.Choices == old {
				x.Choices = list
			}
		}
	}
}
