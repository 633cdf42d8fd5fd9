package vehicle

import (
	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// harness derives what follows from the ends of a harness's straps.
func (d *deriver) harness(part *Part) {
	var shoulders [2]*Part
	for _, strap := range d.listed(part, "strap") {
		d.strap(strap)
		switch strap.Label {
		case "left shoulder":
			shoulders[0] = strap
		case "right shoulder":
			shoulders[1] = strap
		}
	}
	if shoulders[0] == nil || shoulders[1] == nil || !d.isPlaced(shoulders[0], "anchor_at") && !d.isPlaced(shoulders[1], "anchor_at") {
		return
	}
	var from bases
	left, right := d.pointOf(&from, shoulders[0], "anchor_at"), d.pointOf(&from, shoulders[1], "anchor_at")
	d.add(part, from, nil, func(from, gives []quantity.Range) {
		gives[0] = cage.Distance(left.in(from), right.in(from))
	}, "shoulder_spacing")
	if !d.isPlaced(shoulders[0], "leaves_body") && !d.isPlaced(shoulders[1], "leaves_body") {
		return
	}
	var ways bases
	one, other := d.way(&ways, shoulders[0]), d.way(&ways, shoulders[1])
	d.add(part, ways, nil, func(from, gives []quantity.Range) {
		gives[0] = cage.SpreadFromAbove(one.in(from), other.in(from))
	}, "shoulder_spread")
}

// strap derives the angles of a strap from where it leaves the body to where it ends.
func (d *deriver) strap(part *Part) {
	if !d.isPlaced(part, "leaves_body") || !d.isPlaced(part, "anchor_at") {
		return
	}
	var from bases
	way := d.way(&from, part)
	d.add(part, from, nil, func(from, gives []quantity.Range) {
		run := way.in(from)
		gives[0], gives[1] = run.AngleBelowHorizontal(), run.SidewaysAngle()
	}, "angle_to_horizontal", "sideways_angle")
}

// isPlaced reports whether the sheet says anything of a point of a part.
func (d *deriver) isPlaced(part *Part, name string) bool {
	return d.saysAny(part, d.particular(part.Type, name).Fills...)
}

// way is the straight of a strap, of which the ends' coordinates are bases.
type way struct{ leaves, anchor place }

func (d *deriver) way(b *bases, strap *Part) way {
	return way{d.pointOf(b, strap, "leaves_body"), d.pointOf(b, strap, "anchor_at")}
}

func (w way) in(from []quantity.Range) cage.Run {
	return cage.Run{From: w.leaves.in(from), To: w.anchor.in(from)}
}
