package engine

// A place finds the cell of a particular: at a fixed reference, of a part that there is
// once, of the part or row in a slot, or of a part that has to be worked out.
type place struct {
	kind   placeKind
	ref    int32 // fixed, inPart: index into refs
	slot   int32 // inSlot
	offset int32 // inPart, inSlot, ofPart: position in the part's references
	part   partNode
}

type placeKind uint8

const (
	fixed placeKind = iota
	inPart
	inSlot
	ofPart
)

// cell is the index of the cell.
func (p *place) cell(m *machine) int32 {
	switch p.kind {
	case fixed:
		return m.refs[p.ref]
	case inPart:
		return m.refs[m.refs[p.ref]+p.offset]
	case inSlot:
		return m.refs[m.slots[p.slot].base+p.offset]
	default:
		return m.refs[p.part.base(m)+p.offset]
	}
}

// survey records a read of a cell that is not exactly known; with everything, of any cell.
func (p *place) survey(m *machine, s *survey) *touch {
	i := p.cell(m)
	if p.kind == ofPart {
		p.part.survey(m, s)
		if picked, ok := p.part.(*pickedPart); ok && !s.everything && picked.base(m) == picked.list(m).phantom {
			return nil // the part is what is missing, not what it might say
		}
	}
	if s.everything || !m.cells[i].known() {
		return s.touch(i)
	}
	return nil
}

// surveyUnlessNone is survey of a read for which something else stands where it is stated
// not to exist: then the read itself keeps nothing open.
func (p *place) surveyUnlessNone(m *machine, s *survey) {
	if s.everything || m.cells[p.cell(m)].flags&(mayHold|mayLack) != 0 {
		p.survey(m, s)
	}
}

func (p *place) sign(m *machine, s *signer) {
	if p.kind == inSlot && s.bound(p.slot) {
		s.tag('m')
		s.int(int64(p.slot))
		s.int(int64(p.offset))
		return
	}
	if p.kind == ofPart {
		s.tag('o')
		p.part.sign(m, s)
		s.int(int64(p.offset))
		return
	}
	s.cell(p.cell(m))
}

// A fixedPart is a part that stands at a known base: the car, the cage.
type fixedPart struct{ at int32 }

func (n *fixedPart) base(*machine) int32        { return n.at }
func (n *fixedPart) survey(*machine, *survey)   {}
func (n *fixedPart) sign(_ *machine, s *signer) { s.tag('p'); s.int(int64(n.at)) }

// A slotPart is the part or row that a variable stands for.
type slotPart struct{ slot int32 }

func (n *slotPart) base(m *machine) int32    { return m.slots[n.slot].base }
func (n *slotPart) survey(*machine, *survey) {}
func (n *slotPart) sign(m *machine, s *signer) {
	if s.bound(n.slot) {
		s.tag('m')
		s.int(int64(n.slot))
		return
	}
	s.tag('p')
	s.int(int64(m.slots[n.slot].base))
}

// A childPart is the one part of a type that another part has.
type childPart struct {
	of     partNode
	offset int32 // position among the parent's references
}

func (n *childPart) base(m *machine) int32        { return m.refs[n.of.base(m)+n.offset] }
func (n *childPart) survey(m *machine, s *survey) { n.of.survey(m, s) }
func (n *childPart) sign(m *machine, s *signer)   { s.tag('k'); n.of.sign(m, s); s.int(int64(n.offset)) }

// A pickedPart is one part of a list by its label; where the list has no such part, a
// part of which nothing is known.
type pickedPart struct {
	of     partNode
	offset int32
	label  uint32
}

func (n *pickedPart) list(m *machine) *list { return &m.lists[m.refs[n.of.base(m)+n.offset]] }

func (n *pickedPart) base(m *machine) int32 {
	l := n.list(m)
	for i, label := range l.labels {
		if label == n.label {
			return l.elements[i]
		}
	}
	return l.phantom
}

func (n *pickedPart) survey(m *machine, s *survey) {
	n.of.survey(m, s)
	l := n.list(m)
	if n.base(m) != l.phantom {
		return
	}
	kind := UnknownOthers
	if l.complete {
		kind = NotFitted
	}
	s.lacks(unknown{kind: kind, list: m.refs[n.of.base(m)+n.offset], label: m.texts[n.label], cell: -1})
}
func (n *pickedPart) sign(m *machine, s *signer) {
	s.tag('l')
	n.of.sign(m, s)
	s.int(int64(n.offset))
	s.int(int64(n.label))
}
