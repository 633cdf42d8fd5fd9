package cage

import "math"

// Vector is a place or a direction in metres, without tolerance: x forward, y left, z up.
type Vector struct{ X, Y, Z float64 }

// Plus returns a + b.
func (a Vector) Plus(b Vector) Vector { return Vector{a.X + b.X, a.Y + b.Y, a.Z + b.Z} }

// Minus returns a - b, the way from b to a.
func (a Vector) Minus(b Vector) Vector { return Vector{a.X - b.X, a.Y - b.Y, a.Z - b.Z} }

// Times returns the vector f times as long.
func (a Vector) Times(f float64) Vector { return Vector{a.X * f, a.Y * f, a.Z * f} }

// Dot returns the scalar product.
func (a Vector) Dot(b Vector) float64 { return a.X*b.X + a.Y*b.Y + a.Z*b.Z }

// Cross returns the vector product, right-handed.
func (a Vector) Cross(b Vector) Vector {
	return Vector{a.Y*b.Z - a.Z*b.Y, a.Z*b.X - a.X*b.Z, a.X*b.Y - a.Y*b.X}
}

// Norm returns the length.
func (a Vector) Norm() float64 {
	if square := a.Dot(a); square > 0x1p-900 && square < 0x1p900 {
		return math.Sqrt(square)
	}
	return math.Hypot(math.Hypot(a.X, a.Y), a.Z)
}

// Distance returns the length of the way between two places.
func (a Vector) Distance(b Vector) float64 { return a.Minus(b).Norm() }

// Unit returns the direction of a with length 1, and whether there is one: the zero vector
// and a vector that is not finite have none, and give the zero vector.
func (a Vector) Unit() (Vector, bool) {
	norm := a.Norm()
	if !(norm >= 0x1p-900 && norm <= 0x1p900) {
		return Vector{}, false
	}
	return a.Times(1 / norm), true
}

// Along returns the place that is the share s of the way from a to b: a for 0, b for 1.
func (a Vector) Along(b Vector, s float64) Vector { return a.Times(1 - s).Plus(b.Times(s)) }

// Angle returns the angle between two directions, from 0 to π; 0 where one has no length.
// It is the arc tangent of |a × b| over a · b, which is exact to the last digits for small
// angles, where the arc cosine is not.
func (a Vector) Angle(b Vector) float64 { return math.Atan2(a.Cross(b).Norm(), a.Dot(b)) }

// Mirror returns the mirror image on the other side of the car: y changes its sign.
func (a Vector) Mirror() Vector { return Vector{a.X, -a.Y, a.Z} }

// Turned returns a turned by the angle about the axis, right-handed; the axis has length 1
// (formula of Rodrigues).
func (a Vector) Turned(axis Vector, angle float64) Vector {
	sine, cosine := math.Sincos(angle)
	return a.Times(cosine).Plus(axis.Cross(a).Times(sine)).Plus(axis.Times(axis.Dot(a) * (1 - cosine)))
}

// isFinite reports whether every coordinate is a number of a size that can be squared.
func (a Vector) isFinite() bool {
	return math.Abs(a.X) <= farthest && math.Abs(a.Y) <= farthest && math.Abs(a.Z) <= farthest
}

// farthest is how far from the origin a coordinate may be, in metres. It is beyond every
// cage and keeps squares and products far from overflow.
const farthest = 1e6

// frame is three directions at right angles, right-handed: the first along the course, the
// second across it in the plane of interest, the third square to both.
type frame struct{ first, second, third Vector }

// frameAlong returns the frame whose first direction is that of along, and whose second is
// that of what remains of toward without its part along; where nothing remains, of the axis
// least in line with along. It reports whether along has a direction.
func frameAlong(along, toward Vector) (frame, bool) {
	first, ok := along.Unit()
	if !ok {
		return frame{}, false
	}
	second, ok := across(first, toward)
	if !ok {
		second, _ = across(first, first.leastAxis())
	}
	return frame{first, second, first.Cross(second)}, true
}

// across returns the direction of what remains of toward without its part along the unit
// vector first. Once more takes off what rounding left.
func across(first, toward Vector) (Vector, bool) {
	direction, ok := toward.Unit()
	if !ok {
		return Vector{}, false
	}
	rest := direction.Minus(first.Times(direction.Dot(first)))
	if rest.Norm() < 1e-9 {
		return Vector{}, false
	}
	rest, _ = rest.Unit()
	rest = rest.Minus(first.Times(rest.Dot(first)))
	return rest.Unit()
}

// leastAxis returns the axis of the car that is least in line with a.
func (a Vector) leastAxis() Vector {
	x, y, z := math.Abs(a.X), math.Abs(a.Y), math.Abs(a.Z)
	switch {
	case y <= x && y <= z:
		return Vector{Y: 1}
	case x <= z:
		return Vector{X: 1}
	}
	return Vector{Z: 1}
}
