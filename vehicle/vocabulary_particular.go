package vehicle

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// Added is a particular that was declared in a file and is not yet part of a vocabulary.
type Added struct {
	Part       string // block name of the type of part it is for, "" for the car itself
	Particular *Particular
	part       hcl.Range // where the part is named
	inherits   hcl.Range
	fills      hcl.Range
}

// particularKeys are the keys of a particular block.
var particularKeys = []string{
	"kind", "unit", "plausible", "choices", "names", "inherits", "fills",
	"may_be_absent", "changeable", "measured", "stage", "help", "how",
}

// bookKeys are those it has in a rulebook alone, ownKeys those in the built-in vocabulary
// alone: what follows from other particulars, what a mirror image shares, and what happens
// once or often, is worked out by the program for the particulars it knows.
var (
	bookKeys = []string{"part"}
	ownKeys  = []string{"derived", "mirrored", "happens"}
)

// ownKinds are the kinds that only the built-in vocabulary has, with what a rulebook writes
// instead.
var ownKinds = map[Kind]string{
	KindPartNames: `Write a particular of the kind "part name" for each part that is named.`,
	KindPoint:     `Write three particulars of the kind "length", one for each coordinate.`,
}

// DecodeParticular reads a particular block of a rulebook: its keys are those of the
// built-in vocabulary files, and part, which names the type of part it is for. v is the
// vocabulary it will be added to; choices and parts are looked up in it. All faults of the
// block are reported; what was read is of use only when there are none.
func DecodeParticular(src *Source, block *hclsyntax.Block, v *Vocabulary) (Added, hcl.Diagnostics) {
	k := &keys{source: src, block: block, what: "particular", added: true}
	part := k.text("part")
	if part.text != "" && (v.Type(part.text) == nil || v.Type(part.text).Club != "") {
		k.unknownPart(part, v)
	}
	added := k.particular(v, StageUnset)
	added.Part, added.part = part.text, part.all
	return added, sortFaults(k.faults)
}

// particular reads the block as a particular. stage is the one it has when it names none.
func (k *keys) particular(v *Vocabulary, stage Stage) Added {
	x := &Particular{Range: k.header(), Stage: stage}
	added := Added{Particular: x}
	if label, ok := k.label(`"bend_radius"`); ok {
		k.checkName(label)
		x.Name = label.text
		k.what = fmt.Sprintf("particular %q", label.text)
	}
	k.kind(x)
	k.values(x, v)
	x.Changeable = k.truth("changeable", true)
	if x.Kind != KindSize && x.Kind != KindPoint && x.Kind != KindPartNames {
		x.MayBeAbsent = k.truth("may_be_absent", false)
	}
	if !k.added {
		x.Derived, x.Mirrored = k.truth("derived", false), k.truth("mirrored", false)
	}
	if inherits := k.inherited(x); inherits.text != "" {
		x.Inherits, added.inherits = inherits.text, inherits.all
	}
	if x.Kind == KindSize || x.Kind == KindPoint {
		added.fills = k.filled(x)
	}
	if k.block.Body.Attributes["stage"] != nil {
		x.Stage = k.stage()
	}
	x.Help = k.wanted("help", "…", "One line that says what it is.").text
	x.How = k.wanted("how", "…", "One line that says how and with what it is measured or found out.").text
	k.particularDone(x)
	return added
}

// particularDone reports the keys and blocks of a particular that its kind has no use for.
// A kind nobody knows has use for all.
func (k *keys) particularDone(x *Particular) {
	if x.Kind == 0 {
		return
	}
	known := slices.Concat(particularKeys, ownKeys)
	if k.added {
		known = slices.Concat(particularKeys, bookKeys)
	}
	var blocks []string
	if x.Kind == KindChoice {
		blocks = append(blocks, "value")
	}
	k.done(known, "the kind "+Quote(k.kindWord(x)), blocks...)
}

// kind reads the kind of a particular, and its dimension when it is a figure.
func (k *keys) kind(x *Particular) {
	t := k.wanted("kind", "length", "It says what sort of thing is recorded.")
	if t.text == "" {
		return
	}
	word := FoldText(t.text)
	if kind, ok := kindNamed(word); ok {
		x.Kind = kind
		if instead := ownKinds[kind]; k.added && instead != "" {
			x.Kind = 0
			k.fault("kind-unfit", t.all, "A kind for the built-in vocabulary alone",
				fmt.Sprintf("Found %s as kind of the %s, which a rulebook cannot add. %s", Quote(t.text), k.what, instead))
		}
		return
	}
	if dimension, ok := quantity.DimensionNamed(word); ok {
		x.Kind, x.Dimension = KindNumber, dimension
		return
	}
	known := slices.Concat(kindWords[KindCount:], dimensionWords)
	if k.added {
		known = slices.Concat(kindWords[KindCount:KindPartNames], dimensionWords)
	}
	advice := "Write one of " + strings.Join(known, ", ") + "."
	if near := Nearest(word, known); near != "" {
		advice = fmt.Sprintf("Did you mean %q? %s", near, advice)
	}
	k.fault("kind-unknown", t.all, "Unknown kind", fmt.Sprintf("Found %s as kind of the %s. %s", Quote(t.text), k.what, advice))
}

