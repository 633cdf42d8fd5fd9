package cage

import (
	"math"
	"slices"

	"gapsheet/vehicle/quantity"
)

// Beside returns the members other than the given one that are at a joint: those that go
// through it, and those that it lies on. Resting is what Structure.Resting found.
func (s *Structure) Beside(member, joint int, resting []Resting) []int {
	var others []int
	for _, other := range s.members[joint] {
		if other != member {
			others = append(others, other)
		}
	}
	for _, rest := range restingOf(joint, resting) {
		if rest.Member != member {
			others = append(others, rest.Member)
		}
	}
	return others
}

// restingOf returns where a joint lies on members. Resting is in the order of joints.
func restingOf(joint int, resting []Resting) []Resting {
	from, _ := slices.BinarySearchFunc(resting, joint, func(r Resting, joint int) int { return r.Joint - joint })
	to := from
	for to < len(resting) && resting[to].Joint == joint {
		to++
	}
	return resting[from:to]
}

// JointsBeside returns the joints at which at least two members other than the given one
// meet, in order: those that an end of it can be near to.
func (s *Structure) JointsBeside(member int, resting []Resting) []int {
	var joints []int
	for joint, members := range s.members {
		count := len(members) + len(restingOf(joint, resting))
		// Only of a joint with few is it worth the while to see whether it is one of them.
		if count > 3 || count >= 2 && len(s.Beside(member, joint, resting)) >= 2 {
			joints = append(joints, joint)
		}
	}
	return joints
}

// Nearest returns which of the points is nearest to p as read, the first of equals, and the
// range of the distance to whichever is nearest, in metres; -1 and Everything where there
// are none.
func Nearest(p Point, points []Point) (nearest int, distance quantity.Range) {
	none := make([]quantity.Range, len(points))
	nearest, distance = nearestOf(p, points, none)
	return nearest, distance
}

// SurfacesApart returns how far the surface of a tube with an end at p is from the nearest
// one of the surfaces of tubes at the points, in metres, not below 0: the distance less half
// of the tube's outside diameter and half of that of the thickest tube at the point.
// Everything where there are no points.
func SurfacesApart(p Point, outside quantity.Range, points []Point, thickest []quantity.Range) quantity.Range {
	nearest, distance := nearestOf(p, points, thickest)
	if nearest < 0 {
		return distance
	}
	return notBelowZero(distance.Minus(halfOf(outside)))
}

// nearestOf returns which of the points is nearest as read, and the least of the distances
// less half of the diameter of what is there. Only points that may be the nearest within
// their ranges count for that.
func nearestOf(p Point, points []Point, outsides []quantity.Range) (nearest int, away quantity.Range) {
	nearest, away = -1, quantity.Everything
	here, spread := p.Middle(), p.spread()
	least, farther := math.Inf(1), math.Inf(1)
	for i, q := range points {
		if p.sharesReading(q) && p.Mirrored == q.Mirrored && outsides[i] == (quantity.Range{}) {
			return i, quantity.Range{}
		}
		read := here.Distance(q.Middle())
		farther = min(farther, read+spread+q.spread()-outsides[i].Low/2)
		if read < least || nearest < 0 {
			nearest, least = i, read
		}
	}
	isFirst := true
	for i, q := range points {
		if here.Distance(q.Middle())-spread-q.spread()-outsides[i].High/2 > farther {
			continue
		}
		way := Distance(p, q).Minus(halfOf(outsides[i]))
		if isFirst {
			away, isFirst = way, false
		}
		away = away.Min(way)
	}
	return nearest, away
}

// RunUnder returns on which run of a member a joint lies that is none of its own, counted
// from 0, and whether it lies on it.
func (s *Structure) RunUnder(member, joint int, resting []Resting) (run int, ok bool) {
	for _, rest := range restingOf(joint, resting) {
		if rest.Member == member {
			run, _ = s.Members[member].onRun(s.Joints[joint])
			return run, true
		}
	}
	return 0, false
}
