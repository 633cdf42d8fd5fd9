package cage

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// saddleOf is the saddle of a tube along out from the origin, 38 mm on 45 mm.
func saddleOf(t require.TestingT, out, main Vector) Saddle {
	end, fault := Seat(Vector{}, out, 0.038, Vector{}, main, 0.045)
	require.Nil(t, fault)
	out, _ = out.Unit()
	return Saddle{Out: out, End: end}
}

// The edge of a saddle lies on both cylinders (elementary geometry).
func TestTheEdgeOfASaddleLiesOnBothTubes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		angle := rapid.Float64Range(0.3, 2.8).Draw(t, "angle")
		s := saddleOf(t, Vector{X: math.Sin(angle), Z: math.Cos(angle)}, Vector{Z: 1})
		grind, gap := s.OffCourse(Course{Points: []Vector{{Z: -0.02}, {Z: 0.02}}})
		require.InDelta(t, 0, grind, 1e-9)
		require.InDelta(t, 0, gap, 1e-9, "the ends of the main tube do not count")
		// Square across, the edge reaches half its outside along the main tube, and more at an angle.
		least, most := s.Reach(Vector{Z: 1})
		require.GreaterOrEqual(t, most-least, 2*0.019/math.Sin(angle)*0.999)
	})
	least, most := saddleOf(t, Vector{X: 1}, Vector{Z: 1}).Reach(Vector{Z: 1})
	require.InDelta(t, 0.019, most, 1e-9)
	require.InDelta(t, -0.019, least, 1e-9)
}

// A square saddle on the outside of a bend, in its plane: 19 mm to either side along the
// straight cylinder, where the torus of a 135 mm centreline radius has fallen back from
// 157.5 mm to the circle √(157.5² + 19²) - 157.5 = 1.14 mm (elementary geometry).
func TestASaddleOnABend(t *testing.T) {
	const radius = 0.135
	half := Vector{X: math.Sqrt2 / 2, Z: math.Sqrt2 / 2}
	corner := half.Times(radius * (math.Sqrt2 - 1))
	main := Course{Points: []Vector{corner.Plus(Vector{X: -1}), corner, corner.Plus(Vector{Z: -1})}, Radius: radius}
	along := Vector{X: math.Sqrt2 / 2, Z: -math.Sqrt2 / 2}
	outer := Saddle{Out: half, End: saddleOf(t, half, along).End}
	grind, gap := outer.OffCourse(main)
	require.InDelta(t, math.Hypot(0.1575, 0.019)-0.1575, gap, 1e-4)
	require.InDelta(t, 0, grind, 1e-4)
	inner := Saddle{Out: half.Times(-1), End: saddleOf(t, half.Times(-1), along).End}
	grind, _ = inner.OffCourse(main)
	require.InDelta(t, 0.1125-math.Sqrt(0.1125*0.1125-0.019*0.019), grind, 3e-4, "the torus comes to meet it")
}

// Two tubes of one size square to each other on one node leave the main tube's surface in
// each other as far as their own half outside, 19 mm from the axis (elementary geometry).
func TestTwoTubesAtOneNode(t *testing.T) {
	s := saddleOf(t, Vector{X: 1}, Vector{Z: 1})
	square := straightSolid(0.038, Vector{}, Vector{Y: 1})
	low := math.Sqrt(0.0225*0.0225 - 0.019*0.019)
	require.InDelta(t, 0.019-low, s.RunsInto(&square), 1.5e-3)
	opposite := straightSolid(0.038, Vector{}, Vector{X: -1})
	require.Zero(t, s.RunsInto(&opposite))
	close30 := straightSolid(0.038, Vector{}, Vector{X: math.Cos(math.Pi / 6), Y: math.Sin(math.Pi / 6)})
	require.Greater(t, s.RunsInto(&close30), 0.04)
	far := straightSolid(0.038, Vector{Z: 0.05}, Vector{Y: 1, Z: 0.05})
	require.Zero(t, s.RunsInto(&far))
}
