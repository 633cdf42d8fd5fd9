package cage

import (
	"math"
)

// Solid is the metal of a round tube: its centreline from one place along it to another, in
// metres, and its outside diameter.
type Solid struct {
	Outside float64

	pieces []Piece
	begins []float64 // of each piece, along the whole centreline
	box    traced
}

// SolidOf returns the metal of a tube between two places along its centreline. Where nothing
// is left between them it is empty and overlaps nothing.
func SolidOf(course Course, outside, from, to float64) Solid {
	s := Solid{Outside: outside}
	passed := 0.0
	for _, piece := range course.Pieces() {
		length := piece.Length()
		first, last := max(0, from-passed), min(length, to-passed)
		if last-first > closest {
			s.pieces = append(s.pieces, piece.between(first/length, last/length))
			s.begins = append(s.begins, passed+first)
		}
		passed += length
	}
	for i, piece := range s.pieces {
		for k := range 9 { // of an arc within a sagitta that widened covers
			s.box.include(piece.At(float64(k)/8), i == 0 && k == 0)
		}
	}
	return s
}

// between returns the part of a piece between two shares of the way along.
func (p Piece) between(from, to float64) Piece {
	part := p
	part.From, part.To = p.At(from), p.At(to)
	part.Turn *= to - from
	return part
}

// end returns where the metal ends, along the centreline.
func (s *Solid) end() float64 {
	last := len(s.pieces) - 1
	return s.begins[last] + s.pieces[last].Length()
}

// at returns the place so far along the centreline; at a seam of two pieces that of either.
func (s *Solid) at(along float64) Vector {
	i := len(s.pieces) - 1
	for i > 0 && s.begins[i] > along {
		i--
	}
	share := (along - s.begins[i]) / s.pieces[i].Length()
	return s.pieces[i].At(min(1, max(0, share)))
}

// Nearest returns how far along the centreline the metal's axis is nearest to a place, and how
// far away that is, in metres: farther than anything for no metal.
func (s *Solid) Nearest(place Vector) (along, away float64) {
	away = math.Inf(1)
	for i, piece := range s.pieces {
		if share, d := piece.Nearest(place); d < away {
			along, away = s.begins[i]+share*piece.Length(), d
		}
	}
	return along, away
}

// Overlap is a stretch of a tube in which its axis comes nearer to that of another than
// their metal allows.
type Overlap struct {
	From, To          float64 // along the tube
	Along, OtherAlong float64 // where they are nearest
	At                Vector  // half way between the axes there
	Apart             float64 // the axes there, metres
}

// stretchStep is how fine a stretch is looked for, in metres: shorter overlaps are not seen.
const stretchStep = 2e-3

// Overlaps returns the stretches of a tube in which its axis comes nearer to another's than
// half the sum of their outsides less the margin, in order. It walks along the tube by no
// more than the way that is surely free: the distance to the other axis changes by no more
// than the way walked.
func (s *Solid) Overlaps(other *Solid, margin float64) []Overlap {
	reach := max((s.Outside+other.Outside)/2-margin, 1e-3)
	if len(s.pieces) == 0 || len(other.pieces) == 0 || !s.box.isBeside(&other.box, reach+0.1) {
		return nil
	}
	var found []Overlap
	isIn := false
	for along, end := s.begins[0], s.end(); ; {
		otherAlong, apart := other.Nearest(s.at(along))
		if apart < reach {
			if !isIn {
				found = append(found, Overlap{From: along, Apart: math.Inf(1)})
			}
			last := &found[len(found)-1]
			last.To = along
			if apart < last.Apart {
				last.Along, last.OtherAlong, last.Apart = along, otherAlong, apart
			}
		}
		isIn = apart < reach
		if along >= end {
			break
		}
		along = min(end, along+max(stretchStep, apart-reach))
	}
	for i := range found {
		s.settle(other, &found[i])
	}
	return found
}

// settle finds the nearest place of an overlap more closely, by halved steps.
func (s *Solid) settle(other *Solid, o *Overlap) {
	for step := stretchStep; step > 1e-7; step /= 2 {
		for _, along := range []float64{o.Along - step, o.Along + step} {
			if along < s.begins[0] || along > s.end() {
				continue
			}
			if otherAlong, apart := other.Nearest(s.at(along)); apart < o.Apart {
				o.Along, o.OtherAlong, o.Apart = along, otherAlong, apart
			}
		}
	}
	o.At = s.at(o.Along).Along(other.at(o.OtherAlong), 0.5)
}

// isBeside reports whether two boxes come within the margin of each other.
func (t *traced) isBeside(other *traced, margin float64) bool {
	return t.low.X-margin <= other.high.X && other.low.X-margin <= t.high.X &&
		t.low.Y-margin <= other.high.Y && other.low.Y-margin <= t.high.Y &&
		t.low.Z-margin <= other.high.Z && other.low.Z-margin <= t.high.Z
}
