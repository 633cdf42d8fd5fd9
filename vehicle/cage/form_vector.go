package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// formVector is a place or a way in first-order forms: x, y, z or along a frame.
type formVector [3]form

func (a *formVector) minus(b *formVector) formVector {
	return formVector{a[0].minus(&b[0]), a[1].minus(&b[1]), a[2].minus(&b[2])}
}

// toward returns the place that is the share s of the way from a to b.
func (a *formVector) toward(b *formVector, s float64) formVector {
	var place formVector
	for i := range place {
		part := a[i].scaled(1 - s)
		place[i] = part.plusTimes(&b[i], s)
	}
	return place
}

// plusTimes returns a + length × way, for forms all three.
func (a *formVector) plusTimes(way *formVector, length *form) formVector {
	var place formVector
	for i := range place {
		part := way[i].times(length)
		place[i] = a[i].plus(&part)
	}
	return place
}

// along returns the part of a along a direction.
func (a *formVector) along(d Vector) form {
	x, y, z := &a[0], &a[1], &a[2]
	sum := form{middle: d.X*x.middle + d.Y*y.middle + d.Z*z.middle}
	terms := math.Abs(d.X*x.middle) + math.Abs(d.Y*y.middle) + math.Abs(d.Z*z.middle)
	for i := range sum.slope {
		one, two, three := d.X*x.slope[i], d.Y*y.slope[i], d.Z*z.slope[i]
		sum.slope[i] = one + two + three
		terms += math.Abs(one) + math.Abs(two) + math.Abs(three)
	}
	rest := math.Abs(d.X)*x.rest + math.Abs(d.Y)*y.rest + math.Abs(d.Z)*z.rest
	sum.rest = rest + slack*(terms+rest)
	return sum
}

func (a *formVector) in(f frame) formVector {
	return formVector{a.along(f.first), a.along(f.second), a.along(f.third)}
}

// outOf returns in x, y, z what is given along a frame.
func (a *formVector) outOf(f frame) formVector {
	return a.in(frame{
		Vector{f.first.X, f.second.X, f.third.X},
		Vector{f.first.Y, f.second.Y, f.third.Y},
		Vector{f.first.Z, f.second.Z, f.third.Z},
	})
}

func (a *formVector) dot(b *formVector) form {
	x, y, z := a[0].times(&b[0]), a[1].times(&b[1]), a[2].times(&b[2])
	sum := x.plus(&y)
	return sum.plus(&z)
}

func (a *formVector) cross(b *formVector) formVector {
	var product formVector
	for i := range product {
		j, k := (i+1)%3, (i+2)%3
		one, other := a[j].times(&b[k]), a[k].times(&b[j])
		product[i] = one.minus(&other)
	}
	return product
}

func (a *formVector) middle() Vector { return Vector{a[0].middle, a[1].middle, a[2].middle} }

// unit returns the direction of a along the frame f, whose first direction is about that of
// a, and whether a surely has a part along it. With the slopes s = a2/a1 and t = a3/a1, the
// direction is (1, s, t) / √(1 + s² + t²), and the root is between 1 and that for the
// greatest slopes.
func (a *formVector) unit(f frame) (formVector, bool) {
	part := a.in(f)
	inverse, ok := part[0].inverse()
	if !ok {
		return formVector{}, false
	}
	direction := formVector{{}, part[1].times(&inverse), part[2].times(&inverse)}
	second, third := direction[1].size(), direction[2].size()
	shrink := greatestShrink(second, third)
	direction[0].middle, direction[0].rest = 1-shrink/2, shrink/2+slack
	direction[1].shrinkBy(shrink, second)
	direction[2].shrinkBy(shrink, third)
	return direction, true
}

// greatestShrink returns an upper bound of 1 - 1/√(1 + s² + t²), the share by which a vector
// with slopes up to s and t is shortened to be as long as its part along.
func greatestShrink(s, t float64) float64 {
	square := s*s + t*t
	return min(1, square/(1+square+math.Sqrt(1+square))*(1+slack)+slack)
}

// shrinkBy multiplies a form of the given size by an unknown number between 1 - share and 1.
func (a *form) shrinkBy(share, size float64) {
	f := 1 - share/2
	a.middle *= f
	for i := range a.slope {
		a.slope[i] *= f
	}
	a.rest += size * (share/2 + slack)
}

