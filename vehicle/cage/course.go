package cage

import "math"

// Course is the centreline of a tube without tolerance, for drawings and cut lists: straight
// runs through points, in metres, with an arc of the bend radius at every inner one.
type Course struct {
	Points []Vector
	Radius float64
}

// straightOn is the turn below which a point is taken to lie on a straight, in radians. It
// is far below what a workshop can bend.
const straightOn = 1e-9

// closest is the distance below which two points are one place, in metres.
const closest = 1e-9

// turnsBack is how near to a half turn a turn counts as straight back, in radians.
const turnsBack = 1e-6

// Check returns what is wrong with the course, as Tube.Check does: all that is wrong with
// its points, or else every straight that is too short for the tangents of its bends.
func (c Course) Check() []*Fault {
	if len(c.Points) < 2 {
		return []*Fault{{Problem: TooFewPoints}}
	}
	var faults []*Fault
	if !(c.Radius >= 0 && c.Radius <= farthest) {
		faults = append(faults, &Fault{Problem: NoRadius})
	}
	for i, p := range c.Points {
		switch {
		case !p.isFinite():
			return []*Fault{{Problem: NotFinite, At: i}}
		case i > 0 && p.Distance(c.Points[i-1]) <= closest:
			faults = append(faults, &Fault{Problem: RepeatedPoint, At: i})
		case i > 1 && c.Turn(i-2) > math.Pi-turnsBack:
			faults = append(faults, &Fault{Problem: Reversal, At: i - 1})
		case i > 1 && c.Turn(i-2) > straightOn && c.Radius == 0:
			faults = append(faults, &Fault{Problem: NoRadius, At: i - 1})
		}
	}
	if len(faults) > 0 {
		return faults
	}
	for i := 1; i < len(c.Points); i++ {
		if straight := c.Straight(i - 1); straight < -closest {
			faults = append(faults, &Fault{Problem: RadiusTooBig, At: i, Missing: -straight})
		}
	}
	return faults
}

// Turn returns the angle by which the course turns at its inner point i (0 is the second
// point), from 0 to π.
func (c Course) Turn(i int) float64 {
	return c.Points[i+1].Minus(c.Points[i]).Angle(c.Points[i+2].Minus(c.Points[i+1]))
}

// Tangent returns how far from its inner point i the arc begins and ends, in metres.
func (c Course) Tangent(i int) float64 {
	if turn := c.Turn(i); turn > straightOn {
		return c.Radius * math.Tan(turn/2)
	}
	return 0
}

// Straight returns what the tangents leave of run i (0 is from the first point to the
// second), in metres; below 0 where they do not fit.
func (c Course) Straight(i int) float64 {
	length := c.Points[i].Distance(c.Points[i+1])
	if i > 0 {
		length -= c.Tangent(i - 1)
	}
	if i+2 < len(c.Points) {
		length -= c.Tangent(i)
	}
	return length
}

// NodeLength returns the length from point to point, in metres.
func (c Course) NodeLength() float64 {
	length := 0.0
	for i := 1; i < len(c.Points); i++ {
		length += c.Points[i].Distance(c.Points[i-1])
	}
	return length
}

// Developed returns the length of the centreline, straights and arcs, in metres.
func (c Course) Developed() float64 {
	length := c.NodeLength()
	for i := range max(0, len(c.Points)-2) {
		if turn := c.Turn(i); turn > straightOn {
			length -= c.Radius * (2*math.Tan(turn/2) - turn)
		}
	}
	return length
}
