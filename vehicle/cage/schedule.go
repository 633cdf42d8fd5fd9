package cage

import "math"

// BendRow is one row of a bend schedule: feed the tube by the length, turn it by the
// rotation, bend it by the angle.
//
// Sign convention: the tube is fed with its first point ahead. The rotation is the angle from
// the plane of the bend before to the plane of this bend, right-handed about the way along
// the tube from its first point to its last: seen along that way, clockwise is positive. It
// is above -π and at most π; the first bend's is 0. The angle is above 0 and below π: a bend
// to the other side is a rotation by π.
type BendRow struct {
	Length   float64 // straight before the bend, metres: between arcs, not between points
	Rotation float64 // radians
	Angle    float64 // of the finished tube, radians; 0 in the last row, which is the straight end
}

// Schedule is the bend schedule of one tube: a row for every bend, and a last one with the
// straight that remains.
type Schedule struct {
	Rows   []BendRow
	Radius float64 // of the centreline, metres
}

// Schedule returns the bend schedule of a course. Points on a straight are passed over. The
// faults are those of Check.
func (c Course) Schedule() (Schedule, []*Fault) {
	if faults := c.Check(); len(faults) > 0 {
		return Schedule{}, faults
	}
	schedule := Schedule{Radius: c.Radius}
	straight := 0.0
	var plane Vector
	for _, piece := range c.Pieces() {
		if piece.Turn == 0 {
			straight += piece.Length()
			continue
		}
		row := BendRow{Length: straight, Angle: piece.Turn}
		if len(schedule.Rows) > 0 {
			row.Rotation = Witness(piece.Direction(0), plane, piece.Normal)
		}
		schedule.Rows = append(schedule.Rows, row)
		plane, straight = piece.Normal, 0
	}
	schedule.Rows = append(schedule.Rows, BendRow{Length: straight})
	return schedule, nil
}

// Place says where a tube made from a schedule lies: its first point, the way it starts, and
// the side to which its first bend turns, or any side for a tube without bends. The side
// need not be square to the way; its part across counts.
type Place struct{ First, Way, Side Vector }

// Place returns where the course lies, to lay out its schedule again.
func (c Course) Place() Place {
	place := Place{}
	pieces := c.Pieces()
	if len(pieces) == 0 {
		return place
	}
	place.First, place.Way = pieces[0].From, pieces[0].Direction(0)
	place.Side = place.Way.leastAxis()
	for _, piece := range pieces {
		if piece.Turn > 0 {
			place.Side = piece.Normal.Cross(piece.Direction(0))
			break
		}
	}
	return place
}

// Course lays the schedule out: it returns the points that the tube's straights meet in. The
// fault says which row cannot be: a length below zero or not finite, an angle that is not
// above 0 and below π, a radius that is none, a way or a side without a direction.
func (s Schedule) Course(at Place) (Course, *Fault) {
	course := Course{Points: []Vector{at.First}, Radius: s.Radius}
	way, ok := at.Way.Unit()
	side, okSide := across(way, at.Side)
	switch {
	case len(s.Rows) == 0:
		return Course{}, &Fault{Problem: TooFewPoints}
	case !ok || !okSide || !at.First.isFinite():
		return Course{}, &Fault{Problem: NotFinite}
	case !(s.Radius >= 0 && s.Radius <= farthest) || s.Radius == 0 && len(s.Rows) > 1:
		return Course{}, &Fault{Problem: NoRadius}
	}
	plane, here := way.Cross(side), at.First
	for i, row := range s.Rows {
		if fault := row.check(i, i == len(s.Rows)-1); fault != nil {
			return Course{}, fault
		}
		here = here.Plus(way.Times(row.Length))
		if row.Angle == 0 {
			break
		}
		if i > 0 {
			plane = plane.Turned(way, row.Rotation)
		}
		tangent := s.Radius * math.Tan(row.Angle/2)
		corner := here.Plus(way.Times(tangent))
		course.Points = append(course.Points, corner)
		way = way.Turned(plane, row.Angle)
		here = corner.Plus(way.Times(tangent))
	}
	course.Points = append(course.Points, here)
	return course, nil
}

func (r BendRow) check(at int, isLast bool) *Fault {
	switch {
	case !(r.Length >= -closest && r.Length <= farthest):
		return &Fault{Problem: NotALength, At: at}
	case isLast && r.Angle != 0, !isLast && !(r.Angle > 0):
		return &Fault{Problem: TooFewPoints, At: at}
	case !(r.Angle <= math.Pi-turnsBack):
		return &Fault{Problem: Reversal, At: at}
	case math.IsNaN(r.Rotation) || math.IsInf(r.Rotation, 0):
		return &Fault{Problem: NotFinite, At: at}
	}
	return nil
}

// Developed returns the length of the centreline, straights and arcs, in metres.
func (s Schedule) Developed() float64 {
	length := 0.0
	for _, row := range s.Rows {
		length += row.Length + s.Radius*row.Angle
	}
	return length
}
