package vehicle

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
)

// loaded reads which parts an incident loaded.
func (r *sheetReader) loaded(k *keys, n *Incident) {
	if k.block.Body.Attributes["loaded"] == nil {
		k.asked = append(k.asked, "loaded")
		k.fault("key-missing", k.header(), "Something is missing", fmt.Sprintf(
			"The %s does not say what it loaded. Write loaded = [\"harness\", \"seat driver\", \"cage\"], with every part that held someone or was bent.", k.what))
		return
	}
	known := map[*Part]bool{}
	for _, t := range k.listOnce("loaded") {
		parts, gear, fault := r.partsCalled(k, t)
		if fault != nil {
			k.faults = append(k.faults, fault)
		}
		if gear != nil {
			n.gear = append(n.gear, *gear)
			if len(parts) == 0 {
				n.NotOnSheet = append(n.NotOnSheet, t.text)
			}
		}
		for _, p := range parts {
			if p.Type == r.byName().crew {
				parts = append(parts, p.inner()...)
			}
		}
		for _, p := range parts {
			if !known[p] {
				known[p] = true
				n.Loaded = append(n.Loaded, p)
			}
		}
	}
}

// partsCalled returns the parts that a name means, and that name where it is gear of the
// crew.
func (r *sheetReader) partsCalled(k *keys, t told) (parts []*Part, gear *gearNamed, fault *hcl.Diagnostic) {
	called := r.byName()
	name := called.filedAs(t.text)
	parts = called.parts[name]
	of, rest := called.typeOf(name)
	switch {
	case of != nil && called.isGear(of) && !r.isSlipOfPlace(of, rest):
		return parts, &gearNamed{of, t.text, rest, t.all}, nil
	case len(parts) > 0 || !r.whole:
		return parts, nil, nil
	}
	return nil, nil, r.unknownPart(k, "loaded", t, of, rest)
}

// unknownPart is the fault of a name that is no part of the sheet. Of, where it is known, is
// the type that it begins with, and rest what stands behind that.
func (r *sheetReader) unknownPart(k *keys, key string, t told, of *PartType, rest string) *hcl.Diagnostic {
	advice := r.partAdvice(key, t, of, rest)
	return Fault("unknown-part", t.all, "No such part", fmt.Sprintf("Found %s in %s of the %s, but no part of the sheet is called so. %s", Quote(t.text), key, k.what, advice))
}

// partAdvice says which part was most likely meant by a name that is none.
func (r *sheetReader) partAdvice(key string, t told, of *PartType, rest string) string {
	if of == nil {
		return r.typeAdvice(inWords(t.text))
	}
	kind, labels, all := plain(of.Name), r.labelsOf(of), ""
	if r.byName().isGear(of) {
		labels = r.byName().crew.Labels.Values()
	}
	if key == "loaded" {
		all = " The name of the block alone means all of them."
	}
	switch near := Nearest(rest, labels); {
	case near != "":
		return fmt.Sprintf("Did you mean %s?", Quote(kind+" "+near))
	case len(r.byName().parts[inWords(of.Name)]) == 0:
		return fmt.Sprintf("The sheet has no %s. Describe it, or take it out.", kind)
	case len(labels) == 0 || len(labels) > fewChoices:
		return fmt.Sprintf("Write the label of one behind %s.%s", Quote(kind), all)
	}
	return fmt.Sprintf("Behind %s there can be %s.%s", Quote(kind), quotedList(labels, "and"), all)
}

// typeAdvice says which type of part a name most likely begins with.
func (r *sheetReader) typeAdvice(name string) string {
	var kinds []string
	for _, t := range r.sheet.Vocabulary.Types() {
		if t.Within != nil && t.Club == "" {
			kinds = append(kinds, plain(t.Name))
		}
	}
	slices.Sort(kinds)
	words := wordsOf(name)
	for n := min(len(words), 3); n > 0; n-- {
		if near := Nearest(strings.Join(words[:n], " "), kinds); near != "" {
			return fmt.Sprintf("Did you mean %s?", Quote(strings.Join(append([]string{near}, words[n:]...), " ")))
		}
	}
	return `Write the name of its block and its label, as in "harness driver", or the name of the block alone for all of them.`
}
