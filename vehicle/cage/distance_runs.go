package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// halvings is how often a segment is halved at most to find a distance more sharply.
const halvings = 4

// segmentToSegment returns the distance between two segments. Where that is less sharp than
// the places that are nearest as read are known, as it may be for segments nearly side by
// side, the longer one is halved, for the distance is the lesser of those of its halves.
func segmentToSegment(a, b *partOfLine, halvings int) quantity.Range {
	distance, spread := segmentsApart(a, b)
	if halvings == 0 || distance.Width() <= 1.2*spread+closest {
		return distance
	}
	if a.asRead().Length() < b.asRead().Length() {
		a, b = b, a
	}
	half := a.from.toward(a.to, 0.5)
	first := segmentToSegment(&partOfLine{a.from, &half, a.line}, b, halvings-1)
	second := segmentToSegment(&partOfLine{&half, a.to, a.line}, b, halvings-1)
	return met(distance, first.Min(second))
}

// partOfLine is a segment of a line that is known by two points of its own.
type partOfLine struct {
	from, to *formVector
	line     [2]*formVector
}

func between(from, to *formVector) *partOfLine {
	return &partOfLine{from, to, [2]*formVector{from, to}}
}

func (p *partOfLine) asRead() Segment { return Segment{p.from.middle(), p.to.middle()} }

// segmentsApart returns the distance between two segments. From above it is bounded by
// the distance between any two of their points, such as those that are nearest as read, and
// by that of each end from the other segment. From below it is bounded by how far one is
// beyond the other in any one direction, and by the distance between the whole lines. Where
// one of the lines' nearest points surely is not between the ends, the distance is that of an
// end; else it is no more than that of the lines and how far they may be past the ends. The
// spread is how much the way between the points that are nearest as read can change.
func segmentsApart(a, b *partOfLine) (apart quantity.Range, spread float64) {
	share, otherShare, distance := a.asRead().NearestTo(b.asRead())
	nearA, nearB := a.from.toward(a.to, share), b.from.toward(b.to, otherShare)
	off := nearA.minus(&nearB)
	ends := pointToSegment(a.from, b).Min(pointToSegment(a.to, b)).Min(pointToSegment(b.from, a)).Min(pointToSegment(b.to, a))
	above := min(off.sharplyApart().High, ends.High)
	below := 0.0
	spread = 2 * math.Hypot(math.Hypot(off[0].reach(), off[1].reach()), off[2].reach())
	if normal, ok := off.middle().Unit(); ok && distance > 0 {
		across := off.along(normal)
		spread = 2 * across.reach()
		below = beyond(normal, [2]*formVector{a.from, a.to}, [2]*formVector{b.from, b.to})
	}
	lines, past, ok := lineToLine(a, b)
	switch {
	case past.isSurely:
		below = max(below, ends.Low)
	case ok:
		above = min(above, math.Hypot(lines.High, past.most)*(1+slack))
		below = max(below, lines.Low)
	}
	return quantity.Between(min(below, above), above), spread
}

// beyond returns how far all of a is beyond all of b in a direction, at least.
func beyond(direction Vector, a, b [2]*formVector) float64 {
	least := farthest
	for _, one := range a {
		for _, other := range b {
			way := one.minus(other)
			part := way.along(direction)
			least = min(least, part.low())
		}
	}
	return max(0, least*(1-frameError))
}

// lineToLine returns the distance between two whole lines, whether it says so, and where
// their nearest points are past the ends. With N = u × v along a frame whose third
// direction is that of N as read, and q the way between the points that are nearest as
// read, the distance is |q3 + (q1 N1 + q2 N2) / N3|, shortened by no more than
// 1/√(1 + (N1² + N2²) / N3²). As read, q1, q2, N1 and N2 are zero, so that the products are
// of second order.
func lineToLine(a, b *partOfLine) (distance quantity.Range, past pastEnds, ok bool) {
	if _, _, crosses := a.asRead().crossing(b.asRead()); !crosses {
		return quantity.Range{}, pastEnds{}, false
	}
	u, v, w := a.to.minus(a.from), b.to.minus(b.from), b.from.minus(a.from)
	normal := u.cross(&v)
	past = pastEndsOf(&u, &v, &w, &normal)

	aFrom, aTo, bFrom, bTo := a.line[0], a.line[1], b.line[0], b.line[1]
	share, otherShare, crosses := Segment{aFrom.middle(), aTo.middle()}.crossing(Segment{bFrom.middle(), bTo.middle()})
	if !crosses {
		return quantity.Range{}, past, false
	}
	u, v = aTo.minus(aFrom), bTo.minus(bFrom)
	normal = u.cross(&v)
	f, _ := frameAlong(normal.middle(), u.middle())
	normal = normal.in(f)
	inverse, ok := normal[0].inverse()
	if !ok {
		return quantity.Range{}, past, false
	}
	nearA, nearB := aFrom.toward(aTo, share), bFrom.toward(bTo, otherShare)
	off := nearA.minus(&nearB)
	off = off.in(f)
	apart := off[0]
	lean := [2]float64{}
	for i := range 2 {
		slope := normal[i+1].times(&inverse)
		lean[i] = slope.size()
		part := slope.times(&off[i+1])
		apart = apart.plus(&part)
	}
	r := apart.asRange().Abs()
	shrink := greatestShrink(lean[0], lean[1])
	return quantity.Between(r.Low*(1-shrink)*(1-frameError), r.High*(1+frameError)), past, true
}

// pastEnds says of the nearest points of two lines where they are past the segments' ends.
type pastEnds struct {
	isSurely bool    // one of them surely is
	most     float64 // how far the two are past the ends, together and at most, in metres
}

// pastEndsOf finds that of lines with the directions u and v, of which the second starts at
// w from the first: with N = u × v, the shares at which they are nearest are (w × v) · N / N²
// and (w × u) · N / N².
func pastEndsOf(u, v, w, normal *formVector) pastEnds {
	var past pastEnds
	square := normal.dot(normal)
	for _, way := range [][2]*formVector{{u, v}, {v, u}} {
		product := w.cross(way[1])
		share := product.dot(normal)
		rest := square.minus(&share)
		past.isSurely = past.isSurely || share.high() < 0 || rest.high() < 0
		if short := max(-share.low(), -rest.low()); short > 0 {
			past.most += short / max(square.low(), 1/farthest/farthest) * way[0].apart().High * (1 + slack)
		}
	}
	return past
}
