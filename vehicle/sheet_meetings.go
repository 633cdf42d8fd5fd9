package vehicle

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle/quantity"
)

// meetings makes the meetings of every joint: one for each two tubes that go through it, or
// of which one goes through and the joint lies on the other as read. A joint's list of them
// is complete where all tubes are there and have a known place. Blocks that are written of
// meetings are completed.
func (r *sheetReader) meetings() {
	joints := r.sheet.partsNamed("joint")
	if len(joints) == 0 || r.faults.HasErrors() {
		return
	}
	t := r.sheet.Vocabulary.Type("joint").PartNamed("meeting")
	tubesAt, placed, near := r.tubesAt()
	made := 0
	for _, joint := range joints {
		list := joint.List(t)
		tubes := tubesAt[joint]
		if made += len(tubes) * (len(tubes) - 1) / 2; len(tubes) > mostAtJoint || made > mostMeetings {
			r.fault("joint-crowded", joint.Range, "Too many tubes at one joint", fmt.Sprintf(
				"Found %d tubes at or within %s of the %s, more than a cage has. Look at the joints they go through, and at the tolerance of the joints.",
				len(tubes), millimetres(near), joint.blockName()))
			return
		}
		for i, one := range tubes {
			for _, other := range tubes[i+1:] {
				r.meeting(list, joint, one, other)
			}
		}
		if placed[joint] {
			r.settleMeetings(list, joint, len(tubes))
		} else if len(list.Parts) > 0 {
			list.Complete, list.Fitted = false, quantity.Yes
		}
	}
}

// tubesAt returns the tubes at each joint in the order of the sheet, for which joints those
// are surely all, and how near counts as there, in metres.
func (r *sheetReader) tubesAt() (tubesAt map[*Part][]*Part, placed map[*Part]bool, near float64) {
	frame, near := r.sheet.placed()
	frame.trace(near)
	tubesAt, placed = map[*Part][]*Part{}, map[*Part]bool{}
	order := map[*Part]int{}
	tubes := r.sheet.partsNamed("tube")
	for i, tube := range tubes {
		order[tube] = i
		for _, joint := range tube.stated("through").Several {
			tubesAt[joint] = append(tubesAt[joint], tube)
		}
	}
	for _, rest := range frame.Structure.Resting() {
		joint := frame.Joints[rest.Joint].Part
		tubesAt[joint] = append(tubesAt[joint], frame.Tubes[rest.Member].Part)
	}
	for joint, found := range tubesAt {
		slices.SortFunc(found, func(a, b *Part) int { return order[a] - order[b] })
		tubesAt[joint] = slices.Compact(found)
	}
	cage := r.holder(r.sheet.Vocabulary.Type("cage"))
	if cage.List(r.sheet.Vocabulary.Type("tube")).Complete && len(frame.Tubes) == len(tubes) {
		for _, joint := range frame.Joints {
			placed[joint.Part] = true
		}
	}
	return tubesAt, placed, near
}

// meeting makes the meeting of two tubes at a joint.
func (r *sheetReader) meeting(list *PartList, joint, one, other *Part) {
	p := r.samePart(list, other.Label+" and "+one.Label)
	if p == nil {
		p = r.follow(list, joint, one.Label+" and "+other.Label)
	} else {
		one, other = other, one
	}
	for name, tube := range map[string]*Part{"one": one, "other": other} {
		if v := &p.Values[p.Type.Particular(name).Index]; v.State == Nothing {
			*v = Value{State: Stated, Text: tube.Label, Named: tube, Range: joint.Range}
		}
	}
}

// settleMeetings notes that a joint has no other meetings than those of its tubes, and
// reports any that is written beside.
func (r *sheetReader) settleMeetings(list *PartList, joint *Part, tubes int) {
	list.Complete, list.Fitted = true, quantity.No
	if len(list.Parts) > 0 {
		list.Fitted = quantity.Yes
	}
	if len(list.Parts) == tubes*(tubes-1)/2 {
		return
	}
	var known []string
	for _, p := range list.Parts {
		if p.Range == (hcl.Range{}) {
			known = append(known, p.Label)
		}
	}
	for _, p := range list.Parts {
		if p.Range == (hcl.Range{}) || r.isMeeting(p, joint) {
			continue
		}
		advice := "No two tubes meet there."
		if len(known) > 0 {
			advice = fmt.Sprintf("There meet %s.", quotedList(known, "and"))
		}
		r.fault("unknown-label", p.Range, "No such meeting", fmt.Sprintf("Found %s in the %s. %s", p.blockName(), joint.blockName(), advice))
	}
}

// isMeeting reports whether a written meeting is of two tubes that its label names.
func (r *sheetReader) isMeeting(p, joint *Part) bool {
	one, other := p.stated("one").Named, p.stated("other").Named
	return one != nil && other != nil && strings.Contains(p.Label, one.Label) && strings.Contains(p.Label, other.Label)
}
