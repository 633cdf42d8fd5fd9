package vehicle

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// rulebookBlocks are blocks that belong to a rulebook.
var rulebookBlocks = []string{"rulebook", "chapter", "clause", "term", "table", "particular", "worked_case"}

// seasonBlocks are blocks that belong to a season.
var seasonBlocks = []string{"season", "event", "crew"}

// everyPart are the names that stand in the block of any part beside its particulars.
var everyPart = []string{"note", "not_fitted", "unfinished"}

// isSheet reports whether what was read can be a sheet. A rulebook or an empty file gets a
// sentence of its own instead of a fault at every line.
func (r *sheetReader) isSheet() bool {
	empty := true
	for _, source := range r.sheet.Sources {
		empty = empty && len(source.Body.Attributes) == 0 && len(source.Body.Blocks) == 0
		for _, block := range source.Body.Blocks {
			if (block.Type == "rulebook" || block.Type == "chapter") && !slices.ContainsFunc(r.sheet.Sources, hasCar) {
				r.fault("rulebook-for-sheet", HeaderOf(block), "A rulebook, not a build sheet",
					"Found a rulebook where the build sheet of a car is wanted. Name the file or folder that holds the car block, and give the rulebook after --rulebook.")
				return false
			}
		}
	}
	if empty && r.whole {
		r.fault("empty-sheet", wholeFile(r.sheet.Sources[0].Name), "Nothing in the sheet",
			`Found nothing but blanks and remarks. A sheet begins with the car: car "NAME" { chassis = "…" }.`)
	}
	return !empty
}

// wantCar reports a sheet without a car.
func (r *sheetReader) wantCar(sources []*Source) {
	if r.whole && r.sheet.Car() == nil && !slices.ContainsFunc(sources, hasCar) {
		r.fault("car-missing", wholeFile(sources[0].Name), "No car in the sheet",
			`Found no car block. Write one in one of the files: car "NAME" { chassis = "…" }.`)
	}
}

// hasCar reports whether a file has a car block, even one with a fault in its label.
func hasCar(source *Source) bool {
	return slices.ContainsFunc(source.Body.Blocks, func(b *hclsyntax.Block) bool { return b.Type == "car" })
}

// unknownName reports a name = value that the block does not have.
func (r *sheetReader) unknownName(b *opened, a *hclsyntax.Attribute) {
	known := b.knownNames()
	advice := r.geometryKeyMeant(b, a.Name)
	if advice == "" {
		advice = r.blockMeant(b, a.Name)
	}
	if advice == "" {
		advice = r.nameMeant(b, a.Name)
	}
	if advice == "" && len(known) > 0 {
		advice = "It can have " + strings.Join(known, ", ") + "."
	}
	if advice == "" {
		advice = "Take the line out."
	}
	b.fault("unknown-key", a.NameRange, "Unknown name", fmt.Sprintf("Found %s in the %s. %s", Quote(a.Name), b.what, advice))
}

// knownNames are the names that the block has.
func (b *opened) knownNames() []string {
	var known []string
	for _, x := range b.part.Type.Particulars {
		if FoldText(x.Club) == FoldText(b.club) {
			known = append(known, x.Name)
		}
	}
	if b.club == "" {
		known = append(known, everyPart...)
		known = append(known, b.part.Type.geometryKeys()...)
	}
	return known
}

// blockMeant says which block a name = value should have been, "" when none.
func (r *sheetReader) blockMeant(b *opened, name string) string {
	if t := r.partHere(b.part, name); t != nil && b.club == "" {
		return fmt.Sprintf("It is a block: write %s {.", t.example())
	}
	if name == "evidence" || name == "club" || name == "instrument" || slices.Contains(logbookBlocks, name) {
		return fmt.Sprintf("It is a block: write %s \"NAME\" {.", name)
	}
	if slices.Contains(otherEvidence, name) && b.club == "" {
		return fmt.Sprintf("A paper or photo is a block: write evidence \"what it shows\" { file = \"papers/%s.jpg\" }.", name)
	}
	for _, x := range b.part.Type.Particulars {
		if x.Name == name && x.Club != "" && b.club == "" {
			return fmt.Sprintf("%s has it for the %s: write it inside club %s { }.", Quote(x.Club), b.part.Type.Name, Quote(x.Club))
		}
	}
	if t := r.typeNamed(name); t != nil {
		return fmt.Sprintf("It is a block and stands elsewhere: %s.", r.placeOfBlock(t))
	}
	return ""
}

