package engine

import (
	"math/bits"

	"gapsheet/vehicle/quantity"
)

// A constantSymbol is a choice as a bit, or a text as its number.
type constantSymbol struct {
	set  uint64
	text bool
}

func (n *constantSymbol) symbol(*machine) uint64 { return n.set }
func (n *constantSymbol) survey(_ *machine, s *survey) {
	if n.text {
		s.mention(n.set)
	}
}
func (n *constantSymbol) sign(_ *machine, s *signer) { s.tag('y'); s.int(int64(n.set)) }

// A readSymbol reads a choice or a text.
type readSymbol struct{ place }

func (n *readSymbol) symbol(m *machine) uint64 {
	c := &m.cells[n.cell(m)]
	if !c.sure() {
		m.unsure = true
	}
	return c.set
}

func (n *readSymbol) survey(m *machine, s *survey) {
	n.place.survey(m, s)
	m.mention(s, n.cell(m))
}

// mention notes the text of a cell that holds one.
func (m *machine) mention(s *survey, i int32) {
	if c := &m.cells[i]; c.kind == holdsText {
		s.mention(c.set)
	}
}

// A slotSymbol is a choice or a text that a variable stands for.
type slotSymbol struct {
	slot int32
	from producer
}

func (n *slotSymbol) symbol(m *machine) uint64 {
	v := &m.slots[n.slot]
	if v.unsure {
		m.unsure = true
	}
	return v.set
}

func (n *slotSymbol) survey(m *machine, s *survey) { n.from.surveyMember(m, s) }
func (n *slotSymbol) sign(m *machine, s *signer)   { signSlot(m, s, n.slot, n.from) }

// A choiceOfSymbols is condition ? then : otherwise on choices or texts.
type choiceOfSymbols struct {
	when            truthNode
	then, otherwise symbolNode
	text            bool
}

func (n *choiceOfSymbols) symbol(m *machine) uint64 {
	switch n.when.truth(m) {
	case quantity.Yes:
		return n.then.symbol(m)
	case quantity.No:
		return n.otherwise.symbol(m)
	}
	return joinSymbols(n.then.symbol(m), n.otherwise.symbol(m), n.text)
}

// joinSymbols is either of two symbols.
func joinSymbols(a, b uint64, text bool) uint64 {
	if !text {
		return a | b
	}
	if a == b && a != otherText {
		return a
	}
	return anyText
}

func (n *choiceOfSymbols) survey(m *machine, s *survey) {
	surveyChoice(m, s, n.when, n.then, n.otherwise)
}

func (n *choiceOfSymbols) sign(m *machine, s *signer) { signChoice(m, s, n.when, n.then, n.otherwise) }

// An otherwiseSymbol is x ?? y on choices and texts.
type otherwiseSymbol struct {
	place
	otherwise symbolNode
	text      bool
}

func (n *otherwiseSymbol) symbol(m *machine) uint64 {
	c := &m.cells[n.cell(m)]
	if c.flags&mayLack != 0 {
		m.unsure = true
	}
	switch c.flags & (mayHold | mayBeNone) {
	case mayHold:
		return c.set
	case mayBeNone:
		return n.otherwise.symbol(m)
	}
	return joinSymbols(c.set, n.otherwise.symbol(m), n.text)
}

func (n *otherwiseSymbol) survey(m *machine, s *survey) {
	n.place.surveyUnlessNone(m, s)
	m.mention(s, n.cell(m))
	if m.cells[n.cell(m)].flags&mayBeNone != 0 || s.everything {
		n.otherwise.survey(m, s)
	}
}

func (n *otherwiseSymbol) sign(m *machine, s *signer) {
	s.tag('|')
	n.place.sign(m, s)
	n.otherwise.sign(m, s)
}

// A textOfChoice is the text of a choice, for comparing choices of different lists or a
// choice with a text.
type textOfChoice struct {
	of    symbolNode
	texts []uint64 // number of each choice's text
}

func (n *textOfChoice) symbol(m *machine) uint64 {
	set := n.of.symbol(m)
	if set == 0 || set&(set-1) != 0 {
		return anyText
	}
	return n.texts[bits.TrailingZeros64(set)]
}

func (n *textOfChoice) survey(m *machine, s *survey) {
	n.of.survey(m, s)
	for _, text := range n.texts {
		s.mention(text)
	}
}
func (n *textOfChoice) sign(m *machine, s *signer) { s.tag('t'); n.of.sign(m, s) }