// norm returns the length of a as a form, and whether a surely has a part along the unit
// vector direction. The length is a1 + (a2² + a3²) / (a1 + length), where the second term
// is at least 0 and at most (a2² + a3²) / 2a1.
func (a *formVector) norm(direction Vector) (form, bool) {
	f, ok := frameAlong(direction, direction.leastAxis())
	if !ok {
		return form{}, false
	}
	part := a.in(f)
	low := part[0].low()
	if !(low > 0) {
		return form{}, false
	}
	sizeTwo, sizeThree := part[1].size(), part[2].size()
	more := (sizeTwo*sizeTwo + sizeThree*sizeThree) / (2 * low) * (1 + slack)
	length := part[0]
	length.middle += more / 2
	length.rest += more/2 + slack*(part[0].size()+more)
	return length, length.rest < farthest
}

// sideways are the cosines and sines of the directions in steps of π/8 over half a turn.
var sideways = func() (directions [8][2]float64) {
	for i := range directions {
		sine, cosine := math.Sincos(float64(i) * math.Pi / 8)
		directions[i] = [2]float64{cosine, sine}
	}
	return directions
}()

// length returns the range of the length of a, given along a frame in whose third direction
// it is thin. In the plane of the other two, a lies within a polygon of sixteen sides, each
// as far from the origin as a reaches in its direction: its farthest corner bounds the
// length above. Where a lies between two of the directions, both bound it, and it is longest
// where the two sides cross. Below, the length is bounded by how far a surely is in any one
// direction.
func (a *formVector) length() quantity.Range {
	sizeA, sizeB, sizeC := a[0].size(), a[1].size(), a[2].size()
	if near := max(a[0].low(), -a[0].high()); near > 20*(a[0].reach()+sizeB) {
		// all of a is far away in the first direction, and every other near it does as well
		return quantity.Between(near*(1-frameError), math.Sqrt(sizeA*sizeA+sizeB*sizeB+sizeC*sizeC)*(1+frameError))
	}
	var reach [16]float64
	best := 0
	for i, direction := range sideways {
		low, high := a.side(direction[0], direction[1])
		reach[i], reach[i+8] = high, -low
	}
	for i := range reach {
		if reach[i] < reach[best] {
			best = i
		}
	}
	above, cosine, sine := 0.0, sideways[1][0], sideways[1][1]
	for i, one := range reach {
		if other := reach[(i+1)%16]; one >= 0 && other >= 0 {
			more := (other - one*cosine) / sine
			above = max(above, math.Sqrt(one*one+more*more))
		}
	}
	above = min(above, math.Sqrt(sizeA*sizeA+sizeB*sizeB))
	above = math.Sqrt(above*above + sizeC*sizeC)
	below := max(0, a.farSide(float64(best)*math.Pi/8+math.Pi, -reach[best]))
	return quantity.Between(below*(1-frameError), max(above, below)*(1+frameError))
}

// side returns between what a is along a direction in the plane of the first two.
func (a *formVector) side(cosine, sine float64) (low, high float64) {
	one, two := &a[0], &a[1]
	middle := cosine*one.middle + sine*two.middle
	reach := math.Abs(cosine)*one.rest + math.Abs(sine)*two.rest
	for i := range one.slope {
		reach += math.Abs(cosine*one.slope[i] + sine*two.slope[i])
	}
	reach += slack * (reach + one.size() + two.size())
	return middle - reach, middle + reach
}

// farSide returns how far a surely is in about the direction in which that is farthest,
// found by turning from a first direction, for which it is known, by halved steps. It does
// not search where a is far away for its size, for then every direction near does as well.
func (a *formVector) farSide(angle, far float64) float64 {
	if size := a[0].reach() + a[1].reach(); size == 0 || far < -size || far > 100*size {
		return far
	}
	for step := math.Pi / 16; step > 0.01; step /= 2 {
		for _, turned := range []float64{angle - step, angle + step} {
			sine, cosine := math.Sincos(turned)
			if low, _ := a.side(cosine, sine); low > far {
				angle, far = turned, low
			}
		}
	}
	return far
}

// frameError is more than the relative error of a length in a frame whose directions are
// rounded: each is within 2^-50 of length 1 and of a right angle to the others.
const frameError = 0x1p-44
