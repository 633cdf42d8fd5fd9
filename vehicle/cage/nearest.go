package cage

// Segment is a straight piece between two places.
type Segment struct{ From, To Vector }

// Length returns the distance between the ends, in metres.
func (s Segment) Length() float64 { return s.From.Distance(s.To) }

// At returns the place that is the given share of the way along, 0 for From, 1 for To.
func (s Segment) At(share float64) Vector { return s.From.Along(s.To, share) }

// Nearest returns the share of the way along at which the segment is nearest to p, and how
// far away that is, in metres. On a segment without length the share is 0.
func (s Segment) Nearest(p Vector) (share, distance float64) {
	share = min(1, max(0, s.foot(p)))
	return share, s.At(share).Distance(p)
}

// foot returns the share at which the whole line is nearest to p, 0 where there is no line.
func (s Segment) foot(p Vector) float64 {
	way := s.To.Minus(s.From)
	square := way.Dot(way)
	if !(square > 0) {
		return 0
	}
	return p.Minus(s.From).Dot(way) / square
}

// NearestTo returns the shares at which two segments are nearest to each other, and how far
// apart they are there, in metres. The nearest places are those of the two lines where both
// lie between the ends; else one of them is an end. Of two segments side by side it is the
// first of the ends to be as near as any.
func (s Segment) NearestTo(other Segment) (share, otherShare, distance float64) {
	share, otherShare, distance = 0, 0, s.From.Distance(other.From)
	better := func(one, two float64) {
		if d := s.At(one).Distance(other.At(two)); d < distance {
			share, otherShare, distance = one, two, d
		}
	}
	for _, end := range []float64{0, 1} {
		foot, _ := other.Nearest(s.At(end))
		better(end, foot)
		foot, _ = s.Nearest(other.At(end))
		better(foot, end)
	}
	if one, two, ok := s.crossing(other); ok && one > 0 && one < 1 && two > 0 && two < 1 {
		better(one, two)
	}
	return share, otherShare, distance
}

// crossing returns the shares at which the two whole lines are nearest, and whether they
// are not side by side.
func (s Segment) crossing(other Segment) (share, otherShare float64, ok bool) {
	u, v, w := s.To.Minus(s.From), other.To.Minus(other.From), other.From.Minus(s.From)
	normal := u.Cross(v)
	square := normal.Dot(normal)
	if !(square > 1e-12*u.Dot(u)*v.Dot(v)) {
		return 0, 0, false
	}
	return w.Cross(v).Dot(normal) / square, w.Cross(u).Dot(normal) / square, true
}
