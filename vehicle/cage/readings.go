package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// readings gives out the slots of forms to the points of one question. A point that is the
// same reading as one before has its slots. A fifth reading has no slots: its coordinates
// are in the rest, which is true and less sharp.
type readings struct {
	points    [pointsApart]Point
	count     int
	tube      int // whose bend radius has a slot, by its number
	hasRadius bool
	isExact   bool // no reading so far has a tolerance
	tooFar    bool // a reading is not bounded, or too far away for forms
}

func newReadings() readings { return readings{isExact: true} }

// usable reports whether forms say more than ranges about the readings so far.
func (r *readings) usable() bool { return !r.isExact && !r.tooFar }

// place returns the forms of a point's coordinates.
func (r *readings) place(p Point) formVector {
	r.isExact = r.isExact && p.isExact()
	coordinates := [3]quantity.Range{p.X, p.Y, p.Z}
	for _, c := range coordinates {
		if !(c.Low >= -farthest && c.High <= farthest) {
			r.tooFar = true
			return formVector{}
		}
	}
	slot := r.slotOf(p)
	var place formVector
	for i, c := range coordinates {
		place[i] = formOf(c)
		if slot < pointsApart {
			place[i].slope[3*slot+i], place[i].rest = place[i].rest, 0
		}
	}
	if p.Mirrored && slot < pointsApart { // the slot stands for the reading, not for its image
		place[1].slope[3*slot+1] *= -1
	}
	return place
}

func (r *readings) slotOf(p Point) int {
	for i := range r.count {
		if p.sharesReading(r.points[i]) {
			return i
		}
	}
	if r.count == pointsApart {
		return pointsApart
	}
	r.points[r.count] = p
	r.count++
	return r.count - 1
}

// radius returns the form of the bend radius of a tube, told from others by a number. The
// first one has a slot of its own.
func (r *readings) radius(radius quantity.Range, tube int) form {
	if !(radius.Low >= 0 && radius.High <= farthest) {
		r.tooFar = true
		return form{}
	}
	r.isExact = r.isExact && radius.IsExact()
	f := formOf(radius)
	if !r.hasRadius || r.tube == tube {
		r.hasRadius, r.tube = true, tube
		f.slope[radiusSlot], f.rest = f.rest, 0
	}
	return f
}

// met returns what both ranges have in common. Both hold the same value, so that they have
// something in common; should rounding ever part them, the first stands.
func met(a, b quantity.Range) quantity.Range {
	if b.Low != b.Low || b.High != b.High || math.IsInf(b.Low, 1) || math.IsInf(b.High, -1) {
		return a
	}
	common, _ := a.Meet(b)
	return common
}
