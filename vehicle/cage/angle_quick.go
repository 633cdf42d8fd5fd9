package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// plainAngle is the least sine of an angle that is worked out the quick way, and quickRest
// how much of what the readings do to it, at most, may be of second order.
const (
	plainAngle = 0.1
	quickRest  = 0.02
)

// quickAngle returns the angle between the directions of two runs that are far from lying
// alongside, and whether it says so: where what is left over is small.
//
// With u, v the ways as read, n and m the directions across them in their plane, and w that
// across both, let a and b be what the readings add to each, by the length of the way. Seen
// along w, the angle grows by atan(b·m / (1 + b·v)) - atan(a·n / (1 + a·u)), which is b·m - a·n
// but for products of two; and the ways lean out of the plane by no more than σ and τ, the
// arc tangents of |a·w| and |b·w| over 1 - |a|. By the cosine rule of the sphere,
// cos θ = cos σ cos τ cos θ' + sin σ sin τ for the angle θ' as seen along w, so that the two
// cosines differ by no more than (σ² + τ²)/2 |cos θ'| + στ, and the angles by no more than
// that over the least sine between them.
func quickAngle(a, b Run) (quantity.Range, bool) {
	one, okOne := wayOf(a)
	other, okOther := wayOf(b)
	if !okOne || !okOther {
		return quantity.Range{}, false
	}
	normal, ok := one.unit.Cross(other.unit).Unit()
	if !ok {
		return quantity.Range{}, false
	}
	across, acrossOther := normal.Cross(one.unit), normal.Cross(other.unit)
	read := one.unit.Angle(other.unit)
	reach := turning([4]Point{a.From, a.To, b.From, b.To}, across.Times(1/one.length), acrossOther.Times(1/other.length))

	rest := one.bow(across) + other.bow(acrossOther)
	lean, leanOther := one.lean(normal), other.lean(normal)
	low, high := read-reach-rest, read+reach+rest
	apart := (lean*lean+leanOther*leanOther)/2*max(math.Abs(math.Cos(low)), math.Abs(math.Cos(high))) + lean*leanOther
	sine := min(math.Sin(low), math.Sin(high)) // the least between them, as both are between 0 and π
	if reach == 0 || !(sine > plainAngle) || !(low > 0) || !(high < math.Pi) {
		return quantity.Range{}, false
	}
	apart /= sine - 0.1*plainAngle
	if apart > 0.05*plainAngle || rest+apart > quickRest*reach+frameError {
		return quantity.Range{}, false
	}
	rest = (rest+apart)*(1+frameError) + frameError
	return quantity.Between(read-reach-rest, read+reach+rest), true
}

// readWay is a way as read: its length and direction, and how far each coordinate of it can
// be off.
type readWay struct {
	unit, off Vector
	length    float64
}

// wayOf returns the way of a run, and whether it is long against what it can be off.
func wayOf(r Run) (readWay, bool) {
	way := r.To.Middle().Minus(r.From.Middle())
	w := readWay{off: r.From.halves().Plus(r.To.halves()), length: way.Norm()}
	if !(w.length > 20*w.off.Norm()) || !(w.length < farthest) || !(w.length > 1/farthest) {
		return w, false
	}
	w.unit = way.Times(1 / w.length)
	return w, true
}

// part returns how far the way can be off in a direction, by its length, at most.
func (w *readWay) part(d Vector) float64 {
	return (math.Abs(d.X)*w.off.X + math.Abs(d.Y)*w.off.Y + math.Abs(d.Z)*w.off.Z) / w.length * (1 + slack)
}

// bow returns how much the turn of the way across can differ from its part across.
func (w *readWay) bow(across Vector) float64 {
	along, over := w.part(w.unit), w.part(across)
	slope := over / (1 - along)
	return slope*along + slope*slope*slope/3
}

// lean returns how far the way can lean to the side, in radians, at most.
func (w *readWay) lean(normal Vector) float64 { return w.part(normal) / (1 - w.part(w.unit)) }

// turning returns how far the angle between two ways can grow or shrink, to first order,
// where a part across changes it by the given shares. Points of one reading count as one.
func turning(points [4]Point, first, second Vector) float64 {
	shares := [4]Vector{first, first.Times(-1), second.Times(-1), second}
	reach := 0.0
	for i := range points {
		for k := i + 1; k < len(points); k++ {
			if points[i].sharesReading(points[k]) {
				if points[i].Mirrored != points[k].Mirrored {
					shares[k].Y *= -1
				}
				shares[i], shares[k] = shares[i].Plus(shares[k]), Vector{}
				points[k].Reading = 0
			}
		}
		half := points[i].halves()
		reach += math.Abs(shares[i].X)*half.X + math.Abs(shares[i].Y)*half.Y + math.Abs(shares[i].Z)*half.Z
	}
	return reach * (1 + slack)
}

// halves returns how far each coordinate can be from its middle.
func (p Point) halves() Vector {
	half := func(r quantity.Range) float64 {
		middle := r.Middle()
		return max(r.High-middle, middle-r.Low) * (1 + slack)
	}
	return Vector{half(p.X), half(p.Y), half(p.Z)}
}
