package vehicle

import (
	"math"
	"slices"

	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// steelElasticity is the modulus of elasticity of steel in Pa (EN 1993-1-1, 3.2.6).
const steelElasticity = 210e9

// size adds the outside diameter and the wall of a tube: as measured, else as ordered, and
// where neither is recorded, as it is to be measured.
func (d *deriver) size(b *bases, part *Part) (outside, wall figure) {
	return d.outside(b, part), figure{at: b.put(d.measured(part, "wall", "ordered_wall"))}
}

func (d *deriver) outside(b *bases, part *Part) figure {
	return figure{at: b.put(d.outsides[d.numbers[part]])}
}

// measured returns a size of a tube as measured, else as ordered.
func (d *deriver) measured(part *Part, name, ordered string) Base {
	if !d.saysAny(part, name) && d.saysAny(part, ordered) {
		name = ordered
	}
	return d.base(part, name)
}

// ofSteel is a property that all steels have in common.
type ofSteel struct {
	name, text string
	is         float64 // in SI
}

var (
	densityOfSteel    = ofSteel{"density", "density of steel: 7850 kg/m3 (EN 10219-2)", steelDensity}
	elasticityOfSteel = ofSteel{"elasticity", "elasticity of steel: 210 GPa (EN 1993-1-1)", steelElasticity}
)

// ofMaterial adds a property of a tube's material that all steels have in common. Where neither it nor the material is recorded, the material is what
// is missing, and the property can be anything plausible.
func (d *deriver) ofMaterial(b *bases, part *Part, steel ofSteel) figure {
	name := steel.name
	if d.saysAny(part, name) {
		return d.figure(b, part, name)
	}
	material := d.value(part, "material")
	switch {
	case material.State != Stated:
		b.put(d.base(part, "material"))
		return fixed(d.particular(part.Type, name).Plausible)
	case slices.Contains(otherDensity, part.choiceWord("material")):
		return d.figure(b, part, name)
	}
	b.take(steel.text)
	return fixed(quantity.Exactly(steel.is))
}

// section derives what follows from the size and the material of a tube.
func (d *deriver) section(part *Part) {
	var from bases
	outside, wall := d.size(&from, part)
	at := func(from []quantity.Range) (cage.Section, bool) {
		section, fault := cage.SectionOf(outside.in(from), wall.in(from))
		return section, fault == nil
	}
	d.add(part, from, nil, func(from, gives []quantity.Range) {
		nothing(from, gives)
		if section, ok := at(from); ok {
			gives[0], gives[1], gives[2] = section.Area, section.SecondMoment, section.SectionModulus
		}
	}, "section_area", "second_moment", "section_modulus")

	stiff := from.copy()
	elasticity := d.ofMaterial(&stiff, part, elasticityOfSteel)
	d.add(part, stiff, nil, func(from, gives []quantity.Range) {
		nothing(from, gives)
		if section, ok := at(from); ok {
			gives[0] = section.BendingStiffness(elasticity.in(from))
		}
	}, "bending_stiffness")

	strong := from.copy()
	yield := d.figure(&strong, part, "yield")
	d.add(part, strong, nil, func(from, gives []quantity.Range) {
		nothing(from, gives)
		if section, ok := at(from); ok {
			gives[0] = section.YieldMoment(yield.in(from))
		}
	}, "yield_moment")
}

// weight is a tube's centreline and what it is made of.
type weight struct {
	line
	outside, wall, density figure
}

// weighed adds what a tube's mass follows from.
func (d *deriver) weighed(b *bases, part *Part) weight {
	w := weight{line: d.lineOf(b, part)}
	w.outside, w.wall = d.size(b, part)
	w.density = d.ofMaterial(b, part, densityOfSteel)
	return w
}

// perMetre returns the mass of a metre of the tube.
func (w *weight) perMetre(from []quantity.Range) quantity.Range {
	area, fault := cage.AreaOf(w.outside.in(from), w.wall.in(from))
	if fault != nil {
		return quantity.Range{High: math.Inf(1)}
	}
	return area.Times(w.density.in(from))
}

func (w *weight) in(from []quantity.Range) cage.Weighed {
	return cage.Weighed{Tube: w.line.in(from), PerMetre: w.perMetre(from)}
}
