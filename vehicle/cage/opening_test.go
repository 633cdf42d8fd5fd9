package cage

import (
	"math"
	"math/rand/v2"
	"testing"

	"gapsheet/vehicle/quantity"

	"github.com/stretchr/testify/require"
)

// bent returns the length of a course from one spot to another by walking along its pieces
// (elementary geometry): the arc at a corner counts as far as its middle.
func bent(c Course, from, to int) float64 {
	length := 0.0
	for i := from; i < to; i++ {
		length += c.Points[i].Distance(c.Points[i+1])
	}
	for i := 1; i+1 < len(c.Points); i++ {
		saved := c.Radius * (2*math.Tan(c.Turn(i-1)/2) - c.Turn(i-1))
		switch {
		case i > from && i < to:
			length -= saved
		case i == from || i == to:
			length -= saved / 2
		}
	}
	return length
}

func TestCoveredWay(t *testing.T) {
	var covered tightness
	covered.isLength = true
	sweep(t, 30, func(source *rand.Rand) {
		tube := drawTube(source, drawCourse(source, 3+source.IntN(2)), drawTolerance(source))
		tube.Radius = quantity.Exactly(tube.Radius.Low)
		from := source.IntN(len(tube.Points) - 1)
		to := from + 1 + source.IntN(len(tube.Points)-1-from)
		got := tube.Covered(Spot{Index: to}, Spot{Index: from})
		require.Equal(t, got, tube.Covered(Spot{Index: from}, Spot{Index: to}))
		asked := boxOf(question{tube.Points, got, func(p []Vector) float64 { return bent(Course{p, tube.Radius.Low}, from, to) }})
		asked.sample(t, source, 60)
		low, high := asked.hull(source)
		covered.add(asked, low, high)
	})
	covered.log(t, "covered way")
	require.LessOrEqual(t, covered.worst, widest, "%v", covered.points)
	hoop := Tube{Points: []Point{At(Vector{}), At(Vector{Z: 1}), At(Vector{Y: 1, Z: 1})}, Radius: quantity.Exactly(0.2)}
	part := hoop.Covered(Spot{At: At(Vector{Z: 0.5}), IsOnRun: true}, Spot{At: At(Vector{Y: 0.6, Z: 1}), Index: 1, IsOnRun: true})
	require.InDelta(t, 0.3+0.4+0.2*math.Pi/2, part.Middle(), 1e-12)
	require.InDelta(t, 0.1, hoop.Covered(Spot{At: At(Vector{Z: 0.5}), IsOnRun: true}, Spot{At: At(Vector{Z: 0.6}), IsOnRun: true}).High, 1e-12)
}

func TestStrapAnglesAreSharpOverRanges(t *testing.T) {
	kinds := map[string]*tightness{"below": {}, "sideways": {}, "spread": {}, "width": {isLength: true}, "height": {isLength: true}}
	sweep(t, 60, func(source *rand.Rand) {
		tolerance := drawTolerance(source)
		shoulder := drawWay(source)
		way := Vector{-0.3 - 0.4*source.Float64(), 0.2 * source.NormFloat64(), 0.2 * source.NormFloat64()}
		a, b := drawPoint(source, shoulder, tolerance), drawPoint(source, shoulder.Plus(way), tolerance)
		c, d := drawPoint(source, shoulder.Plus(Vector{Y: 0.2}), tolerance), drawPoint(source, shoulder.Plus(way).Plus(Vector{Y: 0.1}), tolerance)
		check := func(name string, q question) {
			asked := boxOf(q)
			asked.sample(t, source, 60)
			low, high := asked.hull(source)
			kinds[name].add(asked, low, high)
		}
		check("below", question{[]Point{a, b}, Run{a, b}.AngleBelowHorizontal(), func(p []Vector) float64 {
			w := p[1].Minus(p[0])
			return math.Atan2(-w.Z, math.Hypot(w.X, w.Y))
		}})
		check("sideways", question{[]Point{a, b}, Run{a, b}.SidewaysAngle(), func(p []Vector) float64 {
			w := p[1].Minus(p[0])
			return math.Atan2(math.Abs(w.Y), math.Abs(w.X))
		}})
		check("spread", question{[]Point{a, b, c, d}, SpreadFromAbove(Run{a, b}, Run{c, d}), func(p []Vector) float64 {
			u, v := p[1].Minus(p[0]), p[3].Minus(p[2])
			return Vector{X: u.X, Y: u.Y}.Angle(Vector{X: v.X, Y: v.Y})
		}})
		door := Opening{a, c, b, d}
		check("width", question{door[:], door.Width(), func(p []Vector) float64 {
			return min(math.Abs(p[0].X-p[3].X), math.Abs(p[1].X-p[2].X))
		}})
		check("height", question{door[:], door.Height(), func(p []Vector) float64 {
			return min(math.Abs(p[1].Z-p[0].Z), math.Abs(p[2].Z-p[3].Z))
		}})
	})
	for name, kind := range kinds {
		kind.log(t, name)
		require.LessOrEqual(t, kind.worst, widest, "%s %v", name, kind.points)
	}
}

func TestHelmetAsABall(t *testing.T) {
	tubes := []Tube{{Points: []Point{At(Vector{X: -1}), At(Vector{X: 1})}}, {Points: []Point{At(Vector{X: -1, Y: 1}), At(Vector{X: 1, Y: 1})}}}
	outsides := []quantity.Range{quantity.Exactly(0.045), quantity.Exactly(0.038)}
	got := BallClearance(At(Vector{Y: 0.3}), quantity.Exactly(0.14), tubes, outsides)
	require.InDelta(t, math.Hypot(0.3, 0.14)-0.14-0.0225, got.Low, 1e-12)
	require.InDelta(t, math.Hypot(0.3, 0.14)-0.14-0.0225, got.High, 1e-12)
	wide := BallClearance(Within(Vector{Y: 0.3}, 0.01), quantity.Between(0.13, 0.15), tubes, outsides)
	sweep(t, 100, func(source *rand.Rand) {
		r := 0.13 + 0.02*source.Float64()
		top := Vector{0.01 * (2*source.Float64() - 1), 0.3 + 0.01*(2*source.Float64()-1), 0.01 * (2*source.Float64() - 1)}
		exact := min(math.Hypot(top.Y, top.Z-r)-0.0225, math.Hypot(1-top.Y, top.Z-r)-0.019) - r
		require.True(t, wide.Contains(exact), "%v in %v", exact, wide)
	})
	require.InDelta(t, math.Hypot(0.29, 0.14)-0.15-0.0225, wide.Low, 2e-4)
	require.Equal(t, quantity.Everything, BallClearance(At(Vector{}), quantity.Exactly(0.14), nil, nil))
}
