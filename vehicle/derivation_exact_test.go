package vehicle

import (
	"math"
	"slices"

	"gapsheet/vehicle/cage"
)

// exactly works out a particular for an exact car; false for one that is left to others.
func (e *exactCar) exactly(part *Part, name string) (float64, bool) {
	switch part.Type.Name {
	case "joint", "meeting":
		return e.ofJoint(part, name)
	case "tube":
		return e.ofTube(part, name)
	case "corner", "end":
		return e.ofCorner(part, name)
	case "cage", "tube_stock":
		return e.ofAll(part, name)
	}
	return e.ofCrew(part, name)
}

// ways are the directions in which a tube leaves a joint; where the joint lies on it as
// read, both ways along the run there.
func (e *exactCar) ways(tube, joint *Part) []cage.Vector {
	through := tube.stated("through").Several
	var ways []cage.Vector
	for k, other := range through {
		if other == joint && k > 0 {
			ways = append(ways, e.joint(through[k-1]).Minus(e.joint(joint)))
		}
		if other == joint && k+1 < len(through) {
			ways = append(ways, e.joint(through[k+1]).Minus(e.joint(joint)))
		}
	}
	if len(ways) > 0 {
		return ways
	}
	if run := e.liesOn[[2]*Part{joint, tube}]; run > 0 {
		way := e.joint(through[run]).Minus(e.joint(through[run-1]))
		return []cage.Vector{way, way.Times(-1)}
	}
	return nil
}

// liesOnAsRead says of joints and tubes on which run a joint lies as read, counted from 1.
func liesOnAsRead(sheet *Sheet) map[[2]*Part]int {
	read := &exactCar{sheet: sheet, is: map[Base]float64{}}
	for _, base := range figuresOf(sheet) {
		read.is[base] = base.known().Middle()
	}
	found := map[[2]*Part]int{}
	for _, tube := range sheet.partsNamed("tube") {
		through := tube.stated("through").Several
		for _, joint := range sheet.partsNamed("joint") {
			for k := 1; k < len(through) && !slices.Contains(through, joint); k++ {
				run := cage.Segment{From: read.joint(through[k-1]), To: read.joint(through[k])}
				if _, away := run.Nearest(read.joint(joint)); away < 1e-4 {
					found[[2]*Part{joint, tube}] = k
				}
			}
		}
	}
	return found
}

func leastAngle(one, other []cage.Vector) float64 {
	least := math.Inf(1)
	for _, a := range one {
		for _, b := range other {
			least = min(least, a.Angle(b))
		}
	}
	return least
}

func (e *exactCar) tubesAt(joint *Part) []*Part {
	return slices.DeleteFunc(e.sheet.partsNamed("tube"), func(tube *Part) bool { return len(e.ways(tube, joint)) == 0 })
}

func (e *exactCar) ofJoint(part *Part, name string) (float64, bool) {
	switch name {
	case "y":
		return e.joint(part).Y, true
	case "tubes_meeting":
		return float64(len(e.tubesAt(part))), true
	case "angle":
		joint := part.Within
		return leastAngle(e.ways(part.stated("one").Named, joint), e.ways(part.stated("other").Named, joint)), true
	}
	least, tubes := math.Inf(1), e.tubesAt(part)
	for i, one := range tubes {
		for _, other := range tubes[i+1:] {
			least = min(least, leastAngle(e.ways(one, part), e.ways(other, part)))
		}
	}
	return least, true
}

// acute is the angle of a slope over a base, from 0 to a right angle.
func acute(opposite, adjacent float64) float64 {
	return math.Atan2(math.Abs(opposite), math.Abs(adjacent))
}