// elsewhere names the parts that have a name which the block does not have, "" when none has.
func (r *sheetReader) elsewhere(b *opened, name string) string {
	var elsewhere []string
	for _, t := range r.sheet.Vocabulary.Types() {
		if x := t.Particular(name); x != nil && x.Club == "" {
			elsewhere = append(elsewhere, t.Name)
		}
	}
	if len(elsewhere) == 0 {
		return ""
	}
	advice := fmt.Sprintf("%s belongs to %s.", name, plainList(elsewhere, "and"))
	if near := Nearest(name, b.knownNames()); near != "" {
		advice = fmt.Sprintf("Did you mean %s? %s", near, advice)
	}
	return advice
}

// unknownBlock reports a block that cannot stand where it does.
func (r *sheetReader) unknownBlock(b *opened, block *hclsyntax.Block) {
	name := block.Type
	code, advice := Code("unknown-block"), ""
	var known []string
	for _, t := range r.partsHere(b.part) {
		known = append(known, t.Name)
		if t.Plural == name {
			advice = fmt.Sprintf("Write each in a block of its own: %s {.", t.example())
		}
	}
	known = append(known, "evidence", "club")
	if b.part == r.sheet.Root {
		known = append(append(known, "instrument"), logbookBlocks...)
	}
	elsewhere := r.typeNamed(name)
	r.misnamed(block)
	switch near := Nearest(name, known); {
	case advice != "":
	case slices.Contains(rulebookBlocks, name):
		code, advice = "block-misplaced", "It belongs to a rulebook. Move it there."
	case slices.Contains(seasonBlocks, name):
		code, advice = "block-misplaced", "It belongs to a season. Move it to a file of its own, which is named after --season."
	case b.particular(name) != nil:
		advice = fmt.Sprintf("It is not a block: write %s = with its value.", name)
	case elsewhere != nil:
		code, advice = "block-misplaced", fmt.Sprintf("It stands elsewhere: %s.", r.placeOfBlock(elsewhere))
	case near != "":
		advice = fmt.Sprintf("Did you mean %s?", near)
	case slices.Contains(otherEvidence, name):
		advice = "Did you mean evidence?"
	case len(namesWith(name, known)) > 0:
		advice = fmt.Sprintf("Did you mean %s?", plainList(namesWith(name, known), "or"))
	case len(known) > fewChoices:
		advice = "A sheet has the parts of a car, such as tube, seat or fuel_cell. Write the name of one, or say it in a note."
	default:
		advice = "There can be " + plainList(known, "and") + "."
	}
	b.fault(code, block.TypeRange, "A block out of place", fmt.Sprintf("Found the block %s in the %s. %s", Quote(name), b.what, advice))
}

// misnamed keeps the labels of a block that is not read in mind: what names a part by one
// of them is not told of a second time.
func (r *sheetReader) misnamed(block *hclsyntax.Block) {
	for _, label := range block.Labels {
		r.unreadLabels[FoldText(label)] = true
	}
}

// placeOfBlock says where the block of a type of part stands.
func (r *sheetReader) placeOfBlock(t *PartType) string {
	if t.AtTop || t.Within == r.sheet.Root.Type {
		return fmt.Sprintf("write %s { } at the top level of the sheet, outside any other block", t.example())
	}
	return fmt.Sprintf("write %s { } inside the block %s { }, on lines of its own", t.example(), t.Within.example())
}

// typeNamed returns the type of part of the built-in vocabulary with that name.
func (r *sheetReader) typeNamed(name string) *PartType {
	for _, t := range r.sheet.Vocabulary.Types() {
		if t.Name == name && t.Club == "" {
			return t
		}
	}
	return nil
}

// example is how a block of the type begins.
func (t *PartType) example() string {
	if t.Labelled {
		return t.Name + " " + t.exampleLabel()
	}
	return t.Name
}

// plainList puts words into a sentence: a, b or c.
func plainList(words []string, last string) string {
	if n := len(words) - 1; n > 0 {
		return strings.Join(words[:n], ", ") + " " + last + " " + words[n]
	}
	return strings.Join(words, "")
}
