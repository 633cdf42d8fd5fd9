package vehicle

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// image is a mirror image of a part, on the other side of the car.
type image struct {
	original *Part
	part     *Part // nil as long as it is not made
	what     string
	label    told
}

// isMirrored reports whether parts of the type can have a mirror image.
func (t *PartType) isMirrored() bool {
	return slices.ContainsFunc(t.Particulars, func(x *Particular) bool { return x.Mirrored })
}

// geometryKeys are the words that the blocks of a type have for their place and their mirror
// image.
func (t *PartType) geometryKeys() []string {
	var words []string
	if t.hasPoint() {
		words = append(words, "tolerance")
	}
	if t.isMirrored() {
		words = append(words, "mirrored_as")
	}
	return words
}

// geometryKeyMeant says what to do about one of those words in a block that does not have
// it, "" for any other name.
func (r *sheetReader) geometryKeyMeant(b *opened, name string) string {
	switch {
	case b.part.Type.Particular(name) != nil:
		return ""
	case name == "tolerance":
		return `A tolerance stands behind its figure, as in "45 mm +/- 0.1 mm", or comes from the instrument named by measured_with. Only a block with a place has one for its coordinates.`
	case name != "mirrored_as":
		return ""
	}
	var types []string
	for _, t := range r.sheet.Vocabulary.Types() {
		if t.isMirrored() {
			types = append(types, t.Name)
		}
	}
	return fmt.Sprintf("A mirror image there can be of %s. Write the other side in a block of its own.", plainList(types, "or"))
}

// mirror reads the label of the mirror image of a part.
func (r *sheetReader) mirror(b *opened, a *hclsyntax.Attribute) {
	label, ok := b.one("mirrored_as", a.Expr)
	if !ok {
		return
	}
	if FoldText(label.text) == FoldText(b.part.Label) {
		b.fault("mirror-of-itself", label.all, "An image of itself", fmt.Sprintf(
			"Found %s as mirrored_as of the %s itself. Write another label, or take the line out: what is on the middle of the car needs no image.", Quote(label.text), b.what))
		return
	}
	r.images = append(r.images, image{original: b.part, what: b.what, label: label})
}

// makeImages makes every mirror image, or completes the block of one.
func (r *sheetReader) makeImages() {
	for i := range r.images {
		m := &r.images[i]
		list := m.original.Within.List(m.original.Type)
		part := r.samePart(list, m.label.text)
		if !r.canBeImage(m, part) {
			continue
		}
		if part == nil {
			part = newPart(m.original.Type, m.label.text, m.original.Within, m.label.all)
			list.Parts = slices.Insert(list.Parts, slices.Index(list.Parts, m.original)+1, part)
			r.parts[keyOf(list, part.Label)] = part
		}
		part.Original, m.part = m.original, part
		r.imageOf[m.original] = part
	}
	r.images = slices.DeleteFunc(r.images, func(m image) bool { return m.part == nil })
}

// canBeImage reports whether a part, nil for one without a block, can be the image of an
// original.
func (r *sheetReader) canBeImage(m *image, part *Part) bool {
	found := fmt.Sprintf("Found %s as mirrored_as of the %s", Quote(m.label.text), m.what)
	at := func(p *Part) string { return fmt.Sprintf("%s (%s)", p.blockName(), PlaceText(p.Range)) }
	switch {
	case part != nil && m.original.Original == part:
		r.fault("mirror-circular", m.label.all, "Mirrors in a circle", fmt.Sprintf(
			"%s, but that one has the %s as its image already. Write mirrored_as in one of the two only.", found, m.original.blockName()))
	case m.original.Original != nil:
		r.fault("mirror-of-image", m.label.all, "An image of an image", fmt.Sprintf(
			"%s, which is itself the image of the %s. Write mirrored_as in one part of each pair only.", found, at(m.original.Original)))
	case part != nil && r.imageOf[part] != nil:
		r.fault("mirror-of-image", m.label.all, "An image of an image", fmt.Sprintf(
			"%s, but that one has an image of its own, the %s. Write mirrored_as in one part of each pair only.", found, at(r.imageOf[part])))
	case part != nil && part.Original != nil:
		r.fault("mirror-of-two", m.label.all, "Two originals for one image", fmt.Sprintf(
			"%s, but that one is the image of the %s already. Give one of the two images another label.", found, at(part.Original)))
	default:
		return true
	}
	return false
}

// nameImages gives every image the parts that it names: the images of those that its
// original names. What it states itself stays.
func (r *sheetReader) nameImages() {
	for _, m := range r.images {
		for _, x := range m.original.Type.Particulars {
			v := &m.original.Values[x.Index]
			if !x.Mirrored || x.Names == nil || !x.Names.isMirrored() || v.State != Stated || m.part.Values[x.Index].State != Nothing {
				continue
			}
			r.nameImage(m, x, v)
		}
	}
}

// nameImage gives an image the parts that stand for those its original names in one
// particular.
func (r *sheetReader) nameImage(m image, x *Particular, v *Value) {
	named := v.Several
	if x.Kind == KindPartName {
		named = []*Part{v.Named}
	}
	var images []*Part
	var labels, lacking []string
	for _, p := range named {
		switch across := r.across(p); {
		case p == nil:
			return // told of where it is named
		case across == nil:
			lacking = append(lacking, Quote(p.Label))
		default:
			images, labels = append(images, across), append(labels, across.Label)
		}
	}
	if len(lacking) > 0 {
		r.noImage(m, x, lacking)
		return
	}
	made := Value{State: Stated, Text: strings.Join(labels, ", "), Note: v.Note, Range: v.Range}
	if made.Several = images; x.Kind == KindPartName {
		made.Named, made.Several = images[0], nil
	}
	m.part.Values[x.Index] = made
}

// noImage reports joints of an original of which nothing says where they are on the other
// side.
func (r *sheetReader) noImage(m image, x *Particular, lacking []string) {
	word, advice := "which has no mirror image and is not", "Write mirrored_as in that joint."
	if len(lacking) > 1 {
		word, advice = "which have no mirror image and are not", "Write mirrored_as in each of those joints."
	}
	r.fault("mirror-without-joint", m.label.all, "No joint on the other side", fmt.Sprintf(
		"Found %s as mirrored_as of the %s, but its %s names %s, %s on the middle of the car (y = 0) as far as the sheet says. %s",
		Quote(m.label.text), m.what, x.Name, plainList(lacking, "and"), word, advice))
}

// across is the part on the other side of the car that stands for a part: its image, or its
// original. A joint on the middle of the car is its own image, as is a tube that has none,
// such as a hoop from side to side. It is nil where there is no such part.
func (r *sheetReader) across(p *Part) *Part {
	switch {
	case p == nil:
		return nil
	case r.imageOf[p] != nil:
		return r.imageOf[p]
	case p.Original != nil:
		return p.Original
	case p.Type.hasPoint() && !isOnMiddle(p):
		return nil
	}
	return p
}

// isOnMiddle reports whether a joint is on the middle of the car, within its tolerance.
func isOnMiddle(joint *Part) bool {
	v := joint.stated("y")
	if v.State != Stated || len(v.Readings) == 0 {
		return false
	}
	all := v.Readings[0].Figure.Range
	for _, reading := range v.Readings[1:] {
		all = all.Hull(reading.Figure.Range)
	}
	return all.Low <= sameLength && all.High >= -sameLength
}

// sameLength is how near two lengths are the same, in metres.
const sameLength = 1e-9
