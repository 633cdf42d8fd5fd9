package cage

import "gapsheet/vehicle/quantity"

// Run is a straight course between two points.
type Run struct{ From, To Point }

// Length returns the distance between the ends, in metres. Every coordinate occurs once in
// it, so that the range is the least there is, but for rounding.
func (r Run) Length() quantity.Range { return offset(r.From, r.To).norm() }

// Distance returns the distance between two points, in metres.
func Distance(p, q Point) quantity.Range { return offset(p, q).norm() }

// Offset returns how far q is ahead of p, to the left of it and above it, in metres.
func Offset(p, q Point) (ahead, left, above quantity.Range) {
	way := offset(p, q)
	return way.x, way.y, way.z
}

// AngleToVertical returns the angle between the run and the vertical, from 0 to π/2, in
// radians. A run that may have no length can have any angle.
func (r Run) AngleToVertical() quantity.Range {
	way := offset(r.From, r.To)
	return steepness(way.x.Hypot(way.y), way.z)
}

// AngleToHorizontal returns the angle between the run and the horizontal, from 0 to π/2.
func (r Run) AngleToHorizontal() quantity.Range {
	way := offset(r.From, r.To)
	return steepness(way.z, way.x.Hypot(way.y))
}

// SideViewToVertical returns the angle between the run and the vertical as seen from the
// side (in the x–z plane), from 0 to π/2; any angle where the run is seen end on.
func (r Run) SideViewToVertical() quantity.Range {
	way := offset(r.From, r.To)
	return steepness(way.x, way.z)
}

// SideViewToHorizontal returns the angle between the run and the horizontal as seen from
// the side, from 0 to π/2.
func (r Run) SideViewToHorizontal() quantity.Range {
	way := offset(r.From, r.To)
	return steepness(way.z, way.x)
}

// FrontViewToVertical returns the angle between the run and the vertical as seen from the
// front (in the y–z plane), from 0 to π/2.
func (r Run) FrontViewToVertical() quantity.Range {
	way := offset(r.From, r.To)
	return steepness(way.y, way.z)
}

// FrontViewToHorizontal returns the angle between the run and the horizontal as seen from
// the front, from 0 to π/2.
func (r Run) FrontViewToHorizontal() quantity.Range {
	way := offset(r.From, r.To)
	return steepness(way.z, way.y)
}

// AngleBelowHorizontal returns the angle by which the run falls from its first point to its
// second, from -π/2 (straight up) to π/2 (straight down), in radians: that of a shoulder
// strap from the shoulder to its anchor.
func (r Run) AngleBelowHorizontal() quantity.Range {
	way := offset(r.From, r.To)
	level := way.x.Hypot(way.y)
	if level.Low <= 0 && way.z.Contains(0) {
		return quantity.Range{Low: -quarterTurn.High, High: quarterTurn.High}
	}
	return quantity.Atan2(way.z.Negate(), level)
}

// The ranges that hold π/2 and π.
var (
	quarterTurn = quantity.Atan2(quantity.Exactly(1), quantity.Range{})
	halfTurn    = quantity.Atan2(quantity.Range{}, quantity.Exactly(-1))
)

// steepness returns the range of the arc tangent of |opposite| over |adjacent|, from 0 to
// π/2; the whole of it where both may be zero and so no angle is defined.
func steepness(opposite, adjacent quantity.Range) quantity.Range {
	if opposite.Contains(0) && adjacent.Contains(0) {
		return quantity.Range{High: quarterTurn.High}
	}
	return quantity.Atan2(opposite.Abs(), adjacent.Abs())
}

// Angles are those of a run, from 0 to π/2.
type Angles struct {
	ToVertical, ToHorizontal       quantity.Range
	SideToVertical, SideHorizontal quantity.Range // as seen from the side
	FrontVertical, FrontHorizontal quantity.Range // as seen from the front
}

// Angles returns the angles of the run.
func (r Run) Angles() Angles {
	return Angles{
		r.AngleToVertical(), r.AngleToHorizontal(),
		r.SideViewToVertical(), r.SideViewToHorizontal(),
		r.FrontViewToVertical(), r.FrontViewToHorizontal(),
	}
}
