package vehicle

import (
	"slices"

	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// corner derives the turn of a tube at an inner joint, and the straights beside its arc.
func (d *deriver) corner(tube, part *Part, through []int) {
	joint := d.value(part, "joint").Named
	if joint == nil {
		return
	}
	at := slices.Index(through, d.numbers[joint])
	if at <= 0 || at+1 >= len(through) {
		return
	}
	var from bases
	three := d.placesAt(&from, through[at-1:at+2])
	d.add(part, from, nil, func(from, gives []quantity.Range) {
		gives[0] = cage.Tube{Points: pointsIn(three, from)}.Turn(0)
	}, "angle")
	d.straight(tube, part, through, at-1, "straight_before")
	d.straight(tube, part, through, at, "straight_after")
}

// noTurn is the turn below which the tangents of any bend are shorter than a thousandth of a
// millimetre, in radians.
const noTurn = 1e-6

// straight derives what the arcs leave of a run of a tube, which hangs on the points of the
// run and on those beside it. Beside a turn that a shop takes for straight the tangents of a
// wide bend are still some millimetres long, so that its radius is asked for all the same.
func (d *deriver) straight(tube, part *Part, through []int, run int, name string) {
	first, last := max(0, run-1), min(len(through), run+3)
	var from bases
	near := line{d.placesAt(&from, through[first:last]), d.radius(&from, tube, through[first:last], noTurn)}
	d.add(part, from, nil, func(from, gives []quantity.Range) {
		gives[0] = near.in(from).StraightLeft(run - first)
	}, name)
}

// end derives how far an end of a tube is from a foot and from where other tubes meet, which
// is at the joints beside it.
func (d *deriver) end(tube, part *Part, beside []int) {
	joint := d.value(part, "joint").Named
	if joint == nil {
		return
	}
	d.leaves(tube, part)
	d.endToFoot(tube, part, d.numbers[joint])
	open := d.open("tube", "joint")
	if d.structure == nil {
		d.add(part, bases{list: d.unknown}, open, nothing, "to_joint", "to_joint_surface")
		return
	}
	d.endTo(tube, part, d.numbers[joint], beside, open, "to_joint")
}

// leaves derives the angles at which a tube leaves its end: those of the straight up to the
// next joint. Of a hoop that is a leg, where the straight from foot to foot lies flat.
func (d *deriver) leaves(tube, part *Part) {
	through := d.through[d.numbers[tube]]
	beside := through[:2]
	if part.Label == part.Type.Labels.Choices[1].Value {
		beside = through[len(through)-2:]
	}
	var from bases
	two := d.placesAt(&from, beside)
	d.add(part, from, nil, func(from, gives []quantity.Range) {
		points := pointsIn(two, from)
		way := cage.Run{From: points[0], To: points[1]}
		gives[0], gives[1], gives[2] = way.AngleToVertical(), way.SideViewToVertical(), way.FrontViewToVertical()
	}, "angle_to_vertical", "side_angle_to_vertical", "front_angle_to_vertical")
}

// endToFoot derives how far an end of a tube is from the nearest foot: axis to axis that
// hangs on the feet's joints alone.
func (d *deriver) endToFoot(tube, part *Part, joint int) {
	if slices.Contains(d.feetAt, joint) {
		d.endTo(tube, part, joint, d.feetAt, nil, "to_foot")
		return
	}
	open := d.open("foot")
	if len(d.unknownFeet) > 0 {
		d.add(part, bases{list: d.unknownFeet}, open, nothing, "to_foot", "to_foot_surface")
		return
	}
	if d.structure != nil {
		d.endTo(tube, part, joint, d.feetAt, open, "to_foot")
		return
	}
	from, away := d.away(joint, d.feetAt)
	d.add(part, from, open, away.work, "to_foot")
	d.add(part, bases{list: d.unknown}, open, nothing, "to_foot_surface")
}

// endTo derives how far an end of a tube is from the nearest of some joints, axis to axis
// and between the surfaces. Where it is at one of them there is nothing to measure.
func (d *deriver) endTo(tube, part *Part, joint int, joints []int, open []*PartList, name string) {
	if slices.Contains(joints, joint) {
		var from bases
		from.put(d.base(tube, "through"))
		d.add(part, from, nil, func(_, gives []quantity.Range) { gives[0], gives[1] = quantity.Range{}, quantity.Range{} }, name, name+"_surface")
		return
	}
	if len(joints) == 0 {
		var from bases
		from.put(d.base(tube, "through"))
		d.add(part, from, open, func(_, gives []quantity.Range) { gives[0], gives[1] = NoSuch, NoSuch }, name, name+"_surface")
		return
	}
	from, away := d.away(joint, joints)
	d.add(part, from, open, away.work, name)

	surfaces := from.copy()
	own := d.outside(&surfaces, tube)
	thick := make([][]figure, len(joints))
	for i, other := range joints {
		for _, beside := range d.structure.Beside(d.numbers[tube], other, d.resting) {
			thick[i] = append(thick[i], d.outside(&surfaces, d.tubes[beside]))
		}
	}
	d.add(part, surfaces, open, func(from, gives []quantity.Range) {
		thickest := make([]quantity.Range, len(thick))
		for i, outsides := range thick {
			for _, outside := range outsides {
				thickest[i] = thickest[i].Max(outside.in(from))
			}
		}
		gives[0] = cage.SurfacesApart(away.end.in(from), own.in(from), pointsIn(away.others, from), thickest)
	}, name+"_surface")
}

// placedEnd is the place of a tube's end, and those of joints it may be near.
type placedEnd struct {
	end    place
	others []place
}

// away returns how the distance of a joint from the nearest of others follows.
func (d *deriver) away(joint int, joints []int) (from bases, away *placedEnd) {
	away = &placedEnd{d.placeAt(&from, joint), d.placesAt(&from, joints)}
	return from, away
}

func (p *placedEnd) work(from, gives []quantity.Range) {
	_, gives[0] = cage.Nearest(p.end.in(from), pointsIn(p.others, from))
}