func (e *exactCar) ofTube(part *Part, name string) (float64, bool) {
	c := e.course(part)
	way := c.Points[len(c.Points)-1].Minus(c.Points[0])
	level := math.Hypot(way.X, way.Y)
	least, greatest, bends := 0.0, 0.0, 0.0
	for i := range len(c.Points) - 2 {
		greatest = max(greatest, c.Turn(i))
		if c.Turn(i) > straightWithin {
			bends++
		}
	}
	switch name {
	case "angle_to_vertical":
		return acute(level, way.Z), true
	case "angle_to_horizontal":
		return acute(way.Z, level), true
	case "side_angle_to_vertical":
		return acute(way.X, way.Z), true
	case "side_angle_to_horizontal":
		return acute(way.Z, way.X), true
	case "front_angle_to_vertical":
		return acute(way.Y, way.Z), true
	case "front_angle_to_horizontal":
		return acute(way.Z, way.Y), true
	case "straight":
		if bends == 0 {
			least = 1
		}
		return least, true
	case "bends":
		return bends, true
	case "greatest_bend_angle":
		return greatest, bends > 0
	case "node_length":
		return c.NodeLength(), true
	case "developed_length":
		return c.Developed(), true
	case "mass":
		return c.Developed() * e.perMetre(part), true
	case "unsupported_span":
		return e.span(part), true
	case "bend_radius_ratio":
		return c.Radius / e.figure(part, "outside", "ordered_outside"), bends > 0
	}
	return e.ofSection(part, name)
}

// ofSection works out what follows from a tube's size by the formulas for a ring.
func (e *exactCar) ofSection(part *Part, name string) (float64, bool) {
	outside, wall := e.figure(part, "outside", "ordered_outside"), e.figure(part, "wall", "ordered_wall")
	inside := outside - 2*wall
	second := math.Pi / 64 * (math.Pow(outside, 4) - math.Pow(inside, 4))
	switch name {
	case "section_area":
		return math.Pi / 4 * (outside*outside - inside*inside), true
	case "second_moment":
		return second, true
	case "section_modulus":
		return 2 * second / outside, true
	case "yield_moment":
		return 2 * second / outside * e.figure(part, "yield"), true
	case "bending_stiffness":
		if part.stated("elasticity").State == Stated {
			return second * e.figure(part, "elasticity"), true
		}
		return second * 210e9, true
	}
	return 0, false
}

func (e *exactCar) ofCorner(part *Part, name string) (float64, bool) {
	tube, joint := part.Within, part.stated("joint").Named
	c, at := e.course(tube), slices.Index(tube.stated("through").Several, joint)
	switch name {
	case "angle":
		return c.Turn(at - 1), true
	case "straight_before":
		return c.Straight(at - 1), true
	case "straight_after":
		return c.Straight(at), true
	case "angle_to_vertical", "side_angle_to_vertical", "front_angle_to_vertical":
		beside := 1
		if at > 0 {
			beside = at - 1
		}
		way := c.Points[beside].Minus(c.Points[at])
		across := map[string]float64{
			"angle_to_vertical": math.Hypot(way.X, way.Y), "side_angle_to_vertical": way.X, "front_angle_to_vertical": way.Y,
		}
		return acute(across[name], way.Z), true
	case "to_foot", "to_foot_surface":
		var feet []*Part
		for _, foot := range e.sheet.partsNamed("foot") {
			feet = append(feet, foot.stated("joint").Named)
		}
		return e.nearest(tube, joint, feet, name == "to_foot_surface"), true
	}
	var joints []*Part
	for _, other := range e.sheet.partsNamed("joint") {
		if others := slices.DeleteFunc(e.tubesAt(other), func(t *Part) bool { return t == tube }); len(others) >= 2 {
			joints = append(joints, other)
		}
	}
	return e.nearest(tube, joint, joints, name == "to_joint_surface"), true
}

// nearest is how far a joint is from the nearest of others, or a tube's surface from that of
// the thickest tube there.
func (e *exactCar) nearest(tube, joint *Part, joints []*Part, surface bool) float64 {
	least := math.Inf(1)
	for _, other := range joints {
		away := e.joint(joint).Distance(e.joint(other))
		if surface {
			thickest := 0.0
			for _, beside := range e.tubesAt(other) {
				if beside != tube {
					thickest = max(thickest, e.figure(beside, "outside", "ordered_outside"))
				}
			}
			away = max(0, away-thickest/2-e.figure(tube, "outside", "ordered_outside")/2)
		}
		least = min(least, away)
	}
	return least
}

