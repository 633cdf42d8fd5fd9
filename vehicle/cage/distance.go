package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

func halfOf(r quantity.Range) quantity.Range { return r.Times(quantity.Exactly(0.5)) }

// apart returns the range of the length of a way of which each coordinate is taken by
// itself. It is the least range where a coordinate's readings are not those of another.
func (a *formVector) apart() quantity.Range {
	low, high := 0.0, 0.0
	for i := range a {
		low = math.Hypot(low, max(0, a[i].low(), -a[i].high()))
		high = math.Hypot(high, a[i].size())
	}
	return quantity.Between(low*(1-slack), high*(1+slack))
}

// sharplyApart is apart of a way of which the coordinates may hang on the same readings, as
// those of an arc's ends do: met with the length in first-order form.
func (a *formVector) sharplyApart() quantity.Range {
	apart := a.apart()
	direction, ok := a.middle().Unit()
	if !ok {
		return apart
	}
	length, ok := a.norm(direction)
	if !ok {
		return apart
	}
	return met(apart, length.asRange())
}

// lineDistance returns the distance of a place from the line through from and to, and
// whether there surely is a line. With q the way to the place from the line's point that is
// nearest as read, and the line's direction (1, s, t) along a frame, the distance is the
// length of (q2 - s q1, q3 - t q1), shortened by no more than 1/√(1 + σ²), where σ is the
// part of (s, t) along it. As read, s, t and q1 are zero, so that both products are of
// second order.
func lineDistance(place, from, to *formVector) (quantity.Range, bool) {
	way := to.minus(from)
	line := Segment{from.middle(), to.middle()}
	foot := from.toward(to, line.foot(place.middle()))
	off := place.minus(&foot)
	f, ok := frameAlong(way.middle(), off.middle())
	if !ok {
		return quantity.Range{}, false
	}
	way, off = way.in(f), off.in(f)
	inverse, ok := way[0].inverse()
	if !ok {
		return quantity.Range{}, false
	}
	var square formVector
	slopes := [2]float64{}
	for i := range 2 {
		slope := way[i+1].times(&inverse)
		slopes[i] = slope.size()
		lean := slope.times(&off[0])
		square[i] = off[i+1].minus(&lean)
	}
	distance := square.length()
	toward := slopes[0] + slopes[1]*min(1, square[1].size()/max(distance.Low, 1/farthest))
	toward = min(toward, math.Hypot(slopes[0], slopes[1]))
	return quantity.Between(distance.Low*(1-greatestShrink(toward, 0)), distance.High), true
}

// pointToSegment returns the distance of a place from a segment. From above it is bounded by
// the distance to any one of its points, such as that which is nearest as read. From below
// it is bounded by how far the place is beyond both ends in any one direction, and by the
// distance to the whole line. Where the foot on the line surely is between the ends, the
// distance is that to the line; where it surely is before or past them, that to the end.
func pointToSegment(place *formVector, part *partOfLine) quantity.Range {
	from, to := part.from, part.to
	share, _ := part.asRead().Nearest(place.middle())
	nearest := from.toward(to, share)
	off, fromFrom, fromTo := place.minus(&nearest), place.minus(from), place.minus(to)
	ends := [2]quantity.Range{fromFrom.sharplyApart(), fromTo.sharplyApart()}
	above := min(off.sharplyApart().High, ends[0].High, ends[1].High)

	way := to.minus(from)
	past, short := fromFrom.dot(&way), fromTo.dot(&way)
	switch {
	case past.high() <= 0:
		return quantity.Between(ends[0].Low, max(above, ends[0].Low))
	case short.low() >= 0:
		return quantity.Between(ends[1].Low, max(above, ends[1].Low))
	}
	below := 0.0
	if normal, ok := off.middle().Unit(); ok {
		beyondFrom, beyondTo := fromFrom.along(normal), fromTo.along(normal)
		below = max(0, min(beyondFrom.low(), beyondTo.low())*(1-frameError))
	}
	if line, ok := lineDistance(place, part.line[0], part.line[1]); ok {
		below = max(below, line.Low)
		if past.low() >= 0 && short.high() <= 0 {
			above = min(above, line.High)
		}
	}
	return quantity.Between(below, max(above, below))
}
