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

// straightsOf returns what the tangents leave of each run.
func straightsOf(tube Tube) (straights []quantity.Range) {
	for run := range max(0, len(tube.Points)-1) {
		straights = append(straights, tube.StraightLeft(run))
	}
	return straights
}

func TestMeasuresAreSharpOverRanges(t *testing.T) {
	var node, developed, straights tightness
	kinds := map[string]*tightness{"node length": &node, "developed length": &developed, "straight": &straights}
	for _, kind := range kinds {
		kind.isLength = true
	}
	sweep(t, 60, func(source *rand.Rand) {
		tube := drawTube(source, drawCourse(source, 3+source.IntN(2)), drawTolerance(source))
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
		check(&node, tube.NodeLength(), Course.NodeLength)
		check(&developed, tube.Developed(), Course.Developed)
		i := source.IntN(len(tube.Points) - 1)
		check(&straights, tube.StraightLeft(i), func(c Course) float64 { return c.Straight(i) })
	})
	for name, kind := range kinds {
		kind.log(t, name)
		limit := widest
		switch name {
		case "straight":
			limit = 1.6 // beside a bend that may be none, its tangent is taken as independent of the length
		case "developed length":
			// Of a sharp bend that takes up nearly all of the way between joints, what it saves
			// grows by as much in second order as the length does in first. One in some hundreds.
			limit = 2.5
			require.LessOrEqual(t, kind.over, 1+kind.count/200, "%v", kind.points)
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
		require.InDelta(t, course.Developed(), tube.Developed().Low, 1e-11)
		require.InDelta(t, course.Developed(), tube.Developed().High, 1e-11)
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
	require.Empty(t, hoop.AsRead().Check())
	require.InDelta(t, 3.8, hoop.NodeLength().Low, 1e-15)
	require.InDelta(t, 3.8, hoop.NodeLength().High, 1e-15)
	require.InDelta(t, 3.8-2*0.135*(2-math.Pi/2), hoop.Developed().Low, 1e-12)
	require.InDelta(t, 1.2-0.27, hoop.StraightLeft(1).Low, 1e-12)
	require.InDelta(t, 3, hoop.RadiusRatio(quantity.Exactly(0.045)).Low, 1e-12)
	least, most := hoop.Bends(0.01)
	require.Equal(t, []int{2, 2}, []int{least, most})

	hoop.Radius = quantity.Exactly(0.7)
	faults := hoop.AsRead().Check()
	require.Len(t, faults, 1)
	require.Equal(t, RadiusTooBig, faults[0].Problem)
	require.InDelta(t, 0.2, faults[0].Missing, 1e-12)
	require.EqualError(t, faults[0], "bend radius too big at number 3: 200.0 mm are missing")
	require.InDelta(t, -0.2, hoop.StraightLeft(1).Low, 1e-12)
}

func TestTubesThatCannotBeDrawn(t *testing.T) {
	at := func(places ...Vector) []Point {
		var points []Point
		for _, p := range places {
			points = append(points, At(p))
		}
		return points
	}
	for _, x := range []float64{math.NaN(), math.Inf(1), 1e300} {
		faults := Course{Points: []Vector{{}, {X: x}}}.Check()
		require.Len(t, faults, 1)
		require.Equal(t, Fault{Problem: NotFinite, At: 1}, *faults[0])
		require.False(t, math.IsNaN(Tube{Points: at(Vector{}, Vector{X: x})}.Developed().High), "%v", x)
	}
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
		{Tube{Points: at(Vector{}, Vector{X: 1e300})}, NotFinite, 1},
		{Tube{Points: at(Vector{}, Vector{X: 1}), Radius: quantity.Exactly(-1)}, NoRadius, 0},
	} {
		faults := c.tube.AsRead().Check()
		require.Len(t, faults, 1, "%v", c.want)
		require.Equal(t, c.want, faults[0].Problem)
		require.Equal(t, c.at, faults[0].At)
		for _, r := range append(straightsOf(c.tube), c.tube.NodeLength(), c.tube.Developed(), c.tube.GreatestTurn()) {
			require.False(t, math.IsNaN(r.Low) || math.IsNaN(r.High), "%v: %v", c.want, r)
		}
	}
	unknown := Tube{Points: at(Vector{}, Vector{X: 1}, Vector{X: 1, Y: 1}), Radius: quantity.Everything}
	require.LessOrEqual(t, unknown.Developed().Low, 1.8)
	require.InDelta(t, 2, unknown.Developed().High, 1e-12)
}
