package vehicle

import (
	"math"

	"gapsheet/vehicle/cage"
)

// FrameDie is a bending die of the sheet. What is not recorded of it is 0, so that it is not
// checked.
type FrameDie struct {
	Part *Part
	cage.Die
	HasSpringback, HasOffset bool
}

// dieOf reads a die.
func dieOf(part *Part) FrameDie {
	die := FrameDie{Part: part}
	die.Outside = part.firstRead("outside")
	die.Radius = part.firstRead("centreline_radius")
	die.GripLength = part.firstRead("grip_length")
	die.MinimumStraight = part.firstRead("minimum_straight")
	die.Springback, die.HasSpringback = part.asRead("springback")
	die.StartOffset, die.HasOffset = part.asRead("bend_start_offset")
	return die
}

// sameDie is how near a tube's outside diameter or bend radius must be to that of a die
// which the sheet does not name for it, in metres: the tolerance of cage.Die.Check.
const sameDie = 1e-4

// findDies chooses the die of every tube that has a bend: the one it names; else, of the
// sheet's dies for its outside diameter, the first with its bend radius, or the first.
func (f *Frame) findDies() {
	for _, part := range f.Sheet.partsNamed("die") {
		f.Dies = append(f.Dies, dieOf(part))
	}
	for i := range f.Tubes {
		if tube := &f.Tubes[i]; tube.Bends() > 0 {
			tube.Die = f.dieFor(tube)
		}
	}
}

func (f *Frame) dieFor(tube *FrameTube) *FrameDie {
	named := tube.Part.stated("die").Named
	var fitting *FrameDie
	for i := range f.Dies {
		die := &f.Dies[i]
		switch {
		case named != nil:
			if die.Part == named {
				return die
			}
		case math.Abs(die.Outside-tube.Outside) > sameDie:
		case math.Abs(die.Radius-tube.Course.Radius) <= sameDie:
			return die
		case fitting == nil:
			fitting = die
		}
	}
	return fitting
}

// Bends returns how many bends the tube has. A corner without a bend radius is none.
func (t FrameTube) Bends() int {
	bends := 0
	for _, piece := range t.Course.Pieces() {
		if piece.Turn > 0 {
			bends++
		}
	}
	return bends
}
