package cage

import (
	"math"
	"math/rand/v2"
	"testing"

	"gapsheet/vehicle/quantity"

	"github.com/stretchr/testify/require"
)

// drawCourse returns a course whose bends fit, with bends in all planes and now and then
// nearly straight ones.
func drawCourse(source *rand.Rand, points int) Course {
	radius := 0.08 + 0.08*source.Float64()
	for {
		c := Course{Points: []Vector{drawWay(source)}, Radius: radius}
		direction := drawDirection(source)
		for range points - 1 {
			c.Points = append(c.Points, c.Points[len(c.Points)-1].Plus(direction.Times(0.2+source.Float64())))
			normal, ok := across(direction, drawDirection(source))
			if !ok {
				normal, _ = across(direction, direction.leastAxis())
			}
			turn := 0.03 + source.Float64()*2.2
			if source.IntN(5) == 0 {
				turn = 0.01 * source.Float64()
			}
			direction = direction.Turned(normal, turn)
		}
		if len(c.Check()) == 0 {
			return c
		}
	}
}

func drawTube(source *rand.Rand, course Course, tolerance float64) Tube {
	tube := Tube{Radius: quantity.Between(course.Radius, course.Radius*(1+0.01*source.Float64()))}
	for _, p := range course.Points {
		tube.Points = append(tube.Points, drawPoint(source, p, tolerance))
	}
	return tube
}

func TestMeasuresAreSharpOverRanges(t *testing.T) {
	var node, developed, straights, tangents tightness
	kinds := map[string]*tightness{"node length": &node, "developed length": &developed, "straight": &straights, "tangent": &tangents}
	for _, kind := range kinds {
		kind.isLength = true
	}
	sweep(t, 60, func(source *rand.Rand) {
		tube := drawTube(source, drawCourse(source, 3+source.IntN(2)), drawTolerance(source))
		m := tube.Measure()
		check := func(kind *tightness, got quantity.Range, of func(c Course) float64) {
			low, high := math.Inf(1), math.Inf(-1)
			for _, radius := range []float64{tube.Radius.Low, tube.Radius.High} {
				asked := boxOf(question{tube.Points, got, func(p []Vector) float64 { return of(Course{p, radius}) }})
				asked.sample(t, source, 60)
				one, other := asked.hull(source)
				low, high = min(low, one), max(high, other)
			}
			kind.add(boxOf(question{tube.Points, got, nil}), low, high)
		}
		check(&node, m.NodeLength, Course.NodeLength)
		check(&developed, m.Developed, Course.Developed)
		i := source.IntN(len(m.Straights))
		check(&straights, m.Straights[i], func(c Course) float64 { return c.Straight(i) })
		check(&tangents, m.Bends[0].Tangent, func(c Course) float64 { return c.Radius * math.Tan(c.Turn(0)/2) })
	})
	for name, kind := range kinds {
		kind.log(t, name)
		limit := widest
		if name == "straight" {
			limit = 1.6 // beside a bend that may be none, its tangent is taken as independent of the length
		}
		require.LessOrEqual(t, kind.worst, limit, "%s %v", name, kind.points)
	}
}

// A polygon of n bends whose arcs meet is the circle: n arcs of 2π/n make 2πR whatever n is,
// and its sides are the tangents alone.
func TestPolygonOfBendsIsTheCircle(t *testing.T) {
	const radius = 0.25
	for n := 3; n <= 40; n++ {
		var points []Vector
		apothem := radius / math.Cos(math.Pi/float64(n))
		for i := range n + 3 {
			sine, cosine := math.Sincos(2 * math.Pi * float64(i) / float64(n))
			points = append(points, Vector{0.3, apothem * cosine, apothem * sine})
		}
		course := Course{points, radius}
		require.Empty(t, faultsBesides(course.Check(), RadiusTooBig))
		arcs := 0.0
		for i := range n {
			require.InDelta(t, 2*math.Pi/float64(n), course.Turn(i), 1e-12)
			arcs += radius * course.Turn(i)
			require.InDelta(t, 0, course.Straight(i+1), 1e-12, "side %d of %d", i, n)
		}
		require.InDelta(t, 2*math.Pi*radius, arcs, 1e-12)
		for _, piece := range course.Pieces() {
			if piece.Turn > 0 {
				require.InDelta(t, radius, piece.At(0.37).Minus(Vector{X: 0.3}).Norm(), 1e-12)
			}
		}
		tube := Tube{Radius: quantity.Exactly(radius)}
		for _, p := range points {
			tube.Points = append(tube.Points, At(p))
		}
		m := tube.Measure()
		require.InDelta(t, course.Developed(), m.Developed.Low, 1e-11)
		require.InDelta(t, course.Developed(), m.Developed.High, 1e-11)
	}
}