// kindWord is the kind as the author wrote it.
func (k *keys) kindWord(x *Particular) string {
	if x.Kind == KindNumber {
		return strings.TrimPrefix(x.Dimension.String(), "a plain ")
	}
	return x.Kind.String()
}

// values reads the keys that say which values a particular of its kind can have.
func (k *keys) values(x *Particular, v *Vocabulary) {
	switch x.Kind {
	case KindNumber:
		k.unit(x)
		k.plausible(x)
		x.Measured = k.truth("measured", true)
	case KindCount:
		k.plausible(x)
		x.Measured = k.truth("measured", false)
	case KindDate:
		k.plausibleDays(x)
		if !k.added {
			x.Happens = k.happens()
		}
	case KindChoice:
		k.choice(x, v)
	case KindPartName, KindPartNames:
		t := k.wanted("names", "tube_stock", "It is the type of part whose label is written.")
		if t.text == "" {
			return
		}
		if x.Names = v.Type(t.text); x.Names == nil || !x.Names.Labelled {
			k.unknownPart(t, v)
		}
	}
}

// happensWords are the words for how often there can be a day, by Happens.
var happensWords = [...]string{HappensOnce: "once", HappensOften: "often"}

// happens reads how often there can be what a date is the day of.
func (k *keys) happens() Happens {
	t := k.text("happens")
	if t.text == "" {
		return HappensUnsaid
	}
	if at := slices.Index(happensWords[:], t.text); at > 0 {
		return Happens(at)
	}
	k.fault("happens-unknown", t.all, "Unknown word", fmt.Sprintf(
		"Found %s as happens of the %s. Write once or often.", Quote(t.text), k.what))
	return HappensUnsaid
}

// inherited reads the particular through which the value of another part stands in.
func (k *keys) inherited(x *Particular) told {
	switch x.Kind {
	case KindSize, KindPoint, KindPartName, KindPartNames:
		return told{}
	}
	return k.text("inherits")
}

// filled reads the particulars that a size or a point sets, and where they are named.
func (k *keys) filled(x *Particular) hcl.Range {
	wanted, advice := 2, `Write fills = ["outside", "wall"], the two particulars that the size sets.`
	if x.Kind == KindPoint {
		wanted, advice = 3, `Write fills = ["x", "y", "z"], the three particulars that the point sets.`
	}
	k.value("fills")
	if k.block.Body.Attributes["fills"] == nil {
		k.fault("key-missing", k.header(), "Something is missing", fmt.Sprintf("The %s has no fills. %s", k.what, advice))
		return k.header()
	}
	at := k.block.Body.Attributes["fills"].Expr.Range()
	names := k.texts("fills")
	if len(names) != wanted {
		k.fault("fills-form", at, "Too many or too few names", advice)
		return at
	}
	for _, name := range names {
		x.Fills = append(x.Fills, name.text)
	}
	return at
}

// stage reads a stage of the build.
func (k *keys) stage() Stage {
	t := k.text("stage")
	stage, ok := StageNamed(t.text)
	if t.text == "" || ok {
		return stage
	}
	advice := "Write one of " + strings.Join(StageWords(), ", ") + "."
	if near := Nearest(t.text, StageWords()); near != "" {
		advice = fmt.Sprintf("Did you mean %q? %s", near, advice)
	}
	k.fault("stage-unknown", t.all, "Unknown stage", fmt.Sprintf("Found %s as stage of the %s. %s", Quote(t.text), k.what, advice))
	return StageUnset
}

// unknownPart reports a name that is no type of part, or none that can be meant here.
func (k *keys) unknownPart(t told, v *Vocabulary) {
	var known []string
	for _, part := range v.types {
		if part.Club == "" {
			known = append(known, part.Name)
		}
	}
	advice := "Write the name of a block of the build sheet, such as seat or tube."
	if near := Nearest(t.text, known); near != "" {
		advice = fmt.Sprintf("Did you mean %s?", near)
	}
	k.fault("part-unknown", t.all, "Unknown part", fmt.Sprintf("Found %s, which is no part of a car that is meant here. %s", Quote(t.text), advice))
}
