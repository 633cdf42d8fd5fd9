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
	var turn quickTurn
	if !turn.of([4]Point{a.From, a.To, b.From, b.To}) {
		return quantity.Range{}, false
	}
	return quantity.Between(turn.low, turn.high), true
}

// quickTurn is the angle between two ways in first-order form: as read, with what each
// coordinate of the points does to it, and a rest.
type quickTurn struct {
	read, rest, low, high float64
	points                [4]Point
	slopes                [4]Vector // of points that are one reading with one before, nothing
}

// of works out the angle between the ways from the first point to the second and from the
// third to the fourth, and returns whether it is plain.
func (t *quickTurn) of(points [4]Point) bool {
	var halves [4]Vector
	one, okOne := wayOf(&points[0], &points[1], &halves[0], &halves[1])
	other, okOther := wayOf(&points[2], &points[3], &halves[2], &halves[3])
	if !okOne || !okOther {
		return false
	}
	normal, ok := one.unit.Cross(other.unit).Unit()
	if !ok {
		return false
	}
	across, acrossOther := normal.Cross(one.unit), normal.Cross(other.unit)
	t.read, t.points = one.unit.Angle(other.unit), points
	reach := t.turning(halves, across.Times(1/one.length), acrossOther.Times(1/other.length))

	rest := one.bow(across) + other.bow(acrossOther)
	lean, leanOther := one.lean(normal), other.lean(normal)
	low, high := t.read-reach-rest, t.read+reach+rest
	if reach == 0 || !(low > 0) || !(high < math.Pi) {
		return false
	}
	sineLow, cosineLow := math.Sincos(low)
	sineHigh, cosineHigh := math.Sincos(high)
	sine := min(sineLow, sineHigh) // the least between them
	apart := (lean*lean+leanOther*leanOther)/2*max(math.Abs(cosineLow), math.Abs(cosineHigh)) + lean*leanOther
	apart /= sine - 0.1*plainAngle
	if !(sine > plainAngle) || apart > 0.05*plainAngle || rest+apart > quickRest*reach+frameError {
		return false
	}
	t.rest = (rest+apart)*(1+frameError) + frameError
	t.low, t.high = t.read-reach-t.rest, t.read+reach+t.rest
	return true
}

// readWay is a way as read: its length and direction, and how far each coordinate of it can
// be off.
type readWay struct {
	unit, off Vector
	length    float64
}

// wayOf returns the way between two points, and whether it is long against what it can be
// off. It sets how far the coordinates of each can be from their middle.
func wayOf(p, q *Point, halfP, halfQ *Vector) (readWay, bool) {
	if !p.isBounded() || !q.isBounded() {
		return readWay{}, false
	}
	from, to := p.center(halfP), q.center(halfQ)
	way := to.Minus(from)
	w := readWay{off: halfP.Plus(*halfQ), length: way.Norm()}
	if !(w.length > 20*w.off.Norm()) || !(w.length > 1/farthest) {
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

// turning sets what each point does to the angle, where a part of a way across changes it by
// the given shares, and returns how much all can do. Points of one reading count as one.
func (t *quickTurn) turning(halves [4]Vector, first, second Vector) float64 {
	t.slopes = [4]Vector{first, first.Times(-1), second.Times(-1), second}
	reach := 0.0
	for i := range t.points {
		for k := i + 1; k < len(t.points); k++ {
			if t.points[i].sharesReading(t.points[k]) {
				if t.points[i].Mirrored != t.points[k].Mirrored {
					t.slopes[k].Y *= -1
				}
				t.slopes[i], t.slopes[k] = t.slopes[i].Plus(t.slopes[k]), Vector{}
			}
		}
		slope, half := &t.slopes[i], &halves[i]
		slope.X, slope.Y, slope.Z = slope.X*half.X, slope.Y*half.Y, slope.Z*half.Z
		reach += math.Abs(slope.X) + math.Abs(slope.Y) + math.Abs(slope.Z)
	}
	return reach * (1 + slack)
}

// center returns the middle of a bounded point, and sets how far each coordinate can be
// from it.
func (p *Point) center(half *Vector) Vector {
	middle := Vector{(p.X.Low + p.X.High) / 2, (p.Y.Low + p.Y.High) / 2, (p.Z.Low + p.Z.High) / 2}
	half.X = max(p.X.High-middle.X, middle.X-p.X.Low) * (1 + slack)
	half.Y = max(p.Y.High-middle.Y, middle.Y-p.Y.Low) * (1 + slack)
	half.Z = max(p.Z.High-middle.Z, middle.Z-p.Z.Low) * (1 + slack)
	return middle
}
