package cage

import (
	"math"
	"slices"

	"gapsheet/vehicle/quantity"
)

// DistanceToTube returns the distance of a point from the centreline of a tube, straights and
// arcs, in metres. It is 0 to Everything's upper end where the tube cannot be drawn (see
// Tube.Check) or is not bounded.
func DistanceToTube(p Point, t Tube) quantity.Range {
	return tubesApart(Tube{Points: []Point{p}}, t, piecesNear(p, t))
}

// DistanceBetweenTubes returns the distance between the centrelines of two tubes, in metres.
// Where one is nearest to a bend of the other, the range is now and then up to twice as wide as
// what the readings can do, for the place on the bend moves with them.
func DistanceBetweenTubes(a, b Tube) quantity.Range { return tubesApart(a, b, nil) }

// stretch is a part of a tube: a straight, a part of an arc, or a point. As read it is a
// segment; an arc is never farther from its chord than the bow, and within the ranges the
// ends are never farther from where they are read than the reach.
type stretch struct {
	piece      int // the run i for 2i, the bend at inner point i for 2i+1
	forms      *pieceForms
	radius     float64 // the least, of an arc
	from, to   float64
	asRead     Segment
	bow, reach float64
}

// pairOfStretches is one of each tube, and how near they may and must be.
type pairOfStretches struct {
	one, other stretch
	low, high  float64
}

func newPair(one, other stretch) pairOfStretches {
	_, _, distance := one.asRead.NearestTo(other.asRead)
	margin := one.bow + other.bow + one.reach + other.reach
	return pairOfStretches{one, other, distance - margin, distance + margin}
}

// splitsAtMost bounds the work on tubes that are as near to each other in many places.
const splitsAtMost = 3000

// tubesApart returns the distance between the centrelines of two tubes; a tube of one point
// is that point. As read it looks for the stretches that may be nearest, and halves arcs
// until the bow of each is small against the tolerances. Over the ranges it is then the
// least of the distances of those stretches, give or take the bows. Pieces of b that are
// known to be too far away may be named as such.
func tubesApart(a, b Tube, isNear func(piece int) bool) quantity.Range {
	nothing := quantity.Range{High: math.Inf(1)}
	a, b = a.named(math.MinInt/2), b.named(math.MinInt/2+len(a.Points))
	partsA, okA := stretchesOf(a, nil)
	partsB, okB := stretchesOf(b, isNear)
	if !okA || !okB {
		return nothing
	}
	var open []pairOfStretches
	for _, one := range partsA {
		for _, other := range partsB {
			open = append(open, newPair(one, other))
		}
	}
	var settled []pairOfStretches
	for splits := 0; ; {
		least := math.Inf(1)
		for _, pair := range slices.Concat(open, settled) {
			least = min(least, pair.high)
		}
		open, settled = stillNear(open, least), stillNear(settled, least)
		if len(open) == 0 {
			break
		}
		var next []pairOfStretches
		for _, pair := range open {
			halves := pair.split()
			if splits += 2; halves == nil || splits > splitsAtMost {
				settled = append(settled, pair)
				continue
			}
			next = append(next, halves...)
		}
		open = next
	}
	apart := quantity.Range{Low: math.Inf(1), High: math.Inf(1)}
	courses := map[[2]int]*twoPieces{}
	for _, pair := range settled {
		key := [2]int{pair.one.piece, pair.other.piece}
		if courses[key] == nil {
			courses[key] = newTwoPieces(a, key[0], b, key[1])
		}
		apart = apart.Min(pair.distance(courses[key]))
	}
	return quantity.Between(max(0, apart.Low), max(0, apart.High))
}

func stillNear(pairs []pairOfStretches, least float64) []pairOfStretches {
	kept := pairs[:0]
	for _, pair := range pairs {
		if pair.low <= least {
			kept = append(kept, pair)
		}
	}
	return kept
}

// split halves the stretch with the greater bow; nothing is left to split where both bows
// are small.
func (p pairOfStretches) split() []pairOfStretches {
	if p.one.bow+p.other.bow <= max(1e-9, 0.03*(p.one.reach+p.other.reach)) {
		return nil
	}
	if p.one.bow >= p.other.bow {
		first, second := p.one.halves()
		return []pairOfStretches{newPair(first, p.other), newPair(second, p.other)}
	}
	first, second := p.other.halves()
	return []pairOfStretches{newPair(p.one, first), newPair(p.one, second)}
}

// twoPieces are a piece of either tube in forms of the same readings.
type twoPieces struct {
	one, other pieceForms
	ok         bool
}

func newTwoPieces(a Tube, pieceA int, b Tube, pieceB int) *twoPieces {
	known := newReadings()
	for _, point := range slices.Concat(a.pointsOf(pieceA), b.pointsOf(pieceB)) {
		known.place(point)
	}
	one, okOne := a.formsOf(&known, pieceA)
	other, okOther := b.formsOf(&known, pieceB)
	return &twoPieces{one, other, okOne && okOther && !known.tooFar}
}

// distance returns the distance of the two stretches over the ranges.
func (p pairOfStretches) distance(forms *twoPieces) quantity.Range {
	if !forms.ok {
		return quantity.Between(max(0, p.low), p.high)
	}
	one, other := forms.one.ends(p.one.from, p.one.to), forms.other.ends(p.other.from, p.other.to)
	var apart quantity.Range
	switch isPointA, isPointB := forms.one.isPoint, forms.other.isPoint; {
	case isPointA && isPointB:
		way := one[0].minus(&other[0])
		apart = way.apart()
	case isPointA:
		apart = pointToSegment(&one[0], forms.other.part(&other))
	case isPointB:
		apart = pointToSegment(&other[0], forms.one.part(&one))
	default:
		apart = segmentToSegment(forms.one.part(&one), forms.other.part(&other), halvings)
	}
	bow := p.one.bow + p.other.bow
	return quantity.Between(max(0, apart.Low-bow, p.low), max(0, min(apart.High+bow, p.high)))
}
