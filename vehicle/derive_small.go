package vehicle

import (
	"slices"

	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// small finds what follows for the smaller parts of the cage, and for the crew.
func (d *deriver) small(s *Sheet) {
	for _, foot := range d.feet {
		d.foot(foot)
	}
	for _, padding := range s.partsNamed("padding") {
		d.padding(padding)
	}
	for _, aperture := range s.partsNamed("door_aperture") {
		d.aperture(aperture)
	}
	for _, harness := range s.partsNamed("harness") {
		d.harness(harness)
	}
	for _, head := range s.partsNamed("head") {
		d.head(head)
	}
}

// foot derives the contact area of a rectangular plate from its sides.
func (d *deriver) foot(part *Part) {
	if !d.saysAny(part, "contact_length", "contact_width") {
		return
	}
	var from bases
	length, width := d.figure(&from, part, "contact_length"), d.figure(&from, part, "contact_width")
	d.add(part, from, nil, func(from, gives []quantity.Range) {
		gives[0] = length.in(from).Times(width.in(from))
	}, "plate_contact_area")
}

// padding derives the way between two joints along the tube that is covered. Each is one of
// the tube's own joints, or lies on it.
func (d *deriver) padding(part *Part) {
	between := d.value(part, "between").Several
	if len(between) != 2 {
		return
	}
	tube := d.value(part, "tube").Named
	if tube == nil {
		d.add(part, bases{list: []Base{d.base(part, "tube")}}, nil, nothing, "covered_length")
		return
	}
	if d.through[d.numbers[tube]] == nil {
		d.add(part, bases{list: []Base{d.base(tube, "through")}}, nil, nothing, "covered_length")
		return
	}
	one, okOne := d.spot(tube, d.numbers[between[0]])
	other, okOther := d.spot(tube, d.numbers[between[1]])
	if !okOne || !okOther {
		if d.structure == nil {
			d.add(part, bases{list: d.unknown}, nil, nothing, "covered_length")
		}
		return
	}
	var from bases
	places, line := d.placesAt(&from, d.numbersOf(between)), d.lineOf(&from, tube)
	d.add(part, from, nil, func(from, gives []quantity.Range) {
		first, second := one, other
		first.At, second.At = places[0].in(from), places[1].in(from)
		gives[0] = line.in(from).Covered(first, second)
	}, "covered_length")
}

// spot returns which of a tube's joints a joint is, or which of its runs it lies on.
func (d *deriver) spot(tube *Part, joint int) (cage.Spot, bool) {
	number := d.numbers[tube]
	if at := slices.Index(d.through[number], joint); at >= 0 {
		return cage.Spot{Index: at}, true
	}
	if d.structure == nil {
		return cage.Spot{}, false
	}
	run, ok := d.structure.RunUnder(number, joint, d.resting)
	return cage.Spot{Index: run, IsOnRun: true}, ok
}

// aperture derives the width and the height of a door opening from its four corners.
func (d *deriver) aperture(part *Part) {
	corners := d.value(part, "corners").Several
	if len(corners) != 4 {
		return
	}
	var from bases
	places := d.placesAt(&from, d.numbersOf(corners))
	d.add(part, from, nil, func(from, gives []quantity.Range) {
		opening := cage.Opening(pointsIn(places, from))
		gives[0], gives[1] = opening.Width(), opening.Height()
	}, "width", "height")
}

// head derives how far a helmet is from the nearest tube.
func (d *deriver) head(part *Part) {
	if !d.saysAny(part, d.particular(part.Type, "top").Fills...) || !d.anyThrough(d.tubes) {
		return
	}
	var from bases
	top, radius := d.pointOf(&from, part, "top"), d.figure(&from, part, "helmet_radius")
	lines, outsides, unknown := make([]line, 0, len(d.tubes)), make([]figure, 0, len(d.tubes)), bases{}
	for _, tube := range d.tubes {
		if d.through[d.numbers[tube]] == nil {
			unknown.put(d.base(tube, "through"))
			continue
		}
		lines = append(lines, d.lineOf(&from, tube))
		outsides = append(outsides, d.outside(&from, tube))
	}
	open := d.open("tube")
	if len(unknown.list) > 0 {
		d.add(part, unknown, open, nothing, "clearance")
		return
	}
	d.add(part, from, open, func(from, gives []quantity.Range) {
		tubes, thick := make([]cage.Tube, len(lines)), make([]quantity.Range, len(lines))
		points := roomFor(lines)
		for i := range lines {
			tubes[i], thick[i] = points.put(&lines[i], from), outsides[i].in(from)
		}
		gives[0] = cage.BallClearance(top.in(from), radius.in(from), tubes, thick)
	}, "clearance")
}
