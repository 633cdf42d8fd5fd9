package vehicle

import (
	"fmt"

	"github.com/hashicorp/hcl/v2"
)

// implied makes the parts that follow from the joints a tube goes through: a corner at each
// inner one, and its two ends. Blocks that are written of them are completed.
func (r *sheetReader) implied() {
	for _, tube := range r.sheet.partsNamed("tube") {
		through := tube.stated("through")
		if joints := through.Several; len(joints) >= 2 && areKnown(joints) {
			r.corners(tube, through)
			r.ends(tube, through)
		}
	}
}

// areKnown reports whether every part that is named was found.
func areKnown(parts []*Part) bool {
	for _, p := range parts {
		if p == nil {
			return false
		}
	}
	return true
}

// corners makes the corners of a tube.
func (r *sheetReader) corners(tube *Part, through *Value) {
	list := tube.List(tube.Type.PartNamed("corner"))
	r.following[list] = true
	known := map[*Part]bool{}
	var labels []string
	for _, joint := range through.Several[1 : len(through.Several)-1] {
		corner := r.follow(list, tube, joint.Label)
		r.standsFor(corner, joint, through)
		known[corner] = true
		labels = append(labels, joint.Label)
	}
	for _, corner := range list.Parts {
		if known[corner] {
			continue
		}
		advice := "It goes straight from end to end: take the block out."
		if len(labels) > 0 {
			advice = fmt.Sprintf("Write one of its inner joints: %s.", quotedList(labels, "or"))
		}
		r.fault("unknown-label", corner.Range, "No such corner", fmt.Sprintf(
			"Found %s in the %s, which turns at no joint of that label on its way. %s", corner.blockName(), tube.blockName(), advice))
	}
}

// ends makes the two ends of a tube.
func (r *sheetReader) ends(tube *Part, through *Value) {
	list := tube.List(tube.Type.PartNamed("end"))
	r.following[list] = true
	joints := through.Several
	for i, joint := range []*Part{joints[0], joints[len(joints)-1]} {
		r.standsFor(r.follow(list, tube, list.Type.Labels.Choices[i].Value), joint, through)
	}
}

// follow returns the part of a list with a label, making one that only follows from others
// where no block has spoken of it.
func (r *sheetReader) follow(list *PartList, within *Part, label string) *Part {
	if p := r.samePart(list, label); p != nil {
		return p
	}
	p := newPart(list.Type, label, within, hcl.Range{})
	r.addPart(list, p)
	return p
}

// standsFor gives a corner or an end its joint. One that is written must be the same.
func (r *sheetReader) standsFor(p, joint *Part, through *Value) {
	v := &p.Values[p.Type.Particular("joint").Index]
	if v.State == Nothing {
		*v = Value{State: Stated, Text: joint.Label, Named: joint, Range: through.Range}
	} else if v.Named != nil && v.Named != joint {
		r.fault("joint-unfit", v.Range, "Another joint", fmt.Sprintf(
			"Found %s as joint of the %s in the %s, which is at %s by what the tube goes through. Take the line out.",
			Quote(v.Named.Label), p.blockName(), p.Within.blockName(), Quote(joint.Label)))
	}
}