// span is the longest way along a tube, from point to point, between feet, joints that other
// tubes have, and its ends.
func (e *exactCar) span(tube *Part) float64 {
	through := tube.stated("through").Several
	longest, way, last := 0.0, 0.0, e.joint(through[0])
	isHeld := func(joint *Part) bool {
		for _, foot := range e.sheet.partsNamed("foot") {
			if foot.stated("joint").Named == joint {
				return true
			}
		}
		return len(e.tubesAt(joint)) > 1
	}
	for k, joint := range through {
		for _, on := range e.sheet.partsNamed("joint") { // no run of a drawn cage has two
			if k > 0 && e.liesOn[[2]*Part{on, tube}] == k {
				way += last.Distance(e.joint(on))
				longest, way, last = max(longest, way), 0, e.joint(on)
			}
		}
		way += last.Distance(e.joint(joint))
		if last = e.joint(joint); isHeld(joint) || k == len(through)-1 {
			longest, way = max(longest, way), 0
		}
	}
	return longest
}

func (e *exactCar) ofAll(part *Part, name string) (float64, bool) {
	sum := 0.0
	for _, tube := range e.sheet.partsNamed("tube") {
		if part.Type.Name == "tube_stock" && tube.stated("stock").Named != part {
			continue
		}
		switch name {
		case "mass", "mass_used":
			sum += e.course(tube).Developed() * e.perMetre(tube)
		case "tube_length", "length_used":
			sum += e.course(tube).Developed()
		case "longest_span":
			sum = max(sum, e.span(tube))
		default:
			return 0, false
		}
	}
	return sum, true
}

func (e *exactCar) ofCrew(part *Part, name string) (float64, bool) {
	strap := func(p *Part) cage.Vector {
		return e.place(p, "anchor_at_x", "anchor_at_y", "anchor_at_z").Minus(e.place(p, "leaves_body_x", "leaves_body_y", "leaves_body_z"))
	}
	corner := func(i int) cage.Vector { return e.joint(part.stated("corners").Several[i]) }
	switch name {
	case "clearance":
		radius := e.figure(part, "helmet_radius")
		middle := e.place(part, "top_x", "top_y", "top_z").Minus(cage.Vector{Z: radius})
		least := math.Inf(1)
		for _, tube := range e.sheet.partsNamed("tube") {
			_, away := e.course(tube).Nearest(middle)
			least = min(least, away-e.figure(tube, "outside", "ordered_outside")/2-radius)
		}
		return least, true
	case "angle_to_horizontal":
		return math.Atan2(-strap(part).Z, math.Hypot(strap(part).X, strap(part).Y)), true
	case "sideways_angle":
		return acute(strap(part).Y, strap(part).X), true
	case "shoulder_spacing", "shoulder_spread":
		straps := part.Lists[part.Type.PartNamed("strap").Index].Parts
		if name == "shoulder_spacing" {
			return e.place(straps[0], "anchor_at_x", "anchor_at_y", "anchor_at_z").Distance(e.place(straps[1], "anchor_at_x", "anchor_at_y", "anchor_at_z")), true
		}
		u, v := strap(straps[0]), strap(straps[1])
		return cage.Vector{X: u.X, Y: u.Y}.Angle(cage.Vector{X: v.X, Y: v.Y}), true
	case "width":
		return min(math.Abs(corner(0).X-corner(3).X), math.Abs(corner(1).X-corner(2).X)), true
	case "height":
		return min(math.Abs(corner(0).Z-corner(1).Z), math.Abs(corner(3).Z-corner(2).Z)), true
	case "covered_length": // from a joint on a leg to the middle of the bend above
		c, between := e.course(part.stated("tube").Named), part.stated("between").Several
		return e.joint(between[0]).Distance(e.joint(between[1])) - c.Radius*(math.Tan(c.Turn(0)/2)-c.Turn(0)/2), true
	case "plate_contact_area":
		return e.figure(part, "contact_length") * e.figure(part, "contact_width"), true
	}
	return 0, false
}
