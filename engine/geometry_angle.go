package engine

import (
	"math"

	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// angleBetween is the least angle between the ways in which two tubes leave the joint that
// both go through; else, where an end of one lies on the other, the angle there; else the
// acute angle between the straights from end to end.
func angleBetween(m *machine, a, b *shape) quantity.Range {
	least := quantity.Range{Low: math.Inf(1), High: math.Inf(1)}
	for i := range a.points {
		for k := range b.points {
			if a.points[i].same(&b.points[k]) {
				least = least.Min(angleAt(m, a, i, b, k))
			}
		}
	}
	if !math.IsInf(least.Low, 1) {
		return least
	}
	for _, pair := range [2][2]*shape{{a, b}, {b, a}} {
		if angle, ok := angleOnto(m, pair[0], pair[1]); ok {
			return angle
		}
	}
	return cage.AcuteAngle(a.tube(m).Chord(), b.tube(m).Chord())
}

// angleAt is the least angle between the ways that leave place i of a and place k of b,
// which are one joint.
func angleAt(m *machine, a *shape, i int, b *shape, k int) quantity.Range {
	least := quantity.Range{Low: math.Inf(1), High: math.Inf(1)}
	corner := a.points[i].point(m)
	for _, from := range a.beside(i) {
		for _, to := range b.beside(k) {
			least = least.Min(cage.AngleAt(a.points[from].point(m), corner, b.points[to].point(m)))
		}
	}
	return least
}

// beside are the places before and after place i.
func (s *shape) beside(i int) []int {
	var places []int
	if i > 0 {
		places = append(places, i-1)
	}
	if i+1 < len(s.points) {
		places = append(places, i+1)
	}
	return places
}

// onTube is how near an end is to another tube's centreline, as read, to lie on it.
const onTube = 0.010 // metres

// angleOnto is the acute angle between a tube and the straight of another on which one of
// its ends lies, as read; ok is false where none does.
func angleOnto(m *machine, a, b *shape) (angle quantity.Range, ok bool) {
	for _, end := range [2]int{0, len(a.points) - 1} {
		nearest, run := onTube, -1
		for k := range len(b.points) - 1 {
			straight := cage.Course{Points: []cage.Vector{b.points[k].read, b.points[k+1].read}}
			if _, away := straight.Nearest(a.points[end].read); away <= nearest {
				nearest, run = away, k
			}
		}
		if run < 0 {
			continue
		}
		other := a.beside(end)[0]
		way := cage.Run{From: a.points[end].point(m), To: a.points[other].point(m)}
		return cage.AcuteAngle(way, cage.Run{From: b.points[run].point(m), To: b.points[run+1].point(m)}), true
	}
	return quantity.Range{}, false
}
