package vehicle

import (
	"math"

	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// straightWithin is up to which turn at an inner joint a tube counts as straight: half a
// degree, by which a straight edge of a metre laid over the joint stands off by 4 mm at its
// end and 2 mm in the middle, about what a mill delivers as straight and a tape can tell
// (common practice).
const straightWithin = 0.5 * math.Pi / 180

// tube finds what follows for one tube.
func (d *deriver) tube(part *Part) {
	d.section(part)
	number := d.numbers[part]
	if d.through[number] == nil {
		return
	}
	d.chord(part, d.through[number])
	d.course(part, d.through[number])
	d.lengths(part, d.through[number])
	d.span(part, number)
	var beside []int
	if d.structure != nil {
		beside = d.structure.JointsBeside(number, d.resting)
	}
	for _, list := range part.Lists {
		for _, inner := range list.Parts {
			switch list.Type.Name {
			case "corner":
				d.corner(part, inner, d.through[number])
			case "end":
				d.end(part, inner, beside)
			}
		}
	}
}

// chord derives the angles of the straight from a tube's first joint to its last.
func (d *deriver) chord(part *Part, through []int) {
	var from bases
	first, last := d.placeAt(&from, through[0]), d.placeAt(&from, through[len(through)-1])
	d.add(part, from, nil, func(from, gives []quantity.Range) {
		angles := cage.Run{From: first.in(from), To: last.in(from)}.Angles()
		gives[0], gives[1] = angles.ToVertical, angles.ToHorizontal
		gives[2], gives[3] = angles.SideToVertical, angles.SideHorizontal
		gives[4], gives[5] = angles.FrontVertical, angles.FrontHorizontal
	}, "angle_to_vertical", "angle_to_horizontal", "side_angle_to_vertical", "side_angle_to_horizontal", "front_angle_to_vertical", "front_angle_to_horizontal")
}

// course derives what a tube's joints say of its bends. Which is the greatest bend, and how
// its radius compares with the tube, is told only of a tube that surely has one.
func (d *deriver) course(part *Part, through []int) {
	var from bases
	from.put(d.base(part, "through"))
	places := d.placesAt(&from, through)
	d.add(part, from, nil, func(from, gives []quantity.Range) {
		tube := cage.Tube{Points: pointsIn(places, from)}
		least, most := tube.Bends(straightWithin)
		gives[0] = truths(most == 0, least == 0)
		gives[1] = quantity.Between(float64(least), float64(most))
		gives[2] = quantity.Everything
		if least > 0 {
			gives[2] = tube.GreatestTurn()
		}
	}, "straight", "bends", "greatest_bend_angle")

	if d.value(part, "bend_radius").State == None || len(through) < 3 {
		return
	}
	radius := d.figure(&from, part, "bend_radius")
	outside, _ := d.size(&from, part)
	d.add(part, from, nil, func(from, gives []quantity.Range) {
		gives[0] = quantity.Everything
		if least, _ := (cage.Tube{Points: pointsIn(places, from)}).Bends(straightWithin); least > 0 {
			gives[0] = cage.Tube{Radius: radius.in(from)}.RadiusRatio(outside.in(from))
		}
	}, "bend_radius_ratio")
}

// truths is the range of a truth that surely is yes, or surely is no where it may not be.
func truths(surely, maybe bool) quantity.Range {
	switch {
	case surely:
		return quantity.Exactly(1)
	case maybe:
		return quantity.Between(0, 1)
	}
	return quantity.Exactly(0)
}

// anyRadius is what the bend radius of a tube can be that is straight as far as is known.
func (d *deriver) anyRadius(part *Part) figure {
	return fixed(d.particular(part.Type, "bend_radius").Plausible)
}

// radius adds the bend radius of a tube. Where none is recorded, one that turns by no more
// than a limit at each of some of its joints needs none for what is asked.
func (d *deriver) radius(b *bases, part *Part, joints []int, limit float64) figure {
	switch v := d.value(part, "bend_radius"); {
	case v.State == None || len(joints) < 3:
		return fixed(quantity.Range{})
	case v.State == Nothing:
		var own bases
		places := d.placesAt(&own, joints)
		tube := cage.Tube{Points: pointsIn(places, own.known())}
		if _, most := tube.Bends(limit); most == 0 {
			return d.anyRadius(part)
		}
	}
	return d.figure(b, part, "bend_radius")
}

// line is a tube's centreline, of which the figures are bases.
type line struct {
	places []place
	radius figure
}

func (l line) in(from []quantity.Range) cage.Tube {
	return cage.Tube{Points: pointsIn(l.places, from), Radius: l.radius.in(from)}
}

// room is space for the points of many tubes, taken at once.
type room []cage.Point

func roomFor(lines []line) room {
	count := 0
	for _, l := range lines {
		count += len(l.places)
	}
	return make(room, 0, count)
}

// put is line.in with its points in the room.
func (r *room) put(l *line, from []quantity.Range) cage.Tube {
	first := len(*r)
	for i := range l.places {
		*r = append(*r, l.places[i].in(from))
	}
	return cage.Tube{Points: (*r)[first:len(*r):len(*r)], Radius: l.radius.in(from)}
}

// lineOf adds the centreline of a tube. One that goes straight on at each of its inner joints
// within what is recorded needs no bend radius: its arcs, if any, save less than a thousandth
// of a millimetre of the way over the corners, and cut them by less than a fiftieth, whatever
// their radius.
func (d *deriver) lineOf(b *bases, part *Part) line {
	through := d.through[d.numbers[part]]
	return line{d.placesAt(b, through), d.radius(b, part, through, straightWithin)}
}

// lengths derives the lengths and the mass of a tube.
func (d *deriver) lengths(part *Part, through []int) {
	var from bases
	places := d.placesAt(&from, through)
	d.add(part, from, nil, func(from, gives []quantity.Range) {
		gives[0] = cage.Tube{Points: pointsIn(places, from)}.NodeLength()
	}, "node_length")

	var developed bases
	whole := d.lineOf(&developed, part)
	d.add(part, developed, nil, func(from, gives []quantity.Range) {
		gives[0] = whole.in(from).Developed()
	}, "developed_length")

	var weighed bases
	heavy := d.weighed(&weighed, part)
	d.add(part, weighed, nil, func(from, gives []quantity.Range) {
		gives[0] = cage.SumOf([]cage.Weighed{heavy.in(from)})
	}, "mass")
}

// span derives the longest stretch of a tube that nothing holds.
func (d *deriver) span(part *Part, number int) {
	var from bases
	work := d.spansOf(&from, number)
	d.add(part, from, d.open("tube", "joint", "foot"), work, "unsupported_span")
}

// spansOf adds what the spans of some tubes follow from, and returns how.
func (d *deriver) spansOf(b *bases, tubes ...int) Work {
	if d.structure == nil || len(d.unknownFeet) > 0 {
		for _, base := range append(d.unknown, d.unknownFeet...) {
			b.put(base)
		}
		return nothing
	}
	var ways [][]place
	for _, number := range tubes {
		for _, way := range d.structure.Ways(number, d.resting) {
			ways = append(ways, d.placesAt(b, way))
		}
	}
	return func(from, gives []quantity.Range) {
		gives[0] = quantity.Range{}
		for _, way := range ways {
			gives[0] = gives[0].Max(cage.Tube{Points: pointsIn(way, from)}.NodeLength())
		}
	}
}
