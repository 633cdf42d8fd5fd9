package cage

import "gapsheet/vehicle/quantity"

// Point is a place on a centreline, each coordinate a range in metres: x forward, y left, z
// up (ISO 8855).
type Point struct {
	X, Y, Z quantity.Range

	// Reading says which reading the coordinates are: points with the same number other
	// than 0 are one reading and move together within its ranges. With 0 the point is a
	// reading of its own.
	Reading int

	// Mirrored says that the point is the mirror image of its reading on the other side of
	// the car: y has the opposite sign, so that the two move apart and together.
	Mirrored bool
}

// At returns the point that stands exactly at v.
func At(v Vector) Point {
	return Point{X: quantity.Exactly(v.X), Y: quantity.Exactly(v.Y), Z: quantity.Exactly(v.Z)}
}

// Within returns the point at v with the same tolerance to both sides in each coordinate, in
// metres; a negative tolerance counts as its size.
func Within(v Vector, tolerance float64) Point {
	band := quantity.Between(-max(tolerance, -tolerance), max(tolerance, -tolerance))
	p := At(v)
	p.X, p.Y, p.Z = p.X.Plus(band), p.Y.Plus(band), p.Z.Plus(band)
	return p
}

// Middle returns the middle of each coordinate's range: the reading itself where its
// tolerance is the same to both sides.
func (p Point) Middle() Vector { return Vector{p.X.Middle(), p.Y.Middle(), p.Z.Middle()} }

// AsRead returns the point without its tolerance.
func (p Point) AsRead() Point {
	exact := At(p.Middle())
	exact.Reading, exact.Mirrored = p.Reading, p.Mirrored
	return exact
}

// Contains reports whether v lies within the ranges.
func (p Point) Contains(v Vector) bool {
	return p.X.Contains(v.X) && p.Y.Contains(v.Y) && p.Z.Contains(v.Z)
}

// isExact reports whether no coordinate has a tolerance.
func (p Point) isExact() bool { return p.X.IsExact() && p.Y.IsExact() && p.Z.IsExact() }

// spread returns more than the point can be away from its middle, in metres.
func (p Point) spread() float64 { return p.X.Width() + p.Y.Width() + p.Z.Width() }

// isBounded reports whether every coordinate is bounded and near enough for a cage.
func (p Point) isBounded() bool {
	for _, c := range [...]quantity.Range{p.X, p.Y, p.Z} {
		if !(c.Low >= -farthest && c.High <= farthest) {
			return false
		}
	}
	return true
}

// sharesReading reports whether both points are the same reading.
func (p Point) sharesReading(q Point) bool { return p.Reading != 0 && p.Reading == q.Reading }

// rangeVector is a direction or an offset whose coordinates are ranges.
type rangeVector struct{ x, y, z quantity.Range }

// offset returns the way from p to q. The way between two images of one reading does not
// depend on its x and z, and on its y twice or not at all.
func offset(p, q Point) rangeVector {
	if !p.sharesReading(q) {
		return rangeVector{q.X.Minus(p.X), q.Y.Minus(p.Y), q.Z.Minus(p.Z)}
	}
	var way rangeVector
	if p.Mirrored != q.Mirrored {
		way.y = q.Y.Times(quantity.Exactly(2))
	}
	return way
}

func (a rangeVector) norm() quantity.Range { return a.x.Hypot(a.y).Hypot(a.z) }

func (a rangeVector) dot(b rangeVector) quantity.Range {
	return a.x.Times(b.x).Plus(a.y.Times(b.y)).Plus(a.z.Times(b.z))
}

func (a rangeVector) cross(b rangeVector) rangeVector {
	return rangeVector{
		a.y.Times(b.z).Minus(a.z.Times(b.y)),
		a.z.Times(b.x).Minus(a.x.Times(b.z)),
		a.x.Times(b.y).Minus(a.y.Times(b.x)),
	}
}
