package cage

import "gapsheet/vehicle/quantity"

// Section is what follows from the size of a round tube, with outside diameter D, wall t and
// inside diameter d = D - 2t. The formulas are those of EN 10219-2, annex B (from memory)
// and of every text on the strength of materials. Each is sharp: it is computed for the least and
// the greatest tube alone, because it only grows, or only falls, with D and with t.
type Section struct {
	Outside, Wall quantity.Range // metres; of the wall only what the outside leaves room for

	Area             quantity.Range // m²: π (D² - d²) / 4
	SecondMoment     quantity.Range // m⁴: π (D⁴ - d⁴) / 64
	PolarMoment      quantity.Range // m⁴: twice the second moment
	SectionModulus   quantity.Range // m³, elastic: second moment × 2 / D
	PlasticModulus   quantity.Range // m³: (D³ - d³) / 6
	RadiusOfGyration quantity.Range // m: √(D² + d²) / 4
}

// SectionOf returns the section of a tube with the given outside diameter and wall, in
// metres. The fault is NotATube where no tube within the ranges can be: the outside not
// above zero, the wall below zero, or more than half the outside. Where only a part of the
// ranges can be, the section is that of the part; a wall of half the outside is a solid bar.
//
// All but the radius of gyration grow with D at the same t, and with t at the same D: with
// x = d/D from 0 to 1, the derivatives by D are, up to factors above zero, 1 - x for the
// area, 1 - x³ for the second moment, 1 - x² for the plastic and 3 - 4x³ + x⁴ for the
// elastic modulus; and by t they are d, d³, d² and d³. The radius of gyration grows with D
// and falls with t.
func SectionOf(outside, wall quantity.Range) (Section, *Fault) {
	e, fault := extremesOf(outside, wall)
	if fault != nil {
		return Section{}, fault
	}
	s := Section{
		Outside:        e.outside,
		Wall:           e.wall,
		Area:           e.between(tube.area),
		SecondMoment:   e.between(tube.secondMoment),
		SectionModulus: e.between(tube.sectionModulus),
		PlasticModulus: e.between(tube.plasticModulus),
	}
	s.PolarMoment = s.SecondMoment.Times(quantity.Exactly(2))
	s.RadiusOfGyration = quantity.Between(
		tubeOf(e.outside.Low, e.wall.High).radiusOfGyration().Low,
		tubeOf(e.outside.High, e.wall.Low).radiusOfGyration().High)
	return s, nil
}

// AreaOf returns the area of a section alone, in m², with the fault of SectionOf.
func AreaOf(outside, wall quantity.Range) (quantity.Range, *Fault) {
	e, fault := extremesOf(outside, wall)
	if fault != nil {
		return quantity.Range{}, fault
	}
	return e.between(tube.area), nil
}

// extremes are the ranges of a size, as far as it can be that of a tube, with the least and
// the greatest tube.
type extremes struct {
	outside, wall quantity.Range
	least, most   tube
}

func extremesOf(outside, wall quantity.Range) (extremes, *Fault) {
	outside.Low, wall.Low = max(outside.Low, 0), max(wall.Low, 0)
	if !(outside.High > 0) || !(wall.High > 0) || !(wall.Low <= outside.High/2) || !(outside.High <= farthest) {
		return extremes{}, &Fault{Problem: NotATube}
	}
	wall.High = min(wall.High, outside.High/2)
	outside.Low = max(outside.Low, 2*wall.Low)
	return extremes{outside, wall, tubeOf(outside.Low, wall.Low), tubeOf(outside.High, wall.High)}, nil
}

// between returns the range of what only grows from the least tube to the greatest.
func (e *extremes) between(of func(tube) quantity.Range) quantity.Range {
	return quantity.Between(max(0, of(e.least).Low), of(e.most).High)
}

// MassPerLength returns the mass of a metre of tube for a density in kg/m³, in kg/m. Steel
// is taken as 7850 kg/m³ (EN 10219-2 and EN 10305-1, from memory).
func (s Section) MassPerLength(density quantity.Range) quantity.Range { return s.Area.Times(density) }

// BendingStiffness returns the second moment times the modulus of elasticity in Pa, in N·m².
func (s Section) BendingStiffness(elasticity quantity.Range) quantity.Range {
	return s.SecondMoment.Times(elasticity)
}

// YieldMoment returns the bending moment at which the outermost fibre reaches the yield
// strength in Pa, in N·m: the elastic section modulus times it.
func (s Section) YieldMoment(yield quantity.Range) quantity.Range {
	return s.SectionModulus.Times(yield)
}

// tube is one exact tube, its inside diameter rounded outward.
type tube struct{ outside, inside quantity.Range }

func tubeOf(outside, wall float64) tube {
	d := quantity.Exactly(outside)
	inside := d.Minus(quantity.Exactly(2 * wall))
	inside.Low, inside.High = max(inside.Low, 0), max(inside.High, 0)
	return tube{d, inside}
}

// ring returns outsideⁿ - insideⁿ.
func (t tube) ring(n int) quantity.Range { return t.outside.Power(n).Minus(t.inside.Power(n)) }

func (t tube) area() quantity.Range {
	return halfTurn.Times(t.ring(2)).Times(quantity.Exactly(1.0 / 4))
}

func (t tube) secondMoment() quantity.Range {
	return halfTurn.Times(t.ring(4)).Times(quantity.Exactly(1.0 / 64))
}

func (t tube) sectionModulus() quantity.Range {
	if t.outside.Low <= 0 {
		return quantity.Range{}
	}
	return t.secondMoment().Times(quantity.Exactly(2)).Over(t.outside)
}

func (t tube) plasticModulus() quantity.Range { return t.ring(3).Over(quantity.Exactly(6)) }

func (t tube) radiusOfGyration() quantity.Range {
	return t.outside.Hypot(t.inside).Times(quantity.Exactly(1.0 / 4))
}
