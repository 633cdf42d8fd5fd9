package engine

import (
	"encoding/binary"
	"math"
	"slices"

	"gapsheet/vehicle/quantity"
)

// A survey collects what is behind an open answer: the cells that are read by its
// undecided parts, how often, where their ranges are cut by limits, and what else keeps
// it open. With everything set it collects all cells, decided or not.
type survey struct {
	everything bool
	touched    []touch
	where      map[int32]int
	atoms      map[string]*atom
	atomOrder  []string
	unknown    []unknown
	days       *dayCuts       // where the days of the run are looked for, nil elsewhere
	places     map[int32]bool // cells that were read for where a place is
	texts      []uint64       // every text that an undecided part mentions or reads

	// Of derived cells among those touched, found by bases:
	derived []*derived // what they follow by
	spots   []int32    // cells that an exact car is made of: those touched that are not derived, and what derived ones follow from
	shared  []int32    // coordinates and the like that more than one figure hangs on
}

// A touch is one cell that was read.
type touch struct {
	cell   int32
	count  int
	limits int       // how many of the reads are held against exact limits
	cuts   []float64 // least floats of the pieces that limits cut the range into
}

// An atom is a comparison or test that is open, by its signature.
type atom struct {
	count     int
	reflexive bool // both sides read the same: it holds whatever the figure
}

// An unknown is something that keeps an answer open and is not a cell's value.
type unknown struct {
	kind  CauseKind
	list  int32  // index of the list, -1 where it is none
	by    any    // the node that found it
	cell  int32  // of what is missing, where it is one; else -1
	label string // of the one part of the list that is not there, "" for the list; see rawCause
}

func newSurvey(everything bool) *survey {
	return &survey{everything: everything, where: map[int32]int{}, atoms: map[string]*atom{}, places: map[int32]bool{}}
}

// touch records a read of a cell.
func (s *survey) touch(cell int32) *touch {
	i, ok := s.where[cell]
	if !ok {
		i = len(s.touched)
		s.where[cell] = i
		s.touched = append(s.touched, touch{cell: cell})
	}
	s.touched[i].count++
	return &s.touched[i]
}

// bases finds what the derived cells among those touched follow from.
func (s *survey) bases(m *machine) {
	s.derived = m.derivedIn(s)
	count := map[int32]int{}
	add := func(at int32, times int) {
		if count[at] == 0 {
			s.spots = append(s.spots, at)
		}
		count[at] += times
	}
	for i := range s.touched {
		d := m.derived[s.touched[i].cell]
		if d == nil {
			add(s.touched[i].cell, s.touched[i].count)
			continue
		}
		for _, at := range d.from {
			if !m.cells[at].known() {
				add(at, 1)
			}
		}
	}
	for _, at := range s.spots {
		i, read := s.where[at]
		if count[at] > 1 && (!read || s.places[at] || count[at] > s.touched[i].count) {
			s.shared = append(s.shared, at) // others are split as they are
		}
	}
}

// cut records that a limit's band cuts the range of a cell.
func (s *survey) cut(cell int32, band quantity.Range) {
	i, ok := s.where[cell]
	if !ok {
		return
	}
	t := &s.touched[i]
	t.limits++
	t.cuts = append(t.cuts, band.Low, math.Nextafter(band.High, math.Inf(1)))
}

// mention records a text that one which is not known may be held against.
func (s *survey) mention(text uint64) {
	if text >= firstText && !slices.Contains(s.texts, text) {
		s.texts = append(s.texts, text)
	}
}

// blame records what keeps an answer open beside cells: something about a list, or about
// the node that found it.
func (s *survey) blame(kind CauseKind, list int32, by any) {
	s.lacks(unknown{kind: kind, list: list, by: by, cell: -1})
}

func (s *survey) lacks(found unknown) {
	if found.list >= 0 {
		found.by = nil // one word about a list is enough
	}
	if !slices.Contains(s.unknown, found) {
		s.unknown = append(s.unknown, found)
	}
}

// atom counts an open comparison by its signature.
func (s *survey) atom(signature string) *atom {
	a := s.atoms[signature]
	if a == nil {
		a = &atom{}
		s.atoms[signature] = a
		s.atomOrder = append(s.atomOrder, signature)
	}
	a.count++
	return a
}

// A signer writes what a node reads as bytes. Two nodes with the same bytes have the
// same value in every car that agrees with the sheet.
type signer struct {
	bytes []byte
	inner []int32 // slots bound inside the node that is being signed
}

func (s *signer) tag(tag byte) { s.bytes = append(s.bytes, tag) }
func (s *signer) cell(i int32) { s.tag('c'); s.int(int64(i)) }
func (s *signer) int(i int64)  { s.bytes = binary.AppendVarint(s.bytes, i) }
func (s *signer) float(f float64) {
	s.bytes = binary.BigEndian.AppendUint64(s.bytes, math.Float64bits(f))
}
func (s *signer) text(t string)   { s.int(int64(len(t))); s.bytes = append(s.bytes, t...) }
func (s *signer) bind(slot int32) { s.inner = append(s.inner, slot) }
func (s *signer) unbind()         { s.inner = s.inner[:len(s.inner)-1] }

// bound reports whether a slot is bound inside the node that is being signed, so that
// what it holds at present says nothing.
func (s *signer) bound(slot int32) bool {
	for _, b := range s.inner {
		if b == slot {
			return true
		}
	}
	return false
}

// signature signs one node.
func signature(m *machine, n node) string {
	var s signer
	n.sign(m, &s)
	return string(s.bytes)
}
