package vehicle

import (
	"slices"

	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// partsNamed returns the sheet's parts of the type of a name, in their order.
func (s *Sheet) partsNamed(name string) []*Part {
	t := s.Vocabulary.Type(name)
	if t == nil {
		panic("the vocabulary has no " + name)
	}
	return partsOf(s.Root, t, nil)
}

// stated returns what the sheet says of a particular of the part, inherited or mirrored
// where it is.
func (p *Part) stated(name string) *Value {
	v, _ := p.valueNamed(name)
	return v
}

// statedBy returns the part that states a particular of the part, or that would: the
// original of a mirror image.
func (p *Part) statedBy(name string) *Part {
	v, holder := p.valueNamed(name)
	if v.State == Nothing && p.Original != nil {
		return p.Original
	}
	return holder
}

func (p *Part) valueNamed(name string) (v *Value, holder *Part) {
	x := p.Type.Particular(name)
	if x == nil {
		panic("a " + p.Type.Name + " has no " + name)
	}
	return p.Value(x)
}

// choiceWord returns the value of a choice particular, "" where it is not stated.
func (p *Part) choiceWord(name string) string {
	v := p.stated(name)
	if v.State != Stated {
		return ""
	}
	return p.Type.Particular(name).Choices.Choices[v.Choice].Value
}

// asRead returns a figure of the part as read, in SI: the mean of its readings. It is 0 and
// false where there is none.
func (p *Part) asRead(name string) (float64, bool) {
	v := p.stated(name)
	if v.State != Stated || len(v.Readings) == 0 {
		return 0, false
	}
	sum := 0.0
	for _, reading := range v.Readings {
		sum += reading.Figure.Reading
	}
	return sum / float64(len(v.Readings)), true
}

// firstRead returns the first of several figures that is recorded, 0 where none is.
func (p *Part) firstRead(names ...string) float64 {
	for _, name := range names {
		if read, ok := p.asRead(name); ok {
			return read
		}
	}
	return 0
}

// placeOf returns where a joint is, and whether that is known. The y of a mirror image that
// states none is that of its original on the other side.
func placeOf(joint *Part) (cage.Vector, bool) {
	x, okX := joint.asRead("x")
	y, okY := joint.asRead("y")
	z, okZ := joint.asRead("z")
	if !okY && joint.Original != nil {
		y, okY = joint.Original.asRead("y")
		y = 0 - y
	}
	return cage.Vector{X: x, Y: y, Z: z}, okX && okY && okZ
}

// unreadCoordinates returns the coordinates of a joint that are not recorded.
func unreadCoordinates(joint *Part) []Base {
	var lacking []Base
	for _, name := range []string{"x", "y", "z"} {
		holder := joint.statedBy(name)
		if _, ok := holder.asRead(name); !ok {
			lacking = append(lacking, Base{Part: holder, Particular: holder.Type.Particular(name)})
		}
	}
	return lacking
}

// toleranceOf returns the greatest tolerance of a joint's coordinates to one side, in
// metres.
func toleranceOf(joint *Part) float64 {
	greatest := 0.0
	for _, name := range []string{"x", "y", "z"} {
		for _, reading := range joint.stated(name).Readings {
			if !reading.Figure.OneSided {
				greatest = max(greatest, reading.Figure.Range.Width()/2)
			}
		}
	}
	return greatest
}

// HasTolerance reports whether any coordinate of any joint has a tolerance.
func (f *Frame) HasTolerance() bool {
	return slices.ContainsFunc(f.Joints, func(joint FrameJoint) bool { return joint.Part != nil && toleranceOf(joint.Part) > 0 })
}

// steelDensity is that of steel in kg/m³ (EN 10219-2 and EN 10305-1, from memory).
const steelDensity = 7850

// otherDensity are the materials that are no steel of that density, or not known to be one.
var otherDensity = []string{"stainless steel", "aluminium alloy", "titanium alloy", "unknown", "other"}

// density returns the density of a tube's material in kg/m³: as stated, else that of steel,
// else 0 where the material is stated to be another.
func density(tube *Part) float64 {
	if stated, ok := tube.asRead("density"); ok {
		return stated
	}
	if slices.Contains(otherDensity, tube.choiceWord("material")) {
		return 0
	}
	return steelDensity
}

// massPerLength returns the mass of a tube by its length in kg/m, 0 where it cannot be told.
func massPerLength(outside, wall, density float64) float64 {
	if !(outside > 0 && wall > 0) {
		return 0
	}
	section, fault := cage.SectionOf(quantity.Exactly(outside), quantity.Exactly(wall))
	if fault != nil {
		return 0
	}
	return section.MassPerLength(quantity.Exactly(density)).Middle()
}
