package vehicle

import (
	"fmt"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// vocabularyReader makes a vocabulary from its files. Lists of choices and the names of
// parts are read first, so that a file may speak of what a later one declares.
type vocabularyReader struct {
	v      *Vocabulary
	parts  []partBlock
	added  []Added // every particular, in the order of the files
	faults hcl.Diagnostics
}

// partBlock is a part with the block it is read from.
type partBlock struct {
	keys   *keys
	part   *PartType
	within told
	stage  Stage
}

// readVocabulary reads the files of a vocabulary.
func readVocabulary(sources []*Source) (*Vocabulary, hcl.Diagnostics) {
	root := &PartType{Name: "sheet", Help: "The whole build sheet."}
	r := &vocabularyReader{v: &Vocabulary{Root: root}}
	for _, source := range sources {
		for _, attribute := range attributesInOrder(source.Body) {
			r.faults = append(r.faults, Fault("unknown-key", attribute.NameRange, "A value outside any block",
				fmt.Sprintf("Found %s at the top level. Move it into the part or particular it belongs to.", attribute.Name)))
		}
		for _, block := range source.Body.Blocks {
			r.topLevel(source, block)
		}
	}
	for i := range r.parts {
		r.belongs(&r.parts[i])
	}
	for _, p := range r.parts {
		r.particulars(p)
	}
	for _, t := range r.v.types {
		r.faults = append(r.faults, distinctNames(t)...)
	}
	r.faults = append(r.faults, checkLinks(r.added)...)
	return r.v, r.faults
}

// topLevel reads a choices block, or the head of a part block.
func (r *vocabularyReader) topLevel(source *Source, block *hclsyntax.Block) {
	k := &keys{source: source, block: block, what: block.Type}
	label, ok := k.label(`"tube"`)
	if ok {
		k.what = fmt.Sprintf("%s %q", block.Type, label.text)
	}
	switch {
	case block.Type != "choices" && block.Type != "part":
		k.fault("unknown-block", block.TypeRange, "Unknown block",
			fmt.Sprintf("Found the block %s. A vocabulary holds part and choices blocks.", block.Type))
	case !ok:
	case block.Type == "choices":
		if r.v.choices(label.text) != nil {
			k.fault("name-taken", label.all, "A name that is taken", fmt.Sprintf("Found a second list of choices %s.", Quote(label.text)))
		}
		list := newListReader(k, label.text)
		list.blocks()
		r.v.lists = append(r.v.lists, list.done())
		k.done(nil, "", "value")
	default:
		r.part(k, label)
		return
	}
	r.faults = append(r.faults, k.faults...)
}

// part reads the head of a part block.
func (r *vocabularyReader) part(k *keys, label told) {
	k.checkName(label)
	t := &PartType{Name: label.text, Range: k.header()}
	if plural := k.text("plural"); plural.text != "" {
		k.checkName(plural)
		t.Plural = plural.text
	}
	if r.v.Type(t.Name) != nil {
		k.fault("name-taken", label.all, "A name that is taken", fmt.Sprintf("Found a second part %s.", Quote(t.Name)))
	}
	t.Labelled = k.truth("labelled", false) || t.Repeats()
	t.AtTop = k.truth("at_top", false)
	t.Place = k.wanted("place", "cockpit", "It is where on the car one looks for it.").text
	t.Help = k.wanted("help", "…", "One line that says what it is.").text
	r.v.types = append(r.v.types, t)
	r.parts = append(r.parts, partBlock{k, t, k.text("within"), k.stage()})
}

// belongs finds what a part belongs to, and reads which labels it can have.
func (r *vocabularyReader) belongs(p *partBlock) {
	p.part.Within = r.v.Root
	if p.within.text != "" {
		if p.part.Within = r.v.Type(p.within.text); p.part.Within == nil {
			p.keys.unknownPart(p.within, r.v)
			p.part.Within = r.v.Root
		}
	}
	for around := p.part.Within; around != r.v.Root && around != nil; around = around.Within {
		if around == p.part {
			p.keys.fault("part-circle", p.within.all, "A part within itself", "A part cannot belong to one that belongs to it.")
			p.part.Within = r.v.Root
			break
		}
	}
	p.part.Index = len(p.part.Within.Parts)
	p.part.Within.Parts = append(p.part.Within.Parts, p.part)
	p.part.Labels = r.labels(p.keys)
}

// labels reads the labels that a part can have, nil when it can have any: the name of a
// declared list of choices, or a list of texts.
func (r *vocabularyReader) labels(k *keys) *ChoiceList {
	given := k.block.Body.Attributes["labels"]
	if given == nil {
		return nil
	}
	if _, plain := given.Expr.(*hclsyntax.TupleConsExpr); plain {
		list := newListReader(k, k.block.Labels[0])
		list.plain(k.texts("labels"))
		return list.done()
	}
	t := k.text("labels")
	list := r.v.choices(t.text)
	if list == nil && t.text != "" {
		k.fault("choices-unknown", t.all, "Unknown list of choices", fmt.Sprintf("Found %s as labels of the %s.", Quote(t.text), k.what))
	}
	return list
}

// particulars reads the particulars of a part.
func (r *vocabularyReader) particulars(p partBlock) {
	for _, block := range p.keys.inner("particular") {
		k := &keys{source: p.keys.source, block: block, what: "particular"}
		added := k.particular(r.v, p.stage)
		added.Particular.Part = p.part
		added.Particular.Index = len(p.part.Particulars)
		p.part.Particulars = append(p.part.Particulars, added.Particular)
		r.added = append(r.added, added)
		r.faults = append(r.faults, k.faults...)
	}
	p.keys.done([]string{"plural", "within", "at_top", "labelled", "labels", "place", "stage", "help"}, "", "particular")
	r.faults = append(r.faults, p.keys.faults...)
}