func faultsBesides(faults []*Fault, known Problem) (others []*Fault) {
	for _, fault := range faults {
		if fault.Problem != known || fault.Missing > 1e-9 {
			others = append(others, fault)
		}
	}
	return others
}

// The main hoop of a car 1.2 m wide and 1.3 m high, bent round 135 mm in its two corners:
// each arc is a quarter of a circle and saves 2 - π/2 of its radius.
func TestHoopByHand(t *testing.T) {
	hoop := Tube{Radius: quantity.Exactly(0.135), Points: []Point{
		At(Vector{Y: 0.6}), At(Vector{Y: 0.6, Z: 1.3}), At(Vector{Y: -0.6, Z: 1.3}), At(Vector{Y: -0.6}),
	}}
	require.Empty(t, hoop.Check())
	m := hoop.Measure()
	require.InDelta(t, 3.8, m.NodeLength.Low, 1e-15)
	require.InDelta(t, 3.8, m.NodeLength.High, 1e-15)
	require.InDelta(t, 3.8-2*0.135*(2-math.Pi/2), m.Developed.Low, 1e-12)
	require.InDelta(t, 0.135, m.Bends[0].Tangent.High, 1e-12)
	require.InDelta(t, 0.135*math.Pi/2, m.Bends[1].Arc.High, 1e-12)
	require.InDelta(t, 1.2-0.27, m.Straights[1].Low, 1e-12)
	require.InDelta(t, 3, hoop.RadiusRatio(quantity.Exactly(0.045)).Low, 1e-12)
	least, most := hoop.Bends(0.01)
	require.Equal(t, []int{2, 2}, []int{least, most})
	require.Zero(t, m.Missing().High)

	hoop.Radius = quantity.Exactly(0.7)
	faults := hoop.Check()
	require.Len(t, faults, 1)
	require.Equal(t, RadiusTooBig, faults[0].Problem)
	require.InDelta(t, 0.2, faults[0].Missing, 1e-12)
	require.EqualError(t, faults[0], "bend radius too big at number 3: 200.0 mm are missing")
	require.InDelta(t, 0.2, hoop.Measure().Missing().High, 1e-12)
}

func TestTubesThatCannotBeDrawn(t *testing.T) {
	at := func(places ...Vector) []Point {
		var points []Point
		for _, p := range places {
			points = append(points, At(p))
		}
		return points
	}
	nan := math.NaN()
	for _, c := range []struct {
		tube Tube
		want Problem
		at   int
	}{
		{Tube{}, TooFewPoints, 0},
		{Tube{Points: at(Vector{})}, TooFewPoints, 0},
		{Tube{Points: at(Vector{}, Vector{})}, RepeatedPoint, 1},
		{Tube{Points: at(Vector{}, Vector{X: 1}, Vector{})}, Reversal, 1},
		{Tube{Points: at(Vector{}, Vector{X: 1}, Vector{X: 1, Y: 1})}, NoRadius, 1},
		{Tube{Points: at(Vector{}, Vector{X: nan})}, NotFinite, 1},
		{Tube{Points: at(Vector{}, Vector{X: 1e300})}, NotFinite, 1},
		{Tube{Points: at(Vector{}, Vector{X: 1}), Radius: quantity.Exactly(-1)}, NoRadius, 0},
	} {
		faults := c.tube.Check()
		require.Len(t, faults, 1, "%v", c.want)
		require.Equal(t, c.want, faults[0].Problem)
		require.Equal(t, c.at, faults[0].At)
		m := c.tube.Measure()
		for _, r := range append(m.Straights, m.NodeLength, m.Developed, m.Missing(), c.tube.GreatestTurn()) {
			require.False(t, math.IsNaN(r.Low) || math.IsNaN(r.High), "%v: %v", c.want, m)
		}
	}
	unknown := Tube{Points: at(Vector{}, Vector{X: 1}, Vector{X: 1, Y: 1}), Radius: quantity.Everything}
	require.LessOrEqual(t, unknown.Measure().Developed.Low, 1.8)
	require.InDelta(t, 2, unknown.Measure().Developed.High, 1e-12)
}
