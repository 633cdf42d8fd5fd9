package cage

import "math"

// Notch is the saddle that the end of a round branch tube needs to sit on a round main tube,
// both straight there. All lengths are in metres and measured from the node along the
// branch's centreline.
type Notch struct {
	Branch float64 // radius of the branch's outside
	Main   float64 // radius of the main tube's outside
	Angle  float64 // between the axes, above 0 and below π, radians
	Offset float64 // of the branch's axis from the main tube's, square to both axes
}

// Check returns what is wrong with the notch: a radius that is none, a branch that is
// thicker than the main tube (or set off so far that it would hang over its side), a branch
// along its main tube.
func (n Notch) Check() *Fault {
	switch {
	case !(n.Branch > 0) || !(n.Main > 0) || !(n.Main <= farthest) || !(math.Abs(n.Offset) <= farthest):
		return &Fault{Problem: NotALength}
	case !(n.Angle > 1e-3) || !(n.Angle < math.Pi-1e-3):
		return &Fault{Problem: NoMeeting}
	case n.Branch+math.Abs(n.Offset) > n.Main+closest:
		return &Fault{Problem: BranchTooBig, Missing: n.Branch + math.Abs(n.Offset) - n.Main}
	}
	return nil
}

// Profile returns how far from the node the branch's outside ends at the place p round it,
// in radians: p is 0 on the side toward which the main tube's axis leans (the acute side
// where the angle is acute) and grows right-handed about the way out along the branch. It
// is the closed form of two crossing cylinders,
//
//	√(R² - (r sin p - e)²) / sin a + r cos p / tan a.
//
// The notch must be without fault.
func (n Notch) Profile(p float64) float64 {
	sine, cosine := math.Sincos(p)
	side := n.Branch*sine - n.Offset
	return math.Sqrt(max(0, n.Main*n.Main-side*side))/math.Sin(n.Angle) + n.Branch*cosine/math.Tan(n.Angle)
}

// OnCentreline returns how far from the node the branch's centreline meets the surface of
// the main tube: so much shorter than the node length a tube is on its centreline. A 38 mm
// tube square on a 45 mm one ends 22.5 mm from the node.
func (n Notch) OnCentreline() float64 {
	return math.Sqrt(max(0, n.Main*n.Main-n.Offset*n.Offset)) / math.Sin(n.Angle)
}

// LongPoint returns how far from the node the branch's outside ends where it reaches
// nearest to the node, and where round the tube that is: a tube is to be cut so much
// shorter than its node length before it is notched.
func (n Notch) LongPoint() (distance, at float64) { return n.extreme(1) }

// ShortPoint returns how far from the node the bottom of the notch is, and where round the
// tube.
func (n Notch) ShortPoint() (distance, at float64) {
	distance, at = n.extreme(-1)
	return -distance, at
}

// Depth returns the length along the tube from the long point to the bottom of the notch.
func (n Notch) Depth() float64 {
	long, _ := n.LongPoint()
	short, _ := n.ShortPoint()
	return short - long
}

// extreme returns the least of sign × profile and where it is: the best of 360 places, made
// better by halved steps.
func (n Notch) extreme(sign float64) (value, at float64) {
	value = math.Inf(1)
	for i := range 360 {
		p := float64(i) * math.Pi / 180
		if v := sign * n.Profile(p); v < value-1e-15 {
			value, at = v, p
		}
	}
	for step := math.Pi / 360; step > 1e-9; step /= 2 {
		for _, p := range []float64{at - step, at + step} {
			if v := sign * n.Profile(p); v < value {
				value, at = v, p
			}
		}
	}
	return value, math.Mod(at+2*math.Pi, 2*math.Pi)
}

// Template returns the profile at equal steps round the tube, as heights above the long
// point over the way round the outside, from 0 to the full circumference: the edge of a
// paper wrapped round the tube. It has steps + 1 places, the last equal to the first.
func (n Notch) Template(steps int) (round, height []float64) {
	steps = max(steps, 1)
	long, _ := n.LongPoint()
	for i := range steps + 1 {
		p := 2 * math.Pi * float64(i) / float64(steps)
		round = append(round, n.Branch*p)
		height = append(height, max(0, n.Profile(math.Mod(p, 2*math.Pi))-long))
	}
	return round, height
}
