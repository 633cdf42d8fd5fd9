package vehicle

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// open reads the block of a part. A part that cannot be kept, since it stands there
// already or has no usable label, is read all the same for the faults in it.
func (r *sheetReader) open(b *opened, t *PartType, block *hclsyntax.Block) {
	within := r.within(b, t)
	label, ok := r.label(b, t, block)
	part := newPart(t, label, within, HeaderOf(block))
	list := within.List(t)
	switch first := r.samePart(list, label); {
	case !ok:
	case first == nil:
		r.addPart(list, part)
	case first.Range == (hcl.Range{}):
		first.Range, first.Label = part.Range, label
		part = first
	case t.Name == "car":
		r.faults = append(r.faults, Fault("said-twice", part.Range, "A second car", fmt.Sprintf(
			"Found a second car; the first is at %s. A sheet is about one car: write each in a file or folder of its own.", PlaceText(first.Range))))
	default:
		r.faults = append(r.faults, SaidTwice(part.Range, part.blockName(), first.Range))
	}
	r.body(&opened{keys: &keys{source: b.source, block: block, what: part.blockName()}, part: part})
}

// samePart returns the part of the list that a label means, for a part that can be there
// once only the one that is; nil when there is none yet.
func (r *sheetReader) samePart(list *PartList, label string) *Part {
	return r.parts[keyOf(list, label)]
}

// addPart adds a part to its list.
func (r *sheetReader) addPart(list *PartList, p *Part) {
	list.Parts = append(list.Parts, p)
	r.parts[keyOf(list, p.Label)] = p
}

// keyOf is the key of the part that a label means in a list.
func keyOf(list *PartList, label string) partKey {
	if !list.Type.Repeats() {
		return partKey{list: list}
	}
	return partKey{list, FoldText(label)}
}

// within is the part that a type written in a block belongs to: the block's own, or for one
// written at the top level of the sheet perhaps another.
func (r *sheetReader) within(b *opened, t *PartType) *Part {
	if t.Within == b.part.Type {
		return b.part
	}
	return r.holder(t.Within)
}

// holder returns the one part of a type, making one that is only implied when no block has
// spoken of it yet.
func (r *sheetReader) holder(t *PartType) *Part {
	if t == r.sheet.Root.Type {
		return r.sheet.Root
	}
	within := r.holder(t.Within)
	list := within.List(t)
	if len(list.Parts) == 0 {
		r.addPart(list, newPart(t, "", within, hcl.Range{}))
	}
	return list.Parts[0]
}

// label reads the label of a part's block. ok is false when it is not usable.
func (r *sheetReader) label(b *opened, t *PartType, block *hclsyntax.Block) (label string, ok bool) {
	switch n := len(block.LabelRanges); {
	case !t.Labelled && n > 0:
		b.fault("label-count", block.LabelRanges[0], "A label too many",
			fmt.Sprintf("Found %s behind %s. There can be one only, which has no label: write %s {.", Quote(block.Labels[0]), t.Name, t.Name))
		return "", false
	case !t.Labelled, n == 0 && !t.Repeats() && r.scrap:
		return "", true
	case n == 0:
		b.fault("label-count", block.TypeRange, "A label is missing",
			fmt.Sprintf("Found %s without a label. Write %s %s {.", t.Name, t.Name, t.exampleLabel()))
		return "", false
	case n > 1:
		b.fault("label-count", block.LabelRanges[1], "A label too many",
			fmt.Sprintf("Found %s as second label. Write one in double quotes: %s %s {.", Quote(block.Labels[1]), t.Name, Quote(block.Labels[0])))
		return "", false
	}
	label, ok = b.labelOf(block)
	if !ok || t.Labels == nil {
		return label, ok
	}
	choice := t.Labels.Find(label)
	if choice < 0 {
		b.fault("unknown-label", block.LabelRanges[0], "Unknown label",
			fmt.Sprintf("Found %s as label of a %s. %s", Quote(label), t.Name, t.Labels.Advice(label)))
		return "", false
	}
	return t.Labels.Choices[choice].Value, true
}

// labelOf reads the first label of a block as a text of one line.
func (k *keys) labelOf(block *hclsyntax.Block) (label string, ok bool) {
	label, fault := k.source.Label(block, 0)
	label = strings.TrimSpace(label)
	switch {
	case fault != nil:
		k.faults = append(k.faults, fault)
		return "", false
	case label == "":
		k.fault("text-empty", block.LabelRanges[0], "An empty label",
			fmt.Sprintf("The label of the %s is empty. Write what it is called.", block.Type))
		return "", false
	case strings.ContainsAny(label, "\r\n"):
		k.fault("one-line-wanted", block.LabelRanges[0], "Several lines where one is wanted",
			fmt.Sprintf("The label of the %s has several lines. Write it on one.", block.Type))
		return "", false
	}
	return label, true
}

// exampleLabel is a label that a part of the type could have, in quotes.
func (t *PartType) exampleLabel() string {
	if t.Labels != nil {
		return Quote(t.Labels.Choices[0].Value)
	}
	if t.Repeats() {
		return `"1"`
	}
	return `"NAME"`
}

// fewChoices is how many choices a message lists even where it knows the likely one.
const fewChoices = 12

// Advice says, as a sentence or two, which choice was most likely meant by a text that is
// none of them, or what can be chosen.
func (l *ChoiceList) Advice(text string) string {
	values := l.Values()
	spellings := slices.Clone(values)
	for _, c := range l.Choices {
		spellings = append(spellings, c.Synonyms...)
	}
	advice := "Write one of " + quotedList(values, "or") + "."
	near := Nearest(text, spellings)
	if near == "" {
		return advice
	}
	question := fmt.Sprintf("Did you mean %s?", Quote(l.Choices[l.Find(near)].Value))
	if len(values) > fewChoices {
		return question
	}
	return question + " " + advice
}

// quotedList puts texts into a sentence: "a", "b" or "c".
func quotedList(texts []string, last string) string {
	var list strings.Builder
	for i, text := range texts {
		switch {
		case i == 0:
		case i == len(texts)-1:
			list.WriteString(" " + last + " ")
		default:
			list.WriteString(", ")
		}
		list.WriteString(Quote(text))
	}
	return list.String()
}
