package cage

import "math"

// GreatestRadius returns the greatest bend radius that fits between the points of the course,
// in metres: that with which the tangents of two neighbouring bends take up the straight
// between them (elementary geometry). It is infinite for a course without a corner.
func (c Course) GreatestRadius() float64 {
	greatest := math.Inf(1)
	half := func(point int) float64 { // tangent by radius
		if point < 1 || point+1 >= len(c.Points) {
			return 0
		}
		if turn := c.Turn(point - 1); turn > straightOn {
			return math.Tan(turn / 2)
		}
		return 0
	}
	for i := 1; i < len(c.Points); i++ {
		if tangents := half(i-1) + half(i); tangents > 0 {
			greatest = min(greatest, c.Points[i-1].Distance(c.Points[i])/tangents)
		}
	}
	return greatest
}
