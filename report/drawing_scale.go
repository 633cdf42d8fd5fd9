package report

import "strconv"

// scale is how many times smaller than the car the drawing is: 25 for 1:25, 0.5 for 2:1.
type scale float64

// factor is how many millimetres on paper a metre is.
func (s scale) factor() float64 { return 1000 / float64(s) }

// String writes the scale as ISO 5455 does, "1:25" or "2:1".
func (s scale) String() string {
	figure := func(f float64) string { return strconv.FormatFloat(f, 'f', -1, 64) }
	if s < 1 {
		return figure(1/float64(s)) + ":1"
	}
	return "1:" + figure(float64(s))
}

// The scales to choose from within a power of ten. 1, 2 and 5 are the recommended ones of
// ISO 5455 (from memory), which leaves scales between to need: at 1:20 a cage hardly fits
// the sheet, at 1:50 it would be too small to number. The isometric view, from which
// nobody takes a measure across, has more of them.
var (
	commonScales    = scalesOf(1, 2, 2.5, 5)
	isometricScales = scalesOf(1, 2, 2.5, 3, 4, 5)
)

// scalesOf lists scales, the largest drawing first: enlargements and then reductions, far
// beyond any cage, so that there is one for whatever a sheet says.
func scalesOf(steps ...float64) []scale {
	var all []scale
	for _, times := range []float64{1000, 500, 200, 100, 50, 20, 10, 5, 2} {
		all = append(all, scale(1/times))
	}
	for power := 1.0; power <= 1e9; power *= 10 {
		for _, step := range steps {
			all = append(all, scale(step*power))
		}
	}
	return all
}

// barLength is how many millimetres of the car the scale bar shows: the greatest of 1, 2
// and 5 times a power of ten that is no longer on paper than a limit in millimetres.
func (s scale) barLength(limit float64) float64 {
	best := 0.0
	for power := 1e-4; power <= 1e12; power *= 10 {
		for _, step := range []float64{1, 2, 5} {
			if length := step * power; length/float64(s) <= limit {
				best = length
			}
		}
	}
	return best
}
